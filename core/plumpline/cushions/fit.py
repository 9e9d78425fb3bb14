"""The fit: how much smaller than its pad a cover is made, and which pad to order for a size that is wanted."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.stocked import stocked_pad
from plumpline.geometry import Point
from plumpline.job import NM_PER_CM, Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.measures import Measures

# Up to this short side a feather pad is taken in by the smaller amount (common practice).
_SMALL_PAD = {"in": 16 * NM_PER_INCH, "cm": 40 * NM_PER_CM, "mm": 40 * NM_PER_CM}


@dataclass(frozen=True)
class Fit:
    """How much smaller the cover is over each whole measure, in nm, and the rule that says so."""

    by: Measures
    rule: str


@dataclass(frozen=True)
class Pad:
    """The pad to order, in nm: the size the rule asks for and the stocked size nearest above it, if any.

    A straight-sided one has an `outline`, from the lower left corner of the box that the size is of.
    """

    size: Measures
    stocked: Measures | None
    outline: tuple[Point, ...] = ()


def fit_of(cushion: Cushion, job: Job, names: tuple[str, ...]) -> Fit:
    """The maker's own figure for each measure if there is one, else the rule for the filling.

    The rules are common practice, and each can be set aside.
    """
    smaller = cushion.cover.smaller_by
    said = [smaller.get(name) for name in names]
    by, rule = _rule(cushion, job, min(cushion.insert.size[name] for name in names))
    if all(nm is None for nm in said):
        return Fit(Measures(tuple((name, by) for name in names)), rule)
    words = "as you set it" if None not in said else f"one side as you set it, the other by the rule: {rule}"
    return Fit(Measures(tuple((n, by if nm is None else nm) for n, nm in zip(names, said, strict=True))), words)


def _rule(cushion: Cushion, job: Job, short: int) -> tuple[int, str]:
    """What the rule takes off an insert of that short side, in nm, and its words."""
    if cushion.insert.measured in ("old-cover", "opening"):
        return 0, "the finished size was measured"
    fill = cushion.insert.fill
    own = job.fits.get(fill or "")
    if own is not None and cushion.kind != "bolster":
        return own, f"{_OWN_WORDS.get(fill or '', fill)}, by your own rule"
    if fill == "foam" and cushion.kind == "boxed":
        return 0, "foam in a boxed cover"
    if cushion.kind == "bolster":
        return 0, "a bolster is covered at its own size"
    one, two = _amounts(job)
    if fill in ("feather", "down"):
        small = _SMALL_PAD[job.units]
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
    "foam-crumb": "foam crumb, as for polyester",
    "own": "your own filling, as for polyester",
}

# What a filling is called where the maker has a rule for it, if not by its bare name.
_OWN_WORDS = {"hollow-fibre": "hollow fibre", "foam-crumb": "foam crumb", "firm": "firm pad", "own": "your own filling"}


def _amounts(job: Job) -> tuple[int, int]:
    if job.units == "in":
        return NM_PER_INCH, 2 * NM_PER_INCH
    return 25 * NM_PER_CM // 10, 5 * NM_PER_CM


def pad_for(finished: Measures, fit: Fit, cushion: Cushion, job: Job) -> Pad:
    """The pad for a cover of the finished size, and the stocked one that serves, if any; else it is made to measure."""
    size = finished.plus(fit.by)
    return Pad(size, stocked_pad(size, cushion.insert.fill, job.units))


def most_apart(fill: str | None) -> int:
    """How far two readings may differ: 1/2 in on a soft pad, 1/8 in on foam (common practice); in nm."""
    return NM_PER_INCH // 8 if fill == "foam" else NM_PER_INCH // 2
