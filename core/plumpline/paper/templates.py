# Full-size templates: every piece on as many sheets as it takes, never smaller, with what is needed to trust them.
"""A template is drawn in the piece's own coordinates, nm from its lower left corner, the top upwards."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from plumpline.geometry import Point, distance
from plumpline.lengths import NM_PER_INCH
from plumpline.paper.column import BODY, SMALL, STRONG, TITLE, Cell, Column
from plumpline.paper.lettering import Lettering, lines_of, width_of
from plumpline.paper.pdf import PAPERS, Document
from plumpline.paper.sheet import MM, Pen, Sheet
from plumpline.paper.tiles import Tile, Window, tiles
from plumpline.pieces import Mark, Outline

_MARGIN = 10 * MM  # no printer needs more
_GUTTER = 13 * MM  # at the left and below, for the check lines
_OVERLAP = 10 * MM
_ROOM = 4 * MM  # around a piece, so that its own line is never on the edge of a sheet

_CUT = Pen(MM // 2)
_SEAM = Pen(MM // 4, 100, (4 * MM, 2 * MM))
_GUIDE = Pen(MM // 5, 60, (MM, MM))
_FRAME = Pen(MM // 8, 45)
_JOIN = Pen(MM // 8, 60, (2 * MM, 2 * MM))
_MARK = Pen(MM // 3)
_CHECK = Pen(MM)

_CHECK_LINES = (("2 in", 2 * NM_PER_INCH), ("5 cm", 50 * MM))
_STROKE = 7 * MM
_LEAST_MAP = 80 * MM
_FOOT = _MARGIN + 9 * MM  # the baseline of what is said at the foot of a sheet
_BAR = _MARGIN + 2 * MM  # the middle of the check lines
_NAME = Lettering("semibold", 8)
_TILE_NAME = Lettering("semibold", 24, 45)

_HOW = (
    "Print at 100 % (“actual size”), never “fit to page”.",
    "Lay a rule on the check lines of every sheet, across and up: 2 in and 5 cm. If one of them is wrong, do not cut.",
    "Trim each sheet along the left and the lower side of its frame, where another sheet joins. Lay it over that sheet "
    "with its edge on the dashed line, so that the circles are whole, and tape it down.",
    "Cut the paper along the thick line. The dashed line within is the seam; short strokes are marks to chalk.",
)


@dataclass(frozen=True)
class Template:
    """A shape to be printed full size: what it is, what to know about it, its line to cut along and its seam line.

    `guides` are thin lines beside these, `arrow` runs from its tail to its head, towards the top; all in nm.
    """

    title: str
    facts: tuple[str, ...]
    outline: Outline
    seam_line: Outline
    guides: tuple[Outline, ...]
    marks: tuple[Mark, ...]
    arrow: Outline


def write_templates(title: str, shapes: Sequence[Template], paper: str) -> bytes:
    """The PDF of templates: for each an overview with how to join its sheets, and then the sheets."""
    document = Document(title)
    for shape in shapes:
        _Pages(document, title, shape, paper).draw()
    return document.to_bytes()


def sheet_count(shape: Template, paper: str) -> int:
    """How many sheets a template takes, with the overview that there is of several."""
    count = len(tiles(shape.outline, _window(paper), _ROOM))
    return count + (count > 1)


def _window(paper: str) -> Window:
    width, height = PAPERS[paper]
    return Window(width - 2 * _MARGIN - _GUTTER, height - 2 * _MARGIN - _GUTTER, _OVERLAP)


class _Pages:
    """The sheets of one template."""

    def __init__(self, document: Document, title: str, shape: Template, paper: str) -> None:
        self._document = document
        self._title = title
        self._shape = shape
        self._paper = PAPERS[paper]
        self._window = _window(paper)
        self._tiles = tiles(shape.outline, self._window, _ROOM)
        self._at = {(tile.row, tile.column): tile for tile in self._tiles}

    def draw(self) -> None:
        if len(self._tiles) == 1:
            sheet = self._tile(self._tiles[0], 1)
            corner = _MARGIN + _GUTTER + 4 * MM, _MARGIN
            self._facts(Column(lambda: sheet, corner, self._window.width - 8 * MM, self._paper[1] - _MARGIN - 2 * MM))
            return
        self._overview()
        for number, tile in enumerate(self._tiles, start=1):
            self._tile(tile, number)

    def _facts(self, column: Column) -> None:
        column.write(self._shape.title, TITLE)
        column.space(2 * MM)
        for text in (self._title, *self._shape.facts):
            column.write(text)

    def _new_sheet(self, says: str) -> Sheet:
        """A sheet with its check lines, and with what it is at its foot."""
        sheet = Sheet(self._document, *self._paper)
        _check_lines(sheet)
        left, right = _MARGIN + _GUTTER, sheet.width - _MARGIN
        end = f"{says} · print at 100 %"
        room = right - left - width_of(end, SMALL) - 4 * MM
        sheet.words(_shortened(self._shape.title, _NAME, room), (left, _FOOT), _NAME)
        sheet.words(end, (right, _FOOT), SMALL, "right")
        return sheet

    def _overview(self) -> None:
        column = Column(
            lambda: self._new_sheet("overview, not to size"),
            (_MARGIN + _GUTTER, _MARGIN + _GUTTER),
            self._window.width,
            self._paper[1] - _MARGIN,
        )
        self._facts(column)
        column.rule()
        for number, text in enumerate(_HOW, start=1):
            column.row([Cell(str(number), 4, STRONG), Cell(text, 96)])
        column.space(4 * MM)
        column.need(_LEAST_MAP)
        self._map(column)

    def _map(self, column: Column) -> None:
        """How the sheets lie together, as large as there is room for."""
        (left, low), (right, high) = self._bounds()
        room = column.y - _MARGIN - _GUTTER
        scale = min(Fraction(self._window.width, right - left), Fraction(room, high - low))

        def small(point: Point) -> Point:
            across, up = (point[0] - left) * scale, (point[1] - high) * scale
            return _MARGIN + _GUTTER + int(across), column.y + int(up)

        for tile in self._tiles:
            corners = [small(corner) for corner in _corners(tile.corner, self._window)]
            column.sheet.outline(corners, _FRAME)
            (x, y), (x2, y2) = corners[0], corners[2]
            column.sheet.words(tile.name, ((x + x2) // 2, (y + y2) // 2 - 2 * MM), TITLE, "centre")
        column.sheet.outline([small(point) for point in self._shape.outline], _CUT)
        if self._shape.arrow:
            column.sheet.path([small(point) for point in self._shape.arrow], _MARK)
            column.sheet.words("top", small(self._shape.arrow[-1]), SMALL)

    def _bounds(self) -> tuple[Point, Point]:
        corners = [corner for tile in self._tiles for corner in _corners(tile.corner, self._window)]
        across, up = zip(*corners, strict=True)
        return (min(across), min(up)), (max(across), max(up))

    def _tile(self, tile: Tile, number: int) -> Sheet:
        place = f"row {tile.row_name}, column {tile.column + 1}"
        sheet = self._new_sheet(f"{place} · sheet {number} of {len(self._tiles)}")
        corner = _MARGIN + _GUTTER, _MARGIN + _GUTTER
        origin = corner[0] - tile.corner[0], corner[1] - tile.corner[1]
        sheet.outline(_corners(corner, self._window), _FRAME)
        with sheet.window(corner, self._window.width, self._window.height, origin):
            self._joins(sheet, tile)
            _draw(sheet, self._shape)
            if len(self._tiles) > 1:
                x, y = tile.corner
                sheet.words(tile.name, (x + 8 * MM, y + self._window.height - 20 * MM), _TILE_NAME)
        return sheet

    def _joins(self, sheet: Sheet, tile: Tile) -> None:
        """Where the neighbours' edges come to lie: a dashed line on the sheet below, circles on both."""
        (x, y), (across, up) = tile.corner, self._window.step
        for row, column, start, end in (
            (tile.row, tile.column - 1, (x, y), (x, y + self._window.height)),
            (tile.row, tile.column + 1, (x + across, y), (x + across, y + self._window.height)),
            (tile.row + 1, tile.column, (x, y), (x + self._window.width, y)),
            (tile.row - 1, tile.column, (x, y + up), (x + self._window.width, y + up)),
        ):
            if (row, column) in self._at:
                sheet.line(start, end, _JOIN)
                for share in (1, 3):
                    dx, dy = (end[0] - start[0]) * share // 4, (end[1] - start[1]) * share // 4
                    _target(sheet, (start[0] + dx, start[1] + dy))


def _corners(corner: Point, window: Window) -> Outline:
    x, y = corner
    right, top = x + window.width, y + window.height
    return (x, y), (right, y), (right, top), (x, top)


def _shortened(text: str, lettering: Lettering, width: int) -> str:
    first, *more = lines_of(text, lettering, width - width_of("…", lettering))
    return f"{first}…" if more else first


def _target(sheet: Sheet, centre: Point) -> None:
    x, y = centre
    sheet.circle(centre, 2 * MM, _FRAME)
    sheet.line((x - 4 * MM, y), (x + 4 * MM, y), _FRAME)
    sheet.line((x, y - 4 * MM), (x, y + 4 * MM), _FRAME)


def _check_lines(sheet: Sheet) -> None:
    """Bars of 2 in and 5 cm along the lower and the left side, their ends cut square (fault B32)."""
    along = _MARGIN + _GUTTER
    for text, length in _CHECK_LINES:
        end = along + length
        sheet.line((along, _BAR), (end, _BAR), _CHECK)
        sheet.words(text, ((along + end) // 2, _BAR + MM), SMALL, "centre")
        sheet.line((_BAR, along), (_BAR, end), _CHECK)
        sheet.words(text, (_BAR + MM, (along + end) // 2), SMALL)
        along = end + 6 * MM


def _draw(sheet: Sheet, shape: Template) -> None:
    for guide in shape.guides:
        sheet.path(guide, _GUIDE)
    if shape.seam_line:
        sheet.outline(shape.seam_line, _SEAM)
    sheet.outline(shape.outline, _CUT)
    if shape.arrow:
        _arrow(sheet, *shape.arrow)
    for mark in shape.marks:
        _mark(sheet, mark, shape.outline)


def _arrow(sheet: Sheet, tail: Point, head: Point) -> None:
    """The way the top and the grain point."""
    x, y = head
    sheet.line(tail, (x, y - 4 * MM), _MARK)
    sheet.fill([(x, y), (x - 3 * MM, y - 8 * MM), (x + 3 * MM, y - 8 * MM)], 100)
    sheet.words("top and grain", (x + 5 * MM, (tail[1] + y) // 2), BODY)


def _mark(sheet: Sheet, mark: Mark, outline: Outline) -> None:
    """A stroke inwards from the edge at each point of a mark; its words too, where all of it is on one side.

    A clip is the cut itself, from the corner in to the stitching line.
    """
    if mark.kind == "clip":
        sheet.line(mark.points[0], mark.points[1], _MARK)
        return
    strokes = [_inwards(outline, point) for point in mark.points]
    for (x, y), (dx, dy) in zip(mark.points, strokes, strict=True):
        sheet.line((x, y), (x + dx, y + dy), _MARK)
    if all(stroke == strokes[0] for stroke in strokes):
        (ax, ay), (bx, by), (dx, dy) = mark.points[0], mark.points[-1], strokes[0]
        sheet.words(mark.text, ((ax + bx) // 2 + dx * 5 // 2, (ay + by) // 2 + dy * 5 // 2), SMALL, "centre")


def _inwards(outline: Outline, point: Point) -> Point:
    """From a point on the outline a stroke's length into the piece, square to the side that it is on."""
    sides = pairwise([*outline, *outline[:1]])
    (ax, ay), (bx, by) = min(sides, key=lambda side: _detour(side, point))
    length = distance((ax, ay), (bx, by))
    return (ay - by) * _STROKE // length, (bx - ax) * _STROKE // length


def _detour(side: tuple[Point, Point], point: Point) -> int:
    """How much longer the way along a side becomes by way of a point, in nm: nothing for a point on it."""
    return distance(side[0], point) + distance(point, side[1]) - distance(*side)
