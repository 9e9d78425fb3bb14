# Closing: a zip, the hems and the overlap of an open back, ties, or the opening that is sewn up by hand at the end.

from __future__ import annotations

from collections.abc import Callable, Iterator

from plumpline.cushions.rims import edged_rims
from plumpline.figures import counted
from plumpline.lengths import UNITS
from plumpline.materials.fastenings import TIE, buttons, ties
from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps of the way this cover is closed."""
    yield from _WAYS[bench.cover.closing.kind](bench)


def way_in(bench: Bench) -> str:
    """What the cover is turned and filled through."""
    return _WAYS_IN[bench.cover.closing.kind]


_WAYS_IN = {
    "hand-sewn": "the opening",
    "zip": "the zip",
    "envelope": "the back",
    "buttons": "the back",
    "ties": "the open edge",
    "open": "the open edge",
}


def _zip(bench: Bench) -> Iterator[Step]:
    closing = bench.cover.closing
    length, seam = bench.told(closing.length), bench.told(closing.allowance)
    if _at_edged_seam(bench):
        yield Step("closure-at-edge", "closure.zip", "Put in the zip", _zip_under_edge(bench), length)
        return
    text = f"{_ZIP_BETWEEN[closing.at](bench)}, {seam} seam. {_beside_zip(bench)}, and press the seam open. "
    text += "Sew the zip in under the tacking, both sides, and take the tacking out."
    yield Step("closure", "closure.zip", "Put in the zip", text, length)
    if closing.at == "boxing":
        bands = bench.of_one_cover("zip-band")[:2]
        high = bands[0].length + bands[1].length - 2 * closing.allowance
        text = f"With its zip the band measures {bench.told(high)} from cut edge to cut edge, as the boxing does."
        yield Step("closure", "closure.band", "Measure the zip band", text, bench.told(high))


def _at_edged_seam(bench: Bench) -> bool:
    """Whether the zip lies in a seam that piping, a frill or trim is sewn into."""
    rims = len(edged_rims(bench.cover))
    return bench.cover.closing.at == "bottom" and rims > {"knife-edge": 0, "boxed": 1}.get(bench.cover.cushion.kind, 2)


def _zip_under_edge(bench: Bench) -> str:
    """A zip beneath what is on the edge (common practice): that is on the front, the zip on the back under it."""
    edged, plain = ("back", "boxing") if bench.cover.cushion.kind == "boxed" else ("front", "back")
    text = (
        f"Face down on the edged side of the {edged}, its teeth close to the edging: sew it on beside the cord or lip. "
    )
    text += (
        f"Turn {bench.told(bench.cover.closing.allowance)} of the {plain} under, lay the fold over the teeth as far as "
    )
    return f"{text}the edging, and sew it to the other side of the zip. Sew the seam at both its ends."


def _beside_zip(bench: Bench) -> str:
    """What is sewn of the seam on either side of the zip, and what is tacked for it."""
    closing = bench.cover.closing
    length, ends = bench.told(closing.length), (closing.edge - closing.length) // 2
    if any(mark.kind == "zip" for piece in bench.cover.pieces for mark in piece.marks):
        return f"Sew up to the mark at either end of the zip, tack the {length} between"
    return f"Sew {bench.told(ends)} at each end, tack the {length} between" if ends else f"Tack all {length} of it"


def _between_seam(bench: Bench) -> str:
    if bench.cover.cushion.kind == "bolster":
        return "Fold the body face to face along its length"
    if bench.cover.cushion.kind == "boxed":
        return "Lay the boxing on the back, face to face, along the edge that closes"
    return "Lay front and back face to face along the bottom"


_ZIP_BETWEEN: dict[str, Callable[[Bench], str]] = {
    "bottom": _between_seam,
    "back": lambda _: "Lay the two backs face to face along the middle",
    "boxing": lambda _: "Lay the two halves of the zip band face to face",
}


def _hems(bench: Bench, where: str) -> Iterator[Step]:
    if bench.cover.closing.allowance:
        hem, fold = bench.told(bench.cover.closing.allowance), bench.told(bench.cover.closing.allowance // 2)
        text = f"{where}: fold {fold} under twice and sew close to the fold. Each hem takes {hem}."
        yield Step("closure", "closure.hem", "Hem the edges", text, hem)


def _lapped(bench: Bench) -> Iterator[Step]:
    yield from _hems(bench, "The lower edge of back 1 and the upper edge of back 2")
    closing = bench.cover.closing
    if closing.kind == "buttons":
        spaced = buttons(closing.edge, bench.job.units)
        text = f"In the hem of back 1: {spaced.working(bench.job.units)}."
        yield Step(
            "closure", "closure.buttonholes", "Make the buttonholes", text, counted(spaced.count, "hole", "holes")
        )
    overlap = bench.told(closing.overlap)
    text = f"Back 1 over back 2, both face up, {overlap} over each other; tack both sides."
    text += f" Closed, the back measures {bench.told(_from_top_to_bottom(bench))} between the seams to come."
    yield Step("closure", "closure.overlap", "Lay the backs over each other", text, overlap)
    if closing.kind == "buttons":
        text = "On back 2, under the middle of each buttonhole. Pull each once: none may come off."
        yield Step("finish", "finish.buttons", "Sew on the buttons", text, counted(spaced.count, "button", "buttons"))


def _from_top_to_bottom(bench: Bench) -> int:
    """The height of a cover between its top and its bottom seam, a flange included, in nm."""
    finished = bench.cover.finished
    high = finished.get("length") or finished["diameter"]
    return high + 2 * bench.cover.cushion.cover.edge.beyond


def _tied(bench: Bench) -> Iterator[Step]:
    closing, units = bench.cover.closing, bench.job.units
    yield from _hems(bench, "The bottom edges of front and back")
    pairs = ties(closing.edge, 1, units).pairs
    long = bench.told(TIE["in" if units == "in" else "cm"])
    text = f"A tie of {long} on each hem: {pairs.working(units)}. Sew each end in a square with a cross."
    yield Step("closure", "closure.ties", "Sew on the ties", text, counted(pairs.count, "pair", "pairs"))


def _open(bench: Bench) -> Iterator[Step]:
    yield from _hems(bench, "The bottom edges of front and back")


#: Stitches by hand are about so long (common practice: 1/4 in).
_BY_HAND = {"in": UNITS["in"] // 4, "cm": 6 * UNITS["mm"], "mm": 6 * UNITS["mm"]}


def _by_hand(bench: Bench) -> Iterator[Step]:
    length, stitch = bench.told(bench.cover.closing.length), bench.told(_BY_HAND[bench.job.units])
    text = f"Count the pins first: none may stay inside. Close the {length} with slip stitches of about {stitch}."
    yield Step("finish", "finish.close", "Sew up the opening", text, length)


_WAYS: dict[str, Callable[[Bench], Iterator[Step]]] = {
    "hand-sewn": _by_hand,
    "zip": _zip,
    "envelope": _lapped,
    "buttons": _lapped,
    "ties": _tied,
    "open": _open,
}
