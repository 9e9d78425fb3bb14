"""What is cut: one piece of the cover with its size, outline, marks and what is asked of its place on the cloth."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.job import Face

Point = tuple[int, int]


@dataclass(frozen=True)
class Mark:
    """A mark chalked on the piece: its kind, what it is for, and its points in nm from the lower left corner."""

    kind: str
    text: str
    points: tuple[Point, ...]


@dataclass(frozen=True)
class Piece:
    """`count` equal panels, seen from the face with the top upwards; lengths in nm.

    `width` and `length` are the cut size on the grid, as chalked on the cloth. `centre` is the centre of the
    finished face, between the stitching lines, from the lower left corner. `outline` runs anticlockwise.
    `along_side` is the same panel lying on its side (width and length exchanged, each shrunk as it then lies).
    """

    id: str
    cushion: str
    at: str
    part: str
    face: Face
    count: int
    width: int
    length: int
    along_side: tuple[int, int]
    centre: Point
    seam: int
    outline: tuple[Point, ...]
    marks: tuple[Mark, ...]
