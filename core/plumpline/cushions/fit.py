"""The fit: how much smaller than its pad a cover is made, and which pad to order for a size that is wanted."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.job import NM_PER_CM, Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.measures import Measures

# Up to this short side a feather pad is taken in by the smaller amount (common practice).
_SMALL_PAD = {"in": 16 * NM_PER_INCH, "cm": 40 * NM_PER_CM, "mm": 40 * NM_PER_CM}

# Pads as they are sold, short side first: inches (North America) and centimetres (Europe). Common practice.
_STOCKED_IN = ((12, 12), (14, 14), (16, 16), (18, 18), (20, 20), (22, 22), (24, 24), (26, 26))
_STOCKED_IN_LONG = ((12, 20), (14, 22), (20, 26), (20, 30), (20, 36))
_STOCKED_CM = ((40, 40), (45, 45), (50, 50), (60, 60), (30, 50), (40, 60))


@dataclass(frozen=True)
class Fit:
    """How much smaller the cover is over each whole measure, in nm, and the rule that says so."""

    by: Measures
    rule: str


@dataclass(frozen=True)
class Pad:
    """The pad to order, in nm: the size the rule asks for and the stocked size nearest above it, if any."""

    size: Measures
    stocked: Measures | None


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
}


def _amounts(job: Job) -> tuple[int, int]:
    if job.units == "in":
        return NM_PER_INCH, 2 * NM_PER_INCH
    return 25 * NM_PER_CM // 10, 5 * NM_PER_CM


def pad_for(finished: Measures, fit: Fit, job: Job) -> Pad:
    """The pad for a cover of the finished size, and the least stocked pad that is no smaller either way.

    A stocked pad more than 2 in (5 cm) larger either way is no answer: such a pad is made to measure.
    """
    inch = job.units == "in"
    size = finished.plus(fit.by)
    width, length = size["width"], size["length"]
    unit = NM_PER_INCH if inch else NM_PER_CM
    sizes = _STOCKED_IN + _STOCKED_IN_LONG if inch else _STOCKED_CM
    slack = 2 * NM_PER_INCH if inch else 5 * NM_PER_CM
    turned = [(a * unit, b * unit) for a, b in sizes] + [(b * unit, a * unit) for a, b in sizes]
    near = [(w, n) for w, n in turned if 0 <= w - width <= slack and 0 <= n - length <= slack]
    stocked = min(near, key=lambda size: size[0] * size[1], default=None)
    return Pad(size, stocked and Measures((("width", stocked[0]), ("length", stocked[1]))))
