"""What is left open to fill a cover that is closed by hand."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cloth import cut_across, cut_along
from plumpline.job import NM_PER_CM, Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.pieces import Mark, Piece
from plumpline.problems import Problem


def opening_of(edge: int, cushion: Cushion, job: Job) -> int:
    """The opening in a closing edge of `edge` nm: the maker's own, else the usual one."""
    return cushion.cover.closure.opening or _usual_opening(edge, cushion, job.units)


def _usual_opening(edge: int, cushion: Cushion, units: str) -> int:
    """The opening up to a half inch or a centimetre and never longer than the edge.

    Common practice: about 8 in on an 18 in cover for a soft pad, the finished side less 5 in for a firm one.
    """
    firm = cushion.insert.fill in ("firm", "foam")
    wanted = edge - 5 * NM_PER_INCH if firm else edge * 8 // 18
    step = NM_PER_INCH // 2 if units == "in" else NM_PER_CM
    return min(edge, max(step, -(-wanted // step) * step))


def opening_too_long(opening: int, edge: int, cushion: Cushion, job: Job) -> list[Problem]:
    """The problem of an opening that is longer than its edge."""
    if opening <= edge:
        return []
    given, side = write_length(opening, job.units), write_length(edge, job.units)
    text = f"The opening of {given} is longer than the edge it lies in, {side}: make it shorter."
    return [Problem(f"{cushion.at}/cover/closure/opening", "opening-too-long", text)]


def with_opening(piece: Piece, opening: int, job: Job) -> Piece:
    """The piece with the opening marked in the middle of its bottom edge."""
    cloth = job.cloth(piece.face.cloth)
    cut_to_wash = cut_along if cloth.lies_aside else cut_across
    gap = cut_to_wash(cloth, opening, 0) // 2
    text = f"Leave {write_length(opening, job.units)} open"
    mark = Mark("opening", text, ((piece.width // 2 - gap, 0), (piece.width // 2 + gap, 0)))
    return replace(piece, marks=(*piece.marks, mark))
