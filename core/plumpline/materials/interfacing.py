# Interfacing: the length to buy for equal panels, laid in rows across its width.
"""By area alone the length would be too short: panels lie whole across the width. All lengths in nm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.figures import counted, listed, size
from plumpline.lengths import UNITS, write_length

#: Width of the roll where none is said (common practice: 90 cm).
ROLL = 90 * UNITS["cm"]


@dataclass(frozen=True)
class Rows:
    """Equal panels in rows."""

    width: int
    length: int
    count: int
    across: int

    @property
    def rows(self) -> int:
        """Whole rows."""
        return -(-self.count // self.across)

    @property
    def along(self) -> int:
        """The length they take."""
        return self.rows * self.length


@dataclass(frozen=True)
class Interfacing:
    """Panels of some sizes, each size in rows of its own."""

    kinds: tuple[Rows, ...]
    roll: int

    @property
    def length(self) -> int:
        """All rows together: never too short, sometimes more than a lay plan would need."""
        return sum(kind.along for kind in self.kinds)

    def working(self, units: str) -> str:
        """Row by row."""
        lines = [
            f"{kind.count} of {size(kind.width, kind.length, units)}, {kind.across} across, "
            f"{counted(kind.rows, 'row', 'rows')}"
            for kind in self.kinds
        ]
        return f"{write_length(self.roll, units)} wide: {listed(lines)}: {write_length(self.length, units)}."


def interfacing(panels: Sequence[tuple[int, int, int]], roll: int = ROLL) -> Interfacing | None:
    """Panels as (width, length, count), turned where that takes less; None if one fits neither way."""
    kinds = []
    for width, length, count in panels:
        ways = [Rows(w, n, count, roll // w) for w, n in ((width, length), (length, width)) if w <= roll]
        if not ways:
            return None
        kinds.append(min(ways, key=lambda rows: rows.along))
    return Interfacing(tuple(kinds), roll)
