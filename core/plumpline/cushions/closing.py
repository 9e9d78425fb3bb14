"""How a cover is closed: where, by how long an opening or zip, and with what allowance along it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace

from plumpline.figures import listed
from plumpline.job import HABITS, NM_PER_CM, Cushion, Job
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.problems import Problem

# Where each way of closing may be on a kind of cover, the usual place first.
Places = Mapping[str, tuple[str, ...]]
# Of a knife-edge cover with a bottom side to it; a round one has none to tie.
KNIFE_EDGE_AT: Places = {
    "hand-sewn": ("bottom",),
    "zip": ("bottom", "back"),
    "envelope": ("back",),
    "buttons": ("back",),
    "ties": ("bottom",),
    "open": ("bottom",),
}


@dataclass(frozen=True)
class Lap:
    """How far the two pieces of a back lie over each other, 0 with a zip between them, and what each takes; in nm."""

    overlap: int
    allowance: int


@dataclass(frozen=True)
class Folds:
    """Where a straight-sided back is cut in two, in nm.

    The `upper` and the `lower` piece end so high above its lowest point, finished, which is `moved` up from where they
    would halve it. The line is `across` long between the seams of the cover, of two lines half of both, and lies `up`
    above the lowest point of its finished outline.
    """

    upper: int
    lower: int
    moved: int
    across: int
    up: int


@dataclass(frozen=True)
class Closing:
    """How a cover is closed; lengths in nm.

    `edge` is the seam or slit it lies in and `length` so much of it as stays open or gets a zip. `allowance` is what
    each of the two edges there takes; `words` say where that is, `overlap` how far they lie over each other, `side`
    which side of a straight-sided outline it lies at; `folds` say where the back of one is cut in two. A zip band
    `returns` so far round each of the corners at its ends.
    """

    kind: str
    at: str
    edge: int
    length: int
    allowance: int
    words: str
    overlap: int = 0
    side: int | None = None
    folds: Folds | None = None
    returns: int = 0

    @property
    def lap(self) -> Lap:
        """How the pieces of a back that closes across its middle meet."""
        return Lap(self.overlap, self.allowance)

    def within(self, seam: int) -> Closing:
        """The closure where its seam goes all round, so that its allowance at the edge is that of the seam."""
        return replace(self, allowance=seam) if self.at == "bottom" else self

    @property
    def zips(self) -> tuple[int, ...]:
        """How far each zip of the cover opens."""
        return (self.length,) if self.kind == "zip" else ()


_WHERE = {"bottom": "in the bottom seam", "back": "across the back", "boxing": "in its band of the boxing"}


def closing_of(
    cushion: Cushion,
    job: Job,
    places: Places,
    edges: Mapping[str, int],
    along: int = 0,
    where: Mapping[str, str] = _WHERE,
) -> Closing | list[Problem]:
    """The closure of a cover whose seams and slits are so long (`edges`, by place), or why it cannot be closed so.

    `along` is the finished height of a back that may come in two pieces, `where` the words for the places.
    """
    closure, at = cushion.cover.closure, f"{cushion.at}/cover/closure"
    if closure.kind not in places:
        text = f"This cover cannot be closed so. It can be: {listed(list(places))}."
        return [Problem(f"{at}/kind", "unknown-value", text)]
    allowed = places[closure.kind]
    place = closure.at or allowed[0]
    if place not in allowed:
        text = f"On this cover that is not where it closes. It can be: {listed(list(allowed))}."
        return [Problem(f"{at}/at", "unknown-value", text)]
    closing = Closing(
        kind=closure.kind,
        at=place,
        edge=edges[place],
        length=_length(cushion, job, place, edges[place]),
        allowance=_allowance(cushion),
        words=where[place],
        overlap=_overlap(cushion, job, along),
    )
    return _impossible(cushion, job, closing, along) or closing


def closes_across(cushion: Cushion) -> bool:
    """Whether a cover is to close across its back, if it can."""
    return cushion.cover.closure.kind in ("envelope", "buttons") or cushion.cover.closure.at == "back"


def lap_of(cushion: Cushion, job: Job, along: int) -> Lap:
    """How the two pieces of a back of that finished height are to meet."""
    return Lap(_overlap(cushion, job, along), _allowance(cushion))


def _length(cushion: Cushion, job: Job, place: str, edge: int) -> int:
    closure = cushion.cover.closure
    if closure.kind == "hand-sewn":
        return closure.opening or _usual_opening(edge, cushion, job.units)
    if closure.kind == "zip":
        # Common practice: a zip is 2 in (5 cm) shorter than its side, but as long as its band in a boxing.
        shorter = edge if place == "boxing" else edge - HABITS[job.units].zip_shorter
        return closure.zip_length or (shorter if shorter > 0 else edge)
    return edge


def _usual_opening(edge: int, cushion: Cushion, units: str) -> int:
    """The opening up to a half inch or a centimetre and never longer than the edge.

    Common practice: about 8 in on an 18 in cover for a soft pad, the finished side less 5 in for a firm one.
    """
    firm = cushion.insert.fill in ("firm", "foam")
    wanted = edge - 5 * NM_PER_INCH if firm else edge * 8 // 18
    step = NM_PER_INCH // 2 if units == "in" else NM_PER_CM
    return min(edge, max(step, -(-wanted // step) * step))


def _allowance(cushion: Cushion) -> int:
    cover, closure = cushion.cover, cushion.cover.closure
    if closure.kind in ("envelope", "buttons", "ties", "open"):
        return closure.hem
    usual = closure.zip_seam if closure.kind == "zip" else cover.seam
    return usual if closure.seam is None else closure.seam


def _overlap(cushion: Cushion, job: Job, along: int) -> int:
    """How far the pieces of a back lie over each other (common practice: 4 in up to a 16 in cover, above that 5)."""
    closure, habits = cushion.cover.closure, HABITS[job.units]
    if closure.kind == "buttons":
        return closure.overlap or habits.button_overlap
    if closure.kind == "envelope":
        return closure.overlap or (habits.overlap if along <= habits.large else habits.large_overlap)
    return 0


def _impossible(cushion: Cushion, job: Job, closing: Closing, along: int) -> list[Problem]:
    at = f"{cushion.at}/cover/closure"
    length, edge, hem, overlap, back = (
        write_length(nm, job.units) for nm in (closing.length, closing.edge, closing.allowance, closing.overlap, along)
    )
    if closing.length > closing.edge and closing.kind == "zip":
        text = f"The zip of {length} is longer than the seam it lies in, {edge}: take a shorter one."
        return [Problem(f"{at}/length", "zip-longer-than-seam", text)]
    if closing.length > closing.edge:
        text = f"The opening of {length} is longer than the edge it lies in, {edge}: make it shorter."
        return [Problem(f"{at}/opening", "opening-too-long", text)]
    if closing.overlap and closing.overlap < closing.allowance:
        text = f"The overlap of {overlap} is less than a hem takes, {hem}: the back would gape. Overlap it further."
        return [Problem(f"{at}/overlap", "overlap-under-hems", text)]
    if closing.overlap > along:
        text = f"The overlap of {overlap} is more than the whole back, {back}: make it smaller."
        return [Problem(f"{at}/overlap", "rules-contradict", text)]
    return []


def closing_line(closing: Closing, job: Job) -> list[str]:
    """How the cover is closed, where there is more to say than that it is sewn up by hand."""
    units = job.units
    if closing.kind == "zip":
        edge = write_length(closing.edge, units)
        return [f"A zip of {write_length(closing.length, units)} {closing.words}, which is {edge} long."]
    if closing.at == "bottom" and closing.kind != "hand-sewn":
        words = {"ties": "hemmed and closed with ties", "open": "hemmed and left open"}[closing.kind]
        return [f"The bottom edges are {words}: each takes {write_length(closing.allowance, units)} for its hem."]
    return []
