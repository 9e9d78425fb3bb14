"""Remnants: corners cut out, notches, slants and crooked ends are kept clear of, and proofs stay true beside them."""

from random import Random

import pytest
from brute_force import shortest
from fit_checker import check_fit, most_sets
from layout_checker import check, check_cuts, touches
from proof_checker import accepts_proof

from plumpline.layout import (
    CannotLay,
    Flaw,
    Motif,
    Panel,
    Repeat,
    Strip,
    equal_sets,
    fit_sets,
    lay,
    lay_plan,
    straight_plan,
)


def random_outline(random, width):
    """A triangle, a notch like an L, or a bar with a slanted end, somewhere at or beyond the edges."""
    x, y = random.randrange(-2, width), random.randrange(-2, 6)
    w, h = random.randrange(2, 6), random.randrange(2, 6)
    triangle = [(x, y), (x + w, y), (x, y + h)]
    notch = [(x, y), (x + w, y), (x + w, y + 1), (x + 1, y + 1), (x + 1, y + h), (x, y + h)]
    bar = [(x, y), (x + w, y + h // 2), (x + w, y + h), (x, y + h)]
    return random.choice([triangle, triangle[::-1], notch, bar])


def random_remnant(random):
    width = random.randrange(4, 8)
    repeat = Repeat(random.choice([0, 2, 3]), random.choice([2, 3]), 1) if random.random() < 0.4 else None
    panels = tuple(
        Panel(
            f"p{i}", random.randrange(1, 5), random.randrange(1, 4), random.randrange(1, 3),
            random.choice([(0,), (0, 90)]), "m" if repeat and random.random() < 0.7 else None,
        )
        for i in range(random.randrange(1, 4))
    )
    flaws = [Flaw.outlined(random_outline(random, width)) for _ in range(random.randrange(1, 3))]
    if random.random() < 0.3:
        flaws.append(Flaw(random.randrange(-1, width), random.randrange(-1, 5), 2, 2))
    return Strip(
        width, panels, repeat, (Motif("m", random.randrange(3), random.randrange(3)),), flaws=tuple(flaws),
        gap=random.choice([0, 0, 1]),
    )


def test_plans_keep_clear_of_outlines_and_no_bound_lies_above_the_shortest():
    random = Random(7)
    proven = exhausted = beside_slants = 0
    for _ in range(80):
        strip = random_remnant(random)
        try:
            plan = lay_plan(strip, 15_000)
        except CannotLay:
            continue
        check(strip, plan)
        assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
        assert plan.at_least <= shortest(strip, plan.length) <= plan.length
        proven += plan.proven
        exhausted += plan.proof_name == "exhaustive"
        beside_slants += any(q for q in plan.placements for f in strip.flaws if _boxes_meet(q, f))
        check_cuts(strip, straight_plan(strip, 2_000))
    assert proven > 40
    assert exhausted > 5
    assert beside_slants > 20


def _boxes_meet(q, f):
    return q.x < f.x + f.w and f.x < q.x + q.w and q.y < f.y + f.h and f.y < q.y + q.h


def test_what_fits_a_remnant_is_what_brute_force_says():
    random = Random(3)
    some = 0
    for _ in range(40):
        strip = random_remnant(random)
        length = random.randrange(3, 9)
        sets = equal_sets(strip)
        try:
            found = fit_sets(strip, length, sets, 40_000)
        except CannotLay:
            continue
        check_fit(strip, length, sets, found)
        most = most_sets(strip, length, sets)
        assert len(found.sets) <= most
        assert not found.proven or len(found.sets) == most
        some += bool(found.sets) and found.proven
    assert some > 10


def test_the_third_row_no_longer_fits_where_the_counter_cut_two_inches_crooked():
    # 1 1/2 yd of 54 in cloth, one edge 2 in short of the other, is good for 52 in only (a sewer's account in public).
    squares = Strip(54, (Panel("face", 18, 18, 9),), flaws=(Flaw(0, 54, 54, 40),))
    found = fit_sets(squares, 54, equal_sets(squares), 20_000)
    assert found.fits
    crooked = Strip(54, (Panel("face", 18, 18, 9),), flaws=(Flaw.outlined([(0, 54), (54, 52), (54, 94), (0, 94)]),))
    found = fit_sets(crooked, 54, equal_sets(crooked), 20_000)
    check_fit(crooked, 54, equal_sets(crooked), found)
    assert (found.fits, len(found.sets)) == (False, 6)


def test_a_panel_lies_as_deep_in_a_slanted_corner_as_whole_units_allow():
    corner = Flaw.outlined([(0, 0), (20, 0), (0, 50)])
    strip = Strip(60, (Panel("long", 45, 30, 1),), flaws=(corner,))
    plan = lay_plan(strip, 20_000)
    check(strip, plan)
    assert plan.length == 13 + 30
    assert not touches(corner, 15, 13, 45, 30)
    assert touches(corner, 15, 12, 45, 30)


def test_a_notch_with_square_corners_leaves_the_search_exhaustive():
    notch = Flaw.outlined([(0, 0), (5, 0), (5, 2), (2, 2), (2, 4), (0, 4)])
    strip = Strip(7, (Panel("a", 5, 2, 1), Panel("b", 2, 3, 2), Panel("c", 3, 4, 1)), flaws=(notch,))
    plan = lay_plan(strip, 200_000)
    check(strip, plan)
    assert plan.length == plan.at_least == shortest(strip, plan.length)


def test_flaws_of_an_instance_may_be_outlines():
    instance = {
        "id": "remnant", "usable_width": 60, "panels": [{"id": "long", "w": 45, "h": 30, "qty": 1}],
        "flaws": [{"points": [[20, 0], [0, 50], [0, 0]]}, {"x": 50, "y": 0, "w": 10, "h": 4}],
    }
    assert lay(instance, work=20_000)["length"] == 43
    assert lay({**instance, "fit": 43}, work=20_000)["fits"]
    assert not lay({**instance, "fit": 42}, work=20_000)["fits"]


def test_an_outline_that_does_not_span_its_flaw_is_refused():
    strip = Strip(60, (Panel("long", 45, 30, 1),), flaws=(Flaw(0, 0, 20, 40, ((0, 0), (20, 0), (0, 50))),))
    with pytest.raises(ValueError, match="outline of a flaw"):
        lay_plan(strip, 100)
    with pytest.raises(ValueError, match="sides of an outline"):
        Flaw.outlined([(0, 0), (4, 4), (4, 0), (0, 4)])
