# Finds the first number of a list that is small enough, in logarithmic time, while numbers are taken out.
"""A tournament tree: every inner node holds the least of its two (Knuth, *The Art of Computer Programming* 3)."""

from __future__ import annotations

from collections.abc import Sequence

GONE = 1 << 200


class Firsts:
    """Numbers in a row; building it costs O(n), asking and taking out O(log n)."""

    def __init__(self, numbers: Sequence[int]) -> None:
        self.leaves = 1 << max(len(numbers) - 1, 0).bit_length()
        self.tree = [GONE] * self.leaves + list(numbers) + [GONE] * (self.leaves - len(numbers))
        for node in range(self.leaves - 1, 0, -1):
            self.tree[node] = min(self.tree[2 * node], self.tree[2 * node + 1])

    def first(self, most: int) -> int:
        """The place of the first number that is at most ``most``, -1 if there is none."""
        tree, node = self.tree, 1
        if tree[1] > most:
            return -1
        while node < self.leaves:
            node *= 2
            if tree[node] > most:
                node += 1
        return node - self.leaves

    def take_out(self, place: int) -> None:
        """Leave out the number at ``place`` from now on."""
        tree, node = self.tree, self.leaves + place
        tree[node] = GONE
        while node > 1:
            node //= 2
            tree[node] = min(tree[2 * node], tree[2 * node + 1])
