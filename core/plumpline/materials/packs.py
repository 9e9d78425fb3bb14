# Lengths cut from packs of one length, such as trim or zip chain: the fewest packs, whole or with hidden joins.
"""A pack cannot be longer than it is, so total ÷ pack is only a bound. The least number is found over all ways of
sharing the lengths out among packs; where there are too many, a good way is taken and the bound says what may be left.
All lengths in nm.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import product
from math import comb, prod

from plumpline.figures import counted, listed
from plumpline.lengths import write_length

Lengths = tuple[int, ...]

# Ways of taking a group out of what is left that are looked through for a proven answer.
_MOST_WAYS = 3_000
# So many ways of cutting a pack are told; and so many lengths to a pack are looked at for the bound.
_MOST_TOLD = 6
_MOST_TO_A_PACK = 50


@dataclass(frozen=True)
class Packed:
    """What is cut from each pack, a length that is joined with its overlap; `at_least` packs are needed in any case."""

    packs: tuple[Lengths, ...]
    joins: int
    at_least: int

    @property
    def proven(self) -> bool:
        """Whether no fewer packs can do."""
        return len(self.packs) == self.at_least

    def working(self, pack: int, units: str) -> str:
        """What is cut from each pack."""
        alike = list(Counter(self.packs).items())
        cuts = [
            f"{counted(number, 'pack', 'packs')} cut into {listed([write_length(cut, units) for cut in pieces])}"
            for pieces, number in alike[:_MOST_TOLD]
        ]
        cuts += ["and so on, one after the other"] if len(alike) > _MOST_TOLD else []
        joins = counted(self.joins, "hidden join", "hidden joins") if self.joins else "no join"
        fewest = "" if self.proven else f", at least {self.at_least}"
        whole = counted(len(self.packs), "pack", "packs")
        return f"{whole} of {write_length(pack, units)}{fewest}, {joins}: {'; '.join(cuts)}."


def fewest_packs(lengths: Sequence[int], pack: int, joins: int, join: int) -> Packed | None:
    """The fewest packs, and then the fewest joins, for these lengths; None if one of them cannot be made.

    No length may have more than so many ``joins``, each of which takes ``join`` more of the trim.
    """
    return _Sharing(tuple(sorted(lengths, reverse=True)), pack, joins, join).packed()


@dataclass(frozen=True)
class _Way:
    """A way to make some of the lengths, ranked by packs and then by joins."""

    packs: tuple[Lengths, ...] = ()
    joins: int = 0

    @property
    def rank(self) -> tuple[int, int]:
        return len(self.packs), self.joins

    def and_then(self, other: _Way) -> _Way:
        return _Way(self.packs + other.packs, self.joins + other.joins)


@dataclass(frozen=True)
class _Sharing:
    lengths: Lengths
    pack: int
    joins: int
    join: int

    def packed(self) -> Packed | None:
        if not all(self._made((length,)) for length in self._counts):
            return None
        few = prod(comb(count + 2, 2) for count in self._counts.values()) <= _MOST_WAYS
        way = self._best() if few else self._good()
        return Packed(way.packs, way.joins, len(way.packs) if few and self._sure else self._floor())

    @cached_property
    def _counts(self) -> Counter[int]:
        return Counter(self.lengths)

    @property
    def _sure(self) -> bool:
        """Whether every order of cutting keeps to the joins allowed: no length spans more packs than it may."""
        return not self.joins or self.lengths[0] + (self.joins + 1) * self.join <= self.joins * self.pack

    def _floor(self) -> int:
        """Packs needed by length; and, without joins, by how few of the longest fit into one."""
        floor = -(-sum(self.lengths) // self.pack)
        if self.joins:
            return floor
        bounds = [floor]
        for most in range(1, _MOST_TO_A_PACK + 1):
            long = sum(count for length, count in self._counts.items() if length * (most + 1) > self.pack)
            bounds.append(-(-long // most))
        return max(bounds)

    def _made(self, group: Lengths) -> _Way | None:
        """A group cut one after the other, each pack to its end; None where a length gets too many joins."""
        packs: list[list[int]] = [[]]
        left, joins = self.pack, 0
        for length in group:
            needed, more = length, 0
            while needed > left:
                if self.joins and left > self.join:
                    packs[-1].append(left)
                    needed, more = needed - left + self.join, more + 1
                packs.append([])
                left = self.pack
                if more > self.joins or self.pack <= self.join or (not self.joins and needed > left):
                    return None
            packs[-1].append(needed)
            left, joins = left - needed, joins + more
        return _Way(tuple(tuple(cuts) for cuts in packs), joins)

    def _best(self) -> _Way:
        """The best way over all ways to part the lengths into groups, each cut one after the other."""
        sizes = tuple(self._counts)
        best: dict[tuple[int, ...], _Way] = {(0,) * len(sizes): _Way()}
        for counts in product(*(range(self._counts[size] + 1) for size in sizes)):
            if counts not in best:
                ways = [
                    made.and_then(best[tuple(a - b for a, b in zip(counts, part, strict=True))])
                    for part in _parts(counts)
                    if (made := self._made(_spelt(sizes, part))) is not None
                ]
                best[counts] = min(ways, key=lambda way: way.rank)
        return best[tuple(self._counts.values())]

    def _good(self) -> _Way:
        """Joined: one after the other. Whole: each length, the longest first, into the first pack that holds it."""
        chained = self._made(self.lengths) if self.joins else None
        if chained is not None:
            return chained
        long = {length: count for length, count in self._counts.items() if length > self.pack}
        way = self._first_fit({length: count for length, count in self._counts.items() if length not in long})
        for length, count in long.items():
            alone = self._made((length,)) or _Way()
            way = way.and_then(_Way(alone.packs * count, alone.joins * count))
        return way

    def _first_fit(self, counts: dict[int, int]) -> _Way:
        packs: list[list[int]] = []
        rooms: list[int] = []
        for length, count in counts.items():
            at = 0
            for _ in range(count):
                while at < len(packs) and rooms[at] < length:
                    at += 1
                if at == len(packs):
                    packs.append([])
                    rooms.append(self.pack)
                packs[at].append(length)
                rooms[at] -= length
        return _Way(tuple(tuple(cuts) for cuts in packs))


def _parts(counts: tuple[int, ...]) -> Iterator[tuple[int, ...]]:
    """All groups out of what is left that hold one of the longest there is."""
    first = next(i for i, count in enumerate(counts) if count)
    ranges = [range(1 if i == first else 0, count + 1) for i, count in enumerate(counts)]
    return product(*ranges)


def _spelt(sizes: Lengths, counts: tuple[int, ...]) -> Lengths:
    return tuple(size for size, count in zip(sizes, counts, strict=True) for _ in range(count))
