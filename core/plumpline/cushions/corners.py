"""Corners of a panel: square, tapered by a depth and a run so that the filled cover has no ears, or rounded."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from plumpline.cushions.panels import SAG, Part
from plumpline.job import Corners, Cushion, Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.pieces import Mark, Outline, Piece, Point
from plumpline.problems import Problem
from plumpline.rounded import RoundedOutline

# The corners of a panel anticlockwise from the lower left one: whether each is at the right, and at the top.
_PLACES = ((0, 0), (1, 0), (1, 1), (0, 1))
_EDGES = ("bottom", "top")


def corners_too_large(cushion: Cushion, job: Job, finished: Measures) -> list[Problem]:
    """The problem of rounded corners that do not fit on a face."""
    corners = cushion.cover.corners
    short = min(finished["width"], finished["length"])
    if corners.kind != "rounded" or 2 * corners.radius <= short:
        return []
    radius, side = write_length(corners.radius, job.units), write_length(short, job.units)
    text = f"Corners rounded by {radius} do not fit on a side of {side}: round them by half of it at most."
    return [Problem(f"{cushion.at}/cover/corners/radius", "corner-too-large", text)]


def tapers_too_large(cushion: Cushion, panels: Sequence[tuple[Piece, Point]]) -> list[Problem]:
    """The problem of a taper that does not fit on a panel, or on the whole face, cut so large, that it is a part of."""
    corners = cushion.cover.corners
    if corners.kind != "tapered":
        return []
    sides = [
        (run, whole, side)
        for panel, face in panels
        for run, whole, side in zip(_runs(corners, face), face, (panel.width, panel.length), strict=True)
    ]
    if all(corners.depth < run <= side and 2 * run <= whole for run, whole, side in sides):
        return []
    text = "The taper has to start further from the corner than it is deep, and no further than the middle."
    return [Problem(f"{cushion.at}/cover/corners/run", "corner-too-large", text)]


def not_tapered(cushion: Cushion) -> list[Problem]:
    """The problem of a boxed cover that is to be tapered."""
    if cushion.cover.corners.kind != "tapered":
        return []
    text = "The plates of a boxed cover have no ears to taper away: leave their corners square, or round them."
    return [Problem(f"{cushion.at}/cover/corners/kind", "unknown-value", text)]


def edge_around(cushion: Cushion, finished: Measures) -> tuple[int, ...]:
    """The four sides of the stitched edge from the middle of one corner to the next, in nm, from the bottom on.

    Rounded corners take a circle off the sum of the sides: 2 (width + length) - 8 r + 2 π r.
    """
    radius = cushion.cover.corners.radius if cushion.cover.corners.kind == "rounded" else 0
    return RoundedOutline(_square(finished["width"], finished["length"]), (radius,) * 4).sides


def _square(width: int, length: int) -> Outline:
    return (0, 0), (width, 0), (width, length), (0, length)


def with_corners(part: Part, piece: Piece, face: Point, cushion: Cushion, job: Job) -> Piece:
    """The piece of a part with the corners of its cover, on a whole face that is cut so large; rounds have none.

    Other straight-sided outlines have theirs from `outline_corners`.
    """
    corners = cushion.cover.corners
    if corners.kind == "square" or part.shape != "rectangle":
        return piece
    return _tapered(part, piece, face, corners, job) if corners.kind == "tapered" else _rounded(part, piece, corners)


def _placed(points: Sequence[Point], place: Point, cut: Point) -> tuple[Point, ...]:
    """Points of the lower left corner of a panel carried over to another of its corners."""
    return tuple((cut[0] - x if place[0] else x, cut[1] - y if place[1] else y) for x, y in points)


def _outline(part: Part, cut: Point, corner: Sequence[Point]) -> Outline:
    """The outline with these points, as of its lower left corner, at each corner that is one of the cover."""
    found: list[Point] = []
    for place in _PLACES:
        placed = _placed(corner if _EDGES[place[1]] in part.corners else [(0, 0)], place, cut)
        found.extend(placed if place[0] == place[1] else placed[::-1])
    return tuple(dict.fromkeys(found))  # corners that meet in the middle of a side have one point there


def _runs(corners: Corners, cut: Point) -> Point:
    run = corners.run
    if isinstance(run, Fraction):
        return int(cut[0] * run), int(cut[1] * run)
    return run, run


def _tapered(part: Part, piece: Piece, face: Point, corners: Corners, job: Job) -> Piece:
    cut, d = (piece.width, piece.length), corners.depth
    a, b = _runs(corners, face)
    text = f"In {write_length(d, job.units)} at the corner, from {write_length(a, job.units)} along the side"
    if a != b:
        text += f" and {write_length(b, job.units)} up the edge"
    places = [place for place in _PLACES if _EDGES[place[1]] in part.corners]
    marks = [Mark("taper", text, _placed(((a, 0), (d, d), (0, b)), place, cut)) for place in places]
    corner = ((0, b), (d, d), (a, 0))
    return replace(piece, outline=_outline(part, cut, corner), marks=(*piece.marks, *marks))


def _rounded(part: Part, piece: Piece, corners: Corners) -> Piece:
    """The piece cut so that its stitching line has the radius: around the same middle, larger by the allowances."""
    cut, edges = (piece.width, piece.length), part.edges
    radii = tuple(corners.radius if _EDGES[top] in part.corners else 0 for _, top in _PLACES)
    line = RoundedOutline(_square(part.width, part.length), radii)
    allowances = edges.bottom, edges.right, edges.top, edges.left
    outline, stitched, sharp = (
        part.on_the_piece(points, cut) for points in (line.points(SAG, allowances), line.points(SAG), line.corners)
    )
    return replace(piece, outline=outline, stitched=stitched, sharp=sharp)


def corner_lines(cushion: Cushion, job: Job) -> list[str]:
    """How rounded corners are cut."""
    corners, seam = cushion.cover.corners, cushion.cover.seam
    if corners.kind != "rounded":
        return []
    sewn, cut = (write_length(nm, job.units) for nm in (corners.radius, corners.radius + seam))
    return [f"Corners rounded by {sewn} where they are stitched, cut by {cut}."]
