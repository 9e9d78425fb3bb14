"""Which cloth: every bolt looked at in the place of the one it might replace, and fronts and backs together."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import islice, product
from math import prod
from typing import Any

from plumpline.beside.offers import About, Changes, Group, Offer
from plumpline.job import Cloth, Job, name_of
from plumpline.prepared import Prepared, is_used
from plumpline.remedies import Change

# How many ways are looked at, so that bolts for three places at once do not take all day.
MOST = 12


def cloth_choices(document: dict[str, Any], prepared: Prepared) -> Group | None:
    """The cloths of the job that may take each other's place, each way to choose; None where there are none."""
    job = prepared.job
    places = [(cloth, bolts) for cloth in job.cloths if is_used(job, cloth) and len(bolts := _bolts(job, cloth)) > 1]
    if not places:
        return None
    several = len(places) > 1
    offers = tuple(
        _offer(document, prepared, tuple(zip((cloth for cloth, _ in places), chosen, strict=True)), several)
        for chosen in islice(product(*(bolts for _, bolts in places)), MOST)
    )
    ids = [bolt.id for _, bolts in places for bolt in bolts]
    left = prod(len(bolts) for _, bolts in places) - len(offers)
    note = f"{left} more ways to put them together are not looked at." if left else ""
    return Group("cloths", "Which cloth", tuple(dict.fromkeys(ids)), offers, note)


def _bolts(job: Job, cloth: Cloth) -> list[Cloth]:
    """The cloth, and all that may take its place or whose place it may take, in turn too; itself first."""
    found = [cloth]
    for one in found:
        found += [
            other
            for other in job.cloths
            if other not in found and (other.instead_of == one.id or one.instead_of == other.id)
        ]
    return found


Chosen = tuple[tuple[Cloth, Cloth], ...]


def _offer(document: dict[str, Any], prepared: Prepared, chosen: Chosen, several: bool) -> Offer:
    names = [f"{_parts(document, now)}: {name_of(then)}" if several else name_of(then) for now, then in chosen]
    changes: list[Change] = []
    notes = []
    for now, then in chosen:
        if now.id != then.id:
            placed, note = _placed_on(About(document, prepared, now), then)
            changes += [*(Change(at, then.id) for at in _cut_from(document, now)), *placed]
            notes += [note] if note else []
    name = " · ".join(names)
    return Offer(f"{name[0].upper()}{name[1:]}", tuple(changes), " ".join(notes))


def _cut_from(document: dict[str, Any], cloth: Cloth) -> list[str]:
    """Every place of the document that names the cloth as what something is cut from."""
    return [
        at
        for index, cushion in enumerate(document["cushions"])
        for at in _naming(cushion["cover"], f"/cushions/{index}/cover", cloth.id)
    ]


def _naming(part: dict[str, Any], at: str, id_: str) -> Iterator[str]:
    for name, value in part.items():
        if name == "cloth" and value == id_:
            yield f"{at}/cloth"
        elif isinstance(value, dict):
            yield from _naming(value, f"{at}/{name}", id_)


def _parts(document: dict[str, Any], cloth: Cloth) -> str:
    """What is cut from a cloth, in a word or two: "front", "back and piping"."""
    names = [at.split("/")[-2] for at in _cut_from(document, cloth)]
    return " and ".join(dict.fromkeys({"edge": "edge", "made": "border"}.get(name, name) for name in names))


def _placed_on(about: About, then: Cloth) -> tuple[Changes, str]:
    """What faces that were placed in the pattern of one cloth need on another: a motif of its own, or no place."""
    changes = []
    patterned = bool(then.repeat_across or then.repeat_along)
    known = [motif.id for motif in then.motifs]
    placed = [(at, face) for _, at, face in about.faces() if face.pattern != "free"]
    for at, face in placed:
        if not patterned:
            changes.append(Change(f"{at}/pattern", "free"))
        elif face.has_motif and known and face.motif not in known:
            changes.append(Change(f"{at}/motif", known[0]))
    plain = bool(placed) and not patterned
    return tuple(changes), f"{name_of(then)} has no repeat: nothing is placed on it." if plain else ""
