"""Every field of the format can be entered and seen by touch: each example job, entered and saved, is itself again."""

import json
from pathlib import Path
from typing import Any

import pytest
from maker import FieldMaker
from names import fields, tables, told_by
from playwright.sync_api import Page

from plumpline import JobError, plan
from plumpline.cushions.catalogue import KINDS
from plumpline.fields import CLOSURE, FACES_OF, INSERT, JOB, Field

EXAMPLES = sorted((Path(__file__).resolve().parents[2] / "core/plumpline/schema/examples").glob("job-*.json"))
# What a document always says.
NOT_ENTERED = {"constant"}
# Where the places of a list of plain values have a control each.
PLACES = {"lengths": "/*", "diagonals": "/*/*"}
LISTS = {"cushions", "cloths", "motifs", "flaws", "items", "bought"}


def leaves(value: Any, at: str = "") -> list[tuple[str, Any]]:
    """Every field of a document that holds no further fields, by its path."""
    if isinstance(value, dict | list):
        inner = value.items() if isinstance(value, dict) else enumerate(value)
        return [leaf for name, entry in inner for leaf in leaves(entry, f"{at}/{name}")]
    return [(at, value)]


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda path: path.stem)
def test_an_example_entered_by_touch_is_saved_as_the_same_document(phone: Page, example: Path) -> None:
    job: dict[str, Any] = json.loads(example.read_text("utf-8"))
    phone.emulate_media(reduced_motion="reduce")
    maker = FieldMaker(phone)
    maker.enter(job)
    maker.go_home()
    saved = maker.save_as_file(job["name"])
    assert saved.pop("id") != job.pop("id")
    differing = {path for path, _ in set(leaves(saved)) ^ set(leaves(job))}
    assert differing == set()
    assert saved == job


def patterns(entries: tuple[Field, ...], at: str = "") -> list[str]:
    """Every field of the format that holds a value of its own, as the screens name its place."""
    found = []
    for entry in entries:
        path = f"{at}/{entry.name}"
        if entry.fields:
            found += patterns(entry.fields, f"{path}/*" if entry.name in LISTS else path)
        if entry.kind == "by_side" or (not entry.fields and entry.kind not in NOT_ENTERED and entry.name != "id"):
            found.append(path + PLACES.get(entry.kind, ""))
    return found


def test_the_screens_offer_every_field_of_the_format_and_no_other() -> None:
    assert sorted(entry.pattern for entry in fields()) == sorted(patterns(JOB))


def test_every_choice_of_the_format_has_its_words() -> None:
    def choices(entries: tuple[Field, ...], at: str = "") -> dict[str, set[str]]:
        found: dict[str, set[str]] = {}
        for entry in entries:
            path = f"{at}/{entry.name}"
            found |= choices(entry.fields, f"{path}/*" if entry.name in LISTS else path)
            if entry.kind == "choice":
                found[path] = set(entry.choices)
        return found

    offered = {entry.pattern: set(entry.options) for entry in fields() if entry.kind == "choice"}
    assert offered == choices(JOB)


def usual_values() -> list[tuple[str, str, str]]:
    """What the screens call usual: (pattern, value, units it holds in)."""
    found = []
    for pattern, entry in tables()["fields"].items():
        usual = entry.get("usual")
        if isinstance(usual, str):
            found.append((pattern, usual, "in"))
        elif usual:
            found += [(pattern, value, units) for units, value in usual.items()]
    return found


def put(job: dict[str, Any], pattern: str, value: str) -> dict[str, Any]:
    """The job with a field of its first cushion or cloth set, and what that field cannot be without."""
    here: Any = job
    *way, last = pattern.strip("/").replace("*", "0").split("/")
    for name in way:
        here = here[int(name)] if isinstance(here, list) else here.setdefault(name, {})
    here[last] = value
    return job


def plain_job(units: str, pattern: str) -> dict[str, Any]:
    job = put(json.loads((EXAMPLES[0].parent / "job-harbour-room.json").read_text("utf-8")), "/units", units)
    del job["grid"]
    del job["cloths"][0]["sold_by"]
    cover = job["cushions"][0]["cover"]
    for name in ("edge", "closure", "corners"):
        del cover[name]
    if pattern.endswith("/run"):
        cover["corners"] = {"kind": "tapered", "depth": "1/2 in"}
    if pattern.endswith("/radius"):
        cover["corners"] = {"kind": "rounded"}
    if "/edge/" in pattern and not pattern.endswith("/kind"):
        of_trim = pattern.endswith(("/rims", "/hidden_joins"))
        of_frill = pattern.endswith(("/gather", "/frill", "/hem"))
        cover["edge"] = {"kind": "trimmed", "pack": "90 in"} if of_trim else {"kind": "piped"}
        hemmed = {"frill": "hemmed"} if pattern.endswith("/hem") else {}
        cover["edge"] = {"kind": "frilled", **hemmed} if of_frill else cover["edge"]
    if "/made/" in pattern and not pattern.endswith("/kind"):
        part = pattern.split("/")[4]
        cover[part]["made"] = {"kind": "band" if pattern.endswith("/lies") else "border"}
    if "/piece/flaws/" in pattern:
        corner = {"corner": "end-left", "width": "3 in", "length": "4 in"}
        job["cloths"][0]["piece"] = {"length": "90 in", "flaws": [corner]}
    if "/layers/" in pattern and not pattern.endswith("/cloth"):
        cover["layers"] = {pattern.split("/")[5]: {"cloth": job["cloths"][0]["id"]}}
    if "/closure/" in pattern and not pattern.endswith("/kind"):
        cover["closure"] = {"kind": "envelope" if pattern.endswith("/hem") else "zip"}
    return job


@pytest.mark.parametrize(("pattern", "value", "units"), usual_values())
def test_what_the_screens_call_usual_is_what_the_core_takes(pattern: str, value: str, units: str) -> None:
    job = plain_job(units, pattern)
    assert plan(put(plain_job(units, pattern), pattern, value)) == plan(job)


def cover_closed(kind: str, closing: dict[str, str]) -> dict[str, Any]:
    """A job of one cover of that kind ("knife-edge round"), closed so."""
    made, shape = kind.split()
    job: dict[str, Any] = json.loads((EXAMPLES[0].parent / "job-harbour-room.json").read_text("utf-8"))
    cushion = job["cushions"][0]
    sizes = dict.fromkeys(("width", "length", "diameter"), "16 in") | {"thickness": "3 in"}
    known = {entry.name for entry in INSERT}
    cushion |= {"kind": made, "quantity": 1}
    outline = {"sides": ["16 in"] * 4, "diagonals": [[0, 2, "22 5/8 in"]]}
    taken = outline if shape == "polygon" else {name: size for name, size in sizes.items() if name in known}
    cushion["insert"] = {"shape": shape, "thickness": "3 in"} | taken
    front = cushion["cover"]["front"]
    cushion["cover"] = dict.fromkeys(FACES_OF[made], front) | {"closure": closing}
    return job


def is_refused(job: dict[str, Any]) -> bool:
    """Whether the core says that such a cover is not closed in this way, or not there."""
    try:
        told = [notice["at"] for notice in plan(job, effort="quick")["notices"] if notice["level"] == "stop"]
    except JobError as error:
        told = [problem["at"] for problem in error.problems]
    return any("/closure/" in at for at in told)


@pytest.mark.parametrize("kind", told_by("stations/closures.js")["CLOSURES"])
def test_every_kind_is_offered_the_ways_of_closing_that_the_core_makes_and_no_other(kind: str) -> None:
    offered = told_by("stations/closures.js")["CLOSURES"][kind]
    fields_of_closure = {entry.name: entry for entry in CLOSURE}
    for closing in fields_of_closure["kind"].choices:
        assert is_refused(cover_closed(kind, {"kind": closing})) == (closing not in offered), closing
        for place in fields_of_closure["at"].choices:
            refused = is_refused(cover_closed(kind, {"kind": closing, "at": place}))
            assert refused == (place not in offered.get(closing, [])), f"{closing} at {place}"


def test_the_pictures_offer_every_kind_that_the_core_makes() -> None:
    pictures = tables()["controls"]["measure"]["kind"][1]
    made = [" ".join(kind) for kind in KINDS]
    assert sorted(pictures) == sorted(told_by("stations/closures.js")["CLOSURES"]) == sorted(made)


def test_one_amount_for_both_sides_stays_with_the_other_when_one_gets_its_own(phone: Page) -> None:
    maker = FieldMaker(phone)
    job: dict[str, Any] = json.loads((EXAMPLES[0].parent / "job-harbour-room.json").read_text("utf-8"))
    maker.enter(job)
    maker.go_to("cover")
    by_pattern = {entry.pattern: entry for entry in fields()}
    maker.set_field(job, job, by_pattern["/cushions/*/cover/smaller_by/length"], "2 in")
    maker.go_home()
    saved = maker.save_as_file(job["name"])
    assert saved["cushions"][0]["cover"]["smaller_by"] == {"width": "1 in", "length": "2 in"}
