"""Thread, needles and stitches against textile teaching pages and makers' tables."""

from fractions import Fraction
from itertools import pairwise

import pytest

from plumpline.materials.sewing import (
    NM_OF_US,
    SEWING,
    cotton_ticket,
    needle_text,
    stitch_text,
    stitches_per_inch,
    thread_text,
    ticket,
)
from plumpline.materials.thread import Lockstitched, Overlocked, Thread, lockstitch_ratio

IN = 25_400_000
MM = 1_000_000
CM = 10 * MM
METRE = 1000 * MM


def test_a_lockstitch_of_ten_to_the_inch_through_a_hundredth_takes_2_2_inches_an_inch():
    """C = 2 + 2·T·S (textile teaching pages, e.g. Pabna Textile Engineering College, 2015): T 0.01 in, S 10."""
    assert lockstitch_ratio(IN // 100, IN // 10) == Fraction("2.2")


@pytest.mark.parametrize(("thickness", "ratio"), [(75, "2.5"), (150, "3"), (200, "3.33")])
def test_the_formula_in_metric_with_a_stitch_of_3_mm(thickness, ratio):
    """2 + 2T/L, derived from the same formula: 0.75 mm gives 2.50, 1.5 mm 3.00, 2 mm 3.33."""
    assert round(lockstitch_ratio(thickness * MM // 100, 3 * MM), 2) == Fraction(ratio)


def test_a_seam_of_220_cm_takes_550_cm_half_of_it_on_the_bobbin():
    """A thread maker's table as repeated on teaching sites: 2.5 for type 301, 275 cm needle and 275 cm bobbin."""
    thread = Thread((Lockstitched(220 * CM, 0),), 3 * MM, waste=Fraction(0))
    assert (thread.length, thread.bobbin) == (550 * CM, 275 * CM)


def test_the_larger_of_formula_and_table_is_bought():
    """They agree only for layers of 0.75 mm together; a piped furnishing seam takes about 3.3."""
    assert Lockstitched(CM, 2 * MM).ratio(3 * MM) == Fraction(10, 3)
    assert Lockstitched(CM, MM // 2).ratio(3 * MM) == Fraction(5, 2)


def test_fifteen_per_cent_for_waste_turn_540_into_621():
    """Worked example of a teaching page: 540 cm + 15 % = 621 cm."""
    assert Thread((Lockstitched(216 * CM, 0),), 3 * MM).length == 621 * CM


def test_an_overlocked_edge_takes_at_least_what_teaching_pages_say():
    """C = 3 + 4WS + 4TS on two pages, 5 + 4S(W + T) on a third: here W 5 mm, T 1 mm, 2.5 mm stitches."""
    taken = Overlocked(METRE, MM).ratio(5 * MM // 2)
    assert taken == 5 + 4 * Fraction(6, 1) / Fraction(5, 2)
    assert taken > 3 + Fraction(4 * 6 * 2, 5)


def test_spools_are_whole_and_the_sentence_leads_to_them():
    thread = Thread((Lockstitched(24 * METRE, 3 * MM // 2), Overlocked(10 * METRE, MM)), 3 * MM)
    # (24 · 3 + 10 · 13) · 1.15 = 232.3 m
    assert thread.length == 232_300 * MM
    assert thread.spools == 3
    assert thread.bobbin == 36 * METRE
    assert thread.working("cm") == (
        "24 m of seam × 3 and 10 m of overlocked edge × 13; 15 % more for ends and waste: 233 m, 3 spools of 100 m."
    )
    assert "233 m (255 yd), 3 spools" in thread.working("in")


def test_one_spool_is_no_spools():
    assert Thread((Lockstitched(METRE, 0),), 3 * MM).working("cm").endswith("3 m, 1 spool of 100 m.")


def test_needles_follow_the_printed_pairs_where_no_rule_does():
    """Nm = 60 + 5 · (US − 8) holds from 8 to 12 and 16 to 18 of these pairs and fails at 19, which is 120."""
    by_rule = {us: 60 + 5 * (us - 8) for us in NM_OF_US}
    assert [us for us in NM_OF_US if NM_OF_US[us] != by_rule[us]] == [19]
    assert NM_OF_US[19] == 120
    assert needle_text(14) == "Nm 90 (US 14)"


@pytest.mark.parametrize(("mm", "to_the_inch"), [("3", "8.47"), ("2.5", "10.16"), ("2", "12.7"), ("4", "6.35")])
def test_stitches_to_the_inch(mm, to_the_inch):
    """25.4 ÷ mm."""
    assert round(stitches_per_inch(int(Fraction(mm) * MM)), 2) == Fraction(to_the_inch)


def test_a_stitch_is_shown_both_ways():
    assert stitch_text(3 * MM) == "3 mm, 8.5 to the inch"


def test_sheer_and_medium_cloth_are_sewn_as_an_extension_circular_has_it():
    """Illinois Extension, drapery circular: sheer 12 to 15 stitches to the inch; needle 14 for mercerized thread."""
    assert 12 <= stitches_per_inch(SEWING["sheer"].stitch) <= 15
    assert (SEWING["medium"].needle, SEWING["medium"].stitch) == (14, 3 * MM)


def test_heavier_cloth_never_gets_a_finer_needle_or_a_shorter_stitch():
    ways = list(SEWING.values())
    for lighter, heavier in pairwise(ways):
        assert lighter.needle < heavier.needle
        assert lighter.tex <= heavier.tex
        assert lighter.stitch < heavier.stitch
        assert lighter.thickness < heavier.thickness


def test_thread_numbers():
    """Ticket = 3000 ÷ Tex: Tex 40 is 75, ticket 120 is Tex 25; two plies of Nm 80 are Tex 2 · 1000/80 = 25. Cotton:
    590.54 · 3 ÷ Tex (teaching pages, three of them)."""
    assert (ticket(40), ticket(25), ticket(Fraction(2 * 1000, 80))) == (75, 120, 120)
    assert cotton_ticket(40) == 44
    assert thread_text(40) == "Tex 40 (ticket 75, cotton ticket 44)"
