"""Piping, bias and straight strips, frills: published worked examples, and area only ever as a bound."""

from fractions import Fraction

import pytest

from plumpline.geometry import PI
from plumpline.layout.bias import bias_lengths
from plumpline.materials.frills import FULLNESS, doubled, hemmed
from plumpline.materials.piping import Cord, join_cost, strip_width
from plumpline.materials.strips import bias_cloth, bias_square, least_square, straight_strips

IN = 25_400_000
CM = 10_000_000
MM = 1_000_000


def test_a13_a_cord_of_half_an_inch_round_with_half_inch_seams_takes_a_strip_of_one_and_a_half():
    """A practitioner's text and a magazine's basics page: once round the cord plus an inch."""
    assert strip_width(int(Fraction(IN, 2) / PI), 0, IN // 2, "in") == 3 * IN // 2


# Two slip-cover practitioners publish exactly these widths: cord, seam, strip, in inches.
@pytest.mark.parametrize(
    ("cord", "seam", "strip"),
    [("5/32", "1/2", "3/2"), ("5/32", "3/4", "2"), ("3/16", "1/2", "7/4"), ("1/4", "1/2", "2")],
)
def test_a14_trade_sizes(cord, seam, strip):
    cord, seam, strip = (int(Fraction(text) * IN) for text in (cord, seam, strip))
    assert strip_width(cord, 0, seam, "in") == strip


def test_the_cloth_round_the_cord_widens_the_strip():
    """π · (6 + 0.5) + 2 · 15 = 50.42 mm, up to 55; without the cloth 48.85, up to 50."""
    assert strip_width(6 * MM, MM // 2, 15 * MM, "cm") == 55 * MM
    assert strip_width(6 * MM, 0, 15 * MM, "mm") == 50 * MM


def test_what_a_join_costs():
    """Common practice: a mitred join takes one strip's width, a straight one an inch."""
    assert join_cost(2 * IN, "mitred", "in") == 2 * IN
    assert join_cost(2 * IN, "straight", "in") == IN
    assert join_cost(2 * IN, "straight", "cm") == 25 * MM


def test_a34_two_rings_round_a_seat_of_45_inches_take_94_and_the_spare():
    """A maker cut 45 in and was 1 in short: each ring takes 45 + 2 = 47, two edges 94; 5 % more to buy."""
    cord = Cord(45 * IN, 2 * IN, 2)
    assert cord.each == 47 * IN
    assert cord.length == 94 * IN * 105 // 100
    assert cord.working("in") == "45 in round the edge + 2 in for the join = 47 in; × 2, 5 % more: ≈ 98 11/16 in."
    assert Cord(45 * IN, 2 * IN, 2, spare=Fraction(0)).length == 94 * IN


@pytest.mark.parametrize(
    ("length", "strip", "usable", "join", "count", "along"),
    [
        # Upholsterers' forum: 950 in of 1 1/2 in strip on 54 in cloth, 17.6 or 18 strips, 27 in.
        (950, "3/2", 54, 0, 18, 27),
        # Question-and-answer page: 360 in at 4 1/2 in on 42 in cloth, 9 strips, 40 1/2 in; 10 with mitred joins, 45 in.
        (360, "9/2", 42, 0, 9, "81/2"),
        (360, "9/2", 42, "9/2", 10, 45),
        # The same page: 220 in at 3 in, 18 in.
        (220, 3, 42, 0, 6, 18),
        (20, 3, 42, 3, 1, 3),
    ],
)
def test_straight_strips_are_counted_whole(length, strip, usable, join, count, along):
    length, strip, usable, join, along = (int(Fraction(n) * IN) for n in (length, strip, usable, join, along))
    strips = straight_strips(length, strip, usable, join)
    assert (strips.count, strips.along) == (count, along)
    assert strips.joined >= length
    assert strips.along * usable >= length * strip


def test_the_sentence_about_strips_names_the_joins():
    strips = straight_strips(360 * IN, 9 * IN // 2, 42 * IN, 9 * IN // 2)
    assert strips.working("in") == (
        "10 strips of 4 1/2 in across 42 in, 9 joins taking 4 1/2 in each: 379 1/2 in, from 45 in of cloth."
    )
    one = straight_strips(40 * IN, IN, 42 * IN, IN)
    assert one.working("in") == "1 strip of 1 in across 42 in: 42 in, from 1 in of cloth."
    assert straight_strips(40 * IN, IN, 3 * IN, 3 * IN) is None


def test_a3_cloth_for_joined_bias():
    """NIMI, Dress Making (CITS trade practical), p. 220: 5 m of 2.5 cm strip, shortest piece 10 cm, cloth 86 cm wide:
    15.12 cm (15.116 with √2 exact), bought as 15.5."""
    exact = bias_cloth(500 * CM, 25 * MM, 86 * CM, 10 * CM)
    assert round(Fraction(exact, CM), 3) == Fraction("15.116")
    assert -(-exact // (5 * MM)) * 5 * MM == 155 * MM


def test_a3_strips_as_they_are_really_cut_take_somewhat_more():
    """The same 5 m: the rule is what no cutting betters, and a bench loses the end of every strip besides."""
    longer = range(10 * CM, 20 * CM, MM)
    taken = next(n for n in longer if sum(bias_lengths(86 * CM, n, 25 * MM, 0, 10 * CM)) >= 500 * CM)
    assert bias_cloth(500 * CM, 25 * MM, 86 * CM, 10 * CM) <= taken <= 17 * CM


def test_a4_yield_of_joined_bias():
    """The same page: 96 × 20 cm, 2 cm strip, shortest piece 10 cm: 934.79 cm with 1.4 for √2; exactly 935."""
    assert bias_cloth(935 * CM, 2 * CM, 96 * CM, 10 * CM) == 20 * CM
    assert abs(Fraction("934.79") / 935 - 1) < Fraction("0.0003")
    real = sum(bias_lengths(96 * CM, 20 * CM, 2 * CM, 0, 10 * CM))
    assert Fraction("0.97") * 935 * CM < real <= 935 * CM


@pytest.mark.parametrize(("side", "strip", "most"), [(12, 2, 72), (20, 2, 200), (36, 2, 648)])
def test_a15_a_square_never_gives_more_bias_than_its_area(side, strip, most):
    """Quilting and soft-furnishing pages: side² ÷ strip, an upper bound and no answer; real strips give less."""
    assert Fraction(side * side, strip) == most
    real = bias_lengths(side * IN, side * IN, strip * IN, 0)
    assert most * IN // 2 < sum(real) < most * IN


@pytest.mark.parametrize(("length", "strip", "least"), [(250, 2, 23), (100, Fraction(7, 2), 19)])
def test_a16_a_square_below_the_root_of_its_area_is_never_enough(length, strip, least):
    """Practitioners' pages: √(length · strip), 22.36 → at least 23 in; 18.71 → at least 19. Real squares are larger."""
    bound = least_square(length * IN, int(strip * IN))
    assert -(-bound // IN) == least
    real = bias_square(length * IN, int(strip * IN), 0, IN)
    assert real.side >= least * IN
    assert real.joined >= length * IN


def test_a_54_inch_square_gives_about_38_yards_of_2_inch_bias_as_a_bench_gets_it():
    """A practitioner: "about 38 yd" against 40.5 by area (94 %)."""
    square = bias_square(38 * 36 * IN, 2 * IN, 0, IN)
    assert 54 * IN <= square.side <= 55 * IN
    assert Fraction(54 * 54, 2) == Fraction("40.5") * 36


def test_the_square_found_is_the_least_on_its_grid():
    square = bias_square(250 * IN, 2 * IN, 2 * IN, IN)
    smaller = bias_lengths(square.side - IN, square.side - IN, 2 * IN, 2 * IN)
    assert sum(smaller) - (len(smaller) - 1) * 2 * IN < 250 * IN
    assert square.joins == len(square.strips) - 1
    words = square.working(2 * IN, "in")
    assert words.startswith("A square of 26 in, cut every ≈ 2 13/16 in along its edge:")
    assert "joins taking 2 in each" in words


def test_frills_are_cut_by_their_fullness():
    """NIMI p. 210: drawn up to a half or a third; The New Dressmaker (1921): soft cloth 3, firmer 2, side pleats 3."""
    assert FULLNESS == {"gathered": 2, "gathered-soft": 3, "pleated": 3}
    frill = doubled(72 * IN, FULLNESS["gathered"], 3 * IN, IN // 2)
    assert (frill.length, frill.width) == (145 * IN, 7 * IN)
    assert frill.working("in") == "72 in of edge × 2 + 2 seams of 1/2 in = 145 in of strip, 7 in wide."
    assert hemmed(72 * IN, FULLNESS["pleated"], 3 * IN, IN // 2, IN).width == 9 * IN // 2
