# What to be careful of, each with when it applies: blades, needles, cords, small parts, children, fire and labels.
"""The law differs from place to place and from year to year, so none of it is told here: only where to ask.

Where each comes from: cover a rotary blade and cut away from the body, no pins on the mat (safety guide of a youth
sewing contest); furniture and its cushions under flammability rules (UK SI 1988/1324 as amended by SI 2025/531; US 16
CFR 1640); fibre content, origin and maker on a label (US list of goods under the textile labelling act); cushions and
pillows for infants (US 16 CFR 1243 and 1500.18(a)(16)); small parts (US 16 CFR 1501, from memory); cords and needles
(common practice).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plumpline.cushions.made import Made


@dataclass(frozen=True)
class Caution:
    """A caution: its code, when it applies, and what to do."""

    code: str
    when: str
    text: str


_BLADES = Caution(
    "blades",
    "While cutting",
    "Cover a rotary blade whenever it is not cutting, cut away from yourself along a rule, and keep pins off the mat.",
)
_NEEDLES = Caution(
    "needles",
    "Before it is closed",
    "Count pins and needles out of every cover. One that is missing is looked for before the pad goes in.",
)
_CHILDREN = Caution(
    "children",
    "If it is for a baby or a small child",
    "Pillows and cushions for babies have rules of their own, and in some places are not allowed at all: check your "
    "local rule before you make one.",
)
_CORDS = Caution(
    "cords",
    "This cover has cords or ties",
    "A cord or a tie can strangle. Keep loops and loose ends short, and where small children are, leave them off: "
    "check your local rule.",
)
_SMALL_PARTS = Caution(
    "small-parts",
    "This cover has buttons or a zip slider",
    "Small parts can be swallowed. Sew them so that they cannot be pulled off, and for small children check your local "
    "rule.",
)
_FIRE_SEAT = Caution(
    "fire",
    "If it is sold, and is sat on",
    "Seat cushions often count as furniture: cloth, filling and the two together may have to pass a fire test and "
    "carry a lasting label. Check your local rule before you buy either.",
)
_FIRE = Caution(
    "fire",
    "If it is sold filled",
    "The filling, and in some places the cover, may have to pass a fire test and carry a lasting label: check your "
    "local rule.",
)
_LABELS = Caution(
    "labels",
    "If it is sold",
    "Fibre content, where it was made and who made it may have to be on a label, also on work made to order: check "
    "your local rule.",
)


def cautions(cover: Made) -> Iterator[Caution]:
    """The cautions that apply to a cover, in the order of the work."""
    cushion, closing = cover.cushion, cover.closing
    yield _BLADES
    yield _NEEDLES
    if closing.kind == "ties" or cushion.cover.ends == "gathered" or cushion.cover.edge.kind == "trimmed":
        yield _CORDS
    if closing.kind in ("buttons", "zip"):
        yield _SMALL_PARTS
    yield _CHILDREN
    yield _FIRE_SEAT if cushion.kind == "boxed" or cushion.insert.fill == "foam" else _FIRE
    yield _LABELS
