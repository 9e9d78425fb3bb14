"""Shrinkage from a washed test square: by AATCC TM135 and ISO 5077 the change is (after - before) / before."""

from fractions import Fraction

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, job

from plumpline import JobError, plan

IN = 25_400_000
CM = 10_000_000


def square(before, *, wash="before-cutting", across=None, along=None, **more):
    """The shrinkage and the wash of a cloth by its test square."""
    after = {name: size for name, size in (("across", across), ("along", along)) if size}
    return {"shrinkage": {"square": {"before": before, **after, **more}}, "wash": wash}


def planned(document):
    answer = plan(document)
    check(document, answer)
    return answer["cloths"][0]


def texts(laid):
    return [line["text"] for line in laid["working"]]


def problems(document):
    with pytest.raises(JobError) as raised:
        plan(document)
    return {(problem["at"], problem["code"]): problem["text"] for problem in raised.value.problems}


def test_a_square_of_20_cm_that_became_19_2_and_19_6_cuts_46_cm_as_47_9_by_46_9():
    """The worked example of a trade glossary, by hand: 46 / 0.96 = 47.9167 cm along, 46 / 0.98 = 46.9388 cm across."""
    washed = square("20 cm", along="19.2 cm", across="19.6 cm", wash="after-making")
    document = job(
        covers(1, "46 cm", "46 cm", smaller_by="3 cm", seam="1.5 cm"),
        cloth("140 cm", sold_by="10 cm", **washed),
        units="cm",
        grid="0",
    )
    answer = plan(document)
    check(document, answer)
    piece = answer["pieces"][0]
    assert piece["length"]["nm"] == -(-46 * CM * 100 // 96)
    assert piece["width"]["nm"] == -(-46 * CM * 100 // 98)
    laid = answer["cloths"][0]
    assert laid["shrinkage"] == {"along": {"text": "4 %"}, "across": {"text": "2 %"}}
    assert "20 cm became 19.2 cm along: 4 %." in texts(laid)
    assert "20 cm became 19.6 cm across: 2 %." in texts(laid)


def test_a_square_and_the_same_shares_named_plan_the_same():
    by_square = job(covers(4, "17 in", "17 in"), cloth("60 in", **square("20 cm", along="19.2 cm", across="19.6 cm")))
    named = changed(by_square, "/cloths/0/shrinkage", {"along": "0.04", "across": "0.02"})
    one, other = planned(by_square), planned(named)
    said = one.pop("working"), other.pop("working")
    assert one == other
    assert len(said[0]) == len(said[1]) + 2


@pytest.mark.parametrize(("after", "ask"), [("30 in", "6 yd"), ("34.56 in", "5 1/4 yd")])
def test_five_yards_after_the_wash_by_a_yard_that_was_washed(after, ask):
    """Cotton that loses up to 6 in of a yard: 5 yd / (30/36) = 6 yd; at 4 % 5 / 0.96 = 5.2083, by the eighth 5 1/4."""
    document = job(covers(5, "17 in", "17 in"), cloth("18 in", **square("36 in", along=after)))
    cut = planned(document)
    assert (cut["laid"]["text"], cut["ask"]["text"]) == ("180 in", ask)


def test_sixty_inches_that_become_54_take_three_panels_of_18_and_two_of_18_and_a_half():
    """A maker's own washes: 60 in became 54, a tenth."""
    washed = cloth("60 in", **square("60 in", across="54 in"))
    assert planned(job(covers(2, "17 in", "17 in"), washed))["across"] == 3
    assert planned(job(covers(2, "17 1/2 in", "17 1/2 in"), washed))["across"] == 2


def test_where_the_width_tips_goes_by_the_square():
    """Three panels of 18 in need 54 in washed, so 54 / 0.9 = 60 in as bought, to the nanometre."""
    document = job(covers(3, "17 in", "17 in"), cloth("62 in", **square("20 in", across="18 in")))
    tipping = plan(document, tips=True)["cloths"][0]["tipping"]
    (own,) = [tip for tip in tipping if tip["field"] == "width" and tip["own"]]
    assert own["from"]["nm"] == 60 * IN


def test_a_square_marked_otherwise_across_counts_each_way_by_its_own_marks():
    """19 of 20 in along are 5 %, 9.9 of 10 in across 1 %."""
    washed = square("20 in", before_across="10 in", along="19 in", across="9.9 in")
    laid = planned(job(covers(2, "17 in", "17 in"), cloth("60 in", **washed)))
    assert laid["shrinkage"] == {"along": {"text": "5 %"}, "across": {"text": "1 %"}}
    assert laid["usable_width"]["nm"] == 60 * IN * 99 // 100


def test_the_exact_share_is_used_where_its_text_is_rounded():
    """11 3/8 of 12 in: 5/96 are lost, shown as about 5.21 %; 60 in washed need 60 / (91/96) in."""
    laid = planned(job(covers(1, "59 in", "59 in"), cloth("61 in", **square("12 in", along="11 3/8 in"))))
    assert laid["shrinkage"]["along"]["text"] == "≈ 5.21 %"
    assert laid["needed"]["nm"] == -(Fraction(-120 * IN * 96, 91) // 1)


def test_measures_read_as_they_were_taped_where_the_units_of_the_job_do_not_hold_them():
    laid = planned(job(covers(1, "17 in", "17 in"), cloth("60 in", **square("20 cm", along="19.2 cm"))))
    assert "20 cm became 19.2 cm along: 4 %." in texts(laid)
    inches = planned(job(covers(1, "17 in", "17 in"), cloth("60 in", **square("12 in", along="11 1/2 in"))))
    assert "12 in became 11 1/2 in along: ≈ 4.17 %." in texts(inches)
    finer = planned(job(covers(1, "17 in", "17 in"), cloth("60 in", **square("12 in", along="11.47 in"))))
    assert "12 in became ≈ 11 1/2 in along: ≈ 4.42 %." in texts(finer)


def test_a_square_that_lost_nothing_needs_no_word_on_the_wash():
    document = job(covers(1, "17 in", "17 in"), cloth("60 in", **square("12 in", along="12 in", across="12 in")))
    del document["cloths"][0]["wash"]
    assert planned(document)["shrinkage"] == {"along": {"text": "0 %"}, "across": {"text": "0 %"}}


def test_the_wash_is_asked_for_in_the_words_of_the_square():
    document = job(covers(1, "17 in", "17 in"), cloth("60 in", **square("20 cm", along="19.2 cm")))
    del document["cloths"][0]["wash"]
    text = problems(document)["/cloths/0/wash", "wash-not-said"]
    assert text == "20 cm became 19.2 cm along: 4 %. Say whether it is washed before cutting or after making."


@pytest.mark.parametrize(
    ("shrinkage", "at", "code", "said"),
    [
        ({"square": {"before": "20 cm", "along": "20.2 cm"}}, "square/along", "cloth-grew", "20 cm became 20.2 cm"),
        ({"square": {"before": "20 cm", "across": "21 cm"}}, "square/across", "cloth-grew", "grew"),
        ({"along": "0.03", "square": {"before": "20 cm", "along": "19.2 cm"}}, "along", "shrinkage-disagrees", "3 %"),
        ({"across": "2 %", "square": {"before": "9 in", "across": "9 in"}}, "across", "shrinkage-disagrees", "0 %"),
        ({"square": {"along": "19.2 cm", "across": "19 cm"}}, "square/before", "missing-field", "before the wash"),
        ({"square": {"before_across": "9 in", "along": "8 in"}}, "square/before", "missing-field", "before the wash"),
        ({"square": {"before": "0 cm", "along": "19.2 cm"}}, "square/before", "not-a-length", "nothing"),
        ({"square": {"before": "20 cm", "along": "0 cm"}}, "square/along", "not-a-length", "nothing"),
    ],
)
def test_what_cannot_be_true_of_a_square_is_said_at_its_measure(shrinkage, at, code, said):
    document = job(covers(1, "17 in", "17 in"), cloth("60 in", shrinkage=shrinkage, wash="before-cutting"))
    found = problems(document)
    assert list(found) == [(f"/cloths/0/shrinkage/{at}", code)]
    assert said in found[f"/cloths/0/shrinkage/{at}", code]


def test_both_ways_that_cannot_be_true_are_said_at_once():
    washed = square("20 cm", along="21 cm", across="22 cm")
    found = problems(job(covers(1, "17 in", "17 in"), cloth("60 in", **washed)))
    assert set(found) == {(f"/cloths/0/shrinkage/square/{name}", "cloth-grew") for name in ("along", "across")}


def test_a_share_that_agrees_with_the_square_may_stand_beside_it_and_the_square_counts():
    """11 1/2 of 12 in: a twenty-fourth is lost, and 4.2 % is what anyone would note down."""
    document = job(covers(5, "17 in", "17 in"), cloth("18 in", **square("12 in", along="11 1/2 in")))
    noted = changed(document, "/cloths/0/shrinkage/along", "0.042")
    assert planned(noted) == planned(document)


def questions(document):
    return {(note["at"], note["code"]): note["text"] for note in plan(document)["notices"] if "square" in note["code"]}


def test_a_square_in_the_wash_is_asked_for_in_each_way_that_nothing_is_said_of():
    document = job(covers(1, "17 in", "17 in"), cloth("60 in", **square("20 cm")))
    at = "/cloths/0/shrinkage/square"
    assert set(questions(document)) == {(f"{at}/{name}", "square-not-measured") for name in ("along", "across")}
    named = changed(document, "/cloths/0/shrinkage/across", "0.02")
    assert set(questions(named)) == {(f"{at}/along", "square-not-measured")}


def test_a_square_read_on_the_wrong_tape_is_questioned():
    """12 in washed and read as 11.8 cm: more than half is gone; raw cotton loses a sixth at most (common practice)."""
    slip = job(covers(1, "7 in", "7 in"), cloth("60 in", **square("12 in", along="11.8 cm", across="12 in")))
    text = questions(slip)["/cloths/0/shrinkage/square/along", "square-lost-much"]
    assert text.startswith("12 in became 11.8 cm along: ≈ 61.29 %")
    most = job(covers(1, "7 in", "7 in"), cloth("60 in", **square("36 in", along="30 in", across="36 in")))
    assert questions(most) == {}
