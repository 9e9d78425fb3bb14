"""Sentences that the kinds of cover share when they say how their pieces come about."""

from __future__ import annotations

from plumpline.cushions.panels import Part
from plumpline.figures import size
from plumpline.job import Cloth, Job
from plumpline.lengths import write_length
from plumpline.pieces import Piece


def why_cut_larger(parts: list[Part], pieces: tuple[Piece, ...], job: Job) -> list[str]:
    """A sentence for every piece that the grid or a wash to come makes larger than its part."""
    return [
        f"The {piece.called} is cut {size(piece.width, piece.length, job.units)}: "
        f"{_why_larger(job.cloth(piece.face.cloth), job)}."
        for part, piece in zip(parts, pieces, strict=True)
        if piece.width > part.plain[0] or piece.length > part.plain[1]
    ]


def _why_larger(cloth: Cloth, job: Job) -> str:
    grid = f"up to the next {write_length(job.grid, job.units)}"
    if cloth.wash == "after-making" and (cloth.shrink_across or cloth.shrink_along):
        return f"larger by what the wash will take, {grid}" if job.grid else "larger by what the wash will take"
    return grid
