# Makes lay plans: the shortest found for a strip, with a bound that no plan can beat, and the straight-cut twin.
"""The planner: first plans at once, then bounds, exact search where the job is small, then local search.

Plan and bound meeting ends it, or the budget. The parts and their papers: ``skyline`` and ``search`` (plans),
``active`` (exact and beam search), ``niche_beam``, ``dive``, ``bounds`` with ``sets`` and ``simplex`` (proofs),
``straight`` (edge-to-edge cuts), ``choices`` and ``places`` (the rules of the cloth).

All of it is an iterator of slices, so that whoever asks can show the plan as it improves, answer something else in
between, or stop: every part yields whenever it has done a little work (``budget.SLICE``), with the plan as it then
stands to be had from ``Planner.plan``.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import product
from random import Random

from plumpline.layout.active import ActiveSearch, Guide, columns_of
from plumpline.layout.bounds import Bound, Bounds
from plumpline.layout.budget import Budget, Slices, budget_of, to_its_end
from plumpline.layout.choices import Choice, choices_of
from plumpline.layout.desk import Desk, Spot
from plumpline.layout.dive import dive
from plumpline.layout.equal import lay_equal, suits
from plumpline.layout.niche_beam import Measure, NicheBeam, Wall
from plumpline.layout.piped import NoPanels, PipedPlanner
from plumpline.layout.places import check
from plumpline.layout.search import Best, Search, climb, lay_starts, share
from plumpline.layout.sets import TooManySets
from plumpline.layout.shaped import ShapedPlanner
from plumpline.layout.shapes import boxed, check_shapes, is_shaped
from plumpline.layout.straight import StraightSearch
from plumpline.layout.strip import Placement, Plan, StraightPlan, Strip

WIDTHS = (1, 6, 30, 150, 800, 4_000)
GUIDES: tuple[Guide, ...] = ("area", "rows")
NARROW = (3, 15)  # widths of the niche beams before the bounds are known, and after that
WIDE = (80, 400, 2_000, 10_000)
MEASURES: tuple[Measure, ...] = ("weight", "area")
WALLS: tuple[Wall, ...] = ("left", "higher")
CLIMBED = 3
MANY_SIZES = (3, 1)  # odds of a dive and of a climb to find a shorter plan where sizes are many
FEW_SIZES = (1, 2)
WITH_BEAMS = (1, 3, 3)  # the same and the odds of a wide niche beam, where there are such
MOST_SECTIONED = 16  # sizes up to which row sections are looked at


def lay_plan(strip: Strip, work: int | Budget, seed: int = 0) -> Plan:
    """The shortest plan found within ``work`` units, with a proven bound.

    Raises ``CannotLay`` where no plan obeys the rules and ``ValueError`` for a strip that makes no sense.
    """
    planner = planner_of(strip, budget_of(work), seed)
    to_its_end(planner.steps())
    return planner.plan()


def straight_plan(strip: Strip, work: int | Budget, seed: int = 0) -> StraightPlan:
    """The shortest plan of edge-to-edge cuts found within ``work`` units, under the same rules and errors.

    Piping is not cut from it: strips may lie across the cuts.
    """
    if strip.piping:
        raise ValueError("a straight-cut plan has no strips of piping")
    return to_its_end(panel_planner(strip, budget_of(work), seed).straight_steps())


def planner_of(
    strip: Strip, budget: Budget, seed: int = 0, enough: int = 0
) -> Planner | ShapedPlanner | PipedPlanner:
    """The planner for a strip, with its piping if any is wanted; ``enough`` as for ``Planner``.

    Raises ``CannotLay`` where no plan obeys the rules and ``ValueError`` for a strip that makes no sense.
    """
    if not strip.piping:
        return panel_planner(strip, budget, seed, enough)
    return PipedPlanner(strip, budget, panel_planner(strip, budget, seed, enough) if strip.panels else NoPanels())


def panel_planner(strip: Strip, budget: Budget, seed: int = 0, enough: int = 0) -> Planner | ShapedPlanner:
    """The planner for the panels of a strip: rectangles, or other shapes as well."""
    if not is_shaped(strip):
        return Planner(strip, budget, seed, enough)
    check_shapes(strip)
    boxes = Planner(boxed(strip), budget.half(), seed, enough)
    return ShapedPlanner(strip, budget, boxes, Random(seed))


class Planner:
    """One strip being planned: the search, the bounds, and the order in which they get the budget.

    With ``enough`` only whether that length can be kept is asked: the search ends once it is, or proven not to be.
    Raises ``CannotLay`` where no plan obeys the rules and ``ValueError`` for a strip that makes no sense.
    """

    def __init__(self, strip: Strip, budget: Budget, seed: int = 0, enough: int = 0) -> None:
        check(strip)
        self.strip = strip
        self.budget = budget
        self.random = Random(seed)
        self.search = Search(strip, choices_of(strip), budget, self.random, self._report, enough)
        self.bounds = Bounds(strip, budget)
        self.proof: Bound | None = None
        self.niche_beams: list[tuple[int, Measure, Wall, NicheBeam]] = []

    @property
    def length(self) -> int | None:
        """The shortest length so far; None before the first layout."""
        return None if self.search.best is None else self.search.best.length

    @property
    def best(self) -> Best:
        """The shortest layout so far."""
        assert self.search.best is not None
        return self.search.best

    @property
    def _many_sizes(self) -> bool:
        """Whether the job is one for dives: panels of many sizes that may lie anywhere."""
        kinds = self.best.desk.kinds
        return self.best.desk.free and 2 * len(kinds) >= sum(kind.qty for kind in kinds) > 1

    @property
    def _is_perfect(self) -> bool:
        """Whether a plan of the length aimed at must leave no waste, so that no bound could tell that there is none."""
        return (self.search.aim + self.strip.gap) * self.best.desk.width == self.best.desk.area

    @property
    def _is_sectioned(self) -> bool:
        """Whether row sections are looked at: many sizes make far more of them than can be."""
        return len(self.best.desk.kinds) <= MOST_SECTIONED

    def steps(self) -> Slices[None]:
        """Spend the budget slice by slice until plan and bound meet; ``plan`` can be had after the first slice."""
        choices = yield from self._start()
        if not self.search.over:
            with self.budget.portion(1, 20):
                bands = yield from StraightSearch(self.search, self.random).run(choices[:1])
            self.search.offer(bands.desk, bands.spots)
        # Where the repeat binds panels the beams find more than changes of the order do, and with many sizes less.
        with self.budget.portion(6 if not self.best.desk.free else 3 if self.niche_beams else 1, 7):
            yield from self._search_all(choices)
        with self.budget.portion(4, 5):
            yield from self._beam_and_improve(self._hopeful(choices))
        yield from self._section(1, 5)
        if not self.search.over:
            # With many sizes next to nothing is left to do for the bounds afterwards.
            with self.budget.portion(16 if self._is_sectioned else 19, 20):
                yield from self._improve(self._hopeful(choices))
        yield from self._section(7, 8)
        if not self.search.over:
            yield from self.bounds.stack(self.search.to_beat)
            self.bounds.round_up(self.search.to_beat)
            self._meet()

    def straight_steps(self) -> Slices[StraightPlan]:
        """Slice by slice to the straight-cut plan, with the bound that holds for any plan."""
        choices = yield from self._start()
        bands = yield from StraightSearch(self.search, self.random).run(choices[:CLIMBED])
        bound = self.bounds.total()
        cuts = bands.cuts()
        width = self.strip.width
        return StraightPlan(
            bands.length, bound.at_least, bound.name, bound.data, self._placements(bands.desk, bands.spots),
            bands.desk.setting.phase, dict(bands.desk.setting.places), self.budget.spent, cuts,
            sum(cut.kind == "across" and cut.x == 0 and cut.length == width for cut in cuts),
        )

    def plan(self) -> Plan:
        """The plan as it stands."""
        best, bound = self.best, self.proof or self.bounds.total()
        return Plan(
            best.length, bound.at_least, bound.name, bound.data, self._placements(best.desk, best.spots),
            best.desk.setting.phase, dict(best.desk.setting.places), self.budget.spent,
        )

    def _report(self) -> None:
        if self.budget.report is not None:
            self.budget.report(self.plan())

    def _start(self) -> Slices[list[Choice]]:
        """First plans and bounds; the settings tried, the most promising first."""
        with self.budget.portion(1, 3):
            tried = yield from lay_starts(self.search)
        choices = [choice for _, choice in tried]
        self._meet()
        if self._many_sizes and not self.search.over:
            # Few dives reach the length of the area where it can be reached, and then no bound is needed.
            with self.budget.portion(3 if self._is_perfect else 1, 5):
                yield from dive(self.search, self._hopeful(choices))
        elif self.best.desk.free and 1 < len(self.best.desk.kinds) <= MOST_SECTIONED:
            with self.budget.portion(1, 2):
                self.niche_beams = yield from self._set_up_niche_beams(self._hopeful(choices))
                yield from self._beam_niches(NARROW[-1])
        yield from self._bound()
        return choices

    def _hopeful(self, choices: Sequence[Choice]) -> Sequence[Choice]:
        """The first of the choices that no bound keeps from being shorter; the first of all if there are none left."""
        turns = self.search.choices.turns
        hopeful = [choice for choice in choices if self.bounds.turned(turns[choice[0]]) < self.search.to_beat]
        return (hopeful or choices)[:CLIMBED]

    def _bound(self) -> Slices[None]:
        """Bounds that cost little: those of no programme, then the programmes while they can still tell."""
        self._meet()
        if not self.search.over:
            # With many sizes the area is nearly always the best bound, and the time is better spent on plans.
            with self.budget.portion(1, 3 if self._is_sectioned else 12):
                yield from self.bounds.strengthen(self.search.to_beat)
            self.bounds.round_up(self.search.to_beat)
            self._meet()
        yield from self._section(1, 16)

    def _section(self, part: int, of: int) -> Slices[None]:
        """Raise the bounds by the search over row sections, which goes on where it was left."""
        if not self.search.over and self._is_sectioned:
            with self.budget.portion(part, of):
                yield from self.bounds.section(self.search.to_beat)
            self._meet()

    def _meet(self) -> None:
        self.best.at_least = self.bounds.total().at_least

    def _set_up_niche_beams(self, choices: Sequence[Choice]) -> Slices[list[tuple[int, Measure, Wall, NicheBeam]]]:
        """The beams over skylines for some choices, to be run in this order; none where too many sets fit abreast."""
        beams = []
        for choice in choices:
            try:
                beams.append(NicheBeam(self.search.desk(choice), self.budget))
            except TooManySets:
                return []
            yield
        return list(product((*NARROW, *WIDE), MEASURES, WALLS, beams))

    def _beam_niches(self, most: int) -> Slices[None]:
        """Lay free panels of few sizes by beams over the skyline, of growing width up to ``most``.

        One that the budget breaks off is run again when there is more.
        """
        while self.niche_beams and self.niche_beams[0][0] <= most and not self.search.over:
            width, measure, wall, beam = self.niche_beams[0]
            spots = yield from beam.within(self.search.aim, width, self.budget, measure, wall)
            is_shorter = spots is not None and self.search.offer(beam.desk, spots)
            if not is_shorter and not self.budget.over:
                self.niche_beams.pop(0)

    def _search_all(self, choices: Sequence[Choice]) -> Slices[None]:
        """Exact search over all settings: row by row for equal panels, else by beams of growing width.

        A proof if it came to an end for all settings there are.
        """
        known = dict.fromkeys(choices)
        rest = [choice for choice in self.search.choices.worth_trying() if choice not in known]
        desks = [desk for choice in (*choices, *rest) if (desk := self.search.desk_if_possible(choice)) is not None]
        columns = ((desk, self._columns(desk)) for desk in desks)
        searches = [ActiveSearch(desk, found, self.budget) for desk, found in columns if found is not None]
        everything = self.search.choices.complete and self.search.choices.few and len(searches) == len(desks)
        everything = everything and all(desk.finite for desk in desks)
        if not searches or self.search.over:
            return
        if all(suits(search.desk, search.places, self.search.to_beat) for search in searches):
            complete = yield from self._all(self._lay_equal(search) for search in searches)
        else:
            complete = False
            guides = GUIDES[::-1] if self.best.desk.free else GUIDES
            for width, guide in product(WIDTHS, guides):
                complete = complete or (yield from self._all(self._beam(search, width, guide) for search in searches))
        if complete and everything and not self.search.over:
            self._exhausted(sum(search.states for search in searches))

    def _improve(self, choices: Sequence[Choice]) -> Slices[None]:
        """The local searches that suit the job: dives are for panels that may lie anywhere."""
        climbing = climb(self.search, choices)
        if self.best.desk.free and len(self.best.desk.kinds) > 1:
            tools = dive(self.search, choices), climbing
            yield from share(self.search, tools, MANY_SIZES if self._many_sizes else FEW_SIZES)
        else:
            yield from climbing

    def _beam_and_improve(self, choices: Sequence[Choice]) -> Slices[None]:
        """Wide niche beams and local searches in turns, for where the ones find little the others may find more."""
        if self.niche_beams and not self.search.over:
            tools = dive(self.search, choices), climb(self.search, choices), self._beam_niches(WIDE[-1])
            yield from share(self.search, tools, WITH_BEAMS)

    def _columns(self, desk: Desk) -> list[list[tuple[int, ...]]] | None:
        return None if self.search.over else columns_of(desk)

    def _all(self, searches: Iterable[Slices[bool]]) -> Slices[bool]:
        """Whether all come out true; none is left out, for each may find a shorter layout."""
        complete = True
        for search in searches:
            complete = (yield from search) and complete
        return complete

    def _lay_equal(self, search: ActiveSearch) -> Slices[bool]:
        """Lay equal panels the shortest way: whether the search came to its end."""
        outcome = yield from lay_equal(search, self.search.aim, self.budget)
        if outcome.spots is not None:
            self.search.offer(search.desk, outcome.spots)
        return outcome.complete

    def _beam(self, search: ActiveSearch, width: int, guide: Guide) -> Slices[bool]:
        """Look for ever shorter layouts with one beam: whether it is proven that none is left."""
        outcome: bool | None = None
        while outcome is None:
            outcome = yield from self._shorter(search, width, guide)
        return outcome

    def _shorter(self, search: ActiveSearch, width: int, guide: Guide) -> Slices[bool | None]:
        """None if a shorter layout was found; else whether that was proven impossible."""
        if self.search.over:
            return False
        outcome = yield from search.within(self.search.aim, width, self.budget, guide)
        if outcome.spots is None:
            return outcome.complete
        self.search.offer(search.desk, outcome.spots)
        return None

    def _exhausted(self, states: int) -> None:
        length = self.search.to_beat
        self.best.at_least = length
        self.proof = Bound(length, "exhaustive", {"length": length, "states": states})

    def _placements(self, desk: Desk, spots: Sequence[Spot]) -> tuple[Placement, ...]:
        """Spots as placements, from the cut end on; the panels of a kind are handed out in their own order."""
        waiting = [
            [(index, copy) for index, copies in kind.members for copy in range(1, copies + 1)][::-1]
            for kind in desk.kinds
        ]
        gap = self.strip.gap
        placed = []
        for kind, variant, x, y in sorted(spots, key=lambda s: (s[3], s[2])):
            index, copy = waiting[kind].pop()
            way = desk.kinds[kind].variants[variant]
            panel = self.strip.panels[index]
            placed.append(Placement(panel.id, copy, x, y, way.w - gap, way.h - gap, way.turn))
        return tuple(placed)
