# The workroom's sheet on paper: for each cover its facts, pieces, marks, steps with a box to tick, and cautions.

from __future__ import annotations

from collections.abc import Sequence

from plumpline.dialect import Wording
from plumpline.figures import counted, told
from plumpline.job import name_of
from plumpline.paper.column import BODY, SECTION, STRONG, TITLE, Cell, Column
from plumpline.paper.lettering import Lettering
from plumpline.paper.pdf import PAPERS, Document
from plumpline.paper.sheet import MM, Pen
from plumpline.paper.sheet import Sheet as Page
from plumpline.workroom import Sheet

_MARGIN = 15 * MM
_FOOT = 9 * MM
_SMALL = Lettering("regular", 8, 60)
_BOX = Pen(MM // 4)
_BOX_SIDE = 35 * MM // 10
_KEPT = 25 * MM  # a heading has at least so much of what it heads beneath it


def write_sheets(title: str, sheets: Sequence[Sheet], paper: str, said: Wording = str) -> bytes:
    """The PDF of the sheets, each beginning on a page of its own, in the words of `said`."""
    document = Document(title)
    for sheet in sheets:
        _OnPaper(document, title, sheet, paper, said).write()
    return document.to_bytes()


class _OnPaper:
    """One sheet on as many pages as it takes."""

    def __init__(self, document: Document, title: str, sheet: Sheet, paper: str, said: Wording) -> None:
        self._document = document
        self._title = title
        self._sheet = sheet
        self._paper = PAPERS[paper]
        self._pages = 0
        width, height = self._paper
        corner = _MARGIN, _FOOT + _MARGIN // 2
        self._column = Column(self._turn, corner, width - 2 * _MARGIN, height - _MARGIN, said)

    def _turn(self) -> Page:
        """A new page with the label and its number at the foot."""
        self._pages += 1
        page = Page(self._document, *self._paper)
        page.words(self._sheet.label, (_MARGIN, _FOOT), _SMALL)
        page.words(f"page {self._pages}", (self._paper[0] - _MARGIN, _FOOT), _SMALL, "right")
        return page

    def write(self) -> None:
        """All of it, in the order that the bench needs it."""
        self._head()
        self._facts()
        self._pieces()
        self._marks()
        self._steps()
        self._cautions()

    def _head(self) -> None:
        cover, units = self._sheet.bench.cover, self._sheet.bench.job.units
        covers = counted(cover.cushion.quantity, "cover", "covers")
        self._column.write(f"{self._sheet.code} · {name_of(cover.cushion)}", TITLE)
        self._column.space(MM)
        self._column.write(self._title)
        self._column.write(f"{covers}, finished {told(cover.finished, units)}. Sew in: {self._sheet.label}")
        for twin in self._sheet.twins:
            self._column.write(f"Easily taken for another: {twin}", STRONG)

    def _heading(self, text: str) -> None:
        self._column.rule()
        self._column.need(_KEPT)
        self._column.write(text, SECTION)
        self._column.space(MM)

    def _facts(self) -> None:
        self._heading("The sheet")
        for name, text in self._sheet.facts:
            self._column.row([Cell(name, 20), Cell(text, 80, STRONG)])

    def _pieces(self) -> None:
        self._heading("Pieces to cut")
        for piece in self._sheet.pieces:
            count, size = f"{piece.count} × {piece.label}", piece.size
            self._column.row([Cell(count, 35), Cell(size, 35, STRONG), Cell(piece.cloth, 30)])

    def _marks(self) -> None:
        self._heading("Marks")
        for mark in self._sheet.marks:
            self._column.row([Cell(mark.text, 60), Cell(mark.on, 40)])

    def _steps(self) -> None:
        self._heading("Steps")
        for number, step in enumerate(self._sheet.steps, start=1):
            title, figure = Cell(step.title, 22, STRONG), Cell(step.figure, 22, STRONG)
            height = self._column.row([Cell("", 4), Cell(str(number), 4), title, figure, Cell(step.text, 48)])
            self._box(self._column.y + height - BODY.leading)
            self._column.space(MM)

    def _box(self, low: int) -> None:
        """A square to tick, standing on the line of text whose foot is there."""
        right, high = _MARGIN + _BOX_SIDE, low + _BOX_SIDE
        self._column.sheet.outline([(_MARGIN, low), (right, low), (right, high), (_MARGIN, high)], _BOX)

    def _cautions(self) -> None:
        self._heading("Take care")
        for caution in self._sheet.cautions:
            self._column.row([Cell(caution.when, 30, STRONG), Cell(caution.text, 70)])
            self._column.space(MM)
