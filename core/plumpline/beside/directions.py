"""Ways to lie on the cloth: every top away from the cut end, turned by half, along the roll, or any way round."""

from __future__ import annotations

from dataclasses import replace

from plumpline.beside.offers import About, Changes, Group, Offer
from plumpline.cloth import lay_out
from plumpline.job import Cloth, name_of
from plumpline.layout.strip import Strip
from plumpline.layplan import strip_of
from plumpline.remedies import Change

_NAP = "Only for cloth without nap, whose pattern has no right way up."
_ASIDE = "The pattern lies on its side."


def direction_choices(about: About) -> Group:
    """The ways in which the panels of a cloth may lie, in the order from strict to free."""
    cloth = about.cloth
    patterned = bool(cloth.repeat_across or cloth.repeat_along)
    ways = (
        ("All one way, upright", "one-way", "away", ""),
        ("Free to turn by half", "two-way", "away", _NAP),
        ("All one way, along the roll", "one-way", "left", _ASIDE if patterned else ""),
        ("Free to turn any way", "any", "away", _NAP),
    )
    matter = _that_matter(about, [(direction, up) for _, direction, up, _ in ways])
    offers = tuple(
        Offer(name, _lying(cloth, direction, up), note)
        for name, direction, up, note in ways
        if (direction, up) in matter
    )
    return Group("direction", f"Which way {name_of(cloth)} lies", (cloth.id,), offers)


def _lying(cloth: Cloth, direction: str, up: str) -> Changes:
    """What has to be said of a cloth for its panels to lie so; what holds by itself is not said."""
    wanted = (("direction", cloth.direction, direction), ("up", cloth.up, up))
    return tuple(Change(f"{cloth.at}/{name}", value) for name, now, value in wanted if now != value)


def _that_matter(about: About, ways: list[tuple[str, str]]) -> list[tuple[str, str]]:
    """The ways of lying that differ for the pieces of the cloth, and the one that holds now.

    A panel that is placed anywhere lies turned by half as it lay before.
    """
    cloth, pieces = about.cloth, about.prepared.pieces_on(about.cloth)
    seen: list[Strip] = []
    kept = []
    for direction, up in ways:
        strip = strip_of(replace(cloth, direction=direction, up=up), pieces, lay_out(cloth, cloth.width or 0))
        if strip not in seen or (direction, up) == (cloth.direction, cloth.up):
            kept.append((direction, up))
        seen.append(strip)
    return kept
