# Plans panels and their piping together: the panels first, then strips from what is left over, with a bound for both.
"""The planner of strips with piping, given the planner of the panels alone.

``area-with-strips``: ``{}``. A bound on both: the areas within the outlines, and width × length of all piping, over the
width of the cloth; joins and the loss at their ends come on top.
"""

from __future__ import annotations

from fractions import Fraction
from math import ceil, isqrt
from typing import Protocol

from plumpline.layout.bounds import Bound
from plumpline.layout.budget import Budget, Slices, to_its_end
from plumpline.layout.shape_bounds import true_area
from plumpline.layout.strip import PipedPlan, Piping, PipingCut, Plan, Strip
from plumpline.layout.strips import ENDLESS, free_rectangles, piping_for


class PanelPlanner(Protocol):
    """The planner of panels alone."""

    def steps(self) -> Slices[None]:
        """Work slice by slice."""

    def plan(self) -> Plan:
        """The plan as it stands."""


def check_piping(strip: Strip) -> None:
    """Raise ``ValueError`` for piping that no length of this cloth can give."""
    for piping in strip.piping:
        if piping.width <= 0 or piping.length <= 0 or piping.join < 0:
            raise ValueError("piping needs a width and a length above 0, and a join of at least 0")
        if _longest(strip.width, piping) <= piping.join:
            raise ValueError("no strip of the piping would be longer than a join takes away")


def _longest(width: int, piping: Piping) -> int:
    """The longest strip that any length of the cloth gives."""
    if piping.bias:
        return isqrt(2 * width * width)
    return ENDLESS if piping.width <= width else width


class PipedPlanner:
    """One strip with piping being planned."""

    def __init__(self, strip: Strip, budget: Budget, panels: PanelPlanner) -> None:
        check_piping(strip)
        self.strip = strip
        self.budget = budget
        self.panels = panels
        self.bound = Bound(ceil(area_with_strips(strip) / strip.width), "area-with-strips", {})
        self.cut: tuple[int, tuple[PipingCut, ...]] | None = None

    def steps(self) -> Slices[None]:
        """Spend the budget slice by slice; ``plan`` can be had after the first slice."""
        with self.budget.portion(9, 10):
            yield from self.panels.steps()
        plan = self.panels.plan()
        free = free_rectangles(self.strip, plan.placements)
        yield
        self.cut = yield from piping_for(self.strip, free, plan.length, self.budget)

    def plan(self) -> PipedPlan:
        """The plan as it stands: until the panels are laid for good all piping is cut beyond them."""
        plan = self.panels.plan()
        length, piping = self.cut or self._beyond(plan.length)
        bound = max(Bound(plan.at_least, plan.proof_name, plan.proof_data), self.bound, key=lambda b: b.at_least)
        return PipedPlan(
            length, bound.at_least, bound.name, bound.data, plan.placements, plan.phase, plan.alike, plan.work, piping
        )


    def _beyond(self, length: int) -> tuple[int, tuple[PipingCut, ...]]:
        end = max([length + self.strip.gap, *(flaw.y + flaw.h for flaw in self.strip.flaws)])
        free = [(0, end, self.strip.width, ENDLESS)]
        return to_its_end(piping_for(self.strip, free, length, Budget(0)))


def area_with_strips(strip: Strip) -> Fraction:
    """What panels and piping cover at least."""
    return true_area(strip) + sum(piping.width * piping.length for piping in strip.piping)
