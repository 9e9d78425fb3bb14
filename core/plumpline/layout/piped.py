# Plans panels and their piping together: the panels first, then strips from what is left over, with a bound for both.
"""The planner of strips with piping, given the planner of the panels alone.

``area-with-strips``: ``{}``. A bound on both: the areas within the outlines, and width × length of all piping, over the
width of the cloth; joins and the loss at their ends come on top.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from math import ceil, isqrt
from typing import Protocol, TypeVar

from plumpline.layout.bounds import Bound
from plumpline.layout.budget import Budget, Slices, to_its_end
from plumpline.layout.edges import cut_apart, parts_after
from plumpline.layout.shape_bounds import true_area
from plumpline.layout.strip import Piping, PipingCut, Placement, Plan, StraightPlan, Strip
from plumpline.layout.strips import ENDLESS, Free, free_rectangles, piping_for, without

AnyPlan = TypeVar("AnyPlan", bound=Plan)


class PanelPlanner(Protocol):
    """The planner of panels alone."""

    def steps(self) -> Slices[None]:
        """Work slice by slice."""

    def plan(self) -> Plan:
        """The plan as it stands."""


def check_piping(strip: Strip) -> None:
    """Raise ``ValueError`` for piping that no length of this cloth can give."""
    for piping in strip.piping:
        if piping.width <= 0 or piping.length <= 0 or piping.join < 0 or piping.rings <= 0:
            raise ValueError("piping needs a width and a length above 0, and a join of at least 0")
        longest = longest_strip(strip.width, piping)
        if longest < piping.least:
            raise ValueError("no strip of the piping would be longer than a join takes away, or as long as is asked")
        clear = max((high - low for low, high in piping.clear), default=0)
        if longest < piping.length and longest - piping.join <= clear:
            raise ValueError("no strip of the piping would lead over what is to be clear of joins")


def longest_strip(width: int, piping: Piping) -> int:
    """The longest strip that any length of a cloth so wide gives."""
    if piping.bias:
        return isqrt(2 * width * width)
    return ENDLESS if piping.width <= width else width


class NoPanels:
    """The planner where nothing but piping is wanted."""

    def steps(self) -> Slices[None]:
        """Nothing is to be done."""
        yield

    def plan(self) -> Plan:
        """The plan of nothing."""
        return Plan(0, 0, "area", {}, ())


class PipedPlanner:
    """One strip with piping being planned."""

    def __init__(self, strip: Strip, budget: Budget, panels: PanelPlanner) -> None:
        check_piping(strip)
        self.strip = strip
        self.budget = budget
        self.panels = panels
        self.piped: Plan | None = None

    def steps(self) -> Slices[None]:
        """Spend the budget slice by slice; ``plan`` can be had after the first slice."""
        with self.budget.portion(9, 10):
            yield from self.panels.steps()
        plan = self.panels.plan()
        yield
        self.piped = yield from with_piping(self.strip, plan, free_rectangles(self.strip, plan.placements), self.budget)

    def plan(self) -> Plan:
        """The plan as it stands: until the panels are laid for good all piping is cut beyond them."""
        return self.piped or self._beyond(self.panels.plan())

    def _beyond(self, plan: Plan) -> Plan:
        end = max([plan.length + self.strip.gap, *(flaw.y + flaw.h for flaw in self.strip.flaws)])
        free = [(0, end, self.strip.width, ENDLESS)]
        return to_its_end(with_piping(self.strip, plan, free, Budget(0)))


def with_piping(strip: Strip, plan: AnyPlan, free: list[Free], budget: Budget) -> Slices[AnyPlan]:
    """A plan of the panels alone with the strip's piping cut from what is ``free``, and a bound that holds for both."""
    length, piping = yield from piping_for(strip, free, plan.length, budget)
    area = Bound(ceil(area_with_strips(strip) / strip.width), "area-with-strips", {})
    bound = max(Bound(plan.at_least, plan.proof_name, plan.proof_data), area, key=lambda b: b.at_least)
    return replace(
        plan, length=length, at_least=bound.at_least, proof_name=bound.name, proof_data=bound.data, piping=piping
    )


def straight_with_piping(strip: Strip, plan: StraightPlan, budget: Budget) -> Slices[StraightPlan]:
    """A straight-cut plan of the panels alone with the strip's piping, which edge-to-edge cuts part from them as well.

    The blocks of piping are cut from anywhere between the panels if there is a way to cut all apart, else from the
    parts that the plan's own cuts leave; the shorter of the two, then that with fewer joins.
    """
    found = [(yield from with_piping(strip, plan, _free_between(strip, plan), budget))]
    yield
    anywhere = yield from with_piping(strip, plan, free_rectangles(strip, plan.placements), budget)
    yield
    apart = cut_apart(replace(anywhere, placements=(*plan.placements, *_blocks(anywhere.piping))), strip.width)
    if apart is not None:
        found.append(replace(apart, placements=plan.placements, piping=anywhere.piping))
    return min(found, key=lambda piped: (piped.length, joins_of(piped)))


def joins_of(plan: Plan) -> int:
    """All joins in the piping of a plan."""
    return sum(cut.joins for cut in plan.piping)


def _blocks(piping: Sequence[PipingCut]) -> list[Placement]:
    """The rectangles that piping is cut from, strips side by side as one."""
    blocks: list[Placement] = []
    for cut in piping:
        for piece in cut.pieces:
            last = blocks[-1] if blocks else None
            if last and (last.x + last.w, last.y, last.h) == (piece.x, piece.y, piece.h):
                blocks[-1] = replace(last, w=last.w + piece.w)
            elif last and (last.x, last.y + last.h, last.w) == (piece.x, piece.y, piece.w):
                blocks[-1] = replace(last, h=last.h + piece.h)
            else:
                blocks.append(Placement("", len(blocks), piece.x, piece.y, piece.w, piece.h, 0))
    return blocks


def _free_between(strip: Strip, plan: StraightPlan) -> list[Free]:
    """What the cuts of a plan leave of a cloth without end: the parts with no panel in them, clear of flaws."""
    panels = {(p.x, p.y) for p in plan.placements}
    parts = [part for part in parts_after(plan.cuts, strip.width, ENDLESS) if part[:2] not in panels]
    free = [(x, y, x + w, y + h) for x, y, w, h in parts]
    for flaw in strip.flaws:
        free = without(free, (flaw.x, flaw.y, flaw.x + flaw.w, flaw.y + flaw.h))
    return free


def area_with_strips(strip: Strip) -> Fraction:
    """What panels and piping cover at least."""
    return true_area(strip) + sum(piping.width * piping.whole for piping in strip.piping)
