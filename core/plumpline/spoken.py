"""Lengths as they are said aloud: "seventeen and five eighths inches", for a screen that is listened to."""

from __future__ import annotations

from fractions import Fraction

from plumpline.lengths import TAPE_GRID, UNITS, decimal_figures, mixed_number, round_to

_NUMBERS = """
    zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
    seventeen eighteen nineteen
"""
_BELOW_TWENTY = _NUMBERS.split()
_TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"]
_SINGULAR = {"mm": "millimetre", "cm": "centimetre", "m": "metre", "in": "inch", "ft": "foot", "yd": "yard"}
_PLURAL = {unit: f"{word}s" for unit, word in _SINGULAR.items()} | {"in": "inches", "ft": "feet"}
_PARTS = {2: "half", 4: "quarter", 8: "eighth", 16: "sixteenth"}


def speak_length(nm: int, unit: str) -> str:
    """A length said in `unit` (a key of `UNITS`), on the same grid as `write_length`.

    "about" says that the grid does not show it exactly; `ft` is said in feet and inches.
    """
    shown = round_to(nm, TAPE_GRID[unit])
    about = "" if shown == nm else "about "
    minus = "minus " if shown < 0 else ""
    return about + minus + _on_grid(abs(shown), unit)


def number_in_words(number: int) -> str:
    """A whole number from 0 to 999 999 999 in British English: 118 is "one hundred and eighteen"."""
    if number < 20:
        return _BELOW_TWENTY[number]
    if number < 100:
        tens, ones = divmod(number, 10)
        return f"{_TENS[tens]}-{_BELOW_TWENTY[ones]}" if ones else _TENS[tens]
    size, word = next(
        (s, w) for s, w in ((10**6, "million"), (1000, "thousand"), (100, "hundred")) if number >= s
    )
    many, rest = divmod(number, size)
    said = f"{number_in_words(many)} {word}"
    if not rest:
        return said
    return f"{said} and {number_in_words(rest)}" if rest < 100 else f"{said} {number_in_words(rest)}"


def _on_grid(nm: int, unit: str) -> str:
    if unit in ("mm", "cm", "m"):
        return _with_point(Fraction(nm, UNITS[unit]), unit)
    if unit == "ft" and nm >= UNITS["ft"]:
        feet, rest = divmod(nm, UNITS["ft"])
        said = f"{number_in_words(feet)} {_name(unit, Fraction(feet))}"
        return f"{said} {_on_grid(rest, 'in')}" if rest else said
    small = "in" if unit == "ft" else unit
    return _with_fraction(Fraction(nm, UNITS[small]), small)


def _name(unit: str, number: Fraction) -> str:
    return _SINGULAR[unit] if number == 1 else _PLURAL[unit]


def _with_point(number: Fraction, unit: str) -> str:
    whole, decimals = decimal_figures(number)
    point = "".join(f" {_BELOW_TWENTY[int(figure)]}" for figure in decimals)
    return f"{number_in_words(whole)}{' point' + point if point else ''} {_name(unit, number)}"


def _with_fraction(number: Fraction, unit: str) -> str:
    whole, part = mixed_number(number)
    one = f"{'an' if unit == 'in' else 'a'} {_SINGULAR[unit]}"
    if not part:
        return f"{number_in_words(whole)} {_name(unit, number)}"
    if not whole:
        return f"half {one}" if part == Fraction(1, 2) else f"{_part(part)} of {one}"
    if whole % 100 == 0:  # "one hundred and thirteen sixteenths" would be two lengths in one
        return f"{number_in_words(whole)} {_PLURAL[unit]} and {_part(part)}"
    return f"{number_in_words(whole)} and {_part(part)} {_PLURAL[unit]}"


def _part(part: Fraction) -> str:
    name = _PARTS[part.denominator]
    if part.numerator == 1:
        return f"an {name}" if name == "eighth" else f"a {name}"
    return f"{number_in_words(part.numerator)} {name}s"
