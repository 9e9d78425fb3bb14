"""Knife-edge covers of round pads: two equal discs sewn face to face, with no corners to taper."""

from __future__ import annotations

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.backs import back_lines, backs_of, opened
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.panels import off_the_face, one_seam, round_part
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn
from plumpline.geometry import circumference
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

_FACES = ("front", "back")
_CLOSED_AT = {"hand-sewn": ("bottom",), "zip": ("bottom", "back"), "envelope": ("back",), "buttons": ("back",)}


def knife_edge_round(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made.

    Each disc is cut the finished diameter + 2 seams across; a zip in the round seam lies within that seam.
    """
    sized = size_up(cushion, job, ("diameter",))
    if not isinstance(sized, Sized):
        return sized
    (across,) = sized.finished.lengths
    around = circumference(across)
    problems = [problem for part in _FACES for problem in off_the_face(cushion, part, across, across)]
    closing = closing_of(cushion, job, _CLOSED_AT, {"bottom": around, "back": across}, across)
    problems += one_seam(cushion) + ([] if isinstance(closing, Closing) else closing)
    if problems or not isinstance(closing, Closing):
        return problems
    seam = cushion.cover.seam
    closing = closing.within(seam)
    beyond = cushion.cover.edge.beyond
    front, back = (round_part(part, part, across + 2 * beyond, seam) for part in _FACES)
    backs = backs_of(back, closing)
    discs = write_length(front.plain[0], job.units)
    flange = f", and {write_length(beyond, job.units)} for the flange" if beyond else ""
    lines = [f"Seams {write_length(seam, job.units)} all round{flange}: discs {discs} across."]
    lines += back_lines(back, backs, closing, job)
    cuts = cut_panels([opened(front, closing), *backs], cushion, closing, job)
    return assembled(cushion, job, sized, closing, cuts, lines, [Sewn(around, layers=2)])
