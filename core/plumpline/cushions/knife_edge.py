"""Knife-edge covers of square and oblong pads: two equal panels sewn face to face."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.backs import back_lines, backs_of, opened
from plumpline.cushions.closing import KNIFE_EDGE_AT, Closing, closing_of
from plumpline.cushions.corners import corner_lines, corners_too_large, edge_around, tapers_too_large, with_corners
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Cut, Edges, Part, off_the_face
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn
from plumpline.figures import size
from plumpline.job import Cover, Cushion, Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.problems import Problem

_MEASURES = ("width", "length")
_FACES = ("front", "back")


def knife_edge(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made."""
    sized = size_up(cushion, job, _MEASURES)
    if not isinstance(sized, Sized):
        return sized
    width, length = sized.finished.lengths
    problems = [problem for part in _FACES for problem in off_the_face(cushion, part, width, length)]
    problems += corners_too_large(cushion, job, sized.finished)
    closing = closing_of(cushion, job, KNIFE_EDGE_AT, {"bottom": width, "back": width}, length)
    problems += [] if isinstance(closing, Closing) else closing
    if problems or not isinstance(closing, Closing):
        return problems
    front, back = (_panel(part, cushion.cover, closing, sized.finished) for part in _FACES)
    backs = backs_of(back, closing)
    square = cut_panels([opened(front, closing), *backs], cushion, closing, job)
    # A back in two pieces has the corners of the whole face, which is cut like the front.
    faces = [(cut.piece.width, (square[0] if len(backs) > 1 else cut).piece.length) for cut in square]
    cuts = [
        Cut(cut.part, with_corners(cut.part, cut.piece, face, cushion, job))
        for cut, face in zip(square, faces, strict=True)
    ]
    lines = [
        _seam_line(cushion.cover, closing, front, job),
        *corner_lines(cushion, job),
        *back_lines(back, backs, closing, job),
    ]
    sewn = [Sewn(sum(edge_around(cushion, sized.finished)), layers=2)]
    tapers = tapers_too_large(cushion, list(zip([cut.piece for cut in cuts], faces, strict=True)))
    made = tapers or assembled(cushion, job, sized, closing, cuts, lines, sewn)
    if not isinstance(made, Made) or len(made.pieces) > len(cuts):
        return made
    return replace(made, between_side_seams=front.width)


def _panel(name: str, cover: Cover, closing: Closing, finished: Measures) -> Part:
    bottom = closing.allowance if closing.at == "bottom" else cover.seam
    edges = Edges(cover.side_seam, cover.side_seam, bottom, cover.seam)
    beyond = 2 * cover.edge.beyond
    return Part(name, name, _MEASURES, finished["width"] + beyond, finished["length"] + beyond, edges)


def _seam_line(cover: Cover, closing: Closing, panel: Part, job: Job) -> str:
    units = job.units
    seam = f"Seams {write_length(cover.seam, units)} at every edge"
    if cover.side_seam != cover.seam:
        seam += f", {write_length(cover.side_seam, units)} at the sides"
    if panel.edges.bottom != cover.seam:
        seam += f", {write_length(closing.allowance, units)} at the closing edge"
    if cover.edge.beyond:
        seam += f", and {write_length(cover.edge.beyond, units)} for the flange"
    return f"{seam}: panels {size(*panel.plain, units)}."
