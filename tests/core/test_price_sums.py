"""The sums of a price: tax, margin and markup, minimum, discount and deposit, against rules and hand calculations."""

import pytest
from quotes import NO_WORK, bill, item

from plumpline import JobError


def sums(answer):
    return answer["net"], answer["tax"], answer["total"]


THREE = [item("3.33")] * 3


def test_three_lines_of_3_33_have_201_of_tax_line_by_line_and_200_by_the_document():
    """By hand: 20 % of 3.33 is 0.666, 0.67 on each of three lines; 20 % of 9.99 is 1.998, 2.00 once.

    That an invoice trader may do either is told by VAT Notice 700, section 17.5 (United Kingdom).
    """
    by_line = bill(*THREE, tax={"rate": "20 %", "rounding": "line"})
    assert sums(by_line) == ("9.99", "2.01", "12.00")
    assert [line["tax"] for line in by_line["lines"]] == ["0.67", "0.67", "0.67"]
    assert sums(bill(*THREE, tax={"rate": "20 %", "rounding": "document"})) == ("9.99", "2.00", "11.99")
    assert sums(bill(*THREE, tax={"rate": "20 %"})) == ("9.99", "2.00", "11.99")


@pytest.mark.parametrize(
    ("rate", "total"), [("6.49 %", "1.06"), ("6.50 %", "1.07"), ("0.0649", "1.06"), ("6.5%", "1.07")]
)
def test_a_tax_is_carried_to_the_third_decimal_and_rounded_up_when_that_is_above_four(rate, total):
    """Streamlined Sales and Use Tax Agreement, section 324, as enacted in R.I. Gen. Laws 44-18.1-25: 1.0649 is
    1.06, 1.0650 is 1.07; by the item or by the invoice."""
    for rounding in ("line", "document"):
        assert bill(item("1.00"), tax={"rate": rate, "rounding": rounding})["total"] == total


@pytest.mark.parametrize(
    ("net", "rate", "tax", "total"),
    [("302.00", "20 %", "60.40", "362.40"), ("138.66", "19 %", "26.35", "165.01")],
)
def test_no_binary_fraction_ever_shows(net, rate, tax, total):
    """Fault B40: 302.00 at 20 % once gave 60.41, 138.66 at 19 % 165.00 in one place and 165.01 in another.

    By hand: 302 × 0.2 = 60.4; 138.66 × 0.19 = 26.3454.
    """
    for rounding in ("line", "document"):
        assert sums(bill(item(net), tax={"rate": rate, "rounding": rounding})) == (net, tax, total)


def test_tax_within_the_prices_is_taken_out_of_the_total_and_never_added():
    """By hand: 12.00 with 20 % in it is 10.00 and 2.00; 9.99 has 1.665, 1.67 once, and 3 × 0.555, 0.56 a line."""
    included = {"rate": "20 %", "included": True}
    assert sums(bill(item("12.00"), tax=included)) == ("10.00", "2.00", "12.00")
    assert sums(bill(*THREE, tax=included)) == ("8.32", "1.67", "9.99")
    by_line = bill(*THREE, tax={**included, "rounding": "line"})
    assert sums(by_line) == ("8.31", "1.68", "9.99")
    assert by_line["working"][0]["text"] == (
        "Prices have the tax in them: 20 % within 9.99 is 1.68, rounded line by line."
    )


@pytest.mark.parametrize(
    ("currency", "amount", "tax", "total"),
    [
        ("HUF", "333.33", "90.00", "423.33"),
        ("JPY", "333", "90", "423"),
        ("KWD", "3.333", "0.900", "4.233"),
    ],
)
def test_every_currency_has_its_own_decimals(currency, amount, tax, total):
    """ISO 4217: the forint has two decimals, the yen none, the Kuwaiti dinar three.

    By hand at 27 %: 333.33 × 0.27 = 89.9991; 333 × 0.27 = 89.91; 3.333 × 0.27 = 0.89991.
    """
    answer = bill(item(amount), currency=currency, tax={"rate": "27 %"})
    assert (answer["currency"], *sums(answer)) == (currency, amount, tax, total)


@pytest.mark.reference
def test_the_decimals_are_those_of_babel_where_it_has_those_of_iso_4217():
    """Babel 2.19, whose table is the Unicode CLDR's: it gives no decimals to currencies whose coins are out of use.
    For those the published list of ISO 4217 holds, as everywhere in this product."""
    from babel.numbers import get_currency_precision, list_currencies

    from plumpline.money import DECIMALS

    differing = {
        code: get_currency_precision(code)
        for code, decimals in DECIMALS.items()
        if get_currency_precision(code) != decimals
    }
    assert list_currencies() >= DECIMALS.keys()
    assert differing == DIFFERING


# Each has two decimals in ISO 4217, the Iraqi dinar three.
DIFFERING = dict.fromkeys(
    ["AFN", "ALL", "COP", "HUF", "IDR", "IQD", "IRR", "KPW", "LAK", "LBP", "MGA", "MMK", "SOS", "SYP", "YER"], 0
)


def test_markup_is_a_part_of_the_cost_and_margin_a_part_of_the_price():
    """Two business texts: at a cost of 1.00 and a price of 1.50 the markup is 50 %, the margin 33.3 %; at a cost of
    10 and a price of 15 as well; a markup of 100 % is a margin of 50 %."""

    def both(cost, markup):
        answer = bill(item(cost, kind="bought"), markup={"materials": markup})
        return answer["total"], answer["profit"]["markup"], answer["profit"]["margin"]

    assert both("1.00", "50 %") == ("1.50", "50 %", "33.3 %")
    assert both("10.00", "0.5") == ("15.00", "50 %", "33.3 %")
    assert both("1.00", "100 %") == ("2.00", "100 %", "50 %")


def test_margin_is_of_the_price_without_tax():
    """By hand: 1.50 with 20 % tax in it is 1.25 net; 0.25 of it is 20 %, and 25 % on the cost of 1.00."""
    answer = bill(item("1.00", kind="bought"), markup={"materials": "50 %"}, tax={"rate": "20 %", "included": True})
    assert answer["net"] == "1.25"
    assert (answer["profit"]["markup"], answer["profit"]["margin"]) == ("25 %", "20 %")
    assert answer["profit"]["working"][1]["text"] == "Markup, on the cost: 0.25 ÷ 1.00 = 25 %."


def test_a_loss_is_told_as_one():
    answer = bill(item("10.00", kind="bought"), discount={"amount": "4.00"})
    assert (answer["profit"]["gain"], answer["profit"]["markup"], answer["profit"]["margin"]) == (
        "-4.00",
        "-40 %",
        "-66.7 %",
    )


def test_where_nothing_is_charged_there_is_no_margin():
    assert bill()["profit"]["margin"] is None
    assert bill()["profit"]["markup"] is None
    assert bill()["deposit"] == "0.00"


def test_two_covers_at_50_that_took_a_day_earn_12_50_an_hour():
    """A maker's account (case A44): two covers took a whole day of 8 hours at 50 each: 100 / 8 = 12.50."""
    work = {**NO_WORK, "consult": {"minutes": "480"}}
    answer = bill(item("50.00", 2), operations=work)
    assert answer["profit"]["an_hour"] == "12.50"
    assert answer["profit"]["working"][-1]["text"] == (
        "With all else paid, 100.00 is left for 480 min of work: 12.50 an hour."
    )


def test_no_job_is_charged_less_than_the_minimum():
    answer = bill(item("20.00"), minimum="60.00")
    assert answer["total"] == "60.00"
    assert answer["lines"][-1]["amount"] == "40.00"
    assert answer["lines"][-1]["working"] == "No job is charged less than 60.00; all of the above is 20.00."
    assert bill(item("60.00"), minimum="60.00")["total"] == "60.00"
    assert [line["code"] for line in bill(item("60.00"), minimum="60.00")["lines"]] == ["item:1"]


def test_a_discount_comes_off_last_as_a_part_and_as_an_amount():
    """By hand: 10 % of 60.00 is 6.00; 60 − 6 − 4 = 50."""
    answer = bill(item("20.00"), minimum="60.00", discount={"rate": "10 %", "amount": "4.00"})
    assert [line["amount"] for line in answer["lines"]] == ["20.00", "40.00", "-6.00", "-4.00"]
    assert answer["total"] == "50.00"


def test_the_tax_of_a_discount_is_rounded_as_that_of_a_charge_is():
    """By hand: 20 % of 3.33 is 0.666, 0.67 either way; 3.33 charged and taken off again leaves nothing."""
    answer = bill(item("3.33"), discount={"amount": "3.33"}, tax={"rate": "20 %", "rounding": "line"})
    assert [line["tax"] for line in answer["lines"]] == ["0.67", "-0.67"]
    assert sums(answer) == ("0.00", "0.00", "0.00")


def test_more_cannot_be_taken_off_than_there_is():
    with pytest.raises(JobError) as raised:
        bill(item("20.00"), discount={"amount": "25.00"})
    assert raised.value.problems == [
        {
            "at": "/quote/discount/amount",
            "code": "rules-contradict",
            "text": "25.00 are to be taken off, but there are only 20.00 to pay: lower the discount.",
        }
    ]


def test_the_deposit_is_materials_in_full_and_half_of_the_making():
    """Common practice. By hand: 40 of materials and half of 100 is 90; with 20 % tax 108."""
    lines = [item("40.00", kind="bought"), item("100.00")]
    assert (bill(*lines)["deposit"], bill(*lines)["balance"]) == ("90.00", "50.00")
    taxed = bill(*lines, tax={"rate": "20 %"})
    assert (taxed["deposit"], taxed["total"]) == ("108.00", "168.00")
    assert taxed["working"][1]["text"] == (
        "Deposit: 100 % of the materials and 50 % of all else, with its tax: 108.00. Then 60.00 is left."
    )


def test_a_deposit_of_all_is_all_to_the_penny_and_a_discount_comes_off_the_making():
    """By hand: 40 + half of (100 − 20) = 80. Terms that workrooms publish ask for half of all (case A45)."""
    lines = [item("40.00", kind="bought"), item("100.00")]
    assert bill(*lines, discount={"amount": "20.00"})["deposit"] == "80.00"
    assert bill(*lines, deposit={"materials": "50 %", "making": "50 %"})["deposit"] == "70.00"
    all_of_it = {"materials": "100 %", "making": "100 %"}
    answer = bill(*THREE, deposit=all_of_it, tax={"rate": "20 %", "rounding": "line"})
    assert answer["deposit"] == answer["total"] == "12.00"
    assert bill(*lines, discount={"amount": "120.00"})["deposit"] == "20.00"
