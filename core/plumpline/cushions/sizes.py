"""From what was measured to the finished size: which measures a cover needs, and what comes off them."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.fit import Fit
from plumpline.job import Cushion, Job, name_of
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.problems import Problem


@dataclass(frozen=True)
class Word:
    """A measure in words: what it is called, and how a thing is by it: "width", "wide"."""

    noun: str
    adjective: str


WORDS = {
    "width": Word("width", "wide"),
    "length": Word("height", "high"),
}


def missing(cushion: Cushion, names: tuple[str, ...]) -> list[Problem]:
    """A problem for every measure that the cover cannot do without and that has not been taken."""
    return [
        Problem(
            f"{cushion.at}/insert/{name}", f"missing-{name}", f"Measure the {WORDS[name].noun} of {name_of(cushion)}."
        )
        for name in names
        if cushion.insert.size.get(name) is None
    ]


def contradictions(cushion: Cushion) -> list[Problem]:
    """What is said of the finished size and cannot be true together."""
    measured_finished = cushion.insert.measured in ("old-cover", "opening")
    problems = []
    if measured_finished and any(cushion.cover.smaller_by.lengths):
        text = "The finished size was measured, so nothing comes off it: make “smaller by” 0, or measure the pad."
        problems.append(Problem(f"{cushion.at}/cover/smaller_by", "rules-contradict", text))
    if measured_finished and cushion.size_from == "finished":
        text = "Either the finished size is wanted or something was measured: choose one of the two."
        problems.append(Problem(f"{cushion.at}/insert/measured", "rules-contradict", text))
    if cushion.insert.clearance and cushion.insert.measured != "opening":
        text = "A clearance belongs to an opening: say that the opening was measured, or take it out."
        problems.append(Problem(f"{cushion.at}/insert/clearance", "rules-contradict", text))
    return problems


def finished_size(cushion: Cushion, fit: Fit) -> Measures:
    """The size of the cover from seam to seam: what was measured, less the clearance of an opening or the fit."""
    insert = cushion.insert
    if cushion.size_from == "finished":
        return Measures(tuple((name, insert.size[name]) for name, _ in fit.by))
    off = (insert.clearance if insert.measured == "opening" else by for by in fit.by.lengths)
    return Measures(tuple((name, insert.size[name] - less) for (name, _), less in zip(fit.by, off, strict=True)))


def nothing_left(cushion: Cushion, job: Job, fit: Fit, finished: Measures) -> list[Problem]:
    """The problem of a cover that is taken in by all there is of it."""
    for name, size in finished:
        if size <= 0:
            less = write_length(fit.by[name] or cushion.insert.clearance, job.units)
            text = f"Made {less} smaller, nothing is left of {name_of(cushion)}: "
            text += f"it would not be {WORDS[name].adjective} at all."
            at = "insert/clearance" if cushion.insert.clearance else "cover/smaller_by"
            return [Problem(f"{cushion.at}/{at}", "nothing-left", text)]
    return []
