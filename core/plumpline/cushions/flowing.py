"""Fronts in a row, as along a sofa or a bench: the pattern of each goes on where that of the one before it ends."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from plumpline.cushions.made import Made
from plumpline.job import Cushion, Job
from plumpline.pieces import Piece
from plumpline.problems import Problem


def cannot_flow(cushion: Cushion) -> list[Problem]:
    """Why a cover cannot stand in a row with others as it is asked to."""
    faces = dict(cushion.cover.faces)
    if faces["front"].pattern != "flow":
        return []
    text = None
    if cushion.kind == "bolster" or cushion.insert.shape != "rectangle":
        text = "Only the fronts of square and oblong covers can flow on from one another."
    elif cushion.quantity > 1:
        text = "In a row every cover has its own place in the pattern: give each an entry, in the order they stand."
    elif "front/made" in faces or faces["front"].joined != "none":
        text = "Only a front that is cut in one piece can flow on from another: have it whole, or out of the row."
    return [] if text is None else [Problem(f"{cushion.at}/cover/front/pattern", "rules-contradict", text)]


def row_of(cushion: Cushion, job: Job) -> list[Cushion]:
    """The covers that the front of a cover flows on with, from left to right: in the order of the job."""
    cloth = cushion.cover.face("front").cloth
    fronts = [(other, other.cover.face("front")) for other in job.cushions]
    return [other for other, front in fronts if front.pattern == "flow" and front.cloth == cloth]


def in_rows(covers: Sequence[Made]) -> list[Made]:
    """The covers, those whose fronts flow each with its place in its row: from stitching line to stitching line.

    What they share is where the lower left corner of the stitching line of the first one lies in the repeat.
    """
    ends: dict[str, int] = {}
    placed = []
    for cover in covers:
        front = next((piece for piece in cover.pieces if piece.face.pattern == "flow"), None)
        if front is not None:
            start = ends.get(front.face.cloth, 0)
            ends[front.face.cloth] = start + front.width - front.edges.left - front.edges.right
            cover = replace(cover, pieces=tuple(_moved(piece, front, start) for piece in cover.pieces))
        placed.append(cover)
    return placed


def _moved(piece: Piece, front: Piece, start: int) -> Piece:
    """A piece of a front that begins so far along its row, or one that goes on from it, hung on what the row shares."""
    if piece.face.pattern != "flow":
        return piece
    right = front.edges.left - start - front.width // 2
    up = front.edges.bottom - front.length // 2
    return replace(piece, apart=(piece.apart[0] + right, piece.apart[1] + up))
