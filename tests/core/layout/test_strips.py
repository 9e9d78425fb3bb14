"""Piping: straight and bias strips from what the panels leave, against the checker, the trade's figures and bounds."""

from dataclasses import replace
from fractions import Fraction
from math import ceil, sqrt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from proof_checker import accepts_proof
from shape_checker import shape_area
from strip_checker import check_piping, yields

from plumpline.layout import Budget, Flaw, Panel, Piping, Strip, lay, lay_plan, straight_plan
from plumpline.layout.bias import bias_lengths
from plumpline.layout.joined import joined
from plumpline.layout.solve import planner_of

WORK = 60_000
INCH = 1000


def laid(strip, work=WORK):
    """A plan with piping after every claim of it was checked."""
    plan = lay_plan(strip, work)
    check_piping(strip, plan)
    if plan.proof_name == "area-with-strips":
        area = sum(p.qty * p.w * p.h for p in strip.panels) + sum(p.width * p.length * p.rings for p in strip.piping)
        assert ceil(Fraction(area, strip.width)) == plan.at_least
    elif all(p.shape == "rect" for p in strip.panels):
        assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    return plan


def with_piping(width, panels, *piping, **rules):
    return Strip(width * INCH, tuple(Panel(f"p{i}", w * INCH, h * INCH, n) for i, (w, h, n) in enumerate(panels)),
                 piping=piping, **rules)


@settings(max_examples=60, deadline=None, derandomize=True)
@given(
    st.integers(1, 3), st.integers(6, 50), st.integers(0, 2), st.integers(1, 4), st.booleans(),
    st.lists(st.tuples(st.integers(0, 40), st.integers(2, 5)), max_size=2),
)
def test_rings_close_with_no_join_where_they_are_to_be_clear(width, length, join, rings, bias, spans):
    clear = tuple((low, low + size) for low, size in sorted(spans) if low + size < length)
    if len(clear) > 1 and clear[1][0] <= clear[0][1]:
        clear = clear[:1]
    piping = Piping(width, length, join, bias, rings, clear)
    laid(Strip(15, (Panel("a", 9, 8, 2), Panel("b", 4, 5, 1)), piping=(piping,)), 8_000)


def test_a_join_that_would_lie_at_a_corner_is_moved_away_from_it():
    # 25 in strips: the first join would lie at 25 in, next to the corner at 26: it is cut back to 23.
    corner = Piping(2 * INCH, 48 * INCH, clear=((23 * INCH, 29 * INCH),))
    ring = joined(corner, [25 * INCH] * 2)
    assert ring.rings == ((23 * INCH, 25 * INCH),)
    assert joined(replace(corner, length=50 * INCH), [25 * INCH] * 2).short == 2 * INCH


def test_strips_too_short_to_lead_over_a_corner_are_left_out():
    ring = Piping(2, 26, 1, clear=((10, 20),))
    assert joined(ring, [10, 5, 5, 17]).rings == ((10, 17),)
    assert joined(ring, [10, 5, 5, 5]).short == 26 - 10


@settings(max_examples=35, deadline=None, derandomize=True)
@given(
    st.lists(st.tuples(st.integers(1, 9), st.integers(1, 9), st.integers(1, 3)), min_size=1, max_size=4),
    st.lists(st.builds(Piping, st.integers(1, 5), st.integers(1, 60), st.integers(0, 3), st.booleans()),
             min_size=1, max_size=2),
    st.integers(0, 2), st.booleans(),
)
def test_piping_keeps_off_panels_and_flaws_and_is_as_long_as_asked(panels, piping, gap, flawed):
    flaws = (Flaw(2, 1, 3, 4), Flaw(5, 30, 2, 2)) if flawed else ()
    wanted = tuple(Panel(f"p{i}", w, h, n) for i, (w, h, n) in enumerate(panels))
    laid(Strip(11, wanted, gap=gap, flaws=flaws, piping=tuple(piping)), 8_000)


def test_strips_that_fit_into_what_is_left_over_cost_no_cloth():
    plan = laid(with_piping(54, [(22, 20, 4)], Piping(2 * INCH, 200 * INCH)))
    assert plan.length == 40 * INCH
    assert plan.proven
    assert plan.piping[0].joins == 4


def test_the_fewest_joins_are_taken_where_the_cloth_suffices_anyway():
    plan = laid(with_piping(54, [(22, 20, 4)], Piping(2 * INCH, 40 * INCH)))
    assert plan.piping[0].joins == 0


def test_a_band_at_the_end_is_no_longer_than_the_trades_count_of_strips():
    """950 in of 1 1/2 in strip on 54 in cloth: 18 strips across, 27 in (upholsterers' forum); by area 26.39."""
    plan = laid(with_piping(54, [(54, 10, 1)], Piping(3 * INCH // 2, 950 * INCH)))
    assert 26.38 * INCH < plan.length - 10 * INCH <= 27 * INCH


@pytest.mark.parametrize(("join", "trade"), [(0, 40.5), (4.5, 45)])
def test_strips_with_and_without_mitred_joins_take_no_more_than_the_published_answers(join, trade):
    """360 in of 4 1/2 in strip on 42 in cloth: 9 strips = 40 1/2 in, 10 = 45 in with mitred joins (question page)."""
    piping = Piping(int(4.5 * INCH), 360 * INCH, int(join * INCH))
    plan = laid(with_piping(42, [(42, 10, 1)], piping))
    assert 360 * 4.5 / 42 * INCH <= plan.length - 10 * INCH <= trade * INCH


def test_a_second_piping_is_cut_from_what_the_first_leaves():
    plan = laid(with_piping(54, [(22, 20, 2)], Piping(2 * INCH, 60 * INCH), Piping(INCH, 60 * INCH, 500)))
    assert [cut.length >= 60 * INCH for cut in plan.piping] == [True, True]
    assert plan.length == 20 * INCH


def test_the_bias_yield_of_a_piece_is_near_the_published_one_and_never_above():
    """96 × 20 cm, 2 cm strip, shortest piece 10 cm: 934.79 cm (NIMI, Dress Making, p. 220), without loss at joins."""
    lengths = bias_lengths(960_000, 200_000, 20_000, 0)
    total = sum(length for length in lengths if length >= 100_000)
    assert 0.97 * 934.79 < total / 10_000 <= 934.79


@pytest.mark.parametrize(("side", "floor"), [(12, 0.75), (20, 0.85), (36, 0.9), (54, 0.94)])
def test_a_square_yields_less_bias_than_its_area_and_as_much_as_a_bench_gets(side, floor):
    """Squares of 12, 20 and 36 in at 2 in: at most 72, 200, 648 in; of 54 in a bench gets "about 38 yd" of 40.5."""
    share = sum(bias_lengths(side * INCH, side * INCH, 2 * INCH, 0)) / (side * side // 2 * INCH)
    assert floor < share < 1


def test_the_longest_bias_strip_on_the_cloth_is_shorter_than_its_diagonal():
    """54 in cloth: 76.37 in for a strip of no width (upholsterers' forum)."""
    longest = bias_lengths(54 * INCH, 60 * INCH, INCH, 0)[0]
    assert 0.97 * 76.37 < longest / INCH <= 54 * sqrt(2)


@settings(max_examples=200, deadline=None, derandomize=True)
@given(st.integers(1, 3000), st.integers(1, 3000), st.integers(20, 400), st.integers(0, 90))
def test_no_rectangle_is_said_to_yield_more_bias_than_a_cutting_of_it_gives(across, along, width, join):
    lengths = bias_lengths(across, along, width, join)
    assert yields(across, along, width, lengths)
    assert all(length > join for length in lengths)
    assert sum(lengths) * width <= shape_area([(0, 0), (across, 0), (across, along), (0, along)])


def test_bias_for_a_set_takes_little_more_cloth_than_the_published_formula():
    """5 m of 2.5 cm strip, shortest piece 10 cm, on 86 cm: 15.12 cm (NIMI p. 220); joins then cost nothing."""
    strip = Strip(860_000, (Panel("p", 860_000, 10_000, 1),), piping=(Piping(25_000, 5_000_000, 0, True),))
    plan = laid(strip)
    assert plan.proof_name == "area-with-strips"
    assert 5_000_000 * 25_000 / 860_000 < plan.length - 10_000 < 1.05 * 151_200


def test_the_door_reads_strips_and_answers_with_their_pieces():
    answer = lay({
        "id": "piped", "usable_width": 54, "panels": [{"id": "a", "w": 22, "h": 20, "qty": 4}],
        "strips": [{"width": 2, "length": 100, "join": 1}, {"width": 2, "length": 30, "bias": True}],
    }, work=WORK)
    straight, bias = answer["strips"]
    assert straight["length"] >= 100
    assert {piece["grain"] for piece in straight["pieces"]} <= {"along", "across"}
    assert {piece["grain"] for piece in bias["pieces"]} == {"bias"}


@pytest.mark.parametrize("piping", [
    Piping(0, 5), Piping(5, 0), Piping(5, 5, -1), Piping(12, 40, 10), Piping(2, 40, 15, True),
    Piping(5, 5, rings=0), Piping(2, 40, 1, True, 1, ((5, 19),))
])
def test_piping_that_no_length_of_cloth_gives_is_refused(piping):
    with pytest.raises(ValueError, match="piping"):
        lay_plan(Strip(10, (Panel("a", 4, 4, 1),), piping=(piping,)), WORK)


def test_piping_wider_than_the_cloth_lies_across_it():
    plan = laid(Strip(10, (Panel("a", 4, 4, 1),), piping=(Piping(12, 25, 1),)))
    assert {piece.grain for piece in plan.piping[0].pieces} == {"across"}


def test_a_straight_cut_plan_with_piping_is_refused():
    with pytest.raises(ValueError, match="piping"):
        straight_plan(Strip(10, (Panel("a", 4, 4, 1),), piping=(Piping(2, 5),)), WORK)


def test_a_plan_looked_at_early_has_all_its_piping_beyond_the_panels_and_flaws():
    strip = with_piping(54, [(20, 11, 5), (13, 17, 7)], Piping(2 * INCH, 90 * INCH), flaws=(Flaw(9, 95_000, 10, 10),))
    planner = planner_of(strip, Budget(WORK))
    steps = planner.steps()
    next(steps)
    early = planner.plan()
    check_piping(strip, early)
    assert min(piece.y for piece in early.piping[0].pieces) >= 95_010
    assert sum(1 for _ in steps) > 1
    assert planner.plan().length < early.length


def test_strips_cut_in_smaller_slices_of_work_are_the_same_strips(monkeypatch):
    strip = with_piping(54, [(20, 11, 5), (13, 17, 7)], Piping(2 * INCH, 90 * INCH, rings=4))
    whole = list(planner_of(strip, Budget(8_000)).steps())
    usual = laid(strip, 8_000)
    monkeypatch.setattr("plumpline.layout.strips._SLICE", 5)
    assert len(list(planner_of(strip, Budget(8_000)).steps())) > len(whole)
    assert laid(strip, 8_000) == usual
