"""Ways to place the faces in the pattern: anywhere, all alike, a motif in the middle of each. One row for each way."""

from __future__ import annotations

from collections.abc import Callable

from plumpline.beside.offers import About, Changes, Group, Offer
from plumpline.job import name_of
from plumpline.remedies import Change

# The faces that a pattern is placed on; boxing and the ends of a bolster keep what was said of them.
_SHOWN = ("front", "back")
_PLACED = ("front", "back", "sides")


def pattern_choices(about: About) -> Group | None:
    """The ways to place the faces of a cloth in its pattern; None where it has none."""
    cloth = about.cloth
    if not (cloth.repeat_across or cloth.repeat_along):
        return None
    offers = [offer for row in PATTERNS if (offer := row(about)) is not None]
    return Group("pattern", f"The pattern of {name_of(cloth)}", (cloth.id,), tuple(offers))


def _unmatched(about: About) -> Offer:
    return Offer("Unmatched: cut anywhere", _placed(about, "free", *_PLACED))


def _alike(about: About) -> Offer:
    note = "All faces of one cover show the same place of the pattern."
    return Offer("All alike", _placed(about, "alike", *_SHOWN), note)


def _centred(about: About) -> Offer:
    return _with_motif(about, "Centred: a motif in the middle of each face", "centred", *_SHOWN)


def _striped(about: About) -> Offer | None:
    """A stripe in the middle, up and down anywhere; None where the pattern does not repeat across a face."""
    cloth = about.cloth
    if not (cloth.repeat_along if cloth.lies_aside else cloth.repeat_across):
        return None
    return _with_motif(about, "A stripe in the middle, anywhere along it", "stripe-centred", *_SHOWN)


def _fronts_centred(about: About) -> Offer | None:
    """The motif where it is seen alone: on the fronts, with plain backs; None where no back is of this cloth."""
    if not about.faces("back") or not about.faces("front"):
        return None
    backs = _placed(about, "free", "back")
    offer = _with_motif(about, "Fronts centred, backs cut anywhere", "centred", "front")
    return Offer(offer.name, (*offer.changes, *backs), cannot=offer.cannot)


# The ways in which a pattern may be placed, in the order a maker thinks of them: another is one more row.
PATTERNS: tuple[Callable[[About], Offer | None], ...] = (
    _unmatched,
    _alike,
    _centred,
    _striped,
    _fronts_centred,
)


def _placed(about: About, pattern: str, *parts: str) -> Changes:
    return tuple(
        Change(f"{at}/pattern", pattern) for _, at, face in about.faces(*parts) if face.pattern != pattern
    )


def _with_motif(about: About, name: str, pattern: str, *parts: str) -> Offer:
    """The faces on a motif or its stripe: that which each names, else the first one of the cloth."""
    if not about.cloth.motifs:
        text = f"Say where a motif lies on {name_of(about.cloth)}, and this can be priced."
        return Offer(name, (), cannot=text)
    known = [motif.id for motif in about.cloth.motifs]
    motifs = tuple(
        Change(f"{at}/motif", known[0]) for _, at, face in about.faces(*parts) if face.motif not in known
    )
    return Offer(name, (*motifs, *_placed(about, pattern, *parts)))
