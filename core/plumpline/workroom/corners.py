# Corners and curves once the seams are sewn: tapers cut off, points clipped, allowances of rounds snipped.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """The step for the corners of this cover; gathered ends have none."""
    corners, cushion = bench.cover.cushion.cover.corners, bench.cover.cushion
    if cushion.insert.shape in ("round", "bolster"):
        text = "Snip wedges out of the allowance all round, closer where the curve is tighter, never through the seam."
        if cushion.cover.ends != "gathered":
            yield Step("taper", "taper.curve", "Notch the curves", text)
    elif corners.kind == "tapered":
        depth = bench.told(corners.depth)
        text = f"The seam runs along the chalked tapers, {depth} in at each corner: cut away what lies outside its "
        text += f"allowance. Lay {_alike(bench)} on each other: they have to be alike.{_clipped(bench)}"
        yield Step("taper", "taper.corners", "Taper the corners", text, depth)
    elif corners.kind == "rounded":
        radius = bench.told(corners.radius)
        text = f"Snip the allowance round each corner of {radius}, never through the seam.{_clipped(bench)}"
        yield Step("taper", "taper.rounded", "Notch the corners", text, radius)
    else:
        text = f"Cut each corner of the allowance off across, close to the seam but not through it.{_clipped(bench)}"
        yield Step("taper", "taper.square", "Clip the corners", text)


def _alike(bench: Bench) -> str:
    """What has corners that match: the four of a square or oblong face, of another outline its two faces."""
    return "the corners of front and back" if bench.cover.outline else "the four corners"


def _clipped(bench: Bench) -> str:
    """What is done besides where the outline turns inwards."""
    if any(mark.kind == "clip" for piece in bench.cover.pieces for mark in piece.marks):
        return " Where a corner turns inwards, snip into it up to the seam."
    return ""


def corner_text(bench: Bench) -> str:
    """The corners in a few words; nothing where there are none."""
    corners = bench.cover.cushion.cover.corners
    if bench.cover.cushion.insert.shape in ("round", "bolster"):
        return ""
    if corners.kind == "tapered":
        tapers = [mark.text for piece in bench.cover.pieces for mark in piece.marks if mark.kind == "taper"]
        # A face made of narrow parts is tapered once it is whole.
        taper = tapers[0] if tapers else f"In {bench.told(corners.depth)} at the corner, once the face is made up"
        return f"tapered: {taper[0].lower()}{taper[1:]}"
    return f"rounded by {bench.told(corners.radius)}" if corners.kind == "rounded" else "square"
