"""A tipping point in a sentence, as it is said at the counter."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.figures import length_to_ask
from plumpline.job import HABITS
from plumpline.layplan import ClothPlan
from plumpline.lengths import TAPE_GRID, round_up, write_length
from plumpline.tipping.intervals import Interval


@dataclass(frozen=True)
class Tip:
    """The interval `beside` the `own` one of a planned cloth, and the units to say it in."""

    beside: Interval
    own: Interval
    planned: ClothPlan
    units: str

    @property
    def is_above(self) -> bool:
        """Whether it begins where the own one ends."""
        return self.own.high is not None and self.beside.low == self.own.high

    @property
    def edge(self) -> int:
        """The value between the two, in nm."""
        return (self.own.high if self.is_above else self.own.low) or 0

    @property
    def here(self) -> str:
        """What is asked for with the job's own value."""
        return self._asked(self.own.buy)

    @property
    def there(self) -> str:
        """What is asked for beside it."""
        return self._asked(self.beside.buy)

    @property
    def apart(self) -> str:
        """The length between the two."""
        return self._asked(abs((self.beside.buy or 0) - (self.own.buy or 0)))

    @property
    def fits(self) -> bool:
        """Whether there is a plan beside at all."""
        return self.beside.buy is not None

    def _asked(self, buy: int | None) -> str:
        return length_to_ask(buy or 0, self.planned.cloth.sold_by, self.units)


def said(field: str, tip: Tip) -> dict[str, str | None]:
    """The value at which it tips and a sentence on it, {"at", "text"}; neither for the own interval itself."""
    if tip.beside.own:
        return {"at": None, "text": None}
    at, text = _WORDS[field](tip)
    return {"at": at, "text": text}


def _by_width(tip: Tip) -> tuple[str, str]:
    # A width has to be reached, so it is rounded up to the marks of a tape.
    wide = write_length(round_up(tip.edge, TAPE_GRID[tip.units]), tip.units)
    if tip.is_above:
        return wide, f"{wide} or wider: {tip.there}, {tip.apart} less."
    close = (tip.planned.cloth.width or 0) - tip.edge < HABITS[tip.units].selvedge // 2
    if close and tip.fits:
        return wide, f"This only fits if the cloth is truly {wide} wide; narrower, it takes {tip.there}."
    if close:
        return wide, f"This only fits if the cloth is truly {wide} wide."
    return wide, f"{wide} or wider: {tip.here}; narrower{f': {tip.there}' if tip.fits else ', it does not fit'}."


def _by_size(tip: Tip) -> tuple[str, str]:
    if not tip.is_above:
        smaller = write_length(1 - tip.edge, tip.units)
        return f"−{smaller}", f"Covers {smaller} smaller save {tip.apart}."
    larger = write_length(tip.edge - 1, tip.units)
    then = f"take {tip.apart} more" if tip.fits else "do not fit"
    if tip.edge == 1:
        return larger, f"Covers any larger {then}."
    return f"+{larger}", f"Covers more than {larger} larger {then}."


def _by_repeat(tip: Tip) -> tuple[str, str]:
    edge = write_length(tip.edge, tip.units)
    return edge, f"A repeat {'longer' if tip.is_above else 'shorter'} than {edge}: {tip.there}."


_WORDS = {"width": _by_width, "size": _by_size, "repeat.along": _by_repeat}
