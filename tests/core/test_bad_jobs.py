"""What is wrong with a job is said at its field, in words, every problem at once, and nothing is guessed."""

import copy
import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from jobs import EXAMPLES, changed, cloth, covers, example, job

from plumpline import JobError, plan
from plumpline.fields import JOB
from plumpline.problems import CODES


def problems(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    found = raised.value.problems
    for problem in found:
        assert problem["code"] in CODES
        assert problem["text"]
        assert str(raised.value).count(problem["text"]) >= 1
    return {(problem["at"], problem["code"]) for problem in found}


def plain(**more):
    return job(covers(6, "18 in", "18 in"), cloth("54 in"), **more)


@pytest.mark.parametrize(
    ("at", "value", "code"),
    [
        ("/format", "other", "not-a-job"),
        ("/version", 2, "wrong-version"),
        ("/version", "x", "wrong-version"),
        ("/version", True, "wrong-version"),
        ("/units", "ell", "unknown-value"),
        ("/units", 3, "unknown-value"),
        ("/name", 3, "not-text"),
        ("/name", "x" * 2001, "not-text"),
        ("/id", "", "not-text"),
        ("/id", None, "missing-field"),
        ("/colour", "red", "unknown-field"),
        ("/a~1b", "red", "unknown-field"),
        ("/grid", "eighth", "not-a-length"),
        ("/cushions", {}, "not-a-job"),
        ("/cushions", [3] * 501, "not-a-job"),
        ("/cushions/0", 3, "not-a-job"),
        ("/cushions/0/quantity", 0, "not-a-count"),
        ("/cushions/0/quantity", 1.0, "not-a-count"),
        ("/cushions/0/quantity", True, "not-a-count"),
        ("/cushions/0/kind", "sphere", "unknown-value"),
        ("/cushions/0/insert/width", "18", "not-a-length"),
        ("/cushions/0/insert/width", "0 in", "not-a-length"),
        ("/cushions/0/insert/width", 18, "not-a-length"),
        ("/cushions/0/insert/width", "17 5/8 in x", "not-a-length"),
        ("/cushions/0/insert/again/width", "-3 in", "not-a-length"),
        ("/cushions/0/cover/corners", {"kind": "tapered", "run": "3/4"}, "not-a-fraction"),
        ("/cushions/0/cover/corners", {"kind": "tapered", "run": "1/0"}, "not-a-fraction"),
        ("/cushions/0/cover/corners", {"kind": "tapered", "run": "far"}, "not-a-length"),
        ("/cushions/0/cover/front/offset", {"across": "-x"}, "not-a-length"),
        ("/cushions/0/cover/front/cloth", "k9", "no-such-cloth"),
        ("/cloths/0/shrinkage", {"along": "1"}, "not-a-fraction"),
        ("/cloths/0/shrinkage", {"along": "1/0"}, "not-a-fraction"),
        ("/cloths/0/shrinkage", {"along": ""}, "not-a-fraction"),
        ("/cloths/0/shrinkage", {"along": 0.03}, "not-a-fraction"),
        ("/cloths/0/shrinkage", {"along": "0.03"}, "wash-not-said"),
        (
            "/cloths/0/flaws",
            [{"across": "1 in", "along": "1 in", "width": "1 in", "length": "1 in"}],
            "rules-contradict",
        ),
        ("/cloths/0/price", {"amount": "1,234", "per": "yd", "currency": "USD"}, "not-an-amount"),
        ("/cloths/0/price", {"amount": "12", "per": "yd", "currency": "ZZZ"}, "unknown-value"),
        ("/cloths/0/selvedge", "27 in", "rules-contradict"),
        ("/cloths/0/width", None, "missing-width"),
        ("/cushions", [], "missing-field"),
        ("/cushions/0/insert/clearance", "1 in", "rules-contradict"),
        ("/cushions/0/cover/closure", {"kind": "hand-sewn", "opening": "19 in"}, "opening-too-long"),
        ("/cushions/0/cover/smaller_by", "18 in", "nothing-left"),
        ("/cushions/0/cover/front/pattern", "alike", "rules-contradict"),
        ("/cushions/0/cover/front/pattern", "centred", "rules-contradict"),
    ],
)
def test_a_slip_is_said_at_its_field(at, value, code):
    document = changed(plain(), at, value)
    assert code in {found for _, found in problems(document)}


def test_a_document_that_is_no_job_at_all_is_refused():
    for nothing in (None, [], "job", 3):
        assert problems(nothing) == {("", "not-a-job")}


def test_a_newer_document_says_to_update():
    with pytest.raises(JobError) as raised:
        plan(changed(plain(), "/version", 2))
    assert "newer" in raised.value.problems[0]["text"]


def test_every_problem_is_listed_at_once():
    document = changed(changed(plain(), "/cushions/0/insert/width", "wide"), "/cloths/0/width", "?")
    document = changed(document, "/cloths/0/selvege", "1/2 in")
    assert problems(document) == {
        ("/cushions/0/insert/width", "not-a-length"),
        ("/cloths/0/width", "not-a-length"),
        ("/cloths/0/selvege", "unknown-field"),
    }


def test_measures_still_to_be_taken_are_asked_for_all_together():
    document = changed(changed(plain(), "/cushions/0/insert/width", None), "/cushions/0/insert/length", None)
    document = changed(document, "/cloths/0/width", None)
    del document["cloths"][0]["selvedge"]
    assert problems(document) == {
        ("/cushions/0/insert/width", "missing-width"),
        ("/cushions/0/insert/length", "missing-length"),
        ("/cloths/0/width", "missing-width"),
    }


def test_ids_are_not_used_twice():
    document = job([covers(1, "18 in", "18 in"), covers(1, "18 in", "18 in")], [cloth("54 in"), cloth("54 in")])
    document["cloths"][0]["motifs"] = [{"id": "m", "across": "1 in", "along": "1 in"}] * 2
    assert problems(document) == {
        ("/cushions/1/id", "same-id-twice"),
        ("/cloths/1/id", "same-id-twice"),
        ("/cloths/0/motifs/1/id", "same-id-twice"),
    }


def printed(**more):
    repeat = {"across": "27 in", "along": "25 in"}
    motifs = [{"id": "m1", "across": "13 1/2 in", "along": "0 in"}]
    return cloth("54 in", repeat=repeat, motifs=motifs, **more)


def test_a_centred_face_needs_a_motif_that_its_cloth_has():
    assert problems(job(covers(1, "18 in", "18 in", pattern="centred"), printed())) == {
        ("/cushions/0/cover/front/motif", "no-such-motif"),
        ("/cushions/0/cover/back/motif", "no-such-motif"),
    }
    assert ("/cushions/0/cover/front/motif", "no-such-motif") in problems(
        job(covers(1, "18 in", "18 in", pattern="centred", motif="m2"), printed())
    )


def test_a_motif_too_near_the_edge_cannot_be_centred():
    document = job(covers(1, "40 in", "18 in", pattern="centred", motif="m1"), printed(start="choose"))
    found = problems(document)
    assert ("/cushions/0/cover/front/pattern", "motif-cannot-be-centred") in found


def test_a_panel_wider_than_the_cloth_is_named_with_its_ways_out():
    with pytest.raises(JobError) as raised:
        plan(job(covers(1, "59 in", "60 in"), cloth("54 in")))
    text = raised.value.problems[0]["text"]
    assert raised.value.problems[0]["code"] == "too-wide"
    assert text == "The front is 60 in wide; cloth 1 has 54 in usable. Join it or choose a wider cloth."


def test_a_panel_that_fits_on_its_side_offers_to_lay_every_panel_so():
    document = job(covers(1, "59 in", "17 in"), cloth("54 in", name="linen"))
    with pytest.raises(JobError) as raised:
        plan(document)
    problem = raised.value.problems[0]
    assert problem["code"] == "too-wide-unless-turned"
    assert problem["text"].startswith("The front is 60 in wide; linen has 54 in usable. Turn it, join it")
    way_out = next(way for way in problem["ways_out"] if way["text"] == "Run every panel along the roll")
    assert way_out["change"] == [{"at": "/cloths/0/up", "value": "left"}]
    turned = plan(changed(document, "/cloths/0/up", "left"))["cloths"][0]
    assert (turned["laid"]["text"], way_out["ask"]) == ("60 in", turned["ask"]["text"])


def test_a_flaw_outside_the_cloth_is_refused():
    flaw = {"across": "53 in", "along": "1 in", "width": "2 in", "length": "1 in"}
    document = job(covers(1, "18 in", "18 in"), cloth("54 in", start="measured", flaws=[flaw]))
    assert problems(document) == {("/cloths/0/flaws/0/across", "flaw-outside")}


def test_what_was_measured_and_what_is_asked_must_agree():
    document = job(covers(1, "18 in", "18 in", smaller_by="1 in"), cloth("54 in"))
    document["cushions"][0]["insert"]["measured"] = "old-cover"
    assert problems(document) == {("/cushions/0/cover/smaller_by", "rules-contradict")}
    document["cushions"][0]["cover"]["smaller_by"] = "0 in"
    document["cushions"][0]["size_from"] = "finished"
    assert problems(document) == {("/cushions/0/insert/measured", "rules-contradict")}


@pytest.mark.parametrize("corners", [{"depth": "5 in", "run": "4 in"}, {"depth": "1 in", "run": "10 in"}])
def test_a_taper_that_does_not_fit_is_refused(corners):
    document = changed(plain(), "/cushions/0/cover/corners", {"kind": "tapered", **corners})
    assert problems(document) == {("/cushions/0/cover/corners/run", "corner-too-large")}


def test_where_one_cloth_can_be_planned_the_other_is_a_stop_and_not_a_silence():
    document = job(covers(2, "18 in", "18 in"), [cloth("54 in"), cloth("12 in", id="k2")])
    document["cushions"][0]["cover"]["back"]["cloth"] = "k2"
    answer = plan(document)
    assert [entry["cloth"] for entry in answer["cloths"]] == ["k1"]
    assert (answer["notices"][0]["level"], answer["notices"][0]["code"]) == ("stop", "too-wide")


def test_a_cloth_with_an_unmeasured_cover_on_it_is_never_asked_for():
    document = job(
        [covers(2, "18 in", "18 in"), covers(1, "18 in", "18 in", id="c2")], [cloth("54 in"), cloth("54 in", id="k2")]
    )
    document["cushions"][1]["cover"]["back"]["cloth"] = "k2"
    document["cushions"][0]["cover"]["back"]["cloth"] = "k2"
    document["cushions"][1]["cover"]["front"]["cloth"] = "k2"
    del document["cushions"][1]["insert"]["width"]
    answer = plan(document)
    assert [entry["cloth"] for entry in answer["cloths"]] == ["k1"]
    assert answer["notices"][0]["code"] == "missing-width"
    assert answer["notices"][0]["at"] == "/cushions/1/insert/width"


def test_a_cloth_nobody_uses_may_stay_unmeasured():
    spare = {"id": "k2"}
    document = job(covers(2, "18 in", "18 in"), [cloth("54 in"), spare])
    assert [entry["cloth"] for entry in plan(document)["cloths"]] == ["k1"]


def _paths(value, at=""):
    yield at
    entries = value.items() if isinstance(value, dict) else enumerate(value) if isinstance(value, list) else ()
    for name, inner in entries:
        yield from _paths(inner, f"{at}/{name}")


JUNK = st.one_of(
    st.none(), st.booleans(), st.integers(), st.text(max_size=20), st.just([]), st.just({}), st.just("9" * 70 + " in")
)


@settings(deadline=None, derandomize=True)
@given(st.data())
def test_whatever_is_written_into_a_job_it_is_answered_or_refused_in_words(data):
    document = json.loads(data.draw(st.sampled_from(EXAMPLES)).read_text(encoding="utf-8"))
    document = copy.deepcopy(document)
    at = data.draw(st.sampled_from([path for path in _paths(document) if path]))
    junk = data.draw(JUNK)
    *way, last = at.split("/")[1:]
    place = document
    for name in way:
        place = place[int(name)] if isinstance(place, list) else place[name]
    place[int(last) if isinstance(place, list) else last] = junk
    found = _refusal(document)
    assert found is None or found
    assert all(problem["code"] in CODES and problem["text"] for problem in found or ())


def _refusal(document):
    """The problems of a job, or None where it is answered."""
    try:
        plan(document, "quick")
    except JobError as error:
        return error.problems
    return None


def test_the_example_jobs_use_every_field_of_the_table():
    used = set()
    for path in EXAMPLES:
        used |= {
            "".join(f"/{part}" for part in at.split("/")[1:] if not part.isdigit())
            for at in _paths(json.loads(path.read_text(encoding="utf-8")))
        }

    def names(fields, at=""):
        for field in fields:
            yield f"{at}/{field.name}", field.kind
            yield from names(field.fields, f"{at}/{field.name}")

    missing = {at for at, kind in names(JOB) if kind != "apart"} - used
    # All faces have the same fields; one of them shows each.
    for face in ("back", "sides"):
        missing -= {at for at in missing if at.replace(f"/cover/{face}", "/cover/front") in used}
    # So have all layers.
    for layer in ("lining", "protector", "wrap"):
        missing -= {at for at in missing if at.replace(f"/layers/{layer}", "/layers/interlining") in used}
    assert not missing


def test_readings_that_deserve_a_question_get_one():
    document = changed(example("harbour-room"), "/cushions/0/insert/width", "71/4 in")
    codes = {(n["code"], n["at"]) for n in plan(document)["notices"]}
    assert ("improper-fraction", "/cushions/0/insert/width") in codes


def two_cloths():
    """Two covers, each on a cloth of its own."""
    return job(
        [covers(2, "18 in", "18 in"), covers(1, "18 in", "18 in", id="c2", cloth="k2")],
        [cloth("54 in"), cloth("54 in", id="k2")],
    )


@pytest.mark.parametrize(
    ("at", "value", "code", "where"),
    [
        ("/cushions/1/insert/width", "17 5/", "not-a-length", None),
        ("/cushions/1/cover/front/cloth", "k9", "no-such-cloth", None),
        ("/cushions/1/cover/front/pattern", "alike", "rules-contradict", None),
        ("/cloths/1/shrinkage", {"along": "0.03"}, "wash-not-said", "/cloths/1/wash"),
        ("/cloths/1/price", {"amount": "x", "per": "yd", "currency": "USD"}, "not-an-amount", "/cloths/1/price/amount"),
        ("/cloths/1/sold_by", "a step", "not-a-length", None),
        ("/cloths/1/repeat", {"across": "1 mm"}, "repeat-too-fine", "/cloths/1/repeat/across"),
        ("/cloths/1/width", "11 m", "wider-than-any-cloth", None),
    ],
)
def test_what_is_wrong_with_one_cloth_leaves_the_other_its_answer(at, value, code, where):
    answer = plan(changed(two_cloths(), at, value))
    assert [entry["cloth"] for entry in answer["cloths"]] == ["k1"]
    first = answer["notices"][0]
    assert (first["level"], first["code"], first["at"]) == ("stop", code, where or at)


def test_a_cushion_whose_cloth_cannot_be_read_makes_every_cloth_wait():
    document = changed(two_cloths(), "/cushions/1/cover/front", {"cloth": 3})
    found = problems(document)
    assert ("/cushions/1/cover/front/cloth", "not-text") in found


def test_a_cloth_nothing_is_cut_from_may_contradict_itself():
    document = two_cloths()
    document["cushions"].pop()
    document["cloths"][1]["shrinkage"] = {"along": "0.03"}
    assert [entry["cloth"] for entry in plan(document)["cloths"]] == ["k1"]


def test_every_panel_that_is_too_wide_is_named():
    document = job([covers(1, "59 in", "60 in"), covers(1, "61 in", "70 in", id="c2")], cloth("54 in"))
    with pytest.raises(JobError) as raised:
        plan(document)
    texts = [problem["text"].split(";")[0] for problem in raised.value.problems]
    assert texts == [
        "The front is 60 in wide",
        "The back is 60 in wide",
        "The front is 62 in wide",
        "The back is 62 in wide",
    ]


def test_a_panel_too_high_for_railroaded_cloth_is_offered_upright():
    document = job(covers(1, "19 in", "59 in"), cloth("54 in", up="left"))
    with pytest.raises(JobError) as raised:
        plan(document)
    problem = raised.value.problems[0]
    assert problem["at"] == "/cushions/0/insert/length"
    assert problem["text"].startswith("The front is 60 in high, lying on its side; cloth 1 has 54 in usable.")
    assert problem["way_out"]["change"] == [{"at": "/cloths/0/up", "value": "away"}]
    assert plan(changed(document, "/cloths/0/up", "away"))["cloths"]


def test_more_panels_than_a_plan_is_made_for_are_refused():
    assert problems(changed(plain(), "/cushions/0/quantity", 1501)) == {("/cushions", "too-many")}


def test_a_motif_offset_beyond_the_face_is_refused():
    document = job(covers(1, "18 in", "18 in", pattern="centred", motif="m1"), printed(start="choose"))
    document["cushions"][0]["cover"]["front"]["offset"] = {"along": "30 in"}
    assert problems(document) == {("/cushions/0/cover/front/offset/along", "rules-contradict")}


def test_a_size_made_away_is_said_where_it_was_taken_off():
    assert problems(changed(plain(), "/cushions/0/cover/smaller_by", "20 in")) == {
        ("/cushions/0/cover/smaller_by", "nothing-left")
    }
    niche = changed(changed(plain(), "/cushions/0/insert/measured", "opening"), "/cushions/0/insert/clearance", "20 in")
    assert problems(niche) == {("/cushions/0/insert/clearance", "nothing-left")}


@pytest.mark.parametrize(
    ("at", "value"),
    [
        pytest.param("/version", 10**5000, id="version"),
        pytest.param("/cushions/0/quantity", 10**5000, id="quantity"),
        pytest.param("/name", "half \ud800", id="name"),
        pytest.param("/units", "\ud800", id="units"),
    ],
)
def test_values_that_no_file_should_hold_are_refused_in_words(at, value):
    assert problems(changed(plain(), at, value))


def test_a_field_whose_name_is_no_text_is_refused():
    assert problems({**plain(), 3: "x"}) == {("/3", "unknown-field")}


def test_a_width_that_washes_away_to_nothing_is_refused():
    document = job(
        covers(1, "18 in", "18 in"),
        cloth("3 mm", selvedge="1.499999 mm", shrinkage={"across": "0.9"}, wash="before-cutting"),
    )
    assert ("/cloths/0/selvedge", "rules-contradict") in problems(document)


def test_an_effort_there_is_not_is_refused():
    with pytest.raises(ValueError, match="quick, full"):
        plan(plain(), "best")
