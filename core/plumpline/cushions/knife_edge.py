"""Knife-edge covers: two equal panels sewn face to face, closed by hand at the bottom."""

from __future__ import annotations

from plumpline.cushions.corners import impossible_corners, with_corners
from plumpline.cushions.fit import fit_of, pad_for
from plumpline.cushions.made import Made, Sewn
from plumpline.cushions.opening import opening_of, opening_too_long, with_opening
from plumpline.cushions.panels import Edges, Part, cut_out, off_the_face
from plumpline.cushions.sizes import contradictions, finished_size, missing, nothing_left
from plumpline.cushions.words import why_cut_larger
from plumpline.figures import size
from plumpline.job import Cover, Cushion, Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.pieces import Piece
from plumpline.problems import Problem

_MEASURES = ("width", "length")
_FACES = ("front", "back")


def knife_edge(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made."""
    problems = missing(cushion, _MEASURES) + contradictions(cushion)
    if problems:
        return problems
    fit = fit_of(cushion, job, _MEASURES)
    finished = finished_size(cushion, fit)
    opening = opening_of(finished["width"], cushion, job)
    problems = nothing_left(cushion, job, fit, finished)
    problems += [problem for part in _FACES for problem in off_the_face(cushion, part, *finished.lengths)]
    problems = problems or opening_too_long(opening, finished["width"], cushion, job)
    if problems:
        return problems
    parts = [_panel(part, cushion.cover, finished) for part in _FACES]
    panels = tuple(_piece(part, cushion, job, opening) for part in parts)
    problems = impossible_corners(cushion, panels)
    return problems or Made(
        cushion=cushion,
        fit=fit,
        pad=pad_for(finished, fit, job),
        finished=finished,
        opening=opening,
        between_side_seams=finished["width"],
        pieces=panels,
        cutting=(_seam_line(cushion.cover, parts[0], job), *why_cut_larger(parts, panels, job)),
        sewn=(Sewn(2 * sum(finished.lengths), layers=2),),
    )


def _panel(name: str, cover: Cover, finished: Measures) -> Part:
    edges = Edges(cover.side_seam, cover.side_seam, bottom=cover.closure.seam, top=cover.seam)
    return Part(name, name, _MEASURES, finished["width"], finished["length"], edges)


def _piece(part: Part, cushion: Cushion, job: Job, opening: int) -> Piece:
    return with_corners(with_opening(cut_out(part, cushion, job, cushion.quantity), opening, job), cushion, job)


def _seam_line(cover: Cover, panel: Part, job: Job) -> str:
    units = job.units
    seam = f"Seams {write_length(cover.seam, units)} at every edge"
    if cover.side_seam != cover.seam:
        seam += f", {write_length(cover.side_seam, units)} at the sides"
    if cover.closure.seam != cover.seam:
        seam += f", {write_length(cover.closure.seam, units)} at the closing edge"
    return f"{seam}: panels {size(*panel.plain, units)}."
