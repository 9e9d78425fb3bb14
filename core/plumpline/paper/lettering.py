"""Words as they are set: which glyphs show a text, how wide it comes out, and where its lines are broken."""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass

from plumpline.lengths import NM_PER_INCH
from plumpline.paper.typeface import EM, typeface

POINTS_PER_INCH = 72

_FRACTION = re.compile(r"(?<![0-9/.,])(?:([0-9]+) )?([0-9]{1,3})/([0-9]{1,3})(?![0-9/.,]*[0-9/])")
_STROKE = "\N{FRACTION SLASH}"
_THIN_SPACE = "\N{THIN SPACE}"


@dataclass(frozen=True)
class Lettering:
    """How a text is set: the face, its size in points, how dark it is in hundredths (100 is black)."""

    face: str = "regular"
    size: int = 9
    black: int = 100

    @property
    def leading(self) -> int:
        """From one line to the next, in nm: seven fifths of the size."""
        return self.size * 7 * NM_PER_INCH // (5 * POINTS_PER_INCH)


@dataclass(frozen=True)
class Letter:
    """A glyph of a face, and the text it stands for when a reader takes it out again."""

    glyph: int
    text: str


def letters(text: str, face: str) -> list[Letter]:
    """The glyphs that show a text: fractions with a true stroke, a box for what the face does not have.

    Whatever the glyphs are, their texts together are the text itself (composed, as Unicode calls it, and on one line).
    """
    composed = unicodedata.normalize("NFC", text)
    plain = "".join(" " if unicodedata.category(sign) in ("Cc", "Zl", "Zp") else sign for sign in composed)
    found: list[Letter] = []
    end = 0
    for match in _FRACTION.finditer(plain):
        found += [_letter(sign, sign, face) for sign in plain[end : match.start()]]
        found += _fraction(match, face)
        end = match.end()
    return found + [_letter(sign, sign, face) for sign in plain[end:]]


def _letter(shown: str, text: str, face: str) -> Letter:
    return Letter(typeface(face).glyph(shown), text)


def _fraction(match: re.Match[str], face: str) -> list[Letter]:
    """ "17 5/8": whole figures, a thin space, small figures above and below a stroke."""
    whole, top, bottom = match.groups()
    found = [_letter(sign, sign, face) for sign in whole or ""]
    found += [_letter(_THIN_SPACE, " ", face)] if whole else []
    found += [_letter(chr(0xE030 + int(figure)), figure, face) for figure in top]
    found.append(_letter(_STROKE, "/", face))
    return found + [_letter(chr(0xE040 + int(figure)), figure, face) for figure in bottom]


def width_of(text: str, lettering: Lettering) -> int:
    """The width of a text on one line, in nm."""
    face = typeface(lettering.face)
    units = 0
    for letter in letters(text, lettering.face):
        units += face.width(letter.glyph)
    return units * lettering.size * NM_PER_INCH // (EM * POINTS_PER_INCH)


def lines_of(text: str, lettering: Lettering, width: int) -> list[str]:
    """A text broken at its spaces into lines of at most `width` nm, at its own line ends too; a longer word is cut."""
    return [line for paragraph in text.splitlines() or [""] for line in _broken(paragraph, lettering, width)]


def _broken(paragraph: str, lettering: Lettering, width: int) -> list[str]:
    lines = [""]
    for word in paragraph.split(" "):
        longer = f"{lines[-1]} {word}" if lines[-1] else word
        if width_of(longer, lettering) <= width:
            lines[-1] = longer
        else:
            lines += _cut(word, lettering, width)
    return lines if len(lines) == 1 or lines[0] else lines[1:]


def _cut(word: str, lettering: Lettering, width: int) -> list[str]:
    """A word in parts that fit, each of at least one letter."""
    parts = []
    while width_of(word, lettering) > width and len(word) > 1:
        length = 1
        while width_of(word[: length + 1], lettering) <= width:
            length += 1
        parts.append(word[:length])
        word = word[length:]
    return [*parts, word]
