"""Zips bought either way, and interfacing in rows."""

from plumpline.materials.interfacing import interfacing
from plumpline.materials.zips import STOCKED, chain, ready_made

IN = 25_400_000
CM = 10_000_000


def test_chain_is_bought_with_its_ends_and_a_slider_for_each_zip():
    """Common practice: an inch beyond the opening for both ends together."""
    zips = chain([16 * IN] * 6 + [20 * IN], "in")
    assert (zips.length, zips.sliders) == (6 * 17 * IN + 21 * IN, 7)
    assert zips.working("in") == "Chain 6 × 17 in and 1 × 21 in, 1 in of each for its ends: 123 in; 7 sliders."
    assert chain([40 * CM], "cm").length == 425 * CM // 10


def test_a_ready_made_zip_is_the_next_length_up_and_is_shortened():
    zips = ready_made([16 * IN, 17 * IN, 17 * IN, 40 * IN], STOCKED["in"])
    assert dict(zips.to_buy) == {16 * IN: 1, 18 * IN: 2}
    assert zips.of_chain == (40 * IN,)
    assert zips.working("in") == (
        "1 zip of 16 in. 2 zips of 18 in, shortened to 17 in. "
        "1 zip to open 40 in: no stock length is as long, use chain."
    )


def test_interfacing_lies_in_whole_rows_and_never_by_area():
    """Six panels of 40 × 45 cm on 90 cm: two across, three rows of 45 cm, or turned two across, three of 40."""
    bought = interfacing([(40 * CM, 45 * CM, 6)])
    assert bought.length == 120 * CM
    assert bought.length * 90 * CM >= 6 * 40 * 45 * CM * CM
    assert bought.working("cm") == "90 cm wide: 6 of 45 × 40 cm, 2 across, 3 rows: 120 cm."
    assert interfacing([(95 * CM, 40 * CM, 1)]).length == 95 * CM
    assert interfacing([(95 * CM, 92 * CM, 1)]) is None
