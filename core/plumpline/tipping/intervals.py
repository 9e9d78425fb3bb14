"""An interval of a value in which the length to buy stays the same."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Interval:
    """From `low` up to `high`, exclusive, `buy` nm are bought; None for an end: none was found.

    Without `buy` there is no plan in it. `own` is the one that the job's own value lies in.
    """

    low: int | None
    high: int | None
    buy: int | None
    proven: bool
    own: bool = False
