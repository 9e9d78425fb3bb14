"""Outlines with rounded corners against textbook figures, hand calculation and shapely: tangents, arcs, lines."""

import math
import random
from fractions import Fraction

import pytest

from plumpline.geometry import PI, area, circumference, perimeter, round_outline
from plumpline.rounded import RoundedOutline, rounded_outwards

IN = 25_400_000
SAG = IN // 250


def inches(*corners):
    return tuple((round(x * IN), round(y * IN)) for x, y in corners)


ELL = inches((0, 0), (60, 0), (60, 20), (24, 20), (24, 50), (0, 50))


def test_a_square_with_rounded_corners_of_half_its_side_is_a_round():
    square = rounded_outwards(inches((0, 0), (10, 0), (10, 10), (0, 10)), 5 * IN)
    assert sum(square.sides) == circumference(10 * IN)
    points = square.points(IN // 100)
    assert len(points) == len(set(points))
    for found, wanted in zip(sorted(points), sorted(round_outline(10 * IN, IN // 100)), strict=True):
        assert math.dist(found, wanted) <= 2


def test_rounded_corners_take_their_part_of_area_and_edge():
    """Each corner loses r² - πr²/4 of the area and 2r - πr/2 of the edge."""
    line = rounded_outwards(inches((0, 0), (18, 0), (18, 12), (0, 12)), 2 * IN)
    points = line.points(IN // 10**5)
    lost = (18 * 12 - Fraction(area(points), IN**2)) / 4
    assert abs(lost - (4 - PI)) < Fraction(1, 10**4)
    assert sum(line.sides) == 2 * 30 * IN - 16 * IN + circumference(4 * IN)
    assert abs(perimeter(points) - sum(line.sides)) < IN // 10**4


def test_the_round_that_fills_a_triangle_of_three_four_and_five_touches_it_at_one_two_and_three():
    """Euclid IV.4: its radius is 1, and the tangents from a corner are half of all sides less the side across."""
    line = rounded_outwards(inches((0, 0), (4, 0), (0, 3)), IN)
    assert line.taken == (IN, 3 * IN, 2 * IN)
    assert sum(line.sides) == circumference(2 * IN)
    assert line.straights(SAG) == [(end, end) for end in inches((1, 0), (1.6, 1.8), (0, 1))]


def test_at_a_corner_of_sixty_degrees_a_round_takes_root_three_of_its_radius():
    """The outline turns by 120° there: tan 60° = √3, and the arc is a third of a circle."""
    high = math.isqrt(3 * (6 * IN) ** 2)
    line = rounded_outwards(((0, 0), (12 * IN, 0), (6 * IN, high)), IN)
    assert line.taken == pytest.approx([math.isqrt(3 * IN * IN)] * 3, abs=2)
    assert line.arcs == pytest.approx([circumference(2 * IN) / 3] * 3, abs=2)


def test_a_corner_that_turns_inwards_stays_as_it_is():
    line = rounded_outwards(ELL, 3 * IN)
    assert line.radii == (3 * IN, 3 * IN, 3 * IN, 0, 3 * IN, 3 * IN)
    assert line.taken[3] == line.arcs[3] == 0
    assert ELL[3] in line.points(SAG)
    assert line.points(SAG, (IN // 2,) * 6).count((24 * IN + IN // 2, 20 * IN + IN // 2)) == 1
    # 2 (60 + 50) less 5 × (2 × 3 - 3 π / 2), by hand 213.5619 in.
    assert sum(line.sides) / IN == pytest.approx(213.5619, abs=1e-4)


def test_points_along_a_side_are_so_far_from_the_middle_of_its_corner():
    """Half the arc of 3 in at a right angle is 3 π / 4 = 2.3562 in, so that 5 in along is 2.6438 in further."""
    line = rounded_outwards(ELL, 3 * IN)
    assert line.at(0, 5 * IN) == pytest.approx((3 * IN + 2.643806 * IN, 0), abs=30)
    middle_of_arc = 3 * IN * (1 - math.sqrt(0.5))
    assert line.at(0, 0) == pytest.approx((middle_of_arc, middle_of_arc), abs=2)
    assert line.at(5, line.sides[5]) == pytest.approx((middle_of_arc, middle_of_arc), abs=2)
    assert line.at(0, IN) == pytest.approx(
        (3 * IN * (1 - math.sin(math.pi / 4 - 1 / 3)), 3 * IN * (1 - math.cos(math.pi / 4 - 1 / 3))), abs=2
    )
    walked = [line.at(side, Fraction(line.sides[side] * step, 512)) for side in range(6) for step in range(512)]
    assert perimeter(walked) == pytest.approx(sum(line.sides), rel=1e-5)


def test_an_allowance_grows_evenly_round_a_corner_from_that_of_one_side_to_that_of_the_next():
    line = rounded_outwards(inches((0, 0), (18, 0), (18, 12), (0, 12)), 2 * IN)
    first, second = line.bends(SAG, (IN, IN // 2, IN // 2, IN // 2))[:2]
    assert (first[0], first[-1]) == ((-IN // 2, 2 * IN), (2 * IN, -IN))
    for bend, centre in ((first, (2 * IN, 2 * IN)), (second, (16 * IN, 2 * IN))):
        reach = [math.dist(centre, point) for point in bend]
        for step, found in enumerate(reach):
            turned = math.pi / 2 * step / (len(bend) - 1)
            grown = reach[0] + (reach[-1] - reach[0]) * step / (len(bend) - 1)
            straight_on = (reach[0] / (math.cos(turned) or 1e-9), reach[-1] / (math.sin(turned) or 1e-9))
            assert found == pytest.approx(min(grown, *straight_on), abs=2)
        assert sorted(round(end) - 2 * IN for end in (reach[0], reach[-1])) == [IN // 2, IN]


def test_seen_from_behind_every_side_is_as_long():
    line = rounded_outwards(ELL, 2 * IN)
    behind = line.mirrored(60 * IN)
    assert behind.sides == pytest.approx(line.sides[::-1], abs=2)
    assert sum(behind.sides) == sum(line.sides)
    assert sorted((60 * IN - x, y) for x, y in line.points(SAG)) == sorted(behind.points(SAG))


def test_corners_have_each_a_radius_of_their_own():
    line = RoundedOutline(inches((0, 0), (18, 0), (18, 12), (0, 12)), (0, 2 * IN, 0, 6 * IN))
    assert line.taken == (0, 2 * IN, 0, 6 * IN)
    assert sum(line.sides) == 60 * IN - 16 * IN + round(4 * math.pi * IN)


def outlines():
    """Random convex outlines of 3 to 9 corners, and the L."""
    dice = random.Random(11)
    for count in range(3, 10):
        turns = sorted(dice.random() / count + i / count for i in range(count))
        yield tuple(
            (round(40 * IN * math.cos(2 * math.pi * t)), round(30 * IN * math.sin(2 * math.pi * t))) for t in turns
        )
    yield ELL


@pytest.mark.reference
@pytest.mark.parametrize("corners", list(outlines()), ids=len)
def test_a_rounded_outline_is_what_a_disc_of_its_radius_can_sweep_within_the_sharp_one(corners):
    """shapely 2: the outline moved in by the radius and out again, which sweeps every place that the disc can be."""
    from shapely import Polygon

    sharp = Polygon(corners)
    radius = min(math.dist(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)) // 12
    line = rounded_outwards(corners, int(radius))
    swept = sharp.buffer(-line.radii[0], quad_segs=512).buffer(line.radii[0], quad_segs=512)
    found = Polygon(line.points(SAG // 40))
    assert found.is_valid
    assert found.symmetric_difference(swept).area < 1e-6 * swept.area
    assert sum(line.sides) == pytest.approx(swept.length, rel=1e-6)
    cut = Polygon(line.points(SAG // 40, (IN // 2,) * len(corners)))
    wanted = found.buffer(IN // 2, join_style="mitre", mitre_limit=50)
    assert cut.symmetric_difference(wanted).area < 1e-6 * wanted.area
