"""`compare`: from a job document to the ways it could be made, each planned, with what it takes and costs."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from typing import Any

from plumpline.answer import layout_answer, motif_points
from plumpline.beside.cloths import cloth_choices
from plumpline.beside.directions import direction_choices
from plumpline.beside.joins import join_choices
from plumpline.beside.offers import About, Group, Offer
from plumpline.beside.patterns import pattern_choices
from plumpline.beside.sentences import Found, more_than, shown, why
from plumpline.figures import figure, in_other_system, length_to_ask
from plumpline.job import Cloth, Job
from plumpline.layout.budget import QUICK_WORK, Slices, to_its_end
from plumpline.layout.strip import CannotLay
from plumpline.layplan import ClothPlan, ClothPlanner, blamed, cannot_lay, plan_cloth, why_not
from plumpline.money import write_money
from plumpline.pieces import Piece, Strips
from plumpline.planning import NO_COVER, PLAN_WORK
from plumpline.prepared import Prepared, is_used, prepare
from plumpline.problems import JobError, Problem
from plumpline.remedies import changed, joins_in
from plumpline.version import __version__

Json = dict[str, Any]
# What a plan of a cloth depends on: two ways that ask the same of it share one.
_Key = tuple[Cloth, tuple[Piece, ...], tuple[Strips, ...]]


def compare(job: Json) -> Json:
    """The ways in which a job could be made: by group, each planned as `plan` does, what takes least first.

    `job` is a document of format "plumpline-job". A way is a change of the document: taking it gives what it says.
    Raises `JobError` with every problem at once where nothing can be planned.
    """
    return to_its_end(Comparison(job).steps())


@dataclass
class _Line:
    """A way while it is looked at: the job it makes, and then either its plans or why it cannot be made."""

    offer: Offer
    prepared: Prepared | list[Problem]
    current: bool
    plans: list[ClothPlan] = field(default_factory=list)
    cannot: str = ""
    is_looked_at: bool = False

    @property
    def job(self) -> Job | None:
        """The job that the way makes; None where there is none."""
        return self.prepared.job if isinstance(self.prepared, Prepared) else None

    @property
    def found(self) -> Found | None:
        """The plans, once every cloth has one."""
        if not self.is_looked_at or self.cannot or self.job is None:
            return None
        return Found(self.job, tuple(self.plans))


class Comparison:
    """A job's ways being planned slice by slice: first a good plan of each, then the best.

    `steps` does the work; between two slices `progress` tells how far it is and, as soon as it `is_begun`, `answer`
    what is known by then. Raises `JobError` where nothing can be planned.
    """

    def __init__(self, job: Json) -> None:
        prepared = prepare(job)
        if not isinstance(prepared, Prepared):
            raise JobError(prepared)
        if not any(prepared.is_ready(cloth) for cloth in prepared.job.cloths):
            raise JobError(prepared.problems or [NO_COVER])
        self.prepared = prepared
        self.document = job
        self._plans: dict[_Key, ClothPlan | str] = {}
        self._groups: list[tuple[Group, list[_Line]]] = []
        self._done = 0
        # The order of the lines of each group: it is kept while better plans are looked for, so that no line moves
        # under a finger.
        self._order: list[list[_Line]] = []

    def _lines_of(self, group: Group) -> Slices[list[_Line]]:
        """The ways of a group that differ, and the job as it is, if it is none of them and can be laid."""
        lines = []
        for offer in group.offers:
            lines.append(self._line(offer))
            yield
        is_laid = not any(_without_place(self.prepared, self.prepared.job.cloth(id_)) for id_ in group.cloths)
        if is_laid and not any(line.current for line in lines):
            lines.insert(0, self._line(Offer("As it is now", ())))
        return _each_once(lines)

    def _line(self, offer: Offer) -> _Line:
        if offer.cannot:
            return _Line(offer, [], current=False, cannot=offer.cannot, is_looked_at=True)
        prepared = prepare(changed(self.document, offer.changes)) if offer.changes else self.prepared
        current = isinstance(prepared, Prepared) and prepared.job == self.prepared.job
        return _Line(offer, prepared, current)

    def steps(self) -> Slices[Json]:
        """Look at every way, slice by slice: the answer in the end."""
        groups = []
        for group in _groups(self.document, self.prepared):
            groups.append((group, (yield from self._lines_of(group))))
        self._groups = groups
        yield
        for group, line in self._lines():
            if not line.is_looked_at:
                yield from self._look(group, line)
                line.is_looked_at = True
            self._done += 1
            yield
        self._order = [_ranked(lines) for lines in self._lists()]
        for _, line in self._lines():
            for number, planned in enumerate(line.plans):
                line.plans[number] = yield from self._best(planned)
            self._done += 1
            yield
        self._order = [_ranked(lines) for lines in self._lists()]
        return self.answer()

    def _lines(self) -> Iterator[tuple[Group, _Line]]:
        for group, lines in self._groups:
            for line in lines:
                yield group, line

    def _look(self, group: Group, line: _Line) -> Slices[None]:
        """The first good plan of each cloth that a way concerns, or why there is none."""
        prepared = line.prepared
        assert isinstance(prepared, Prepared)  # what is offered is never more than a job can hold
        known = self.prepared.problems
        new = [problem for problem in prepared.problems if problem not in known]
        if new:
            line.cannot = _told(new)
            return
        for cloth in _concerned(group, prepared):
            if cloth.id in prepared.waiting:
                line.cannot = _told(list(prepared.problems))
                return
            outcome = yield from self._first(prepared, cloth)
            if isinstance(outcome, str):
                line.cannot = outcome
                return
            line.plans.append(outcome)

    def _first(self, prepared: Prepared, cloth: Cloth) -> Slices[ClothPlan | str]:
        pieces, strips = prepared.pieces_on(cloth), prepared.strips_on(cloth)
        key = (cloth, pieces, strips)
        if key not in self._plans:
            try:
                self._plans[key] = yield from plan_cloth(cloth, pieces, strips, QUICK_WORK)
            except CannotLay as error:
                units = prepared.job.units
                without_place = blamed(cloth, pieces, error)
                self._plans[key] = _told([cannot_lay(code, piece, cloth, units) for piece, code in without_place])
        return self._plans[key]

    def _best(self, planned: ClothPlan) -> Slices[ClothPlan]:
        """The plan after a full search, as `plan` makes it; none is needed where nothing shorter could be bought."""
        key = (planned.cloth, planned.pieces, planned.strips)
        known = self._plans[key]
        if known is planned and not planned.buy_proven:
            known = self._plans[key] = yield from ClothPlanner(*key, PLAN_WORK, planned).steps()
        assert isinstance(known, ClothPlan)
        return known

    @property
    def is_begun(self) -> bool:
        """Whether there is an `answer` yet: the ways are known, if not what they take."""
        return bool(self._groups)

    @property
    def stage(self) -> int:
        """What `answer` depends on: once it differs, there is more to tell."""
        return self._done

    def progress(self) -> Json:
        """How far it is, in thousandths."""
        whole = 2 * sum(len(lines) for _, lines in self._groups)
        return {"thousandths": 1000 * self._done // max(1, whole)}

    def answer(self) -> Json:
        """The ways as they are known by now."""
        return {
            "format": "plumpline-comparison",
            "version": 1,
            "core": __version__,
            "units": self.prepared.job.units,
            "looked": bool(self._order),
            "groups": [
                self._group(group, order)
                for (group, _), order in zip(self._groups, self._order or map(_ranked, self._lists()), strict=True)
            ],
        }

    def _lists(self) -> list[list[_Line]]:
        return [lines for _, lines in self._groups]

    def _group(self, group: Group, ranked: list[_Line]) -> Json:
        least = _ranked(ranked)[0]
        units = self.prepared.job.units
        return {
            "kind": group.kind,
            "cloths": list(group.cloths),
            "title": group.title,
            "text": group.note,
            "lines": [_line_answer(line, least, units) for line in ranked],
        }


def _groups(document: Json, prepared: Prepared) -> Iterator[Group]:
    """What there is to choose for each cloth: how to make room for what is too wide for it, else pattern and direction.

    While a face has no place on its cloth, there is no sense in any other choice. Which cloth comes before all.
    """
    cloths = cloth_choices(document, prepared)
    if cloths is not None:
        yield cloths
    for cloth in prepared.job.cloths:
        if not prepared.is_ready(cloth):
            continue
        about = About(document, prepared, cloth)
        joins = join_choices(about)
        if joins is not None:
            yield joins
        if joins is None or not _without_place(prepared, cloth):
            pattern = pattern_choices(about)
            if pattern is not None:
                yield pattern
            if prepared.pieces_on(cloth):
                yield direction_choices(about)


def _concerned(group: Group, prepared: Prepared) -> list[Cloth]:
    """The cloths of a group that something is cut from."""
    used = [cloth for cloth in prepared.job.cloths if cloth.id in group.cloths and is_used(prepared.job, cloth)]
    return [cloth for cloth in used if cloth.id in prepared.waiting or prepared.is_ready(cloth)]


def _without_place(prepared: Prepared, cloth: Cloth) -> bool:
    return prepared.is_ready(cloth) and any(why_not(cloth, piece) for piece in prepared.pieces_on(cloth))


def _each_once(lines: list[_Line]) -> list[_Line]:
    """The ways that differ: two that come to the same job are one."""
    kept: list[_Line] = []
    for line in lines:
        job = line.job
        if job is None or all(job != other.job for other in kept):
            kept.append(line)
    return kept


def _told(problems: list[Problem]) -> str:
    """What keeps a way from being made: the first reason, since one is enough to leave it."""
    return problems[0].text


def _ranked(lines: list[_Line]) -> list[_Line]:
    """What costs least first, or buys least where prices are not known; then what is not found yet; what cannot be."""
    found = [line.found for line in lines]
    prices = [one.price for one in found if one is not None]
    priced = None not in prices and len({price[1] for price in prices if price}) == 1

    def rank(line: _Line) -> tuple[int, int]:
        one = line.found
        if one is None:
            return (2 if line.cannot else 1), 0
        return 0, one.price[0] if priced and one.price else one.bought

    return sorted(lines, key=rank)


def _line_answer(line: _Line, least: _Line, units: str) -> Json:
    offer, found = line.offer, line.found
    joins = joins_in(found.plans[0], list(offer.parted)) if found and offer.parted else ""
    told: Json = {
        "name": f"{offer.name}{joins}",
        "state": "cannot" if line.cannot else "found" if found else "waiting",
        "current": line.current,
        "text": line.cannot,
        "note": offer.note,
        "more": None,
        "cost": None,
        "cloths": [],
        "change": [{"at": change.at, "value": change.value} for change in offer.changes],
    }
    if found is None:
        return told
    price = found.price
    other = least.found if line is not least else None
    return {
        **told,
        "text": why(found, other),
        "more": None if other is None else more_than(found, other, units),
        "cost": None if price is None else {"amount": write_money(*price), "currency": price[1]},
        "cloths": [_cloth_answer(planned, found.job) for planned in found.plans],
    }


def _cloth_answer(planned: ClothPlan, job: Job) -> Json:
    """What is bought of a cloth, and all that its lay plan is drawn from."""
    cloth, units, plan = planned.cloth, job.units, shown(planned)
    return {
        "cloth": cloth.id,
        "name": cloth.name,
        "buy": figure(planned.buy, units),
        "ask": {
            "text": length_to_ask(planned.buy, cloth.sold_by, units),
            "other": in_other_system(planned.buy, cloth.sold_by, units),
        },
        "laid": figure(plan.length, units),
        "cloth_width": figure(cloth.width or 0, units),
        "usable_width": figure(planned.laid.usable, units),
        "selvedge": figure(cloth.selvedge, units),
        "squaring": figure(cloth.squaring, units),
        "layout": layout_answer(planned, plan, job),
        "motif_points": motif_points(planned, plan),
    }
