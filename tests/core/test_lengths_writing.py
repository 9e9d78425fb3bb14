"""Lengths written out: rounded on the grid first, then split, in every unit and for a counter of the other system."""

from fractions import Fraction

import pytest

from plumpline.lengths import (
    COUNTER_GRID,
    NM_PER_INCH,
    TAPE_GRID,
    UNITS,
    mixed_number,
    read_length,
    round_half_even,
    round_half_up,
    round_to,
    round_up,
    write_length,
    write_length_up,
)

EIGHTH = NM_PER_INCH // 8
SIXTY_FOURTH = NM_PER_INCH // 64


def test_seventeen_and_five_eighths_is_written_in_both_systems():
    """The example of a length in an answer: 447 675 000 nm."""
    assert write_length(447_675_000, "in") == "17 5/8 in"
    assert write_length(447_675_000, "cm") == "≈ 44.77 cm"
    assert write_length(447_675_000, "mm") == "≈ 447.7 mm"
    assert write_length(447_675_000, "m") == "≈ 0.448 m"
    assert write_length(447_675_000, "ft") == "1 ft 5 5/8 in"
    assert write_length(447_675_000, "yd") == "≈ 1/2 yd"


@pytest.mark.parametrize(
    ("typed", "shown"),
    [
        ("35.9999 in", "≈ 36 in"),
        ("35.99 in", "≈ 36 in"),
        ("23.99 in", "≈ 24 in"),
        ("17.9999 in", "≈ 18 in"),
        ("0.99 in", "≈ 1 in"),
        ("18 in", "18 in"),
    ],
)
def test_a_length_just_below_a_whole_never_shows_eight_eighths(typed, shown):
    """Fault B12: rounded on the grid first, split into wholes and eighths after."""
    assert write_length(read_length(typed), "in", EIGHTH) == shown


@pytest.mark.parametrize(
    ("typed", "shown"), [("35.9999 in", "≈ 3 ft"), ("23.99 in", "≈ 2 ft"), ("35 in", "2 ft 11 in")]
)
def test_feet_and_inches_carry_over_too(typed, shown):
    """Fault B12: never 2 ft 12 in, never 1 ft 12 in."""
    assert write_length(read_length(typed), "ft") == shown


@pytest.mark.parametrize(
    ("typed", "nearest", "shown"),
    [
        ("16/128 in", SIXTY_FOURTH, "1/8 in"),
        ("1/32 in", SIXTY_FOURTH, "1/32 in"),
        ("17.625 in", EIGHTH, "17 5/8 in"),
        ("17 10/16 in", None, "17 5/8 in"),
        ("17.6 in", EIGHTH, "≈ 17 5/8 in"),
        ("17.6 in", None, "≈ 17 5/8 in"),
        ("2 2/8 yd", None, "2 1/4 yd"),
    ],
)
def test_a_fraction_is_reduced_and_marked_where_it_is_rounded(typed, nearest, shown):
    """Fault B13."""
    assert write_length(read_length(typed), "in" if "in" in typed else "yd", nearest) == shown


@pytest.mark.parametrize(
    ("nm", "unit", "shown"),
    [
        (450_000_000, "cm", "45 cm"),
        (455_000_000, "cm", "45.5 cm"),
        (455_100_000, "cm", "45.51 cm"),
        (455_000_000, "mm", "455 mm"),
        (1_950_000_000, "m", "1.95 m"),
        (2_000_000_000, "m", "2 m"),
        (5_000_000, "cm", "0.5 cm"),
        (0, "cm", "0 cm"),
        (0, "in", "0 in"),
        (0, "ft", "0 in"),
        (UNITS["ft"], "ft", "1 ft"),
        (NM_PER_INCH // 2, "in", "1/2 in"),
        (1, "in", "≈ 0 in"),
    ],
)
def test_decimals_have_no_idle_zeros_and_fractions_no_idle_whole(nm, unit, shown):
    assert write_length(nm, unit) == shown


def test_a_tie_on_the_grid_goes_away_from_zero():
    assert write_length(NM_PER_INCH // 32, "in") == "≈ 1/16 in"
    assert write_length(-NM_PER_INCH // 32, "in") == "≈ -1/16 in"
    assert write_length(50_000, "mm") == "≈ 0.1 mm"


def test_a_length_below_zero_keeps_its_sign():
    assert write_length(-12_700_000, "in") == "-1/2 in"
    assert write_length(-12_700_000, "cm") == "-1.27 cm"
    assert write_length(-UNITS["ft"] - NM_PER_INCH, "ft") == "-1 ft 1 in"


def test_a_grid_of_one_nanometre_shows_every_length_exactly():
    assert write_length(447_675_001, "cm", 1) == "44.7675001 cm"
    assert write_length(NM_PER_INCH + 1, "in", 1) == "1 1/25400000 in"


@pytest.mark.parametrize(
    ("typed", "unit", "shown"),
    [
        ("2 1/8 yd", "m", "1.95 m"),
        ("2 1/8 yd", "cm", "195 cm"),
        ("2 1/8 yd", "mm", "1950 mm"),
        ("1 m", "in", "39 3/8 in"),
        ("1 m", "ft", "3 ft 3 3/8 in"),
        ("1 m", "yd", "1 1/8 yd"),
        ("50 cm", "m", "0.5 m"),
        ("3 1/8 yd", "yd", "3 1/8 yd"),
    ],
)
def test_a_length_to_buy_is_rounded_up_in_the_other_system(typed, unit, shown):
    assert write_length_up(read_length(typed), unit) == shown


def test_a_length_to_buy_may_be_rounded_up_to_a_shop_s_own_step():
    assert write_length_up(read_length("74 in"), "yd", UNITS["yd"] // 4) == "2 1/4 yd"


def test_rounding_up_stays_on_the_grid_and_no_grid_changes_nothing():
    assert round_up(74 * NM_PER_INCH, UNITS["yd"] // 8) == read_length("2 1/8 yd")
    assert round_up(72 * NM_PER_INCH, UNITS["yd"] // 8) == read_length("2 yd")
    assert round_up(0, 10) == 0
    assert round_up(-15, 10) == -10
    assert round_up(447_675_001, 0) == 447_675_001


def test_rounding_to_the_nearest_takes_a_tie_away_from_zero():
    assert [round_to(nm, 10) for nm in (14, 15, 16, -14, -15, -16, 0)] == [10, 20, 20, -10, -20, -20, 0]
    assert [round_to(nm, 5) for nm in (2, 3, 7, 8)] == [0, 5, 5, 10]


def test_halves_go_to_the_even_nanometre_and_upwards_in_money():
    halves = [Fraction(n, 2) for n in (-3, -1, 1, 3, 5)]
    assert [round_half_even(value) for value in halves] == [-2, 0, 0, 2, 2]
    assert [round_half_up(value) for value in halves] == [-1, 0, 1, 2, 3]
    assert round_half_up(Fraction(1, 3)) == 0
    assert round_half_up(Fraction(2, 3)) == 1


def test_a_mixed_number_has_a_proper_fraction_in_lowest_terms():
    assert mixed_number(Fraction(282, 16)) == (17, Fraction(5, 8))
    assert mixed_number(Fraction(8, 8)) == (1, 0)


def test_every_unit_has_a_grid_for_the_tape_and_one_for_the_counter():
    assert set(TAPE_GRID) == set(COUNTER_GRID) == set(UNITS)
