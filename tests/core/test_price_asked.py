"""What is wrong with a price is said at its field, all at once; and the doors by which a price is asked for."""

import json

import pytest
from jobs import changed, cloth, covers, example, job
from quotes import FULL, bare

from plumpline import JobError, plan, quote
from plumpline.__main__ import main
from plumpline.ask import ask
from plumpline.price import priced
from plumpline.problems import CODES


def problems(document):
    """{(at, code)} of the problems with which a price is refused."""
    with pytest.raises(JobError) as raised:
        priced(document, {"k1": 0})
    assert all(problem["code"] in CODES and problem["text"] for problem in raised.value.problems)
    return {(problem["at"], problem["code"]) for problem in raised.value.problems}


@pytest.mark.parametrize(
    ("at", "value", "code"),
    [
        ("/quote/rates/hour", "1.234", "ambiguous-amount"),
        ("/quote/rates/hour", "1,234", "ambiguous-amount"),
        ("/quote/minimum", "3.350", "ambiguous-amount"),
        ("/quote/prices/thread/amount", "a lot", "not-an-amount"),
        ("/quote/prices/thread/amount", "-3.00", "not-an-amount"),
        ("/quote/prices/thread/amount", "3.456", "ambiguous-amount"),
        ("/quote/prices/thread/amount", "0.456", "not-an-amount"),
        ("/quote/prices/thread/amount", 3, "not-text"),
        ("/quote/prices/cord", {"amount": "1.00", "per": "ell"}, "unknown-value"),
        ("/quote/prices/thread/per", "yd", "unknown-field"),
        ("/quote/rates/handling", {"amount": "5.00"}, "missing-field"),
        ("/quote/operations/cut/minutes", "1.234", "ambiguous-amount"),
        ("/quote/operations/cut/minutes", "1,234", "ambiguous-amount"),
        ("/quote/operations/cut/minutes", "soon", "not-a-number"),
        ("/quote/operations/cut/minutes", 3, "not-a-number"),
        ("/quote/operations/cut", {}, "missing-field"),
        ("/quote/operations/make_up", {"minutes": "3"}, "missing-field"),
        ("/quote/operations/iron", {"minutes": "3"}, "unknown-field"),
        ("/quote/markup", {"cloth": "50"}, "ambiguous-rate"),
        ("/quote/markup", {"cloth": "1.5"}, "ambiguous-rate"),
        ("/quote/markup", {"cloth": "1500 %"}, "not-a-fraction"),
        ("/quote/markup", {"cloth": "half"}, "not-a-fraction"),
        ("/quote/markup", {"cloth": "1/0"}, "not-a-fraction"),
        ("/quote/markup", {"cloth": 0.5}, "not-a-fraction"),
        ("/quote/tax", {"rate": "20"}, "ambiguous-rate"),
        ("/quote/tax", {"included": "yes"}, "unknown-value"),
        ("/quote/tax", {"rounding": "up"}, "unknown-value"),
        ("/quote/discount", {"rate": "120 %"}, "not-a-fraction"),
        ("/quote/deposit", {"materials": "101 %"}, "not-a-fraction"),
        ("/quote/deposit", {"making": "200 %"}, "not-a-fraction"),
        ("/quote/extras", {"rush": {"amount": "12,345", "on": False}}, "ambiguous-amount"),
        ("/quote/items", [{"text": "A thing"}], "missing-field"),
        ("/quote/items", [{"amount": "x"}], "not-an-amount"),
        ("/quote/client_cloths", ["k9"], "no-such-cloth"),
        ("/quote/client_cloths", [""], "not-text"),
        ("/quote/client_cloths", "k1", "not-a-job"),
        ("/quote/currency", "usd", "unknown-value"),
        ("/quote/currency", "XXX", "unknown-value"),
        ("/quote", "cheap", "not-a-job"),
    ],
)
def test_what_cannot_be_read_or_could_be_read_two_ways_is_asked_about_at_its_field(at, value, code):
    """Fault B15, and the same for minutes and percents."""
    found = problems(changed(bare(), at, value))
    assert code in {found_code for _, found_code in found}
    assert all(place.startswith(at) or place == "/cloths/0/price/currency" for place, _ in found)


def test_both_readings_are_offered_in_words():
    document = changed(bare(), "/quote/rates/hour", "3.350")
    with pytest.raises(JobError) as raised:
        priced(document, {})
    assert raised.value.problems == [
        {
            "at": "/quote/rates/hour",
            "code": "ambiguous-amount",
            "text": "“3.350” may mean thousands or decimals. Write 3350.00 or 3.35.",
        }
    ]


def test_every_problem_is_found_at_once():
    document = changed(changed(bare(), "/quote/rates/hour", "1.234"), "/quote/tax", {"rate": "20"})
    assert problems(document) == {("/quote/rates/hour", "ambiguous-amount"), ("/quote/tax/rate", "ambiguous-rate")}


@pytest.mark.parametrize(("text", "markup"), [("0.5", "50 %"), ("50 %", "50 %"), ("1/2", "50 %"), ("150 %", "150 %")])
def test_a_part_of_a_price_is_read_as_hundredths_or_as_a_fraction(text, markup):
    document = bare(items=[{"amount": "10.00"}], markup={"materials": text})
    assert priced(document, {"k1": 0})["profit"]["markup"] == markup


def test_the_currency_is_asked_for_where_there_is_none_to_go_by():
    document = job(covers(1, "18 in", "18 in"), cloth("54 in"), quote={"rates": {"hour": "x"}})
    assert problems(document) == {("/quote/currency", "missing-field")}
    assert problems(job(covers(1, "18 in", "18 in"), cloth("54 in"))) == {("/quote/currency", "missing-field")}


def test_a_job_is_priced_in_the_currency_of_its_cloths_unless_another_is_said():
    document = bare()
    del document["quote"]["currency"]
    assert priced(document, {"k1": 0})["currency"] == "USD"
    document["quote"]["currency"] = "GBP"
    assert problems(document) == {("/cloths/0/price/currency", "other-currency")}


def test_a_cover_that_is_left_out_of_the_plan_makes_the_price_unfinished():
    other = covers(1, "18 in", "18 in", id="c2", cloth="k2")
    document = job([covers(1, "18 in", "18 in"), other], [cloth("54 in"), cloth("54 in", id="k2")], quote=FULL)
    document = changed(document, "/cushions/1/insert/width", None)
    for entry in document["cloths"]:
        entry["price"] = {"amount": "9.00", "per": "yd", "currency": "USD"}
    answer = quote(document, "quick")
    assert answer["complete"] is False
    assert [(notice["level"], notice["at"]) for notice in answer["notices"] if notice["level"] != "info"] == [
        ("stop", "/cushions/1/insert/width")
    ]
    assert "cloth:k2" not in {line["code"] for line in answer["lines"]}


def test_what_cannot_be_planned_cannot_be_priced():
    with pytest.raises(JobError):
        quote({})
    with pytest.raises(JobError):
        priced({}, {})
    with pytest.raises(JobError):
        quote(changed(bare(), "/cloths/0/width", None))


def test_no_plan_looks_at_the_price():
    document = example("harbour-room")
    assert plan({**document, "quote": FULL}) == plan(document)
    assert plan({**document, "quote": {"rates": {"hour": "1.234"}}}) == plan(document)


# ---- the doors -----------------------------------------------------------------------------------------------


def asked(**request):
    return json.loads(ask(json.dumps(request)))


def test_the_price_is_asked_for_with_the_lengths_that_were_planned():
    document = {**example("harbour-room"), "quote": FULL}
    bought = {entry["cloth"]: entry["buy"]["nm"] for entry in plan(document)["cloths"]}
    assert asked(do="quote", job=document, bought=bought) == {"ok": quote(document)}
    assert asked(do="quote", job={}, bought={})["problems"]


def test_a_price_is_told_in_american_words_and_what_the_maker_wrote_stays():
    document = {**example("reading-corner"), "quote": {**FULL, "items": [{"text": "Piping bag", "amount": "2.00"}]}}
    bought = {"k1": 0, "k2": 0}
    lines = asked(do="quote", job=document, bought=bought, words="en-US")["ok"]["lines"]
    texts = {line["code"]: line["text"] for line in lines}
    assert texts["work:make_piping"] == "Make the welting"
    assert texts["work:zip"] == "Put in zippers"
    assert texts["item:1"] == "Piping bag"


@pytest.mark.parametrize("bought", [[], {"k1": "2 yd"}, {"k1": -1}, {"k1": True}, None])
def test_lengths_that_are_none_are_refused(bought):
    [problem] = asked(do="quote", job=example("harbour-room"), bought=bought)["problems"]
    assert problem["text"] == "What is bought is told in whole nm, by the id of each cloth."


def test_the_command_writes_the_price(tmp_path, capsys):
    path = tmp_path / "job.json"
    path.write_text(json.dumps({**example("harbour-room"), "quote": FULL}), encoding="utf-8")
    assert main(["quote", str(path)]) == 0
    assert json.loads(capsys.readouterr().out) == quote({**example("harbour-room"), "quote": FULL})
    path.write_text(json.dumps({**example("harbour-room"), "quote": {"minimum": "1.234"}}), encoding="utf-8")
    assert main(["quote", str(path)]) == 1
    assert json.loads(capsys.readouterr().out)["problems"][0]["at"] == "/quote/minimum"
