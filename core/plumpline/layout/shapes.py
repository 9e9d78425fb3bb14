# What panels that are not rectangles cover: their outlines or circles, and the places that one bars to another.
"""The body of a panel as it lies turned, and how near two bodies may come.

Straight-sided bodies keep the gap in one of the two directions, as rectangles do. Two circles keep it between their
edges. A circle beside a straight-sided body is taken as a polygon of sixteen sides around it (its corners are rational,
from Pythagorean triples, rounded outwards), which loses at most 2 % of its radius there and never lets them overlap.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property
from itertools import pairwise
from math import isqrt

from plumpline.layout.outlines import (
    Barred,
    Parts,
    Points,
    convex_parts,
    extents_of,
    hull,
    no_fit,
    rectangle,
    section,
    turned,
)
from plumpline.layout.strip import Panel, Strip

# Half-angle tangents of the points at which the sixteen-sided polygon touches the circle, over a quarter of it.
TOUCHED = (Fraction(0), Fraction(1, 5), Fraction(5, 12), Fraction(2, 3), Fraction(1))


@dataclass(frozen=True)
class Body:
    """What a panel covers from its lower left corner: convex parts, and its diameter if it is round (else 0)."""

    parts: Parts
    diameter: int = 0


def is_shaped(strip: Strip) -> bool:
    """Whether any panel is not a rectangle."""
    return any(panel.shape != "rect" for panel in strip.panels)


def boxed(strip: Strip) -> Strip:
    """The same strip with a rectangle around every panel."""
    return replace(strip, panels=tuple(replace(panel, shape="rect") for panel in strip.panels))


def check_shapes(strip: Strip) -> None:
    """Raise ``ValueError`` for a shape that does not fill its width and length."""
    for panel in strip.panels:
        if panel.shape == "rect":
            continue
        if panel.turned is not None or (panel.shape == "circle" and panel.w != panel.h):
            raise ValueError(f"{panel.id}: a shape has the extents it has, a circle one diameter")
        if panel.shape != "circle" and extents_of(panel.shape) != (0, 0, panel.w, panel.h):
            raise ValueError(f"{panel.id}: the outline must span {panel.w} × {panel.h} from (0, 0)")


def body_of(panel: Panel, turn: int) -> Body:
    """What a panel covers when turned."""
    if panel.shape == "circle":
        return Body((around(panel.w),), panel.w)
    if panel.shape == "rect":
        return Body((rectangle(0, 0, *panel.extents(turn)),))
    return Body(convex_parts(turned(panel.shape, turn)))


def around(diameter: int) -> Points:
    """A polygon of sixteen sides around a circle that does not leave its square."""
    corners = []
    for s, t in pairwise(TOUCHED):
        x, y = (1 - s * t) / (1 + s * t), (s + t) / (1 + s * t)
        corners.append((-(-diameter * (1 + x) // 2), -(-diameter * (1 + y) // 2)))
    return hull((p, q) for x, y in corners for p in (x, diameter - x) for q in (y, diameter - y))


@dataclass(frozen=True)
class NoFit:
    """Where a second body may not lie beside a first: inside these polygons, or nearer than ``apart`` (round ones).

    Distances between centres are doubled, so that those of odd diameters are whole; ``shift`` is the doubled distance
    between the centres of two circles whose corners coincide.
    """

    polygons: Parts
    sideways: Parts = ()
    apart: int = 0
    shift: int = 0

    @cached_property
    def cost(self) -> int:
        """The work of one section, in units."""
        return 1 + sum(len(polygon) for polygon in self.polygons) // 5

    def rows(self, dx: int) -> Iterator[Barred]:
        """The rows, counted from the first body's own, that are barred to the second ``dx`` to its right."""
        return self._barred(self.polygons, dx)

    def columns(self, dy: int) -> Iterator[Barred]:
        """The columns, counted from the first body's own, that are barred to the second ``dy`` further along."""
        return self._barred(self.sideways, dy)

    def _barred(self, polygons: Parts, at: int) -> Iterator[Barred]:
        for polygon in polygons:
            cut = section(polygon, at)
            if cut is not None:
                yield cut
        room = self.apart * self.apart - (2 * at + self.shift) ** 2
        if room > 0:
            chord = ceil_root(room)
            yield (-chord - self.shift) // 2, -((self.shift - chord) // 2)


def no_fit_of(first: Body, second: Body, gap: int) -> NoFit:
    """Where ``second`` may not lie beside ``first``."""
    if first.diameter and second.diameter:
        return NoFit((), (), first.diameter + second.diameter + 2 * gap, second.diameter - first.diameter)
    polygons = tuple(no_fit(a, b, gap) for a in first.parts for b in second.parts)
    return NoFit(polygons, tuple(tuple((y, x) for x, y in polygon[::-1]) for polygon in polygons))


def ceil_root(square: int) -> int:
    """The least whole number whose square is not below ``square`` (above 0)."""
    return isqrt(square - 1) + 1
