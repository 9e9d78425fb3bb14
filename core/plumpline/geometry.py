# Exact geometry in whole nanometres: π, roots, points on arcs, areas and corners found from measured distances.
"""No float comes near a length here, so the same figures come out on every machine.

Whatever is not whole is rounded once, half to even. Points are (across, up) in nm, outlines run anticlockwise. An angle
is a `Fraction` of a full turn, counted anticlockwise from "to the right".
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from math import isqrt

from plumpline.lengths import round_half_even

Point = tuple[int, int]

#: π to 50 decimals, as published in OEIS A000796.
PI = Fraction(314159265358979323846264338327950288419716939937510, 10**50)

#: The natural logarithm of 10 to 50 decimals, as published in OEIS A002392.
LN_10 = Fraction(230258509299404568401799145468436420760110148862877, 10**50)

#: Sines are whole numbers of 1 / ONE: at 100 m from the centre an error of some units is 10^-27 nm.
ONE = 1 << 128


def circumference(across: int) -> int:
    """The edge of a round of this diameter, in nm."""
    return round_half_even(PI * across)


def diameter(edge: int) -> int:
    """The diameter of the round with this edge, in nm."""
    return round_half_even(edge / PI)


def root(square: int | Fraction) -> int:
    """The square root of a number not below 0."""
    whole = isqrt(int(square))
    middle = Fraction(2 * whole + 1, 2) ** 2
    above = square > middle or (square == middle and whole % 2 == 1)
    return whole + above


def on_the_bias(width: int) -> int:
    """The diagonal of a square, width · √2: what a true bias strip of this width takes along the selvedge, in nm."""
    return root(2 * width * width)


def distance(one: Point, other: Point) -> int:
    """From point to point, in nm."""
    return root((one[0] - other[0]) ** 2 + (one[1] - other[1]) ** 2)


def perimeter(outline: Sequence[Point]) -> int:
    """All sides of an outline together, in nm, each rounded as it is cut."""
    return sum(distance(one, other) for one, other in sides_of(outline))


def area(outline: Sequence[Point]) -> Fraction:
    """What an outline holds, in nm²; negative if it runs clockwise."""
    return Fraction(sum(ax * by - bx * ay for (ax, ay), (bx, by) in sides_of(outline)), 2)


def sides_of(outline: Sequence[Point]) -> list[tuple[Point, Point]]:
    """Both ends of every side, the last side leading back to the first corner."""
    return list(pairwise([*outline, *outline[:1]]))


def room_within(outline: Sequence[Point]) -> tuple[int, int, int, int]:
    """The largest upright rectangle found within an outline, as (x, y, width, length): room for a word or an arrow.

    It reaches from one line across to another; lines are tried at the height of every corner and at three between
    each two. O(n²) for n corners.
    """
    lines = _lines_across(outline)
    slabs = [_crossed(outline, low, high) for low, high in pairwise(lines)]
    within = [[(max(left), min(right)) for left, right in slab] for slab in slabs]
    rooms = []
    for first, low in enumerate(lines[:-1]):
        common = within[first]
        for slab, high in zip(within[first:], lines[first + 1 :], strict=True):
            common = _overlaps(common, slab)
            rooms += [(left, low, right - left, high - low) for left, right in common]
    return max(rooms, key=lambda room: room[2] * room[3])


def _lines_across(outline: Sequence[Point]) -> list[int]:
    heights = sorted({y for _, y in outline})
    between = [low + (high - low) * quarter // 4 for low, high in pairwise(heights) for quarter in range(4)]
    return sorted({*between, heights[-1]})


def _crossed(outline: Sequence[Point], low: int, high: int) -> list[tuple[Point, Point]]:
    """The stretches of an outline from left to right between two heights that have no corner between them.

    Of each where its left side and its right side cross the two heights, rounded to the left.
    """
    sides = [(a, b) if a[1] < b[1] else (b, a) for a, b in sides_of(outline)]
    ends = [
        (ax + (bx - ax) * (low - ay) // (by - ay), ax + (bx - ax) * (high - ay) // (by - ay))
        for (ax, ay), (bx, by) in sides
        if ay <= low and high <= by and ay < by
    ]
    ordered = sorted(ends, key=sum)
    return list(zip(ordered[::2], ordered[1::2], strict=True))


def _overlaps(some: list[tuple[int, int]], others: list[tuple[int, int]]) -> list[tuple[int, int]]:
    shared = [(max(a, c), min(b, d)) for a, b in some for c, d in others]
    return [(left, right) for left, right in shared if left < right]


def steps_around(outline: Sequence[Point], step: int) -> list[tuple[int, int, int, int]]:
    """Upright rectangles (x, y, width, length) that together cover an outline: exactly so if its sides are upright.

    Along a slant or a curve they are steps no higher than ``step``, never inside it. O(n · m) for n corners, m steps.
    """
    furthest = max(x for x, _ in outline)
    found: list[tuple[int, int, list[Point]]] = []
    for low, high in pairwise(_levels(outline, step)):
        slab = _joined_up([_outer(left, right, furthest) for left, right in _crossed(outline, low, high)])
        if found and high - found[-1][0] <= step and _alike(found[-1][2], slab, step):
            low, _, below = found.pop()
            slab = _joined_up([*below, *slab])
        found.append((low, high, slab))
    return [(left, low, right - left, high - low) for low, high, slab in found for left, right in slab]


def _alike(some: list[Point], others: list[Point], step: int) -> bool:
    """Whether stretches end within a step of each other, as along a curve; not so above and below a level side."""
    apart = [abs(one[i] - other[i]) for one, other in zip(some, others, strict=False) for i in (0, 1)]
    return len(some) == len(others) and max(apart) <= step


def _levels(outline: Sequence[Point], step: int) -> list[int]:
    """The heights of all corners, and heights between that are no more than a step apart where a side slants."""
    found: list[int] = []
    for low, high in pairwise(sorted({y for _, y in outline})):
        slants = any(left[0] != left[1] or right[0] != right[1] for left, right in _crossed(outline, low, high))
        count = -(-(high - low) // step) if slants else 1
        found += [low + (high - low) * number // count for number in range(count)]
    return [*found, max(y for _, y in outline)]


def _outer(left: Point, right: Point, furthest: int) -> Point:
    """From where to where a stretch reaches at most; where a side slants it was rounded to the left."""
    return min(left), min(max(right) + (right[0] != right[1]), furthest)


def _joined_up(stretches: Sequence[Point]) -> list[Point]:
    """The stretches with those that overlap or touch made one."""
    found: list[Point] = []
    for left, right in sorted(stretches):
        if found and left <= found[-1][1]:
            left, most = found.pop()
            right = max(right, most)
        found.append((left, right))
    return found


def cut_level(outline: Sequence[Point], level: int, way: int) -> list[tuple[Point, int]]:
    """What of an outline lies above a level line (`way` 1) or below it (-1): its corners, each with the number of the
    side that goes on from there, -1 for the line itself.

    The line may cross two sides and no more.
    """
    found: list[tuple[Point, int]] = []
    for side, ends in enumerate(sides_of(outline)):
        here, there = ((y - level) * way for _, y in ends)
        if here >= 0:
            found.append((ends[0], -1 if here == 0 and there < 0 else side))
        if here * there < 0:
            found.append((at_level(*ends, level), side if there > 0 else -1))
    return found


def at_level(one: Point, other: Point, level: int) -> Point:
    """Where the straight way between two points that are not level with each other comes to this height."""
    (ax, ay), (bx, by) = one, other
    return round_half_even(ax + Fraction((bx - ax) * (level - ay), by - ay)), level


def mirrored(outline: Sequence[Point], width: int) -> tuple[Point, ...]:
    """The outline seen from behind, within a box so wide: still anticlockwise, from the same first corner on.

    Its side i is side n - 1 - i of the outline.
    """
    turned = [(width - x, y) for x, y in outline]
    return (turned[0], *turned[:0:-1])


def at_angle(centre: tuple[int | Fraction, int | Fraction], radius: int | Fraction, angle: Fraction) -> Point:
    """The point of a circle in this direction from its centre: the nearest whole nm either way, up to 100 m away."""
    cosine, sine = _direction(angle)
    return round_half_even(centre[0] + radius * cosine), round_half_even(centre[1] + radius * sine)


def arc(
    centre: tuple[int | Fraction, int | Fraction], radius: int | Fraction, start: Fraction, end: Fraction, sag: int
) -> tuple[Point, ...]:
    """Points along an arc, both ends included, so close that no chord lies more than ``sag`` nm inside it."""
    steps = max(1, -(-chords_around(radius, sag) * abs(end - start) // 1))
    return tuple(
        at_angle(centre, radius, start + (end - start) * Fraction(i, int(steps))) for i in range(int(steps) + 1)
    )


def round_outline(across: int, sag: int) -> tuple[Point, ...]:
    """A circle of this diameter from the lower left corner of its square, its first point on the right."""
    half = Fraction(across, 2)
    return arc((half, half), half, Fraction(0), Fraction(1), sag)[:-1]


def outset(outline: Sequence[Point], allowances: Sequence[int]) -> tuple[Point, ...]:
    """The outline moved outwards at each side by an allowance of its own (inwards if negative), corners kept sharp.

    Side i runs from corner i to the next; where two sides run straight on, the corner moves with the second.
    """
    lines = [_moved(one, other, by) for (one, other), by in zip(sides_of(outline), allowances, strict=True)]
    return tuple(_meeting(before, after) for before, after in zip([lines[-1], *lines], lines, strict=False))


@dataclass(frozen=True)
class _Line:
    """All points with y-run · x - x-run · y = level, and the foot of its first corner on it."""

    run: Point
    level: Fraction
    foot: tuple[Fraction, Fraction]


def _moved(one: Point, other: Point, by: int) -> _Line:
    dx, dy = other[0] - one[0], other[1] - one[1]
    square = dx * dx + dy * dy
    away = by * _times_root(1, Fraction(1, square))
    return _Line((dx, dy), dy * one[0] - dx * one[1] + away * square, (one[0] + away * dy, one[1] - away * dx))


def _meeting(before: _Line, after: _Line) -> Point:
    (ax, ay), (bx, by) = before.run, after.run
    across = ax * by - ay * bx
    if across == 0:
        return round_half_even(after.foot[0]), round_half_even(after.foot[1])
    x, y = ax * after.level - bx * before.level, ay * after.level - by * before.level
    return round_half_even(x / across), round_half_even(y / across)


def chords_around(radius: int | Fraction, sag: int) -> int:
    """How many chords around a full circle, a power of two from 8 on, keep within ``sag`` of it."""
    chords = 8
    while radius * (1 - _direction(Fraction(1, 2 * chords))[0]) > sag:
        chords *= 2
    return chords


def _direction(angle: Fraction) -> tuple[Fraction, Fraction]:
    """Cosine and sine, the same to the last digit in every eighth of the circle."""
    eighths, within = divmod(angle % 1 * 8, 1)
    if eighths % 2:
        within = 1 - within
    x, y = _in_first_eighth(within / 8)
    if eighths in (1, 2, 5, 6):
        x, y = y, x
    return Fraction(x if eighths in (0, 1, 6, 7) else -x, ONE), Fraction(y if eighths < 4 else -y, ONE)


def _in_first_eighth(angle: Fraction) -> tuple[int, int]:
    return cosine_and_sine(round_half_even(2 * PI * angle * ONE))


def cosine_and_sine(radians: int) -> tuple[int, int]:
    """Cosine and sine of an angle from 0 to π, all in units of 1 / `ONE`.

    By the power series, whose rest is below its first term left out.
    """
    sums, term, n = [0, 0, 0, 0], ONE, 0
    while term:
        sums[n % 4] += term
        n += 1
        term = term * radians // (ONE * n)
    return sums[0] - sums[2], sums[1] - sums[3]


def arctangent(tangent: Fraction) -> Fraction:
    """The angle from 0 to π / 2 with this tangent, not below 0, in radians, within 2^-120.

    Halved until its tangent is below 1/16, by tan(a / 2) = tan a / (1 + √(1 + tan² a)); then by its power series.
    """
    small, halved = round_half_even(tangent * ONE), 0
    while 16 * small > ONE:
        small = small * ONE // (ONE + isqrt(ONE * ONE + small * small))
        halved += 1
    total, power, n = 0, small, 1
    while power:
        total += power // n if n % 4 == 1 else -(power // n)
        power = power * small // ONE * small // ONE
        n += 2
    return Fraction(total << halved, ONE)


def power_of_ten(exponent: Fraction) -> Fraction:
    """10 to any power, exact for a whole one, else within 2^-120 of the factor 1 to 10 it has beside a whole one."""
    whole, rest = divmod(exponent, 1)
    return Fraction(10) ** int(whole) * Fraction(_exponential(round_half_even(rest * LN_10 * ONE)), ONE)


def _exponential(power: int) -> int:
    """e to a power from 0 to 3, in units of 1 / `ONE`, by its series."""
    total, term, n = 0, ONE, 0
    while term:
        total += term
        n += 1
        term = term * power // (ONE * n)
    return total


def third_corner(one: Point, other: Point, from_one: int, from_other: int) -> Point | None:
    """The corner to the left of the line from one to the other, at these distances; None where they do not meet."""
    dx, dy = other[0] - one[0], other[1] - one[1]
    square = dx * dx + dy * dy
    along = Fraction(from_one**2 - from_other**2 + square, 2 * square)
    aside = Fraction(from_one**2, square) - along**2
    if aside < 0:
        return None
    return round_half_even(one[0] + along * dx - _times_root(dy, aside)), round_half_even(
        one[1] + along * dy + _times_root(dx, aside)
    )


def _times_root(factor: int, square: Fraction) -> Fraction:
    """A number times a square root: exact where the root is, else within 2^-64."""
    n, d = square.numerator * factor * factor, square.denominator
    size = Fraction(isqrt(n * d << 128), d << 64)
    return size if factor >= 0 else -size


def triangle(base: int, right: int, left: int) -> tuple[Point, Point, Point] | None:
    """The triangle on its base with these sides, all in nm, from its lower left corner; None if they do not close."""
    ends = (0, 0), (base, 0)
    top = third_corner(*ends, left, right)
    return top and (*ends, top)
