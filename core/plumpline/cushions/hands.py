"""Left and right: the pieces of covers that are made the other way round, as one of a pair of seats is."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from plumpline.cushions.made import Made
from plumpline.geometry import mirrored
from plumpline.job import Cushion, name_of
from plumpline.pieces import Edges, Mark, Piece
from plumpline.problems import Problem


def too_many_mirrored(cushion: Cushion) -> list[Problem]:
    """The problem of more mirrored covers than there are covers."""
    if cushion.mirrored <= cushion.quantity:
        return []
    text = f"{cushion.mirrored} of {name_of(cushion)} are to be mirrored, but only {cushion.quantity} are made: "
    return [Problem(f"{cushion.at}/mirrored", "rules-contradict", text + "make more, or mirror fewer.")]


def in_both_hands(made: Made) -> Made:
    """The cover with the pieces of those of its entry that are mirrored; a piece that is its own mirror image serves.

    All pieces are seen from the face, so a mirrored cover has the front of the others as its back, turned over.
    """
    cushion = made.cushion
    if not cushion.mirrored:
        return made
    pieces = tuple(piece for one in made.pieces for piece in _both(one, cushion))
    text = f"{cushion.mirrored} of {cushion.quantity} are made the other way round: their pieces are mirrored."
    return replace(made, pieces=pieces, cutting=(*made.cutting, text))


def _both(piece: Piece, cushion: Cushion) -> Iterator[Piece]:
    other = _mirrored(piece)
    if _shown(other) == _shown(piece):
        yield piece
        return
    as_measured = cushion.quantity - cushion.mirrored
    if as_measured:
        yield replace(piece, count=as_measured)
    part = f"{piece.part}-mirrored"
    yield replace(other, id=f"{cushion.id}.{part}", part=part, count=cushion.mirrored)


def _shown(piece: Piece) -> tuple[object, ...]:
    """What tells a piece from its mirror image, wherever its outline and its marks begin."""
    marks = sorted((mark.kind, mark.text, sorted(mark.points)) for mark in piece.marks)
    return sorted(piece.outline), sorted(piece.stitched), marks, piece.aim


def _mirrored(piece: Piece) -> Piece:
    width, edges = piece.width, piece.edges
    return replace(
        piece,
        outline=mirrored(piece.outline, width),
        stitched=mirrored(piece.stitched, width) if piece.stitched else (),
        sharp=mirrored(piece.sharp, width) if piece.sharp else (),
        allowances=piece.allowances[::-1],
        edges=Edges(edges.right, edges.left, edges.bottom, edges.top),
        aim=(piece.upright[0] - piece.aim[0], piece.aim[1]),
        marks=tuple(Mark(mark.kind, mark.text, _turned_over(mark, width)) for mark in piece.marks),
    )


def _turned_over(mark: Mark, width: int) -> tuple[tuple[int, int], ...]:
    return tuple((width - x, y) for x, y in mark.points)
