"""What stays with the maker: markup and margin, each by its own name, and what an hour of work comes to.

Markup is what is put on the cost, as a part of the cost; margin what stays of the price, as a part of the price. At a
cost of 1.00 and a price of 1.50 the markup is 50 %, the margin 33.3 %; a markup of 100 % is a margin of 50 %.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction

from plumpline.money import write_money
from plumpline.price.line import Line, percent


@dataclass(frozen=True)
class Profit:
    """Minor units: the price without tax, what all of it costs the maker, and the part of that which is own hours."""

    net: int
    costs: int
    hours: int
    minutes: int

    @property
    def gain(self) -> int:
        """What is left over all costs, the maker's own hours among them."""
        return self.net - self.costs

    @property
    def markup(self) -> Fraction | None:
        """As a part of the cost; None where nothing costs anything."""
        return Fraction(self.gain, self.costs) if self.costs else None

    @property
    def margin(self) -> Fraction | None:
        """As a part of the price; None where there is none."""
        return Fraction(self.gain, self.net) if self.net else None

    @property
    def an_hour(self) -> int | None:
        """What an hour comes to once everything else is paid, rounded down; None where no work is counted."""
        return (self.gain + self.hours) * 60 // self.minutes if self.minutes else None


def profit(lines: Sequence[Line], net: int, minutes: int) -> Profit:
    """What these lines leave of a price without tax."""
    costs = hours = 0
    for line in lines:
        costs += line.costs
        hours += line.costs if line.own else 0
    return Profit(net, costs, hours, minutes)


def profit_working(made: Profit, currency: str) -> list[str]:
    """Both figures as a calculation, and what an hour comes to."""
    net, costs, gain = (write_money(minor, currency) for minor in (made.net, made.costs, made.gain))
    lines = [f"It costs you {costs}, your own hours included, and is charged {net} without tax: {gain} stays."]
    if made.markup is not None:
        lines.append(f"Markup, on the cost: {gain} ÷ {costs} = {percent(made.markup)}.")
    if made.margin is not None:
        lines.append(f"Margin, of the price: {gain} ÷ {net} = {percent(made.margin)}.")
    if made.an_hour is not None:
        left = write_money(made.gain + made.hours, currency)
        hour = write_money(made.an_hour, currency)
        lines.append(f"With all else paid, {left} is left for {made.minutes} min of work: {hour} an hour.")
    return lines
