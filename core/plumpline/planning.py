"""`plan`: from a job document to the answer, one cloth after the other, with every problem at once."""

from __future__ import annotations

from typing import Any, Literal

from plumpline import notices, remedies
from plumpline.answer import cloth_answer, cover_answer, materials, piece_answer
from plumpline.job import Cloth
from plumpline.layout.budget import QUICK_WORK
from plumpline.layout.strip import CannotLay
from plumpline.layplan import ClothPlan, cannot_lay, plan_cloth, why_not
from plumpline.prepared import Prepared, prepare
from plumpline.problems import JobError, Problem
from plumpline.version import __version__

Effort = Literal["quick", "full"]

# "full" may cost forty times the counted work of "quick": half of it for the plan and its straight twin, the rest
# for the ways out, each of which is planned quickly.
_WORK = {"quick": QUICK_WORK, "full": 20 * QUICK_WORK}

_MOST_PANELS = 3000
_NO_COVER = Problem("/cushions", "missing-field", "There is no cover in this job yet: add one.")


def plan(job: dict[str, Any], effort: Effort = "full") -> dict[str, Any]:
    """The answer to a job document: what to cut, the lay plan of each cloth, how much to ask for, and why.

    `job` is a document of format "plumpline-job", version 1. `effort` "quick" gives the first good lay plan,
    "full" the best one and the ways out; both are bounded by counted work, so the same job always has the same
    answer. Lengths in the answer are {"nm": int, "text": str}. Raises `JobError` with every problem at once where
    nothing can be planned, `ValueError` for an effort there is not.
    """
    if effort not in _WORK:
        raise ValueError(f"effort is one of {', '.join(_WORK)}, not {effort!r}")
    prepared = prepare(job)
    if not isinstance(prepared, Prepared):
        raise JobError(prepared)
    outcomes = [_plan_cloth(prepared, cloth, job, _WORK[effort]) for cloth in _ready(prepared)]
    planned = [outcome for outcome in outcomes if isinstance(outcome, ClothPlan)]
    problems = list(prepared.problems)
    for outcome in outcomes:
        problems.extend(outcome if isinstance(outcome, list) else [])
    if not planned:
        raise JobError(problems or [_NO_COVER])
    said = [notices.stop(problem) for problem in problems]
    for one in planned:
        said.extend(_about(prepared, one, job, effort))
    return _answer(prepared, planned, said)


def covers(job: dict[str, Any]) -> list[dict[str, Any]]:
    """The `cushions` of an answer by themselves: what is known of the covers before any cloth can be planned."""
    prepared = prepare(job)
    return [cover_answer(cover, prepared.job) for cover in prepared.covers] if isinstance(prepared, Prepared) else []


def _ready(prepared: Prepared) -> list[Cloth]:
    return [cloth for cloth in prepared.job.cloths if prepared.is_ready(cloth)]


def _plan_cloth(prepared: Prepared, cloth: Cloth, document: dict[str, Any], work: int) -> ClothPlan | list[Problem]:
    pieces = prepared.pieces_on(cloth)
    count = 0
    for piece in pieces:
        count += piece.count
    if count > _MOST_PANELS:
        text = f"{count} panels on one cloth are more than one lay plan is made for, {_MOST_PANELS}: divide the job."
        return [Problem("/cushions", "too-many", text)]
    try:
        return plan_cloth(cloth, pieces, work)
    except CannotLay as error:
        found = [(piece, code) for piece in pieces if (code := why_not(cloth, piece)) is not None]
        blamed = found or [(piece, error.code) for piece in pieces if piece.id == error.panel]
        turned = remedies.on_its_side(document, cloth, QUICK_WORK) if error.code == "too-wide-unless-turned" else None
        units = prepared.job.units
        words = "Lay every panel upright" if cloth.lies_aside else "Lay every panel on its side"
        way_out = turned.to_json(words, units) if turned else None
        return [cannot_lay(code, piece, cloth, units, way_out) for piece, code in blamed]


def _about(prepared: Prepared, planned: ClothPlan, job: dict[str, Any], effort: Effort) -> list[notices.Notice]:
    known = prepared.job
    said = list(notices.cloth_notices(planned, known))
    if effort == "quick":
        return said + list(notices.margin_notices(planned, known, None, QUICK_WORK))
    said += notices.margin_notices(planned, known, job, QUICK_WORK)
    return said + list(notices.ways_out(prepared, planned, job, QUICK_WORK))


def _answer(prepared: Prepared, planned: list[ClothPlan], said: list[notices.Notice]) -> dict[str, Any]:
    job = prepared.job
    said += [notices.question(problem) for problem in job.questions]
    for cover in prepared.covers:
        said.extend(notices.cover_notices(cover, job))
    return {
        "format": "plumpline-plan",
        "version": 1,
        "core": __version__,
        "units": job.units,
        "cushions": [cover_answer(cover, job) for cover in prepared.covers],
        "pieces": [piece_answer(piece, job) for cover in prepared.covers for piece in cover.pieces],
        "cloths": [cloth_answer(one, job) for one in planned],
        "materials": [entry for cover in prepared.covers for entry in materials(cover, job)],
        "notices": notices.in_order(said),
    }
