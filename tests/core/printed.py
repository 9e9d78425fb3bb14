"""Readers of a printed paper that share nothing with the core: its words, its boxes, and its ink by the pixel."""

from __future__ import annotations

import io
from dataclasses import dataclass

NM_PER_INCH = 25_400_000
DPI = 300


def texts(paper):
    """The text of each page, as pypdf takes it out."""
    import pypdf

    return [page.extract_text() for page in pypdf.PdfReader(io.BytesIO(paper), strict=True).pages]


def texts_again(paper):
    """The text of each page, as PDFium takes it out."""
    import pypdfium2

    return [page.get_textpage().get_text_range().replace("\r\n", "\n") for page in pypdfium2.PdfDocument(paper)]


def boxes(paper):
    """The media box and the trim box of each page, in points."""
    import pypdf

    pages = pypdf.PdfReader(io.BytesIO(paper), strict=True).pages
    return [(tuple(map(float, page.mediabox)), tuple(map(float, page["/TrimBox"]))) for page in pages]


def printer_scaling(paper):
    """What the document asks of a print dialog."""
    import pypdf

    return pypdf.PdfReader(io.BytesIO(paper)).trailer["/Root"]["/ViewerPreferences"]["/PrintScaling"]


@dataclass(frozen=True)
class Inked:
    """One page rasterised by PDFium: rows of grey values from the bottom, 0 is black; the size of a pixel in nm."""

    rows: list[bytes]
    pixel_width: float
    pixel_height: float

    def pixel(self, x, y):
        """The pixel that a place lies in, given in nm from the lower left corner."""
        return int(x / self.pixel_width), int(y / self.pixel_height)

    def across(self, place, length):
        """How much of each pixel is black, from 0 to 1, from a place so many nm to the right."""
        first, row = self.pixel(*place)
        last, _ = self.pixel(place[0] + length, place[1])
        return [1 - value / 255 for value in self.rows[row][first : last + 1]]

    def up(self, place, length):
        """How much of each pixel is black, from a place so many nm upwards."""
        column, first = self.pixel(*place)
        _, last = self.pixel(place[0], place[1] + length)
        return [1 - row[column] / 255 for row in self.rows[first : last + 1]]

    def black_across(self, place, length):
        """How much of a way to the right is black, in nm."""
        return sum(self.across(place, length)) * self.pixel_width

    def black_up(self, place, length):
        """How much of a way upwards is black, in nm."""
        return sum(self.up(place, length)) * self.pixel_height

    def upright_lines(self, left, right, low, high):
        """Where upright lines stand between two sides, in nm: the middles of the columns that are dark all the way."""
        (first, start), (last, end) = self.pixel(left, low), self.pixel(right, high)
        columns = zip(*(row[first : last + 1] for row in self.rows[start : end + 1 : 3]), strict=True)
        return [(first + place) * self.pixel_width for place in _middles(columns)]

    def level_lines(self, low, high, left, right):
        """Where level lines lie between two heights, in nm."""
        (first, start), (last, end) = self.pixel(left, low), self.pixel(right, high)
        rows = (row[first : last + 1 : 3] for row in self.rows[start : end + 1])
        return [(start + place) * self.pixel_height for place in _middles(rows)]

    @property
    def ink(self):
        """The area that is black, in square nm."""
        white = 0
        for row in self.rows:
            white += sum(row)
        pixels = len(self.rows) * len(self.rows[0])
        return (pixels - white / 255) * self.pixel_width * self.pixel_height


_DARK = 0.05


def _middles(strips):
    """The middles of the runs of dark strips of pixels, weighed by their darkness, in strips from the first."""
    found, run = [], []
    for number, strip in enumerate([*strips, [255]]):
        darkness = 1 - sum(strip) / len(strip) / 255
        if darkness > _DARK:
            run.append((number + 0.5, darkness))
        elif run:
            found.append(sum(place * dark for place, dark in run) / sum(dark for _, dark in run))
            run = []
    return found


def inked(paper, page, dpi=DPI):
    """A page at so many pixels an inch (as nearly as its size is a whole number of them)."""
    import pypdfium2

    opened = pypdfium2.PdfDocument(paper)[page]
    bitmap = opened.render(scale=dpi / 72, grayscale=True)
    values = bytes(bitmap.buffer)
    rows = [values[y * bitmap.stride : y * bitmap.stride + bitmap.width] for y in reversed(range(bitmap.height))]
    width, height = (points * NM_PER_INCH / 72 for points in opened.get_size())
    return Inked(rows, width / bitmap.width, height / bitmap.height)
