"""Units held against what they are by definition, and against an independent library of units."""

from fractions import Fraction

import pytest

from plumpline.lengths import NM_PER_INCH, UNITS, read_length, write_length


def test_the_inch_and_the_yard_are_those_of_1959():
    """1 yd = 0.9144 m and 1 in = 25.4 mm exactly: US National Bureau of Standards, addendum to Circular 572."""
    assert read_length("1 in") == NM_PER_INCH == read_length("25.4 mm")
    assert read_length("1 yd") == read_length("0.9144 m")
    assert read_length("1 yd") == read_length("3 ft") == read_length("36 in")


@pytest.mark.parametrize(
    ("imperial", "metric"),
    [
        ("1/16 in", "1.5875 mm"),
        ("54 in", "137.16 cm"),
        ("45 in", "114.30 cm"),
        ("60 in", "152.40 cm"),
        ("118 in", "299.72 cm"),
        ("1/8 yd", "11.43 cm"),
        ("1/8 yd", "4.5 in"),
        ("1/16 yd", "2 1/4 in"),
    ],
)
def test_tape_and_cloth_widths_are_exact_in_both_systems(imperial, metric):
    """Derived from the 1959 inch; 1/16 yd is the old nail of the cloth yard."""
    assert read_length(imperial) == read_length(metric)


def test_a_sixty_fourth_and_a_micrometre_are_whole_nanometres():
    assert read_length("1/64 in") * 64 == NM_PER_INCH
    assert read_length("0.001 mm") * 1000 == UNITS["mm"]


def test_forty_five_centimetres_are_not_eighteen_inches():
    """A 45 cm insert is 17.72 in (derived): it is not to be sold as an 18 in one."""
    assert write_length(read_length("45 cm"), "in") == "≈ 17 11/16 in"
    assert write_length(read_length("18 in"), "cm") == "45.72 cm"


@pytest.mark.parametrize("typed", ["4 in", "17 5/8 in", "17.6 in", "45.5 cm", "1/3 yd", "5 ft 3 in", "0,1 mm"])
def test_twenty_switches_between_inches_and_centimetres_change_nothing(typed):
    """Fault B14: the text stays as typed; what is shown is always written anew from it."""
    first = {unit: write_length(read_length(typed), unit) for unit in ("in", "cm")}
    stored, nm = typed, read_length(typed)
    for switch in range(20):
        unit = ("cm", "in")[switch % 2]
        shown = write_length(read_length(stored), unit)
        assert shown == first[unit]
        if not shown.startswith("≈"):
            stored = shown
        assert read_length(stored) == nm


@pytest.mark.reference
@pytest.mark.parametrize(
    ("unit", "name"),
    [("mm", "millimeter"), ("cm", "centimeter"), ("m", "meter"), ("in", "inch"), ("ft", "foot"), ("yd", "yard")],
)
def test_an_independent_library_of_units_agrees(unit, name):
    """pint, reckoning in fractions: 1, 17 5/8 and 0.01 of each unit in nanometres."""
    import pint

    registry = pint.UnitRegistry(non_int_type=Fraction)
    for text, value in (("1", Fraction(1)), ("17 5/8", Fraction(141, 8)), ("0.01", Fraction(1, 100))):
        theirs = registry.Quantity(value, name).to("nanometer").magnitude
        assert read_length(text, unit) == theirs
