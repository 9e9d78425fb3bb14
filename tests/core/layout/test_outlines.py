"""Convex parts, overlap, no-fit polygons and barred rows of outlines, against the shape checker on random shapes."""

from fractions import Fraction
from random import Random

import pytest
from shape_checker import outlines_overlap, placed, shape_area

from plumpline.layout import outlines

TRAPEZOID = [(0, 0), (60, 0), (45, 40), (15, 40)]
L_SHAPE = [(0, 0), (50, 0), (50, 20), (20, 20), (20, 60), (0, 60)]
T_SHAPE = [(20, 0), (40, 0), (40, 30), (60, 30), (60, 50), (0, 50), (0, 30), (20, 30)]
ARROW = [(0, 0), (30, 10), (60, 0), (30, 45)]
COMB = [(0, 0), (70, 0), (70, 50), (50, 50), (50, 11), (43, 11), (40, 50), (31, 50), (24, 9), (12, 50), (0, 50)]
SHAPES = [TRAPEZOID, L_SHAPE, T_SHAPE, ARROW, COMB, [(0, 0), (31, 0), (31, 17), (0, 17)]]


def moved(outline, x, y):
    return tuple((a + x, b + y) for a, b in outline)


def parts_at(corners, x, y):
    return tuple(moved(part, x, y) for part in outlines.convex_parts(outlines.outline_of(corners)))


@pytest.mark.parametrize("corners", SHAPES)
def test_the_convex_parts_of_an_outline_are_convex_apart_and_of_the_same_area(corners):
    parts = outlines.convex_parts(outlines.outline_of(corners))
    assert sum(shape_area(part) for part in parts) == shape_area(corners)
    for i, part in enumerate(parts):
        corners_in_turn = zip(part, part[1:] + part[:1], part[2:] + part[:2], strict=True)
        assert all((b[0] - a[0]) * (c[1] - b[1]) >= (b[1] - a[1]) * (c[0] - b[0]) for a, b, c in corners_in_turn)
        assert not any(outlines_overlap(part, other) for other in parts[:i])


def test_an_outline_that_is_convex_is_one_part_and_an_l_is_two():
    assert [len(outlines.convex_parts(outlines.outline_of(s))) for s in (TRAPEZOID, L_SHAPE)] == [1, 2]


@pytest.mark.parametrize("turn", [0, 90, 180, 270])
def test_an_outline_turns_as_its_corners_do(turn):
    for corners in SHAPES:
        outline = outlines.turned(outlines.outline_of(corners), turn)
        assert set(outline) == set(placed(corners, turn, 0, 0))


def test_corners_may_be_told_clockwise_from_anywhere_and_with_points_along_a_side():
    told = [(107, 5), (107, 9), (100, 9), (100, 7), (100, 5), (103, 5)]
    assert sorted(outlines.outline_of(told)) == [(0, 0), (0, 4), (7, 0), (7, 4)]
    assert outlines.doubled_area(outlines.outline_of(told[::-1])) == 56


@pytest.mark.parametrize("corners", [
    [(0, 0), (5, 0)],
    [(0, 0), (5, 0), (9, 0)],
    [(0, 0), (4, 4), (4, 0), (0, 4)],
    [(0, 0), (8, 0), (8, 8), (4, 0), (0, 8)],
])
def test_sides_that_cross_touch_or_enclose_nothing_are_refused(corners):
    with pytest.raises(ValueError, match="sides of an outline"):
        outlines.outline_of(corners)


def test_two_outlines_overlap_exactly_where_a_line_across_says_so():
    random = Random(5)
    seen = {True: 0, False: 0}
    for _ in range(250):
        first, second = SHAPES[random.randrange(6)], SHAPES[random.randrange(6)]
        x, y = random.randrange(-60, 70), random.randrange(-50, 60)
        truth = outlines_overlap(first, placed(second, 0, x, y))
        assert outlines.overlap(parts_at(first, 0, 0), parts_at(second, x, y)) == truth
        seen[truth] += 1
    assert min(seen.values()) > 50


def test_outlines_that_share_a_side_or_a_corner_do_not_overlap():
    half = outlines.turned(outlines.outline_of(TRAPEZOID), 180)
    assert not outlines.overlap(parts_at(TRAPEZOID, 0, 0), parts_at(half, 45, 0))
    assert outlines.overlap(parts_at(TRAPEZOID, 0, 0), parts_at(half, 44, 0))
    assert not outlines.overlap(parts_at(L_SHAPE, 0, 0), parts_at(L_SHAPE, 50, 60))


def test_the_first_free_row_is_the_lowest_that_keeps_two_outlines_apart():
    random = Random(11)
    raised = 0
    for _ in range(20):
        first, second = SHAPES[random.randrange(6)], SHAPES[random.randrange(6)]
        x, start = random.randrange(-60, 70), random.randrange(-70, 0)
        barred = [
            rows for a in parts_at(first, 0, 0) for b in parts_at(second, 0, 0)
            if (rows := outlines.section(outlines.no_fit(a, b), x)) is not None
        ]
        free = outlines.first_free(barred, start)
        rows = [y for y in range(start, free + 1) if not outlines_overlap(first, placed(second, 0, x, y))]
        assert rows == [free]
        raised += free > start
    assert raised > 4


def test_a_gap_keeps_outlines_apart_as_far_as_it_keeps_rectangles():
    square = outlines.rectangle(0, 0, 10, 10)
    assert outlines.no_fit(square, square, 3) == outlines.rectangle(-13, -13, 13, 13)


def test_the_rows_between_two_verticals_are_those_of_the_outline_cut_there():
    random = Random(3)
    for _ in range(15):
        corners = SHAPES[random.randrange(6)]
        for part in outlines.convex_parts(outlines.outline_of(corners)):
            left = random.randrange(-5, 60)
            right = left + random.randrange(1, 30)
            rows = outlines.between(part, left, right)
            column = [(left, -2), (right, -2), (right, 62), (left, 62)]
            assert (rows is not None) == outlines_overlap(part, column)
            if rows is not None:
                low, high = rows
                strips = [[(left, y), (right, y), (right, y + 1), (left, y + 1)] for y in range(-2, 62)]
                touched = [y for y, strip in zip(range(-2, 62), strips, strict=True) if outlines_overlap(part, strip)]
                assert (low, high) == (touched[0], touched[-1] + 1)


def test_a_section_is_rounded_away_from_the_inside():
    assert outlines.section(outlines.outline_of(TRAPEZOID), 7) == (0, 19)
    assert Fraction(7 * 40, 15) < 19
    assert outlines.section(outlines.outline_of(TRAPEZOID), 0) is None
    assert outlines.section(outlines.outline_of(TRAPEZOID), 60) is None
