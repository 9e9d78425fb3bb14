"""What knife-edge and boxed covers of straight-sided outlines share: their faces, where they close, what is wrong."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from plumpline.cushions.fit import Pad
from plumpline.cushions.hands import in_both_hands, too_many_mirrored
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Part, off_the_face, outlined_part
from plumpline.cushions.tracing import Traced, box_of, keeps_its_sides
from plumpline.geometry import distance, mirrored, outset, sides_of
from plumpline.measures import Measures
from plumpline.problems import Problem

_FACES = ("front", "back")


def stitched_sides(traced: Traced) -> tuple[int, ...]:
    """The sides of the stitching line, in nm, each rounded as it is sewn."""
    return tuple(distance(one, other) for one, other in sides_of(traced.stitched))


def faces_of(traced: Traced, allowances: Sequence[int], closing_side: int) -> tuple[Part, Part]:
    """Front and back, each seen from its face: so the back is the mirror image of the front."""
    beyond = traced.cushion.cover.edge.beyond
    outline, around = outset(traced.stitched, [beyond] * len(traced.stitched)), tuple(allowances)
    behind = mirrored(outline, traced.sized.finished["width"])
    last = len(outline) - 1
    return (
        outlined_part("front", "front", outline, around, closing_side),
        outlined_part("back", "back", behind, around[::-1], last - closing_side),
    )


def cannot_be_made(traced: Traced, allowances: Sequence[int]) -> list[Problem]:
    """What keeps a straight-sided outline from being cut with these allowances, or in this number."""
    cushion, finished = traced.cushion, traced.sized.finished
    size = finished["width"], finished["length"]
    problems = [problem for face in _FACES for problem in off_the_face(cushion, face, *size)]
    if cushion.cover.corners.kind != "square":
        text = "Corners of this outline are sewn as they are: leave them square."
        problems.append(Problem(f"{cushion.at}/cover/corners/kind", "unknown-value", text))
    beyond = cushion.cover.edge.beyond
    if not keeps_its_sides(traced.stitched, outset(traced.stitched, [beyond + one for one in allowances])):
        text = "Where this outline turns inwards, what is cut beyond it runs into itself: make the seams smaller."
        problems.append(Problem(f"{cushion.at}/cover/seam", "rules-contradict", text))
    return [*problems, *too_many_mirrored(cushion)]


def outlined(made: Made | list[Problem], traced: Traced, closing_side: int) -> Made | list[Problem]:
    """The cover with its outlines and its closing side, in both hands as asked for; nobody stocks a pad for it.

    What keeps it from being made stays as it is.
    """
    if not isinstance(made, Made):
        return made
    size = Measures((*box_of(traced.pad), *made.pad.size.only(("thickness",))))
    pad = Pad(size, stocked=None, outline=traced.pad)
    closing = replace(made.closing, side=closing_side)
    return in_both_hands(replace(made, pad=pad, outline=traced.stitched, closing=closing))
