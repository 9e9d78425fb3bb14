"""Ways to make a job side by side: each is planned apart, priced, and gives what it promised when it is taken."""

import json
from functools import cache
from pathlib import Path

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, example, job
from test_joins import bench, medallions

import plumpline
from plumpline import JobError, plan
from plumpline.__main__ import main
from plumpline.ask import ask, begin
from plumpline.beside.comparing import compare

PRICE = {"amount": "40.00", "per": "yd", "currency": "USD"}


def group(document, kind):
    return next(one for one in groups(document) if one["kind"] == kind)


def groups(document):
    """The groups of a comparison; a job that is compared in several tests is compared once."""
    return json.loads(_compared(json.dumps(document)))["groups"]


@cache
def _compared(document):
    return json.dumps(compare(json.loads(document)))


def lines(document, kind):
    return {line["name"]: line for line in group(document, kind)["lines"]}


def told(line):
    (cloth_,) = line["cloths"]
    return cloth_["laid"]["text"], cloth_["ask"]["text"], line["cost"] and line["cost"]["amount"]


def taken(document, line):
    for change in line["change"]:
        document = changed(document, change["at"], change["value"])
    return document


def taking_each_gives_what_it_promised(document, kind):
    """Every way that was found, taken and planned by `plan`: the same length and cost, and a plan that is checked."""
    ways = group(document, kind)["lines"]
    assert any(line["state"] == "found" for line in ways)
    for line in ways:
        after = taken(document, line)
        if line["state"] == "found":
            answer = plan(after)
            check(after, answer)
            bought = {entry["cloth"]: (entry["buy"], entry["ask"]) for entry in answer["cloths"]}
            assert {entry["cloth"]: (entry["buy"], entry["ask"]) for entry in line["cloths"]}.items() <= bought.items()


# ---- case A11: a motif in the middle both ways; repeat 52 cm along, 45 cm across, panels cut 45 × 45 cm --------------

EIGHT = {
    "repeat": {"across": "45 cm", "along": "52 cm"},
    "motifs": [{"id": "m1", "across": "23.5 cm", "along": "0 cm"}],
    "start": "choose",
    "sold_by": "10 cm",
}


def porch(pattern="free", column="23.5 cm", **more):
    """Four covers with two faces cut 45 × 45 cm, of cloth with 137 cm between its selvedges."""
    motif = {"motif": "m1"} if pattern == "centred" else {}
    cushion = covers(4, "43 cm", "43 cm", seam="1 cm", pattern=pattern, **motif)
    print_ = {**EIGHT, "motifs": [{"id": "m1", "across": column, "along": "0 cm"}], **more}
    return job(cushion, cloth("137 cm", **print_), units="cm")


@pytest.mark.parametrize(
    ("column", "start", "unmatched", "centred"),
    [
        # Three across fit where the first column is 22.5 to 24.5 cm from the edge: 3 rows, 3 × 45 or 2 × 52 + 45 cm.
        ("23.5 cm", "choose", "1.4 m", "1.5 m"),
        # Nobody knows where the cut will fall: 149 + 52 = 201 cm.
        ("23.5 cm", "unknown", "1.4 m", "2.1 m"),
        # With a motif on the selvedge it is 2 across and 4 rows: 3 × 52 + 45 = 201 cm, unknown 253 cm.
        ("0 cm", "choose", "1.4 m", "2.1 m"),
        ("0 cm", "unknown", "1.4 m", "2.6 m"),
    ],
)
def test_a11_unmatched_and_centred_are_priced_side_by_side(column, start, unmatched, centred):
    """Case A11, by hand as beside each row; sold by 10 cm."""
    found = lines(porch(column=column, start=start), "pattern")
    assert found["Unmatched: cut anywhere"]["cloths"][0]["ask"]["text"] == unmatched
    assert found["Centred: a motif in the middle of each face"]["cloths"][0]["ask"]["text"] == centred


def test_what_a_way_takes_more_is_said_with_the_reason():
    """By hand: 201 − 135 cm are 66 cm, sold as 2.1 and 1.4 m; 0.7 m at 10.00 are 7.00."""
    document = porch(column="0 cm", start="unknown", price={"amount": "10.00", "per": "m", "currency": "GBP"})
    found = lines(document, "pattern")
    least, centred = found["Unmatched: cut anywhere"], found["Centred: a motif in the middle of each face"]
    assert (least["more"], least["current"], least["cost"]["amount"]) == (None, True, "14.00")
    assert least["text"] == "3 across 137 cm; 3 rows × 45 cm = 135 cm."
    assert centred["more"] == "12.00 GBP and 1.2 m more"
    assert centred["text"] == (
        "2 across instead of 3. 2 across 137 cm; 4 rows: 3 × 52 cm from row to row + 45 cm = 201 cm. "
        "A whole repeat of 52 cm is added, because the cut may fall anywhere."
    )


def test_without_a_motif_the_maker_is_told_what_to_say_first():
    document = porch()
    del document["cloths"][0]["motifs"]
    ways = group(document, "pattern")["lines"]
    assert [(line["state"], line["cloths"]) for line in ways[-3:]] == [("cannot", [])] * 3
    assert ways[-1]["text"] == "Say where a motif lies on cloth 1, and this can be priced."


def test_a_cover_without_back_has_no_way_with_plain_backs():
    """A bolster has a body and two ends."""
    document = example("harbour-room")
    document["cushions"] = [
        {
            "id": "c1",
            "quantity": 1,
            "kind": "bolster",
            "insert": {"shape": "bolster", "diameter": "8 in", "length": "20 in"},
            "cover": {"front": {"cloth": "k1", "pattern": "alike"}, "sides": {"pattern": "alike"}},
        }
    ]
    document["cloths"][0]["repeat"] = {"across": "9 in", "along": "9 in"}
    names = list(lines(document, "pattern"))
    assert "Fronts centred, backs cut anywhere" not in names
    assert "As it is now" not in names or lines(document, "pattern")["As it is now"]["current"]


def test_what_is_none_of_the_ways_stands_among_them_as_it_is():
    document = changed(porch(), "/cushions/0/cover/back/pattern", "alike")
    assert lines(document, "pattern")["As it is now"]["current"]


def test_every_pattern_choice_taken_gives_what_it_promised():
    taking_each_gives_what_it_promised(porch("alike", start="unknown"), "pattern")


def test_a_pattern_that_does_not_repeat_across_has_no_stripe_to_centre():
    document = changed(porch(), "/cloths/0/repeat", {"along": "52 cm"})
    names = [line["name"] for line in group(document, "pattern")["lines"]]
    assert "A stripe in the middle, anywhere along it" not in names
    assert "A stripe in the middle, anywhere along it" in lines(porch(), "pattern")


# ---- nap and direction ----------------------------------------------------------------------------------------------


def test_a_half_turn_is_a_choice_only_where_it_changes_anything():
    """A square panel cut anywhere lies turned by half as it lay before; one on a motif off its middle does not."""
    assert "Free to turn by half" not in lines(example("harbour-room"), "direction")
    document = porch("centred")
    for face in ("front", "back"):
        document = changed(document, f"/cushions/0/cover/{face}/offset", {"across": "0 cm", "along": "5 cm"})
    assert "Free to turn by half" in lines(document, "direction")


def test_panels_along_the_roll_are_priced_beside_upright_ones():
    """By hand, 4 panels of 26 × 18 in on 54 in: 2 across, 2 rows × 18 = 36 in; aside 3 across, 2 rows × 26 = 52 in."""
    document = job(covers(2, "25 in", "17 in"), cloth("54 in", price=PRICE))
    found = lines(document, "direction")
    assert told(found["All one way, upright"]) == ("36 in", "1 yd", "40.00")
    assert told(found["All one way, along the roll"]) == ("52 in", "1 1/2 yd", "60.00")
    assert found["All one way, along the roll"]["more"] == "20.00 USD and 1/2 yd more"
    assert found["All one way, along the roll"]["text"].startswith("3 across instead of 2.")
    assert (found["Free to turn any way"]["more"], found["All one way, upright"]["more"]) == ("the same", None)
    taking_each_gives_what_it_promised(document, "direction")


# ---- cases A38 and A39: wider than the cloth ------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("column", "name", "expected"),
    [
        ("12 in", "Join one piece to a side, the pattern not matched, 2 joins in all", ("73 in", "2 1/8 yd", "85.00")),
        ("12 in", "Run every panel along the roll, with the pattern on its side", ("78 in", "2 1/4 yd", "90.00")),
        ("12 in", "Join one piece to a side, the pattern matched, 2 joins in all", ("100 in", "2 7/8 yd", "115.00")),
        (
            "27 in",
            "Join an equal piece to each end, the pattern matched, 4 joins in all",
            ("154 in", "4 3/8 yd", "175.00"),
        ),
    ],
    ids=["not matched", "along the roll", "matched", "matched at both ends"],
)
def test_a38_the_four_choices_stand_side_by_side(column, name, expected):
    """Case A38, a bench of 77 × 18 × 3 in with medallions 27 in apart: 2 × 27 + 19, 78, and 100 and 154 in by hand."""
    assert told(lines(job(bench(), medallions(column)), "joins")[name]) == expected


def test_a38_a_choice_that_cannot_be_made_says_why():
    found = group(job(bench(), medallions("27 in")), "joins")
    cannot = [line for line in found["lines"] if line["state"] == "cannot"]
    assert cannot == found["lines"][-len(cannot) :]
    assert cannot[0]["text"].startswith("The front right cannot have this motif in its middle")
    assert (cannot[0]["cost"], cannot[0]["more"], cannot[0]["cloths"]) == (None, None, [])


def test_a39_the_bench_is_turned_along_the_roll_for_a_yard_and_five_eighths_without_a_join():
    """Case A39: 56 × 12 in on 54 in cloth; joined it takes less length, turned none of the joins."""
    document = job(covers(1, "56 in", "12 in"), cloth("54 in"))
    found = lines(document, "joins")
    assert told(found["Run every panel along the roll"]) == ("57 in", "1 5/8 yd", None)
    assert "Join an equal piece to each end, 4 joins in all" in found
    assert not any(line["current"] for line in found.values())
    taking_each_gives_what_it_promised(document, "joins")


@pytest.mark.parametrize("name", ["Run every panel along the roll", "Join an equal piece to each end, 4 joins in all"])
def test_once_taken_the_other_ways_can_still_be_taken(name):
    document = job(covers(1, "56 in", "12 in"), cloth("54 in"))
    before = lines(document, "joins")
    document = taken(document, before[name])
    after = lines(document, "joins")
    assert after[name]["current"]
    assert {way: told(line) for way, line in after.items()} == {way: told(line) for way, line in before.items()}
    taking_each_gives_what_it_promised(document, "joins")


# ---- what the whole comparison says ---------------------------------------------------------------------------------


def test_what_costs_least_comes_first_and_what_cannot_be_made_last():
    for one in groups(example("printed-panels")):
        costs = [float(line["cost"]["amount"]) for line in one["lines"]]
        assert costs == sorted(costs)
        assert one["lines"][0]["more"] is None


def test_without_prices_what_buys_least_comes_first():
    document = example("printed-panels")
    del document["cloths"][0]["price"]
    bought = [line["cloths"][0]["buy"]["nm"] for line in group(document, "pattern")["lines"]]
    assert bought == sorted(bought)
    assert group(document, "pattern")["lines"][-1]["more"] == "2 yd more"


def test_a_cloth_that_only_piping_is_cut_from_has_no_panels_to_lay():
    document = example("harbour-room")
    document["cloths"].append({"id": "k2", "name": "cord cloth", "width": "54 in"})
    document["cushions"][0]["cover"]["edge"] = {"kind": "piped", "cloth": "k2"}
    titles = [one["title"] for one in groups(document)]
    assert titles == ["Which way plain linen lies"]
    document["cloths"][1]["repeat"] = {"across": "4 in", "along": "4 in"}
    assert [one["cloths"] for one in groups(document)] == [["k1"], ["k2"]]


def test_a_cloth_that_is_not_measured_yet_is_left_out():
    document = example("harbour-room")
    document["cloths"].append({"id": "k2", "name": "second"})
    document["cushions"][0]["cover"]["back"]["cloth"] = "k2"
    assert [one["cloths"] for one in groups(document)] == [["k1"]]


def test_a_job_without_anything_to_plan_says_what_is_wrong():
    nothing = {**example("harbour-room"), "cushions": []}
    with pytest.raises(JobError) as raised:
        compare(nothing)
    assert raised.value.problems[0]["code"] == "missing-field"
    with pytest.raises(JobError):
        compare({"format": "plumpline-job"})
    wrong = json.loads(ask(json.dumps({"do": "compare", "job": nothing})))
    assert set(wrong) == {"problems"}


# ---- the doors ------------------------------------------------------------------------------------------------------


def test_the_ways_are_known_at_once_and_what_they_take_one_after_the_other():
    document = job(covers(1, "56 in", "12 in"), cloth("54 in"))
    session = begin(json.dumps({"do": "compare", "job": document}))
    seen = [json.loads(session.reply())]
    progress = []
    while session.step():
        told_ = json.loads(session.progress())
        progress.append(told_["thousandths"])
        if told_["news"]:
            seen.append(json.loads(session.reply()))
    assert [len(one["lines"]) for one in seen[0]["ok"]["groups"]] == [4]
    assert {line["state"] for one in seen[0]["ok"]["groups"] for line in one["lines"]} == {"waiting"}
    assert all(reply["unfinished"] for reply in seen)
    found = [
        sum(line["state"] == "found" for one in reply["ok"]["groups"] for line in one["lines"]) for reply in seen
    ]
    assert found == sorted(found)
    assert progress == sorted(progress)
    assert [reply["ok"]["looked"] for reply in seen] == sorted(reply["ok"]["looked"] for reply in seen)
    assert json.loads(session.reply()) == {"ok": compare(document)}
    assert json.loads(session.progress())["thousandths"] == 1000


def test_the_words_can_be_american():
    request = {"do": "compare", "job": porch(), "words": "en-US"}
    answer = ask(json.dumps(request))
    assert "Centered: a motif in the middle of each face" in answer
    assert "entred: a" not in answer.replace("Centered", "")


def test_the_command_line_gives_the_same_answer(tmp_path, capsys):
    path = tmp_path / "job.json"
    path.write_text(json.dumps(example("harbour-room")), encoding="utf-8")
    assert main(["compare", str(path)]) == 0
    assert json.loads(capsys.readouterr().out) == compare(example("harbour-room"))
    path.write_text(json.dumps({**example("harbour-room"), "cushions": []}), encoding="utf-8")
    assert main(["compare", str(path)]) == 1
    assert "problems" in json.loads(capsys.readouterr().out)


@pytest.mark.reference
def test_the_answer_is_valid():
    """Validated with jsonschema, the reference implementation of JSON Schema for Python."""
    from jsonschema import Draft202012Validator
    from referencing import Registry, Resource

    folder = Path(plumpline.__file__).parent / "schema"
    schemas = [json.loads((folder / f"{name}.schema.json").read_text("utf-8")) for name in ("plan", "comparison")]
    registry = Registry().with_resources((schema["$id"], Resource.from_contents(schema)) for schema in schemas)
    answers = Draft202012Validator(schemas[1], registry=registry)
    for document in (porch(), job(covers(1, "56 in", "12 in"), cloth("54 in")), example("printed-panels")):
        answers.validate(compare(document))


# ---- several cloths for one use -------------------------------------------------------------------------------------


def bolts(**faces):
    """Six covers of 18 in panels: linen 54 in at 32.00, canvas 45 in at 30.00 and twill 60 in at 40.00 a yard."""
    cloths = [
        cloth(width, id=id_, name=name, price={"amount": price, "per": "yd", "currency": "USD"}, **more)
        for id_, name, width, price, more in (
            ("k1", "linen", "54 in", "32.00", {}),
            ("k2", "canvas", "45 in", "30.00", {"instead_of": "k1"}),
            ("k3", "twill", "60 in", "40.00", {"instead_of": "k1"}),
        )
    ]
    return job(covers(6, "17 in", "17 in", **faces), cloths)


def test_each_bolt_is_planned_and_sorted_by_what_it_costs_with_the_reason():
    """By hand: 12 panels; 3 across, 4 × 18 = 72 in, 2 yd; canvas 2 across, 6 × 18 = 108 in, 3 yd."""
    found = group(bolts(), "cloths")["lines"]
    assert [(line["name"], told(line), line["more"]) for line in found] == [
        ("Linen", ("72 in", "2 yd", "64.00"), None),
        ("Twill", ("72 in", "2 yd", "80.00"), "16.00 USD more"),
        ("Canvas", ("108 in", "3 yd", "90.00"), "26.00 USD and 1 yd more"),
    ]
    assert found[0]["current"]
    assert found[1]["text"].startswith("40.00 USD a yd instead of 32.00.")
    assert found[2]["text"].startswith("2 across instead of 3. 30.00 USD a yd instead of 32.00.")
    taking_each_gives_what_it_promised(bolts(), "cloths")


def test_once_a_bolt_is_taken_the_others_stay_beside_it():
    document = taken(bolts(), lines(bolts(), "cloths")["Canvas"])
    found = lines(document, "cloths")
    assert list(found) == ["Linen", "Twill", "Canvas"]
    assert [name for name, line in found.items() if line["current"]] == ["Canvas"]


def test_front_and_back_are_chosen_together():
    """By hand, 6 panels each: linen 2 rows, 36 in, 1 yd, 32.00; canvas 3 rows, 54 in, 1 1/2 yd, 45.00; calico 18.00."""
    document = bolts()
    document["cushions"][0]["cover"]["back"]["cloth"] = "k4"
    price = {"amount": "18.00", "per": "yd", "currency": "USD"}
    document["cloths"] = [
        *document["cloths"][:2],
        cloth("54 in", id="k4", name="calico", price=price),
        cloth("54 in", id="k5", name="lawn", price={**price, "amount": "20.00"}, instead_of="k4"),
    ]
    found = group(document, "cloths")["lines"]
    assert [(line["name"], line["cost"]["amount"]) for line in found] == [
        ("Front: linen · back: calico", "50.00"),
        ("Front: linen · back: lawn", "52.00"),
        ("Front: canvas · back: calico", "63.00"),
        ("Front: canvas · back: lawn", "65.00"),
    ]
    assert [entry["ask"]["text"] for entry in found[2]["cloths"]] == ["1 1/2 yd", "1 yd"]
    assert found[2]["text"].startswith("canvas: 2 across instead of 3.")


def test_more_ways_than_are_looked_at_are_counted():
    document = bolts()
    document["cushions"][0]["cover"]["back"]["cloth"] = "k4"
    document["cloths"] += [
        cloth("54 in", id=f"k{number}", **({"instead_of": "k4"} if number > 4 else {})) for number in range(4, 9)
    ]
    found = group(document, "cloths")
    assert len(found["lines"]) == 12
    assert found["text"] == "3 more ways to put them together are not looked at."


def test_a_motif_of_its_own_is_taken_and_a_cloth_without_pattern_places_nothing():
    plain = cloth("54 in", id="k2", name="plain", instead_of="k1")
    other = cloth("54 in", id="k3", name="stars", instead_of="k1", repeat={"across": "9 in", "along": "9 in"})
    stars = {**other, "motifs": [{"id": "m7", "across": "4 1/2 in", "along": "0 in"}]}
    bare = {**other, "id": "k4", "name": "bare"}
    document = job(covers(1, "17 in", "17 in", pattern="centred", motif="m1"), [medallions(), plain, stars, bare])
    found = lines(document, "cloths")
    assert found["Plain"]["note"] == "plain has no repeat: nothing is placed on it."
    assert {change["value"] for change in found["Stars"]["change"]} == {"k3", "m7"}
    assert (found["Bare"]["state"], found["Stars"]["state"]) == ("cannot", "found")
    assert "There is no motif “m1” on bare" in found["Bare"]["text"]
    taking_each_gives_what_it_promised(document, "cloths")


def test_a_bolt_that_is_not_measured_yet_says_so():
    document = changed(bolts(), "/cloths/1/width", None)
    line = lines(document, "cloths")["Canvas"]
    assert (line["state"], line["text"]) == ("cannot", "Measure the width of canvas, between its two edges.")


def test_borders_and_edges_change_their_cloth_as_well():
    document = bolts()
    cover = document["cushions"][0]["cover"]
    cover["front"]["made"] = {"kind": "border", "cloth": "k1", "width": "3 in"}
    cover["edge"] = {"kind": "piped", "cloth": "k1"}
    change = lines(document, "cloths")["Canvas"]["change"]
    places = ["edge/cloth", "front/cloth", "front/made/cloth", "back/cloth"]
    assert sorted(one["at"] for one in change) == sorted(f"/cushions/0/cover/{place}" for place in places)


def test_a_cloth_cannot_take_the_place_of_one_there_is_not():
    with pytest.raises(JobError) as raised:
        plan(changed(bolts(), "/cloths/0/instead_of", "k9"))
    assert [(one["at"], one["code"]) for one in raised.value.problems] == [("/cloths/0/instead_of", "no-such-cloth")]


def test_a_bolt_taken_for_one_that_is_not_measured_can_be_compared_with_it():
    """The cloth in use waits for its width; another cover is cut from a measured one, and the other bolt is too."""
    document = changed(bolts(), "/cloths/0/width", None)
    document["cloths"].append(cloth("54 in", id="k9", name="backing"))
    document["cushions"].append(covers(1, "17 in", "17 in", id="c2", cloth="k9"))
    found = lines(document, "cloths")
    assert (found["Linen"]["state"], found["Canvas"]["state"]) == ("cannot", "found")
    assert found["Linen"]["text"] == "Measure the width of linen, between its two edges."
