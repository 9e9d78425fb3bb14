# Proves how short no plan of panels of other shapes than rectangles can be, each bound with its certificate.
"""Lower bounds that stay true where round or straight-sided panels may interlock.

The bounds of ``bounds`` take panels for rectangles, which is wrong as soon as they are not; these are theorems for all
shapes. A panel *holds* a circle of a diameter d if it is a rectangle of at least d both ways or a circle of at least d.

``round-rows``: ``{"diameter", "rows"}``. n panels hold a circle of the diameter d; their centres lie D = d + gap apart
and within A = width - d across. Of centres in ``rows`` = t neighbouring rows of whole units (half units where not all
n are circles of d) any two are √(D² - (t-1)²) apart across, so only k of them are there, and the centres reach over at
least ⌈n/k⌉ - 1 times t rows.

``round-density``: ``{"diameter"}``. On a convex piece of area F and perimeter U lie at most 2/√3·F/D² + U/(2D) + 1
points that are D apart (Oler, *Acta Mathematica* 105 (1961) 19-48; Folkman and Graham, *Canadian Mathematical
Bulletin* 12 (1969) 745-752), which is taken for the rectangle of the centres.

``true-area``: ``{}``. The areas within the outlines, of circles with 333/106 for π, divided by the width.

``tallest``: as in ``bounds``, by the extents.

``inscribed``: ``{"within", "gap", "at_least", "name", "data"}``. Every plan is one of the rectangles ``{"panel", "x",
"y", "w", "h"}`` that lie within the panels (unturned) and may lie anywhere, or where the motif points of their panels
let them; a bound on these with the given gap.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from itertools import combinations, pairwise
from math import ceil, isqrt

from plumpline.layout.bounds import Bound, Bounds
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.outlines import Points, contains, convex_parts, doubled_area, rectangle
from plumpline.layout.places import possible_turns
from plumpline.layout.shapes import boxed, ceil_root
from plumpline.layout.strip import Json, Panel, Strip

LESS_THAN_PI = Fraction(333, 106)
MORE_THAN_2_BY_ROOT_3 = Fraction(11_547_006, 10_000_000)

MOST_LINES = 9

Within = tuple[int, int, int, int]  # x, y, w, h


class ShapeBounds:
    """The best bound so far on a strip with panels of any shape."""

    def __init__(self, strip: Strip, budget: Budget) -> None:
        self.strip = strip
        found = {p.id: inscribed(p) for p in strip.panels if p.shape != "rect"}
        self.within = {name: box for name, box in found.items() if box is not None}
        relaxed = _relaxed(strip, self.within)
        self.relaxed = Bounds(relaxed, budget) if relaxed.panels else None
        self.best = max(self._quick(), key=lambda bound: bound.at_least)

    def strengthen(self, length: int) -> Slices[None]:
        """Solve the programmes for the inscribed rectangles, unless ``length`` is reached already."""
        if self.relaxed is not None and self.best.at_least < length:
            yield from self.relaxed.strengthen(length)
            yield from self.relaxed.stack(length)
            self.relaxed.round_up(length)
            self.best = max(self.best, self._inscribed(self.relaxed), key=lambda bound: bound.at_least)

    def _quick(self) -> Iterator[Bound]:
        yield self._tallest()
        yield Bound(ceil(true_area(self.strip) / self.strip.width), "true-area", {})
        for diameter in sorted({p.w for p in self.strip.panels if p.shape == "circle"}):
            yield _round_rows(self.strip, diameter)
            yield _round_density(self.strip, diameter)

    def _tallest(self) -> Bound:
        around = boxed(self.strip)
        least = {p.id: min(p.extents(turn)[1] for turn in possible_turns(around, p)) for p in around.panels}
        panel = max(least, key=lambda name: least[name])
        return Bound(least[panel], "tallest", {"panel": panel})

    def _inscribed(self, relaxed: Bounds) -> Bound:
        bound = relaxed.total()
        within: list[Json] = [
            {"panel": panel, "x": x, "y": y, "w": w, "h": h} for panel, (x, y, w, h) in self.within.items()
        ]
        return Bound(bound.at_least, "inscribed", {
            "within": within, "gap": relaxed.strip.gap,
            "at_least": bound.at_least, "name": bound.name, "data": bound.data,
        })


def _relaxed(strip: Strip, within: dict[str, Within]) -> Strip:
    """The rectangles among the panels, and those within the others, which keep the motif points of these."""
    around = boxed(strip)
    panels = []
    for panel in strip.panels:
        if panel.shape == "rect":
            panels.append(panel)
        elif panel.id in within:
            x, y, w, h = within[panel.id]
            turns = possible_turns(around, replace(panel, shape="rect"))
            bare = Panel(panel.id, w, h, panel.qty, turns, panel.motif, panel.dx - x, panel.dy - y)
            panels.append(replace(bare, axes=panel.axes, apart=panel.apart))
    gap = 0 if any(panel.shape == "circle" for panel in strip.panels) else strip.gap
    return replace(strip, panels=tuple(panels), gap=gap)


def inscribed(panel: Panel) -> Within | None:
    """A large rectangle within a panel that is none, if there is one."""
    if panel.shape == "circle":
        side = isqrt(panel.w * panel.w // 2)
        side -= (panel.w - side) % 2
        from_edge = (panel.w - side) // 2
        return (from_edge, from_edge, side, side) if side > 0 else None
    assert panel.shape != "rect"
    return max(_within(panel.covers or panel.shape), key=lambda box: (box[2] * box[3], box[3]), default=None)


def _within(outline: Points) -> Iterator[Within]:
    """Rectangles within an outline whose sides run through corners of it, or halfway between two."""
    xs, ys = _lines([x for x, _ in outline]), _lines([y for _, y in outline])
    parts = convex_parts(outline)
    for left, right in combinations(xs, 2):
        for bottom, top in combinations(ys, 2):
            if contains(outline, parts, rectangle(left, bottom, right, top)):
                yield left, bottom, right - left, top - bottom


def _lines(corners: list[int]) -> list[int]:
    """The corners and halves between them; of many corners, as in a traced outline, only some."""
    ordered = sorted(dict.fromkeys(corners))
    lines = sorted(dict.fromkeys([*ordered, *((a + b) // 2 for a, b in pairwise(ordered))]))
    return lines[:: -(-len(lines) // MOST_LINES)]


def true_area(strip: Strip) -> Fraction:
    """What all panels cover at least."""
    return sum((panel.qty * area_of(panel) for panel in strip.panels), Fraction(0))


def area_of(panel: Panel) -> Fraction:
    """The area within the outline of one panel; of a circle a little less."""
    if panel.shape == "circle":
        return LESS_THAN_PI * panel.w * panel.w / 4
    if panel.shape == "rect":
        return Fraction(panel.w * panel.h)
    return Fraction(doubled_area(panel.covers or panel.shape), 2)


def _holding(strip: Strip, diameter: int) -> list[Panel]:
    """The panels that hold a circle of this diameter."""
    return [p for p in strip.panels if p.shape in ("rect", "circle") and min(p.w, p.h) >= diameter]


def _round_rows(strip: Strip, diameter: int) -> Bound:
    """The best number of rows to look at in the bound by neighbouring rows."""
    holding = _holding(strip, diameter)
    count = sum(p.qty for p in holding)
    fine = 1 if all(p.shape == "circle" and p.w == diameter for p in holding) else 2
    pitch, sway = fine * (diameter + strip.gap), fine * (strip.width - diameter)
    best, which = 0, 1
    for beside in range(sway // pitch + 1, count + 1):
        rows = ceil_root(pitch * pitch - (sway // beside) ** 2)
        reach = (-(-count // beside) - 1) * rows
        if reach > best:
            best, which = reach, rows
    return Bound(diameter - (-best // fine), "round-rows", {"diameter": diameter, "rows": which})


def _round_density(strip: Strip, diameter: int) -> Bound:
    """How far the centres of the circles must reach along the roll by their number."""
    count = sum(p.qty for p in _holding(strip, diameter))
    pitch, sway = diameter + strip.gap, strip.width - diameter
    reach = pitch * ((count - 1) * pitch - sway) / (MORE_THAN_2_BY_ROOT_3 * sway + pitch)
    return Bound(diameter + max(ceil(reach), 0), "round-density", {"diameter": diameter})
