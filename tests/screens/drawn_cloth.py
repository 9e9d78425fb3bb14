"""A printed cloth and photos of it, drawn without any picture library: pixels in Python, PNG by zlib (RFC 2083)."""

import struct
import zlib
from collections.abc import Callable

Colour = tuple[int, int, int]
Point = tuple[float, float]
Map = tuple[tuple[float, float, float], ...]

GROUND: Colour = (240, 232, 214)
# The marks of one repeat: a colour, and where it lies as shares of the repeat, across and along.
MARKS: dict[str, tuple[Colour, Point]] = {
    "red": ((200, 30, 40), (0.25, 0.30)),
    "blue": ((30, 60, 190), (0.75, 0.25)),
    "green": ((20, 140, 60), (0.45, 0.75)),
}
# How large a mark is, as a share of the repeat.
RADIUS = 0.06


def printed(across: float, along: float) -> Colour:
    """The colour of the cloth at a place counted in repeats."""
    for colour, (x, y) in MARKS.values():
        dx, dy = (across - x + 0.5) % 1 - 0.5, (along - y + 0.5) % 1 - 0.5
        if dx * dx + dy * dy < RADIUS * RADIUS:
            return colour
    return GROUND


def through(projective: Map, x: float, y: float) -> Point:
    """Where a projective map takes a point: the definition, in homogeneous coordinates."""
    u, v, w = (row[0] * x + row[1] * y + row[2] for row in projective)
    return u / w, v / w


def inverse(projective: Map) -> Map:
    """The map backwards, by the adjugate of its matrix; the factor does not matter."""
    (a, b, c), (d, e, f), (g, h, i) = projective
    return (
        (e * i - f * h, c * h - b * i, b * f - c * e),
        (f * g - d * i, a * i - c * g, c * d - a * f),
        (d * h - e * g, b * g - a * h, a * e - b * d),
    )


def photo(width: int, height: int, projective: Map) -> bytes:
    """A photo of the cloth as PNG: `projective` takes a place in repeats to a pixel."""
    back = inverse(projective)

    def seen(x: int, y: int) -> Colour:
        return printed(*through(back, x + 0.5, y + 0.5))

    return png(width, height, seen)


def png(width: int, height: int, colour: Callable[[int, int], Colour]) -> bytes:
    """A PNG whose pixels are asked for one by one."""
    rows = b"".join(b"\0" + bytes(part for x in range(width) for part in colour(x, y)) for y in range(height))
    return _png_of(width, height, rows)


def large_png(width: int, height: int) -> bytes:
    """A PNG of any size made of equal rows, so that it is drawn in no time."""
    row = b"\0" + b"".join(bytes(printed(x / width * 8, 0.3)) for x in range(width))
    return _png_of(width, height, row * height)


def _png_of(width: int, height: int, rows: bytes) -> bytes:
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    parts = ((b"IHDR", head), (b"IDAT", zlib.compress(rows, 1)), (b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(_part(kind, content) for kind, content in parts)


def _part(kind: bytes, content: bytes) -> bytes:
    return struct.pack(">I", len(content)) + kind + content + struct.pack(">I", zlib.crc32(kind + content))
