"""Exact geometry against published digits, the decimal module and shapely."""

import random
from decimal import Decimal, localcontext
from fractions import Fraction
from itertools import pairwise

import pytest

from plumpline.geometry import (
    PI,
    arc,
    arctangent,
    area,
    at_angle,
    circumference,
    diameter,
    distance,
    on_the_bias,
    outset,
    perimeter,
    room_within,
    root,
    round_outline,
    steps_around,
    third_corner,
    triangle,
)

IN = 25_400_000
CM = 10_000_000
METRE = 1_000_000_000

#: L. I. Baldt, Clothing for Women (1916), chapter XXII: inches along the selvedge for a bias strip of the width given,
#: as whole inches and eighths.
BALDT = {
    "0.5": "0-6", "1.0": "1-3", "1.5": "2-1", "2.0": "2-6", "2.5": "3-4", "3.0": "4-2", "3.5": "5-0", "4.0": "5-5",
    "4.5": "6-3", "5.0": "7-1", "5.5": "7-6", "6.0": "8-4", "6.5": "9-1", "7.0": "9-7", "7.5": "10-5", "8.0": "11-2",
    "8.5": "12-0", "9.0": "12-6", "9.5": "13-3", "10.0": "14-1", "10.5": "14-7", "11.0": "15-4",
}  # fmt: skip


def machin(digits):
    """π by John Machin's formula of 1706, 16 arctan 1/5 - 4 arctan 1/239, in whole numbers."""
    one = 10 ** (digits + 10)

    def arctan_of_one_over(n):
        total, term, k = 0, one // n, 1
        while term:
            total += term // k if k % 4 == 1 else -(term // k)
            term //= n * n
            k += 2
        return total

    return Fraction(16 * arctan_of_one_over(5) - 4 * arctan_of_one_over(239), one)


def test_pi_is_what_machins_formula_gives():
    assert abs(PI - machin(60)) < Fraction(1, 10**50)


def test_a_round_of_18_inches_has_an_edge_of_56_548_667_765_inches():
    """18 π = 56.548667764616278 (published digits of π)."""
    assert circumference(18 * IN) == round(Fraction("56.548667764616278292") * IN)
    assert circumference(10**13) == 31_415_926_535_898


def test_a34_a_round_seat_with_an_edge_of_45_inches_is_14_32_inches_across():
    """A maker's case: 45 / π = 14.32 in."""
    assert round(Fraction(diameter(45 * IN), IN), 2) == Fraction("14.32")
    assert abs(circumference(diameter(45 * IN)) - 45 * IN) <= 2


@pytest.mark.parametrize(
    ("square", "expected"),
    [
        (0, 0),
        (1, 1),
        (2, 1),
        (3, 2),
        (4, 2),
        (10**26, 10**13),
        (Fraction(1, 4), 0),
        (Fraction(9, 4), 2),
        (Fraction(25, 4), 2),
    ],
)
def test_roots_are_rounded_half_to_even(square, expected):
    assert root(square) == expected


def test_roots_agree_with_the_decimal_module():
    dice = random.Random(1)
    with localcontext() as context:
        context.prec = 60
        for _ in range(300):
            square = int(dice.random() * 10 ** (1 + dice.random() * 25))
            assert root(square) == int(Decimal(square).sqrt().to_integral_value())


def test_baldts_22_bias_widths_are_met_within_an_eighth():
    """19 rows are the nearest 1/8 in; those for 2, 6 1/2 and 8 in are rounded down."""
    gaps = []
    for width, printed in BALDT.items():
        inches, eighths = printed.split("-")
        gaps.append(
            abs(Fraction(on_the_bias(int(Fraction(width) * IN)), IN) - Fraction(8 * int(inches) + int(eighths), 8))
        )
    assert len(gaps) == 22
    assert max(gaps) <= Fraction(1, 8)
    assert sum(gap <= Fraction(1, 16) for gap in gaps) == 19


def test_the_longest_bias_strip_on_54_inch_cloth_is_76_37_inches():
    """Upholsterers' forum: 54 · √2 = 76.37 in."""
    assert round(Fraction(on_the_bias(54 * IN), IN), 2) == Fraction("76.37")


def sine(angle):
    """The sine of a part of a turn by the recipe in the decimal module's documentation, after Machin's π."""
    with localcontext() as context:
        context.prec = 50
        x = Decimal(2 * angle.numerator) / Decimal(angle.denominator)
        pi = machin(60)
        x *= Decimal(pi.numerator) / Decimal(pi.denominator)
        last, total, power, factorial, i, sign = Decimal(0), x, x, 1, 1, 1
        while total != last:
            last = total
            i += 2
            factorial *= i * (i - 1)
            power *= x * x
            sign = -sign
            total += power / factorial * sign
        return total


def test_points_on_a_circle_are_the_nearest_nanometre_100_metres_away():
    dice = random.Random(2)
    angles = [Fraction(i, 16) for i in range(16)] + [Fraction(int(dice.random() * 10**9), 10**9) for _ in range(40)]
    for angle in angles:
        x, y = at_angle((0, 0), 100 * METRE, angle)
        assert abs(y - sine(angle) * 100 * METRE) < Decimal("0.500001")
        assert abs(x - sine(angle + Fraction(1, 4)) * 100 * METRE) < Decimal("0.500001")


def test_a_round_outline_is_the_same_from_all_four_sides():
    size = 18 * IN
    outline = sorted(round_outline(size, IN // 64))
    assert len(outline) >= 8
    assert sorted((size - y, x) for x, y in outline) == outline
    assert sorted((size - x, y) for x, y in outline) == outline


@pytest.mark.parametrize("sag", [IN // 64, IN // 1000, CM // 10])
def test_no_chord_of_an_outline_lies_further_inside_than_asked(sag):
    outline = round_outline(18 * IN, sag)
    radius = 9 * IN
    middles = [((a[0] + b[0]) // 2 - radius, (a[1] + b[1]) // 2 - radius) for a, b in pairwise(outline)]
    assert all(radius - root(x * x + y * y) <= sag + 2 for x, y in middles)
    assert len(outline) & (len(outline) - 1) == 0


def test_an_arc_runs_either_way_and_holds_both_ends():
    quarter = arc((0, 0), 10 * CM, Fraction(0), Fraction(1, 4), CM // 100)
    assert (quarter[0], quarter[-1]) == ((10 * CM, 0), (0, 10 * CM))
    assert quarter == arc((0, 0), 10 * CM, Fraction(1, 4), Fraction(0), CM // 100)[::-1]
    assert len(arc((0, 0), CM, Fraction(0), Fraction(1, 100), CM)) == 2


def test_a_triangle_of_three_four_and_five_has_its_right_angle_on_the_left():
    assert triangle(4 * IN, 5 * IN, 3 * IN) == ((0, 0), (4 * IN, 0), (0, 3 * IN))
    assert triangle(9 * IN, 5 * IN, 3 * IN) is None
    assert triangle(8 * IN, 5 * IN, 3 * IN) == ((0, 0), (8 * IN, 0), (3 * IN, 0))


def test_a_corner_is_found_at_its_distances_wherever_the_base_lies():
    dice = random.Random(3)
    for _ in range(200):
        one, other, corner = ((int(dice.random() * METRE), int(dice.random() * METRE)) for _ in range(3))
        if (other[0] - one[0]) * (corner[1] - one[1]) < (other[1] - one[1]) * (corner[0] - one[0]):
            one, other = other, one
        found = third_corner(one, other, distance(one, corner), distance(other, corner))
        near = abs(area((one, other, corner))) > Fraction(METRE**2, 1000)
        assert not near or distance(found, corner) <= 1000


def test_a_clockwise_outline_has_a_negative_area():
    square = ((0, 0), (2, 0), (2, 3), (0, 3))
    assert area(square) == 6
    assert area(square[::-1]) == -6
    assert perimeter(square) == 10


@pytest.mark.reference
def test_areas_and_perimeters_agree_with_shapely():
    from shapely.geometry import Polygon

    dice = random.Random(4)
    for corners in range(3, 12):
        points = [at_angle((0, 0), METRE * dice.random(), Fraction(i, corners)) for i in range(corners)]
        theirs = Polygon(points)
        assert float(area(points)) == pytest.approx(theirs.area, rel=1e-12)
        assert perimeter(points) == pytest.approx(theirs.length, rel=1e-9)
    outline = round_outline(45 * CM, CM // 1000)
    assert float(area(outline)) == pytest.approx(3.14159265358979 * (22.5 * CM) ** 2, rel=1e-4)


def test_an_outline_moves_outwards_by_the_allowance_of_each_side():
    square = ((0, 0), (10 * IN, 0), (10 * IN, 10 * IN), (0, 10 * IN))
    moved = outset(square, (IN, 2 * IN, 3 * IN, 0))
    assert moved == ((0, -IN), (12 * IN, -IN), (12 * IN, 13 * IN), (0, 13 * IN))


def test_a_corner_in_a_straight_side_moves_straight_out():
    middle = ((0, 0), (5 * IN, 0), (10 * IN, 0), (10 * IN, 10 * IN), (0, 10 * IN))
    assert outset(middle, (IN,) * 5)[1] == (5 * IN, -IN)


def test_what_is_moved_out_and_in_again_is_where_it_was():
    seat = tuple((x * IN, y * IN) for x, y in ((0, 0), (20, 0), (20, 9), (25, 9), (27, 18), (-3, 18), (-5, 9), (0, 9)))
    there_and_back = outset(outset(seat, (IN // 2,) * 8), (-IN // 2,) * 8)
    assert max(abs(a - b) for p, q in zip(seat, there_and_back, strict=True) for a, b in zip(p, q, strict=True)) <= 2


def test_an_angle_is_told_from_its_tangent():
    """Machin's formula for π (1706), 45° and 60°, and a tangent so large that its angle is all but a right one."""
    assert abs(16 * arctangent(Fraction(1, 5)) - 4 * arctangent(Fraction(1, 239)) - PI) < Fraction(1, 10**35)
    assert abs(arctangent(Fraction(1)) - PI / 4) < Fraction(1, 10**35)
    with localcontext() as precise:
        precise.prec = 60
        assert abs(arctangent(Fraction(Decimal(3).sqrt())) - PI / 3) < Fraction(1, 10**35)
    assert abs(arctangent(Fraction(10**12)) - PI / 2 + Fraction(1, 10**12)) < Fraction(1, 10**30)
    assert arctangent(Fraction(0)) == 0


@pytest.mark.reference
def test_moved_outlines_are_shapelys_mitred_buffers():
    from shapely.geometry import Polygon

    dice = random.Random(5)
    for corners in range(3, 10):
        points = [at_angle((0, 0), METRE + METRE * dice.random() // 5, Fraction(i, corners)) for i in range(corners)]
        for by in (15 * CM // 10, -2 * CM):
            theirs = Polygon(points).buffer(by, join_style="mitre", mitre_limit=100)
            ours = Polygon(outset(points, (by,) * corners))
            assert ours.symmetric_difference(theirs).area < 1e-9 * theirs.area


ROOMS = {
    "a square": (((0, 0), (8, 0), (8, 8), (0, 8)), (0, 0, 8, 8)),
    "an L": (((0, 0), (12, 0), (12, 4), (4, 4), (4, 8), (0, 8)), (0, 0, 12, 4)),
    "a bay": (((0, 0), (90, 0), (75, 31), (15, 31)), (15, 0, 60, 31)),
    "a triangle": (((0, 0), (8, 0), (4, 8)), (2, 0, 4, 4)),
    "a square on its corner": (((8, 0), (16, 8), (8, 16), (0, 8)), (4, 4, 8, 8)),
    "a U": (((0, 0), (10, 0), (10, 20), (7, 20), (7, 2), (3, 2), (3, 20), (0, 20)), (0, 0, 3, 20)),
}


@pytest.mark.parametrize(("outline", "room"), ROOMS.values(), ids=ROOMS)
def test_a_word_has_the_largest_rectangle_within_an_outline(outline, room):
    """Areas by hand: of the L 12 × 4 beats 4 × 8, of the triangle and the diamond half the area is the most."""
    big = [(x * IN, y * IN) for x, y in outline]
    assert room_within(big) == tuple(length * IN for length in room)


@pytest.mark.reference
def test_the_room_lies_within_any_outline_as_shapely_sees_it():
    from shapely.geometry import Polygon, box

    dice = random.Random(6)
    for corners in range(3, 14):
        points = [at_angle((0, 0), METRE * (2 + dice.random()) // 3, Fraction(i, corners)) for i in range(corners)]
        x, y, width, length = room_within(points)
        assert min(width, length) > 0
        assert Polygon(points).buffer(2).covers(box(x, y, x + width, y + length))


@pytest.mark.parametrize(
    ("outline", "steps"),
    [
        ([(0, 0), (12, 0), (12, 4), (4, 4), (4, 8), (0, 8)], [(0, 0, 12, 4), (0, 4, 4, 4)]),
        ([(0, 0), (6, 0), (0, 6)], [(0, 0, 6, 2), (0, 2, 4, 2), (0, 4, 2, 2)]),
        ([(0, 4), (0, 0), (2, 0), (2, 2), (4, 2), (4, 0), (6, 0), (6, 4)], [(0, 0, 2, 2), (4, 0, 2, 2), (0, 2, 6, 2)]),
        ([(0, 0), (4, 0), (5, 1), (4, 2), (0, 2)], [(0, 0, 5, 2)]),
    ],
)
def test_an_outline_is_covered_in_steps_no_finer_than_asked(outline, steps):
    """By hand, 2 in steps: of upright sides exactly, along a slant of 45° as wide as each is at its foot, to 1 nm."""
    big = [(x * IN, y * IN) for x, y in outline]
    found = steps_around(big, 2 * IN)
    assert [tuple(length // IN for length in step) for step in found] == steps
    assert all(length % IN <= 1 for step in found for length in step)


@pytest.mark.reference
def test_steps_cover_any_outline_and_reach_no_further_than_they_must_as_shapely_sees_it():
    """The steps hold the outline and lie in the box around it, and finer ones come much nearer to it."""
    from shapely.geometry import Polygon, box
    from shapely.ops import unary_union

    dice = random.Random(8)
    for corners in range(3, 14):
        points = [at_angle((0, 0), METRE * (2 + dice.random()) // 3, Fraction(i, corners)) for i in range(corners)]
        sizes = []
        for step in (METRE // 5, METRE // 50):
            steps = [box(x, y, x + w, y + h) for x, y, w, h in steps_around(points, step)]
            covered = unary_union(steps)
            assert covered.buffer(2).covers(Polygon(points))
            assert box(*Polygon(points).bounds).buffer(2).covers(covered)
            sizes.append(covered.area - Polygon(points).area)
        assert sizes[1] < sizes[0] / 3
