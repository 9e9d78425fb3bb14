"""The layers under a cover: a lining, an interlining, a zipped inner protector, a slip-cloth round the foam."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction

from plumpline.cloth import up_to
from plumpline.cushions.joining import joined, unjoinable
from plumpline.cushions.made import Made
from plumpline.cushions.panels import Cut, Edges, Part, cut_out, outlined_part, round_part
from plumpline.cushions.pieced import cut_portions
from plumpline.cushions.stitching import Sewn
from plumpline.figures import counted, listed, size
from plumpline.geometry import circumference, outset, perimeter
from plumpline.job import Cushion, Job
from plumpline.lengths import write_length
from plumpline.pieces import Outline, Piece, Point
from plumpline.problems import Problem
from plumpline.rounded import rounded_outwards

Kind = Callable[[Cushion, Job], Made | list[Problem]]

_FACES = ("front", "back", "sides")


@dataclass(frozen=True)
class Layer:
    """One layer of a cover worked out: its pieces, how they come about, its own stitching and its own zips.

    `made_up` names those of its faces that are joined of several pieces, each with how that is done.
    """

    pieces: tuple[Piece, ...]
    line: str
    sewn: tuple[Sewn, ...] = ()
    zips: tuple[int, ...] = ()
    made_up: tuple[tuple[str, str], ...] = ()


def with_layers(cover: Made, kind: Kind, job: Job) -> Made | list[Problem]:
    """The cover with the layers it is asked to have, or why it cannot have them.

    A lining and an interlining are those of a cover of the same `kind` cut from their cloth; so is a protector, which
    closes with a zip at its usual place.
    """
    layers: list[Layer] = []
    for name in cover.cushion.cover.layers:
        layer = _MAKE[name](cover, kind, job)
        if not isinstance(layer, Layer):
            return layer
        layers.append(layer)
    thickly = 2 if "lining" in cover.cushion.cover.layers else 1
    return replace(
        cover,
        pieces=(*cover.pieces, *(piece for layer in layers for piece in layer.pieces)),
        cutting=(*cover.cutting, *(layer.line for layer in layers)),
        sewn=(
            *(replace(sewn, layers=thickly * sewn.layers) for sewn in cover.sewn),
            *(sewn for layer in layers for sewn in layer.sewn),
        ),
        zips=(*cover.zips, *(opening for layer in layers for opening in layer.zips)),
        made_up=(*cover.made_up, *(face for layer in layers for face in layer.made_up)),
    )


def _lining(cover: Made, kind: Kind, job: Job) -> Layer | list[Problem]:
    """Cut like the cover, and sewn into its seams as one with it."""
    inner = _like_the_cover(cover.cushion, kind, "lining", job)
    if not isinstance(inner, Made):
        return inner
    pieces = _pieces_of(inner, "lining")
    line = f"The lining is cut like the cover and sewn in with it: {_told(pieces, job)}."
    return Layer(pieces, line, inner.seams, made_up=_made_up(inner, "lining"))


def _interlining(cover: Made, kind: Kind, job: Job) -> Layer | list[Problem]:
    """Cut like the cover but without allowances, so that the seams stay thin (common practice)."""
    cushion = cover.cushion
    if cushion.kind == "bolster" and cushion.cover.ends == "gathered":
        text = "Ends that are gathered would be too thick interlined: take flat ends, or leave the interlining out."
        return [Problem(f"{cushion.at}/cover/layers/interlining", "rules-contradict", text)]
    inner = _like_the_cover(cushion, kind, "interlining", job)
    if not isinstance(inner, Made):
        return inner
    pieces = tuple(_to_the_seam(piece, job) for piece in _pieces_of(inner, "interlining"))
    line = f"The interlining is cut to the stitching line, with no seams: {_told(pieces, job)}."
    butted = tuple((face, _BUTTED) for face, _ in _made_up(inner, "interlining"))
    return Layer(pieces, line, made_up=butted)


# Common practice, from memory.
_BUTTED = (
    "Edge to edge and never one over the other; catch the edges together by hand or with a wide zigzag, so that the "
    "join stays flat."
)


def _protector(cover: Made, kind: Kind, job: Job) -> Layer | list[Problem]:
    """A plain cover of its own, of the finished size of the one it lies in, with a zip at the usual place."""
    cushion = cover.cushion
    plain = replace(cushion.cover.edge, kind="plain")
    zipped = replace(cushion.cover.closure, kind="zip", at=None, seam=None, zip_length=None, opening=None, overlap=None)
    plainly = replace(cushion, cover=replace(cushion.cover, edge=plain, closure=zipped))
    inner = _like_the_cover(plainly, kind, "protector", job)
    if not isinstance(inner, Made):
        text = "A zipped protector cannot be made for this cover: leave it out."
        return inner or [Problem(f"{cushion.at}/cover/layers/protector", "rules-contradict", text)]
    pieces = _pieces_of(inner, "protector")
    opening = write_length(inner.closing.length, job.units)
    line = f"The protector is a cover of its own with a zip of {opening}: {_told(pieces, job)}."
    return Layer(pieces, line, inner.sewn, inner.zips, _made_up(inner, "protector"))


def _wrap(cover: Made, _kind: Kind, job: Job) -> Layer | list[Problem]:
    """Two panels that meet half-way down the edge of the pad; round a bolster one that is drawn together at its ends.

    Each reaches thickness ÷ 2 further than the pad at every edge, and has its seams (common practice, from memory).
    """
    cushion, pad, seam = cover.cushion, cover.pad.size, cover.cushion.cover.seam
    edges, thick = Edges(seam, seam, seam, seam), cushion.insert.size.get("thickness") or 0
    across = pad.get("diameter")
    if cushion.kind == "bolster" and across is not None:
        measured = ("length", "diameter")
        part = Part("wrap", "layers/wrap", measured, pad["length"] + across, circumference(across), edges)
        part, panels = replace(part, edges=replace(edges, left=0, right=0)), 1
    elif across is not None:
        part, panels = round_part("wrap", "layers/wrap", across + thick, seam), 2
    elif cover.pad.outline:
        reach = outset(cover.pad.outline, [thick // 2] * len(cover.pad.outline))
        part, panels = outlined_part("wrap", "layers/wrap", rounded_outwards(reach, 0), (seam,) * len(reach)), 2
    else:
        width, length = (pad[name] + thick for name in ("width", "length"))
        part, panels = Part("wrap", "layers/wrap", ("width", "length"), width, length, edges), 2
    part = replace(part, turns="freely")
    problems, pieced = unjoinable(part, cushion), joined(part, cushion, job)
    if problems:
        return problems
    whole = Cut(part, cut_out(part, cushion, job, panels * cushion.quantity))
    cuts = cut_portions(whole, pieced.portions, cushion, job) if pieced else [whole]
    pieces = tuple(replace(cut.piece, count=panels * cushion.quantity) for cut in cuts)
    sizes = listed([size(piece.width, piece.length, job.units) for piece in pieces])
    how = "which meet half-way down its edge" if panels == 2 else "drawn together over both ends"
    around = perimeter(part.outline) if part.outline else 2 * (part.width + part.length) if panels == 2 else part.width
    cut = f"{sizes} joined" if pieced else sizes
    line = f"The slip-cloth goes round the pad in {counted(panels, 'panel', 'panels')} of {cut}, {how}."
    sewn = (Sewn(around, layers=2), *([Sewn(panels * pieced.seams, layers=2)] if pieced else []))
    return Layer(pieces, line, sewn, made_up=(("slip-cloth", pieced.how),) if pieced else ())


_MAKE: dict[str, Callable[[Made, Kind, Job], Layer | list[Problem]]] = {
    "lining": _lining,
    "interlining": _interlining,
    "protector": _protector,
    "wrap": _wrap,
}


def _like_the_cover(cushion: Cushion, kind: Kind, layer: str, job: Job) -> Made | list[Problem]:
    """The cover made once more from the cloth of a layer, all of it cut anyhow, and without layers of its own.

    Where it is joined, its boxing is too, whatever that of the cover is. What can be made of one cloth can be of any
    other, only that it may be no shape to be joined: that is what is said, at the layer. Nothing is said of a cover
    that cannot be made at all.
    """
    cover, face = cushion.cover, cushion.cover.face(f"layers/{layer}")
    faces = tuple((part, face) for part, _ in cover.faces if part in _FACES)
    boxing = cover.boxing if face.joined == "none" else replace(cover.boxing, run="across")
    inner = kind(replace(cushion, cover=replace(cover, faces=faces, boxing=boxing, layers=())), job)
    if isinstance(inner, Made):
        return inner
    unjoined = [problem for problem in inner if problem.at.endswith("/joined")]
    return [replace(problem, at=f"{cushion.at}/cover/layers/{layer}/joined") for problem in unjoined[:1]]


def _made_up(inner: Made, layer: str) -> tuple[tuple[str, str], ...]:
    return tuple((f"{layer} {face}", how) for face, how in inner.made_up)


def _pieces_of(inner: Made, layer: str) -> tuple[Piece, ...]:
    """The pieces of a cover's faces as those of a layer: they lie as they like, for nobody sees them."""
    at = f"{inner.cushion.at}/cover"
    return tuple(
        replace(
            piece,
            id=f"{piece.cushion}.{layer}-{piece.part}",
            part=f"{layer}-{piece.part}",
            face_at=f"{at}/layers/{layer}",
            turns="freely",
            portion_of=layer,
        )
        for piece in inner.pieces
        if piece.face_at in [f"{at}/{face}" for face in _FACES]
    )


def _to_the_seam(piece: Piece, job: Job) -> Piece:
    """The piece without its allowances: what its seam line encloses, up to the grid."""
    line = piece.seam_line
    (left, right), (bottom, top) = ((min(values), max(values)) for values in zip(*line, strict=True))
    grid = 0 if piece.allowances else job.grid  # a straight-sided outline is cut by its template, on no grid
    wide, high = up_to(grid, Fraction(right - left)), up_to(grid, Fraction(top - bottom))
    return replace(
        piece.resized(wide, high),
        edges=Edges(0, 0, 0, 0),
        seam=0,
        outline=_from_the_corner(line, (left, bottom)),
        stitched=(),
        allowances=(),
        marks=(),
    )


def _from_the_corner(outline: Outline, corner: Point) -> Outline:
    return tuple((x - corner[0], y - corner[1]) for x, y in outline)


def _told(pieces: tuple[Piece, ...], job: Job) -> str:
    named = [(piece.called.removeprefix(f"{piece.portion_of} "), piece) for piece in pieces]
    return listed([f"{name} {size(piece.width, piece.length, job.units)}" for name, piece in named])
