"""A straight-sided back cut in two by a level line: where the line may lie, and how each of the two pieces is cut."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from plumpline.cushions.closing import Folds
from plumpline.cushions.panels import (
    SAG,
    Drawn,
    Part,
    back_side,
    boxed_in,
    cut_line,
    outlined_part,
    reach,
    side_marks,
)
from plumpline.geometry import area, at_level, cut_level, distance, outset, sides_of
from plumpline.lengths import NM_PER_INCH
from plumpline.pieces import Mark, Outline, Point
from plumpline.rounded import RoundedOutline

# Ends of a hem that stand out by no more are cut straight on: nobody could cut or see the difference.
_UNSEEN = NM_PER_INCH // 32

# A line lies so far in nm off the corners of an outline at least: it crosses sides and never meets a corner.
_CLEAR = 1

# So far in nm a corner may lie off the straight by rounding alone.
_ROUNDED = 2

# From how low to how high a level line may lie, in nm; both ends belong to it.
_Room = tuple[int, int]


@dataclass(frozen=True)
class Turned:
    """What is turned in at the edges where a back opens: so much, in nm, once as at a zip, or twice as in a hem."""

    allowance: int
    twice: bool


def folds_of(back: Part, halves: tuple[int, int], turned: Turned, beyond: int) -> Folds | None:
    """Where a back that would be cut into an upper and a lower piece so long, finished, can be cut.

    A level line has to cross just two sides of the outline, and these have to run on above and below it as far as what
    is turned in reaches: the place nearest to the halves where that is so, None where there is none. `beyond` is the
    flange.
    """
    upper, lower = back.length - halves[0], halves[1]
    rooms = _rooms(back, turned.allowance, beyond)
    shared = [
        (max(low - upper, down - lower), min(high - upper, up - lower)) for low, high in rooms for down, up in rooms
    ]
    shifts = [min(max(low, 0), high) for low, high in shared if low <= high]
    if not shifts:
        return None
    moved = min(shifts, key=lambda shift: (abs(shift), -shift))
    inner = _inner(back, beyond)
    lengths = [_length_across(inner, level + moved) for level in (upper, lower)]
    up = (upper + lower) // 2 + moved - reach(inner, 1)[0]
    return Folds(upper + moved, lower + moved, moved, sum(lengths) // 2, up)


def most_room(back: Part, beyond: int) -> int:
    """The highest stretch of a back all over which a level line crosses just two of its sides, in nm; 0 for none."""
    return max((high - low + 2 * _CLEAR for low, high in _rooms(back, 0, beyond)), default=0)


def _inner(back: Part, beyond: int) -> Outline:
    """The outline without its flange, along which the cover is closed."""
    line = back.line.points(SAG)
    return outset(line, [-beyond] * len(line)) if beyond else line


def _rooms(back: Part, deep: int, beyond: int) -> list[_Room]:
    """Where a piece may end that has so much turned in: clear of where the outline turns, cut, stitched or filled."""
    found = [(0, back.length)]
    lines = (cut_line(back), max(deep, _CLEAR)), (back.line.points(SAG), _CLEAR), (_inner(back, beyond), _CLEAR)
    for outline, clear in lines:
        inside = [(low + clear, high - clear) for low, high in _crossed_twice(outline)]
        found = [(max(a, c), min(b, d)) for a, b in found for c, d in inside]
    return [(low, high) for low, high in found if low <= high]


def _crossed_twice(outline: Outline) -> list[_Room]:
    """The heights between which every level line crosses just two sides, which all lead on up or down."""
    corners = zip([outline[-1], *outline], outline, [*outline[1:], outline[0]], strict=False)
    turning = {y for (_, before), (_, y), (_, after) in corners if not (before < y < after or before > y > after)}
    return [ends for ends in pairwise(sorted(turning)) if len(_crossing(outline, sum(ends))) == 2]


def _crossing(outline: Outline, twice: int) -> list[tuple[Point, Point]]:
    """The sides that a line at half of this height crosses."""
    return [(one, other) for one, other in sides_of(outline) if (2 * one[1] > twice) != (2 * other[1] > twice)]


def _length_across(outline: Outline, level: int) -> int:
    one, other = (at_level(*side, level) for side in _crossing(outline, 2 * level))
    return distance(one, other)


def in_two(back: Part, folds: Folds, turned: Turned) -> tuple[Part, Part]:
    """The upper and the lower piece of a back, which has the same allowance all round.

    A motif stands at the centre of the closed back on both.
    """
    upper = replace(_piece(back, "back-1", folds.upper, 1, turned), opens=("bottom",), corners=("top",))
    lower = replace(_piece(back, "back-2", folds.lower, -1, turned), opens=("top",), corners=("bottom",))
    return upper, lower


def _piece(back: Part, name: str, level: int, way: int, turned: Turned) -> Part:
    kept = cut_level(back.line.points(SAG), level, way)
    outline = tuple(point for point, _ in kept)
    allowances = tuple(turned.allowance if side < 0 else back.allowances[0] for _, side in kept)
    fold = next(number for number, (_, side) in enumerate(kept) if side < 0)
    drawn = _drawn(back, sides_of(outline)[fold], way, turned)
    corner = reach(outline, 0)[0], reach(outline, 1)[0]
    drawn = replace(
        drawn,
        outline=_from(drawn.outline, corner),
        marks=tuple(replace(mark, points=_from(mark.points, corner)) for mark in drawn.marks),
    )
    part = outlined_part(name, back.face_of, RoundedOutline(outline, (0,) * len(outline)), allowances, fold)
    width, length, edges = boxed_in(part.outline, drawn.outline)
    across, up = back.middle
    centre = across - corner[0], up - corner[1]
    return replace(part, width=width, length=length, edges=edges, centre=centre, drawn=drawn)


def _from(points: Sequence[Point], corner: Point) -> Outline:
    return tuple((x - corner[0], y - corner[1]) for x, y in points)


def _drawn(back: Part, fold: tuple[Point, Point], way: int, turned: Turned) -> Drawn:
    """How a piece is cut that ends at this fold, told from where the back begins."""
    whole, level = cut_line(back), fold[0][1]
    kept = cut_level(whole, level, way)
    first = (next(number for number, (_, side) in enumerate(kept) if side < 0) + 1) % len(kept)
    points = [point for point, _ in kept[first:] + kept[:first]]
    leaving, entering = (_turned_in(chain, way, turned) for chain in (points[::-1], points))
    outline = (*points, *leaving, *entering[::-1])
    allowances = [back.allowances[0]] * len(outline)
    allowances[len(points) + len(leaving) - 1] = turned.allowance
    return Drawn(
        *_without_straight(outline, allowances, (0, len(points) - 1)),
        marks=_marks(back, outline, fold, way, turned),
        folded=any(x != at[0] for end, at in ((leaving, points[-1]), (entering, points[0])) for x, _ in end),
    )


def _turned_in(chain: Sequence[Point], way: int, turned: Turned) -> list[Point]:
    """One end of what is turned in, from the fold outwards, where `chain` is what the piece is cut along from there.

    Cut as the cloth lies when it is turned, so that both its ends come to lie on the side they belong to: mirrored
    once for a seam that is pressed open, mirrored and mirrored back for a hem that is folded twice (common practice:
    the paper is folded so and then cut along the side).
    """
    (x, level), deep = chain[0], turned.allowance
    if not deep:
        return []
    beneath = _as_far(chain, level + way * (deep // 2 if turned.twice else deep), way)
    if all(abs(across - x) <= _UNSEEN for across, _ in beneath):
        return [(x, level - way * deep)]
    once = [(across, 2 * level - up) for across, up in beneath[1:]]
    return once + ([(across, up - way * deep) for across, up in beneath[-2::-1]] if turned.twice else [])


def _as_far(chain: Sequence[Point], level: int, way: int) -> list[Point]:
    """The way along a chain as far as a level line, which it comes to."""
    end = next(number for number, (_, y) in enumerate(chain) if number and (y - level) * way >= 0)
    return [*chain[:end], at_level(chain[end - 1], chain[end], level)]


def _without_straight(
    outline: Outline, allowances: list[int], corners: tuple[int, int]
) -> tuple[Outline, tuple[int, ...]]:
    """The outline without those of these corners that lie straight between their neighbours, but for the rounding."""
    straight = [
        number
        for number in corners
        if _is_straight(outline[number - 1], outline[number], outline[(number + 1) % len(outline)])
    ]
    kept = [number for number in range(len(outline)) if number not in straight]
    return tuple(outline[number] for number in kept), tuple(allowances[number] for number in kept)


def _is_straight(before: Point, corner: Point, after: Point) -> bool:
    return abs(2 * area((before, corner, after))) <= _ROUNDED * distance(before, after)


def _marks(
    back: Part, outline: Outline, fold: tuple[Point, Point], way: int, turned: Turned
) -> tuple[Mark, ...]:
    """The marks of the whole back that lie on the piece, its own top edge, and the middle of where it is cut."""
    level = fold[0][1]
    middle = (fold[0][0] + fold[1][0]) // 2, level - way * turned.allowance
    ends = sides_of(outline)[back_side(outline)]
    top = middle if way < 0 else tuple(sum(places) // 2 for places in zip(*ends, strict=True))
    found = [Mark("top", "Top edge", ((top[0], top[1]),))]
    for mark in back.drawn.marks if back.drawn else side_marks(back):
        on_it = [point for point in mark.points if (point[1] - level) * way >= 0]
        if mark.kind == "centre":
            found.append(replace(mark, points=(*on_it, middle)))
        elif mark.kind != "top" and len(on_it) == len(mark.points):
            found.append(mark)
    return tuple(found)
