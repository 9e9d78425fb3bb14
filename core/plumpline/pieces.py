"""What is cut: one piece of the cover with its size, outline, marks and what is asked of its place on the cloth."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.geometry import Point as Point
from plumpline.job import Face


@dataclass(frozen=True)
class Mark:
    """A mark chalked on the piece: its kind, what it is for, and its points in nm from the lower left corner."""

    kind: str
    text: str
    points: tuple[Point, ...]


@dataclass(frozen=True)
class Piece:
    """`count` equal panels, seen from the face with the top upwards; lengths in nm.

    `width` and `length` are the cut size on the grid, as chalked on the cloth the way the pattern points; `outline`
    runs anticlockwise. `upright` and `aside` are the extents (across, along the roll) of the panel lying with its
    top along the roll or to one side: they differ by what a later wash takes in each direction. `aim` is the point,
    from the lower left corner of the upright panel, that a motif is to stand on.
    """

    id: str
    cushion: str
    at: str
    part: str
    face: Face
    count: int
    width: int
    length: int
    upright: tuple[int, int]
    aside: tuple[int, int]
    aim: Point
    seam: int
    outline: tuple[Point, ...]
    marks: tuple[Mark, ...]
