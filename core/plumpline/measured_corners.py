# The corners of a pad or seat found from its measured sides and diagonals, and which measure cannot be right.
"""Corners are numbered anticlockwise from the front left one; side i runs from corner i to the next; lengths in nm.

Every corner but the first two is found from two measures to corners already found, so four sides need one diagonal and
n sides n - 3. Each further measure checks the others. A diagonal is taken to lie inside the outline, unless it cuts off
a corner that is said to turn inwards; where that makes no sound outline, up to two corners are taken to lie on the
other side of what holds them, as they do where a diagonal runs outside past a shallow notch.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations
from typing import Literal

from plumpline.geometry import Point, area, distance, sides_of, third_corner

_MISSHAPEN = ("turns-inward", "turns-outward", "crosses-itself")


@dataclass(frozen=True, order=True)
class Measure:
    """A tape held from corner to corner."""

    one: int
    other: int
    length: int


@dataclass(frozen=True)
class Doubt:
    """A measure that cannot be right beside the others, and what it would have to be: exactly, at least or at most."""

    measure: Measure
    would_be: int
    bound: Literal["exactly", "at-least", "at-most"] = "exactly"


@dataclass(frozen=True)
class Closed:
    """The corners, and by how much a checking measure is off at the worst."""

    corners: tuple[Point, ...]
    off: int


@dataclass(frozen=True)
class Open:
    """Why there is no outline: `code`, the corner it is about (if it is about one) and the measures in doubt.

    ``too-long``: a measure is longer than the way round by others. ``not-held``: a corner needs one more measure.
    ``do-not-meet``: the two measures that hold a corner end apart. ``disagree``: measures contradict each other; each
    that may be the one misread is named with what the others make of it, the smallest change first (none: more than
    one is wrong). ``turns-inward``, ``turns-outward``: a corner does not turn as it is said to. ``crosses-itself``:
    sides run through one another.
    """

    code: str
    corner: int | None = None
    doubts: tuple[Doubt, ...] = ()


def close(sides: Sequence[int], diagonals: Sequence[Measure], notches: Sequence[int], within: int) -> Closed | Open:
    """The outline, if every checking measure is met ``within`` so many nm; `notches` are corners turning inwards."""
    return _Tapes(sides, diagonals, notches).close(within)


class _Tapes:
    """All measures of one outline."""

    def __init__(self, sides: Sequence[int], diagonals: Sequence[Measure], notches: Sequence[int]) -> None:
        self.count = len(sides)
        self.notches = notches
        self.all = [*(Measure(i, (i + 1) % self.count, length) for i, length in enumerate(sides)), *diagonals]

    def close(self, within: int) -> Closed | Open:
        too_long = tuple(self._too_long())
        if too_long:
            return Open("too-long", doubts=too_long)
        found = self._sound(self.all, within)
        if not isinstance(found, Open):
            return Closed(tuple(found[i] for i in range(self.count)), _off(found, self.all))
        if found.code in _MISSHAPEN:
            return found
        doubts = self._doubts(within)
        return Open("disagree", None, doubts) if doubts else found

    def _sound(self, measures: Sequence[Measure], within: int) -> dict[int, Point] | Open:
        """The corners of a sound outline with these measures, or what is wrong with the likeliest."""
        first = self._outline(measures, within, ())
        if not isinstance(first, Open) or first.code == "not-held":
            return first
        others = (self._outline(measures, within, turned) for turned in self._ways_to_turn())
        return next((found for found in others if not isinstance(found, Open)), first)

    def _ways_to_turn(self) -> Iterator[tuple[int, ...]]:
        """The corners that may lie on the other side of what holds them: without a notch, none does."""
        for count in (1, 2) if self.notches else ():
            yield from combinations(range(self.count), count)

    def _outline(self, measures: Sequence[Measure], within: int, turned: tuple[int, ...]) -> dict[int, Point] | Open:
        found = self._corners(measures, turned)
        if isinstance(found, Open):
            return found
        return Open("disagree") if _off(found, measures) > within else self._misshapen(found) or found

    def _too_long(self) -> Iterator[Doubt]:
        """The measures that are longer than the shortest way round by the others."""
        for measure in self.all:
            way = self._way_round(measure)
            if way < measure.length:
                yield Doubt(measure, way, "at-most")

    def _way_round(self, left_out: Measure) -> int:
        """The shortest way from end to end of a measure without it (Bellman and Ford)."""
        others = [measure for measure in self.all if measure is not left_out]
        ways = {left_out.one: 0}
        for _ in range(self.count):
            for start, end, length in _both_ways(others):
                if start in ways:
                    ways[end] = min(ways.get(end, ways[start] + length), ways[start] + length)
        return ways[left_out.other]

    def _corners(self, measures: Sequence[Measure], turned: tuple[int, ...]) -> dict[int, Point] | Open:
        """All corners, the first measure level; those `turned` lie on the unlikely side of what holds them."""
        lengths = {(start, end): length for start, end, length in _both_ways(measures)}
        base = measures[0]
        found = {base.one: (0, 0), base.other: (base.length, 0)}
        while len(found) < self.count:
            step = self._next(found, lengths)
            if step is None:
                return Open("not-held", next(i for i in range(self.count) if i not in found))
            corner, *ends = step
            one, other = reversed(ends) if corner in turned else ends
            from_one, from_other = lengths[one, corner], lengths[other, corner]
            place = third_corner(found[one], found[other], from_one, from_other)
            if place is None:
                between = distance(found[one], found[other])
                return _apart(Measure(one, corner, from_one), Measure(other, corner, from_other), between)
            found[corner] = place
        return found

    def _next(self, found: dict[int, Point], lengths: dict[tuple[int, int], int]) -> tuple[int, int, int] | None:
        """A corner held by two others, by sides if it can be, and those two with the corner to the left of them."""
        held = [
            (corner, one, other)
            for corner in range(self.count)
            for one, other in combinations(found, 2)
            if corner not in found and (one, corner) in lengths and (other, corner) in lengths
        ]
        best = max(held, key=lambda step: sum(self._are_neighbours(step[0], end) for end in step[1:]), default=None)
        return best and self._left_handed(*best)

    def _are_neighbours(self, one: int, other: int) -> bool:
        return (one - other) % self.count in (1, self.count - 1)

    def _left_handed(self, corner: int, one: int, other: int) -> tuple[int, int, int]:
        in_order = (other - one) % self.count < (corner - one) % self.count
        return (corner, one, other) if in_order != self._cuts_off_a_notch(corner, one, other) else (corner, other, one)

    def _cuts_off_a_notch(self, *corners: int) -> bool:
        """Whether three corners are one that turns inwards and its two neighbours."""
        return any(
            notch in corners and all(end == notch or self._are_neighbours(notch, end) for end in corners)
            for notch in self.notches
        )

    def _doubts(self, within: int) -> tuple[Doubt, ...]:
        """Each measure without which all others make a sound outline, and what that makes of it."""
        doubts = self._made_right_alone(within)
        return tuple(sorted(doubts, key=lambda doubt: abs(doubt.would_be - doubt.measure.length)))

    def _made_right_alone(self, within: int) -> Iterator[Doubt]:
        for measure in self.all:
            others = [other for other in self.all if other is not measure]
            found = self._sound(others, within)
            if not isinstance(found, Open):
                yield Doubt(measure, distance(found[measure.one], found[measure.other]))

    def _misshapen(self, found: dict[int, Point]) -> Open | None:
        for corner in range(self.count):
            turn = area([found[(corner + step) % self.count] for step in (-1, 0, 1)])
            if turn < 0 and corner not in self.notches:
                return Open("turns-inward", corner)
            if turn >= 0 and corner in self.notches:
                return Open("turns-outward", corner)
        return Open("crosses-itself") if crosses_itself([found[i] for i in range(self.count)]) else None


def crosses_itself(corners: Sequence[Point]) -> bool:
    """Whether any side of an outline runs through another."""
    return any(_cross(*one, *other) for one, other in combinations(sides_of(corners), 2))


def _both_ways(measures: Sequence[Measure]) -> list[tuple[int, int, int]]:
    return [way for m in measures for way in ((m.one, m.other, m.length), (m.other, m.one, m.length))]


def _off(found: dict[int, Point], measures: Sequence[Measure]) -> int:
    """By how much the worst measure differs from its place on the outline."""
    return max(abs(distance(found[m.one], found[m.other]) - m.length) for m in measures)


def _apart(one: Measure, other: Measure, between: int) -> Open:
    """Two measures that do not meet, their far ends so far apart."""
    shorter, longer = sorted((one, other), key=lambda measure: measure.length)
    if longer.length > shorter.length + between:
        doubts = Doubt(longer, shorter.length + between, "at-most"), Doubt(shorter, longer.length - between, "at-least")
    else:
        doubts = Doubt(one, between - other.length, "at-least"), Doubt(other, between - one.length, "at-least")
    return Open("do-not-meet", one.other, doubts)


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two lines run through one another; meeting at an end is no crossing."""
    return area((a, b, c)) * area((a, b, d)) < 0 and area((c, d, a)) * area((c, d, b)) < 0
