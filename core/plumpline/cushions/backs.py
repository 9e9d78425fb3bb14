"""A back in two pieces that close across its middle: overlapping, or with a zip between them."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from plumpline.cushions.closing import Closing
from plumpline.cushions.panels import Part
from plumpline.figures import bare
from plumpline.job import Job
from plumpline.lengths import round_half_even, write_length


def backs_of(back: Part, closing: Closing) -> list[Part]:
    """The back, or the upper and the lower piece of one that is closed across its middle.

    Overlapping, each is (cut length + overlap + 2 hems) ÷ 2 along the split (home magazine, 2019: an 18 in front
    makes two pieces of 12 in, which overlap by 4 in after hems of 1 in). With a zip each has half of the finished
    length. A motif stands at the centre of the closed back on both.
    """
    if closing.at != "back":
        return [opened(back, closing)]
    if closing.kind == "zip":
        upper = back.length // 2
        lower = back.length - upper
    else:
        each = round_half_even(Fraction(back.plain[1] + closing.overlap, 2)) + closing.allowance
        upper = each - closing.allowance - back.edges.top
        lower = each - closing.allowance - back.edges.bottom
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


def opened(panel: Part, closing: Closing) -> Part:
    """The panel as one that the closure lies at, if that is in the bottom seam."""
    return replace(panel, opens=("bottom",)) if closing.at == "bottom" else panel


def back_lines(back: Part, pieces: list[Part], closing: Closing, job: Job) -> list[str]:
    """How the two pieces follow from the whole back, if it comes in two."""
    if closing.at != "back":
        return []
    units = job.units
    each, hem = (write_length(nm, units) for nm in (pieces[0].plain[1], closing.allowance))
    if closing.kind == "zip":
        half = bare(pieces[0].length, units)
        return [f"The back is cut in two, half of it each and {hem} at the zip: {half} in height become {each}."]
    whole, over = (bare(nm, units) for nm in (back.plain[1], closing.overlap))
    return [
        f"The back is cut in two: ({whole} + {over} overlap + 2 × {hem} hem) ÷ 2 = {each} each. "
        "The upper piece lies outside and opens downwards."
    ]
