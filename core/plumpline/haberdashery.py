# What comes from the haberdasher: thread and needle for all that is stitched, zips, trim, buttons, ties, labels.

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.cushions.made import Made
from plumpline.cushions.rims import edged_rims, packs_of_trim
from plumpline.figures import counted, figure
from plumpline.geometry import perimeter
from plumpline.job import Job
from plumpline.lengths import write_length, write_length_up
from plumpline.materials.fastenings import buttons, ties
from plumpline.materials.material import Material
from plumpline.materials.piping import Cord
from plumpline.materials.sewing import SEWING, Sewing, needle_text, stitch_text, thread_text
from plumpline.materials.thread import Lockstitched, Overlocked, Seam, Thread
from plumpline.materials.zips import STOCKED, chain, ready_made


def thread_and_needle(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """One thread for all covers, and the needle and stitch of the heaviest cloth."""
    heaviest = max((sewing_of(cover, job) for cover in covers), key=lambda sewing: sewing.needle)
    thread = Thread((*_lockstitched(covers, job), *_overlocked(covers, job)), heaviest.stitch)
    spools = counted(thread.spools, "spool", "spools")
    yield Material(
        id="thread",
        kind="thread",
        shop="haberdashery",
        covers=_ids(covers),
        quantity=thread.spools,
        ask=f"{spools} of thread of {write_length(thread.spool, 'm')}, {thread_text(heaviest.tex)}",
        working=thread.working(job.units),
        more=(("length", figure(thread.length, job.units)), ("each", figure(thread.spool, job.units))),
    )
    yield Material(
        id="needle",
        kind="needle",
        shop="haberdashery",
        covers=_ids(covers),
        quantity=1,
        ask=f"Machine needle {needle_text(heaviest.needle)}",
        working=f"For the heaviest cloth of the job; stitch {stitch_text(heaviest.stitch)}.",
    )


def _ids(covers: Sequence[Made]) -> tuple[str, ...]:
    return tuple(cover.cushion.id for cover in covers)


def sewing_of(cover: Made, job: Job) -> Sewing:
    """How the heaviest cloth of a cover is sewn."""
    weights = list(SEWING)
    return SEWING[max((job.cloth(id_).weight for id_ in cover.cushion.cloths), key=weights.index)]


def _lockstitched(covers: Sequence[Made], job: Job) -> list[Seam]:
    """All seams, those through equal layers together."""
    seams: dict[int, int] = {}
    for cover in covers:
        for sewn in cover.sewn:
            thickness = sewn.layers * sewing_of(cover, job).thickness
            seams[thickness] = seams.get(thickness, 0) + sewn.length * cover.cushion.quantity
    return [Lockstitched(length, thickness) for thickness, length in seams.items()]


def _overlocked(covers: Sequence[Made], job: Job) -> list[Seam]:
    """The edges of all covers that are overlocked, those as thick together."""
    edges: dict[int, int] = {}
    for cover in covers:
        for thickness, length in _overlocked_on(cover, job):
            edges[thickness] = edges.get(thickness, 0) + length
    return [Overlocked(length, thickness) for thickness, length in edges.items()]


def overlocked_length(covers: Sequence[Made], job: Job) -> int:
    """All edges that are overlocked, in nm."""
    total = 0
    for cover in covers:
        for _, length in _overlocked_on(cover, job):
            total += length
    return total


# Layers whose pieces have no edge of their own to overlock: a lining is one with its face, an interlining ends before.
_WITHOUT_EDGES = ("lining", "interlining")


def _overlocked_on(cover: Made, job: Job) -> Iterator[tuple[int, int]]:
    """What is overlocked on all covers of an entry: how thick and how long, in nm; each edge, or two at a seam."""
    finish, quantity = cover.cushion.cover.seam_finish, cover.cushion.quantity
    if finish == "overlocked":
        lined = 2 if "lining" in cover.cushion.cover.layers else 1
        for piece in cover.pieces:
            if piece.portion_of not in _WITHOUT_EDGES:
                thickness = lined * SEWING[job.cloth(piece.face.cloth).weight].thickness
                yield thickness, perimeter(piece.outline) * piece.count
    elif finish == "overlocked-together":
        for sewn in cover.sewn:
            if sewn.what == "seam":
                yield sewn.layers * sewing_of(cover, job).thickness, sewn.length * quantity


def zips(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """All zips as chain with sliders; the working also says which ready-made ones would do."""
    opens = [opening for cover in covers for opening in cover.zips * cover.cushion.quantity]
    if not opens:
        return
    bought = chain(opens, job.units)
    instead = ready_made(opens, STOCKED["in" if job.units == "in" else "cm"])
    sliders = counted(bought.sliders, "slider", "sliders")
    yield Material(
        id="zip",
        kind="zip",
        shop="haberdashery",
        covers=_ids([cover for cover in covers if cover.zips]),
        quantity=len(opens),
        ask=f"{_by_the_length(bought.length, job.units)} of zip chain and {sliders}",
        working=f"{bought.working(job.units)} Or ready-made: {instead.working(job.units)}",
        more=(("length", figure(bought.length, job.units)),),
    )


def counter_unit(units: str) -> str:
    """What is bought by the length is measured at the counter in this unit."""
    return "yd" if units == "in" else "m"


def _by_the_length(nm: int, units: str) -> str:
    """A length to buy in the words of the counter: "2 7/8 yd", "1.78 m"."""
    return write_length_up(nm, counter_unit(units))


def trimmings(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """Trim for the rims of each entry, in packs or by the length."""
    for cover in covers:
        rims, edge, cushion = edged_rims(cover), cover.cushion.cover.edge, cover.cushion
        packed = packs_of_trim(cover)
        if packed is not None and edge.pack is not None:
            count, pack = len(packed.packs), write_length(edge.pack, job.units)
            ask = f"{counted(count, 'pack', 'packs')} of trim of {pack}"
            yield _trim(cover, job, count, ask, packed.working(edge.pack, job.units), edge.pack * count)
        elif rims and edge.kind == "trimmed":
            count = len(rims) * cushion.quantity
            cord = Cord(rims[0].length, edge.join, count)
            ask = f"{_by_the_length(cord.length, job.units)} of trim"
            yield _trim(cover, job, count, ask, cord.working(job.units), cord.length)


def inset_trims(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """Flat trim for the faces that it is stitched onto."""
    for cover in covers:
        for face, width, each in cover.inset:
            count = cover.cushion.quantity
            wide, one = (write_length(nm, job.units) for nm in (width, each))
            yield Material(
                id=f"inset:{cover.cushion.id}.{face}",
                kind="trim",
                shop="haberdashery",
                covers=(cover.cushion.id,),
                quantity=count,
                ask=f"{_by_the_length(each * count, job.units)} of flat trim, {wide} wide",
                working=f"{count} × {one} for each {face}, its ends joined.",
                more=(("length", figure(each * count, job.units)), ("each", figure(each, job.units))),
            )


def _trim(cover: Made, job: Job, quantity: int, ask: str, working: str, length: int) -> Material:
    return Material(
        id=f"trim:{cover.cushion.id}",
        kind="trim",
        shop="haberdashery",
        covers=(cover.cushion.id,),
        quantity=quantity,
        ask=ask,
        working=working,
        more=(("length", figure(length, job.units)),),
    )


def cords(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """The cord in the piping of each entry."""
    for cover in covers:
        edge, cushion = cover.cushion.cover.edge, cover.cushion
        if edge.kind != "piped":
            continue
        rims = edged_rims(cover)
        cord = Cord(rims[0].length, edge.join, len(rims) * cushion.quantity * edge.cords)
        thick = write_length(edge.cord, job.units, 1)
        yield Material(
            id=f"cord:{cushion.id}",
            kind="cord",
            shop="haberdashery",
            covers=(cushion.id,),
            quantity=cord.rings,
            ask=f"{_by_the_length(cord.length, job.units)} of piping cord, {thick} thick",
            working=cord.working(job.units),
            more=(("length", figure(cord.length, job.units)), ("each", figure(cord.each, job.units))),
        )


def fastenings(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """Buttons, and tape for ties, cover by cover."""
    for cover in covers:
        cushion, edge = cover.cushion, cover.closing.edge
        if cover.closing.kind == "buttons":
            spaced = buttons(edge, job.units)
            count = spaced.count * cushion.quantity
            ask, working = counted(count, "button", "buttons"), f"{spaced.working(job.units)}."
            yield Material(f"buttons:{cushion.id}", "buttons", "haberdashery", (cushion.id,), count, ask, working)
        elif cover.closing.kind == "ties":
            tied = ties(edge, cushion.quantity, job.units)
            ask, working = f"{_by_the_length(tied.length, job.units)} of tape for ties", tied.working(job.units)
            length = (("length", figure(tied.length, job.units)), ("each", figure(tied.tie, job.units)))
            yield Material(
                f"ties:{cushion.id}", "ties", "haberdashery", (cushion.id,), tied.count, ask, working, length
            )


def labels(covers: Sequence[Made]) -> Material:
    """A label with its name for every cover."""
    count = 0
    for cover in covers:
        count += cover.cushion.quantity
    return Material(
        id="label",
        kind="label",
        shop="haberdashery",
        covers=_ids(covers),
        quantity=count,
        ask=counted(count, "label to sew in", "labels to sew in"),
        working="One in each cover with its name on it, so that covers of nearly the same size are not mixed up.",
    )
