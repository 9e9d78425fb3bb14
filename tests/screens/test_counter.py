"""At the counter, with no signal: what to ask for at arm's length, checked with one thumb, and where it tips."""

import json
import re
from typing import Any

import pytest
from handset import Site
from maker import Maker
from playwright.sync_api import Locator, Page, expect
from test_looks import CUT_OFF, EXAMPLES, SMALL_TARGETS, bring_in

from plumpline import plan

ANSWER_MS = 120_000
# The height in px of the type that an element is set in.
SIZE = "(one) => parseFloat(getComputedStyle(one).fontSize)"
LOCKS = """
window.locks = [];
Object.defineProperty(navigator, 'wakeLock', {configurable: true, value: {request: async (kind) => {
  const lock = {kind, released: false, release: async () => { lock.released = true; }};
  window.locks.push(lock);
  return lock;
}}});
"""


def job_of(example: str) -> dict[str, Any]:
    job: dict[str, Any] = json.loads((EXAMPLES / f"{example}.json").read_text("utf-8"))
    return job


def at_the_counter(maker: Maker, example: str = "job-harbour-room") -> dict[str, Any]:
    """Opens an example at the counter; gives the answer of the core to it, for its first cloth."""
    maker.open_job(bring_in(maker.page, example))
    maker.go_to("cut")
    expect(maker.find("counter.open")).to_be_visible(timeout=ANSWER_MS)
    maker.press("counter.open")
    cloth: dict[str, Any] = plan(job_of(example), tips=True)["cloths"][0]
    expect(figure(maker.page)).to_have_text(cloth["ask"]["text"], timeout=ANSWER_MS)
    return cloth


def figure(page: Page) -> Locator:
    return page.locator(".counter-ask .figure")


def check(page: Page, name: str) -> Locator:
    return page.get_by_role("button", name=re.compile(f"^{name} "))


def test_the_length_to_ask_for_is_the_largest_thing_and_all_that_counts_is_read_at_arms_length(maker: Maker) -> None:
    cloth = at_the_counter(maker)
    page = maker.page
    beside = page.locator(".counter-beside > span")
    expect(beside).to_have_text([cloth["ask"]["other"], "64.00 USD"])
    sizes = page.locator("main *").evaluate_all(f"(all) => all.map({SIZE})")
    assert figure(page).evaluate(SIZE) == max(sizes)
    assert figure(page).evaluate(SIZE) >= 64
    assert all(size >= 32 for size in beside.evaluate_all(f"(all) => all.map({SIZE})"))


def test_every_tip_is_a_step_and_a_sentence_of_the_core(maker: Maker) -> None:
    cloth = at_the_counter(maker)
    page = maker.page
    for field, name in (("width", "By the width"), ("size", "By the size of the covers")):
        entries = [entry for entry in cloth["tipping"] if entry["field"] == field]
        part = page.locator(".tip").filter(has=page.get_by_role("heading", name=name))
        expect(part.locator(".step-ask")).to_have_text([entry["ask"] for entry in entries], timeout=ANSWER_MS)
        expect(part.locator(".tip-text")).to_have_text([entry["text"] for entry in entries if entry["text"]])
        expect(part.locator(".step-own .step-here")).to_have_text("now")
        expect(part.locator(".step-edges > span")).to_have_text([entry["at"] for entry in entries if entry["at"]])


def test_the_true_width_is_one_tap_away_and_answered_in_place_with_no_signal(
    maker: Maker, site: Site
) -> None:
    at_the_counter(maker)
    page = maker.page
    site.stop()
    expect(check(page, "Width")).to_contain_text("54 in")
    maker.touch(check(page, "Width"))
    maker.tape("53 in")
    maker.press("job.done")
    # Narrower than three panels of 18 in: two abreast, 108 in, 3 yd (by hand).
    expect(figure(page)).to_have_text("3 yd", timeout=ANSWER_MS)
    maker.press("job.undo")
    expect(figure(page)).to_have_text("2 yd", timeout=ANSWER_MS)
    maker.touch(check(page, "Direction"))
    maker.choose("Any way")
    maker.press("job.done")
    expect(check(page, "Direction")).to_contain_text("Any way")
    maker.touch(check(page, "Repeat"))
    maker.tape("12 in")
    maker.press("job.done")
    expect(check(page, "Repeat")).to_contain_text("12 in")
    maker.press("job.back")
    expect(maker.find("job.cut")).to_have_attribute("aria-current", "page")


def test_the_counter_is_one_tap_from_the_cloth_as_well(maker: Maker) -> None:
    maker.open_job(bring_in(maker.page, "job-parlour-bench"))
    maker.go_to("cloth")
    cloths = plan(job_of("job-parlour-bench"), "quick")["cloths"]
    maker.touch(maker.page.get_by_role("button", name=cloths[1]["name"], exact=True))
    maker.press("counter.open")
    expect(maker.page.locator(".counter-ask .ask-cloth")).to_have_text(cloths[1]["name"], timeout=ANSWER_MS)
    maker.touch(maker.page.get_by_role("button", name=cloths[0]["name"], exact=True))
    expect(maker.page.locator(".counter-ask .ask-cloth")).to_have_text(cloths[0]["name"])


def test_the_screen_stays_awake_only_at_the_counter(maker: Maker) -> None:
    page = maker.page
    page.evaluate(LOCKS)
    at_the_counter(maker)
    page.wait_for_function("window.locks.length === 1")
    assert page.evaluate("window.locks[0].kind") == "screen"
    maker.press("job.back")
    page.wait_for_function("window.locks[0].released")


def test_a_phone_that_cannot_stay_awake_is_not_told_so(maker: Maker) -> None:
    maker.page.evaluate(
        "Object.defineProperty(navigator, 'wakeLock', {value: {request: async () => { throw new Error('no'); }}})"
    )
    at_the_counter(maker)


def test_black_on_white_is_one_tap(maker: Maker) -> None:
    at_the_counter(maker)
    maker.press("cut.sun")
    expect(maker.page.locator("html")).to_have_attribute("data-light", "sun")


def test_what_to_say_is_read_large_and_sent_as_text(maker: Maker) -> None:
    cloth = at_the_counter(maker, "job-printed-panels")
    page = maker.page
    page.evaluate("navigator.share = async (what) => { window.shared = what; }")
    expect(page.locator(".tip")).to_have_count(3, timeout=ANSWER_MS)
    maker.press("counter.show")
    lines = [line["text"] for line in cloth["counter"]]
    expect(page.locator(".to-show > li")).to_have_text(lines)
    sizes = page.locator(".to-show > li").evaluate_all(f"(all) => all.map({SIZE})")
    assert min(sizes) >= 24
    assert max(sizes) >= 32
    maker.press("counter.send")
    page.wait_for_function("window.shared")
    assert page.evaluate("window.shared.text") == "\n".join(lines)


@pytest.mark.parametrize("light", ["light", "dark", "sun"])
@pytest.mark.parametrize("width", [390, 360])
def test_it_fits_every_phone_in_every_light(maker: Maker, light: str, width: int) -> None:
    page = maker.page
    page.set_viewport_size({"width": width, "height": 844 if width == 390 else 640})
    at_the_counter(maker, "job-printed-panels")
    page.evaluate("(light) => { document.documentElement.dataset.light = light; }", light)
    expect(page.locator(".tip")).to_have_count(3, timeout=ANSWER_MS)
    assert page.evaluate("document.scrollingElement.scrollWidth") <= width
    assert page.evaluate(SMALL_TARGETS) == []
    assert page.evaluate(CUT_OFF) == []
