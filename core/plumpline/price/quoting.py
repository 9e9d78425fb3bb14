"""`quote`: from a job document to its price, line by line, with what it leaves and what is still missing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from plumpline.layout.budget import to_its_end
from plumpline.money import write_money
from plumpline.notices import in_order, notice, stop
from plumpline.planning import Effort, Planning
from plumpline.prepared import Prepared, prepare
from plumpline.price.adjusted import added, discount_lines, minimum_lines, too_much_off
from plumpline.price.beside import beside_lines
from plumpline.price.cloths import cloth_lines
from plumpline.price.deposit import deposit, deposit_working
from plumpline.price.extras import extra_lines, useless_extras
from plumpline.price.items import item_lines
from plumpline.price.line import Line, percent
from plumpline.price.profit import Profit, profit, profit_working
from plumpline.price.quoted import Quoted, read_quote
from plumpline.price.tax import Taxed, tax_working, taxed
from plumpline.price.travel import travel_lines
from plumpline.price.work import Bench, Done, minutes_of, work_lines, work_of
from plumpline.problems import JobError, Problem
from plumpline.shopping import materials
from plumpline.version import __version__

Json = dict[str, Any]


def quote(job: Json, effort: Effort = "full") -> Json:
    """The price of a job by its `quote`: lines, net, tax, total, deposit, and what stays with the maker.

    `job` is a document of format "plumpline-job"; cloth is charged by the length that `plan` buys at this effort.
    Amounts are text with all decimals of the currency; the lines add up to the net, or to the total where prices have
    the tax in them. Raises `JobError` with every problem at once, as `plan` does.
    """
    planning = Planning(job, effort)
    to_its_end(planning.plans())
    return _priced(planning.prepared, job, planning.bought, planning.problems)


def priced(job: Json, bought: dict[str, int]) -> Json:
    """As `quote`, for lengths that were planned before: in nm by the id of the cloth."""
    prepared = prepare(job)
    if not isinstance(prepared, Prepared):
        raise JobError(prepared)
    return _priced(prepared, job, bought, list(prepared.problems))


def _priced(prepared: Prepared, document: Json, bought: dict[str, int], problems: list[Problem]) -> Json:
    quoted = read_quote(document.get("quote", {}), prepared.job)
    if not isinstance(quoted, Quoted):
        raise JobError(quoted)
    bench = Bench(prepared.covers, prepared.job, bought)
    done = work_of(bench, quoted)
    lines = _lines(bench, done, quoted)
    off = too_much_off(lines, quoted)
    if off:
        raise JobError(off)
    sums = taxed(lines, quoted.tax)
    left = profit(lines, sums.net, minutes_of(done))
    notices = [stop(problem) for problem in problems]
    notices += _missing(lines)
    notices += [notice("info", problem.code, problem.at, problem.text) for problem in useless_extras(bench, quoted)]
    notices += _examples(lines)
    return _answer(quoted, lines, sums, left, notices)


def _lines(bench: Bench, done: Sequence[Done], quoted: Quoted) -> list[Line]:
    """Every line in the order of the bill: what is bought, the work, what is charged beside, what it is brought to."""
    work = list(work_lines(done, quoted))
    lines = [
        *cloth_lines(bench.bought, bench.job, quoted),
        *beside_lines(materials(bench.covers, bench.job), bench.job, quoted),
        *work,
        *extra_lines(bench, work, quoted),
        *item_lines(quoted),
        *travel_lines(quoted),
    ]
    lines += minimum_lines(lines, quoted)
    return [*lines, *discount_lines(lines, quoted)]


def _missing(lines: Sequence[Line]) -> list[Json]:
    """What has no price, each field once."""
    asked: dict[str, str] = {}
    for line in lines:
        if line.amount is None:
            asked.setdefault(line.at, line.text)
    return [
        notice("warn", "no-price", at, f"{text}: no price yet, so the total is without it.")
        for at, text in asked.items()
    ]


def _examples(lines: Sequence[Line]) -> list[Json]:
    texts = [line.text for line in lines if line.example]
    if not texts:
        return []
    text = f"{len(texts)} of the lines of work have example minutes: put in your own. They are: {', '.join(texts)}."
    return [notice("info", "example-minutes", "/quote/operations", text)]


def _answer(quoted: Quoted, lines: Sequence[Line], sums: Taxed, left: Profit, notices: list[Json]) -> Json:
    def money(minor: int) -> str:
        return write_money(minor, quoted.currency)

    paid = deposit(lines, sums, quoted)
    groups = {name: added([line for line in lines if line.group == name]) for name in ("materials", "making")}
    return {
        "format": "plumpline-quote",
        "version": 1,
        "core": __version__,
        "currency": quoted.currency,
        "lines": [_line(line, tax, quoted.currency) for line, tax in zip(lines, _taxes(lines, sums), strict=True)],
        **{name: money(minor) for name, minor in groups.items()},
        "net": money(sums.net),
        "tax": money(sums.tax),
        "total": money(sums.total),
        "tax_included": quoted.tax.included,
        "deposit": money(paid),
        "balance": money(sums.total - paid),
        "complete": not any(told["code"] == "no-price" or told["level"] == "stop" for told in notices),
        "profit": {
            "costs": money(left.costs),
            "gain": money(left.gain),
            "markup": percent(left.markup) if left.markup is not None else None,
            "margin": percent(left.margin) if left.margin is not None else None,
            "minutes": left.minutes,
            "an_hour": money(left.an_hour) if left.an_hour is not None else None,
            "working": [{"text": text} for text in profit_working(left, quoted.currency)],
        },
        "working": [
            {"text": tax_working(sums, quoted.tax, quoted.currency)},
            {"text": deposit_working(sums, paid, quoted)},
        ],
        "notices": in_order(notices),
    }


def _taxes(lines: Sequence[Line], sums: Taxed) -> Sequence[int | None]:
    return sums.by_line if sums.by_line is not None else [None] * len(lines)


def _line(line: Line, tax: int | None, currency: str) -> Json:
    """A line as every reader has it; the tax stands on it where it is rounded line by line."""
    return {
        "code": line.code,
        "group": line.group,
        "text": line.text,
        "quantity": line.quantity,
        "unit": line.unit,
        "price": None if line.price is None else write_money(line.price, currency),
        "per": line.per,
        "amount": None if line.amount is None else write_money(line.amount, currency),
        **({} if tax is None else {"tax": write_money(tax, currency)}),
        "example": line.example,
        "at": line.at,
        "working": line.working,
    }
