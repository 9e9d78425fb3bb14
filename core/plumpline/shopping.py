# The list to take to the shops: the cloth, and the materials beside it, each with its quantity and why so much.

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from plumpline.cushions.made import Made
from plumpline.figures import length_to_ask
from plumpline.haberdashery import cords, fastenings, inset_trims, labels, thread_and_needle, trimmings, zips
from plumpline.job import Job, name_of
from plumpline.layplan import ClothPlan
from plumpline.lengths import write_length
from plumpline.materials.material import Material
from plumpline.pads import pads

Json = dict[str, Any]

#: The shops of a list, in the order they are gone to, and what each is called.
SHOPS = {"cloth": "Cloth", "haberdashery": "Haberdashery", "pads": "Pads and filling"}


def materials(covers: Sequence[Made], job: Job) -> list[Material]:
    """All that is bought beside the cloth."""
    if not covers:
        return []
    return [
        *pads(covers, job),
        *thread_and_needle(covers, job),
        *zips(covers, job),
        *trimmings(covers, job),
        *inset_trims(covers, job),
        *cords(covers, job),
        *fastenings(covers, job),
        labels(covers),
    ]


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
