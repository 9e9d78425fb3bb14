# Solves the small covering programmes behind the bounds, exactly, in whole numbers.
"""Fractional covering by column generation (Gilmore and Gomory, *Operations Research* 9 (1961) 849-859).

The programme is: cover every demand with feasible sets at the least total, where a demand may be split over several
ways to meet it. Its dual gives each way a weight such that no feasible set weighs more than 1; that is all a
certificate needs, and any weights can be made into one by dividing by the heaviest set. The basis inverse is kept in
whole numbers over one common denominator (integer pivoting: Edmonds 1967, Bareiss, *Mathematics of Computation* 22
(1968) 565-578), so a step costs O(m²) multiplications for m rows and nothing is ever rounded.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from fractions import Fraction

from plumpline.layout.budget import Budget

Heaviest = Callable[[Sequence[int]], tuple[int, tuple[int, ...]]]


@dataclass(frozen=True)
class Demand:
    """``qty`` things, each of which takes one of ``ways`` and then asks its ``needs`` of that way."""

    qty: int
    ways: tuple[int, ...]
    needs: tuple[int, ...]


@dataclass(frozen=True)
class Cover:
    """A lower bound on any fractional cover, and the weight of every way that proves it."""

    value: Fraction
    weights: tuple[Fraction, ...]


def fractional_cover(demands: Sequence[Demand], ways: int, heaviest: Heaviest, budget: Budget) -> Cover:
    """The least total of feasible sets that covers all demands, and its dual weights.

    ``heaviest`` returns for whole weights of the ways the heaviest feasible set and how often it uses each way.
    Stopped early it still returns a valid, only weaker, bound.
    """
    basis = _Basis(demands, ways)
    while True:
        weights = basis.weights()
        value, chosen = heaviest([max(w, 0) for w in weights])
        entering = basis.entering(value, chosen)
        budget.spend(10 + basis.size * basis.size // 3)
        if entering is None or budget.over:
            break
        basis.pivot(*entering)
    return _certified(demands, [max(w, 0) for w in basis.weights()], heaviest)


def _certified(demands: Sequence[Demand], weights: Sequence[int], heaviest: Heaviest) -> Cover:
    heaviest_set = max(heaviest(weights)[0], 1)
    exact = tuple(Fraction(w, heaviest_set) for w in weights)
    value = sum(
        (d.qty * min(n * exact[w] for w, n in zip(d.ways, d.needs, strict=True)) for d in demands), Fraction(0)
    )
    return Cover(value, exact)


class _Basis:
    """Rows: one for each way (what sets provide must reach what is asked), one for each demand with a choice."""

    def __init__(self, demands: Sequence[Demand], ways: int) -> None:
        self.demands = [d for d in demands if len(d.ways) > 1]
        self.ways = ways
        self.size = size = ways + len(self.demands)
        self.denominator = 1
        self.inverse = [[int(i == j) for j in range(size)] for i in range(size)]
        self.solution = [0] * size
        self.cost = [1] * ways + [0] * len(self.demands)
        for d in demands:
            if len(d.ways) == 1:
                self.solution[d.ways[0]] += d.qty * d.needs[0]
        for row, d in enumerate(self.demands, start=ways):
            self.inverse[d.ways[0]][row] = d.needs[0]
            self.solution[d.ways[0]] += d.qty * d.needs[0]
            self.solution[row] = d.qty

    def weights(self) -> list[int]:
        """The dual value of every way, times the denominator."""
        return self._duals()[: self.ways]

    def _duals(self) -> list[int]:
        paid = [row for row, cost in enumerate(self.cost) if cost]
        return [sum(self.inverse[row][j] for row in paid) for j in range(self.size)]

    def entering(self, value: int, chosen: tuple[int, ...]) -> tuple[int, list[int]] | None:
        """Cost and column of something that would shorten the cover, or None at the optimum."""
        duals = self._duals()
        for way in range(self.ways):
            if duals[way] < 0:
                return 0, [-int(way == j) for j in range(self.size)]
        if value > self.denominator:
            return 1, list(chosen) + [0] * len(self.demands)
        for row, d in enumerate(self.demands, start=self.ways):
            for way, need in zip(d.ways, d.needs, strict=True):
                if need * duals[way] < duals[row]:
                    return 0, [-need if j == way else int(j == row) for j in range(self.size)]
        return None

    def pivot(self, cost: int, column: list[int]) -> None:
        """Bring a column into the basis in place of the row that it empties first.

        Ties go to the lexicographically least row, so no basis comes back (Dantzig, Orden and Wolfe 1955).
        """
        used = [j for j, c in enumerate(column) if c]
        through = [sum(row[j] * column[j] for j in used) for row in self.inverse]
        best = -1
        for i, t in enumerate(through):
            if t > 0 and (best < 0 or self._empties_first(i, t, best, through[best])):
                best = i
        self._eliminate(best, through)
        self.cost[best] = cost

    def _empties_first(self, i: int, through_i: int, j: int, through_j: int) -> bool:
        mine = [a * through_j for a in (self.solution[i], *self.inverse[i])]
        return mine < [b * through_i for b in (self.solution[j], *self.inverse[j])]

    def _eliminate(self, pivot: int, through: list[int]) -> None:
        p, old = through[pivot], self.denominator
        source, amount = self.inverse[pivot], self.solution[pivot]
        for i, t in enumerate(through):
            if i != pivot:
                self.inverse[i] = [(a * p - t * b) // old for a, b in zip(self.inverse[i], source, strict=True)]
                self.solution[i] = (self.solution[i] * p - t * amount) // old
        self.denominator = p
