# Lays equal circles in staggered rows or columns, nested as deep as the width allows.
"""Regular arrangements of equal circles on a strip, and the shortest of them.

In the densest plane packing (Thue 1910) rows lie √3/2 diameters apart. On a cloth that is not a whole number of
diameters wide the circles of a row can be spread, and then the next row sinks deeper between them; or the hexagons are
turned, so that one more column fits across. Both families are gone through, with every number to a row or column, and
so are grids in which only some rows change places with a row of one less. All distances are whole units rounded up:
no two circles come nearer than asked. O(n + k²) for n circles, k across.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plumpline.layout.shapes import ceil_root

Corner = tuple[int, int]  # lower left corner of the square around a circle


@dataclass(frozen=True)
class Rounds:
    """``count`` circles of one ``diameter`` on a ``width``, ``gap`` apart."""

    width: int
    diameter: int
    count: int
    gap: int = 0

    @property
    def pitch(self) -> int:
        """The least distance between two centres."""
        return self.diameter + self.gap

    @property
    def sway(self) -> int:
        """How far the centres may lie apart across the cloth."""
        return self.width - self.diameter

    def depth(self, aside: int) -> int:
        """How far along the roll a circle lies behind one that lies ``aside`` from it across."""
        room = self.pitch * self.pitch - aside * aside
        return ceil_root(room) if room > 0 else 0


def staggered(rounds: Rounds) -> tuple[Corner, ...]:
    """The shortest regular arrangement."""
    return min(_arrangements(rounds), key=lambda corners: max(y for _, y in corners))


def _arrangements(rounds: Rounds) -> Iterator[tuple[Corner, ...]]:
    most = rounds.sway // rounds.pitch + 1
    for across in range(1, most + 1):
        yield _equal_rows(rounds, across)
    if most > 1:
        for short in range(-(-rounds.count // most) + 1):
            yield _rows_with_short_ones(rounds, most, short)
    for columns in range(most + 1, rounds.sway // -(-rounds.pitch // 2) + 2):
        yield _columns(rounds, columns)


def _equal_rows(rounds: Rounds, across: int) -> tuple[Corner, ...]:
    """Rows of ``across``, every other one moved to the right by half of the spacing."""
    spacing = max(2 * rounds.sway // (2 * across - 1), rounds.pitch)
    aside = min(rounds.sway - (across - 1) * spacing, spacing // 2 if across > 1 else rounds.sway)
    deep = max(rounds.depth(aside), -(-rounds.pitch // 2) if aside else rounds.pitch)
    rows = -(-rounds.count // across)
    corners = [
        (aside * (row % 2) + place * spacing, row * deep) for row in range(rows) for place in range(across)
    ]
    return tuple(corners[: rounds.count])


def _rows_with_short_ones(rounds: Rounds, across: int, short: int) -> tuple[Corner, ...]:
    """Rows of ``across``, ``short`` of them with one less, which lies between the circles of its neighbours."""
    spacing = rounds.sway // (across - 1)
    deep = max(rounds.depth(spacing // 2), -(-rounds.pitch // 2))
    rows = -(-(rounds.count + short) // across)
    corners: list[Corner] = []
    y = 0
    for row in range(rows):
        is_short = row % 2 == 1 and row // 2 < short
        beside_short = row % 2 == 0 and 0 < row // 2 <= short
        y += 0 if row == 0 else deep if is_short or beside_short else rounds.pitch
        first = spacing // 2 if is_short else 0
        corners += [(first + place * spacing, y) for place in range(across - is_short)]
    return tuple(corners[: rounds.count])


def _columns(rounds: Rounds, columns: int) -> tuple[Corner, ...]:
    """Columns nearer to each other than a pitch, every other one moved along the roll."""
    spacing = rounds.sway // (columns - 1)
    deep = rounds.depth(spacing)
    step = max(rounds.pitch, 2 * deep)
    rows = -(-2 * rounds.count // columns) + 1
    corners = sorted(
        ((column * spacing, row * step + column % 2 * deep) for column in range(columns) for row in range(rows)),
        key=lambda corner: (corner[1], corner[0]),
    )
    return tuple(corners[: rounds.count])
