"""Seats of other outlines traced from taped sides and diagonals: whether they close, and what is stitched."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from plumpline.cushions.fit import most_apart
from plumpline.cushions.sizes import Sized, size_up
from plumpline.figures import letters_for, listed
from plumpline.geometry import distance, outset, sides_of
from plumpline.job import Cushion, Job, name_of
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.measured_corners import Closed, Doubt, Measure, Open, close, crosses_itself
from plumpline.measures import Measures
from plumpline.pieces import Edges, Outline
from plumpline.problems import Problem

# Checking measures may be so far off at least: each is read to 1/8 in, and two meet at a corner (common practice).
_READ_TWICE = NM_PER_INCH // 4
_BOX = ("width", "length")
# Less than this no tape shows.
_UNSEEN = NM_PER_INCH // 32
# So many measures in doubt are named, those nearest to what they would have to be first.
_MOST_IN_DOUBT = 3


@dataclass(frozen=True)
class Traced:
    """A straight-sided cover sized up: its entry with the size of the box around it, its outlines, how well they close.

    `taped` is the outline as it was measured, `stitched` that of the finished cover and `pad` that of its pad, each
    from the lower left corner of its own box; `off` is what the worst checking measure differs by, in nm.
    """

    cushion: Cushion
    sized: Sized
    taped: Outline
    stitched: Outline
    pad: Outline
    off: int


def side_called(number: int, count: int) -> str:
    """A side by its two corners, A the front left one: "AB"."""
    return f"{letters_for(number + 1)}{letters_for((number + 1) % count + 1)}"


def trace(cushion: Cushion, job: Job, as_it_is: tuple[str, ...] = ()) -> Traced | list[Problem]:
    """The outline of a cover, or everything that keeps it from having one; `as_it_is` as for `size_up`."""
    problems = [*_untaped(cushion), *_no_such_corners(cushion)]
    if problems:
        return problems
    closed = _closed(cushion)
    if isinstance(closed, Open):
        return list(_why_open(closed, cushion, job))
    taped = from_its_corner(closed.corners)
    size = Measures((*box_of(taped), *cushion.insert.size.only(as_it_is)))
    boxed = replace(cushion, insert=replace(cushion.insert, size=size))
    sized = size_up(boxed, job, _BOX, as_it_is)
    if not isinstance(sized, Sized):
        return sized
    stitched = _moved(taped, *(sized.finished[name] - size[name] for name in _BOX))
    if not keeps_its_sides(taped, stitched):
        text = "Made so much smaller, this outline loses a side: make it less."
        return [Problem(f"{cushion.at}/cover/smaller_by", "nothing-left", text)]
    finished = Measures((*box_of(from_its_corner(stitched)), *sized.finished.only(as_it_is)))
    return Traced(
        cushion=boxed,
        sized=replace(sized, finished=finished),
        taped=taped,
        stitched=from_its_corner(stitched),
        pad=from_its_corner(_moved(stitched, *(sized.fit.by[name] for name in _BOX))),
        off=closed.off,
    )


def _untaped(cushion: Cushion) -> Iterator[Problem]:
    sides, at, who = cushion.insert.sides, f"{cushion.at}/insert/sides", name_of(cushion)
    if len(sides) < 3:
        yield Problem(at, "missing-sides", f"Measure the sides of {who}, one after the other from the front left.")
        return
    for number, side in enumerate(sides):
        if side is None:
            called = side_called(number, len(sides))
            yield Problem(f"{at}/{number}", "missing-sides", f"Measure the side {called} of {who}.")


def _no_such_corners(cushion: Cushion) -> Iterator[Problem]:
    insert, at = cushion.insert, f"{cushion.at}/insert"
    count = len(insert.sides)
    last = letters_for(max(count, 1))
    for number, (one, other, _) in enumerate(insert.diagonals):
        if max(one, other) >= count:
            text = f"This outline has no such corner: its corners are A to {last}."
            yield Problem(f"{at}/diagonals/{number}", "no-such-corner", text)
        elif (one - other) % count in (0, 1, count - 1):
            text = "That is a side: a diagonal leads from a corner to one that is not beside it."
            yield Problem(f"{at}/diagonals/{number}", "no-such-corner", text)
    for number, corner in enumerate(insert.notches):
        if corner >= count:
            text = f"This outline has no such corner to turn inwards: its corners are A to {last}."
            yield Problem(f"{at}/notches/{number}", "no-such-corner", text)
    if (cushion.cover.closure.side or 0) >= max(count, 1):
        text = f"This outline has no such side: its sides start at the corners A to {last}."
        yield Problem(f"{cushion.at}/cover/closure/side", "no-such-corner", text)


def _closed(cushion: Cushion) -> Closed | Open:
    insert = cushion.insert
    sides = [side for side in insert.sides if side is not None]
    taped = [Measure(one, other, length) for one, other, length in insert.diagonals if length is not None]
    return close(sides, taped, insert.notches, max(most_apart(insert.fill), _READ_TWICE))


def _why_open(found: Open, cushion: Cushion, job: Job) -> Iterator[Problem]:
    """Why the sides do not close, each measure in doubt at its own field with what it would have to be."""
    at, who = f"{cushion.at}/insert", name_of(cushion)
    corner = letters_for((found.corner or 0) + 1)
    for doubt in found.doubts[:_MOST_IN_DOUBT]:
        yield _doubted(doubt, cushion, job)
    if found.code == "not-held":
        text = f"The sides alone do not hold {who}: tape a diagonal to corner {corner} too."
        yield Problem(_next_diagonal(cushion), "missing-diagonal", text)
    elif found.code == "turns-inward":
        text = f"By these measures corner {corner} of {who} turns inwards: say so, or tape them again."
        yield Problem(f"{at}/notches", "sides-do-not-close", text)
    elif found.code == "turns-outward":
        text = f"By these measures corner {corner} of {who} does not turn inwards: tape them again, or say so."
        yield Problem(f"{at}/notches", "sides-do-not-close", text)
    elif not found.doubts:
        text = f"More than one measure of {who} must be wrong, they contradict each other so: tape them all again."
        yield Problem(f"{at}/sides", "sides-do-not-close", text)


def _next_diagonal(cushion: Cushion) -> str:
    """Where the next diagonal is asked for: the first that is named and not taped yet."""
    at = f"{cushion.at}/insert/diagonals"
    untaped = [number for number, (_, _, length) in enumerate(cushion.insert.diagonals) if length is None]
    return f"{at}/{untaped[0]}/2" if untaped else at


def _doubted(doubt: Doubt, cushion: Cushion, job: Job) -> Problem:
    field, what = _field_of(doubt.measure, cushion)
    taped, would_be = (write_length(nm, job.units) for nm in (doubt.measure.length, doubt.would_be))
    texts = {
        "exactly": f"The measures do not close. If {what} is misread, it is {would_be}, not {taped}.",
        "at-most": f"The {what} is {taped}, but by the other measures it can be {would_be} at most: tape it again.",
        "at-least": f"The {what} is {taped}, but by the other measures it must be {would_be} at least: tape it again.",
    }
    return Problem(f"{cushion.at}/insert/{field}", "sides-do-not-close", texts[doubt.bound])


def _field_of(measure: Measure, cushion: Cushion) -> tuple[str, str]:
    """The field that a measure stands in, and what it is called; its ends may be told in either order."""
    insert, ends = cushion.insert, {measure.one, measure.other}
    for number in range(len(insert.sides)):
        if ends == {number, (number + 1) % len(insert.sides)}:
            return f"sides/{number}", f"side {side_called(number, len(insert.sides))}"
    number = [{one, other} for one, other, _ in insert.diagonals].index(ends)
    one, other, _ = insert.diagonals[number]
    return f"diagonals/{number}/2", f"diagonal {letters_for(one + 1)}{letters_for(other + 1)}"


def from_its_corner(outline: Outline) -> Outline:
    """The outline moved to the lower left corner of the box around it."""
    left, bottom = (min(point[axis] for point in outline) for axis in (0, 1))
    return tuple((x - left, y - bottom) for x, y in outline)


def box_of(outline: Outline) -> tuple[tuple[str, int], ...]:
    """The measures of the box around an outline that starts at its corner."""
    return tuple((name, max(point[axis] for point in outline)) for axis, name in enumerate(_BOX))


def _moved(outline: Outline, across: int, up: int) -> Outline:
    """The outline larger by so much over its whole width and height, half of it on each side; smaller if negative."""
    halves = Edges(across // 2, across - across // 2, up // 2, up - up // 2)
    return outset(outline, halves.along(outline))


def keeps_its_sides(outline: Outline, moved: Outline) -> bool:
    """Whether every side of a moved outline still runs the way it did, and none through another."""
    runs = zip(sides_of(outline), sides_of(moved), strict=True)
    ahead = all(
        (bx - ax) * (dx - cx) + (by - ay) * (dy - cy) > 0 for ((ax, ay), (bx, by)), ((cx, cy), (dx, dy)) in runs
    )
    return ahead and not crosses_itself(moved)


def trace_lines(traced: Traced, job: Job) -> list[str]:
    """What was taped, how well it closes, and the sides as they are stitched."""
    insert, units, count = traced.cushion.insert, job.units, len(traced.taped)
    taped = [f"{side_called(n, count)} {write_length(side or 0, units)}" for n, side in enumerate(insert.sides)]
    diagonals = [
        f"{letters_for(one + 1)}{letters_for(other + 1)} {write_length(length, units)}"
        for one, other, length in insert.diagonals
        if length is not None
    ]
    across = f"; from corner to corner {listed(diagonals)}" if diagonals else ""
    if count + len(diagonals) <= 2 * count - 3:
        closes = "Nothing checks these measures: one more from corner to corner would."
    else:
        off = f" within {write_length(traced.off, units)}" if traced.off > _UNSEEN else ""
        closes = f"They close{off}."
    stitched = [
        f"{side_called(n, count)} {write_length(distance(*ends), units)}"
        for n, ends in enumerate(sides_of(traced.stitched))
    ]
    return [
        f"Sides from the front left corner, A, on: {listed(taped)}{across}. {closes}",
        f"Stitched: {listed(stitched)}.",
    ]
