"""Knife-edge covers of square and oblong pads: two equal panels sewn face to face."""

from __future__ import annotations

from plumpline.cushions.backs import back_line, in_two
from plumpline.cushions.closing import Closing, closing_line, closing_of
from plumpline.cushions.closing_marks import with_closing
from plumpline.cushions.corners import impossible_corners, with_corners
from plumpline.cushions.fit import pad_for
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Edges, Part, cut_out, off_the_face
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn, sewn_to_close
from plumpline.cushions.words import why_cut_larger
from plumpline.figures import size
from plumpline.job import Cover, Cushion, Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.problems import Problem

_MEASURES = ("width", "length")
_FACES = ("front", "back")
_CLOSED_AT = {
    "hand-sewn": ("bottom",),
    "zip": ("bottom", "back"),
    "envelope": ("back",),
    "buttons": ("back",),
    "ties": ("bottom",),
    "open": ("bottom",),
}


def knife_edge(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made."""
    sized = size_up(cushion, job, _MEASURES)
    if not isinstance(sized, Sized):
        return sized
    width, length = sized.finished.lengths
    problems = [problem for part in _FACES for problem in off_the_face(cushion, part, width, length)]
    edges = {"bottom": width, "back": width}
    closing = closing_of(cushion, job, _CLOSED_AT, edges, length)
    problems += [] if isinstance(closing, Closing) else closing
    if problems or not isinstance(closing, Closing):
        return problems
    front, back = (_panel(part, cushion.cover, closing, sized.finished) for part in _FACES)
    backs = in_two(back, closing) if closing.at == "back" else [back]
    parts = [front, *backs]
    plain = [with_closing(cut_out(part, cushion, job, cushion.quantity), closing, job) for part in parts]
    panels = tuple(with_corners(piece, cushion, job) for piece in plain)
    return impossible_corners(cushion, panels) or Made(
        cushion=cushion,
        fit=sized.fit,
        pad=pad_for(sized.finished, sized.fit, job),
        finished=sized.finished,
        closing=closing,
        between_side_seams=width,
        pieces=panels,
        cutting=(
            _seam_line(cushion.cover, closing, front, job),
            *([back_line(back, backs, closing, job)] if closing.at == "back" else []),
            *closing_line(closing, job),
            *why_cut_larger(parts, panels, job),
        ),
        sewn=(Sewn(2 * (width + length), layers=2), *sewn_to_close(closing)),
        zips=closing.zips,
    )


def _panel(name: str, cover: Cover, closing: Closing, finished: Measures) -> Part:
    bottom = closing.allowance if closing.at == "bottom" else cover.seam
    edges = Edges(cover.side_seam, cover.side_seam, bottom, cover.seam)
    return Part(name, name, _MEASURES, finished["width"], finished["length"], edges)


def _seam_line(cover: Cover, closing: Closing, panel: Part, job: Job) -> str:
    units = job.units
    seam = f"Seams {write_length(cover.seam, units)} at every edge"
    if cover.side_seam != cover.seam:
        seam += f", {write_length(cover.side_seam, units)} at the sides"
    if panel.edges.bottom != cover.seam:
        seam += f", {write_length(closing.allowance, units)} at the closing edge"
    return f"{seam}: panels {size(*panel.plain, units)}."
