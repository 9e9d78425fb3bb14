"""Knife-edge covers: fit, cut sizes, outline and marks."""

import math
from fractions import Fraction

import pytest
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan

IN = 25_400_000


def one(insert, cover=None, units="in", **more):
    """The answer for a single cover with the given insert and cover fields."""
    entry = covers(1, insert.pop("width", "18 in"), insert.pop("length", "18 in"), **more)
    entry["insert"].update(insert)
    entry["cover"].update(cover or {})
    if "smaller_by" not in (cover or {}):
        del entry["cover"]["smaller_by"]
    wide = cloth("80 in") if units == "in" else cloth("200 cm", sold_by="10 cm")
    return plan(job(entry, wide, units=units))


def finished(answer):
    size = answer["cushions"][0]["finished"]
    return size["width"]["text"], size["length"]["text"]


@pytest.mark.parametrize(
    ("fill", "side", "expected"),
    [
        # Common practice: feather and down 1 in up to 16 in, 2 in above; polyester 1 in; firm and microbead 0.
        ("feather", "16 in", "15 in"),
        ("feather", "17 in", "15 in"),
        ("down", "24 in", "22 in"),
        ("polyester", "24 in", "23 in"),
        ("hollow-fibre", "18 in", "17 in"),
        ("microbead", "18 in", "18 in"),
        ("firm", "18 in", "18 in"),
        ("foam", "18 in", "17 in"),
        (None, "18 in", "17 in"),
    ],
)
def test_the_fit_follows_the_filling(fill, side, expected):
    insert = {"width": side, "length": side, **({"fill": fill} if fill else {})}
    answer = one(insert)
    assert finished(answer) == (expected, expected)
    assert answer["cushions"][0]["rule"]


def test_the_workrooms_own_rule_for_a_filling_comes_before_the_usual_one_and_after_the_covers_own_figure():
    document = changed(example("harbour-room"), "/fit", {"polyester": "1 1/2 in", "feather": "3 in"})
    own = plan(changed(document, "/cushions/0/cover/smaller_by", None), "quick")
    assert finished(own) == ("16 1/2 in", "16 1/2 in")
    assert own["cushions"][0]["rule"] == "polyester, by your own rule"
    assert finished(plan(document, "quick")) == ("17 in", "17 in")


@pytest.mark.parametrize(
    ("rules", "expected", "rule"),
    [
        ({}, "17 in", "your own filling, as for polyester"),
        ({"own": "0 in"}, "18 in", "your own filling, by your own rule"),
    ],
)
def test_a_makers_own_filling_has_the_rule_it_is_given(rules, expected, rule):
    document = changed(example("harbour-room"), "/cushions/0/insert/fill", "own")
    answer = plan(changed(changed(document, "/cushions/0/cover/smaller_by", None), "/fit", rules), "quick")
    assert finished(answer) == (expected, expected)
    assert answer["cushions"][0]["rule"] == rule


def test_a_rule_for_fillings_leaves_a_bolster_at_its_own_size():
    document = changed(example("window-bench"), "/fit", {"polyester": "5 cm"})
    assert plan(document, "quick")["cushions"][2]["smaller_by"]["text"] == "0 cm"


@pytest.mark.parametrize(("fill", "side", "expected"), [("down", "40 cm", "37.5 cm"), ("feather", "45 cm", "40 cm")])
def test_the_fit_in_centimetres_takes_off_round_centimetres(fill, side, expected):
    assert finished(one({"width": side, "length": side, "fill": fill}, units="cm"))[0] == expected


def test_the_short_side_decides_the_fit_of_an_oblong():
    assert finished(one({"width": "22 in", "length": "14 in", "fill": "feather"})) == ("21 in", "13 in")


def test_a27_the_tape_counts_and_not_the_label():
    """Case A27: sold as 50 x 50, taped 45 x 45, 2.5 cm smaller: finished 42.5, not 47.5 cm."""
    answer = one({"width": "45 cm", "length": "45 cm", "fill": "polyester"}, units="cm")
    assert finished(answer) == ("42.5 cm", "42.5 cm")
    labelled = one({"width": "50 cm", "length": "50 cm", "measured": "label", "fill": "polyester"}, units="cm")
    assert finished(labelled)[0] == "47.5 cm"
    assert "tape-the-pad" in [notice["code"] for notice in labelled["notices"]]


def test_a27_a_pad_that_is_not_what_its_label_says_is_made_to_the_tape_and_told_so():
    """Case A27 once more with both on record: label 50, tape 45 cm."""
    sold = {"width": "45 cm", "length": "45 cm", "fill": "polyester", "label": {"width": "50 cm", "length": "45.5 cm"}}
    answer = one(sold, units="cm")
    assert finished(answer) == ("42.5 cm", "42.5 cm")
    (notice,) = [notice for notice in answer["notices"] if notice["code"] == "label-differs-from-tape"]
    assert notice["at"] == "/cushions/0/insert/label/width"
    assert "The label says 50 cm, the tape 45 cm" in notice["text"]
    assert "42.5 cm finished" in notice["text"]


@pytest.mark.parametrize("more", [{"measured": "old-cover"}, {"measured": "label"}])
def test_a_label_is_not_held_against_what_is_not_the_pad(more):
    answer = one({"label": {"width": "20 in"}, **more})
    assert "label-differs-from-tape" not in [notice["code"] for notice in answer["notices"]]


def test_a_label_is_not_held_against_a_size_that_is_wanted():
    answer = one({"label": {"width": "20 in"}}, size_from="finished")
    assert "label-differs-from-tape" not in [notice["code"] for notice in answer["notices"]]


def test_an_old_cover_is_copied_and_an_opening_gets_its_clearance():
    assert finished(one({"measured": "old-cover"})) == ("18 in", "18 in")
    assert finished(one({"measured": "opening", "clearance": "1/4 in"})) == ("17 3/4 in", "17 3/4 in")


def test_a_size_that_is_wanted_is_kept_and_the_pad_to_order_is_the_next_one_sold():
    answer = one({"width": "17 in", "length": "17 in", "fill": "feather"}, size_from="finished")
    assert finished(answer) == ("17 in", "17 in")
    pad = answer["materials"][0]
    assert (pad["kind"], pad["quantity"], pad["width"]["text"], pad["stocked"]) == ("pad", 1, "20 in", True)
    assert answer["cushions"][0]["pad"]["width"]["text"] == "19 in"


def test_a_pad_nobody_stocks_is_to_be_made():
    answer = one({"width": "31 in", "length": "9 in", "fill": "polyester"}, size_from="finished")
    pad = answer["materials"][0]
    assert (pad["width"]["text"], pad["length"]["text"], pad["stocked"]) == ("32 in", "10 in", False)
    assert "have it made" in pad["working"]


def test_a_stocked_oblong_is_found_either_way_up():
    upright = one({"width": "11 in", "length": "19 in", "fill": "polyester"}, size_from="finished")["materials"][0]
    assert (upright["width"]["text"], upright["length"]["text"]) == ("12 in", "20 in")
    metric = one({"width": "47 cm", "length": "27 cm", "fill": "polyester"}, units="cm", size_from="finished")
    assert metric["materials"][0]["width"]["text"] == "50 cm"


def test_seams_differ_where_they_are_told_to():
    answer = one({}, {"smaller_by": "1 in", "side_seam": "5/16 in", "closure": {"kind": "hand-sewn", "seam": "3/4 in"}})
    piece = answer["pieces"][0]
    assert (piece["width"]["text"], piece["length"]["text"]) == ("17 5/8 in", "18 1/4 in")
    assert any("5/16 in at the sides" in line["text"] for line in answer["cushions"][0]["working"])
    assert any("3/4 in at the closing edge" in line["text"] for line in answer["cushions"][0]["working"])


def test_cut_sizes_go_up_to_the_grid_and_the_answer_says_so():
    answer = one({"width": "18 1/16 in"}, {"smaller_by": "1 in"})
    assert answer["pieces"][0]["width"]["text"] == "18 1/8 in"
    assert any("up to the next 1/8 in" in line["text"] for line in answer["cushions"][0]["working"])


def test_an_eighteen_inch_cover_gets_an_opening_of_eight_inches():
    """Common practice: about 8 in on an 18 in cover; a firm pad needs its side less 5 in."""
    assert one({"fill": "polyester"})["cushions"][0]["opening"]["text"] == "8 in"
    assert one({"fill": "firm"})["cushions"][0]["opening"]["text"] == "13 in"
    assert one({"width": "4 in", "length": "4 in", "fill": "firm"})["cushions"][0]["opening"]["text"] == "1/2 in"
    assert one({}, {"closure": {"kind": "hand-sewn", "opening": "6 in"}})["cushions"][0]["opening"]["text"] == "6 in"


def marks(piece, kind):
    return [mark for mark in piece["marks"] if mark["kind"] == kind]


def test_the_opening_is_marked_in_the_middle_of_the_bottom_edge():
    piece = plan(example("harbour-room"))["pieces"][0]
    (opening,) = marks(piece, "opening")
    assert opening["points"] == [[5 * IN, 0], [13 * IN, 0]]
    assert opening["text"] == "Leave 8 in open"
    (top,) = marks(piece, "top")
    assert top["points"] == [[9 * IN, 18 * IN]]


def test_a_taper_on_an_18_inch_side_starts_four_and_a_half_inches_from_the_corner():
    """Common practice: 1/2 in in at the corner, running out at a quarter of the side, 18/4 = 4 1/2 in."""
    piece = plan(example("harbour-room"))["pieces"][0]
    tapers = marks(piece, "taper")
    assert len(tapers) == 4
    assert tapers[0]["text"] == "In 1/2 in at the corner, from 4 1/2 in along the side"
    assert tapers[0]["points"] == [[9 * IN // 2, 0], [IN // 2, IN // 2], [0, 9 * IN // 2]]
    assert len(piece["outline"]) == 12


def test_a31_the_slant_opens_the_corner_by_twice_the_angle_of_depth_over_the_rest_of_the_run():
    """Case A31: 1/2 in deep from 4 1/2 in opens the corner by 14.3 degrees (2 atan(d / (s - d)))."""
    outline = plan(example("harbour-room"))["pieces"][0]["outline"]
    (x0, y0), (x1, y1), (x2, y2) = (outline[i] for i in (0, 1, 2))
    angle = math.degrees(math.atan2(abs(y1 - y2), abs(x2 - x1)) + math.atan2(abs(x1 - x0), abs(y0 - y1)))
    assert round(angle, 1) == 14.3


@pytest.mark.parametrize(
    ("depth", "run", "degrees"),
    [("1/2 in", "1/3", 10.4), ("1/2 in", "1/2", 6.7), ("1/2 in", "5 in", 12.7), ("3/4 in", "3 1/2 in", 30.5)],
)
def test_a31_every_rule_of_the_trade_for_dog_ears_can_be_followed(depth, run, degrees):
    """Case A31, an 18 in cover: from a third of the side, from its centre, from 5 in, wedges of 3/4 × 3 1/2 in.

    Measured on the cut edge the corner opens by 2 atan(d / (s - d)); no standard says which of them is right.
    """
    taper = {"kind": "tapered", "depth": depth, "run": run}
    document = changed(example("harbour-room"), "/cushions/0/cover/corners", taper)
    outline = plan(document, "quick")["pieces"][0]["outline"]
    (x0, y0), (x1, y1), (x2, y2) = (outline[i] for i in (0, 1, 2))
    angle = math.degrees(math.atan2(abs(y1 - y2), abs(x2 - x1)) + math.atan2(abs(x1 - x0), abs(y0 - y1)))
    assert round(angle, 1) == degrees


def test_an_oblong_taper_says_both_runs():
    document = changed(example("harbour-room"), "/cushions/0/insert/length", "14 in")
    taper = marks(plan(document)["pieces"][0], "taper")[0]
    assert taper["text"] == "In 1/2 in at the corner, from 4 1/2 in along the side and 3 1/2 in up the edge"


def test_a_taper_by_length_starts_at_that_length():
    document = changed(example("harbour-room"), "/cushions/0/cover/corners/run", "3 in")
    assert marks(plan(document)["pieces"][0], "taper")[0]["points"][0] == [3 * IN, 0]


def area(outline):
    doubled = sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in zip(outline, [*outline[1:], outline[0]], strict=True))
    return Fraction(doubled, 2)


def test_the_outline_runs_anticlockwise_and_the_taper_takes_what_it_should():
    """Each corner loses two triangles of base run and height depth: 4 x depth x run in all, for equal runs."""
    square = plan(changed(example("harbour-room"), "/cushions/0/cover/corners", None))["pieces"][0]["outline"]
    tapered = plan(example("harbour-room"))["pieces"][0]["outline"]
    assert area(square) == (18 * IN) ** 2
    assert area(square) - area(tapered) == 4 * Fraction(IN, 2) * Fraction(9 * IN, 2)


def test_corners_left_unsaid_take_the_usual_taper():
    document = changed(example("harbour-room"), "/cushions/0/cover/corners", {"kind": "tapered"})
    assert plan(document)["pieces"] == plan(example("harbour-room"))["pieces"]


def test_readings_that_disagree_are_asked_about_by_the_filling():
    """Common practice: 1/2 in on a soft pad, 1/8 in on foam."""

    def asked(fill, again):
        answer = one({"fill": fill, "again": {"width": again, "length": "18 in"}})
        return [n["at"] for n in answer["notices"] if n["code"] == "readings-disagree"]

    assert asked("polyester", "18 1/2 in") == []
    assert asked("polyester", "18 9/16 in") == ["/cushions/0/insert/width"]
    assert asked("foam", "18 1/8 in") == []
    assert asked("foam", "18 3/16 in") == ["/cushions/0/insert/width"]


def test_every_way_of_measuring_explains_itself():
    for insert, words in [
        ({"measured": "old-cover"}, "Old cover"),
        ({"measured": "opening", "clearance": "1 in"}, "clearance"),
        ({"measured": "foam", "fill": "foam"}, "Foam"),
        ({"measured": "label"}, "Label"),
        ({"fill": "firm"}, "the same size (firm pad)"),
    ]:
        assert words in one(insert)["cushions"][0]["working"][0]["text"]
    wanted = one({"fill": "firm"}, size_from="finished")["cushions"][0]["working"]
    assert "Pad the same size" in wanted[1]["text"]


def test_the_feather_rule_goes_by_the_pad_also_when_the_finished_size_is_given():
    """A 17 in feather pad makes a 15 in cover, so a 15 in cover needs 17; a 15 in cover of a 16 in pad is the rule."""
    for finished_size, pad in (("15 in", "16 in"), ("16 in", "18 in")):
        answer = one({"width": finished_size, "length": finished_size, "fill": "feather"}, size_from="finished")
        assert answer["cushions"][0]["pad"]["width"]["text"] == pad


def test_metric_openings_are_whole_centimetres():
    """Common practice: about 8 in on an 18 in cover, here 20 cm on 45."""
    answer = one({"width": "47.5 cm", "length": "47.5 cm", "fill": "polyester"}, units="cm")
    assert answer["cushions"][0]["opening"]["text"] == "20 cm"


def test_a_label_says_nothing_about_a_pad_that_is_still_to_be_ordered():
    answer = one({"measured": "label", "fill": "polyester"}, size_from="finished")
    assert "tape-the-pad" not in [notice["code"] for notice in answer["notices"]]


def test_each_side_may_be_smaller_by_an_amount_of_its_own():
    answer = one({"fill": "feather"}, {"smaller_by": {"width": "1 in", "length": "2 1/2 in"}})
    assert finished(answer) == ("17 in", "15 1/2 in")
    cushion = answer["cushions"][0]
    assert cushion["smaller_by"]["text"] == "1 × 2 1/2 in"
    assert "1 in smaller in width, 2 1/2 in in height (as you set it)" in cushion["working"][0]["text"]


def test_a_side_that_is_not_said_follows_the_rule_for_the_filling():
    answer = one({"fill": "feather"}, {"smaller_by": {"length": "1/2 in"}})
    assert finished(answer) == ("16 in", "17 1/2 in")
    assert "the other by the rule: feather" in answer["cushions"][0]["rule"]


def test_a_pad_to_order_is_larger_by_each_sides_own_amount():
    answer = one({"fill": "polyester"}, {"smaller_by": {"width": "2 in", "length": "0 in"}}, size_from="finished")
    pad = answer["cushions"][0]["pad"]
    assert (pad["width"]["text"], pad["length"]["text"]) == ("20 in", "18 in")


def test_an_old_cover_copied_is_smaller_by_nothing_on_either_side():
    with pytest.raises(JobError) as raised:
        one({"measured": "old-cover"}, {"smaller_by": {"length": "1 in"}})
    assert raised.value.problems[0]["at"] == "/cushions/0/cover/smaller_by"
