# A strip under one setting, laid out ready for the decoders, and what they make of it.
"""What all decoders share.

A decoder turns an order of panels into a layout. Layouts are compared by their *overshoot*, the area of panels above
a target length: it tells two layouts of equal length apart, and 0 means that the target is kept.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property

from plumpline.layout.outlines import between
from plumpline.layout.places import Kind, Setting, Variant
from plumpline.layout.strip import Flaw, Strip

Spot = tuple[int, int, int, int]  # kind, variant, x, y
Item = tuple[int, int]  # kind, variant (-1: whichever fits best)


@dataclass(frozen=True)
class Desk:
    """A strip under one setting, ready for laying: the width and all extents include the gap."""

    strip: Strip
    setting: Setting
    kinds: tuple[Kind, ...]
    width: int

    @cached_property
    def least_w(self) -> int:
        """The least width of any panel."""
        return min(v.w for kind in self.kinds for v in kind.variants)

    @cached_property
    def least_h(self) -> int:
        """The least length of any panel."""
        return min(v.h for kind in self.kinds for v in kind.variants)

    @cached_property
    def area(self) -> int:
        """The area of all panels."""
        return sum(kind.qty * min(v.w * v.h for v in kind.variants) for kind in self.kinds)

    @cached_property
    def free(self) -> bool:
        """Whether any panel may lie anywhere."""
        ways = (v for kind in self.kinds for v in kind.variants)
        return not self.strip.flaws and all(v.columns is None and v.step == 1 for v in ways)

    @cached_property
    def finite(self) -> bool:
        """Whether panels pushed towards the left come to rest at finitely many places known beforehand."""
        bound = all(v.columns is not None for kind in self.kinds for v in kind.variants)
        return bound or not any(f.slants for f in self.strip.flaws)

    def length(self, spots: Sequence[Spot]) -> int:
        """The length of cloth the spots take, without the gap behind the last panel."""
        return max(y + self.kinds[k].variants[v].h for k, v, _, y in spots) - self.strip.gap


@dataclass(frozen=True)
class Layout:
    """What a decoder made: the spots, and the area of them that overshoots the target."""

    spots: tuple[Spot, ...]
    overshoot: int


def rise(flaws: tuple[Flaw, ...], gap: int, variant: Variant, x: int, y: int) -> int:
    """The lowest y allowed to ``variant`` at ``x``, from ``y`` up: on its residue and clear of every flaw."""
    y += (variant.residue - y) % variant.step
    return _clear_of(flaws, gap, variant, x, y) if flaws else y


def _clear_of(flaws: tuple[Flaw, ...], gap: int, variant: Variant, x: int, y: int) -> int:
    right, length = x + variant.w - gap, variant.h - gap
    moved = True
    while moved:
        moved = False
        for f in flaws:
            if f.x < right and x < f.x + f.w and f.y < y + length and y < f.y + f.h:
                top = _top_of(f, x, right, y, length) if f.outline else f.y + f.h
                moved = moved or top > y
                y = top + (variant.residue - top) % variant.step
    return y


def _top_of(flaw: Flaw, left: int, right: int, y: int, length: int) -> int:
    """The top of what a panel from ``left`` to ``right`` touches of a flaw with an outline; ``y`` if it is clear."""
    rows = [rows for part in flaw.parts if (rows := between(part, left, right)) is not None]
    return max((high for low, high in rows if low < y + length and y < high), default=y)


def at_residue(variant: Variant, residue: int) -> Variant:
    """The same variant with the residue of one of its columns."""
    return Variant(variant.turn, variant.w, variant.h, None, residue, variant.step, variant.anchor)
