"""Lengths: read as makers write them, kept as whole nanometres, written back on a tape's own grid.

Inside the core a length is an `int` of nanometres. 1 in = 25.4 mm and 1 yd = 0.9144 m exactly (US National
Bureau of Standards, addendum of 1960 to Circular 572), so every unit here is whole. No float is used.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise
from typing import Any

from plumpline.typed import PlainText, plain_text

NM_PER_INCH = 25_400_000

#: Nanometres in one of each unit, by the name a job document uses.
UNITS = {
    "mm": 1_000_000,
    "cm": 10_000_000,
    "m": 1_000_000_000,
    "in": NM_PER_INCH,
    "ft": 12 * NM_PER_INCH,
    "yd": 36 * NM_PER_INCH,
}

#: No tape, bolt or room is longer than this: 10 000 m, in nanometres.
LONGEST = 10_000 * UNITS["m"]

#: The grid a length is written on unless another is asked for, in nm: what a tape shows.
TAPE_GRID = {
    "mm": 100_000,
    "cm": 100_000,
    "m": 1_000_000,
    "in": NM_PER_INCH // 16,
    "ft": NM_PER_INCH // 16,
    "yd": UNITS["yd"] // 8,
}

#: The grid a length to buy is rounded up to in the other system, in nm.
COUNTER_GRID = {
    "mm": UNITS["cm"],
    "cm": UNITS["cm"],
    "m": UNITS["cm"],
    "in": NM_PER_INCH // 8,
    "ft": NM_PER_INCH // 8,
    "yd": UNITS["yd"] // 8,
}

_METRIC = ("mm", "cm", "m")
_MOST_CHARACTERS = 64
_EXAMPLE = "17 5/8 in or 45.5 cm"

_NUMBERS = ("whole", "decimal", "fraction")

_SPELLINGS = {
    spelling: unit
    for unit, spellings in {
        "mm": "mm millimetre millimetres millimeter millimeters",
        "cm": "cm centimetre centimetres centimeter centimeters",
        "m": "m metre metres meter meters",
        "in": "in ins inch inches \" ''",
        "ft": "ft foot feet '",
        "yd": "yd yds yard yards",
    }.items()
    for spelling in spellings.split()
}

# A raised figure is read only as the upper part of a fraction ("17⁵⁄₈"), never as a power or a footnote.
_TOKEN = re.compile(
    r"""
    (?P<fraction> [0-9]+\ */\ *[0-9]+ | [⁰¹²³⁴⁵⁶⁷⁸⁹]+\ */\ *(?:[₀₁₂₃₄₅₆₇₈₉]+|[0-9]+) )
  | (?P<decimal> [0-9]+[.,][0-9]* | [.,][0-9]+ )
  | (?P<whole> [0-9]+ )
  | (?P<unit> '' | ["'] | (?!and\b)[a-z]+(?:\.(?![0-9]))? )
  | (?P<join> - | & | and\b | ,(?=\ ) )
  | (?P<other> [^ ] )
    """,
    re.VERBOSE,
)
_RAISED_AND_LOWERED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉", "0123456789" * 2)
_LIKE_THOUSANDS = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}")


class LengthError(ValueError):
    """A text that is not read as a length: `code`, what was `understood` of `text`, what stayed `unread`.

    The message is one or two sentences in a maker's words and says what to write instead.
    """

    def __init__(self, code: str, message: str, text: object, understood: str = "", unread: str = "") -> None:
        super().__init__(message)
        self.code = code
        self.text = text
        self.understood = understood
        self.unread = unread


@dataclass(frozen=True)
class _Token:
    kind: str
    text: str
    start: int
    end: int


@dataclass(frozen=True)
class _Number:
    """A number: whole, decimal, comma (a decimal with one), fraction or mixed; tidied, and as written."""

    kind: str
    value: Fraction
    text: str
    written: str


@dataclass(frozen=True)
class _Part:
    """A number with its unit; only a plain 0 may go without one, and then `unit` is empty."""

    number: _Number
    unit: str

    @property
    def text(self) -> str:
        return f"{self.number.text} {self.unit}".rstrip()

    @property
    def nm(self) -> Fraction:
        return self.number.value * UNITS[self.unit] if self.unit else Fraction(0)


def read_length(text: str, unit: str | None = None) -> int:
    """The length a maker wrote, in nm; `unit` (a key of `UNITS`) is for a text that names none.

    Raises `LengthError` for everything that is not a length from end to end. A value that is not whole in
    nm (1/3 in) is rounded once, half to even.
    """
    return _total(_read_parts(text, unit), text)


def read_length_full(text: str, unit: str | None = None) -> dict[str, Any]:
    """As `read_length`, with how the text was understood: {"nm", "understood", "notices"}.

    `understood` is the tidy text with its unit ("17 5/8 in"); `notices` is a list of {"code", "text"} for a
    reading that deserves a question.
    """
    parts = _read_parts(text, unit)
    return {"nm": _total(parts, text), "understood": _tidy(parts), "notices": _notices(parts)}


def write_length(nm: int, unit: str, nearest: int | None = None) -> str:
    """A length as text in `unit`, on the grid `nearest` (nm); `≈` marks what the grid does not show exactly.

    Left out, the grid is a tape's: 1/16 in (in, ft), 1/8 yd, 0.1 mm, 0.01 cm, 0.001 m. The length is rounded
    to the grid first, a tie away from zero, and split into wholes and fraction after (fault B12). `ft` is
    written in feet and inches.
    """
    step = nearest or TAPE_GRID[unit]
    shown = round_to(nm, step)
    return ("" if shown == nm else "≈ ") + _on_grid(shown, unit)


def write_length_up(nm: int, unit: str, nearest: int | None = None) -> str:
    """A length to buy, as text in `unit`, rounded up to the grid `nearest` (nm), so without `≈`.

    Left out, the grid is what a counter measures in the other system: 1 cm (mm, cm, m), 1/8 in (in, ft) or
    1/8 yd.
    """
    return _on_grid(round_up(nm, nearest or COUNTER_GRID[unit]), unit)


def round_up(nm: int, step: int) -> int:
    """The smallest multiple of `step` (nm) that is not below `nm`; a step of 0 means no grid."""
    return -(-nm // step) * step if step else nm


def round_to(nm: int, step: int) -> int:
    """The multiple of `step` (nm) nearest to `nm`, a tie away from zero."""
    size = (2 * abs(nm) + step) // (2 * step) * step
    return size if nm >= 0 else -size


def round_half_even(value: Fraction) -> int:
    """The nearest whole number, a tie to the even one: how a length becomes whole nanometres."""
    return round(value)


def round_half_up(value: Fraction) -> int:
    """The nearest whole number, a tie upwards: how an amount becomes whole minor units."""
    return (2 * value.numerator + value.denominator) // (2 * value.denominator)


def mixed_number(value: Fraction) -> tuple[int, Fraction]:
    """A value that is not negative, split into its wholes and a proper fraction in lowest terms."""
    whole = value.numerator // value.denominator
    return whole, value - whole


def decimal_figures(value: Fraction) -> tuple[int, str]:
    """A value in whole nm of a metric unit, split into its wholes and up to nine decimals, no idle zeros."""
    whole, part = mixed_number(value)
    return whole, f"{int(part * 10**9):09d}".rstrip("0")


def _on_grid(nm: int, unit: str) -> str:
    """A length written out exactly: nothing is rounded here."""
    if nm < 0:
        return "-" + _on_grid(-nm, unit)
    if unit == "ft":
        feet, rest = divmod(nm, UNITS["ft"])
        inches = _on_grid(rest, "in")
        return inches if not feet else f"{feet} ft {inches}" if rest else f"{feet} ft"
    number = decimal_text if unit in _METRIC else _mixed_text
    return f"{number(Fraction(nm, UNITS[unit]))} {unit}"


def _mixed_text(value: Fraction) -> str:
    whole, part = mixed_number(value)
    if not part:
        return str(whole)
    fraction = f"{part.numerator}/{part.denominator}"
    return f"{whole} {fraction}" if whole else fraction


def decimal_text(value: Fraction) -> str:
    """A value that is not negative with at most nine decimals, without idle zeros: "0.97"."""
    whole, decimals = decimal_figures(value)
    return f"{whole}.{decimals}" if decimals else str(whole)


def _read_parts(text: str, unit: str | None) -> list[_Part]:
    if not isinstance(text, str):
        raise LengthError("not-text", f"A length is written as text with its unit, such as {_EXAMPLE}.", text)
    if unit is not None and unit not in UNITS:
        raise LengthError("unknown-unit", f"The unit must be one of {', '.join(UNITS)}.", text)
    if len(text) > _MOST_CHARACTERS:
        message = f"This is too long for a length. Write one number and its unit, such as {_EXAMPLE}."
        raise LengthError("too-long", message, text, unread=text)
    return _Reading(plain_text(text), unit).parts()


def _total(parts: Sequence[_Part], text: str) -> int:
    total = Fraction(0)
    for part in parts:
        total += part.nm
    if total > LONGEST:
        message = f"{_tidy(parts)} is longer than any cloth (over 10 000 m). Check number and unit."
        raise LengthError("too-large", message, text, understood=_tidy(parts))
    return round_half_even(total)


def _tidy(parts: Sequence[_Part]) -> str:
    return " ".join(part.text for part in parts)


class _Reading:
    """One pass over the words of a text, from left to right, that leaves nothing unread."""

    def __init__(self, plain: PlainText, unit: str | None) -> None:
        self._plain = plain
        self._unit = unit
        self._tokens = [
            _Token(str(match.lastgroup), match.group(), match.start(), match.end())
            for match in _TOKEN.finditer(plain.text)
        ]
        self._tokens.append(_Token("end", "", len(plain.text), len(plain.text)))
        self._next = 0
        self._read: list[_Part] = []

    def parts(self) -> list[_Part]:
        """Every number with its unit, in order, each unit smaller than the one before."""
        self._refuse_what_is_no_number()
        self._read.append(self._part())
        while self._peek().kind != "end":
            before = self._next
            part = self._part()
            self._refuse_a_wrong_order(part, before)
            self._read.append(part)
        return self._read

    def _peek(self, ahead: int = 0) -> _Token:
        return self._tokens[min(self._next + ahead, len(self._tokens) - 1)]

    def _fail(self, code: str, message: str, number: str = "", at: int | None = None) -> LengthError:
        """The error for what stands at token `at` (the next one if left out), after all that was read."""
        start = self._tokens[self._next if at is None else at].start
        understood = f"{_tidy(self._read)} {number}".strip()
        return LengthError(code, message, self._plain.typed, understood, self._plain.typed_from(start))

    def _refuse_what_is_no_number(self) -> None:
        first = self._peek()
        if first.kind == "end":
            raise self._fail("empty", f"Nothing is written here yet. Write a length such as {_EXAMPLE}.")
        if first.text == "-" and self._peek(1).kind in _NUMBERS:
            raise self._fail("negative", "A length cannot be below zero. Write it without the minus sign.")
        if first.text in ("≈", "~"):
            message = f"“{first.text}” marks a rounded length. Write the measure itself, as it was taken."
            raise self._fail("approximate", message)
        if first.kind not in _NUMBERS:
            shown = _shorten(self._plain.typed_from(first.start))
            message = f"“{shown}” is not a length. Write a number and its unit, such as {_EXAMPLE}."
            raise self._fail("not-a-length", message)

    def _part(self) -> _Part:
        start = self._next
        if self._read and self._peek().kind == "join":
            self._next += 1
        token = self._peek()
        if token.kind == "whole":
            number = self._whole_or_mixed(token)
        elif token.kind == "fraction":
            number = self._fraction(token)
        elif token.kind == "decimal":
            number = self._decimal(token)
        else:
            raise self._unread_tail("", start)
        return _Part(number, self._written_unit(number) or self._unit_without_words(number))

    def _whole_or_mixed(self, token: _Token) -> _Number:
        whole = int(token.text)
        ahead = 2 if self._peek(1).kind == "join" else 1
        after = self._peek(ahead)
        if after.kind != "fraction":
            self._next += 1
            return _Number("whole", Fraction(whole), str(whole), token.text)
        self._next += ahead
        part = self._fraction(after, str(whole))
        if part.value >= 1:
            message = (
                f"{part.text} is one or more, so it cannot follow {whole}. "
                f"Write a fraction smaller than one, such as {_EXAMPLE}."
            )
            raise self._fail("fraction-not-below-one", message, str(whole), self._next - 1)
        return _Number("mixed", whole + part.value, f"{whole} {part.text}", f"{token.text} {after.text}")

    def _fraction(self, token: _Token, whole: str = "") -> _Number:
        above, below = (int(figure) for figure in token.text.translate(_RAISED_AND_LOWERED).split("/"))
        if not below:
            message = f"{above}/0 is not a number. The lower figure cannot be 0: write {_EXAMPLE}."
            raise self._fail("zero-denominator", message, whole)
        self._next += 1
        return _Number("fraction", Fraction(above, below), f"{above}/{below}", token.text)

    def _decimal(self, token: _Token) -> _Number:
        text = token.text.replace(",", ".")
        if self._read and text.startswith("."):
            so_far = _tidy(self._read)
            message = f"“{token.text}” after {so_far} reads in two ways. Write 0{text} or {text[1:]}."
            raise self._fail("decimal-without-whole", message)
        whole, decimals = text.split(".")
        tidy = f"{int(whole or '0')}.{decimals}".rstrip("0").rstrip(".") if decimals else str(int(whole))
        self._next += 1
        after = self._peek()
        if after.kind == "decimal" and after.start == token.end:
            message = "Two decimal marks. Write one, and none for thousands, such as 1024.5 mm."
            raise self._fail("two-decimal-marks", message, tidy)
        if self._peek(1 if after.kind == "join" else 0).kind == "fraction":
            message = f"{tidy} has decimals, so no fraction can follow. Write one of them: {_EXAMPLE}."
            raise self._fail("decimal-and-fraction", message, tidy)
        return _Number("comma" if "," in token.text else "decimal", Fraction(tidy), tidy, token.text)

    def _written_unit(self, number: _Number) -> str | None:
        hyphen = self._peek().text == "-" and self._peek(1).kind == "unit"  # an 18-inch pad
        token = self._peek(1 if hyphen else 0)
        if token.kind != "unit":
            return None
        unit = _SPELLINGS.get(token.text.rstrip("."))
        if unit is None:
            shown, n = _shorten(self._plain.typed_from(token.start)), number.text
            message = f"“{shown}” after {n} is not a unit known here. Write {n} in, ft, yd, mm, cm or m."
            raise self._fail("unknown-unit", message, n)
        self._next += 2 if hyphen else 1
        return unit

    def _unit_without_words(self, number: _Number) -> str:
        """The unit of a number that names none: inches after feet, else what the field is in."""
        n = number.text
        if self._peek().kind != "end":
            raise self._unread_tail(n, self._next)
        if self._read and self._read[-1].unit == "ft" and number.kind in ("whole", "mixed"):
            return "in"
        if self._read:
            message = f"{n} what? Write its unit too, or the whole length as one number, such as {_EXAMPLE}."
            raise self._fail("unit-missing", message, at=self._next - 1)
        if self._unit is None and number.value:
            message = f"{n} what? Write its unit too: {n} in, {n} cm, {n} mm, {n} m or {n} yd."
            raise self._fail("unit-missing", message, n)
        return self._unit or ""

    def _unread_tail(self, number: str, at: int) -> LengthError:
        shown = _shorten(self._plain.typed_from(self._tokens[at].start))
        so_far = f"{_tidy(self._read)} {number}".strip()
        message = f"Read as {so_far}, but not “{shown}” after it. Write a length such as {_EXAMPLE}."
        return self._fail("unread-tail", message, number, at)

    def _refuse_a_wrong_order(self, part: _Part, at: int) -> None:
        before, so_far = self._read[-1], _tidy(self._read)
        if (before.unit in _METRIC) != (part.unit in _METRIC):
            message = f"{so_far} and {part.text} are of two systems. Write the length in one of them."
            raise self._fail("mixed-units", message, at=at)
        if before.unit == part.unit:
            message = f"{part.text} after {so_far}: the same unit twice. Write one number with one unit."
            raise self._fail("repeated-unit", message, at=at)
        if UNITS[before.unit] < UNITS[part.unit]:
            message = f"{part.text} comes after {so_far}. Write the larger unit first: {part.text} {so_far}."
            raise self._fail("units-out-of-order", message, at=at)
        if before.number.kind in ("decimal", "comma"):
            message = f"{so_far} has decimals, so {part.text} cannot follow. Write one number: {_EXAMPLE}."
            raise self._fail("decimal-before-smaller-unit", message, at=at)


def _shorten(text: str) -> str:
    return text if len(text) <= 24 else text[:23] + "…"


def _notices(parts: Sequence[_Part]) -> list[dict[str, str]]:
    """The questions a reading deserves, in the order of its parts."""
    notices = []
    for part in parts:
        notices += _improper(part) + _like_thousands(part)
    for larger, smaller in pairwise(parts):
        notices += _fills_the_larger(larger, smaller)
    return notices


def _improper(part: _Part) -> list[dict[str, str]]:
    number = part.number
    if number.kind != "fraction" or number.value < 1:
        return []
    above, below = number.text.split("/")  # a space may be missing: 11/4 for 1 1/4
    cuts = [(above[:cut], above[cut:]) for cut in range(1, len(above))]
    meant = [f"{whole} {rest}/{below}" for whole, rest in cuts if 0 < int(rest) < int(below)]
    question = f"Did you mean {' or '.join(meant)}?" if meant else "Is that what you meant?"
    text = f"{number.text} was read as {_mixed_text(number.value)} {part.unit}. {question}"
    return [{"code": "improper-fraction", "text": text}]


def _like_thousands(part: _Part) -> list[dict[str, str]]:
    """A mark followed by three figures may have been meant for thousands, where three decimals are odd."""
    number = part.number
    odd = number.kind == "comma" or (number.kind == "decimal" and part.unit in ("mm", "cm"))
    if not odd or not _LIKE_THOUSANDS.fullmatch(number.written):
        return []
    code = "comma-as-decimal" if number.kind == "comma" else "point-as-decimal"
    whole = number.written.replace(",", "").replace(".", "")
    text = f"{number.written} was read as {part.text}. If you meant {whole} {part.unit}, write no mark."
    return [{"code": code, "text": text}]


def _fills_the_larger(larger: _Part, smaller: _Part) -> list[dict[str, str]]:
    if smaller.nm < UNITS[larger.unit]:
        return []
    text = f"{smaller.text} after {larger.text} is one {larger.unit} or more. Is that what you meant?"
    return [{"code": "fills-the-larger-unit", "text": text}]
