# The edge of a cover that is made of strips of cloth: what is cut for it, what it sews, and how that comes about.

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from plumpline.cloth import cut_across, cut_along
from plumpline.cushions.made import Made
from plumpline.cushions.rims import Rim, edged_rims
from plumpline.cushions.stitching import Sewn
from plumpline.figures import counted
from plumpline.job import HABITS, Cloth, Cushion, Job, name_of
from plumpline.lengths import write_length
from plumpline.materials.piping import join_cost, strip_width
from plumpline.materials.sewing import SEWING
from plumpline.pieces import Strips
from plumpline.problems import Problem


def edged(cover: Made, job: Job) -> Made | list[Problem]:
    """The cover with what is cut and sewn for its edge, or why it cannot have that edge."""
    edge, rims = cover.cushion.cover.edge, edged_rims(cover)
    if not edge.is_of_strips:
        return cover
    if not rims:
        text = "Gathered ends have no rim that piping could be sewn to: choose flat ends, or a plain edge."
        return [Problem(f"{cover.cushion.at}/cover/edge/kind", "no-rim", text)]
    piping = _piping(cover.cushion, rims, job)
    around = len(rims) * rims[0].length
    # The strip is closed around its cord and stitched to the front before both are sewn in with the back.
    sewn = (*cover.sewn, Sewn(around, layers=2, what="fastening"), Sewn(around, layers=3, what="fastening"))
    return replace(cover, strips=(piping,), sewn=sewn, cutting=(*cover.cutting, *_lines(cover, rims, piping, job)))


def is_on_the_bias(cushion: Cushion, rim: Rim) -> bool:
    """As it is said, else straight round square corners and on the bias round a curve (common practice)."""
    curved = not rim.corners or cushion.cover.corners.kind == "rounded"
    return cushion.cover.edge.strip == "bias" or (cushion.cover.edge.strip is None and curved)


def _piping(cushion: Cushion, rims: tuple[Rim, ...], job: Job) -> Strips:
    edge, seam, rim = cushion.cover.edge, cushion.cover.seam, rims[0]
    cloth = job.cloth(edge.cloth)
    width = strip_width(edge.cords * edge.cord, edge.cords * _thickness(cushion, cloth), seam, job.units)
    width = _either_way(cloth, width, job.grid)
    return Strips(
        id=f"{cushion.id}.piping",
        cushion=cushion.id,
        part="piping",
        cloth=cloth.id,
        edge_at=f"{cushion.at}/cover/edge",
        count=len(rims) * cushion.quantity,
        width=width,
        length=_either_way(cloth, rim.length + edge.join, 0),
        join=join_cost(width, edge.joined, job.units),
        bias=is_on_the_bias(cushion, rim),
        clear=_near_corners(rim, edge.join, HABITS[job.units].clear_of_corner),
        shortest=edge.shortest,
        seam=seam,
    )


def _thickness(cushion: Cushion, cloth: Cloth) -> int:
    """Of the cloth round the cord, as it is said or by its weight; else nothing, as the trade's own widths have it."""
    said = cushion.cover.edge.thickness
    if said is not None:
        return said
    return SEWING[cloth.weight].thickness if cloth.weight_said else 0


def _either_way(cloth: Cloth, size: int, grid: int) -> int:
    """The size to chalk for strips, which may lie along the roll or across it: what the wash asks for at most."""
    return max(cut_across(cloth, size, grid), cut_along(cloth, size, grid))


def _near_corners(rim: Rim, join: int, apart: int) -> tuple[tuple[int, int], ...]:
    """The spans of a ring in which no join may lie, those that meet as one; none where that would leave no place.

    The ring begins and ends at the middle of the bottom edge, where its own join takes half of `join` either way.
    """
    spans: list[tuple[int, int]] = []
    for corner in rim.corners:
        low, high = corner + join // 2 - apart, corner + join // 2 + apart
        if spans and low < spans[-1][1]:
            low = spans.pop()[0]
        spans.append((low, high))
    return tuple(spans) if len(spans) > 1 else ()


def _lines(cover: Made, rims: tuple[Rim, ...], piping: Strips, job: Job) -> Iterator[str]:
    """How the piping comes about."""
    edge, units, cushion = cover.cushion.cover.edge, job.units, cover.cushion
    cloth = job.cloth(piping.cloth)
    thickness = _thickness(cushion, cloth)
    cord, thick = (write_length(nm, units, 1) for nm in (edge.cord, thickness))
    seam, width, join = (write_length(nm, units) for nm in (piping.seam, piping.width, piping.join))
    wrapped = f"({cord} cord + {thick} cloth)" if thickness else f"{cord} cord"
    around, closing, ring = (write_length(nm, units) for nm in (rims[0].length, edge.join, piping.length))
    two = "2 × " if edge.cords == 2 else ""
    lie = "on the bias" if piping.bias else "straight"
    yield f"Piping strips: {two}π × {wrapped} + 2 × {seam} seam, up to {width} wide."
    yield (
        f"{counted(piping.count, 'ring', 'rings')} of piping, each {around} round the edge + {closing} to close it: "
        f"{ring}, {lie}, from {name_of(cloth)}."
    )
    clear = write_length(HABITS[units].clear_of_corner, units)
    corners = f", none within {clear} of a corner" if piping.clear else ""
    yield f"Each join of strips is {edge.joined} and takes {join}{corners}; the ring is closed at bottom centre."
    if cover.closing.kind == "zip" and cover.closing.at == "bottom":
        yield "The piping goes on the front, the zip on the back under it."
