# Lays free panels niche by niche: the lowest gap of the skyline takes the panel that fits it best.
"""Niche decoders for panels that may lie anywhere.

The best-fit heuristic of Burke, Kendall and Whitwell, *Operations Research* 52 (2004) 655-671, with the fit scores of
Leung, Zhang and Sim, *EJOR* 215 (2011) 57-69: the lowest niche of the skyline takes the panel that fits it best, next
to the higher wall; a niche that nothing fits is raised to its lower wall. ``BestFit`` lets an order of kinds decide
between equal fits; ``FirstFit`` takes the first panel of an order that fits at all. O(n·(s + k)) for n panels of k
kinds on a skyline of s steps, s being about the number of panels that fit side by side.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from plumpline.layout.budget import Budget
from plumpline.layout.desk import Desk, Item, Layout, Spot
from plumpline.layout.skyline import merge

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
            if wanted >= 0 or len(sizes) == 1:
                return kind, max(wanted, 0)
            scores = [_score(w, h, niche, wall_left, wall_right) for w, h in sizes]
            return kind, scores.index(max(scores))
        return None


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
