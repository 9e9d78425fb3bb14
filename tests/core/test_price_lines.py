"""The lines of a price: cloth by the length bought, all else that is bought, work by the minute, and what is extra."""

import copy
from fractions import Fraction

import pytest
from jobs import changed, cloth, covers, example, job
from quotes import FULL, NO_MATERIALS, NO_WORK, bare, bill, item, without_nothing

from plumpline import plan, quote
from plumpline.fields import EXTRAS, OPERATIONS, PRICES
from plumpline.lengths import read_length
from plumpline.price import priced
from plumpline.price.extras import KINDS
from plumpline.price.work import EXAMPLES, WORK

NOTHING = {"currency": "USD", "rates": {"hour": "0"}, "operations": NO_WORK, "prices": NO_MATERIALS}


def lines_of(answer):
    """The lines by their codes."""
    return {line["code"]: line for line in answer["lines"]}


def priced_cloth(amount, per="yd", **more):
    return cloth("54 in", price={"amount": amount, "per": per, "currency": "USD"}, **more)


# ---- cloth ---------------------------------------------------------------------------------------------------


def test_cloth_is_charged_by_the_length_that_is_bought_never_by_the_area_used():
    """A maker's account (case A44) costs cloth by its area, 42 × 36 = 1512 sq in to the yard: two 19 in panels are
    722 / 1512 = 0.478 yd, but 19 in of the full width are 5/8 yd in steps of 1/8; 24 % of the cloth is given away.
    """
    document = job(covers(1, "18 in", "18 in"), priced_cloth("32.00"), quote=NOTHING)
    line = lines_of(quote(document))["cloth:k1"]
    assert (line["quantity"], line["unit"], line["price"], line["per"], line["amount"]) == (
        "5/8", "yd", "32.00", "yd", "20.00",
    )  # fmt: skip
    assert line["working"] == (
        "5/8 yd is bought, and so it is charged, whatever area of it is used. 32.00 a yd; 5/8 yd × 32.00 = 20.00."
    )
    by_area = Fraction(2 * 19 * 19, 42 * 36)
    assert round(100 * (1 - by_area / Fraction(5, 8))) == 24


def test_the_mark_up_is_on_the_price_of_one_so_that_the_client_can_reckon_the_line():
    """By hand: 32.99 + 50 % = 49.485, 49.49 a yard; 5/8 × 49.49 = 30.93125."""
    document = job(covers(1, "18 in", "18 in"), priced_cloth("32.99"), quote={**NOTHING, "markup": {"cloth": "50 %"}})
    line = lines_of(quote(document))["cloth:k1"]
    assert (line["price"], line["amount"]) == ("49.49", "30.93")
    assert line["working"].endswith("32.99 a yd + 50 % mark-up = 49.49 a yd; 5/8 yd × 49.49 = 30.93.")


def test_cloth_sold_by_the_metre_and_priced_by_the_yard_says_both():
    """By hand: 19 in are 48.26 cm, 50 cm in steps of 10; 0.5 / 0.9144 × 32.00 = 17.4978."""
    document = job(covers(1, "18 in", "18 in"), priced_cloth("32.00", sold_by="10 cm"), quote=NOTHING)
    line = lines_of(quote(document))["cloth:k1"]
    assert (line["quantity"], line["unit"], line["per"], line["amount"]) == ("0.5", "m", "yd", "17.50")
    assert line["working"].endswith("32.00 a yd; 0.5 m (≈ 0.547 yd) × 32.00 = 17.50.")


def test_the_lengths_are_those_of_the_plan():
    document = {**example("reading-corner"), "quote": {}}
    buys = {f"cloth:{cloth['cloth']}": cloth["ask"]["text"] for cloth in plan(document)["cloths"]}
    lines = lines_of(quote(document))
    assert {code: f"{lines[code]['quantity']} {lines[code]['unit']}" for code in buys} == buys


def test_the_clients_own_cloth_is_handled_and_not_sold():
    """By hand: 5/8 yd at 6.00 a yard is 3.75. It costs the maker nothing."""
    rates = {"hour": "0", "handling": {"amount": "6.00", "per": "yd"}}
    document = job(
        covers(1, "18 in", "18 in"), cloth("54 in"), quote={**NOTHING, "rates": rates, "client_cloths": ["k1"]}
    )
    answer = quote(document)
    line = lines_of(answer)["handling:k1"]
    assert (line["text"], line["amount"], line["group"]) == ("Your own cloth: cloth 1, 54 in wide", "3.75", "making")
    assert "cloth:k1" not in lines_of(answer)
    assert answer["profit"]["costs"] == "0.00"


def test_the_clients_own_cloth_may_be_priced_in_any_currency():
    document = job(covers(1, "18 in", "18 in"), priced_cloth("9.00"), quote={**NOTHING, "currency": "EUR"})
    document["quote"]["client_cloths"] = ["k1"]
    assert quote(document)["currency"] == "EUR"


# ---- what is bought beside -----------------------------------------------------------------------------------


def test_what_is_bought_by_the_length_is_charged_as_the_counter_sells_it():
    """By hand, for two 18 in covers with a pack-less trim: 72 + 1 in twice, 5 % more, 153.3 in, 4 3/8 yd (157.5 in);
    at 2.00 a yard + 25 % = 2.50: 10.9375. By the foot, 13 1/8 ft at 2.50: 32.8125."""
    trimmed = covers(2, "18 in", "18 in")
    trimmed["cover"]["edge"] = {"kind": "trimmed"}
    base = {**NOTHING, "markup": {"materials": "25 %"}}

    def trim(price):
        document = job(trimmed, priced_cloth("0"), quote={**base, "prices": {**NO_MATERIALS, "trim": price}})
        return lines_of(quote(document))["trim:c1"]

    by_yard = trim({"amount": "2.00", "per": "yd"})
    assert (by_yard["quantity"], by_yard["unit"], by_yard["price"]) == ("4 3/8", "yd", "2.50")
    assert by_yard["amount"] == "10.94"
    by_foot = trim({"amount": "2.00", "per": "ft"})
    assert by_foot["amount"] == "32.81"
    assert by_foot["working"].endswith("2.00 a ft + 25 % mark-up = 2.50 a ft; 4 3/8 yd (13.125 ft) × 2.50 = 32.81.")
    assert trim({"amount": "2.00"})["amount"] == "5.00"


def test_a_pack_is_charged_whole():
    """A maker's account (case A42): 54 in round each of 4 cushions, packs of 90 in; no join allowed: 4 packs."""
    trimmed = covers(4, "13 1/2 in", "13 1/2 in")
    trimmed["cover"]["edge"] = {"kind": "trimmed", "pack": "90 in", "join": "0 in"}
    prices = {**NO_MATERIALS, "trim": {"amount": "7.00", "per": "each"}}
    document = job(trimmed, priced_cloth("0"), quote={**NOTHING, "prices": prices})
    assert lines_of(quote(document))["trim:c1"]["amount"] == "28.00"


def test_what_has_no_price_is_said_and_never_nothing():
    document = job(covers(1, "18 in", "18 in"), cloth("54 in"), quote={"currency": "USD", "travel": {"distance": "7"}})
    document["quote"]["extras"] = {"rush": {"on": True}, "velvet": {"on": True, "rate": "10 %"}}
    answer = quote(document)
    missing = {line["code"] for line in answer["lines"] if line["amount"] is None}
    assert {"cloth:k1", "thread", "needle", "label", "work:cut", "travel", "extra:rush", "extra:velvet:rate"} <= missing
    assert all(line["price"] is None for line in answer["lines"] if line["amount"] is None)
    at = [notice["at"] for notice in answer["notices"] if notice["code"] == "no-price"]
    assert at == [
        "/cloths/0/price/amount",
        "/quote/prices/thread/amount",
        "/quote/prices/needle/amount",
        "/quote/prices/label/amount",
        "/quote/rates/hour",
        "/quote/extras/rush/amount",
        "/quote/rates/travel/amount",
    ]
    assert answer["complete"] is False
    assert answer["total"] == "0.00"
    document["quote"]["client_cloths"] = ["k1"]
    assert lines_of(quote(document))["handling:k1"]["amount"] is None


def test_what_is_said_to_cost_nothing_costs_nothing():
    answer = quote(bare())
    assert answer["complete"] is True
    assert (answer["total"], answer["notices"]) == ("0.00", [])


# ---- work ----------------------------------------------------------------------------------------------------


def of_work(document, name, minutes, per=None):
    """The line of one piece of work that takes so many minutes, at 60.00 an hour: 1.00 a minute."""
    timed = {"minutes": minutes, **({"per": per} if per else {})}
    document = copy.deepcopy(document)
    document["quote"] = {**NOTHING, "rates": {"hour": "60.00"}, "operations": {**NO_WORK, name: timed}}
    return lines_of(quote(document, "quick")).get(f"work:{name}")


def piped_pair(**more):
    """Two piped and zipped 18 in covers: by hand, 4 panels, 2 zips, 8 corners, 72 in round each."""
    two = covers(2, "18 in", "18 in")
    two["cover"] |= {"edge": {"kind": "piped"}, "closure": {"kind": "zip"}, **more}
    return job(two, priced_cloth("0"))


@pytest.mark.parametrize(
    ("name", "minutes", "per", "told"),
    [
        ("consult", "30", None, "1 job × 30 min = 30 min"),
        ("order", "10", None, "1 cloth × 10 min = 10 min"),
        ("square", "4", None, "1 cloth × 4 min = 4 min"),
        ("cut", "3", None, "4 panels × 3 min = 12 min"),
        ("make_piping", "3", "ft", "≈ 12.333 ft × 3 min for each ft = 37 min"),
        ("attach_piping", "2.5", "yd", "4 yd × 2.5 min for each yd = 10 min"),
        ("zip", "15", None, "2 zips × 15 min = 30 min"),
        ("corners", "0.75", None, "8 corners × 0.75 min = 6 min"),
        ("fill", "3", None, "2 covers × 3 min = 6 min"),
        ("press", "3", None, "2 covers × 3 min = 6 min"),
        ("label", "2", None, "2 labels × 2 min = 4 min"),
        ("pack", "2", None, "2 covers × 2 min = 4 min"),
        ("deliver", "25", None, "1 job × 25 min = 25 min"),
        ("fit", "5", None, "2 covers × 5 min = 10 min"),
    ],
)
def test_work_is_counted_from_the_covers(name, minutes, per, told):
    """By hand: a ring of piping is 72 + 2 in, two are 148 in, 12 1/3 ft; they are attached along 2 × 72 in, 4 yd."""
    line = of_work(piped_pair(), name, minutes, per)
    assert line["working"].startswith(f"{told}, at 60.00 an hour: ")
    assert line["amount"] == f"{line['quantity']}.00"
    assert told.endswith(f"= {line['quantity']} min")


def test_what_a_cover_does_not_have_takes_no_minutes():
    for name, per in (("overlock", "yd"), ("frill", "yd"), ("place", None), ("close", None)):
        assert of_work(piped_pair(), name, "10", per) is None


def test_seams_cloth_and_overlocking_go_by_their_length():
    """By hand: one plain 18 in cover is sewn along 72 in, 2 yd; its two panels of 19 in have 152 in of edges; 5/8 yd
    of cloth is bought."""
    plain = job(covers(1, "18 in", "18 in"), priced_cloth("0"))
    assert of_work(plain, "make_up", "6", "yd")["working"].startswith("2 yd × 6 min for each yd = 12 min")
    assert of_work(plain, "press_cloth", "8", "yd")["working"].startswith("0.625 yd × 8 min for each yd = 5 min")
    edges = changed(plain, "/cushions/0/cover/seam_finish", "overlocked")
    assert of_work(edges, "overlock", "3", "ft")["working"].startswith("≈ 12.667 ft × 3 min for each ft = 38 min")


def test_closures_other_than_zips_frills_and_placed_panels_are_counted():
    frilled = changed(
        job(covers(3, "18 in", "18 in"), priced_cloth("0")), "/cushions/0/cover/edge", {"kind": "frilled"}
    )
    assert of_work(frilled, "close", "9")["working"].startswith("3 closures × 9 min = 27 min")
    assert of_work(frilled, "frill", "10", "yd")["working"].startswith("6 yd × 10 min for each yd = 60 min")
    assert of_work(changed(frilled, "/cushions/0/cover/closure", {"kind": "open"}), "close", "9") is None
    centred = {"repeat": {"across": "27 in", "along": "27 in"}, "start": "choose"}
    print_cloth = priced_cloth("0", **centred, motifs=[{"id": "m1", "across": "13 1/2 in", "along": "0 in"}])
    placed = job(covers(3, "18 in", "18 in", pattern="centred", motif="m1"), print_cloth)
    assert of_work(placed, "place", "4")["working"].startswith("6 panels × 4 min = 24 min")


def test_a_round_has_no_corners_to_turn():
    document = job(covers(1, "18 in", "18 in", insert={"shape": "round", "diameter": "18 in"}), priced_cloth("0"))
    assert of_work(document, "corners", "1") is None


def test_minutes_become_whole_once_for_each_piece_of_work():
    """By hand: 4 panels of 0.6 min are 2.4, 2 min; of 0.625 min 2.5, 3 min."""
    assert of_work(piped_pair(), "cut", "0.6")["quantity"] == "2"
    assert of_work(piped_pair(), "cut", "0,625")["quantity"] == "3"


def test_hours_and_overhead_have_their_own_mark_up():
    """By hand: 30 min at 36.00 + 10 % = 39.60 an hour is 19.80; at 5.00 + 10 % = 5.50 an hour 2.75.

    They cost 18.00 and 2.50; 22.55 is charged: 2.05 stays, 10 % on the cost.
    """
    document = bare(
        rates={"hour": "36.00", "overhead": "5.00"},
        operations={**NO_WORK, "consult": {"minutes": "30"}},
        markup={"work": "10 %"},
    )
    answer = quote(document)
    lines = lines_of(answer)
    assert (lines["work:consult"]["price"], lines["work:consult"]["amount"]) == ("39.60", "19.80")
    assert (lines["overhead"]["price"], lines["overhead"]["amount"]) == ("5.50", "2.75")
    assert (answer["profit"]["costs"], answer["profit"]["markup"]) == ("20.50", "10 %")
    assert answer["profit"]["an_hour"] == "40.10"


def test_minutes_that_are_examples_say_so_until_the_maker_puts_in_her_own():
    document = bare(rates={"hour": "60.00"}, operations={**NO_WORK, "cut": {"minutes": "4"}})
    del document["quote"]["operations"]["fill"]
    answer = quote(document)
    lines = lines_of(answer)
    assert (lines["work:fill"]["example"], lines["work:cut"]["example"]) == (True, False)
    assert "(an example: put in your own)" in lines["work:fill"]["working"]
    assert [(notice["code"], notice["at"]) for notice in answer["notices"]] == [
        ("example-minutes", "/quote/operations")
    ]


def test_every_piece_of_work_and_every_material_of_the_table_is_known():
    names = [entry.name for entry in OPERATIONS]
    assert names == list(WORK) == list(EXAMPLES)
    by_length = {entry.name for entry in OPERATIONS if len(entry.fields) > 1}
    assert by_length == {name for name, timed in EXAMPLES.items() if timed.per}
    assert [entry.name for entry in EXTRAS] == list(KINDS)
    kinds = {material["kind"] for path in ("bay-window", "window-bench", "size-wanted", "guest-room", "printed-panels")
             for material in plan(example(path), "quick")["materials"]}  # fmt: skip
    assert kinds <= {entry.name for entry in PRICES}


# ---- extras, travel, and all of it ---------------------------------------------------------------------------


def extras_of(document, **extras):
    """The lines of extras at 60.00 an hour, three minutes for each panel cut and no other work."""
    work = {**NO_WORK, "cut": {"minutes": "3"}}
    asked = {"rates": {"hour": "60.00"}, "operations": work, "extras": extras}
    answer = quote({**document, "quote": {**NOTHING, **asked}}, "quick")
    return {code: line for code, line in lines_of(answer).items() if code.startswith("extra:")}, answer["notices"]


def mixed():
    """Two piped covers with a contrast back, one plain; by hand 4 + 2 panels, 12 and 6 min of cutting."""
    piped, plain = covers(2, "18 in", "18 in"), covers(1, "18 in", "18 in", id="c2")
    piped["cover"] |= {"edge": {"kind": "piped"}, "back": {"cloth": "k2"}}
    return job([piped, plain], [priced_cloth("0"), priced_cloth("0", id="k2")])


def test_an_extra_is_for_the_covers_it_concerns():
    lines, _ = extras_of(mixed(), piping={"on": True, "amount": "4.00"}, contrast={"on": True, "rate": "50 %"})
    assert lines["extra:piping"]["working"] == "4.00 for each cover it is for; 2 covers × 4.00 = 8.00."
    contrast = lines["extra:contrast:rate"]
    assert (contrast["quantity"], contrast["unit"], contrast["price"]) == ("50", "%", "12.00")
    assert contrast["amount"] == "6.00"
    assert contrast["working"] == "50 % of the work on 2 covers: 50 % × 12.00 = 6.00."


def test_a_part_of_work_that_has_no_price_has_none_either():
    document = {**mixed(), "quote": {"currency": "USD", "extras": {"contrast": {"on": True, "rate": "50 %"}}}}
    line = lines_of(priced(document, {}))["extra:contrast:rate"]
    assert (line["amount"], line["working"]) == (None, "50 % of the work on 2 covers, which has no price yet.")
    assert line["at"] == "/quote/rates/hour"


def test_rush_is_a_part_of_all_the_work():
    """Terms that workrooms publish (case A45): rush + 25 %. By hand: 18 min at 1.00, 18.00; a quarter is 4.50."""
    lines, notices = extras_of(mixed(), rush={"on": True, "rate": "25 %"}, velvet={"on": False, "amount": "9.00"})
    assert list(lines) == ["extra:rush:rate"]
    assert lines["extra:rush:rate"]["amount"] == "4.50"
    assert notices == []


def test_contrast_piping_counts_as_contrast_and_a_lining_does_not():
    document = mixed()
    document["cushions"].pop()
    document["cushions"][0]["cover"]["back"]["cloth"] = "k1"
    contrast = {"contrast": {"on": True, "amount": "4.00"}}
    assert extras_of(changed(document, "/cushions/0/cover/edge/cloth", "k2"), **contrast)[0]
    lined = changed(document, "/cushions/0/cover/layers", {"lining": {"cloth": "k2"}})
    assert not extras_of(lined, **contrast)[0]


def test_an_extra_that_no_cover_is_for_is_said_and_charges_nothing():
    lines, notices = extras_of(mixed(), matching={"on": True, "amount": "7.00"})
    assert lines == {}
    assert [(notice["level"], notice["code"], notice["at"]) for notice in notices] == [
        ("info", "no-such-cover", "/quote/extras/matching/on")
    ]
    assert extras_of(example("printed-panels"), matching={"on": True, "amount": "1.00"})[0]


def test_travel_is_charged_there_and_back_as_often_as_it_is_driven():
    """By hand: 2 × 12.5 = 25 miles at 0.65 is 16.25."""
    answer = bill(
        rates={"hour": "0", "travel": {"amount": "0.65", "per": "mi"}}, travel={"distance": "12.5", "trips": 2}
    )
    line = lines_of(answer)["travel"]
    assert (line["quantity"], line["unit"], line["amount"]) == ("25", "mi", "16.25")
    assert line["working"] == "12.5 there and back, 2 times, at 0.65 a mi; 25 mi × 0.65 = 16.25."
    assert answer["profit"]["gain"] == "0.00"


def test_things_on_the_bill_have_their_own_words_and_their_mark_up_where_they_are_bought():
    answer = bill(
        item("2.00", 3, "bought", "Castors"), {"amount": "5.00", "kind": "work"}, markup={"materials": "50 %"}
    )
    assert [(line["text"], line["group"], line["price"], line["amount"]) for line in answer["lines"]] == [
        ("Castors", "materials", "3.00", "9.00"),
        ("Item 2", "making", "5.00", "5.00"),
    ]


@pytest.mark.parametrize("name", ["=1+1", "__proto__", "<img onerror>", "</script>", "constructor", "-1+2", "@x"])
def test_a_name_is_only_ever_text(name):
    """Faults B34 and B35."""
    document = bare(items=[item("1.00", text=name)])
    document["cloths"][0]["name"] = name
    lines = lines_of(quote(document))
    assert lines["item:1"]["text"] == name
    assert lines["cloth:k1"]["text"] == f"{name}, 54 in wide"


def test_a_price_with_everything_in_it_adds_up():
    document = {**example("reading-corner"), "quote": {**FULL, "client_cloths": ["k2"]}}
    answer = quote(document, "quick")
    assert answer["complete"] is True
    assert {line["code"].split(":")[0] for line in answer["lines"]} >= {
        "cloth", "thread", "zip", "cord", "work", "overhead", "extra", "item", "travel", "discount",
    }  # fmt: skip
    total = sum(Fraction(line["amount"]) for line in answer["lines"])
    assert total == Fraction(answer["net"]) == Fraction(answer["materials"]) + Fraction(answer["making"])
    assert Fraction(answer["net"]) + Fraction(answer["tax"]) == Fraction(answer["total"])
    assert Fraction(answer["deposit"]) + Fraction(answer["balance"]) == Fraction(answer["total"])
    assert without_nothing(answer) == answer


def test_lengths_planned_before_are_charged_as_they_are():
    document = {**example("harbour-room"), "quote": NOTHING}
    answer = priced(document, {"k1": read_length("3 1/8 yd")})
    assert lines_of(answer)["cloth:k1"]["amount"] == "100.00"
    whole = plan(document)
    assert priced(document, {"k1": whole["cloths"][0]["buy"]["nm"]}) == quote(document)
