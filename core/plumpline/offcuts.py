"""What is left of the bought cloth: the large rectangles between and beyond the panels."""

from __future__ import annotations

from plumpline.cloth import lost_before_cutting
from plumpline.geometry import steps_around
from plumpline.job import NM_PER_CM
from plumpline.layout.edges import Rectangle as Rectangle
from plumpline.layout.edges import parts_after
from plumpline.layout.outlines import around_arcs
from plumpline.layout.shapes import around
from plumpline.layout.strip import Placement, Plan, StraightPlan
from plumpline.layout.strips import Free, without
from plumpline.layplan import ClothPlan, outline_as_laid

_MOST = 6
# Beside a slant the cloth is counted in steps: at most so many along a panel, and none finer than that.
_STEPS = 8
_FINE = 2 * NM_PER_CM


def offcuts_between(planned: ClothPlan, plan: StraightPlan, buy: int, least: int) -> list[Rectangle]:
    """What the cuts of a straight plan leave (x, y, width, length in nm, as laid), largest first.

    Every cut runs from edge to edge, so a strip beside the panels comes off in as many pieces as there are rows; what
    is left beside an outline comes off when that is cut out of its part.
    """
    parts = parts_after(plan.cuts, planned.laid.usable, _end(planned, buy))
    panels = {(p.x, p.y, p.w, p.h): p for p in plan.placements}
    strips, flaws = _strips(plan), _flaws(planned)
    left: list[Rectangle] = []
    for part in parts:
        if part in panels:
            left += _left_of(part, _covered(planned, panels[part]) + flaws, least)
        elif not any(_meet(part, flaw) for flaw in flaws):
            left += _left_of(part, strips, least)
    return sorted(left, key=lambda part: (-part[2] * part[3], part[1], part[0]))


def _meet(part: Rectangle, other: Rectangle) -> bool:
    return all(part[i] < other[i] + other[i + 2] and other[i] < part[i] + part[i + 2] for i in (0, 1))


def _strips(plan: Plan) -> list[Rectangle]:
    return [(piece.x, piece.y, piece.w, piece.h) for cut in plan.piping for piece in cut.pieces]


def _flaws(planned: ClothPlan) -> list[Rectangle]:
    return [(flaw.x, flaw.y, flaw.w, flaw.h) for flaw in planned.laid.flaws]


def _left_of(part: Rectangle, taken: list[Rectangle], least: int) -> list[Rectangle]:
    """What is left of a part of the cloth: itself where nothing lies in it."""
    return _largest_first(part, [other for other in taken if _meet(part, other)], least)


def _end(planned: ClothPlan, buy: int) -> int:
    """How far the bought length reaches, as laid, from the squared cut end."""
    return int(buy * (1 - lost_before_cutting(planned.cloth)[1])) - planned.cloth.squaring


def offcuts(planned: ClothPlan, plan: Plan, buy: int, least: int) -> list[Rectangle]:
    """Free rectangles (x, y, width, length in nm, as laid), largest first, none narrower than `least` either way.

    Each is the largest that is left once the ones before it are taken.
    """
    taken = [part for placed in plan.placements for part in _covered(planned, placed)]
    cloth = (0, 0, planned.laid.usable, _end(planned, buy))
    return _largest_first(cloth, [*taken, *_strips(plan), *_flaws(planned)], least)


def _covered(planned: ClothPlan, placed: Placement) -> list[Rectangle]:
    """Rectangles that together cover a panel as it lies: itself, or the steps around its outline."""
    piece = planned.piece(placed.panel)
    if piece.shape == "rectangle":
        return [(placed.x, placed.y, placed.w, placed.h)]
    # A curve is drawn by chords that lie inside it, so what it covers is told by a polygon around it.
    is_round = piece.shape == "circle" and placed.w == placed.h
    outline = around(placed.w) if is_round else around_arcs(outline_as_laid(piece, placed))
    step = max(_FINE, placed.h // _STEPS)
    return [(placed.x + x, placed.y + y, w, h) for x, y, w, h in steps_around(outline, step)]


def _largest_first(part: Rectangle, taken: list[Rectangle], least: int) -> list[Rectangle]:
    """The largest rectangles that are left of a part, by its maximal free rectangles."""
    free = [_corners(part)] if min(part[2:]) >= least else []
    for other in sorted(taken, key=lambda other: (other[1], other[0])):
        free = without(free, _corners(other), least)
    found: list[Free] = []
    while free and len(found) < _MOST:
        best = max(free, key=lambda one: ((one[2] - one[0]) * (one[3] - one[1]), -one[1], -one[0]))
        found.append(best)
        free = without(free, best, least)
    return [(left, low, right - left, top - low) for left, low, right, top in found]


def _corners(part: Rectangle) -> Free:
    x, y, w, h = part
    return x, y, x + w, y + h
