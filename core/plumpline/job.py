"""The job as the core works with it: frozen, exact, complete; made from a document by `read_job`."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from plumpline.document import Reading, Values, read_fields
from plumpline.fields import JOB
from plumpline.lengths import NM_PER_INCH, round_half_even
from plumpline.money import MoneyError, to_minor
from plumpline.problems import Problem

NM_PER_CM = 10_000_000
NM_PER_YARD = 36 * NM_PER_INCH
NM_PER_METRE = 100 * NM_PER_CM


@dataclass(frozen=True)
class Habits:
    """What is taken where the maker says nothing: lengths in nm, by the system of units (common practice)."""

    seam: int
    grid: int
    selvedge: int
    squaring: int
    step: int
    least_seam: int


HABITS = {
    "in": Habits(
        seam=NM_PER_INCH // 2,
        grid=NM_PER_INCH // 8,
        selvedge=NM_PER_INCH // 2,
        squaring=2 * NM_PER_INCH,
        step=NM_PER_YARD // 8,
        least_seam=NM_PER_INCH // 4,
    ),
    "cm": Habits(
        seam=15 * NM_PER_CM // 10,
        grid=NM_PER_CM // 10,
        selvedge=NM_PER_CM,
        squaring=5 * NM_PER_CM,
        step=10 * NM_PER_CM,
        least_seam=6 * NM_PER_CM // 10,
    ),
}
HABITS["mm"] = HABITS["cm"]


@dataclass(frozen=True)
class Insert:
    """The pad, or the finished size wanted: lengths in nm, `None` where it was not measured."""

    width: int | None
    length: int | None
    fill: str | None
    measured: str
    clearance: int
    again_width: int | None
    again_length: int | None


@dataclass(frozen=True)
class Face:
    """What is asked of one face: its cloth, how the pattern is to fall on it, how it may be turned."""

    cloth: str
    pattern: str
    motif: str | None
    offset_across: int
    offset_along: int
    turn: str
    group: str | None


@dataclass(frozen=True)
class Corners:
    """Square corners, or tapered ones: `depth` in nm, `run` in nm or as a fraction of the side."""

    kind: str
    depth: int
    run: int | Fraction


@dataclass(frozen=True)
class Cover:
    """How the cover is made: allowances in nm; what it is smaller by and `opening` are `None` where a rule decides."""

    smaller_width: int | None
    smaller_length: int | None
    seam: int
    side_seam: int
    closing_seam: int
    opening: int | None
    corners: Corners
    front: Face
    back: Face


@dataclass(frozen=True)
class Cushion:
    """One entry of the job: so many covers of one make."""

    index: int
    id: str
    name: str
    quantity: int
    size_from: str
    insert: Insert
    cover: Cover

    @property
    def at(self) -> str:
        """Where the entry stands in the document."""
        return f"/cushions/{self.index}"


@dataclass(frozen=True)
class Motif:
    """A point of the pattern: nm from the left edge of the cloth and from the squared cut end."""

    id: str
    name: str
    across: int
    along: int


@dataclass(frozen=True)
class Flaw:
    """A place no panel may touch: nm from the left edge of the cloth and from the cut end."""

    across: int
    along: int
    width: int
    length: int


@dataclass(frozen=True)
class Price:
    """The price of `per` nm of cloth, in whole minor units of `currency`."""

    minor: int
    per: int
    per_unit: str
    currency: str


@dataclass(frozen=True)
class Cloth:
    """One cloth as it lies on the bolt, unwashed: lengths in nm, shrinkage as a fraction lost."""

    index: int
    id: str
    name: str
    width: int | None
    selvedge: int
    selvedge_said: bool
    direction: str
    direction_said: bool
    up: str
    repeat_across: int
    repeat_along: int
    drop: int
    motifs: tuple[Motif, ...]
    start: str
    squaring: int
    squaring_said: bool
    shrink_across: Fraction
    shrink_along: Fraction
    wash: str | None
    flaws: tuple[Flaw, ...]
    sold_by: int
    price: Price | None

    @property
    def at(self) -> str:
        """Where the entry stands in the document."""
        return f"/cloths/{self.index}"

    @property
    def lies_aside(self) -> bool:
        """Whether the top of every panel points to a side of the cloth (railroaded)."""
        return self.up in ("left", "right")


@dataclass(frozen=True)
class Job:
    """A whole job, the questions its readings raise, and the cloths (by id) that something unread lies on."""

    id: str
    units: str
    grid: int
    cushions: tuple[Cushion, ...]
    cloths: tuple[Cloth, ...]
    questions: tuple[Problem, ...]
    unsure: frozenset[str]

    def cloth(self, id_: str) -> Cloth:
        """The cloth of that id; the reader has made sure that there is one."""
        return next(cloth for cloth in self.cloths if cloth.id == id_)


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
    broken = _broken(reading)
    cloths = [
        _cloth(i, {"id": entry.get("id", "")} if f"/cloths/{i}" in broken else entry, habits, reading)
        for i, entry in enumerate(values["cloths"])
    ]
    cushions = [
        _cushion(i, entry, habits) for i, entry in enumerate(values["cushions"]) if f"/cushions/{i}" not in broken
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
        cushions=tuple(cushion for cushion in cushions if cushion.at not in broken),
        cloths=tuple(cloths),
        questions=tuple(reading.questions),
        unsure=_unsure(values, cloths, broken),
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
            faces = [entry.get("cover", {}).get(part, {}).get("cloth") for part in ("front", "back")]
            unsure |= {cloth.id for cloth in cloths if cloth.id in faces or None in faces}
    return frozenset(unsure)


def _cushion(index: int, values: Values, habits: Habits) -> Cushion:
    return Cushion(
        index=index,
        id=values["id"],
        name=values.get("name", ""),
        quantity=values["quantity"],
        size_from=values.get("size_from", "insert"),
        insert=_insert(values["insert"]),
        cover=_cover(values["cover"], habits),
    )


def _insert(values: Values) -> Insert:
    again = values.get("again", {})
    return Insert(
        width=values.get("width"),
        length=values.get("length"),
        fill=values.get("fill"),
        measured=values.get("measured", "insert"),
        clearance=values.get("clearance", 0),
        again_width=again.get("width"),
        again_length=again.get("length"),
    )


def _cover(values: Values, habits: Habits) -> Cover:
    seam: int = values.get("seam", habits.seam)
    closure, smaller = values.get("closure", {}), values.get("smaller_by", {})
    return Cover(
        smaller_width=smaller.get("width"),
        smaller_length=smaller.get("length"),
        seam=seam,
        side_seam=values.get("side_seam", seam),
        closing_seam=closure.get("seam", seam),
        opening=closure.get("opening"),
        corners=_corners(values.get("corners", {"kind": "square"})),
        front=_face(values["front"]),
        back=_face(values["back"]),
    )


def _corners(values: Values) -> Corners:
    # 1/2 in deep, starting at a quarter of the side: common practice, no standard exists.
    return Corners(
        kind=values["kind"],
        depth=values.get("depth", NM_PER_INCH // 2),
        run=values.get("run", Fraction(1, 4)),
    )


def _face(values: Values) -> Face:
    offset = values.get("offset", {})
    return Face(
        cloth=values["cloth"],
        pattern=values.get("pattern", "free"),
        motif=values.get("motif"),
        offset_across=offset.get("across", 0),
        offset_along=offset.get("along", 0),
        turn=values.get("turn", "quarter"),
        group=values.get("group"),
    )


def _cloth(index: int, values: Values, habits: Habits, reading: Reading) -> Cloth:
    repeat, shrinkage = values.get("repeat", {}), values.get("shrinkage", {})
    across, along = shrinkage.get("across", Fraction(0)), shrinkage.get("along", Fraction(0))
    return Cloth(
        index=index,
        id=values["id"],
        name=values.get("name", ""),
        width=values.get("width"),
        selvedge=values.get("selvedge", habits.selvedge),
        selvedge_said="selvedge" in values,
        direction=values.get("direction", "one-way"),
        direction_said="direction" in values,
        up=values.get("up", "away"),
        repeat_across=repeat.get("across", 0),
        repeat_along=repeat.get("along", 0),
        drop=repeat.get("drop", 0),
        motifs=tuple(_motif(entry) for entry in values.get("motifs", [])),
        start=values.get("start", "unknown"),
        squaring=values.get("squaring", habits.squaring),
        squaring_said="squaring" in values,
        shrink_across=across,
        shrink_along=along,
        wash=values.get("wash"),
        flaws=tuple(Flaw(**entry) for entry in values.get("flaws", [])),
        sold_by=values.get("sold_by", habits.step),
        price=_price(values["price"], f"/cloths/{index}/price", reading) if "price" in values else None,
    )


def _motif(values: Values) -> Motif:
    return Motif(values["id"], values.get("name", ""), values["across"], values["along"])


def _price(values: Values, at: str, reading: Reading) -> Price | None:
    currency = values["currency"]
    try:
        minor = to_minor(values["amount"], currency)
    except MoneyError as error:
        field = "currency" if error.code == "unknown-currency" else "amount"
        code = "unknown-value" if field == "currency" else "not-an-amount"
        reading.problem(f"{at}/{field}", code, str(error))
        return None
    per = NM_PER_YARD if values["per"] == "yd" else NM_PER_METRE
    return Price(minor, per, values["per"], currency)


def _check_ids(cushions: list[Cushion], cloths: list[Cloth], reading: Reading) -> None:
    _check_twice([(cushion.at, cushion.id) for cushion in cushions], reading)
    _check_twice([(cloth.at, cloth.id) for cloth in cloths], reading)
    for cloth in cloths:
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
    for part, face in (("front", cushion.cover.front), ("back", cushion.cover.back)):
        cloth = next((cloth for cloth in cloths if cloth.id == face.cloth), None)
        if cloth is None or cloth.at not in broken:
            _check_face(cloth, face, f"{cushion.at}/cover/{part}", reading)


def _check_face(cloth: Cloth | None, face: Face, at: str, reading: Reading) -> None:
    if cloth is None:
        reading.problem(f"{at}/cloth", "no-such-cloth", f"The job has no cloth “{face.cloth}”: choose one it has.")
        return
    if face.pattern == "centred":
        _check_centred(cloth, face, at, reading)
    elif face.pattern == "alike" and not (cloth.repeat_across or cloth.repeat_along):
        text = f"Alike panels need the repeat of {name_of(cloth)}: measure it, or let the panels be cut anywhere."
        reading.problem(f"{at}/pattern", "rules-contradict", text)


def _check_centred(cloth: Cloth, face: Face, at: str, reading: Reading) -> None:
    if not (cloth.repeat_across or cloth.repeat_along):
        text = f"To centre a motif, the repeat of {name_of(cloth)} has to be measured first."
        reading.problem(f"{at}/pattern", "rules-contradict", text)
    elif face.motif is None:
        text = f"Say which motif of {name_of(cloth)} is to stand in the middle."
        reading.problem(f"{at}/motif", "no-such-motif", text)
    elif face.motif not in [motif.id for motif in cloth.motifs]:
        text = f"There is no motif “{face.motif}” on {name_of(cloth)}: choose one it has, or measure it."
        reading.problem(f"{at}/motif", "no-such-motif", text)


def name_of(entry: Cloth | Cushion) -> str:
    """What to call a cloth or a cushion in a sentence: the maker's name for it, else a plain word."""
    if entry.name:
        return entry.name
    return f"cloth {entry.index + 1}" if isinstance(entry, Cloth) else f"cushion {entry.index + 1}"


def shrunk(length: int, lost: Fraction) -> int:
    """`length` nm after losing the fraction `lost`, rounded once, half to even."""
    return round_half_even(length * (1 - lost))
