"""Filling: the trade's rule by weight, and the published geometry of a filled shape behind it."""

from fractions import Fraction

import pytest

from plumpline.cushions.filling import (
    NG_PER_GRAM,
    NG_PER_OUNCE,
    filled_rectangle,
    filled_round,
    geometry_lines,
    is_bed_pillow,
    volume_text,
    weight_of_filling,
    weight_of_round_filling,
    weight_text,
)
from plumpline.geometry import PI, power_of_ten, root

IN = 25_400_000
CM = 10_000_000
CUBIC_INCH = Fraction(254, 10) ** 3  # mm³


@pytest.mark.parametrize(("side", "ounces"), [(18, "16.2"), (20, "20"), (22, "24.2"), (24, "28.8")])
def test_a_square_insert_takes_five_per_cent_of_its_square_inches_in_ounces(side, ounces):
    """A US pillow workroom's rule (common practice): ounces = length × width × 5 %."""
    assert weight_of_filling(side * IN, side * IN) == Fraction(ounces) * NG_PER_OUNCE


def test_the_rule_is_0_2197_grams_for_each_square_centimetre():
    """0.05 oz a square inch, 28.349523125 g an ounce."""
    assert round(Fraction(weight_of_filling(CM, CM), NG_PER_GRAM), 4) == Fraction("0.2197")


def test_a_14_inch_cushion_takes_what_a_home_sewing_text_says():
    """Home-sewing text (common practice): 8 to 12 oz of polyester."""
    assert 8 * NG_PER_OUNCE < weight_of_filling(14 * IN, 14 * IN) < 12 * NG_PER_OUNCE


def test_a_round_takes_the_same_for_each_square_inch():
    square = weight_of_filling(18 * IN, 18 * IN)
    assert abs(weight_of_round_filling(18 * IN) - square * PI / 4) <= 1


def test_a_bed_pillow_is_no_decorative_insert():
    """By the rule 20 × 26 in would take 26 oz, where tables for bed pillows say 16 to 20."""
    assert weight_of_filling(20 * IN, 26 * IN) == 26 * NG_PER_OUNCE
    assert is_bed_pillow(26 * IN, 20 * IN)
    assert not is_bed_pillow(20 * IN, 20 * IN)
    assert not is_bed_pillow(14 * IN, 36 * IN)


def test_weights_are_shown_in_both_systems_the_makers_own_first():
    """20 oz = 566.99 g; 24.2 oz = 686.06 g."""
    assert weight_text(20 * NG_PER_OUNCE, "in") == "20 oz (567 g)"
    assert weight_text(round(Fraction("24.2") * NG_PER_OUNCE), "cm") == "686 g (24.2 oz)"


def test_powers_of_ten_are_exact_where_they_are_whole_and_agree_with_roots_elsewhere():
    assert power_of_ten(Fraction(3)) == 1000
    assert power_of_ten(Fraction(-2)) == Fraction(1, 100)
    for power in (Fraction(1, 2), Fraction(-5, 2), Fraction(3, 2)):
        by_root = Fraction(root(Fraction(10) ** int(2 * power) * 10**60), 10**30)
        assert abs(power_of_ten(power) - by_root) < Fraction(1, 10**29)
    third = power_of_ten(Fraction(1, 3))
    assert abs(third**3 - 10) < Fraction(1, 10**30)


# A. C. Robin, "Paper Bag Problem", Mathematics Today (IMA), June 2004, 104–107, evaluated in double precision.
@pytest.mark.parametrize(
    ("width", "length", "cubic_inches"),
    [(18, 18, "1111.05"), (20, 20, "1524.08"), (12, 20, "676.643"), (22, 14, "993.357")],
)
def test_a_rectangle_holds_what_robins_formula_says(width, length, cubic_inches):
    volume = filled_rectangle(width * IN, length * IN).volume
    assert float(volume / CUBIC_INCH) == pytest.approx(float(cubic_inches), rel=1e-5)


@pytest.mark.parametrize(("width", "length", "litres"), [(45, 45, 17.360), (50, 50, 23.814), (30, 50, 10.573)])
def test_metric_rectangles_in_litres(width, length, litres):
    assert filled_rectangle(width * CM, length * CM).volume / 1e6 == pytest.approx(litres, abs=5e-4)


@pytest.mark.parametrize(("ratio", "share"), [(1, 0.19051), (2, 0.496040), (3, 0.813072)])
def test_robins_formula_for_sides_of_1_to_1_2_and_3(ratio, share):
    one = 1000 * 1_000_000  # 1 m, so 10^9 mm³ a cubic metre
    assert filled_rectangle(one, ratio * one).volume / 1e9 == pytest.approx(share, abs=1e-5)


def test_a_square_has_both_figures_and_robins_is_the_smaller_by_seven_per_cent():
    """An 18 in square: Robin 1111.05, Kepert 1198.48 to 1265.54 cubic inches."""
    filled = filled_rectangle(18 * IN, 18 * IN)
    low, high = (float(volume / CUBIC_INCH) for volume in filled.between)
    assert (low, high) == (pytest.approx(1198.48, abs=0.01), pytest.approx(1265.54, abs=0.01))
    assert round(1 - filled.volume / filled.between[0], 2) == 0.07
    assert filled_rectangle(18 * IN, 19 * IN).between is None


# W. H. Paulsen, Amer. Math. Monthly 101 (1994) 953–958, with the constants to ten figures.
@pytest.mark.parametrize(
    ("flat", "thickness", "volume"), [(16, 7.3111, 623.884), (18, 8.2250, 888.304), (20, 9.1389, 1218.524)]
)
def test_a_round_of_two_flat_discs(flat, thickness, volume):
    filled = filled_round(flat * IN)
    assert filled.thickness / IN == pytest.approx(thickness, abs=6e-5)
    assert float(filled.volume / CUBIC_INCH) == pytest.approx(volume, abs=6e-4)


def test_an_18_inch_round_stands_13_73_inches_wide():
    assert filled_round(18 * IN).diameter / IN == pytest.approx(13.7297, abs=5e-5)


def test_a_45_centimetre_round():
    filled = filled_round(45 * CM)
    assert filled.diameter / CM == pytest.approx(34.324, abs=5e-4)
    assert filled.thickness / CM == pytest.approx(20.563, abs=5e-4)
    assert filled.volume / 1000 == pytest.approx(13_879.75, abs=5e-3)


def test_paulsens_ratios_to_the_filled_radius():
    """Thickness 1.1981402 r, volume 2.7458122 r³, flat radius 1.3110288 r."""
    filled = filled_round(2 * 1_000_000_000)
    r = filled.diameter / 2
    assert 1_000_000_000 / r == pytest.approx(1.3110288, abs=5e-8)
    assert filled.thickness / r == pytest.approx(1.1981402, abs=5e-8)
    assert filled.volume * 1e18 / r**3 == pytest.approx(2.7458122, abs=5e-8)


def test_paulsens_ratios_to_the_flat_size():
    """Derived from the same constants: diameter × 0.762760, thickness 0.456947 × the flat diameter, 1.218524 a³."""
    flat = 2 * 1_000_000_000
    filled = filled_round(flat)
    assert filled.diameter / flat == pytest.approx(0.762760, abs=5e-7)
    assert filled.thickness / flat == pytest.approx(0.456947, abs=5e-7)
    assert filled.volume / 1e9 == pytest.approx(1.218524, abs=5e-7)


def test_the_constant_of_the_balloon_is_half_of_pi_over_the_mean_of_gauss():
    """The lemniscate constant is π ÷ M(1, √2), M the arithmetic-geometric mean (Gauss, 1799)."""
    scale = 10**40
    a, b = scale, root(2 * scale * scale)
    while abs(a - b) > 1:
        a, b = (a + b) // 2, root(a * b)
    flat = 10**12
    filled = filled_round(2 * flat)
    assert abs(Fraction(2 * flat, filled.diameter) - PI * scale / (2 * a)) < Fraction(1, 10**11)


def test_the_maker_who_asks_is_told_both_figures_their_sources_and_their_limits():
    square = " ".join(geometry_lines(filled_rectangle(18 * IN, 18 * IN), "in"))
    assert "1111 cu in (18.2 L) (Robin 2004)" in square
    assert "1198 cu in (19.6 L) to 1266 cu in (20.7 L) (Kepert)" in square
    assert "a real cushion holds less" in square
    oblong = " ".join(geometry_lines(filled_rectangle(30 * CM, 50 * CM), "cm"))
    assert "10.6 L (645 cu in)" in oblong
    assert "Kepert" not in oblong
    assert "Paulsen 1994" in " ".join(geometry_lines(filled_round(45 * CM), "cm"))


def test_volumes_are_shown_in_both_systems():
    assert volume_text(18_207_000, "cm") == "18.2 L (1111 cu in)"
