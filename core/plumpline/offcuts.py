"""What is left of the bought cloth: the large rectangles between and beyond the panels."""

from __future__ import annotations

from plumpline.cloth import lost_before_cutting
from plumpline.layout.edges import Rectangle as Rectangle
from plumpline.layout.edges import parts_after
from plumpline.layout.strip import Flaw, Plan, StraightPlan
from plumpline.layplan import ClothPlan

_MOST = 6
# Above so many cells the small gaps are not searched: on so large a job only the end of the cloth is of interest.
_MOST_CELLS = 20_000


def offcuts_between(planned: ClothPlan, plan: StraightPlan, buy: int, least: int) -> list[Rectangle]:
    """What the cuts of a straight plan leave (x, y, width, length in nm, as laid), largest first.

    Every cut runs from edge to edge, so a strip beside the panels comes off in as many pieces as there are rows.
    """
    parts = parts_after(plan.cuts, planned.laid.usable, _end(planned, buy))
    panels = {(p.x, p.y, p.w, p.h) for p in plan.placements}
    whole = [part for part in parts if part not in panels and not any(_meet(part, flaw) for flaw in planned.laid.flaws)]
    strips = _strips(plan)
    left = [left for part in whole for left in _left_of(part, strips, least)]
    return sorted(left, key=lambda part: (-part[2] * part[3], part[1], part[0]))


def _meet(part: Rectangle, flaw: Flaw) -> bool:
    x, y, w, h = part
    return x < flaw.x + flaw.w and flaw.x < x + w and y < flaw.y + flaw.h and flaw.y < y + h


def _strips(plan: Plan) -> list[Rectangle]:
    return [(piece.x, piece.y, piece.w, piece.h) for cut in plan.piping for piece in cut.pieces]


def _left_of(part: Rectangle, strips: list[Rectangle], least: int) -> list[Rectangle]:
    """What strips leave of a part: itself where none lies in it."""
    left, low, w, h = part
    within = [(x - left, y - low, a, b) for x, y, a, b in strips if left <= x < left + w and low <= y < low + h]
    if not within:
        return [part] if min(w, h) >= least else []
    return [(x + left, y + low, a, b) for x, y, a, b in _largest_first(w, h, within, least)]


def _end(planned: ClothPlan, buy: int) -> int:
    """How far the bought length reaches, as laid, from the squared cut end."""
    return int(buy * (1 - lost_before_cutting(planned.cloth)[1])) - planned.cloth.squaring


def offcuts(planned: ClothPlan, plan: Plan, buy: int, least: int) -> list[Rectangle]:
    """Free rectangles (x, y, width, length in nm, as laid), largest first, none narrower than `least` either way.

    Each is the largest that is left once the ones before it are taken (largest rectangle under a histogram,
    row by row, in time linear in the cells of the grid that the panels' edges make).
    """
    taken = [(p.x, p.y, p.w, p.h) for p in plan.placements] + _strips(plan)
    taken += [(flaw.x, flaw.y, flaw.w, flaw.h) for flaw in planned.laid.flaws]
    return _largest_first(planned.laid.usable, _end(planned, buy), taken, least)


def _largest_first(width: int, end: int, taken: list[Rectangle], least: int) -> list[Rectangle]:
    found: list[Rectangle] = []
    while len(found) < _MOST:
        best = _largest(width, end, taken, least)
        if best is None:
            break
        found.append(best)
        taken = [*taken, best]
    return found


def _largest(width: int, end: int, taken: list[Rectangle], least: int) -> Rectangle | None:
    xs = _edges(width, [(x, x + w) for x, _, w, _ in taken])
    ys = _edges(end, [(y, y + h) for _, y, _, h in taken])
    if len(xs) * len(ys) > _MOST_CELLS:
        last = max(y + h for _, y, _, h in taken)
        return (0, last, width, end - last) if end - last >= least and width >= least else None
    free = _free(xs, ys, taken)
    best: tuple[int, Rectangle] | None = None
    for rectangle in _candidates(xs, ys, free):
        _, _, w, h = rectangle
        if min(w, h) >= least and (best is None or w * h > best[0]):
            best = (w * h, rectangle)
    return best[1] if best else None


def _edges(end: int, spans: list[tuple[int, int]]) -> list[int]:
    inside = {edge for span in spans for edge in span if 0 < edge < end}
    return [0, *sorted(inside), end]


def _free(xs: list[int], ys: list[int], taken: list[Rectangle]) -> list[list[bool]]:
    column = {x: i for i, x in enumerate(xs)}
    row = {y: j for j, y in enumerate(ys)}
    free = [[True] * (len(xs) - 1) for _ in ys[1:]]
    for x, y, w, h in taken:
        left, right = column[min(max(x, 0), xs[-1])], column[min(max(x + w, 0), xs[-1])]
        for j in range(row[min(max(y, 0), ys[-1])], row[min(max(y + h, 0), ys[-1])]):
            free[j][left:right] = [False] * (right - left)
    return free


def _candidates(xs: list[int], ys: list[int], free: list[list[bool]]) -> list[Rectangle]:
    """Every rectangle that cannot grow upwards or sideways, by the stack method for histograms."""
    found: list[Rectangle] = []
    start = [0] * (len(xs) - 1)
    for top, cells in zip(ys[1:], free, strict=True):
        start = [low if cell else top for low, cell in zip(start, cells, strict=True)]
        found.extend(_under_roof(xs, start, top))
    return found


def _under_roof(xs: list[int], start: list[int], top: int) -> list[Rectangle]:
    found: list[Rectangle] = []
    open_: list[tuple[int, int]] = []
    for i, floor in enumerate([*start, top]):
        left = xs[i]
        while open_ and open_[-1][1] < floor:
            left, low = open_.pop()
            found.append((left, low, xs[i] - left, top - low))
        if not open_ or open_[-1][1] > floor:
            open_.append((left, floor))
    return found
