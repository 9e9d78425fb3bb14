# Searches for a plan of a given length: depth first, with no more waste allowed than that length leaves.
"""Dives: short depth-first searches for a layout of free panels within a target length, begun again and again.

A length to beat leaves a known amount of waste, its area less that of the panels. The narrowest niche of the skyline
takes a panel at its higher wall or is raised to its lower one (as in the best-fit heuristic of Burke, Kendall and
Whitwell, *Operations Research* 52 (2004) 655-671, which takes the lowest); what is lost for good is taken from the
waste that is left, and where more must be lost than there is, the search goes back. Lost is the space under a raised
niche and above a panel too near the target for any other; lost must be, as in the perfect packing of Kenmochi,
Imamichi, Nonobe, Yagiura and Nagamochi, *EJOR* 198 (2009) 73-83, what no sum of the widths left can fill of the rows
of a niche, and no sum of the lengths left of the columns above a step. A niche is offered only the few panels that fit
it best: those that fill it, then those that leave a width that others can fill. Offered all of them a dive without
waste to spare is complete: both lower corners of a niche must then be the corners of panels.

Depth-first search repents its last steps and never its first, so a dive is given up after a few nodes for each panel
(Gomes, Selman and Kautz, AAAI 1998) and the next starts from another order of equal fits, made by a few swaps from the
order that left the least area unlaid. A node costs O(k + s) for k kinds on a skyline of s steps, and O(m) operations on
sums as long as the cloth is wide or long once no more than ``SHORT`` = m panels are left.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import gcd, sqrt
from random import Random

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.choices import Choice
from plumpline.layout.desk import Desk, Spot
from plumpline.layout.niches import settle
from plumpline.layout.search import Search
from plumpline.layout.skyline import merge

OFFERED = 3
NODES_PER_PANEL = 2
SHORT = 30  # panels left from which on it is worth knowing anew what they can still fill
PATIENCE = 20  # dives without progress before a new start
NOISE = 0.3
FINEST = 1 << 16  # units across or along above which sums are not looked at
PARTS = (0, 1, 2, 4)  # how much shorter a dive tries to be: quarters of what may be had

RAISE = -1
ANYTHING = -1  # sums that can fill whatever there is: every bit of them is set

Entry = tuple[int, int, int]  # width, length, index


# What is left to lay: entries in their order, what they can fill across and along, the least length, the tallest
# panel's length and width.
Left = tuple[list[Entry], int, int, int, int, int]
# A skyline (xs, ys), the waste and the area left, what is left to lay, a niche: its place, its width and the walls
# before and behind it, and the moves not yet tried.
Node = tuple[list[int], list[int], int, int, Left, int, int, int, int, list[int]]


class Panels:
    """The panels of a desk as flat lists, one entry for each way of each kind; widths in their largest common unit."""

    def __init__(self, desk: Desk) -> None:
        ways = [(k, v, way) for k, kind in enumerate(desk.kinds) for v, way in enumerate(kind.variants)]
        self.unit = gcd(desk.width, *(way.w for _, _, way in ways))
        self.unit_along = gcd(*(way.h for _, _, way in ways))
        self.width = desk.width // self.unit
        self.kind = [k for k, _, _ in ways]
        self.variant = [v for _, v, _ in ways]
        self.w = [way.w // self.unit for _, _, way in ways]
        self.h = [way.h for _, _, way in ways]
        self.qty = [kind.qty for kind in desk.kinds]
        self.entries = [(w, h, e) for e, (w, h) in enumerate(zip(self.w, self.h, strict=True))]
        self.ways: list[list[Entry]] = [[] for _ in desk.kinds]
        for entry, k in zip(self.entries, self.kind, strict=True):
            self.ways[k].append(entry)
        # What a kind takes at least, whichever way it lies.
        self.flat = [min(h for _, h, _ in self.ways[k]) for k in self.kind]
        self.slim = [min(w for w, _, _ in self.ways[k]) for k in self.kind]
        self.least = [min(w * h for w, h, _ in self.ways[k]) for k in self.kind]
        self.area = desk.area // self.unit
        self.code = [1]
        for qty in self.qty:
            self.code.append(self.code[-1] * (qty + 1))

    def sums(self, entries: Sequence[Entry], left: Sequence[int], target: int) -> tuple[int, int]:
        """Bit b is set if some panels left make up b units side by side, or b units one behind the other."""
        unit, kind = self.unit_along, self.kind
        wide, long = (2 << self.width) - 1, (2 << target // unit) - 1
        across = along = 1
        for w, h, e in entries:
            for _ in range(left[kind[e]]):
                across |= across << w & wide
                along |= along << h // unit & long
        return across, along


class Dive:
    """One depth-first search for a layout within ``target``, equal fits being tried in the order given."""

    def __init__(self, panels: Panels, target: int, order: Sequence[int], sums: tuple[int, int]) -> None:
        self.panels = panels
        self.target = target
        self.left = list(panels.qty)
        self.waiting = sum(panels.qty)
        self.state = panels.code[-1] - 1
        self.seen: set[tuple[int, tuple[int, ...], tuple[int, ...]]] = set()
        self.spots: list[Spot] = []
        self.unlaid = panels.area
        self.nodes = 0
        entries = [panels.entries[e] for e in order]
        rest = (entries, *sums, min(panels.h), *self._tallest(entries))
        self.root = self._node([0, panels.width], [0], panels.width * target - panels.area, panels.area, rest)

    def run(self, limit: int, budget: Budget) -> Slices[tuple[Spot, ...] | None]:
        """The layout, or None if there is none or ``limit`` nodes did not find it."""
        stack = [self.root] if self.root is not None else []
        trail: list[int] = []
        while stack and self.nodes <= limit:
            node = stack[-1]
            moves = node[-1]
            if not moves:
                stack.pop()
                if trail:
                    self._undo(trail.pop())
                continue
            self.nodes += 1
            budget.spend(6 + len(node[4][0]) // 8)
            if budget.slice_done():
                yield
            entry = moves.pop()
            child = self._raised(node) if entry == RAISE else self._placed(node, entry)
            if not self.waiting:
                return tuple(self.spots)
            if child is None:
                self._undo(entry)
            else:
                stack.append(child)
                trail.append(entry)
        return None

    def _undo(self, entry: int) -> None:
        if entry != RAISE:
            kind = self.panels.kind[entry]
            self.left[kind] += 1
            self.waiting += 1
            self.state += self.panels.code[kind]
            self.spots.pop()

    def _tallest(self, entries: Sequence[Entry]) -> tuple[int, int]:
        """The length that the longest panel left takes at least, and the width that it takes at least."""
        flat = self.panels.flat
        longest = max([e for _, _, e in entries], key=flat.__getitem__)
        return flat[longest], self.panels.slim[longest]

    def _placed(self, node: Node, entry: int) -> Node | None:
        """The node after a panel was put into the niche at its higher wall; None where that leads nowhere."""
        xs, ys, spare, area, rest, i, niche, before, behind, _ = node
        panels, target = self.panels, self.target
        w, h, kind = panels.w[entry], panels.h[entry], panels.kind[entry]
        x, top = xs[i], ys[i] + h
        if i and (i + 1 == len(ys) or before < behind):
            x += niche - w
        self.left[kind] -= 1
        self.waiting -= 1
        self.state -= panels.code[kind]
        self.spots.append((kind, panels.variant[entry], x * panels.unit, ys[i]))
        area -= panels.least[entry]
        self.unlaid = min(self.unlaid, area)
        if not self.waiting:
            return None
        rest = self._rest(rest, entry)
        spare -= w * h - panels.least[entry]
        if target - top < rest[3]:
            spare -= (target - top) * w
            top = target
        if spare < 0:
            return None
        xs, ys = xs[:], ys[:]
        settle(xs, ys, i, x, w, top)
        return self._node(xs, ys, spare, area, rest)

    def _rest(self, rest: Left, entry: int) -> Left:
        """What is left after one panel of ``rest`` was laid."""
        entries, across, along, least_h, tall_h, tall_w = rest
        panels = self.panels
        kind = panels.kind[entry]
        if not self.left[kind]:
            entries = entries[:]
            for way in panels.ways[kind]:
                entries.remove(way)
            if least_h in (panels.h[entry], panels.flat[entry]):
                least_h = min([h for _, h, _ in entries])
            if panels.flat[entry] == tall_h:
                tall_h, tall_w = self._tallest(entries)
        if self.waiting < SHORT and across != ANYTHING:
            across, along = panels.sums(entries, self.left, self.target)
        return entries, across, along, least_h, tall_h, tall_w

    def _raised(self, node: Node) -> Node | None:
        """The node after the niche was given up to its lower wall."""
        xs, ys, spare, area, rest, i, niche, before, behind, _ = node
        step = min(before, behind)
        xs, ys = xs[:], ys[:]
        ys[i] += step
        merge(xs, ys, i)
        return self._node(xs, ys, spare - niche * step, area, rest)

    def _node(self, xs: list[int], ys: list[int], spare: int, area: int, rest: Left) -> Node | None:
        """The narrowest niche of a skyline and the moves it offers; None where this was seen or cannot be finished."""
        state = (self.state, tuple(xs), tuple(ys))
        if state in self.seen:
            return None
        self.seen.add(state)
        if not self._room(xs, ys, spare, rest):
            return None
        i = _narrowest(xs, ys)
        niche = xs[i + 1] - xs[i]
        room = self.target - ys[i]
        before = ys[i - 1] - ys[i] if i else room
        behind = ys[i + 1] - ys[i] if i + 1 < len(ys) else room
        moves = self._moves(rest, niche, room, before, behind, spare)
        if len(ys) > 1 and niche * min(before, behind) <= spare:
            moves.insert(0, RAISE)
        return xs, ys, spare, area, rest, i, niche, before, behind, moves

    def _room(self, xs: list[int], ys: list[int], spare: int, rest: Left) -> bool:
        """Whether there is a place for the tallest panel left, and no more must be lost than there is to spare.

        In every row of a niche some width is lost if no panels left fill it side by side, and above every step some
        length is lost if none fill it one behind the other.
        """
        _, across, along, _, tall_h, tall_w = rest
        target, unit = self.target, self.panels.unit_along
        most, x, fits = target - tall_h, 0, False
        rows = columns = 0
        last = len(ys) - 1
        for j, y in enumerate(ys):
            right = xs[j + 1]
            width = right - xs[j]
            if y > most:
                x = right
            elif right - x >= tall_w:
                fits = True
            units = (target - y) // unit
            if not along >> units & 1:
                columns += width * (target - y - unit * _fill(along, units))
            if not across >> width & 1:
                before = ys[j - 1] if j else target
                behind = ys[j + 1] if j < last else target
                if before > y < behind:
                    rows += (width - _fill(across, width)) * (min(before, behind) - y)
        return fits and rows <= spare >= columns

    def _moves(self, rest: Left, niche: int, room: int, before: int, behind: int, spare: int) -> list[int]:
        """The few best panels for a niche, the best last."""
        entries, across, *_ = rest
        lower = min(before, behind)
        walls = (before, behind)
        whole_level: list[int] = []
        whole: list[int] = []
        level: list[int] = []
        fillable: list[int] = []
        others: list[int] = []
        for w, h, e in entries:
            over = niche - w
            if over > 0:
                if across >> over & 1:
                    if h in walls:
                        level.append(e)
                    elif h <= room:
                        fillable.append(e)
                elif h <= room and (over - _fill(across, over)) * min(h, lower) <= spare:
                    others.append(e)
            elif not over:
                if h in walls:
                    whole_level.append(e)
                elif h <= room:
                    whole.append(e)
        best = whole_level + whole + level + fillable + others
        return best[:OFFERED][::-1]


def _fill(sums: int, most: int) -> int:
    """The largest sum below ``most``."""
    return (sums & (1 << most) - 1).bit_length() - 1


def _narrowest(xs: list[int], ys: list[int]) -> int:
    """The narrowest step of a skyline that is lower than its neighbours: there is the least to choose from."""
    least, narrowest, last = xs[-1] + 1, 0, len(ys) - 1
    for j, y in enumerate(ys):
        if (not j or ys[j - 1] > y) and (j == last or ys[j + 1] > y):
            width = xs[j + 1] - xs[j]
            if width < least:
                least, narrowest = width, j
    return narrowest


class Dives:
    """Dives one after another under one desk, each learning from the best before it."""

    def __init__(self, desk: Desk, random: Random, budget: Budget, longest: int) -> None:
        self.desk = desk
        self.panels = Panels(desk)
        self.random = random
        self.budget = budget
        self.limit = NODES_PER_PANEL * sum(self.panels.qty)
        self.sums = self._sums(longest + desk.strip.gap)
        self.target = -1
        self.order: list[int] = []
        self.unlaid = 0
        self.stalled = 0

    def within(self, target: int) -> Slices[tuple[Spot, ...] | None]:
        """The layout of one more dive for ``target``, if it found one."""
        if target != self.target:
            self.target, self.unlaid, self.stalled = target, self.panels.area, 0
        if self.order and self.stalled <= PATIENCE:
            order = self._swapped()
        else:
            order, self.unlaid, self.stalled = self._start(), self.panels.area, 0
        dive = Dive(self.panels, target + self.desk.strip.gap, order, self.sums)
        found = yield from dive.run(self.limit, self.budget)
        self.budget.spend(10 + len(order) // 2)
        self.stalled += 1
        if dive.unlaid < self.unlaid:
            self.stalled = 0
        if dive.unlaid <= self.unlaid:
            self.order, self.unlaid = order, dive.unlaid
        return found

    def _sums(self, longest: int) -> tuple[int, int]:
        """What all the panels together can fill, where that is not too fine to tell."""
        panels = self.panels
        across, along = ANYTHING, ANYTHING
        if max(panels.width, longest // panels.unit_along) <= FINEST:
            across, along = panels.sums(panels.entries, panels.qty, longest)
        return across, along

    def _start(self) -> list[int]:
        """A new order, large panels first, by some product of powers of their extents and a little chance."""
        random, panels = self.random.random, self.panels
        along, across = int(random() * 5), int(random() * 5)
        weight = [
            _power(h, along) * _power(w, across) * (1 + (random() - 0.5) * NOISE)
            for w, h in zip(panels.w, panels.h, strict=True)
        ]
        return sorted(range(len(weight)), key=lambda e: (-weight[e], e))

    def _swapped(self) -> list[int]:
        """The order kept, with a few pairs swapped."""
        random, order = self.random.random, list(self.order)
        for _ in range(1 + int(random() * 3)):
            i, j = int(random() * len(order)), int(random() * len(order))
            order[i], order[j] = order[j], order[i]
        return order


def _power(x: int, halves: int) -> float:
    """``x`` to the power of ``halves`` / 2."""
    return (1.0, sqrt(x), float(x), x * sqrt(x), float(x * x))[halves]


def dive(search: Search, choices: Sequence[Choice]) -> Slices[None]:
    """Dive in turns under the given choices for targets from one unit to all that may be had below the best."""
    assert search.best is not None
    turns = [
        (Dives(search.desk(choice), search.random, search.budget, search.best.length), part)
        for part in PARTS
        for choice in choices
    ]
    while not search.over:
        for dives, part in turns:
            if search.over:
                return
            gap = search.to_beat - search.best.at_least
            spots = yield from dives.within(search.to_beat - max(1, gap * part // PARTS[-1]))
            if spots is not None:
                search.offer(dives.desk, spots)
            if search.budget.slice_done():
                yield
