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

Cloth of the target length is a box that can be filled from its cut end on or, turned a quarter, from its left edge on.
The search is the same, yet one way may find in a second what the other does not in a minute, so both are tried.

Depth-first search repents its last steps and never its first, so a dive is given up after a few nodes for each panel
(Gomes, Selman and Kautz, AAAI 1998) and the next starts from another order of equal fits, made by a few swaps from the
order that left the least area unlaid. Few panels that must fill the box are given many more nodes, because there the
search prunes best; and where all that may be had is a plan without waste, half of the dives try for that.

Sets of panels are bits of whole numbers, the first in the order the lowest. A node costs O(s) for a skyline of s
steps, and O(m) operations on sums as long as the box is wide or long once no more than ``SHORT`` = m panels are left.
"""

from __future__ import annotations

from bisect import bisect
from collections.abc import Sequence
from itertools import product
from math import gcd, sqrt
from random import Random
from typing import Literal

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.choices import Choice
from plumpline.layout.desk import Desk, Spot
from plumpline.layout.search import Search
from plumpline.layout.skyline import merge

OFFERED = 3
NODES_PER_PANEL = 2
FEW = 25  # panels up to which a dive may go on for longer where nothing may be wasted
NODES_PER_FEW = 160
SHORT = 20  # panels left from which on it is worth knowing anew what they can still fill
PATIENCE = 20  # dives without progress before a new start
NOISE = 0.3
FINEST = 1 << 16  # units across or along above which sums are not looked at
PARTS = (0, 1, 2, 4)  # how much shorter a dive tries to be: quarters of what may be had
WHOLE = (0, 4, 1, 4)  # the same where a plan without waste may be had, of no more than ``MOST_WHOLE`` panels
MOST_WHOLE = 50
KEPT = 1 << 14  # answers about sums
COUNTED = 16  # nodes between two counts of the work

RAISE = -1
ANYTHING = -1  # sums that can fill whatever there is: every bit of them is set

Way = Literal["from the cut end", "from the edge"]
WAYS: tuple[Way, ...] = ("from the cut end", "from the edge")

# What is left to lay: places in the order as bits, what they can fill across and along the box, and the places of the
# longest and of the shortest panel left in ``Panels.longest`` and ``Panels.shortest``.
Left = tuple[int, int, int, int, int]
# A skyline (xs, ys), the waste and the area left, what is left to lay, a niche: its place, its width and the walls
# before and behind it, and the moves not yet tried.
Node = tuple[list[int], list[int], int, int, Left, int, int, int, int, list[int]]


class Panels:
    """The panels of a desk as flat lists, one entry for each way of each kind, ``w`` across the box and ``h`` along it.

    Both are counted in the largest common unit of their direction: panels pushed back and to the left lie at sums.
    """

    def __init__(self, desk: Desk, way: Way) -> None:
        ways = [(k, v, (p.w, p.h)) for k, kind in enumerate(desk.kinds) for v, p in enumerate(kind.variants)]
        self.turned = way == "from the edge"
        across, along = (1, 0) if self.turned else (0, 1)
        self.unit = gcd(*(size[across] for _, _, size in ways))
        self.unit_along = gcd(*(size[along] for _, _, size in ways))
        self.kind = [k for k, _, _ in ways]
        self.variant = [v for _, v, _ in ways]
        self.w = [size[across] // self.unit for _, _, size in ways]
        self.h = [size[along] // self.unit_along for _, _, size in ways]
        self.qty = [kind.qty for kind in desk.kinds]
        members: list[list[int]] = [[] for _ in desk.kinds]
        for entry, k in enumerate(self.kind):
            members[k].append(entry)
        self.sizes = [[(self.w[e], self.h[e]) for e in of] for of in members]
        # What a kind takes at least, whichever way it lies.
        self.flat = [min(self.h[e] for e in members[k]) for k in self.kind]
        self.slim = [min(self.w[e] for e in members[k]) for k in self.kind]
        self.least = [min(self.w[e] * self.h[e] for e in members[k]) for k in self.kind]
        self.area = sum(qty * self.least[of[0]] for qty, of in zip(self.qty, members, strict=True))
        self.longest = sorted(range(len(ways)), key=lambda e: -self.flat[e])
        self.shortest = sorted(range(len(ways)), key=self.h.__getitem__)
        self.code = [1]
        for qty in self.qty:
            self.code.append(self.code[-1] * (qty + 1))

    def box(self, width: int, length: int) -> tuple[int, int]:
        """Whole units across and along the box of cloth that is ``width`` wide and ``length`` long."""
        across, along = (length, width) if self.turned else (width, length)
        return across // self.unit, along // self.unit_along

    def spot(self, entry: int, x: int, y: int) -> Spot:
        """Where an entry at (x, y) of the box lies on the cloth."""
        x, y = x * self.unit, y * self.unit_along
        return (self.kind[entry], self.variant[entry], *((y, x) if self.turned else (x, y)))


class Sums:
    """What the panels left can fill: bit b is set if some of them make up b units side by side, or one behind another.

    Dives come to the same panels again and again, so the last few thousand answers are kept.
    """

    def __init__(self, panels: Panels, box: tuple[int, int]) -> None:
        self.panels = panels
        self.box = box
        self.known: dict[int, tuple[int, int]] = {}
        self.all = self._of(panels.qty) if max(box) <= FINEST else (ANYTHING, ANYTHING)

    def of(self, state: int, left: Sequence[int]) -> tuple[int, int]:
        """The sums across and along of so many of each kind, which ``state`` tells from all others."""
        found = self.known.get(state)
        if found is None:
            if len(self.known) == KEPT:
                self.known.clear()
            found = self.known[state] = self._of(left)
        return found

    def _of(self, left: Sequence[int]) -> tuple[int, int]:
        wide, long = ((2 << units) - 1 for units in self.box)
        across = along = 1
        for n, sizes in zip(left, self.panels.sizes, strict=True):
            while n:
                for w, h in sizes:
                    across |= across << w & wide
                    along |= along << h & long
                n -= 1
        return across, along


class Order:
    """The entries in the order in which equal fits are tried; sets of them are bits, the first the lowest."""

    def __init__(self, panels: Panels, order: Sequence[int]) -> None:
        self.entry = order
        self.of_width: dict[int, int] = {}
        self.of_length: dict[int, int] = {}
        self.of_kind = [0] * len(panels.qty)
        bit = 1
        for e in order:
            w, h = panels.w[e], panels.h[e]
            self.of_width[w] = self.of_width.get(w, 0) | bit
            self.of_length[h] = self.of_length.get(h, 0) | bit
            self.of_kind[panels.kind[e]] |= bit
            bit += bit
        self.all = bit - 1
        self.widths, self.up_to_width = _up_to(self.of_width)
        self.lengths, self.up_to_length = _up_to(self.of_length)


def _up_to(sets: dict[int, int]) -> tuple[list[int], list[int]]:
    """The keys in growing order, and the union of the sets of all keys before each and of all."""
    keys = sorted(sets)
    unions = [0]
    for key in keys:
        unions.append(unions[-1] | sets[key])
    return keys, unions


class Dive:
    """One depth-first search for a layout within a box, equal fits being tried in the order given."""

    def __init__(self, panels: Panels, box: tuple[int, int], order: Sequence[int], sums: Sums) -> None:
        self.panels = panels
        self.sums = sums
        self.box = box
        self.target = box[1]
        self.order = Order(panels, order)
        self.left = list(panels.qty)
        self.waiting = sum(panels.qty)
        self.state = panels.code[-1] - 1
        self.seen: set[tuple[int, tuple[int, ...], tuple[int, ...]]] = set()
        self.unlaid = panels.area
        self.nodes = 0
        left = (self.order.all, *sums.all, 0, 0)
        self.root = self._node([0, box[0]], [0], box[0] * box[1] - panels.area, panels.area, left)

    def run(self, limit: int, budget: Budget) -> Slices[tuple[Spot, ...] | None]:
        """The layout, or None if there is none or ``limit`` nodes did not find it."""
        stack = [self.root] if self.root is not None else []
        trail: list[int] = []
        cost = COUNTED * (6 + len(self.order.entry) // 32)
        while stack and self.nodes <= limit:
            node = stack[-1]
            moves = node[-1]
            if not moves:
                stack.pop()
                if trail:
                    self._undo(trail.pop())
                continue
            self.nodes += 1
            if not self.nodes % COUNTED:
                budget.spend(cost)
                if budget.slice_done():
                    yield
            entry = moves.pop()
            child = self._raised(node) if entry == RAISE else self._placed(node, entry)
            if not self.waiting:
                return tuple(self._spot(*step) for step in zip(stack, (*trail, entry), strict=True) if step[1] != RAISE)
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

    def _placed(self, node: Node, entry: int) -> Node | None:
        """The node after a panel was put into the niche at its higher wall; None where that leads nowhere."""
        xs, ys, spare, area, rest, i, niche, before, behind, _ = node
        panels, target = self.panels, self.target
        w, h, kind, least = panels.w[entry], panels.h[entry], panels.kind[entry], panels.least[entry]
        top = ys[i] + h
        self.left[kind] -= 1
        self.waiting -= 1
        self.state -= panels.code[kind]
        area -= least
        if area < self.unlaid:
            self.unlaid = area
        if not self.waiting:
            return None
        rest = self._rest(rest, kind)
        spare -= w * h - least
        if target - top < panels.h[panels.shortest[rest[4]]]:
            spare -= (target - top) * w
            top = target
        if spare < 0:
            return None
        xs, ys = xs[:], ys[:]
        if w == niche:
            ys[i] = top
            merge(xs, ys, i)
        elif _is_right(i, ys, before, behind):
            xs.insert(i + 1, xs[i + 1] - w)
            ys.insert(i + 1, top)
            merge(xs, ys, i + 1)
        else:
            xs.insert(i + 1, xs[i] + w)
            ys.insert(i, top)
            merge(xs, ys, i)
        return self._node(xs, ys, spare, area, rest)

    def _spot(self, node: Node, entry: int) -> Spot:
        """Where a move from a node puts an entry."""
        xs, ys, _, _, _, i, niche, before, behind, _ = node
        x = xs[i] + (niche - self.panels.w[entry] if _is_right(i, ys, before, behind) else 0)
        return self.panels.spot(entry, x, ys[i])

    def _rest(self, rest: Left, kind: int) -> Left:
        """What is left after one panel of a kind was laid."""
        places, across, along, longest, shortest = rest
        panels, left, kind_of = self.panels, self.left, self.panels.kind
        if not left[kind]:
            places &= ~self.order.of_kind[kind]
            while not left[kind_of[panels.longest[longest]]]:
                longest += 1
            while not left[kind_of[panels.shortest[shortest]]]:
                shortest += 1
        if self.waiting < SHORT and across != ANYTHING:
            across, along = self.sums.of(self.state, left)
        return places, across, along, longest, shortest

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
        i = self._narrowest(xs, ys, spare, rest)
        if i < 0:
            return None
        niche = xs[i + 1] - xs[i]
        y = ys[i]
        room = self.target - y
        before = ys[i - 1] - y if i else room
        behind = ys[i + 1] - y if i + 1 < len(ys) else room
        moves = self._moves(rest, niche, room, before, behind, spare)
        if len(ys) > 1 and niche * min(before, behind) <= spare:
            moves.insert(0, RAISE)
        return xs, ys, spare, area, rest, i, niche, before, behind, moves

    def _narrowest(self, xs: list[int], ys: list[int], spare: int, rest: Left) -> int:
        """The narrowest step lower than its neighbours, where there is the least to choose from; -1 if it is no use.

        There must be a place for the longest panel left, and no more must be lost than there is to spare: in every
        row of a niche some width is lost if no panels left fill it side by side, and above every step some length is
        lost if none fill it one behind the other.
        """
        _, across, along, longest, _ = rest
        target, entry = self.target, self.panels.longest[longest]
        most, wanted = target - self.panels.flat[entry], self.panels.slim[entry]
        rows = columns = start = left = 0
        least, narrowest, fits, before = xs[-1] + 1, 0, False, target
        last = len(ys) - 1
        for j, y in enumerate(ys):
            right = xs[j + 1]
            width = right - left
            if y > most:
                start = right
            elif right - start >= wanted:
                fits = True
            if not along >> (target - y) & 1:
                columns += width * (target - y - _fill(along, target - y))
                if columns > spare:
                    return -1
            if before > y:
                behind = ys[j + 1] if j < last else target
                if behind > y:
                    if width < least:
                        least, narrowest = width, j
                    if not across >> width & 1:
                        rows += (width - _fill(across, width)) * (min(before, behind) - y)
                        if rows > spare:
                            return -1
            before, left = y, right
        return narrowest if fits else -1

    def _moves(self, rest: Left, niche: int, room: int, before: int, behind: int, spare: int) -> list[int]:
        """The few best panels for a niche, the best last: those level with a wall first of those that fill it,
        then of those that leave a width that others can fill, then what leaves no more than there is to spare."""
        places, across, *_ = rest
        order, width_of = self.order, self.panels.w
        places &= order.up_to_width[bisect(order.widths, niche)] & order.up_to_length[bisect(order.lengths, room)]
        level = order.of_length.get(before, 0) | order.of_length.get(behind, 0)
        whole = places & order.of_width.get(niche, 0)
        narrower = places ^ whole
        moves: list[int] = []
        others: list[int] = []
        for few in (whole & level, whole & ~level, narrower & level, narrower & ~level):
            while few:
                first = few & -few
                few ^= first
                entry = order.entry[first.bit_length() - 1]
                if across >> (niche - width_of[entry]) & 1:
                    moves.append(entry)
                    if len(moves) == OFFERED:
                        return moves[::-1]
                else:
                    others.append(entry)
        if spare:
            moves += self._wasteful(others, niche, across, min(before, behind), spare)[: OFFERED - len(moves)]
        return moves[::-1]

    def _wasteful(self, entries: list[int], niche: int, across: int, lower: int, spare: int) -> list[int]:
        """The entries beside which no more is lost than there is to spare, although nothing fills it."""
        found = []
        for e in entries:
            over = niche - self.panels.w[e]
            if (over - _fill(across, over)) * min(self.panels.h[e], lower) <= spare:
                found.append(e)
        return found


def _is_right(i: int, ys: list[int], before: int, behind: int) -> bool:
    """Whether the higher wall of a niche is the one behind it."""
    return i > 0 and (i + 1 == len(ys) or before < behind)


def _fill(sums: int, most: int) -> int:
    """The largest sum below ``most``."""
    return (sums & (1 << most) - 1).bit_length() - 1


class Dives:
    """Dives one after another under one desk and one way, each learning from the best before it."""

    def __init__(self, desk: Desk, way: Way, random: Random, budget: Budget, longest: int) -> None:
        self.desk = desk
        self.panels = Panels(desk, way)
        self.random = random
        self.budget = budget
        self.count = sum(self.panels.qty)
        self.sums = Sums(self.panels, self._box(longest))
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
        dive = Dive(self.panels, self._box(target), order, self.sums)
        found = yield from dive.run(self._nodes(dive.box), self.budget)
        self.budget.spend(10 + len(order))
        self.stalled += 1
        if dive.unlaid < self.unlaid:
            self.stalled = 0
        if dive.unlaid <= self.unlaid:
            self.order, self.unlaid = order, dive.unlaid
        return found

    def _nodes(self, box: tuple[int, int]) -> int:
        """How far a dive may go: where few panels must fill the box the wrong ones soon show."""
        is_few = self.count <= FEW and box[0] * box[1] == self.panels.area
        return self.count * (NODES_PER_FEW if is_few else NODES_PER_PANEL)

    def _box(self, length: int) -> tuple[int, int]:
        return self.panels.box(self.desk.width, length + self.desk.strip.gap)

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
    desk = search.best.desk
    is_whole = (search.best.at_least + desk.strip.gap) * desk.width == desk.area
    parts = WHOLE if is_whole and sum(kind.qty for kind in desk.kinds) <= MOST_WHOLE else PARTS
    turns = [
        (Dives(search.desk(choice), way, search.random, search.budget, search.best.length), part)
        for part, choice, way in product(parts, choices, WAYS)
    ]
    while not search.over:
        for dives, part in turns:
            if search.over:
                return
            gap = max(search.aim - search.best.at_least, 0)
            spots = yield from dives.within(search.aim - gap * part // PARTS[-1])
            if spots is not None:
                search.offer(dives.desk, spots)
            if search.budget.slice_done():
                yield
