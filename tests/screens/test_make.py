"""Make: the sheet of each cover at the bench, its steps ticked off with a finger, and ticked after a restart."""

import json
from collections.abc import Callable
from typing import Any

from handset import Phone, Site
from maker import Maker
from playwright.sync_api import Locator, Page, expect
from questions import offline_state, wait_until
from test_looks import EXAMPLES, bring_in

from plumpline import plan

ANSWER_MS = 60_000
EXAMPLE = "job-window-bench"
COVERS = ("bench", "stool", "bolster")


def sheets() -> list[dict[str, Any]]:
    """The sheets of the example, as the core gives them."""
    job: dict[str, Any] = json.loads((EXAMPLES / f"{EXAMPLE}.json").read_text("utf-8"))
    found: list[dict[str, Any]] = plan(job, "quick")["workroom"]
    return found


def to_make(maker: Maker, name: str) -> None:
    maker.open_job(name)
    maker.go_to("make")
    expect(maker.page.locator(".identity-code")).to_be_visible(timeout=ANSWER_MS)


def step(page: Page, place: int) -> Locator:
    """The step at that place of the sheet that is shown."""
    return page.get_by_role("checkbox").nth(place)


def line(page: Page, place: int) -> Locator:
    """All that is told of that step; touching it ticks it."""
    return page.locator("label").filter(has=page.get_by_role("checkbox")).nth(place)


def tick(maker: Maker, place: int) -> None:
    maker.touch(line(maker.page, place))


def test_steps_are_ticked_off_by_touch_one_after_the_other_and_stay_so_after_a_restart(
    handset: Phone, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(handset.open())
    name = bring_in(maker.page, EXAMPLE)
    to_make(maker, name)
    bench = sheets()[0]
    for place, told in enumerate(bench["steps"]):
        expect(step(maker.page, place)).to_have_accessible_name(told["title"])
        expect(step(maker.page, place)).not_to_be_checked()
    for told in bench["steps"][:3]:
        maker.press("make.done", step=told["title"])
    tick(maker, 4)
    tick(maker, 4)
    tick(maker, 5)
    everything = len(bench["steps"])
    expect(maker.page.get_by_text(f"4 of {everything} steps done")).to_be_visible()
    expect(maker.find("make.done", step=bench["steps"][3]["title"])).to_be_visible()

    maker = maker_at(handset.relaunch())
    expect(maker.page.get_by_text(f"4 of {everything} steps done")).to_be_visible(timeout=ANSWER_MS)
    ticked = [place for place in range(everything) if step(maker.page, place).is_checked()]
    assert ticked == [0, 1, 2, 5]


def test_every_cover_of_the_job_has_its_sheet_and_a_cloth_looked_over_counts_on_all(maker: Maker) -> None:
    name = bring_in(maker.page, EXAMPLE)
    to_make(maker, name)
    bench, stool, _ = sheets()
    for place, told in enumerate(bench["steps"]):
        if told["id"].startswith("make:cloth:k2:"):
            tick(maker, place)
    for cover, sheet in zip(COVERS, sheets(), strict=True):
        maker.press("make.cushion", cushion=cover)
        expect(maker.page.locator(".identity-code")).to_have_text(sheet["code"])
        for fact in sheet["facts"]:
            expect(maker.page.locator(".fact").filter(has_text=fact["text"]).first).to_be_visible()
        for caution in sheet["cautions"]:
            expect(maker.page.get_by_text(caution["text"])).to_be_visible()
    maker.press("make.cushion", cushion="stool")
    done = [place for place in range(len(stool["steps"])) if step(maker.page, place).is_checked()]
    assert [stool["steps"][place]["id"] for place in done] == ["make:cloth:k2:check", "make:cloth:k2:square"]


def test_the_cover_that_was_looked_at_is_the_one_to_make(maker: Maker) -> None:
    name = bring_in(maker.page, EXAMPLE)
    maker.open_job(name)
    maker.go_to("cover")
    maker.press("cover.cushion", cushion="stool")
    maker.go_to("make")
    expect(maker.page.locator(".identity-code")).to_have_text(sheets()[1]["code"], timeout=ANSWER_MS)


def test_when_every_step_is_done_the_sheet_says_so(maker: Maker) -> None:
    name = bring_in(maker.page, EXAMPLE)
    to_make(maker, name)
    steps = sheets()[0]["steps"]
    for told in steps:
        maker.press("make.done", step=told["title"])
    expect(maker.page.get_by_text("Every step is done.")).to_be_visible()
    tick(maker, len(steps) - 1)
    expect(maker.find("make.done", step=steps[-1]["title"])).to_be_visible()


def test_the_sheet_stands_at_once_after_a_restart_with_no_signal(
    handset: Phone, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    maker = maker_at(handset.open())
    name = bring_in(maker.page, EXAMPLE)
    wait_until(maker.page, offline_state, phase="verified")
    to_make(maker, name)
    site.stop()
    maker = maker_at(handset.relaunch())
    expect(maker.page.locator(".identity-code")).to_have_text(sheets()[0]["code"], timeout=ANSWER_MS)
    maker.press("make.done", step=sheets()[0]["steps"][0]["title"])
    expect(step(maker.page, 0)).to_be_checked()


def test_a_job_that_cannot_be_planned_says_what_to_settle(maker: Maker) -> None:
    job = json.loads((EXAMPLES / f"{EXAMPLE}.json").read_text("utf-8"))
    for cloth in job["cloths"]:
        del cloth["width"]
    content = {"name": "job.json", "mimeType": "", "buffer": json.dumps(job).encode()}
    maker.page.locator("input[type=file]").set_input_files(content)  # type: ignore[arg-type]
    expect(maker.page.get_by_text(f"{job['name']} is here.")).to_be_visible(timeout=ANSWER_MS)
    maker.open_job(job["name"])
    maker.go_to("make")
    expect(maker.page.get_by_role("alert")).to_contain_text("Measure the width", timeout=ANSWER_MS)


def test_a_step_that_reads_otherwise_since_it_was_ticked_says_how_it_read_then(maker: Maker) -> None:
    name = bring_in(maker.page, "job-harbour-room")
    to_make(maker, name)
    for place in (2, 7):  # the front is cut, and the label, which names the cover, is sewn in
        tick(maker, place)
    maker.go_to("measure")
    maker.touch(maker.row("Width"))
    maker.page.get_by_role("button", name="Delete the last key").tap()
    maker.press_named("9")
    maker.press("job.back")
    maker.go_to("make")
    front = line(maker.page, 2)
    expect(front).to_contain_text("19 × 18 in", timeout=ANSWER_MS)
    expect(step(maker.page, 2)).to_be_checked()
    expect(front).to_contain_text("Changed since it was ticked. Then: 18 × 18 in. 6 pieces of 18 × 18 in")
    tick(maker, 2)
    tick(maker, 2)
    expect(front).not_to_contain_text("Changed since")
