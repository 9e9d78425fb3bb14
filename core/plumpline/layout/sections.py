# Searches all ways to follow one row of panels by the next, along the roll: the exact step behind the bounds.
"""Row sections: how long the cloth must be if only what lies side by side on each line across it is looked at.

Every panel is a bar with a start and an end along the roll, and the bars that any line across the cloth crosses must
fit side by side (``sets``). Where the bars lie across, and that a panel keeps its place there, is left out, so the
least length of such a schedule is a lower bound on every plan. It is the first stage of the combinatorial Benders
method of Côté, Dell'Amico and Iori, *Operations Research* 62 (2014) 643-661, with starts that a measured repeat binds
to its rows; a schedule of bars is the bin packing with contiguity of Martello, Monaci and Vigo, *INFORMS J.
Computing* 15 (2003) 310-319. The same search turned by a quarter, over stacks, bounds the width.

A state is the time, the bars still left and those under way. At each event (a bar ends, or a row of the repeat is
reached) some of the bars left start; none can gain by starting between events, nor by waiting while it fits and ends
before the next one. States are taken best first (A*): dual weights of the covering programme (``simplex``) tell how
much is needed for what is left, and whenever that falls short of the truth for some state the programme is solved for
it and its weights serve all others too. The least need over the open states is a proven bound at any moment. Of two
states at one time that differ only in when bars end, one that is nowhere later is kept. Exponential at worst.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from itertools import islice
from math import gcd, lcm
from operator import le, mul
from typing import NamedTuple

from plumpline.layout.budget import Budget, Slices
from plumpline.layout.sets import Bars, Set, end_of
from plumpline.layout.simplex import Demand, Heaviest, fractional_cover

MOST_DUALS = 14
FIRST_PROGRAMME = 8
MOST_OPEN = 200_000
COMPARED = 12

Left = tuple[int, ...]  # bars left of each kind
Running = tuple[tuple[int, int], ...]  # (way, end) of the bars under way, sorted


@dataclass(frozen=True)
class Rule:
    """Where along the roll a way may start: anywhere, or on ``residues`` modulo ``step``."""

    length: int
    residues: tuple[int, ...] = ()
    step: int = 1

    def next_start(self, y: int) -> int:
        """The first row from ``y`` on at which it may start."""
        return min([y + (r - y) % self.step for r in self.residues]) if self.residues else y


class State(NamedTuple):
    """Where a schedule stands: all that starts before ``y`` is chosen, and ``across`` is the set that goes on."""

    y: int
    left: Left
    running: Running
    across: Set


@dataclass(frozen=True)
class Dual:
    """Weights of the ways as whole numbers over ``whole``.

    ``kinds`` are the least that each kind weighs along its length, ``extra`` what each way weighs beyond that.
    """

    whole: int
    weights: tuple[int, ...]
    kinds: tuple[int, ...]
    extra: tuple[int, ...]

    def rest(self, state: State) -> int:
        """The least weight along the roll of what is still to lie in a state, times ``whole``."""
        rest: int = sum(map(mul, state.left, self.kinds))
        for way, end in state.running:
            rest += self.weights[way] * (end - state.y)
        return rest


@dataclass
class SectionSearch:
    """The search over one set of bars.

    ``at_least`` is proven at any moment, ``finished`` when a schedule as short was found, so that there is no more to
    prove; ``states`` counts those looked at.
    """

    bars: Bars
    rules: tuple[Rule, ...]
    heaviest: Heaviest
    budget: Budget
    at_least: int = 0
    states: int = 0
    finished: bool = False
    _duals: list[Dual] = field(default_factory=list)
    _ends: dict[Set, int | None] = field(default_factory=dict)
    _wider: dict[Set, list[tuple[int, Set]]] = field(default_factory=dict)
    _kept: dict[tuple[int, Left, tuple[int, ...]], list[tuple[int, ...]]] = field(default_factory=dict)
    _open: dict[int, list[State]] = field(default_factory=dict)
    _waiting: int = 0
    _weight_of: dict[Set, list[tuple[int, int]]] = field(default_factory=dict)
    _below: int = 0
    _learn_at: int = FIRST_PROGRAMME

    def __post_init__(self) -> None:
        self.kind_of = [0] * len(self.rules)
        for kind, (_, ways) in enumerate(self.bars.groups):
            for way in ways:
                self.kind_of[way] = kind
        self.bound_rules = [(way, rule) for way, rule in enumerate(self.rules) if rule.residues]
        steps = [n for _, rule in self.bound_rules for n in (*rule.residues, rule.step)]
        self.unit = gcd(*steps, *(rule.length for rule in self.rules))

    def run(self, below: int) -> Slices[None]:
        """Raise ``at_least`` as far as the budget allows, at most to ``below``; a later run goes on from there."""
        if self._duals:
            below = min(below, self._below)
        else:
            first = State(0, tuple(copies for copies, _ in self.bars.groups), (), (0,) * len(self.rules))
            self._learn(first)
            self._put(first, 0, below)
        self._below = below
        while self._open and not self.finished:
            level = min(self._open)
            self.at_least = min(level, below)
            if level >= below or self.budget.over or self._waiting > MOST_OPEN:
                return
            yield from self._look_at(self._next_of(level), level, below)
            if self.budget.slice_done():
                yield
        if not self.finished:
            self.at_least = below

    def _next_of(self, level: int) -> State:
        state = self._open[level].pop()
        self._waiting -= 1
        if not self._open[level]:
            del self._open[level]
        return state

    def _look_at(self, state: State, level: int, below: int) -> Slices[None]:
        self.states += 1
        if not any(state.left):
            self.finished = True
            return
        if self.states >= self._learn_at and len(self._duals) < MOST_DUALS:
            self._learn_at += self._learn_at // 2
            self._learn(state)
        rests = [dual.rest(state) for dual in self._duals]
        needed = max(level, *[state.y - (-rest // d.whole) for rest, d in zip(rests, self._duals, strict=True)])
        if needed > level:
            self._put(state, needed, below)
        else:
            yield from self._expand(state, rests, level, below)

    def _put(self, state: State, needed: int, below: int) -> None:
        needed = -(-needed // self.unit) * self.unit
        if needed < below:
            self._open.setdefault(needed, []).append(state)
            self._waiting += 1

    def _learn(self, state: State) -> None:
        """Solve the covering programme of a state and keep its weights."""
        demands = [
            Demand(copies, ways, tuple(self.rules[way].length for way in ways))
            for copies, (_, ways) in zip(state.left, self.bars.groups, strict=True) if copies
        ]
        demands += [Demand(1, (way,), (end - state.y,)) for way, end in state.running]
        cover = fractional_cover(demands, len(self.rules), self.heaviest, self.budget)
        whole = lcm(*(weight.denominator for weight in cover.weights))
        weights = tuple(int(weight * whole) for weight in cover.weights)
        along = [weight * rule.length for weight, rule in zip(weights, self.rules, strict=True)]
        kinds = tuple(min(along[way] for way in ways) for _, ways in self.bars.groups)
        dual = Dual(whole, weights, kinds, tuple(w - kinds[self.kind_of[way]] for way, w in enumerate(along)))
        if dual not in self._duals:
            self._duals.append(dual)
            self._weight_of.clear()

    def _expand(self, state: State, rests: list[int], level: int, below: int) -> Slices[None]:
        """Add every state that some of the bars left, started now, lead to.

        Of narrow bars there are more such choices than can be looked at; a state that is not done with stays open.
        """
        y = state.y
        waiting = [(0, state, rests)]
        while waiting:
            if self.budget.over or self._waiting > MOST_OPEN:
                self._put(state, level, below)
                return
            if self.budget.slice_done():
                yield
            first, now, rests = waiting.pop()
            startable = [
                (way, wider) for way, wider in self._wider_of(now.across)
                if now.left[self.kind_of[way]] and self.rules[way].next_start(y) == y
            ]
            for way, wider in startable:
                if way >= first:
                    kind = self.kind_of[way]
                    fewer = (*now.left[:kind], now.left[kind] - 1, *now.left[kind + 1 :])
                    running = (*now.running, (way, y + self.rules[way].length))
                    more = [rest + d.extra[way] for rest, d in zip(rests, self._duals, strict=True)]
                    waiting.append((way, State(y, fewer, running, wider), more))
            self.budget.spend(3 + len(startable))
            self._advance(now, rests, startable, level, below)

    def _advance(
        self, state: State, rests: list[int], startable: list[tuple[int, Set]], level: int, below: int
    ) -> None:
        """Go on to the next event with no more bars started now."""
        y, left, running, across = state
        if not any(left):
            self._put(state, max([level, *[end for _, end in running]]), below)
            return
        rows = [rule.next_start(y + 1) for way, rule in self.bound_rules if left[self.kind_of[way]]]
        event = min([end for _, end in running] + rows, default=y)
        if event == y or any(y + self.rules[way].length <= event for way, _ in startable):
            return
        self.budget.spend(3 + (len(self._duals) + len(rows)) // 2)
        needed = level
        for rest, (weight, whole) in zip(rests, self._weights_of(across), strict=True):
            end = event - ((weight * (event - y) - rest) // whole)
            if end > needed:
                needed = end
        if needed >= below:
            return
        going = tuple(sorted([bar for bar in running if bar[1] > event]))
        if not self._dominated(event, left, going):
            counts = list(across)
            for way, end in running:
                counts[way] -= end == event
            self._put(State(event, left, going, tuple(counts)), max([needed, *[end for _, end in going]]), below)

    def _weights_of(self, across: Set) -> list[tuple[int, int]]:
        """What a set weighs by each of the weights learnt, and what is the whole."""
        found = self._weight_of.get(across)
        if found is None:
            found = [(sum(map(mul, across, dual.weights)), dual.whole) for dual in self._duals]
            self._weight_of[across] = found
        return found

    def _dominated(self, y: int, left: Left, running: Running) -> bool:
        """Whether a state at the same time with the same bars is nowhere behind; else this one is kept."""
        ends = tuple([end for _, end in running])
        rivals = self._kept.setdefault((y, left, tuple([way for way, _ in running])), [])
        if any(all(map(le, rival, ends)) for rival in islice(rivals, COMPARED)):
            return True
        rivals.append(ends)
        return False

    def _wider_of(self, across: Set) -> list[tuple[int, Set]]:
        """The ways that fit beside those of a set, with the set they make."""
        found = self._wider.get(across)
        if found is None:
            found = []
            for way in range(len(across)):
                wider = (*across[:way], across[way] + 1, *across[way + 1 :])
                if self._least_end(wider) is not None:
                    found.append((way, wider))
            self._wider[across] = found
            self.budget.spend(4 * len(across))
        return found

    def _least_end(self, chosen: Set) -> int | None:
        """The least right end of a set, or None if it does not fit."""
        if chosen not in self._ends:
            ends = []
            for way, count in enumerate(chosen):
                right = self._least_end((*chosen[:way], count - 1, *chosen[way + 1 :])) if count else None
                end = None if right is None else end_of(self.bars.bars[way], right)
                if end is not None and end <= self.bars.room:
                    ends.append(end)
            self._ends[chosen] = min(ends, default=None) if any(chosen) else 0
        return self._ends[chosen]
