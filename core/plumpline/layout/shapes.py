# Panels that are not rectangles: whether a strip has any, what they must span, and the boxes around them.
"""What the engine asks about the shapes of panels before it plans them."""

from __future__ import annotations

from dataclasses import replace
from math import isqrt

from plumpline.layout.outlines import extents_of
from plumpline.layout.strip import Strip


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


def ceil_root(square: int) -> int:
    """The least whole number whose square is not below ``square`` (above 0)."""
    return isqrt(square - 1) + 1
