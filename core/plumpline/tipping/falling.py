"""Tipping points of a value that the length to buy never rises with: the width, and how much smaller covers are made.

A plan for narrower cloth, or for larger covers, is a plan for wider cloth, or smaller covers. So a length once known to
be enough is enough for all values above, one once refuted is not for any value below, and a tip is exact as soon as a
length is known to be enough at one value and not at the value before. The search leaps from a plan in hand to the least
value at which the same plan still holds, and halves the range between what is enough and what is not.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial

from plumpline.cloth import narrowest_width
from plumpline.job import HABITS, Job
from plumpline.layout.budget import QUICK_WORK, Slices
from plumpline.layout.holding import furthest, narrowest
from plumpline.lengths import TAPE_GRID
from plumpline.prepared import worked_out
from plumpline.tipping.intervals import Interval
from plumpline.tipping.trials import GLANCE, Cutting, Trial, Trials


@dataclass(frozen=True)
class Scale:
    """The whole numbers `low` to `high` that a value is counted in, its `own` among them, and what is cut at each.

    A tip that no plan leads to is looked for no more closely than `fine`. `reach` is the least number at which the plan
    of a trial still holds, given the number that it was made for; `alike` tells whether a length refuted for what is
    cut at a higher number is refuted at a lower one as well.
    """

    low: int
    own: int
    high: int
    fine: int
    cut: Callable[[int], Cutting | None]
    reach: Callable[[int, Trial], int]
    alike: Callable[[Cutting, Cutting], bool]


@dataclass(frozen=True)
class Edge:
    """The least number at which a length is enough, None where it is at all looked at; what is known at it.

    `proven`: at the number `before` it is not, as far as that was tried.
    """

    at: int | None
    trial: Trial
    proven: bool
    before: Trial | None = None


class Falling:
    """The intervals of one value of a cloth, found by trials: `found` grows while `steps` goes on."""

    def __init__(self, trials: Trials, scale: Scale) -> None:
        self.trials = trials
        self.scale = scale
        self.found: list[Interval] = []

    def steps(self) -> Slices[None]:
        """Find the interval around the own value, then the next above, which buys less, and the next below."""
        scale, own = self.scale, self.trials.own
        buy = own.buy
        assert buy is not None
        low = yield from self._lowest(buy, scale.reach(scale.own, own), own)
        high = yield from self._next_drop(buy, scale.own)
        proven = self._alike_within(low.at, high.at) and low.proven and high.proven
        self.found.append(Interval(low.at, high.at, buy, proven, own=True))
        if high.at is not None:
            yield from self._above(high)
        if low.at is not None:
            yield from self._below(low, buy)

    def _above(self, edge: Edge) -> Slices[None]:
        """The next interval above, from an edge on."""
        assert edge.at is not None
        looked = yield from self.trials.of(self.scale.cut(edge.at), None, 2 * QUICK_WORK)
        less = min(trial.buy for trial in (edge.trial, looked) if trial.buy is not None)
        end = yield from self._next_drop(less, edge.at)
        proven = self._alike_within(edge.at, end.at) and edge.proven and end.proven
        self.found.append(Interval(edge.at, end.at, less, proven))

    def _below(self, edge: Edge, buy: int) -> Slices[None]:
        """The next interval below, up to an edge."""
        assert edge.at is not None
        assert edge.before is not None
        before = edge.at - 1
        looked = yield from self.trials.of(self.scale.cut(before), None, 2 * QUICK_WORK)
        plans = [(trial.buy, trial) for trial in (looked, edge.before) if trial.buy is not None and trial.buy > buy]
        if not plans:
            self.found.append(Interval(None, edge.at, None, looked.refutes(buy)))
            return
        more, trial = min(plans, key=lambda plan: plan[0])
        end = yield from self._lowest(more, self.scale.reach(before, trial), trial)
        proven = self._alike_within(end.at, edge.at) and end.proven and looked.at_least == more
        self.found.append(Interval(end.at, edge.at, more, proven))

    def _next_drop(self, buy: int, above: int) -> Slices[Edge]:
        """The least number from which on less than `buy` is enough; `above` is the number where `buy` is bought."""
        less, high = self.trials.less_than(buy), self.scale.high
        at_end = yield from self.trials.settles(partial(self.scale.cut, high), less)
        if not at_end.keeps(less):
            return Edge(None, at_end, at_end.refutes(less))
        return (yield from self._least(less, max(above + 1, self.scale.reach(high, at_end)), at_end, above))

    def _lowest(self, buy: int, known: int, trial: Trial) -> Slices[Edge]:
        """The least number at all at which `buy` is enough, which it is at `known`."""
        low = self.scale.low
        at_end = yield from self.trials.of(self.scale.cut(low), buy, GLANCE)
        if at_end.keeps(buy):
            return Edge(None, at_end, True)
        return (yield from self._least(buy, known, trial, low))

    def _least(self, buy: int, known: int, trial: Trial, above: int) -> Slices[Edge]:
        """The least number at which `buy` is enough, which it is at `known`, but is not taken to be at `above`."""
        below, leaps = above, True
        while True:
            before = known - 1
            if leaps or known - below <= self.scale.fine:
                looked = yield from self.trials.settles(partial(self.scale.cut, before), buy)
                if before <= above or not looked.keeps(buy):
                    return Edge(known, trial, looked.refutes(buy), looked)
                known, trial = max(above + 1, self.scale.reach(before, looked)), looked
                if not leaps:
                    return Edge(known, trial, False, looked)
                leaps = before - known > self.scale.fine
            middle = (known + min(below, known - 1)) // 2
            looked = yield from self.trials.of(self.scale.cut(middle), buy, GLANCE)
            if looked.keeps(buy):
                known, trial = max(above + 1, self.scale.reach(middle, looked)), looked
            else:
                below = middle

    def _alike_within(self, low: int | None, high: int | None) -> bool:
        """Whether what is cut all through an interval is alike, so that a refutation at one end holds for all of it."""
        scale = self.scale
        least = scale.cut(scale.low if low is None else low)
        most = scale.cut(scale.high if high is None else high - 1)
        return least is not None and most is not None and scale.alike(least, most)


def width_scale(trials: Trials) -> Scale:
    """Widths in nm, a quarter to either side."""
    own = trials.planned.cloth.width or 0
    low, grid = -(-3 * own // 4), trials.job.grid or 1

    def reach(width: int, trial: Trial) -> int:
        cutting, plan = trial.cutting, trial.plan
        assert cutting is not None
        assert plan is not None
        strip = cutting.strip()
        least = narrowest(strip, plan)
        if trials.joins_vary:
            # Joins are made where the cloth is a step of the grid too narrow.
            first, last = -(-least // grid), strip.width // grid

            def same(steps: int) -> bool:
                return _same(trials.with_width(narrowest_width(cutting.cloth, steps * grid)), cutting)

            least = max(least, furthest(same, last, first) * grid) if first < last else strip.width
        return min(width, max(low, narrowest_width(cutting.cloth, least)))

    return Scale(low, own, 5 * own // 4, TAPE_GRID[trials.job.units], trials.with_width, reach, _same)


def size_scale(trials: Trials) -> Scale:
    """By how many steps of the grid every cover is made smaller, up to a quarter of the least measure, or larger."""
    covers = worked_out(trials.job).covers
    most = min(cover.finished[name] for cover in covers for name in cover.fit.by.names) // 4
    grid = size_grid(trials.job)

    def cut(smaller: int) -> Cutting | None:
        return trials.larger(-smaller * grid)

    return Scale(-(most // grid), 0, most // grid, 1, cut, lambda smaller, _: smaller, _nest)


def size_grid(job: Job) -> int:
    """The step in nm in which sizes are looked at: that on which cut sizes lie, else the usual one."""
    return job.grid or HABITS[job.units].grid


def _same(one: Cutting | None, other: Cutting | None) -> bool:
    """Whether the very same pieces and strips are cut."""
    return one is not None and other is not None and (one.pieces, one.strips) == (other.pieces, other.strips)


def _nest(larger: Cutting, smaller: Cutting) -> bool:
    """Whether of two makes of the same covers every piece of the smaller one lies within that of the larger."""
    pairs = list(zip(larger.pieces, smaller.pieces, strict=False))
    return len(larger.pieces) == len(smaller.pieces) and all(
        one.id == other.id and one.count == other.count and other.width <= one.width and other.length <= one.length
        for one, other in pairs
    )
