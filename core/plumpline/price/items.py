"""Anything else on the bill: what is bought for the job besides, or work that no other line has."""

from __future__ import annotations

from collections.abc import Iterator

from plumpline.price.line import Line, Marked, times
from plumpline.price.quoted import Item, Quoted


def item_lines(quoted: Quoted) -> Iterator[Line]:
    """A line for each thing that the maker put on the bill, those bought with the mark-up of materials."""
    for item in quoted.items:
        yield _line(item, quoted)


def _line(item: Item, quoted: Quoted) -> Line:
    bought = item.kind == "bought"
    marked = Marked(item.minor, quoted.markup.materials) if bought else Marked(item.minor)
    amount, count = marked.price * item.count, str(item.count)
    return Line(
        code=f"item:{item.index + 1}",
        group="materials" if bought else "making",
        text=item.text or f"Item {item.index + 1}",
        quantity=count,
        unit="",
        price=marked.price,
        per="each",
        amount=amount,
        costs=item.minor * item.count,
        own=not bought,
        working=f"{marked.working('each', quoted.currency)}; {times(count, marked.price, amount, quoted.currency)}.",
        at=f"/quote/items/{item.index}/amount",
    )
