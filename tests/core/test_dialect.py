"""The trade's words in American: every text of an answer, no name and no code, and nothing that the maker wrote.

Spellings as American dictionaries have them; welt, zipper, ruffle, baste and serge are common practice there.
"""

import json
import re

import pytest
from jobs import EXAMPLES, changed, example
from printed import texts

from plumpline import plan
from plumpline.__main__ import main
from plumpline.ask import ask, begin
from plumpline.dialect import WORDINGS, reworded, wording
from plumpline.papers import sheet, templates

# What no American text has, on its own or as the beginning of a word.
BRITISH = re.compile(
    r"\b(zips?\b|zipped|pip(ed|ing)\b|frill|haberdash|selvedge|overlock|tack(ed|ing)?\b|mitre|fibre|centre|\w*metres?\b"
    r"|anticlock|neighbour|colour|grey)",
    re.IGNORECASE,
)


@pytest.mark.parametrize(
    ("british", "american"),
    [
        ("Put in the zip", "Put in the zipper"),
        ("2 zips of 16 in", "2 zippers of 16 in"),
        ("4 3/8 yd of piping cord, 5/32 in thick", "4 3/8 yd of welt cord, 5/32 in thick"),
        ("Cut the piping strips", "Cut the welt strips"),
        ("Piping: 2 rings", "Welting: 2 rings"),
        ("Frill", "Ruffle"),
        ("Haberdashery", "Notions"),
        ("an overlocked edge", "a serged edge"),
        ("Tack all 8 in of it", "Baste all 8 in of it"),
        ("2860 square centimetres", "2860 square centimeters"),
        ("hollow fibre", "hollow fiber"),
        ("A border round a centre, mitred", "A border round a center, mitered"),
        ("At the selvedge", "At the selvage"),
        ("tackle, metrestick, unzipped, shipping", "tackle, metrestick, unzipped, shipping"),
    ],
)
def test_each_word_is_said_as_it_is_in_america(british, american):
    assert wording("en-US", {})(british) == american
    assert wording("en-GB", {})(british) == british


def flat(value, at=""):
    """Every value of an answer by its place."""
    if isinstance(value, dict | list):
        pairs = value.items() if isinstance(value, dict) else enumerate(value)
        return {place: told for key, inside in pairs for place, told in flat(inside, f"{at}/{key}").items()}
    return {at: value}


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_all_sentences_of_an_answer_are_reworded_and_nothing_a_program_reads(path):
    job = json.loads(path.read_text(encoding="utf-8"))
    for cover in job["cushions"]:
        cover.setdefault("name", "sofa")
    answer = plan(job, "quick")
    american = reworded(answer, wording("en-US", job))
    before, after = flat(answer), flat(american)
    assert list(before) == list(after)
    named = {entry.get("name") for entry in job["cloths"] + job["cushions"]}
    for place, told in before.items():
        is_code = not isinstance(told, str) or " " not in told
        if is_code and re.search(r"/(id|kind|part|piece|panel|code|at|cloth|cushion|value|shop|for/\d+)$", place):
            assert after[place] == told
        elif isinstance(told, str) and told not in named:
            assert not BRITISH.search(after[place]) or "/at" in place or is_code, (place, after[place])


def test_names_the_maker_gave_stay_as_they_are():
    job = changed(example("bay-window"), "/cloths/1/name", "Zip & piping (red)")
    job["cushions"][0]["name"] = "centre bench"
    job["client"] = "Fibre Metre"
    american = reworded(plan(job, "quick"), wording("en-US", job))
    assert [cloth["name"] for cloth in american["cloths"]] == ["linen", "Zip & piping (red)"]
    text = json.dumps(american["shopping"])
    assert "of Zip & piping (red), 54 in wide" in text
    assert "centre bench" in json.dumps(american["workroom"])
    assert " zip " not in text


def test_a_name_that_is_only_a_word_of_the_trade_stays_where_it_stands_alone():
    said = wording("en-US", {"cloths": [{"id": "k1", "name": "piping"}]})
    assert said("piping") == "piping"
    assert said("Make the piping") == "Make the welting"


def test_words_that_there_are_not_are_refused():
    with pytest.raises(ValueError, match="the words are one of en-GB, en-US, not 'en'"):
        wording("en", {})
    reply = json.loads(ask(json.dumps({"do": "plan", "job": example("bay-window"), "words": "en"})))
    assert reply["problems"][0]["text"] == "The words can be: en-GB, en-US."


def test_the_door_answers_in_the_words_it_is_asked_in():
    job = example("bay-window")
    said = wording("en-US", job)
    replies = {}
    for words in WORDINGS:
        request = {"do": "plan", "job": job, "effort": "quick", "words": words}
        replies[words] = json.loads(ask(json.dumps(request)))
        session = begin(json.dumps({**request, "effort": "full"}))
        unfinished = json.loads(session.reply())
        assert unfinished["unfinished"] is True
        first = unfinished["ok"]["workroom"][0]["steps"][0]["text"]
        assert bool(BRITISH.search(first)) == (words == "en-GB")
        assert ("Zipper" in json.dumps(unfinished)) == (words == "en-US")
    assert replies["en-GB"] == {"ok": plan(job, "quick")}
    assert replies["en-US"] == {"ok": reworded(plan(job, "quick"), said)}


def test_what_is_wrong_is_said_in_those_words_too():
    job = changed(example("bay-window"), "/cushions/0/cover/closure/length", "400 in")
    for do in ("plan", "check", "sheet"):
        british, american = (
            json.loads(ask(json.dumps({"do": do, "job": job, "paper": "a4", "cushion": "c1", "words": words})))
            for words in WORDINGS
        )
        assert american == reworded(british, wording("en-US", job))
    assert "zipper" in json.dumps(
        reworded({"problems": [{"at": "", "text": "The zip is too long."}]}, wording("en-US", job))
    )


@pytest.mark.reference
def test_papers_are_printed_in_those_words():
    job = example("bay-window")
    printed = {words: " ".join(texts(sheet(job, "a4", "c1", words))) for words in WORDINGS}
    assert "Put in the zip" in " ".join(printed["en-GB"].split())
    assert "Put in the zipper" in " ".join(printed["en-US"].split())
    assert not BRITISH.search(printed["en-US"])
    titles = {words: " ".join(texts(templates(job, "a4", "c1", words))) for words in WORDINGS}
    assert "zip band 1" in titles["en-GB"]
    assert "zipper band 1" in titles["en-US"]


def test_the_command_line_says_them_too(tmp_path, capsys):
    source = tmp_path / "job.json"
    source.write_text(json.dumps(example("bay-window")), encoding="utf-8")
    assert main(["plan", str(source), "--effort", "quick", "--words", "en-US"]) == 0
    assert "zipper band 1" in capsys.readouterr().out
    source.write_text("{}", encoding="utf-8")
    assert main(["plan", str(source), "--words", "en-US"]) == 1
    assert "problems" in capsys.readouterr().out
