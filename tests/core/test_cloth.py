"""The cloth: usable width, the wash, the way the pattern points, the length to buy and what it costs."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan, read_length

IN = 25_400_000


def planned(document, effort="full"):
    answer = plan(document, effort)
    check(document, answer)
    return answer["cloths"][0]


def test_usable_width_is_the_width_less_two_selvedges():
    assert (
        planned(job(covers(1, "18 in", "18 in"), cloth("54 in", selvedge="5/8 in")))["usable_width"]["text"]
        == "52 3/4 in"
    )


def test_margins_left_unsaid_are_the_usual_ones_of_the_system():
    """Common practice: 1/2 in (1 cm) a side, 2 in (5 cm) for both ends together."""
    for units, width, selvedge, squaring in (("in", "54 in", "1/2 in", "2 in"), ("cm", "137 cm", "1 cm", "5 cm")):
        entry = {"id": "k1", "width": width, "sold_by": "10 cm"}
        laid = planned(job(covers(1, "18 in", "18 in"), entry, units=units))
        assert (laid["selvedge"]["text"], laid["squaring"]["text"]) == (selvedge, squaring)


def test_the_selling_step_left_unsaid_is_an_eighth_of_a_yard_or_ten_centimetres():
    for units, step in (("in", "1/8 yd"), ("cm", "10 cm")):
        answer = plan(job(covers(1, "18 in", "18 in"), {"id": "k1", "width": "54 in"}, units=units))
        assert answer["cloths"][0]["buy"]["nm"] % read_length(step) == 0


@pytest.mark.parametrize(
    ("step", "ask", "other"),
    [
        ("1/8 yd", "1 1/8 yd", "1.03 m"),
        ("1/4 yd", "1 1/4 yd", "1.15 m"),
        ("1 yd", "2 yd", "1.83 m"),
        ("10 cm", "1 m", "39 3/8 in"),
        ("0.5 m", "1 m", "39 3/8 in"),
        ("1 cm", "0.97 m", "38 1/4 in"),
        ("7 in", "42 in", "1.07 m"),
    ],
)
def test_the_length_is_asked_for_in_the_shops_own_step_and_rounded_up_in_the_other_system(step, ask, other):
    laid = planned(job(covers(2, "18 in", "18 in"), cloth("38 in", sold_by=step)))
    assert laid["laid"]["text"] == "38 in"
    assert laid["ask"] == {"text": ask, "other": other}


@pytest.mark.parametrize(
    ("units", "step", "ask"),
    [("cm", "7 in", "21 in"), ("cm", "1 in", "19 in"), ("cm", "1/5 yd", "0.549 m"), ("in", "1/5 yd", "21 5/8 in")],
)
def test_an_odd_step_is_told_in_a_unit_that_holds_it_and_never_rounded_down(units, step, ask):
    """Three fifths of a yard are 21.6 in or 0.54864 m: no tape has them, so the next mark up is asked for."""
    laid = planned(job(covers(1, "45 cm", "45 cm"), cloth("140 cm", sold_by=step), units=units, grid="1 mm"))
    assert laid["ask"]["text"] == ask


def test_a_piece_exactly_as_long_as_needed_is_asked_for_and_not_a_step_more():
    laid = planned(job(covers(2, "17 in", "17 in"), cloth("36 in")))
    assert (laid["needed"]["text"], laid["ask"]["text"]) == ("36 in", "1 yd")


def test_the_cost_is_of_the_length_bought_half_up_to_the_minor_unit():
    price = {"amount": "10.01", "per": "yd", "currency": "USD"}
    laid = planned(job(covers(1, "17 in", "17 in"), cloth("36 in", price=price, sold_by="1/4 yd")))
    assert (laid["ask"]["text"], laid["cost"]) == ("1/2 yd", {"amount": "5.01", "currency": "USD"})
    yen = {"amount": "4100", "per": "m", "currency": "JPY"}
    laid = planned(job(covers(1, "45 cm", "45 cm"), cloth("140 cm", price=yen, sold_by="0.5 m"), units="cm"))
    assert laid["cost"] == {"amount": "2050", "currency": "JPY"}
    assert planned(job(covers(1, "18 in", "18 in"), cloth("54 in")))["cost"] is None


def printed(start=None, **more):
    repeat = {"across": "27 in", "along": "25 in"}
    motifs = [{"id": "m1", "across": "13 1/2 in", "along": "0 in"}]
    return cloth("54 in", repeat=repeat, motifs=motifs, **({"start": start} if start else {}), **more)


CENTRED = covers(2, "17 in", "17 in", pattern="centred", motif="m1")


def test_an_unknown_start_adds_one_repeat_and_choosing_it_is_the_way_out():
    unknown, chosen = (planned(job(CENTRED, printed(start))) for start in (None, "choose"))
    assert chosen["laid"]["text"] == "43 in"
    assert unknown["needed"]["nm"] - chosen["needed"]["nm"] == 25 * IN
    notice = next(n for n in plan(job(CENTRED, printed()))["notices"] if n["code"] == "start-unknown")
    assert notice["way_out"]["change"] == [{"at": "/cloths/0/start", "value": "choose"}]
    assert notice["way_out"]["ask"] == chosen["ask"]["text"]


def test_free_and_alike_panels_do_not_depend_on_the_start():
    for pattern in ("free", "alike"):
        laid = planned(job(covers(2, "17 in", "17 in", pattern=pattern), printed()))
        assert laid["start"] is None
        assert laid["needed"] == laid["laid"]


def test_a_measured_start_costs_the_way_to_the_first_motif():
    """The first motif stands 5 in behind the end, too near for a panel that needs 9 in: the next is 30 in behind."""
    document = changed(job(CENTRED, printed("measured")), "/cloths/0/motifs/0/along", "5 in")
    laid = planned(document)
    assert laid["laid"]["text"] == "64 in"  # rows centred 30 and 55 in behind the end
    assert laid["start"] == {"motif": "m1", "along": {"nm": 5 * IN, "text": "5 in"}}
    assert any(
        "21 in to the first row + 1 × 25 in from row to row + 18 in = 64 in" in t["text"] for t in laid["working"]
    )


def test_a_half_drop_is_laid_out_exactly():
    """Columns 20 in apart, the next one 10 in lower in a 20 in repeat: four panels 18 in wide in two staggered columns.

    By hand: column 1 has its motifs at 0 and 20, column 2 at 10 and 30; panels of 16 in reach 8 in either way, so the
    first lies 0-16, the last 30 later: 30 + 16 = 46 in.
    """
    drop = cloth(
        "40 in",
        repeat={"across": "20 in", "along": "20 in", "drop": "10 in"},
        motifs=[{"id": "m1", "across": "10 in", "along": "0 in"}],
        start="choose",
    )
    laid = planned(job(covers(2, "17 in", "15 in", pattern="centred", motif="m1"), drop))
    assert (laid["laid"]["text"], laid["proven"]) == ("46 in", True)


def test_the_pattern_may_point_any_way_and_every_top_follows():
    for up in ("away", "toward", "left", "right"):
        document = job(covers(2, "20 in", "15 in"), cloth("54 in", up=up))
        laid = planned(document)
        assert {panel["up"] for panel in laid["layout"]} == {up}
    sideways = planned(job(covers(2, "20 in", "15 in"), cloth("54 in", up="left")))
    assert (sideways["layout"][0]["width"], sideways["layout"][0]["length"]) == (16 * IN, 21 * IN)


def test_half_turns_let_an_off_centre_motif_use_more_of_the_cloth():
    """The motif is wanted 4 in right of the centre: turned by half it is 4 in left, and the other column serves too."""
    document = job(covers(2, "17 in", "17 in", pattern="centred", motif="m1"), printed("choose", direction="two-way"))
    document["cloths"][0]["motifs"][0]["across"] = "6 in"
    for part in ("front", "back"):
        document["cushions"][0]["cover"][part]["offset"] = {"across": "4 in"}
    one_way = changed(document, "/cloths/0/direction", "one-way")
    assert planned(document)["laid"]["nm"] < planned(one_way)["laid"]["nm"]
    narrowed = changed(changed(document, "/cushions/0/cover/front/turn", "none"), "/cushions/0/cover/back/turn", "none")
    assert planned(narrowed)["laid"]["nm"] == planned(one_way)["laid"]["nm"]


def test_turning_a_quarter_is_used_where_it_may_be_and_all_faces_of_a_cover_lie_alike():
    document = job(covers(2, "26 in", "17 in"), cloth("54 in", direction="any"))
    laid = planned(document)
    assert (laid["laid"]["text"], {panel["turn"] for panel in laid["layout"]}) == ("36 in", {0})
    oblong = planned(job(covers(3, "35 in", "17 in"), cloth("54 in", direction="any")))
    assert (oblong["laid"]["text"], {panel["turn"] for panel in oblong["layout"]}) == ("72 in", {90})
    kept = job(covers(3, "35 in", "17 in"), cloth("54 in", direction="any"))
    for part in ("front", "back"):
        kept["cushions"][0]["cover"][part]["turn"] = "half"
    assert planned(kept)["laid"]["text"] == "108 in"


def test_cloth_washed_before_cutting_is_laid_out_shrunk():
    laid = planned(example("printed-panels"))
    assert laid["usable_width"]["nm"] == 54 * IN
    narrower = changed(example("printed-panels"), "/cloths/0/shrinkage/across", "0.01")
    assert planned(narrower)["usable_width"]["nm"] == 54 * IN * 99 // 100


def test_flaws_are_kept_clear_of_even_when_they_shrink():
    flaw = {"across": "10 in", "along": "10 in", "width": "1 in", "length": "1 in"}
    washed = {"shrinkage": {"along": "0.07", "across": "0.03"}, "wash": "before-cutting"}
    document = job(covers(3, "17 in", "17 in"), cloth("60 in", start="measured", flaws=[flaw], **washed))
    laid = planned(document)
    clean = planned(changed(document, "/cloths/0/flaws", None))
    assert laid["laid"]["nm"] > clean["laid"]["nm"]


def test_tops_and_labels_tell_the_panels_of_several_covers_apart():
    document = job([covers(1, "18 in", "18 in", id=f"c{i}") for i in range(1, 29)], cloth("54 in"))
    labels = {panel["label"] for panel in planned(document)["layout"]}
    assert {"A1 front", "Z1 back", "AA1 front", "AB1 back"} <= labels
    alone = planned(job(covers(2, "18 in", "18 in"), cloth("54 in")))
    assert {panel["label"] for panel in alone["layout"]} == {"1 front", "2 front", "1 back", "2 back"}


def test_the_motifs_are_marked_where_they_fall_on_the_laid_cloth():
    laid = planned(example("printed-panels"))
    xs = {x for x, _ in laid["motif_points"]}
    assert xs == {27 * IN // 2, 81 * IN // 2}
    centres = {(p["x"] + p["width"] // 2, p["y"] + p["length"] // 2) for p in laid["layout"]}
    assert centres <= {(x, y) for x, y in laid["motif_points"]}


def test_a_stripe_or_a_very_fine_repeat_marks_no_points():
    stripe = cloth("54 in", repeat={"across": "9 in"}, motifs=[{"id": "m", "across": "1 in", "along": "0 in"}])
    fine = cloth(
        "54 in", repeat={"across": "1/2 in", "along": "1/2 in"}, motifs=[{"id": "m", "across": "1 in", "along": "0 in"}]
    )
    for pattern in (stripe, fine, cloth("54 in")):
        assert planned(job(covers(2, "18 in", "18 in"), pattern))["motif_points"] == []


def test_the_working_follows_the_pencil_from_the_bolt_to_the_counter():
    six = covers(6, "18 in", "18 in", smaller_by="1 in")
    laid = planned(job(six, cloth("55 in", selvedge="1/2 in", squaring="2 in")))
    assert [line["text"] for line in laid["working"]] == [
        "55 in wide, less 1/2 in selvedge a side: 54 in usable.",
        "12 panels of 18 × 18 in.",
        "3 across 54 in; 4 rows × 18 in = 72 in.",
        "2 in to square the two ends: 74 in.",
        "Sold by 1/8 yd: ask for 2 1/8 yd.",
    ]


def test_the_working_of_a_wash_shows_the_division_and_marks_what_is_rounded():
    texts = " ".join(line["text"] for line in planned(example("printed-panels"))["working"])
    assert "The repeat along comes down to 24.4925 in." in texts
    assert "÷ 0.97" in texts
    assert "5 × 24.4925 in from row to row + 18 in = 140.4625 in." in texts
    sixth = job(covers(1, "17 in", "17 in"), cloth("54 in", shrinkage={"along": "1/6"}, wash="before-cutting"))
    assert any("takes ≈ 16.67 % of the length, so ÷ ≈ 0.8333" in line["text"] for line in planned(sixth)["working"])


def test_the_working_counts_a_single_row_and_a_staggered_plan():
    row = planned(job(covers(1, "18 in", "18 in"), cloth("54 in")))
    assert "2 across 54 in; 1 row of 19 in." in [line["text"] for line in row["working"]]
    mixed = job([covers(2, "18 in", "18 in"), covers(1, "11 in", "24 in", id="c2")], cloth("54 in"))
    assert any("Laid as drawn" in line["text"] for line in planned(mixed)["working"])


def test_the_working_says_when_rows_are_not_evenly_spaced():
    flaw = {"across": "0 in", "along": "18 in", "width": "54 in", "length": "1 in"}
    document = job(covers(3, "17 in", "17 in"), cloth("36 in", start="measured", flaws=[{**flaw, "width": "36 in"}]))
    laid = planned(document)
    assert laid["laid"]["text"] == "55 in"
    assert "2 across 36 in; 3 rows, spaced as drawn: 55 in." in [line["text"] for line in laid["working"]]


@pytest.mark.parametrize("name", ["harbour-room", "printed-panels", "size-wanted", "flawed-bolt", "railroaded"])
def test_what_is_left_lies_on_bought_cloth_and_touches_no_panel(name):
    for laid in plan(example(name))["cloths"]:
        for plan_ in (laid, laid["straight"]):
            boxes = [(p["x"], p["y"], p["width"], p["length"]) for p in plan_["layout"]]
            boxes += [(o["x"], o["y"], o["width"]["nm"], o["length"]["nm"]) for o in plan_["offcuts"]]
            for i, (x, y, w, h) in enumerate(boxes):
                assert x >= 0
                assert x + w <= laid["usable_width"]["nm"]
                for x2, y2, w2, h2 in boxes[:i]:
                    assert x + w <= x2 or x2 + w2 <= x or y + h <= y2 or y2 + h2 <= y


def test_the_offcut_beside_two_columns_is_found_whole():
    """Two columns of 18 in on 54 in leave 18 in down the whole length, and it is the largest piece left."""
    document = job(covers(2, "17 in", "17 in", pattern="centred", motif="m1"), printed("choose"))
    document["cloths"][0]["repeat"] = {"across": "18 in", "along": "18 in"}
    document["cloths"][0]["motifs"][0]["across"] = "9 in"
    del document["cloths"][0]["repeat"]["along"]
    laid = planned(changed(document, "/cushions/0/quantity", 1))
    largest = laid["offcuts"][0]
    assert (largest["width"]["text"], largest["length"]["text"]) == ("18 in", "18 in")


def test_straight_cuts_leave_a_strip_in_as_many_pieces_as_there_are_rows():
    """Two columns of 18 in on 53 in leave 17 in beside them: whole if cut around, in three pieces if rows come off."""
    laid = planned(job(covers(3, "17 in", "17 in"), cloth("53 in", sold_by="1/2 yd")))
    assert [(o["width"]["text"], o["length"]["text"]) for o in laid["offcuts"]] == [("17 in", "54 in")]
    rows = laid["straight"]["offcuts"]
    assert [(o["width"]["text"], o["length"]["text"], o["y"] // IN) for o in rows] == [
        ("17 in", "18 in", 0),
        ("17 in", "18 in", 18),
        ("17 in", "18 in", 36),
    ]


def test_on_a_very_large_job_only_the_end_of_the_cloth_is_offered_as_left_over():
    entries = [covers(1, f"{10 + i / 8} in", f"{10 + i / 8} in", id=f"c{i}") for i in range(150)]
    laid = planned(job(entries, cloth("54 in", sold_by="3 yd")), "quick")
    assert [o["width"]["text"] for o in laid["offcuts"]] in ([], ["54 in"])


def off_centre(back_turn):
    """One column of motifs near the right edge: the front, its motif left of the middle, fits only turned by half."""
    entry = cloth(
        "30 in",
        direction="any",
        repeat={"across": "40 in", "along": "20 in"},
        motifs=[{"id": "m1", "across": "16 in", "along": "0 in"}],
        start="choose",
    )
    document = job(covers(1, "25 in", "17 in"), entry)
    front = document["cushions"][0]["cover"]["front"]
    front.update({"pattern": "centred", "motif": "m1", "offset": {"across": "-3 in"}})
    document["cloths"][0]["motifs"][0]["across"] = "17 in"
    document["cushions"][0]["cover"]["back"]["turn"] = back_turn
    return document


def test_a_back_follows_its_front_when_that_lies_upside_down():
    laid = planned(off_centre("quarter"))
    assert {panel["turn"] for panel in laid["layout"]} == {180}


def test_a_back_that_may_not_follow_its_front_is_a_contradiction_in_words():
    with pytest.raises(JobError) as raised:
        plan(off_centre("none"))
    (problem,) = raised.value.problems
    assert problem["code"] == "rules-contradict"
    assert "have to lie the same way round" in problem["text"]


def test_a_later_wash_is_allowed_for_in_the_direction_each_side_lies():
    """Railroaded, the width of the panel lies along the roll and takes what the roll loses: 21 / 0.9 up to 23 3/8."""
    washed = {"shrinkage": {"along": "0.1"}, "wash": "after-making"}
    answer = plan(job(covers(1, "20 in", "12 in"), cloth("54 in", up="left", **washed)))
    piece, placed = answer["pieces"][0], answer["cloths"][0]["layout"][0]
    assert (piece["width"]["text"], piece["length"]["text"]) == ("23 3/8 in", "13 in")
    assert (placed["length"], placed["width"]) == (piece["width"]["nm"], piece["length"]["nm"])
    assert piece["outline"][2] == [piece["width"]["nm"], piece["length"]["nm"]]


@pytest.mark.parametrize("up", ["away", "left"])
def test_an_offset_is_counted_on_the_finished_face(up):
    """4 in from the middle after the wash are 4 / 0.9 in on the cloth, whichever way the panel lies."""
    entry = printed("choose", up=up, shrinkage={"along": "0.1", "across": "0.1"}, wash="after-making")
    document = job(covers(1, "17 in", "17 in", pattern="centred", motif="m1"), entry)
    document["cushions"][0]["cover"]["front"]["offset"] = {"along": "4 in"}
    document["cushions"][0]["cover"]["back"] = {"cloth": "k1"}
    answer = plan(document)
    check(document, answer)
    placed = next(panel for panel in answer["cloths"][0]["layout"] if panel["part"] == "front")
    points = answer["cloths"][0]["motif_points"]
    axis, start, size = (1, placed["y"], placed["length"]) if up == "away" else (0, placed["x"], placed["width"])
    off = min(abs(abs(point[axis] - start - size // 2) - 4 * IN * 10 // 9) for point in points)
    assert off <= 2


def test_a_group_that_happens_to_be_called_like_a_cover_is_not_that_cover():
    entry = cloth("37 in", repeat={"across": "20 in", "along": "24 in"}, start="choose")
    entries = [covers(1, "17 in", "17 in", id="c1"), covers(1, "17 in", "17 in", id="c2")]
    for number, cushion in enumerate(entries):
        cushion["cover"]["front"] = {"cloth": "k1", "pattern": "alike", **({} if number else {"group": "c2"})}
        cushion["cover"]["back"] = {"cloth": "k2"}
    document = job(entries, [entry, cloth("54 in", id="k2")])
    assert planned(document)["laid"]["text"] == "18 in"


def test_the_chosen_start_is_said_in_words_as_it_is_measured_on_the_bolt():
    """On washed cloth the first heron lies 9 in behind the end, so 9 / 0.97 = 9.28 in, about 9 1/4, on the bolt."""
    texts = [line["text"] for line in planned(example("printed-panels"))["working"]]
    assert "Have it cut so that the first heron lies ≈ 9 1/4 in behind the squared end." in texts
    notice = next(n for n in plan(job(CENTRED, printed()))["notices"] if n["code"] == "start-unknown")
    assert "the first motif lies 9 in behind the squared end" in notice["text"]
    measured = planned(job(CENTRED, printed("measured")))
    assert not any("Have it cut" in line["text"] for line in measured["working"])


def test_a_repeat_across_alone_depends_on_no_start():
    stripe = cloth("54 in", repeat={"across": "27 in"}, motifs=[{"id": "m1", "across": "9 in", "along": "0 in"}])
    laid = planned(job(CENTRED, stripe))
    assert laid["start"] is None
    assert laid["needed"] == laid["laid"]


def test_the_reason_counts_rows_only_where_rows_are_the_reason():
    one_row = planned(job(covers(1, "17 in", "17 in"), cloth("54 in")))
    assert "so 1 row is the least" in one_row["proof"]["text"]
    crease = {"across": "26 in", "along": "0 in", "width": "1 in", "length": "200 in"}
    flawed = planned(job(covers(3, "17 in", "17 in"), cloth("54 in", start="measured", flaws=[crease])))
    assert "side by side, so" not in flawed["proof"]["text"]


def test_the_working_names_the_way_to_the_first_row():
    """Motifs from 20 in behind the end on: panels that need 9 in below them begin 11 in behind it."""
    entry = printed("measured")
    entry["motifs"][0]["along"] = "20 in"
    one = planned(job(covers(1, "17 in", "17 in", pattern="centred", motif="m1"), entry))
    assert "2 across 54 in; 11 in to the first row + 1 row of 18 in = 29 in." in [t["text"] for t in one["working"]]
    band = {"across": "0 in", "along": "0 in", "width": "54 in", "length": "2 in"}
    moved = planned(job(covers(3, "17 in", "17 in"), cloth("54 in", start="measured", flaws=[band])))
    assert "3 across 54 in; 2 in to the first row + 2 rows × 18 in = 38 in." in [t["text"] for t in moved["working"]]


def test_a_straight_offcut_with_a_flaw_in_it_is_not_offered():
    flaw = {"across": "45 in", "along": "9 in", "width": "1 in", "length": "1 in"}
    laid = planned(job(covers(1, "17 in", "17 in"), cloth("54 in", start="measured", flaws=[flaw])))
    assert laid["straight"]["offcuts"] == []
