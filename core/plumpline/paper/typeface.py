"""A typeface on paper: the widths of its letters, and a font file of just those glyphs that a document shows."""

from __future__ import annotations

import struct
from collections.abc import Sequence
from functools import cache
from importlib.resources import files

#: Units of the em in which widths are given; the faces are made so, see the README beside them.
EM = 1000

# Of the tables of a TrueType font, those a PDF has to carry (ISO 32000-1, 9.9, table 126), in the order of their tags.
_EMBEDDED = ("glyf", "head", "hhea", "hmtx", "loca", "maxp")


class Typeface:
    """A TrueType font with a Unicode character map of format 4, short offsets, and no composite glyphs.

    The tables are those of the OpenType specification (ISO/IEC 14496-22).
    """

    def __init__(self, data: bytes) -> None:
        self._tables = _tables(data)
        self._glyphs = _character_map(self._tables["cmap"])
        count = struct.unpack_from(">H", self._tables["maxp"], 4)[0]
        self._offsets = [2 * half for half in struct.unpack_from(f">{count + 1}H", self._tables["loca"])]
        self._widths: list[int] = [width for width, _ in struct.iter_unpack(">Hh", self._tables["hmtx"])]
        self.box: tuple[int, int, int, int] = struct.unpack_from(">4h", self._tables["head"], 36)
        self.ascent, self.descent = struct.unpack_from(">2h", self._tables["hhea"], 4)
        self.cap_height: int = struct.unpack_from(">h", self._tables["OS/2"], 88)[0]

    def glyph(self, sign: str) -> int:
        """The glyph of a character; 0, an empty box, where the face does not have it."""
        return self._glyphs.get(ord(sign), 0)

    def width(self, glyph: int) -> int:
        """How far a glyph takes the pen, in units of the em."""
        return self._widths[glyph]

    def part(self, glyphs: Sequence[int]) -> bytes:
        """A font file of these glyphs alone, numbered anew in this order."""
        shapes = [self._tables["glyf"][self._offsets[glyph] : self._offsets[glyph + 1]] for glyph in glyphs]
        offsets = [0]
        for shape in shapes:
            offsets.append(offsets[-1] + len(shape) // 2)
        count = struct.pack(">H", len(glyphs))
        head, hhea, maxp = (self._tables[tag] for tag in ("head", "hhea", "maxp"))
        return _font_file(
            {
                "glyf": b"".join(shapes),
                "head": head[:8] + bytes(4) + head[12:],  # the file's checksum is not kept: it is of another file
                "hhea": hhea[:34] + count,
                "hmtx": b"".join(self._tables["hmtx"][4 * glyph : 4 * glyph + 4] for glyph in glyphs),
                "loca": struct.pack(f">{len(offsets)}H", *offsets),
                "maxp": maxp[:4] + count + maxp[6:],
            }
        )


def _tables(data: bytes) -> dict[str, bytes]:
    found = {}
    for number in range(struct.unpack_from(">H", data, 4)[0]):
        tag, _, start, length = struct.unpack_from(">4sIII", data, 12 + 16 * number)
        found[tag.decode()] = data[start : start + length]
    return found


def _character_map(cmap: bytes) -> dict[int, int]:
    """Code points and their glyphs, from the first subtable, which is of format 4: segments of the basic plane."""
    start = struct.unpack_from(">I", cmap, 8)[0]
    count = struct.unpack_from(">H", cmap, start + 6)[0] // 2
    place = start + 14
    ends = struct.unpack_from(f">{count}H", cmap, place)
    firsts = struct.unpack_from(f">{count}H", cmap, place + 2 * count + 2)
    deltas = struct.unpack_from(f">{count}H", cmap, place + 4 * count + 2)
    ranges = struct.unpack_from(f">{count}H", cmap, place + 6 * count + 2)
    found = {}
    for number, (first, end, delta, skip) in enumerate(zip(firsts, ends, deltas, ranges, strict=True)):
        base = place + 6 * count + 2 + 2 * number + skip
        for code in range(first, min(end, 0xFFFE) + 1):
            glyph = struct.unpack_from(">H", cmap, base + 2 * (code - first))[0] if skip else code
            found[code] = (glyph + delta) % 0x10000
    return found


def _font_file(tables: dict[str, bytes]) -> bytes:
    start = 12 + 16 * len(tables)
    power = len(tables).bit_length() - 1
    directory = struct.pack(">IHHHH", 0x00010000, len(tables), 16 << power, power, 16 * len(tables) - (16 << power))
    body = b""
    for tag in _EMBEDDED:
        table = tables[tag] + bytes(-len(tables[tag]) % 4)
        total = sum(struct.unpack(f">{len(table) // 4}I", table)) % 0x100000000
        directory += struct.pack(">4sIII", tag.encode(), total, start + len(body), len(tables[tag]))
        body += table
    return directory + body


@cache
def typeface(name: str) -> Typeface:
    """One of the faces the core brings with it: "regular" or "semibold"."""
    return Typeface((files(__package__) / "faces" / f"inter-{name}.ttf").read_bytes())
