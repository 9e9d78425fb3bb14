# The edge of a cover: strips cut for piping or a frill, a flange stitched off, and how each comes about.

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace

from plumpline.cloth import cut_across, cut_along
from plumpline.cushions.made import Made
from plumpline.cushions.outline_corners import line_of
from plumpline.cushions.panels import SAG
from plumpline.cushions.rims import Rim, edged_rims
from plumpline.cushions.stitching import Sewn
from plumpline.cushions.tracing import side_called
from plumpline.figures import counted
from plumpline.geometry import circumference, outset
from plumpline.job import HABITS, Cloth, Cushion, Job, name_of
from plumpline.lengths import write_length
from plumpline.materials.frills import FULLNESS, Frill, doubled, hemmed
from plumpline.materials.piping import join_cost, strip_width
from plumpline.materials.sewing import SEWING
from plumpline.pieces import Mark, Piece, Strips
from plumpline.problems import Problem
from plumpline.rounded import rounded_outwards


def edged(cover: Made, job: Job) -> Made | list[Problem]:
    """The cover with what is cut and sewn for its edge, or why it cannot have that edge."""
    edge = cover.cushion.cover.edge
    if edge.is_of_strips and not edged_rims(cover):
        text = f"Gathered ends have no rim that could be {edge.kind}: choose flat ends, or a plain edge."
        return [Problem(f"{cover.cushion.at}/cover/edge/kind", "no-rim", text)]
    make = _MAKE.get(edge.kind)
    return make(cover, job) if make else cover


def _piped(cover: Made, job: Job) -> Made:
    rims = edged_rims(cover)
    piping, around = _piping(cover.cushion, rims, job), len(rims) * rims[0].length
    # The strip is closed around its cord and stitched to the front before both are sewn in with the back.
    sewn = (*cover.sewn, Sewn(around, layers=2, what="fastening"), Sewn(around, layers=3, what="fastening"))
    return replace(cover, strips=(piping,), sewn=sewn, cutting=(*cover.cutting, *_piping_lines(cover, piping, job)))


def _frilled(cover: Made, job: Job) -> Made:
    rims = edged_rims(cover)
    frill, around = frill_of(cover.cushion, rims[0]), len(rims) * rims[0].length
    strips = _strips("frill", (frill.width, frill.length), len(rims), cover.cushion, job)
    # Two rows of long stitches to draw it up, its hem if it has one, and once round to hold it on the front.
    gathers = Sewn(2 * len(rims) * frill.length, layers=2, what="fastening")
    rows = (gathers, Sewn(around, layers=3, what="fastening"))
    single = cover.cushion.cover.edge.hem is not None
    hem = (Sewn(len(rims) * frill.length, layers=3, what="fastening"),) if single else ()
    lines = _frill_lines(cover.cushion, strips, frill, job)
    return replace(cover, strips=(strips,), sewn=(*cover.sewn, *rows, *hem), cutting=(*cover.cutting, *lines))


def _flanged(cover: Made, job: Job) -> Made | list[Problem]:
    problems = list(_no_flange(cover))
    if problems:
        return problems
    pieces = tuple(_stitched_off(piece, cover.cushion, job) for piece in cover.pieces)
    beyond = cover.cushion.cover.edge.beyond
    around, size = _over_all(cover)
    outside = Sewn(around, layers=2, what="fastening")
    over_all = " by ".join(write_length(nm, job.units) for nm in size)
    told = write_length(beyond, job.units)
    line = f"The flange is stitched off {told} inside the edge; over all the cover is {over_all}."
    return replace(cover, pieces=pieces, sewn=(*cover.sewn, outside), cutting=(*cover.cutting, line))


def _over_all(cover: Made) -> tuple[int, tuple[int, ...]]:
    """Once round the outside of the flange, and its size, in nm."""
    beyond = cover.cushion.cover.edge.beyond
    if cover.outline:
        outside = line_of(cover.outline.corners, cover.cushion, beyond)
        places = zip(*outside.points(SAG), strict=True)
        return sum(outside.sides), tuple(max(reached) - min(reached) for reached in places)
    corners = circumference(2 * beyond) if "diameter" in cover.finished.names else 8 * beyond
    return edged_rims(cover)[0].length + corners, tuple(nm + 2 * beyond for nm in cover.finished.lengths)


_MAKE: dict[str, Callable[[Made, Job], Made | list[Problem]]] = {
    "piped": _piped,
    "frilled": _frilled,
    "flanged": _flanged,
}


def is_on_the_bias(cushion: Cushion, rim: Rim) -> bool:
    """As it is said, else straight round square corners and on the bias round a curve (common practice)."""
    curved = not rim.corners or cushion.cover.corners.kind == "rounded"
    return cushion.cover.edge.strip == "bias" or (cushion.cover.edge.strip is None and curved)


def _piping(cushion: Cushion, rims: tuple[Rim, ...], job: Job) -> Strips:
    edge, rim = cushion.cover.edge, rims[0]
    cloth = job.cloth(edge.cloth)
    thickness = edge.cords * _thickness(cushion, cloth)
    width = strip_width(edge.cords * edge.cord, thickness, cushion.cover.seam, job.units)
    piping = _strips("piping", (width, rim.length + edge.join), len(rims), cushion, job)
    return replace(
        piping,
        join=join_cost(piping.width, edge.joined, job.units),
        bias=is_on_the_bias(cushion, rim),
        clear=_near_corners(rim, edge.join, HABITS[job.units].clear_of_corner),
    )


def _strips(part: str, size: tuple[int, int], rings: int, cushion: Cushion, job: Job) -> Strips:
    """Strips of that width, joined to rings of that length with a seam at both sides of each join."""
    edge, cloth = cushion.cover.edge, job.cloth(cushion.cover.edge.cloth)
    return Strips(
        id=f"{cushion.id}.{part}",
        cushion=cushion.id,
        part=part,
        cloth=cloth.id,
        edge_at=f"{cushion.at}/cover/edge",
        count=rings * cushion.quantity,
        width=_either_way(cloth, size[0], job.grid),
        length=_either_way(cloth, size[1], 0),
        join=2 * cushion.cover.seam,
        bias=edge.strip == "bias",
        clear=(),
        shortest=edge.shortest,
        seam=cushion.cover.seam,
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


def _piping_lines(cover: Made, piping: Strips, job: Job) -> Iterator[str]:
    """How the piping comes about."""
    edge, units, cushion = cover.cushion.cover.edge, job.units, cover.cushion
    cloth = job.cloth(piping.cloth)
    thickness = _thickness(cushion, cloth)
    cord, thick = (write_length(nm, units, 1) for nm in (edge.cord, thickness))
    seam, width, join = (write_length(nm, units) for nm in (piping.seam, piping.width, piping.join))
    wrapped = f"({cord} cord + {thick} cloth)" if thickness else f"{cord} cord"
    rim = edged_rims(cover)[0].length
    around, closing, ring = (write_length(nm, units) for nm in (rim, edge.join, piping.length))
    two = "2 × " if edge.cords == 2 else ""
    lie = "on the bias" if piping.bias else "straight"
    yield f"Piping strips: {two}π × {wrapped} + 2 × {seam} seam, up to {width} wide."
    yield (
        f"{counted(piping.count, 'ring', 'rings')} of piping, each {around} round the edge + {closing} to close it: "
        f"{ring}, {lie}, from {name_of(cloth)}."
    )
    clear = write_length(HABITS[units].clear_of_corner, units)
    corners = f", none within {clear} of a corner" if piping.clear else ""
    yield f"Each join of strips is {edge.joined} and takes {join}{corners}; the ring is closed {_closed_at(cover)}."
    if cover.closing.kind == "zip" and cover.closing.at == "bottom":
        yield "The piping goes on the front, the zip on the back under it."


def _closed_at(cover: Made) -> str:
    """Where the ends of a ring meet."""
    if not cover.outline:
        return "at bottom centre"
    return f"in the middle of side {side_called(cover.closing.side or 0, len(cover.outline.corners))}"


def frill_of(cushion: Cushion, rim: Rim) -> Frill:
    """The frill of one rim; by the fullness that is usual for how it is drawn up, unless another is said."""
    edge, seam = cushion.cover.edge, cushion.cover.seam
    fullness = edge.fullness or FULLNESS[edge.gather]
    if edge.hem is None:
        return doubled(rim.length, fullness, edge.depth, seam)
    return hemmed(rim.length, fullness, edge.depth, seam, edge.hem)


def _frill_lines(cushion: Cushion, strips: Strips, frill: Frill, job: Job) -> Iterator[str]:
    """How the frill comes about."""
    edge, units = cushion.cover.edge, job.units
    depth, seam = write_length(edge.depth, units), write_length(strips.seam, units)
    wide = f"2 × {depth} + 2 × {seam} seam" if edge.hem is None else f"{depth} + {seam} seam"
    hem = "" if edge.hem is None else f" + {write_length(edge.hem, units)} hem"
    kind = "doubled" if edge.hem is None else "single"
    yield f"A {kind} frill, {edge.gather}: strips {wide}{hem} = {write_length(frill.width, units)} wide."
    yield f"{counted(strips.count, 'frill', 'frills')}: {frill.working(units)}"


def _no_flange(cover: Made) -> Iterator[Problem]:
    """What keeps a cover from having a flange."""
    cushion, at = cover.cushion, f"{cover.cushion.at}/cover"
    if cushion.kind != "knife-edge":
        text = "A flange goes on round the flat edge of a knife-edge cover: pipe or trim this one, or leave it plain."
        yield Problem(f"{at}/edge/kind", "rules-contradict", text)
    elif cover.closing.at == "bottom" and cover.closing.kind != "hand-sewn":
        text = "Closed in the bottom seam, a cover would open into its flange: close it across the back, or by hand."
        yield Problem(f"{at}/closure/at", "rules-contradict", text)
    if cushion.cover.corners.kind == "tapered":
        text = "A flange keeps its corners: leave them square, or round them."
        yield Problem(f"{at}/corners/kind", "rules-contradict", text)


def _stitched_off(piece: Piece, cushion: Cushion, job: Job) -> Piece:
    """A whole face with the line that its flange is stitched off along."""
    if piece.part.removesuffix("-mirrored") not in ("front", "back"):
        return piece
    beyond = cushion.cover.edge.beyond
    sharp = piece.sharp or piece.seam_line
    radius = max(0, cushion.cover.corners.radius - beyond) if piece.sharp else 0
    inner = rounded_outwards(outset(sharp, [-beyond] * len(sharp)), radius).points(SAG)
    mark = Mark("flange", f"Stitch the flange off, {write_length(beyond, job.units)} inside the seam", inner)
    return replace(piece, marks=(*piece.marks, mark))
