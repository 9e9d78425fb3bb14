# Says whether panels fit into a given length and, if not, how many complete sets of them do; with the proof of either.
"""The inverse of the lay plan: the length is given, and as many complete sets of panels as possible are wanted.

A *set* is what is of use only as a whole, such as the panels of one cover. Which sets are left out is free, so this is
the knapsack version of strip packing (Beasley, *Operations Research* 33 (1985) 49-64, for single panels): each set
counts one. Leaving out a set never makes a plan invalid, so whatever fits with more sets fits with fewer.

The number is bracketed from both sides. Below: a choice of sets is planned with the given length as all that is asked
(``solve.Planner``, ``enough``), cheapest choices first; counts are halved, then raised one by one. Above: a count of
sets is refuted by one of two theorems, each with a certificate (bounds and their certificates as in ``bounds``):

``each-choice``: ``{"choices": [{"sets": [n, …], "at_least", "name", "data"}, …]}``. However so many sets are chosen,
they include at least n of each kind of set for one of the listed choices, and the panels of that choice alone need
``at_least``, which is more than the length less what an unknown start takes at any rate (``cut_end``). Kinds of equal
sets are numbered in the order they are first given.

``least-sets``: ``{"name", "data"}``, a certificate of ``area``, ``rows`` or ``wider-than-half`` for all panels, or of
``true-area`` (see ``shape_bounds``) where they are not all rectangles. Each of these adds up what every panel
contributes, whichever panels there are: its least area divided by the width, or its least weight × length. So any
sets need at least the sum of what theirs contribute, and even the sets that contribute least, so many of them, exceed
the length (sizes, width and length with one gap, but for ``true-area``).

Sets may want rings of the strip's piping as well as panels, or nothing else; the bounds that add up leave them out.

With k kinds of sets at most ``MOST_CHOICES`` choices are planned to each count, each within its part of the budget.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cached_property
from itertools import accumulate, islice
from math import gcd
from typing import Any

from plumpline.layout.bounds import Bound, Case, CaseBounds, ways_of
from plumpline.layout.budget import Budget, Slices, budget_of, to_its_end
from plumpline.layout.cut_end import lost_to_start
from plumpline.layout.places import possible_turns
from plumpline.layout.shape_bounds import area_of
from plumpline.layout.shapes import is_shaped
from plumpline.layout.solve import planner_of
from plumpline.layout.strip import Json, Plan, Strip

MOST_CHOICES = 30

Counts = tuple[int, ...]
Sets = Sequence[Mapping[str, int]]


@dataclass(frozen=True)
class TooMany:
    """The proof that ``sets`` sets do not fit, whichever are chosen: the name of the theorem and its certificate."""

    sets: int
    name: str
    data: dict[str, Json]


@dataclass(frozen=True)
class Fit:
    """What a given ``length`` makes of ``wanted`` sets.

    ``sets`` are the numbers (from 0, as given) of those laid by ``plan``, the most complete sets found; there is no
    plan where not one was found to fit. ``too_many`` is the least count refuted, None where none was. ``kept_back`` is
    what an unknown start takes at worst before the plan can begin.
    """

    length: int
    wanted: int
    sets: tuple[int, ...]
    plan: Plan | None
    too_many: TooMany | None
    work: int
    kept_back: int = 0

    @property
    def fits(self) -> bool:
        """Whether all sets fit: the plan is the proof. If not, ``too_many`` is, where it is given."""
        return len(self.sets) == self.wanted

    @property
    def proven(self) -> bool:
        """Whether no more complete sets fit."""
        return self.fits or (self.too_many is not None and self.too_many.sets == len(self.sets) + 1)

    @property
    def left(self) -> int:
        """The length left behind the last panel of the plan, at worst."""
        return self.length - (self.plan.length + self.kept_back if self.plan is not None else 0)


def fit_sets(strip: Strip, length: int, sets: Sets, work: int | Budget, seed: int = 0) -> Fit:
    """The most complete ``sets`` (panel id to copies; together all panels) found to fit ``length``, and the proof.

    Raises ``CannotLay`` where no plan obeys the rules and ``ValueError`` for a strip or sets that make no sense.
    """
    return to_its_end(FitSearch(strip, length, sets, budget_of(work), seed).steps())


def equal_sets(strip: Strip, number: int = 0) -> list[dict[str, int]]:
    """The panels of a strip as ``number`` equal sets; 0: as many as there can be."""
    number = number or gcd(*(panel.qty for panel in strip.panels))
    if any(panel.qty % number for panel in strip.panels):
        raise ValueError(f"the quantities do not make {number} equal sets")
    return [{panel.id: panel.qty // number for panel in strip.panels} for _ in range(number)]


@dataclass(frozen=True)
class Shares:
    """A bound that adds up over the panels: what a copy of each contributes, and ``most``, all there is room for."""

    name: str
    data: dict[str, Json]
    of_panels: Sequence[Fraction]
    most: int


class FitSearch:
    """One question of what fits: the kinds of equal sets, what was found to fit, and what was refuted."""

    def __init__(
        self,
        strip: Strip,
        length: int,
        sets: Sets,
        budget: Budget,
        seed: int = 0,
        rings: Sequence[Sequence[int]] = (),
    ) -> None:
        """``rings`` tells for each set how many of each of the strip's piping it wants; left out, all stay as they are.
        """
        self.strip, self.length, self.budget, self.seed = strip, length, budget, seed
        ids = [panel.id for panel in strip.panels]
        members: dict[Counts, list[int]] = {}
        for number, one in enumerate(sets):
            if not set(one) <= set(ids):
                raise ValueError(f"set {number} has panels that are not on the strip")
            wanted = (*(one.get(panel, 0) for panel in ids), *(rings[number] if rings else ()))
            members.setdefault(wanted, []).append(number)
        self._rings_told = bool(rings)
        self.kinds = tuple(members)
        self.members = tuple(members.values())
        everything = (*(panel.qty for panel in strip.panels), *(piping.rings for piping in strip.piping if rings))
        if length <= 0 or self._copies(self._all) != everything:
            raise ValueError("a length above 0 is needed, and sets that have all panels of the strip between them")
        self.wanted = len(sets)
        self.laid: tuple[Counts, Plan, int] | None = None
        self.refuted: dict[Counts, Bound] = {}
        self.too_many: TooMany | None = None

    @property
    def _all(self) -> Counts:
        return tuple(len(numbers) for numbers in self.members)

    def _copies(self, choice: Counts) -> Counts:
        """How many copies of each panel, and rings of each piping, a choice of sets takes."""
        return tuple(
            sum(count * kind[i] for count, kind in zip(choice, self.kinds, strict=True))
            for i in range(len(self.kinds[0]))
        )

    def _strip_for(self, choice: Counts) -> Strip:
        """The strip with what a choice of sets takes, and nothing else."""
        copies = self._copies(choice)
        panels = zip(self.strip.panels, copies[: len(self.strip.panels)], strict=True)
        piping = self.strip.piping
        if self._rings_told:
            counted = zip(piping, copies[len(self.strip.panels) :], strict=True)
            piping = tuple(replace(one, rings=rings) for one, rings in counted if rings)
        return replace(
            self.strip, panels=tuple(replace(panel, qty=qty) for panel, qty in panels if qty), piping=piping
        )

    def steps(self) -> Slices[Fit]:
        """Search slice by slice: all sets first, then halving the count, then one more at a time."""
        with self.budget.portion(1, 4):
            yield from self._ask(self._all)
        if self._found < self.wanted:
            self._by_choices(self.wanted)
            for shares in self._shares() if self.strip.panels else ():
                self._by_least_sets(shares)
            yield from self._halve()
            if self._found < self._most and self.strip.panels and not is_shaped(self.strip):
                yield from self._by_rows()
            yield from self._raise()
        choice, plan, kept_back = self.laid or ((0,) * len(self.kinds), None, 0)
        sets = sorted(n for count, numbers in zip(choice, self.members, strict=True) for n in numbers[:count])
        return Fit(self.length, self.wanted, tuple(sets), plan, self.too_many, self.budget.spent, kept_back)

    @property
    def _found(self) -> int:
        return sum(self.laid[0]) if self.laid is not None else 0

    @property
    def _most(self) -> int:
        """The most sets that are not refuted."""
        return self.too_many.sets - 1 if self.too_many is not None else self.wanted

    def _ask(self, choice: Counts) -> Slices[None]:
        """Plan a choice of sets until it fits, is refuted, or the budget is spent."""
        strip = self._strip_for(choice)
        lost = lost_to_start(strip)
        planner = planner_of(strip, self.budget, self.seed, max(self.length - lost.most, 1))
        yield from planner.steps()
        plan = planner.plan()
        if plan.length + lost.most <= self.length:
            self.laid = choice, plan, lost.most
        elif plan.at_least + lost.least > self.length:
            self.refuted[choice] = Bound(plan.at_least, plan.proof_name, plan.proof_data)

    def _choices(self, count: int) -> Iterator[Counts]:
        """All choices of so many sets, those first that take the most of the sets with the least area."""
        order = sorted(range(len(self.kinds)), key=lambda kind: (self._areas[kind], kind))
        for taken in _shared_out(count, [len(self.members[kind]) for kind in order]):
            yield tuple(taken[order.index(kind)] for kind in range(len(order)))

    @cached_property
    def _areas(self) -> list[int]:
        sizes = [panel.w * panel.h for panel in self.strip.panels]
        sizes += [piping.width * piping.length for piping in self.strip.piping if self._rings_told]
        return [sum(copies * size for copies, size in zip(kind, sizes, strict=True)) for kind in self.kinds]

    def _halve(self) -> Slices[None]:
        """Find a count that fits by halving, planning the cheapest choice of each count for a short while.

        Done to its end also where the budget is spent: a first plan is always to be had.
        """
        most = self._most
        while self._found < most:
            count = (self._found + most + 1) // 2
            with self.budget.portion(1, 16):
                yield from self._ask(next(self._choices(count)))
            if self._found < count:
                self._by_choices(count)
                most = count - 1

    def _raise(self) -> Slices[None]:
        """Plan one set more, in every choice there is, until all are refuted or the budget is spent."""
        while self._found < self._most and not self.budget.over:
            count = self._found + 1
            for choice in islice(self._choices(count), MOST_CHOICES):
                if self._why_not(choice) is None and not self.budget.over:
                    with self.budget.portion(1, 2):
                        yield from self._ask(choice)
                    if self._found == count:
                        break
            else:
                self._by_choices(count)
                return

    def _why_not(self, choice: Counts) -> Counts | None:
        """A refuted choice that this one includes."""
        for smaller in self.refuted:
            if all(few <= many for few, many in zip(smaller, choice, strict=True)):
                return smaller
        return None

    def _by_choices(self, count: int) -> None:
        """Refute a count of sets if every choice of so many includes a refuted one."""
        reasons: dict[Counts, None] = {}
        for number, choice in enumerate(self._choices(count)):
            reason = self._why_not(choice)
            if reason is None or number == MOST_CHOICES:
                return
            reasons[reason] = None
        bounds = [(list[Json](choice), self.refuted[choice]) for choice in reasons]
        choices: list[Json] = [
            {"sets": sets, "at_least": bound.at_least, "name": bound.name, "data": bound.data}
            for sets, bound in bounds
        ]
        self._refute(TooMany(count, "each-choice", {"choices": choices}))

    def _shares(self) -> Iterator[Shares]:
        """The bounds that add up over the panels and cost next to nothing."""
        panels = self.strip.panels
        if is_shaped(self.strip):
            areas = [area_of(panel) / self.strip.width for panel in panels]
            yield Shares("true-area", {}, areas, self.length)
            return
        for bound in (self._bounds.area(), self._bounds.wider_than_half()):
            yield self._shares_of(bound)

    def _by_rows(self) -> Slices[None]:
        """The rows bound costs a programme."""
        with self.budget.portion(1, 2):
            rows = self._bounds.by_rows()
            yield
        if rows is not None:
            self._by_least_sets(self._shares_of(rows))

    @cached_property
    def _bounds(self) -> CaseBounds:
        """The bounds of all panels together, each turned in any way it may be."""
        turns = tuple(possible_turns(self.strip, panel) for panel in self.strip.panels)
        return CaseBounds(ways_of(self.strip, Case(turns)), self.budget)

    def _shares_of(self, bound: Bound) -> Shares:
        shares = [_share(self._bounds, bound, panel.id) for panel in self.strip.panels]
        return Shares(bound.name, bound.data, shares, self.length + self.strip.gap)

    def _by_least_sets(self, shares: Shares) -> None:
        """Refute the least count whose cheapest sets already exceed the length by a bound that adds up."""
        values = sorted(
            sum((copies * share for copies, share in zip(kind, shares.of_panels, strict=False)), Fraction(0))
            for kind, numbers in zip(self.kinds, self.members, strict=True) for _ in numbers
        )
        for count, total in enumerate(accumulate(values), start=1):
            if total > shares.most:
                self._refute(TooMany(count, "least-sets", {"name": shares.name, "data": shares.data}))
                return

    def _refute(self, proof: TooMany) -> None:
        if self.too_many is None or proof.sets < self.too_many.sets:
            self.too_many = proof


def _share(bounds: CaseBounds, bound: Bound, panel: str) -> Fraction:
    """What one copy of a panel contributes to a bound that adds up over the panels."""
    ways = next(of for (_, of), ids in zip(bounds.ways.kinds, bounds.ways.panels, strict=True) if panel in ids)
    mine = [bounds.ways.ways[number] for number in ways]
    if bound.name == "area":
        return Fraction(min(way.w * way.h for way in mine), bounds.ways.room)
    listed = {(e["panel"], e["w"], e["h"], e.get("residue")): Fraction(*e["weight"]) for e in _listed(bound)}
    sizes = [(way.w - bounds.gap, way.h - bounds.gap, way.residues[0] if len(way.residues) == 1 else None)
             for way in mine]
    return min(listed.get((panel, *size), Fraction(0)) * way.h for size, way in zip(sizes, mine, strict=True))


def _listed(bound: Bound) -> Any:
    """The weights of a certificate."""
    return bound.data["weights"]


def _shared_out(count: int, limits: Sequence[int]) -> Iterator[Counts]:
    """All ways to take ``count`` things of kinds with so many each, the most of the first kinds first."""
    if not limits:
        yield ()
        return
    first, *others = limits
    for taken in range(min(first, count), max(count - sum(others), 0) - 1, -1):
        for rest in _shared_out(count - taken, others):
            yield (taken, *rest)
