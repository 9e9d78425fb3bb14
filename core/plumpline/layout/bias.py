# How much bias strip a rectangle of cloth yields: strips at 45°, their number and their lengths.
"""Bias strips of a perpendicular width s from a rectangle a across and b along the roll.

The cuts are the lines x - y = c at 45°, s·√2 apart along either side (the strip's own width along the selvedge). The
strip between the cuts c and c' = c + s·√2 is a parallelogram with both ends along the roll, so that the ends of all
strips lie together for joining, over the x that both its cuts have within the rectangle: from max(0, c') to
min(a, b + c). Its edges are √2 times that long; what is left at its ends is lost. With the ends across the cloth a and
b change places. Which cut runs through a corner decides how much is lost there: the total is linear between cuts
through corners, so those are tried, and the better ends kept. Cuts are spaced by s·√2 rounded up and lengths rounded
down: the yield is never overstated. O((a + b) / s).
"""

from __future__ import annotations

from functools import lru_cache
from math import isqrt

from plumpline.layout.shapes import ceil_root


@lru_cache(maxsize=4_096)
def bias_lengths(across: int, along: int, width: int, join: int, shortest: int = 0) -> tuple[int, ...]:
    """The lengths of the strips of the best cutting of a rectangle that are worth joining, the longest first.

    Those are longer than the ``join`` that each takes, and no shorter than the ``shortest``.
    """
    apart = ceil_root(2 * width * width)
    a, b, first = _best(across, along, apart, join, max(join + 1, shortest))
    return _cut(a, b, apart, first, max(join + 1, shortest))


def bias_lines(
    across: int, along: int, width: int, join: int, shortest: int = 0
) -> tuple[tuple[tuple[int, int], tuple[int, int]], ...]:
    """Where ``bias_lengths`` cuts the rectangle: each line from edge to edge, from the lower left corner."""
    apart = ceil_root(2 * width * width)
    a, b, first = _best(across, along, apart, join, max(join + 1, shortest))
    lines = []
    for c in _cuts(a, b, apart, first):
        low, high = max(0, c), min(a, b + c)
        ends = ((low, low - c), (high, high - c))
        lines.append(ends if (a, b) == (across, along) else ((ends[0][1], ends[0][0]), (ends[1][1], ends[1][0])))
    return tuple(lines)


def _best(across: int, along: int, apart: int, join: int, least: int) -> tuple[int, int, int]:
    """The sides in the order in which the ends lie along the second, and the first cut, that yield the most."""
    cuttings = [
        (a, b, first)
        for a, b in ((across, along), (along, across))
        for first in dict.fromkeys((0, (a - b) % apart))
    ]
    return max(cuttings, key=lambda cutting: _worth(_cut(cutting[0], cutting[1], apart, cutting[2], least), join))


def _worth(lengths: tuple[int, ...], join: int) -> int:
    return sum(lengths) - join * len(lengths)


def _cuts(a: int, b: int, apart: int, first: int) -> range:
    """The cuts at ``first`` and every ``apart`` from it, within the rectangle and just before it."""
    return range(first - (b + first) // apart * apart, a, apart)


def _cut(a: int, b: int, apart: int, first: int, least: int) -> tuple[int, ...]:
    """The strips between these cuts, the longest first."""
    spans = (min(a, b + c) - max(0, c + apart) for c in _cuts(a, b, apart, first))
    lengths = (isqrt(2 * span * span) for span in spans if span > 0)
    return tuple(sorted((length for length in lengths if length >= least), reverse=True))
