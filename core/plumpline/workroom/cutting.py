# Cutting the pieces, part by part, and overlocking them where the cover is made so.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.figures import counted, listed, size
from plumpline.job import name_of
from plumpline.pieces import Piece
from plumpline.workroom.step import Bench, Stage, Step, family_name, family_of, is_mirrored

# At which stage a part is cut, where it is not a face; the stage follows the order of work of `step`.
_STAGES: dict[str, Stage] = {
    "boxing": "cut-boxing",
    "zip-band": "cut-boxing",
    "piping": "cut-strips",
    "flange": "cut-strips",
    "frill": "cut-strips",
    "lining": "cut-layers",
    "interlining": "cut-layers",
    "protector": "cut-layers",
    "wrap": "cut-layers",
}


def steps(bench: Bench) -> Iterator[Step]:
    """A step for each family of parts, and one for overlocking."""
    for family in dict.fromkeys(family_of(piece) for piece in bench.cover.pieces):
        pieces = bench.parts(family)
        sizes = list(dict.fromkeys(cut_size(piece, bench) for piece in pieces))
        yield Step(
            _STAGES.get(family, "cut-faces"),
            f"cut.{family}",
            f"Cut the {family_name(family)}",
            _text(pieces, bench),
            sizes[0] if len(sizes) == 1 else "",
        )
    if bench.cover.cushion.cover.seam_finish == "overlocked":
        text = "All edges of every piece, without taking anything off: the sizes are those to the cut edge."
        yield Step("overlock", "overlock", "Overlock the pieces", text)


def cut_size(piece: Piece, bench: Bench) -> str:
    """The size a piece is cut to: "18 × 18 in", "17 in across"."""
    if piece.shape == "circle" and piece.width == piece.length:
        return f"{bench.told(piece.width)} across"
    return size(piece.width, piece.length, bench.job.units)


def _text(pieces: list[Piece], bench: Bench) -> str:
    lots: dict[tuple[str, str, bool], list[Piece]] = {}
    for piece in pieces:
        cloth = name_of(bench.job.cloth(piece.face.cloth))
        lots.setdefault((cut_size(piece, bench), cloth, is_mirrored(piece)), []).append(piece)
    told = []
    for (cut, cloth, _), alike in lots.items():
        count = counted(sum(piece.count for piece in alike), "piece", "pieces")
        names = f"{listed([piece.called for piece in alike])}: " if len(pieces) > 1 else ""
        told.append(f"{names}{count} of {cut} from {cloth}")
    text = _sentence("; ".join(told))
    if pieces[0].shape == "outline":
        text += " Each by the full-size template that bears its name: the size is that of the rectangle around it."
    return f"{text} {_turn(pieces[0], bench)}"


def _turn(piece: Piece, bench: Bench) -> str:
    """How a part may lie on its cloth."""
    if bench.job.cloth(piece.face.cloth).direction != "any":
        return "Every top edge lies the way the top of the cloth points."
    if piece.turns == "freely":
        return "On this cloth it may lie either way."
    return "All faces of the cover lie the same way."


def _sentence(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}."
