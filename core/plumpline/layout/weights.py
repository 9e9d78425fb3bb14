# Weighs panels by how well they go together in a row, and finds the heaviest row there is on part of the width.
"""Weights from the covering programme by rows (``bounds``: *rows*), to steer and to prune the search over layouts.

Where few sizes fit side by side without a rest, area says little: of two rows that leave as much over, one may use up
panels that nothing else goes well with. The dual weights of the programme say what each panel is worth along a row of
the cloth, so that no row weighs more than a whole and the rows of a shortest cover weigh just that.
"""

from __future__ import annotations

from collections.abc import Sequence

from plumpline.layout.budget import Budget
from plumpline.layout.desk import Desk
from plumpline.layout.sets import Bar, Bars, ListedSets, TooManySets
from plumpline.layout.simplex import Demand, fractional_cover

WHOLE = 1 << 20  # what a full row weighs, roughly: weights are rounded to whole numbers


def row_weights(desk: Desk, budget: Budget) -> list[list[int]]:
    """What each variant of each kind weighs; its width where there are too many rows to look at."""
    ways = [variant for kind in desk.kinds for variant in kind.variants]
    bars = [Bar(way.w, None if way.columns is None else tuple(sorted(x for x, _ in way.columns))) for way in ways]
    numbers = iter(range(len(ways)))
    groups = [(kind.qty, tuple(next(numbers) for _ in kind.variants)) for kind in desk.kinds]
    try:
        rows = ListedSets(Bars(desk.width, tuple(bars), tuple(groups)), budget)
    except TooManySets:
        return [[way.w for way in kind.variants] for kind in desk.kinds]
    demands = [Demand(qty, of, tuple(ways[way].h for way in of)) for qty, of in groups]
    cover = fractional_cover(demands, len(ways), rows.heaviest, budget)
    return [[int(cover.weights[way] * WHOLE) for way in of] for _, of in groups]


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
