# Where each panel may lie: its turns, its columns across the repeat and its rows along it, made into kinds.
"""Turns the rules of the cloth into plain lists of allowed places.

A *variant* is one panel in one turn with its allowed places: any ``x`` or a list of columns, and in each column every
``y`` congruent to the column's residue modulo ``step`` (``step`` 1: any ``y``). A *kind* gathers the panels that may
lie in exactly the same ways. A *setting* fixes what the planner may choose: how each turn group is turned, the phase of
the repeat along the roll, and the place in the repeat of each group of panels that are to look alike.

The gap between panels is built into widths and lengths: a strip with a gap g is the same problem as one without, every
panel larger by g in both directions and the cloth wider by g.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from plumpline.layout.outlines import extents_of
from plumpline.layout.strip import TURNS, CannotLay, Panel, Repeat, Strip

Column = tuple[int, int]
Place = tuple[int, int]
MOTIF = "motif"


@dataclass(frozen=True)
class Variant:
    """One panel turned one way: extents with the gap, its columns (x, residue) or None for any x, and its y rule.

    ``anchor`` names what its rows hang on: "" (nothing), "motif", or "group:" and the group's name.
    """

    turn: int
    w: int
    h: int
    columns: tuple[Column, ...] | None
    residue: int
    step: int
    anchor: str


@dataclass(frozen=True)
class Kind:
    """``qty`` panels that may lie in the same ways; ``members`` are (index of the panel, copies)."""

    variants: tuple[Variant, ...]
    qty: int
    members: tuple[tuple[int, int], ...]


@dataclass(frozen=True)
class Setting:
    """What the planner chose: allowed turns of each panel, the phase, and the place of each alike group."""

    turns: tuple[tuple[int, ...], ...]
    phase: int = 0
    places: tuple[tuple[str, Place], ...] = ()


def check(strip: Strip) -> None:
    """Raise ``ValueError`` for a strip that makes no sense, ``CannotLay`` for one that no plan can obey."""
    motifs = {m.id for m in strip.motifs}
    if strip.width <= 0 or not strip.panels:
        raise ValueError("a strip needs a width above 0 and at least one panel")
    if strip.start != "measured" and strip.flaws:
        raise ValueError("flaws can only be told where the start is measured")
    if any(f.outline and extents_of(f.outline) != (0, 0, f.w, f.h) for f in strip.flaws):
        raise ValueError("the outline of a flaw must span its width and length from (0, 0)")
    for panel in strip.panels:
        _check_panel(strip, panel, motifs)
    for panel in strip.panels:
        if panel.turn_group is not None and not common_turns(strip, panel.turn_group):
            raise CannotLay(
                panel.id, "rules-contradict", f"{panel.id} has no turn in common with its group {panel.turn_group}"
            )


def _check_panel(strip: Strip, panel: Panel, motifs: set[str]) -> None:
    if panel.w <= 0 or panel.h <= 0 or panel.qty <= 0 or not set(panel.turns) <= set(TURNS) or not panel.turns:
        raise ValueError(f"{panel.id}: sizes and number must be above 0 and turns among {TURNS}")
    if panel.motif is not None and (panel.group is not None or panel.motif not in motifs or strip.repeat is None):
        raise ValueError(f"{panel.id}: a motif needs its repeat and its place, and cannot be alike as well")
    if all(panel.extents(turn)[0] > strip.width for turn in panel.turns):
        narrowest = min(panel.w, panel.extents(90)[0])
        if narrowest > strip.width:
            raise CannotLay(panel.id, "too-wide", f"{panel.id} is {narrowest} wide; the cloth has {strip.width}")
        raise CannotLay(panel.id, "too-wide-unless-turned", f"{panel.id} fits the cloth only if it is turned")
    if not possible_turns(strip, panel):
        raise CannotLay(panel.id, "no-motif-column", f"{panel.id} has no place where its motif is as asked")


def possible_turns(strip: Strip, panel: Panel) -> tuple[int, ...]:
    """The allowed turns in which the panel fits the cloth with its motif."""
    fitting = (t for t in panel.turns if panel.extents(t)[0] <= strip.width)
    return tuple(t for t in fitting if panel.motif is None or any(_motif_variants(strip, panel, t, 0)))


def common_turns(strip: Strip, turn_group: str) -> tuple[int, ...]:
    """The turns possible for every panel of a turn group."""
    members = [p for p in strip.panels if p.turn_group == turn_group]
    return tuple(t for t in TURNS if all(t in possible_turns(strip, p) for p in members))


def distinct_turns(strip: Strip, group: str) -> tuple[int, ...]:
    """The turns of a group that can make a difference: half turns matter to points that are no middle only."""
    turns = common_turns(strip, group)
    if any(p.motif is not None or any(p.apart) for p in strip.panels if p.turn_group == group):
        return turns
    return tuple(t for t in turns if (t + 180) % 360 not in turns or t < 180)


def kinds_of(strip: Strip, setting: Setting) -> tuple[Kind, ...]:
    """The kinds of a strip under a setting; panels that may lie in the same ways become one kind."""
    places = dict(setting.places)
    variants = [
        _variants(strip, panel, turns, setting.phase, places)
        for panel, turns in zip(strip.panels, setting.turns, strict=True)
    ]
    alike: dict[tuple[Variant, ...], list[int]] = {}
    for index, ways in enumerate(variants):
        alike.setdefault(ways, []).append(index)
    return tuple(
        Kind(ways, sum(strip.panels[i].qty for i in members), tuple((i, strip.panels[i].qty) for i in members))
        for ways, members in alike.items()
    )


def _variants(
    strip: Strip, panel: Panel, turns: tuple[int, ...], phase: int, places: dict[str, Place]
) -> tuple[Variant, ...]:
    found: dict[tuple[object, ...], Variant] = {}
    for turn in turns:
        for v in _turned(strip, panel, turn, phase, places):
            found.setdefault((v.w, v.h, v.columns, v.residue), v)
    return tuple(found.values())


def _turned(
    strip: Strip, panel: Panel, turn: int, phase: int, places: dict[str, Place]
) -> Iterator[Variant]:
    w, h = panel.extents(turn)
    if panel.motif is not None:
        yield from _motif_variants(strip, panel, turn, phase)
    elif panel.group is not None and panel.group in places:
        assert strip.repeat is not None
        (cx, cy), (x, y) = places[panel.group], panel.middle(turn)
        yield from _bound(strip, strip.repeat, turn, (w, h), (cx - x, cy - y), f"group:{panel.group}")
    else:
        yield Variant(turn, w + strip.gap, h + strip.gap, None, 0, 1, "")


def _motif_variants(strip: Strip, panel: Panel, turn: int, phase: int) -> Iterator[Variant]:
    assert strip.repeat is not None
    dx, dy = panel.point(turn)
    repeat, anchor = strip.repeat.on(panel.axes), MOTIF if panel.hangs_along else ""
    for motif in strip.motifs:
        if motif.id == panel.motif:
            corner = (motif.ox - dx, motif.oy + phase - dy)
            yield from _bound(strip, repeat, turn, panel.extents(turn), corner, anchor)


def _bound(
    strip: Strip, repeat: Repeat, turn: int, extents: tuple[int, int], corner: Place, anchor: str
) -> Iterator[Variant]:
    """The variant whose lower left corners are ``corner`` moved by the repeat; none where no column fits."""
    (w, h), (x, y) = extents, corner
    step = repeat.along or 1
    if not repeat.across:
        yield Variant(turn, w + strip.gap, h + strip.gap, None, y % step, step, anchor)
        return
    first = -(x // repeat.across)
    last = (strip.width - w - x) // repeat.across
    columns = tuple((x + i * repeat.across, (y + i * repeat.drop) % step) for i in range(first, last + 1))
    if columns:
        yield Variant(turn, w + strip.gap, h + strip.gap, columns, 0, step, anchor)
