"""The cloth: usable width, the wash, the way the pattern points, the length to buy and what it costs."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan, read_length

IN = 25_400_000
METRE = 1_000_000_000


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


@pytest.mark.parametrize("start", ["choose", "unknown", "measured"])
def test_the_repeat_is_told_where_it_lies_so_that_a_picture_of_it_meets_the_motifs(start):
    """By hand: washed, 25 1/4 in are 24.4925 in long; the heron is 13 1/2 in from the edge, so 13 in from the selvedge
    of 1/2 in, and the next column to the right stands half a repeat higher."""
    document = changed(example("printed-panels"), "/cloths/0/start", start)
    document = changed(document, "/cloths/0/selvedge", "1/2 in")
    document = changed(document, "/cloths/0/repeat/drop", "12 5/8 in")
    laid = planned(document)
    for plan_of in (laid, laid["straight"]):
        repeat = plan_of["repeat"]
        assert (repeat["across"], repeat["along"]) == (27 * IN, 622_109_500)
        assert repeat["drop"] == 311_054_750
        assert repeat["x"] == -IN // 2
        for x, y in plan_of["motif_points"]:
            column, rest = divmod(x - repeat["x"] - 27 * IN // 2, repeat["across"])
            assert rest == 0
            assert (y - repeat["y"] - column * repeat["drop"]) % repeat["along"] == 0


def test_a_plain_cloth_has_no_repeat_to_tell_of():
    assert planned(job(covers(2, "18 in", "18 in"), cloth("54 in")))["repeat"] is None


def test_what_is_seen_of_a_panel_lies_between_its_seams():
    """By hand: 18 in taken in by 1 in, with seams of 1/2 in at the sides and 3/4 in at the zip along the bottom."""
    closing = {"kind": "zip", "at": "bottom", "seam": "3/4 in"}
    entry = covers(1, "18 in", "18 in", smaller_by="1 in", seam="1/2 in")
    entry["cover"]["closure"] = closing
    face = plan(job(entry, cloth("54 in")))["pieces"][0]["face"]
    assert face == {"x": IN // 2, "y": 3 * IN // 4, "width": 17 * IN, "length": 17 * IN}


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


def left_of(plan_):
    """The sizes of what is left, as (width, length) in the maker's words."""
    return [(left["width"]["text"], left["length"]["text"]) for left in plan_["offcuts"]]


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


@pytest.mark.reference
@pytest.mark.parametrize("name", ["bay-window", "garden-rounds", "guest-room", "window-bench"])
def test_what_is_left_beside_outlines_touches_none_of_them_as_shapely_sees_it(name):
    """Against Shapely, on a grid of nm: of an area in nm² less than the last digit of every corner may overlap."""
    from shapely.geometry import Polygon, box

    for laid in plan(example(name), "quick")["cloths"]:
        for plan_ in (laid, laid["straight"]):
            taken = []
            for at in plan_["layout"]:
                square = [[0, 0], [at["width"], 0], [at["width"], at["length"]], [0, at["length"]]]
                taken.append(Polygon([(at["x"] + x, at["y"] + y) for x, y in at.get("outline", square)]))
            for left in plan_["offcuts"]:
                x, y = left["x"], left["y"]
                taken.append(box(x, y, x + left["width"]["nm"], y + left["length"]["nm"]))
                assert all(taken[-1].intersection(other).area < 2 * METRE for other in taken[:-1])


def an_ell(**of_cloth):
    """The front of a cover of L shape alone on its cloth: with 1/2 in seams 41 in square, its arms 16 in wide."""
    sides = ["40 in", "15 in", "25 in", "25 in", "15 in", "40 in"]
    across = [[0, 2, "42.7200187 in"], [0, 3, "21.2132034 in"], [0, 4, "42.7200187 in"]]
    insert = {"shape": "polygon", "sides": sides, "diagonals": across, "notches": [3], "thickness": "2 in"}
    entry = {**covers(1, "1 in", "1 in", kind="boxed"), "insert": insert}
    entry["cover"].update(back={"cloth": "k2"}, sides={"cloth": "k2"})
    return plan(job(entry, [cloth("45 in", sold_by="1 in", **of_cloth), cloth("45 in", id="k2")]))["cloths"][0]


def in_inches(plan_):
    """What is left, each as x, y, width and length to the nearest inch; its diagonals were told to 10^-7 in."""
    left = [(left["x"], left["y"], left["width"]["nm"], left["length"]["nm"]) for left in plan_["offcuts"]]
    assert all(abs(nm - round(nm / IN) * IN) < 10 for one in left for nm in one)
    return [tuple(round(nm / IN) for nm in one) for one in left]


def test_what_an_l_leaves_is_counted_within_the_square_around_it():
    """By hand: 41 in bought of 45 in cloth, and the arms reach 16 in, so within and beside the L 45 - 16 = 29 in are
    free over 41 - 16 = 25 in, and beside its lower arm the other 4 × 16 in. If it is cut out of a square of 41 in,
    25 × 25 in are left of that, and 4 in all along it.
    """
    laid = an_ell()
    assert in_inches(laid) == [(16, 16, 29, 25), (41, 0, 4, 16)]
    assert in_inches(laid["straight"]) == [(16, 16, 25, 25), (41, 0, 4, 41)]


def test_a_flaw_within_the_square_around_an_l_is_in_no_offcut():
    """A hole in the middle of what the L leaves free, 40 in along: 24 in below it, or 13 and 11 in beside it."""
    hole = {"across": "29 in", "along": "40 in", "width": "1 in", "length": "1 in"}
    laid = an_ell(start="measured", flaws=[hole])
    assert in_inches(laid)[0] == (16, 16, 29, 24)
    assert in_inches(laid["straight"])[0] == (16, 16, 25, 24)


def test_on_a_very_large_job_too_what_is_left_is_counted():
    entries = [covers(1, f"{10 + i / 8} in", f"{10 + i / 8} in", id=f"c{i}") for i in range(150)]
    laid = planned(job(entries, cloth("54 in", sold_by="3 yd")), "quick")
    end = laid["buy"]["nm"] - laid["laid"]["nm"]
    found = {(left["x"], left["y"], left["width"]["nm"], left["length"]["nm"]) for left in laid["offcuts"]}
    assert len(found) == 6
    assert (0, laid["laid"]["nm"], 54 * IN, end) in found


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
