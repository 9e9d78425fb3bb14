# Counts the work a plan may cost, so that the same job ends at the same plan on every machine.
"""Work is counted, never timed: one unit is about one microsecond of CPython on an ordinary machine.

A caller may look at the plan as it improves (``report``) and end the search early (``stop``). A caller who would
rather give a time than an amount of work gives a ``clock``, which then alone says how much of it is gone; such a
search is not repeatable, since its parts get their shares by the clock as well.
"""

from __future__ import annotations

from collections.abc import Callable, Generator, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import TypeVar, cast

from plumpline.layout.strip import Plan

T = TypeVar("T")
Slices = Generator[None, None, T]  # work done a little at a time, with a result at its end

SLICE = 20_000  # the most work between two yields, roughly
QUICK_WORK = 15_000
FULL_WORK = 40 * QUICK_WORK
_ASKED_EVERY = 1_000


@dataclass
class Budget:
    """``limit`` units of work in all, or as long as ``clock`` is below 1, the share of the time that is gone.

    ``stop`` and ``clock`` are asked about every thousand units, ``report`` is told of better plans.
    """

    limit: int
    stop: Callable[[], bool] | None = None
    report: Callable[[Plan], None] | None = None
    clock: Callable[[], float] | None = None
    spent: int = 0
    stopped: bool = False
    gone: float = 0.0
    until: float = 1.0
    _asked: int = 0
    _yielded: int = 0

    def slice_done(self) -> bool:
        """Whether a slice of work was done since this was last true: time to yield."""
        if self.spent - self._yielded < SLICE:
            return False
        self._yielded = self.spent
        return True

    def spend(self, units: int) -> None:
        """Count ``units`` of work done, and now and then ask whether to go on."""
        self.spent += units
        if self.spent - self._asked >= _ASKED_EVERY:
            self._asked = self.spent
            self.stopped = self.stopped or (self.stop is not None and self.stop())
            if self.clock is not None:
                self.gone = self.clock()

    @contextmanager
    def portion(self, part: int, of: int) -> Iterator[None]:
        """Within the block the budget is only ``part`` parts ``of`` the work, or the time, still left."""
        whole, end = self.limit, self.until
        self.limit = self.spent + max(whole - self.spent, 0) * part // of
        self.until = self.gone + max(end - self.gone, 0.0) * part / of
        try:
            yield
        finally:
            self.limit, self.until = whole, end

    def half(self) -> Budget:
        """Half of what is left, as a budget of its own that is stopped with this one but reports nothing."""
        left, time = max(self.limit - self.spent, 0), max(self.until - self.gone, 0.0)
        return Budget(left // 2, self.stop, clock=self.clock, gone=self.gone, until=self.gone + time / 2)

    @property
    def over(self) -> bool:
        """Whether the search should end now."""
        return self.stopped or (self.spent >= self.limit if self.clock is None else self.gone >= self.until)


def to_its_end(slices: Slices[T]) -> T:
    """The result of work that nobody wants to see in between."""
    try:
        while True:
            next(slices)
    except StopIteration as end:
        return cast(T, end.value)


def budget_of(work: int | Budget) -> Budget:
    """A budget from a plain number of units, or the budget itself."""
    return work if isinstance(work, Budget) else Budget(work)
