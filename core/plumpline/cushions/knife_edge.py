"""Knife-edge covers: two equal panels sewn face to face, closed by hand at the bottom."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from plumpline.cloth import cut_across, cut_along
from plumpline.cushions.fit import Fit, Pad, fit_of, pad_for
from plumpline.job import NM_PER_CM, Cloth, Cover, Cushion, Face, Job, name_of
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.pieces import Mark, Piece, Point
from plumpline.problems import Problem


@dataclass(frozen=True)
class KnifeEdge:
    """One entry worked out: the finished size, the pad, the opening and the two panels; lengths in nm."""

    cushion: Cushion
    fit: Fit
    pad: Pad
    width: int
    length: int
    opening: int
    pieces: tuple[Piece, ...]


def knife_edge(cushion: Cushion, job: Job) -> KnifeEdge | list[Problem]:
    """The cover worked out, or everything that keeps it from being made."""
    problems = _missing(cushion) + _contradictions(cushion)
    if problems:
        return problems
    fit = fit_of(cushion, job)
    width, length = _finished(cushion, fit)
    opening = cushion.cover.opening or usual_opening(width, cushion, job.units)
    problems = _impossible(cushion, job, fit, width, length, opening)
    if problems:
        return problems
    pad = pad_for(width + fit.width, length + fit.length, job)
    cover = cushion.cover
    faces = (("front", cover.front), ("back", cover.back))
    panels = tuple(_panel(cushion, job, part, face, width, length, opening) for part, face in faces)
    problems = _impossible_corners(cushion, panels)
    return problems or KnifeEdge(cushion, fit, pad, width, length, opening, panels)


def _missing(cushion: Cushion) -> list[Problem]:
    at, who = f"{cushion.at}/insert", name_of(cushion)
    problems = []
    if cushion.insert.width is None:
        problems.append(Problem(f"{at}/width", "missing-width", f"Measure the width of {who}."))
    if cushion.insert.length is None:
        problems.append(Problem(f"{at}/length", "missing-length", f"Measure the height of {who}."))
    return problems


def _contradictions(cushion: Cushion) -> list[Problem]:
    measured_finished = cushion.insert.measured in ("old-cover", "opening")
    problems = []
    if measured_finished and (cushion.cover.smaller_width or cushion.cover.smaller_length):
        text = "The finished size was measured, so nothing comes off it: make “smaller by” 0, or measure the pad."
        problems.append(Problem(f"{cushion.at}/cover/smaller_by", "rules-contradict", text))
    if measured_finished and cushion.size_from == "finished":
        text = "Either the finished size is wanted or something was measured: choose one of the two."
        problems.append(Problem(f"{cushion.at}/insert/measured", "rules-contradict", text))
    if cushion.insert.clearance and cushion.insert.measured != "opening":
        text = "A clearance belongs to an opening: say that the opening was measured, or take it out."
        problems.append(Problem(f"{cushion.at}/insert/clearance", "rules-contradict", text))
    return problems


def _finished(cushion: Cushion, fit: Fit) -> Point:
    insert = cushion.insert
    across, up = (insert.clearance, insert.clearance) if insert.measured == "opening" else (fit.width, fit.length)
    if cushion.size_from == "finished":
        across, up = 0, 0
    return (insert.width or 0) - across, (insert.length or 0) - up


def _impossible(cushion: Cushion, job: Job, fit: Fit, width: int, length: int, opening: int) -> list[Problem]:
    problems = []
    for size, word, by in ((width, "wide", fit.width), (length, "high", fit.length)):
        if size <= 0:
            less = write_length(by or cushion.insert.clearance, job.units)
            text = f"Made {less} smaller, nothing is left of {name_of(cushion)}: it would not be {word} at all."
            at = "insert/clearance" if cushion.insert.clearance else "cover/smaller_by"
            problems.append(Problem(f"{cushion.at}/{at}", "nothing-left", text))
    problems = problems[:1] + _off_the_face(cushion, width, length)
    if not problems and opening > width:
        given, edge = write_length(opening, job.units), write_length(width, job.units)
        text = f"The opening of {given} is longer than the edge it lies in, {edge}: make it shorter."
        problems.append(Problem(f"{cushion.at}/cover/closure/opening", "opening-too-long", text))
    return problems


def _off_the_face(cushion: Cushion, width: int, length: int) -> list[Problem]:
    problems = []
    for part, face in (("front", cushion.cover.front), ("back", cushion.cover.back)):
        for name, offset, side in (("across", face.offset_across, width), ("along", face.offset_along, length)):
            if face.pattern == "centred" and 2 * abs(offset) > side > 0:
                text = f"So far from the middle the motif is not on the {part} any more: make the offset smaller."
                at = f"{cushion.at}/cover/{part}/offset/{name}"
                problems.append(Problem(at, "rules-contradict", text))
    return problems


def usual_opening(side: int, cushion: Cushion, units: str) -> int:
    """The opening for a closing edge of `side` nm, up to a half inch or a centimetre and never longer than the edge.

    Common practice: about 8 in on an 18 in cover for a soft pad, the finished side less 5 in for a firm one.
    """
    firm = cushion.insert.fill in ("firm", "foam")
    wanted = side - 5 * NM_PER_INCH if firm else side * 8 // 18
    step = NM_PER_INCH // 2 if units == "in" else NM_PER_CM
    return min(side, max(step, -(-wanted // step) * step))


def _panel(cushion: Cushion, job: Job, part: str, face: Face, width: int, length: int, opening: int) -> Piece:
    cover, cloth = cushion.cover, job.cloth(face.cloth)
    plain = width + 2 * cover.side_seam, length + cover.seam + cover.closing_seam
    upright = cut_across(cloth, plain[0], job.grid), cut_along(cloth, plain[1], job.grid)
    aside = cut_across(cloth, plain[1], job.grid), cut_along(cloth, plain[0], job.grid)
    cut = (aside[1], aside[0]) if cloth.lies_aside else upright
    return Piece(
        id=f"{cushion.id}.{part}",
        cushion=cushion.id,
        at=cushion.at,
        part=part,
        face=face,
        count=cushion.quantity,
        width=cut[0],
        length=cut[1],
        upright=upright,
        aside=aside,
        aim=_aim(cover, cloth, face, upright, length),
        seam=cover.seam,
        outline=_outline(cover, cut),
        marks=_marks(cover, job, cloth, cut, opening),
    )


def _aim(cover: Cover, cloth: Cloth, face: Face, upright: Point, length: int) -> Point:
    """Where the motif is to stand: the centre of the finished face, and the offset from there as it is before a wash.

    What the grid adds is shared by the two edges, so the face stays in the middle of its panel.
    """
    plain = length + cover.seam + cover.closing_seam
    lower = Fraction(upright[1] * (2 * cover.closing_seam + length), 2 * plain)
    across, along = cut_across(cloth, face.offset_across, 0), cut_along(cloth, face.offset_along, 0)
    return upright[0] // 2 + across, int(lower) + along


def _runs(cover: Cover, cut: Point) -> Point:
    run = cover.corners.run
    if isinstance(run, Fraction):
        return int(cut[0] * run), int(cut[1] * run)
    return run, run


def _outline(cover: Cover, cut: Point) -> tuple[Point, ...]:
    (w, h), d = cut, cover.corners.depth
    if cover.corners.kind == "square":
        return (0, 0), (w, 0), (w, h), (0, h)
    a, b = _runs(cover, cut)
    lower = ((0, b), (d, d), (a, 0), (w - a, 0), (w - d, d), (w, b))
    return (*lower, (w, h - b), (w - d, h - d), (w - a, h), (a, h), (d, h - d), (0, h - b))


def _marks(cover: Cover, job: Job, cloth: Cloth, cut: Point, opening: int) -> tuple[Mark, ...]:
    w, h = cut
    cut_to_wash = cut_along if cloth.lies_aside else cut_across
    gap = cut_to_wash(cloth, opening, 0) // 2
    marks = [
        Mark("top", "Top edge", ((w // 2, h),)),
        Mark("centre", "Middle of each edge", ((w // 2, 0), (w, h // 2), (w // 2, h), (0, h // 2))),
        Mark(
            "opening",
            f"Leave {write_length(opening, job.units)} open",
            ((w // 2 - gap, 0), (w // 2 + gap, 0)),
        ),
    ]
    if cover.corners.kind == "tapered":
        marks.extend(_taper_marks(cover, job, cut))
    return tuple(marks)


def _taper_marks(cover: Cover, job: Job, cut: Point) -> list[Mark]:
    (w, h), d = cut, cover.corners.depth
    a, b = _runs(cover, cut)
    text = f"In {write_length(d, job.units)} at the corner, from {write_length(a, job.units)} along the side"
    if a != b:
        text += f" and {write_length(b, job.units)} up the edge"
    corners = (
        ((a, 0), (d, d), (0, b)),
        ((w - a, 0), (w - d, d), (w, b)),
        ((w - a, h), (w - d, h - d), (w, h - b)),
        ((a, h), (d, h - d), (0, h - b)),
    )
    return [Mark("taper", text, points) for points in corners]


def _impossible_corners(cushion: Cushion, panels: tuple[Piece, ...]) -> list[Problem]:
    cover = cushion.cover
    if cover.corners.kind == "square":
        return []
    sides = [
        side
        for panel in panels
        for side in zip(_runs(cover, (panel.width, panel.length)), (panel.width, panel.length), strict=True)
    ]
    if all(cover.corners.depth < run and 2 * run <= side for run, side in sides):
        return []
    text = "The taper has to start further from the corner than it is deep, and no further than the middle."
    return [Problem(f"{cushion.at}/cover/corners/run", "corner-too-large", text)]
