# Plans strips with panels of other shapes than rectangles: as their boxes first, then closer where shapes interlock.
"""The planner for round and straight-sided panels.

The rectangles around the panels are planned as ever, which keeps every rule; then come plans in which the shapes
interlock: ``rounds`` for circles of one size, ``nested`` for all. The shortest is kept, with a bound that holds for the
shapes themselves (``shape_bounds``).
"""

from __future__ import annotations

from dataclasses import replace
from random import Random
from typing import Protocol

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.nested import Nest, NestSearch
from plumpline.layout.rounds import Rounds, staggered
from plumpline.layout.shape_bounds import ShapeBounds
from plumpline.layout.strip import Placement, Plan, StraightPlan, Strip


class BoxPlanner(Protocol):
    """The planner of rectangles."""

    budget: Budget

    @property
    def length(self) -> int | None:
        """The shortest length so far; None before the first layout."""

    def steps(self) -> Slices[None]:
        """Work slice by slice."""

    def straight_steps(self) -> Slices[StraightPlan]:
        """Work slice by slice to the straight-cut plan."""

    def plan(self) -> Plan:
        """The plan as it stands."""


class ShapedPlanner:
    """One strip being planned, given the planner of the rectangles around its panels."""

    def __init__(self, strip: Strip, budget: Budget, boxes: BoxPlanner, random: Random) -> None:
        self.strip = strip
        self.budget = budget
        self.boxes = boxes
        self.random = random
        self.bounds = ShapeBounds(strip, budget)
        self.closer: tuple[Placement, ...] = ()

    @property
    def length(self) -> int | None:
        """The shortest length so far; None before the first layout."""
        return _length(self.closer) if self.closer else self.boxes.length

    def steps(self) -> Slices[None]:
        """Spend the budget slice by slice; ``plan`` can be had after the first slice."""
        yield from self.boxes.steps()
        self.budget.spend(self.boxes.budget.spent)
        if _equal_circles(self.strip):
            self._offer(self._staggered())
            yield
        with self.budget.portion(1, 4):
            yield from self.bounds.strengthen(self.plan().length)
        nest = NestSearch(Nest(self.strip, self.plan(), self.budget), self.random, self.plan())
        for _ in nest.steps(self.bounds.best.at_least):
            if nest.best is not None and nest.length < self.plan().length:
                self._offer(nest.nest.placements(nest.best))
            yield

    def straight_steps(self) -> Slices[StraightPlan]:
        """Slice by slice to the straight-cut plan of the rectangles, with a bound that holds for the shapes."""
        plan = yield from self.boxes.straight_steps()
        yield from self.bounds.strengthen(plan.length)
        bound = self.bounds.best
        return replace(plan, at_least=bound.at_least, proof_name=bound.name, proof_data=bound.data)

    def plan(self) -> Plan:
        """The plan as it stands."""
        plan, bound = self.boxes.plan(), self.bounds.best
        placements = self.closer or plan.placements
        return replace(
            plan, length=_length(placements), placements=placements, work=max(self.budget.spent, plan.work),
            at_least=bound.at_least, proof_name=bound.name, proof_data=bound.data,
        )

    def _offer(self, placements: tuple[Placement, ...]) -> None:
        """Keep the placements if they are the shortest so far."""
        plan = self.plan()
        if _length(placements) < plan.length:
            self.closer = placements
            if self.budget.report is not None:
                self.budget.report(self.plan())

    def _staggered(self) -> tuple[Placement, ...]:
        """Circles of one size in staggered rows or columns."""
        panel = self.strip.panels[0]
        boxes = sorted(self.boxes.plan().placements, key=lambda p: (p.y, p.x))
        corners = staggered(Rounds(self.strip.width, panel.w, len(boxes), self.strip.gap))
        return tuple(replace(p, x=x, y=y) for p, (x, y) in zip(boxes, corners, strict=True))


def _length(placements: tuple[Placement, ...]) -> int:
    return max(p.y + p.h for p in placements)


def _equal_circles(strip: Strip) -> bool:
    """Whether all panels are circles of one size that may lie anywhere."""
    return not strip.flaws and len({p.w for p in strip.panels}) == 1 and all(
        p.shape == "circle" and p.motif is None and (p.group is None or strip.repeat is None) for p in strip.panels
    )
