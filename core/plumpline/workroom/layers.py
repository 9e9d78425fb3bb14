# The layers of a cover at the bench: what is tacked to its pieces, and what the pad goes into first.

from __future__ import annotations

from collections.abc import Callable, Iterator

from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The steps of each layer that the cover has."""
    for layer in bench.cover.cushion.cover.layers:
        yield _STEPS[layer](bench)


def _lining(_: Bench) -> Step:
    text = (
        "Each piece on the wrong side of its own, edge on edge; tack it within the seam. From here on the two are one."
    )
    return Step("make-up", "make-up.lining", "Tack in the lining", text)


def _interlining(_: Bench) -> Step:
    text = (
        "Each piece on the wrong side of its own, inside its seam lines; catch its edges down by hand, or fuse it, so "
    )
    return Step("make-up", "make-up.interlining", "Fix the interlining", text + "that no seam is sewn through it.")


def _protector(bench: Bench) -> Step:
    *_, opening = bench.cover.zips
    text = "Its zip first, then its seams all round. It has the finished size of the cover; the pad goes into it first."
    return Step("make-up", "make-up.protector", "Make the protector", text, bench.told(opening))


def _wrap(_: Bench) -> Step:
    text = "Sew it round the pad by hand or machine, smooth but not tight: the cover is to slide over it."
    return Step("fill", "fill.wrap", "Put on the slip-cloth", text)


_STEPS: dict[str, Callable[[Bench], Step]] = {
    "lining": _lining,
    "interlining": _interlining,
    "protector": _protector,
    "wrap": _wrap,
}
