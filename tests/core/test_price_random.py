"""Thousands of random prices: every line is its quantity times its price, and the lines add up, however tax is rounded.

The sums are made anew with the decimal module, rounding half up; nothing of the core is used for them but its answer.
"""

from decimal import ROUND_HALF_UP, Decimal
from fractions import Fraction
from random import Random

import pytest
from quotes import NO_MATERIALS, NO_WORK, bare

from plumpline.price import priced

IN_INCHES = {"in": 1, "ft": 12, "yd": 36, "cm": Fraction(100, 254), "m": Fraction(10_000, 254)}
DECIMALS = {"USD": 2, "HUF": 2, "JPY": 0, "KWD": 3}
PRICES = 2000


def rounded(value, currency):
    """Half up to a minor unit, what is below nothing as what is above."""
    unit = Decimal(1).scaleb(-DECIMALS[currency])
    exact = Decimal(value.numerator) / Decimal(value.denominator)
    return Fraction(exact.quantize(unit, ROUND_HALF_UP))


def amount(random, currency, most=500, least=0):
    decimals = DECIMALS[currency]
    minor = random.randint(least * 10**decimals, most * 10**decimals)
    return str(Decimal(minor).scaleb(-decimals))


def percent(random, most=200):
    return f"{random.randint(0, most * 10 - 1) / 10} %"


def random_price(random):
    """A job with a price in one currency, with a little of everything, and the length bought of its cloth in nm."""
    currency = random.choice(sorted(DECIMALS))

    def some(most=500, least=0):
        return amount(random, currency, most, least)

    def minutes():
        return {"minutes": str(random.randint(0, 400) / 4)}

    def extra():
        return {"on": random.random() < 0.6, "amount": some(), "rate": percent(random)}

    def item():
        return {"amount": some(), "count": random.randint(1, 9), "kind": random.choice(["bought", "work"])}

    rates = {"hour": some(), "travel": {"amount": some(3), "per": "km"}}
    document = bare(
        currency=currency,
        rates=rates if random.random() < 0.5 else {**rates, "overhead": some(20)},
        operations={**NO_WORK, "consult": minutes(), "cut": minutes(), "fill": minutes()},
        prices={**NO_MATERIALS, "thread": {"amount": some(20)}},
        markup={"cloth": percent(random), "materials": percent(random), "work": percent(random)},
        items=[item() for _ in range(random.randint(0, 6))],
        extras={"rush": extra(), "velvet": extra()},
        travel={"distance": str(random.randint(0, 90))},
        # A discount of more than all there is to pay is refused, which another test is about.
        minimum=some(least=50),
        discount={"rate": random.choice(["0 %", "5 %", "12.5 %"]), "amount": some(9)},
        tax={
            "rate": random.choice(["0 %", "20 %", "19 %", "8.875 %", "27 %"]),
            "included": random.random() < 0.5,
            "rounding": random.choice(["line", "document"]),
        },
        deposit={"materials": percent(random, 100), "making": percent(random, 100)},
    )
    document["cloths"][0]["price"]["amount"] = some()
    return document, random.randint(0, 80) * 36 * 25_400_000 // 8


def whole(text):
    """A quantity as the line tells it: "3 1/8", "12.5"."""
    return sum((Fraction(part) for part in text.split()), Fraction(0))


def reckoned(line, currency):
    """What a line comes to by its own quantity and price."""
    quantity, price = whole(line["quantity"]), Fraction(line["price"])
    if line["unit"] == "%":
        return rounded(quantity / 100 * price, currency)
    if line["unit"] == "min":
        return rounded(quantity / 60 * price, currency)
    if line["per"] in IN_INCHES:
        return rounded(quantity * IN_INCHES[line["unit"]] / IN_INCHES[line["per"]] * price, currency)
    return rounded(quantity * price, currency)


def expected_tax(lines, tax, currency):
    """The tax made anew; line by line each has to show its own part of it."""
    rate = Fraction(tax["rate"].removesuffix(" %")) / 100
    rate = rate / (1 + rate) if tax["included"] else rate
    if tax["rounding"] == "document":
        assert all("tax" not in line for line in lines)
        return rounded(sum(Fraction(line["amount"]) for line in lines) * rate, currency)
    for line in lines:
        assert Fraction(line["tax"]) == rounded(Fraction(line["amount"]) * rate, currency), line
    return sum(Fraction(line["tax"]) for line in lines)


def check_decimals(answer, currency):
    """Every amount has all decimals of its currency, and no more."""
    told = [line["amount"] for line in answer["lines"]] + [answer[name] for name in ("net", "tax", "total", "deposit")]
    assert {len(text.partition(".")[2]) for text in told} == {DECIMALS[currency]}


def check(document, answer):
    """The whole price made anew from its lines."""
    currency, tax = answer["currency"], document["quote"]["tax"]
    for line in answer["lines"]:
        assert Fraction(line["amount"]) == reckoned(line, currency), line
    net, on_top, total = (Fraction(answer[name]) for name in ("net", "tax", "total"))
    of_lines = sum(Fraction(line["amount"]) for line in answer["lines"])
    assert of_lines == (total if tax["included"] else net)
    assert net + on_top == total
    assert Fraction(answer["materials"]) + Fraction(answer["making"]) == of_lines
    assert on_top == expected_tax(answer["lines"], tax, currency)
    assert 0 <= Fraction(answer["deposit"]) <= total
    assert Fraction(answer["deposit"]) + Fraction(answer["balance"]) == total
    check_decimals(answer, currency)


@pytest.mark.parametrize("seed", range(10))
def test_every_line_can_be_reckoned_again_and_all_of_them_add_up(seed):
    random = Random(seed)
    for _ in range(PRICES // 10):
        document, bought = random_price(random)
        check(document, priced(document, {"k1": bought}))
