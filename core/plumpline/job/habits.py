"""What is taken where the maker says nothing, by the system of units; every figure is common practice."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.lengths import NM_PER_INCH

NM_PER_CM = 10_000_000
NM_PER_YARD = 36 * NM_PER_INCH
NM_PER_METRE = 100 * NM_PER_CM


@dataclass(frozen=True)
class Habits:
    """What is taken where the maker says nothing: lengths in nm.

    A zip is `zip_shorter` than its side; a back in two pieces has its `overlap` up to a `large` cover, above that its
    `large_overlap`, and with buttons the `button_overlap`. A zip band `returns` so far round each corner,
    and corners are rounded by the `radius`. Trim takes its `trim_join` more where its ends meet, piping its
    `piping_join`; its `cord` is so thick, and no join of its strips lies nearer to a corner than `clear_of_corner`.
    A `flange` is so wide, a frill stands out by its `frill_depth`, has its `frill_hem` where it is single,
    and is joined from strips no shorter than `frill_strip`.
    What is `narrowest` is the least that is worth keeping, or joining on; a part of a face has its `part_width`, or
    lies so far from the edge.
    """

    seam: int
    grid: int
    selvedge: int
    squaring: int
    step: int
    least_seam: int
    zip_seam: int
    zip_shorter: int
    hem: int
    overlap: int
    large_overlap: int
    large: int
    button_overlap: int
    returns: int
    radius: int
    trim_join: int
    narrowest: int
    part_width: int
    piping_join: int
    cord: int
    clear_of_corner: int
    flange: int
    frill_depth: int
    frill_hem: int
    frill_strip: int


HABITS = {
    "in": Habits(
        seam=NM_PER_INCH // 2,
        grid=NM_PER_INCH // 8,
        selvedge=NM_PER_INCH // 2,
        squaring=2 * NM_PER_INCH,
        step=NM_PER_YARD // 8,
        least_seam=NM_PER_INCH // 4,
        zip_seam=3 * NM_PER_INCH // 4,
        zip_shorter=2 * NM_PER_INCH,
        hem=NM_PER_INCH,
        overlap=4 * NM_PER_INCH,
        large_overlap=5 * NM_PER_INCH,
        large=16 * NM_PER_INCH,
        button_overlap=3 * NM_PER_INCH // 2,
        returns=4 * NM_PER_INCH,
        radius=2 * NM_PER_INCH,
        trim_join=NM_PER_INCH,
        narrowest=4 * NM_PER_INCH,
        part_width=2 * NM_PER_INCH,
        piping_join=2 * NM_PER_INCH,
        cord=5 * NM_PER_INCH // 32,
        clear_of_corner=3 * NM_PER_INCH,
        flange=2 * NM_PER_INCH,
        frill_depth=3 * NM_PER_INCH,
        frill_hem=NM_PER_INCH // 2,
        frill_strip=12 * NM_PER_INCH,
    ),
    "cm": Habits(
        seam=15 * NM_PER_CM // 10,
        grid=NM_PER_CM // 10,
        selvedge=NM_PER_CM,
        squaring=5 * NM_PER_CM,
        step=10 * NM_PER_CM,
        least_seam=6 * NM_PER_CM // 10,
        zip_seam=2 * NM_PER_CM,
        zip_shorter=5 * NM_PER_CM,
        hem=25 * NM_PER_CM // 10,
        overlap=10 * NM_PER_CM,
        large_overlap=12 * NM_PER_CM,
        large=40 * NM_PER_CM,
        button_overlap=4 * NM_PER_CM,
        returns=10 * NM_PER_CM,
        radius=5 * NM_PER_CM,
        trim_join=25 * NM_PER_CM // 10,
        narrowest=10 * NM_PER_CM,
        part_width=5 * NM_PER_CM,
        piping_join=5 * NM_PER_CM,
        cord=4 * NM_PER_CM // 10,
        clear_of_corner=75 * NM_PER_CM // 10,
        flange=5 * NM_PER_CM,
        frill_depth=75 * NM_PER_CM // 10,
        frill_hem=15 * NM_PER_CM // 10,
        frill_strip=30 * NM_PER_CM,
    ),
}
HABITS["mm"] = HABITS["cm"]
