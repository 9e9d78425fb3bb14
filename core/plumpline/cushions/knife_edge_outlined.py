"""Knife-edge covers of other straight-sided outlines: two faces sewn together, each the mirror image of the other."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.backs import back_lines, backs_of, opened
from plumpline.cushions.closing import KNIFE_EDGE_AT, Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.outline_corners import corner_lines_of, tapered, too_tapered
from plumpline.cushions.outlined import (
    back_to_divide,
    cannot_be_made,
    faces_of,
    folds_across,
    nowhere_across,
    outlined,
    stitched_sides,
)
from plumpline.cushions.stitching import Sewn
from plumpline.cushions.tracing import Traced, side_called, trace, trace_lines
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem


def knife_edge_outlined(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made; it closes at the front unless it is said."""
    traced = trace(cushion, job)
    if not isinstance(traced, Traced):
        return traced
    sides, side = stitched_sides(traced), cushion.cover.closure.side or 0
    finished, folds = traced.sized.finished, folds_across(traced, job)
    where = {"bottom": f"in the seam at side {side_called(side, len(sides))}", "back": "across the back"}
    edges = {"bottom": sides[side], "back": folds.across if folds else finished["width"]}
    closing = closing_of(cushion, job, KNIFE_EDGE_AT, edges, finished["length"], where)
    if not isinstance(closing, Closing):
        return closing
    closing = replace(closing, folds=folds)
    closes = [number == side and closing.at == "bottom" for number in range(len(sides))]
    allowances = [closing.allowance if here else cushion.cover.seam for here in closes]
    problems = cannot_be_made(traced, allowances, job) + nowhere_across(traced, closing, job)
    if problems:
        return problems
    front, back = faces_of(traced, allowances, side)
    back = back_to_divide(traced, job) if folds else back
    backs = backs_of(back, closing)
    cuts = cut_panels([opened(front, closing), *backs], traced.cushion, closing, job)
    problems = too_tapered(cuts[0].piece, traced.cushion, job)
    if problems:
        return problems
    cuts = tapered(cuts, traced.cushion, job)
    lines = [
        *trace_lines(traced, job),
        _seam_line(traced.cushion, closing, job),
        *corner_lines_of(traced, allowances, job),
        *back_lines(back, backs, closing, job),
    ]
    made = assembled(traced.cushion, job, traced.sized, closing, cuts, lines, [Sewn(sum(sides), layers=2)])
    return outlined(made, traced, side)


def _seam_line(cushion: Cushion, closing: Closing, job: Job) -> str:
    text = f"Seams {write_length(cushion.cover.seam, job.units)} at every edge"
    if closing.at == "bottom" and closing.allowance != cushion.cover.seam:
        text += f", {write_length(closing.allowance, job.units)} at the closing edge"
    beyond = cushion.cover.edge.beyond
    text += f", and {write_length(beyond, job.units)} for the flange" if beyond else ""
    return f"{text}: the faces are cut by their outline."
