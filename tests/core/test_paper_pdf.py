"""The PDF writer: every letter can be taken out again, sizes are exact, and the same content gives the same bytes."""

import hashlib
import os
import re
import struct
import subprocess
import sys
import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from printed import boxes, inked, printer_scaling, texts, texts_again

from plumpline.paper.lettering import Lettering, letters, lines_of, width_of
from plumpline.paper.pdf import PAPERS, Document, points
from plumpline.paper.sheet import MM, Pen, Sheet
from plumpline.paper.typeface import Typeface, typeface

IN = 25_400_000
CLIENT = "Łucja Ñandú ½ €"
SIGNS = "½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ⅓ ⅔ × ″ ′ “ ” ‘ ’ – — … ≈ → ← ↑ ↓ ≤ ≥ ° ± € £ $ ¥ ₩ ₹ ₺ ₴ zł kr № ⁄ ⁰¹²³⁴⁵⁶⁷⁸⁹ ₀₁₂₃₄₅₆₇₈₉"
NAMES = "Gołębiów Žižkov Ağrı İzmir Győr Brașov Țara Ørsted Þór Ħamrun Straße Çeşme Ķekava Ŵyddgrug Œuvre 7⁄16 17⅝"


def page_with(*lines, face="regular", title="A paper"):
    document = Document(title)
    sheet = Sheet(document, *PAPERS["a4"])
    for number, line in enumerate(lines):
        sheet.words(line, (20 * MM, (270 - 8 * number) * MM), Lettering(face))
    return document.to_bytes()


@pytest.mark.reference
@pytest.mark.parametrize("face", ["regular", "semibold"])
@pytest.mark.parametrize("taken_out", [texts, texts_again])
def test_b33_fractions_accents_and_currency_signs_come_out_as_they_went_in(taken_out, face):
    lines = [CLIENT, SIGNS, NAMES, "17 5/8 in and 7/16 in", "18 × 17 11/16 in, ≈ 45.5 cm", "on 1/4/2026, at 24/7"]
    assert taken_out(page_with(*lines, face=face))[0].split("\n") == lines


@pytest.mark.reference
@pytest.mark.parametrize("taken_out", [texts, texts_again])
def test_a_name_in_a_script_the_face_does_not_have_comes_out_all_the_same(taken_out):
    assert taken_out(page_with("漢字 Ελένη Иван 🪡"))[0] == "漢字 Ελένη Иван 🪡"


@pytest.mark.parametrize("name", ["regular", "semibold"])
def test_the_faces_have_every_letter_of_the_latin_alphabets_and_every_sign_of_the_trade(name):
    latin = [chr(code) for code in (*range(0x20, 0x7F), *range(0xA0, 0x180)) if code not in (0xAD, 0x149)]
    wanted = latin + list((SIGNS + NAMES).replace(" ", ""))
    assert [sign for sign in wanted if not typeface(name).glyph(sign)] == []
    assert typeface(name).glyph("漢") == typeface(name).glyph("🪡") == 0


@given(st.text(st.characters(exclude_categories=["Cs"]), max_size=40))
def test_the_letters_of_a_text_are_the_text_composed_and_on_one_line(text):
    shown = "".join(letter.text for letter in letters(text, "regular"))
    composed = unicodedata.normalize("NFC", text)
    assert shown == re.sub("[\x00-\x1f\x7f-\x9f\u2028\u2029]", " ", composed)


@pytest.mark.parametrize(
    ("text", "is_small"),
    [
        ("17 5/8 in", True),
        ("7/16", True),
        ("(1/2)", True),
        ("1/4/2026", False),
        ("2026/11/25", False),
        ("1234/5", False),
        ("in/cm", False),
        ("3.1/2", False),
    ],
)
def test_a_fraction_gets_small_figures_and_a_date_does_not(text, is_small):
    shown = letters(text, "regular")
    plain = [typeface("regular").glyph(letter.text) for letter in shown]
    assert ([letter.glyph for letter in shown] != plain) == is_small
    assert "".join(letter.text for letter in shown) == text


def test_a_broken_text_keeps_its_words_and_no_line_is_wider_than_it_may_be():
    text = "Leave 8 in open in the middle of the bottom edge.\n\nPress the seam before it is turned."
    lines = lines_of(text, Lettering(size=11), 40 * MM)
    assert max(width_of(line, Lettering(size=11)) for line in lines) <= 40 * MM
    assert " ".join(lines) == text.replace("\n", " ")
    assert lines_of("", Lettering(), 40 * MM) == [""]


@settings(max_examples=40)
@given(st.text("ab c½Łé", max_size=40), st.integers(4, 30))
def test_whatever_is_written_no_line_is_wider_than_it_may_be(text, millimetres):
    lines = lines_of(text, Lettering(), millimetres * MM)
    assert all(width_of(line, Lettering()) <= millimetres * MM for line in lines)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")


def test_a_letter_wider_than_its_column_stands_alone():
    assert lines_of("WM", Lettering(size=40), MM) == ["W", "M"]


@pytest.mark.parametrize(("paper", "width", "height"), [("a4", "595.2756", "841.8898"), ("letter", "612", "792")])
def test_a_page_is_exactly_as_large_as_its_paper(paper, width, height):
    document = Document("A paper")
    Sheet(document, *PAPERS[paper])
    written = document.to_bytes()
    # 210 mm are 595.27559… points of 1/72 in, and 8 1/2 in are 612
    assert f"/MediaBox [0 0 {width} {height}]".encode() in written
    assert f"/TrimBox [0 0 {width} {height}]".encode() in written


@pytest.mark.reference
def test_other_readers_see_one_box_and_no_scaling():
    (media, trim), *_ = boxes(page_with(CLIENT))
    assert media == trim == (0, 0, 595.2756, 841.8898)
    assert printer_scaling(page_with(CLIENT)) == "/None"


@pytest.mark.parametrize(
    ("nm", "text"), [(0, b"0"), (IN, b"72"), (-IN // 2, b"-36"), (MM, b"2.8346"), (-35, b"-0.0001"), (17, b"0")]
)
def test_a_length_in_points_is_written_to_four_decimals_without_idle_zeros(nm, text):
    assert points(nm) == text


def drawing():
    document = Document(CLIENT)
    sheet = Sheet(document, *PAPERS["letter"])
    sheet.words(CLIENT, (2 * IN, 9 * IN), Lettering("semibold", 14), "centre")
    sheet.words("17 5/8 in", (2 * IN, 8 * IN), Lettering(), "right")
    sheet.circle((3 * IN, 3 * IN), IN, Pen(MM // 2, 60, (2 * MM, MM)))
    sheet.fill([(IN, IN), (2 * IN, IN), (2 * IN, 2 * IN)], 25)
    return document.to_bytes()


def test_the_same_drawing_gives_the_same_bytes():
    assert drawing() == drawing()
    assert drawing() != page_with(CLIENT)


@pytest.mark.reference
def test_the_bytes_do_not_hang_on_the_hash_seed():
    program = "import test_paper_pdf as t, hashlib; print(hashlib.sha256(t.drawing()).hexdigest())"
    for seed in ("0", "1", "4294967295"):
        environment = os.environ | {"PYTHONHASHSEED": seed, "PYTHONPATH": os.path.dirname(__file__)}
        done = subprocess.run([sys.executable, "-c", program], env=environment, capture_output=True, text=True)
        assert done.stdout.strip() == hashlib.sha256(drawing()).hexdigest(), done.stderr


def test_nothing_in_a_document_is_dated_or_compressed():
    written = drawing()
    assert b"Date" not in written
    assert b"/Filter" not in written


def test_a_title_is_kept_on_one_line():
    assert b"(Harbour room, the sofa)" in page_with(title="Harbour room,\n the sofa")


def curves(written):
    """The Bézier curves in a document, each by its four points in points of 1/72 in."""
    found, place = [], None
    for line in written.splitlines():
        numbers = [float(word) for word in line.split()[:-1] if re.fullmatch(rb"-?[\d.]+", word)]
        if line.endswith(b" m"):
            place = tuple(numbers)
        elif line.endswith(b" c") and len(numbers) == 6:
            found.append((place, *zip(numbers[::2], numbers[1::2], strict=True)))
            place = found[-1][-1]
    return found


def test_a_circle_is_true_to_a_hundred_thousandth_of_its_radius_all_round():
    document = Document("A circle")
    Sheet(document, *PAPERS["a4"]).circle((100 * MM, 100 * MM), 90 * MM, Pen(MM))
    drawn = curves(document.to_bytes())
    middle, radius = 100 / 25.4 * 72, 90 / 25.4 * 72
    assert len(drawn) == 8
    for a, b, c, d in drawn:
        for step in range(21):
            t = step / 20
            x, y = (
                a[i] * (1 - t) ** 3 + 3 * b[i] * t * (1 - t) ** 2 + 3 * c[i] * t * t * (1 - t) + d[i] * t**3 - middle
                for i in (0, 1)
            )
            assert abs((x * x + y * y) ** 0.5 - radius) <= radius / 100_000 + 0.0001
    assert drawn[-1][-1] == drawn[0][0]


def tables_of(font):
    """The tables of a TrueType font file, each checked against its own sum (ISO/IEC 14496-22, 4.4)."""
    found = {}
    for number in range(struct.unpack_from(">H", font, 4)[0]):
        tag, total, start, length = struct.unpack_from(">4sIII", font, 12 + 16 * number)
        padded = font[start : start + length] + bytes(-length % 4)
        assert sum(value for (value,) in struct.iter_unpack(">I", padded)) % 2**32 == total
        assert start % 4 == 0
        found[tag.decode()] = font[start : start + length]
    return found


def test_a_document_carries_only_the_glyphs_it_shows():
    face = typeface("regular")
    part = tables_of(face.part([0, face.glyph("½"), face.glyph("a")]))
    assert sorted(part) == ["glyf", "head", "hhea", "hmtx", "loca", "maxp"]
    assert struct.unpack_from(">H", part["maxp"], 4) == struct.unpack_from(">H", part["hhea"], 34) == (3,)
    offsets = struct.unpack(">4H", part["loca"])
    assert offsets[-1] * 2 == len(part["glyf"])
    assert part["hmtx"][4:6] == struct.pack(">H", face.width(face.glyph("½")))
    assert len(page_with(CLIENT)) < 8_000


def test_a_face_without_skipped_ranges_is_read_too():
    # A character map of format 4 with one segment that counts by its delta alone: "A" is glyph 1, "B" glyph 2.
    segments = struct.pack(">14H", 4, 32, 0, 4, 0, 0, 0, 66, 0xFFFF, 0, 65, 0xFFFF, (1 - 65) % 65536, 1)
    cmap = struct.pack(">HHHHI", 0, 1, 3, 1, 12) + segments + struct.pack(">2H", 0, 0)
    tables = {
        "OS/2": bytes(96), "cmap": cmap, "glyf": b"", "head": bytes(54), "hhea": bytes(36),
        "hmtx": struct.pack(">HhHhHh", 500, 0, 600, 0, 700, 0), "loca": bytes(8), "maxp": struct.pack(">IH", 0, 3),
    }  # fmt: skip
    start, directory, body = 12 + 16 * len(tables), struct.pack(">IHHHH", 0x10000, len(tables), 0, 0, 0), b""
    for tag, table in tables.items():
        directory += struct.pack(">4sIII", tag.encode(), 0, start + len(body), len(table))
        body += table + bytes(-len(table) % 4)
    face = Typeface(directory + body)
    assert [face.width(face.glyph(sign)) for sign in "ABC"] == [600, 700, 500]


@pytest.mark.reference
def test_words_stand_where_they_were_put_and_are_as_wide_as_was_counted():
    import pypdfium2

    document = Document("Words")
    sheet = Sheet(document, *PAPERS["a4"])
    for number, align in enumerate(("left", "centre", "right")):
        sheet.words("IH 1/2 HI", (100 * MM, (250 - 20 * number) * MM), Lettering("regular", 24), align)
    written = document.to_bytes()
    width = width_of("IH 1/2 HI", Lettering("regular", 24))
    page = pypdfium2.PdfDocument(written)[0].get_textpage()
    starts = [page.get_charbox(number)[0] * IN / 72 for number in (0, 11, 22)]
    side_bearing = starts[0] - 100 * MM
    assert 0 < side_bearing < MM
    assert [round(start - side_bearing) // 1000 for start in starts] == [
        (100 * MM - back) // 1000 for back in (0, width // 2, width)
    ]


@pytest.mark.reference
def test_a_drawn_line_is_as_long_and_as_wide_as_was_asked():
    document = Document("A line")
    Sheet(document, *PAPERS["a4"]).line((20 * MM, 100 * MM), (120 * MM, 100 * MM), Pen(MM))
    page = inked(document.to_bytes(), 0)
    assert abs(page.black_across((0, 100 * MM), 200 * MM) - 100 * MM) < MM // 50
    assert abs(page.black_up((70 * MM, 90 * MM), 20 * MM) - MM) < MM // 50
    assert abs(page.ink - 100 * MM * MM) < MM * MM


@pytest.mark.reference
def test_in_a_window_only_what_lies_within_it_is_drawn():
    document = Document("A window")
    sheet = Sheet(document, *PAPERS["a4"])
    with sheet.window((50 * MM, 50 * MM), 20 * MM, 20 * MM, (60 * MM, 60 * MM)):
        sheet.line((-60 * MM, 0), (60 * MM, 0), Pen(MM))
    sheet.path([(0, 200 * MM), (10 * MM, 200 * MM), (10 * MM, 210 * MM)], Pen(MM))
    sheet.outline([(100 * MM, 200 * MM), (110 * MM, 200 * MM), (110 * MM, 210 * MM), (100 * MM, 210 * MM)], Pen(MM))
    page = inked(document.to_bytes(), 0)
    # PDFium clips by whole pixels, of which one is a twelfth of a millimetre.
    assert abs(page.black_across((0, 60 * MM), 200 * MM) - 20 * MM) < MM // 5
    # The bend of the path and the corners of the outline are mitred: nothing of them is missing.
    assert abs(page.ink - (20 + 20 + 40) * MM * MM) < MM * MM // 2
