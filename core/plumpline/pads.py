# The pads of a job that starts from the finished size, and what fills those that nobody stocks.

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.cushions.filling import filling_of, weight_text
from plumpline.cushions.made import Made
from plumpline.figures import counted, told, told_each
from plumpline.job import Job
from plumpline.lengths import write_length
from plumpline.materials.material import Material


def pads(covers: Sequence[Made], job: Job) -> Iterator[Material]:
    """The pads to order at a stocked size, else to have made, with their filling."""
    for cover in covers:
        if cover.cushion.size_from == "finished":
            yield _pad(cover, job)
            if cover.pad.stocked is None:
                yield from _filling(cover, job)


def _pad(cover: Made, job: Job) -> Material:
    pad, cushion = cover.pad, cover.cushion
    wanted = " by ".join(write_length(nm, job.units) for nm in pad.size.lengths)
    sold = "no stocked size is near: have it made"
    if pad.stocked:
        sold = "sold in this size" if pad.stocked == pad.size else "the next size sold"
    bought = pad.stocked or pad.size
    return Material(
        id=f"pad:{cushion.id}",
        kind="pad",
        shop="pads",
        covers=(cushion.id,),
        quantity=cushion.quantity,
        ask=f"{counted(cushion.quantity, 'pad', 'pads')} of {told(bought, job.units)}",
        working=f"{wanted} wanted; {sold}.",
        more=(*told_each(bought, job.units).items(), ("stocked", pad.stocked is not None)),
    )


def _filling(cover: Made, job: Job) -> Iterator[Material]:
    cushion, units = cover.cushion, job.units
    filling = filling_of(cover.pad.size, cushion.insert.fill, units, cover.pad.outline)
    if filling is None:
        return
    named = "filling" if cushion.insert.fill in (None, "own") else str(cushion.insert.fill).replace("-", " ")
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
