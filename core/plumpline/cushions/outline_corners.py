"""Corners of straight-sided outlines: rounded or tapered where they point outwards, at whatever angle."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction

from plumpline.cushions.panels import Cut, Drawn, Part, boxed_in, cut_line, side_marks
from plumpline.cushions.tracing import Traced, side_called
from plumpline.figures import letters_for, listed
from plumpline.geometry import ONE, distance, outset, sides_of
from plumpline.job import Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.pieces import Mark, Outline, Piece, Point
from plumpline.problems import Problem
from plumpline.rounded import UNSEEN, RoundedOutline, Turn, rounded_outwards

# A corner that turns by less than a twelfth of a circle has no ear that could be tapered away: tan 15°, from below.
_BLUNT = Fraction(267, 1000)
# What a radius that would fit is told in: 1/8 in, or 1 mm.
_TOLD_IN = {"in": NM_PER_INCH // 8, "cm": 10**6, "mm": 10**6}


def line_of(stitched: Outline, cushion: Cushion, beyond: int = 0) -> RoundedOutline:
    """The stitching line of a cover with this sharp outline, or what lies so far beyond it, with its corners rounded.

    The radius is that of the outermost seam: within a flange it is smaller by the flange.
    """
    corners, flange = cushion.cover.corners, cushion.cover.edge.beyond
    radius = max(0, corners.radius - flange + beyond) if corners.kind == "rounded" else 0
    return rounded_outwards(outset(stitched, [beyond] * len(stitched)) if beyond else stitched, radius)


# ---- rounded --------------------------------------------------------------------------------------------------------


def too_round(traced: Traced, allowances: Sequence[int], job: Job) -> list[Problem]:
    """The problem of rounded corners that do not fit on their sides, or would run into a corner that turns inwards."""
    cushion = traced.cushion
    if cushion.cover.corners.kind != "rounded":
        return []
    line = line_of(traced.stitched, cushion, cushion.cover.edge.beyond)
    why = _does_not_fit(line, allowances, job)
    if not why:
        return []
    most = write_length(_largest(line, allowances, job), job.units)
    radius = write_length(cushion.cover.corners.radius, job.units)
    text = f"Corners rounded by {radius} {why}: round them by {most} at most."
    return [Problem(f"{cushion.at}/cover/corners/radius", "corner-too-large", text)]


def _does_not_fit(line: RoundedOutline, allowances: Sequence[int], job: Job) -> str:
    """What is in the way of the rounds of a line, in words; nothing where they fit."""
    count, units = len(line.corners), job.units
    for number, room in enumerate(_rooms(line, allowances)):
        takes = line.taken[number] + line.taken[(number + 1) % count]
        if takes > room + UNSEEN:
            side = side_called(number, count)
            return f"take {write_length(takes, units)} of side {side}, which has {write_length(room, units)}"
    cut_off = [number for number, corner in enumerate(line.corners) if _is_cut_off(line, corner)]
    return f"would run into corner {letters_for(cut_off[0] + 1)}" if cut_off else ""


def _rooms(line: RoundedOutline, allowances: Sequence[int]) -> Iterator[int]:
    """What each side has for the rounds at its ends, in nm: all of it, but for what the cut line loses at a clip."""
    cut = outset(line.corners, allowances)
    for number, (one, other) in enumerate(sides_of(line.corners)):
        turn, after = line.turns[number], (number + 1) % len(line.corners)
        start = 0 if line.radii[number] else max(0, _ahead(one, cut[number], turn.after))
        end = 0 if line.radii[after] else max(0, _ahead(cut[after], other, turn.after))
        yield distance(one, other) - start - end


def _ahead(one: Point, other: Point, way: Point) -> int:
    """How far one point lies behind another in a direction of length `ONE`."""
    return ((other[0] - one[0]) * way[0] + (other[1] - one[1]) * way[1]) // ONE


def _is_cut_off(line: RoundedOutline, corner: Point) -> bool:
    """Whether one of its corners lies where another is rounded away: beyond its arc, between its sides."""
    for turn, radius, taken in zip(line.turns, line.radii, line.taken, strict=True):
        along, aside = _ahead(turn.at, corner, turn.after), _ahead(turn.at, corner, _inwards(turn.after))
        back, across = _ahead(corner, turn.at, turn.before), _ahead(turn.at, corner, _inwards(turn.before))
        if not (radius and aside > 0 and across > 0 and along < taken and back < taken):
            continue
        x, y = turn.centre(radius)
        if (corner[0] - x) ** 2 + (corner[1] - y) ** 2 > radius**2:
            return True
    return False


def _inwards(way: Point) -> Point:
    """Square to a direction, to its left."""
    return -way[1], way[0]


def _largest(line: RoundedOutline, allowances: Sequence[int], job: Job) -> int:
    """The largest radius that fits, on the grid it is told in."""
    step = _TOLD_IN[job.units]
    fits, too_large = 0, max(line.radii) // step + 1
    while too_large - fits > 1:
        middle = (fits + too_large) // 2
        if _does_not_fit(rounded_outwards(line.corners, middle * step), allowances, job):
            too_large = middle
        else:
            fits = middle
    return fits * step


# ---- tapered --------------------------------------------------------------------------------------------------------


def too_tapered(piece: Piece, cushion: Cushion, job: Job) -> list[Problem]:
    """Why a face cannot be tapered as it is asked for."""
    if cushion.cover.corners.kind != "tapered":
        return []
    return list(_Tapers(piece.outline, piece.allowances, cushion).problems(job))


def tapered(cuts: Sequence[Cut], cushion: Cushion, job: Job) -> list[Cut]:
    """The faces of a cover, the front first, with their corners tapered if they are to be.

    On the edge that is cut, a taper starts so far from a corner along both sides, and its corner lies `depth` within
    both. Corners that turn inwards, or hardly at all, have no ears and stay as they are. The pieces of a back in two
    come from `with_tapers`.
    """
    if cushion.cover.corners.kind != "tapered":
        return list(cuts)
    front = cuts[0].piece
    text = _Tapers(front.outline, front.allowances, cushion).text(job)
    return [cut if cut.part.drawn else replace(cut, piece=_tapered(cut.piece, text, cushion)) for cut in cuts]


def with_tapers(back: Part, front: Part, cushion: Cushion, job: Job) -> Part:
    """The back, still whole, with its corners tapered if they are to be and can be, so that it can be cut in two."""
    face = _Tapers(cut_line(front), front.allowances, cushion)
    if cushion.cover.corners.kind != "tapered" or any(face.problems(job)):
        return back
    outline, allowances, tapers = _Tapers(cut_line(back), back.allowances, cushion).cut(face.text(job))
    stitched = outset(outline, [-allowance for allowance in allowances])
    drawn = Drawn(outline, allowances, (*side_marks(back), *tapers), folded=False)
    width, length, edges = boxed_in(stitched, outline)
    return replace(
        back, width=width, length=length, edges=edges, centre=back.middle, outline=stitched, radii=(), drawn=drawn
    )


@dataclass(frozen=True)
class _Taper:
    """The points that a taper starts at before and after a corner, and its own corner between them; in nm."""

    start: Point
    corner: Point
    end: Point


class _Tapers:
    """The corners of what is cut with sharp corners, and the tapers that are cut at them."""

    def __init__(self, outline: Outline, allowances: tuple[int, ...], cushion: Cushion) -> None:
        self._outline, self._allowances, self._cushion = outline, allowances, cushion
        self._depth, run = cushion.cover.corners.depth, cushion.cover.corners.run
        self._sides = [distance(*side) for side in sides_of(outline)]
        self._runs = [int(side * run) if isinstance(run, Fraction) else run for side in self._sides]
        self._turns = RoundedOutline(outline, (0,) * len(outline)).turns
        self._inner = outset(outline, [-self._depth] * len(outline))

    def _taper(self, number: int) -> _Taper | None:
        turn = self._turns[number]
        if turn.half_tangent < _BLUNT:
            return None
        return _Taper(
            start=_rounded(turn.foot(-self._runs[number - 1], turn.before)),
            corner=self._inner[number],
            end=_rounded(turn.foot(self._runs[number], turn.after)),
        )

    def _starts_at(self, side: int) -> bool:
        """Whether a taper starts at either end of a side."""
        return any(self._turns[end % len(self._turns)].half_tangent >= _BLUNT for end in (side, side + 1))

    def problems(self, job: Job) -> Iterator[Problem]:
        """Why these tapers cannot be: past the middle of a side, or too deep for where they start."""
        at, count, units = f"{self._cushion.at}/cover/corners", len(self._sides), job.units
        for number, (side, run) in enumerate(zip(self._sides, self._runs, strict=True)):
            if 2 * run > side and self._starts_at(number):
                starts, long, half = (write_length(nm, units) for nm in (run, side, side // 2))
                text = f"Side {side_called(number, count)} is cut {long}: tapers that start {starts} from its ends "
                text += f"would meet. Start them {half} from the corner at most."
                yield Problem(f"{at}/run", "corner-too-large", text)
                return
        for number, turn in enumerate(self._turns):
            most = _most_deep(turn, self._runs[number - 1], self._runs[number])
            if turn.half_tangent >= _BLUNT and self._depth >= most:
                deep, starts, less = (
                    write_length(nm, units)
                    for nm in (self._depth, min(self._runs[number - 1], self._runs[number]), int(most))
                )
                text = f"At corner {letters_for(number + 1)} a taper that starts {starts} along is less than {less} "
                text += f"deep, not {deep}: make it less deep, or start it further from the corner."
                yield Problem(f"{at}/depth", "corner-too-large", text)
                return

    def text(self, job: Job) -> str:
        """How the tapers are chalked; sides that they start at otherwise are named."""
        units, count = job.units, len(self._sides)
        runs = [number for number in range(count) if self._starts_at(number)]
        told = [write_length(self._runs[n], units) for n in runs]
        along = listed([f"{run} along {side_called(n, count)}" for n, run in zip(runs, told, strict=True)])
        start = f"{told[0]} along the side" if len(set(told)) == 1 else along
        return f"In {write_length(self._depth, units)} at the corner, from {start}"

    def cut(self, text: str) -> tuple[Outline, tuple[int, ...], tuple[Mark, ...]]:
        """What is cut with its tapers, the allowance of each side of it, and the marks of its tapers."""
        outline: list[Point] = []
        allowances: list[int] = []
        marks: list[Mark] = []
        for number, point in enumerate(self._outline):
            taper = self._taper(number)
            before, after = self._allowances[number - 1], self._allowances[number]
            outline += [taper.start, taper.corner, taper.end] if taper else [point]
            allowances += [before, after, after] if taper else [after]
            marks += [Mark("taper", text, (taper.start, taper.corner, taper.end))] if taper else []
        # Tapers that meet in the middle of a side have one point there.
        apart = [distance(*side) > UNSEEN for side in sides_of(outline)]
        points = tuple(point for point, kept in zip(outline, apart, strict=True) if kept)
        allowed = tuple(allowance for allowance, kept in zip(allowances, apart, strict=True) if kept)
        return points, allowed, tuple(marks)


def _tapered(piece: Piece, text: str, cushion: Cushion) -> Piece:
    """The piece with its tapers, its seam as far inside of them as inside of its sides."""
    outline, allowances, marks = _Tapers(piece.outline, piece.allowances, cushion).cut(text)
    seam = outset(outline, [-allowance for allowance in allowances])
    cut = replace(piece, outline=outline, allowances=allowances, stitched=seam, marks=(*piece.marks, *marks))
    return _within_its_box(cut)


def _within_its_box(piece: Piece) -> Piece:
    """The piece from the lower left corner of what is left of it: a sharp corner tapered does not reach as far."""
    (left, right), (low, high) = ((min(places), max(places)) for places in zip(*piece.outline, strict=True))
    across, up = piece.upright

    def moved(points: Outline) -> Outline:
        return tuple((x - left, y - low) for x, y in points)

    return replace(
        piece.resized(right - left, high - low),
        aim=(piece.aim[0] - left * across // piece.width, piece.aim[1] - low * up // piece.length),
        outline=moved(piece.outline),
        stitched=moved(piece.stitched),
        marks=tuple(replace(mark, points=moved(mark.points)) for mark in piece.marks),
    )


def _rounded(point: tuple[Fraction, Fraction]) -> Point:
    return round(point[0]), round(point[1])


def _most_deep(turn: Turn, before: int, after: int) -> Fraction:
    """How deep a taper would have to be to hollow its corner out, or to start behind itself, in nm.

    With runs a and b at an angle of α between the sides, its corner comes to lie on the straight line from start to
    end at a · b · sin α / (a + b): the two triangles it divides that of a and b into have their areas.
    """
    flat = Fraction(before * after * turn.sine, (before + after) * ONE)
    return min(flat, min(before, after) / turn.half_tangent)


# ---- in words -------------------------------------------------------------------------------------------------------


def corner_lines_of(traced: Traced, allowances: Sequence[int], job: Job) -> Iterator[str]:
    """How the corners of an outline are cut, and which of them stay as they are."""
    cushion, units = traced.cushion, job.units
    corners, line = cushion.cover.corners, line_of(traced.stitched, cushion)
    inwards = [number for number, turn in enumerate(line.turns) if turn.sine < 0]
    if corners.kind == "square":
        return
    if corners.kind == "rounded":
        seams = list(dict.fromkeys(allowances))
        cut = listed([write_length(corners.radius + seam, units) for seam in seams])
        yield f"Corners rounded by {write_length(corners.radius, units)} where they are stitched, cut by {cut}."
        if len(seams) > 1:
            yield "At both ends of the closing edge the allowance grows evenly round the corner."
        whole, sewn = sum(distance(*side) for side in sides_of(line.corners)), sum(line.sides)
        less, left = write_length(whole - sewn, units), write_length(sewn, units)
        yield f"Rounding takes {less} off the sides: once round, {write_length(whole, units)} less {less} is {left}."
    else:
        blunt = [number for number, turn in enumerate(line.turns) if 0 <= turn.half_tangent < _BLUNT]
        if blunt:
            yield f"{_named(blunt)} too blunt to have an ear, and {_stays(blunt)}."
    if inwards:
        turns = "turns" if len(inwards) == 1 else "turn"
        yield f"{_named(inwards, turns)} inwards and {_stays(inwards)}, clipped up to the seam."


def _named(corners: Sequence[int], verb: str = "") -> str:
    one = len(corners) == 1
    letters = listed([letters_for(number + 1) for number in corners])
    return f"{'Corner' if one else 'Corners'} {letters} {verb or ('is' if one else 'are')}"


def _stays(corners: Sequence[int]) -> str:
    return f"{'stays' if len(corners) == 1 else 'stay'} as {'it is' if len(corners) == 1 else 'they are'}"
