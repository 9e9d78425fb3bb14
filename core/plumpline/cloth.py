"""The cloth as it is laid: usable width, repeat and motifs after the wash, and what a length costs."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from plumpline.job import Cloth, shrunk
from plumpline.layout.strip import Flaw, Motif, Repeat


@dataclass(frozen=True)
class Laid:
    """The cloth on the table: nm, x from the left usable edge, y from the squared cut end."""

    usable: int
    repeat: Repeat | None
    motifs: tuple[Motif, ...]
    flaws: tuple[Flaw, ...]


def lost_before_cutting(cloth: Cloth) -> tuple[Fraction, Fraction]:
    """The fractions (across, along) gone from the cloth when it is cut."""
    if cloth.wash == "before-cutting":
        return cloth.shrink_across, cloth.shrink_along
    return Fraction(0), Fraction(0)


def _lost_after_making(cloth: Cloth) -> tuple[Fraction, Fraction]:
    if cloth.wash == "after-making":
        return cloth.shrink_across, cloth.shrink_along
    return Fraction(0), Fraction(0)


def cut_across(cloth: Cloth, size: int, grid: int) -> int:
    """The size to chalk for `size` nm lying across the cloth: allowed for a later wash, up to the grid."""
    return up_to(grid, size / (1 - _lost_after_making(cloth)[0]))


def cut_along(cloth: Cloth, size: int, grid: int) -> int:
    """The size to chalk for `size` nm lying along the cloth: allowed for a later wash, up to the grid."""
    return up_to(grid, size / (1 - _lost_after_making(cloth)[1]))


def longest_across(cloth: Cloth, usable: int, grid: int) -> int:
    """The longest size, in nm, that `cut_across` still chalks within `usable` nm: the other way round."""
    step = grid or 1
    return int(usable // step * step * (1 - _lost_after_making(cloth)[0]))


def up_to(grid: int, size: Fraction) -> int:
    """The size rounded up to the grid, in nm; to a whole nm where there is none."""
    step = grid or 1
    return -(-size // step) * step


def lay_out(cloth: Cloth, width: int) -> Laid:
    """The cloth of true `width` nm as it lies on the table; washed before cutting, everything on it shrinks."""
    across, along = lost_before_cutting(cloth)
    left = cloth.selvedge
    return Laid(
        usable=int((width - 2 * left) * (1 - across)),
        repeat=_repeat(cloth, across, along),
        motifs=tuple(
            Motif(motif.id, shrunk(motif.across - left, across), shrunk(motif.along, along)) for motif in cloth.motifs
        ),
        flaws=tuple(flaw_as_laid(cloth, flaw.across, flaw.along, flaw.width, flaw.length) for flaw in cloth.flaws),
    )


def _repeat(cloth: Cloth, across: Fraction, along: Fraction) -> Repeat | None:
    if not (cloth.repeat_across or cloth.repeat_along):
        return None
    return Repeat(shrunk(cloth.repeat_across, across), shrunk(cloth.repeat_along, along), shrunk(cloth.drop, along))


def flaw_as_laid(cloth: Cloth, across: int, along: int, width: int, length: int) -> Flaw:
    """A flaw so far from the left edge and the cut end of the unwashed cloth, so wide and so long, on the table."""
    # Both edges are rounded away from the flaw, so that the shrunk flaw still covers all of it.
    lost_across, lost_along = lost_before_cutting(cloth)
    left = cloth.selvedge
    x, y = (across - left) * (1 - lost_across) // 1, along * (1 - lost_along) // 1
    right = -(-(across + width - left) * (1 - lost_across) // 1)
    end = -(-(along + length) * (1 - lost_along) // 1)
    return Flaw(int(x), int(y), int(right - x), int(end - y))


def needed(cloth: Cloth, laid: int, repeats: int) -> int:
    """The length as bought for `laid` nm on the table: both ends squared, the wash undone, whole repeats added."""
    along = lost_before_cutting(cloth)[1]
    return int(-(-(laid + cloth.squaring) / (1 - along) // 1)) + repeats * cloth.repeat_along


def most_laid(cloth: Cloth, bought: int, repeats: int) -> int:
    """The longest that may be laid on the table from `bought` nm, in nm: `needed` the other way round."""
    along = lost_before_cutting(cloth)[1]
    return int((bought - repeats * cloth.repeat_along) * (1 - along) // 1) - cloth.squaring


def narrowest_width(cloth: Cloth, usable: int) -> int:
    """The least true width, in nm, that has `usable` nm on the table: `lay_out` the other way round."""
    return 2 * cloth.selvedge + int(-(-usable / (1 - lost_before_cutting(cloth)[0]) // 1))


def to_buy(cloth: Cloth, length: int) -> int:
    """`length` nm up to the shop's next selling step."""
    return -(-length // cloth.sold_by) * cloth.sold_by
