"""The ways to make a job side by side, by touch and with no signal: what each takes, its picture, and taking it."""

import json
import re
from typing import Any

from handset import Site
from maker import Maker
from playwright.sync_api import Locator, expect
from test_looks import CUT_OFF, EXAMPLES, SMALL_TARGETS, bring_in

from plumpline.beside.comparing import compare

ANSWER_MS = 120_000
SIZE = "(one) => parseFloat(getComputedStyle(one).fontSize)"


def compared(maker: Maker, example: str, station: str = "cut") -> dict[str, Any]:
    """Opens an example at its comparison; gives what the core says, once the screen says so too."""
    maker.open_job(bring_in(maker.page, example))
    maker.go_to(station)
    maker.press("compare.open")
    expect(maker.page.get_by_text("Each way is planned")).to_be_visible(timeout=ANSWER_MS)
    return compare(json.loads((EXAMPLES / f"{example}.json").read_text("utf-8")))


def way(maker: Maker, name: str) -> Locator:
    return maker.page.get_by_role("listitem").filter(has=maker.page.get_by_role("heading", name=name, exact=True))


def test_each_way_stands_with_its_length_cost_difference_and_reason(maker: Maker) -> None:
    """Every text and figure is the core's, in the core's order; the length is read at arm's length."""
    said = compared(maker, "job-printed-panels")
    page = maker.page
    lines = [line for group in said["groups"] for line in group["lines"]]
    expect(page.locator(".way-name")).to_have_text([line["name"] for line in lines])
    expect(page.locator(".way-figure .figure")).to_have_text([line["cloths"][0]["ask"]["text"] for line in lines])
    expect(page.locator(".way-cost strong")).to_have_text([f"{line['cost']['amount']} USD" for line in lines])
    expect(page.locator(".way-cost > span")).to_have_text([line["more"] or "takes least" for line in lines])
    for line in lines:
        expect(way(maker, line["name"])).to_contain_text(line["text"])
    assert all(size >= 32 for size in page.locator(".way-figure .figure").evaluate_all(f"(all) => all.map({SIZE})"))
    assert page.evaluate(SMALL_TARGETS) == []
    page.set_viewport_size({"width": 360, "height": 740})
    assert page.evaluate(CUT_OFF) == []


def test_taking_a_way_is_one_tap_that_gives_what_it_promised_with_no_signal(maker: Maker, site: Site) -> None:
    """By hand: 12 panels of 18 in, unmatched 3 across, 4 rows: 72 in on washed cloth, 76 1/4 in as bought: 2 1/8 yd."""
    compared(maker, "job-printed-panels", "cloth")
    site.stop()
    page = maker.page
    name = "Unmatched: cut anywhere"
    expect(way(maker, name).locator(".figure")).to_have_text("2 1/8 yd")
    maker.press("compare.take", name=name)
    expect(way(maker, name)).to_contain_text("As it is now", timeout=ANSWER_MS)
    maker.press("job.back")
    maker.go_to("cut")
    expect(page.locator(".ask-figure .figure")).to_have_text("2 1/8 yd", timeout=ANSWER_MS)
    maker.press("job.undo")
    expect(page.locator(".ask-figure .figure")).to_have_text("4 1/8 yd", timeout=ANSWER_MS)


def test_the_lay_plan_of_a_way_is_one_tap_away(maker: Maker) -> None:
    compared(maker, "job-printed-panels")
    maker.press("compare.look", name="Unmatched: cut anywhere")
    expect(maker.page.get_by_role("dialog").get_by_role("img", name=re.compile("^Lay plan"))).to_be_visible()
    maker.press("job.close")
    expect(maker.page.get_by_role("dialog")).to_have_count(0)


def test_a_job_with_nothing_to_plan_says_what_is_missing(maker: Maker) -> None:
    maker.start_job()
    maker.press("job.back")
    maker.go_to("cloth")
    maker.press("compare.open")
    expect(maker.page.get_by_role("alert")).to_be_visible(timeout=ANSWER_MS)
    expect(maker.page.locator(".way")).to_have_count(0)


def test_another_bolt_is_noted_beside_the_cloth_and_compared_with_it(maker: Maker, site: Site) -> None:
    """By hand: 60 in less two selvedges of 1/2 in is 3 across, 4 × 18 + 2 in squaring = 74 in, 2 1/8 yd."""
    page = maker.page
    maker.open_job(bring_in(page, "job-harbour-room"))
    site.stop()
    maker.go_to("cloth")
    maker.press("cloth.add")
    maker.touch(maker.row("Cloth width"))
    maker.tape("60 in")
    maker.press("job.done")
    maker.touch(maker.row("In place of"))
    maker.choose("plain linen")
    maker.press("job.done")
    maker.press("compare.open")
    bolt = way(maker, "Cloth 2")
    expect(bolt.locator(".figure")).to_have_text("2 1/8 yd", timeout=ANSWER_MS)
    maker.press("compare.take", name="Cloth 2")
    expect(bolt).to_contain_text("As it is now", timeout=ANSWER_MS)
    expect(way(maker, "Plain linen")).to_contain_text("2 yd")
