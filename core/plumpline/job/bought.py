"""A length as it was cut in the shop: its edges, what was paid for it, and the batch and roll it came from."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.document import Reading, Values
from plumpline.money import MoneyError, to_minor
from plumpline.problems import Problem


@dataclass(frozen=True)
class Bought:
    """One length that was cut: nm, `paid` in minor units of the currency of the price; None for what is not said.

    `length` is what the shop said it cut, `left` and `right` are its edges as measured, `on` is an ISO date.
    """

    on: str | None
    length: int | None
    left: int | None
    right: int | None
    width: int | None
    paid: int | None
    batch: str
    roll: str
    cut_by: str

    @property
    def shorter(self) -> int | None:
        """The length that counts: its shorter edge, where one is measured, else what the shop said."""
        return min(self._edges, default=self.length)

    @property
    def longer(self) -> int | None:
        """How long it is at its longest: by its edges, where one is measured, else as the shop said."""
        return max(self._edges, default=self.length)

    @property
    def _edges(self) -> list[int]:
        return [nm for nm in (self.left, self.right) if nm is not None]


def read_bought(entries: list[Values], at: str, currency: str | None, reading: Reading) -> tuple[Bought, ...]:
    """The lengths that these values describe, amounts in the `currency` of the cloth's price, if it has one."""
    return tuple(
        Bought(
            on=entry.get("on"),
            length=entry.get("length"),
            left=entry.get("left"),
            right=entry.get("right"),
            width=entry.get("width"),
            paid=_paid(entry, f"{at}/{number}/paid", currency, reading),
            batch=entry.get("batch", "").strip(),
            roll=entry.get("roll", "").strip(),
            cut_by=entry.get("cut_by", "").strip(),
        )
        for number, entry in enumerate(entries)
    )


def _paid(entry: Values, at: str, currency: str | None, reading: Reading) -> int | None:
    if "paid" not in entry:
        return None
    if currency is None:
        text = "Enter the price of the cloth with its currency, and what was paid is held against the plan."
        reading.questions.append(Problem(at, "paid-without-price", text))
        return None
    try:
        return to_minor(entry["paid"], currency)
    except MoneyError as error:
        reading.problem(at, "not-an-amount", str(error))
        return None
