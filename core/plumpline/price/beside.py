"""What is bought beside the cloth, at the maker's prices with the mark-up: thread, zips, cord, pads and the rest."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.haberdashery import counter_unit
from plumpline.job import Job
from plumpline.lengths import COUNTER_GRID, round_up, write_length_up
from plumpline.materials.material import Material
from plumpline.money import cost
from plumpline.price.line import Line, Marked, in_decimals, times, unpriced
from plumpline.price.quoted import Quoted, Rate


def beside_lines(materials: Sequence[Material], job: Job, quoted: Quoted) -> Iterator[Line]:
    """A line for each thing on the list for the shops that is no cloth; without a price it has no amount."""
    for material in materials:
        rate = quoted.prices.get(material.kind)
        if rate is None:
            why = f"{_said(material)} What one costs is not known yet."
            yield unpriced(material.id, "materials", material.ask, (str(material.quantity), ""), why, _at(material))
        elif rate.per == "each":
            yield _each(material, rate, quoted)
        else:
            yield _by_length(material, rate, job, quoted)


def _at(material: Material) -> str:
    return f"/quote/prices/{material.kind}/amount"


def _said(material: Material) -> str:
    return material.working if material.working.endswith(".") else f"{material.working}."


def _each(material: Material, rate: Rate, quoted: Quoted) -> Line:
    marked, count = Marked(rate.minor, quoted.markup.materials), material.quantity
    amount = marked.price * count
    return Line(
        code=material.id,
        group="materials",
        text=material.ask,
        quantity=str(count),
        unit="",
        price=marked.price,
        per="each",
        amount=amount,
        costs=rate.minor * count,
        working=f"{_said(material)} {marked.working('each', quoted.currency)}; "
        f"{times(str(count), marked.price, amount, quoted.currency)}.",
        at=_at(material),
    )


def _by_length(material: Material, rate: Rate, job: Job, quoted: Quoted) -> Line:
    """By the length that the counter sells, so that it is that of the list for the shops."""
    marked, unit = Marked(rate.minor, quoted.markup.materials), counter_unit(job.units)
    length = round_up(dict(material.more)["length"]["nm"], COUNTER_GRID[unit])
    bought, amount = write_length_up(length, unit), cost(length, marked.price, rate.nm)
    by_price = bought if unit == rate.per else f"{bought} ({in_decimals(length, rate.per)})"
    return Line(
        code=material.id,
        group="materials",
        text=material.ask,
        quantity=bought.removesuffix(f" {unit}"),
        unit=unit,
        price=marked.price,
        per=rate.per,
        amount=amount,
        costs=cost(length, rate.minor, rate.nm),
        working=f"{_said(material)} {marked.working(f'a {rate.per}', quoted.currency)}; "
        f"{times(by_price, marked.price, amount, quoted.currency)}.",
        at=_at(material),
    )
