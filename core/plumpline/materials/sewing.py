# Needle, stitch length and thickness by the weight of the cloth (common practice, every value editable by the maker).
"""A machine needle's metric number Nm is the diameter of its blade in hundredths of a millimetre. Lengths in nm."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from plumpline.lengths import NM_PER_INCH, UNITS, decimal_text, round_half_even

_MM = UNITS["mm"]

#: Nm of each US needle size, as makers of needles print them side by side; no rule holds for all of them.
NM_OF_US = {8: 60, 9: 65, 10: 70, 11: 75, 12: 80, 14: 90, 16: 100, 18: 110, 19: 120}


@dataclass(frozen=True)
class Sewing:
    """How a cloth of one weight is sewn: US needle, thread (Tex), stitch and the thickness of one layer, in nm."""

    needle: int
    tex: int
    stitch: int
    thickness: int


#: By weight of cloth. Needle 14 / 90 and a stitch of 3 mm for furnishing cloth; finer and coarser as sewing guides have
#: it: 2 to 2.5 mm and needle 10 to 12 for light cloth, 3 mm and more and needle 16 or 18 for heavy cloth.
SEWING = {
    "sheer": Sewing(10, 25, 2 * _MM, 2 * _MM // 10),
    "light": Sewing(12, 25, 25 * _MM // 10, 3 * _MM // 10),
    "medium": Sewing(14, 40, 3 * _MM, 5 * _MM // 10),
    "heavy": Sewing(16, 60, 35 * _MM // 10, 10 * _MM // 10),
    "very-heavy": Sewing(18, 75, 4 * _MM, 15 * _MM // 10),
}


def needle_text(us: int) -> str:
    """A needle by both its numbers: "Nm 90 (US 14)"; not as 90/14, which looks like a fraction."""
    return f"Nm {NM_OF_US[us]} (US {us})"


def stitches_per_inch(stitch: int) -> Fraction:
    """25.4 ÷ the stitch in mm."""
    return Fraction(NM_PER_INCH, stitch)


def stitch_text(stitch: int) -> str:
    """A stitch both ways: "3 mm, 8.5 to the inch"."""
    per_inch = Fraction(round_half_even(10 * stitches_per_inch(stitch)), 10)
    return f"{decimal_text(Fraction(stitch, _MM))} mm, {decimal_text(per_inch)} to the inch"


def ticket(tex: int | Fraction) -> int:
    """The metric ticket number of a thread, 3000 ÷ Tex, as printed on spools of synthetic thread."""
    return round_half_even(Fraction(3000) / tex)


def cotton_ticket(tex: int | Fraction) -> int:
    """The cotton ticket number of a thread, 3 · 590.54 ÷ Tex."""
    return round_half_even(3 * Fraction("590.54") / tex)


def thread_text(tex: int) -> str:
    """A thread as spools name it: "Tex 40 (ticket 75, cotton ticket 44)"."""
    return f"Tex {tex} (ticket {ticket(tex)}, cotton ticket {cotton_ticket(tex)})"
