"""What was cut in the shop and paid, beside the plan. Figures worked by hand from makers' accounts."""

import pytest
from answer_checker import check
from jobs import changed, cloth, covers, job

from plumpline import JobError, plan
from plumpline.dialect import reworded, wording

IN = 25_400_000
PRICE = {"amount": "32.00", "per": "yd", "currency": "USD"}


def rows_of_18(rows, *bought, squaring="0 in", **more):
    """So many rows of one 18 in panel each, on cloth just as wide, and what was cut of it."""
    count, cushions = rows // 2, []
    if count:
        cushions.append(covers(count, "17 in", "17 in"))
    if rows % 2:
        odd = covers(1, "17 in", "17 in", id="odd")
        odd["cover"]["back"] = {"cloth": "k2"}
        cushions.append(odd)
    cloths = [cloth("18 in", squaring=squaring, bought=list(bought), **more), cloth("18 in", id="k2")]
    return job(cushions, cloths)


def told(document):
    answer = plan(document)
    check(document, answer)
    return answer["cloths"][0]["bought"], {note["code"]: note for note in answer["notices"]}


def test_a18_a_yard_and_a_half_cut_two_inches_askew_no_longer_takes_three_rows_of_18():
    """1 1/2 yd are 54 in, three rows of 18; with one edge at 52 in the shorter counts: 2 in too little."""
    bought, notes = told(rows_of_18(3, {"length": "1 1/2 yd", "left": "54 in", "right": "52 in"}))
    assert (bought["enough"], bought["short_by"]["nm"], bought["spare"]) == (False, 2 * IN, None)
    assert notes["cut-too-short"]["level"] == "warn"
    assert notes["cut-too-short"]["text"].startswith("Too short by 2 in: 54 in are needed, 52 in were cut.")
    assert notes["cut-crooked"]["at"] == "/cloths/0/bought/0/right"
    assert "54 in along one edge, 52 in along the other" in notes["cut-crooked"]["text"]
    mirrored, notes = told(rows_of_18(3, {"left": "52 in", "right": "54 in"}))
    assert (mirrored["short_by"]["nm"], notes["cut-crooked"]["at"]) == (2 * IN, "/cloths/0/bought/0/left")


def test_a18_squaring_comes_off_the_shorter_edge_as_for_a_piece_in_hand():
    """Three rows of 18 and 1 in for squaring are 55 in: 56 in at the shorter edge leave 1 in, as the piece says."""
    document = rows_of_18(3, {"left": "57 in", "right": "56 in"}, squaring="1 in")
    bought, _ = told(document)
    assert (bought["enough"], bought["spare"]["nm"]) == (True, IN)
    assert bought["text"] == "Enough: 55 in are needed, 56 in were cut; 1 in are left."
    taken = changed(document, "/cloths/0/piece", {"left": "57 in", "right": "56 in"})
    assert plan(taken)["cloths"][0]["piece"]["spare"]["nm"] == IN
    short, _ = told(rows_of_18(3, {"left": "57 in", "right": "54 in"}, squaring="1 in"))
    taken["cloths"][0]["piece"] = {"left": "57 in", "right": "54 in"}
    assert short["short_by"]["nm"] == plan(taken)["cloths"][0]["piece"]["short_by"]["nm"] == IN


def test_a19_four_yards_paid_and_three_cut_are_told_before_leaving():
    """4 yd at 32.00 are 128.00; 3 yd are 96.00, and 144 in said are 108 by the tape."""
    cut = {"length": "4 yd", "left": "3 yd", "right": "3 yd", "paid": "128.00", "on": "2026-07-10", "cut_by": "Ada"}
    bought, notes = told(rows_of_18(8, cut, price=PRICE))
    assert (bought["enough"], bought["short_by"]["nm"]) == (False, 36 * IN)
    assert notes["short-measure"]["text"].startswith("Said to be 144 in, taped 108 in")
    assert notes["paid-for-more"]["at"] == "/cloths/0/bought/0/paid"
    assert notes["paid-for-more"]["text"].startswith("128.00 USD were paid, but the 108 in that were cut cost 96")
    assert bought["paid_text"] == "Paid 128.00 USD, as planned."
    assert bought["lengths"] == [{"text": "108 in, 10 July 2026, cut by Ada"}]


def test_a19_two_lengths_of_72_in_are_four_yards_with_nothing_left_for_squaring():
    """Each holds four rows of 18; with 1 in for squaring 145 in are needed, and the counter refused that inch."""
    two = ({"length": "72 in"}, {"length": "72 in"})
    bought, notes = told(rows_of_18(8, *two))
    assert (bought["enough"], bought["length"]["nm"]) == (True, 144 * IN)
    assert bought["text"] == "Enough: 72 in and 72 in were cut, and the plan divides among them."
    assert "cut-too-short" not in notes
    bought, notes = told(rows_of_18(8, *two, squaring="1 in"))
    assert (bought["enough"], bought["short_by"]["nm"]) == (False, IN)
    assert notes["cut-too-short"]["text"] == "Too short by 1 in at least: 145 in are needed, 72 in and 72 in were cut."


def test_lengths_that_are_long_enough_together_but_hold_too_few_rows_are_not_called_enough():
    """100 in hold five rows of 18 and 50 in two: seven of eight, though 150 in are more than 144."""
    bought, notes = told(rows_of_18(8, {"length": "100 in"}, {"length": "50 in"}))
    assert (bought["enough"], bought["spare"], bought["short_by"]) == (None, None, None)
    assert notes["cut-otherwise"]["at"] == "/cloths/0/bought"
    assert "does not divide" in notes["cut-otherwise"]["text"]


def test_one_length_that_is_enough_by_itself_is_enough_whatever_else_was_cut():
    bought, _ = told(rows_of_18(3, {"length": "10 in"}, {"length": "60 in"}))
    assert (bought["enough"], bought["spare"]["nm"]) == (True, 6 * IN)


def test_rows_placed_by_the_pattern_are_not_moved_to_another_length():
    """Two rows 25 in apart take 43 in; where the motif falls on two lengths of 20 in is not known."""
    printed = {
        "repeat": {"across": "18 in", "along": "25 in"},
        "motifs": [{"id": "m1", "across": "9 in", "along": "0 in"}],
        "start": "choose",
    }
    one = covers(1, "17 in", "17 in", pattern="centred", motif="m1")
    document = job(one, cloth("18 in", bought=[{"length": "20 in"}, {"length": "20 in"}], **printed))
    bought, _ = told(document)
    assert bought["enough"] is None
    whole, _ = told(changed(document, "/cloths/0/bought", [{"length": "43 in"}]))
    assert (whole["enough"], whole["spare"]["nm"]) == (True, 0)
    assert whole["text"] == "Enough: 43 in are needed, 43 in were cut; nothing is left."


def test_panels_side_by_side_stay_on_one_length():
    """Two rows of two panels of 18 in: lengths of 18 in hold a row each, one of 35 and one of 9 in hold no two rows."""
    document = job(covers(2, "17 in", "17 in"), cloth("36 in", bought=[{"length": "18 in"}, {"length": "18 in"}]))
    assert told(document)[0]["enough"] is True
    uneven = changed(document, "/cloths/0/bought", [{"length": "35 in"}, {"length": "9 in"}])
    assert told(uneven)[0]["enough"] is None


def test_piping_is_divided_among_lengths_with_the_panels():
    """An 18 in panel and a strip of piping across the cloth behind it: the strip may come from the second length."""
    cover = covers(1, "17 in", "17 in")
    cover["cover"]["edge"] = {"kind": "piped", "cord": "1/4 in", "strip": "straight"}
    document = job(cover, cloth("36 in", bought=[{"length": "18 in"}, {"length": "12 in"}]))
    answer = plan(document)
    assert answer["cloths"][0]["laid"]["nm"] > 18 * IN
    assert told(document)[0]["enough"] is True


@pytest.mark.parametrize(("width", "enough"), [("36 in", True), ("35 15/16 in", None), (None, True)])
def test_a_length_that_is_narrower_than_the_plan_is_not_held_against_it(width, enough):
    """Two panels of 18 side by side take 36 in of the 40 in the cloth was said to have."""
    cut = {"length": "20 in", **({"width": width} if width else {})}
    document = job(covers(1, "17 in", "17 in"), cloth("40 in", bought=[cut]))
    bought, notes = told(document)
    assert bought["enough"] is enough
    assert ("cut-otherwise" in notes) == (enough is None)


def test_some_narrower_lengths_among_several_are_told():
    cut = [{"length": "10 in"}, {"length": "20 in", "width": "30 in"}]
    bought, _ = told(job(covers(1, "17 in", "17 in"), cloth("40 in", bought=cut)))
    assert bought["enough"] is None
    assert bought["text"].startswith("Some of it is narrower than the 36 in")


def test_a_length_still_to_be_measured_is_asked_for():
    bought, notes = told(rows_of_18(2, {"batch": "7"}, {}))
    assert (bought["enough"], bought["text"]) == (None, "Say how long what was cut is.")
    assert bought["lengths"] == [{"text": "batch 7"}, {"text": "not measured yet"}]
    assert not {"cut-too-short", "cut-otherwise"} & set(notes)


def test_two_batches_of_one_cloth_are_to_be_compared_in_daylight():
    """Common practice: two batches are never quite alike; front and back of one cover come from one of them."""
    cut = [{"length": "36 in", "batch": "A7 "}, {"length": "36 in", "batch": "a7"}, {"length": "1 yd"}]
    _, notes = told(rows_of_18(2, *cut))
    assert "two-batches" not in notes
    _, notes = told(rows_of_18(2, *cut, {"length": "1 yd", "batch": "B1"}, name="plain linen"))
    assert notes["two-batches"]["text"].startswith("2 batches of plain linen: lay them side by side in daylight")


@pytest.mark.parametrize(
    ("amounts", "text"),
    [
        (["64.00"], "Paid 64.00 USD, as planned."),
        (["40.00", "30.50"], "Paid 70.50 USD, planned 64.00 USD: 6.50 USD more."),
        (["60"], "Paid 60.00 USD, planned 64.00 USD: 4.00 USD less."),
        ([], None),
    ],
)
def test_what_was_paid_stands_beside_what_was_planned(amounts, text):
    """Four rows of 18 are 2 yd, at 32.00 a yard 64.00."""
    cut = [{"length": "2 yd", "paid": amount} for amount in amounts] or [{"length": "2 yd"}]
    bought, notes = told(rows_of_18(4, *cut, price=PRICE))
    assert bought["paid_text"] == text
    assert "paid-for-more" not in notes


def test_what_was_paid_needs_the_currency_of_the_price():
    bought, notes = told(rows_of_18(4, {"length": "2 yd", "paid": "64.00"}))
    assert bought["paid_text"] is None
    assert notes["paid-without-price"]["at"] == "/cloths/0/bought/0/paid"


def test_an_amount_that_cannot_be_read_is_said_at_its_field():
    with pytest.raises(JobError) as raised:
        plan(rows_of_18(4, {"length": "2 yd", "paid": "much"}, price=PRICE))
    assert [(one["at"], one["code"]) for one in raised.value.problems] == [("/cloths/0/bought/0/paid", "not-an-amount")]


def test_cloth_that_was_cut_before_it_was_approved_is_told_and_approval_is_on_the_sheet():
    """Terms that workrooms publish: cut is the point of no return."""
    cut = {"length": "2 yd", "on": "2026-07-10", "batch": "7", "roll": "12"}
    late = rows_of_18(4, cut, approved="2026-07-11", name="plain linen")
    bought, notes = told(late)
    assert notes["cut-before-approved"]["at"] == "/cloths/0/approved"
    text = "Cut 10 July 2026, before the client approved it 11 July 2026: what is cut cannot go back."
    assert notes["cut-before-approved"]["text"] == text
    assert bought["approved_text"] == "Cutting approved 11 July 2026."
    facts = {fact["name"]: fact["text"] for fact in plan(late)["workroom"][0]["facts"]}
    assert facts["Cut of plain linen"] == "72 in, 10 July 2026, batch 7, roll 12"
    assert facts["Approval, plain linen"] == "Cutting approved 11 July 2026."
    same_day = changed(late, "/cloths/0/approved", "2026-07-10")
    assert "cut-before-approved" not in told(same_day)[1]
    not_yet, notes = told(changed(late, "/cloths/0/approved", None))
    assert not_yet["approved_text"] == "Cutting not approved yet."
    assert "cut-before-approved" not in notes
    _, notes = told({**changed(late, "/cloths/0/approved", None), "client": "Mrs Wren"})
    text = "Mrs Wren has not approved that plain linen is cut: what is cut cannot go back."
    assert notes["cut-before-approved"]["text"] == text


def test_a_cloth_approved_and_not_cut_yet_says_so_on_the_sheet():
    document = rows_of_18(4, approved="2026-07-11")
    del document["cloths"][0]["bought"]
    answer = plan(document)
    assert "bought" not in answer["cloths"][0]
    assert {"name": "Approval, cloth 1", "text": "Cutting approved 11 July 2026."} in answer["workroom"][0]["facts"]


@pytest.mark.parametrize(
    ("day", "at"), [("2026-02-30", "approved"), (20260710, "approved"), ("10.7.2026", "bought/0/on")]
)
def test_a_day_that_is_none_is_said_at_its_field(day, at):
    document = changed(rows_of_18(4, {"length": "2 yd"}), f"/cloths/0/{at}", day)
    with pytest.raises(JobError) as raised:
        plan(document)
    assert [(one["at"], one["code"]) for one in raised.value.problems] == [(f"/cloths/0/{at}", "not-a-date")]


def test_what_was_cut_changes_no_plan_and_no_length_to_buy():
    plain = rows_of_18(4, price=PRICE)
    cut = changed(plain, "/cloths/0/bought", [{"length": "1 yd", "paid": "90.00"}])
    one, other = plan(plain)["cloths"][0], plan(cut)["cloths"][0]
    other.pop("bought")
    assert one == other


def test_the_words_on_the_label_stay_as_they_were_written():
    document = rows_of_18(2, {"length": "1 yd", "roll": "zip 4"}, approved="2026-07-10")
    said = wording("en-US", document)
    bought = reworded(plan(document), said)["cloths"][0]["bought"]
    assert bought["lengths"] == [{"text": "36 in, roll zip 4"}]
