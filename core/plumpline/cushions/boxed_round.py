"""Boxed covers of round pads: two discs with a band of the pad's thickness around them."""

from __future__ import annotations

from plumpline.cushions.boxing import CLOSED_AT, PLATES, boxed_with
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.panels import off_the_face, one_seam, round_part
from plumpline.cushions.ring import Ring
from plumpline.cushions.sizes import Sized, size_up
from plumpline.figures import bare
from plumpline.geometry import circumference
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem


def boxed_round(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made.

    The ring is π × the finished diameter, measured on the stitching line: seams come after the multiplication.
    """
    sized = size_up(cushion, job, ("diameter",), ("thickness",))
    if not isinstance(sized, Sized):
        return sized
    across, thickness = sized.finished.lengths
    around, units, seam = circumference(across), job.units, cushion.cover.seam
    problems = [problem for part in PLATES for problem in off_the_face(cushion, part, across, across)]
    problems += off_the_face(cushion, "sides", around, thickness)
    edges = {"bottom": around, "back": across, "boxing": _zip_band(cushion, around)}
    closing = closing_of(cushion, job, CLOSED_AT, edges, across)
    problems += one_seam(cushion) + ([] if isinstance(closing, Closing) else closing)
    if problems or not isinstance(closing, Closing):
        return problems
    zip_band = (closing.edge,) if closing.at == "boxing" else ()
    front, back = (round_part(part, part, across, seam) for part in PLATES)
    discs, high = (write_length(nm, units) for nm in (front.plain[0], thickness + 2 * seam))
    lines = [
        f"Seams {write_length(seam, units)} all round: discs {discs} across, boxing {high} high.",
        f"Once round the discs: π × {bare(across, units)} = {write_length(around, units)}.",
    ]
    ring = Ring((around - sum(zip_band),), zip_band, thickness, across, "diameter")
    return boxed_with(ring, (front, back), lines, cushion, job, sized, closing)


def _zip_band(cushion: Cushion, around: int) -> int:
    """As long as its zip, which otherwise opens half of the ring (common practice); at most the whole of it."""
    return min(cushion.cover.closure.zip_length or around // 2, around)
