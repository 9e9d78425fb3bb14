"""A plan looked for slice by slice: what can be seen on the way, ended early, and comes out the same in the end."""

import json
from itertools import pairwise

import pytest
from answer_checker import check
from jobs import cloth, covers, example, job

from plumpline import JobError, plan
from plumpline.ask import ask, begin
from plumpline.planning import Planning

# Half-drop print with covers in sizes that interlock, and a plain contrast for the backs.
PRINT = {
    "repeat": {"across": "13 1/2 in", "along": "12 1/2 in", "drop": "6 1/4 in"},
    "motifs": [{"id": "m1", "across": "7 in", "along": "3 in"}],
    "start": "choose",
}


def contrast_job():
    cushions = [
        covers(4, "18 in", "18 in", id="c1", pattern="centred", motif="m1"),
        covers(3, "24 in", "16 in", id="c2"),
        covers(3, "14 in", "21 in", id="c3"),
        covers(2, "30 in", "12 in", id="c4"),
    ]
    for cushion in cushions:
        cushion["cover"]["back"] = {"cloth": "k2", "pattern": "free"}
    return job(cushions, [cloth("56 in", **PRINT), cloth("54 in", id="k2", direction="any")])


def request(document, effort="full"):
    return json.dumps({"do": "plan", "job": document, "effort": effort})


@pytest.fixture(scope="module")
def whole():
    """The answer to the job of print and contrast, as text."""
    return ask(request(contrast_job()))


@pytest.fixture(scope="module")
def walk():
    """Every step of a session on that job: [progress, reply where there was news]; the last is its end."""
    session = begin(request(contrast_job()))
    seen = []
    while session.step():
        progress = json.loads(session.progress())
        seen.append((progress, json.loads(session.reply()) if progress["news"] else None))
    return [*seen, (json.loads(session.progress()), json.loads(session.reply()))]


def test_the_answer_in_the_end_is_the_plan_byte_for_byte(walk, whole):
    assert json.dumps(walk[-1][1]) == json.dumps(json.loads(whole))


def test_the_first_answer_is_the_quick_plan(walk):
    first = next(reply for _, reply in walk if reply)
    assert first == {"ok": plan(contrast_job(), "quick"), "unfinished": True}


def test_every_answer_on_the_way_keeps_the_rules_and_none_is_longer_than_the_one_before(walk):
    answers = [reply["ok"] for _, reply in walk if reply]
    lengths = [[entry["laid"]["nm"] for entry in answer["cloths"]] for answer in answers]
    for answer in answers:
        assert check(contrast_job(), answer) == 48
    for before, after in pairwise(lengths):
        assert all(length <= earlier for length, earlier in zip(after, before, strict=True))
    assert lengths[-1] != lengths[0]


def test_progress_only_ever_grows_and_tells_the_lengths_of_the_answer(walk):
    told = [progress for progress, _ in walk]
    shares = [progress["thousandths"] for progress in told]
    assert shares == sorted(shares)
    assert shares[0] == 0
    assert shares[-1] == 1000
    assert told[0]["cloths"] == []
    for progress, reply in walk:
        if reply:
            cloths = reply["ok"]["cloths"]
            assert [entry["laid"] for entry in progress["cloths"]] == [entry["laid"] for entry in cloths]
            assert [entry["ask"] for entry in progress["cloths"]] == [entry["ask"]["text"] for entry in cloths]
            assert [entry["cloth"] for entry in progress["cloths"]] == ["k1", "k2"]


def test_a_search_at_its_end_stays_there():
    session = begin(request(example("harbour-room")))
    while session.step():
        pass
    assert session.reply() == ask(request(example("harbour-room")))
    assert not session.step()


def test_what_was_told_is_no_news():
    session = begin(request(contrast_job()))
    assert json.loads(session.progress()) == {"thousandths": 0, "cloths": [], "news": False}
    reply = session.reply()
    assert not json.loads(session.progress())["news"]
    assert session.reply() == reply


def test_a_search_ended_before_its_first_step_still_has_the_first_plan():
    session = begin(request(contrast_job()))
    assert json.loads(session.reply()) == {"ok": plan(contrast_job(), "quick"), "unfinished": True}


def test_a_quick_plan_comes_in_slices_too():
    session = begin(request(contrast_job(), "quick"))
    assert session.step()
    while session.step():
        pass
    assert json.loads(session.reply()) == {"ok": plan(contrast_job(), "quick")}


@pytest.mark.parametrize("document", [{}, {**contrast_job(), "cushions": []}])
def test_a_job_that_cannot_be_planned_ends_with_its_problems(document):
    session = begin(request(document))
    assert session.reply() == ask(request(document))
    assert json.loads(session.reply())["problems"]
    assert not session.step()
    assert json.loads(session.progress())["cloths"] == []


def test_a_cloth_that_cannot_be_laid_does_not_hold_up_the_other():
    document = contrast_job()
    document["cloths"][0]["width"] = "20 in"
    session = begin(request(document, "quick"))
    while session.step():
        pass
    answer = json.loads(session.reply())["ok"]
    assert [entry["cloth"] for entry in answer["cloths"]] == ["k2"]
    assert any(notice["level"] == "stop" for notice in answer["notices"])


def test_no_effort_but_quick_and_full_is_known():
    with pytest.raises(ValueError, match="quick, full"):
        Planning(contrast_job(), "endless")
    with pytest.raises(JobError):
        Planning({})


def test_a_longer_search_never_ends_with_a_longer_plan():
    for document in (contrast_job(), example("printed-panels"), example("flawed-bolt"), example("size-wanted")):
        for quick, full in zip(plan(document, "quick")["cloths"], plan(document)["cloths"], strict=True):
            assert full["laid"]["nm"] <= quick["laid"]["nm"]
            assert full["straight"]["laid"]["nm"] <= quick["straight"]["laid"]["nm"]
            assert full["at_least"]["nm"] >= quick["at_least"]["nm"]
