"""Seats taped by sides and diagonals: they close, or the answer says which measure cannot be right."""

import random
from fractions import Fraction

import pytest

from plumpline.geometry import area, at_angle, distance
from plumpline.measured_corners import Closed, Doubt, Measure, Open, close

IN = 25_400_000
EIGHTH = IN // 8

#: A maker's bay: 90 in wide at the front, 60 at the back, 31 deep. By Pythagoras its sides are √(15² + 31²) = 34.44 in
#: and its diagonals √(75² + 31²) = 81.15 in.
BAY = ((0, 0), (90 * IN, 0), (75 * IN, 31 * IN), (15 * IN, 31 * IN))

#: An L-shaped seat; corner 3 turns inwards.
ELL = tuple((x * IN, y * IN) for x, y in ((0, 0), (60, 0), (60, 20), (24, 20), (24, 50), (0, 50)))


FIFTHS = [Fraction(i, 5) for i in range(5)]


def apart(corners, others):
    """By how much the worst of the corners is off, in nm."""
    return max(distance(one, other) for one, other in zip(corners, others, strict=True))


def sides_of(corners):
    return [distance(one, other) for one, other in zip(corners, [*corners[1:], corners[0]], strict=True)]


def taped(corners, *pairs):
    return [Measure(one, other, distance(corners[one], corners[other])) for one, other in pairs]


def test_a_maker_s_bay_closes_from_four_sides_and_two_diagonals():
    """Sides to the nearest 1/8 in: 90, 34 1/2, 60, 34 1/2; diagonals 81 1/8."""
    sides = [90 * IN, 69 * IN // 2, 60 * IN, 69 * IN // 2]
    seat = close(sides, [Measure(0, 2, 649 * EIGHTH), Measure(1, 3, 649 * EIGHTH)], (), within=EIGHTH)
    assert isinstance(seat, Closed)
    assert sides_of(seat.corners) == pytest.approx(sides, abs=2)
    assert apart(seat.corners, BAY) < IN // 4


def test_one_diagonal_is_enough_and_none_is_not():
    assert apart(close(sides_of(BAY), taped(BAY, (0, 2)), (), 0).corners, BAY) <= 2
    assert close(sides_of(BAY), [], (), 0) == Open("not-held", 2)


def test_a_diagonal_longer_than_the_way_round_is_named_with_that_way():
    """90 in and 34 1/2 in make 124 1/2 in round the corner: no diagonal is longer."""
    sides = [90 * IN, 69 * IN // 2, 60 * IN, 69 * IN // 2]
    long = Measure(0, 2, 130 * IN)
    right = Measure(1, 3, 649 * EIGHTH)
    assert close(sides, [long, right], (), EIGHTH) == Open("too-long", None, (Doubt(long, 189 * IN // 2, "at-most"),))


def test_a_side_read_an_inch_short_is_among_the_measures_in_doubt_with_its_true_length():
    sides = sides_of(BAY)
    sides[1] -= IN
    seat = close(sides, taped(BAY, (0, 2), (1, 3)), (), EIGHTH)
    assert seat.code == "disagree"
    changes = [abs(doubt.would_be - doubt.measure.length) for doubt in seat.doubts]
    assert changes == sorted(changes)
    assert all(change > EIGHTH for change in changes)
    (short,) = [doubt for doubt in seat.doubts if (doubt.measure.one, doubt.measure.other) == (1, 2)]
    assert short.would_be == pytest.approx(distance(BAY[1], BAY[2]), abs=5)


def test_with_two_measures_to_spare_the_wrong_one_stands_alone():
    """A five-sided seat with all five diagonals: eight of its ten measures are enough, so one slip shows itself."""
    corners = tuple(at_angle((0, 0), 30 * IN, angle) for angle in FIFTHS)
    pairs = [(0, 2), (1, 3), (2, 4), (0, 3), (1, 4)]
    for wrong in range(5):
        diagonals = taped(corners, *pairs)
        slip = diagonals[wrong]
        diagonals[wrong] = Measure(slip.one, slip.other, slip.length - IN)
        seat = close(sides_of(corners), diagonals, (), EIGHTH)
        assert [doubt.measure for doubt in seat.doubts] == [diagonals[wrong]]
        assert seat.doubts[0].would_be == pytest.approx(slip.length, abs=10)


def test_two_slips_leave_no_single_measure_to_blame():
    corners = tuple(at_angle((0, 0), 30 * IN, angle) for angle in FIFTHS)
    diagonals = taped(corners, (0, 2), (1, 3), (2, 4), (0, 3), (1, 4))
    slips = [Measure(d.one, d.other, d.length - IN * (1 + i)) for i, d in enumerate(diagonals[:2])]
    seat = close(sides_of(corners), slips + diagonals[2:], (), EIGHTH)
    assert seat == Open("disagree")


def test_measures_that_do_not_meet_are_in_doubt_like_those_that_disagree():
    """Sides of 10 in and diagonals of 19 and 19: each fits its own triangle, both together no square."""
    seat = close([10 * IN] * 4, [Measure(0, 2, 19 * IN), Measure(1, 3, 19 * IN)], (), EIGHTH)
    assert seat.code == "disagree"
    would_be = {(d.measure.one, d.measure.other): d.would_be for d in seat.doubts}
    # A rhombus: (19/2)² + (d/2)² = 10², so the other diagonal is 2 √(100 - 90.25) = 6.245 in.
    assert would_be[0, 2] == would_be[1, 3] == pytest.approx(6.244998 * IN, rel=1e-6)


@pytest.mark.parametrize("pairs", [[(0, 2), (0, 3), (0, 4)], [(2, 4), (1, 4), (0, 4)], [(2, 4), (1, 4), (1, 5)]])
def test_an_l_shaped_seat_closes_by_diagonals_inside_it_or_across_its_notch(pairs):
    seat = close(sides_of(ELL), taped(ELL, *pairs), (3,), EIGHTH)
    assert apart(seat.corners, ELL) <= 5


#: A window seat whose back is notched a little round a pillar: seen from corner 0, corner 4 stands before corner 3.
PILLAR = tuple((x * IN, y * IN) for x, y in ((0, 0), (60, 0), (60, 30), (40, 30), (28, 22), (20, 30), (0, 30)))


@pytest.mark.parametrize("spare", [(), ((2, 5),), ((3, 5), (1, 6))])
@pytest.mark.parametrize("seat", [PILLAR, tuple((60 * IN - x, y) for x, y in (PILLAR[1], PILLAR[0], *PILLAR[:1:-1]))])
def test_a_shallow_notch_closes_with_all_its_diagonals_from_one_corner(seat, spare):
    """Some of them run outside it, so that a corner lies to the right of two others though it comes after them.
    Without one to spare, two seats may have the same measures."""
    notches = (4,)
    for corner in (0, 2, 5):
        others = [other for other in range(7) if (other - corner) % 7 not in (0, 1, 6)]
        found = close(sides_of(seat), taped(seat, *((corner, other) for other in others), *spare), notches, IN // 8)
        assert isinstance(found, Closed), found
        assert sides_of(found.corners) == pytest.approx(sides_of(seat), abs=IN // 8)
        across = [distance(corners[3], corners[6]) for corners in (found.corners, seat)]
        assert not spare or across[0] == pytest.approx(across[1], abs=IN // 8)


def test_a_notch_that_is_not_said_and_a_corner_said_to_turn_inwards_that_does_not():
    sides = sides_of(ELL)
    inside = taped(ELL, (0, 2), (0, 3), (0, 4))
    assert close(sides, inside, (), EIGHTH) == Open("turns-inward", 3)
    six = tuple(at_angle((0, 0), 30 * IN, Fraction(i, 6)) for i in range(6))
    assert close(sides_of(six), taped(six, (0, 2), (0, 3), (0, 4)), (3,), EIGHTH) == Open("turns-outward", 3)


def test_sides_that_run_through_one_another_make_no_seat():
    """A five-pointed star drawn in one line: every corner turns to the left, yet its sides cross."""
    star = tuple(at_angle((0, 0), 30 * IN, 2 * angle) for angle in FIFTHS)
    assert close(sides_of(star), taped(star, (0, 2), (1, 3), (2, 4)), (), EIGHTH) == Open("crosses-itself")


def test_two_sides_too_short_to_meet_are_named_with_what_they_need():
    """A five-sided seat of 35 in sides held by two diagonals; its last two sides of 15 in do not reach each other."""
    corners = tuple(at_angle((0, 0), 30 * IN, angle) for angle in FIFTHS)
    between = distance(corners[0], corners[3])
    seat = close([*sides_of(corners)[:3], 15 * IN, 15 * IN], taped(corners, (0, 2), (1, 3)), (), EIGHTH)
    assert (seat.code, seat.corner) == ("do-not-meet", 4)
    assert [doubt.bound for doubt in seat.doubts] == ["at-least", "at-least"]
    assert seat.doubts[0].would_be == pytest.approx(between - 15 * IN, abs=10)


def test_a_side_too_long_for_the_other_is_named_with_both_bounds():
    corners = tuple(at_angle((0, 0), 30 * IN, angle) for angle in FIFTHS)
    between = distance(corners[0], corners[3])
    seat = close([*sides_of(corners)[:3], 75 * IN, 10 * IN], taped(corners, (0, 2), (1, 3)), (), EIGHTH)
    assert [(doubt.bound, doubt.measure.length) for doubt in seat.doubts] == [
        ("at-most", 75 * IN),
        ("at-least", 10 * IN),
    ]
    assert seat.doubts[0].would_be == pytest.approx(between + 10 * IN, abs=10)
    assert seat.doubts[1].would_be == pytest.approx(75 * IN - between, abs=10)


def test_random_seats_close_on_their_own_corners():
    dice = random.Random(6)
    for _ in range(40):
        count = 4 + int(dice.random() * 4)
        corners = [at_angle((0, 0), int((20 + 3 * dice.random()) * IN), Fraction(i, count)) for i in range(count)]
        if any(area([corners[i - 1], corners[i], corners[(i + 1) % count]]) <= 0 for i in range(count)):
            continue
        seat = close(sides_of(corners), taped(corners, *((0, i) for i in range(2, count - 1))), (), 10)
        assert isinstance(seat, Closed)
        assert float(area(seat.corners)) == pytest.approx(float(area(corners)), rel=1e-7)
