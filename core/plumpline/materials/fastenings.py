# Buttons and ties along an edge that is closed with them: how many, and the tape that ties are made of.
"""They stand at equal distances, with an equal one to either end, no further apart than is usual. Lengths in nm."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.figures import counted
from plumpline.lengths import NM_PER_INCH, UNITS, write_length

#: How far apart buttons and pairs of ties may stand, and how long one tie is (common practice).
BUTTONS_APART = {"in": 4 * NM_PER_INCH, "cm": 10 * UNITS["cm"]}
TIES_APART = {"in": 6 * NM_PER_INCH, "cm": 15 * UNITS["cm"]}
TIE = {"in": 10 * NM_PER_INCH, "cm": 25 * UNITS["cm"]}


@dataclass(frozen=True)
class Spaced:
    """So many along an edge, one at least."""

    edge: int
    most_apart: int

    @property
    def count(self) -> int:
        """Without the two ends, where none stands."""
        return max(1, -(-self.edge // self.most_apart) - 1)

    def working(self, units: str) -> str:
        """How many stand on one edge and how far apart."""
        edge, apart = write_length(self.edge, units), write_length(self.edge // (self.count + 1), units)
        return f"{self.count} on an edge of {edge}, {apart} from one to the next and to the ends"


def buttons(edge: int, units: str) -> Spaced:
    """The buttons along an edge."""
    return Spaced(edge, BUTTONS_APART["in" if units == "in" else "cm"])


@dataclass(frozen=True)
class Ties:
    """Pairs of ties along the edges of some equal covers."""

    pairs: Spaced
    tie: int
    covers: int

    @property
    def count(self) -> int:
        """All ties, two to a pair."""
        return 2 * self.pairs.count * self.covers

    @property
    def length(self) -> int:
        """The tape for all of them."""
        return self.count * self.tie

    def working(self, units: str) -> str:
        """From the edge to the tape."""
        one, all_ = write_length(self.tie, units), write_length(self.length, units)
        pairs = counted(self.pairs.count, "pair", "pairs")
        return f"{pairs}: {self.pairs.working(units)}; {self.count} ties of {one}: {all_}."


def ties(edge: int, covers: int, units: str) -> Ties:
    """The ties along an edge of each cover."""
    system = "in" if units == "in" else "cm"
    return Ties(Spaced(edge, TIES_APART[system]), TIE[system], covers)
