"""A length in hand as it was measured: its edges, its ends, its own width, and what is to be kept clear of."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from plumpline.document import Values


@dataclass(frozen=True)
class RemnantFlaw:
    """A place no panel may touch, in nm; None for what is not measured yet. `length` "all": down the whole piece.

    At a `corner` ("start-left", … "end-right") it is cut out of it, square or on the slant; else it lies so far from
    the left edge and from the squared line at the cut end.
    """

    corner: str | None
    cut: str
    across: int | None
    along: int | None
    width: int | None
    length: int | Literal["all"] | None


@dataclass(frozen=True)
class Remnant:
    """A length in hand: nm, None for what is not said. `start` and `end` say how far the ends run out of square."""

    left: int | None
    right: int | None
    length: int | None
    width: int | None
    start: int | None
    end: int | None
    flaws: tuple[RemnantFlaw, ...]
    motif_along: int | None


def read_remnant(values: Values) -> Remnant:
    """The piece that these values of the document describe."""
    slant = values.get("slant", {})
    return Remnant(
        left=values.get("left"),
        right=values.get("right"),
        length=values.get("length"),
        width=values.get("width"),
        start=slant.get("start"),
        end=slant.get("end"),
        flaws=tuple(_flaw(entry) for entry in values.get("flaws", [])),
        motif_along=values.get("motif_along"),
    )


def _flaw(entry: Values) -> RemnantFlaw:
    return RemnantFlaw(
        corner=entry.get("corner"),
        cut=entry.get("cut", "square"),
        across=entry.get("across"),
        along=entry.get("along"),
        width=entry.get("width"),
        length=entry.get("length"),
    )
