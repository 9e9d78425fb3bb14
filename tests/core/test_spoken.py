"""Lengths said aloud, as a screen reader says them on the tape."""

import pytest

from plumpline.lengths import LONGEST, UNITS, read_length
from plumpline.spoken import number_in_words, speak_length


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("0 in", "zero inches"),
        ("1 in", "one inch"),
        ("2 in", "two inches"),
        ("1/2 in", "half an inch"),
        ("1/4 in", "a quarter of an inch"),
        ("3/4 in", "three quarters of an inch"),
        ("1/8 in", "an eighth of an inch"),
        ("7/8 in", "seven eighths of an inch"),
        ("1/16 in", "a sixteenth of an inch"),
        ("1 1/2 in", "one and a half inches"),
        ("1 1/8 in", "one and an eighth inches"),
        ("17 5/8 in", "seventeen and five eighths inches"),
        ("20 5/16 in", "twenty and five sixteenths inches"),
        ("54 in", "fifty-four inches"),
        ("118 in", "one hundred and eighteen inches"),
        ("101 1/2 in", "one hundred and one and a half inches"),
        ("100 13/16 in", "one hundred inches and thirteen sixteenths"),
        ("17.6 in", "about seventeen and five eighths inches"),
    ],
)
def test_inches_are_said_with_their_fraction(typed, said):
    assert speak_length(read_length(typed), "in") == said


@pytest.mark.parametrize(
    ("typed", "unit", "said"),
    [
        ("0 cm", "cm", "zero centimetres"),
        ("1 cm", "cm", "one centimetre"),
        ("45.5 cm", "cm", "forty-five point five centimetres"),
        ("0.1 cm", "cm", "zero point one centimetres"),
        ("3.81 cm", "cm", "three point eight one centimetres"),
        ("10.05 cm", "cm", "ten point zero five centimetres"),
        ("17 5/8 in", "cm", "about forty-four point seven seven centimetres"),
        ("1 mm", "mm", "one millimetre"),
        ("455 mm", "mm", "four hundred and fifty-five millimetres"),
        ("1.95 m", "m", "one point nine five metres"),
        ("1 yd", "yd", "one yard"),
        ("1/2 yd", "yd", "half a yard"),
        ("1/8 yd", "yd", "an eighth of a yard"),
        ("2 1/8 yd", "yd", "two and an eighth yards"),
        ("1 ft", "ft", "one foot"),
        ("6 ft", "ft", "six feet"),
        ("3 in", "ft", "three inches"),
        ("5 ft 3 1/2 in", "ft", "five feet three and a half inches"),
    ],
)
def test_every_unit_is_said_in_its_own_way(typed, unit, said):
    assert speak_length(read_length(typed), unit) == said


def test_a_length_below_zero_is_said_with_minus():
    assert speak_length(-12_700_000, "in") == "minus half an inch"
    assert speak_length(-12_710_000, "in") == "about minus half an inch"


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (0, "zero"),
        (13, "thirteen"),
        (20, "twenty"),
        (99, "ninety-nine"),
        (100, "one hundred"),
        (320, "three hundred and twenty"),
        (1000, "one thousand"),
        (3001, "three thousand and one"),
        (12_345, "twelve thousand three hundred and forty-five"),
        (10_000_000, "ten million"),
        (
            999_999_999,
            "nine hundred and ninety-nine million nine hundred and ninety-nine thousand nine hundred and ninety-nine",
        ),
    ],
)
def test_whole_numbers_are_said_in_british_english(number, words):
    assert number_in_words(number) == words


@pytest.mark.parametrize(
    ("unit", "said"),
    [
        ("mm", "ten million millimetres"),
        ("cm", "one million centimetres"),
        ("m", "ten thousand metres"),
        ("in", "about three hundred and ninety-three thousand seven hundred inches and thirteen sixteenths"),
        ("ft", "about thirty-two thousand eight hundred and eight feet four and thirteen sixteenths inches"),
        ("yd", "about ten thousand nine hundred and thirty-six and an eighth yards"),
    ],
)
def test_the_longest_length_can_be_said_in_every_unit(unit, said):
    assert speak_length(LONGEST, unit) == said


def test_no_two_places_on_the_tape_are_said_alike():
    sixteenth, millimetre = read_length("1/16 in"), UNITS["mm"]
    assert len({speak_length(place * sixteenth, "in") for place in range(1921)}) == 1921
    assert len({speak_length(place * millimetre, "cm") for place in range(3001)}) == 3001
