"""The answers that the core's contract states for its own example job, recomputed."""

import functools
import json
import subprocess
import sys

import pytest
from answer_checker import check
from jobs import EXAMPLES, changed, example

from plumpline import JobError, plan
from plumpline.__main__ import main
from plumpline.lengths import read_length

IN = 25_400_000


def nm(text):
    return read_length(text)


def codes(answer):
    return [notice["code"] for notice in answer["notices"]]


def test_twelve_panels_on_54_inches_edge_to_edge_take_72_inches_and_nobody_should_ask_for_it():
    job = example("harbour-room")
    answer = plan(job)
    cloth = answer["cloths"][0]
    assert cloth["across"] == 3
    assert cloth["laid"] == {"nm": 72 * IN, "text": "72 in"}
    assert cloth["proven"] is True
    assert cloth["buy"]["nm"] == nm("2 yd")
    assert cloth["ask"] == {"text": "2 yd", "other": "1.83 m"}
    assert cloth["cost"] == {"amount": "64.00", "currency": "USD"}
    assert codes(answer) == ["no-selvedge-margin", "no-squaring-margin"]
    assert check(job, answer) == 24
    assert {(p["id"], p["count"], p["width"]["text"], p["length"]["text"]) for p in answer["pieces"]} == {
        ("c1.front", 6, "18 in", "18 in"),
        ("c1.back", 6, "18 in", "18 in"),
    }


def test_a_half_inch_of_selvedge_costs_a_whole_yard():
    answer = plan(changed(example("harbour-room"), "/cloths/0/selvedge", "1/2 in"))
    cloth = answer["cloths"][0]
    assert (cloth["across"], cloth["laid"]["nm"], cloth["proven"]) == (2, 108 * IN, True)
    assert cloth["ask"]["text"] == "3 yd"


def test_with_the_usual_margins_the_way_out_is_a_little_less_side_seam_and_comes_first():
    job = changed(changed(example("harbour-room"), "/cloths/0/selvedge", None), "/cloths/0/squaring", None)
    answer = plan(job)
    cloth = answer["cloths"][0]
    assert (cloth["laid"]["nm"], cloth["needed"]["nm"]) == (108 * IN, 110 * IN)
    assert cloth["ask"]["text"] == "3 1/8 yd"
    first = answer["notices"][0]
    assert first["code"] == "one-more-would-fit"
    way_out = first["way_out"]
    assert way_out["text"] == "Cut the panels 17 5/8 in wide (side seams 5/16 in)"
    assert (way_out["ask"], way_out["saves"]) == ("2 1/8 yd", "1 yd")
    for change in way_out["change"]:
        job = changed(job, change["at"], change["value"])
    taken = plan(job)["cloths"][0]
    assert (taken["laid"]["nm"], taken["needed"]["nm"], taken["buy"]["nm"]) == (72 * IN, 74 * IN, nm("2 1/8 yd"))


def test_a_print_centred_on_washed_cloth_takes_four_and_an_eighth_yards():
    job = example("printed-panels")
    answer = plan(job)
    cloth = answer["cloths"][0]
    assert cloth["across"] == 2
    assert cloth["laid"]["nm"] == nm("140.4625 in")
    assert cloth["proven"] is True
    assert cloth["needed"]["nm"] == -(-nm("140.4625 in") * 100 // 97)
    assert cloth["ask"]["text"] == "4 1/8 yd"
    assert cloth["cost"] == {"amount": "132.00", "currency": "USD"}
    assert cloth["start"] == {"motif": "m1", "along": {"nm": 9 * IN, "text": "9 in"}}
    check(job, answer)


def job_of(path):
    return json.loads(path.read_text(encoding="utf-8"))


@functools.cache
def planned(path, effort="full"):
    """The answer to an example, made once for all tests here that only look at it."""
    return plan(job_of(path), effort)


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_every_example_answers_and_keeps_every_rule(path):
    job = job_of(path)
    assert check(job, planned(path)) > 0
    assert check(job, planned(path, "quick")) > 0


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_the_same_job_gives_the_same_bytes_again(path):
    assert json.dumps(plan(job_of(path))) == json.dumps(planned(path))


def test_full_effort_never_asks_for_more_than_quick():
    for path in EXAMPLES:
        quick, full = planned(path, "quick"), planned(path)
        for first, better in zip(quick["cloths"], full["cloths"], strict=True):
            assert better["buy"]["nm"] <= first["buy"]["nm"]


def run(*arguments, **options):
    return subprocess.run(
        [sys.executable, "-m", "plumpline", *arguments], capture_output=True, text=True, check=False, **options
    )


@pytest.mark.reference
def test_the_command_writes_the_same_answer_as_the_function():
    path = EXAMPLES[0]
    done = run("plan", str(path))
    assert done.returncode == 0
    assert json.loads(done.stdout) == planned(path)


@pytest.mark.reference
def test_the_command_writes_problems_and_exits_with_one(tmp_path):
    job = changed(example("harbour-room"), "/cloths/0/width", "12 in")
    file = tmp_path / "job.json"
    file.write_text(json.dumps(job), encoding="utf-8")
    done = run("plan", str(file), "--effort", "quick")
    assert done.returncode == 1
    with pytest.raises(JobError) as raised:
        plan(job)
    assert json.loads(done.stdout) == {"problems": raised.value.problems}


@pytest.mark.reference
def test_the_command_refuses_a_file_that_is_no_json_in_words(tmp_path):
    file = tmp_path / "job.json"
    file.write_text("{", encoding="utf-8")
    done = run("plan", str(file))
    assert done.returncode == 1
    problem = json.loads(done.stdout)["problems"][0]
    assert problem["code"] == "not-a-job"
    assert str(file) in problem["text"]


def test_the_command_line_without_a_process_says_the_same(tmp_path, capsys):
    good, bad, broken = (tmp_path / name for name in ("good.json", "bad.json", "broken.json"))
    good.write_text(json.dumps(example("harbour-room")), encoding="utf-8")
    bad.write_text("{}", encoding="utf-8")
    broken.write_text("{", encoding="utf-8")
    assert main(["plan", str(good), "--effort", "quick"]) == 0
    assert json.loads(capsys.readouterr().out) == plan(example("harbour-room"), "quick")
    for file in (bad, broken):
        assert main(["plan", str(file)]) == 1
        assert json.loads(capsys.readouterr().out)["problems"]
