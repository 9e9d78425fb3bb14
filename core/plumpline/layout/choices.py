# What the planner may choose before laying anything: turns of groups, the phase of the repeat, places of alike panels.
"""Candidate settings.

A turn group has few turns, and of groups of the same panels only how many take each turn matters. The phase of a
repeat whose start may be chosen, and the place in the repeat that alike panels take, range over all lengths, but only
few matter: push a shortest plan down and to the left. If all panels hang on one anchor, some panel then lies at y = 0
and, if the anchor may move across as well, some panel at x = 0; the candidates below hold all such settings, so trying
every one is exact (``Choices.complete``). Otherwise an anchor can also come to rest behind or beside panels of other
anchors; the candidates hold the first such places.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import chain, combinations_with_replacement, product
from math import comb, prod
from random import Random
from typing import NamedTuple

from plumpline.layout.places import (
    MOTIF,
    Place,
    Setting,
    distinct_turns,
    kinds_of,
    possible_turns,
)
from plumpline.layout.strip import CannotLay, Panel, Strip

MOST_SETTINGS = 64
MOST_PLACES = 48

Turns = tuple[tuple[int, ...], ...]
Choice = tuple[int, ...]


@dataclass(frozen=True)
class Choices:
    """Candidates for each thing to choose; ``complete`` if some shortest plan follows one of all combinations."""

    turns: tuple[Turns, ...]
    phases: tuple[int, ...]
    groups: tuple[str, ...]
    places: tuple[tuple[Place, ...], ...]
    complete: bool

    @property
    def sizes(self) -> tuple[int, ...]:
        """How many candidates there are for the turns, for the phase and for each group."""
        return (len(self.turns), len(self.phases), *(len(options) for options in self.places))

    def setting(self, choice: Choice) -> Setting:
        """The setting that a choice of candidates stands for."""
        turns, phase, *places = choice
        chosen = zip(self.groups, self.places, places, strict=True)
        return Setting(
            self.turns[turns], self.phases[phase], tuple((name, options[i]) for name, options, i in chosen)
        )

    def worth_trying(self) -> Iterator[Choice]:
        """All combinations while they are few, else the first of all and every single change of it."""
        if self.few:
            yield from product(*(range(size) for size in self.sizes))
            return
        first = (0,) * len(self.sizes)
        yield first
        for index, size in enumerate(self.sizes):
            for option in range(1, size):
                yield (*first[:index], option, *first[index + 1 :])

    @property
    def few(self) -> bool:
        """Whether all combinations are worth trying."""
        count = 1
        for size in self.sizes:
            count *= size
        return count <= MOST_SETTINGS

    def changed(self, choice: Choice, random: Random) -> Choice:
        """The choice with one thing chosen anew."""
        index = int(random.random() * len(choice))
        return (*choice[:index], int(random.random() * self.sizes[index]), *choice[index + 1 :])


def choices_of(strip: Strip) -> Choices:
    """The candidates of a strip."""
    turns, all_turns = _turns(strip)
    phases = _phases(strip)
    groups = tuple(sorted({p.group for p in strip.panels if p.group is not None})) if strip.repeat else ()
    places = tuple(_places(strip, group) for group in groups)
    anchors = {_anchor(strip, p) for p in strip.panels}
    alone = len(anchors) == 1 and not strip.flaws
    chosen = bool(groups) or len(phases) > 1
    exact = not chosen or (alone and all(len(options) < MOST_PLACES for options in (phases, *places)))
    return Choices(turns, phases, groups, places, all_turns and exact)


def _anchor(strip: Strip, panel: Panel) -> str:
    if panel.hangs_along:
        return MOTIF
    return f"group:{panel.group}" if panel.group is not None and strip.repeat is not None else ""


def _turns(strip: Strip) -> tuple[tuple[Turns, ...], bool]:
    """Assignments of turns to the turn groups, and whether these are all that differ.

    Nothing tells groups of the same panels apart but their names, so of these only how many take each turn matters.
    """
    groups = sorted({p.turn_group for p in strip.panels if p.turn_group is not None})
    same: dict[frozenset[tuple[Panel, int]], list[str]] = {}
    for group in groups:
        same.setdefault(_make_up(strip, group), []).append(group)
    named = [group for names in same.values() for group in names]
    options = [(distinct_turns(strip, names[0]), len(names)) for names in same.values()]
    count = prod(comb(len(turns) + number - 1, number) for turns, number in options)
    found: dict[Turns, None] = {}
    for chosen in _all_turned(options) if count <= MOST_SETTINGS else _some_turned(options):
        turned = dict(zip(named, chain.from_iterable(chosen), strict=True))
        found[tuple(
            possible_turns(strip, p) if p.turn_group is None else (turned[p.turn_group],) for p in strip.panels
        )] = None
    return tuple(found), count <= MOST_SETTINGS


def _make_up(strip: Strip, turn_group: str) -> frozenset[tuple[Panel, int]]:
    """The panels of a turn group without their names, and how many of each there are."""
    members = Counter(replace(p, id="", turn_group=None) for p in strip.panels if p.turn_group == turn_group)
    return frozenset(members.items())


def _all_turned(options: list[tuple[tuple[int, ...], int]]) -> Iterator[Turns]:
    """Every way to give so many groups the turns they may take, for each make-up."""
    return product(*(combinations_with_replacement(turns, number) for turns, number in options))


def _some_turned(options: list[tuple[tuple[int, ...], int]]) -> Iterator[Turns]:
    """The first turn for all, the last for all, and each other turn for one group or for all of a make-up."""
    first = tuple((turns[0],) * number for turns, number in options)
    yield first
    yield tuple((turns[-1],) * number for turns, number in options)
    for i, (turns, number) in enumerate(options):
        for turn, some in product(turns[1:], dict.fromkeys((1, number))):
            yield (*first[:i], (turn,) * some + (turns[0],) * (number - some), *first[i + 1 :])


def _phases(strip: Strip) -> tuple[int, ...]:
    """Phases at which some motif panel lies at y = 0, then those at which it lies behind one panel or two."""
    bound = [p for p in strip.panels if p.hangs_along]
    if strip.start == "measured" or not bound or strip.repeat is None or not strip.repeat.along:
        return (0,)
    along = strip.repeat.along
    residues = [r for p in bound for r in _motif_residues(strip, p)]
    phases = dict.fromkeys(-r % along for r in residues)
    if len(bound) < len(strip.panels):
        for rest in _rests(strip, [p for p in strip.panels if not p.hangs_along], along=True):
            phases.update(dict.fromkeys((rest + strip.gap - r) % along for r in residues))
    return tuple(phases)[:MOST_PLACES]


def _motif_residues(strip: Strip, panel: Panel) -> list[int]:
    alone = Strip(strip.width, (panel,), strip.repeat, strip.motifs, gap=strip.gap)
    found: dict[int, None] = {}
    for kind in kinds_of(alone, Setting((possible_turns(strip, panel),))):
        for v in kind.variants:
            found.update(dict.fromkeys((v.residue,) if v.columns is None else (r for _, r in v.columns)))
    return list(found)


def _rests(strip: Strip, panels: list[Panel], along: bool) -> list[int]:
    """Sizes of one panel or two, along or across, that another could come to rest against."""
    sizes = dict.fromkeys(p.extents(t)[1 if along else 0] for p in panels for t in possible_turns(strip, p))
    return list(sizes) + [a + b for a in sizes for b in sizes]


def _places(strip: Strip, group: str) -> tuple[Place, ...]:
    """Places of an alike group: across, best filled first, and for each the rows that make some column flush."""
    assert strip.repeat is not None
    members = [p for p in strip.panels if p.group == group]
    others = [p for p in strip.panels if p.group != group]
    ways = [[_Sized(*p.extents(t), *p.middle(t)) for t in possible_turns(strip, p)] for p in members]
    sizes = list(dict.fromkeys(size for of_panel in ways for size in of_panel))
    across, along = strip.repeat.across, strip.repeat.along
    rests = [0, *(r + strip.gap for r in _rests(strip, others, along=True))]
    rests += [y for f in strip.flaws for y in f.rests_along]
    centres = _centres_across(strip, ways, others) if across else [0]
    if not centres:
        name = members[0].id
        raise CannotLay(name, "no-motif-column", f"{name} and what goes on from it have no place in the repeat")
    found: dict[Place, None] = {}
    for rest, cx, size in product(rests, centres, sizes):
        first = -((cx - size.x) // across) if across else 0
        count = _columns(strip.width, across, cx, size) if across else 1
        for i in range(first, first + count):
            cy = size.y - i * strip.repeat.drop + rest
            found.setdefault((cx, cy % along if along else 0), None)
    return tuple(found)[:MOST_PLACES]


class _Sized(NamedTuple):
    """How large a panel lies, and where the point lies that it shares with its group, from its lower left corner."""

    w: int
    h: int
    x: int
    y: int


def _centres_across(strip: Strip, ways: list[list[_Sized]], others: list[Panel]) -> list[int]:
    """Where the centres of alike panels may lie across, modulo the repeat: flush with an edge, a panel, a flaw.

    Places that leave every panel a column in every turn come first; the middle of the cloth is always one of them
    where all have the point at their centres, and so is the left edge for panels of one width. If any place leaves
    every panel a column, one does at which some panel is flush with the left edge: move all of them there till one is.
    """
    assert strip.repeat is not None
    across, width, gap = strip.repeat.across, strip.width, strip.gap
    across_only = list(dict.fromkeys(size._replace(h=0, y=0) for sizes in ways for size in sizes))
    centres: dict[int, None] = {}
    for size in across_only:
        lefts = [0]
        if others or strip.flaws:
            lefts += [width - size.w, *(r + gap for r in _rests(strip, others, along=False))]
            lefts += [m.ox - size.x for m in strip.motifs] + [x for f in strip.flaws for x in f.rests_across]
        centres.update(dict.fromkeys((left + size.x) % across for left in lefts))
    if others or len(across_only) > 1:
        centres[(width // 2) % across] = None

    def in_every_turn(centre: int) -> bool:
        return all(_columns(width, across, centre, size) for size in across_only)

    def abreast(centre: int) -> int:
        return sum(_abreast(width, across, centre, size, gap) for size in across_only)

    fitting = [c for c in centres if all(any(_columns(width, across, c, size) for size in sizes) for sizes in ways)]
    return sorted(fitting, key=lambda c: (not in_every_turn(c), -abreast(c)))


def _columns(width: int, across: int, centre: int, size: _Sized) -> int:
    """How many columns there are for a panel with its point at ``centre`` modulo the repeat."""
    left = (centre - size.x) % across
    return (width - size.w - left) // across + 1 if left <= width - size.w else 0


def _abreast(width: int, across: int, centre: int, size: _Sized, gap: int) -> int:
    """How many such panels lie side by side."""
    pitch = -(-(size.w + gap) // across)
    return -(-_columns(width, across, centre, size) // pitch)
