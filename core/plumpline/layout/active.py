# Searches all active layouts on a finite list of places: exact when nothing was dropped, a beam search when it was.
"""Branch and bound over active layouts, level by level, one panel more on each.

Every panel may lie in finitely many columns, and in each column on the rows of its residue. Panels are laid with
bottoms that never go down, level ones from left to right, each at the lowest row above what lies there already. Some
shortest layout is
of that form: push every panel down as long as any can go. As in the active schedules of Giffler and Thompson,
*Operations Research* 8 (1960) 487-503, a move is only worth making if its bottom is below the least top of all moves,
since otherwise a panel would have fitted completely underneath all that is still to come.

A state is the number of panels left of each kind and, for each place, the lowest row still open to it; states that
are nowhere better than another are dropped, and so are those whose free area no longer holds what is left. When a
level outgrows the width of the beam the states with the least area to spare go, and the search is no proof any more.

The search asks whether a length can be kept, so a run that fails without having dropped a state proves that no
layout on these places is that short. For places in the columns of a repeat these are all layouts; for free panels
they are if the columns hold all *normal positions* (Herz 1972; Christofides and Whitlock 1977), see
``normal_positions``; beside a slant a panel can come to rest anywhere, so there they are not (``Desk.finite``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.desk import Desk, Spot, at_residue, rise
from plumpline.layout.places import Variant

MOST_PLACES = 160
MOST_NORMAL = 40
_COMPARED = 12

State = tuple[tuple[int, ...], tuple[int, ...]]  # left of each kind, lowest open row of each place (-1: shut)


@dataclass(frozen=True)
class Outcome:
    """A layout within the target, or None; ``complete`` when nothing was dropped, so that None is a proof."""

    spots: tuple[Spot, ...] | None
    complete: bool


@dataclass(frozen=True)
class Place:
    """A column that a variant of a kind may lie in."""

    kind: int
    variant: int
    way: Variant
    x: int


def places_of(desk: Desk, columns: list[list[tuple[int, ...]]]) -> list[Place]:
    """All places of a desk."""
    found = []
    for k, kind in enumerate(desk.kinds):
        for v, variant in enumerate(kind.variants):
            residues = dict(variant.columns or ())
            for x in columns[k][v]:
                found.append(Place(k, v, at_residue(variant, residues.get(x, variant.residue)), x))
    return found


def columns_of(desk: Desk) -> list[list[tuple[int, ...]]] | None:
    """For every kind and variant the columns to search, or None if there are too many of them."""
    normal: list[int] | None = []
    if any(v.columns is None for kind in desk.kinds for v in kind.variants):
        normal = normal_positions(desk)
    if normal is None:
        return None
    columns = [
        [
            tuple(x for x in normal if x + v.w <= desk.width) if v.columns is None else tuple(x for x, _ in v.columns)
            for v in kind.variants
        ]
        for kind in desk.kinds
    ]
    return columns if sum(len(c) for ways in columns for c in ways) <= MOST_PLACES else None


def normal_positions(desk: Desk) -> list[int] | None:
    """Every x at which a panel pushed to the left can come to rest, or None if there are too many.

    A panel rests against the edge, a flaw, or a panel; so against 0, a flaw, or the right end of a panel in one of
    its columns, plus the widths of free panels in between, each used at most as often as there are copies.
    """
    starts = [0] + [x for f in desk.strip.flaws for x in f.rests_across if 0 < x < desk.width]
    for kind in desk.kinds:
        starts += [x + v.w for v in kind.variants if v.columns is not None for x, _ in v.columns]
    reached = dict.fromkeys(starts)
    for kind in desk.kinds:
        widths = sorted({v.w for v in kind.variants if v.columns is None})
        for _ in range(min(kind.qty, desk.width // widths[0]) if widths else 0):
            more = {x + w: None for x in reached for w in widths if x + w + desk.least_w <= desk.width}
            if not more.keys() - reached.keys():
                break
            reached.update(more)
            if len(reached) > MOST_NORMAL:
                return None
    return sorted(x for x in reached if x + desk.least_w <= desk.width)


def _lift(laid: Place, later: Place) -> int:
    """How far above the bottom of a panel laid the next may start: on top of it, or level with it to the right."""
    if later.x < laid.x + laid.way.w and laid.x < later.x + later.way.w:
        return laid.way.h
    return 0 if later.x > laid.x else 1


class ActiveSearch:
    """The places of a desk, and the search over them."""

    def __init__(self, desk: Desk, columns: list[list[tuple[int, ...]]], budget: Budget) -> None:
        self.desk = desk
        self.places = places_of(desk, columns)
        budget.spend(len(self.places) ** 2 // 4)
        self.lift = [[_lift(p, q) for q in self.places] for p in self.places]
        self.of_kind = [[i for i, p in enumerate(self.places) if p.kind == k] for k in range(len(desk.kinds))]
        self.rule = [(p.way.residue, p.way.step) for p in self.places]
        ends = sorted({0, desk.width} | {p.x for p in self.places} | {p.x + p.way.w for p in self.places})
        self.slices = [
            sum(1 << n for n, x in enumerate(ends) if p.x <= x < p.x + p.way.w) for p in self.places
        ]
        self.widths = [b - a for a, b in pairwise(ends)]
        self.width_of: dict[int, int] = {}
        self.states = 0
        self.least_area = [min(v.w * v.h for v in kind.variants) for kind in desk.kinds]

    def within(self, target: int, width: int, budget: Budget) -> Slices[Outcome]:
        """Look for a layout no longer than ``target``, keeping at most ``width`` states on a level.

        Gives up, without a proof, when the budget is spent.
        """
        last = [target + self.desk.strip.gap - p.way.h for p in self.places]
        level = self._start(last)
        came: list[dict[State, tuple[State, Spot]]] = []
        complete = True
        for _ in range(sum(kind.qty for kind in self.desk.kinds)):
            following: dict[State, tuple[State, Spot]] = {}
            for state in level:
                self._expand(state, last, following, budget)
                self.states += 1
                if budget.over:
                    return Outcome(None, False)
                if budget.slice_done():
                    yield
            kept = self._without_dominated(list(following), budget)
            if len(kept) > width:
                kept.sort(key=lambda s: (-self._spare(s, last), s))
                del kept[width:]
                complete = False
            level = kept
            came.append(following)
            if not level:
                return Outcome(None, complete)
        return Outcome(self._trace(level[0], came), complete)

    def _start(self, last: list[int]) -> list[State]:
        left = tuple(kind.qty for kind in self.desk.kinds)
        rows = [self._lowest(i, 0) for i in range(len(self.places))]
        state = (left, tuple(row if row <= end else -1 for row, end in zip(rows, last, strict=True)))
        return [state] if self._can_go_on(state, last) else []

    def _lowest(self, place: int, y: int) -> int:
        p = self.places[place]
        return rise(self.desk.strip.flaws, self.desk.strip.gap, p.way, p.x, y)

    def _can_go_on(self, state: State, last: list[int]) -> bool:
        """Whether every kind still has a place and the open area holds what is left."""
        left, rows = state
        for count, places in zip(left, self.of_kind, strict=True):
            if count and all(rows[i] < 0 for i in places):
                return False
        return self._spare(state, last) >= 0

    def _spare(self, state: State, last: list[int]) -> int:
        """The area within the target that is still open, less the area of the panels left."""
        left, rows = state
        spare = -sum(count * area for count, area in zip(left, self.least_area, strict=True))
        covered, slices, places = 0, self.slices, self.places
        target = last[0] + places[0].way.h
        for row, i in sorted([(row, i) for i, row in enumerate(rows) if row >= 0]):
            fresh = slices[i] & ~covered
            if fresh:
                spare += (target - row) * self._width(fresh)
                covered |= fresh
        return spare

    def _width(self, slices: int) -> int:
        if slices not in self.width_of:
            self.width_of[slices] = sum(w for n, w in enumerate(self.widths) if slices >> n & 1)
        return self.width_of[slices]

    def _expand(
        self, state: State, last: list[int], following: dict[State, tuple[State, Spot]], budget: Budget
    ) -> None:
        """Add every state that one more panel leads to."""
        rows = state[1]
        tops = [(row + self.places[i].way.h, i) for i, row in enumerate(rows) if row >= 0]
        least_top = min(tops)[0]
        for _, i in tops:
            if rows[i] < least_top:
                place = self.places[i]
                after = self._after(state, i, last)
                if after not in following and self._can_go_on(after, last):
                    following[after] = (state, (place.kind, place.variant, place.x, rows[i]))
                budget.spend(8 + len(self.places) // 2)

    def _after(self, state: State, i: int, last: list[int]) -> State:
        """The state after a panel is laid in place ``i``: later ones start no lower, and not over it."""
        left, rows = state
        place, y = self.places[i], rows[i]
        moved = [
            row if row < 0 or row >= (bottom := y + lift) else bottom + (residue - bottom) % step
            for row, lift, (residue, step) in zip(rows, self.lift[i], self.rule, strict=True)
        ]
        if self.desk.strip.flaws:
            moved = [row if row < 0 else self._lowest(j, row) for j, row in enumerate(moved)]
        moved = [row if row <= end else -1 for row, end in zip(moved, last, strict=True)]
        fewer = (*left[: place.kind], left[place.kind] - 1, *left[place.kind + 1 :])
        if not fewer[place.kind]:
            for j in self.of_kind[place.kind]:
                moved[j] = -1
        return fewer, tuple(moved)

    def _without_dominated(self, states: list[State], budget: Budget) -> list[State]:
        """Drop states that are nowhere lower than an earlier kept one with the same panels left."""
        kept: dict[tuple[int, ...], list[tuple[int, ...]]] = {}
        result = []
        ordered = sorted(states, key=lambda s: (s[0], sum(row if row >= 0 else 1 << 62 for row in s[1]), s[1]))
        for left, rows in ordered:
            rivals = kept.setdefault(left, [])
            if any(_nowhere_lower(rival, rows) for rival in rivals[:_COMPARED]):
                continue
            rivals.append(rows)
            result.append((left, rows))
        budget.spend(len(states) * 4)
        return result

    def _trace(self, state: State, came: Sequence[dict[State, tuple[State, Spot]]]) -> tuple[Spot, ...]:
        spots = []
        for level in reversed(came):
            state, spot = level[state]
            spots.append(spot)
        return tuple(reversed(spots))


def _nowhere_lower(rival: tuple[int, ...], rows: tuple[int, ...]) -> bool:
    return all(r >= 0 and r <= row if row >= 0 else True for r, row in zip(rival, rows, strict=True))
