# Strips: how many make up a length of piping or frill, straight or on the bias, and what their joins cost.
"""Area ÷ width is what no cutting can better. The answers are counted in whole strips, as they are cut and joined. All
lengths in nm.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from math import ceil

from plumpline.figures import counted
from plumpline.geometry import on_the_bias
from plumpline.layout.bias import bias_lengths
from plumpline.layout.shapes import ceil_root
from plumpline.lengths import round_up, write_length


@dataclass(frozen=True)
class StraightStrips:
    """Strips cut across the cloth and joined end to end."""

    count: int
    strip: int
    usable: int
    join: int

    @property
    def joins(self) -> int:
        """Between one strip and the next."""
        return self.count - 1

    @property
    def joined(self) -> int:
        """How long they are together."""
        return self.count * self.usable - self.joins * self.join

    @property
    def along(self) -> int:
        """The length of cloth they take."""
        return self.count * self.strip

    def working(self, units: str) -> str:
        """How the strips are counted."""
        strips, joins = counted(self.count, "strip", "strips"), counted(self.joins, "join", "joins")
        taken = f", {joins} taking {write_length(self.join, units)} each" if self.joins else ""
        strip, usable, joined, along = (
            write_length(nm, units) for nm in (self.strip, self.usable, self.joined, self.along)
        )
        return f"{strips} of {strip} across {usable}{taken}: {joined}, from {along} of cloth."


def straight_strips(length: int, strip: int, usable: int, join: int) -> StraightStrips | None:
    """The fewest strips across the cloth that make up a length; None where a join takes a whole strip."""
    if usable <= join:
        return None
    return StraightStrips(max(1, -(-(length - join) // (usable - join))), strip, usable, join)


def least_square(length: int, strip: int) -> int:
    """The side of a square that holds no less than this length of strip, by its area: a bound, not a size to cut."""
    return ceil_root(length * strip)


def bias_cloth(length: int, strip: int, usable: int, shortest: int) -> int:
    """The length of cloth for so much joined bias, whose two corners are lost up to the shortest strip of use.

    (length · strip + shortest² ÷ 2) ÷ width: Dress Making, CITS trade practical, NIMI (Government of India), p. 220,
    which divides by 1.4 for √2. It counts no joins, and not what is lost at the ends of every strip.
    """
    return ceil(Fraction(2 * length * strip + shortest * shortest, 2 * usable))


@dataclass(frozen=True)
class BiasSquare:
    """A square of cloth cut into bias strips, and the strips it gives."""

    side: int
    strips: tuple[int, ...]
    join: int

    @property
    def joins(self) -> int:
        """Between one strip and the next."""
        return len(self.strips) - 1

    @property
    def joined(self) -> int:
        """How long the strips are together."""
        return sum(self.strips) - self.joins * self.join

    def working(self, strip: int, units: str) -> str:
        """What is cut from the square and how."""
        side, apart, join, all_ = (
            write_length(nm, units) for nm in (self.side, on_the_bias(strip), self.join, self.joined)
        )
        strips, joins = counted(len(self.strips), "strip", "strips"), counted(self.joins, "join", "joins")
        return f"A square of {side}, cut every {apart} along its edge: {strips}, {joins} taking {join} each: {all_}."


def bias_square(length: int, strip: int, join: int, grid: int) -> BiasSquare:
    """The least square on a grid whose bias strips, as they are really cut, make up a length; joins of equal cost."""
    side = max(round_up(least_square(length, strip), grid), grid)
    square = BiasSquare(side, bias_lengths(side, side, strip, join), join)
    while not square.strips or square.joined < length:
        side += grid
        square = BiasSquare(side, bias_lengths(side, side, strip, join), join)
    return square
