"""Layers under a cover: lining, interlining, a zipped protector and a slip-cloth, each from its cloth with its plan."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job

from plumpline import JobError, plan

IN = 25_400_000
KINDS = {
    "knife-edge": covers(2, "18 in", "17 in"),
    "rounded": covers(1, "18 in", "17 in"),
    "envelope": covers(1, "18 in", "17 in"),
    "round": covers(1, "18 in", "17 in"),
    "boxed": covers(1, "20 in", "18 in"),
    "boxed round": covers(1, "20 in", "18 in"),
    "bolster": covers(1, "20 in", "18 in"),
}
KINDS["rounded"]["cover"]["corners"] = {"kind": "rounded", "radius": "2 in"}
KINDS["envelope"]["cover"]["closure"] = {"kind": "envelope", "overlap": "4 in"}
KINDS["round"]["insert"] = {"shape": "round", "diameter": "16 in"}
KINDS["boxed"] |= {"kind": "boxed", "insert": {"shape": "rectangle", "width": "20 in", "length": "18 in"}}
KINDS["boxed"]["insert"] |= {"thickness": "3 in", "fill": "foam"}
KINDS["boxed"]["cover"]["boxing"] = {"kind": "front-and-sides"}
KINDS["boxed round"] |= {"kind": "boxed", "insert": {"shape": "round", "diameter": "14 in", "thickness": "2 in"}}
KINDS["bolster"] |= {"kind": "bolster", "insert": {"shape": "bolster", "diameter": "8 in", "length": "20 in"}}


def layered(kind, *layers, **cover):
    entry = changed(KINDS[kind], "/cover/layers", {layer: {"cloth": "k2"} for layer in layers})
    entry["cover"] |= cover
    return job(entry, [cloth("54 in"), cloth("60 in", id="k2", direction="any")])


def planned(document):
    answer = plan(document, "quick")
    check(document, answer)
    return answer


def sizes(answer, layer):
    return {
        piece["part"].removeprefix(f"{layer}-"): (piece["width"]["nm"], piece["length"]["nm"])
        for piece in answer["pieces"]
        if piece["cloth"] == "k2"
    }


@pytest.mark.parametrize("kind", KINDS)
def test_a_lining_is_cut_piece_for_piece_like_its_cover(kind):
    answer = planned(layered(kind, "lining"))
    cover = {p["part"]: p for p in answer["pieces"] if p["cloth"] == "k1"}
    lining = {p["part"].removeprefix("lining-"): p for p in answer["pieces"] if p["cloth"] == "k2"}
    assert list(lining) == list(cover)
    for part, piece in cover.items():
        assert (lining[part]["outline"], lining[part]["count"]) == (piece["outline"], piece["count"])
    assert {entry["cloth"] for entry in answer["cloths"]} == {"k1", "k2"}


@pytest.mark.parametrize("kind", [kind for kind in KINDS if kind != "envelope"])
@pytest.mark.reference
def test_an_interlining_is_as_large_as_the_finished_part(kind):
    """Common practice: cut to the stitching line. Areas by shapely, to what the chords of a round leave out."""
    from shapely.geometry import Polygon

    answer = planned(layered(kind, "interlining"))
    finished = answer["cushions"][0]["finished"]
    (front,) = [p for p in answer["pieces"] if p["part"] in ("interlining-front", "interlining-body")]
    area = Polygon(front["outline"]).area / IN**2
    wide, high = (front[name]["nm"] / IN for name in ("width", "length"))
    if kind == "bolster":
        assert (wide, high) == (20, pytest.approx(3.14159265 * 8, abs=1 / 8))
    elif "diameter" in finished:
        assert wide == high == finished["diameter"]["nm"] / IN
        assert area == pytest.approx(3.14159265 * wide * wide / 4, rel=1e-3)
    else:
        assert (wide, high) == tuple(finished[name]["nm"] / IN for name in ("width", "length"))
        lost = (4 - 3.14159265) * 4 if kind == "rounded" else 0
        assert area == pytest.approx(wide * high - lost, rel=1e-3)
    assert front["marks"] == []


@pytest.mark.parametrize("kind", KINDS)
def test_a_protector_is_a_plain_cover_with_a_zip_of_its_own(kind):
    answer = planned(layered(kind, "protector", edge={"kind": "trimmed"}))
    alone = plan(changed(layered(kind), "/cushions/0/cover/closure", {"kind": "zip"}), "quick")
    assert sizes(answer, "protector") == {
        piece["part"]: (piece["width"]["nm"], piece["length"]["nm"]) for piece in alone["pieces"]
    }
    (chain,) = [one for one in answer["materials"] if one["kind"] == "zip"]
    assert chain["quantity"] == answer["cushions"][0]["quantity"]
    titles = [step["title"] for step in answer["workroom"][0]["steps"]]
    assert "Make the protector" in titles


@pytest.mark.parametrize(
    ("kind", "count", "size"),
    [("boxed", 2, (24, 22)), ("boxed round", 2, (17, 17)), ("knife-edge", 4, (19, 18)), ("round", 2, (17, 17))],
)
def test_a_slip_cloth_meets_half_way_down_the_edge_of_the_foam(kind, count, size):
    """Foam of 20 x 18 x 3 in with seams of 1/2 in: each panel 20 + 3 + 1 by 18 + 3 + 1 in."""
    answer = planned(layered(kind, "wrap"))
    (piece,) = [p for p in answer["pieces"] if p["part"] == "wrap"]
    assert (piece["width"]["nm"] / IN, piece["length"]["nm"] / IN) == size
    assert piece["count"] == count


def test_a_slip_cloth_round_a_bolster_is_one_piece_that_reaches_over_its_ends():
    """8 in across and 20 in long: 28 in by pi x 8 + 1 = 26.13 in, up to the next 1/8."""
    answer = planned(layered("bolster", "wrap"))
    (piece,) = [p for p in answer["pieces"] if p["part"] == "wrap"]
    assert (piece["width"]["text"], piece["length"]["text"]) == ("28 in", "26 1/4 in")


def thread(document):
    (found,) = [one for one in plan(document, "quick")["materials"] if one["kind"] == "thread"]
    return found["length"]["nm"]


def test_a_lining_in_the_seams_takes_more_thread_and_an_interlining_none():
    plain = thread(layered("boxed"))
    assert thread(layered("boxed", "interlining")) == plain
    assert thread(layered("boxed", "lining")) > plain
    assert thread(layered("boxed", "protector")) > plain


def test_a_matched_or_joined_face_has_a_plain_lining():
    document = changed(example("parlour-bench"), "/cushions/0/cover/layers", {"lining": {"cloth": "k2"}})
    answer = planned(document)
    assert "lining-front" in {piece["part"] for piece in answer["pieces"]}


def test_the_bench_is_told_of_each_layer():
    steps = plan(layered("boxed", "lining", "interlining", "wrap"), "quick")["workroom"][0]["steps"]
    titles = [step["title"] for step in steps]
    assert titles.index("Tack in the lining") < titles.index("Join the boxing into a ring")
    assert {"Cut the lining", "Fix the interlining", "Put on the slip-cloth"} <= set(titles)


def bench(*layers, kind="boxed", wide="54 in", **more):
    """A bench of 77 × 18 × 3 in from cloth that is wide enough, its layers from one that is not."""
    entry = changed(changed(KINDS[kind], "/insert/width", "77 in"), "/insert/length", "18 in")
    entry["cover"]["layers"] = {layer: {"cloth": "k2", **more} for layer in layers}
    return job(entry, [cloth("90 in"), cloth(wide, id="k2")])


@pytest.mark.parametrize(
    ("layer", "how", "cut"),
    [
        # Finished 77 in, at most 54 - 2 × 1/2 = 53 in of it in the middle, so 12 at each end; with seams 13, 54, 13.
        ("lining", "both-ends", {"front-left": (13, 19), "front-middle": (54, 19), "front-right": (13, 19)}),
        # 53 in from the left, 24 in left over; a protector that is not boxed has 3/4 in at its zip.
        ("protector", "one-side", {"back-left": (54, 19.25), "back-right": (25, 19.25)}),
        # Of an interlining no piece has a seam: it is joined edge to edge.
        ("interlining", "both-ends", {"front-left": (12, 18), "front-middle": (53, 18), "front-right": (12, 18)}),
        # The slip-cloth reaches 77 + 3 by 18 + 3 in and has its seams: 53 and 27 in finished.
        ("wrap", "one-side", {"left": (54, 22), "right": (28, 22)}),
    ],
)
def test_a_layer_wider_than_its_cloth_is_joined_as_a_face_is(layer, how, cut):
    """By hand, in inches, with seams of 1/2 in."""
    answer = planned(bench(layer, kind="knife-edge" if layer == "protector" else "boxed", joined=how))
    found = {part: (wide / IN, high / IN) for part, (wide, high) in sizes(answer, layer).items()}
    assert {part: found[part] for part in cut} == cut
    named = "slip-cloth" if layer == "wrap" else f"{layer} front"
    step = next(one for one in answer["workroom"][0]["steps"] if one["title"] == f"Make up the {named}")
    assert ("Edge to edge" in step["text"]) == (layer == "interlining")
    titles = [one["title"] for one in answer["workroom"][0]["steps"]]
    after = {"lining": "Tack in the lining", "protector": "Make the protector", "wrap": "Put on the slip-cloth"}
    assert titles.index(step["title"]) < titles.index(after.get(layer, "Fix the interlining"))
    assert {entry["cloth"] for entry in answer["cloths"]} == {"k1", "k2"}


@pytest.mark.parametrize("layer", ["lining", "protector", "wrap"])
def test_the_joins_of_a_layer_take_thread_and_those_of_an_interlining_none(layer):
    assert thread(bench(layer, joined="both-ends")) > thread(bench(layer, wide="90 in"))
    assert thread(bench("interlining", joined="both-ends")) == thread(bench("interlining", wide="90 in"))


def test_a_layer_too_wide_for_its_cloth_is_offered_a_join_planned_and_priced():
    """78 in of lining on 54 in: along the roll 78 in, joined at a side 2 × 19 in of two pieces, 54 and 25 in wide."""
    priced = changed(bench("lining"), "/cloths/1/price", {"amount": "10.00", "per": "yd", "currency": "USD"})
    (stop, *_) = [one for one in plan(priced, "quick")["notices"] if one["level"] == "stop"]
    offers = {way["text"]: way for way in stop["ways_out"]}
    side = next(way for text, way in offers.items() if text.startswith("Join one piece to a side"))
    assert side["change"] == [{"at": "/cushions/0/cover/layers/lining/joined", "value": "one-side"}]
    taken = planned(changed(priced, side["change"][0]["at"], "one-side"))
    lined = next(entry for entry in taken["cloths"] if entry["cloth"] == "k2")
    assert (side["buy"], side["cost"]) == (lined["buy"], lined["cost"])
    assert any(text.startswith("Join an equal piece to each end") for text in offers)


@pytest.mark.parametrize("layer", ["lining", "interlining", "protector"])
def test_a_joined_layer_has_its_boxing_joined_too_where_that_of_the_cover_runs_along_the_roll(layer):
    """A side of 77 in is two bands of 38 1/2 in of the layer, which no cloth of 54 in would give in one length."""
    document = bench(layer, joined="one-side")
    document["cushions"][0]["cover"]["boxing"]["run"] = "along"
    answer = plan(document, "quick")
    assert not [one for one in answer["notices"] if one["level"] == "stop"]
    boxing = {piece["part"]: piece["width"]["nm"] for piece in answer["pieces"] if "boxing" in piece["part"]}
    assert max(width for part, width in boxing.items() if part.startswith("boxing")) == 78 * IN
    assert max(width for part, width in boxing.items() if part.startswith(layer)) <= 54 * IN


@pytest.mark.parametrize("layer", ["lining", "interlining", "protector", "wrap"])
def test_a_round_layer_cannot_be_joined_and_that_is_said_at_the_layer(layer):
    document = layered("boxed round", layer)
    document["cushions"][0]["cover"]["layers"][layer]["joined"] = "one-side"
    assert problems(document) == [(f"/cushions/0/cover/layers/{layer}/joined", "rules-contradict")]


def problems(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    return [(problem["at"], problem["code"]) for problem in raised.value.problems]


def test_gathered_ends_are_never_interlined():
    document = layered("bolster", "interlining", ends="gathered")
    assert problems(document) == [("/cushions/0/cover/layers/interlining", "rules-contradict")]
    lined = planned(layered("bolster", "lining", ends="gathered"))
    assert {piece["part"] for piece in lined["pieces"]} == {"body", "lining-body"}


def test_a_protector_that_could_not_close_is_said_at_its_own_place():
    """Its zip band is asked to return 4 in along sides of 3 in."""
    narrow = changed(layered("boxed", "protector"), "/cushions/0/insert/length", "3 in")
    narrow["cushions"][0]["cover"]["boxing"]["returns"] = "4 in"
    assert problems(narrow) == [("/cushions/0/cover/layers/protector", "rules-contradict")]


def test_a_layer_names_its_cloth_and_one_that_the_job_has():
    missing = changed(layered("boxed"), "/cushions/0/cover/layers", {"lining": {}})
    assert problems(missing)[0] == ("/cushions/0/cover/layers/lining/cloth", "missing-field")
    unknown = changed(layered("boxed", "lining"), "/cushions/0/cover/layers/lining/cloth", "k9")
    assert problems(unknown)[0] == ("/cushions/0/cover/layers/lining/cloth", "no-such-cloth")


def test_a_cloth_that_a_broken_cover_would_be_lined_with_is_not_asked_for():
    document = layered("boxed", "lining")
    document["cushions"].append(covers(1, "10 in", "10 in", id="c2", cloth="k2"))
    broken = changed(document, "/cushions/0/quantity", 0)
    with pytest.raises(JobError):
        plan(broken)
