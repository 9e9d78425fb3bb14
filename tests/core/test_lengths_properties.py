"""What holds for every length and every text, tried on many of them."""

from fractions import Fraction

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st

from plumpline.lengths import (
    COUNTER_GRID,
    LONGEST,
    NM_PER_INCH,
    TAPE_GRID,
    UNITS,
    LengthError,
    read_length,
    read_length_full,
    round_half_even,
    write_length,
    write_length_up,
)

often = settings(max_examples=400, deadline=None, derandomize=True)

units = st.sampled_from(sorted(UNITS))
lengths = st.integers(0, 20 * UNITS["m"]) | st.integers(0, LONGEST // 2)
binary = st.sampled_from([1, 2, 4, 8, 16, 32, 64])

# Everything a tape reading is made of, and near misses of it.
pieces = st.sampled_from(
    [
        *"0123456789",
        *" -–—/⁄.,'\"’”′″½⅝⁵₈٣１&≈+×\u00a0\u200b",
        "in",
        "ft",
        "yd",
        "cm",
        "mm",
        "m",
        "and",
        "inch",
        "e",
        "1/2",
        "5/8",
    ]
)
near_readings = st.lists(pieces, max_size=14).map("".join)
any_text = near_readings | st.text(max_size=70)


@st.composite
def readings(draw):
    """A reading a maker might write in ASCII, with its value in nm."""
    unit = draw(st.sampled_from(["in", "cm", "yd", "mm", "m", "ft"]))
    whole, kind = draw(st.integers(0, 200)), draw(st.sampled_from(["whole", "mixed", "decimal"]))
    if kind == "whole":
        text, value = str(whole), Fraction(whole)
    elif kind == "mixed":
        below = draw(st.integers(2, 64))
        above = draw(st.integers(1, below - 1))
        text, value = f"{whole}{draw(st.sampled_from([' ', '-', '  ']))}{above}/{below}", whole + Fraction(above, below)
    else:
        decimals = draw(st.integers(0, 9999))
        text, value = f"{whole}{draw(st.sampled_from('.,'))}{decimals:04d}", whole + Fraction(decimals, 10_000)
    return f"{text}{draw(st.sampled_from(['', ' ']))}{unit}", round_half_even(value * UNITS[unit])


@often
@given(units, st.integers(0, 50_000))
def test_every_place_on_a_tape_s_grid_is_written_exactly_and_read_back(unit, place):
    nm = place * TAPE_GRID[unit]
    text = write_length(nm, unit)
    assert "≈" not in text
    assert read_length(text) == nm


@often
@given(st.sampled_from(["in", "ft", "yd"]), binary, st.integers(0, 10_000))
def test_every_binary_part_of_an_inch_is_written_exactly_and_read_back(unit, parts, place):
    nm = place * (NM_PER_INCH // parts)
    text = write_length(nm, unit, NM_PER_INCH // parts)
    assert "≈" not in text
    assert read_length(text) == nm


@often
@given(units, lengths, st.none() | st.sampled_from([100_000, 10**6, NM_PER_INCH // 8, NM_PER_INCH // 16]))
def test_what_is_shown_is_nearest_and_marked_exactly_when_it_differs(unit, nm, nearest):
    text = write_length(nm, unit, nearest)
    shown = read_length(text.removeprefix("≈ "))
    assert 2 * abs(shown - nm) <= (nearest or TAPE_GRID[unit])
    assert text.startswith("≈ ") == (shown != nm)


@often
@given(units, lengths)
def test_no_fraction_shown_is_one_or_more_or_reducible(unit, nm):
    """Faults B12 and B13."""
    for word in write_length(nm, unit).split():
        if "/" in word:
            above, below = map(int, word.split("/"))
            assert 0 < above < below
            assert Fraction(above, below).denominator == below


@often
@given(units, lengths)
def test_a_length_to_buy_is_never_less_and_never_a_whole_step_more(unit, nm):
    text = write_length_up(nm, unit)
    assert "≈" not in text
    assert 0 <= read_length(text) - nm < COUNTER_GRID[unit]


@often
@given(readings())
def test_a_reading_has_the_value_it_says(reading):
    text, nm = reading
    assert read_length(text) == nm


@often
@given(readings(), readings())
def test_the_longer_of_two_readings_is_read_as_the_longer(one, other):
    """Reading is monotone: lengths compare as the numbers written."""
    assert (read_length(one[0]) < read_length(other[0])) == (one[1] < other[1])


FULL_WIDTH = str.maketrans({chr(code): chr(code + 0xFEE0) for code in range(0x21, 0x7F)} | {" ": "\u3000"})
PHONE = str.maketrans({"-": "–", " ": "\u00a0", "/": "⁄"})


@often
@given(readings(), st.sampled_from([FULL_WIDTH, PHONE]))
def test_a_reading_typed_on_another_keyboard_has_the_same_value(reading, keyboard):
    """Fault B11."""
    text, nm = reading
    assert read_length(text.translate(keyboard)) == nm


@often
@given(readings(), st.sampled_from([" 5", "/", " ×", " 1/2", "e3", " in in", ".", " -", "²", " km"]))
def test_a_tail_that_is_not_understood_is_never_dropped(reading, tail):
    """Fault B07."""
    text = reading[0] + tail
    assume(not (tail == "." or ("ft" in reading[0] and tail == " 5")))
    with pytest.raises(LengthError):
        read_length(text)


def outcome(text, unit):
    """The full reading of a text, or the error with which it is refused."""
    try:
        return read_length_full(text, unit)
    except LengthError as error:
        return error


@often
@given(any_text, st.none() | units)
@example("5 ft,3 in", None)
@example("½½", "in")
def test_any_text_is_read_or_refused_with_its_unread_part_and_words(text, unit):
    read = outcome(text, unit)
    if isinstance(read, LengthError):
        assert (read.text, read.unread in text, bool(str(read))) == (text, True, True)
    else:
        assert 0 <= read["nm"] == read_length(text, unit) <= LONGEST


@often
@given(near_readings | readings().map(lambda reading: reading[0]), units)
def test_what_was_understood_reads_the_same_again(text, unit):
    read = outcome(text, unit)
    assume(isinstance(read, dict))
    again = read_length_full(read["understood"])
    assert (again["nm"], again["understood"]) == (read["nm"], read["understood"])


@often
@given(near_readings | readings().map(lambda reading: reading[0]), units, units)
def test_an_accepted_length_is_stable_once_it_has_been_written(text, unit, shown_in):
    """Fault B14: what was written out reads back to itself for ever."""
    read = outcome(text, unit)
    assume(isinstance(read, dict))
    written = write_length(read["nm"], shown_in).removeprefix("≈ ")
    assert write_length(read_length(written), shown_in) == written
