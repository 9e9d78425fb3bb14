"""What all boxed covers share: two plates, the ring around them, and the ways they are closed."""

from __future__ import annotations

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.backs import back_lines, backs_of
from plumpline.cushions.closing import Closing
from plumpline.cushions.corners import with_corners
from plumpline.cushions.going_on import cut_to_go_on
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Cut, Part
from plumpline.cushions.ring import Ring, bands_of, boxing_parts, boxing_piece, ring_lines
from plumpline.cushions.sizes import Sized
from plumpline.cushions.stitching import Sewn
from plumpline.job import Cushion, Job
from plumpline.problems import Problem

PLATES = ("front", "back")
# At the bottom it is closed in the seam between back and boxing, within the allowance of that seam.
CLOSED_AT = {
    "hand-sewn": ("bottom",),
    "zip": ("boxing", "back", "bottom"),
    "envelope": ("back",),
    "buttons": ("back",),
}


def boxed_with(
    ring: Ring, plates: tuple[Part, Part], lines: list[str], cushion: Cushion, job: Job, sized: Sized, closing: Closing
) -> Made | list[Problem]:
    """The cover of two plates and the ring around them; `lines` say how their sizes come about."""
    front, back = plates
    closing = closing.within(cushion.cover.seam)
    backs, bands = backs_of(back, closing), bands_of(ring, cushion, job)
    boxing = boxing_parts(ring, bands, cushion, closing)
    plates_cut = [
        Cut(cut.part, with_corners(cut.part, cut.piece, (cut.piece.width, cut.piece.length), cushion, job))
        for cut in cut_panels([front, *backs], cushion, closing, job)
    ]
    bands_cut = [(part, run, boxing_piece(part, run, cushion, job)) for part, run in boxing]
    if cushion.cover.face("sides").goes_on:
        whole = plates_cut[0]
        bands_cut = [(part, run, cut_to_go_on(piece, part, run, whole)) for part, run, piece in bands_cut]
    cuts = [*plates_cut, *(Cut(part, piece) for part, _, piece in bands_cut)]
    lines = [*lines, *ring_lines(ring, bands, boxing, closing, cushion, job), *back_lines(back, backs, closing, job)]
    sewn = [Sewn(2 * ring.length, layers=2), Sewn(bands.joins * ring.thickness, layers=2)]
    return assembled(cushion, job, sized, closing, cuts, lines, sewn)
