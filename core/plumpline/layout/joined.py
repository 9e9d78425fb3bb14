# Joins strips to rings: which strips make up each ring, so that no join lies where it is to be clear.
"""Strips are taken one after the other, each joined to the one before, until a ring is as long as it has to be.

A strip that would end where no join may lie is cut back to where that begins. The one that closes the ring is the
shortest that does, and its rest serves another ring, a very short one only to close it; before that comes the one of
which least is cut back, the longest of those. O(n · m) for n strips of m lengths.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.layout.strip import Piping


@dataclass(frozen=True)
class Joined:
    """The rings that strips make, each by the lengths it is joined from, and how much is ``short`` of all rings."""

    rings: tuple[tuple[int, ...], ...]
    short: int


def joined(piping: Piping, lengths: Sequence[int]) -> Joined:
    """The rings of a piping that strips of these lengths make."""
    left = Counter(lengths)
    rings: list[tuple[int, ...]] = []
    for number in range(piping.rings):
        ring, reached = _ring(piping, left)
        if reached < piping.length:
            return Joined(tuple(rings), (piping.rings - number) * piping.length - reached)
        rings.append(ring)
    return Joined(tuple(rings), 0)


def _ring(piping: Piping, left: Counter[int]) -> tuple[tuple[int, ...], int]:
    """One ring from the strips that are left, which it takes from them, and how far it reaches."""
    ring: list[int] = []
    reached = 0
    while reached < piping.length:
        start = reached - piping.join if ring else 0
        length = _next(piping, left, start, reached)
        if length is None:
            break
        left[length] -= 1
        if not left[length]:
            del left[length]
        end = _end(piping, start + length)
        rest = start + length - piping.length
        if rest > piping.join:
            left[rest] += 1
        ring.append(end - start)
        reached = end
    return tuple(ring), reached


def _next(piping: Piping, left: Counter[int], start: int, reached: int) -> int | None:
    """The strip that follows, laid from ``start`` on; None where no strip leads on."""
    closing = [length for length in left if start + length >= piping.length]
    if closing:
        return min(closing)
    long = [length for length in left if length >= piping.shortest]
    leading_on = [length for length in long if _end(piping, start + length) > reached]
    return min(leading_on, key=lambda length: (start + length - _end(piping, start + length), -length), default=None)


def _end(piping: Piping, end: int) -> int:
    """Where a strip that reaches to ``end`` is cut off: at the end of the ring, or short of what is to be clear."""
    if end >= piping.length:
        return piping.length
    return next((low for low, high in piping.clear if low < end < high), end)
