# A step at the bench, the order in which the bench takes them, and what every feature is told to make its own from.
"""A feature of a cover (a zip, a taper, a trim) gives its steps with the stage of each; the sheet puts them in order.

Order of work at a bench (common practice): look the cloth over, wash it, square it; cut faces, boxing and strips;
mark and overlock them; make up faces of several pieces; the closure first, while everything lies flat; trim and
piping on the front; the label; join; taper; turn; press; fill; close.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, get_args

from plumpline.cushions.made import Made
from plumpline.job import Cloth, Job
from plumpline.lengths import write_length
from plumpline.pieces import Piece

Stage = Literal[
    "check",
    "wash",
    "square",
    "cut-faces",
    "cut-boxing",
    "cut-strips",
    "cut-layers",
    "mark",
    "overlock",
    "make-up",
    "closure",
    "edge",
    "closure-at-edge",
    "label",
    "join",
    "taper",
    "turn",
    "press",
    "fill",
    "finish",
]
STAGES: tuple[Stage, ...] = get_args(Stage)


@dataclass(frozen=True)
class Step:
    """One step: its stage, its `name` within it, what to do in a few words, the figure to look at, and how it is done.

    The name stays the same while figures change, so that a step that is ticked off stays so. A step that is done once
    for all covers of a cloth says which in `cloth`.
    """

    stage: Stage
    name: str
    title: str
    text: str
    figure: str = ""
    cloth: str = ""


@dataclass(frozen=True)
class Bench:
    """One cover at the bench, in its job."""

    cover: Made
    job: Job

    def told(self, nm: int) -> str:
        """A length in the units of the job."""
        return write_length(nm, self.job.units)

    @property
    def cloths(self) -> list[Cloth]:
        """Every cloth that the cover is cut from."""
        cut = [piece.face.cloth for piece in self.cover.pieces] + [strips.cloth for strips in self.cover.strips]
        return [self.job.cloth(id_) for id_ in dict.fromkeys(cut)]

    def parts(self, *families: str) -> list[Piece]:
        """The pieces of those families of parts, in the order of the cover."""
        return [piece for piece in self.cover.pieces if family_of(piece) in families]

    def of_one_cover(self, *families: str) -> list[Piece]:
        """The same without the mirror images of pieces: what a single cover has of them."""
        return list({_in_one_hand(piece.part): piece for piece in reversed(self.parts(*families))}.values())[::-1]


_MIRRORED = "-mirrored"


def family_of(piece: Piece) -> str:
    """The part without its number or its hand: "boxing" of boxing-2, "back" of back-1 and of what it is joined of."""
    return _in_one_hand(piece.portion_of or piece.part).rstrip("0123456789").removesuffix("-")


def _in_one_hand(part: str) -> str:
    """A part without the word that tells it from its mirror image."""
    return part.removesuffix(_MIRRORED)


def is_mirrored(piece: Piece) -> bool:
    """Whether a piece belongs to covers that are made the other way round."""
    return piece.part.endswith(_MIRRORED)


def family_name(family: str) -> str:
    """What the pieces of a family are called together: "zip band", "ends"."""
    return {"end": "ends", "wrap": "slip-cloth"}.get(family, family.replace("-", " "))
