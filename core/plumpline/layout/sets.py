# Finds which panels fit side by side, or one behind the other: all such sets, or the heaviest of them.
"""Feasible sets for the bounds: a *row* is a set of panels that one straight line across the cloth can cross.

A set is a count for every way. Where panels are bound to columns of the repeat, a set fits if some order of it, each
panel in the first column free of the one before, ends within the width: the least right end of every set is found by
dynamic programming over sets, which is exact. Where only sizes matter the heaviest set is a bounded knapsack, solved
over the undominated pairs of (size, weight) (Nemhauser and Ullmann, *Management Science* 15 (1969) 494-505).
"""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.layout.budget import Budget

MOST_SETS = 3_000
MOST_PAIRS = 1_500

Set = tuple[int, ...]
Pair = tuple[int, int, tuple[int, object]]  # size and weight of a set, and its ways one after another


@dataclass(frozen=True)
class Bar:
    """One way of a panel as a bar in the row: its size, and the columns it may start in (None: anywhere)."""

    size: int
    columns: tuple[int, ...] | None = None


class TooManySets(Exception):
    """There are more sets than can be looked at."""


@dataclass(frozen=True)
class Bars:
    """Ways grouped by the panels they belong to: ``groups`` holds (copies, ways) of each kind."""

    room: int
    bars: tuple[Bar, ...]
    groups: tuple[tuple[int, tuple[int, ...]], ...]


class ListedSets:
    """All sets that fit in columns, listed once; raises ``TooManySets`` beyond ``MOST_SETS``."""

    def __init__(self, bars: Bars, budget: Budget) -> None:
        self.budget = budget
        group_of = {way: (copies, ways) for copies, ways in bars.groups for way in ways}
        level: dict[Set, int] = {(0,) * len(bars.bars): 0}
        self.sets: list[Set] = []
        while level:
            following: dict[Set, int] = {}
            for chosen, right in level.items():
                widened = False
                for way, bar in enumerate(bars.bars):
                    copies, ways = group_of[way]
                    if sum(chosen[w] for w in ways) >= copies:
                        continue
                    end = end_of(bar, right)
                    if end is None or end > bars.room:
                        continue
                    widened = True
                    larger = (*chosen[:way], chosen[way] + 1, *chosen[way + 1 :])
                    if following.get(larger, end) >= end:
                        following[larger] = end
                if not widened:
                    self.sets.append(chosen)
                budget.spend(len(bars.bars))
                if len(following) + len(self.sets) > MOST_SETS or budget.over:
                    raise TooManySets
            level = following
        self.used = [[(way, count) for way, count in enumerate(s) if count] for s in self.sets]

    def heaviest(self, weights: Sequence[int]) -> tuple[int, Set]:
        """The heaviest set and its weight."""
        best, which = -1, 0
        for index, used in enumerate(self.used):
            weight = 0
            for way, count in used:
                weight += weights[way] * count
            if weight > best:
                best, which = weight, index
        self.budget.spend(len(self.used) // 3 + 1)
        return best, self.sets[which]


def end_of(bar: Bar, right: int) -> int | None:
    """Where a bar ends that starts in its first place from ``right`` on; None if it has none."""
    if bar.columns is None:
        return right + bar.size
    index = bisect_left(bar.columns, right)
    return bar.columns[index] + bar.size if index < len(bar.columns) else None


class SizedSets:
    """The same by size alone, never listed: each query is one knapsack."""

    def __init__(self, bars: Bars, budget: Budget) -> None:
        self.bars = bars
        self.budget = budget

    def heaviest(self, weights: Sequence[int]) -> tuple[int, Set]:
        """The heaviest set and its weight; raises ``TooManySets`` if there are too many undominated pairs."""
        _, weight, trail = self.pairs(weights)[-1]
        return weight, self._set_of(trail)

    def pairs(self, weights: Sequence[int]) -> list[Pair]:
        """The undominated sets by size, each with its size and weight; raises ``TooManySets`` if they are too many."""
        pairs: list[Pair] = [(0, 0, (-1, None))]
        for copies, ways in self.bars.groups:
            useful = [w for w in ways if weights[w] > 0]
            for _ in range(copies):
                longer = self._one_more(pairs, useful, weights)
                if len(longer) == len(pairs) and all(a[:2] == b[:2] for a, b in zip(longer, pairs, strict=True)):
                    break
                pairs = longer
        return pairs

    def _one_more(
        self, pairs: list[Pair], ways: Sequence[int], weights: Sequence[int]
    ) -> list[Pair]:
        room, bars = self.bars.room, self.bars.bars
        offered = list(pairs)
        for way in ways:
            size, weight = bars[way].size, weights[way]
            offered += [(s + size, w + weight, (way, t)) for s, w, t in pairs if s + size <= room]
        offered.sort(key=lambda pair: (pair[0], -pair[1]))
        kept: list[Pair] = []
        for pair in offered:
            if not kept or pair[1] > kept[-1][1]:
                kept.append(pair)
        self.budget.spend(len(offered))
        if len(kept) > MOST_PAIRS:
            raise TooManySets
        return kept

    def _set_of(self, trail: object) -> Set:
        counts = [0] * len(self.bars.bars)
        while isinstance(trail, tuple) and trail[0] >= 0:
            counts[trail[0]] += 1
            trail = trail[1]
        return tuple(counts)
