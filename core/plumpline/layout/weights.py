# Weighs panels by how well they go together in a row, and finds the heaviest row there is on part of the width.
"""Weights from the covering programme by rows (``bounds``: *rows*), to steer and to prune the search over layouts.

Where few sizes fit side by side without a rest, area says little: of two rows that leave as much over, one may use up
panels that nothing else goes well with. The dual weights of the programme say what each panel is worth along a row of
the cloth, so that no row weighs more than a whole and the rows of a shortest cover weigh just that.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Sequence

from plumpline.layout.budget import Budget
from plumpline.layout.desk import Desk
from plumpline.layout.sets import Bar, Bars, ListedSets, SizedSets, TooManySets
from plumpline.layout.simplex import Demand, fractional_cover

WHOLE = 1 << 20  # what a full row weighs, roughly: weights are rounded to whole numbers


def row_weights(desk: Desk, budget: Budget) -> list[list[int]]:
    """What each variant of each kind weighs; its width where there are too many rows to look at."""
    ways = [variant for kind in desk.kinds for variant in kind.variants]
    bars, groups = _bars_of(desk)
    demands = [Demand(qty, of, tuple(ways[way].h for way in of)) for qty, of in groups]
    rows_of: tuple[type[ListedSets] | type[SizedSets], ...] = (ListedSets, SizedSets)
    for sets in rows_of:
        try:
            rows = sets(Bars(desk.width, bars, groups), budget)
            cover = fractional_cover(demands, len(ways), rows.heaviest, budget)
        except TooManySets:
            continue
        return [[int(cover.weights[way] * WHOLE) for way in of] for _, of in groups]
    return [[way.w for way in kind.variants] for kind in desk.kinds]


def _bars_of(desk: Desk) -> tuple[tuple[Bar, ...], tuple[tuple[int, tuple[int, ...]], ...]]:
    """Each variant as a bar across the cloth, and the numbers of those of each kind."""
    bars: list[Bar] = []
    groups = []
    for kind in desk.kinds:
        groups.append((kind.qty, tuple(range(len(bars), len(bars) + len(kind.variants)))))
        bars += [Bar(v.w, None if v.columns is None else tuple(sorted(x for x, _ in v.columns))) for v in kind.variants]
    return tuple(bars), tuple(groups)


class Fullest(dict[int, int]):
    """The most that panels side by side on open slices of the width can weigh; slices are given as bits.

    The heaviest set of disjoint intervals (Kleinberg and Tardos, *Algorithm Design*, 2006, 6.1), in O(p) for p places.
    """

    def __init__(self, places: Sequence[tuple[int, int]], slices: int) -> None:
        super().__init__()
        self.ending: list[list[tuple[int, int, int]]] = [[] for _ in range(slices)]
        for over, weight in places:
            first = (over & -over).bit_length() - 1
            self.ending[over.bit_length() - 1].append((first, over, weight))

    def __missing__(self, open_slices: int) -> int:
        heaviest = [0]
        for ending in self.ending:
            most = heaviest[-1]
            for first, over, weight in ending:
                if over & open_slices == over and heaviest[first] + weight > most:
                    most = heaviest[first] + weight
            heaviest.append(most)
        self[open_slices] = heaviest[-1]
        return heaviest[-1]


class Capacity(dict[int, tuple[int, int]]):
    """The most that free panels side by side within a width can weigh, and the most of it that they can fill.

    Raises ``TooManySets`` where there are too many sets of panels to look at.
    """

    def __init__(self, desk: Desk, weights: Sequence[Sequence[int]], budget: Budget) -> None:
        super().__init__()
        bars, groups = _bars_of(desk)
        sets = SizedSets(Bars(desk.width, bars, groups), budget)
        measures = [weight for of in weights for weight in of], [bar.size for bar in bars]
        listed = [sets.pairs(measure) for measure in measures]
        self.best = [([size for size, _, _ in pairs], [most for _, most, _ in pairs]) for pairs in listed]

    def __missing__(self, width: int) -> tuple[int, int]:
        weight, filled = [most[bisect_right(sizes, width) - 1] for sizes, most in self.best]
        self[width] = weight, filled
        return weight, filled
