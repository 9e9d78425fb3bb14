# Searches all active layouts on a finite list of places: exact when nothing was dropped, a beam search when it was.
"""Branch and bound over active layouts, level by level, one panel more on each.

Every panel may lie in finitely many columns, and in each column on the rows of its residue. Panels are laid with
bottoms that never go down, level ones from left to right, each at the lowest row above what lies there already. Some
shortest layout is
of that form: push every panel down as long as any can go. As in the active schedules of Giffler and Thompson,
*Operations Research* 8 (1960) 487-503, a move is only worth making if its bottom is below the least top of all moves,
since otherwise a panel would have fitted completely underneath all that is still to come.

A state is the number of panels left of each kind and, for each place, the lowest row still open to it; states that
are nowhere better than another are dropped, and so are those whose open rows no longer hold what is left, by area or by
the weights of the covering programme (``weights``). When a level outgrows the width of the beam the states that wasted
most for what they have laid go, and the search is no proof any more. One guide counts both in area, the other by the
weights of the rows; both are tried (a beam search with a ratio as its guide: Libralesso and Fontan, *European Journal
of Operational Research* 291 (2021) 883-893, from memory).

The search asks whether a length can be kept, so a run that fails without having dropped a state proves that no
layout on these places is that short. For places in the columns of a repeat these are all layouts; for free panels
they are if the columns hold all *normal positions* (Herz 1972; Christofides and Whitlock 1977), see
``normal_positions``; beside a slant a panel can come to rest anywhere, so there they are not (``Desk.finite``).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import accumulate, pairwise
from operator import le
from typing import Literal

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.desk import Desk, Spot, at_residue, rise
from plumpline.layout.places import Variant
from plumpline.layout.weights import Fullest, row_weights

MOST_PLACES = 160
MOST_NORMAL = 40
_COMPARED = 12
REMEMBERED = 5_000

State = tuple[int, tuple[int, ...]]  # what is left of the kinds, and for each place the key of its lowest open row
Guide = Literal["area", "rows"]
Level = dict[State, tuple[float, State, int, int]]  # worth by the guide, where from, key of the move, length so far


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


class _Widths(dict[int, int]):
    """The width of any slices of the cloth, given as bits, from the width of each."""

    def __init__(self, widths: list[int]) -> None:
        super().__init__()
        self.widths = widths

    def __missing__(self, slices: int) -> int:
        self[slices] = width = sum(w for n, w in enumerate(self.widths) if slices >> n & 1)
        return width


class ActiveSearch:
    """The places of a desk, and the search over them.

    A row is written as a *key*, the row and, in the last ``shift`` bits, the place: keys of one place compare as its
    rows do, and sorting the keys of a state sorts its places from the lowest up. What is left of the kinds is one
    number with ``bits`` bits for each.
    """

    def __init__(self, desk: Desk, columns: list[list[tuple[int, ...]]], budget: Budget) -> None:
        self.desk = desk
        self.budget = budget
        self.places = places_of(desk, columns)
        self.count = len(self.places)
        self.shift = self.count.bit_length()
        self.bits = max(kind.qty for kind in desk.kinds).bit_length()
        budget.spend(self.count**2 // 4)
        self.lift = [[_lift(p, q) for q in self.places] for p in self.places]
        ends = sorted({0, desk.width} | {p.x for p in self.places} | {p.x + p.way.w for p in self.places})
        self.slices = [
            sum(1 << n for n, x in enumerate(ends) if p.x <= x < p.x + p.way.w) for p in self.places
        ]
        self.widths_over = _Widths([b - a for a, b in pairwise(ends)])
        self.states = 0
        starts = [0, *accumulate(sum(p.kind == k for p in self.places) for k in range(len(desk.kinds)))]
        self.of_kind = list(pairwise(starts))
        self.left_of: dict[int, tuple[int, int, list[tuple[int, int]]]] = {}

    def within(self, target: int, width: int, budget: Budget, guide: Guide) -> Slices[Outcome]:
        """Look for a layout no longer than ``target``, keeping at most ``width`` states on a level.

        Gives up, without a proof, when the budget is spent.
        """
        run = _Run(self, target, guide)
        level = run.start()
        tops = [0] * len(level)
        came: list[Level] = []
        complete = True
        for _ in range(sum(kind.qty for kind in self.desk.kinds)):
            following: Level = {}
            for state, top in zip(level, tops, strict=True):
                budget.spend(2 + run.expand(state, top, following) * (4 + self.count // 6))
                self.states += 1
                if budget.over:
                    return Outcome(None, False)
                if budget.slice_done():
                    yield
            kept = _best(following, width + 1)
            budget.spend(len(following) + 2 * len(kept))
            complete = complete and len(kept) <= width
            level = kept[:width]
            tops = [following[state][3] for state in level]
            came.append(following)
            if not level:
                return Outcome(None, complete)
        return Outcome(self._trace(level[0], came), complete)

    @cached_property
    def fullest(self) -> Fullest:
        """What can lie side by side on slices of the width, by weight."""
        weights = [self.weights[p.kind][p.variant] for p in self.places]
        return Fullest(list(zip(self.slices, weights, strict=True)), len(self.widths_over.widths))

    @cached_property
    def weights(self) -> list[list[int]]:
        """What each variant of each kind weighs in a row."""
        return row_weights(self.desk, self.budget)

    @cached_property
    def burdens(self) -> list[tuple[int, int]]:
        """The least area of a panel of each kind, and the least weight along its length."""
        return [
            (min(v.w * v.h for v in kind.variants), min(w * v.h for w, v in zip(weights, kind.variants, strict=True)))
            for kind, weights in zip(self.desk.kinds, self.weights, strict=True)
        ]

    def lowest(self, place: int, y: int) -> int:
        """The lowest row of a place from ``y`` up."""
        p = self.places[place]
        return rise(self.desk.strip.flaws, self.desk.strip.gap, p.way, p.x, y)

    def left(self, digits: int) -> tuple[int, int, list[tuple[int, int]]]:
        """The area and the weight of what is left, and the ranges of the places of each kind of it."""
        if digits not in self.left_of:
            counts = [self.left_of_kind(digits, k) for k in range(len(self.desk.kinds))]
            area = sum(n * area for n, (area, _) in zip(counts, self.burdens, strict=True))
            weight = sum(n * weight for n, (_, weight) in zip(counts, self.burdens, strict=True))
            self.left_of[digits] = area, weight, [places for n, places in zip(counts, self.of_kind, strict=True) if n]
        return self.left_of[digits]

    def left_of_kind(self, digits: int, kind: int) -> int:
        """How many are left of a kind."""
        return digits >> self.bits * kind & (1 << self.bits) - 1

    def _trace(self, state: State, came: Sequence[Level]) -> tuple[Spot, ...]:
        spots = []
        for level in reversed(came):
            _, state, key, _ = level[state]
            place = self.places[key & (1 << self.shift) - 1]
            spots.append((place.kind, place.variant, place.x, key >> self.shift))
        return tuple(reversed(spots))


class _Run:
    """One run with one target: ``shut`` is the key of a row that no panel may start on any more."""

    def __init__(self, search: ActiveSearch, target: int, guide: Guide) -> None:
        self.search = search
        self.guide = guide
        self.end = target + search.desk.strip.gap
        self.last = [self.end - p.way.h for p in search.places]
        self.heights = [p.way.h for p in search.places]
        self.shift = search.shift
        self.place = (1 << self.shift) - 1
        self.shut = self.end + 1 << self.shift
        self.across = (1 << len(search.widths_over.widths)) - 1
        self.digits = sum(kind.qty << search.bits * k for k, kind in enumerate(search.desk.kinds))
        self.area, self.weight, _ = search.left(self.digits)
        self.most_area = self.end * search.desk.width
        self.most_weight = self.end * search.fullest[self.across]
        self.raised: dict[int, tuple[int, ...]] = {}
        self.closed = [
            tuple(self.shut + i if a <= i < b else 0 for i in range(search.count)) for a, b in search.of_kind
        ]

    def start(self) -> list[State]:
        """The state before anything is laid, if all can be laid at all."""
        keys = self._keys([0] * self.search.count)
        area, weight = self._open(keys)
        return [(self.digits, keys)] if area >= self.area and weight >= self.weight else []

    def expand(self, state: State, top: int, following: Level) -> int:
        """Add every state that one more panel leads to; how many moves there were."""
        digits, keys = state
        moves: list[tuple[int, int]] = []
        least_top = self.end + 1
        for key in sorted(keys):
            y = key >> self.shift
            if y >= least_top:
                break
            end = y + self.heights[key & self.place]
            least_top = min(least_top, end)
            moves.append((key, end))
        for key, end in moves:
            after = self._after(digits, keys, key)
            if after not in following:
                self._enter(after, (state, key, max(top, end)), following)
        return len(moves)

    def _enter(self, after: State, move: tuple[State, int, int], following: Level) -> None:
        """Note a state if the open rows hold what is left and every kind of it still has a place.

        When nothing is left the length stands for the rows, so that the shortest layout dominates the others.
        """
        if not after[0]:
            following[0, (move[2],)] = (0.0, *move)
            return
        area, weight, ranges = self.search.left(after[0])
        keys, shut = after[1], self.shut
        for a, b in ranges:
            if min(keys[a:b]) >= shut:
                return
        open_area, open_weight = self._open(keys)
        if open_area < area or open_weight < weight:
            return
        if self.guide == "rows":
            waste, laid = self.most_weight - self.weight - open_weight + weight, self.weight - weight
        else:
            waste, laid = self.most_area - self.area - open_area + area, self.area - area
        following[after] = (waste / max(laid, 1), *move)

    def _open(self, keys: tuple[int, ...]) -> tuple[int, int]:
        """The area within the target that is still open to panels that are left, and the most they can weigh there."""
        slices, widths, fullest, shut = self.search.slices, self.search.widths_over, self.search.fullest, self.shut
        place, shift = self.place, self.shift
        area = weight = reached = open_slices = 0
        for key in sorted(keys):
            if key >= shut:
                break
            wider = open_slices | slices[key & place]
            if wider != open_slices:
                y = key >> shift
                if y > reached:
                    area += (y - reached) * widths[open_slices]
                    weight += (y - reached) * fullest[open_slices]
                    reached = y
                open_slices = wider
                if wider == self.across:
                    break
        above = self.end - reached
        return area + above * widths[open_slices], weight + above * fullest[open_slices]

    def _after(self, digits: int, keys: tuple[int, ...], key: int) -> State:
        """The state after the panel of ``key`` is laid: later ones start no lower, and not over it."""
        if key not in self.raised:
            if len(self.raised) >= REMEMBERED:
                self.raised.clear()
            self.raised[key] = self._keys([(key >> self.shift) + lift for lift in self.search.lift[key & self.place]])
        kind = self.search.places[key & self.place].kind
        moved = map(max, keys, self.raised[key])
        digits -= 1 << self.search.bits * kind
        if not self.search.left_of_kind(digits, kind):
            moved = map(max, moved, self.closed[kind])
        return digits, tuple(moved)

    def _keys(self, rows: list[int]) -> tuple[int, ...]:
        """The keys of the lowest rows of all places from ``rows`` up."""
        lowest = [self.search.lowest(i, row) for i, row in enumerate(rows)]
        shift, shut = self.shift, self.shut
        return tuple(
            (y << shift) + i if y <= last else shut + i
            for i, (y, last) in enumerate(zip(lowest, self.last, strict=True))
        )


def _best(level: Level, most: int) -> list[State]:
    """The best states by the guide, leaving out those nowhere lower than a better one with the same panels left.

    A state nowhere higher than another has lost no more, so it comes no later than that.
    """
    kept: dict[int, list[tuple[int, ...]]] = {}
    best: list[State] = []
    for _, state in sorted((value[0], state) for state, value in level.items()):
        rivals = kept.setdefault(state[0], [])
        if any(all(map(le, rival, state[1])) for rival in rivals[:_COMPARED]):
            continue
        rivals.append(state[1])
        best.append(state)
        if len(best) == most:
            break
    return best
