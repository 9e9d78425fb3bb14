"""Makes the job of a document, and says everything that is wrong with it."""

from __future__ import annotations

import re

from plumpline.document import Reading, Values, read_fields
from plumpline.fields import FACES_OF, JOB, OWN_CLOTH
from plumpline.job.cloths import Cloth, read_cloth
from plumpline.job.cushions import Cushion, Face, read_cushion
from plumpline.job.habits import HABITS
from plumpline.job.whole import Job, name_of
from plumpline.measures import Measures
from plumpline.problems import Problem


def read_job(document: object) -> tuple[Job | None, list[Problem]]:
    """The job a document describes, and every problem found; without a job where no job can be made of it.

    A problem within one cushion or one cloth leaves that entry out of the job and its cloths unsure; any other
    problem leaves no job.
    """
    reading = Reading()
    values = read_fields(document, JOB, "", reading)
    if any(_entry_of(problem.at) is None for problem in reading.problems):
        return None, reading.problems
    habits = HABITS[values["units"]]
    _check_backs(values, reading)
    broken = _broken(reading)
    cloths = [
        read_cloth(i, {"id": entry.get("id", "")} if f"/cloths/{i}" in broken else entry, habits, reading)
        for i, entry in enumerate(values["cloths"])
    ]
    cushions = [
        read_cushion(i, entry, habits) for i, entry in enumerate(values["cushions"]) if f"/cushions/{i}" not in broken
    ]
    _check_ids(cushions, cloths, reading)
    if any(problem.code == "same-id-twice" for problem in reading.problems):
        return None, reading.problems
    for cushion in cushions:
        _check_faces(cloths, cushion, reading)
    broken = _broken(reading)
    job = Job(
        id=values["id"],
        units=values["units"],
        grid=values.get("grid", habits.grid),
        fits=Measures(tuple(values.get("fit", {}).items())),
        cushions=tuple(cushion for cushion in cushions if cushion.at not in broken),
        cloths=tuple(cloths),
        questions=tuple(reading.questions),
        unsure=_unsure(values, cloths, broken),
        client=values.get("client", "").strip(),
    )
    return job, reading.problems


def file_problems(document: object) -> list[Problem]:
    """What keeps a document from being taken in as a job; what is merely not finished yet does not (fault B24)."""
    return [problem for problem in read_job(document)[1] if not _is_unfinished(problem)]


def _is_unfinished(problem: Problem) -> bool:
    """Whether a maker can leave a job so: a motif still to be chosen, a price or a flaw half entered."""
    if problem.code == "missing-field":
        return _HALF_ENTERED.fullmatch(problem.at) is not None
    return problem.code in ("no-such-motif", "not-an-amount", "rules-contradict")


_HALF_ENTERED = re.compile(r"/cloths/\d+/(price|motifs/\d+|flaws/\d+)/(?!id$)\w+")


def _entry_of(at: str) -> str | None:
    """The cushion or cloth that a place of the document lies in: "/cloths/0" for "/cloths/0/width"."""
    parts = at.split("/")
    return "/".join(parts[:3]) if len(parts) > 3 and parts[1] in ("cushions", "cloths") else None


def _broken(reading: Reading) -> set[str]:
    return {entry for problem in reading.problems if (entry := _entry_of(problem.at)) is not None}


def _unsure(values: Values, cloths: list[Cloth], broken: set[str]) -> frozenset[str]:
    """The cloths that no length may be asked for: those not understood, and those a broken cushion lies on."""
    unsure = {cloth.id for cloth in cloths if cloth.at in broken}
    for index, entry in enumerate(values["cushions"]):
        if f"/cushions/{index}" in broken:
            named = _cloths_named(entry)
            unsure |= {cloth.id for cloth in cloths if cloth.id in named or None in named}
    return frozenset(unsure)


def _cloths_named(entry: Values) -> list[str | None]:
    """The ids of all cloths that the values of a cover name, and None where a face does not say its cloth."""
    cover = entry.get("cover", {})
    parts = FACES_OF.get(entry.get("kind", ""), OWN_CLOTH)
    faces = [cover.get(part, {}).get("cloth") for part in OWN_CLOTH if part in parts]
    return faces + _cloths_within(cover)


def _cloths_within(values: Values) -> list[str | None]:
    """The cloth of every part that says one, and of the parts of that part."""
    found: list[str | None] = []
    for part in values.values():
        if isinstance(part, dict):
            found += [part["cloth"]] if "cloth" in part else []
            found += _cloths_within(part)
    return found


def _check_backs(values: Values, reading: Reading) -> None:
    """A cover of a kind that has a back has to say what it is."""
    for index, entry in enumerate(values["cushions"]):
        cover = entry.get("cover")
        if cover and "back" in FACES_OF.get(entry.get("kind", ""), ()) and "back" not in cover:
            text = "“back” is missing: say which cloth the back is cut from."
            reading.problem(f"/cushions/{index}/cover/back", "missing-field", text)


def _check_ids(cushions: list[Cushion], cloths: list[Cloth], reading: Reading) -> None:
    _check_twice([(cushion.at, cushion.id) for cushion in cushions], reading)
    _check_twice([(cloth.at, cloth.id) for cloth in cloths], reading)
    for cloth in cloths:
        if cloth.instead_of is not None and cloth.instead_of not in [other.id for other in cloths]:
            text = f"The job has no cloth “{cloth.instead_of}” to take the place of: choose one, or leave it out."
            reading.problem(f"{cloth.at}/instead_of", "no-such-cloth", text)
        places = [(f"{cloth.at}/motifs/{i}", motif.id) for i, motif in enumerate(cloth.motifs)]
        _check_twice(places, reading)


def _check_twice(places: list[tuple[str, str]], reading: Reading) -> None:
    seen: dict[str, str] = {}
    for at, id_ in places:
        if id_ in seen:
            reading.problem(f"{at}/id", "same-id-twice", f"“{id_}” is also the id at {seen[id_]}; change one.")
        seen.setdefault(id_, at)


def _check_faces(cloths: list[Cloth], cushion: Cushion, reading: Reading) -> None:
    broken = _broken(reading)
    for part, face in cushion.cover.faces:
        cloth = next((cloth for cloth in cloths if cloth.id == face.cloth), None)
        if cloth is None or cloth.at not in broken:
            _check_face(cloth, face, f"{cushion.at}/cover/{part}", reading)
    if cushion.cover.edge.is_of_strips and cushion.cover.edge.cloth not in [cloth.id for cloth in cloths]:
        _no_such_cloth(cushion.cover.edge.cloth, f"{cushion.at}/cover/edge", reading)


def _check_face(cloth: Cloth | None, face: Face, at: str, reading: Reading) -> None:
    if cloth is None:
        _no_such_cloth(face.cloth, at, reading)
        return
    if face.has_motif:
        _check_centred(cloth, face, at, reading)
    elif face.has_group and not (cloth.repeat_across or cloth.repeat_along):
        what = "Alike panels need" if face.pattern == "alike" else "A row of fronts needs"
        text = f"{what} the repeat of {name_of(cloth)}: measure it, or let the panels be cut anywhere."
        reading.problem(f"{at}/pattern", "rules-contradict", text)


def _no_such_cloth(name: str, at: str, reading: Reading) -> None:
    reading.problem(f"{at}/cloth", "no-such-cloth", f"The job has no cloth “{name}”: choose one it has.")


def _check_centred(cloth: Cloth, face: Face, at: str, reading: Reading) -> None:
    text = _no_such_repeat(cloth, face)
    if text is not None:
        reading.problem(f"{at}/pattern", "rules-contradict", text)
    elif face.motif is None:
        text = f"Say which motif of {name_of(cloth)} is to stand in the middle."
        reading.problem(f"{at}/motif", "no-such-motif", text)
    elif face.motif not in [motif.id for motif in cloth.motifs]:
        text = f"There is no motif “{face.motif}” on {name_of(cloth)}: choose one it has, or measure it."
        reading.problem(f"{at}/motif", "no-such-motif", text)


def _no_such_repeat(cloth: Cloth, face: Face) -> str | None:
    """What is wrong with centring where the cloth has no repeat, or not the way that a stripe needs it."""
    name = name_of(cloth)
    if not (cloth.repeat_across or cloth.repeat_along):
        what = "a motif, the repeat of" if face.pattern == "centred" else "a stripe, the distance between stripes on"
        return f"To centre {what} {name} has to be measured first."
    # Upright on a face whose top points to a side of the cloth is what runs across the roll.
    if face.pattern == "centred" or (cloth.repeat_along if cloth.lies_aside else cloth.repeat_across):
        return None
    top = "away from the cut end" if cloth.lies_aside else "to one of its edges"
    text = f"The stripes of {name} would lie crosswise on this face: let the top of its pattern point {top}"
    return f"{text}, or measure the repeat the other way too."
