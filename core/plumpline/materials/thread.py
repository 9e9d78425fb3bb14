# Thread: how much the seams of a job take, and how many spools of it to buy.
"""Lockstitch (stitch type 301 of ISO 4915) takes C = 2 + 2·T·S of thread for each length of seam, T the thickness of
all layers under the needle and S the stitches to the inch; with the stitch length L that is 2 + 2·T/L. Thread makers'
tables say 2.5 whatever the cloth; the larger of the two is bought. Half of it goes on the bobbin. All lengths in nm.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil
from typing import ClassVar, Protocol

from plumpline.figures import counted, listed
from plumpline.lengths import UNITS, decimal_text, round_half_even, write_length, write_length_up

#: Thread for each length of lockstitch seam in thread makers' tables.
FLAT_RATIO = Fraction(5, 2)

#: Added for ends, breaks and trials: teaching pages say 10 to 15 % or 15 to 20 %.
WASTE = Fraction(15, 100)

#: A household spool (common practice).
SPOOL = 100 * UNITS["m"]


class Seam(Protocol):
    """A length of seam and what it takes."""

    @property
    def length(self) -> int:
        """How long it is."""

    @property
    def what(self) -> str:
        """What it is called."""

    def ratio(self, stitch: int) -> Fraction:
        """Thread for each length of seam."""


@dataclass(frozen=True)
class Lockstitched:
    """A seam through layers of this thickness together."""

    length: int
    thickness: int
    what: ClassVar[str] = "seam"

    def ratio(self, stitch: int) -> Fraction:
        """The formula, but never less than the flat ratio."""
        return max(FLAT_RATIO, lockstitch_ratio(self.thickness, stitch))


@dataclass(frozen=True)
class Overlocked:
    """An edge neatened with a three-thread overedge (type 504), ``bite`` wide."""

    length: int
    thickness: int
    bite: int = 5 * UNITS["mm"]
    what: ClassVar[str] = "overlocked edge"

    def ratio(self, stitch: int) -> Fraction:
        """C = 5 + 4·S·(W + T), the larger of the two forms in textile teaching (the other begins with 3)."""
        return 5 + Fraction(4 * (self.bite + self.thickness), stitch)


def lockstitch_ratio(thickness: int, stitch: int) -> Fraction:
    """C = 2 + 2·T·S of textile teaching, by stitch length: 2 + 2·T/L."""
    return 2 + Fraction(2 * thickness, stitch)


@dataclass(frozen=True)
class Thread:
    """The thread of one colour for some seams."""

    seams: tuple[Seam, ...]
    stitch: int
    waste: Fraction = WASTE
    spool: int = SPOOL

    @property
    def length(self) -> int:
        """All of it, waste included."""
        return ceil(sum(seam.length * seam.ratio(self.stitch) for seam in self.seams) * (1 + self.waste))

    @property
    def bobbin(self) -> int:
        """What the bobbins take of the lockstitched seams, without waste."""
        sewn = sum(seam.length * seam.ratio(self.stitch) for seam in self.seams if isinstance(seam, Lockstitched))
        return round_half_even(Fraction(sewn) / 2)

    @property
    def spools(self) -> int:
        """Whole spools."""
        return -(-self.length // self.spool)

    def working(self, units: str) -> str:
        """From the seams to the spools."""
        waste = f"{decimal_text(100 * self.waste)} % more for ends and waste"
        metres = write_length_up(self.length, "m", UNITS["m"])
        total = f"{metres} ({write_length_up(self.length, 'yd', UNITS['yd'])})" if units == "in" else metres
        spools = f"{counted(self.spools, 'spool', 'spools')} of {write_length(self.spool, 'm')}"
        return f"{listed(self._lines(units))}; {waste}: {total}, {spools}."

    def _lines(self, units: str) -> list[str]:
        unit = "yd" if units == "in" else "m"
        return [
            f"{write_length_up(seam.length, unit)} of {seam.what} × {_shown(seam.ratio(self.stitch))}"
            for seam in self.seams
        ]


def _shown(ratio: Fraction) -> str:
    return decimal_text(Fraction(round_half_even(100 * ratio), 100))
