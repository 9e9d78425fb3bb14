"""Notices and their ways out: each way is planned before it is offered, and taking it gives what it promised."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import plan
from plumpline.problems import CODES


def notices(document):
    return {notice["code"]: notice for notice in plan(document)["notices"]}


def take(document, way_out):
    for change in way_out["change"]:
        document = changed(document, change["at"], change["value"])
    return document


def test_taking_any_way_out_buys_no_more_than_it_promised():
    documents = [
        changed(example("harbour-room"), "/cloths/0/selvedge", "1/2 in"),
        changed(example("printed-panels"), "/cloths/0/start", "unknown"),
        job(covers(3, "35 in", "17 in"), cloth("54 in")),
        example("size-wanted"),
    ]
    offered = 0
    for document in documents:
        for notice in plan(document)["notices"]:
            assert notice["code"] in CODES
            if notice["way_out"]:
                offered += 1
                taken = take(document, notice["way_out"])
                answer = plan(taken)
                check(taken, answer)
                before = {entry["cloth"]: entry["buy"]["nm"] for entry in plan(document)["cloths"]}
                after = {entry["cloth"]: entry["buy"]["nm"] for entry in answer["cloths"]}
                assert any(after[id_] <= notice["way_out"]["buy"]["nm"] < before[id_] for id_ in after)
                assert notice["way_out"]["saves"]
    assert offered >= 4


def test_side_seams_are_never_taken_below_a_quarter_inch():
    """Common practice: 1/4 in (6 mm) is the least that holds. 53 in would take 17 5/8, 52 in only 17 3/8 less 17."""
    six = covers(6, "18 in", "18 in", smaller_by="1 in")
    assert "one-more-would-fit" in notices(job(six, cloth("53 in")))
    assert "one-more-would-fit" in notices(job(six, cloth("52 1/2 in")))
    assert "one-more-would-fit" not in notices(job(six, cloth("52 3/8 in")))


def test_seams_that_are_already_least_are_left_alone_and_a_wider_cloth_is_named():
    six = covers(6, "17 1/2 in", "17 1/2 in", seam="1/4 in")
    said = notices(job(six, cloth("53 in")))
    assert "one-more-would-fit" not in said
    wider = said["wider-cloth"]
    assert wider["text"].startswith("On cloth 54 in wide 2 yd would do, 1 yd less.")
    assert wider["way_out"] is None


def test_a_cloth_far_too_narrow_for_one_more_gets_no_advice():
    said = notices(job(covers(2, "29 in", "29 in"), cloth("54 in")))
    assert "wider-cloth" not in said
    assert "one-more-would-fit" not in said


def test_two_sizes_side_by_side_are_narrowed_together():
    entries = [covers(2, "29 in", "29 in", id="c1"), covers(2, "23 in", "29 in", id="c2")]
    way_out = notices(job(entries, cloth("53 1/2 in")))["one-more-would-fit"]["way_out"]
    assert {change["at"] for change in way_out["change"]} == {
        "/cushions/0/cover/side_seam",
        "/cushions/1/cover/side_seam",
    }


def test_a_cover_whose_seams_cannot_give_is_left_as_it_is():
    entries = [covers(2, "29 in", "29 in", id="c1"), covers(2, "23 1/2 in", "29 in", id="c2", seam="1/4 in")]
    way_out = notices(job(entries, cloth("53 3/4 in")))["one-more-would-fit"]["way_out"]
    assert {change["at"] for change in way_out["change"]} == {"/cushions/0/cover/side_seam"}


def test_cushions_on_another_cloth_are_not_touched():
    entries = [covers(6, "18 in", "18 in", smaller_by="1 in"), covers(1, "18 in", "18 in", id="c2", cloth="k2")]
    way_out = notices(job(entries, [cloth("53 in"), cloth("54 in", id="k2")]))["one-more-would-fit"]["way_out"]
    assert [change["at"] for change in way_out["change"]] == ["/cushions/0/cover/side_seam"]


def test_a_cloth_laid_on_its_side_has_no_side_seams_to_give():
    said = notices(job(covers(6, "18 in", "18 in", smaller_by="1 in"), cloth("53 in", up="left")))
    assert "one-more-would-fit" not in said


def test_metric_seams_are_given_in_half_millimetres():
    six = covers(6, "45 cm", "45 cm", smaller_by="2.5 cm", seam="1.5 cm")
    way_out = notices(job(six, cloth("135 cm", sold_by="10 cm"), units="cm"))["one-more-would-fit"]["way_out"]
    assert way_out["change"] == [{"at": "/cushions/0/cover/side_seam", "value": "1.25 cm"}]
    assert way_out["text"] == "Cut the panels 45 cm wide (side seams 1.25 cm)"


def test_seams_are_counted_as_they_come_out_of_a_later_wash():
    washed = cloth("53 in", shrinkage={"across": "0.02"}, wash="after-making")
    document = job(covers(6, "17 1/2 in", "18 in", smaller_by="1 in"), washed)
    way_out = notices(document)["one-more-would-fit"]["way_out"]
    taken = plan(take(document, way_out))
    assert taken["cloths"][0]["across"] == 3


def test_turning_is_offered_only_where_nobody_said_the_cloth_has_a_direction():
    three = covers(3, "35 in", "17 in")
    assert notices(job(three, cloth("54 in")))["turning-would-save"]["way_out"]["ask"] == "2 yd"
    assert "turning-would-save" not in notices(job(three, cloth("54 in", direction="one-way")))


def test_nothing_is_said_where_nothing_can_be_saved():
    quiet = job(covers(6, "18 in", "18 in", smaller_by="1 in"), cloth("55 in", selvedge="1/2 in", squaring="2 in"))
    assert notices(quiet) == {}


def test_planning_to_the_very_edge_says_what_it_costs_to_be_careful():
    said = notices(example("harbour-room"))
    assert "With 1/2 in a side it takes 3 yd." in said["no-selvedge-margin"]["text"]
    assert "With 2 in for them it takes 2 1/8 yd." in said["no-squaring-margin"]["text"]
    quick = {n["code"]: n["text"] for n in plan(example("harbour-room"), "quick")["notices"]}
    assert "it takes" not in quick["no-selvedge-margin"]


def test_a_cloth_that_only_fits_to_the_very_edge_says_no_more():
    document = job(covers(1, "17 in", "17 in"), cloth("18 in"))
    assert notices(document)["no-selvedge-margin"]["text"].endswith("Measure the width first.")


def test_a_length_many_times_the_bare_area_is_questioned():
    """Case A07: advice of 4.8 times the area went unquestioned. Here a repeat is typed ten times too large."""
    print_ = cloth(
        "54 in",
        repeat={"across": "54 in", "along": "250 in"},
        motifs=[{"id": "m1", "across": "27 in", "along": "0 in"}],
        start="choose",
    )
    said = notices(job(covers(2, "17 in", "17 in", pattern="centred", motif="m1"), print_))["far-above-the-floor"]
    assert "check the measures and the repeat" in said["text"]
    assert said["at"] == "/cloths/0/repeat/along"


def test_cloth_far_wider_than_the_panels_is_questioned_at_its_width_from_five_times_their_area_on():
    # Ten panels 31 x 6 in fill 310 / w inches for each of their 6; one to a row they take 60. On 150 in usable all but
    # four of five columns stay empty where a motif may lie only once in 150 in: 60 >= 5 x 12.4 is not; on 155 it is.
    def print_(width):
        return cloth(
            width,
            repeat={"across": "150 in", "along": "0 in"},
            motifs=[{"id": "m1", "across": "70 in", "along": "0 in"}],
            start="choose",
        )

    entry = covers(5, "30 in", "5 in", pattern="centred", motif="m1")
    assert "far-above-the-floor" not in notices(job(entry, print_("150 in")))
    said = notices(job(entry, print_("155 in")))["far-above-the-floor"]
    assert said["at"] == "/cloths/0/width"
    assert "the width of the cloth" in said["text"]


def test_a_single_row_is_as_long_as_its_panels_and_no_slip():
    # Two panels of 8 in on 60 in: 8 in laid, 2 2/15 in by the area.
    document = job(covers(1, "4 in", "7 in"), cloth("60 in"))
    assert "far-above-the-floor" not in notices(document)


def test_stops_come_first_then_ways_out_then_warnings():
    document = job(
        [covers(6, "18 in", "18 in", smaller_by="1 in"), covers(1, "18 in", "18 in", id="c2", cloth="k2")],
        [cloth("53 in"), cloth("10 in", id="k2")],
    )
    levels = [(n["level"], bool(n["way_out"])) for n in plan(document)["notices"]]
    assert levels == sorted(levels, key=lambda x: (x[0] != "stop", not x[1], ["stop", "warn", "info"].index(x[0])))
    assert [level for level, _ in levels[:2]] == ["stop", "stop"]  # front and back of the one too wide
    assert levels[2][1] is True


@pytest.mark.parametrize("effort", ["quick", "full"])
def test_every_notice_names_a_place_that_exists_or_can_be_filled_in(effort):
    for name in ("harbour-room", "printed-panels", "size-wanted", "flawed-bolt"):
        document = example(name)
        for notice in plan(document, effort)["notices"]:
            *way, _ = notice["at"].split("/")[1:]
            place = document
            for part in way:
                place = place[int(part)] if isinstance(place, list) else place[part]


def test_a_change_that_leaves_no_plan_is_no_way_out():
    """Half an inch of selvedge would put the only column of motifs too near the edge, so nothing is promised of it."""
    edge = cloth(
        "19 in",
        repeat={"across": "27 in", "along": "25 in"},
        motifs=[{"id": "m1", "across": "9 in", "along": "0 in"}],
        start="choose",
    )
    said = notices(job(covers(2, "17 in", "17 in", pattern="centred", motif="m1"), edge))
    assert said["no-selvedge-margin"]["text"].endswith("Measure the width first.")


def test_a_cloth_all_selvedge_is_no_way_out_either():
    document = job(covers(1, "3/8 in", "3 in", seam="1/4 in"), cloth("1 in"))
    assert notices(document)["no-selvedge-margin"]["text"].endswith("Measure the width first.")


@pytest.mark.parametrize(("repeat", "asked"), [("17 in", True), ("18 in", False), ("0 in", False)])
def test_a_panel_larger_than_the_repeat_asks_which_point_is_meant(repeat, asked):
    entry = cloth(
        "54 in",
        repeat={"across": repeat, "along": "27 in"},
        motifs=[{"id": "m1", "across": "9 in", "along": "0 in"}],
        start="choose",
    )
    said = notices(job(covers(1, "17 in", "17 in", pattern="centred", motif="m1"), entry))
    assert ("larger-than-the-repeat" in said) is asked


def test_every_kind_of_proof_has_its_words():
    from plumpline.answer import REASONS

    proofs = {"tallest", "area", "rows", "wider-than-half", "stacks", "spaced-rows", "residue-rows"}
    proofs |= {"possible-lengths", "each-way", "row-sections", "exhaustive"}
    assert set(REASONS) == proofs | {"true-area", "round-rows", "round-density", "inscribed", "area-with-strips"}


def test_a_wider_cloth_is_named_for_panels_on_their_side_too():
    wide = notices(job(covers(6, "29 in", "17 in"), cloth("53 1/2 in", up="left")))["wider-cloth"]
    assert wide["text"].startswith("On cloth 54 in wide")


def test_turning_is_never_offered_on_cloth_with_a_pattern():
    stripe = cloth("54 in", repeat={"across": "9 in", "along": "0 in"})
    assert "turning-would-save" not in notices(job(covers(3, "35 in", "17 in"), stripe))
