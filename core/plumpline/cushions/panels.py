"""From a finished shape to the piece that is cut: allowances, the wash to come, the grid, and where a motif stands."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property
from typing import Literal

from plumpline.cloth import cut_across, cut_along
from plumpline.geometry import cut_level, round_outline, sides_of
from plumpline.job import NM_PER_CM, Cloth, Cushion, Face, Job
from plumpline.pieces import Edges as Edges
from plumpline.pieces import Mark, Outline, Piece, Point, Turns
from plumpline.problems import Problem
from plumpline.rounded import RoundedOutline

# A round outline is drawn by chords that lie no further than this inside it.
SAG = NM_PER_CM // 100


@dataclass(frozen=True)
class Drawn:
    """How a part is cut that is not its outline moved outwards: the line to cut along from its finished lower left
    corner, the allowance of each side of it, and its marks; whether the ends of its hem are `folded`, cut as it turns.
    """

    outline: Outline
    allowances: tuple[int, ...]
    marks: tuple[Mark, ...]
    folded: bool


@dataclass(frozen=True)
class Part:
    """A part of the cover before there is a cloth: its finished size and the allowances around it; lengths in nm.

    `face_of` is the face of the document that it is cut as, and `centre` the point that a centred motif stands on,
    from its finished lower left corner; left out, it is the middle. A circle is as long as it is wide; a segment is
    what a straight cut across leaves of the circle around `centre` that is as wide as the part. `opens` names the
    edges that the closure of the cover lies at, `corners` those at whose ends the corners of the cover are.

    A part of shape "outline" has its finished `outline` from the lower left corner of the box around it, by its sharp
    corners and the radius of each (`radii`, empty for all sharp), an allowance for each of its sides, and
    `closing_side` instead of an edge; its `edges` are what the allowances add to the box. How a piece of one is cut
    stands in `drawn`.
    """

    name: str
    face_of: str
    measured: tuple[str, str]
    width: int
    length: int
    edges: Edges
    centre: tuple[Fraction, Fraction] | None = None
    turns: Turns = "with the faces"
    shape: Literal["rectangle", "circle", "segment", "outline"] = "rectangle"
    opens: tuple[Literal["bottom", "top"], ...] = ()
    corners: tuple[Literal["bottom", "top"], ...] = ("bottom", "top")
    outline: Outline = ()
    radii: tuple[int, ...] = ()
    allowances: tuple[int, ...] = ()
    closing_side: int = 0
    drawn: Drawn | None = None

    @cached_property
    def line(self) -> RoundedOutline:
        """The stitching line of one of shape "outline"."""
        return RoundedOutline(self.outline, self.radii or (0,) * len(self.outline))

    def on_the_piece(self, points: Sequence[Point], cut: Point) -> Outline:
        """Points told from the finished lower left corner as they lie on the piece that is cut so large."""
        return scaled([(x + self.edges.left, y + self.edges.bottom) for x, y in points], self.plain, cut)

    @property
    def middle(self) -> tuple[Fraction, Fraction]:
        """The point that a centred motif stands on, from the finished lower left corner."""
        return self.centre or (Fraction(self.width, 2), Fraction(self.length, 2))

    @property
    def plain(self) -> Point:
        """The size with its allowances, before the wash and the grid."""
        edges = self.edges
        return self.width + edges.left + edges.right, self.length + edges.bottom + edges.top


@dataclass(frozen=True)
class Cut:
    """A part and the piece it is cut as."""

    part: Part
    piece: Piece


def cut_out(part: Part, cushion: Cushion, job: Job, count: int) -> Piece:
    """The piece of a part on the grid, with the marks that every panel has.

    A straight-sided outline is cut by its template and not by the grid, which would pull its corners about.
    """
    face = cushion.cover.face(part.face_of)
    cloth = job.cloth(face.cloth)
    across, up = part.plain
    grid = 0 if part.shape == "outline" else job.grid
    upright = cut_across(cloth, across, grid), cut_along(cloth, up, grid)
    aside = cut_across(cloth, up, grid), cut_along(cloth, across, grid)
    cut = (aside[1], aside[0]) if cloth.lies_aside else upright
    outline, stitched = _outline(part, cut), _stitched(part, cut)
    return Piece(
        id=f"{cushion.id}.{part.name}",
        cushion=cushion.id,
        part=part.name,
        face=face,
        face_at=f"{cushion.at}/cover/{part.face_of}",
        insert_at=f"{cushion.at}/insert",
        measured=part.measured,
        count=count,
        width=cut[0],
        length=cut[1],
        upright=upright,
        aside=aside,
        aim=_aim(part, cloth, face, upright),
        seam=cushion.cover.seam,
        edges=part.edges,
        outline=outline,
        marks=_marks(part, cut),
        shape="rectangle" if part.shape == "segment" else part.shape,
        turns=part.turns,
        stitched=stitched,
        allowances=part.drawn.allowances if part.drawn else part.allowances,
        sharp=part.on_the_piece(part.outline, cut) if any(part.radii) else (),
    )


def _marks(part: Part, cut: Point) -> tuple[Mark, ...]:
    if part.shape != "outline":
        return _edge_marks(cut, _side_level(part, cut))
    own = part.drawn.marks if part.drawn else side_marks(part)
    return tuple(replace(mark, points=part.on_the_piece(mark.points, cut)) for mark in own)


def _aim(part: Part, cloth: Cloth, face: Face, upright: Point) -> Point:
    """Where the motif is to stand: the centre of the finished face, and the offset from there as it is before a wash.

    What the grid adds is shared by the two edges, so the face stays in the middle of its panel.
    """
    across = int(upright[0] * (part.edges.left + part.middle[0]) / part.plain[0])
    up = int(upright[1] * (part.edges.bottom + part.middle[1]) / part.plain[1])
    return across + cut_across(cloth, face.offset_across, 0), up + cut_along(cloth, face.offset_along, 0)


def round_part(name: str, face_of: str, across: int, seam: int, turns: Turns = "with the faces") -> Part:
    """A disc of that finished diameter, with the seam all round it."""
    edges = Edges(seam, seam, seam, seam)
    return Part(name, face_of, ("diameter", "diameter"), across, across, edges, turns=turns, shape="circle")


def outlined_part(
    name: str, face_of: str, line: RoundedOutline, allowances: tuple[int, ...], closing_side: int = 0
) -> Part:
    """A plate with that stitching line, wherever it lies, and an allowance for each of its sides."""
    points = line.points(SAG)
    (left, _), (bottom, _) = (reach(points, axis) for axis in (0, 1))
    finished = replace(line, corners=tuple((x - left, y - bottom) for x, y in line.corners))
    width, length, edges = boxed_in(finished.points(SAG), finished.points(SAG, allowances))
    return Part(
        name,
        face_of,
        ("sides", "sides"),
        width,
        length,
        edges,
        shape="outline",
        outline=finished.corners,
        radii=finished.radii,
        allowances=allowances,
        closing_side=closing_side,
    )


def boxed_in(finished: Outline, cut: Outline) -> tuple[int, int, Edges]:
    """The size of an outline that starts at its lower left corner, and what its line to cut along adds at each edge."""
    (_, width), (_, length) = (reach(finished, axis) for axis in (0, 1))
    (left, right), (bottom, top) = (reach(cut, axis) for axis in (0, 1))
    return width, length, Edges(-left, right - width, -bottom, top - length)


def cut_line(part: Part) -> Outline:
    """What a straight-sided outline is cut along, from its finished lower left corner."""
    return part.drawn.outline if part.drawn else part.line.points(SAG, part.allowances)


def reach(outline: Outline, axis: int) -> tuple[int, int]:
    """From where to where an outline reaches, across (0) or up (1)."""
    places = [point[axis] for point in outline]
    return min(places), max(places)


def _stitched(part: Part, cut: Point) -> Outline:
    """The stitching line of a straight-sided outline within the piece; of other parts the edges tell it."""
    return part.on_the_piece(part.line.points(SAG), cut) if part.outline else ()


def _outline(part: Part, cut: Point) -> Outline:
    """The outline of a part drawn out to the size it is cut, as the grid and a wash ask for."""
    w, h = part.plain
    if part.shape == "outline":
        return part.on_the_piece(cut_line(part), cut)
    if part.shape == "rectangle":
        points: Outline = ((0, 0), (w, 0), (w, h), (0, h))
    else:
        lift = int(part.edges.bottom + part.middle[1]) - w // 2
        points = tuple((x, y + lift) for x, y in round_outline(w, SAG))
    if part.shape == "segment":
        points = _between(points, h)
    return scaled(points, part.plain, cut)


def scaled(points: Sequence[Point], plain: Point, cut: Point) -> Outline:
    """Points of a part of that plain size drawn out to the size it is cut."""
    return tuple((x * cut[0] // plain[0], y * cut[1] // plain[1]) for x, y in points)


def _between(outline: Outline, top: int) -> Outline:
    """What of a convex outline lies from 0 up to `top`, by cutting it off along both lines."""
    kept = outline
    for level, way in ((0, 1), (top, -1)):
        kept = tuple(point for point, _ in cut_level(kept, level, way))
    return kept


def _side_level(part: Part, cut: Point) -> int:
    """How high the middle of the left and the right edge stands: on a part of a circle, where it is widest."""
    if part.shape != "segment":
        return cut[1] // 2
    return int(cut[1] * (part.edges.bottom + part.middle[1]) / part.plain[1])


def _edge_marks(cut: Point, side: int) -> tuple[Mark, ...]:
    w, h = cut
    return (
        Mark("top", "Top edge", ((w // 2, h),)),
        Mark("centre", "Middle of each edge", ((w // 2, 0), (w, side), (w // 2, h), (0, side))),
    )


def back_side(outline: Outline) -> int:
    """The side at the back of an outline, which runs furthest to the left; named by the corner it starts at."""
    runs = [one[0] - other[0] for one, other in sides_of(outline)]
    return runs.index(max(runs))


def side_marks(part: Part) -> tuple[Mark, ...]:
    """The middle of every side, and the corners that turn inwards, which are clipped to let the seam go round them.

    Told from the finished lower left corner of the part.
    """
    line, allowances = part.line, part.allowances
    middles = tuple(((ax + bx) // 2, (ay + by) // 2) for (ax, ay), (bx, by) in line.straights(SAG, allowances))
    clips = [
        Mark("clip", "Clip in to the stitching line", (at[0], turn.at))
        for turn, at in zip(line.turns, line.bends(SAG, allowances), strict=True)
        if turn.sine < 0
    ]
    top = Mark("top", "Top edge", (middles[back_side(part.outline)],))
    return (top, Mark("centre", "Middle of each edge", middles), *clips)


def off_the_face(cushion: Cushion, part: str, across: int, up: int) -> list[Problem]:
    """A problem for every offset of a motif that leads out of a face finished `across` by `up` nm."""
    face = cushion.cover.face(part)
    problems = []
    for name, offset, side in (("across", face.offset_across, across), ("along", face.offset_along, up)):
        if face.has_motif and 2 * abs(offset) > side > 0:
            text = f"So far from the middle the motif is not on the {part} any more: make the offset smaller."
            problems.append(Problem(f"{cushion.at}/cover/{part}/offset/{name}", "rules-contradict", text))
    return problems


def one_seam(cushion: Cushion) -> list[Problem]:
    """A problem where a cover that has no two sides apart from its other edges is given a seam of its own for them."""
    if cushion.cover.side_seam == cushion.cover.seam:
        return []
    text = "A cover of this shape has one seam all round: set that, and leave that of the sides out."
    return [Problem(f"{cushion.at}/cover/side_seam", "rules-contradict", text)]
