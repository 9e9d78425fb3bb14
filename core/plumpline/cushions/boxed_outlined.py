"""Boxed covers of other straight-sided outlines: trapezoids, bays, T- and L-shaped seats, with a band around them."""

from __future__ import annotations

from dataclasses import replace

from plumpline.cushions.boxing import CLOSED_AT, boxed_with
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.corners import not_tapered
from plumpline.cushions.made import Made
from plumpline.cushions.outline_corners import corner_lines_of
from plumpline.cushions.outlined import (
    cannot_be_made,
    faces_of,
    folds_across,
    nowhere_across,
    outlined,
    stitched_sides,
)
from plumpline.cushions.panels import back_side, off_the_face
from plumpline.cushions.ring import Joined, Ring, returns_of, returns_too_far
from plumpline.cushions.tracing import Traced, side_called, trace, trace_lines
from plumpline.figures import counted
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem


def boxed_outlined(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made; it closes at the back unless it is said."""
    traced = trace(cushion, job, ("thickness",))
    if not isinstance(traced, Traced):
        return traced
    said = cushion.cover.closure.side
    side = back_side(traced.stitched) if said is None else said
    sides, seam, finished = stitched_sides(traced), cushion.cover.seam, traced.sized.finished
    beside = min(sides[side - 1], sides[(side + 1) % len(sides)])
    returns = returns_of(cushion, job, beside)
    allowances = [seam] * len(sides)
    problems = [*cannot_be_made(traced, allowances, job), *not_tapered(traced.cushion)]
    problems += off_the_face(cushion, "sides", sides[side], finished["thickness"])
    called = side_called(side, len(sides))
    where = {
        "bottom": f"in the seam of the back at side {called}",
        "boxing": f"in its band of the boxing, at {called}",
        "back": "across the back",
    }
    folds = folds_across(traced, job)
    edges = {
        "bottom": sides[side],
        "boxing": sides[side] + 2 * returns,
        "back": folds.across if folds else finished["width"],
    }
    closing = closing_of(cushion, job, CLOSED_AT, edges, finished["length"], where)
    if not isinstance(closing, Closing):
        return problems + closing
    closing = replace(closing, folds=folds, returns=returns)
    problems += returns_too_far(cushion, job, closing, beside, ", or close the cover at another side")
    problems += nowhere_across(traced, closing, job)
    if problems:
        return problems
    ring = _ring(traced, closing, sides, side)
    made = boxed_with(
        ring, faces_of(traced, allowances, side), _lines(traced, ring, sides, job), traced.cushion, job, traced.sized,
        closing,
    )  # fmt: skip
    return outlined(made, traced, side)


def _ring(traced: Traced, closing: Closing, sides: tuple[int, ...], side: int) -> Ring:
    """The stretches of the boxing from corner to corner, from the closing side on.

    A zip band takes that side and what it returns of the two beside it.
    """
    boxing = traced.cushion.cover.boxing
    around: tuple[int, ...] = (*sides[side:], *sides[:side])
    zip_band: tuple[int, ...] = ()
    if closing.at == "boxing":
        after, *between, before = around[1:]
        around = (after - closing.returns, *between, before - closing.returns)
        zip_band = (closing.returns, sides[side], closing.returns)
    width, length, thickness = traced.sized.finished.lengths
    joined: Joined = "at every corner" if boxing.kind == "front-and-sides" else "as the cloth asks"
    return Ring(around, zip_band, thickness, max(width, length), "sides", joined)


def _lines(traced: Traced, ring: Ring, sides: tuple[int, ...], job: Job) -> list[str]:
    units, seam = job.units, traced.cushion.cover.seam
    allowed, high, whole = (write_length(nm, units) for nm in (seam, ring.thickness + 2 * seam, ring.length))
    around = counted(len(sides), "side", "sides")
    return [
        *trace_lines(traced, job),
        f"Seams {allowed} at every edge: the plates are cut by their outline, the boxing {high} high.",
        *corner_lines_of(traced, [seam], job),
        f"Once round the plates: {around} together {whole}.",
    ]
