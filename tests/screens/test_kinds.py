"""Every kind of cover by touch: chosen by a picture, measured in the order of the tape, asked only what it needs."""

import json
from typing import Any

import pytest
from handset import Phone
from maker import Maker
from names import tables
from playwright.sync_api import Page, expect
from test_looks import CUT_OFF, SMALL_TARGETS

# What the tape is laid on, in its order: the name of each measure.
MEASURES = {
    "knife-edge rectangle": ("Width", "Height"),
    "knife-edge round": ("Diameter",),
    "boxed rectangle": ("Width", "Height or depth", "Thickness"),
    "boxed round": ("Diameter", "Thickness"),
    "bolster bolster": ("Diameter", "Length"),
}
ALL_MEASURES = {name for names in MEASURES.values() for name in names}
PICTURES: dict[str, str] = tables()["controls"]["measure"]["kind"][1]
JOB = "async () => JSON.stringify((await import('./store/session.js')).job.value)"


def cushion_of(page: Page) -> dict[str, Any]:
    """The first cushion of the open job, as it is kept."""
    job: dict[str, Any] = json.loads(page.evaluate(JOB))
    cushion: dict[str, Any] = job["cushions"][0]
    return cushion


@pytest.mark.parametrize("kind", MEASURES)
def test_a_kind_is_one_touch_and_is_asked_for_its_own_measures_in_the_order_of_the_tape(
    maker: Maker, kind: str
) -> None:
    maker.start_job()
    before = maker.touches
    maker.choose(PICTURES[kind])
    assert maker.touches - before == 1
    for number, name in enumerate(MEASURES[kind]):
        expect(maker.page.get_by_role("slider")).to_have_accessible_name(f"{name}, on the tape")
        maker.tape(f"{20 - 8 * number} in")
        following = [*MEASURES[kind], "how many"][number + 1]
        maker.press("measure.next", next=following.lower())
    maker.press("job.back")
    for name in ALL_MEASURES:
        expect(maker.row(name)).to_have_count(1 if name in MEASURES[kind] else 0)
    cushion = cushion_of(maker.page)
    assert (cushion["kind"], cushion["insert"]["shape"]) == tuple(kind.split())
    assert len(cushion["insert"]) == 1 + len(MEASURES[kind])


def test_the_keys_stay_where_they_are_when_the_first_figure_takes_the_place_of_the_pictures(maker: Maker) -> None:
    maker.start_job()
    key = maker.page.get_by_role("button", name="4", exact=True)
    before = key.bounding_box()
    maker.choose(PICTURES["knife-edge round"])
    assert key.bounding_box() == before
    maker.tape("16 in")
    expect(maker.page.get_by_role("radio", name=PICTURES["knife-edge round"])).to_have_count(0)
    assert key.bounding_box() == before


def test_another_kind_keeps_what_was_typed_and_undo_brings_the_first_back(maker: Maker) -> None:
    maker.start_job()
    maker.tape("18 in")
    maker.press("job.back")
    maker.touch(maker.row("Shape"))
    maker.choose("Round")
    maker.press("job.done")
    expect(maker.row("Diameter")).to_be_visible()
    expect(maker.row("Width")).to_have_count(0)
    assert cushion_of(maker.page)["insert"] == {"shape": "round", "width": "18 in"}
    maker.press("job.undo")
    expect(maker.row("Width")).to_contain_text("18 in")


@pytest.mark.parametrize("width", [320, 360, 390])
def test_the_pictures_are_whole_and_large_enough_for_a_thumb(handset: Phone, maker: Maker, width: int) -> None:
    maker.start_job()
    handset.page.set_viewport_size({"width": width, "height": 740})
    assert maker.page.evaluate("() => document.documentElement.scrollWidth") <= width
    assert maker.page.evaluate(SMALL_TARGETS) == []
    assert maker.page.evaluate(CUT_OFF) == []


def test_a_cover_shows_only_the_parts_and_choices_it_has(maker: Maker) -> None:
    maker.start_job()
    maker.choose(PICTURES["bolster bolster"])
    maker.go_to("cover")
    for name, count in (("Body cloth", 1), ("Ends cloth", 1), ("Back cloth", 0), ("Corners", 0), ("Boxing", 0)):
        expect(maker.row(name)).to_have_count(count)
    maker.touch(maker.row("Closing"))
    expect(maker.page.get_by_role("radio")).to_have_count(2)
    maker.choose("Zip")
    maker.press("job.done")
    expect(maker.row("Zip length")).to_be_visible()
    expect(maker.row("Opening")).to_have_count(0)


def test_a_place_that_another_way_of_closing_does_not_have_is_left_out(maker: Maker) -> None:
    maker.start_job()
    maker.go_to("cover")
    for row, choice in (("Closing", "Zip"), ("Closed at", "Across the back"), ("Closing", "Ties")):
        maker.touch(maker.row(row))
        maker.choose(choice)
        maker.press("job.done")
    assert cushion_of(maker.page)["cover"]["closure"] == {"kind": "ties"}


def test_what_few_jobs_need_is_folded_away_until_it_is_asked_for_or_said(maker: Maker) -> None:
    maker.start_job()
    maker.press("job.back")
    maker.go_to("cover")
    lining = maker.row("Lining")
    expect(lining).to_have_count(0)
    maker.touch(maker.page.locator("summary").filter(has_text="Layers under the cover"))
    maker.touch(lining)
    maker.choose("Cloth 1")
    maker.press("job.done")
    maker.go_to("cloth")
    maker.go_to("cover")
    expect(lining).to_contain_text("Cloth 1")
    expect(maker.row("Cut sizes rounded up to")).to_have_count(0)
