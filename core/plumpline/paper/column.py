# Text set from the top of a sheet down, line by line, going on at the top of a new sheet where one is full.
"""A column of text; lengths in nm."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from plumpline.dialect import Wording
from plumpline.geometry import Point
from plumpline.paper.lettering import Lettering, lines_of
from plumpline.paper.sheet import MM, Pen, Sheet

BODY = Lettering("regular", 10)
STRONG = Lettering("semibold", 10)
TITLE = Lettering("semibold", 18)
SECTION = Lettering("semibold", 12)
SMALL = Lettering("regular", 8)

_RULE = Pen(MM // 5, 40)


@dataclass(frozen=True)
class Cell:
    """A share of a row: its text, its lettering, and its width in hundredths of the column."""

    text: str
    share: int
    lettering: Lettering = BODY


class Column:
    """Text between `top` and `bottom`, `width` wide from `left`; `turn` gives the next sheet when one is full.

    Every text is put into the words of `said` first.
    """

    def __init__(self, turn: Callable[[], Sheet], corner: Point, width: int, top: int, said: Wording = str) -> None:
        self._turn = turn
        self._said = said
        self._left, self._bottom = corner
        self._width = width
        self._top = top
        self.sheet = turn()
        self.y = top

    def space(self, height: int) -> None:
        """Leave some room."""
        self.y -= height

    def write(self, text: str, lettering: Lettering = BODY) -> None:
        """A text over the whole width, broken into lines."""
        self.row([Cell(text, 100, lettering)])

    def row(self, cells: Sequence[Cell]) -> int:
        """Texts side by side, each broken within its own share of the width; a row is not torn apart. Its height."""
        gap = 2 * MM
        room = [self._width * cell.share // 100 - gap for cell in cells]
        texts = [self._said(cell.text) for cell in cells]
        broken = [lines_of(*each) for each in zip(texts, (cell.lettering for cell in cells), room, strict=True)]
        height = max(len(lines) * cell.lettering.leading for cell, lines in zip(cells, broken, strict=True))
        self.need(height)
        left = self._left
        for cell, lines in zip(cells, broken, strict=True):
            for number, line in enumerate(lines, start=1):
                self.sheet.words(line, (left, self.y - number * cell.lettering.leading), cell.lettering)
            left += self._width * cell.share // 100
        self.y -= height
        return height

    def rule(self) -> None:
        """A thin line over the whole width."""
        self.space(2 * MM)
        self.sheet.line((self._left, self.y), (self._left + self._width, self.y), _RULE)
        self.space(MM)

    def need(self, height: int) -> None:
        """Go on with a new sheet unless so much height is left on this one."""
        if self.y - height < self._bottom and self.y < self._top:
            self.sheet = self._turn()
            self.y = self._top
