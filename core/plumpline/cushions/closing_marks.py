"""The marks a closure asks for: where the opening or the zip lies, how deep a hem is."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from plumpline.cloth import cut_across, cut_along
from plumpline.cushions.closing import Closing
from plumpline.cushions.panels import SAG, Part
from plumpline.geometry import at_angle
from plumpline.job import Job
from plumpline.lengths import write_length
from plumpline.pieces import Mark, Outline, Piece, Point


def with_closing(part: Part, piece: Piece, closing: Closing, job: Job) -> Piece:
    """The piece of a part with the marks of the closure at each edge that it lies at."""
    return replace(piece, marks=(*piece.marks, *(_mark(part, piece, edge, closing, job) for edge in part.opens)))


def _mark(part: Part, piece: Piece, edge: str, closing: Closing, job: Job) -> Mark:
    if closing.kind in ("hand-sewn", "zip"):
        length = write_length(closing.length, job.units)
        text = f"Leave {length} open" if closing.kind == "hand-sewn" else f"Zip of {length}"
        kind = "opening" if closing.kind == "hand-sewn" else "zip"
        middle = _middle_of_side(part, piece, closing) if piece.allowances else _middle(piece, edge, closing, job)
        return Mark(kind, text, middle)
    hem = f"{write_length(closing.allowance, job.units)} for the hem"
    hem += ", its ends cut as it is folded" if part.drawn and part.drawn.folded else ""
    if piece.allowances:
        cut = piece.width, piece.length
        return Mark("hem", hem, part.on_the_piece(part.line.straights(SAG)[part.closing_side], cut))
    cloth = job.cloth(piece.face.cloth)
    deep = (cut_across if cloth.lies_aside else cut_along)(cloth, closing.allowance, 0)
    at = deep if edge == "bottom" else piece.length - deep
    return Mark("hem", hem, ((0, at), (piece.width, at)))


def _middle_of_side(part: Part, piece: Piece, closing: Closing) -> Outline:
    """Both ends of what lies in the middle of the closing side, on the stitching line."""
    edge = part.line.sides[part.closing_side]
    ends = [Fraction(edge + way * closing.length, 2) for way in (-1, 1)]
    on_line = [part.line.at(part.closing_side, end) for end in ends]
    return part.on_the_piece(on_line, (piece.width, piece.length))


def _middle(piece: Piece, edge: str, closing: Closing, job: Job) -> tuple[Point, Point]:
    """Both ends of what lies in the middle of the edge."""
    if piece.shape == "circle":
        radius, half = Fraction(piece.width, 2), Fraction(closing.length, 2 * closing.edge)
        left, right = (at_angle((radius, radius), radius, Fraction(3, 4) + turn) for turn in (-half, half))
        return left, right
    cloth = job.cloth(piece.face.cloth)
    cut_to_wash = cut_along if cloth.lies_aside else cut_across
    gap, at = cut_to_wash(cloth, closing.length, 0) // 2, 0 if edge == "bottom" else piece.length
    return (piece.width // 2 - gap, at), (piece.width // 2 + gap, at)
