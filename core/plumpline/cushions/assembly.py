"""A cover put together from its parts: what is the same for every kind once its pieces are known."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.cushions.closing import Closing, closing_line
from plumpline.cushions.closing_marks import with_closing
from plumpline.cushions.fit import pad_for
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Part, cut_out
from plumpline.cushions.sizes import Sized
from plumpline.cushions.stitching import Sewn, sewn_to_close
from plumpline.cushions.words import why_cut_larger
from plumpline.job import Cushion, Job
from plumpline.pieces import Piece


@dataclass(frozen=True)
class Cut:
    """A part and the piece it is cut as."""

    part: Part
    piece: Piece


def cut_panels(parts: Sequence[Part], cushion: Cushion, closing: Closing, job: Job) -> list[Cut]:
    """The parts cut out, one for each cover, with the marks of the closure."""
    return [
        Cut(part, with_closing(part, cut_out(part, cushion, job, cushion.quantity), closing, job)) for part in parts
    ]


def assembled(
    cushion: Cushion, job: Job, sized: Sized, closing: Closing, cuts: Sequence[Cut], lines: list[str], sewn: list[Sewn]
) -> Made:
    """The cover of these pieces; `lines` say how their sizes come about, `sewn` is its stitching but the closure's."""
    parts, pieces = [cut.part for cut in cuts], tuple(cut.piece for cut in cuts)
    return Made(
        cushion=cushion,
        fit=sized.fit,
        pad=pad_for(sized.finished, sized.fit, job),
        finished=sized.finished,
        closing=closing,
        pieces=pieces,
        cutting=(*lines, *closing_line(closing, job), *why_cut_larger(parts, pieces, job)),
        sewn=(*sewn, *sewn_to_close(closing)),
        zips=closing.zips,
    )
