"""Seats of other outlines by touch: taped side by side and across, drawn, checked, answered with no signal."""

import io
import json
import re
from typing import Any

import pypdf
from handset import Phone, Site
from maker import Maker
from playwright.sync_api import Page, expect
from questions import offline_state, wait_until
from test_kinds import JOB, PICTURES, cushion_of
from test_looks import CUT_OFF, SMALL_TARGETS

from plumpline import plan

ANSWER_MS = 60_000
SEAT = PICTURES["boxed polygon"]
#: A maker's bay: 90 in at the front, 60 at the back, 31 deep; by Pythagoras its sides are 34.44 in and its diagonals
#: 81.15, taped to the nearest 1/8 in.
BAY = {
    "side BC": "90 in",
    "side CD": "34 1/2 in",
    "side DA": "60 in",
    "diagonal AC": "34 1/2 in",
    "diagonal BD": "81 1/8 in",
    "thickness": "81 1/8 in",
    "how many": "3 in",
}


def tape_the_bay(maker: Maker) -> None:
    """Every measure of the bay in the order that the screen asks for it; ends where it asks how many."""
    maker.start_job()
    maker.choose(SEAT)
    for following, length in BAY.items():
        maker.tape(length)
        maker.press("measure.next", next=following)


CHOICES = {
    "Closing": "Zip",
    "Closed at": "In the boxing",
    "Edge": "Piped",
    "On which rims": "Both rims",
    "Cloth of its strips": "Cloth 2",
}


def bolt(maker: Maker, width: str) -> None:
    """The open cloth is so wide, and has no direction."""
    maker.touch(maker.row("Cloth width"))
    maker.tape(width)
    maker.press("job.done")
    maker.touch(maker.row("Direction"))
    maker.choose("Any way")
    maker.press("job.done")


def asked_for(page: Page) -> dict[str, str]:
    """The length of each cloth that the core asks for when it is given the same job apart from the screens."""
    job = json.loads(page.evaluate(JOB))
    return {f"Cloth {number}": cloth["ask"]["text"] for number, cloth in enumerate(plan(job)["cloths"], start=1)}


def corners_drawn(page: Page) -> list[list[float]]:
    """The corners of the face as it is drawn, in px."""
    drawn = page.locator(".cushion-drawing .drawing-face").get_attribute("d") or ""
    return [[float(number) for number in point.split()] for point in re.findall(r"[\d.-]+ [\d.-]+", drawn)]


def test_a_bay_window_bench_is_entered_drawn_and_answered_with_no_signal(phone: Page, site: Site, maker: Maker) -> None:
    """Four sides, two diagonals, 3 in of foam, a zip at the back, both rims piped in a contrast cloth: the lengths of
    both cloths, its sheet and its templates."""
    wait_until(phone, offline_state, phase="verified")
    site.stop()
    tape_the_bay(maker)
    maker.choose("Foam filling")
    a, b, c, d = corners_drawn(phone)
    assert abs((b[0] - a[0]) / (c[0] - d[0]) - 1.5) < 0.02  # 90 in at the front, 60 at the back
    maker.go_to("cloth")
    bolt(maker, "54 in")
    maker.press("cloth.add")
    bolt(maker, "45 in")
    maker.go_to("cover")
    for row, choice in CHOICES.items():
        maker.touch(maker.row(row))
        maker.choose(choice)
        maker.press("job.done")
    expect(maker.row("Closed at side")).to_contain_text("CD", timeout=ANSWER_MS)
    for drawn in ("[data-closing=zip]", ".drawing-cord"):
        expect(phone.locator(drawn).first).to_be_visible()
    maker.go_to("cut")
    lengths = asked_for(phone)
    assert list(lengths) == ["Cloth 1", "Cloth 2"]
    for cloth, length in reversed(lengths.items()):
        maker.press("cut.cloth", cloth=cloth)
        expect(phone.get_by_role("img", name=length, exact=True)).to_be_visible(timeout=ANSWER_MS)
    with phone.expect_download(timeout=ANSWER_MS) as download:
        maker.press("cut.templates")
    text = pypdf.PdfReader(io.BytesIO(download.value.path().read_bytes())).pages[0].extract_text()
    assert "91 9/16" in text
    maker.go_to("make")
    expect(phone.get_by_text("zip band 1", exact=False).first).to_be_visible(timeout=ANSWER_MS)
    cushion = cushion_of(phone)
    assert cushion["insert"]["diagonals"] == [[0, 2, "81 1/8 in"], [1, 3, "81 1/8 in"]]
    assert cushion["insert"]["sides"] == ["90 in", "34 1/2 in", "60 in", "34 1/2 in"]


def test_a_diagonal_that_cannot_be_right_is_told_beside_it_with_both_numbers(maker: Maker) -> None:
    tape_the_bay(maker)
    maker.press("job.back")
    maker.touch(maker.row("Diagonal AC"))
    maker.tape("85 in")
    told = maker.page.locator(".field-problem")
    expect(told).to_contain_text("If diagonal AC is misread, it is", timeout=ANSWER_MS)
    expect(told).to_contain_text(", not 85 in")
    maker.press("job.back")
    expect(maker.row("Diagonal AC")).to_have_accessible_description(re.compile("diagonal AC is misread"))
    maker.touch(maker.row("Diagonal AC"))
    maker.tape("81 1/8 in")
    expect(told).to_have_count(0, timeout=ANSWER_MS)


def set_row(maker: Maker, row: str, choice: str) -> None:
    maker.touch(maker.row(row))
    maker.choose(choice)
    maker.press("job.done")


def set_length(maker: Maker, row: str, length: str) -> None:
    maker.touch(maker.row(row))
    maker.tape(length)
    maker.press("job.done")


def test_a_bay_with_rounded_corners_is_drawn_answered_and_refused_where_they_do_not_fit(
    phone: Page, maker: Maker
) -> None:
    """Rounded by 3 in: a plan as the core gives it for the job as it stands, its plates drawn with their arcs."""
    tape_the_bay(maker)
    maker.choose("Foam filling")
    maker.go_to("cloth")
    bolt(maker, "100 in")
    maker.go_to("cover")
    maker.touch(maker.row("Corners"))
    expect(phone.get_by_role("radio", name="Tapered")).to_have_count(0)  # a box has no ears
    maker.choose("Rounded")
    maker.press("job.done")
    expect(maker.row("Corners rounded by")).to_contain_text("2 in", timeout=ANSWER_MS)
    set_length(maker, "Corners rounded by", "3 in")
    assert len(corners_drawn(phone)) > 4 * 8
    set_row(maker, "Closing", "Zip")
    expect(maker.row("Closed at side")).to_contain_text("CD", timeout=ANSWER_MS)
    maker.go_to("cut")
    ((_, length),) = asked_for(phone).items()
    expect(phone.get_by_role("img", name=length, exact=True)).to_be_visible(timeout=ANSWER_MS)
    told = plan(json.loads(phone.evaluate(JOB)))["cushions"][0]["working"]
    assert any(line["text"].startswith("Corners rounded by 3 in where they are stitched") for line in told)
    maker.go_to("cover")
    maker.touch(maker.row("Corners rounded by"))
    maker.tape("30 in")
    expect(phone.locator(".field-problem")).to_contain_text("Corners rounded by 30 in take", timeout=ANSWER_MS)


def test_a_flat_bay_is_tapered_by_a_share_of_each_side(phone: Page, maker: Maker) -> None:
    maker.start_job()
    maker.choose(PICTURES["knife-edge polygon"])
    for following, length in list(BAY.items())[:-1]:
        maker.tape(length)
        maker.press("measure.next", next="how many" if following == "thickness" else following)
    maker.go_to("cover")
    set_row(maker, "Corners", "Tapered")
    expect(maker.row("Taper depth")).to_contain_text("1/2 in", timeout=ANSWER_MS)
    wait_until(phone, lambda page: {"corners": len(corners_drawn(page))}, corners=12)
    set_row(maker, "Taper starts at", "A third of the side")
    wait_until(phone, lambda page: {"corners": len(corners_drawn(page))}, corners=12)


def outline_of(page: Page) -> dict[str, Any]:
    insert = cushion_of(page)["insert"]
    return {"sides": len(insert["sides"]), "notches": insert.get("notches", []), "across": len(insert["diagonals"])}


def test_an_outline_to_begin_with_sets_its_sides_and_the_corners_that_turn_inwards(maker: Maker) -> None:
    maker.start_job()
    maker.choose(SEAT)
    maker.press("job.back")
    maker.touch(maker.row("Outline"))
    for named, wanted in (("L", (6, [3])), ("T", (8, [3, 6])), ("Bay or trapezoid", (4, []))):
        maker.choose(named)
        found = outline_of(maker.page)
        assert (found["sides"], found["notches"]) == wanted
        assert found["across"] == wanted[0] - 2  # as many as hold it, and one that checks
    maker.press_named("One more: Sides")
    maker.press("measure.turnsInwards", corner="D")
    assert outline_of(maker.page) == {"sides": 5, "notches": [3], "across": 3}
    maker.press("measure.tapedAcross", ends="BD")
    assert outline_of(maker.page)["across"] == 4
    maker.press("measure.turnsInwards", corner="D")
    maker.press_named("One less: Sides")
    assert outline_of(maker.page) == {"sides": 4, "notches": [], "across": 2}


def test_the_outline_is_drawn_to_the_proportion_of_what_is_taped_so_far(maker: Maker) -> None:
    maker.start_job()
    maker.choose(SEAT)
    maker.tape("40 in")
    maker.press("measure.next", next="side BC")
    face = maker.page.locator(".cushion-drawing .drawing-face")
    before, drawn = corners_drawn(maker.page), face.get_attribute("d") or ""
    maker.tape("60 in")
    expect(maker.page.locator(".dimension-focused")).to_have_count(1)
    expect(face).not_to_have_attribute("d", drawn)
    after = corners_drawn(maker.page)
    depth = [abs(corners[2][1] - corners[1][1]) / abs(corners[1][0] - corners[0][0]) for corners in (before, after)]
    assert depth[1] > 1.5 * depth[0]


def test_the_entry_of_an_outline_is_whole_at_every_width(handset: Phone, maker: Maker) -> None:
    maker.start_job()
    maker.choose(SEAT)
    maker.press("job.back")
    maker.touch(maker.row("Outline"))
    maker.choose("T")
    for width in (320, 360, 412):
        handset.page.set_viewport_size({"width": width, "height": 740})
        assert maker.page.evaluate("() => document.documentElement.scrollWidth") <= width
        assert maker.page.evaluate(SMALL_TARGETS) == []
        assert maker.page.evaluate(CUT_OFF) == []


def lines_across(page: Page) -> list[list[list[float]]]:
    """The lines of a flap as they are drawn, each from its left to its right end, in px."""
    drawn = page.locator(".cushion-drawing .drawing-flap").get_attribute("d") or ""
    runs = [[[float(number) for number in point.split()] for point in run.split("L")] for run in drawn.split("M")[1:]]
    return [[run[0], run[-1]] for run in runs]


def close_by(maker: Maker, choices: dict[str, str]) -> None:
    for row, choice in choices.items():
        maker.touch(maker.row(row))
        maker.choose(choice)
        maker.press("job.done")


def test_a_trapezoid_closes_across_its_back_by_touch_and_is_drawn_so(maker: Maker) -> None:
    """A trapezoid 40 in at the front, 20 at the back and 24 deep, with sides of 26: its flaps, 5 in over each other,
    end where it is 32 1/12 and 27 11/12 in wide, and where a zip halves it, it is 30."""
    maker.start_job()
    maker.choose(PICTURES["knife-edge polygon"])
    sides = {"side BC": "40 in", "side CD": "26 in", "side DA": "20 in", "diagonal AC": "26 in"}
    for following, length in {**sides, "diagonal BD": "38 3/8 in", "how many": "38 3/8 in"}.items():
        maker.tape(length)
        maker.press("measure.next", next=following)
    maker.go_to("cloth")
    bolt(maker, "54 in")
    maker.go_to("cover")
    maker.touch(maker.row("Smaller than the pad by"))
    maker.tape("0 in")
    maker.press("job.done")
    close_by(maker, {"Closing": "Envelope back"})
    expect(maker.row("Overlap")).to_contain_text("5 in", timeout=ANSWER_MS)
    expect(maker.row("Closed at")).to_contain_text("Across the back", timeout=ANSWER_MS)
    expect(maker.row("Closed at side")).to_have_count(0)
    expect(maker.page.locator("[data-closing=envelope]")).to_be_visible()
    lower, upper = sorted(lines_across(maker.page), key=lambda line: -line[0][1])
    assert lower[0][1] == lower[1][1] > upper[0][1] == upper[1][1]
    long, short = (line[1][0] - line[0][0] for line in (lower, upper))
    assert abs(short / long - 335 / 385) < 0.01
    maker.go_to("make")
    expect(maker.page.get_by_text("envelope back, 5 in overlap", exact=False).first).to_be_visible(timeout=ANSWER_MS)
    expect(maker.page.get_by_text("its ends cut as it is folded", exact=False).first).to_be_visible(timeout=ANSWER_MS)
    maker.go_to("cover")
    close_by(maker, {"Closing": "Zip", "Closed at": "Across the back"})
    expect(maker.row("Zip length")).to_contain_text("28 in", timeout=ANSWER_MS)
    maker.touch(maker.row("Zip length"))
    maker.tape("31 in")
    told = maker.page.locator(".field-problem")
    expect(told).to_contain_text("is longer than the seam it lies in, ≈ 30 in", timeout=ANSWER_MS)


def test_a_pair_says_how_many_are_mirrored(maker: Maker) -> None:
    maker.start_job()
    maker.choose(PICTURES["knife-edge polygon"])
    maker.press("job.back")
    maker.touch(maker.row("Of these mirrored"))
    maker.press_named("One more: Of these mirrored")
    maker.press("job.done")
    assert json.dumps(cushion_of(maker.page)["mirrored"]) == "1"
    maker.touch(maker.row("Of these mirrored"))
    maker.press_named("One less: Of these mirrored")
    maker.press("job.done")
    assert "mirrored" not in cushion_of(maker.page)
