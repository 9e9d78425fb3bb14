"""What is said at the counter: one piece of one batch, the face looked at first, squared (common practice)."""

from jobs import example

from plumpline import plan


def lines(document, effort="full"):
    return [line["text"] for line in plan(document, effort, tips=True)["cloths"][0]["counter"]]


def test_plain_cloth_is_asked_for_in_one_piece_and_squared_to_the_thread():
    said = lines(example("harbour-room"))
    assert said[0] == "2 yd of plain linen, in one piece, all of one batch, with no joins."
    assert "at least 54 in wide" in said[1]
    assert "face" in said[2]
    assert said[3] == "Square the first cut to the thread, not to the edge of the table."
    assert len(said) == 4


def test_a_print_is_squared_to_itself_and_the_first_cut_falls_where_the_plan_wants_it():
    # 9 in behind the squared end lies the first motif, as the answer says (half of an 18 in panel).
    said = lines(example("printed-panels"))
    assert said[3] == "Square the first cut to the print, not to the edge of the table."
    assert "9 9/32" in said[4] or "9 1/4 in" in said[4]


def test_the_width_it_has_to_measure_is_the_least_that_does_once_that_is_known():
    # Two panels of 18 in a row, each in the middle of a motif 13 1/2 and 40 1/2 in from the edge: 49 1/2 in do.
    assert "at least 49 1/2 in wide" in lines(example("printed-panels"))[1]
    assert "at least 54 in wide" in lines(example("printed-panels"), "quick")[1]
