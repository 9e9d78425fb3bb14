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

from plumpline.layout.bias import bias_lengths
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.joined import joined
from plumpline.layout.strip import Grain, Piping, PipingCut, Placement, Strip, StripPiece

Free = tuple[int, int, int, int]  # left, bottom, right, top
Pieces = tuple[StripPiece, ...]

ENDLESS = 1 << 62


def free_rectangles(strip: Strip, placements: Sequence[Placement]) -> list[Free]:
    """The maximal rectangles clear of all panels and flaws on a cloth without end."""
    g = strip.gap
    free = [(0, 0, strip.width, ENDLESS)]
    for p in placements:
        free = without(free, (p.x - g, p.y - g, p.x + p.w + g, p.y + p.h + g))
    for f in strip.flaws:
        free = without(free, (f.x, f.y, f.x + f.w, f.y + f.h))
    return free


def without(free: list[Free], taken: Free) -> list[Free]:
    """The maximal free rectangles once a rectangle of the cloth is taken."""
    left, bottom, right, top = taken
    whole, parts = [], []
    for rectangle in free:
        a, b, c, d = rectangle
        if left >= c or right <= a or bottom >= d or top <= b:
            whole.append(rectangle)
            continue
        parts += [(a, b, left, d)] if left > a else []
        parts += [(right, b, c, d)] if right < c else []
        parts += [(a, b, c, bottom)] if bottom > b else []
        parts += [(a, top, c, d)] if top < d else []
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
    cuts = []
    for piping in strip.piping:
        cut = yield from _shortest(piping, free, strip.gap, length, budget)
        length = max(length, _reach(cut))
        cuts.append(cut)
        for piece in cut.pieces:
            free = without(free, _around((piece,), strip.gap))
    return length, tuple(cuts)


def _reach(cut: PipingCut) -> int:
    return max(piece.y + piece.h for piece in cut.pieces)


def _shortest(piping: Piping, free: list[Free], gap: int, length: int, budget: Budget) -> Slices[PipingCut]:
    """The cut of the piping that reaches least beyond ``length``; one that reaches far once the budget is spent."""
    cut = cut_within(piping, free, gap, length)
    step, low, high = piping.width + gap, length, length
    while cut is None:
        low, high, step = high, high + step, 2 * step
        cut = cut_within(piping, free, gap, high)
        yield
    high = max(length, _reach(cut))
    while high - low > 1 and not budget.over:
        middle = (low + high) // 2
        shorter = cut_within(piping, free, gap, middle)
        if shorter is None:
            low = middle
        else:
            cut, high = shorter, max(length, _reach(shorter))
        budget.spend(200 + 40 * len(free))
        yield
    return cut


def cut_within(piping: Piping, free: Sequence[Free], gap: int, length: int) -> PipingCut | None:
    """Cut the piping from the free rectangles below ``length`` with as few joins as found; None if it is too much."""
    below: dict[Free, None] = {}
    for left, bottom, right, top in free:
        if bottom < length:
            below[left, bottom, right, min(top, length)] = None
    rules = (_most_strip,) if piping.bias else (_longest_strips, _most_strip)
    cuts = (_cut(piping, list(below), gap, rule) for rule in rules)
    return min((cut for cut in cuts if cut is not None), key=lambda cut: cut.joins, default=None)


def _longest_strips(pieces: Pieces, join: int) -> tuple[int, int]:
    return pieces[0].lengths[0], _worth(pieces, join)


def _most_strip(pieces: Pieces, join: int) -> tuple[int, int]:
    return _worth(pieces, join), pieces[0].lengths[0]


def _worth(pieces: Pieces, join: int) -> int:
    """What pieces add to the joined length, each with one join."""
    return sum(length - join for piece in pieces for length in piece.lengths)


def _needed(piping: Piping) -> int:
    """What the pieces must be worth; the first has no join, but is worth something by itself."""
    return max(piping.whole - piping.join, 1)


def _cut(
    piping: Piping, free: list[Free], gap: int, rule: Callable[[Pieces, int], tuple[int, int]]
) -> PipingCut | None:
    """Take block after block, by a rule, until there is enough for every ring to close."""
    needed = _needed(piping)
    while True:
        pieces = _taken(piping, free, gap, rule, needed)
        if pieces is None:
            return None
        short = joined(piping, _lengths(pieces)).short
        if not short:
            return _trimmed(piping, pieces, needed)
        needed += short


def _taken(
    piping: Piping, free: list[Free], gap: int, rule: Callable[[Pieces, int], tuple[int, int]], needed: int
) -> list[StripPiece] | None:
    """Blocks, by a rule, that are worth what is needed."""
    pieces: list[StripPiece] = []
    while needed > 0:
        blocks = [(rule(b, piping.join), b) for rectangle in free for b in _blocks(piping, rectangle, gap, needed)]
        if not blocks:
            return None
        _, block = max(blocks, key=lambda found: (found[0], -found[1][0].y, -found[1][0].x))
        if piping.bias:
            block = (_no_larger(block[0], piping, needed),)
        pieces += block
        needed -= _worth(block, piping.join)
        free = without(free, _around(block, gap))
    return pieces


def _around(block: Pieces, gap: int) -> Free:
    """What a block keeps others off."""
    first, last = block[0], block[-1]
    return first.x - gap, first.y - gap, last.x + last.w + gap, last.y + last.h + gap


def _blocks(piping: Piping, rectangle: Free, gap: int, needed: int) -> Iterator[Pieces]:
    """The blocks a free rectangle can give, of straight strips no more than needed."""
    left, bottom, right, top = rectangle
    w, h = right - left, top - bottom
    if piping.bias:
        lengths = _bias(w, h, piping)
        if lengths:
            yield (StripPiece(left, bottom, w, h, "bias", lengths),)
        return
    grains: tuple[tuple[Grain, int, int], ...] = (("along", h, w), ("across", w, h))
    for grain, length, room in grains:
        count = (room + gap) // (piping.width + gap)
        if count and length >= piping.least:
            wanted = -(-needed // (length - piping.join))
            yield tuple(
                StripPiece(left, bottom + i * (piping.width + gap), length, piping.width, grain, (length,))
                if grain == "across"
                else StripPiece(left + i * (piping.width + gap), bottom, piping.width, length, grain, (length,))
                for i in range(min(count, wanted))
            )


def _bias(w: int, h: int, piping: Piping) -> tuple[int, ...]:
    return bias_lengths(w, h, piping.width, piping.join, piping.shortest)


def _no_larger(piece: StripPiece, piping: Piping, needed: int) -> StripPiece:
    """The part of a bias block that yields what is needed, as short along the roll as found; else all of it."""
    low, high = 0, piece.h
    while high - low > 1:
        middle = (low + high) // 2
        part = replace(piece, h=middle, lengths=_bias(piece.w, middle, piping))
        if _worth((part,), piping.join) >= needed:
            piece, high = part, middle
        else:
            low = middle
    return piece


def _trimmed(piping: Piping, pieces: list[StripPiece], needed: int) -> PipingCut:
    """The cut of these pieces, the last of them no longer than needed if it is a straight strip."""
    spare = _worth(tuple(pieces), piping.join) - needed
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
