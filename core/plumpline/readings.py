"""Every reading of the tape, written out by the core for the time before Python runs in the browser.

The screen looks a place on the tape up here, so that no other program ever formats a fraction.
"""

from __future__ import annotations

import json
from fractions import Fraction
from typing import Any

from plumpline.lengths import NM_PER_INCH, UNITS, round_half_even, write_length
from plumpline.spoken import speak_length

_SIXTEENTH = NM_PER_INCH // 16
_MILLIMETRE = UNITS["mm"]


def readings_document() -> dict[str, Any]:
    """{"in": {"step_nm", "rows"}, "mm": …}: every 1/16 in from 0 to 120 in, every mm from 0 to 3 m.

    Row i stands for i × step_nm: its own text (inches, or centimetres), the other system's (with `≈` where it
    is rounded), and what is said aloud.
    """
    return {
        "in": {"step_nm": _SIXTEENTH, "rows": _rows(_SIXTEENTH, 120 * NM_PER_INCH, "in", "cm")},
        "mm": {"step_nm": _MILLIMETRE, "rows": _rows(_MILLIMETRE, 3 * UNITS["m"], "cm", "in")},
    }


def part_on_tape(length: int, part: Fraction, unit: str) -> int:
    """A part of a length (nm), as a finger pointed at it, at the nearest mark of the tape in `unit`: 1/16 in or 1 mm.

    Exact until it is rounded, once, half to even.
    """
    step = _SIXTEENTH if unit == "in" else _MILLIMETRE
    return round_half_even(length * part / step) * step


def dump_readings() -> str:
    """The document as JSON text, the same bytes every time, ending in a new line."""
    return json.dumps(readings_document(), ensure_ascii=False, separators=(",", ":")) + "\n"


def _rows(step: int, last: int, own: str, other: str) -> list[list[str]]:
    lengths = range(0, last + 1, step)
    return [[write_length(nm, own), write_length(nm, other), speak_length(nm, own)] for nm in lengths]
