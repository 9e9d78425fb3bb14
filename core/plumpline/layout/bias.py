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
def bias_lengths(across: int, along: int, width: int, join: int) -> tuple[int, ...]:
    """The lengths of the strips of the best cutting of a rectangle that are worth joining, the longest first."""
    apart = ceil_root(2 * width * width)
    cuttings = [
        _cut(a, b, apart, first, join)
        for a, b in ((across, along), (along, across))
        for first in dict.fromkeys((0, (a - b) % apart))
    ]
    return max(cuttings, key=lambda lengths: sum(lengths) - join * len(lengths))


def _cut(a: int, b: int, apart: int, first: int, join: int) -> tuple[int, ...]:
    """The strips between cuts at ``first`` and every ``apart`` from it."""
    cuts = range(first - (b + first) // apart * apart, a, apart)
    spans = (min(a, b + c) - max(0, c + apart) for c in cuts)
    lengths = (isqrt(2 * span * span) for span in spans if span > 0)
    return tuple(sorted((length for length in lengths if length > join), reverse=True))
