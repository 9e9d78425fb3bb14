# The rims of a cover, which trim or piping goes round, and what stands in the way of trimming them.

from __future__ import annotations

from plumpline.cushions.corners import edge_around
from plumpline.cushions.made import Made
from plumpline.geometry import circumference
from plumpline.job import Job
from plumpline.lengths import write_length
from plumpline.materials.packs import Packed, fewest_packs
from plumpline.problems import Problem


def rims_of(cover: Made) -> tuple[int, ...]:
    """Once round each rim along the stitching line, in nm: two of a box or a bolster, none of gathered ends."""
    cushion, finished = cover.cushion, cover.finished
    around = (
        circumference(finished["diameter"]) if "diameter" in finished.names else sum(edge_around(cushion, finished))
    )
    if cushion.kind == "bolster":
        return (around, around) if cushion.cover.ends == "flat" else ()
    return (around, around) if cushion.kind == "boxed" else (around,)


def trimmed_rims(cover: Made) -> tuple[int, ...]:
    """The rims that trim goes on: of a box that of the front, of a bolster both ends, unless it is said otherwise."""
    edge, rims = cover.cushion.cover.edge, rims_of(cover)
    if edge.kind != "trimmed":
        return ()
    return rims[:1] if edge.rims == "front" else rims


def packs_of_trim(cover: Made) -> Packed | None:
    """The fewest packs for all covers of an entry; None where it is bought by the length, or no pack will do."""
    cushion, edge = cover.cushion, cover.cushion.cover.edge
    rims = trimmed_rims(cover) * cushion.quantity
    if edge.pack is None or not rims:
        return None
    return fewest_packs([rim + edge.join for rim in rims], edge.pack, edge.hidden_joins, edge.join)


def untrimmable(cover: Made, job: Job) -> list[Problem]:
    """Why the trim that is asked for cannot be had."""
    edge, at = cover.cushion.cover.edge, f"{cover.cushion.at}/cover/edge"
    if edge.kind == "trimmed" and not trimmed_rims(cover):
        return [Problem(f"{at}/kind", "no-rim", "Gathered ends have no rim that trim could be sewn to.")]
    if edge.pack is not None and trimmed_rims(cover) and packs_of_trim(cover) is None:
        around, pack = (write_length(nm, job.units) for nm in (trimmed_rims(cover)[0] + edge.join, edge.pack))
        text = f"Once round takes {around}, a pack holds {pack}: allow a hidden join, or buy the trim by the length."
        return [Problem(f"{at}/pack", "pack-too-short", text)]
    return []
