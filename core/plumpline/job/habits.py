"""What is taken where the maker says nothing, by the system of units; every figure is common practice."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.lengths import NM_PER_INCH

NM_PER_CM = 10_000_000
NM_PER_YARD = 36 * NM_PER_INCH
NM_PER_METRE = 100 * NM_PER_CM


@dataclass(frozen=True)
class Habits:
    """What is taken where the maker says nothing: lengths in nm."""

    seam: int
    grid: int
    selvedge: int
    squaring: int
    step: int
    least_seam: int


HABITS = {
    "in": Habits(
        seam=NM_PER_INCH // 2,
        grid=NM_PER_INCH // 8,
        selvedge=NM_PER_INCH // 2,
        squaring=2 * NM_PER_INCH,
        step=NM_PER_YARD // 8,
        least_seam=NM_PER_INCH // 4,
    ),
    "cm": Habits(
        seam=15 * NM_PER_CM // 10,
        grid=NM_PER_CM // 10,
        selvedge=NM_PER_CM,
        squaring=5 * NM_PER_CM,
        step=10 * NM_PER_CM,
        least_seam=6 * NM_PER_CM // 10,
    ),
}
HABITS["mm"] = HABITS["cm"]
