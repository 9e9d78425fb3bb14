"""What all lines together are brought to: at least the minimum charge, and less a discount."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.money import share, write_money
from plumpline.price.line import Line, exact_percent, times
from plumpline.price.quoted import Quoted
from plumpline.problems import Problem


def added(lines: Sequence[Line]) -> int:
    """All amounts together; what has no price yet is left out."""
    total = 0
    for line in lines:
        total += line.amount or 0
    return total


def minimum_lines(lines: Sequence[Line], quoted: Quoted) -> Iterator[Line]:
    """What is missing to the least that a job is charged; a discount comes off afterwards, as the maker's wish."""
    total, least = added(lines), quoted.minimum or 0
    if total < least:
        told, all_told = write_money(least, quoted.currency), write_money(total, quoted.currency)
        yield _single(
            "minimum",
            "Up to the minimum charge",
            least - total,
            f"No job is charged less than {told}; all of the above is {all_told}.",
            "/quote/minimum",
        )


def discount_lines(lines: Sequence[Line], quoted: Quoted) -> Iterator[Line]:
    """What is taken off: a part of all of the above, an amount, or both."""
    total = added(lines)
    if quoted.discount_rate:
        rate = exact_percent(quoted.discount_rate)
        off = share(total, quoted.discount_rate)
        yield Line(
            code="discount:rate",
            group="making",
            text="Discount",
            quantity=rate.removesuffix(" %"),
            unit="%",
            price=-total,
            per="whole",
            amount=-off,
            costs=0,
            working=f"{rate} of all of the above: {times(rate, total, off, quoted.currency)} less.",
            at="/quote/discount/rate",
        )
    if quoted.discount_amount:
        told = f"{write_money(quoted.discount_amount, quoted.currency)} less, as agreed."
        yield _single("discount", "Discount", -quoted.discount_amount, told, "/quote/discount/amount")


def too_much_off(lines: Sequence[Line], quoted: Quoted) -> list[Problem]:
    """A discount of more than there is to pay."""
    if added(lines) >= 0:
        return []
    off = write_money(quoted.discount_amount, quoted.currency)
    whole = write_money(added(lines) + quoted.discount_amount, quoted.currency)
    text = f"{off} are to be taken off, but there are only {whole} to pay: lower the discount."
    return [Problem("/quote/discount/amount", "rules-contradict", text)]


def _single(code: str, text: str, amount: int, working: str, at: str) -> Line:
    return Line(
        code=code,
        group="making",
        text=text,
        quantity="1",
        unit="",
        price=amount,
        per="each",
        amount=amount,
        costs=0,
        working=working,
        at=at,
    )
