"""The one door for callers that speak JSON, such as a screen: a request as text in, a reply as text out."""

from __future__ import annotations

import json
from abc import ABC, abstractmethod
from base64 import b64encode
from collections.abc import Callable
from fractions import Fraction
from typing import Any, Protocol

from plumpline import papers
from plumpline.dialect import WORDINGS, reworded, wording
from plumpline.job import file_problems
from plumpline.layout.budget import Slices, to_its_end
from plumpline.lengths import UNITS, LengthError, read_length, read_length_full, write_length
from plumpline.money import MoneyError, read_money
from plumpline.planning import Planning, covers
from plumpline.price import priced
from plumpline.problems import JobError
from plumpline.readings import part_on_tape
from plumpline.spoken import speak_length

Json = dict[str, Any]


def ask(request: str) -> str:
    """The reply to a request: {"ok": …} or {"problems": [{"at", "code", "text"}]}.

    A job that cannot be planned yet still has the `cushions` of its answer beside the problems.

    Requests: {"do": "plan", "job", "effort", "tips"}, {"do": "compare", "job"}, {"do": "check", "job"},
    {"do": "read", "text", "unit"}, {"do": "read-money", "text", "currency"}, {"do": "part", "of", "part", "unit"} for
    the mark of a tape that lies so far, [3, 8] of it, along a length,
    {"do": "quote", "job", "bought"} for lengths in nm by the id of the cloth,
    {"do": "templates" or "sheet", "job", "paper", "cushion"}, whose {"ok": {"pdf"}} is the file in base 64. Those with
    a job may say the "words" of the texts: "en-GB", as they are left out, or "en-US".
    """
    try:
        wanted = json.loads(request)
        do, *needs = _REQUESTS[wanted["do"]]
        missing = [name for name in needs if name not in wanted]
    except (ValueError, KeyError, TypeError, RecursionError) as error:
        return write_json(_problems("unknown-value", f"This request is none that can be answered: {error!r}."))
    if missing:
        return write_json(_problems("missing-field", f"This request does not say its {' and '.join(missing)}."))
    if wanted.get("words", _FIRST) not in WORDINGS:
        return write_json(_problems("unknown-value", f"The words can be: {', '.join(WORDINGS)}."))
    return write_json(do(wanted))


def write_json(value: object) -> str:
    """JSON as every answer is written: no spaces to spare, letters as they are, keys in the order they were made."""
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))


def _problems(code: str, text: str) -> Json:
    return {"problems": [{"at": "", "code": code, "text": text}]}


def _plan(wanted: Json) -> Json:
    return to_its_end(PlanSession(wanted).slices)


def _compare(wanted: Json) -> Json:
    return to_its_end(ComparisonSession(wanted).slices)


def _check(wanted: Json) -> Json:
    # A file is taken in whole or not at all, so a broken entry counts even where the rest could be answered.
    problems = file_problems(wanted["job"])
    if problems:
        return _worded(wanted, {"problems": [problem.to_json() for problem in problems]})
    return {"ok": {"version": wanted["job"]["version"]}}


def _read(wanted: Json) -> Json:
    try:
        read = read_length_full(wanted["text"], wanted.get("unit"))
    except LengthError as error:
        return _problems(error.code, str(error))
    nm = read["nm"]
    texts = {"in": write_length(nm, "in"), "cm": write_length(nm, "cm")}
    return {"ok": {**read, "texts": texts, "spoken": speak_length(nm, wanted.get("unit") or "in")}}


def _part(wanted: Json) -> Json:
    """A place on a repeat that a finger pointed at, as a length that a tape can show."""
    part, unit = wanted["part"], wanted["unit"]
    if not (isinstance(part, list) and len(part) == 2 and all(type(one) is int for one in part)):
        return _problems("unknown-value", "A part is told as two whole numbers: how many, of how many.")
    if unit not in UNITS or not 0 <= part[0] <= part[1] or not part[1]:
        return _problems("unknown-value", "A part lies between nothing and all of its length, and is told in a unit.")
    try:
        nm = part_on_tape(read_length(wanted["of"], unit), Fraction(*part), unit)
    except LengthError as error:
        return _problems(error.code, str(error))
    return {"ok": {"nm": nm, "text": write_length(nm, unit)}}


def _read_money(wanted: Json) -> Json:
    try:
        return {"ok": read_money(wanted["text"], wanted["currency"])}
    except MoneyError as error:
        return _problems(error.code, str(error))


# The words of a request that does not say them.
_FIRST = WORDINGS[0]


def _worded(wanted: Json, reply: Json) -> Json:
    """A reply in the words that the request asks for."""
    language = wanted.get("words", _FIRST)
    return reply if language == _FIRST else reworded(reply, wording(language, wanted["job"]))


def _quote(wanted: Json) -> Json:
    """The price for lengths that were planned before, so that nothing is planned anew while prices change."""
    bought = wanted["bought"]
    if not isinstance(bought, dict) or not all(type(nm) is int and nm >= 0 for nm in bought.values()):
        return _problems("unknown-value", "What is bought is told in whole nm, by the id of each cloth.")
    try:
        return _worded(wanted, {"ok": priced(wanted["job"], bought)})
    except JobError as error:
        return _worded(wanted, {"problems": error.problems})


def _templates(wanted: Json) -> Json:
    return _paper(papers.templates, wanted)


def _sheet(wanted: Json) -> Json:
    return _paper(papers.sheet, wanted)


def _paper(write: Callable[[Json, str, str | None, str], bytes], wanted: Json) -> Json:
    if wanted["paper"] not in papers.PAPERS:
        return _problems("unknown-value", f"The paper can be: {', '.join(papers.PAPERS)}.")
    try:
        pdf = write(wanted["job"], wanted["paper"], wanted.get("cushion"), wanted.get("words", _FIRST))
    except JobError as error:
        return _worded(wanted, {"problems": error.problems})
    return {"ok": {"pdf": b64encode(pdf).decode()}}


# What is answered, and what such a request has to say.
_REQUESTS: dict[object, tuple[Any, ...]] = {
    "plan": (_plan, "job"),
    "compare": (_compare, "job"),
    "check": (_check, "job"),
    "read": (_read, "text"),
    "templates": (_templates, "job", "paper"),
    "sheet": (_sheet, "job", "paper"),
    "quote": (_quote, "job", "bought"),
    "part": (_part, "of", "part", "unit"),
    "read-money": (_read_money, "text", "currency"),
}


class Work(Protocol):
    """What is worked out slice by slice: a planning, or a comparison."""

    def steps(self) -> Slices[Json]:
        """Do the work: the answer in the end."""

    @property
    def is_begun(self) -> bool:
        """Whether there is an answer yet."""

    @property
    def stage(self) -> object:
        """What the answer depends on."""

    def progress(self) -> Json:
        """How far it is."""

    def answer(self) -> Json:
        """The answer as it stands."""


class Session(ABC):
    """A request that takes its time, answered slice by slice for a caller who has other things to do in between.

    Each `step` takes about 20 ms. After any of them `progress` says how far the work is, and `reply` what is known
    by then; after the last one it is the reply that `ask` gives to the same request.
    """

    def __init__(self, wanted: Json) -> None:
        self._wanted = wanted
        self.slices = self._answered(wanted["job"])
        self._work: Work | None = None
        self._end: Json | None = None
        self._told: object = None

    @abstractmethod
    def _begun(self, job: Any) -> Work:
        """The work to do for a job; raises `JobError`."""

    def _failed(self) -> Json:
        """What is known of a job beside its problems."""
        return {}

    def _answered(self, job: Any) -> Slices[Json]:
        try:
            self._work = self._begun(job)
            return _worded(self._wanted, {"ok": (yield from self._work.steps())})
        except JobError as error:
            return _worded(self._wanted, {"problems": error.problems, **self._failed()})

    def step(self) -> bool:
        """Do a slice of the work; whether any is left."""
        if self._end is None:
            try:
                next(self.slices)
            except StopIteration as end:
                self._end = end.value
        return self._end is None

    def progress(self) -> str:
        """How far it is, as JSON: {"thousandths", "cloths": [{"cloth", "laid", "ask"}], "news"}; `cloths` of a plan.

        `news` says whether `reply` has an answer now that it did not have when it was last asked.
        """
        work = self._work
        told = work.progress() if work else {"thousandths": 0, "cloths": []}
        return write_json({**told, "news": bool(work and work.is_begun and work.stage != self._told)})

    def reply(self) -> str:
        """The reply as it stands, as JSON; {"ok": answer, "unfinished": true} before the last step.

        The first answer is waited for, since without it there is nothing to say.
        """
        while not (self._work and self._work.is_begun) and self.step():
            pass
        if self._work:
            self._told = self._work.stage
        if self._end is None and self._work:
            return write_json(_worded(self._wanted, {"ok": self._work.answer(), "unfinished": True}))
        return write_json(self._end)


class PlanSession(Session):
    """A request for a plan, which gets better while it is looked at."""

    def _begun(self, job: Any) -> Work:
        return Planning(job, self._wanted.get("effort", "full"), bool(self._wanted.get("tips")))

    def _failed(self) -> Json:
        return {"cushions": covers(self._wanted["job"])}


class ComparisonSession(Session):
    """A request for the ways a job could be made, which are found one after the other."""

    def _begun(self, job: Any) -> Work:
        from plumpline.beside.comparing import Comparison  # no plan needs it, and it need not delay the first one

        return Comparison(job)


_SESSIONS: dict[object, type[Session]] = {"plan": PlanSession, "compare": ComparisonSession}


def begin(request: str) -> Session:
    """Begin to answer a request that takes its time, as text: {"do": "plan", "job", "effort", "tips", "words"}, or
    {"do": "compare", "job", "words"}.
    """
    wanted = json.loads(request)
    return _SESSIONS[wanted["do"]](wanted)
