"""Edges of a cover by touch: what each asks for, how it is drawn, and its strips on the lay plan and the list."""

import pytest
from maker import Maker
from names import tables
from playwright.sync_api import expect
from test_looks import CUT_OFF, SMALL_TARGETS, bring_in

from plumpline.fields import EDGE

ANSWER_MS = 60_000
FIELDS = {entry.name: tables()["fields"][f"/cushions/*/cover/edge/{entry.name}"] for entry in EDGE}
KINDS: dict[str, str] = FIELDS["kind"]["options"]
# What a knife-edge cover with each edge is asked for beside its kind; rims only where there are two.
ASKED = {
    "plain": set(),
    "piped": {"cord", "cords", "cloth", "strip", "joined", "join", "shortest", "thickness"},
    "flanged": {"flange"},
    "frilled": {"depth", "gather", "fullness", "frill", "cloth", "strip", "shortest"},
    "trimmed": {"join", "pack"},
}


@pytest.mark.parametrize("edge", ASKED)
def test_an_edge_is_chosen_by_touch_and_asks_only_for_what_it_needs(maker: Maker, edge: str) -> None:
    maker.start_job()
    maker.tape("18 in")
    maker.press("job.back")
    maker.go_to("cover")
    maker.touch(maker.row("Edge"))
    maker.choose(KINDS[edge])
    maker.press("job.done")
    for name, entry in FIELDS.items():
        if name != "kind":
            expect(maker.row(entry["name"])).to_have_count(int(name in ASKED[edge]))
    drawn = {
        "piped": ".drawing-cord",
        "flanged": ".drawing-flange",
        "frilled": ".drawing-frill",
        "trimmed": ".drawing-trim",
    }
    for kind, part in drawn.items():
        expect(maker.page.locator(f".cushion-drawing {part}")).to_have_count(int(kind == edge))


def test_a_box_is_asked_which_of_its_rims_and_offered_no_flange(maker: Maker) -> None:
    maker.start_job()
    maker.choose("Boxed")
    maker.press("job.back")
    maker.go_to("cover")
    maker.touch(maker.row("Edge"))
    expect(maker.page.get_by_role("radio", name=KINDS["flanged"], exact=True)).to_have_count(0)
    maker.choose(KINDS["piped"])
    maker.press("job.done")
    expect(maker.row(FIELDS["rims"]["name"])).to_have_count(1)


def test_strips_are_drawn_and_named_on_the_lay_plan_and_their_cord_is_on_the_list(maker: Maker) -> None:
    name = bring_in(maker.page, "job-reading-corner")
    maker.open_job(name)
    maker.go_to("cut")
    expect(maker.find("cut.shopping")).to_be_visible(timeout=ANSWER_MS)
    maker.touch(maker.page.get_by_role("button", name="ochre linen", exact=True))
    expect(maker.page.locator(".plan-strip").first).to_be_attached()
    expect(maker.page.locator(".plan-bias").first).to_be_attached()
    expect(maker.page.locator(".plan-strip-name").filter(has_text="piping").first).to_be_attached()
    assert maker.page.evaluate(CUT_OFF) == []
    assert maker.page.evaluate(SMALL_TARGETS) == []
    maker.press("cut.shopping")
    expect(maker.page.get_by_role("checkbox", name="piping cord")).to_have_count(3)
