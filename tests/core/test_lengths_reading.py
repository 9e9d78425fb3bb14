"""Tape readings as makers write them: what is read, what is asked, what is refused and in which words."""

import pytest

from plumpline.lengths import NM_PER_INCH, LengthError, read_length, read_length_full


def inches(wholes, parts=0, of=1):
    """wholes + parts/of inches in nm."""
    return wholes * NM_PER_INCH + parts * NM_PER_INCH // of


SEVENTEEN_AND_FIVE_EIGHTHS = inches(17, 5, 8)


def refused(text, unit=None):
    """The error with which a text is refused."""
    with pytest.raises(LengthError) as caught:
        read_length(text, unit)
    assert caught.value.text == text
    return caught.value


def codes(text, unit=None):
    """The codes of the questions a reading raises."""
    return [notice["code"] for notice in read_length_full(text, unit)["notices"]]


@pytest.mark.parametrize(
    "text",
    [
        "17 5/8",
        "17-5/8",
        "17–5/8",
        "17—5/8",
        "17 - 5/8",
        "17 and 5/8",
        "17 & 5/8",
        "17⅝",
        "17 ⅝",
        "17⁵⁄₈",
        "17⁵/8",
        "17 5⁄8",
        "17 5∕8",
        "17  5 / 8",
        "17.625",
        "17,625",
        "017.62500",
        " 17 5/8\t",
        "17\u00a05/8",
        "17\u20095/8",
        "17\u202f5/8",
        "17\u30005/8",
        "17\u200b5/8",
        "１７ ５／８",
        "１７．６２５",
        "١٧٫٦٢٥",
    ],
)
def test_seventeen_and_five_eighths_reads_the_same_however_it_is_written(text):
    """Faults B05, B10 and B11: glyphs, hyphens that mean "and", dashes, hard spaces, other digits."""
    assert read_length(text, "in") == SEVENTEEN_AND_FIVE_EIGHTHS


@pytest.mark.parametrize(
    "text",
    [
        '17 5/8"',
        "17 5/8”",
        "17 5/8″",
        "17 5/8''",
        "17 5/8’’",
        "17-5/8”",
        "17 5/8in",
        "17 5/8 IN",
        "17 5/8 in.",
        "17 5/8 ins",
        "17 5/8 inch",
        "17 5/8-inch",
        "17 5/8 Inches",
        "１７ ５／８ ｉｎ",
        "17 5/8㏌",
    ],
)
def test_an_inch_may_be_marked_or_named_in_every_usual_way(text):
    assert read_length_full(text) == {
        "nm": SEVENTEEN_AND_FIVE_EIGHTHS,
        "understood": "17 5/8 in",
        "notices": [],
    }


@pytest.mark.parametrize(
    ("text", "nm", "understood"),
    [
        ("5' 3\"", inches(63), "5 ft 3 in"),
        ("5′ 3″", inches(63), "5 ft 3 in"),
        ("5’ 3″", inches(63), "5 ft 3 in"),
        ("5'3", inches(63), "5 ft 3 in"),
        ("5 ft 3 in", inches(63), "5 ft 3 in"),
        ("5 feet and 3 inches", inches(63), "5 ft 3 in"),
        ("5 ft, 3 in", inches(63), "5 ft 3 in"),
        ("5 ft. 3 in.", inches(63), "5 ft 3 in"),
        ("5'-3 5/8\"", inches(63, 5, 8), "5 ft 3 5/8 in"),
        ("5' 3 1/2", inches(63, 1, 2), "5 ft 3 1/2 in"),
        ("5' 3/4\"", inches(60, 3, 4), "5 ft 3/4 in"),
        ("5 ft 3.5 in", inches(63, 1, 2), "5 ft 3.5 in"),
        ("6'", inches(72), "6 ft"),
        ("1 foot", inches(12), "1 ft"),
        ("1 yd 4 in", inches(40), "1 yd 4 in"),
        ("1 yard 1 ft 1 in", inches(49), "1 yd 1 ft 1 in"),
        ("2 1/2 yd", inches(90), "2 1/2 yd"),
        ("2½ yds", inches(90), "2 1/2 yd"),
        ("1 1/2 yd 4 in", inches(58), "1 1/2 yd 4 in"),
        ("3/8 yards", inches(13, 1, 2), "3/8 yd"),
    ],
)
def test_feet_yards_and_inches_are_added_up_and_none_is_lost(text, nm, understood):
    """Fault B08: 5' 3/4" once lost its feet."""
    assert read_length_full(text) == {"nm": nm, "understood": understood, "notices": []}


@pytest.mark.parametrize(
    ("text", "millimetres", "understood"),
    [
        ("45 cm", 450, "45 cm"),
        ("45.5 cm", 455, "45.5 cm"),
        ("45,5 cm", 455, "45.5 cm"),
        ("45.50cm", 455, "45.5 cm"),
        ("45㎝", 450, "45 cm"),
        ("455 mm", 455, "455 mm"),
        ("455㎜", 455, "455 mm"),
        ("1.5 m", 1500, "1.5 m"),
        ("1 m 5 cm", 1050, "1 m 5 cm"),
        ("1 metre 5 centimetres 3 millimetres", 1053, "1 m 5 cm 3 mm"),
        ("2 meters", 2000, "2 m"),
        ("10 centimeters", 100, "10 cm"),
        ("1/2 m", 500, "1/2 m"),
    ],
)
def test_metric_lengths_are_read_with_point_or_comma(text, millimetres, understood):
    """Fault B01: a comma keypad must do."""
    assert read_length_full(text) == {"nm": millimetres * 10**6, "understood": understood, "notices": []}


@pytest.mark.parametrize("text", ["17,5", "17.5"])
@pytest.mark.parametrize(("unit", "nm"), [("cm", 175_000_000), ("in", inches(17, 1, 2))])
def test_the_decimal_mark_does_not_depend_on_where_the_phone_was_bought(text, unit, nm):
    """Fault B03."""
    assert read_length(text, unit) == nm


@pytest.mark.parametrize(
    ("text", "nm"), [(".5", inches(0, 1, 2)), (",5", inches(0, 1, 2)), ("17.", inches(17)), ("17,", inches(17))]
)
def test_a_decimal_mark_may_stand_first_or_last(text, nm):
    assert read_length(text, "in") == nm


def test_a_whole_and_a_fraction_are_added_never_multiplied():
    """Faults B05 and B06."""
    assert read_length("2 1/2", "in") == inches(2, 1, 2)
    assert read_length("1 1/4", "in") == inches(1, 1, 4)
    assert read_length("17½", "in") == inches(17, 1, 2)
    assert codes("1 1/4", "in") == []


def test_what_follows_the_whole_number_is_not_thrown_away():
    """Fault B07."""
    assert read_length("10 3/8 in") == inches(10, 3, 8)


def test_the_unit_in_the_text_goes_before_the_unit_of_the_field():
    assert read_length("45 cm", "in") == 450_000_000


def test_a_third_of_an_inch_is_rounded_once_to_the_nearest_nanometre():
    assert read_length("1/3 in") == 8_466_667
    assert read_length("2/3 in") == 16_933_333


def test_half_a_nanometre_is_rounded_to_the_even_one():
    assert read_length("0.0000005 mm") == 0
    assert read_length("0.0000015 mm") == 2
    assert read_length("0.0000025 mm") == 2


def test_nothing_at_all_needs_no_unit():
    assert read_length_full("0") == {"nm": 0, "understood": "0", "notices": []}
    assert read_length_full("0,0") == {"nm": 0, "understood": "0", "notices": []}
    assert read_length_full("0", "cm") == {"nm": 0, "understood": "0 cm", "notices": []}


@pytest.mark.parametrize(
    ("text", "nm", "question"),
    [
        ("11/4", inches(2, 3, 4), "11/4 was read as 2 3/4 in. Did you mean 1 1/4?"),
        ("175/8", inches(21, 7, 8), "175/8 was read as 21 7/8 in. Did you mean 17 5/8?"),
        ("115/16", inches(7, 3, 16), "115/16 was read as 7 3/16 in. Did you mean 1 15/16 or 11 5/16?"),
        ("9/8", inches(1, 1, 8), "9/8 was read as 1 1/8 in. Is that what you meant?"),
        ("80/8", inches(10), "80/8 was read as 10 in. Is that what you meant?"),
    ],
)
def test_a_fraction_of_one_or_more_is_read_and_asked_about(text, nm, question):
    """Fault B06: a missing space turns 1 1/4 into 11/4."""
    read = read_length_full(text, "in")
    assert read["nm"] == nm
    assert read["notices"] == [{"code": "improper-fraction", "text": question}]


def test_a_comma_before_three_figures_is_read_as_decimals_and_said_so():
    """Fault B02."""
    read = read_length_full("1,024", "in")
    assert read["nm"] == 26_009_600
    assert read["understood"] == "1.024 in"
    assert read["notices"] == [
        {
            "code": "comma-as-decimal",
            "text": "1,024 was read as 1.024 in. If you meant 1024 in, write no mark.",
        }
    ]


def test_a_point_before_three_figures_is_said_only_where_three_decimals_are_odd():
    assert codes("1.200 mm") == ["point-as-decimal"]
    assert codes("1.200 cm") == ["point-as-decimal"]
    assert codes("1.200 m") == []
    assert codes("17.625 in") == []
    assert codes("0,750 m") == []


def test_inches_that_fill_another_foot_are_read_and_asked_about():
    read = read_length_full("5 ft 14 in")
    assert read["nm"] == inches(74)
    assert read["notices"] == [
        {
            "code": "fills-the-larger-unit",
            "text": "14 in after 5 ft is one ft or more. Is that what you meant?",
        }
    ]
    assert codes("1 m 99 cm") == []


@pytest.mark.parametrize(
    ("text", "code", "understood", "unread"),
    [
        ("1/1 2/3", "unread-tail", "1/1", "2/3"),
        ("5 1/0", "zero-denominator", "5", "1/0"),
        ("1/0", "zero-denominator", "", "1/0"),
        ("3/", "unread-tail", "3", "/"),
        ("--2", "not-a-length", "", "--2"),
        ("1 2 3", "unread-tail", "1", "2 3"),
        ("", "empty", "", ""),
        (" \u00a0\n", "empty", "", ""),
        ("abc", "not-a-length", "", "abc"),
        ("-", "not-a-length", "", "-"),
        ("in", "not-a-length", "", "in"),
        ("7-0-1/2 ft", "unread-tail", "7", "-0-1/2 ft"),
        ("-5 in", "negative", "", "-5 in"),
        ("−5 in", "negative", "", "−5 in"),
        ("-1/2 in", "negative", "", "-1/2 in"),
        ("1e3", "unknown-unit", "1", "e3"),
        ("17 5/8 5", "unread-tail", "17 5/8", "5"),
        ("nan", "not-a-length", "", "nan"),
        ("inf", "not-a-length", "", "inf"),
        ("17.5.2", "two-decimal-marks", "17.5", ".2"),
        ("1,024.5 mm", "two-decimal-marks", "1.024", ".5 mm"),
        ("17.5 1/2", "decimal-and-fraction", "17.5", "1/2"),
        ("17.5-1/2 in", "decimal-and-fraction", "17.5", "-1/2 in"),
        ("17.5/8", "unread-tail", "17.5", "/8"),
        ("1/2/3", "unread-tail", "1/2", "/3"),
        ("1/2.5", "unread-tail", "1/2", ".5"),
        ("17 8/8", "fraction-not-below-one", "17", "8/8"),
        ("17-18", "unread-tail", "17", "-18"),
        ("1 024 mm", "unread-tail", "1", "024 mm"),
        ("⅝⅝", "unread-tail", "5/8", "⅝"),
        ("17²", "unread-tail", "17", "²"),
        ("17₂", "unread-tail", "17", "₂"),
        ("17 in 5/8", "unit-missing", "17 in", "5/8"),
        ("5' 3/4", "unit-missing", "5 ft", "3/4"),
        ("5' 3.5", "unit-missing", "5 ft", "3.5"),
        ("1 m 5", "unit-missing", "1 m", "5"),
        ("17 in -", "unread-tail", "17 in", "-"),
        ("17 in ×", "unread-tail", "17 in", "×"),
        ("17 in in", "unread-tail", "17 in", "in"),
        ("17 zoll", "unknown-unit", "17", "zoll"),
        ("2'-11 1\"", "unread-tail", "2 ft 11", '1"'),
        ("5 ft 3 cubits", "unknown-unit", "5 ft 3", "cubits"),
        ("5 ft,3 in", "decimal-without-whole", "5 ft", ",3 in"),
        ("5 ft.3 in", "decimal-without-whole", "5 ft", ".3 in"),
        ("5.5 ft 3 in", "decimal-before-smaller-unit", "5.5 ft", "3 in"),
        ("5,5 ft 3 in", "decimal-before-smaller-unit", "5.5 ft", "3 in"),
        ("3 in 5 ft", "units-out-of-order", "3 in", "5 ft"),
        ("5 in 3 in", "repeated-unit", "5 in", "3 in"),
        ("5 cm 3 in", "mixed-units", "5 cm", "3 in"),
        ("5 ft and 3 cm", "mixed-units", "5 ft", "and 3 cm"),
        ("≈ 44.77 cm", "approximate", "", "≈ 44.77 cm"),
        ("~45 cm", "approximate", "", "~45 cm"),
        ("10001 m", "too-large", "10001 m", ""),
        ("9" * 60 + " in", "too-large", "9" * 60 + " in", ""),
        ("9" * 65, "too-long", "", "9" * 65),
    ],
)
def test_what_is_not_a_length_from_end_to_end_is_refused_and_kept(text, code, understood, unread):
    """Faults B07, B09, B10 and B12: never a guess, never a lost tail."""
    for unit in (None, "in"):
        error = refused(text, unit)
        assert (error.code, error.understood, error.unread) == (code, understood, unread)


def test_the_longest_length_is_still_read():
    assert read_length("10000 m") == 10_000 * 10**9


def test_a_number_without_a_unit_is_asked_for_one():
    error = refused("17 5/8")
    assert error.code == "unit-missing"
    assert str(error) == ("17 5/8 what? Write its unit too: 17 5/8 in, 17 5/8 cm, 17 5/8 mm, 17 5/8 m or 17 5/8 yd.")


@pytest.mark.parametrize("value", [None, True, 17, 17.5, ["17 in"], b"17 in"])
def test_what_is_no_text_is_refused_as_a_length(value):
    error = refused(value, "in")
    assert error.code == "not-text"
    assert str(error) == "A length is written as text with its unit, such as 17 5/8 in or 45.5 cm."


def test_a_field_in_an_unknown_unit_is_refused():
    assert refused("17", "cubit").code == "unknown-unit"


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("17 5/8 5", "Read as 17 5/8, but not “5” after it. Write a length such as 17 5/8 in or 45.5 cm."),
        ("3 in 5 ft", "5 ft comes after 3 in. Write the larger unit first: 5 ft 3 in."),
        ("17.5.2", "Two decimal marks. Write one, and none for thousands, such as 1024.5 mm."),
        ("5 ft,3 in", "“,3” after 5 ft reads in two ways. Write 0.3 or 3."),
        (
            "17 and a good bit over from the left edge",
            "Read as 17, but not “and a good bit over fro…” after it. Write a length such as 17 5/8 in or 45.5 cm.",
        ),
        ("17 zoll", "“zoll” after 17 is not a unit known here. Write 17 in, ft, yd, mm, cm or m."),
        (
            "17 8/8 in",
            "8/8 is one or more, so it cannot follow 17. "
            "Write a fraction smaller than one, such as 17 5/8 in or 45.5 cm.",
        ),
    ],
)
def test_a_refusal_says_what_was_understood_and_what_to_write(text, message):
    assert str(refused(text)) == message
