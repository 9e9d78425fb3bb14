# Frills: how long and how wide the strip of a gathered or pleated frill is cut.
"""Cut along the edge by its fullness; gathers are drawn up to a half or a third (NIMI, Dress Making, p. 210). In nm."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from plumpline.lengths import decimal_text, write_length

#: Strip for each length of edge: gathers in firm cloth and in soft, side and box pleats (The New Dressmaker, 1921).
FULLNESS = {"gathered": Fraction(2), "gathered-soft": Fraction(3), "pleated": Fraction(3)}


@dataclass(frozen=True)
class Frill:
    """One frill: the strip before it is drawn up, its ends sewn into a ring."""

    edge: int
    fullness: Fraction
    width: int
    seam: int

    @property
    def length(self) -> int:
        """The strip with the seam that closes it."""
        return ceil(self.edge * self.fullness) + 2 * self.seam

    def working(self, units: str) -> str:
        """From the edge to the strip."""
        edge, seam, length, width = (write_length(nm, units) for nm in (self.edge, self.seam, self.length, self.width))
        full = decimal_text(self.fullness)
        return f"{edge} of edge × {full} + 2 seams of {seam} = {length} of strip, {width} wide."


def doubled(edge: int, fullness: Fraction, depth: int, seam: int) -> Frill:
    """A frill folded along its middle: 2 · depth + 2 seams wide."""
    return Frill(edge, fullness, 2 * depth + 2 * seam, seam)


def hemmed(edge: int, fullness: Fraction, depth: int, seam: int, hem: int) -> Frill:
    """A single frill with a hem: depth + seam + hem wide."""
    return Frill(edge, fullness, depth + seam + hem, seam)
