"""Bolsters: a body rolled round the pad, with a disc at each of its ends or gathered over them."""

from __future__ import annotations

from plumpline.cushions.assembly import assembled, cut_panels
from plumpline.cushions.closing import Closing, closing_of
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Edges, Part, off_the_face, one_seam, round_part
from plumpline.cushions.sizes import Sized, size_up
from plumpline.cushions.stitching import Sewn
from plumpline.figures import bare, size
from plumpline.geometry import circumference
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

_MEASURES = ("diameter", "length")
_CLOSED_AT = {"hand-sewn": ("bottom",), "zip": ("bottom",)}


def bolster(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out, or everything that keeps it from being made.

    The body is cut length + 2 seams by π × diameter + 2 seams, flat ends diameter + 2 seams: the seams come after the
    multiplication. Gathered ends are the body itself, which reaches to the middle of each end and has a casing there
    (common practice, from memory). It is closed in the seam along the body.
    """
    sized = size_up(cushion, job, _MEASURES)
    if not isinstance(sized, Sized):
        return sized
    across, length = sized.finished.lengths
    around, units = circumference(across), job.units
    problems = _off_its_faces(cushion, across, length)
    closing = closing_of(cushion, job, _CLOSED_AT, {"bottom": length}, where={"bottom": "in the seam along the body"})
    problems += one_seam(cushion) + ([] if isinstance(closing, Closing) else closing)
    if problems or not isinstance(closing, Closing):
        return problems
    make = _gathered if cushion.cover.ends == "gathered" else _flat
    parts, lines = make(cushion, closing, across, length, job)
    lines = [f"Once round the pad: π × {bare(across, units)} = {write_length(around, units)}.", *lines]
    sewn = [Sewn(length + 2 * around, layers=2)]
    return assembled(cushion, job, sized, closing, cut_panels(parts, cushion, closing, job), lines, sewn)


def _flat(cushion: Cushion, closing: Closing, across: int, length: int, job: Job) -> tuple[list[Part], list[str]]:
    """The body and its two discs, and how they come about."""
    seam = cushion.cover.seam
    body = _body(length, across, seam, closing)
    discs = [round_part(f"end-{number}", "sides", across, seam, "freely") for number in (1, 2)]
    ends = write_length(discs[0].plain[0], job.units)
    allowed = _seams(cushion, closing, job)
    return [body, *discs], [f"{allowed}: body {size(*body.plain, job.units)}, ends {ends} across."]


def _gathered(cushion: Cushion, closing: Closing, across: int, length: int, job: Job) -> tuple[list[Part], list[str]]:
    """The body alone, which is gathered over both ends, and how it comes about."""
    casing = cushion.cover.closure.hem
    body = _body(length + across, across, casing, closing)
    reach, hem = write_length(across // 2, job.units), write_length(casing, job.units)
    return [body], [
        f"The body reaches over each end to its middle, {reach}, and has {hem} there for a casing.",
        f"{_seams(cushion, closing, job)}: body {size(*body.plain, job.units)}.",
    ]


def _seams(cushion: Cushion, closing: Closing, job: Job) -> str:
    seam = f"Seams {write_length(cushion.cover.seam, job.units)} at every edge"
    if closing.allowance == cushion.cover.seam:
        return seam
    return f"{seam}, {write_length(closing.allowance, job.units)} along the body"


def _body(length: int, across: int, ends: int, closing: Closing) -> Part:
    """The body, so long, once round a pad so far across, and with that allowance at both ends."""
    edges = Edges(ends, ends, closing.allowance, closing.allowance)
    return Part("body", "front", ("length", "diameter"), length, circumference(across), edges, opens=("bottom", "top"))


def _off_its_faces(cushion: Cushion, across: int, length: int) -> list[Problem]:
    sizes = {"front": (length, circumference(across)), "sides": (across, across)}
    faces = [part for part, _ in cushion.cover.faces if part in sizes]
    return [problem for part in faces for problem in off_the_face(cushion, part, *sizes[part])]
