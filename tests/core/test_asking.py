"""The door for callers that speak JSON: every request gets a reply as text, in words where something is wrong."""

import json

import pytest
from jobs import changed, example

from plumpline import plan
from plumpline.ask import ask


def asked(**request):
    return json.loads(ask(json.dumps(request)))


def test_a_plan_is_the_plan():
    job = example("harbour-room")
    assert asked(do="plan", job=job) == {"ok": plan(job)}
    assert asked(do="plan", job=job, effort="quick") == {"ok": plan(job, "quick")}


def test_a_job_with_problems_gets_them():
    reply = asked(do="plan", job={})
    assert {"at": "/units", "code": "missing-field"}.items() <= reply["problems"][3].items()


def test_covers_are_worked_out_before_there_is_any_cloth():
    job = example("harbour-room")
    whole = plan(job)["cushions"]
    del job["cloths"][0]["width"]
    reply = asked(do="plan", job=job)
    assert [problem["code"] for problem in reply["problems"]] == ["missing-width"]
    assert reply["cushions"] == whole
    assert asked(do="plan", job={})["cushions"] == []


def test_a_job_file_is_checked_whole_before_it_is_taken_in():
    assert asked(do="check", job=example("size-wanted")) == {"ok": {"version": 1}}
    assert asked(do="check", job={"version": 7})["problems"]


def test_a_file_with_one_broken_entry_is_not_taken_in_though_the_rest_could_be_answered():
    job = example("size-wanted")
    job["cushions"][0]["quantity"] = "many"
    assert [problem["code"] for problem in asked(do="check", job=job)["problems"]] == ["not-a-count"]


@pytest.mark.parametrize(
    ("at", "value"),
    [
        ("/cushions/0/insert/width", "wide"),
        ("/cushions/0/thickness", "3 in"),
        ("/cushions/0/cover/front/cloth", "k9"),
        ("/cloths/0/id", None),
        ("/cloths/0/motifs", [{"across": "3 in", "along": "0 in"}]),
    ],
)
def test_a_file_with_a_slip_anywhere_in_it_is_not_taken_in(at, value):
    assert asked(do="check", job=changed(example("harbour-room"), at, value))["problems"]


@pytest.mark.parametrize(
    ("at", "value"),
    [
        ("/cloths/0/price", {"per": "yd", "currency": "USD"}),
        ("/cloths/0/price", {"amount": "1,234", "per": "yd", "currency": "USD"}),
        ("/cloths/0/motifs", [{"id": "m1"}]),
        ("/cushions/0/cover/front/pattern", "centred"),
        ("/cloths/0/shrinkage", {"along": "0.03"}),
    ],
)
def test_b24_a_job_left_half_entered_is_taken_in_again(at, value):
    assert asked(do="check", job=changed(example("harbour-room"), at, value)) == {"ok": {"version": 1}}


def test_a_job_still_being_measured_is_a_sound_document():
    job = example("harbour-room")
    del job["cushions"][0]["insert"]["width"]
    assert asked(do="check", job=job) == {"ok": {"version": 1}}


def test_a_reading_comes_back_in_both_systems_and_in_words():
    read = asked(do="read", text="17 5/8", unit="in")["ok"]
    assert read["nm"] == 447_675_000
    assert read["texts"] == {"in": "17 5/8 in", "cm": "≈ 44.77 cm"}
    assert read["spoken"] == "seventeen and five eighths inches"
    assert asked(do="read", text="45,5", unit="cm")["ok"]["understood"] == "45.5 cm"


def test_a_reading_with_its_own_unit_is_said_in_it():
    assert asked(do="read", text="45.5 cm")["ok"]["spoken"]


def test_a_reading_that_is_none_is_refused_in_words():
    (problem,) = asked(do="read", text="17 5/8 x", unit="in")["problems"]
    assert "17 5/8" in problem["text"]


@pytest.mark.parametrize(("text", "amount"), [("1.234,56", "1234.56"), ("1,234.56", "1234.56"), ("32", "32.00")])
def test_b15_a_price_is_read_as_it_was_meant(text, amount):
    assert asked(do="read-money", text=text, currency="USD")["ok"]["amount"] == amount


def test_b15_a_price_that_could_be_two_is_asked_about():
    (problem,) = asked(do="read-money", text="1,234", currency="USD")["problems"]
    assert problem["code"] == "ambiguous-amount"


def test_a_request_nobody_knows_is_said():
    assert asked(do="dance")["problems"][0]["code"] == "unknown-value"
    assert asked()["problems"][0]["code"] == "unknown-value"


def test_letters_of_every_language_pass_as_they_are():
    job = example("harbour-room")
    job["cloths"][0]["name"] = "Łucja Ñandú ½ €"
    assert "Łucja Ñandú ½ €" in ask(json.dumps({"do": "plan", "job": job}))


@pytest.mark.parametrize(
    "request_", ["[]", "null", "{", '{"do":"plan"}', '{"do":["x"]}', '{"do":"read-money","text":"1"}']
)
def test_a_request_that_is_none_gets_a_problem_and_no_exception(request_):
    assert json.loads(ask(request_))["problems"]


@pytest.mark.parametrize(
    ("of", "part", "unit", "text"),
    [
        ("27 in", [1, 2], "in", "13 1/2 in"),
        # 25 1/4 in is 404/16 in: a third of it 134.67/16 in, so 135/16 in.
        ("25 1/4 in", [1, 3], "in", "8 7/16 in"),
        # Half of 1/16 in lies between two marks: to the even one.
        ("1/16 in", [1, 2], "in", "0 in"),
        ("3/16 in", [1, 2], "in", "1/8 in"),
        ("64 cm", [37, 100], "cm", "23.7 cm"),  # 23.68 cm
        ("27 in", [1, 2], "cm", "34.3 cm"),  # 34.29 cm
        ("27 in", [0, 900], "in", "0 in"),
        ("27 in", [900, 900], "in", "27 in"),
    ],
)
def test_a_place_a_finger_pointed_at_is_the_nearest_mark_of_the_tape(of, part, unit, text):
    """Worked out by hand."""
    assert asked(do="part", of=of, part=part, unit=unit)["ok"]["text"] == text


@pytest.mark.parametrize(
    ("of", "part", "unit", "code"),
    [
        ("wide", [1, 2], "in", "not-a-length"),
        ("27 in", [1, 0], "in", "unknown-value"),
        ("27 in", [0, 0], "in", "unknown-value"),
        ("27 in", [3, 2], "in", "unknown-value"),
        ("27 in", [-1, 2], "in", "unknown-value"),
        ("27 in", [0.5, 1], "in", "unknown-value"),
        ("27 in", [1], "in", "unknown-value"),
        ("27 in", "half", "in", "unknown-value"),
        ("27 in", [1, 2], "ell", "unknown-value"),
    ],
)
def test_a_part_that_is_none_is_said_to_be_so(of, part, unit, code):
    assert [problem["code"] for problem in asked(do="part", of=of, part=part, unit=unit)["problems"]] == [code]
