# Zips: bought as chain by the length with sliders, or ready-made in stock lengths.
"""Both ways of buying are common; chain is cut to length, a ready-made zip that is longer is shortened. All in nm."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.figures import counted, listed
from plumpline.lengths import NM_PER_INCH, UNITS, write_length

#: Ready-made zips as shops have them (common practice).
STOCKED = {
    "in": tuple(inches * NM_PER_INCH for inches in (7, 9, 12, 14, 16, 18, 20, 22, 24, 30, 36)),
    "cm": tuple(cm * UNITS["cm"] for cm in (18, 20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90)),
}

#: What chain needs beyond its opening, for both ends together, so that they can be sewn shut (common practice).
ENDS = {"in": NM_PER_INCH, "cm": 25 * UNITS["mm"]}


@dataclass(frozen=True)
class Chain:
    """Zip chain for zips that open by these lengths, with a slider for each."""

    opens: tuple[int, ...]
    ends: int

    @property
    def each(self) -> tuple[int, ...]:
        """The chain of each zip."""
        return tuple(length + self.ends for length in self.opens)

    @property
    def length(self) -> int:
        """All chain together."""
        return sum(self.each)

    @property
    def sliders(self) -> int:
        """One for each zip."""
        return len(self.opens)

    def working(self, units: str) -> str:
        """How the length adds up."""
        cuts = [f"{number} × {write_length(length, units)}" for length, number in Counter(self.each).items()]
        ends = write_length(self.ends, units)
        sliders = counted(self.sliders, "slider", "sliders")
        return f"Chain {listed(cuts)}, {ends} of each for its ends: {write_length(self.length, units)}; {sliders}."


def chain(opens: Sequence[int], units: str) -> Chain:
    """The chain for zips that open by these lengths."""
    return Chain(tuple(opens), ENDS["in" if units == "in" else "cm"])


@dataclass(frozen=True)
class ReadyMade:
    """Ready-made zips to buy: the stock length of each; those longer than any have to be made of chain."""

    opens: tuple[int, ...]
    stocked: tuple[int | None, ...]

    @property
    def to_buy(self) -> Counter[int]:
        """How many of each stock length."""
        return Counter(length for length in self.stocked if length is not None)

    @property
    def of_chain(self) -> tuple[int, ...]:
        """Those that no stock length reaches."""
        return tuple(opens for opens, length in zip(self.opens, self.stocked, strict=True) if length is None)

    def working(self, units: str) -> str:
        """What to buy and what to shorten it to."""
        pairs = Counter(zip(self.opens, self.stocked, strict=True))
        return " ".join(self._line(opens, stocked, number, units) for (opens, stocked), number in pairs.items())

    def _line(self, opens: int, stocked: int | None, number: int, units: str) -> str:
        zips, opening = counted(number, "zip", "zips"), write_length(opens, units)
        if stocked is None:
            return f"{zips} to open {opening}: no stock length is as long, use chain."
        shorten = "" if stocked == opens else f", shortened to {opening}"
        return f"{zips} of {write_length(stocked, units)}{shorten}."


def ready_made(opens: Sequence[int], stock: Sequence[int]) -> ReadyMade:
    """The next stock length for each zip."""
    stocked = (min((length for length in stock if length >= wanted), default=None) for wanted in opens)
    return ReadyMade(tuple(opens), tuple(stocked))
