# Lays panels of any shape by their true outlines: each takes the lowest free place, and the order is searched.
"""Bottom-left placement by no-fit polygons, and a local search on the order.

Each panel in turn takes, of the places that its turns, its columns, its rows and the flaws leave it, the one with the
lowest top, then the leftmost (bottom-left with no-fit polygons: Gomes and Oliveira, *EJOR* 141 (2002) 359-370). Places
looked at are the leftmost ones on a level with something laid, and for circles those resting on two laid circles; from
there a panel sinks and goes left until it does neither. A search swaps and moves panels in the order and turns single
ones; as in ``search``, orders are compared by how far they overshoot the length to beat. O(n·l) sections of no-fit
polygons for each panel, l levels being looked at.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import sqrt
from random import Random

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.outlines import Barred, first_free
from plumpline.layout.places import Column, Setting, kinds_of, possible_turns
from plumpline.layout.search import UNLIMITED
from plumpline.layout.shapes import Body, NoFit, body_of, boxed, no_fit_of
from plumpline.layout.strip import Placement, Plan, Strip

Laid = tuple[int, int, int]  # way, x, y
Item = tuple[int, int]  # panel, way (-1: whichever is best)

NEAR = 12
SINKS = 2


@dataclass(frozen=True)
class Way:
    """A panel turned one way: its extents, its columns or None for any x, the rule of its rows, what it covers.

    ``levels`` are the heights of its corners, those above its foot with the gap.
    """

    panel: int
    turn: int
    w: int
    h: int
    columns: tuple[Column, ...] | None
    residue: int
    step: int
    body: Body
    levels: tuple[int, ...]


class Nest:
    """All ways of the panels of a strip under the setting of a plan, and where each bars the others."""

    def __init__(self, strip: Strip, plan: Plan, budget: Budget) -> None:
        self.strip = strip
        self.budget = budget
        turns = {placed.panel: placed.turn for placed in plan.placements}
        setting = Setting((), plan.phase, tuple(plan.alike.items()))
        self.ways: list[Way] = []
        self.of_panel: list[list[int]] = []
        for index, panel in enumerate(strip.panels):
            common = None if panel.turn_group is None else turns[panel.id]
            ways = list(_ways(strip, index, setting, common))
            self.of_panel.append(list(range(len(self.ways), len(self.ways) + len(ways))))
            self.ways += ways
        self.flaws = [Body(flaw.parts) for flaw in strip.flaws]
        self._no_fits: dict[tuple[int, int], NoFit] = {}
        self._on_flaws: dict[int, list[NoFit]] = {}
        self.work = 0

    def no_fit(self, first: int, second: int) -> NoFit:
        """Where a way may not lie beside another."""
        pair = first, second
        if pair not in self._no_fits:
            self._no_fits[pair] = no_fit_of(self.ways[first].body, self.ways[second].body, self.strip.gap)
        return self._no_fits[pair]

    def on_flaws(self, way: int) -> list[NoFit]:
        """Where a way would touch a flaw."""
        if way not in self._on_flaws:
            self._on_flaws[way] = [no_fit_of(flaw, self.ways[way].body, 0) for flaw in self.flaws]
        return self._on_flaws[way]

    def rows(self, laid: Sequence[Laid], way: int, x: int) -> Iterator[Barred]:
        """The rows barred to a way at ``x``."""
        for other, left, y in laid:
            no_fit = self.no_fit(other, way)
            self.work += no_fit.cost
            for low, high in no_fit.rows(x - left):
                yield low + y, high + y
        for no_fit in self.on_flaws(way):
            yield from no_fit.rows(x)

    def columns(self, laid: Sequence[Laid], way: int, y: int) -> Iterator[Barred]:
        """The columns barred to a way at ``y``."""
        for other, x, bottom in laid:
            no_fit = self.no_fit(other, way)
            self.work += no_fit.cost
            for low, high in no_fit.columns(y - bottom):
                yield low + x, high + x
        for no_fit in self.on_flaws(way):
            yield from no_fit.columns(y)

    def lay(self, order: Sequence[Item], target: int, limit: int) -> Slices[tuple[list[Laid], int] | None]:
        """Give each item its lowest place: the places and their overshoot, None if it is above ``limit``."""
        laid: list[Laid] = []
        overshoot = 0
        for panel, wanted in order:
            ways = self.of_panel[panel] if wanted < 0 else [wanted]
            _, spot = min((self._key(spot), spot) for spot in (self._lowest(laid, way) for way in ways))
            laid.append(spot)
            overshoot += self.above(spot, target)
            self.budget.spend(self.work)
            self.work = 0
            if overshoot > limit or self.budget.over:
                return None
            if self.budget.slice_done():
                yield
        return laid, overshoot

    def above(self, spot: Laid, target: int) -> int:
        """How much of a place's box lies above a length."""
        way = self.ways[spot[0]]
        return way.w * max(spot[2] + way.h - max(spot[2], target), 0)

    def _key(self, spot: Laid) -> tuple[int, int]:
        way = self.ways[spot[0]]
        return spot[2] + way.h, spot[1] + way.w

    def _lowest(self, laid: Sequence[Laid], number: int) -> Laid:
        """The place of a way with the lowest top, then the leftmost."""
        way = self.ways[number]
        if way.columns is not None:
            y, x = min(
                (first_free(self.rows(laid, number, x), 0, residue, way.step), x) for x, residue in way.columns
            )
            return number, x, y
        best: tuple[int, int] | None = None
        for x in self._resting(laid, way):
            best = self._better(best, self._sunk(laid, number, x))
        for level in self._levels(laid):
            if best is not None and level > best[0]:
                break
            x = first_free(self.columns(laid, number, level), 0)
            if x + way.w <= self.strip.width:
                best = self._better(best, self._sunk(laid, number, x))
        assert best is not None
        return number, best[1], best[0]

    def _better(self, one: tuple[int, int] | None, other: tuple[int, int]) -> tuple[int, int]:
        return other if one is None else min(one, other)

    def _levels(self, laid: Sequence[Laid]) -> list[int]:
        """Heights at which a side of something laid begins or ends, from the cut end on."""
        levels = {flaw.y + flaw.h for flaw in self.strip.flaws}
        for number, _, y in laid:
            levels.update([y + height for height in self.ways[number].levels])
        return sorted(levels | {0})

    def _sunk(self, laid: Sequence[Laid], number: int, x: int) -> tuple[int, int]:
        """The lowest row at ``x``, from there to the left, and so on: (y, x)."""
        way = self.ways[number]
        y = first_free(self.rows(laid, number, x), 0, way.residue, way.step)
        for _ in range(SINKS):
            x = first_free(self.columns(laid, number, y), 0)
            y = first_free(self.rows(laid, number, x), 0, way.residue, way.step)
        return y, x

    def _resting(self, laid: Sequence[Laid], way: Way) -> Iterator[int]:
        """Where a circle rests on two of the circles laid last."""
        if not way.body.diameter:
            return
        rounds = [(self.ways[w], x, y) for w, x, y in laid if self.ways[w].body.diameter][-NEAR:]
        for i, (one, x, y) in enumerate(rounds):
            for other, a, b in rounds[:i]:
                found = _resting_on((x, y, one.w), (a, b, other.w), way.w, self.strip.gap)
                if found is not None and 0 <= found <= self.strip.width - way.w:
                    yield found

    def placements(self, laid: Sequence[Laid]) -> tuple[Placement, ...]:
        """The places as placements, from the cut end on; copies are counted in that order."""
        copies = [0] * len(self.strip.panels)
        placed = []
        for number, x, y in sorted(laid, key=lambda spot: (spot[2], spot[1])):
            way = self.ways[number]
            copies[way.panel] += 1
            panel = self.strip.panels[way.panel]
            placed.append(Placement(panel.id, copies[way.panel], x, y, way.w, way.h, way.turn))
        return tuple(placed)


def _ways(strip: Strip, index: int, setting: Setting, common: int | None) -> Iterator[Way]:
    """The ways of a panel that cover something different or lie in different places."""
    panel = strip.panels[index]
    box = boxed(replace(strip, panels=(panel,), flaws=()))
    seen: dict[tuple[object, ...], None] = {}
    for turn in possible_turns(box, box.panels[0]) if common is None else (common,):
        body = body_of(panel, turn)
        for kind in kinds_of(box, replace(setting, turns=((turn,),))):
            for v in kind.variants:
                key = (frozenset(map(frozenset, body.parts)), v.columns, v.residue, v.step)
                if key not in seen:
                    seen[key] = None
                    yield Way(
                        index, turn, v.w - strip.gap, v.h - strip.gap, v.columns, v.residue, v.step, body,
                        _levels_of(body, v.h - strip.gap, strip.gap),
                    )


def _levels_of(body: Body, h: int, gap: int) -> tuple[int, ...]:
    heights = {0, h} if body.diameter else {y for part in body.parts for _, y in part}
    return tuple(y + gap if y else 0 for y in sorted(heights))


def _resting_on(one: tuple[int, int, int], other: tuple[int, int, int], diameter: int, gap: int) -> int | None:
    """Where a circle lies that touches two others (x, y, diameter) from further along; None if it falls between."""
    (ax, ay, ad), (bx, by, bd) = one, other
    x1, y1, r1 = ax + ad / 2, ay + ad / 2, (ad + diameter) / 2 + gap
    x2, y2, r2 = bx + bd / 2, by + bd / 2, (bd + diameter) / 2 + gap
    dx, dy = x2 - x1, y2 - y1
    square = dx * dx + dy * dy
    if square == 0 or square > (r1 + r2) * (r1 + r2):
        return None
    along = (square + r1 * r1 - r2 * r2) / (2 * square)
    aside = sqrt(max(r1 * r1 / square - along * along, 0.0))
    return int(x1 + along * dx + (aside * -dy if dx >= 0 else aside * dy) - diameter / 2)


class NestSearch:
    """A search for shorter plans by the order in which panels are laid."""

    def __init__(self, nest: Nest, random: Random, plan: Plan) -> None:
        self.nest = nest
        self.random = random
        self.length = plan.length
        self.best: list[Laid] | None = None
        self.items: list[Item] = []
        self.overshoot = 0
        self.stalled = 0
        self.from_plan = self._order_of(plan.placements)

    def steps(self, at_least: int) -> Slices[None]:
        """Search until the budget is spent or the length proven; a panel by itself has but one order."""
        for order in self._starts():
            yield from self._try(order, UNLIMITED)
        while len(self.items) > 1 and not self.nest.budget.over and self.length > at_least:
            yield from self._try(self._changed(), self.overshoot)
            if self.stalled > 50 + 4 * len(self.items):
                self._shake()

    def _order_of(self, placements: Sequence[Placement]) -> list[Item]:
        index = {panel.id: i for i, panel in enumerate(self.nest.strip.panels)}
        return [(index[p.panel], -1) for p in sorted(placements, key=lambda p: (p.y, p.x))]

    def _starts(self) -> Iterator[list[Item]]:
        """Orders to begin with: as the panels lie already, by length, by width, by area."""
        yield self.from_plan
        panels = [self.nest.strip.panels[panel] for panel, _ in self.from_plan]
        for sizes in ([p.h for p in panels], [p.w for p in panels], [p.w * p.h for p in panels]):
            yield [item for _, item in sorted(zip(sizes, self.from_plan, strict=True), reverse=True)]

    def _try(self, items: list[Item], limit: int) -> Slices[None]:
        """Lay an order, keep it if it overshoots no more than the one before, and aim lower if it is shorter."""
        found = yield from self.nest.lay(items, self.length - 1, limit)
        self.stalled += 1
        if found is None:
            return
        laid, overshoot = found
        length = max(y + self.nest.ways[way].h for way, _, y in laid)
        if length < self.length:
            self.best, self.length = laid, length
            overshoot = sum(self.nest.above(spot, length - 1) for spot in laid)
        elif self.items and overshoot > self.overshoot:
            return
        if laid is self.best or overshoot < self.overshoot:
            self.stalled = 0
        self.items, self.overshoot = items, overshoot
        if laid is self.best:
            yield

    def _shake(self) -> None:
        """Go on from an order with a few items swapped."""
        for _ in range(2 + len(self.items) // 12):
            i, j = (int(self.random.random() * len(self.items)) for _ in range(2))
            self.items[i], self.items[j] = self.items[j], self.items[i]
        self.overshoot, self.stalled = UNLIMITED, 0

    def _changed(self) -> list[Item]:
        """A neighbour: two items swapped, one moved, or one turned."""
        random, items = self.random, list(self.items)
        chance = random.random()
        i, j = int(random.random() * len(items)), int(random.random() * len(items))
        ways = self.nest.of_panel[items[i][0]]
        if chance < 0.3 and len(ways) > 1:
            items[i] = items[i][0], [-1, *ways][int(random.random() * (len(ways) + 1))]
        elif chance < 0.6:
            items[i], items[j] = items[j], items[i]
        else:
            items.insert(j, items.pop(i))
        return items
