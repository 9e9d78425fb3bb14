"""A PDF document that is the same byte for byte for the same content: pages, embedded faces, nothing compressed.

The words of the format are those of ISO 32000-1. Nothing is compressed because no two releases of the compressor need
give the same bytes; there is no date in it; its identifier is a hash of its content.
"""

from __future__ import annotations

import hashlib
import io
from fractions import Fraction

import pydyf

from plumpline.lengths import NM_PER_INCH, round_half_even
from plumpline.paper.lettering import POINTS_PER_INCH, Letter
from plumpline.paper.typeface import EM, typeface

#: The sheets a maker's printer takes, width and height in nm: A4 of ISO 216, and US Letter of ANSI/ASME Y14.1.
PAPERS = {
    "a4": (210_000_000, 297_000_000),
    "letter": (NM_PER_INCH * 17 // 2, NM_PER_INCH * 11),
}

_DECIMALS = 4  # of a point: 35 nm


def points(nm: int) -> bytes:
    """A length in points as a PDF writes it, to four decimals, half to even."""
    steps = round_half_even(Fraction(nm * POINTS_PER_INCH * 10**_DECIMALS, NM_PER_INCH))
    whole, decimals = divmod(abs(steps), 10**_DECIMALS)
    sign = "-" if steps < 0 else ""
    return f"{sign}{whole}.{decimals:0{_DECIMALS}}".rstrip("0").rstrip(".").encode()


class Document:
    """A document in the making: pages are added and written on, then `to_bytes` gives the file."""

    def __init__(self, title: str) -> None:
        self._pdf = pydyf.PDF()
        self._pdf.info["Title"] = pydyf.String(" ".join(title.split()))
        self._pdf.info["Producer"] = pydyf.String("Plumpline")
        # Scaled by the printer nothing would be full size any more (fault B32).
        self._pdf.catalog["ViewerPreferences"] = b"<</PrintScaling /None /DisplayDocTitle true>>"
        self._fonts = pydyf.Dictionary()
        self._pdf.add_object(self._fonts)
        self._faces: dict[str, _EmbeddedFace] = {}

    def add_page(self, width: int, height: int) -> pydyf.Stream:
        """The empty content of a new page of `width` by `height` nm; it is not trimmed, so its boxes are one."""
        content = pydyf.Stream()
        self._pdf.add_object(content)
        box = b"[0 0 %b %b]" % (points(width), points(height))
        page = {
            "Type": "/Page",
            "Parent": self._pdf.pages.reference,
            "MediaBox": box,
            "TrimBox": box,
            "Resources": b"<</Font %b>>" % self._fonts.reference,
            "Contents": content.reference,
        }
        self._pdf.add_page(pydyf.Dictionary(page))
        return content

    def codes(self, letters: list[Letter], face: str) -> bytes:
        """The codes of letters in a face that the document will carry, as a PDF string."""
        embedded = self._faces.setdefault(face, _EmbeddedFace(face))
        return b"<%b>" % "".join(f"{embedded.code(letter):04X}" for letter in letters).encode()

    def to_bytes(self) -> bytes:
        """The file; nothing can be added afterwards."""
        for name, face in self._faces.items():
            self._fonts[name] = face.add_to(self._pdf).reference
        file = io.BytesIO()
        self._pdf.write(file, identifier=True)
        return file.getvalue()


class _EmbeddedFace:
    """A face as a document carries it: the glyphs it shows, numbered as they come, each with its text."""

    def __init__(self, name: str) -> None:
        self._name = name
        self._codes: dict[Letter, int] = {Letter(0, ""): 0}

    def code(self, letter: Letter) -> int:
        return self._codes.setdefault(letter, len(self._codes))

    def add_to(self, pdf: pydyf.PDF) -> pydyf.Dictionary:
        """Add the objects of a composite font whose codes are its glyphs' numbers; the font itself is returned."""
        face = typeface(self._name)
        data = face.part([letter.glyph for letter in self._codes])
        # Six letters mark a part of a font (9.6.4); made of the content, they differ where it does.
        mark = "".join(chr(ord("A") + byte % 26) for byte in hashlib.sha256(data).digest()[:6])
        base = f"/{mark}+Inter-{self._name.capitalize()}"
        file = pydyf.Stream([data], {"Length1": len(data)})
        texts = pydyf.Stream([_to_unicode(self._codes)])
        descriptor = pydyf.Dictionary(
            {
                "Type": "/FontDescriptor",
                "FontName": base,
                "Flags": 4,
                "FontBBox": pydyf.Array(face.box),
                "ItalicAngle": 0,
                "Ascent": face.ascent,
                "Descent": face.descent,
                "CapHeight": face.cap_height,
                "StemV": 80,
                "FontFile2": b"",
            }
        )
        for part in (file, texts, descriptor):
            pdf.add_object(part)
        descriptor["FontFile2"] = file.reference
        widths = pydyf.Array([face.width(letter.glyph) * 1000 // EM for letter in self._codes])
        glyphs = pydyf.Dictionary(
            {
                "Type": "/Font",
                "Subtype": "/CIDFontType2",
                "BaseFont": base,
                "CIDSystemInfo": b"<</Registry (Adobe) /Ordering (Identity) /Supplement 0>>",
                "FontDescriptor": descriptor.reference,
                "CIDToGIDMap": "/Identity",
                "W": pydyf.Array([0, widths]),
            }
        )
        pdf.add_object(glyphs)
        font = pydyf.Dictionary(
            {
                "Type": "/Font",
                "Subtype": "/Type0",
                "BaseFont": base,
                "Encoding": "/Identity-H",
                "DescendantFonts": pydyf.Array([glyphs.reference]),
                "ToUnicode": texts.reference,
            }
        )
        pdf.add_object(font)
        return font


_MOST_AT_ONCE = 100  # entries of one bfchar section (Adobe Technical Note 5014)


def _to_unicode(codes: dict[Letter, int]) -> bytes:
    """The map from codes back to text that a reader, a search or a screen reader goes by (9.10.3)."""
    known = [f"<{code:04X}> <{letter.text.encode('utf-16-be').hex().upper()}>" for letter, code in codes.items()][1:]
    sections = [known[start : start + _MOST_AT_ONCE] for start in range(0, len(known), _MOST_AT_ONCE)]
    lines = [
        "/CIDInit /ProcSet findresource begin",
        "12 dict begin",
        "begincmap",
        "/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def",
        "/CMapName /Adobe-Identity-UCS def",
        "/CMapType 2 def",
        "1 begincodespacerange",
        "<0000> <FFFF>",
        "endcodespacerange",
    ]
    for section in sections:
        lines += [f"{len(section)} beginbfchar", *section, "endbfchar"]
    lines += ["endcmap", "CMapName currentdict /CMap defineresource pop", "end", "end"]
    return "\n".join(lines).encode()
