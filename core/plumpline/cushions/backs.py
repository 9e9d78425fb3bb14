"""A back in two pieces that close across its middle: overlapping, or with a zip between them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from plumpline.cushions.backs_outlined import Turned, folds_of, in_two
from plumpline.cushions.closing import Closing, Folds, Lap
from plumpline.cushions.panels import Part
from plumpline.figures import bare
from plumpline.job import Job
from plumpline.lengths import NM_PER_INCH, round_half_even, write_length

# Pieces that differ by no more are the same to every tape.
_UNSEEN = NM_PER_INCH // 32


def backs_of(back: Part, closing: Closing) -> list[Part]:
    """The back, or the upper and the lower piece of one that is closed across its middle.

    Overlapping, each is (cut length + overlap + 2 hems) ÷ 2 along the split (home magazine, 2019: an 18 in front
    makes two pieces of 12 in, which overlap by 4 in after hems of 1 in). With a zip each has half of the finished
    length. A motif stands at the centre of the closed back on both. A straight-sided back is cut at the folds
    that its closing names.
    """
    if closing.at != "back":
        return [opened(back, closing)]
    if closing.folds:
        return list(in_two(back, closing.folds, _turned(closing.lap)))
    upper, lower = _halves(back, closing.lap)
    across, up = back.middle
    whole = replace(back, shape="segment" if back.shape == "circle" else "rectangle")
    return [
        replace(
            whole,
            name="back-1",
            opens=("bottom",),
            corners=("top",),
            length=upper,
            edges=replace(back.edges, bottom=closing.allowance),
            centre=(across, up - back.length + upper),
        ),
        replace(
            whole,
            name="back-2",
            opens=("top",),
            corners=("bottom",),
            length=lower,
            edges=replace(back.edges, top=closing.allowance),
            centre=(across, up),
        ),
    ]


def _halves(back: Part, lap: Lap) -> tuple[int, int]:
    """How long the upper and the lower piece of a back are, finished."""
    if not lap.overlap:
        return back.length // 2, back.length - back.length // 2
    each = round_half_even(Fraction(back.plain[1] + lap.overlap, 2))
    return each - back.edges.top, each - back.edges.bottom


def _turned(lap: Lap) -> Turned:
    return Turned(lap.allowance, twice=lap.overlap > 0)


def divided_at(back: Part, lap: Lap, beyond: int) -> Folds | None:
    """Where a straight-sided back with a flange so wide is cut in two; None where there is no line it can be cut on."""
    return folds_of(back, _halves(back, lap), _turned(lap), beyond)


def opened(panel: Part, closing: Closing) -> Part:
    """The panel as one that the closure lies at, if that is in the bottom seam."""
    return replace(panel, opens=("bottom",)) if closing.at == "bottom" else panel


def back_lines(back: Part, pieces: list[Part], closing: Closing, job: Job) -> list[str]:
    """How the two pieces follow from the whole back, if it comes in two."""
    if closing.at != "back":
        return []
    return [_divided(back, pieces, closing, job), *_where_divided(pieces, closing, job)]


def _divided(back: Part, pieces: list[Part], closing: Closing, job: Job) -> str:
    units = job.units
    each, other, hem = (write_length(nm, units) for nm in (*(one.plain[1] for one in pieces), closing.allowance))
    whole, over = (bare(nm, units) for nm in (back.plain[1], closing.overlap))
    half = bare(pieces[0].length, units)
    outside = " The upper piece lies outside and opens downwards."
    if abs(pieces[0].plain[1] - pieces[1].plain[1]) > _UNSEEN:
        what = f"{hem} at the zip" if closing.kind == "zip" else f"half of {over} overlap and {hem} hem"
        text = f"The back is cut in two, {each} and {other} from edge to edge, each with {what}."
        return text if closing.kind == "zip" else text + outside
    if closing.kind == "zip":
        return f"The back is cut in two, half of it each and {hem} at the zip: {half} in height become {each}."
    return f"The back is cut in two: ({whole} + {over} overlap + 2 × {hem} hem) ÷ 2 = {each} each.{outside}"


def _where_divided(pieces: list[Part], closing: Closing, job: Job) -> Iterator[str]:
    """Where the back of another outline is divided, and how what is turned in there is cut."""
    folds = closing.folds
    if folds is None:
        return
    up, across = (write_length(nm, job.units) for nm in (folds.up, folds.across))
    why = ", not in its middle, so that it meets no more than two sides" if folds.moved else ""
    yield f"It is divided level from side to side, {up} above its lowest edge{why}; there it is {across} wide."
    if any(piece.drawn and piece.drawn.folded for piece in pieces):
        what = "allowance at the zip" if closing.kind == "zip" else "hems"
        yield f"Where its sides slant, the ends of the {what} are cut as folded: turned, they lie on the side seams."
