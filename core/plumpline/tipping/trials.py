"""What a cloth would take with one value of the job changed: planned as far as is needed to tell."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import cached_property

from plumpline.cloth import most_laid, needed, to_buy
from plumpline.job import Cloth, Job
from plumpline.layout.budget import QUICK_WORK, Budget, Slices
from plumpline.layout.solve import planner_of
from plumpline.layout.strip import CannotLay, Plan, Strip
from plumpline.layplan import ClothPlan, ClothPlanner, repeats_added, strip_with_piping
from plumpline.pieces import Piece, Strips
from plumpline.prepared import worked_out

# What it takes to work out a cover, and to set a planner up, in units of counted work.
_WORK_OF_A_COVER = 2_000
_WORK_OF_A_START = 1_000

GLANCE = QUICK_WORK // 3  # for the questions that only say where to look on
_PATIENT = 4 * QUICK_WORK  # for the questions on which a proof depends


class Untold(Exception):
    """Where a value tips is not found: the work that it may cost is done, or no plan in hand can follow the value."""


@dataclass(frozen=True)
class Cutting:
    """All that is cut from one cloth, the cloth itself, and the whole repeats bought for an unknown start."""

    cloth: Cloth
    pieces: tuple[Piece, ...]
    strips: tuple[Strips, ...]

    @property
    def repeats(self) -> int:
        """Whole repeats bought for not knowing where the first cut falls."""
        return repeats_added(self.cloth, self.pieces)

    def strip(self) -> Strip:
        """The same in the engine's words."""
        return strip_with_piping(self.cloth, self.pieces, self.strips)

    def buy(self, laid: int) -> int:
        """What it takes to buy for `laid` nm on the table."""
        return to_buy(self.cloth, needed(self.cloth, laid, self.repeats))


@dataclass(frozen=True)
class Trial:
    """A plan made with a value changed: what it takes to buy, and what no plan can do with less than; nm.

    Without a `plan` there is none, whatever is bought; without a `cutting` it cannot even be said what is cut.
    """

    cutting: Cutting | None
    plan: Plan | None

    @property
    def buy(self) -> int | None:
        """What the plan takes to buy; None where there is no plan."""
        return self.cutting.buy(self.plan.length) if self.cutting and self.plan else None

    @property
    def at_least(self) -> int | None:
        """What any plan takes to buy at least; None where there can be none."""
        return self.cutting.buy(self.plan.at_least) if self.cutting and self.plan else None

    def keeps(self, buy: int) -> bool:
        """Whether no more than `buy` is needed."""
        return self.buy is not None and self.buy <= buy

    def refutes(self, buy: int) -> bool:
        """Whether it is proven that `buy` is not enough."""
        return self.cutting is not None and (self.at_least is None or self.at_least > buy)


class Trials:
    """One cloth of a job, and how much work may go into what it would take with other values.

    `planned` is its plan with the values of the job.
    """

    def __init__(self, job: Job, planned: ClothPlan, work: int) -> None:
        cushions = tuple(cushion for cushion in job.cushions if planned.cloth.id in cushion.cloths)
        self.job = replace(job, cushions=cushions)
        self.planned = planned
        self.left = work

    @property
    def own(self) -> Trial:
        """The plan of the job as it is."""
        return Trial(Cutting(self.planned.cloth, self.planned.pieces, self.planned.strips), self.planned.plan)

    def less_than(self, buy: int) -> int:
        """The next shorter length that is sold."""
        return buy - self.planned.cloth.sold_by

    def with_width(self, width: int) -> Cutting | None:
        """What is cut if the cloth is so wide, in nm; None where that cannot be said."""
        cloth = replace(self.planned.cloth, width=width)
        return self._cut(cloth) if self.joins_vary else self._on(cloth)

    def with_repeat(self, along: int) -> Cutting:
        """What is cut if the pattern repeats itself after so many nm along the roll."""
        return self._on(replace(self.planned.cloth, repeat_along=along))

    @cached_property
    def joins_vary(self) -> bool:
        """Whether other pieces are cut from cloth that is narrower or wider by up to a quarter."""
        width = self.planned.cloth.width or 0
        cuttings = [self._cut(replace(self.planned.cloth, width=width * part // 4)) for part in (3, 5)]
        return any(cutting is None or cutting.pieces != self.planned.pieces for cutting in cuttings)

    def _on(self, cloth: Cloth) -> Cutting:
        """The pieces of the job as they are, on another cloth."""
        return Cutting(cloth, self.planned.pieces, self.planned.strips)

    def larger(self, by: int) -> Cutting | None:
        """What is cut if every cover comes out larger by so many nm."""
        return self._cut(self.planned.cloth, by)

    def _cut(self, cloth: Cloth, larger: int = 0) -> Cutting | None:
        self.left -= _WORK_OF_A_COVER * len(self.job.cushions)
        cloths = tuple(cloth if other.id == cloth.id else other for other in self.job.cloths)
        prepared = worked_out(replace(self.job, cloths=cloths, larger=larger))
        if not prepared.is_ready(cloth):
            return None
        return Cutting(cloth, prepared.pieces_on(cloth), prepared.strips_on(cloth))

    def of(self, cutting: Cutting | None, buy: int | None = None, work: int = QUICK_WORK) -> Slices[Trial]:
        """What it takes to lay what is cut; with `buy` only as far as to tell whether that is enough.

        Raises `Untold` once there is no work left for it.
        """
        if self.left <= 0:
            raise Untold
        if cutting is None:
            return Trial(None, None)
        budget = Budget(min(work, self.left))
        try:
            plan = yield from _laid(cutting, buy, budget)
        except CannotLay:
            return Trial(cutting, None)
        finally:
            self.left -= _WORK_OF_A_START + budget.spent
        return Trial(cutting, plan)

    def settles(self, cut: Callable[[], Cutting | None], buy: int) -> Slices[Trial]:
        """Whether `buy` is enough, looked at longer where a quick look finds neither a plan nor a proof."""
        trial = yield from self.of(cut(), buy)
        if trial.keeps(buy) or trial.refutes(buy):
            return trial
        return (yield from self.of(cut(), buy, min(_PATIENT, max(QUICK_WORK, self.left // 5))))


def _laid(cutting: Cutting, buy: int | None, budget: Budget) -> Slices[Plan]:
    if not cutting.pieces:
        planner = ClothPlanner(cutting.cloth, (), cutting.strips, budget.limit)
        plan = (yield from planner.steps()).plan
        budget.spend(plan.work)
        return plan
    enough = 0 if buy is None else max(1, most_laid(cutting.cloth, buy, cutting.repeats))
    plan = yield from _planned(cutting.strip(), budget, enough)
    if cutting.strips and plan.length > enough > 0:
        # The panels left off where they alone would have kept the length.
        plan = yield from _planned(cutting.strip(), budget, 0)
    return plan


def _planned(strip: Strip, budget: Budget, enough: int) -> Slices[Plan]:
    planner = planner_of(strip, budget, enough=enough)
    yield from planner.steps()
    return planner.plan()
