"""Tipping points of the repeat along the roll, with which a length may rise and fall.

A plan is a structure that follows the repeat (`layout.holding`), so it keeps a length over a whole range of repeats.
That no plan does with less is proven piece by piece. Where all panels that are bound hang on one anchor, and the places
of their points differ by less than a repeat, let them alone be laid. Two of them one behind the other then ask for
(height + difference of their points) ≤ m · repeat, for a whole m; so the structures that can be laid change only at
repeats which are such a height divided by a whole number. Between two of these every structure gets no shorter as the
repeat grows, so the least length rises from each of them to the next: a length refuted at the first is refuted up to
the next. Free panels beside only make it longer.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from functools import partial
from itertools import product

from plumpline.cloth import lost_before_cutting, most_laid
from plumpline.job import shrunk
from plumpline.layout.budget import QUICK_WORK, Slices
from plumpline.layout.holding import Movable, furthest
from plumpline.layout.strip import Panel, Strip
from plumpline.layplan import follows_repeat
from plumpline.pieces import Piece
from plumpline.tipping.intervals import Interval
from plumpline.tipping.trials import Cutting, Trial, Trials, Untold

_MOST_CHANGES = 12  # of the structures that can be laid, within one interval


@dataclass(frozen=True)
class _End:
    """Where an interval ends, the last repeat that belongs to it, and what is bought beyond; None for both: nowhere."""

    last: int
    beyond: Trial | None
    proven: bool


@dataclass(frozen=True)
class _Less:
    """A repeat `at` which a trial does with less; without a `trial` there is none, or none was found.

    `proven`: there is none on the way to it.
    """

    at: int
    trial: Trial | None
    proven: bool


class Repeats:
    """The intervals of the repeat along the roll: `found` grows while `steps` goes on."""

    def __init__(self, trials: Trials) -> None:
        self.trials = trials
        self.own = trials.planned.cloth.repeat_along
        self.low, self.high = -(-3 * self.own // 4), 5 * self.own // 4
        self.found: list[Interval] = []

    def steps(self) -> Slices[None]:
        """Find the interval around the own repeat, then the next on either side."""
        planned, trial = self.trials.planned, self.trials.own
        assert trial.buy is not None
        if not any(follows_repeat(planned.cloth, piece.face) for piece in planned.pieces):
            self.found.append(Interval(None, None, trial.buy, True, own=True))
            return
        down = yield from self._end(self.own, trial, self.low)
        up = yield from self._end(self.own, trial, self.high)
        self.found.append(self._interval(down, up, trial.buy, own=True))
        for end, far in ((down, self.low), (up, self.high)):
            if end.beyond is not None:
                yield from self._next(end, end.beyond, far)

    def _next(self, end: _End, beyond: Trial, far: int) -> Slices[None]:
        """The next interval, beyond an end of the own one, towards `far`."""
        assert beyond.buy is not None
        step = 1 if far > self.own else -1
        here = _End(end.last + step, self.trials.own, end.proven)
        there = yield from self._end(here.last, beyond, far)
        low, high = (here, there) if step > 0 else (there, here)
        self.found.append(self._interval(low, high, beyond.buy))

    def _interval(self, down: _End, up: _End, buy: int, *, own: bool = False) -> Interval:
        low = down.last if down.beyond else None
        high = up.last + 1 if up.beyond else None
        return Interval(low, high, buy, down.proven and up.proven, own)

    def _end(self, start: int, trial: Trial, far: int) -> Slices[_End]:
        """Up to where from `start` towards `far` the same is bought as by the plan of a trial.

        Raises `Untold` where no plan in hand can follow the repeat.
        """
        buy, at = trial.buy, start
        assert buy is not None
        step = 1 if far > start else -1
        while True:
            last = self._kept(trial, at, far, buy)
            if last is None:
                raise Untold
            if step < 0:
                last = self._above_less(trial, at, last, buy)
            found = yield from self._less_within(start, last, buy)
            while step < 0 and found.trial is not None and found.at < start:
                last = min(start, max(found.at + 1, self._above_less(found.trial, start, found.at, buy)))
                found = yield from self._less_within(start, last, buy)
            less = found.trial if found.at > start else None
            if less is not None:
                return _End(found.at - 1, less, found.proven)
            proven = found.proven and found.trial is None
            if last == far:
                return _End(far, None, proven)
            at = last + step
            trial = yield from self.trials.of(self._cut(at), None, 2 * QUICK_WORK)
            assert trial.buy is not None
            if trial.buy != buy:
                return _End(last, trial, proven and (trial.buy < buy or trial.refutes(buy)))

    def _above_less(self, trial: Trial, near: int, last: int, buy: int) -> int:
        """The least repeat from `last` up towards `near` at which the plan of a trial does not do with less."""
        edge = self._kept(trial, last, near, self.trials.less_than(buy))
        return last if edge is None else edge + 1

    def _cut(self, along: int) -> Cutting:
        return self.trials.with_repeat(along)

    def _kept(self, trial: Trial, at: int, far: int, buy: int) -> int | None:
        """The repeat furthest from `at` towards `far` at which the plan of a trial still does with `buy`."""
        assert trial.cutting is not None
        assert trial.plan is not None
        movable = Movable.of(trial.cutting.strip(), trial.plan)
        if movable is None:
            return None
        keeps = partial(self._does, movable, buy)
        return furthest(keeps, at, far) if keeps(at) else None

    def _does(self, movable: Movable, buy: int, along: int) -> bool:
        """Whether a plan that follows the repeat does with `buy`."""
        cutting = self._cut(along)
        length = movable.length(shrunk(along, lost_before_cutting(cutting.cloth)[1]))
        return length is not None and length <= most_laid(cutting.cloth, buy, cutting.repeats)

    def _less_within(self, start: int, last: int, buy: int) -> Slices[_Less]:
        """The place nearest to `start`, on the way to `last`, from which on less is bought.

        Less can begin only where new structures can be laid, or at the lower end.
        """
        less, low, high = self.trials.less_than(buy), min(start, last), max(start, last)
        changes = self._changes(low, high)
        places = [low, *changes[:_MOST_CHANGES]]
        proven = len(changes) <= _MOST_CHANGES
        for place in places if last > start else places[::-1]:
            trial = yield from self.trials.settles(partial(self._cut, place), less)
            if trial.keeps(less):
                return _Less(place, trial, proven)
            proven = proven and trial.refutes(less) and (yield from self._holds_alone(trial, less))
        return _Less(last, None, proven)

    def _holds_alone(self, trial: Trial, less: int) -> Slices[bool]:
        """Whether the panels that are bound prove by themselves that it takes more, and may be reasoned about so."""
        cutting = trial.cutting
        assert cutting is not None
        bound = tuple(piece for piece in cutting.pieces if follows_repeat(cutting.cloth, piece.face))
        if not _follow_one_point(replace(cutting, pieces=bound).strip(), bound):
            return False
        if bound == cutting.pieces and not cutting.strips:
            return True
        alone = replace(cutting, pieces=bound, strips=())
        looked = yield from self.trials.settles(lambda: alone, less)
        return looked.refutes(less)

    def _changes(self, low: int, high: int) -> list[int]:
        """The repeats above `low` up to `high` from which on other structures of bound panels can be laid."""
        cutting = self._cut(high)
        lost = lost_before_cutting(cutting.cloth)[1]
        strip = cutting.strip()
        points = [(h, c) for panel in strip.panels for h, c in _points(strip, panel)]
        apart = {h + c - other for (h, c), (_, other) in product(points, points)}
        if strip.start == "measured":
            apart |= {-c for _, c in points}
        shortest, longest = (max(1, shrunk(along, lost)) for along in (low, high))
        found = dict.fromkeys(
            along
            for reach in apart
            for repeats in range(max(1, reach // longest), reach // shortest + 1)
            if low < (along := _first_as_long(-(-reach // repeats), lost)) <= high
        )
        return sorted(found)


def _first_as_long(laid: int, lost: Fraction) -> int:
    """The least repeat as bought, in nm, that is so long on the table."""
    return int((laid - Fraction(1, 2)) / (1 - lost) // 1) + 1


def _points(strip: Strip, panel: Panel) -> list[tuple[int, int]]:
    """The heights of a bound panel in its turns, and where it starts from the point that it hangs on."""
    if panel.hangs_along:
        own = [motif.oy for motif in strip.motifs if motif.id == panel.motif]
        return [(panel.extents(turn)[1], oy - panel.point(turn)[1]) for turn, oy in product(panel.turns, own)]
    if panel.group is not None:
        return [(panel.extents(turn)[1], -panel.middle(turn)[1]) for turn in panel.turns]
    return []


def _follow_one_point(strip: Strip, bound: tuple[Piece, ...]) -> bool:
    """Whether panels hang on one anchor, near enough to one another, with no drop: then the reasoning above holds."""
    assert strip.repeat is not None
    anchors = {(panel.motif is not None, panel.group) for panel in strip.panels}
    places = [place for panel in strip.panels for _, place in _points(strip, panel)]
    near = max(places) - min(places) < strip.repeat.along
    within = strip.start != "measured" or max(places) < strip.repeat.along
    return len(anchors) == 1 and not strip.repeat.drop and bool(bound) and near and within
