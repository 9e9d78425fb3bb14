# Piping: how wide its strip is cut, what a join costs, and the cord that goes into it.
"""The strip goes once round the cord and the cloth on it, with a seam at either edge. All lengths in nm."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from plumpline.geometry import PI
from plumpline.lengths import NM_PER_INCH, UNITS, decimal_text, round_up, write_length

#: Strips are cut up to this (common practice: 1/4 in or 5 mm).
STRIP_GRID = {"in": NM_PER_INCH // 4, "cm": 5 * UNITS["mm"]}

#: Cord bought beyond what is measured.
SPARE = Fraction(5, 100)


def strip_width(cord: int, cloth: int, seam: int, units: str) -> int:
    """π · (cord + thickness of cloth) + 2 seams, up to 1/4 in or 5 mm: two slip-cover makers publish such widths."""
    exact = ceil(PI * (cord + cloth)) + 2 * seam
    return round_up(exact, STRIP_GRID["in" if units == "in" else "cm"])


def join_cost(strip: int, join: str, units: str) -> int:
    """What one join takes: a ``mitred`` one a strip's width, a ``straight`` one 1 in or 2.5 cm (common practice)."""
    if join == "mitred":
        return strip
    return NM_PER_INCH if units == "in" else 25 * UNITS["mm"]


@dataclass(frozen=True)
class Cord:
    """The cord, or trim by the length, of some equal rings."""

    ring: int
    join: int
    rings: int
    spare: Fraction = SPARE

    @property
    def each(self) -> int:
        """One ring with its join."""
        return self.ring + self.join

    @property
    def length(self) -> int:
        """All rings and the spare."""
        return ceil(self.each * self.rings * (1 + self.spare))

    def working(self, units: str) -> str:
        """From the edge to the length to buy."""
        edge, join, each, all_ = (write_length(nm, units) for nm in (self.ring, self.join, self.each, self.length))
        more = f"{decimal_text(100 * self.spare)} % more"
        return f"{edge} round the edge + {join} for the join = {each}; × {self.rings}, {more}: {all_}."
