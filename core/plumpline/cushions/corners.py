"""Corners of a panel: square, or tapered by a depth and a run, so that the filled cover has no ears."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from plumpline.job import Corners, Cushion, Job
from plumpline.lengths import write_length
from plumpline.pieces import Mark, Outline, Piece, Point
from plumpline.problems import Problem


def with_corners(piece: Piece, cushion: Cushion, job: Job) -> Piece:
    """The piece with the corners of its cover: their outline and their marks."""
    corners, cut = cushion.cover.corners, (piece.width, piece.length)
    if corners.kind == "square":
        return piece
    marks = (*piece.marks, *_taper_marks(corners, job, cut))
    return replace(piece, outline=_tapered(corners, cut), marks=marks)


def impossible_corners(cushion: Cushion, panels: tuple[Piece, ...]) -> list[Problem]:
    """The problem of a taper that does not fit on a panel."""
    corners = cushion.cover.corners
    if corners.kind == "square":
        return []
    cuts = [(panel.width, panel.length) for panel in panels]
    sides = [side for cut in cuts for side in zip(_runs(corners, cut), cut, strict=True)]
    if all(corners.depth < run and 2 * run <= side for run, side in sides):
        return []
    text = "The taper has to start further from the corner than it is deep, and no further than the middle."
    return [Problem(f"{cushion.at}/cover/corners/run", "corner-too-large", text)]


def _runs(corners: Corners, cut: Point) -> Point:
    run = corners.run
    if isinstance(run, Fraction):
        return int(cut[0] * run), int(cut[1] * run)
    return run, run


def _tapered(corners: Corners, cut: Point) -> Outline:
    (w, h), d = cut, corners.depth
    a, b = _runs(corners, cut)
    lower = ((0, b), (d, d), (a, 0), (w - a, 0), (w - d, d), (w, b))
    around = (*lower, (w, h - b), (w - d, h - d), (w - a, h), (a, h), (d, h - d), (0, h - b))
    return tuple(dict.fromkeys(around))  # tapers that meet in the middle of a side have one corner there


def _taper_marks(corners: Corners, job: Job, cut: Point) -> list[Mark]:
    (w, h), d = cut, corners.depth
    a, b = _runs(corners, cut)
    text = f"In {write_length(d, job.units)} at the corner, from {write_length(a, job.units)} along the side"
    if a != b:
        text += f" and {write_length(b, job.units)} up the edge"
    points = (
        ((a, 0), (d, d), (0, b)),
        ((w - a, 0), (w - d, d), (w, b)),
        ((w - a, h), (w - d, h - d), (w, h - b)),
        ((a, h), (d, h - d), (0, h - b)),
    )
    return [Mark("taper", text, corner) for corner in points]
