"""What every kind of cover comes to: its measures, how it is closed, its pieces, and how they came about."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.closing import Closing
from plumpline.cushions.fit import Fit, Pad
from plumpline.cushions.stitching import Sewn
from plumpline.job import Cushion
from plumpline.measures import Measures
from plumpline.pieces import Piece, Strips
from plumpline.rounded import RoundedOutline


@dataclass(frozen=True)
class Made:
    """One entry worked out; lengths in nm.

    `finished` is the size from seam to seam. `between_side_seams` is the finished width of a cover whose two side
    seams can give way, None where there are none. `cutting` says in sentences how the cut sizes follow from the
    finished one. `sewn` is all the stitching of one cover, `zips` how far each of its zips opens. `made_up` names
    the faces that are made of several pieces, each with how they are sewn together, and `seams` are those seams, all of
    them in `sewn`; `inset` is the trim stitched onto
    faces: which, how wide and how long. `strips` are cut beside the pieces, for its edge. A straight-sided cover has
    its `outline` along the stitching line, from the lower left corner of the box around its sharp corners.
    """

    cushion: Cushion
    fit: Fit
    pad: Pad
    finished: Measures
    closing: Closing
    pieces: tuple[Piece, ...]
    cutting: tuple[str, ...]
    sewn: tuple[Sewn, ...]
    zips: tuple[int, ...] = ()
    between_side_seams: int | None = None
    made_up: tuple[tuple[str, str], ...] = ()
    seams: tuple[Sewn, ...] = ()
    inset: tuple[tuple[str, int, int], ...] = ()
    strips: tuple[Strips, ...] = ()
    outline: RoundedOutline | None = None
