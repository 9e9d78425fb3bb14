"""Jobs the tests are made of: the examples shipped with the core, and short ways to write new ones."""

from __future__ import annotations

import copy
import json
from pathlib import Path

from answer_checker import check

import plumpline
from plumpline import JobError, plan

EXAMPLES = sorted((Path(plumpline.__file__).parent / "schema" / "examples").glob("job-*.json"))


def example(name):
    """A fresh copy of the shipped example job-`name`.json."""
    path = next(path for path in EXAMPLES if path.stem == f"job-{name}")
    return json.loads(path.read_text(encoding="utf-8"))


def covers(
    quantity,
    width,
    length,
    *,
    smaller_by="0 in",
    seam="1/2 in",
    pattern="free",
    motif=None,
    id="c1",
    cloth="k1",
    **more,
):
    """One entry of so many covers; `more` goes into the cushion as it stands."""
    face = {"cloth": cloth, "pattern": pattern, **({"motif": motif} if motif else {})}
    return {
        "id": id,
        "quantity": quantity,
        "kind": "knife-edge",
        "insert": {"shape": "rectangle", "width": width, "length": length},
        "cover": {"smaller_by": smaller_by, "seam": seam, "front": dict(face), "back": dict(face)},
        **more,
    }


def cloth(width, *, id="k1", selvedge="0 in", squaring="0 in", sold_by="1/8 yd", **more):
    """One cloth, by default with no allowance at all, so that the numbers are those of the panels."""
    return {"id": id, "width": width, "selvedge": selvedge, "squaring": squaring, "sold_by": sold_by, **more}


def job(cushions, cloths, units="in", **more):
    """A whole job document."""
    cushions = cushions if isinstance(cushions, list) else [cushions]
    cloths = cloths if isinstance(cloths, list) else [cloths]
    return {
        "format": "plumpline-job",
        "version": 1,
        "id": "aaaaaa",
        "units": units,
        "cushions": copy.deepcopy(cushions),
        "cloths": copy.deepcopy(cloths),
        **more,
    }


def changed(document, at, value):
    """A copy of the document with one value set; objects missing on the way are made; None takes it out."""
    result = copy.deepcopy(document)
    *way, last = at.split("/")[1:]
    place = result
    for name in way:
        place = place[int(name)] if isinstance(place, list) else place.setdefault(name, {})
    if value is None:
        del place[last]
    else:
        place[int(last) if isinstance(place, list) else last] = value
    return result


def checked(document, effort="full"):
    """The answer to a job, once it keeps every rule."""
    answer = plan(document, effort)
    assert check(document, answer) > 0
    return answer


def facts(answer, cover=0):
    """The facts on the workroom's sheet of a cover, by their names."""
    return {fact["name"]: fact["text"] for fact in answer["workroom"][cover]["facts"]}


def problems(document):
    """What keeps a job from being planned, whole or in part: (place, code, text) of each."""
    try:
        found = [notice for notice in plan(document, "quick")["notices"] if notice["level"] == "stop"]
    except JobError as error:
        found = error.problems
    return [(p["at"], p["code"], p["text"]) for p in found]
