"""What a phone, a keyboard or another program typed, turned into plain characters one by one.

The tables are written out instead of asking the Unicode database, so that every Python reads the same
text the same way whatever edition of Unicode it carries.
"""

from __future__ import annotations

from dataclasses import dataclass

# Where the digit zero stands in the scripts read here: ASCII, full width, Arabic, Persian, Devanagari,
# Bengali, Gurmukhi, Gujarati, Tamil, Telugu, Thai.
_ZEROS = (0x30, 0xFF10, 0x660, 0x6F0, 0x966, 0x9E6, 0xA66, 0xAE6, 0xBE6, 0xC66, 0xE50)
_DIGITS = {chr(zero + digit): str(digit) for zero in _ZEROS for digit in range(10)}

_FULL_WIDTH = {chr(code + 0xFEE0): chr(code).lower() for code in range(0x21, 0x7F)}
_CAPITALS = {chr(code): chr(code).lower() for code in range(ord("A"), ord("Z") + 1)}

_FRACTION_VALUES = "1/2 1/3 2/3 1/4 3/4 1/5 2/5 3/5 4/5 1/6 5/6 1/7 1/8 3/8 5/8 7/8 1/9 1/10 0/3"
# A fraction in one character stands off from its neighbours: "17½" is 17 1/2, never 171/2.
_FRACTIONS = {
    sign: f" {value} "
    for sign, value in zip(
        "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒↉",
        _FRACTION_VALUES.split(),
        strict=True,
    )
} | {"⅟": " 1/"}

_DASHES = dict.fromkeys("‐‑‒–—―−˗﹘﹣", "-")
_SLASHES = dict.fromkeys("⁄∕⧸", "/")
_SINGLE_QUOTES = dict.fromkeys("’‘‛′‵ʹʼ´`", "'")
_DOUBLE_QUOTES = dict.fromkeys("”“„‟″‶ʺ˝〃〝〞", '"')
_DECIMAL_MARKS = {"٫": "."}
_SQUARE_UNITS = {"㎜": "mm", "㎝": "cm", "㏌": "in"}

# Marks that take no room on the screen. They become a space: to drop one could join two numbers.
_INVISIBLE = "\u00ad\u061c\u180e\ufeff" + "".join(
    chr(code)
    for first, last in ((0x200B, 0x200F), (0x202A, 0x202E), (0x2060, 0x2069))
    for code in range(first, last + 1)
)

_PLAIN = (
    _FULL_WIDTH
    | _CAPITALS
    | _DIGITS
    | _FRACTIONS
    | _DASHES
    | _SLASHES
    | _SINGLE_QUOTES
    | _DOUBLE_QUOTES
    | _DECIMAL_MARKS
    | _SQUARE_UNITS
    | dict.fromkeys(_INVISIBLE, " ")
)


@dataclass(frozen=True)
class PlainText:
    """Plain characters, and for each of them (and for the end) its place in the text as typed."""

    typed: str
    text: str
    places: tuple[int, ...]

    def typed_from(self, place: int) -> str:
        """What was typed from a place in the plain text to the end, without spaces around it."""
        return self.typed[self.places[place] :].strip()


def plain_text(typed: str) -> PlainText:
    """Lower-case ASCII for everything the tables know, one space for any white space, the rest as it is."""
    text: list[str] = []
    places: list[int] = []
    for place, character in enumerate(typed):
        plain = " " if character.isspace() else _PLAIN.get(character, character)
        text.append(plain)
        places.extend([place] * len(plain))
    return PlainText(typed, "".join(text), (*places, len(typed)))
