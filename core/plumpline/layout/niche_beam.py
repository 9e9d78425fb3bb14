# Looks for a layout of free panels niche by niche, and keeps the states that wasted least on every level.
"""Beam search over skylines, for free panels of few sizes.

The lowest niche of the skyline takes a panel at one of its walls or is raised to its lower wall, as in the best-fit
heuristic of Burke, Kendall and Whitwell, *Operations Research* 52 (2004) 655-671. Within a target length each row of
a niche can take no more weight, and no more width, than the best set of panels side by side in it (``weights``); a
state whose rows no longer hold what is left is dropped, and of the others on a level, with as many panels laid, those
stay that wasted least for each unit of weight, or of area, they laid (Libralesso and Fontan, *European Journal of
Operational Research* 291 (2021) 883-893, from memory). Since panels are laid at one wall of the lowest niche only, not
all layouts are looked at, and finding none proves nothing.

A state costs O(k·s) for k ways of the panels and s steps of the skyline.
"""

from __future__ import annotations

from typing import Literal, NamedTuple

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.desk import Desk, Spot
from plumpline.layout.niches import settle
from plumpline.layout.skyline import merge
from plumpline.layout.weights import Capacity, row_weights

Measure = Literal["weight", "area"]
Wall = Literal["left", "higher"]
Way = tuple[int, int, int, int]  # kind, variant, width, length
Trail = tuple["Trail", Spot] | None
State = tuple[int, tuple[int, ...], tuple[int, ...]]  # what is left of the kinds, and the skyline (xs, ys)
Level = dict[State, tuple[float, Trail]]  # waste for each unit laid, and how the state came about


class Left(NamedTuple):
    """What is left to lay: its weight along the roll and its area, its ways, their least width and length."""

    weight: int
    area: int
    ways: list[Way]
    least_w: int
    least_h: int


class NicheBeam:
    """The panels of a desk, and the search over them.

    What is left of the kinds is one number with ``bits`` bits for each. Raises ``TooManySets`` where too many sets of
    panels fit side by side.
    """

    def __init__(self, desk: Desk, budget: Budget) -> None:
        self.desk = desk
        self.ways = [(k, v, way.w, way.h) for k, kind in enumerate(desk.kinds) for v, way in enumerate(kind.variants)]
        weights = row_weights(desk, budget)
        self.capacity = Capacity(desk, weights, budget)
        self.burdens = [
            (min(w * v.h for w, v in zip(of, kind.variants, strict=True)), min(v.w * v.h for v in kind.variants))
            for kind, of in zip(desk.kinds, weights, strict=True)
        ]
        self.bits = max(kind.qty for kind in desk.kinds).bit_length()
        self.all = sum(kind.qty << self.bits * k for k, kind in enumerate(desk.kinds))
        self.left_of: dict[int, Left] = {}

    def within(
        self, target: int, width: int, budget: Budget, measure: Measure, wall: Wall
    ) -> Slices[tuple[Spot, ...] | None]:
        """A layout no longer than ``target``, keeping at most ``width`` states on a level; None if none was found."""
        run = _Run(self, target + self.desk.strip.gap, measure, wall)
        level: Level = {(self.all, (0, self.desk.width), (0,)): (0.0, None)}
        for _ in range(sum(kind.qty for kind in self.desk.kinds)):
            following: Level = {}
            for state, (_, trail) in sorted(level.items(), key=lambda item: item[1][0])[:width]:
                budget.spend(4 + 5 * run.expand(state, trail, following))
                if run.found is not None or budget.over:
                    return run.found
                if budget.slice_done():
                    yield
            level = following
        return None

    def left(self, digits: int) -> Left:
        """What the digits say is left."""
        found = self.left_of.get(digits)
        if found is None:
            counts = [digits >> self.bits * k & (1 << self.bits) - 1 for k in range(len(self.burdens))]
            ways = [way for way in self.ways if counts[way[0]]]
            found = self.left_of[digits] = Left(
                sum(n * weight for n, (weight, _) in zip(counts, self.burdens, strict=True)),
                sum(n * area for n, (_, area) in zip(counts, self.burdens, strict=True)),
                ways, min([w for _, _, w, _ in ways], default=0), min([h for _, _, _, h in ways], default=0),
            )
        return found


class _Run:
    """One run with one target, ``end`` with the gap."""

    def __init__(self, beam: NicheBeam, end: int, measure: Measure, wall: Wall) -> None:
        self.beam = beam
        self.end = end
        self.measure = measure
        self.wall = wall
        self.whole = beam.left(beam.all)
        weight, area = beam.capacity[beam.desk.width]
        self.spare_weight, self.spare_area = end * weight - self.whole.weight, end * area - self.whole.area
        self.found: tuple[Spot, ...] | None = None

    def expand(self, state: State, trail: Trail, following: Level) -> int:
        """Add every state that one more panel leads to, in the lowest niche or after it was raised; how many moves."""
        digits, steps, tops = state
        xs, ys = list(steps), list(tops)
        left = self.beam.left(digits)
        moves = 0
        while True:
            low = min(ys)
            i = ys.index(low)
            room, niche = self.end - low, xs[i + 1] - xs[i]
            at_right = self.wall == "higher" and i > 0 and (i + 1 == len(ys) or ys[i - 1] < ys[i + 1])
            for kind, variant, w, h in left.ways:
                if w <= niche and h <= room:
                    moves += 1
                    spot = kind, variant, xs[i + 1] - w if at_right else xs[i], low
                    after = xs[:], ys[:]
                    settle(*after, i, spot[2], w, low + h)
                    self._enter(digits - (1 << self.beam.bits * kind), *after, (trail, spot), following)
            if len(ys) == 1:
                return moves
            _raise(xs, ys, i)
            moves += 1
            if self.end - min(ys) < left.least_h or not self._holds(left, *self._open(xs, ys)):
                return moves

    def _enter(self, digits: int, xs: list[int], ys: list[int], trail: Trail, following: Level) -> None:
        """Note a state, its lowest niche wide enough for some panel, if its rows hold what is left."""
        if not digits:
            self.found = _spots(trail)
            return
        left = self.beam.left(digits)
        i = ys.index(min(ys))
        while xs[i + 1] - xs[i] < left.least_w:
            _raise(xs, ys, i)
            i = ys.index(min(ys))
        state = digits, tuple(xs), tuple(ys)
        if state in following:
            return
        weight, area = self._open(xs, ys)
        if not self._holds(left, weight, area):
            return
        if self.measure == "weight":
            waste, laid = self.spare_weight - weight + left.weight, self.whole.weight - left.weight
        else:
            waste, laid = self.spare_area - area + left.area, self.whole.area - left.area
        following[state] = waste / max(laid, 1), trail

    def _holds(self, left: Left, weight: int, area: int) -> bool:
        return weight >= left.weight and area >= left.area

    def _open(self, xs: list[int], ys: list[int]) -> tuple[int, int]:
        """The most weight and area that the rows above the skyline can hold, each niche by itself.

        A niche ends where a higher step comes, as in the largest rectangle under a histogram: O(s) for s steps.
        """
        capacity, end = self.beam.capacity, self.end
        weight = area = 0
        lows, lefts = [end + 1], [0]
        for x, y in zip(xs, [*ys, end], strict=True):
            left = x
            while lows[-1] <= y:
                low, left = lows.pop(), lefts.pop()
                rows = min(lows[-1], y) - low
                if rows:
                    most_weight, most_width = capacity[x - left]
                    weight += rows * most_weight
                    area += rows * most_width
            lows.append(y)
            lefts.append(left)
        return weight, area


def _raise(xs: list[int], ys: list[int], i: int) -> None:
    """Raise step ``i``, lower than its neighbours, to the lower of them."""
    ys[i] = min(ys[max(i - 1, 0) : i] + ys[i + 1 : i + 2])
    merge(xs, ys, i)


def _spots(trail: Trail) -> tuple[Spot, ...]:
    spots = []
    while trail is not None:
        trail, spot = trail
        spots.append(spot)
    return tuple(reversed(spots))
