"""A rule of thumb beside the lay plan: the upholsterers' chart for patterned cloth. It is a check, never the answer."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from plumpline.job import Cloth
from plumpline.layout.budget import Slices
from plumpline.layplan import ClothPlan, plan_cloth
from plumpline.lengths import NM_PER_INCH, round_half_even, write_length
from plumpline.pieces import Piece

# Repeat along and across together, up to so many inches, and what is added to plain cloth. Two copies of the chart
# agree up to 36 in; above, one ends its bands at 43 and 51 in (taken here), the other at 45 and 54 in. What lies
# between two bands takes the higher.
_CHART = ((14, 10), (19, 15), (27, 20), (36, 25), (43, 30), (51, 35))


def percent_for_pattern(along: int, across: int) -> int | None:
    """What the chart adds to plain cloth for a repeat of `along` and `across` nm, in percent; None where it ends."""
    together = along + across
    return next((percent for up_to, percent in _CHART if together <= up_to * NM_PER_INCH), None)


def with_percent(plain: int, percent: int) -> int:
    """A length of plain cloth and so many percent more, in nm."""
    return round_half_even(plain * (1 + Fraction(percent, 100)))


def by_the_chart(planned: ClothPlan, units: str, work: int) -> Slices[str | None]:
    """What the chart makes of the cloth planned, in a sentence; None where nothing is matched, or the chart ends.

    The same panels are laid within `work` units as if the cloth were plain, and the chart's part is added.
    """
    cloth = planned.cloth
    percent = percent_for_pattern(cloth.repeat_along, cloth.repeat_across)
    if percent is None or all(piece.face.pattern == "free" for piece in planned.pieces):
        return None
    pieces = tuple(map(_cut_anywhere, planned.pieces))
    plain = (yield from plan_cloth(_plain(cloth), pieces, planned.strips, work)).needed
    repeat = f"{write_length(cloth.repeat_along, units)} along and {write_length(cloth.repeat_across, units)} across"
    return (
        f"A check by the upholsterers' chart: plain cloth would need {write_length(plain, units)}, and "
        f"{percent} % more for a repeat of {repeat} makes {write_length(with_percent(plain, percent), units)}. "
        f"The lay plan needs {write_length(planned.needed, units)}, and the lay plan counts."
    )


def _plain(cloth: Cloth) -> Cloth:
    return replace(cloth, repeat_along=0, repeat_across=0, drop=0, motifs=())


def _cut_anywhere(piece: Piece) -> Piece:
    return replace(piece, face=replace(piece.face, pattern="free", motif=None, group=None))
