# What is sewn to the edge before the cover is joined, or stitched off after: one function for each kind of edge.

from __future__ import annotations

from collections.abc import Callable, Iterator

from plumpline.cushions.rims import edged_rims
from plumpline.figures import counted
from plumpline.job import name_of
from plumpline.lengths import write_length
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps of the edge of this cover."""
    yield from _EDGES[bench.cover.cushion.cover.edge.kind](bench)


def edge_text(bench: Bench) -> str:
    """The edge in a few words."""
    return _TEXTS[bench.cover.cushion.cover.edge.kind](bench)


def _plain(_: Bench) -> Iterator[Step]:
    yield from ()


def _piped(bench: Bench) -> Iterator[Step]:
    strips, edge = bench.cover.strips[0], bench.cover.cushion.cover.edge
    width, ring, around = bench.told(strips.width), bench.told(strips.length), edged_rims(bench.cover)[0].length
    cord = f"{write_length(edge.cord, bench.job.units, 1)}{', two side by side' if edge.cords == 2 else ''}"
    rings = counted(strips.count // bench.cover.cushion.quantity, "ring", "rings")
    lie = "on the bias" if strips.bias else "straight"
    text = f"{width} wide, {lie}, from {name_of(bench.job.cloth(strips.cloth))}; joined {edge.joined} to {rings} of "
    yield Step("cut-strips", "edge.strips", "Cut the piping strips", f"{text}{ring} for each cover.", width)
    text = "Fold the strip round the cord, cut edges together, and sew close beside it with the zip foot."
    yield Step("edge", "edge.cord", "Make the piping", text, cord)
    text = (
        f"On {_where(bench)}, cut edges together, from the middle of the bottom edge: {bench.told(around)} once round. "
    )
    text += "Snip its allowance at corners and curves. Where the ends meet let the cord butt and the strip lap over it."
    yield Step("edge", "edge.piping", "Sew on the piping", text, bench.told(around))


def _frilled(bench: Bench) -> Iterator[Step]:
    strips, edge, rims = bench.cover.strips[0], bench.cover.cushion.cover.edge, edged_rims(bench.cover)
    width, length, around = bench.told(strips.width), bench.told(strips.length), bench.told(rims[0].length)
    rings = counted(strips.count // bench.cover.cushion.quantity, "ring", "rings")
    text = f"{width} wide, from {name_of(bench.job.cloth(strips.cloth))}, joined to {rings} of {length} for each cover."
    yield Step("cut-strips", "edge.frill", "Cut the frill", text, width)
    fold = "Fold it along its middle." if edge.hem is None else f"Hem its outer edge, {bench.told(edge.hem)}."
    draw = "sew two rows of long stitches and draw them up" if edge.gather == "gathered" else "lay and pin its pleats"
    text = f"{fold} Quarter strip and edge; {draw} to {around}, a little fuller at the corners."
    yield Step("edge", "edge.drawn", "Draw up the frill", text, around)
    text = f"On {_where(bench)}, cut edges together, quarter on quarter, the frill lying inwards. Sew on the seam line."
    yield Step("edge", "edge.frill-on", "Sew on the frill", text, around)


def _flanged(bench: Bench) -> Iterator[Step]:
    beyond = bench.told(bench.cover.cushion.cover.edge.beyond)
    text = f"Turned and pressed, stitch all round {beyond} inside the edge."
    text += " Leave it open over the opening." if bench.cover.closing.kind == "hand-sewn" else ""
    yield Step("fill", "edge.flange", "Stitch off the flange", text, beyond)


def _trimmed(bench: Bench) -> Iterator[Step]:
    rims = edged_rims(bench.cover)
    if not rims:
        return
    around, join = bench.told(rims[0].length), bench.told(bench.cover.cushion.cover.edge.join)
    text = (
        f"On {_where(bench)}, from the middle of the bottom edge, its lip along the cut edge: {around} once round and "
    )
    text += f"{join} where the ends meet. Sew on the seam line, a little inside it at the corners."
    yield Step("edge", "edge.trim", "Sew on the trim", text, around)


def _where(bench: Bench) -> str:
    if bench.cover.cushion.kind == "bolster":
        return "both ends"
    return "the faces of front and back" if len(edged_rims(bench.cover)) > 1 else "the face of the front"


_EDGES: dict[str, Callable[[Bench], Iterator[Step]]] = {
    "plain": _plain,
    "piped": _piped,
    "frilled": _frilled,
    "flanged": _flanged,
    "trimmed": _trimmed,
}

_TEXTS: dict[str, Callable[[Bench], str]] = {
    "plain": lambda _: "plain",
    "frilled": lambda bench: f"a frill, {bench.cover.cushion.cover.edge.gather}, on {_where(bench)}",
    "flanged": lambda bench: f"a flange of {bench.told(bench.cover.cushion.cover.edge.beyond)}",
    "piped": lambda bench: f"piped on {_where(bench)}",
    "trimmed": lambda bench: f"bought trim on {_where(bench)}",
}
