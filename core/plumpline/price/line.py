"""One line of a price: what is charged, how much of it, at what price, and in words how that comes about."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from plumpline.lengths import UNITS, decimal_text, round_half_up
from plumpline.money import share, write_money

Group = Literal["materials", "making"]


@dataclass(frozen=True)
class Line:
    """Amounts in minor units; `amount` is None where there is no price yet, which then is to be set `at`.

    `quantity` is so many `unit`, at `price` for each `per`. What it `costs` the maker is never shown to a client.
    The `code` stays the same while the figures change. `example` says that it rests on an example, not on the maker's
    own figure, `own` that what it costs are the maker's own hours.
    """

    code: str
    group: Group
    text: str
    quantity: str
    unit: str
    price: int | None
    per: str
    amount: int | None
    costs: int
    working: str
    at: str
    example: bool = False
    own: bool = False


@dataclass(frozen=True)
class Marked:
    """What is paid for one, in minor units, and what it is charged at with a `markup`, rounded half up."""

    paid: int
    markup: Fraction = Fraction(0)

    @property
    def price(self) -> int:
        """What one is charged at."""
        return share(self.paid, 1 + self.markup)

    def working(self, per: str, currency: str) -> str:
        """ "32.00 a yd + 50 % = 48.00 a yd"; without a mark-up the price alone."""
        paid = f"{write_money(self.paid, currency)} {per}"
        if not self.markup:
            return paid
        return f"{paid} + {percent(self.markup)} mark-up = {write_money(self.price, currency)} {per}"


def unpriced(code: str, group: Group, text: str, quantity: tuple[str, str], why: str, at: str) -> Line:
    """A line for a `quantity` (so many, of what) whose price is still to be set `at` its field."""
    many, unit = quantity
    return Line(
        code=code,
        group=group,
        text=text,
        quantity=many,
        unit=unit,
        price=None,
        per=unit or "each",
        amount=None,
        costs=0,
        working=why,
        at=at,
    )


def times(quantity: str, price: int, amount: int, currency: str) -> str:
    """ "3 1/8 yd × 48.00 = 150.00"."""
    return f"{quantity} × {write_money(price, currency)} = {write_money(amount, currency)}"


def in_decimals(nm: int, unit: str) -> str:
    """A length as a pocket calculator takes it: "13.125 ft", "≈ 0.547 yd"."""
    exact = Fraction(nm, UNITS[unit])
    thousandths = round_half_up(exact * 1000)
    return f"{'' if exact * 1000 == thousandths else '≈ '}{decimal_text(Fraction(thousandths, 1000))} {unit}"


def percent(rate: Fraction) -> str:
    """A rate in hundredths, to one decimal and half up: "33.3 %", "8.9 %", "-12 %"."""
    tenths = round_half_up(abs(rate) * 1000)
    return f"{'-' if rate < 0 and tenths else ''}{decimal_text(Fraction(tenths, 10))} %"


def exact_percent(rate: Fraction) -> str:
    """A rate as it was entered: "8.875 %"."""
    return f"{decimal_text(rate * 100)} %"
