# Gives each panel of an order its lowest place on a skyline, under every rule of the cloth.
"""Lowest places: the bottom-left rule (Chazelle, *IEEE Trans. Computers* C-32 (1983) 697-707) for panels of all kinds.

Each panel in turn takes the lowest place that its columns, its rows and the flaws leave it, first in the holes that
earlier panels left below the skyline (a waste map of maximal free rectangles, Jylänki 2010), then on the skyline.
O(n·(s·c + q)) for n panels, a skyline of s steps, c columns and q holes, none of which grows with n.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.layout.budget import Budget
from plumpline.layout.desk import Desk, Item, Layout, Spot, at_residue, rise
from plumpline.layout.places import Column, Variant
from plumpline.layout.strip import Flaw

Hole = tuple[int, int, int, int]  # left, bottom, right, top

FEW_COLUMNS = 24


def merge(xs: list[int], ys: list[int], i: int) -> None:
    """Join step ``i`` with neighbours of the same height."""
    if i + 1 < len(ys) and ys[i + 1] == ys[i]:
        del xs[i + 1], ys[i + 1]
    if i and ys[i - 1] == ys[i]:
        del xs[i], ys[i]


def lowest_places(
    desk: Desk, order: Sequence[Item], target: int, limit: int, budget: Budget
) -> Layout | None:
    """Give each item of ``order`` its lowest place in turn, holes first; None once ``limit`` is overshot."""
    target += desk.strip.gap
    xs, ys = [0, desk.width], [0]
    holes: list[Hole] = []
    spots: list[Spot] = []
    overshoot = 0
    for kind, wanted in order:
        variants = desk.kinds[kind].variants
        ways = range(len(variants)) if wanted < 0 else (wanted,)
        spot = _into_hole(desk, holes, variants, ways) if holes else None
        if spot is not None:
            variant, x, y = spot
            way = variants[variant]
            holes = _cut_holes(desk, holes, (x, y, x + way.w, y + way.h))
        else:
            variant, x, y = _onto_skyline(desk, xs, ys, variants, ways)
            way = variants[variant]
            _leave_holes(desk, xs, ys, holes, x, way.w, y)
            _cover(xs, ys, x, way.w, y + way.h)
        spots.append((kind, variant, x, y))
        if y + way.h > target:
            overshoot += way.w * (y + way.h - max(y, target))
            if overshoot > limit:
                break
    budget.spend(10 + 6 * len(spots))
    return Layout(tuple(spots), overshoot) if len(spots) == len(order) and overshoot <= limit else None


def _onto_skyline(
    desk: Desk, xs: list[int], ys: list[int], variants: tuple[Variant, ...], ways: Sequence[int]
) -> tuple[int, int, int]:
    flaws, gap = desk.strip.flaws, desk.strip.gap
    best = (-1, 0, 0, 0)
    for index in ways:
        way = variants[index]
        w, h = way.w, way.h
        if way.columns is None:
            for x in _candidates(desk, xs, ys, way):
                y = _top_over(xs, ys, x, w)
                if best[0] >= 0 and (y + h, x) >= best[:2]:
                    continue
                if way.step > 1 or flaws:
                    y = rise(flaws, gap, way, x, y)
                if best[0] < 0 or (y + h, x) < best[:2]:
                    best = (y + h, x, y, index)
            continue
        for x, residue in _columns_near(way.columns, xs):
            y = _top_over(xs, ys, x, w)
            y += (residue - y) % way.step
            if flaws:
                y = rise(flaws, gap, at_residue(way, residue), x, y)
            if best[0] < 0 or (y + h, x) < best[:2]:
                best = (y + h, x, y, index)
    return best[3], best[1], best[2]


def _candidates(desk: Desk, xs: list[int], ys: list[int], way: Variant) -> Sequence[int]:
    """Left ends worth trying: every step of the skyline, the sides of flaws, and where a corner meets a slant."""
    most = desk.width - way.w
    if desk.strip.flaws:
        ends = [x for f in desk.strip.flaws for x in (*f.rests_across, *_beside_slants(desk, f, ys, way))] + xs[:-1]
        return sorted({min(max(x, 0), most) for x in ends})
    return [x for x in xs[:-1] if x <= most]


def _beside_slants(desk: Desk, flaw: Flaw, ys: list[int], way: Variant) -> Iterator[int]:
    """Left ends at which a panel on a step of the skyline has a corner on a slant or beside a corner of the flaw."""
    if not flaw.slants:
        return
    w, h = way.w - desk.strip.gap, way.h - desk.strip.gap
    yield from (x - w for x in flaw.rests_across)
    for (ax, ay), (bx, by) in flaw.slants:
        for y in (edge for step in dict.fromkeys(ys) for edge in (step, step + h)):
            if min(ay, by) < y < max(ay, by):
                across = (bx - ax) * (y - ay)
                yield ax - (-across // (by - ay))
                yield ax + across // (by - ay) - w


def _columns_near(columns: tuple[Column, ...], xs: list[int]) -> Sequence[Column]:
    """All columns where they are few, else the first two from every step of the skyline on."""
    if len(columns) <= FEW_COLUMNS:
        return columns
    near: list[Column] = []
    index = 0
    for x in xs[:-1]:
        while index < len(columns) and columns[index][0] < x:
            index += 1
        near += columns[index : index + 2]
    return near or columns[:1]


def _top_over(xs: list[int], ys: list[int], x: int, w: int) -> int:
    """The highest step of the skyline over [x, x + w)."""
    i, end = 0, x + w
    while xs[i + 1] <= x:
        i += 1
    top = ys[i]
    i += 1
    while xs[i] < end:
        if ys[i] > top:
            top = ys[i]
        i += 1
    return top


def _cover(xs: list[int], ys: list[int], x: int, w: int, top: int) -> None:
    """Raise the skyline over [x, x + w) to ``top``."""
    end = x + w
    i = 0
    while xs[i + 1] <= x:
        i += 1
    if xs[i] < x:
        xs.insert(i + 1, x)
        ys.insert(i, ys[i])
        i += 1
    j = i
    while xs[j + 1] < end:
        j += 1
    if xs[j + 1] > end:
        xs.insert(j + 1, end)
        ys.insert(j, ys[j])
    xs[i + 1 : j + 1] = []
    ys[i : j + 1] = [top]
    merge(xs, ys, i)


def _leave_holes(desk: Desk, xs: list[int], ys: list[int], holes: list[Hole], x: int, w: int, y: int) -> None:
    """Note the free rectangles that a panel about to lie at (x, y) leaves under itself."""
    end = x + w
    for i in range(len(ys)):
        bottom = ys[i]
        if xs[i] >= end or xs[i + 1] <= x or y - bottom < desk.least_h:
            continue
        a = b = i
        while a > 0 and xs[a] > x and ys[a - 1] <= bottom:
            a -= 1
        while b + 1 < len(ys) and xs[b + 1] < end and ys[b + 1] <= bottom:
            b += 1
        hole = (max(xs[a], x), bottom, min(xs[b + 1], end), y)
        if hole[2] - hole[0] >= desk.least_w and hole not in holes:
            holes.append(hole)


def _into_hole(
    desk: Desk, holes: list[Hole], variants: tuple[Variant, ...], ways: Sequence[int]
) -> tuple[int, int, int] | None:
    """The lowest place in a hole for one of the ways, if there is one."""
    flaws, gap = desk.strip.flaws, desk.strip.gap
    best: tuple[int, int, int, int] | None = None
    for left, bottom, right, top in holes:
        for index in ways:
            way = variants[index]
            if way.w > right - left or way.h > top - bottom:
                continue
            columns = ((left, way.residue),) if way.columns is None else way.columns
            for x, residue in columns:
                if left <= x <= right - way.w:
                    y = bottom + (residue - bottom) % way.step
                    if flaws:
                        y = rise(flaws, gap, at_residue(way, residue), x, y)
                    if y + way.h <= top and (best is None or (y, x) < best[:2]):
                        best = (y, x, index, 0)
    return None if best is None else (best[2], best[1], best[0])


def _cut_holes(desk: Desk, holes: list[Hole], taken: Hole) -> list[Hole]:
    """Holes after a rectangle inside them was taken: the maximal free rectangles that are left."""
    x1, y1, x2, y2 = taken
    parts: list[Hole] = []
    for hole in holes:
        a, b, c, d = hole
        if x1 >= c or x2 <= a or y1 >= d or y2 <= b:
            parts.append(hole)
            continue
        for part in ((a, b, x1, d), (x2, b, c, d), (a, b, c, y1), (a, y2, c, d)):
            if part[2] - part[0] >= desk.least_w and part[3] - part[1] >= desk.least_h:
                parts.append(part)
    return parts
