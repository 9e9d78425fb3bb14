# Proves how short no plan can be: lower bounds on the length, each a theorem with a certificate to check it by.
"""Lower bounds with certificates.

Every bound is a theorem about any valid plan; its certificate is plain JSON that a checker can verify without knowing
how it was found. W and L stand for width and length with one gap added, and all panel sizes include the gap, so the
bound on the true length is one gap less. A *way* of a panel is one of its allowed turns, with the columns its motif
leaves it; where columns of a way differ in their residue along the repeat, each residue may count as a way by itself.
Weights are listed as ``{"panel", "w", "h", "weight": [n, d]}`` (true sizes as it lies, and ``"residue"`` where ways
are told apart by it); a way that is not listed weighs nothing.

``tallest``: ``{"panel"}``. This panel alone needs so much, counted from the first row its motif allows.

``area``: ``{}``. The areas of all panels, divided by the width.

``rows``: ``{"weights", "columns"}``. Weights of the ways such that no set that fits side by side weighs more than 1.
A line across the cloth crosses such a set, so integrating along the roll, L is at least the sum over panels of the
least weight × length of their ways. ``columns`` 1: side by side in the columns of the repeat; 0: by width alone.
(The bar relaxation; Scheithauer, *EJOR* 112 (1999); its dual-feasible functions: Fekete and Schepers 2004.)

``wider-than-half``: the same with weight 1 for panels wider than half the cloth: their lengths add up.

``stacks``: ``{"below", "weights"}``. The same along the roll: weights such that no set that fits one behind the other
within ``below`` (exclusive) weighs more than 1, while weight × width adds up to more than W. So L ≥ ``below``.

``spaced-rows``: ``{"distance", "rows", "weights", "columns"}``. Lines across at y = d - 1, 2d - 1, 3d - 1 … A panel
covers at least ⌊h/d⌋ of them, a line is covered by a set that weighs at most 1; so ``rows`` lines are covered, and
L ≥ rows · d. This is what proves 12 panels, 5 across, to need 3 rows.

``residue-rows``: ``{"anchor", "distance", "first", "rows", "weights", "columns"}``. Lines at distance d = k·v for a
repeat v, at ``first`` modulo v. A way whose rows hang on the same anchor and start at residue r, δ = (first - r) mod v,
covers at least as many as it would starting δ + (k-1)·v before a line; others ⌊h/d⌋. If ``rows`` lines are covered
then L ≥ lead + (rows - 1)·d + tail. Lead: ``first`` + (k-1)·v where the start is measured; else the least δ of a way
that has weight (0 for one that does not hang on the anchor). Tail: the least ((h - δ - 1) mod v) + 1 of a way that
has weight (1 for one that does not hang on the anchor).

``possible-lengths``: ``{"length", "least": {"at_least", "name", "data"}}``. Push every panel down as far as it goes
and the last lies on a row of its motif, or on others piled up from the cut end, a side of a flaw or a motif row (if
no flaw has a slant). No such pile ends from the ``least`` length proven otherwise up to ``length`` (exclusive), so no
plan does.

``each-way``: ``{"cases": [{"turns", "left", "at_least", "name", "data"}, …]}``. A bound for each way in which the turn
groups can be turned and, where all panels are alike, for each panel that can lie leftmost; every plan is one of them.

``row-sections``: ``{"length", "states"}``. All schedules of bars along the roll that are shorter were searched (see
``sections``); where the bars lie across is left out, which only makes more of them possible.

``exhaustive``: ``{"length", "states"}``. All layouts shorter than ``length`` were searched (see ``active``).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import product

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.places import MOTIF, Setting, Variant, distinct_turns, kinds_of, possible_turns
from plumpline.layout.sections import Rule, SectionSearch
from plumpline.layout.sets import Bar, Bars, ListedSets, SizedSets, TooManySets
from plumpline.layout.simplex import Cover, Demand, fractional_cover
from plumpline.layout.strip import Json, Strip

MOST_CASES = 8
MOST_WAYS = 60
MOST_RESIDUES = 3
MOST_LINES = 24
MOST_ENDS = 4_000
MOST_SECTION_WAYS = 30


@dataclass(frozen=True)
class Bound:
    """A length no plan can be below, the name of the theorem and its certificate."""

    at_least: int
    name: str
    data: dict[str, Json]


@dataclass(frozen=True)
class Case:
    """One way of choosing turns (and, if all panels are alike, the leftmost one), in which a bound is sought."""

    turns: tuple[tuple[int, ...], ...]
    turned: tuple[tuple[str, int], ...] = ()
    left: tuple[int, int] | None = None


@dataclass(frozen=True)
class Way:
    """A way of a kind: extents with the gap, columns or None, the residues its rows may have (empty: any row)."""

    w: int
    h: int
    columns: tuple[int, ...] | None
    residues: tuple[int, ...]
    step: int
    anchor: str


@dataclass(frozen=True)
class Ways:
    """The ways of all kinds, numbered through, and the panels of each kind."""

    strip: Strip
    ways: tuple[Way, ...]
    kinds: tuple[tuple[int, tuple[int, ...]], ...]  # copies, ways
    panels: tuple[tuple[str, ...], ...]  # ids of the panels of each kind

    @property
    def room(self) -> int:
        """The usable width with one gap added."""
        return self.strip.width + self.strip.gap

    def measured(self, anchor: str) -> bool:
        """Whether the rows that hang on an anchor are known from the cut end."""
        return anchor == MOTIF and self.strip.start == "measured"


def cases_of(strip: Strip) -> tuple[Case, ...]:
    """The cases to bound one by one; a single case that allows every choice where they would be too many."""
    groups = sorted({p.turn_group for p in strip.panels if p.turn_group is not None})
    options = [distinct_turns(strip, group) for group in groups]
    count = 1
    for choice in options:
        count *= len(choice)
    everything = tuple(possible_turns(strip, p) for p in strip.panels)
    if count > MOST_CASES:
        return (Case(everything),)
    cases: list[Case] = []
    for chosen in product(*options):
        turned = dict(zip(groups, chosen, strict=True))
        turns = tuple(
            everything[i] if p.turn_group is None else (turned[p.turn_group],) for i, p in enumerate(strip.panels)
        )
        cases += _leftmost(strip, turns, tuple(turned.items()))
    return tuple(cases)


def _leftmost(
    strip: Strip, turns: tuple[tuple[int, ...], ...], turned: tuple[tuple[str, int], ...]
) -> list[Case]:
    """The case itself, or one for each panel that can lie leftmost if all are alike on a repeat across."""
    if alone_group(strip) is None:
        return [Case(turns, turned)]
    assert strip.repeat is not None
    lefts: dict[int, tuple[int, int]] = {}
    for index, panel in enumerate(strip.panels):
        for turn in turns[index]:
            lefts.setdefault(panel.middle(turn)[0] % strip.repeat.across, (index, turn))
    if len(lefts) > MOST_CASES:
        return [Case(turns, turned)]
    fitting = [Case(turns, turned, left) for left in lefts.values()]
    return [case for case in fitting if _ways_or_none(strip, case) is not None]


def alone_group(strip: Strip) -> str | None:
    """The group that all panels belong to, where the repeat binds it across; else None."""
    groups = {p.group for p in strip.panels}
    if strip.repeat is None or not strip.repeat.across or len(groups) != 1 or None in groups or strip.flaws:
        return None
    return strip.panels[0].group


def _ways_or_none(strip: Strip, case: Case) -> Ways | None:
    ways = ways_of(strip, case)
    return ways if all(of for _, of in ways.kinds) else None


def ways_of(strip: Strip, case: Case) -> Ways:
    """The ways of a case, equal kinds joined."""
    joined: dict[tuple[Way, ...], list[int]] = {}
    for index in range(len(strip.panels)):
        ways = _joined(way for variant in _variants(strip, case, index) for way in _split(variant))
        joined.setdefault(ways, []).append(index)
    numbered: list[Way] = []
    kinds, panels = [], []
    for ways_of_kind, members in joined.items():
        numbers = tuple(range(len(numbered), len(numbered) + len(ways_of_kind)))
        numbered += ways_of_kind
        kinds.append((sum(strip.panels[i].qty for i in members), numbers))
        panels.append(tuple(strip.panels[i].id for i in members))
    return Ways(strip, tuple(numbered), tuple(kinds), tuple(panels))


def _variants(strip: Strip, case: Case, index: int) -> Iterator[Variant]:
    """The variants of one panel at phase 0; alike panels relative to the leftmost, or bound along only, or free."""
    panel = strip.panels[index]
    one = Strip(strip.width, (panel,), strip.repeat, strip.motifs, gap=strip.gap)
    places: tuple[tuple[str, tuple[int, int]], ...] = ()
    repeat = strip.repeat
    if panel.group is not None and case.left is not None:
        left, turn = case.left
        places = ((panel.group, (strip.panels[left].middle(turn)[0], 0)),)
    elif panel.group is not None and repeat is not None and repeat.along > 1 and not (repeat.across and repeat.drop):
        along = type(repeat)(0, repeat.along)
        one = Strip(strip.width, (panel,), along, gap=strip.gap)
        places = ((panel.group, (0, 0)),)
    for kind in kinds_of(one, Setting((case.turns[index],), 0, places)):
        yield from kind.variants


def _split(variant: Variant) -> Iterator[Way]:
    """A variant as ways: one for each residue of its columns while they are few, else one with all of them."""
    v = variant
    if v.columns is None:
        yield Way(v.w, v.h, None, (v.residue,) if v.step > 1 else (), v.step, v.anchor)
        return
    residues = sorted({r for _, r in v.columns})
    if v.step == 1 or len(residues) > MOST_RESIDUES:
        yield Way(v.w, v.h, tuple(x for x, _ in v.columns), tuple(residues) if v.step > 1 else (), v.step, v.anchor)
        return
    for residue in residues:
        columns = tuple(x for x, r in v.columns if r == residue)
        yield Way(v.w, v.h, columns, (residue,), v.step, v.anchor)


def _joined(ways: Iterator[Way]) -> tuple[Way, ...]:
    """Ways that differ in their columns alone as one way with the columns of all."""
    found: dict[Way, dict[int, None]] = {}
    for way in ways:
        alone = way if way.columns is None else replace(way, columns=())
        found.setdefault(alone, {}).update(dict.fromkeys(way.columns or ()))
    return tuple(w if w.columns is None else replace(w, columns=tuple(sorted(c))) for w, c in found.items())


# -- the bounds of one case ---------------------------------------------------------------------------------------


class CaseBounds:
    """All bounds of one case. The sets that fit side by side are found once and shared."""

    def __init__(self, ways: Ways, budget: Budget) -> None:
        self.ways = ways
        self.budget = budget
        self.gap = ways.strip.gap
        self.columns = int(any(w.columns is not None for w in ways.ways))
        self.few = len(ways.ways) <= MOST_WAYS
        self._rows: ListedSets | SizedSets | None = None
        self._sections: SectionSearch | None = None

    @property
    def rows(self) -> ListedSets | SizedSets:
        """The sets that fit side by side: in their columns, or by width alone where these are too many to list."""
        if self._rows is None:
            bars = tuple(Bar(w.w, w.columns) for w in self.ways.ways)
            try:
                self._rows = ListedSets(Bars(self.ways.room, bars, self.ways.kinds), self.budget)
            except TooManySets:
                self.columns = 0
                plain = tuple(Bar(w.w) for w in self.ways.ways)
                self._rows = SizedSets(Bars(self.ways.room, plain, self.ways.kinds), self.budget)
        return self._rows

    def quick(self) -> Bound:
        """The best bound that needs no programme solved."""
        return max((self.tallest(), self.area(), self.wider_than_half()), key=lambda b: b.at_least)

    def tallest(self) -> Bound:
        """The panel that needs most by itself."""
        best, which = 0, 0
        for kind, (_, ways) in enumerate(self.ways.kinds):
            least = min(self._first_row(self.ways.ways[w]) + self.ways.ways[w].h for w in ways)
            if least > best:
                best, which = least, kind
        return Bound(best - self.gap, "tallest", {"panel": self.ways.panels[which][0]})

    def _first_row(self, way: Way) -> int:
        return min(way.residues, default=0) if self.ways.measured(way.anchor) else 0

    def area(self) -> Bound:
        """The area of all panels spread over the width."""
        ways = self.ways.ways
        area = sum(copies * min(ways[w].w * ways[w].h for w in of) for copies, of in self.ways.kinds)
        return Bound(-(-area // self.ways.room) - self.gap, "area", {})

    def wider_than_half(self) -> Bound:
        """The lengths of all panels wider than half the cloth."""
        half = self.ways.room // 2
        weights = [Fraction(0)] * len(self.ways.ways)
        total = 0
        for copies, of in self.ways.kinds:
            if all(self.ways.ways[w].w > half for w in of):
                total += copies * min(self.ways.ways[w].h for w in of)
                for w in of:
                    weights[w] = Fraction(1)
        return Bound(total - self.gap, "wider-than-half", {"columns": 0, "weights": self._listed(weights)})

    def by_rows(self) -> Bound | None:
        """The rows bound; None where there are too many sets."""
        cover = self._cover([w.h for w in self.ways.ways])
        if cover is None:
            return None
        data: dict[str, Json] = {"columns": self.columns, "weights": self._listed(cover.weights)}
        return Bound(_ceil(cover.value) - self.gap, "rows", data)

    def _cover(self, needs: Sequence[int]) -> Cover | None:
        demands = [
            Demand(copies, of, tuple(needs[w] for w in of))
            for copies, of in self.ways.kinds
            if all(needs[w] > 0 for w in of)
        ]
        if not demands or not self.few:
            return None
        try:
            return fractional_cover(demands, len(self.ways.ways), self.rows.heaviest, self.budget)
        except TooManySets:
            self.few = False
            return None

    def _listed(self, weights: Sequence[Fraction]) -> list[Json]:
        listed: list[Json] = []
        for (_, of), ids in zip(self.ways.kinds, self.ways.panels, strict=True):
            for number in of:
                way, weight = self.ways.ways[number], weights[number]
                for panel in ids if weight else ():
                    entry: dict[str, Json] = {"panel": panel, "w": way.w - self.gap, "h": way.h - self.gap}
                    if len(way.residues) == 1:
                        entry["residue"] = way.residues[0]
                    listed.append({**entry, "weight": [weight.numerator, weight.denominator]})
        return listed

    def by_spaced_rows(self, above: int) -> Iterator[Bound]:
        """Spaced rows at the lengths of the panels and their halves and thirds, where they can beat ``above``."""
        lengths = sorted({min(self.ways.ways[w].h for w in of) for _, of in self.ways.kinds}, reverse=True)
        for distance in list(dict.fromkeys(h // part for part in (1, 2, 3) for h in lengths if h >= part))[
            :MOST_LINES
        ]:
            bound = self._spaced(distance, above)
            if bound is not None:
                yield bound

    def _spaced(self, distance: int, above: int) -> Bound | None:
        needs = [w.h // distance for w in self.ways.ways]
        if not self._may_beat(needs, distance, above + self.gap):
            return None
        cover = self._cover(needs)
        if cover is None:
            return None
        rows = _ceil(cover.value)
        data: dict[str, Json] = {
            "distance": distance, "rows": rows, "columns": self.columns, "weights": self._listed(cover.weights)
        }
        return Bound(rows * distance - self.gap, "spaced-rows", data)

    def _may_beat(self, needs: Sequence[int], distance: int, above: int) -> bool:
        """Whether the rows could come to more than ``above`` even with one panel to a row."""
        most = sum(copies * min(needs[w] for w in of) for copies, of in self.ways.kinds)
        return (most + 1) * distance > above

    def by_residue_rows(self, above: int) -> Iterator[Bound]:
        """Rows by residue of the repeat, for every anchor, where they can beat ``above``."""
        anchors = dict.fromkeys(w.anchor for w in self.ways.ways if w.step > 1)
        for anchor in anchors:
            hanging = [w for w in self.ways.ways if w.anchor == anchor and w.step > 1]
            step = hanging[0].step
            spans = sorted({-(-w.h // step) for w in hanging})
            firsts = dict.fromkeys((r + edge) % step for w in hanging for r in w.residues for edge in (w.h - 1, 0))
            for k, first in list(product(spans, firsts))[:MOST_LINES]:
                bound = self._residue(anchor, step, k, first, above)
                if bound is not None:
                    yield bound

    def _residue(self, anchor: str, step: int, k: int, first: int, above: int) -> Bound | None:
        distance = k * step
        needs = [_covered(w, anchor, step, distance, first) for w in self.ways.ways]
        if not self._may_beat(needs, distance, above + self.gap):
            return None
        cover = self._cover(needs)
        if cover is None or not cover.value:
            return None
        rows = _ceil(cover.value)
        weighty = [w for w, weight in zip(self.ways.ways, cover.weights, strict=True) if weight]
        lead = (
            first + distance - step
            if self.ways.measured(anchor)
            else min(min(_gaps(w, anchor, step, first)) for w in weighty)
        )
        tail = min(min((w.h - g - 1) % step + 1 if w.anchor == anchor else 1 for g in _gaps(w, anchor, step, first))
                   for w in weighty)
        data: dict[str, Json] = {
            "anchor": anchor, "distance": distance, "first": first, "rows": rows, "columns": self.columns,
            "weights": self._listed(cover.weights),
        }
        return Bound(lead + (rows - 1) * distance + tail - self.gap, "residue-rows", data)

    def by_sections(self, length: int) -> Slices[Bound | None]:
        """The row sections bound, raised towards ``length`` as far as the budget allows; None for too many ways."""
        if not self.few or len(self.ways.ways) > MOST_SECTION_WAYS:
            return None
        if self._sections is None:
            self._sections = self._section_search()
        try:
            yield from self._sections.run(length + self.gap)
        except TooManySets:
            self.few = False
        least = self._sections.at_least - self.gap
        return Bound(least, "row-sections", {"length": least, "states": self._sections.states})

    def _section_search(self) -> SectionSearch:
        ways = self.ways.ways
        bars = tuple(Bar(w.w, w.columns) for w in ways)
        rules = tuple(
            Rule(w.h, w.residues, w.step) if w.step > 1 and self.ways.measured(w.anchor) else Rule(w.h) for w in ways
        )
        return SectionSearch(Bars(self.ways.room, bars, self.ways.kinds), rules, self.rows.heaviest, self.budget)

    def possible(self, bound: Bound, length: int) -> Bound:
        """Round a bound up to the least length that panels piled up can have; ``length`` if none is shorter."""
        sums = self._pile_ends(length + self.gap)
        if sums is None:
            return bound
        least = min((s - self.gap for s in sums if s - self.gap >= bound.at_least), default=length)
        least = min(least, length)
        if least == bound.at_least:
            return bound
        proof: dict[str, Json] = {"at_least": bound.at_least, "name": bound.name, "data": bound.data}
        return Bound(least, "possible-lengths", {"length": least, "least": proof})

    def _pile_ends(self, most: int) -> list[int] | None:
        """Where piles of panels can end below ``most``; None where rows are not known or there are too many."""
        ways = self.ways.ways
        flaws = self.ways.strip.flaws
        if any(w.step > 1 and not self.ways.measured(w.anchor) for w in ways) or any(f.slants for f in flaws):
            return None
        ends = dict.fromkeys([0] + [y for f in flaws for y in f.rests_along if y > 0])
        for w in ways:
            if w.step > 1 and most // w.step <= MOST_ENDS:
                ends.update(dict.fromkeys(e for r in w.residues for e in range(r + w.h, most, w.step)))
        for copies, of in self.ways.kinds:
            lengths = [ways[w].h for w in of if ways[w].step == 1]
            for _ in range(copies if lengths else 0):
                more = [e + h for e in ends for h in lengths if e + h < most and e + h not in ends]
                ends.update(dict.fromkeys(more))
                self.budget.spend(len(ends) // 4)
                if len(ends) > MOST_ENDS or self.budget.over:
                    return None
                if not more:
                    break
        return list(ends)

    def by_stacks(self, below: int) -> Bound | None:
        """The stacks bound against lengths under ``below``; None if they are not refuted."""
        room = below - 1 + self.gap
        bars = tuple(Bar(w.h) for w in self.ways.ways)
        if len(bars) > MOST_WAYS:
            return None
        demands = [Demand(copies, of, tuple(self.ways.ways[w].w for w in of)) for copies, of in self.ways.kinds]
        if any(self.ways.ways[w].h > room for _, of in self.ways.kinds for w in of):
            return None
        try:
            sets = ListedSets(Bars(room, bars, self.ways.kinds), self.budget)
            cover = fractional_cover(demands, len(bars), sets.heaviest, self.budget)
        except TooManySets:
            return None
        if cover.value <= self.ways.room:
            return None
        return Bound(below, "stacks", {"below": below, "weights": self._listed(cover.weights)})


def _covered(way: Way, anchor: str, step: int, distance: int, first: int) -> int:
    """How many lines a way covers at least."""
    if way.anchor != anchor or way.step != step:
        return way.h // distance
    before = max(_gaps(way, anchor, step, first)) + distance - step
    return (way.h - before - 1) // distance + 1 if way.h > before else 0


def _gaps(way: Way, anchor: str, step: int, first: int) -> list[int]:
    """How far before a line (modulo the repeat) the way can start; 0 for one that does not hang on the anchor."""
    return [(first - r) % step for r in way.residues] if way.anchor == anchor else [0]


def _ceil(value: Fraction) -> int:
    return -(-value.numerator // value.denominator)


# -- all cases together -------------------------------------------------------------------------------------------


class Bounds:
    """Bounds of a strip over all its cases: the least of the cases' own best bounds."""

    def __init__(self, strip: Strip, budget: Budget) -> None:
        self.budget = budget
        self.cases = cases_of(strip)
        self.strip = strip
        self.of_case = [CaseBounds(ways_of(strip, case), budget) for case in self.cases]
        self.best = [bounds.quick() for bounds in self.of_case]

    def strengthen(self, length: int) -> Slices[None]:
        """Solve the programmes of every case that does not reach ``length`` yet."""
        for index, bounds in enumerate(self.of_case):
            self._offer(index, bounds.by_rows())
            yield
            for series in (bounds.by_residue_rows, bounds.by_spaced_rows):
                if self.best[index].at_least >= length or self.budget.over:
                    break
                for bound in series(self.best[index].at_least):
                    self._offer(index, bound)
                    yield

    def section(self, length: int) -> Slices[None]:
        """Raise the cases that do not reach ``length`` by the search over row sections."""
        for index, bounds in enumerate(self.of_case):
            if self.best[index].at_least < length and not self.budget.over:
                self._offer(index, (yield from bounds.by_sections(length)))

    def stack(self, length: int) -> Slices[None]:
        """Raise the cases that do not reach ``length`` by the stacks bound, halving the interval."""
        for index, bounds in enumerate(self.of_case):
            low, high = self.best[index].at_least + 1, length
            while low <= high and not self.budget.over:
                below = high if high == length else (low + high) // 2
                bound = bounds.by_stacks(below)
                self._offer(index, bound)
                yield
                low, high = (below + 1, high) if bound is not None else (low, below - 1)

    def round_up(self, length: int) -> None:
        """Round the bound of every case up to a length that is possible at all."""
        for index, bounds in enumerate(self.of_case):
            if self.best[index].at_least < length:
                self.best[index] = bounds.possible(self.best[index], length)

    def _offer(self, index: int, bound: Bound | None) -> None:
        if bound is not None and bound.at_least > self.best[index].at_least:
            self.best[index] = bound

    def turned(self, turns: Sequence[tuple[int, ...]]) -> int:
        """The length no plan can be below that has its panels in these turns; 0 where such plans are no case."""
        cases = zip(self.cases, self.best, strict=True)
        return min((bound.at_least for case, bound in cases if case.turns == turns), default=0)

    def total(self) -> Bound:
        """The bound on the strip, with the certificates of all cases where there are several."""
        if len(self.cases) == 1 and self.cases[0].left is None and not self.cases[0].turned:
            return self.best[0]
        least = min(bound.at_least for bound in self.best)
        cases: list[Json] = []
        for case, bound in zip(self.cases, self.best, strict=True):
            left: dict[str, Json] = {}
            if case.left is not None:
                left = {"panel": self.strip.panels[case.left[0]].id, "turn": case.left[1]}
            cases.append({
                "turns": dict(case.turned), "left": left,
                "at_least": bound.at_least, "name": bound.name, "data": bound.data,
            })
        return Bound(least, "each-way", {"cases": cases})
