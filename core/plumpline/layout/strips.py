# Fills what a plan leaves over with piping strips, and says how much more cloth they need if that is not enough.
"""Piping from the free rectangles of a plan.

The maximal free rectangles are kept as a list (Jylänki 2010): what is taken splits every rectangle it touches into up
to four, and those within others go. Strips are taken block by block, a block being all strips of one length that lie
side by side in a free rectangle, along the roll or across, or one rectangle cut on the bias (``bias``), none larger
than needed. Two rules say which block comes first, the longest strips (few joins) or the most strip (little cloth);
straight strips try both. Where the free rectangles are not enough the cloth is made longer, by halving the interval;
everything beyond the panels is free then. O(m²) for each block among m free rectangles.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from typing import NamedTuple

from plumpline.layout.bias import bias_lengths
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.joined import joined
from plumpline.layout.strip import Grain, Piping, PipingCut, Placement, Strip, StripPiece

Free = tuple[int, int, int, int]  # left, bottom, right, top

ENDLESS = 1 << 62
_SLICE = 3_000  # free rectangles looked at between two yields


def free_rectangles(strip: Strip, placements: Sequence[Placement]) -> list[Free]:
    """The maximal rectangles clear of all panels and flaws on a cloth without end."""
    g = strip.gap
    free = [(0, 0, strip.width, ENDLESS)]
    for p in placements:
        free = without(free, (p.x - g, p.y - g, p.x + p.w + g, p.y + p.h + g))
    for f in strip.flaws:
        free = without(free, (f.x, f.y, f.x + f.w, f.y + f.h))
    return free


def without(free: list[Free], taken: Free, least: int = 1) -> list[Free]:
    """The maximal free rectangles, none narrower than ``least`` either way, once a rectangle of the cloth is taken."""
    left, bottom, right, top = taken
    whole, parts = [], []
    for rectangle in free:
        a, b, c, d = rectangle
        if left >= c or right <= a or bottom >= d or top <= b:
            whole.append(rectangle)
            continue
        parts += [(a, b, left, d)] if left - a >= least else []
        parts += [(right, b, c, d)] if c - right >= least else []
        parts += [(a, b, c, bottom)] if bottom - b >= least else []
        parts += [(a, top, c, d)] if d - top >= least else []
    return whole + [
        p
        for i, p in enumerate(parts)
        if not any(_within(p, q) for q in (*whole, *parts[:i]))
        and not any(p != q and _within(p, q) for q in parts[i + 1 :])
    ]


def _within(inner: Free, outer: Free) -> bool:
    return inner[0] >= outer[0] and inner[1] >= outer[1] and inner[2] <= outer[2] and inner[3] <= outer[3]


def piping_for(
    strip: Strip, free: list[Free], length: int, budget: Budget
) -> Slices[tuple[int, tuple[PipingCut, ...]]]:
    """Cut all piping from free rectangles, the panels ending at ``length``: the length it takes then, and the cuts."""
    cuts: list[PipingCut] = []
    for piping in strip.piping:
        for piece in cuts[-1].pieces if cuts else ():
            free = without(free, _around(piece, strip.gap))
        yield
        cut = yield from _shortest(piping, free, strip.gap, length, budget)
        length = max(length, _reach(cut))
        cuts.append(cut)
    return length, tuple(cuts)


def _reach(cut: PipingCut) -> int:
    return max(piece.y + piece.h for piece in cut.pieces)


def _shortest(piping: Piping, free: list[Free], gap: int, length: int, budget: Budget) -> Slices[PipingCut]:
    """The cut of the piping that reaches least beyond ``length``; one that reaches far once the budget is spent."""
    cut = yield from _cut_within(piping, free, gap, length)
    step, low, high = piping.width + gap, length, length
    while cut is None:
        low, high, step = high, high + step, 2 * step
        cut = yield from _cut_within(piping, free, gap, high)
    high = max(length, _reach(cut))
    while high - low > _fine(piping) and not budget.over:
        middle = (low + high) // 2
        shorter = yield from _cut_within(piping, free, gap, middle)
        if shorter is None:
            low = middle
        else:
            cut, high = shorter, max(length, _reach(shorter))
        budget.spend(200 + 40 * len(free))
    return cut


def _cut_within(piping: Piping, free: Sequence[Free], gap: int, length: int) -> Slices[PipingCut | None]:
    """Cut the piping from the free rectangles below ``length`` with as few joins as found; None if it is too much."""
    below: dict[Free, None] = {}
    for left, bottom, right, top in free:
        if bottom < length:
            below[left, bottom, right, min(top, length)] = None
    rules = (_most_strip,) if piping.bias else (_longest_strips, _most_strip)
    found = []
    for rule in rules:
        cut = yield from _cut(piping, list(below), gap, rule)
        found += [] if cut is None else [cut]
    return min(found, key=lambda cut: cut.joins, default=None)


class _Block(NamedTuple):
    """Straight strips side by side, or a rectangle cut on the bias; what all are `worth`, each with one join."""

    x: int
    y: int
    w: int
    h: int
    grain: Grain
    longest: int
    worth: int
    strips: int


def _longest_strips(block: _Block) -> tuple[int, int, int, int]:
    return block.longest, block.worth, -block.y, -block.x


def _most_strip(block: _Block) -> tuple[int, int, int, int]:
    return block.worth, block.longest, -block.y, -block.x


Rule = Callable[[_Block], tuple[int, int, int, int]]


def _needed(piping: Piping) -> int:
    """What the pieces must be worth; the first has no join, but is worth something by itself."""
    return max(piping.whole - piping.join, 1)


def _cut(piping: Piping, free: list[Free], gap: int, rule: Rule) -> Slices[PipingCut | None]:
    """Take block after block, by a rule, until there is enough for every ring to close."""
    needed = _needed(piping)
    while True:
        pieces = yield from _taken(piping, free, gap, rule, needed)
        yield
        if pieces is None:
            return None
        short = joined(piping, _lengths(pieces)).short
        if not short:
            return _trimmed(piping, pieces, needed)
        needed += short


def _taken(piping: Piping, free: list[Free], gap: int, rule: Rule, needed: int) -> Slices[list[StripPiece] | None]:
    """The pieces of blocks, by a rule, that are worth what is needed."""
    pieces: list[StripPiece] = []
    looked_at = 0
    while needed > 0:
        looked_at += len(free)
        if looked_at > _SLICE:
            looked_at = 0
            yield
        blocks = [block for rectangle in free for block in _blocks(piping, rectangle, gap, needed)]
        if not blocks:
            return None
        block = max(blocks, key=rule)
        if piping.bias:
            block = _no_larger(block, piping, needed)
        pieces += _pieces_of(block, piping, gap)
        needed -= block.worth
        free = without(free, _around(block, gap))
    return pieces


def _around(taken: StripPiece | _Block, gap: int) -> Free:
    """What a piece or a block keeps others off."""
    return taken.x - gap, taken.y - gap, taken.x + taken.w + gap, taken.y + taken.h + gap


def _blocks(piping: Piping, rectangle: Free, gap: int, needed: int) -> Iterator[_Block]:
    """The blocks a free rectangle can give, of straight strips no more than needed."""
    left, bottom, right, top = rectangle
    w, h = right - left, top - bottom
    if piping.bias:
        block = _on_the_bias(left, bottom, w, h, piping)
        if block.strips:
            yield block
        return
    apart = piping.width + gap
    grains: tuple[tuple[Grain, int, int], ...] = (("along", h, w), ("across", w, h))
    for grain, length, room in grains:
        if length >= piping.least and room >= piping.width:
            worth = length - piping.join
            count = min((room + gap) // apart, -(-needed // worth))
            wide = count * apart - gap
            size = (wide, length) if grain == "along" else (length, wide)
            yield _Block(left, bottom, *size, grain, length, count * worth, count)


def _on_the_bias(x: int, y: int, w: int, h: int, piping: Piping) -> _Block:
    lengths = _bias(w, h, piping)
    worth = sum(lengths) - piping.join * len(lengths)
    return _Block(x, y, w, h, "bias", max(lengths, default=0), worth, len(lengths))


def _pieces_of(block: _Block, piping: Piping, gap: int) -> Iterator[StripPiece]:
    """The strips of a block, or the one piece that its bias strips come from."""
    x, y, apart = block.x, block.y, piping.width + gap
    if block.grain == "bias":
        yield StripPiece(x, y, block.w, block.h, "bias", _bias(block.w, block.h, piping))
    for number in range(block.strips if block.grain != "bias" else 0):
        if block.grain == "along":
            yield StripPiece(x + number * apart, y, piping.width, block.h, "along", (block.h,))
        else:
            yield StripPiece(x, y + number * apart, block.w, piping.width, "across", (block.w,))


def _bias(w: int, h: int, piping: Piping) -> tuple[int, ...]:
    return bias_lengths(w, h, piping.width, piping.join, piping.shortest)


def _fine(piping: Piping) -> int:
    """How finely lengths of cloth are tried: a 64th of a strip's width."""
    return max(1, piping.width // 64)


def _no_larger(block: _Block, piping: Piping, needed: int) -> _Block:
    """The part of a bias block that yields what is needed, as short along the roll as found; else all of it."""
    low, high = 0, block.h
    while high - low > _fine(piping):
        middle = (low + high) // 2
        part = _on_the_bias(block.x, block.y, block.w, middle, piping)
        if part.worth >= needed:
            block, high = part, middle
        else:
            low = middle
    return block


def _trimmed(piping: Piping, pieces: list[StripPiece], needed: int) -> PipingCut:
    """The cut of these pieces, the last of them no longer than needed if it is a straight strip."""
    spare = sum(length - piping.join for length in _lengths(pieces)) - needed
    last = pieces[-1]
    if last.grain != "bias" and 0 < spare < last.lengths[0]:
        left = last.lengths[0] - spare
        w, h = (left, last.h) if last.grain == "across" else (last.w, left)
        shorter = [*pieces[:-1], replace(last, w=w, h=h, lengths=(left,))]
        pieces = pieces if joined(piping, _lengths(shorter)).short else shorter
    lengths = _lengths(pieces)
    rings = joined(piping, lengths).rings
    joins = sum(len(ring) - 1 for ring in rings)
    length = sum(lengths) - (len(lengths) - 1) * piping.join
    return PipingCut(tuple(sorted(pieces, key=lambda p: (p.y, p.x))), joins, length, rings)


def _lengths(pieces: Sequence[StripPiece]) -> list[int]:
    return [length for piece in pieces for length in piece.lengths]
