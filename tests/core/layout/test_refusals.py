"""What cannot be laid is refused with a reason, never relaxed in silence."""

import pytest

from plumpline.layout import CannotLay, Flaw, Motif, Panel, Repeat, Strip, lay_plan, straight_plan

REPEAT, MOTIFS = Repeat(40, 30), (Motif("m", 5, 0),)


def refused(strip):
    """Code and panel of the refusal, the same from both planners."""
    codes = []
    for planner in (lay_plan, straight_plan):
        with pytest.raises(CannotLay) as caught:
            planner(strip, 1_000)
        codes.append((caught.value.code, caught.value.panel))
    assert codes[0] == codes[1]
    return codes[0]


def test_a_panel_wider_than_the_cloth_either_way_is_too_wide():
    assert refused(Strip(54, (Panel("a", 18, 18, 1), Panel("b", 60, 77, 1)))) == ("too-wide", "b")


def test_a_panel_that_would_fit_turned_is_refused_as_such():
    assert refused(Strip(54, (Panel("b", 60, 20, 1),))) == ("too-wide-unless-turned", "b")


def test_a_turned_size_of_its_own_counts():
    assert refused(Strip(54, (Panel("b", 60, 20, 1, turned=(55, 60)),))) == ("too-wide", "b")


def test_a_motif_that_would_push_the_panel_over_the_edge_has_no_column():
    panel = Panel("b", 30, 20, 1, motif="m", dx=15, dy=10)
    assert refused(Strip(54, (panel,), REPEAT, MOTIFS)) == ("no-motif-column", "b")


def test_panels_turned_together_need_a_turn_in_common():
    panels = (Panel("a", 18, 18, 1, (0,), turn_group="t"), Panel("b", 18, 20, 1, (90,), turn_group="t"))
    assert refused(Strip(54, panels)) == ("rules-contradict", "a")


@pytest.mark.parametrize(
    "strip",
    [
        Strip(0, (Panel("a", 1, 1, 1),)),
        Strip(10, ()),
        Strip(10, (Panel("a", 0, 1, 1),)),
        Strip(10, (Panel("a", 1, 1, 0),)),
        Strip(10, (Panel("a", 1, 1, 1, ()),)),
        Strip(10, (Panel("a", 1, 1, 1, (45,)),)),
        Strip(10, (Panel("a", 1, 1, 1, motif="x"),), REPEAT, MOTIFS),
        Strip(10, (Panel("a", 1, 1, 1, motif="m"),), None, MOTIFS),
        Strip(10, (Panel("a", 1, 1, 1, motif="m", group="g"),), REPEAT, MOTIFS),
        Strip(10, (Panel("a", 1, 1, 1),), start="choose", flaws=(Flaw(1, 1, 1, 1),)),
    ],
)
def test_a_strip_that_makes_no_sense_is_refused(strip):
    with pytest.raises(ValueError, match=r"a: sizes|a: a motif|a strip|flaws"):
        lay_plan(strip, 1_000)
