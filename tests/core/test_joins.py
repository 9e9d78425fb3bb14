"""Pieces longer than the cloth is wide: joined where joins belong, or run along the roll, each with its price."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan

IN = 25_400_000
ONE_SIDE = "Join one piece to a side"
BOTH_ENDS = "Join an equal piece to each end"


def bench(size=("77 in", "18 in", "3 in"), pattern="centred", **face):
    """A boxed bench, by default with a medallion in the middle of both plates."""
    motif = {"motif": "m1"} if pattern == "centred" else {}
    plates = {"cloth": "k1", "pattern": pattern, **motif, **face}
    insert = dict(zip(("width", "length", "thickness"), size, strict=True))
    return {
        "id": "c1",
        "quantity": 1,
        "kind": "boxed",
        "insert": {"shape": "rectangle", "fill": "foam", **insert},
        "cover": {"seam": "1/2 in", "front": dict(plates), "back": dict(plates)},
    }


def medallions(column="12 in", **more):
    """Cloth of 54 in with a repeat of 27 in both ways, one column of motifs at `column`, at 40.00 a yard."""
    return cloth(
        "54 in",
        repeat={"across": "27 in", "along": "27 in"},
        motifs=[{"id": "m1", "across": column, "along": "0 in"}],
        start="choose",
        price={"amount": "40.00", "per": "yd", "currency": "USD"},
        **more,
    )


def planned(document):
    answer = plan(document)
    check(document, answer)
    return answer


def ways(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    return {way["text"]: way for way in raised.value.problems[0]["ways_out"]}


def taken(document, way):
    for change in way["change"]:
        document = changed(document, change["at"], change["value"])
    return document


# ---- case A38: a bench of 77 in with medallions on 54 in cloth, its four choices priced side by side ----------------


@pytest.mark.parametrize(
    ("column", "words", "laid", "ask", "amount"),
    [
        ("12 in", f"{ONE_SIDE}, the pattern not matched, 2 joins in all", "73 in", "2 1/8 yd", "85.00"),
        ("12 in", "Run every panel along the roll, with the pattern on its side", "78 in", "2 1/4 yd", "90.00"),
        ("12 in", f"{ONE_SIDE}, the pattern matched, 2 joins in all", "100 in", "2 7/8 yd", "115.00"),
        ("27 in", f"{BOTH_ENDS}, the pattern matched, 4 joins in all", "154 in", "4 3/8 yd", "175.00"),
    ],
    ids=["not matched", "along the roll", "matched", "matched at both ends"],
)
def test_a38_the_choices_are_priced_and_taking_one_gives_what_it_says(column, words, laid, ask, amount):
    """Case A38; the motifs' column, which it leaves open, stands where the middle of the joined face can have it."""
    document = job(bench(), medallions(column))
    way = ways(document)[words]
    assert (way["ask"], way["cost"]) == (ask, {"amount": amount, "currency": "USD"})
    found = planned(taken(document, way))["cloths"][0]
    assert (found["laid"]["text"], found["ask"]["text"]) == (laid, ask)


def test_the_way_that_buys_least_comes_first_and_stands_alone_too():
    with pytest.raises(JobError) as raised:
        plan(job(bench(), medallions()))
    problem = raised.value.problems[0]
    bought = [way["buy"]["nm"] for way in problem["ways_out"]]
    assert bought == sorted(bought)
    assert len(set(bought)) > 2
    assert problem["way_out"] == problem["ways_out"][0]


def test_a_matched_join_shows_the_same_place_of_the_pattern_on_both_sides_of_its_seam():
    document = job(bench(joined="both-ends"), medallions("27 in"))
    placed = {entry["piece"]: entry for entry in planned(document)["cloths"][0]["layout"]}
    for face in ("front", "back"):
        left, middle, right = (placed[f"c1.{face}-{place}"] for place in ("left", "middle", "right"))
        for one, other in ((left, middle), (middle, right)):
            seam_of_one = one["x"] + one["width"] - IN // 2
            seam_of_other = other["x"] + IN // 2
            assert (seam_of_one - seam_of_other) % (27 * IN) == 0
            assert (one["y"] - other["y"]) % (27 * IN) == 0


# ---- case A39: 56 x 12 in on 54 in cloth ----------------------------------------------------------------------------


def test_a39_turned_along_the_roll_the_bench_needs_no_joins_and_costs_a_yard_and_five_eighths():
    """Case A39: the maker added pieces at both ends; along the roll it is 57 in, 1 5/8 yd, with no join at all."""
    document = job(covers(1, "56 in", "12 in"), cloth("54 in"))
    way = ways(document)["Run every panel along the roll"]
    assert (way["ask"], way["cost"]) == ("1 5/8 yd", None)
    answer = planned(taken(document, way))
    assert answer["cloths"][0]["laid"]["text"] == "57 in"
    assert [piece["part"] for piece in answer["pieces"]] == ["front", "back"]
    assert "Let the panels be turned, if the cloth has no direction" in ways(document)
    assert "Join an equal piece to each end, 4 joins in all" in ways(document)


def test_nothing_joined_on_is_a_mere_strip():
    """A cover of 56 in has 53 + 3 in on 54 in cloth: the 3 in are made 4, or 4 at each end (common practice)."""
    for way, widths in (("one-side", [52, 4]), ("both-ends", [4, 48, 4])):
        face = {"cloth": "k1", "joined": way}
        entry = covers(1, "56 in", "12 in")
        entry["cover"] |= {"front": face, "back": dict(face)}
        answer = planned(job(entry, cloth("54 in")))
        cut = [p["width"]["nm"] for p in answer["pieces"] if p["part"].startswith("front")]
        assert cut == [(width + 1) * IN for width in widths]


# ---- how a face is divided ------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("wide", "way", "finished"),
    [
        ("160 in", "both-ends", [0.5, 53, 53, 53, 0.5]),
        ("200 in", "both-ends", [20.5, 53, 53, 53, 20.5]),
        ("120 in", "both-ends", [33.5, 53, 33.5]),
        ("120 in", "one-side", [53, 53, 14]),
        ("53 in", "both-ends", [53]),
        ("53 in", "one-side", [53]),
    ],
)
def test_the_pieces_add_up_to_the_finished_face_and_no_join_is_in_its_middle(wide, way, finished):
    """Pieces of 54 in cut, 53 in finished; at both ends half of the rest, or 4 in where that is a strip."""
    if finished[0] < 4:
        finished = [4, *[(160 - 8) / 3] * 3, 4]
    entry = covers(1, wide, "12 in")
    entry["cover"]["front"] = {"cloth": "k1", "joined": way}
    entry["cover"]["back"] = {"cloth": "k2"}
    answer = plan(job(entry, [cloth("54 in"), cloth("210 in", id="k2")], grid="0"), "quick")
    cut = [p["width"]["nm"] for p in answer["pieces"] if p["part"].startswith("front")]
    assert [width / IN - 1 for width in cut] == pytest.approx(finished)
    assert sum(cut) - len(cut) * IN == round(float(wide.split()[0]) * IN)
    assert max(cut) <= 54 * IN


def test_the_pieces_are_named_by_their_place_and_the_working_tells_their_seams():
    entry = covers(1, "200 in", "12 in")
    entry["cover"]["front"] = {"cloth": "k1", "joined": "both-ends"}
    entry["cover"]["back"] = {"cloth": "k2"}
    answer = plan(job(entry, [cloth("54 in"), cloth("210 in", id="k2")]), "quick")
    named = [p["part"] for p in answer["pieces"] if p["cloth"] == "k1"]
    assert named == ["front-left", "front-middle-1", "front-middle-2", "front-middle-3", "front-right"]
    said = [line["text"] for line in answer["cushions"][0]["working"]]
    assert (
        "The front is wider than the cloth and joined: 20 1/2 + 53 + 53 + 53 + 20 1/2 = 200 in, cut 21 1/2 × 13 in, "
        "54 × 13 in, 54 × 13 in, 54 × 13 in and 21 1/2 × 13 in."
    ) in said


def test_on_railroaded_cloth_a_face_that_may_be_joined_lies_whole():
    document = job(bench(joined="both-ends"), medallions(up="left"))
    assert [p["part"] for p in planned(document)["pieces"]][:2] == ["front", "back"]


def test_stripes_along_the_roll_leave_the_pieces_as_wide_as_the_cloth():
    striped = cloth(
        "54 in",
        repeat={"across": "0 in", "along": "9 in"},
        motifs=[{"id": "m1", "across": "0 in", "along": "0 in"}],
        start="choose",
    )
    document = job(bench(joined="one-side"), striped)
    widths = [p["width"]["text"] for p in plan(document, "quick")["pieces"] if p["part"].startswith("front")]
    assert widths == ["54 in", "25 in"]


@pytest.mark.parametrize("way", ["both-ends", "one-side"])
def test_cloth_too_narrow_to_join_at_all_is_said_to_be_too_narrow(way):
    entry = covers(1, "20 in", "12 in")
    entry["cover"] |= {part: {"cloth": "k1", "joined": way} for part in ("front", "back")}
    with pytest.raises(JobError) as raised:
        plan(job(entry, cloth("1 in")))
    assert {problem["code"] for problem in raised.value.problems} == {"too-wide"}
    entry["cover"]["front"] = {"cloth": "k1", "joined": way}
    with pytest.raises(JobError) as raised:
        plan(job(entry, {"id": "k1"}))
    assert {problem["code"] for problem in raised.value.problems} == {"missing-width"}


def test_a_motif_that_no_column_brings_to_the_middle_leaves_the_face_whole_and_says_so():
    """Motifs at 26 in of 52 stand 1 in beside the middle of what is left after an offset of 30 in."""
    far = cloth(
        "54 in",
        repeat={"across": "54 in", "along": "27 in"},
        motifs=[{"id": "m1", "across": "10 in", "along": "0 in"}],
        start="choose",
    )
    face = {"joined": "both-ends", "offset": {"across": "38 in"}}
    with pytest.raises(JobError) as raised:
        plan(job(bench(**face), far))
    assert {problem["code"] for problem in raised.value.problems} == {"too-wide-unless-turned"}


def test_the_marks_of_the_closing_lie_on_the_pieces_they_come_to():
    entry = covers(1, "77 in", "18 in", id="c1")
    entry["cover"] |= {part: {"cloth": "k1", "joined": "both-ends"} for part in ("front", "back")}
    entry["cover"]["closure"] = {"kind": "zip", "at": "bottom", "length": "60 in"}
    answer = plan(job(entry, cloth("54 in")), "quick")
    zips = {
        piece["part"]: [x / IN for x, _ in mark["points"]]
        for piece in answer["pieces"]
        for mark in piece["marks"]
        if mark["kind"] == "zip"
    }
    # The zip runs from 8 1/2 to 68 1/2 in of the finished face, whose seams lie at 12 and 65 in.
    assert zips["front-left"] == pytest.approx([9, 13])
    assert zips["front-middle"] == pytest.approx([0, 54])
    assert zips["front-right"] == pytest.approx([0, 4])


def test_tapered_corners_are_cut_after_the_face_is_joined():
    entry = covers(1, "77 in", "18 in")
    entry["cover"]["corners"] = {"kind": "tapered"}
    entry["cover"] |= {part: {"cloth": "k1", "joined": "one-side"} for part in ("front", "back")}
    pieces = plan(job(entry, cloth("54 in")), "quick")["pieces"]
    assert all(len(piece["outline"]) == 4 for piece in pieces)


# ---- what cannot be --------------------------------------------------------------------------------------------------


def test_a_round_face_is_never_joined_and_only_a_centred_one_is_matched():
    round_ = {**covers(1, "16 in", "16 in"), "insert": {"shape": "round", "diameter": "60 in"}}
    round_["cover"]["front"]["joined"] = "one-side"
    with pytest.raises(JobError) as raised:
        plan(job(round_, cloth("54 in")))
    assert [(p["at"], p["code"]) for p in raised.value.problems] == [
        ("/cushions/0/cover/front/joined", "rules-contradict")
    ]
    plain = covers(1, "60 in", "16 in")
    plain["cover"]["back"] |= {"joined": "one-side", "join_pattern": "matched"}
    with pytest.raises(JobError) as raised:
        plan(job(plain, cloth("54 in")))
    assert [(p["at"], p["code"]) for p in raised.value.problems] == [
        ("/cushions/0/cover/back/join_pattern", "rules-contradict")
    ]


# ---- joins that can be saved ----------------------------------------------------------------------------------------


def saved(document):
    notices = {notice["code"]: notice for notice in plan(document)["notices"]}
    found = notices.get("joins-can-be-saved")
    if found is None:
        return {}
    return {way["text"]: way for way in found.get("ways_out", [found["way_out"]])}


def test_joined_pieces_are_offered_the_roll_with_what_it_costs_or_saves():
    joined = job(bench(joined="one-side", join_pattern="free"), medallions())
    dearer = saved(joined)["Run every panel along the roll, with the pattern on its side: 3 joins fewer, 1/8 yd more"]
    assert (dearer["ask"], dearer["saves"], dearer["cost"]["amount"]) == ("2 1/4 yd", None, "90.00")
    matched = job(bench(joined="one-side"), medallions())
    cheaper = saved(matched)["Run every panel along the roll, with the pattern on its side: 3 joins fewer"]
    assert (cheaper["ask"], cheaper["saves"]) == ("2 1/4 yd", "5/8 yd")


def test_boxing_is_offered_to_run_along_the_roll_in_one_length_where_it_may_be_turned():
    """A round seat of 18 in takes a ring of 56.55 in: two bands across 54 in cloth, one along the roll."""
    seat = {
        "id": "c1",
        "quantity": 2,
        "kind": "boxed",
        "insert": {"shape": "round", "diameter": "18 in", "thickness": "3 in", "fill": "foam"},
        "cover": {"seam": "1/2 in", "front": {"cloth": "k1"}, "back": {"cloth": "k1"}},
    }
    for direction in ({}, {"direction": "any"}):
        document = job(seat, cloth("54 in", **direction))
        (words, way), *_ = [one for one in saved(document).items() if one[0].startswith("Cut the boxing along")]
        assert "2 joins fewer" in words
        answer = planned(taken(document, way))
        assert [p["part"] for p in answer["pieces"]] == ["front", "back", "boxing"]
        assert answer["cloths"][0]["ask"]["text"] == way["ask"]
    assert not any(words.startswith("Cut") for words in saved(job(seat, cloth("54 in", direction="one-way"))))


def test_boxing_asked_to_run_along_the_roll_of_cloth_that_forbids_it_may_lie_across():
    entry = bench(("60 in", "18 in", "3 in"), pattern="free")
    entry["cover"]["boxing"] = {"run": "along"}
    entry["cover"] |= {part: {"cloth": "k2"} for part in ("front", "back")}
    entry["cover"]["sides"] = {"cloth": "k1"}
    document = job(entry, [cloth("54 in", direction="one-way"), cloth("90 in", id="k2")])
    (stop,) = [notice for notice in plan(document)["notices"] if notice["level"] == "stop"]
    across = next(way for way in stop["ways_out"] if way["text"].startswith("Lay the boxing across"))
    assert across["change"] == [{"at": "/cushions/0/cover/boxing/run", "value": "across"}]
    answer = planned_parts(taken(document, across))
    assert answer == ["boxing-1", "boxing-2", "boxing-3"]


def planned_parts(document):
    return [piece["part"] for piece in plan(document, "quick")["pieces"] if piece["part"].startswith("boxing")]


def test_railroaded_cloth_joined_boxing_is_offered_one_length_only():
    offered = saved(job(bench(pattern="free"), cloth("54 in", up="left")))
    assert [words.split(":")[0] for words in offered] == ["Cut the boxing along the roll in one length"]


def test_a_panel_too_wide_on_its_side_is_offered_to_lie_upright():
    offered = ways(job(covers(1, "20 in", "60 in"), cloth("54 in", up="left", direction="one-way")))
    assert list(offered) == ["Lay every panel upright"]


def test_a_joined_back_in_two_pieces_is_joined_in_both():
    entry = covers(1, "60 in", "16 in")
    entry["cover"] |= {part: {"cloth": "k1", "joined": "one-side"} for part in ("front", "back")}
    entry["cover"]["closure"] = {"kind": "envelope", "overlap": "4 in"}
    document = job(entry, cloth("54 in"))
    backs = [piece["part"] for piece in planned(document)["pieces"] if piece["part"].startswith("back")]
    assert backs == ["back-1-left", "back-1-right", "back-2-left", "back-2-right"]


def test_the_shipped_bench_has_its_joins_and_boxing_as_it_says():
    answer = planned(example("parlour-bench"))
    shown = [piece["part"] for piece in answer["pieces"] if piece["cloth"] in ("k1", "k2") and piece["cushion"] == "c1"]
    assert shown == [
        *("front-left", "front-middle", "front-right", "back-left", "back-right"),
        *("boxing-1", "boxing-2", "boxing-3", "boxing-4"),
    ]


def test_the_bench_joins_a_face_before_anything_is_sewn_to_it():
    document = job(bench(joined="both-ends"), medallions("27 in"))
    (sheet,) = plan(document, "quick")["workroom"]
    titles = [step["title"] for step in sheet["steps"]]
    joins = {step["title"]: step["text"] for step in sheet["steps"] if step["title"].startswith("Make up")}
    assert joins["Make up the front"] == (
        "Left, middle and right, face to face, 1/2 in seams, pressed open: finished it is 77 in wide. "
        "Pin the pattern together at every join first."
    )
    assert titles.index("Make up the back") < titles.index("Join the boxing into a ring")
    facts = {fact["name"]: fact["text"] for fact in sheet["facts"]}
    assert facts["Not matched"].endswith("the pattern runs on across the joins within a face and no other seam")
    unmatched = job(bench(joined="both-ends", join_pattern="free"), medallions("27 in"))
    (sheet,) = plan(unmatched, "quick")["workroom"]
    assert not any("Pin the pattern" in step["text"] for step in sheet["steps"])
