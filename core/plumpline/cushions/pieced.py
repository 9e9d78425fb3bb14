"""A face made of several pieces: its portions cut out, each with the marks of the whole face that lie on it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from plumpline.cushions.panels import Cut, Part, cut_out
from plumpline.job import Cushion, Job
from plumpline.pieces import Mark, Outline, Piece, Point

# Marks that every piece has of its own.
_OWN_MARKS = ("top", "centre")


@dataclass(frozen=True)
class Portion:
    """A part of a face, and where its finished lower left corner lies on the finished face, in nm.

    `shows` says whether the pattern falls on it as is asked of the face, or anywhere. `outline` is its finished shape
    from that corner where it is no rectangle.
    """

    part: Part
    at: Point
    shows: str = "the pattern"
    outline: Outline = ()


@dataclass(frozen=True)
class Pieced:
    """A face divided: its portions, how they come about, how they are sewn, and how long their seams are, in nm."""

    portions: tuple[Portion, ...]
    lines: tuple[str, ...]
    how: str
    seams: int


def cut_portions(whole: Cut, portions: Sequence[Portion], cushion: Cushion, job: Job) -> list[Cut]:
    """The portions of a face that is cut whole as `whole`, cut out one by one."""
    return [_cut_portion(whole, portion, cushion, job) for portion in portions]


def _cut_portion(whole: Cut, portion: Portion, cushion: Cushion, job: Job) -> Cut:
    piece = cut_out(portion.part, cushion, job, cushion.quantity)
    if portion.shows != "the pattern":
        piece = replace(piece, face=replace(piece.face, pattern="free", motif=None))
    marks = (*piece.marks, *_carried(whole, portion, piece))
    return Cut(portion.part, replace(piece, marks=marks, portion_of=whole.piece.part))


def _carried(whole: Cut, portion: Portion, piece: Piece) -> list[Mark]:
    """The marks of the whole face that lie on a portion; a line along its edge is cut off where the portion ends."""
    found = []
    for mark in whole.piece.marks:
        points = tuple(_moved(point, whole, portion, piece) for point in mark.points)
        clipped = _on_the_piece(points, piece)
        if mark.kind not in _OWN_MARKS and clipped:
            found.append(replace(mark, points=clipped))
    return found


def _moved(point: Point, whole: Cut, portion: Portion, piece: Piece) -> Point:
    """A point of the whole piece, as cut, carried over to the piece of a portion."""
    wide, high = whole.part.plain
    x = point[0] * wide // whole.piece.width - whole.part.edges.left - portion.at[0] + portion.part.edges.left
    y = point[1] * high // whole.piece.length - whole.part.edges.bottom - portion.at[1] + portion.part.edges.bottom
    own_wide, own_high = portion.part.plain
    return x * piece.width // own_wide, y * piece.length // own_high


def _on_the_piece(points: tuple[Point, ...], piece: Piece) -> tuple[Point, ...]:
    if len(points) == 2 and points[0][1] == points[1][1] and 0 <= points[0][1] <= piece.length:
        left, right = (min(max(x, 0), piece.width) for x, _ in points)
        return ((left, points[0][1]), (right, points[1][1])) if left != right else ()
    inside = all(0 <= x <= piece.width and 0 <= y <= piece.length for x, y in points)
    return points if inside else ()
