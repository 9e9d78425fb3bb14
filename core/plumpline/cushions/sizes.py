"""From what was measured to the finished size: which measures a cover needs, and what comes off them."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.fit import Fit, fit_of
from plumpline.job import Cushion, Job, name_of
from plumpline.lengths import write_length
from plumpline.measures import Measures, word_of
from plumpline.problems import Problem


@dataclass(frozen=True)
class Sized:
    """A cover sized up: the fit, and the finished size from seam to seam."""

    fit: Fit
    finished: Measures


def size_up(
    cushion: Cushion, job: Job, names: tuple[str, ...], as_it_is: tuple[str, ...] = ()
) -> Sized | list[Problem]:
    """The size of a cover that has these measures, or everything that keeps it from having one.

    Nothing comes off the measures that are taken `as_it_is`.
    """
    problems = _missing(cushion, names + as_it_is) + _contradictions(cushion, names)
    if problems:
        return problems
    fit = fit_of(cushion, job, names)
    fitted = _finished_size(cushion, fit, job.larger)
    finished = Measures(fitted.named + cushion.insert.size.only(as_it_is).named)
    return _nothing_left(cushion, job, fit, fitted) or Sized(fit, finished)


def _missing(cushion: Cushion, names: tuple[str, ...]) -> list[Problem]:
    who = name_of(cushion)
    return [
        Problem(f"{cushion.at}/insert/{name}", f"missing-{name}", f"Measure the {word_of(name, names).noun} of {who}.")
        for name in names
        if cushion.insert.size.get(name) is None
    ]


def _contradictions(cushion: Cushion, names: tuple[str, ...]) -> list[Problem]:
    measured_finished = cushion.insert.measured in ("old-cover", "opening")
    problems = []
    if measured_finished and any(cushion.cover.smaller_by.only(names).lengths):
        text = "The finished size was measured, so nothing comes off it: make “smaller by” 0, or measure the pad."
        problems.append(Problem(f"{cushion.at}/cover/smaller_by", "rules-contradict", text))
    if measured_finished and cushion.size_from == "finished":
        text = "Either the finished size is wanted or something was measured: choose one of the two."
        problems.append(Problem(f"{cushion.at}/insert/measured", "rules-contradict", text))
    if cushion.insert.clearance and cushion.insert.measured != "opening":
        text = "A clearance belongs to an opening: say that the opening was measured, or take it out."
        problems.append(Problem(f"{cushion.at}/insert/clearance", "rules-contradict", text))
    return problems


def _finished_size(cushion: Cushion, fit: Fit, larger: int) -> Measures:
    """What was measured, less the clearance of an opening or the fit, and as much `larger` as is asked."""
    insert, off = cushion.insert, fit.by.lengths
    if cushion.size_from == "finished":
        off = (0,) * len(off)
    elif insert.measured == "opening":
        off = (insert.clearance,) * len(off)
    sizes = zip(fit.by.names, off, strict=True)
    return Measures(tuple((name, insert.size[name] - less + larger) for name, less in sizes))


def _nothing_left(cushion: Cushion, job: Job, fit: Fit, finished: Measures) -> list[Problem]:
    for name, size in finished:
        if size <= 0:
            less = write_length(fit.by[name] or cushion.insert.clearance, job.units)
            text = f"Made {less} smaller, nothing is left of {name_of(cushion)}: "
            text += f"it would not be {word_of(name, finished.names).adjective} at all."
            at = "insert/clearance" if cushion.insert.clearance else "cover/smaller_by"
            return [Problem(f"{cushion.at}/{at}", "nothing-left", text)]
    return []
