# The rims of a cover, which trim or piping goes round, and what stands in the way of trimming them.

from __future__ import annotations

from dataclasses import dataclass
from itertools import accumulate

from plumpline.cushions.corners import edge_around
from plumpline.cushions.made import Made
from plumpline.geometry import circumference
from plumpline.job import Job
from plumpline.lengths import write_length
from plumpline.materials.packs import Packed, fewest_packs
from plumpline.problems import Problem


@dataclass(frozen=True)
class Rim:
    """Once round the stitching line from the middle of the bottom edge on, and where corners are met; in nm.

    Of a straight-sided outline it begins in the middle of the side that it closes at.
    """

    length: int
    corners: tuple[int, ...] = ()


def rims_of(cover: Made) -> tuple[Rim, ...]:
    """Each rim of a cover: two of a box or a bolster, none of gathered ends."""
    cushion = cover.cushion
    rim = _rim(cover)
    if cushion.kind == "bolster":
        return (rim, rim) if cushion.cover.ends == "flat" else ()
    return (rim, rim) if cushion.kind == "boxed" else (rim,)


def _rim(cover: Made) -> Rim:
    finished = cover.finished
    if "diameter" in finished.names:
        return Rim(circumference(finished["diameter"]))
    sides = cover.outline.sides if cover.outline else edge_around(cover.cushion, finished)
    first = cover.closing.side or 0
    bottom, *others = (*sides[first:], *sides[:first])
    half = bottom // 2
    return Rim(sum((bottom, *others)), tuple(accumulate((bottom - half, *others))))


def edged_rims(cover: Made) -> tuple[Rim, ...]:
    """The rims that trim or piping goes on: that of the front alone, or both."""
    edge, rims = cover.cushion.cover.edge, rims_of(cover)
    if edge.kind == "plain":
        return ()
    return rims[:1] if edge.rims == "front" else rims


def packs_of_trim(cover: Made) -> Packed | None:
    """The fewest packs for all covers of an entry; None where it is bought by the length, or no pack will do."""
    cushion, edge = cover.cushion, cover.cushion.cover.edge
    rims = edged_rims(cover) * cushion.quantity
    if edge.kind != "trimmed" or edge.pack is None or not rims:
        return None
    return fewest_packs([rim.length + edge.join for rim in rims], edge.pack, edge.hidden_joins, edge.join)


def untrimmable(cover: Made, job: Job) -> list[Problem]:
    """Why the trim that is asked for cannot be had."""
    edge, at = cover.cushion.cover.edge, f"{cover.cushion.at}/cover/edge"
    if edge.kind != "trimmed":
        return []
    if not edged_rims(cover):
        return [Problem(f"{at}/kind", "no-rim", "Gathered ends have no rim that trim could be sewn to.")]
    if edge.pack is not None and packs_of_trim(cover) is None:
        around, pack = (write_length(nm, job.units) for nm in (edged_rims(cover)[0].length + edge.join, edge.pack))
        text = f"Once round takes {around}, a pack holds {pack}: allow a hidden join, or buy the trim by the length."
        return [Problem(f"{at}/pack", "pack-too-short", text)]
    return []
