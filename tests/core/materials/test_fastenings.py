"""Buttons and ties along an edge."""

from plumpline.materials.fastenings import buttons, ties

IN = 25_400_000
CM = 10_000_000


def test_buttons_are_never_further_apart_than_usual():
    """Common practice: 4 in or 10 cm."""
    for edge in range(1, 40):
        count = buttons(edge * IN, "in").count
        assert count >= 1
        assert count == 1 or edge * IN <= 4 * IN * (count + 1)
        assert count == 1 or edge * IN > 4 * IN * count
    assert buttons(45 * CM, "cm").count == 4


def test_a_short_edge_has_one_pair_of_ties_of_25_cm():
    """Common practice."""
    tied = ties(12 * CM, 2, "cm")
    assert (tied.count, tied.length) == (4, 100 * CM)
    assert tied.working("cm") == (
        "1 pair: 1 on an edge of 12 cm, 6 cm from one to the next and to the ends; 4 ties of 25 cm: 100 cm."
    )
