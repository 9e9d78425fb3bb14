"""`plan`: from a job document to the answer, one cloth after the other, with every problem at once."""

from __future__ import annotations

from fractions import Fraction
from functools import cached_property
from typing import Any, Literal, get_args

from plumpline import notices, remedies
from plumpline.answer import cloth_answer, cover_answer, pieces_answer
from plumpline.cross_check import by_the_chart
from plumpline.figures import figure, length_to_ask
from plumpline.in_hand import InHand, better, judge
from plumpline.in_hand_answer import narrow_piece, piece_answer
from plumpline.job import Cloth
from plumpline.layout.budget import QUICK_WORK, Slices, to_its_end
from plumpline.layout.strip import CannotLay
from plumpline.layplan import ClothPlan, ClothPlanner, blamed, cannot_lay, plan_cloth
from plumpline.other_ways import OtherWay, other_ways
from plumpline.prepared import Prepared, prepare
from plumpline.problems import JobError, Problem
from plumpline.shopping import material_answer, materials, shopping_list
from plumpline.tipping import tips
from plumpline.version import __version__
from plumpline.workroom import sheet_answer, sheets

Effort = Literal["quick", "full"]

# "full" may cost forty times the counted work of "quick", which is one amount for the plan and one for its straight
# twin: half of it for these two, fifteen parts for the ways out, each of which is planned quickly, and for the tipping
# points the rest and what the plans did not need.
_QUICKLY = 2 * QUICK_WORK
PLAN_WORK = 20 * QUICK_WORK
_PIECE_WORK = 8 * QUICK_WORK
_WORK_FOR_TIPS, _MOST_FOR_TIPS = 5 * _QUICKLY, 10 * _QUICKLY
_FOR_PLANS = Fraction(3, 5)  # so much of the time goes by before the ways out, as far as progress tells

_MOST_PANELS = 3000
NO_COVER = Problem("/cushions", "missing-field", "There is no cover in this job yet: add one.")


def plan(job: dict[str, Any], effort: Effort = "full", tips: bool = False) -> dict[str, Any]:
    """The answer to a job document: what to cut, the lay plan of each cloth, how much to ask for, and why.

    `job` is a document of format "plumpline-job", version 1. `effort` "quick" gives the first good lay plan, "full" the
    best one and the ways out, and with `tips` where the length to buy tips; all are bounded by counted work, so the
    same job always has the same answer. Lengths in the answer are {"nm": int, "text": str}. Raises `JobError` with
    every problem at once where nothing can be planned, `ValueError` for an effort there is not.
    """
    return to_its_end(Planning(job, effort, tips).steps())


class Planning:
    """A job being planned slice by slice: the first good plans, then shorter ones, then the ways out.

    `steps` does the work; between two slices `progress` tells how far it is and, as soon as there are `lengths`,
    `answer` what is known by then. Raises as `plan` does, a `JobError` also from `steps`.
    """

    def __init__(self, job: dict[str, Any], effort: Effort = "full", tips: bool = False) -> None:
        if effort not in get_args(Effort):
            raise ValueError(f"effort is one of {', '.join(get_args(Effort))}, not {effort!r}")
        prepared = prepare(job)
        if not isinstance(prepared, Prepared):
            raise JobError(prepared)
        self.document = job
        self.effort = effort
        self._wants_tips = tips and effort == "full"
        self.prepared = prepared
        self.problems = list(prepared.problems)
        self._planners: list[ClothPlanner] = []
        # What is said about each cloth beside its plan, as far as that is known.
        self._said: list[list[notices.Notice]] = []
        # What a rule of thumb makes of each cloth, once it was asked.
        self._checks: dict[str, str] = {}
        # What each length in hand makes, by its cloth, and how else it would do.
        self._in_hand: dict[str, InHand] = {}
        self._other_ways: dict[str, list[OtherWay]] = {}
        # The tipping points of each cloth, as far as they were looked for.
        self._tips: dict[str, list[dict[str, Any]]] = {}
        # What was done for each cloth after its plan: the ways out, then the tipping points.
        self._afterwards = 0

    def steps(self) -> Slices[dict[str, Any]]:
        """Plan slice by slice: the answer in the end."""
        yield from self.plans()
        if self.effort == "full":
            for number, planner in enumerate(self._planners):
                yield from self._look_for_ways_out(number, planner.plan())
                self._afterwards += 1
        if self._wants_tips:
            for planner in self._planners:
                yield from self._look_for_tips(planner)
                self._afterwards += 1
        return self.answer()

    def plans(self) -> Slices[None]:
        """The lay plan of every cloth alone, slice by slice; what is bought of each is `bought` then."""
        planned = yield from self._first_plans()
        if not planned:
            raise JobError(self.problems or [NO_COVER])
        self._said = [_first_notices(one, self.prepared) for one in planned]
        self._planners = [ClothPlanner(one.cloth, one.pieces, one.strips, PLAN_WORK, one) for one in planned]
        if self.effort == "full":
            yield
            for planner in self._planners:
                yield from planner.steps()

    @property
    def bought(self) -> dict[str, int]:
        """The length to buy of each cloth that is planned, in nm by its id."""
        return {planner.cloth.id: planner.buy for planner in self._planners}

    def _first_plans(self) -> Slices[list[ClothPlan]]:
        """The first good plan of every cloth that can be planned; why the others cannot be is kept."""
        planned: list[ClothPlan] = []
        for cloth in self.prepared.job.cloths:
            if self.prepared.is_ready(cloth):
                outcome = yield from _first_plan(self.prepared, cloth, self.document)
                if isinstance(outcome, ClothPlan):
                    planned.append(outcome)
                    yield from self._judge(outcome, QUICK_WORK)
                else:
                    self.problems.extend(outcome)
        return planned

    def _judge(self, planned: ClothPlan, work: int) -> Slices[None]:
        """Say what the length in hand of a cloth makes, unless that is known to be more."""
        found = yield from judge(self.prepared, planned.cloth, planned, work)
        if found is not None:
            self._in_hand[planned.cloth.id] = better(found, self._in_hand.get(planned.cloth.id))

    def _look_at_the_piece(self, planned: ClothPlan) -> Slices[None]:
        yield from self._judge(planned, _PIECE_WORK)
        found = self._in_hand.get(planned.cloth.id)
        if found is not None and not found.enough:
            ways = yield from other_ways(self.document, self.prepared, planned.cloth, found, QUICK_WORK)
            self._other_ways[planned.cloth.id] = ways

    def _look_for_ways_out(self, number: int, planned: ClothPlan) -> Slices[None]:
        known, document = self.prepared.job, self.document
        said = list(notices.cloth_notices(planned, known))
        said += yield from notices.margin_notices(planned, known, document, QUICK_WORK)
        said += yield from notices.ways_out(self.prepared, planned, document, QUICK_WORK)
        yield from self._look_at_the_piece(planned)
        check = yield from by_the_chart(planned, known.units, QUICK_WORK)
        self._checks |= {planned.cloth.id: check} if check else {}
        self._said[number] = said

    def _look_for_tips(self, planner: ClothPlanner) -> Slices[None]:
        work = min(_MOST_FOR_TIPS, _WORK_FOR_TIPS + max(0, 2 * PLAN_WORK - planner.spent))
        self._tips[planner.cloth.id] = yield from tips(self.prepared.job, planner.plan(), work)

    @property
    def stage(self) -> tuple[list[tuple[int, int]], int]:
        """What `answer` depends on: once it differs, there is more to tell."""
        return self.lengths, len(self._tips)

    @property
    def is_begun(self) -> bool:
        """Whether there is an `answer` yet."""
        return bool(self.lengths)

    @property
    def lengths(self) -> list[tuple[int, int]]:
        """For each cloth the shortest length so far, and by straight cuts; none before there is an `answer`."""
        return [planner.lengths for planner in self._planners]

    def progress(self) -> dict[str, Any]:
        """How far the search is, in thousandths, and the length that each cloth takes by now."""
        units = self.prepared.job.units
        return {
            "thousandths": int(1000 * self._share_done()),
            "cloths": [
                {
                    "cloth": planner.cloth.id,
                    "laid": figure(planner.lengths[0], units),
                    "ask": length_to_ask(planner.buy, planner.cloth.sold_by, units),
                }
                for planner in self._planners
            ],
        }

    def _share_done(self) -> Fraction:
        laid = Fraction(0)
        for planner in self._planners:
            laid += planner.share_done
        done = laid * _FOR_PLANS + Fraction(self._afterwards, 1 + self._wants_tips) * (1 - _FOR_PLANS)
        return done / max(1, len(self._planners))

    def answer(self) -> dict[str, Any]:
        """The answer as it stands."""
        said = [notices.stop(problem) for problem in self.problems]
        for about in self._said:
            said += about
        planned = [planner.plan() for planner in self._planners]
        for one in planned:
            said += self._notices_of_piece(one)
        cloths = [self._cloth(one) for one in planned]
        return {**_answer(self.prepared, planned, cloths, said), "workroom": self._workroom}

    def _cloth(self, planned: ClothPlan) -> dict[str, Any]:
        id_ = planned.cloth.id
        return cloth_answer(
            planned, self.prepared.job, self._checks.get(id_), self._tips.get(id_, []), self._piece(planned)
        )

    def _notices_of_piece(self, planned: ClothPlan) -> list[notices.Notice]:
        found = self._in_hand.get(planned.cloth.id)
        return [] if found is None else list(narrow_piece(found, planned.cloth, self.prepared.job))

    def _piece(self, planned: ClothPlan) -> dict[str, Any] | None:
        """What the length in hand of a cloth makes, in the words of the answer."""
        found = self._in_hand.get(planned.cloth.id)
        if found is None:
            return None
        return piece_answer(found, self.prepared.job, self._other_ways.get(planned.cloth.id, []))

    @cached_property
    def _workroom(self) -> list[dict[str, Any]]:
        """The sheets, which no better plan changes."""
        return [sheet_answer(sheet) for sheet in sheets(self.prepared.covers, self.prepared.job)]


def covers(job: dict[str, Any]) -> list[dict[str, Any]]:
    """The `cushions` of an answer by themselves: what is known of the covers before any cloth can be planned."""
    prepared = prepare(job)
    return [cover_answer(cover, prepared.job) for cover in prepared.covers] if isinstance(prepared, Prepared) else []


def _first_plan(prepared: Prepared, cloth: Cloth, document: dict[str, Any]) -> Slices[ClothPlan | list[Problem]]:
    pieces = prepared.pieces_on(cloth)
    count = 0
    for piece in pieces:
        count += piece.count
    if count > _MOST_PANELS:
        text = f"{count} panels on one cloth are more than one lay plan is made for, {_MOST_PANELS}: divide the job."
        return [Problem("/cushions", "too-many", text)]
    try:
        return (yield from plan_cloth(cloth, pieces, prepared.strips_on(cloth), QUICK_WORK))
    except CannotLay as error:
        without_place = blamed(cloth, pieces, error)
        units, ways = prepared.job.units, []
        too_wide = [piece for piece, code in without_place if code.startswith("too-wide")]
        if too_wide:
            found_room = yield from remedies.room_for(document, cloth, too_wide, QUICK_WORK)
            ways = [choice.to_json(units) for choice in found_room]
        return [cannot_lay(code, piece, cloth, units, *ways) for piece, code in without_place]


def _first_notices(planned: ClothPlan, prepared: Prepared) -> list[notices.Notice]:
    """What is worth saying about a cloth without planning anything else."""
    job = prepared.job
    margins = [margin.notice() for margin in notices.missing_margins(planned, job)]
    return [*notices.cloth_notices(planned, job), *margins]


def _answer(
    prepared: Prepared, planned: list[ClothPlan], cloths: list[dict[str, Any]], said: list[notices.Notice]
) -> dict[str, Any]:
    job = prepared.job
    said += [notices.question(problem) for problem in job.questions]
    for cover in prepared.covers:
        said.extend(notices.cover_notices(cover, job))
    bought = materials(prepared.covers, job)
    return {
        "format": "plumpline-plan",
        "version": 1,
        "core": __version__,
        "units": job.units,
        "cushions": [cover_answer(cover, job) for cover in prepared.covers],
        "pieces": [piece for cover in prepared.covers for piece in pieces_answer(cover, job)],
        "cloths": cloths,
        "materials": [material_answer(material) for material in bought],
        "shopping": shopping_list(bought, planned, job),
        "notices": notices.in_order(said),
    }
