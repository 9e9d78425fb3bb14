"""Knife-edge covers of other straight-sided outlines: two faces sewn together, each the mirror image of the other."""

from __future__ import annotations

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.backs import opened
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.outlined import cannot_be_made, faces_of, outlined, stitched_sides
from plumpline.cushions.stitching import Sewn
from plumpline.cushions.tracing import Traced, side_called, trace, trace_lines
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

_CLOSED_AT = {"hand-sewn": ("bottom",), "zip": ("bottom",), "ties": ("bottom",), "open": ("bottom",)}


def knife_edge_outlined(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made; it closes at the front unless it is said."""
    traced = trace(cushion, job)
    if not isinstance(traced, Traced):
        return traced
    sides, side = stitched_sides(traced), cushion.cover.closure.side or 0
    where = {"bottom": f"in the seam at side {side_called(side, len(sides))}"}
    closing = closing_of(cushion, job, _CLOSED_AT, {"bottom": sides[side]}, where=where)
    if not isinstance(closing, Closing):
        return closing
    allowances = [closing.allowance if number == side else cushion.cover.seam for number in range(len(sides))]
    problems = cannot_be_made(traced, allowances)
    if problems:
        return problems
    faces = [opened(face, closing) for face in faces_of(traced, allowances, side)]
    lines = [*trace_lines(traced, job), _seam_line(traced.cushion, closing, job)]
    cuts = cut_panels(faces, traced.cushion, closing, job)
    made = assembled(traced.cushion, job, traced.sized, closing, cuts, lines, [Sewn(sum(sides), layers=2)])
    return outlined(made, traced, side)


def _seam_line(cushion: Cushion, closing: Closing, job: Job) -> str:
    text = f"Seams {write_length(cushion.cover.seam, job.units)} at every edge"
    if closing.allowance != cushion.cover.seam:
        text += f", {write_length(closing.allowance, job.units)} at the closing edge"
    beyond = cushion.cover.edge.beyond
    text += f", and {write_length(beyond, job.units)} for the flange" if beyond else ""
    return f"{text}: the faces are cut by their outline."
