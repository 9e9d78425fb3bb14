"""The tax on a price: on top of it or within it, rounded half up line by line or once for the document.

Half up by the third decimal is the rule of the Streamlined Sales and Use Tax Agreement, section 324, which leaves the
seller to round by the item or by the invoice. Which of the two is chosen changes the tax by some minor units: three
lines of 3.33 at 20 % have 2.01 line by line and 2.00 by the document.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.money import share, write_money
from plumpline.price.adjusted import added
from plumpline.price.line import Line, exact_percent
from plumpline.price.quoted import Tax


@dataclass(frozen=True)
class Taxed:
    """The sums of a price in minor units, and the tax of each line where it is rounded line by line."""

    net: int
    tax: int
    total: int
    by_line: tuple[int, ...] | None


def taxed(lines: Sequence[Line], tax: Tax) -> Taxed:
    """Net, tax and total: the lines add up to the net, or to the total where they have the tax in them."""
    by_line = tuple(tax_on(line.amount or 0, tax) for line in lines) if tax.by_line else None
    sum_of_lines = added(lines)
    of_all = tax_on(sum_of_lines, tax) if by_line is None else sum(by_line)
    net = sum_of_lines - of_all if tax.included else sum_of_lines
    return Taxed(net, of_all, net + of_all, by_line)


def tax_on(amount: int, tax: Tax) -> int:
    """The tax on an amount, or within it; of what is taken off as much as of what is charged."""
    rate = tax.rate / (1 + tax.rate) if tax.included else tax.rate
    return share(amount, rate) if amount >= 0 else -share(-amount, rate)


def tax_working(sums: Taxed, tax: Tax, currency: str) -> str:
    """How the tax comes about."""
    if not tax.rate:
        return "No tax is added."
    rate, told = exact_percent(tax.rate), write_money(sums.tax, currency)
    rounded = "rounded line by line" if tax.by_line else "rounded once for all lines together"
    if tax.included:
        return f"Prices have the tax in them: {rate} within {write_money(sums.total, currency)} is {told}, {rounded}."
    return f"{rate} tax on {write_money(sums.net, currency)} is {told}, {rounded}."
