# Lays equal panels on the columns of a repeat the shortest way there is, by dynamic programming along the roll.
"""Exact layouts of panels that are all alike in size and rules, on finitely many columns with rows of one step.

Rows are gone through from the cut end on. A state says how long each place is still taken; of two ways to reach a
state the one that has laid more panels is kept (Bellman 1957). At most ``abreast`` equal panels that start within one
panel's length can stand in the way of anything, for a line at its end crosses them all; so a state that is behind by
that many is dropped, and so is one that cannot lay the rest with so many to each length of a panel. Unlike a search
by panels laid, the number of states does not grow with their number: the cost is O(rows · states · places).
"""

from __future__ import annotations

from itertools import islice
from operator import le

from plumpline.layout.active import ActiveSearch, Outcome, Place
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.desk import Desk, Spot, rise

MOST_ROWS = 20_000
COMPARED = 30

Trail = tuple["Trail", Spot] | None
Taken = tuple[int, ...]  # how far along the roll each place is taken; 0 where it is free
States = dict[Taken, tuple[int, Trail]]  # how many panels are laid, and where


def suits(desk: Desk, places: list[Place], length: int) -> bool:
    """Whether there is one kind, of one length, on rows that are few enough to go through."""
    ways = [place.way for place in places]
    return len(desk.kinds) == 1 and len({way.h for way in ways}) == 1 and (
        sum(length // way.step for way in ways) <= MOST_ROWS
    )


def lay_equal(search: ActiveSearch, target: int, budget: Budget) -> Slices[Outcome]:
    """The shortest layout of equal panels within ``target``; None proves that there is none."""
    desk, places = search.desk, search.places
    count, h = desk.kinds[0].qty, places[0].way.h
    end = target + desk.strip.gap
    abreast = _abreast(places)
    over = [[q.x < p.x + p.way.w and p.x < q.x + q.way.w for q in places] for p in places]
    states: States = {(0,) * len(places): (0, None)}
    for y, row in _rows(desk, places, end - h):
        states = _cleared(states, y, abreast, count - abreast * ((end - y) // h))
        for i in row:
            budget.spend(len(states) * (2 + len(places) // 4))
            search.states += len(states)
            for taken, (laid, trail) in list(states.items()):
                if taken[i]:
                    continue
                longer: Trail = (trail, (0, places[i].variant, places[i].x, y))
                if laid + 1 == count:
                    return Outcome(_spots(longer), True)
                after = tuple(y + h if o else t for t, o in zip(taken, over[i], strict=True))
                if states.get(after, (-1, None))[0] <= laid:
                    states[after] = (laid + 1, longer)
            if budget.over:
                return Outcome(None, False)
            if budget.slice_done():
                yield
    return Outcome(None, True)


def _abreast(places: list[Place]) -> int:
    """How many panels lie side by side at most: always the one that ends first (interval scheduling)."""
    count, right = 0, 0
    for end, x in sorted((place.x + place.way.w, place.x) for place in places):
        if x >= right:
            count, right = count + 1, end
    return count


def _rows(desk: Desk, places: list[Place], last: int) -> list[tuple[int, list[int]]]:
    """Every y up to ``last`` at which some place can start, with those places from left to right."""
    rows: dict[int, list[int]] = {}
    for i, place in sorted(enumerate(places), key=lambda item: item[1].x):
        for y in range(place.way.residue, last + 1, place.way.step):
            if rise(desk.strip.flaws, desk.strip.gap, place.way, place.x, y) == y:
                rows.setdefault(y, []).append(i)
    return sorted(rows.items())


def _cleared(states: States, y: int, abreast: int, needed: int) -> States:
    """The states at ``y``: what ends there is free again, and states without a chance or a use are dropped.

    That is those that have not laid ``needed`` panels, too few for what still fits, those too far behind, and those
    taken nowhere less than one that has laid as many.
    """
    most = max((laid for laid, _ in states.values()), default=0)
    least = max(most - abreast + 1, needed)
    cleared: States = {}
    for taken, (laid, trail) in states.items():
        if laid >= least:
            now = tuple(t if t > y else 0 for t in taken)
            if cleared.get(now, (-1, None))[0] < laid:
                cleared[now] = (laid, trail)
    kept: States = {}
    for now, (laid, trail) in sorted(cleared.items(), key=lambda item: (-item[1][0], sum(item[0]), item[0])):
        if not any(all(map(le, rival, now)) for rival in islice(kept, COMPARED)):
            kept[now] = (laid, trail)
    return kept


def _spots(trail: Trail) -> tuple[Spot, ...]:
    spots = []
    while trail is not None:
        trail, spot = trail
        spots.append(spot)
    return tuple(reversed(spots))
