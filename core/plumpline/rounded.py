"""Outlines with rounded corners, exactly: how long their sides are, where their arcs lie, their lines moved outwards.

Directions, cosines and angles are whole numbers of 1 / `ONE`; what becomes a length is rounded once, half to even.
Points are (across, up) in nm, outlines run anticlockwise.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property, lru_cache
from itertools import accumulate
from math import isqrt

from plumpline.geometry import (
    ONE,
    PI,
    Point,
    arctangent,
    chords_around,
    cosine_and_sine,
    distance,
    mirrored,
    outset,
    sides_of,
)
from plumpline.lengths import round_half_even

#: What is no longer than this, in nm, is nothing: a thousandth of an inch, which measures that check each other lose.
UNSEEN = 25_400


@dataclass(frozen=True)
class Turn:
    """A corner of an outline, and the directions of the side before it and the side after it, each of length `ONE`."""

    at: Point
    before: Point
    after: Point

    @property
    def sine(self) -> int:
        """Of the angle that the outline turns by here: above 0 where the corner points outwards."""
        (ax, ay), (bx, by) = self.before, self.after
        return (ax * by - ay * bx) // ONE

    @cached_property
    def half_tangent(self) -> Fraction:
        """The tangent of half that angle: what a round takes of each side, as a share of its radius."""
        (ax, ay), (bx, by) = self.before, self.after
        return Fraction(self.sine, ONE + (ax * bx + ay * by) // ONE)

    @cached_property
    def angle(self) -> Fraction:
        """The angle in radians."""
        return 2 * arctangent(self.half_tangent)

    def foot(self, along: Fraction | int, way: Point) -> tuple[Fraction, Fraction]:
        """The point so far from the corner in a direction of length `ONE`, not rounded."""
        return self.at[0] + along * Fraction(way[0], ONE), self.at[1] + along * Fraction(way[1], ONE)

    def centre(self, radius: int) -> tuple[Fraction, Fraction]:
        """The middle of the round of this radius that lies against both sides."""
        x, y = self.foot(-radius * self.half_tangent, self.before)
        return x - radius * Fraction(self.before[1], ONE), y + radius * Fraction(self.before[0], ONE)


@dataclass(frozen=True)
class RoundedOutline:
    """An outline by its sharp corners, each with the radius it is rounded by: 0 where it stays as it is.

    Only corners that point outwards are rounded, and so far only that the arcs at both ends of a side fit on it.
    """

    corners: tuple[Point, ...]
    radii: tuple[int, ...]

    @cached_property
    def turns(self) -> tuple[Turn, ...]:
        """Every corner with how the outline turns there."""
        ways = [_direction(*side) for side in sides_of(self.corners)]
        return tuple(map(Turn, self.corners, (ways[-1], *ways[:-1]), ways))

    @cached_property
    def taken(self) -> tuple[int, ...]:
        """What rounding a corner takes of each of its two sides, in nm: r · tan(turn / 2)."""
        return tuple(round_half_even(r * turn.half_tangent) if r else 0 for r, turn in self._rounds)

    @cached_property
    def arcs(self) -> tuple[int, ...]:
        """The arc at each corner, r · turn, in nm; all together rounded once, so that four quarters are a circle."""
        angles = [r * turn.angle if r else Fraction(0) for r, turn in self._rounds]
        ends = [round_half_even(so_far) for so_far in accumulate(angles)]
        return tuple(end - start for start, end in zip([0, *ends], ends, strict=False))

    @cached_property
    def sides(self) -> tuple[int, ...]:
        """Each side from the middle of one corner to the middle of the next, along the line, in nm."""
        return tuple(
            self._half_after(number) + long - self.taken[number] - self.taken[after] + self.arcs[after] // 2
            for number, after, long in self._along
        )

    @property
    def _rounds(self) -> list[tuple[int, Turn]]:
        return list(zip(self.radii, self.turns, strict=True))

    @property
    def _along(self) -> list[tuple[int, int, int]]:
        """Every side by its number, that of its second corner, and its length between the sharp corners."""
        count = len(self.corners)
        return [(i, (i + 1) % count, distance(*side)) for i, side in enumerate(sides_of(self.corners))]

    def _half_after(self, number: int) -> int:
        return self.arcs[number] - self.arcs[number] // 2

    def bends(self, sag: int, allowances: Sequence[int] = ()) -> list[tuple[Point, ...]]:
        """The points at every corner of the line moved outwards by an allowance of each side; left out, of the line.

        A sharp corner is one point. Round an arc the allowance grows evenly from that of the side before to that of
        the side after, and never beyond the straight lines of the two. No chord lies more than `sag` nm inside.
        """
        moved = outset(self.corners, allowances) if any(allowances) else self.corners
        allowed = allowances or [0] * len(self.corners)
        ends = zip([allowed[-1], *allowed], allowed, strict=False)
        return [
            _bend(turn, radius, end, sag) if radius else (point,)
            for (radius, turn), point, end in zip(self._rounds, moved, ends, strict=True)
        ]

    def points(self, sag: int, allowances: Sequence[int] = ()) -> tuple[Point, ...]:
        """The whole line moved outwards, as `bends` has it; where two arcs meet there is one point."""
        bends = self.bends(sag, allowances)
        ends = zip([bends[-1], *bends], bends, strict=False)
        meets = [distance(before[-1], bend[0]) < UNSEEN for before, bend in ends]
        return tuple(point for bend, met in zip(bends, meets, strict=True) for point in bend[met:])

    def straights(self, sag: int, allowances: Sequence[int] = ()) -> list[tuple[Point, Point]]:
        """What is left straight of every side of that line, from end to end."""
        bends = self.bends(sag, allowances)
        return [(bend[-1], after[0]) for bend, after in zip(bends, [*bends[1:], bends[0]], strict=True)]

    def at(self, side: int, along: Fraction | int) -> Point:
        """The point so far along a side from the middle of its first corner, half of its arc included."""
        number, after, long = self._along[side]
        first, straight = self._half_after(number), long - self.taken[number] - self.taken[after]
        if along < first:
            return _on_arc(self.turns[number], self.radii[number], self.arcs[number] - first + along)
        if along > first + straight:
            return _on_arc(self.turns[after], self.radii[after], along - first - straight)
        x, y = self.turns[number].foot(self.taken[number] + along - first, self.turns[number].after)
        return round_half_even(x), round_half_even(y)

    def mirrored(self, width: int) -> RoundedOutline:
        """The line seen from behind, within a box so wide: side i is side n - 1 - i of this one."""
        return RoundedOutline(mirrored(self.corners, width), (self.radii[0], *self.radii[:0:-1]))


def rounded_outwards(corners: tuple[Point, ...], radius: int) -> RoundedOutline:
    """The outline with every corner that points outwards rounded by this radius."""
    sharp = RoundedOutline(corners, (0,) * len(corners))
    return replace(sharp, radii=tuple(radius if turn.sine > 0 else 0 for turn in sharp.turns))


def _direction(one: Point, other: Point) -> Point:
    dx, dy = other[0] - one[0], other[1] - one[1]
    square = dx * dx + dy * dy
    x, y = (isqrt((d * ONE) ** 2 // square) for d in (dx, dy))
    return (x if dx >= 0 else -x), (y if dy >= 0 else -y)


@lru_cache(maxsize=512)  # front and back, their allowances and their marks ask for the same arcs
def _bend(turn: Turn, radius: int, allowances: tuple[int, int], sag: int) -> tuple[Point, ...]:
    """Points along the arc at a corner, both ends included."""
    start, end = allowances
    whole = chords_around(radius + max(allowances), sag)
    steps = max(1, int(-(-whole * turn.angle // (2 * PI))))
    cosine, sine = cosine_and_sine(round_half_even(turn.angle * ONE / steps))
    first, last = (turn.before[1], -turn.before[0]), (turn.after[1], -turn.after[0])
    (cx, cy), (x, y) = turn.centre(radius), first
    points = []
    for step in range(steps + 1):
        reach = Fraction((radius + start) * steps + (end - start) * step, steps * ONE)
        for (across, up), allowance in ((first, start), (last, end)):
            ahead = (x * across + y * up) // ONE
            reach = min(reach, Fraction(radius + allowance, ahead)) if ahead > 0 else reach
        points.append((round_half_even(cx + reach * x), round_half_even(cy + reach * y)))
        x, y = (x * cosine - y * sine) // ONE, (x * sine + y * cosine) // ONE
    return tuple(points)


def _on_arc(turn: Turn, radius: int, along: Fraction | int) -> Point:
    """The point so far along the arc at a corner."""
    cosine, sine = cosine_and_sine(round_half_even(Fraction(along) * ONE / radius))
    (cx, cy), (x, y) = turn.centre(radius), (turn.before[1], -turn.before[0])
    reach = Fraction(radius, ONE * ONE)
    return round_half_even(cx + reach * (x * cosine - y * sine)), round_half_even(cy + reach * (x * sine + y * cosine))
