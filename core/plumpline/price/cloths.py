"""Cloth in a price: the length that is bought, at what it costs with the mark-up; or the client's own, for handling.

Never the area used: what is left over was bought as well. Two 19 in panels of 1512 sq in to the yard are 0.478 yd by
their area, but 5/8 yd has to be bought.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plumpline.figures import length_to_ask
from plumpline.job import Cloth, Job, name_of
from plumpline.lengths import UNITS, write_length
from plumpline.money import cost, write_money
from plumpline.price.line import Line, Marked, in_decimals, times, unpriced
from plumpline.price.quoted import Quoted


def cloth_lines(bought: dict[str, int], job: Job, quoted: Quoted) -> Iterator[Line]:
    """A line for each cloth that a length is taken of."""
    for cloth in job.cloths:
        if cloth.id in bought:
            taken = _Taken(cloth, bought[cloth.id], job.units)
            yield (_handled if cloth.id in quoted.client_cloths else _sold)(taken, quoted)


@dataclass(frozen=True)
class _Taken:
    """A length of a cloth, in nm, told in the words of the shop."""

    cloth: Cloth
    length: int
    units: str

    @property
    def text(self) -> str:
        return f"{name_of(self.cloth)}, {write_length(self.cloth.width or 0, self.units)} wide"

    @property
    def told(self) -> str:
        return length_to_ask(self.length, self.cloth.sold_by, self.units)

    @property
    def quantity(self) -> tuple[str, str]:
        many, unit = self.told.rsplit(" ", 1)
        return many, unit

    def by(self, per: str) -> str:
        """The length beside a price for that unit, which need not be the shop's."""
        return self.told if UNITS[self.quantity[1]] == UNITS[per] else f"{self.told} ({in_decimals(self.length, per)})"


def _sold(taken: _Taken, quoted: Quoted) -> Line:
    cloth, price = taken.cloth, taken.cloth.price
    code, at = f"cloth:{cloth.id}", f"{cloth.at}/price/amount"
    if price is None:
        why = f"{taken.told} is to be bought. What it costs is not known yet."
        return unpriced(code, "materials", taken.text, taken.quantity, why, at)
    marked, per = Marked(price.minor, quoted.markup.cloth), price.per_unit
    amount = cost(taken.length, marked.price, price.per)
    return Line(
        code=code,
        group="materials",
        text=taken.text,
        quantity=taken.quantity[0],
        unit=taken.quantity[1],
        price=marked.price,
        per=per,
        amount=amount,
        costs=cost(taken.length, price.minor, price.per),
        working=f"{taken.told} is bought, and so it is charged, whatever area of it is used. "
        f"{marked.working(f'a {per}', quoted.currency)}; "
        f"{times(taken.by(per), marked.price, amount, quoted.currency)}.",
        at=at,
    )


def _handled(taken: _Taken, quoted: Quoted) -> Line:
    """The client's own cloth: nothing is sold, but it is received, checked and answered for."""
    code, text, rate = f"handling:{taken.cloth.id}", f"Your own cloth: {taken.text}", quoted.handling
    at = "/quote/rates/handling/amount"
    if rate is None:
        why = f"{taken.told} of the client's own. What handling it costs is not known yet."
        return unpriced(code, "making", text, taken.quantity, why, at)
    amount = cost(taken.length, rate.minor, rate.nm)
    return Line(
        code=code,
        group="making",
        text=text,
        quantity=taken.quantity[0],
        unit=taken.quantity[1],
        price=rate.minor,
        per=rate.per,
        amount=amount,
        costs=0,
        working=f"The client's own, handled at {write_money(rate.minor, quoted.currency)} a {rate.per}; "
        f"{times(taken.by(rate.per), rate.minor, amount, quoted.currency)}.",
        at=at,
    )
