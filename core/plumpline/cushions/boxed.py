"""Boxed covers of square and oblong pads: two plates with a band of the pad's thickness around them."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cushions.boxing import CLOSED_AT, PLATES, boxed_with
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.corners import corner_lines, corners_too_large, edge_around, not_tapered
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Edges, Part, off_the_face
from plumpline.cushions.ring import Edge, Joined, Ring, returns_of, returns_too_far
from plumpline.cushions.sizes import Sized, size_up
from plumpline.figures import bare, size
from plumpline.job import Cover, Cushion, Job
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.problems import Problem

_FITTED = ("width", "length")


def boxed(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made."""
    sized = size_up(cushion, job, _FITTED, ("thickness",))
    if not isinstance(sized, Sized):
        return sized
    width, length, thickness = sized.finished.lengths
    bottom, right, _, _ = edge_around(cushion, sized.finished)
    returns = returns_of(cushion, job, right)
    band = bottom + 2 * returns
    problems = [problem for part in PLATES for problem in off_the_face(cushion, part, width, length)]
    problems += off_the_face(cushion, "sides", width, thickness) + corners_too_large(cushion, job, sized.finished)
    problems += not_tapered(cushion)
    closing = closing_of(cushion, job, CLOSED_AT, {"bottom": width, "back": width, "boxing": band}, length)
    if not isinstance(closing, Closing):
        return problems + closing
    closing = replace(closing, returns=returns)
    problems += returns_too_far(cushion, job, closing, right)
    if problems:
        return problems
    ring = _ring(cushion, closing, sized.finished)
    front, back = (_plate(part, cushion.cover, sized.finished) for part in PLATES)
    lines = [_seam_line(cushion.cover, front, ring, job), *corner_lines(cushion, job)]
    lines.append(_around_line(cushion, ring, sized.finished, job))
    return boxed_with(ring, (front, back), lines, cushion, job, sized, closing)


def _ring(cushion: Cushion, closing: Closing, finished: Measures) -> Ring:
    """The stretches of the boxing from corner to corner; a zip band takes one side and what it returns of two."""
    width, length, thickness = finished.lengths
    bottom, right, top, left = edge_around(cushion, finished)
    around: tuple[int, ...] = (bottom, right, top, left)
    edges: tuple[Edge, ...] = ("bottom", "", "top", "")
    zip_band: tuple[int, ...] = ()
    returns = closing.returns
    if closing.at == "boxing":
        around, edges, zip_band = (right - returns, top, left - returns), ("", "top", ""), (returns, bottom, returns)
    corners = cushion.cover.boxing.kind == "front-and-sides" or cushion.cover.face("sides").goes_on
    joined: Joined = "at every corner" if corners else "as the cloth asks"
    return Ring(around, zip_band, thickness, max(width, length), "width", joined, edges)


def _around_line(cushion: Cushion, ring: Ring, finished: Measures, job: Job) -> str:
    units, radius = job.units, cushion.cover.corners.radius
    sides = f"2 × {bare(finished['width'], units)} + 2 × {write_length(finished['length'], units)}"
    if cushion.cover.corners.kind == "rounded":
        sides += f", less 8 × {write_length(radius, units)}, and 2 π × {write_length(radius, units)}"
    return f"Once round the plates: {sides} = {write_length(ring.length, units)}."


def _plate(name: str, cover: Cover, finished: Measures) -> Part:
    edges = Edges(cover.side_seam, cover.side_seam, cover.seam, cover.seam)
    return Part(name, name, _FITTED, finished["width"], finished["length"], edges)


def _seam_line(cover: Cover, plate: Part, ring: Ring, job: Job) -> str:
    high = write_length(ring.thickness + 2 * cover.seam, job.units)
    seam, plates = write_length(cover.seam, job.units), size(*plate.plain, job.units)
    return f"Seams {seam} at every edge: plates {plates}, boxing {high} high."
