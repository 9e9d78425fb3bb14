"""Flanged and frilled covers from the job to the answer, by the contract and published fullness."""

import math

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan

IN = 25_400_000


def with_edge(kind, *, closure=None, **edge):
    """A job of one cover of 18 in with that edge."""
    entry = covers(1, "18 in", "18 in")
    entry["cover"]["edge"] = {"kind": kind, **edge}
    if closure:
        entry["cover"]["closure"] = closure
    return job(entry, cloth("54 in"))


def planned(document):
    answer = plan(document, "quick")
    assert check(document, answer) > 0
    return answer


def piece(answer, part):
    return next(one for one in answer["pieces"] if one["part"] == part)


def problems(document):
    with pytest.raises(JobError) as caught:
        plan(document, "quick")
    return {(problem["at"], problem["code"]) for problem in caught.value.problems}


def told(answer):
    return " ".join(line["text"] for line in answer["cushions"][0]["working"])


def test_a_flange_makes_the_panels_larger_by_twice_itself():
    """By the contract: 18 + 2 · 1/2 + 2 · 2 in; stitched off where the finished face ends."""
    answer = planned(with_edge("flanged", flange="2 in"))
    front = piece(answer, "front")
    assert front["size"] == "23 × 23 in"
    line = next(mark for mark in front["marks"] if mark["kind"] == "flange")
    low, high = 5 * IN // 2, 41 * IN // 2
    assert {tuple(point) for point in line["points"]} == {(low, low), (high, low), (high, high), (low, high)}
    assert answer["cushions"][0]["finished"]["size"] == "18 × 18 in"
    assert "over all the cover is 22 in by 22 in" in told(answer)
    assert answer["cushions"][0]["edge"]["flange"]["text"] == "2 in"


def test_a_round_cover_has_its_flange_all_round():
    document = with_edge("flanged", flange="1 1/2 in")
    document["cushions"][0]["insert"] = {"shape": "round", "diameter": "16 in"}
    answer = planned(document)
    assert piece(answer, "front")["width"]["nm"] == 20 * IN
    assert "and 1 1/2 in for the flange" in told(answer)


def test_a_flanged_back_in_two_pieces_overlaps_as_any_other():
    """(18 + 4 + 1 + 5 overlap + 2 · 1 hem) ÷ 2 = 15 in."""
    answer = planned(
        with_edge("flanged", flange="2 in", closure={"kind": "envelope", "overlap": "5 in", "hem": "1 in"})
    )
    assert piece(answer, "back-1")["size"] == "23 × 15 in"
    assert [mark["kind"] for mark in piece(answer, "back-1")["marks"]].count("flange") == 0


def test_a_rounded_flange_is_stitched_off_along_a_line_that_much_inside():
    """Within a corner of 3 in a flange of 1 in leaves one of 2; one of 4 in leaves it sharp."""
    for flange, radius in ((1, 2), (4, 0)):
        document = with_edge("flanged", flange=f"{flange} in")
        document["cushions"][0]["cover"]["corners"] = {"kind": "rounded", "radius": "3 in"}
        front = piece(planned(document), "front")
        line = next(mark["points"] for mark in front["marks"] if mark["kind"] == "flange")
        left = min(x for x, _ in line)
        assert left == flange * IN + IN // 2
        arcs = [point for point in line if point[0] < left + radius * IN and point[1] < left + radius * IN]
        assert len(line) == 4 or len(arcs) > 8
        for x, y in arcs:
            assert abs(math.hypot(left + radius * IN - x, left + radius * IN - y) - radius * IN) < 10


def test_a_narrower_side_seam_of_a_flanged_cover_leaves_its_flange_alone():
    """Three panels of 18 in beside each other on 54 in: the side seams give 1/4 in each, not the flange."""
    entry = covers(3, "13 in", "13 in", smaller_by="0 in", seam="5/8 in")
    entry["cover"]["edge"] = {"kind": "flanged", "flange": "2 in"}
    answer = plan(job(entry, cloth("54 in")), "full")
    way = next(notice for notice in answer["notices"] if notice["code"] == "one-more-would-fit")
    assert way["way_out"]["change"] == [{"at": "/cushions/0/cover/side_seam", "value": "1/2 in"}]


def test_only_a_knife_edge_cover_closed_at_its_back_or_by_hand_can_be_flanged():
    zipped = with_edge("flanged", closure={"kind": "zip"})
    assert problems(zipped) == {("/cushions/0/cover/closure/at", "rules-contradict")}
    tapered = with_edge("flanged")
    tapered["cushions"][0]["cover"]["corners"] = {"kind": "tapered"}
    assert problems(tapered) == {("/cushions/0/cover/corners/kind", "rules-contradict")}
    boxed = with_edge("flanged")
    boxed["cushions"][0] |= {"kind": "boxed"}
    boxed["cushions"][0]["insert"]["thickness"] = "3 in"
    assert problems(boxed) == {("/cushions/0/cover/edge/kind", "rules-contradict")}


def test_a_doubled_frill_is_cut_twice_its_depth_and_twice_the_edge():
    """Drawn up to a half: NIMI, Dress Making, p. 210; 2 · 3 + 2 · 1/2 = 7 in wide, 72 · 2 + 1 = 145 in long."""
    answer = planned(with_edge("frilled", depth="3 in"))
    frill = piece(answer, "frill")
    assert frill["size"] == "7 × 145 in"
    assert frill["strips"] == {"grain": "straight", "join": {"nm": IN, "text": "1 in"}}
    assert "72 in of edge × 2 + 2 seams of 1/2 in = 145 in of strip, 7 in wide" in told(answer)


def test_pleats_take_three_times_the_edge_and_a_single_frill_a_hem():
    """Side and box pleats 3 × (The New Dressmaker, 1921); 3 + 1/2 seam + 3/4 hem = 4 1/4 in."""
    answer = planned(with_edge("frilled", depth="3 in", gather="pleated", frill="hemmed", hem="3/4 in"))
    assert piece(answer, "frill")["size"] == "4 1/4 × 217 in"
    assert "A single frill, pleated" in told(answer)
    assert answer["cushions"][0]["edge"]["fullness"] == "3"


@pytest.mark.parametrize("fullness", ["2.5", 2.5, "2,5"])
def test_fullness_can_be_said_as_a_text_or_as_a_number(fullness):
    assert piece(planned(with_edge("frilled", fullness="2.5")), "frill")["length"]["nm"] == 181 * IN
    assert piece(plan(with_edge("frilled", fullness=fullness), "quick"), "frill")["length"]["nm"] == 181 * IN


@pytest.mark.parametrize("fullness", ["0.5", "11", "much", True, None, "-2"])
def test_a_fullness_that_is_none_is_refused(fullness):
    assert problems(with_edge("frilled", fullness=fullness)) == {("/cushions/0/cover/edge/fullness", "not-a-fraction")}


def test_a_frill_goes_on_the_rims_that_piping_would():
    bench = changed(example("window-bench"), "/cushions/1/cover/edge", {"kind": "frilled", "rims": "both"})
    assert next(p for p in plan(bench, "quick")["pieces"] if p["id"] == "c2.frill")["count"] == 4


def test_a_frill_has_no_strip_shorter_than_a_foot_and_no_cord():
    """Common practice; the maker can set another."""
    answer = planned(with_edge("frilled"))
    strips = [strip["nm"] for laid in answer["cloths"][0]["layout"] for strip in laid.get("strips", ())]
    assert min(strips) >= 12 * IN
    assert "cord" not in [material["kind"] for material in answer["materials"]]


def test_the_bench_draws_up_the_frill_and_stitches_off_the_flange():
    frilled = plan(with_edge("frilled", frill="hemmed"), "quick")["workroom"][0]["steps"]
    assert [
        step["title"] for step in frilled if "frill" in step["title"]
    ] == ["Cut the frill", "Draw up the frill", "Sew on the frill"]
    pleated = plan(with_edge("frilled", gather="pleated"), "quick")["workroom"][0]["steps"]
    assert any("lay and pin its pleats" in step["text"] for step in pleated)
    titles = [step["title"] for step in plan(with_edge("flanged"), "quick")["workroom"][0]["steps"]]
    assert titles.index("Press and measure") < titles.index("Stitch off the flange") < titles.index("Fill it")
