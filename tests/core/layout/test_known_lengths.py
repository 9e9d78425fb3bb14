"""Lay plans whose length is known from outside: published layouts, benchmark optima, the trade's own arithmetic."""

import pytest
from layout_checker import check, check_cuts
from proof_checker import accepts_proof

from plumpline.layout import FULL_WORK, Motif, Panel, Repeat, Strip, lay_plan, straight_plan


def laid(strip, work=FULL_WORK):
    """The length of a checked plan, and whether it is proven with a proof that holds."""
    plan = lay_plan(strip, work)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    return plan.length, plan.proven


def squares(count, side, width, **rules):
    return Strip(width, (Panel("front", side, side, count, **rules),))


# Common practice: 6 covers on 18 in inserts, cut at insert size (in sixteenths of an inch).


def test_twelve_panels_of_18_in_take_72_in_of_54_in_cloth():
    assert laid(squares(12, 18 * 16, 54 * 16)) == (72 * 16, True)


def test_half_an_inch_of_selvedge_costs_a_whole_yard():
    assert laid(squares(12, 18 * 16, 53 * 16 + 8)) == (108 * 16, True)


def test_nine_squares_lie_three_by_three():
    # Fault B42: known-feasible grids must be found.
    assert laid(squares(9, 18, 54)) == (54, True)


def test_the_grid_is_found_in_nanometres_too():
    inch = 25_400_000
    assert laid(squares(12, 18 * inch, 54 * inch)) == (72 * inch, True)


# Cases from the trade's question boards.


def test_a_15_in_panel_four_across_60_in_but_three_across_54_in():
    # Case A05: two 13 in cushions with 1 in seams, four panels of 15 in.
    assert laid(squares(4, 15, 60)) == (15, True)
    assert laid(squares(4, 15, 54)) == (30, True)


def test_a_24_in_cushion_takes_25_in_of_54_in_cloth_and_50_in_of_45_in_cloth():
    # Case A06: two panels of 25 in.
    assert laid(squares(2, 25, 54)) == (25, True)
    assert laid(squares(2, 25, 45)) == (50, True)


def test_four_velvets_need_55_and_a_half_in_of_width_for_three_across():
    # Case A14: eight panels of 18 1/2 in, in half inches.
    assert laid(squares(8, 37, 111)) == (111, True)
    assert laid(squares(8, 37, 110)) == (148, True)
    assert laid(squares(8, 37, 108)) == (148, True)


def bench_slab(turns):
    """Facts A5: a boxed seat 32 5/8 x 14 5/8 x 3 in with 5/8 in seams on 45 in cloth, in eighths of an inch."""
    sizes = [("face", 271, 127, 2), ("front", 271, 34, 1), ("zip", 271, 24, 2), ("side", 127, 34, 2)]
    return Strip(360, tuple(Panel(name, w, h, qty, turns) for name, w, h, qty in sizes))


def test_the_bench_slab_takes_46_and_a_quarter_in_with_the_grain():
    # Facts A5: the worked answer of a question board, proved optimal there.
    assert laid(bench_slab((0,))) == (46 * 8 + 2, True)


def test_the_bench_slab_takes_36_in_when_its_parts_may_turn():
    # Facts A5: a constraint solver's optimum.
    length, _ = laid(bench_slab((0, 90)))
    assert length == 36 * 8


# Facts A6 and section J: Hopper and Turton, EJOR 128 (2001): zero-waste layouts of this height exist.

HOPPER_TURTON = {
    "C1P1": (20, 20, "2,12 7,12 8,6 3,6 3,5 5,5 3,12 3,7 5,7 2,6 3,2 4,2 3,4 4,4 9,2 11,2"),
    "C1P3": (20, 20, "4,14 5,2 2,2 9,7 5,5 2,5 7,7 3,5 6,5 3,2 6,2 4,6 6,3 10,3 6,3 10,3"),
    "C2P2": (40, 15, "11,2 2,3 10,7 8,4 9,5 7,2 4,1 6,1 4,5 8,3 1,3 5,5 3,1 12,4 6,2 2,4 11,4 10,2 3,2 11,2 3,4 26,4 "
                     "8,4 3,2 6,2"),
    "C2P3": (40, 15, "12,7 7,7 7,1 5,1 3,2 6,2 7,2 5,2 3,1 6,1 12,6 9,6 12,2 7,2 10,3 4,1 5,1 16,3 5,3 4,2 5,2 10,3 "
                     "9,3 16,3 5,3"),
}


@pytest.mark.parametrize("name", HOPPER_TURTON)
def test_a_zero_waste_benchmark_is_laid_within_a_fifteenth_of_its_optimum(name):
    width, optimum, items = HOPPER_TURTON[name]
    sizes = [tuple(int(n) for n in item.split(",")) for item in items.split()]
    strip = Strip(width, tuple(Panel(str(i), w, h, 1) for i, (w, h) in enumerate(sizes)))
    length, _ = laid(strip)
    assert optimum <= length <= optimum * 16 // 15


# Facts A10: with a repeat along the roll, n rows lie whole repeats apart: (n - 1) x pitch + panel.


@pytest.mark.parametrize(("size", "repeat", "pitch"), [(96, 27, 108), (90, 27, 108), (118, 13, 130), (116, 25, 125)])
def test_rows_on_a_repeat_lie_whole_repeats_apart(size, repeat, pitch):
    panel = Panel("drop", 50, size, 3, motif="m", dx=25, dy=0)
    strip = Strip(54, (panel,), Repeat(0, repeat), (Motif("m", 0, 0),))
    assert laid(strip) == (2 * pitch + size, True)


def printed(count, start, **more):
    """The contract's printed cloth: 27 x 24.4925 in as washed, centred 18 in squares, in ten-thousandths of an inch."""
    panel = Panel("front", 180_000, 180_000, count, motif="m1", dx=90_000, dy=90_000)
    repeat = Repeat(270_000, 244_925)
    return Strip(540_000, (panel,), repeat, (Motif("m1", 135_000, 0),), start, **more)


def test_the_printed_cloth_takes_five_repeats_and_a_panel():
    # The contract's second example: two across, six rows, 5 x 24.4925 + 18 = 140.4625 in.
    strip = printed(12, "choose")
    assert laid(strip) == (1_404_625, True)
    # The first motif lies half a panel behind the squared end.
    assert lay_plan(strip, FULL_WORK).phase == 90_000


def test_a_measured_start_adds_what_lies_before_the_first_motif():
    # By hand: the first panel whose motif is at a whole repeat starts at 24.4925 - 9 in; 0 would need it at -9.
    assert laid(printed(12, "measured")) == (244_925 - 90_000 + 1_404_625, True)


# Half-drops worked out by hand.


def test_columns_of_a_half_drop_as_wide_as_a_panel_start_half_a_repeat_apart():
    # Two columns 10 apart, the second 3 lower; panels 10 x 6: rows at 0, 6, 12 and at 3, 9, 15; the 5th ends at 18.
    panel = Panel("front", 10, 6, 5, motif="m")
    strip = Strip(20, (panel,), Repeat(10, 6, 3), (Motif("m", 0, 0),))
    assert laid(strip) == (18, True)


def test_columns_of_a_half_drop_narrower_than_a_panel_take_turns():
    # Columns at 0, 6, 12, panels 10 wide and 6 long: 0 and 12 hold rows 0, 8, 16, 24; 6 is 4 lower but in the way.
    panel = Panel("front", 10, 6, 7, motif="m")
    strip = Strip(22, (panel,), Repeat(6, 8, 4), (Motif("m", 0, 0),))
    assert laid(strip) == (30, True)


def test_a_third_drop_chosen_start_lets_the_lower_column_begin():
    # Columns at 0 and 10 with the second 2 of 6 lower; only one panel: the cut may be made at its own edge.
    panel = Panel("front", 10, 6, 3, motif="m")
    strip = Strip(20, (panel,), Repeat(10, 6, 2), (Motif("m", 0, 1),), "choose")
    # Rows at 0, 6 in one column and at 2, 8 in the other: the third panel ends at 12; measured it would be 1 more.
    assert laid(strip) == (12, True)
    measured = Strip(20, (panel,), Repeat(10, 6, 2), (Motif("m", 0, 1),))
    assert laid(measured) == (13, True)


def test_alike_panels_share_a_place_that_leaves_two_columns():
    # Panels 18 wide on 54 with columns 27 apart: flush left there are two columns, so 6 panels take 3 rows of 20.
    strip = Strip(54, (Panel("front", 18, 15, 6, group="g"),), Repeat(27, 20))
    assert laid(strip) == (55, True)
    # Without the repeat they lie three abreast.
    assert laid(Strip(54, (Panel("front", 18, 15, 6, group="g"),))) == (30, True)


def test_alike_panels_of_two_sizes_meet_in_their_centres():
    # 10 x 10 and 6 x 6 with one centre on a repeat of 12 x 12: two columns of 12 in 24, so two rows: 12 + 8 = 20.
    panels = (Panel("large", 10, 10, 2, group="g"), Panel("small", 6, 6, 2, group="g"))
    assert laid(Strip(24, panels, Repeat(12, 12))) == (20, True)


def test_panels_turned_together_take_the_better_common_turn():
    # 9 x 5 three times on 10: upright 3 rows of 5, turned two abreast in 2 rows of 9; one turn for all: 15.
    panels = (Panel("a", 9, 5, 2, (0, 90), turn_group="c"), Panel("b", 9, 5, 1, (0, 90), turn_group="c"))
    assert laid(Strip(10, panels)) == (15, True)
    # On their own one may lie across and two stand beside each other: 5 + 9.
    assert laid(Strip(10, (Panel("a", 9, 5, 3, (0, 90)),))) == (14, True)


def test_an_off_centre_motif_is_shorter_with_half_turns():
    # The point lies 2 from one side of a panel 10 long: turned, the first row starts 2 lower than unturned.
    def strip(turns):
        return Strip(10, (Panel("a", 10, 10, 1, turns, "m", 5, 8),), Repeat(0, 20), (Motif("m", 0, 3),))

    assert laid(strip((0,))) == (25, True)
    assert laid(strip((0, 180))) == (11, True)


def test_a_motif_panel_turned_a_quarter_carries_its_point_along():
    # Railroaded: the point (2, 3) of a 6 x 10 panel lies at (7, 2) when turned by 90 and at (3, 4) by 270.
    panel = Panel("a", 6, 10, 1, (90,), "m", 2, 3)
    assert panel.point(90) == (7, 2)
    assert panel.point(270) == (3, 4)
    strip = Strip(20, (panel,), Repeat(30, 30), (Motif("m", 9, 5),))
    plan = lay_plan(strip, FULL_WORK)
    assert [(p.x, p.y, p.w, p.h) for p in plan.placements] == [(2, 3, 10, 6)]


def test_the_gap_lies_between_panels_and_not_at_the_edges():
    assert laid(Strip(32, (Panel("a", 10, 10, 6),), gap=1)) == (21, True)
    assert laid(Strip(31, (Panel("a", 10, 10, 6),), gap=1)) == (32, True)


def test_straight_cuts_of_a_grid_are_as_short_and_cut_in_order():
    strip = squares(12, 18, 54)
    plan = straight_plan(strip, FULL_WORK)
    check_cuts(strip, plan)
    assert (plan.length, plan.proven, plan.full_width_cuts) == (72, True, 4)
    assert [(c.kind, c.x, c.y, c.length) for c in plan.cuts[:3]] == [
        ("across", 0, 18, 54), ("along", 18, 0, 18), ("along", 36, 0, 18)
    ]


def test_straight_cuts_follow_a_print():
    strip = printed(12, "choose")
    plan = straight_plan(strip, FULL_WORK)
    check(strip, plan)
    check_cuts(strip, plan)
    assert (plan.length, plan.proven) == (1_404_625, True)


def test_of_two_straight_plans_the_one_with_fewer_lines_and_the_larger_offcut_is_kept():
    # 4 squares of 5 on 12: two rows of two, cut along at 5 and 10 both times, and one offcut of 2 x 10 beside them.
    strip = squares(4, 5, 12)
    plan = straight_plan(strip, FULL_WORK)
    assert {c.x for c in plan.cuts if c.kind == "along"} == {5, 10}
    assert {c.y for c in plan.cuts if c.kind == "across"} == {5, 10}
