# What is bought for a job: the materials beside the cloth, each with its quantity, and the list for the shops.

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Any

from plumpline.cushions.filling import filling_of, weight_text
from plumpline.cushions.made import Made
from plumpline.figures import Figure, counted, figure, length_to_ask, told, told_each
from plumpline.job import Job, name_of
from plumpline.layplan import ClothPlan
from plumpline.lengths import write_length, write_length_up
from plumpline.materials.sewing import SEWING, Sewing, needle_text, stitch_text, thread_text
from plumpline.materials.thread import Lockstitched, Thread
from plumpline.materials.zips import chain

Json = dict[str, Any]

#: The shops of a list, in the order they are gone to, and what each is called.
SHOPS = {"cloth": "Cloth", "haberdashery": "Haberdashery", "pads": "Pads and filling"}


@dataclass(frozen=True)
class Material:
    """One thing to buy beside the cloth: for which covers, how many, in the words of the shop, and why so much.

    `more` holds what only this kind has, in the form of the answer.
    """

    id: str
    kind: str
    shop: str
    covers: tuple[str, ...]
    quantity: int
    ask: str
    working: str
    more: tuple[tuple[str, Any], ...] = ()


def materials(covers: Sequence[Made], job: Job) -> list[Material]:
    """All that is bought beside the cloth."""
    if not covers:
        return []
    return [*_pads(covers, job), *_thread_and_needle(covers, job), *_zips(covers, job), _labels(covers)]


def material_answer(material: Material) -> Json:
    """One entry of `materials`."""
    return {
        "id": material.id,
        "kind": material.kind,
        "shop": material.shop,
        "for": list(material.covers),
        "quantity": material.quantity,
        "ask": material.ask,
        **dict(material.more),
        "working": material.working,
    }


def shopping_list(bought: Sequence[Material], planned: Sequence[ClothPlan], job: Job) -> list[Json]:
    """What to ask for, shop by shop; a line's id stays the same while its figures change."""
    lines: dict[str, list[Json]] = {shop: [] for shop in SHOPS}
    for one in planned:
        lines["cloth"].append({"id": f"cloth:{one.cloth.id}", "text": _cloth_line(one, job)})
    for material in bought:
        lines[material.shop].append({"id": material.id, "text": material.ask})
    return [{"shop": shop, "name": SHOPS[shop], "lines": found} for shop, found in lines.items() if found]


def _cloth_line(planned: ClothPlan, job: Job) -> str:
    cloth = planned.cloth
    wide = write_length(cloth.width or 0, job.units)
    return f"{length_to_ask(planned.buy, cloth.sold_by, job.units)} of {name_of(cloth)}, {wide} wide"


def _ids(covers: Sequence[Made]) -> tuple[str, ...]:
    return tuple(cover.cushion.id for cover in covers)


def _sewing(cover: Made, job: Job) -> Sewing:
    """How the heaviest cloth of a cover is sewn."""
    weights = list(SEWING)
    return SEWING[max((job.cloth(id_).weight for id_ in cover.cushion.cloths), key=weights.index)]


def _thread_and_needle(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    heaviest = max((_sewing(cover, job) for cover in covers), key=lambda sewing: sewing.needle)
    seams: dict[int, int] = {}
    for cover in covers:
        for sewn in cover.sewn:
            thickness = sewn.layers * _sewing(cover, job).thickness
            seams[thickness] = seams.get(thickness, 0) + sewn.length * cover.cushion.quantity
    thread = Thread(tuple(Lockstitched(length, thickness) for thickness, length in seams.items()), heaviest.stitch)
    spools = counted(thread.spools, "spool", "spools")
    length = figure(thread.length, job.units), figure(thread.spool, job.units)
    yield Material(
        id="thread",
        kind="thread",
        shop="haberdashery",
        covers=_ids(covers),
        quantity=thread.spools,
        ask=f"{spools} of thread of {write_length(thread.spool, 'm')}, {thread_text(heaviest.tex)}",
        working=thread.working(job.units),
        more=(("length", length[0]), ("each", length[1])),
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


def _zips(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    opens = [opening for cover in covers for opening in cover.zips * cover.cushion.quantity]
    if opens:
        zips = chain(opens, job.units)
        unit = "yd" if job.units == "in" else "m"
        sliders = counted(zips.sliders, "slider", "sliders")
        yield Material(
            id="zip",
            kind="zip",
            shop="haberdashery",
            covers=_ids([cover for cover in covers if cover.zips]),
            quantity=len(opens),
            ask=f"{write_length_up(zips.length, unit)} of zip chain and {sliders}",
            working=zips.working(job.units),
            more=(("length", figure(zips.length, job.units)),),
        )


def _labels(covers: Sequence[Made]) -> Material:
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


def _pads(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """The pads, where the job starts from the finished size; what fills those that nobody stocks."""
    for cover in covers:
        if cover.cushion.size_from == "finished":
            yield _pad(cover, job)
            if cover.pad.stocked is None:
                yield from _filling(cover, job)


def _pad(cover: Made, job: Job) -> Material:
    pad, cushion = cover.pad, cover.cushion
    wanted = " by ".join(write_length(nm, job.units) for nm in pad.size.lengths)
    sold = "the next size sold" if pad.stocked else "no stocked size is near: have it made"
    bought: Figure = told_each(pad.stocked or pad.size, job.units)
    return Material(
        id=f"pad:{cushion.id}",
        kind="pad",
        shop="pads",
        covers=(cushion.id,),
        quantity=cushion.quantity,
        ask=f"{counted(cushion.quantity, 'pad', 'pads')} of {told(pad.stocked or pad.size, job.units)}",
        working=f"{wanted} wanted; {sold}.",
        more=(*bought.items(), ("stocked", pad.stocked is not None)),
    )


def _filling(cover: Made, job: Job) -> Iterator[Material]:
    cushion, units = cover.cushion, job.units
    filling = filling_of(cover.pad.size, cushion.insert.fill, units)
    if filling is None:
        return
    named = (cushion.insert.fill or "filling").replace("-", " ")
    each = f"{filling.text} for each pad"
    whole = f"{named}: {each}"
    if filling.weight is not None:
        whole = f"{weight_text(filling.weight * cushion.quantity, units)} of {named}"
    yield Material(
        id=f"filling:{cushion.id}",
        kind="filling",
        shop="pads",
        covers=(cushion.id,),
        quantity=cushion.quantity,
        ask=whole[0].upper() + whole[1:],
        working=f"{each[0].upper()}{each[1:]}. {filling.working[0]}",
    )
