"""Bolsters with flat ends: a body rolled round the pad, and a disc at each of its ends."""

from __future__ import annotations

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Edges, Part, off_the_face, round_part
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn
from plumpline.figures import bare, size
from plumpline.geometry import circumference
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

_MEASURES = ("diameter", "length")
_CLOSED_AT = {"hand-sewn": ("bottom",), "zip": ("bottom",)}


def bolster(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made.

    The body is cut length + 2 seams by π × diameter + 2 seams, the ends diameter + 2 seams: the seams come after the
    multiplication. It is closed in the seam along the body.
    """
    sized = size_up(cushion, job, _MEASURES)
    if not isinstance(sized, Sized):
        return sized
    across, length = sized.finished.lengths
    around, units, seam = circumference(across), job.units, cushion.cover.seam
    problems = off_the_face(cushion, "front", length, around) + off_the_face(cushion, "sides", across, across)
    closing = closing_of(cushion, job, _CLOSED_AT, {"bottom": length}, where={"bottom": "in the seam along the body"})
    problems += [] if isinstance(closing, Closing) else closing
    if problems or not isinstance(closing, Closing):
        return problems
    edges = Edges(seam, seam, closing.allowance, closing.allowance)
    body = Part("body", "front", ("length", "diameter"), length, around, edges, opens=("bottom", "top"))
    ends = [round_part(f"end-{number}", "sides", across, seam, "freely") for number in (1, 2)]
    discs = write_length(ends[0].plain[0], units)
    allowed = f"Seams {write_length(seam, units)} at every edge"
    if closing.allowance != seam:
        allowed += f", {write_length(closing.allowance, units)} along the body"
    lines = [
        f"Once round the pad: π × {bare(across, units)} = {write_length(around, units)}.",
        f"{allowed}: body {size(*body.plain, units)}, ends {discs} across.",
    ]
    sewn = [Sewn(length + 2 * around, layers=2)]
    return assembled(cushion, job, sized, closing, cut_panels([body, *ends], cushion, closing, job), lines, sewn)
