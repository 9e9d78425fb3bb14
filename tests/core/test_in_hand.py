"""A piece in hand: is it enough, what does it make, and what would do. Worked by hand, and against brute force.

The questions are those that makers ask in public; the arithmetic stands beside each.
"""

from __future__ import annotations

from itertools import combinations
from random import Random

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import plan
from plumpline.lengths import read_length, write_length

IN = 25_400_000


def piece_of(document, effort="full"):
    """The answer's piece of the first cloth, checked."""
    answer = plan(document, effort)
    check(document, answer)
    return answer["cloths"][0]["piece"]


def squares(quantity, pad, width="54 in", seam="1/2 in", **piece):
    """So many square covers, as large as their pads, from a cloth so wide used edge to edge, and a piece of it."""
    return job(covers(quantity, pad, pad, seam=seam), cloth(width, piece=piece))


def inches(figure):
    return figure["nm"] / IN


def words(piece):
    return [way["text"] for way in piece["ways_out"]]


def notice(document, code):
    return next(notice for notice in plan(document)["notices"] if notice["code"] == code)


# ---- worked by hand ----------------------------------------------------------------------------------------


def test_four_velvets_do_not_come_out_of_150_cm_of_54_in_cloth():
    # 18 1/2 in panels, two across 54 in: 4 rows, 74 in = 187.96 cm; 37.96 cm too short. Three rows (55 1/2 in) fit.
    piece = piece_of(squares(4, "18 in", seam="1/4 in", length="150 cm"))
    assert (piece["enough"], piece["spare"], piece["makes"], piece["proven"]) == (False, None, {"c1": 3}, True)
    assert piece["short_by"]["nm"] == 379_600_000
    assert piece["laid"]["text"] == "55 1/2 in"
    assert piece["makes_text"] == "It makes 3 of the 4 covers."


def test_on_cloth_that_takes_three_across_150_cm_are_enough_for_them():
    piece = piece_of(squares(4, "18 in", width="55 1/2 in", seam="1/4 in", length="150 cm"))
    assert (piece["enough"], piece["short_by"], piece["makes"]) == (True, None, {"c1": 4})
    assert piece["spare"]["nm"] == 1_500_000_000 - 55.5 * IN


def test_a_velvet_of_140_cm_is_too_narrow_for_three_across():
    assert piece_of(squares(4, "18 in", width="140 cm", seam="1/4 in", length="150 cm"))["makes"] == {"c1": 3}


def test_the_largest_pad_that_a_leftover_takes_is_told_exactly():
    # 21 in panels, two across: 3 rows in 68 in, three covers of six. 12 panels in 68 in: three across 54 in make 18 in
    # panels, 4 rows of 17 in; a pad of 16 1/8 in (17 1/8) would take 68 1/2 in.
    piece = piece_of(squares(6, "20 in", left="68 in", right="68 in"))
    assert (piece["makes"], piece["short_by"]["text"]) == ({"c1": 3}, "58 in")
    assert "The largest pad this piece takes is 16 in" in words(piece)
    taken = piece_of(squares(6, "16 in", left="68 in", right="68 in"))
    assert (taken["enough"], taken["spare"]["nm"]) == (True, 0)
    assert not piece_of(squares(6, "16 1/8 in", left="68 in", right="68 in"))["enough"]


def test_a_yard_and_a_half_with_a_slope_of_two_inches_is_52_inches():
    # Three rows of 18 in are 54 in; the shorter edge has 52.
    for measured in (
        {"left": "1 1/2 yd", "right": "52 in"},
        {"left": "52 in", "right": "54 in"},
        {"left": "54 in", "slant": {"end": "-2 in"}},
        {"right": "54 in", "slant": {"end": "2 in"}},
        {"length": "1 1/2 yd", "slant": {"start": "2 in"}},
        {"length": "54 in", "slant": {"end": "2 in"}},
        {"left": "54 in", "right": "52 in", "slant": {"start": "0 in", "end": "-2 in"}},
        {"left": "54 in", "right": "52 in", "slant": {"start": "2 in"}},
        {"left": "54 in", "right": "52 in", "slant": {"end": "-2 in"}},
    ):
        piece = piece_of(squares(3, "17 in", width="36 in", **measured), "quick")
        assert piece["length"]["text"] == "52 in", measured
        assert (piece["enough"], piece["short_by"]["text"], piece["makes"]) == (False, "2 in", {"c1": 2})


def test_both_ends_out_of_square_the_same_way_leave_less_than_either_edge():
    # A parallelogram: edges of 54 in, both ends 3 in further along at the right. From 3 to 54 is 51 in.
    sheared = {"left": "54 in", "right": "54 in", "slant": {"start": "3 in", "end": "3 in"}}
    assert piece_of(squares(1, "17 in", **sheared))["length"]["text"] == "51 in"


def test_readings_that_differ_by_what_a_tape_errs_count_as_the_shorter():
    # 54 - 2 - 0 = 52, but 51 3/4 was read: the left edge is taken to be 53 3/4.
    near = {"left": "54 in", "right": "51 3/4 in", "slant": {"start": "0 in", "end": "-2 in"}}
    assert piece_of(squares(1, "17 in", **near))["length"]["text"] == "51 3/4 in"


def test_four_yards_leave_nothing_to_square_two_lengths_of_72_inches():
    # 2 x 72 = 144 in = 4 yd.
    whole = job(covers(1, "53 in", "71 in"), cloth("54 in", piece={"length": "4 yd"}))
    piece = piece_of(whole)
    assert (piece["enough"], piece["spare"]["nm"], piece["text"]) == (
        True,
        0,
        "Yes, to the last thread: nothing is left.",
    )
    squared = changed(whole, "/cloths/0/squaring", "1 in")
    piece = piece_of(squared)
    assert (piece["enough"], piece["short_by"]["text"], piece["makes"]) == (False, "1 in", {"c1": 1 - 1})
    assert piece_of(changed(squared, "/cloths/0/piece/length", "4 1/8 yd"))["spare"]["text"] == "3 1/2 in"


def test_a_quarter_of_a_yard_makes_no_cushion():
    # 9 in of length for a panel of 19 in; 5/8 yd = 22 1/2 in holds two side by side on 54 in.
    piece = piece_of(squares(1, "18 in", length="1/4 yd"))
    assert (piece["makes"], piece["makes_text"]) == ({"c1": 0}, "It makes not one complete cover.")
    assert piece_of(squares(1, "18 in", length="5/8 yd"))["spare"]["text"] == "3 1/2 in"


def test_the_piece_has_its_own_width():
    # Ticket 45, measured 43, and the job needs 45: three panels of 15 in lie across 45 in, two across 43.
    ticket = job(covers(3, "14 in", "14 in"), cloth("45 in", piece={"length": "30 in"}))
    assert piece_of(ticket)["enough"]
    piece = piece_of(changed(ticket, "/cloths/0/piece/width", "43 in"))
    assert (piece["usable_width"]["text"], piece["makes"], piece["short_by"]["text"]) == ("43 in", {"c1": 2}, "15 in")


def test_a_corner_cut_out_square_takes_two_panels_and_on_the_slant_one():
    # Covers of one 18 in panel each (the back from another cloth) on 54 x 40 in, 3 across, 2 rows of 36 in.
    # At the far right corner 20 x 20 in are gone: x from 34, y from 20 on. Of the second row (y 18 to 36) only the
    # panel from 0 to 18 is clear. Cut on the slant, the corner is where x + y > 74: 36 + 36 = 72 is clear of it,
    # 54 + 36 is not. Five panels.
    half = covers(6, "17 in", "17 in")
    half["cover"]["back"]["cloth"] = "k2"
    for cut, makes in (("square", 4), ("slanting", 5)):
        corner = {"corner": "end-right", "cut": cut, "width": "20 in", "length": "20 in"}
        made_of = cloth("54 in", piece={"length": "40 in", "flaws": [corner]})
        piece = piece_of(job(half, [made_of, cloth("54 in", id="k2")]))
        assert piece["makes"] == {"c1": makes}, cut


@pytest.mark.parametrize("corner", ["start-left", "start-right", "end-left", "end-right"])
@pytest.mark.parametrize("cut", ["square", "slanting"])
def test_any_corner_may_be_cut_out(corner, cut):
    # One row of 18 in panels fits 54 x 20 in; a corner of 19 x 19 in leaves two of three, on whichever side.
    flaw = {"corner": corner, "cut": cut, "width": "19 in", "length": "19 in"}
    half = covers(3, "17 in", "17 in")
    half["cover"]["back"]["cloth"] = "k2"
    made_of = cloth("54 in", selvedge="0 in", piece={"length": "20 in", "flaws": [flaw]})
    assert piece_of(job(half, [made_of, cloth("54 in", id="k2")]))["makes"] == {"c1": 1 if cut == "square" else 2}


def test_a_crease_down_the_whole_piece_is_kept_clear_of():
    # 54 in with a crease from 26 to 27: 26 in and 27 in are left beside it, one panel of 18 in each.
    crease = {"across": "26 in", "along": "0 in", "width": "1 in", "length": "all"}
    piece = piece_of(squares(2, "17 in", length="36 in", flaws=[crease]))
    assert (piece["enough"], piece["spare"]["nm"]) == (True, 0)
    piece = piece_of(squares(3, "17 in", length="36 in", flaws=[crease]))
    assert (piece["makes"], piece["short_by"]["text"]) == ({"c1": 2}, "18 in")
    side = {"corner": "start-left", "width": "19 in", "length": "all"}
    assert piece_of(squares(2, "17 in", length="36 in", flaws=[side]))["makes"] == {"c1": 1}


def test_a_longer_piece_would_have_its_corner_further_along():
    # 2 across 36 in, 3 rows of 18 = 54 in; with the far left corner (10 x 10 in) gone the rows end at 44, or there is
    # room behind them: 64 in. The piece has 50: 14 in too short.
    corner = {"corner": "end-left", "width": "10 in", "length": "10 in"}
    piece = piece_of(squares(3, "17 in", width="36 in", length="50 in", flaws=[corner]))
    assert (piece["makes"], piece["short_by"]["text"]) == ({"c1": 2}, "14 in")
    assert piece_of(squares(3, "17 in", width="36 in", length="64 in", flaws=[corner]))["enough"]


def test_a_wash_to_come_takes_from_the_piece_before_it_is_squared():
    # 100 in x 0.96 = 96 in, less 2 in: 94 in. The piece's flaw shrinks with it; 50 in x 0.98 = 49 in are usable.
    washed = cloth("50 in", squaring="2 in", shrinkage={"across": "0.02", "along": "0.04"}, wash="before-cutting")
    place = {"across": "20 in", "along": "50 in", "width": "1 in", "length": "10 in"}
    piece = piece_of(job(covers(3, "17 in", "17 in"), washed | {"piece": {"length": "100 in", "flaws": [place]}}))
    assert (piece["usable_length"]["text"], piece["usable_width"]["text"]) == ("94 in", "49 in")
    assert piece["flaws"] == [
        {"x": round(19.6 * IN), "y": 48 * IN, "width": round(0.98 * IN), "length": round(9.6 * IN)}
    ]


def nm_text(nm):
    return write_length(nm, "mm", 1)


@pytest.mark.parametrize("name", ["harbour-room", "printed-panels", "garden-rounds", "parlour-bench"])
def test_a_piece_exactly_as_long_as_is_needed_is_enough_with_nothing_to_spare(name):
    # Where the pattern begins can be chosen at the shop, but not on a piece: there it is unknown.
    document = changed(example(name), "/cloths/0/start", "unknown")
    for effort in ("quick", "full"):
        needed = plan(document, effort)["cloths"][0]["needed"]["nm"]
        exact = changed(document, "/cloths/0/piece", {"length": nm_text(needed)})
        piece = piece_of(exact, effort)
        assert (piece["enough"], piece["spare"]["nm"]) == (True, 0)


def test_the_purchase_never_looks_at_the_piece():
    bare = squares(4, "18 in", length="20 in")
    del bare["cloths"][0]["piece"]
    with_piece = plan(squares(4, "18 in", length="20 in"))
    assert with_piece["cloths"][0].pop("piece")
    assert with_piece == plan(bare)
    wrong = plan(squares(4, "18 in", left="54 in", right="2 yd", slant={"start": "0 in", "end": "0 in"}))
    assert wrong["notices"].pop(0)["code"] == "edges-disagree"
    assert wrong == plan(bare)


# ---- the pattern -------------------------------------------------------------------------------------------


def birds(piece, quantity=1):
    """Centred 16 in panels on a repeat of 18 x 20 in; the motif is 9 in from the left edge."""
    printed = cloth(
        "36 in",
        start="choose",
        repeat={"across": "18 in", "along": "20 in", "drop": "0 in"},
        motifs=[
            {"id": "m1", "across": "9 in", "along": "3 in"},
            {"id": "m2", "across": "9 in", "along": "13 in"},
        ],
    )
    centred = covers(quantity, "15 in", "15 in", pattern="centred", motif="m1")
    return job(centred, printed | {"piece": piece})


def test_where_the_pattern_stands_on_the_piece_decides_what_it_makes():
    # The first motif 8 in from the cut end is the middle of a panel from 0 to 16; at 7 in the first that can be used is
    # the next, at 27 in: its panel ends at 35.
    assert piece_of(birds({"length": "16 in", "motif_along": "8 in"}))["spare"]["nm"] == 0
    piece = piece_of(birds({"length": "34 in", "motif_along": "7 in"}))
    assert (piece["enough"], piece["short_by"]["text"]) == (False, "1 in")
    assert piece["start"] is None
    # The other motif of the pattern goes with the first: 10 in further on, 18 in, at the middle of 10 to 26.
    other = changed(birds({"length": "26 in", "motif_along": "8 in"}), "/cushions/0/cover/front/motif", "m2")
    assert piece_of(changed(other, "/cushions/0/cover/back/motif", "m2"))["spare"]["nm"] == 0


def test_a_pattern_of_which_nobody_knows_where_it_stands_is_planned_for_the_worst():
    # One row of 16 in, and up to a whole repeat of 20 in before it: 36 in.
    piece = piece_of(birds({"length": "36 in"}))
    assert (piece["enough"], piece["spare"]["nm"]) == (True, 0)
    assert any("up to 20 in may go" in line["text"] for line in piece["working"])
    piece = piece_of(birds({"length": "35 in"}))
    assert (piece["enough"], piece["short_by"]["text"], piece["proven"]) == (False, "1 in", True)


def test_flaws_beside_a_pattern_that_may_stand_anywhere_are_kept_clear_of_wherever_it_stands():
    # A hole across half the piece at 16 to 17 in: wherever the row begins (0 to 20 in), panels on the left half may
    # meet it, so both panels need rows on the right half alone: 16 in, then 20 in further 36, and 20 before: 56 in.
    hole = {"across": "2 in", "along": "16 in", "width": "10 in", "length": "1 in"}
    piece = piece_of(birds({"length": "56 in", "flaws": [hole]}))
    assert (piece["enough"], piece["spare"]["nm"]) == (True, 0)
    piece = piece_of(birds({"length": "55 in", "flaws": [hole]}))
    assert (piece["enough"], piece["short_by"]["text"], piece["proven"]) == (False, "1 in", False)
    assert piece["makes_text"] == "It makes not one complete cover. More may fit than were found to."


def test_what_gives_up_its_place_in_the_pattern_is_offered_in_order():
    piece = piece_of(birds({"length": "20 in", "motif_along": "2 in"}))
    assert words(piece)[:3] == [
        "Set the motif off centre, all faces alike",
        "Leave the pattern unmatched",
        "The largest pad this piece takes is 3 in",
    ]


# ---- what else is cut from it ------------------------------------------------------------------------------


def test_rings_of_piping_count_with_their_covers():
    # Panels of 18 in and, for each cover, one ring of 4 x 17 + 2 = 70 in of strip.
    piped = covers(3, "17 in", "17 in")
    piped["cover"]["edge"] = {"kind": "piped", "strip": "straight"}
    document = job(piped, cloth("54 in", piece={"length": "40 in"}))
    piece = piece_of(document)
    assert piece["makes"] == {"c1": 2}
    assert sum("grain" in entry for entry in piece["layout"]) > 0
    assert piece_of(changed(document, "/cloths/0/piece/length", "60 in"))["enough"]


def test_a_cloth_that_gives_nothing_but_piping_has_pieces_too():
    piped = covers(3, "17 in", "17 in")
    piped["cover"]["edge"] = {"kind": "piped", "strip": "straight", "cloth": "k2"}
    # 3 rings of 70 in with 1 1/2 in strips: on 54 in three strips a ring give 4 strips and more; 2 in gives one strip.
    document = job(piped, [cloth("54 in", id="k2", piece={"length": "3 in"}), cloth("54 in")])
    piece = piece_of(document)
    assert (piece["enough"], piece["makes"]["c1"]) == (False, 1)
    assert piece_of(changed(document, "/cloths/0/piece/length", "12 in"))["enough"]
    narrow = changed(document, "/cloths/0/piece/width", "1/2 in")
    assert notice(narrow, "piece-too-narrow")["at"] == "/cloths/0/piece/width"


def test_piping_from_elsewhere_is_offered_after_backs_and_both_together_where_one_is_not_enough():
    boxed = covers(1, "20 in", "20 in")
    boxed |= {"kind": "boxed", "insert": {**boxed["insert"], "thickness": "3 in"}}
    boxed["cover"]["edge"] = {"kind": "piped", "strip": "straight"}
    # Front and back, 21 in each, fill 42 x 21 in; without the back there is room for the piping, not for the boxing.
    own = cloth("54 in", piece={"length": "21 in", "width": "42 in"})
    document = job(boxed, [own, cloth("54 in", id="k2", name="ticking")])
    assert words(piece_of(document))[0] == "Cut the backs and boxing from ticking"


def test_covers_of_several_cloths_count_what_this_cloth_gives_and_mirrored_ones_their_own_pieces():
    bay = example("bay-window")
    for document in (bay, changed(bay, "/cushions/0/quantity", 4)):
        for index in range(len(document["cloths"])):
            cut = changed(document, f"/cloths/{index}/piece", {"length": "60 in"})
            answer = plan(cut, "quick")
            check(cut, answer)


def test_fewer_covers_are_offered_only_where_one_of_each_is_made():
    two = [covers(3, "17 in", "17 in", name="settle"), covers(2, "11 in", "11 in", id="c2", name="stool")]
    piece = piece_of(job(two, cloth("54 in", piece={"length": "40 in"})))
    assert set(piece["makes"]) == {"c1", "c2"}
    assert "“settle”" in piece["makes_text"]
    assert "Make every cover" in " ".join(words(piece))
    none = piece_of(job([covers(1, "30 in", "40 in"), two[1]], cloth("54 in", piece={"length": "20 in"})))
    assert none["makes"]["c1"] == 0
    assert not any(text.startswith("Make 0") or " of the 1 " in text for text in words(none))


def test_mirrored_covers_are_not_made_fewer_than_are_mirrored():
    bay = example("bay-window")
    bay["cushions"] = bay["cushions"][1:]
    for mirrored in (1, 2):
        pair = changed(changed(bay, "/cushions/0/mirrored", mirrored), "/cloths/0/piece", {"length": "75 in"})
        piece = piece_of(pair, "full")
        assert piece["makes"] == {"c2": 1}
        assert any(text.startswith("Make") for text in words(piece)) == (mirrored == 1)
        assert not any("largest" in text for text in words(piece))


def test_turning_is_offered_where_nobody_has_said_that_the_cloth_has_a_direction():
    # A panel of 30 x 19 in twice: upright 2 rows; turned, two of 19 in lie across 40 in: 30 in.
    long = job(covers(1, "29 in", "18 in"), cloth("40 in", piece={"length": "30 in"}))
    assert "Let the panels be turned, if the cloth has no direction" in words(piece_of(long))
    assert not any("turned" in text for text in words(piece_of(changed(long, "/cloths/0/direction", "one-way"))))


def test_a_face_wider_than_the_piece_is_said_at_its_width_with_a_join_and_what_can_still_be_made():
    two = [covers(2, "29 in", "17 in"), covers(2, "11 in", "11 in", id="c2")]
    document = job(two, cloth("54 in", piece={"length": "80 in", "width": "26 in"}))
    said = notice(document, "piece-too-narrow")
    assert said["at"] == "/cloths/0/piece/width"
    assert said["text"].startswith("The front is 30 in wide, and this piece has 26 in usable. It makes 0 of 2")
    piece = piece_of(document)
    assert (piece["makes"], piece["short_by"]) == ({"c1": 0, "c2": 2}, None)
    assert piece["text"] == "No: the front is 30 in wide, and this piece has 26 in usable."
    assert any("Join" in text and "for the width of this piece" in text for text in words(piece))


def test_a_piece_narrower_than_every_panel_makes_nothing_but_smaller_ones():
    # Fronts and backs of 18 in on 10 in of width: nothing; 4 panels of 10 in one behind another take 40 in.
    piece = piece_of(squares(2, "17 in", length="40 in", width="54 in") | {})
    assert piece["enough"]
    narrow = changed(squares(2, "17 in", length="40 in"), "/cloths/0/piece/width", "10 in")
    piece = piece_of(narrow)
    assert (piece["makes"], piece["layout"], piece["laid"]) == ({"c1": 0}, [], None)
    assert "The largest pad this piece takes is 9 in" in words(piece)


def test_a_motif_that_leaves_no_place_on_the_piece_is_said():
    document = changed(birds({"length": "60 in", "motif_along": "8 in"}), "/cloths/0/piece/width", "16 in")
    assert "has no place on it where its motif is as asked" in piece_of(document)["text"]


def test_faces_that_cannot_lie_the_same_way_on_the_piece_are_said():
    # The motif stands 5 in from the left, the next 40 in on; the piece is 20 in wide, a panel 18. To have it 4 in from
    # its left edge a panel cannot be turned, to have it 14 in from there it must be; front and back lie alike.
    printed = cloth(
        "54 in",
        direction="any",
        repeat={"across": "40 in", "along": "20 in", "drop": "0 in"},
        motifs=[{"id": "m1", "across": "5 in", "along": "0 in"}],
        start="choose",
    )
    cover = covers(1, "17 in", "17 in", pattern="centred", motif="m1")
    cover["cover"]["front"]["offset"] = {"across": "-5 in"}
    cover["cover"]["back"]["offset"] = {"across": "5 in"}
    piece = piece_of(job(cover, printed | {"piece": {"length": "80 in", "width": "20 in"}}))
    assert piece["makes"] == {"c1": 0}
    assert "cannot lie the same way round" in piece["text"]


def test_what_lies_beside_a_corner_is_looked_for_before_it_is_said_to_be_too_short():
    # Three panels of 18 in on 36 x 36 in: the third lies beside the corner cut out of the far left, not before it.
    half = covers(3, "17 in", "17 in")
    half["cover"]["back"]["cloth"] = "k2"
    corner = {"corner": "end-left", "width": "10 in", "length": "10 in"}
    own = cloth("36 in", piece={"length": "36 in", "flaws": [corner]})
    assert piece_of(job(half, [own, cloth("54 in", id="k2")]))["spare"]["nm"] == 0


def test_smaller_rounds_and_finished_sizes_are_told_in_their_own_words():
    round_ = covers(2, "1 in", "1 in") | {"insert": {"shape": "round", "diameter": "24 in"}}
    piece = piece_of(job(round_, cloth("54 in", piece={"length": "40 in"}), grid="0"))
    assert any(text.startswith("The largest pad this piece takes is") and "across" in text for text in words(piece))
    wanted = squares(2, "20 in", length="30 in") | {}
    wanted["cushions"][0]["size_from"] = "finished"
    assert any(text.startswith("The largest cover this piece makes is 14 in") for text in words(piece_of(wanted)))


def test_no_smaller_size_is_offered_where_none_was_found():
    assert not any("largest" in text for text in words(piece_of(squares(2, "2 in", length="1/2 in"))))


def test_without_room_for_squaring_nothing_is_laid():
    piece = piece_of(changed(squares(1, "17 in", length="3 in"), "/cloths/0/squaring", "4 in"))
    assert (piece["makes"], piece["usable_length"]["nm"], piece["proven"]) == ({"c1": 0}, 0, True)


# ---- what cannot be true -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("piece", "at", "code"),
    [
        ({"left": "54 in", "right": "40 in", "slant": {"start": "1 in", "end": "1 in"}}, "right", "edges-disagree"),
        ({"left": "3 yd", "right": "1 in"}, "right", "edges-disagree"),
        ({"left": "54 in", "length": "60 in"}, "length", "edges-disagree"),
        ({"left": "54 in", "slant": {"end": "60 in"}}, "slant/end", "edges-disagree"),
        ({"left": "20 in", "slant": {"start": "-60 in"}}, "slant/start", "edges-disagree"),
        ({"left": "20 in", "slant": {"start": "21 in"}}, "slant/start", "edges-disagree"),
        ({"length": "20 in", "slant": {"end": "-21 in"}}, "slant/end", "edges-disagree"),
        ({"width": "30 in"}, "left", "missing-length"),
        ({"length": "60 in", "flaws": [{"along": "1 in", "width": "1 in"}]}, "flaws/0/across", "missing-field"),
        ({"flaws": [{"corner": "end-left", "width": "1 in"}]}, "flaws/0/length", "missing-field"),
    ],
)
def test_measures_that_cannot_be_true_or_are_not_taken_are_said_at_their_field(piece, at, code):
    answer = plan(squares(1, "17 in", **piece))
    said = [(one["at"], one["code"], one["level"]) for one in answer["notices"]]
    assert (f"/cloths/0/piece/{at}", code, "stop") in said
    assert "piece" not in answer["cloths"][0]


@pytest.mark.parametrize(
    ("flaw", "at"),
    [
        ({"across": "53 in", "along": "0 in", "width": "2 in", "length": "1 in"}, "across"),
        ({"across": "5 in", "along": "60 in", "width": "2 in", "length": "1 in"}, "along"),
        ({"corner": "end-right", "width": "55 in", "length": "1 in"}, "width"),
        ({"corner": "start-left", "width": "5 in", "length": "61 in"}, "length"),
    ],
)
def test_a_flaw_outside_the_piece_is_said_at_its_field(flaw, at):
    document = squares(1, "17 in", length="60 in", flaws=[flaw])
    assert notice(document, "flaw-outside")["at"] == f"/cloths/0/piece/flaws/0/{at}"


def test_selvedges_that_leave_nothing_of_the_piece_are_said():
    document = changed(squares(1, "17 in", length="60 in", width="54 in"), "/cloths/0/selvedge", "2 in")
    document = changed(document, "/cloths/0/piece/width", "4 in")
    assert notice(document, "rules-contradict")["at"] == "/cloths/0/piece/width"


# ---- against brute force -----------------------------------------------------------------------------------


def cells(x, y, w, h):
    return {(i, j) for i in range(x, x + w) for j in range(y, y + h)}


def fit(sizes, free):
    """Whether rectangles (w, h), none turned, can be laid on free cells without overlap: by trying every place."""
    if not sizes:
        return True
    (w, h), *rest = sizes
    places = ((x, y) for x, y in sorted(free) if cells(x, y, w, h) <= free)
    return any(fit(rest, free - cells(x, y, w, h)) for x, y in places)


def random_piece(random):
    """A small piece in whole inches with a flaw or two, and two kinds of covers with panels of whole inches."""
    width, length = random.randrange(5, 9), random.randrange(4, 9)
    flaws, gone = [], set()
    for _ in range(random.randrange(0, 3)):
        w, h = random.randrange(1, 4), random.randrange(1, 4)
        if random.random() < 0.6:
            end, side = random.choice(["start", "end"]), random.choice(["left", "right"])
            x, y = 0 if side == "left" else width - w, 0 if end == "start" else length - h
            flaws.append({"corner": f"{end}-{side}", "width": f"{w} in", "length": f"{h} in"})
        else:
            x, y = random.randrange(0, width - w + 1), random.randrange(0, length - h + 1)
            flaws.append({"across": f"{x} in", "along": f"{y} in", "width": f"{w} in", "length": f"{h} in"})
        gone |= cells(x, y, w, h)
    kinds = [(random.randrange(2, 5), random.randrange(2, 5), random.randrange(1, 3)) for _ in range(2)]
    return width, length, flaws, gone, kinds


def test_how_many_covers_a_small_piece_makes_is_what_trying_every_place_says():
    random = Random(11)
    enough = fewer = none = 0
    for _ in range(60):
        width, length, flaws, gone, kinds = random_piece(random)
        entries = [
            covers(number, f"{w - 1} in", f"{h - 1} in", id=f"c{index}", name="", closure=None)
            for index, (w, h, number) in enumerate(kinds)
        ]
        for entry in entries:
            del entry["closure"]
            entry["cover"]["closure"] = {"kind": "hand-sewn", "opening": "1/4 in"}
        bolt = cloth("20 in", piece={"length": f"{length} in", "width": f"{width} in", "flaws": flaws})
        piece = piece_of(job(entries, bolt), "quick")
        free = cells(0, 0, width, length) - gone
        sets = [[(w, h)] * 2 for w, h, number in kinds for _ in range(number)]
        most = max(
            count
            for count in range(len(sets) + 1)
            for chosen in combinations(sets, count)
            if fit(sorted((size for one in chosen for size in one), reverse=True), free)
        )
        made = sum(piece["makes"].values())
        assert made <= most
        assert made == most or not piece["proven"]
        enough, fewer, none = enough + (made == len(sets)), fewer + (0 < made < len(sets)), none + (made == 0)
    assert min(enough, fewer, none) > 5


def test_the_answer_about_a_piece_is_the_same_bytes_again():
    document = example("remnant-chest")
    assert plan(document, "quick") == plan(document, "quick")


def test_lengths_of_the_answer_are_read_again_as_they_are_written():
    piece = piece_of(squares(4, "18 in", length="80 in"))
    assert read_length(piece["spare"]["text"]) == piece["spare"]["nm"]
