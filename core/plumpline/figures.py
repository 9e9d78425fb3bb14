"""Figures as an answer shows them: lengths with their text, sizes, and a length in the words of a shop."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from plumpline.job import NM_PER_CM, NM_PER_YARD
from plumpline.lengths import NM_PER_INCH, decimal_text, round_half_even, write_length, write_length_up
from plumpline.measures import Measures, word_of

Figure = dict[str, Any]


def figure(nm: int, units: str) -> Figure:
    """A length as the answer carries it: exact nm and the text in the job's units."""
    return {"nm": nm, "text": write_length(nm, units)}


def size(width: int, length: int, units: str) -> str:
    """Two lengths as one text with one unit: "18 × 17 5/8 in"."""
    return sizes((width, length), units)


def sizes(lengths: tuple[int, ...], units: str) -> str:
    """Several lengths as one text with one unit: "24 × 36 × 3 in"."""
    return " × ".join([*(bare(nm, units) for nm in lengths[:-1]), write_length(lengths[-1], units)])


def told(measures: Measures, units: str) -> str:
    """The measures of a thing as one text: "18 × 17 5/8 in", "16 in across"."""
    if measures.get("diameter") is not None:
        names = measures.names
        return ", ".join(f"{write_length(nm, units)} {word_of(name, names).adjective}" for name, nm in measures)
    return sizes(measures.lengths, units)


def told_each(measures: Measures, units: str) -> Figure:
    """The measures of a thing as the answer carries them together, with one text for all."""
    return {**{name: figure(nm, units) for name, nm in measures}, "size": told(measures, units)}


def sized(width: int, length: int, units: str) -> Figure:
    """A width and a length as the answer carries them together, with one text for both."""
    return {"width": figure(width, units), "length": figure(length, units), "size": size(width, length, units)}


def bare(nm: int, units: str) -> str:
    """A length without its unit, for a sentence that names the unit once."""
    return write_length(nm, units).removesuffix(f" {units}")


def _shop_unit(step: int, units: str) -> tuple[str, int]:
    """The unit a shop counts in, seen from its selling step, and the grid on which it is told; both exact if any is."""
    grids = (("yd", NM_PER_YARD // 16), ("m", NM_PER_CM // 10), ("in", NM_PER_INCH // 64))
    exact = [(unit, grid) for unit, grid in grids if step % grid == 0]
    if exact:
        return exact[0]
    return ("in", NM_PER_INCH // 16) if units == "in" else ("m", NM_PER_CM // 10)


def length_to_ask(nm: int, step: int, units: str) -> str:
    """A whole number of selling steps in the words of the shop: "2 1/8 yd", "1.9 m"; never rounded down."""
    unit, grid = _shop_unit(step, units)
    return write_length_up(nm, unit, grid)


def selling_step(step: int, units: str) -> str:
    """The selling step in the words of the shop: "1/8 yd", "10 cm"."""
    unit, grid = _shop_unit(step, units)
    return write_length_up(step, "cm" if unit == "m" and step < 100 * NM_PER_CM else unit, grid)


def in_other_system(nm: int, step: int, units: str) -> str:
    """The same length for a shop of the other system, rounded up to the next cm or 1/8 in."""
    return write_length_up(nm, "in" if _shop_unit(step, units)[0] == "m" else "m")


def percent(share: Fraction) -> str:
    """A part of a whole in hundredths: "4 %", "≈ 16.67 %"."""
    return f"{rounded(share * 100, 2)} %"


def rounded(value: Fraction, places: int) -> str:
    """A value with at most so many decimals, marked where they do not show it exactly."""
    shown = Fraction(round_half_even(value * 10**places), 10**places)
    return ("" if shown == value else "≈ ") + decimal_text(shown)


def listed(texts: list[str]) -> str:
    """Several texts as one: "18", "18 and 36", "18, 36 and 54"."""
    return " and ".join([", ".join(texts[:-1]), texts[-1]]) if len(texts) > 1 else texts[0]


def counted(number: int, one: str, many: str) -> str:
    """A number with its word: "1 panel", "12 panels"."""
    return f"{number} {one if number == 1 else many}"


def letters_for(number: int) -> str:
    """A number from 1 as letters: A, B, … Z, AA."""
    letters = ""
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters
