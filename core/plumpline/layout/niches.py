# Lays free panels niche by niche: the lowest gap of the skyline takes the panel that fits it best.
"""Niche decoders for panels that may lie anywhere.

The best-fit heuristic of Burke, Kendall and Whitwell, *Operations Research* 52 (2004) 655-671, with the fit scores of
Leung, Zhang and Sim, *EJOR* 215 (2011) 57-69: the lowest niche of the skyline takes the panel that fits it best, next
to the higher wall; a niche that nothing fits is raised to its lower wall. ``BestFit`` lets an order of kinds decide
between equal fits; ``FirstFit`` takes the first panel of an order that fits at all. O(n·(s + k)) for n panels of k
kinds on a skyline of s steps, s being about the number of panels that fit side by side; from ``MANY`` on they are
looked up instead of looked through (``BestFitOfMany``, ``FirstFitOfMany``), which makes it O(n·(s + log n)).
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from plumpline.layout.budget import Budget
from plumpline.layout.desk import Desk, Item, Layout, Spot
from plumpline.layout.firsts import Firsts
from plumpline.layout.skyline import merge

MANY = 80

Sizes = list[list[tuple[int, int]]]


class Queue(Protocol):
    """Panels waiting to be laid; ``looked_at`` counts the panels looked at so far."""

    looked_at: int

    def take(self, niche: int, wall_left: int, wall_right: int) -> Item | None:
        """Take out the panel for a niche of this width between walls of these heights (-1: the edge of the cloth)."""

    def empty(self) -> bool:
        """Whether all are laid."""


def _score(w: int, h: int, niche: int, wall_left: int, wall_right: int) -> int:
    """3: fills the niche and is level with a wall; 2: fills it; 1: level with a wall; 0: fits; -1: does not."""
    if w > niche:
        return -1
    return (2 if w == niche else 0) + (1 if h in (wall_left, wall_right) else 0)


class BestFit:
    """All panels; of two that fit a niche equally well the one whose kind comes first is taken."""

    def __init__(self, desk: Desk, order: Sequence[Item]) -> None:
        self.order = [kind for kind, _ in order]
        self.left = [kind.qty for kind in desk.kinds]
        self.sizes: Sizes = [[(v.w, v.h) for v in kind.variants] for kind in desk.kinds]
        self.looked_at = 0

    def empty(self) -> bool:
        """Whether all are laid."""
        return not self.order

    def take(self, niche: int, wall_left: int, wall_right: int) -> Item | None:
        """The best fit of all kinds left."""
        best, kind, variant = -1, 0, 0
        self.looked_at += len(self.order)
        for k in self.order:
            for v, (w, h) in enumerate(self.sizes[k]):
                if w <= niche:
                    score = _score(w, h, niche, wall_left, wall_right)
                    if score > best:
                        best, kind, variant = score, k, v
            if best == 3:
                break
        if best < 0:
            return None
        self.left[kind] -= 1
        if not self.left[kind]:
            self.order.remove(kind)
        return kind, variant


class FirstFit:
    """Single panels in an order; the first that fits a niche is taken, turned as asked or as it fits best."""

    def __init__(self, desk: Desk, order: Sequence[Item]) -> None:
        self.order = list(order)
        self.sizes: Sizes = [[(v.w, v.h) for v in kind.variants] for kind in desk.kinds]
        self.looked_at = 0
        self.narrowest = [min(w for w, _ in sizes) for sizes in self.sizes]

    def empty(self) -> bool:
        """Whether all are laid."""
        return not self.order

    def take(self, niche: int, wall_left: int, wall_right: int) -> Item | None:
        """The first panel of the order that fits."""
        for index, (kind, wanted) in enumerate(self.order):
            if self.narrowest[kind] > niche:
                continue
            sizes = self.sizes[kind]
            if wanted >= 0 and sizes[wanted][0] > niche:
                continue
            del self.order[index]
            self.looked_at += index
            return _turned_to_fit((kind, wanted), self.sizes, niche, wall_left, wall_right)
        return None


class BestFitOfMany:
    """The rule of ``BestFit``, its answers looked up by width, by length and by the place in the order."""

    def __init__(self, desk: Desk, order: Sequence[Item]) -> None:
        self.order = [kind for kind, _ in order]
        self.left = [kind.qty for kind in desk.kinds]
        self.waiting = sum(self.left)
        self.looked_at = 0
        self.firsts = Firsts([min(v.w for v in desk.kinds[k].variants) for k in self.order])
        # Places in the order and variants, the first place last; those of kinds used up go when they are met.
        self.filling: dict[int, list[tuple[int, int]]] = {}
        self.exact: dict[tuple[int, int], list[tuple[int, int]]] = {}
        self.level: dict[int, list[tuple[int, int, int]]] = {}
        self.sizes: Sizes = [[(v.w, v.h) for v in kind.variants] for kind in desk.kinds]
        for place in range(len(self.order) - 1, -1, -1):
            sizes = self.sizes[self.order[place]]
            for variant in range(len(sizes) - 1, -1, -1):
                w, h = sizes[variant]
                self.filling.setdefault(w, []).append((place, variant))
                self.exact.setdefault((w, h), []).append((place, variant))
                self.level.setdefault(h, []).append((place, variant, w))

    def empty(self) -> bool:
        """Whether all are laid."""
        return not self.waiting

    def take(self, niche: int, wall_left: int, wall_right: int) -> Item | None:
        """The best fit of all kinds left."""
        self.looked_at += 20
        walls = dict.fromkeys((wall_left, wall_right))
        found = [self._first(self.exact.get((niche, wall), ())) for wall in walls]
        best = min((f for f in found if f), default=None) or self._first(self.filling.get(niche, ()))
        if best is None:
            best = min((f for wall in walls if (f := self._level(wall, niche))), default=None)
        if best is None:
            place = self.firsts.first(niche)
            if place < 0:
                return None
            sizes = self.sizes[self.order[place]]
            best = place, next(v for v, (w, _) in enumerate(sizes) if w <= niche)
        return self._taken(*best)

    def _first(self, entries: list[tuple[int, int]] | tuple[()]) -> tuple[int, int] | None:
        while entries and not self.left[self.order[entries[-1][0]]]:
            entries.pop()
        return entries[-1] if entries else None

    def _level(self, wall: int, niche: int) -> tuple[int, int] | None:
        entries = self.level.get(wall, ())
        for place, variant, w in reversed(entries):
            if w <= niche and self.left[self.order[place]]:
                return place, variant
        return None

    def _taken(self, place: int, variant: int) -> Item:
        kind = self.order[place]
        self.left[kind] -= 1
        self.waiting -= 1
        if not self.left[kind]:
            self.firsts.take_out(place)
            for v, (w, h) in enumerate(self.sizes[kind]):
                self.level[h].remove((place, v, w))
        return kind, variant


class FirstFitOfMany:
    """The rule of ``FirstFit``, the first that fits being looked up."""

    def __init__(self, desk: Desk, order: Sequence[Item]) -> None:
        self.order = list(order)
        self.waiting = len(self.order)
        self.looked_at = 0
        self.sizes: Sizes = [[(v.w, v.h) for v in kind.variants] for kind in desk.kinds]
        narrowest = [min(w for w, _ in sizes) for sizes in self.sizes]
        self.firsts = Firsts([narrowest[k] if v < 0 else self.sizes[k][v][0] for k, v in self.order])

    def empty(self) -> bool:
        """Whether all are laid."""
        return not self.waiting

    def take(self, niche: int, wall_left: int, wall_right: int) -> Item | None:
        """The first panel of the order that fits."""
        self.looked_at += 10
        place = self.firsts.first(niche)
        if place < 0:
            return None
        self.firsts.take_out(place)
        self.waiting -= 1
        return _turned_to_fit(self.order[place], self.sizes, niche, wall_left, wall_right)


def _turned_to_fit(item: Item, sizes_of: Sizes, niche: int, wall_left: int, wall_right: int) -> Item:
    """The item turned as asked, or else the way that fits best."""
    kind, wanted = item
    sizes = sizes_of[kind]
    if wanted >= 0 or len(sizes) == 1:
        return kind, max(wanted, 0)
    scores = [_score(w, h, niche, wall_left, wall_right) for w, h in sizes]
    return kind, scores.index(max(scores))


def best_fit(desk: Desk, order: Sequence[Item]) -> Queue:
    """The panels of an order waiting for their best fit."""
    return (BestFitOfMany if len(order) > MANY else BestFit)(desk, order)


def first_fit(desk: Desk, order: Sequence[Item]) -> Queue:
    """The panels of an order waiting for the first niche they fit."""
    return (FirstFitOfMany if len(order) > MANY else FirstFit)(desk, order)


def fill_niches(desk: Desk, queue: Queue, target: int, limit: int, budget: Budget) -> Layout | None:
    """Lay everything in the queue; None as soon as the overshoot above ``target`` must exceed ``limit``.

    What is wasted below the target must come out above it, so a layout is given up when waste alone decides it.
    """
    target += desk.strip.gap
    spare = desk.width * target - desk.area + limit
    xs, ys = [0, desk.width], [0]
    spots: list[Spot] = []
    overshoot = 0
    while not queue.empty() and overshoot <= limit and spare >= 0:
        low = min(ys)
        i = ys.index(low)
        niche = xs[i + 1] - xs[i]
        wall_left = ys[i - 1] - low if i else -1
        wall_right = ys[i + 1] - low if i + 1 < len(ys) else -1
        item = queue.take(niche, wall_left, wall_right)
        if item is None:
            spare -= niche * _raise_niche(xs, ys, i, wall_left, wall_right)
            continue
        way = desk.kinds[item[0]].variants[item[1]]
        x = xs[i] if wall_left < 0 or wall_left >= wall_right >= 0 else xs[i + 1] - way.w
        spots.append((*item, x, low))
        top = low + way.h
        settle(xs, ys, i, x, way.w, top)
        if top > target:
            overshoot += way.w * (top - max(low, target))
    budget.spend(10 + 4 * len(spots) + queue.looked_at // 6)
    return Layout(tuple(spots), overshoot) if queue.empty() and overshoot <= limit else None


def _raise_niche(xs: list[int], ys: list[int], i: int, wall_left: int, wall_right: int) -> int:
    """Fill the niche up to its lower wall; how far that was."""
    walls = [wall for wall in (wall_left, wall_right) if wall >= 0]
    step = min(walls)
    ys[i] += step
    merge(xs, ys, i)
    return step


def settle(xs: list[int], ys: list[int], i: int, x: int, w: int, top: int) -> None:
    """Put a panel of width ``w`` at ``x`` into step ``i`` of the skyline, at one of its two ends."""
    if w == xs[i + 1] - xs[i]:
        ys[i] = top
        merge(xs, ys, i)
    elif x == xs[i]:
        xs.insert(i + 1, x + w)
        ys.insert(i, top)
        merge(xs, ys, i)
    else:
        xs.insert(i + 1, x)
        ys.insert(i + 1, top)
        merge(xs, ys, i + 1)
