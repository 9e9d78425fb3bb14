"""Why a way takes what it does, from its plans' own numbers, beside the way that takes least."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.answer import panels_across
from plumpline.cloth import to_buy
from plumpline.figures import length_to_ask
from plumpline.job import Job, Price, name_of
from plumpline.layout.strip import Plan
from plumpline.layplan import ClothPlan
from plumpline.lengths import write_length
from plumpline.money import cost, write_money
from plumpline.working import row_line


@dataclass(frozen=True)
class Found:
    """The job so made, and the plans of the cloths concerned."""

    job: Job
    plans: tuple[ClothPlan, ...]

    @property
    def bought(self) -> int:
        """The whole length to buy, nm."""
        return sum(one.buy for one in self.plans)

    @property
    def price(self) -> tuple[int, str] | None:
        """What all cloths cost, in minor units of one currency; None where that is not known of each."""
        prices = [one.cloth.price for one in self.plans]
        known = [price for price in prices if price is not None]
        currencies = list(dict.fromkeys(price.currency for price in known))
        if len(known) < len(prices) or len(currencies) != 1:
            return None
        return sum(_cost(one.buy, price) for one, price in zip(self.plans, known, strict=True)), currencies[0]


def _cost(length: int, price: Price) -> int:
    return cost(length, price.minor, price.per)


def shown(planned: ClothPlan) -> Plan:
    """The plan that is looked at: by straight cuts where they buy no more."""
    straight = planned.straight
    return straight if to_buy(planned.cloth, planned.needed_for(straight)) == planned.buy else planned.plan


def why(found: Found, least: Found | None) -> str:
    """How the panels lie, and in what this differs from the way that takes least; without one, as it stands alone."""
    said = []
    differs = least is not None and (found.bought, found.price) != (least.bought, least.price)
    for index, planned in enumerate(found.plans):
        beside = least.plans[index] if least and differs and len(least.plans) == len(found.plans) else None
        lines = [*_contrast(planned, beside), *_lie(planned, found.job), *_start(planned, found.job)]
        named = f"{name_of(planned.cloth)}: " if len(found.plans) > 1 else ""
        said.append(named + " ".join(lines))
    return " ".join(said)


def _contrast(planned: ClothPlan, least: ClothPlan | None) -> list[str]:
    if least is None:
        return []
    lines = []
    mine, other = panels_across(planned), panels_across(least)
    if mine and other and mine != other:
        lines.append(f"{mine} across instead of {other}.")
    a, b = planned.cloth.price, least.cloth.price
    if a and b and a.minor != b.minor and (a.per, a.currency) == (b.per, b.currency):
        one, two = write_money(a.minor, a.currency), write_money(b.minor, b.currency)
        lines.append(f"{one} {a.currency} a {a.per_unit} instead of {two}.")
    return lines


def _lie(planned: ClothPlan, job: Job) -> list[str]:
    return [row_line(planned, shown(planned), job)] if planned.pieces else []


def _start(planned: ClothPlan, job: Job) -> list[str]:
    if not planned.repeats:
        return []
    repeat = write_length(planned.cloth.repeat_along, job.units)
    return [f"A whole repeat of {repeat} is added, because the cut may fall anywhere."]


def more_than(found: Found, least: Found, units: str) -> str:
    """What a way takes more than the least one: "24.00 USD and 3/4 yd more"; "the same" where nothing."""
    said: list[tuple[str, int]] = []
    one, two = found.price, least.price
    if one and two and one[1] == two[1] and one[0] != two[0]:
        said.append((f"{write_money(abs(one[0] - two[0]), one[1])} {one[1]}", one[0] - two[0]))
    steps = list(dict.fromkeys(planned.cloth.sold_by for way in (found, least) for planned in way.plans))
    difference = found.bought - least.bought
    if len(steps) == 1 and difference:
        said.append((length_to_ask(abs(difference), steps[0], units), difference))
    if len(said) == 2 and (said[0][1] > 0) == (said[1][1] > 0):
        said = [(f"{said[0][0]} and {said[1][0]}", said[0][1])]
    return ", ".join(f"{text} {'more' if by > 0 else 'less'}" for text, by in said) or "the same"
