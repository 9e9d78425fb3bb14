"""The way to the client and back, as often as it is driven."""

from __future__ import annotations

from collections.abc import Iterator

from plumpline.lengths import decimal_text
from plumpline.money import share, write_money
from plumpline.price.line import Line, times, unpriced
from plumpline.price.quoted import Quoted


def travel_lines(quoted: Quoted) -> Iterator[Line]:
    """One line, where the job has a way at all."""
    if not quoted.distance:
        return
    way, rate = quoted.distance * quoted.trips, quoted.road
    quantity, at = decimal_text(way), "/quote/rates/travel/amount"
    told = f"{decimal_text(quoted.distance)} there and back" + (f", {quoted.trips} times" if quoted.trips > 1 else "")
    if rate is None:
        why = f"{told}. What the way costs is not known yet."
        yield unpriced("travel", "making", "Travel", (quantity, ""), why, at)
        return
    amount = share(rate.minor, way)
    by_price = times(f"{quantity} {rate.per}", rate.minor, amount, quoted.currency)
    yield Line(
        code="travel",
        group="making",
        text="Travel",
        quantity=quantity,
        unit=rate.per,
        price=rate.minor,
        per=rate.per,
        amount=amount,
        costs=amount,
        working=f"{told}, at {write_money(rate.minor, quoted.currency)} a {rate.per}; {by_price}.",
        at=at,
    )
