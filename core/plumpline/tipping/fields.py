"""The tipping points of one cloth as an answer tells them: field by field, from the narrowest or smallest on."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from typing import Any, Protocol

from plumpline.figures import figure, length_to_ask
from plumpline.job import Job
from plumpline.layout.budget import Slices
from plumpline.layplan import ClothPlan
from plumpline.tipping.falling import Falling, size_grid, size_scale, width_scale
from plumpline.tipping.intervals import Interval
from plumpline.tipping.repeats import Repeats
from plumpline.tipping.sentences import Tip, said
from plumpline.tipping.trials import Trials, Untold

Json = dict[str, Any]


class Search(Protocol):
    """A search for the intervals of one field."""

    found: list[Interval]

    def steps(self) -> Slices[None]:
        """Look for them slice by slice."""


def tips(job: Job, planned: ClothPlan, work: int) -> Slices[list[Json]]:
    """The entries of `tipping` of a planned cloth, within so much work.

    For "width", "size" and "repeat.along" the interval around the value of the job in which the same is bought, and
    the next on either side, within a quarter of the value. A field is left out where the work is done before its own
    interval is known, and where the cloth has no such value.
    """
    trials = Trials(job, planned, work)
    entries: list[Json] = []
    for field, search in _FIELDS.items():
        if field == "repeat.along" and not planned.cloth.repeat_along:
            continue
        looked = search(trials)
        with suppress(Untold):
            yield from looked.steps()
        entries += _told(field, looked.found, planned, job)
    return entries


def _by_width(trials: Trials) -> Search:
    return Falling(trials, width_scale(trials))


def _by_size(trials: Trials) -> Search:
    return Falling(trials, size_scale(trials))


_FIELDS: dict[str, Callable[[Trials], Search]] = {"width": _by_width, "size": _by_size, "repeat.along": Repeats}


def _told(field: str, found: list[Interval], planned: ClothPlan, job: Job) -> list[Json]:
    grid = size_grid(job)
    intervals = [_larger(one, grid) if field == "size" else one for one in found]
    intervals.sort(key=lambda one: (one.low is not None, one.low or 0))
    own = next((one for one in intervals if one.own), None)
    return [_entry(field, one, own, planned, job.units) for one in intervals] if own else []


def _larger(one: Interval, grid: int) -> Interval:
    """An interval of how many steps of the grid covers are made smaller as one of how many nm they are larger.

    Cut sizes are rounded up to the grid, so a step of it is needed as soon as the one before is passed.
    """
    low, high = (None if end is None else 1 - end * grid for end in (one.high, one.low))
    return Interval(low, high, one.buy, one.proven, one.own)


def _entry(field: str, one: Interval, own: Interval, planned: ClothPlan, units: str) -> Json:
    step = planned.cloth.sold_by
    return {
        "field": field,
        "from": None if one.low is None else figure(one.low, units),
        "to": None if one.high is None else figure(one.high, units),
        "buy": None if one.buy is None else figure(one.buy, units),
        "ask": None if one.buy is None else length_to_ask(one.buy, step, units),
        "own": one.own,
        "proven": one.proven,
        **said(field, Tip(one, own, planned, units)),
    }
