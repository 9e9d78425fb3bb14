# Joining the parts of a cover to each other: what differs between the kinds of cover.

from __future__ import annotations

from collections.abc import Callable, Iterator

from plumpline.cushions.rims import rims_of
from plumpline.figures import counted, listed
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps that join a cover of this kind."""
    yield from _KINDS[bench.cover.cushion.kind](bench)


def _seam(bench: Bench) -> str:
    return f"{bench.told(bench.cover.cushion.cover.seam)} seam"


def _opened(bench: Bench) -> str:
    """What is done before the last seam closes the cover, as a sentence with a space after it."""
    return "Open the zip by a hand first. " if bench.cover.closing.kind == "zip" else ""


def _left_open(bench: Bench) -> str:
    """What stays open of the last seam, as a sentence with a space before it."""
    closing = bench.cover.closing
    if closing.kind == "hand-sewn":
        return f" Leave {bench.told(closing.length)} open and sew back and forth at both its ends."
    return " The hemmed bottom stays open." if closing.kind in ("ties", "open") else ""


def _knife_edge(bench: Bench) -> Iterator[Step]:
    cover = bench.cover.cushion.cover
    text = f"{_opened(bench)}Face to face, arrows the same way, middles on middles."
    if bench.cover.closing.overlap:
        text += " Back 1, with the upper edge, lies next to the front, so that it comes out on top."
    text += f" Sew round with a {_seam(bench)}"
    text += f", {bench.told(cover.side_seam)} at the sides." if cover.side_seam != cover.seam else "."
    yield Step("join", "join.faces", "Join front and back", text + _left_open(bench), bench.told(cover.seam))


def _boxed(bench: Bench) -> Iterator[Step]:
    around, seam = bench.told(rims_of(bench.cover)[0].length), _seam(bench)
    joins = len(bench.of_one_cover("boxing")) + len(bench.of_one_cover("zip-band")) // 2
    text = f"{counted(joins, 'join', 'joins')}, {seam}, pressed open. "
    text += f"On the seam line the ring measures {around}: if it does not, mend it now."
    yield Step("join", "join.ring", "Join the boxing into a ring", text, around)
    text = f"{_meeting(bench)}{_going_on(bench)} Sew with a {seam}."
    yield Step("join", "join.front", "Sew the ring to the front", text, around)
    text = (
        f"{_opened(bench)}Fold the boxing straight across at each of its marks and mark its other edge, so that front "
    )
    text += f"and back do not twist. Then sew as at the front.{_left_open(bench)}"
    yield Step("join", "join.back", "Sew the ring to the back", text, around)


def _going_on(bench: Bench) -> str:
    """Which bands go on with the pattern of the front, as sentences with a space before them."""
    said = ""
    for edge, own in (("bottom", "upper"), ("top", "lower")):
        names = [piece.called for piece in bench.of_one_cover("boxing") if piece.goes_on == edge]
        if names:
            said += f" With its {own} edge {listed(names)} lies on the {edge} edge of the front: pin the pattern first."
    return said


def _meeting(bench: Bench) -> str:
    """How a ring and a plate meet."""
    if bench.cover.cushion.insert.shape == "round":
        return "Quarter both, mark on mark; snip the ring's allowance all round, never through its seam."
    closing = bench.cover.closing
    returns = bench.told(closing.returns)
    turns = f" The zip band turns its corners {returns} from its seams." if closing.at == "boxing" else ""
    text = "Corners of the ring, notched or joined, on corners, middles on middles; snip its allowance at each corner."
    return text + turns


def _bolster(bench: Bench) -> Iterator[Step]:
    closing = bench.cover.closing
    if closing.kind == "hand-sewn":
        text = f"Fold it face to face along its length and sew with a {_seam(bench)}.{_left_open(bench)}"
        yield Step("join", "join.body", "Sew the body", text, bench.told(closing.edge))
    yield _gathered(bench) if bench.cover.cushion.cover.ends == "gathered" else _flat(bench)


def _gathered(bench: Bench) -> Step:
    hem = bench.told(bench.cover.cushion.cover.closure.hem)
    text = f"At both ends turn {hem} under and sew it down, leaving a gap for the cord. Thread the cord, draw it up, "
    return Step("join", "join.casing", "Gather the ends", f"{text}knot it and hide its ends inside.", hem)


def _flat(bench: Bench) -> Step:
    around = bench.told(rims_of(bench.cover)[0].length)
    text = f"{_opened(bench)}Quarter the ends of the body and both discs, mark on mark; snip the body's allowance all "
    text += f"round. Sew with a {_seam(bench)}: {around} once round."
    return Step("join", "join.ends", "Sew in the ends", text, around)


_KINDS: dict[str, Callable[[Bench], Iterator[Step]]] = {
    "knife-edge": _knife_edge,
    "boxed": _boxed,
    "bolster": _bolster,
}
