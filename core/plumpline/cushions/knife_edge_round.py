"""Knife-edge covers of round pads: two equal discs sewn face to face, with no corners to taper."""

from __future__ import annotations

from plumpline.cushions.backs import back_line, in_two
from plumpline.cushions.closing import Closing, closing_line, closing_of
from plumpline.cushions.closing_marks import with_closing
from plumpline.cushions.fit import pad_for
from plumpline.cushions.made import Made
from plumpline.cushions.panels import cut_out, off_the_face, round_part
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn, sewn_to_close
from plumpline.cushions.words import why_cut_larger
from plumpline.geometry import circumference
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

_MEASURES = ("diameter",)
_FACES = ("front", "back")
_CLOSED_AT = {
    "hand-sewn": ("bottom",),
    "zip": ("bottom", "back"),
    "envelope": ("back",),
    "buttons": ("back",),
}


def knife_edge_round(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made.

    Each disc is cut the finished diameter + 2 seams across; a zip in the round seam lies within that seam.
    """
    sized = size_up(cushion, job, _MEASURES)
    if not isinstance(sized, Sized):
        return sized
    (across,) = sized.finished.lengths
    problems = [problem for part in _FACES for problem in off_the_face(cushion, part, across, across)]
    edges = {"bottom": circumference(across), "back": across}
    closing = closing_of(cushion, job, _CLOSED_AT, edges, across)
    problems += [] if isinstance(closing, Closing) else closing
    if problems or not isinstance(closing, Closing):
        return problems
    front, back = (round_part(part, part, across, cushion.cover.seam) for part in _FACES)
    backs = in_two(back, closing) if closing.at == "back" else [back]
    parts = [front, *backs]
    pieces = tuple(with_closing(cut_out(part, cushion, job, cushion.quantity), closing, job) for part in parts)
    return Made(
        cushion=cushion,
        fit=sized.fit,
        pad=pad_for(sized.finished, sized.fit, job),
        finished=sized.finished,
        closing=closing,
        between_side_seams=None,
        pieces=pieces,
        cutting=(
            f"Seams {write_length(cushion.cover.seam, job.units)} all round: "
            f"discs {write_length(front.plain[0], job.units)} across.",
            *([back_line(back, backs, closing, job)] if closing.at == "back" else []),
            *closing_line(closing, job),
            *why_cut_larger(parts, pieces, job),
        ),
        sewn=(Sewn(edges["bottom"], layers=2), *sewn_to_close(closing)),
        zips=closing.zips,
    )
