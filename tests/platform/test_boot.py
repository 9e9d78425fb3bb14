"""Python's start in the worker, and what the page is told when it does not start."""

import contextlib
import threading
from typing import Any

from handset import Phone, Site
from large_job import large_job
from playwright.sync_api import Error, Page, expect
from questions import core_state, reading, wait_until

from plumpline import plan

LATER_THAN_PATIENCE_MS = 91_000


def test_the_core_answers_in_the_browser(phone: Page) -> None:
    assert reading(phone) == "17 5/8 in"
    assert wait_until(phone, core_state, whole=True)["phase"] == "ready"


def test_a_question_that_is_none_is_answered_in_words_and_python_goes_on(phone: Page) -> None:
    (problem,) = phone.evaluate("async () => (await import('./boot/core.js')).ask('no request at all')")["problems"]
    assert "none that can be answered" in problem["text"]
    assert reading(phone) == "17 5/8 in"


def test_a_newer_plan_takes_the_place_of_one_that_still_waits(handset: Phone, site: Site) -> None:
    site.held["plumpline.zip"] = threading.Event()
    page = handset.open()
    page.evaluate(
        """async () => {
          const { ask } = await import('./boot/core.js');
          const read = (text, options) => ask({ do: 'read', text, unit: 'in' }, options);
          window.replies = Promise.all([read('1', { replaces: 'plan' }), read('2'), read('3', { replaces: 'plan' })]);
        }"""
    )
    site.held["plumpline.zip"].set()
    first, other, last = page.evaluate("() => window.replies")
    assert first == {"superseded": True}
    assert other["ok"]["texts"]["in"] == "2 in"
    assert last["ok"]["texts"]["in"] == "3 in"


def test_a_short_question_is_answered_while_a_plan_is_looked_for(phone: Page) -> None:
    order = phone.evaluate(
        """async (job) => {
          const { ask } = await import('./boot/core.js');
          const order = [];
          let begun;
          const first = new Promise((resolve) => { begun = resolve; });
          const hear = (told) => { order.push(...Object.keys(told)); begun(); };
          const plan = ask({ do: 'plan', job, effort: 'full' }, { hear });
          await first;
          await ask({ do: 'read', text: '1', unit: 'in' });
          order.push('read');
          await plan;
          return [...order, 'plan'];
        }""",
        large_job(),
    )
    assert order[0] == "soFar"
    assert order[-1] == "plan"
    assert "read" in order
    assert "progress" in order[order.index("read") :]


def test_a_plan_gives_way_at_once_to_a_newer_one(phone: Page) -> None:
    small = large_job()
    del small["cushions"][1:]
    first, last = phone.evaluate(
        """async ([large, small]) => {
          const { ask } = await import('./boot/core.js');
          const older = new Promise((resolve) => {
            let begun = false;
            const newer = () => ask({ do: 'plan', job: small, effort: 'quick' }, { replaces: 'plan' });
            const hear = () => { if (!begun) { begun = true; resolve([answer, newer()]); } };
            const answer = ask({ do: 'plan', job: large, effort: 'full' }, { replaces: 'plan', hear });
          });
          return Promise.all(await older);
        }""",
        [large_job(), small],
    )
    assert first == {"superseded": True}
    assert len(last["ok"]["cloths"][0]["layout"]) == 24


def test_a_stopped_plan_is_the_answer_as_it_stands(phone: Page) -> None:
    stopped, whole = phone.evaluate(
        """async (job) => {
          const { ask, stopAsking } = await import('./boot/core.js');
          const request = { do: 'plan', job, effort: 'full' };
          const stopped = await ask(request, { replaces: 'plan', hear: () => stopAsking('plan') });
          return [stopped, await ask(request, { replaces: 'plan' })];
        }""",
        large_job(),
    )
    assert stopped["unfinished"]
    assert whole == {"ok": plan(large_job())}


def test_a_damaged_core_gives_a_plain_message(handset: Phone, site: Site) -> None:
    site.instead["plumpline.zip"] = (200, "application/zip", b"damaged on its way")
    page = handset.open()
    state = wait_until(page, core_state, phase="failed")
    assert state["code"] == "broken"
    expect(page.get_by_text("The arithmetic could not start.")).to_be_visible()
    refusal = "async () => (await import('./boot/core.js')).ask({}).catch((error) => error.message)"
    assert "Python is not running: broken" in page.evaluate(refusal)


def test_a_worker_that_is_missing_gives_a_plain_message(handset: Phone, site: Site) -> None:
    site.instead["worker.js"] = (404, "text/plain", b"gone")
    page = handset.open()
    assert wait_until(page, core_state, phase="failed")["code"] == "broken"


def test_a_start_that_hangs_gives_a_plain_message(handset: Phone, site: Site) -> None:
    site.held["vendor/pyodide/pyodide.asm.wasm"] = threading.Event()
    handset.page.clock.install()
    page = handset.open()
    wait_until(page, lambda _: {"asked": "vendor/pyodide/pyodide.asm.wasm" in site.served}, asked=True)
    assert core_state(page)["phase"] == "starting"
    page.wait_for_timeout(500)  # the worker's last sign of life is heard
    page.clock.fast_forward(LATER_THAN_PATIENCE_MS)
    state = wait_until(page, core_state, phase="failed")
    assert state["code"] == "slow"
    expect(page.get_by_text("The arithmetic did not start in time.")).to_be_visible()


def test_after_two_failed_starts_python_is_left_alone_until_the_person_tries_again(handset: Phone, site: Site) -> None:
    site.instead["plumpline.zip"] = (200, "application/zip", b"damaged on its way")
    for _ in range(2):
        assert wait_until(handset.open(), core_state, phase="failed")["code"] == "broken"
    site.served.clear()
    page = handset.open()
    assert wait_until(page, core_state, phase="failed")["code"] == "twice"
    expect(page.get_by_text("The arithmetic broke off twice")).to_be_visible()
    assert "worker.js" not in site.served
    site.instead.clear()
    page.evaluate("async () => (await import('./boot/core.js')).retryCore()")
    wait_until(page, core_state, phase="ready")
    assert reading(page) == "17 5/8 in"
    wait_until(handset.open(), core_state, phase="ready")


def crash(page: Page) -> None:
    """Take the page down as a phone's browser does when memory runs out: no event, no message."""
    with page.expect_event("crash"), contextlib.suppress(Error):
        page.goto("chrome://crash")


def noted_starts(page: Page) -> dict[str, Any]:
    """How many starts in a row are noted as begun and not as ended, this one among them; and if the page is seen."""
    starts = "async () => (await import('./boot/starts.js')).brokenStarts()"
    return {"unended": page.evaluate(starts), "seen": page.evaluate("() => document.visibilityState")}


def test_a_start_that_twice_took_the_page_down_is_not_repeated(handset: Phone, site: Site) -> None:
    site.held["vendor/pyodide/pyodide.asm.wasm"] = threading.Event()
    for start in (1, 2):
        page = handset.open()
        wait_until(page, noted_starts, unended=start)
        crash(page)
        handset.page = handset.context.new_page()
    assert wait_until(handset.open(), core_state, phase="failed")["code"] == "twice"


def test_python_starts_in_a_page_that_is_not_drawn_because_another_tab_lies_over_it(handset: Phone) -> None:
    handset.page.add_init_script("window.requestAnimationFrame = () => 0")
    wait_until(handset.open(), core_state, phase="ready")


def test_leaving_the_page_while_python_starts_is_no_failure(handset: Phone, site: Site) -> None:
    site.held["vendor/pyodide/pyodide.asm.wasm"] = threading.Event()
    for _ in range(3):
        assert core_state(handset.open())["phase"] == "starting"
        handset.page.goto("about:blank")
    assert core_state(handset.open())["phase"] == "starting"


def test_an_inline_script_is_refused(phone: Page, handset: Phone) -> None:
    phone.evaluate(
        """() => {
          const script = document.createElement('script');
          script.textContent = 'window.inline = true';
          document.body.append(script);
        }"""
    )
    assert phone.evaluate("() => window.inline") is None
    handset.forgive("Content Security Policy")


def test_the_app_names_no_other_origin_while_it_starts(phone: Page, handset: Phone, site: Any) -> None:
    wait_until(phone, core_state, whole=True)
    assert any(url.endswith("worker.js") for url in handset.requests)
    assert all(url.startswith((site.url, "about:", "data:")) for url in handset.requests)
