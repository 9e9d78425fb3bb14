"""A stripe centred on a face: upright in its middle, wherever the face lies up and down the pattern."""

import pytest
from jobs import changed, checked, cloth, covers, example, facts, job

from plumpline import JobError, plan

IN = 25_400_000


def striped(across="8 in", first="5 in", **more):
    """Cloth of 54 in with stripes so far apart, one of them so far from its left edge."""
    motifs = [{"id": "m1", "name": "red stripe", "across": first, "along": "0 in"}]
    return cloth(more.pop("width", "54 in"), **{"repeat": {"across": across}, "motifs": motifs, **more})


def seats(quantity=4, size=("17 in", "17 in"), pattern="stripe-centred", **more):
    """Covers of which front and back have the stripe in the middle, cut an inch larger than their size."""
    return covers(quantity, *size, pattern=pattern, motif="m1", **more)


def problems(document):
    with pytest.raises(JobError) as raised:
        plan(document, "quick")
    return [(problem["at"], problem["code"], problem["text"]) for problem in raised.value.problems]


def test_a_stripe_in_the_middle_costs_a_place_side_by_side():
    """Hand calculation: 8 panels of 18 in, stripes at 5, 13, 21 … in.

    With a stripe in its middle, 9 in from its edge, a panel can begin at 4, 12, 20, 28 or 36 in. One at 4 ends at 22,
    the next begins at 28 and ends at 46: two across, so 4 rows and 72 in. Cut anywhere, three lie across: 54 in.
    """
    laid = checked(job(seats(), striped()))["cloths"][0]
    assert (laid["laid"]["text"], laid["proven"], laid["ask"]["text"]) == ("72 in", True, "2 yd")
    assert {entry["x"] for entry in laid["layout"]} <= {place * IN for place in (4, 12, 20, 28, 36)}
    free = checked(job(seats(pattern="free"), striped()))["cloths"][0]
    assert free["laid"]["text"] == "54 in"


def test_along_the_roll_a_stripe_asks_for_nothing_whatever_the_pattern_does_there():
    """The same rows of 18 in, one behind the other: centred both ways they stand 25 1/4 in apart, 3 × 25 1/4 + 18."""
    plaid = striped(repeat={"across": "8 in", "along": "25 1/4 in", "drop": "3 in"}, start="unknown")
    laid = checked(job(seats(), plaid))["cloths"][0]
    assert (laid["laid"]["text"], laid["needed"]["text"], laid["start"]) == ("72 in", "72 in", None)
    even = changed(job(seats(pattern="centred"), plaid), "/cloths/0/repeat/drop", "0 in")
    both_ways = checked(even)["cloths"][0]
    assert both_ways["laid"]["text"] == "93 3/4 in"
    assert both_ways["needed"]["text"] == "119 in"  # and a repeat more, for nobody knows where the first cut falls


def test_a_stripe_beside_a_motif_waits_for_no_row_of_it():
    """Rows of motifs 30 in apart, the first 9 in behind the end: a motif in the middle of 18 in, two across, from 0 in.

    Between the rows there are 12 in; the faces with the stripe alone are 12 in long and fill them.
    """
    plaid = striped(repeat={"across": "8 in", "along": "30 in"}, start="measured")
    plaid["motifs"][0]["along"] = "9 in"
    document = job([seats(2, pattern="centred"), seats(1, ("17 in", "11 in"), id="c2")], plaid)
    laid = checked(document)["cloths"][0]
    assert (laid["laid"]["text"], laid["proven"]) == ("48 in", True)
    assert {entry["y"] for entry in laid["layout"] if entry["piece"] == "c2.front"} == {18 * IN}


def test_an_offset_sets_the_stripe_off_to_the_side_and_no_other_way():
    document = job(seats(1), striped())
    document["cushions"][0]["cover"]["front"]["offset"] = {"across": "-2 in", "along": "3 in"}
    laid = checked(document)["cloths"][0]
    (front,) = [entry for entry in laid["layout"] if entry["piece"] == "c1.front"]
    assert (front["x"] + 7 * IN) % (8 * IN) == 5 * IN
    straight = changed(document, "/cushions/0/cover/front/offset/along", None)
    assert plan(straight)["cloths"] == plan(document)["cloths"]


def test_no_panel_lies_with_its_stripe_crosswise_though_the_cloth_may_be_turned():
    """On 32 in of cloth a panel of 18 × 30 in turned a quarter takes 18 in of the roll, upright 30."""
    wide = striped(width="32 in", first="9 in", direction="any")
    turned = checked(job(seats(1, ("17 in", "29 in"), pattern="free"), wide))["cloths"][0]
    upright = checked(job(seats(1, ("17 in", "29 in")), wide))["cloths"][0]
    assert (turned["laid"]["text"], upright["laid"]["text"]) == ("36 in", "60 in")
    assert {entry["turn"] for entry in upright["layout"]} <= {0, 180}


def test_where_tops_point_to_a_side_the_stripe_is_what_runs_across_the_roll():
    """Faces of 18 × 12 in on their side, four across; stripes 8 in apart along the roll, the first 5 in in.

    With the middle of 18 in on a stripe a row begins at 4, 12, 20 in … The first ends at 22, so the next begins at 28
    and ends at 46 in.
    """
    aside = striped(repeat={"along": "8 in"}, up="left", start="measured")
    aside["motifs"][0] |= {"across": "0 in", "along": "5 in"}
    laid = checked(job(seats(size=("17 in", "11 in")), aside))["cloths"][0]
    assert (laid["laid"]["text"], laid["proven"]) == ("46 in", True)
    assert {entry["y"] for entry in laid["layout"]} == {4 * IN, 28 * IN}


@pytest.mark.parametrize(
    ("bolt", "said"),
    [
        (striped(up="left"), "would lie crosswise on this face: let the top of its pattern point away from the"),
        (striped(repeat={"along": "8 in"}), "would lie crosswise on this face: let the top of its pattern point to"),
        (striped(repeat={}), "To centre a stripe, the distance between stripes on cloth 1 has to be measured first."),
    ],
)
def test_stripes_that_would_lie_crosswise_are_refused_at_the_field(bolt, said):
    found = problems(job(seats(1), bolt))
    assert [(at, code) for at, code, _ in found] == [
        (f"/cushions/0/cover/{part}/pattern", "rules-contradict") for part in ("front", "back")
    ]
    assert all(said in text for _, _, text in found)


def test_a_stripe_has_to_be_named_and_to_lie_where_the_face_has_room_beside_it():
    ((at, code, _),) = problems(changed(job(seats(1), striped()), "/cushions/0/cover/front/motif", None))
    assert (at, code) == ("/cushions/0/cover/front/motif", "no-such-motif")
    one = striped("54 in", "9 in")
    (front, _) = problems(job(seats(1, ("39 in", "17 in")), one))
    assert front[:2] == ("/cushions/0/cover/front/pattern", "motif-cannot-be-centred")
    assert front[2].startswith("The front cannot have this stripe in its middle: wherever it lies, the panel would")


def test_an_offset_that_leads_off_the_face_is_refused():
    document = changed(job(seats(1), striped()), "/cushions/0/cover/front/offset", {"across": "9 in"})
    assert [(at, code) for at, code, _ in problems(document)] == [
        ("/cushions/0/cover/front/offset/across", "rules-contradict")
    ]


def test_a_back_in_two_pieces_has_the_stripe_on_both():
    document = job(seats(2), striped(start="choose"))
    document["cushions"][0]["cover"]["closure"] = {"kind": "envelope", "overlap": "4 in", "hem": "1 in"}
    laid = checked(document)["cloths"][0]
    assert {(entry["x"] + 9 * IN) % (8 * IN) for entry in laid["layout"]} == {5 * IN}


def test_boxing_and_bolsters_take_a_stripe_too():
    boxed = seats(1) | {"kind": "boxed"}
    boxed["insert"]["thickness"] = "3 in"
    boxed["cover"] |= {"sides": {"pattern": "stripe-centred", "motif": "m1"}, "boxing": {"kind": "front-and-sides"}}
    roll = {"shape": "bolster", "diameter": "7 in", "length": "20 in"}
    bolster = seats(1, id="c2") | {"kind": "bolster", "insert": roll}
    checked(job([boxed, bolster], striped()))


# ---- joined faces ---------------------------------------------------------------------------------------------------


def long_face(bolt, **face):
    document = job(seats(1, ("69 in", "17 in")), bolt)
    for part in ("front", "back"):
        document["cushions"][0]["cover"][part] |= {"joined": "both-ends", **face}
    return document


def test_the_stripes_run_on_across_the_joins_of_a_face():
    """The seam of one piece shows the same place between two stripes as the seam that it is sewn to."""
    answer = checked(long_face(striped(first="3 in")))
    placed = {entry["piece"]: entry for entry in answer["cloths"][0]["layout"]}
    left, middle, right = (placed[f"c1.front-{place}"] for place in ("left", "middle", "right"))
    for one, other in ((left, middle), (middle, right)):
        assert (one["x"] + one["width"] - IN // 2 - other["x"] - IN // 2) % (8 * IN) == 0
    assert "The stripes run on across the joins." in told(answer)
    (sheet,) = answer["workroom"]
    assert any("Pin the stripes together at every join first." in step["text"] for step in sheet["steps"])


def test_what_repeats_along_the_stripes_is_said_not_to_match_at_the_joins():
    answer = checked(long_face(striped(first="3 in", repeat={"across": "8 in", "along": "10 in"})))
    assert "The stripes run on across the joins; what repeats along them is not matched there." in told(answer)
    unmatched = checked(long_face(striped(first="3 in"), join_pattern="free"))
    assert "The pattern is not matched at the joins." in told(unmatched)


def told(answer):
    return [line["text"] for line in answer["cushions"][0]["working"]]


def test_a_striped_face_too_wide_is_offered_its_joins_with_the_stripes_matched_or_not():
    front, _ = plan_problems(job(seats(1, ("69 in", "17 in")), striped(first="3 in")))
    offered = [way["text"] for way in front["ways_out"]]
    assert any(text.startswith("Join an equal piece to each end, the pattern matched") for text in offered)
    # Run along the roll the stripe would lie crosswise, so that is not offered.
    assert not any("along the roll" in text for text in offered)


def plan_problems(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    return raised.value.problems


# ---- what is said ---------------------------------------------------------------------------------------------------


def test_the_sheet_says_which_stripe_stands_where_and_what_is_not_matched():
    said = facts(checked(example("veranda-stripes")))
    assert said["Stripe, face"] == "blue stripe, upright in the middle of the finished face"
    assert said["Stripe, back"] == "blue stripe, upright, 2 in left from the middle of the finished face"
    assert said["Not matched"] == "the pattern does not run on across any seam"
    plaid = changed(example("veranda-stripes"), "/cloths/0/repeat/along", "10 in")
    assert facts(checked(plaid))["Not matched"] == (
        "front and back: up and down anywhere in the pattern; the pattern does not run on across any seam"
    )


def test_no_other_repeat_along_the_roll_changes_what_stripes_take():
    (laid,) = plan(job(seats(), striped(repeat={"across": "8 in", "along": "25 in"})), tips=True)["cloths"]
    tips = [tip for tip in laid["tipping"] if tip["field"] == "repeat.along"]
    assert [(tip["from"], tip["to"], tip["proven"]) for tip in tips] == [(None, None, True)]
