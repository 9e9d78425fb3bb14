"""A face made of several pieces: its portions cut out, each with the marks of the whole face that lie on it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import Literal

from plumpline.cushions.panels import Cut, Edges, Part, cut_out
from plumpline.job import Cushion, Job
from plumpline.pieces import Mark, Piece, Point

# Marks that every piece has of its own.
_OWN_MARKS = ("top", "centre")


@dataclass(frozen=True)
class Portion:
    """A part of a face, and where its finished lower left corner lies on the finished face, in nm.

    `shows` says whether the pattern falls on it as is asked of the face, or anywhere.
    """

    part: Part
    at: Point
    shows: Literal["the pattern", "anything"] = "the pattern"


@dataclass(frozen=True)
class Pieced:
    """A face divided: its portions, how they come about, how they are sewn, and how long their seams are, in nm.

    A face that only has a `trim` of that width and length stitched onto it stays whole and has no portions.
    """

    portions: tuple[Portion, ...]
    lines: tuple[str, ...]
    how: str
    seams: int
    trim: Point | None = None


def portion_of(panel: Part, name: str, at: Point, size: Point, seam: int, face_of: str) -> Portion:
    """A rectangle of a face, so large and there, cut as `face_of`: with the face's own allowances at its outer edges.

    The pattern falls as is asked of the face on the portion that has the middle of the pattern, if it is of the face.
    """
    (x, y), (width, length) = at, size
    outer, (across, up) = panel.edges, panel.middle
    edges = Edges(
        left=seam if x else outer.left,
        right=seam if x + width < panel.width else outer.right,
        bottom=seam if y else outer.bottom,
        top=seam if y + length < panel.length else outer.top,
    )
    part = replace(
        panel,
        name=f"{panel.name}-{name}",
        face_of=face_of,
        width=width,
        length=length,
        edges=edges,
        centre=(across - x, up - y),
        opens=(),
        corners=(),
    )
    has_middle = x <= across < x + width and y <= up < y + length
    return Portion(part, at, "the pattern" if has_middle and face_of == panel.face_of else "anything")


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
