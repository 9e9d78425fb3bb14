"""The fit: how much smaller than its pad a cover is made, and which pad to order for a size that is wanted."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.job import NM_PER_CM, Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length

# Up to this short side a feather pad is taken in by the smaller amount (common practice).
_SMALL_PAD = {"in": 16 * NM_PER_INCH, "cm": 40 * NM_PER_CM, "mm": 40 * NM_PER_CM}

# Pads as they are sold, short side first: inches (North America) and centimetres (Europe). Common practice.
_STOCKED_IN = ((12, 12), (14, 14), (16, 16), (18, 18), (20, 20), (22, 22), (24, 24), (26, 26))
_STOCKED_IN_LONG = ((12, 20), (14, 22), (20, 26), (20, 30), (20, 36))
_STOCKED_CM = ((40, 40), (45, 45), (50, 50), (60, 60), (30, 50), (40, 60))


@dataclass(frozen=True)
class Fit:
    """How much smaller the cover is over its whole width and height, in nm, and the rule that says so."""

    width: int
    length: int
    rule: str


@dataclass(frozen=True)
class Pad:
    """The pad to order, in nm: the size the rule asks for and the stocked size nearest above it, if any."""

    width: int
    length: int
    stocked_width: int | None
    stocked_length: int | None


def fit_of(cushion: Cushion, job: Job) -> Fit:
    """The maker's own figure if there is one, else the rule for the filling (common practice, editable)."""
    width, length = cushion.cover.smaller_width, cushion.cover.smaller_length
    by, rule = _rule(cushion, job)
    if width is None and length is None:
        return Fit(by, by, rule)
    said = "as you set it" if None not in (width, length) else f"one side as you set it, the other by the rule: {rule}"
    return Fit(by if width is None else width, by if length is None else length, said)


def _rule(cushion: Cushion, job: Job) -> tuple[int, str]:
    """What the rule takes off either way, in nm, and its words."""
    if cushion.insert.measured in ("old-cover", "opening"):
        return 0, "the finished size was measured"
    fill, insert = cushion.insert.fill, cushion.insert
    one, two = _amounts(job)
    if fill in ("feather", "down"):
        small = _SMALL_PAD[job.units]
        short = min(insert.width or 0, insert.length or 0)
        pad = short + one if cushion.size_from == "finished" else short
        if pad <= small:
            return one, f"{fill}, pad with a short side up to {write_length(small, job.units)}"
        return two, f"{fill}, pad with a short side over {write_length(small, job.units)}"
    if fill in ("microbead", "firm"):
        return 0, _FILL_WORDS[fill]
    if fill is None:
        return one, "filling not said: as for polyester"
    return one, _FILL_WORDS[fill]


_FILL_WORDS = {
    "polyester": "polyester",
    "hollow-fibre": "hollow fibre",
    "microbead": "microbead",
    "firm": "firm pad",
    "foam": "foam in a knife-edge cover",
}


def _amounts(job: Job) -> tuple[int, int]:
    if job.units == "in":
        return NM_PER_INCH, 2 * NM_PER_INCH
    return 25 * NM_PER_CM // 10, 5 * NM_PER_CM


def pad_for(width: int, length: int, job: Job) -> Pad:
    """The pad of `width` by `length` nm, and the least stocked pad that is no smaller either way.

    A stocked pad more than 2 in (5 cm) larger either way is no answer: such a pad is made to measure.
    """
    inch = job.units == "in"
    unit = NM_PER_INCH if inch else NM_PER_CM
    sizes = _STOCKED_IN + _STOCKED_IN_LONG if inch else _STOCKED_CM
    slack = 2 * NM_PER_INCH if inch else 5 * NM_PER_CM
    turned = [(a * unit, b * unit) for a, b in sizes] + [(b * unit, a * unit) for a, b in sizes]
    near = [(w, n) for w, n in turned if 0 <= w - width <= slack and 0 <= n - length <= slack]
    stocked = min(near, key=lambda size: size[0] * size[1], default=(None, None))
    return Pad(width, length, *stocked)
