# Counts the work a plan may cost, so that the same job ends at the same plan on every machine.
"""Work is counted, never timed: one unit is about one microsecond of CPython on an ordinary machine.

A caller may look at the plan as it improves (``report``) and end the search early (``stop``), which is the only way
a clock can enter: it decides when to stop asking, never what is found with the work done so far.
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
    """``limit`` units of work in all; ``stop`` is asked about every thousand units, ``report`` told of better plans."""

    limit: int
    stop: Callable[[], bool] | None = None
    report: Callable[[Plan], None] | None = None
    spent: int = 0
    stopped: bool = False
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
        if self.stop is not None and self.spent - self._asked >= _ASKED_EVERY:
            self._asked = self.spent
            self.stopped = self.stopped or self.stop()

    @contextmanager
    def portion(self, part: int, of: int) -> Iterator[None]:
        """Within the block the budget is only ``part`` parts ``of`` the work still left."""
        whole = self.limit
        self.limit = self.spent + max(whole - self.spent, 0) * part // of
        try:
            yield
        finally:
            self.limit = whole

    @property
    def over(self) -> bool:
        """Whether the search should end now."""
        return self.stopped or self.spent >= self.limit


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
