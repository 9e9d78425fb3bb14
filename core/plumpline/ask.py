"""The one door for callers that speak JSON, such as a screen: a request as text in, a reply as text out."""

from __future__ import annotations

import json
from typing import Any

from plumpline.job import file_problems
from plumpline.lengths import LengthError, read_length_full, write_length
from plumpline.money import MoneyError, read_money
from plumpline.planning import covers, plan
from plumpline.problems import JobError
from plumpline.spoken import speak_length

Json = dict[str, Any]


def ask(request: str) -> str:
    """The reply to a request: {"ok": …} or {"problems": [{"at", "code", "text"}]}.

    A job that cannot be planned yet still has the `cushions` of its answer beside the problems.

    Requests: {"do": "plan", "job", "effort"}, {"do": "check", "job"}, {"do": "read", "text", "unit"},
    {"do": "read-money", "text", "currency"}.
    """
    try:
        wanted = json.loads(request)
        do, *needs = _REQUESTS[wanted["do"]]
        missing = [name for name in needs if name not in wanted]
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        return write_json(_problems("unknown-value", f"This request is none that can be answered: {error!r}."))
    if missing:
        return write_json(_problems("missing-field", f"This request does not say its {' and '.join(missing)}."))
    return write_json(do(wanted))


def write_json(value: object) -> str:
    """JSON as every answer is written: no spaces to spare, letters as they are, keys in the order they were made."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def _problems(code: str, text: str) -> Json:
    return {"problems": [{"at": "", "code": code, "text": text}]}


def _plan(wanted: Json) -> Json:
    try:
        return {"ok": plan(wanted["job"], wanted.get("effort", "full"))}
    except JobError as error:
        return {"problems": error.problems, "cushions": covers(wanted["job"])}


def _check(wanted: Json) -> Json:
    # A file is taken in whole or not at all, so a broken entry counts even where the rest could be answered.
    problems = file_problems(wanted["job"])
    if problems:
        return {"problems": [problem.to_json() for problem in problems]}
    return {"ok": {"version": wanted["job"]["version"]}}


def _read(wanted: Json) -> Json:
    try:
        read = read_length_full(wanted["text"], wanted.get("unit"))
    except LengthError as error:
        return _problems(error.code, str(error))
    nm = read["nm"]
    texts = {"in": write_length(nm, "in"), "cm": write_length(nm, "cm")}
    return {"ok": {**read, "texts": texts, "spoken": speak_length(nm, wanted.get("unit") or "in")}}


def _read_money(wanted: Json) -> Json:
    try:
        return {"ok": read_money(wanted["text"], wanted["currency"])}
    except MoneyError as error:
        return _problems(error.code, str(error))


# What is answered, and what such a request has to say.
_REQUESTS: dict[object, tuple[Any, ...]] = {
    "plan": (_plan, "job"),
    "check": (_check, "job"),
    "read": (_read, "text"),
    "read-money": (_read_money, "text", "currency"),
}
