"""Boxing on which the pattern of the front goes on over the seam between them."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from plumpline.cushions.panels import Cut, Part
from plumpline.cushions.ring import Run
from plumpline.job import Cushion
from plumpline.pieces import Piece, Point
from plumpline.problems import Problem

_Exact = tuple[Fraction, Fraction]


def cannot_go_on(cushion: Cushion) -> list[Problem]:
    """Why the boxing of a cover cannot go on from its front as it is asked to."""
    faces = dict(cushion.cover.faces)
    if "sides" not in faces or not faces["sides"].goes_on:
        return []
    front, text = faces["front"], None
    if (cushion.kind, cushion.insert.shape) != ("boxed", "rectangle"):
        text = "Only the boxing of a square or oblong cover can go on with the pattern of its front."
    elif faces["sides"].cloth != front.cloth:
        text = "Boxing that goes on with the pattern of the front is cut from the same cloth: choose that one."
    elif front.pattern == "free":
        text = "The front is cut anywhere in its pattern: centre it, or have all alike, and boxing can go on from it."
    elif "front/made" in faces:
        text = "At the edge of the front there is another part, not its pattern: let the boxing be cut anywhere."
    elif front.joined != "none" and not (front.has_motif and front.join_pattern == "matched"):
        text = "The pattern stops at the joins of the front: have it centred and matched there, or cut the front whole."
    return [] if text is None else [Problem(f"{cushion.at}/cover/sides/pattern", "rules-contradict", text)]


def cut_to_go_on(band: Piece, part: Part, run: Run, front: Cut) -> Piece:
    """A band of the boxing, cut where the pattern goes on from the front; anywhere, where it meets no such edge of it.

    On the front that runs up, over its top edge, and down over its bottom edge; so the stitching line of the band there
    shows the same place of the pattern as that of the front.
    """
    if not run.edge:
        return replace(band, face=replace(band.face, pattern="free", motif=None))
    half = Fraction(run.length, 2)
    up_front, up_band = (front.part.length, 0) if run.edge == "top" else (0, part.length)
    seam = _as_cut((run.start + half, Fraction(up_front)), front.part, (front.piece.width, front.piece.length))
    own_seam = (half, Fraction(up_band))
    across, up = _hanging(front.piece)
    apart = across - seam[0], up - seam[1]
    if not front.piece.face.has_motif:
        # What hangs on the pattern is the middle of the panel then.
        x, y = _as_cut(own_seam, part, (band.width, band.length))
        apart = apart[0] + x - band.width // 2, apart[1] + y - band.length // 2
    return replace(
        band,
        face=front.piece.face,
        aim=_whole(_as_cut(own_seam, part, band.upright)),
        apart=_whole(apart),
        goes_on=run.edge,
    )


def _as_cut(point: _Exact, part: Part, cut: Point) -> _Exact:
    """A point told from the finished lower left corner of a part, on the panel that is cut so large."""
    x, y = point[0] + part.edges.left, point[1] + part.edges.bottom
    return x * cut[0] / part.plain[0], y * cut[1] / part.plain[1]


def _hanging(front: Piece) -> _Exact:
    """The point of the front that hangs on the pattern, on the panel as it lies with its top upwards."""
    if not front.face.has_motif:
        return Fraction(front.width // 2), Fraction(front.length // 2)
    (across, up), (wide, high) = front.aim, front.upright
    return Fraction(across * front.width, wide), Fraction(up * front.length, high)


def _whole(point: _Exact) -> Point:
    return int(point[0] // 1), int(point[1] // 1)
