"""What knife-edge and boxed covers of straight-sided outlines share: their faces, where they close, what is wrong."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from plumpline.cushions.backs import divided_at
from plumpline.cushions.backs_outlined import most_room
from plumpline.cushions.closing import Closing, Folds, closes_across, lap_of
from plumpline.cushions.fit import Pad
from plumpline.cushions.hands import in_both_hands, too_many_mirrored
from plumpline.cushions.made import Made
from plumpline.cushions.outline_corners import line_of, too_round, with_tapers
from plumpline.cushions.panels import SAG, Part, off_the_face, one_seam, outlined_part
from plumpline.cushions.tracing import Traced, box_of, from_its_corner, keeps_its_sides
from plumpline.geometry import outset
from plumpline.job import Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.problems import Problem

_FACES = ("front", "back")


def stitched_sides(traced: Traced) -> tuple[int, ...]:
    """The sides of the stitching line, in nm, from the middle of one corner to the next, each rounded as it is sewn."""
    return line_of(traced.stitched, traced.cushion).sides


def faces_of(traced: Traced, allowances: Sequence[int], closing_side: int) -> tuple[Part, Part]:
    """Front and back, each seen from its face: so the back is the mirror image of the front."""
    line = line_of(traced.stitched, traced.cushion, traced.cushion.cover.edge.beyond)
    behind, around = line.mirrored(traced.sized.finished["width"]), tuple(allowances)
    last = len(around) - 1
    return (
        outlined_part("front", "front", line, around, closing_side),
        outlined_part("back", "back", behind, around[::-1], last - closing_side),
    )


def folds_across(traced: Traced, job: Job) -> Folds | None:
    """Where the back is cut in two, if it is to close across its middle and there is a line that it can be cut on."""
    cushion = traced.cushion
    if not closes_across(cushion):
        return None
    lap = lap_of(cushion, job, traced.sized.finished["length"])
    return divided_at(back_to_divide(traced, job), lap, cushion.cover.edge.beyond)


def back_to_divide(traced: Traced, job: Job) -> Part:
    """The back of a cover that closes across it, still whole: one allowance all round, its corners as they are cut."""
    front, back = faces_of(traced, [traced.cushion.cover.seam] * len(traced.stitched), 0)
    return with_tapers(back, front, traced.cushion, job)


def nowhere_across(traced: Traced, closing: Closing, job: Job) -> list[Problem]:
    """The problem of a back that cannot be cut in two as it is asked to close."""
    if closing.at != "back" or closing.folds:
        return []
    cushion = traced.cushion
    room = most_room(back_to_divide(traced, job), cushion.cover.edge.beyond)
    told, over, hem, both = (
        write_length(nm, job.units) for nm in (room, closing.overlap, closing.allowance, 2 * closing.allowance)
    )
    text = f"Level lines cross this back at just two of its sides over {told} at most, "
    if closing.kind == "zip":
        text += f"and a zip takes {both} with the allowance at either side: take less, or close it in a seam."
        return [Problem(f"{cushion.at}/cover/closure/at", "rules-contradict", text)]
    text += f"which is no room to overlap by {over} with hems of {hem}: overlap it less, or close it in a seam."
    return [Problem(f"{cushion.at}/cover/closure/overlap", "rules-contradict", text)]


def cannot_be_made(traced: Traced, allowances: Sequence[int], job: Job) -> list[Problem]:
    """What keeps a straight-sided outline from being cut with these allowances, or in this number."""
    cushion, finished = traced.cushion, traced.sized.finished
    size = finished["width"], finished["length"]
    problems = [problem for face in _FACES for problem in off_the_face(cushion, face, *size)]
    problems += one_seam(cushion)
    beyond = cushion.cover.edge.beyond
    if not keeps_its_sides(traced.stitched, outset(traced.stitched, [beyond + one for one in allowances])):
        text = "Where this outline turns inwards, what is cut beyond it runs into itself: make the seams smaller."
        problems.append(Problem(f"{cushion.at}/cover/seam", "rules-contradict", text))
    return [*problems, *too_round(traced, allowances, job), *too_many_mirrored(cushion)]


def outlined(made: Made | list[Problem], traced: Traced, closing_side: int) -> Made | list[Problem]:
    """The cover with its outlines and its closing side, in both hands as asked for; nobody stocks a pad for it.

    What keeps it from being made stays as it is.
    """
    if not isinstance(made, Made):
        return made
    thick, line = made.pad.size.only(("thickness",)), line_of(traced.stitched, traced.cushion)
    pad = Pad(Measures((*box_of(traced.pad), *thick)), stocked=None, outline=traced.pad)
    # Rounded at a sharp angle, a corner does not reach as far as it did.
    finished = Measures((*box_of(from_its_corner(line.points(SAG))), *made.finished.only(("thickness",))))
    closing = replace(made.closing, side=closing_side)
    return in_both_hands(replace(made, pad=pad, finished=finished, outline=line, closing=closing))
