"""What is cut: one piece of the cover with its size, outline, marks and what is asked of its place on the cloth."""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal

from plumpline.geometry import Point as Point
from plumpline.geometry import outset
from plumpline.job import Face

Outline = tuple[Point, ...]
Turns = Literal["with the faces", "freely"]


@dataclass(frozen=True)
class Mark:
    """A mark chalked on the piece: its kind, what it is for, and its points in nm from the lower left corner."""

    kind: str
    text: str
    points: tuple[Point, ...]


@dataclass(frozen=True)
class Edges:
    """The allowances of a piece at its four edges, in nm."""

    left: int
    right: int
    bottom: int
    top: int

    def along(self, outline: Outline) -> list[int]:
        """The allowance of each side of an outline: that of the edge which it is most nearly parallel to."""
        return [self._beside(ax, ay, bx, by) for (ax, ay), (bx, by) in pairwise([*outline, *outline[:1]])]

    def _beside(self, ax: int, ay: int, bx: int, by: int) -> int:
        if abs(by - ay) > abs(bx - ax):
            return self.right if by > ay else self.left
        return self.bottom if bx > ax else self.top


@dataclass(frozen=True)
class Piece:
    """`count` equal panels, seen from the face with the top upwards; lengths in nm.

    `part` names it in the answer; what is asked of its place stands in the document at `face_at`, and `measured`
    names the two measures of the insert that make it so wide and so long. `width` and `length` are the cut size on
    the grid, as chalked on the cloth the way the pattern points; `outline` runs anticlockwise. `upright` and `aside`
    are the extents (across, along the roll) of the panel lying with its top along the roll or to one side: they
    differ by what a later wash takes in each direction. `aim` is the point, from the lower left corner of the upright
    panel, that a motif is to stand on. `shape` says what of the outline the lay plan goes by: the rectangle around
    it, the circle it is, or itself. `turns` tells whether on cloth without a direction it lies as the faces of its
    cover do, or freely, as boxing and hidden pieces may. `portion_of` names the part that it is only a portion of, or
    the layer that it belongs to. `allowances` are those of each side of the outline, where `edges` do not tell them;
    `sharp` is the stitching line with sharp corners, where `stitched` has them rounded. What stands on the pattern lies
    `apart` from `aim`, or from the middle of an alike panel, as it lies with its top upwards, where the pattern
    `goes_on` over that edge of the front.
    """

    id: str
    cushion: str
    part: str
    face: Face
    face_at: str
    insert_at: str
    measured: tuple[str, str]
    count: int
    width: int
    length: int
    upright: Point
    aside: Point
    aim: Point
    seam: int
    edges: Edges
    outline: Outline
    marks: tuple[Mark, ...]
    shape: Literal["rectangle", "circle", "outline"] = "rectangle"
    turns: Turns = "with the faces"
    stitched: Outline = ()
    portion_of: str = ""
    allowances: tuple[int, ...] = ()
    sharp: Outline = ()
    apart: Point = (0, 0)
    goes_on: Literal["", "bottom", "top"] = ""

    @property
    def around(self) -> tuple[int, ...]:
        """The allowance of each side of the outline."""
        return self.allowances or tuple(self.edges.along(self.outline))

    @property
    def seam_line(self) -> Outline:
        """Where it is sewn: as `stitched` says, else the outline moved inwards by the allowance of each edge."""
        return self.stitched or outset(self.outline, [-allowance for allowance in self.around])

    def resized(self, width: int, length: int) -> Piece:
        """The piece cut so large; as it lies on the cloth it grows or shrinks by as much."""
        wider, longer = width - self.width, length - self.length
        upright = self.upright[0] + wider, self.upright[1] + longer
        aside = self.aside[0] + longer, self.aside[1] + wider
        return replace(self, width=width, length=length, upright=upright, aside=aside)

    @property
    def called(self) -> str:
        """The part as it is called in a sentence: "front", "zip band 1"."""
        return self.part.replace("-", " ")


@dataclass(frozen=True)
class Strips:
    """Narrow strips of cloth that are joined to `count` equal rings; lengths in nm, as chalked on the cloth.

    `part` names them in the answer. Each ring is `length` long with what its own join takes; a join between two
    strips takes `join`, no strip is shorter than the `shortest`, and no join lies within a span of `clear`, counted
    along the ring. `edge_at` is the place of the document that asks for them.
    """

    id: str
    cushion: str
    part: str
    cloth: str
    edge_at: str
    count: int
    width: int
    length: int
    join: int
    bias: bool
    clear: tuple[tuple[int, int], ...]
    shortest: int
    seam: int
