"""Round and straight-sided panels: plans keep the rules by the shapes themselves, bounds are proven and stay below."""

from dataclasses import replace
from functools import cache
from itertools import product
from math import cos, pi, sin, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from layout_checker import check, check_cuts
from shape_checker import apart, body
from shape_proofs import accepts_shape_proof

from plumpline.layout import Budget, CannotLay, Flaw, Motif, Panel, Placement, Repeat, Strip, lay_plan, straight_plan
from plumpline.layout.outlines import outline_of

WORK = 15_000
OUTLINES = [
    [(0, 0), (6, 0), (4, 3), (2, 3)],
    [(0, 0), (5, 0), (5, 2), (2, 2), (2, 4), (0, 4)],
    [(0, 0), (4, 0), (4, 3)],
    [(2, 0), (4, 0), (4, 2), (6, 2), (6, 4), (0, 4), (0, 2), (2, 2)],
    [(0, 0), (1, 0), (9, 5), (8, 5)],
    [(0, 0), (2, 1), (1, 1)],
]


def outlined(name, corners, qty, turns=(0,)):
    outline = outline_of(corners)
    return Panel(name, max(x for x, _ in outline), max(y for _, y in outline), qty, turns, shape=outline)


def rounds(diameter, qty, width, gap=0):
    return Strip(width, (Panel("round", diameter, diameter, qty, shape="circle"),), gap=gap)


@st.composite
def shaped(draw, kinds, copies, gaps):
    width = draw(st.integers(6, 20))
    panels = []
    for number in range(draw(st.integers(1, kinds))):
        shape, qty = draw(st.sampled_from(["rect", "circle", "circle", "outline"])), draw(st.integers(1, copies))
        turns = draw(st.sampled_from([(0,), (0, 180), (0, 90), (0, 90, 180, 270)]))
        if shape == "outline":
            panel = outlined(f"p{number}", draw(st.sampled_from(OUTLINES)), qty, turns)
        else:
            w, h = draw(st.integers(1, 6)), draw(st.integers(1, 5))
            panel = Panel(f"p{number}", w, w if shape == "circle" else h, qty, turns, shape=shape)
        panels.append(replace(panel, turn_group=draw(st.sampled_from([None, None, "t"]))))
    return Strip(width, tuple(panels), gap=draw(st.sampled_from(gaps)))


def planned(strip, work=WORK):
    """A plan of the strip after every claim of it was checked; None where there is none."""
    try:
        plan = lay_plan(strip, work)
    except CannotLay:
        return None
    check(strip, plan)
    assert accepts_shape_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    return plan


@settings(max_examples=40, deadline=None, derandomize=True)
@given(shaped(kinds=4, copies=5, gaps=(0, 0, 1, 2)))
def test_any_mixture_of_shapes_is_laid_by_the_rules_with_a_bound_that_is_proven(strip):
    planned(strip, 6_000)


def least_length(strip, most):
    """The least length of any plan of a tiny strip without turn groups, by trying every place of every panel."""
    copies = [p for p in strip.panels for _ in range(p.qty)]

    @cache
    def clear(first, second, dx, dy):
        (p, turn), (q, other) = first, second
        return apart(body(p, Placement("", 1, 0, 0, 0, 0, turn)), body(q, Placement("", 1, dx, dy, 0, 0, other)), 0)

    def fits(length, laid):
        if len(laid) == len(copies):
            return True
        panel, before = copies[len(laid)], laid[-1:]
        for turn in panel.turns:
            w, h = (panel.w, panel.h) if turn % 180 == 0 else (panel.h, panel.w)
            for y, x in product(range(length - h + 1), range(strip.width - w + 1)):
                if before and before[0][0] is panel and (y, x) < before[0][2:]:
                    continue
                if all(clear((p, t), (panel, turn), x - a, y - b) for p, t, b, a in laid) and fits(
                    length, [*laid, (panel, turn, y, x)]
                ):
                    return True
        return False

    while fits(most - 1, []):
        most -= 1
    return most


@settings(max_examples=40, deadline=None, derandomize=True)
@given(shaped(kinds=2, copies=2, gaps=(0,)))
def test_no_bound_is_above_the_shortest_plan_there_is(strip):
    strip = replace(strip, width=min(strip.width, 11), panels=tuple(replace(p, turn_group=None) for p in strip.panels))
    plan = planned(strip, 4_000)
    if plan is not None:
        assert plan.at_least <= least_length(strip, plan.length) <= plan.length


def test_staggered_rows_of_equal_circles_are_as_short_as_geometry_allows():
    """Five and four by turns on five diameters: each row lies √3/2 diameters behind the one before it."""
    plan = planned(rounds(1000, 23, 5000))
    assert plan.length == 1000 + 4 * 867
    assert 866 < 1000 * sqrt(3) / 2 < 867


def test_a_row_spread_over_the_width_lets_the_next_one_sink_deeper():
    plan = planned(rounds(1000, 10, 4750))
    spacing = 2 * 3750 / 7
    assert plan.length <= 1000 + 2 * (1 + sqrt(1000**2 - (spacing / 2) ** 2))


def test_turned_hexagons_lay_one_column_more_where_the_width_allows_it():
    """Six columns √3/2 diameters apart need 1000 + 5 · 867 in whole units; a grid has five there."""
    plan = planned(rounds(1000, 24, 5335))
    assert plan.length <= 4500
    assert planned(rounds(1000, 24, 5334)).length > 4500


def test_one_full_row_and_a_single_column_are_proven():
    assert [planned(rounds(457, 3, width)).length for width in (457, 1371)] == [3 * 457, 457]
    assert all(planned(rounds(457, 3, width)).proven for width in (457, 1371))


def test_a_zigzag_of_circles_is_proven_to_the_unit():
    plan = planned(rounds(1000, 7, 1600, gap=10))
    assert plan.proven
    assert plan.length == 1000 + 6 * 813
    assert 812 < sqrt(1010**2 - 600**2) < 813


@settings(max_examples=40, deadline=None, derandomize=True)
@given(st.integers(2, 60), st.integers(1, 30), st.integers(0, 400), st.integers(0, 3))
def test_equal_circles_are_never_longer_than_their_squares(diameter, qty, more, gap):
    strip = rounds(diameter, qty, diameter + more, gap)
    across = (strip.width + gap) // (diameter + gap)
    assert planned(strip, 1_000).length <= -(-qty // across) * (diameter + gap) - gap


def test_circles_obey_motif_and_alike_rules_and_keep_off_flaws():
    repeat, motifs = Repeat(7, 9), (Motif("m", 1, 2),)
    rose = Panel("rose", 6, 6, 5, motif="m", dx=3, dy=3, shape="circle")
    alike = Panel("alike", 4, 4, 3, group="g", shape="circle")
    planned(Strip(20, (rose, alike), repeat, motifs))
    planned(Strip(20, (rose, alike), repeat, motifs, flaws=(Flaw(3, 3, 5, 5),)))
    notch = Flaw.outlined([(0, 0), (9, 0), (0, 12)])
    planned(Strip(20, (Panel("round", 6, 6, 5, shape="circle"),), flaws=(Flaw(3, 13, 5, 5), notch)))


def test_circles_on_a_motif_that_has_one_column_are_proven_to_take_a_repeat_each():
    # Every 70 across from 69 on: of 138 only the middle will do, so five motifs lie four repeats of 64 apart.
    face = Panel("face", 118, 48, 1, motif="m", dx=59, dy=24)
    ends = (Panel(name, 20, 20, 2, motif="m", dx=10, dy=9, shape="circle") for name in ("left end", "right end"))
    plan = planned(Strip(138, (face, *ends), Repeat(70, 64), (Motif("m", 69, 0),), "choose"))
    assert 4 * 64 < plan.at_least <= plan.length == 4 * 64 + 20


def test_the_straight_plan_of_shapes_cuts_their_boxes_apart_with_a_bound_that_holds_for_the_shapes():
    strip = Strip(20, (Panel("round", 6, 6, 7, shape="circle"), outlined("wedge", OUTLINES[0], 4, (0, 180))))
    plan = straight_plan(strip, WORK)
    check(strip, plan)
    check_cuts(strip, plan)
    assert accepts_shape_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)


@pytest.mark.parametrize("panel", [
    Panel("oval", 6, 5, 1, shape="circle"),
    Panel("round", 6, 6, 1, shape="circle", turned=(6, 6)),
    Panel("wedge", 6, 4, 1, shape=outline_of(OUTLINES[0])),
])
def test_a_shape_that_does_not_fill_its_extents_is_refused(panel):
    with pytest.raises(ValueError, match=panel.id):
        lay_plan(Strip(20, (panel,)), WORK)


def test_a_shorter_plan_in_which_shapes_interlock_is_reported_when_it_is_found():
    lengths = []
    plan = lay_plan(rounds(1000, 23, 5000), Budget(WORK, report=lambda better: lengths.append(better.length)))
    assert lengths[-1] == plan.length < 5000


def test_trapezoids_lie_head_to_tail_where_they_may_be_turned_by_half():
    """600 wide below and 300 above: the second takes 450 more, so three lie abreast on 1500, in four rows of 400."""
    wedge = [(0, 0), (600, 0), (450, 400), (150, 400)]
    turned, kept = (planned(Strip(1500, (outlined("wedge", wedge, 12, turns),))) for turns in ((0, 180), (0,)))
    assert turned.length == 4 * 400
    assert turned.length < kept.length <= 6 * 400


def test_ls_interlock_and_leave_less_cloth_than_their_boxes_take():
    corners = [(0, 0), (500, 0), (500, 200), (200, 200), (200, 600), (0, 600)]
    plan = planned(Strip(1500, (outlined("ell", corners, 12, (0, 180)),)))
    assert plan.length <= 1800 < 4 * 600


def test_a_small_panel_lies_in_the_notch_of_a_large_one():
    notched = [(0, 0), (900, 0), (900, 600), (600, 600), (600, 200), (300, 200), (300, 600), (0, 600)]
    plan = planned(Strip(900, (outlined("notched", notched, 2), Panel("zip", 300, 400, 1), Panel("flap", 290, 390, 1))))
    assert plan.length == 2 * 600


def test_circles_of_two_sizes_nest_closer_than_their_squares():
    strip = Strip(1370, (Panel("a", 400, 400, 8, shape="circle"), Panel("b", 300, 300, 12, shape="circle")))
    boxes = lay_plan(Strip(1370, (Panel("a", 400, 400, 8), Panel("b", 300, 300, 12))), WORK)
    assert planned(strip, 8 * WORK).length < boxes.length


def test_panels_that_turn_together_are_turned_alike_where_outlines_interlock():
    panels = [replace(outlined(name, OUTLINES[0], 4, (0, 180)), turn_group="t") for name in "ab"]
    planned(Strip(13, tuple(panels)))


def test_the_same_work_gives_the_same_plan_of_shapes():
    strip = Strip(23, (outlined("wedge", OUTLINES[0], 5, (0, 180)), Panel("round", 7, 7, 4, shape="circle")))
    assert lay_plan(strip, WORK) == lay_plan(strip, WORK)
    assert lay_plan(strip, WORK, seed=1).length > 0


def test_small_jobs_of_outlines_are_laid_the_shortest_way_there_is():
    strip = Strip(8, (outlined("wedge", OUTLINES[0], 2, (0, 180)), outlined("ell", OUTLINES[1], 1, (0, 180))))
    plan = planned(strip, 30_000)
    assert plan.length == least_length(strip, plan.length)


def test_a_traced_outline_of_many_corners_has_its_plan_at_once():
    """A disc of 48 corners: its plan may use no more work than it is given, and its bound costs little."""
    corners = [(round(500 + 500 * cos(k * pi / 24)), round(500 + 500 * sin(k * pi / 24))) for k in range(48)]
    budget = Budget(WORK)
    plan = lay_plan(Strip(2100, (outlined("disc", corners, 6),)), budget)
    assert plan.length <= 3000
    assert plan.at_least >= 1000
    assert budget.spent < 10 * WORK
