# Exact geometry of straight-sided outlines: convex parts, overlap, and the rows that one outline bars to another.
"""Outlines are simple polygons with whole-number corners, listed anticlockwise.

An outline is cut into convex parts by clipping ears and joining what stays convex (Hertel and Mehlhorn, FCT 1983). For
two convex parts the places at which the second overlaps the first are the inside of their *no-fit polygon*, the
Minkowski sum of the first and the mirrored second (Art 1966; Bennell and Oliveira, *EJOR* 184 (2008) 397-415), so both
"do they overlap" and "what is the lowest free row at this x" are sections of a convex polygon: all in whole numbers,
rounded away from the overlap. O(n²) for the parts of n corners, O(n·m) for a no-fit polygon, O(n) for a section.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

Point = tuple[int, int]
Points = tuple[Point, ...]
Parts = tuple[Points, ...]
Barred = tuple[int, int]  # an open interval of whole numbers


def cross(o: Point, a: Point, b: Point) -> int:
    """Twice the signed area of the triangle o, a, b: above 0 if it turns left."""
    return (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])


def doubled_area(outline: Points) -> int:
    """Twice the signed area: above 0 if the corners are listed anticlockwise."""
    return sum(a[0] * b[1] - a[1] * b[0] for a, b in _edges(outline))


def extents_of(outline: Points) -> tuple[int, int, int, int]:
    """Left, bottom, right and top of an outline."""
    xs, ys = [x for x, _ in outline], [y for _, y in outline]
    return min(xs), min(ys), max(xs), max(ys)


def outline_of(corners: Iterable[Sequence[int]]) -> Points:
    """The corners as an outline from (0, 0) on, anticlockwise and without corners that are none.

    Raises ``ValueError`` where the sides cross or touch each other or enclose nothing.
    """
    points = tuple((int(x), int(y)) for x, y in corners)
    left, bottom, _, _ = extents_of(points)
    moved = _without_straight(tuple((x - left, y - bottom) for x, y in points))
    if len(moved) < 3 or _touches_itself(moved):
        raise ValueError("the sides of an outline must enclose one piece and not cross or touch each other")
    return moved if doubled_area(moved) > 0 else moved[::-1]


# An outline of more corners than this is taken as having arcs; none that is measured corner by corner has so many.
_MANY = 24


def around_arcs(outline: Points) -> Points:
    """The outline, or one with few corners around one with many, of the same extents: its arcs by lines against them.

    In a run of small left turns only sides that differ in direction by 43° are kept, with level and upright lines where
    it reaches furthest, and drawn out until they meet, by less than a twelfth of the radius from a quarter of a round.
    All of the outline is on the inner side of every such line, and a corner that is not whole is rounded outwards.
    """
    if len(outline) <= _MANY:
        return outline
    lines = _lines_against(outline)
    return tuple(_outer_corner(before, after) for before, after in zip([lines[-1], *lines], lines, strict=False))


def within_arcs(outline: Points) -> Points:
    """The outline, or one with few corners within one with many: its arcs by chords between the sides kept above.

    Arcs bulge outwards, so that what lies within it lies within the outline.
    """
    if len(outline) <= _MANY:
        return outline
    lines = _lines_against(outline)
    longest = max(_square(line) for line in lines)
    kept = [end for line in lines for end in (line if 256 * _square(line) > longest else line[:1])]
    return tuple(point for point in dict.fromkeys(kept) if point in outline)


def _square(line: Line) -> int:
    x, y = _way(line)
    return x * x + y * y


Line = tuple[Point, Point]  # through two points, what is inside to its left


def _lines_against(outline: Points) -> list[Line]:
    """The sides that are kept of an outline, and the lines where an arc reaches furthest."""
    sides = list(_edges(outline))
    first = next((i for i, side in enumerate(sides) if not _is_small_turn(sides[i - 1], side)), 0)
    ordered = [sides[first - 1], *sides[first:], *sides[:first], sides[first]]
    lines: list[Line] = []
    for before, side, after in zip(ordered, ordered[1:], ordered[2:], strict=False):
        if lines and _is_small_turn(before, side):
            lines += _level_at(before, side)
            ends = not _is_small_turn(side, after) or _is_long(side, before)
            if not (ends or _is_level(side) or _turns_far(lines[-1], side)):
                continue
        lines.append(side)
    return lines


def _way(line: Line) -> Point:
    (ax, ay), (bx, by) = line
    return bx - ax, by - ay


def _turn_between(one: Line, other: Line) -> tuple[int, int]:
    """Sine and cosine of the turn from one line to another, both times the lengths of the two."""
    (ax, ay), (bx, by) = _way(one), _way(other)
    return ax * by - ay * bx, ax * bx + ay * by


def _is_small_turn(one: Line, other: Line) -> bool:
    sine, cosine = _turn_between(one, other)
    return sine >= 0 and 5 * sine < 3 * cosine  # less than 31°


def _turns_far(one: Line, other: Line) -> bool:
    sine, cosine = _turn_between(one, other)
    return 15 * sine >= 14 * cosine  # more than 43°, so that of a right angle the half is kept


def _is_long(side: Line, chord: Line) -> bool:
    """Whether a side is more than twice as long as the one before it: as what follows an arc is, straight."""
    return _square(side) > 4 * _square(chord)


def _is_level(line: Line) -> bool:
    return 0 in _way(line)


def _level_at(before: Line, after: Line) -> list[Line]:
    """The level or upright line through the corner between two sides, where that is as far as the outline reaches."""
    (ax, ay), (bx, by), (x, y) = _way(before), _way(after), after[0]
    ways = ((1, 0), (0, 1), (-1, 0), (0, -1))
    return [
        ((x, y), (x + dx, y + dy)) for dx, dy in ways if ax * dy - ay * dx > 0 and dx * by - dy * bx > 0
    ]


def _outer_corner(before: Line, after: Line) -> Point:
    """Where two lines meet, or the nearest whole point that is inside of neither."""
    if before[1] == after[0]:
        return after[0]
    (ax, ay), (bx, by) = _way(before), _way(after)
    across = ax * by - ay * bx
    level, other = cross((0, 0), before[1], before[0]), cross((0, 0), after[1], after[0])
    x, y = bx * level - ax * other, by * level - ay * other
    near = [(-(-x // across) + i, -(-y // across) + j) for i in (-1, 0, 1) for j in (-1, 0, 1)]
    outer = [point for point in near if cross(*before, point) <= 0 and cross(*after, point) <= 0]
    return min(outer, key=lambda point: (point[0] * across - x) ** 2 + (point[1] * across - y) ** 2)


def turned(outline: Points, turn: int) -> Points:
    """The outline turned anticlockwise by quarter turns, its lower left corner at (0, 0) again."""
    _, _, w, h = extents_of(outline)
    if turn == 0:
        return outline
    if turn == 180:
        return tuple((w - x, h - y) for x, y in outline)
    return tuple((h - y, x) if turn == 90 else (y, w - x) for x, y in outline)


def rectangle(left: int, bottom: int, right: int, top: int) -> Points:
    """The outline of a rectangle."""
    return (left, bottom), (right, bottom), (right, top), (left, top)


def _edges(outline: Points) -> Iterable[tuple[Point, Point]]:
    return pairwise((*outline, outline[0]))


def _without_straight(points: Points) -> Points:
    """The points without those that lie straight between their neighbours."""
    kept = list(points)
    index = 0
    while index < len(kept) and len(kept) > 2:
        if cross(kept[index - 1], kept[index], kept[(index + 1) % len(kept)]) == 0:
            del kept[index]
            index = max(index - 2, 0)
        else:
            index += 1
    return tuple(kept)


def _touches_itself(outline: Points) -> bool:
    edges = list(_edges(outline))
    return any(
        _meet(*edges[i], *edges[j])
        for i in range(len(edges))
        for j in range(i + 2, len(edges))
        if (i, j) != (0, len(edges) - 1)
    )


def _meet(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two segments have a point in common."""
    if any(max(a[k], b[k]) < min(c[k], d[k]) or max(c[k], d[k]) < min(a[k], b[k]) for k in (0, 1)):
        return False
    first, second = cross(a, b, c), cross(a, b, d)
    third, fourth = cross(c, d, a), cross(c, d, b)
    return not (
        (first > 0 and second > 0) or (first < 0 and second < 0) or (third > 0 and fourth > 0)
        or (third < 0 and fourth < 0)
    )


def convex_parts(outline: Points) -> Parts:
    """The outline as convex parts that do not overlap."""
    parts: list[Points] = []
    for triangle in _triangles(outline):
        merged = triangle
        for index in range(len(parts) - 1, -1, -1):
            joined = _joined(parts[index], merged)
            if joined is not None:
                merged = joined
                del parts[index]
        parts.append(merged)
    return tuple(parts)


def _triangles(outline: Points) -> Iterable[Points]:
    """Clip one ear after the other; a corner that has become straight goes without a triangle."""
    left = list(outline)
    while len(left) > 3:
        index = next(i for i in range(len(left)) if _is_ear(left, i))
        ear = left[index - 1], left[index], left[(index + 1) % len(left)]
        if cross(*ear):
            yield ear
        del left[index]
    yield left[0], left[1], left[2]


def _is_ear(left: Sequence[Point], index: int) -> bool:
    ear = before, corner, after = left[index - 1], left[index], left[(index + 1) % len(left)]
    width = cross(*ear)
    return width == 0 or (width > 0 and not any(_within(before, corner, after, p) for p in left if p not in ear))


def _within(a: Point, b: Point, c: Point, point: Point) -> bool:
    return cross(a, b, point) >= 0 and cross(b, c, point) >= 0 and cross(c, a, point) >= 0


def _joined(first: Points, second: Points) -> Points | None:
    """Two parts with a common edge as one, None if they have none or would not be convex."""
    where = {edge: i for i, edge in enumerate(_edges(first))}
    common = [(where[b, a], j) for j, (a, b) in enumerate(_edges(second)) if (b, a) in where]
    if not common:
        return None
    i, j = common[0]
    around = (*first[i + 1 :], *first[: i + 1])
    whole = (*around, *(*second[j:], *second[:j])[2:])
    corners = zip((whole[-1], *whole[:-1]), whole, (*whole[1:], whole[0]), strict=True)
    return whole if all(cross(*three) >= 0 for three in corners) else None


def no_fit(first: Points, second: Points, gap: int = 0) -> Points:
    """The no-fit polygon of two convex parts: ``second`` moved by a point inside it is nearer than ``gap``.

    Near means nearer than the gap in both directions, as for rectangles.
    """
    near = (-gap, gap) if gap else (0,)
    return hull([(a[0] - b[0] + p, a[1] - b[1] + q) for a in first for b in second for p in near for q in near])


def hull(points: Iterable[Point]) -> Points:
    """The convex hull, anticlockwise (Andrew, *Information Processing Letters* 9 (1979) 216-219)."""
    ordered = sorted(dict.fromkeys(points))
    lower = _chain(ordered)
    upper = _chain(ordered[::-1])
    return (*lower[:-1], *upper[:-1])


def _chain(ordered: Sequence[Point]) -> list[Point]:
    chain: list[Point] = []
    for point in ordered:
        while len(chain) > 1 and cross(chain[-2], chain[-1], point) <= 0:
            chain.pop()
        chain.append(point)
    return chain


def section(part: Points, x: int) -> Barred | None:
    """The whole numbers y with (x, y) inside a convex part lie strictly between these two; None if x misses it."""
    low: int | None = None
    high: int | None = None
    for (ax, ay), (bx, by) in _edges(part):
        if ax <= x < bx:  # a lower side
            low = ay + (by - ay) * (x - ax) // (bx - ax)
        elif bx < x <= ax:  # an upper side
            high = ay - (by - ay) * (ax - x) // (bx - ax)
    return None if low is None or high is None else (low, high)


def between(part: Points, left: int, right: int) -> Barred | None:
    """The rows a convex part takes strictly between two verticals, rounded outwards; None if it has none there."""
    least, _, most, _ = extents_of(part)
    left, right = max(left, least), min(right, most)
    if left >= right:
        return None
    rows = [(y, y) for x, y in part if left <= x <= right]
    rows += [cut for x in (left, right) if (cut := section(part, x)) is not None]
    return min(low for low, _ in rows), max(high for _, high in rows)


def first_free(barred: Iterable[Barred], start: int, residue: int = 0, step: int = 1) -> int:
    """The least number from ``start`` on that is ``residue`` modulo ``step`` and in none of the open intervals."""
    start += (residue - start) % step
    for low, high in sorted(barred):
        if low < start < high:
            start = high + (residue - high) % step
    return start


def overlap(first: Parts, second: Parts) -> bool:
    """Whether two outlines have some of their insides in common."""
    return any(_parts_overlap(a, b) for a in first for b in second)


def _parts_overlap(first: Points, second: Points) -> bool:
    """Whether the origin lies inside their no-fit polygon."""
    return all(cross(a, b, (0, 0)) > 0 for a, b in _edges(no_fit(first, second)))


def contains(outline: Points, parts: Parts, box: Points) -> bool:
    """Whether a rectangle lies within an outline of these parts: no side runs through it, and it is not outside."""
    (left, bottom), _, (right, top), _ = box
    through = any(
        max(ax, bx) > left and min(ax, bx) < right and max(ay, by) > bottom and min(ay, by) < top
        and len({cross((ax, ay), (bx, by), corner) > 0 for corner in box if cross((ax, ay), (bx, by), corner)}) == 2
        for (ax, ay), (bx, by) in _edges(outline)
    )
    return not through and overlap(parts, (box,))
