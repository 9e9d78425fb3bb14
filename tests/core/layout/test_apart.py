"""Panels that go on where others leave off: their common point lies apart from their middles, or beyond them."""

import pytest
from layout_checker import check
from proof_checker import accepts_proof

from plumpline.layout import CannotLay, Motif, Panel, Repeat, Strip, lay_plan

WORK = 20_000


def laid(strip):
    plan = lay_plan(strip, WORK)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    return plan


def at(plan):
    return {placed.panel: (placed.x, placed.y) for placed in plan.placements}


def test_a_panel_goes_on_across_where_another_one_ends():
    """A repeat of 10 both ways; a is 6 wide and sewn at 1 from its edges, so that its right seam lies at 5.

    What follows has its left seam, 1 in, at the same place of the repeat: its corner lies 4 further, modulo 10. From
    its own middle at 3 the middle of a lies 4 to the left. On a cloth of 20 they lie at 0 and 14, in one row.
    """
    panels = (Panel("a", 6, 6, 1, group="g"), Panel("b", 6, 6, 1, group="g", apart=(-4, 0)))
    plan = laid(Strip(20, panels, Repeat(10, 10)))
    (ax, ay), (bx, by) = at(plan)["a"], at(plan)["b"]
    assert ((bx - ax) % 10, (by - ay) % 10, plan.length, plan.proven) == (4, 0, 6, True)


def test_a_panel_goes_on_below_another_one_that_stands_on_a_motif():
    """Face a of 8 × 8 has its motif in the middle, (4, 4); band b of 8 × 3 is sewn on below it, seams of 1.

    The seam of a lies at y = 1 of a and at 2 of b, so a's motif is 3 above that, at 5: two beyond the end of b. On
    motif rows at 4, 14, 24 … b begins at 9 and a at 0, on one column: 12 in all.
    """
    face = Panel("a", 8, 8, 1, motif="m", dx=4, dy=4)
    band = Panel("b", 8, 3, 1, motif="m", dx=4, dy=2, apart=(0, 3))
    plan = laid(Strip(10, (face, band), Repeat(10, 10), (Motif("m", 5, 4),)))
    assert at(plan) == {"a": (1, 0), "b": (1, 9)}
    assert (plan.length, plan.proven) == (12, True)


@pytest.mark.parametrize(("turn", "middle"), [(0, (3, 4)), (90, (-2, 3)), (180, (1, -2)), (270, (4, 1))])
def test_what_lies_apart_turns_with_its_panel(turn, middle):
    """Of a panel of 4 × 2 the middle is (2, 1), turned a quarter (1, 2); (1, 3) from there, turned once (-3, 1)."""
    assert Panel("a", 4, 2, 1, apart=(1, 3)).middle(turn) == middle


def test_panels_that_have_no_place_together_are_refused():
    """Two of 9 on a cloth of 10 can begin at 0 or 1 only; the second has to begin 5 further on in a repeat of 20."""
    panels = (Panel("a", 9, 2, 1, group="g"), Panel("b", 9, 2, 1, group="g", apart=(-5, 0)))
    with pytest.raises(CannotLay) as refusal:
        lay_plan(Strip(10, panels, Repeat(20, 0)), WORK)
    assert refusal.value.code == "no-motif-column"
