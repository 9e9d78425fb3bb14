"""The tape's readings as the core writes them out for the browser."""

import json

import pytest

from plumpline.lengths import NM_PER_INCH, UNITS, read_length, write_length
from plumpline.readings import dump_readings, readings_document
from plumpline.spoken import speak_length

SCALES = [("in", "cm", NM_PER_INCH // 16, 1921), ("mm", "in", UNITS["mm"], 3001)]


@pytest.fixture(scope="module")
def document():
    return readings_document()


def test_the_tape_has_every_sixteenth_to_120_inches_and_every_millimetre_to_3_metres(document):
    assert list(document) == ["in", "mm"]
    for scale, _, step, rows in SCALES:
        assert document[scale]["step_nm"] == step
        assert len(document[scale]["rows"]) == rows
    assert document["in"]["rows"][-1][0] == "120 in"
    assert document["mm"]["rows"][-1][0] == "300 cm"


@pytest.mark.parametrize(
    ("scale", "place", "row"),
    [
        ("in", 0, ["0 in", "0 cm", "zero inches"]),
        ("in", 8, ["1/2 in", "1.27 cm", "half an inch"]),
        ("in", 16, ["1 in", "2.54 cm", "one inch"]),
        ("in", 282, ["17 5/8 in", "≈ 44.77 cm", "seventeen and five eighths inches"]),
        ("in", 864, ["54 in", "137.16 cm", "fifty-four inches"]),
        ("in", 1888, ["118 in", "299.72 cm", "one hundred and eighteen inches"]),
        ("mm", 0, ["0 cm", "0 in", "zero centimetres"]),
        ("mm", 127, ["12.7 cm", "5 in", "twelve point seven centimetres"]),
        ("mm", 450, ["45 cm", "≈ 17 11/16 in", "forty-five centimetres"]),
        ("mm", 455, ["45.5 cm", "≈ 17 15/16 in", "forty-five point five centimetres"]),
    ],
)
def test_a_row_carries_both_texts_and_what_is_said(document, scale, place, row):
    assert document[scale]["rows"][place] == row


@pytest.mark.parametrize(("scale", "other", "step", "rows"), SCALES)
def test_every_reading_reads_back_to_its_own_place(document, scale, other, step, rows):
    own = "in" if scale == "in" else "cm"
    for place in range(rows):
        nm = place * step
        row = document[scale]["rows"][place]
        assert read_length(row[0]) == nm
        assert row == [write_length(nm, own), write_length(nm, other), speak_length(nm, own)]


def test_the_other_system_is_marked_wherever_it_is_rounded(document):
    for scale, _, step, _ in SCALES:
        for place, row in enumerate(document[scale]["rows"]):
            exact = read_length(row[1].removeprefix("≈ ")) == place * step
            assert exact == (not row[1].startswith("≈ "))


def test_no_two_places_have_the_same_text(document):
    for scale, _, _, rows in SCALES:
        assert len({row[0] for row in document[scale]["rows"]}) == rows


def test_the_file_is_the_document_and_the_same_bytes_every_time(document):
    text = dump_readings()
    assert json.loads(text) == document
    assert text == dump_readings()
    assert text.endswith("]}}\n")
    assert "\\u" not in text
