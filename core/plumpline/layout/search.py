# Improves a layout by trying other orders of the panels and other settings, within a budget of counted work.
"""Iterated local search on the order of the panels (Lourenço, Martin and Stützle 2003; for strip packing: Burke,
Kendall and Whitwell, *INFORMS Journal on Computing* 21 (2009) 505-516).

The order is what is searched, a decoder of ``skyline`` makes the layout; swaps and moves in the order are kept if
the layout overshoots the length to beat no more than before, and after a run without success the best order is
shaken. Two decoders share the work: the best-fit rule over an order of kinds, which is strong for many sizes, and
lowest places over an order of single panels, which is needed for few sizes and for panels bound to the repeat.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from math import gcd
from random import Random
from typing import Literal

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.choices import Choice, Choices
from plumpline.layout.desk import Desk, Item, Layout, Spot
from plumpline.layout.niches import best_fit, fill_niches, first_fit
from plumpline.layout.places import kinds_of
from plumpline.layout.skyline import lowest_places
from plumpline.layout.strip import Strip

Decoder = Literal["best fit", "first fit", "lowest"]

UNLIMITED = 1 << 200
TURN = 40
LEADS = 4


@dataclass
class Best:
    """The shortest layout so far, and the length nothing can be below."""

    desk: Desk
    spots: tuple[Spot, ...]
    length: int
    at_least: int = 0


@dataclass
class Search:
    """Everything a search shares: desks already set up, the budget, the chance; ``better`` hears of every new best.

    ``enough``, where it is above 0, is a length that will do: only whether it can be kept is asked then.
    """

    strip: Strip
    choices: Choices
    budget: Budget
    random: Random
    better: Callable[[], None]
    enough: int = 0
    desks: dict[Choice, Desk | None] = field(default_factory=dict)
    best: Best | None = None

    def desk(self, choice: Choice) -> Desk:
        """The strip under a choice that is possible."""
        desk = self.desk_if_possible(choice)
        assert desk is not None
        return desk

    def desk_if_possible(self, choice: Choice) -> Desk | None:
        """The strip under a choice; None if it leaves some panel no place, its group being turned otherwise."""
        if choice not in self.desks:
            setting = self.choices.setting(choice)
            kinds = kinds_of(self.strip, setting)
            desk = Desk(self.strip, setting, kinds, self.strip.width + self.strip.gap)
            self.desks[choice] = desk if all(kind.variants for kind in kinds) else None
            self.budget.spend(20 * len(kinds))
        return self.desks[choice]

    def offer(self, desk: Desk, spots: tuple[Spot, ...]) -> bool:
        """Keep a layout if it is the shortest so far."""
        length = desk.length(spots)
        if self.best is not None and length >= self.best.length:
            return False
        self.best = Best(desk, spots, length, self.best.at_least if self.best else 0)
        self.better()
        return True

    @property
    def to_beat(self) -> int:
        """What a layout has to be below to be looked for: the best length, or the first that is more than enough."""
        assert self.best is not None
        return min(self.best.length, self.enough + 1) if self.enough else self.best.length

    @cached_property
    def step(self) -> int:
        """What all lengths are whole numbers of, gap included, where free panels are pushed towards the cut end."""
        assert self.best is not None
        panels = self.strip.panels if self.best.desk.free else ()
        return gcd(*(p.extents(turn)[1] + self.strip.gap for p in panels for turn in p.turns)) or 1

    @property
    def aim(self) -> int:
        """The longest length below ``to_beat`` that is possible at all."""
        gap = self.strip.gap
        return (self.to_beat - 1 + gap) // self.step * self.step - gap

    @property
    def over(self) -> bool:
        """Whether to stop: the budget is spent, the best is enough, or nothing below ``to_beat`` is possible."""
        best = self.best
        if self.budget.over or best is None:
            return self.budget.over
        return best.length <= self.enough or self.to_beat <= best.at_least


def share(search: Search, tools: Sequence[Slices[None]], odds: Sequence[int]) -> Slices[None]:
    """Let the tools work in turns until the search or all of them are over, the longer the more often they succeed.

    Every turn goes to the tool that has had the least work for each of its successes, ``odds`` being those that it is
    credited with from the start.
    """
    spent, wins = [0] * len(tools), list(odds)
    going, at_end = list(range(len(tools))), object()
    while going and not search.over:
        assert search.best is not None
        due = min(going, key=lambda t: spent[t] / wins[t])
        before, length = search.budget.spent, search.best.length
        if next(tools[due], at_end) is at_end:
            going.remove(due)
        spent[due] += search.budget.spent - before
        wins[due] += search.best.length < length
        yield


def start_orders(desk: Desk) -> list[list[int]]:
    """Orders of the kinds to begin with: by length, by width, by area, by their longer side."""
    size = [max((v.h, v.w) for v in kind.variants) for kind in desk.kinds]
    kinds = range(len(size))
    return [
        sorted(kinds, key=lambda k: (-size[k][0], -size[k][1])),
        sorted(kinds, key=lambda k: (-size[k][1], -size[k][0])),
        sorted(kinds, key=lambda k: (-size[k][0] * size[k][1], k)),
        sorted(kinds, key=lambda k: (-max(size[k]), -min(size[k]))),
    ]


def single_items(desk: Desk, order: list[int]) -> list[Item]:
    """An order of kinds as an order of single panels."""
    return [(k, -1) for k in order for _ in range(desk.kinds[k].qty)]


def decoders(desk: Desk) -> tuple[Decoder, ...]:
    """The decoders that suit a desk: niches for free panels, lowest places for all others."""
    if not desk.free:
        return ("lowest",)
    return ("best fit", "first fit") if len(desk.kinds) > 1 else ("first fit",)


def items_of(desk: Desk, decoder: Decoder, order: list[int]) -> list[Item]:
    """The items a decoder wants: each kind once for the best fit, else every panel."""
    return [(k, -1) for k in order] if decoder == "best fit" else single_items(desk, order)


def decode(
    desk: Desk, decoder: Decoder, items: list[Item], target: int, limit: int, budget: Budget
) -> Layout | None:
    """The layout a decoder makes of the items, None if it overshoots ``target`` by more than ``limit``."""
    if decoder == "lowest":
        return lowest_places(desk, items, target, limit, budget)
    queue = best_fit(desk, items) if decoder == "best fit" else first_fit(desk, items)
    return fill_niches(desk, queue, target, limit, budget)


def lay_starts(search: Search) -> Slices[list[tuple[int, Choice]]]:
    """Lay every setting by the first order, the best by all orders; the settings with their lengths, best first."""
    tried: list[tuple[int, Choice]] = []
    for choice in search.choices.worth_trying():
        if tried and search.budget.over:
            break
        if search.desk_if_possible(choice) is not None:
            tried.append((_lay(search, choice, 1), choice))
            yield
    tried.sort()
    for _, choice in tried[:3]:
        if not search.budget.over:
            _lay(search, choice, 4)
            yield
    return tried


def _lay(search: Search, choice: Choice, orders: int) -> int:
    """The least length of some start orders under a choice."""
    desk = search.desk(choice)
    lengths = []
    for order in start_orders(desk)[:orders]:
        for decoder in decoders(desk):
            layout = decode(desk, decoder, items_of(desk, decoder, order), 0, UNLIMITED, search.budget)
            assert layout is not None
            search.offer(desk, layout.spots)
            lengths.append(desk.length(layout.spots))
    return min(lengths)


class Climb:
    """One local search: a choice, an order of items, and how far its layout overshoots the length to beat."""

    def __init__(self, search: Search, choice: Choice, decoder: Decoder) -> None:
        self.search = search
        self.choice = choice
        self.decoder = decoder
        self.items: list[Item] = []
        self.overshoot = UNLIMITED
        self.target = -1
        self.kept: list[Item] = []
        self.kept_choice = choice
        self.kept_overshoot = UNLIMITED
        self.stalled = 0
        self._begin()

    @property
    def desk(self) -> Desk:
        """The desk of the present choice."""
        return self.search.desk(self.choice)

    def climb(self, steps: int) -> Slices[None]:
        """Try ``steps`` changes, shaking the order whenever none has helped for long."""
        self._aim()
        for _ in range(steps):
            if self.search.over:
                return
            choice, items = self._changed()
            layout = self._decode(choice, items, self.overshoot)
            self.stalled += 1
            if layout is not None:
                if layout.overshoot < self.overshoot:
                    self.stalled = 0
                self._accept(choice, items, layout)
            if self.stalled > 50 + 4 * len(self.items):
                self._shake()
            if self.search.budget.slice_done():
                yield

    def _begin(self) -> None:
        """Start from the start order with the least overshoot."""
        self._aim()
        for order in start_orders(self.desk):
            items = items_of(self.desk, self.decoder, order)
            layout = self._decode(self.choice, items, UNLIMITED)
            if layout is not None and (not self.items or layout.overshoot < self.overshoot):
                self._accept(self.choice, items, layout)

    def _aim(self) -> None:
        """Aim at the next shorter length."""
        if self.target != self.search.aim:
            self.target = self.search.aim
            self.overshoot = self.kept_overshoot = UNLIMITED
            if self.items:
                layout = self._decode(self.choice, self.items, UNLIMITED)
                assert layout is not None
                self.overshoot = self.kept_overshoot = layout.overshoot
                self.kept, self.kept_choice = self.items, self.choice

    def _decode(self, choice: Choice, items: list[Item], limit: int) -> Layout | None:
        return decode(self.search.desk(choice), self.decoder, items, self.target, limit, self.search.budget)

    def _accept(self, choice: Choice, items: list[Item], layout: Layout) -> None:
        self.choice, self.items, self.overshoot = choice, items, layout.overshoot
        if layout.overshoot < self.kept_overshoot:
            self.kept, self.kept_choice, self.kept_overshoot = items, choice, layout.overshoot
        if self.search.offer(self.desk, layout.spots) and not self.search.over:
            self._aim()

    def _changed(self) -> tuple[Choice, list[Item]]:
        """A neighbour: two items swapped, one moved, one turned, or another choice of setting."""
        random, items = self.search.random, list(self.items)
        chance = random.random()
        if chance < 0.05 and max(self.search.choices.sizes) > 1:
            choice = self.search.choices.changed(self.choice, random)
            if self.search.desk_if_possible(choice) is not None:
                return choice, self._carried(items, choice)
        i, j = int(random.random() * len(items)), int(random.random() * len(items))
        variants = self.desk.kinds[items[i][0]].variants
        if chance < 0.2 and len(variants) > 1 and self.decoder != "best fit":
            items[i] = (items[i][0], int(random.random() * (len(variants) + 1)) - 1)
        elif chance < 0.6:
            items[i], items[j] = items[j], items[i]
        else:
            items.insert(j, items.pop(i))
        return self.choice, items

    def _carried(self, items: list[Item], choice: Choice) -> list[Item]:
        """The same order of panels in the kinds of another choice."""
        if self.decoder == "best fit":
            return [(k, -1) for k in range(len(self.search.desk(choice).kinds))]
        kind_of = {p: k for k, kind in enumerate(self.search.desk(choice).kinds) for p, _ in kind.members}
        waiting = [[p for p, copies in kind.members for _ in range(copies)] for kind in self.desk.kinds]
        return [(kind_of[waiting[k].pop()], -1) for k, _ in items]

    def _shake(self) -> None:
        """Go on from the best order with a few items swapped."""
        random, items = self.search.random, list(self.kept)
        for _ in range(2 + len(items) // 12):
            i, j = int(random.random() * len(items)), int(random.random() * len(items))
            items[i], items[j] = items[j], items[i]
        layout = self._decode(self.kept_choice, items, UNLIMITED)
        assert layout is not None
        self._accept(self.kept_choice, items, layout)
        self.stalled = 0


def climb(search: Search, choices: Sequence[Choice]) -> Slices[None]:
    """Climb in turns from the given choices until the budget is spent or the plan proven."""
    climbs = []
    for choice in choices:
        for decoder in decoders(search.desk(choice)):
            if not search.over:
                climbs.append(Climb(search, choice, decoder))
                yield
    while climbs and not search.over:
        climbs.sort(key=lambda c: c.kept_overshoot)
        for rank, climb in enumerate(climbs):
            yield from climb.climb(TURN if rank else LEADS * TURN)
