"""The main job, on a phone, with no signal from a cold start: from the first touch to the length to ask for."""

import re
from collections.abc import Callable

from handset import Phone, Site
from maker import Maker
from playwright.sync_api import Locator, Page, expect
from questions import offline_state, wait_until

MOST_TOUCHES = 25
ANSWER_MS = 60_000


def walk_main_job(maker: Maker) -> None:
    """Six covers for 18 in polyester pads from 54 in cloth, by touch alone."""
    maker.start_job()
    maker.tape("18 in")
    maker.press("measure.next", next="height")
    maker.press("measure.square")
    maker.press("measure.next", next="how many")
    for _ in range(5):
        maker.press_named("One more: How many")
    maker.choose("Polyester")
    maker.press("measure.next", next="cover")
    maker.press("measure.next", next="cloth")
    maker.tape("54 in")
    maker.press("job.done")
    maker.press("measure.next", next="the cut")


def expect_answer(page: Page, length: str) -> None:
    expect(page.get_by_role("img", name=length, exact=True)).to_be_visible(timeout=ANSWER_MS)
    expect(page.get_by_role("img", name="Lay plan")).to_have_count(1)
    expect(page.get_by_role("img", name="12 panels")).to_have_count(1)


def test_with_no_signal_the_length_to_ask_for_takes_at_most_25_touches(
    handset: Phone, site: Site, maker_at: Callable[[Page], Maker]
) -> None:
    """3 1/8 yd is the answer of the format's own example with the usual margins left out of the document."""
    page = handset.open()
    wait_until(page, offline_state, phase="verified")
    site.stop()
    maker = maker_at(handset.relaunch())
    walk_main_job(maker)
    expect_answer(maker.page, "3 1/8 yd")
    print(f"{maker.touches} touches")
    assert maker.touches <= MOST_TOUCHES

    page = handset.relaunch()
    expect_answer(page, "3 1/8 yd")
    maker_at(page).go_home()
    expect(page.get_by_text("3 1/8 yd")).to_be_visible()


def test_the_answer_is_the_largest_type_on_the_screen(maker: Maker) -> None:
    walk_main_job(maker)
    expect_answer(maker.page, "3 1/8 yd")
    sizes = maker.page.evaluate(
        """() => [...document.querySelectorAll('.screen *')]
          .filter((one) => one.checkVisibility() && one.textContent.trim())
          .map((one) => [parseFloat(getComputedStyle(one).fontSize), one.textContent.trim()])
          .sort(([one], [other]) => other - one)[0]"""
    )
    assert sizes[0] >= 32
    assert sizes[1] in "3 1/8 yd"


def test_a_way_out_is_one_touch_and_can_be_undone(maker: Maker) -> None:
    walk_main_job(maker)
    expect_answer(maker.page, "3 1/8 yd")
    maker.touch(maker.page.get_by_role("button", name="Cut the panels 17 5/8 in wide"))
    expect_answer(maker.page, "2 1/8 yd")
    maker.press("job.undo")
    expect_answer(maker.page, "3 1/8 yd")
    maker.press("job.redo")
    expect_answer(maker.page, "2 1/8 yd")


def test_the_working_is_one_touch_away(maker: Maker) -> None:
    walk_main_job(maker)
    expect_answer(maker.page, "3 1/8 yd")
    maker.press("cut.why")
    working = maker.page.get_by_role("dialog")
    for sentence in ("12 panels of 18 × 18 in", "2 across 53 in; 6 rows × 18 in = 108 in", "110 in"):
        expect(working).to_contain_text(sentence)


def test_the_finished_size_stands_on_cover_before_there_is_any_cloth(maker: Maker) -> None:
    """One inch smaller for a polyester pad: common practice."""
    maker.start_job()
    maker.tape("18 in")
    maker.press("measure.next", next="height")
    maker.press("measure.square")
    maker.go_to("cover")
    expect(maker.page.get_by_role("img", name="17 in", exact=True)).to_have_count(2, timeout=ANSWER_MS)


def trouble(maker: Maker, field: str) -> Locator:
    """The line that leads to a field, in the list of what is to be settled."""
    return maker.page.get_by_role("alert").get_by_role("button", name=field)


def test_everything_missing_is_asked_for_at_once_and_leads_to_its_field(maker: Maker) -> None:
    maker.start_job()
    maker.go_to("cut")
    for field in ("Cushion 1, Width", "Cushion 1, Height", "Cloth 1, Cloth width"):
        expect(trouble(maker, field)).to_be_visible(timeout=ANSWER_MS)
    maker.touch(trouble(maker, "Cloth 1, Cloth width"))
    maker.tape("54 in")
    maker.press("job.done")
    maker.go_to("cut")
    expect(trouble(maker, "Cushion 1, Width")).to_be_visible()
    expect(trouble(maker, "Cloth 1, Cloth width")).to_have_count(0, timeout=ANSWER_MS)


def test_two_readings_that_disagree_are_told_at_their_field(maker: Maker) -> None:
    """A soft pad may differ by 1/2 in between two readings, no more: common practice."""
    walk_main_job(maker)
    maker.go_to("measure")
    maker.touch(maker.row("Width"))
    maker.press("measure.again")
    maker.tape("19 in")
    expect(maker.page.get_by_text("The two readings are 18 in and 19 in")).to_be_visible(timeout=ANSWER_MS)
    maker.press_named("Delete the last key")
    maker.press_named("8")
    maker.press_named("one half")
    expect(maker.page.get_by_text("The two readings are")).to_have_count(0, timeout=ANSWER_MS)


def test_a_wrong_figure_is_told_at_its_field_and_stays_as_it_was_typed(maker: Maker) -> None:
    walk_main_job(maker)
    maker.go_to("cover")
    maker.touch(maker.row("Opening"))
    maker.tape("25 in")
    problem = maker.page.get_by_role("dialog").get_by_text("longer than the edge it lies in")
    expect(problem).to_be_visible(timeout=ANSWER_MS)
    maker.press("job.done")
    expect(maker.row("Opening")).to_contain_text("25 in")
    expect(maker.row("Opening")).to_have_accessible_description(re.compile("longer than the edge it lies in"))


def test_a_cloth_too_narrow_for_a_cover_is_told_at_its_field(maker: Maker) -> None:
    walk_main_job(maker)
    maker.go_to("cloth")
    maker.touch(maker.row("Cloth width"))
    maker.tape("15 in")
    maker.press("job.done")
    maker.go_to("cut")
    told = "The front is 18 in wide; Cloth 1 has 14 in usable"
    expect(maker.page.get_by_role("alert")).to_contain_text(re.compile(told, re.IGNORECASE), timeout=ANSWER_MS)
    maker.touch(trouble(maker, "Cushion 1, Width").first)
    expect(maker.page.locator(".field-problem").first).to_contain_text(re.compile(told, re.IGNORECASE))


def test_the_dialect_changes_every_screen_and_no_measure(maker: Maker) -> None:
    walk_main_job(maker)
    before = maker.page.evaluate("async () => JSON.stringify((await import('./store/session.js')).job.value)")
    maker.go_home()
    maker.press("home.settings")
    maker.choose("American")
    maker.press("job.back")
    maker.open_job()
    maker.go_to("cloth")
    expect(maker.row("Selvage, each side")).to_be_visible()
    after = maker.page.evaluate("async () => JSON.stringify((await import('./store/session.js')).job.value)")
    assert after == before


def test_what_stops_one_cloth_is_told_beside_the_answer_for_the_other(maker: Maker) -> None:
    walk_main_job(maker)
    maker.go_to("cloth")
    maker.press("cloth.add")
    maker.go_to("cover")
    maker.touch(maker.row("Back cloth"))
    maker.choose("Cloth 2")
    maker.press("job.done")
    maker.go_to("cut")
    expect(trouble(maker, "Cloth 2, Cloth width")).to_be_visible(timeout=ANSWER_MS)
    expect(maker.page.get_by_role("img", name="1 5/8 yd", exact=True)).to_be_visible()
    maker.press("cut.settle", field="Cloth 2, Cloth width")
    maker.tape("54 in")
    maker.press("job.done")
    maker.go_to("cut")
    expect(maker.page.get_by_role("img", name="1 5/8 yd", exact=True)).to_have_count(2, timeout=ANSWER_MS)
