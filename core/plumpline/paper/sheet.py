"""A sheet of paper that is drawn on: lines, outlines, circles and words, in whole nm from its lower left corner."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from math import isqrt

from plumpline.paper.lettering import Lettering, letters, width_of
from plumpline.paper.pdf import Document, points
from plumpline.pieces import Point

MM = 1_000_000


@dataclass(frozen=True)
class Pen:
    """How a line is drawn: its width in nm, how dark it is in hundredths (100 is black), and its dashes in nm."""

    width: int
    black: int = 100
    dashes: tuple[int, ...] = ()


class Sheet:
    """One page of a document, `width` by `height` nm."""

    def __init__(self, document: Document, width: int, height: int) -> None:
        self.width = width
        self.height = height
        self._document = document
        self._content = document.add_page(width, height)
        self._origin = (0, 0)

    def line(self, start: Point, end: Point, pen: Pen) -> None:
        """A straight line, ending squarely at its two points."""
        self.path((start, end), pen)

    def path(self, corners: Sequence[Point], pen: Pen) -> None:
        """Straight lines from point to point."""
        self._take(pen)
        self._follow(corners)
        self._content.stroke()

    def outline(self, corners: Sequence[Point], pen: Pen) -> None:
        """Straight lines from corner to corner and back to the first."""
        self._take(pen)
        self._follow(corners)
        self._content.stroke_and_close()

    def circle(self, centre: Point, radius: int, pen: Pen) -> None:
        """A circle about a centre, true to less than a hundred-thousandth of its radius."""
        self._take(pen)
        first, *rest = _round(centre, radius)
        self._content.move_to(*self._at(first))
        for start in range(0, len(rest), 3):
            self._content.curve_to(*(number for point in rest[start : start + 3] for number in self._at(point)))
        self._content.stroke_and_close()

    def fill(self, corners: Sequence[Point], black: int) -> None:
        """An area within corners, so many hundredths dark."""
        self._raw(b"%b g" % _shade(black))
        self._follow(corners)
        self._content.fill()

    def words(self, text: str, place: Point, lettering: Lettering, align: str = "left") -> None:
        """A text on one line whose left end, middle ("centre") or right end stands on a place of its baseline."""
        width = width_of(text, lettering)
        back = {"left": 0, "centre": width // 2, "right": width}[align]
        codes = self._document.codes(letters(text, lettering.face), lettering.face)
        self._raw(b"%b g" % _shade(lettering.black))
        self._content.begin_text()
        self._content.set_font_size(lettering.face, lettering.size)
        self._content.move_text_to(*self._at((place[0] - back, place[1])))
        self._raw(b"%b Tj" % codes)
        self._content.end_text()

    @contextmanager
    def window(self, corner: Point, width: int, height: int, origin: Point) -> Iterator[None]:
        """Draw within a window only, and count from `origin`, which is then a point like any other."""
        self._content.push_state()
        self._content.rectangle(*self._at(corner), points(width), points(height))
        self._content.clip()
        self._content.end()
        before, self._origin = self._origin, (self._origin[0] + origin[0], self._origin[1] + origin[1])
        yield
        self._origin = before
        self._content.pop_state()

    def _at(self, point: Point) -> tuple[bytes, bytes]:
        return points(point[0] + self._origin[0]), points(point[1] + self._origin[1])

    def _raw(self, operator: bytes) -> None:
        self._content.stream.append(operator)

    def _take(self, pen: Pen) -> None:
        self._content.set_line_width(points(pen.width))
        self._content.set_dash([points(dash) for dash in pen.dashes], 0)
        self._raw(b"%b G" % _shade(pen.black))

    def _follow(self, corners: Sequence[Point]) -> None:
        self._content.move_to(*self._at(corners[0]))
        for corner in corners[1:]:
            self._content.line_to(*self._at(corner))


def _shade(black: int) -> bytes:
    white = 100 - black
    return f"{white // 100}.{white % 100:02}".encode()


# Of a Bézier curve that stands for an eighth of a circle, how far along the tangent its inner points lie:
# 4/3 · tan(π/16) of the radius, in thousand-millionths.
_HANDLE = 265_216_490
_UNIT = 10**9


def _round(centre: Point, radius: int) -> list[Point]:
    """The points of eight Bézier curves round a circle, anticlockwise from its right: one to start, three for each."""
    handle = radius * _HANDLE // _UNIT
    slant = isqrt(radius * radius // 2)
    bend = isqrt(handle * handle // 2)
    eighth = [
        (radius, 0),
        (radius, handle),
        (slant + bend, slant - bend),
        (slant, slant),
        (slant - bend, slant + bend),
        (handle, radius),
    ]
    quarters = [eighth]
    for _ in range(3):
        quarters.append([(-y, x) for x, y in quarters[-1]])
    around = [point for quarter in quarters for point in quarter]
    return [(centre[0] + x, centre[1] + y) for x, y in [*around, around[0]]]
