# What is sewn to the edge before the cover is joined: bought trim. One function for each kind of edge.

from __future__ import annotations

from collections.abc import Callable, Iterator

from plumpline.cushions.rims import trimmed_rims
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps of the edge of this cover."""
    yield from _EDGES[bench.cover.cushion.cover.edge.kind](bench)


def edge_text(bench: Bench) -> str:
    """The edge in a few words."""
    return _TEXTS[bench.cover.cushion.cover.edge.kind](bench)


def _plain(_: Bench) -> Iterator[Step]:
    yield from ()


def _trimmed(bench: Bench) -> Iterator[Step]:
    rims = trimmed_rims(bench.cover)
    if not rims:
        return
    around, join = bench.told(rims[0]), bench.told(bench.cover.cushion.cover.edge.join)
    text = (
        f"On {_where(bench)}, from the middle of the bottom edge, its lip along the cut edge: {around} once round and "
    )
    text += f"{join} where the ends meet. Sew on the seam line, a little inside it at the corners."
    yield Step("edge", "edge.trim", "Sew on the trim", text, around)


def _where(bench: Bench) -> str:
    if bench.cover.cushion.kind == "bolster":
        return "both ends"
    return "the faces of front and back" if len(trimmed_rims(bench.cover)) > 1 else "the face of the front"


_EDGES: dict[str, Callable[[Bench], Iterator[Step]]] = {"plain": _plain, "trimmed": _trimmed}

_TEXTS: dict[str, Callable[[Bench], str]] = {
    "plain": lambda _: "plain",
    "trimmed": lambda bench: f"bought trim on {_where(bench)}",
}
