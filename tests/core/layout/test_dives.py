"""Dives: searches for a plan of a given length that go back as soon as more must be wasted than it leaves."""

from itertools import count
from random import Random

import pytest
from brute_force import fits, shortest
from hypothesis import given, settings
from hypothesis import strategies as st
from layout_checker import check

from plumpline.layout import Budget, Panel, Planner, Strip, dive, lay_plan
from plumpline.layout.budget import to_its_end
from plumpline.layout.choices import choices_of
from plumpline.layout.desk import Desk
from plumpline.layout.places import kinds_of


def desk_of(strip):
    setting = choices_of(strip).setting((0, 0))
    return Desk(strip, setting, kinds_of(strip, setting), strip.width + strip.gap)


both_ways = pytest.mark.parametrize("way", dive.WAYS)


def dives_of(strip, way, longest=100, work=10**9):
    desk = desk_of(strip)
    return desk, dive.Dives(desk, way, Random(1), Budget(work), longest)


def found_within(strip, length, most_dives, way):
    """The number of the dive that found a layout of the length, checked by first principles; None if none did."""
    desk, dives = dives_of(strip, way, length)
    for number in range(most_dives):
        spots = to_its_end(dives.within(length))
        if spots is not None:
            check_spots(strip, desk, spots, length)
            return number
    return None


def check_spots(strip, desk, spots, length):
    placed = [(x, y, x + v.w, y + v.h) for k, v, x, y in ((k, desk.kinds[k].variants[v], x, y) for k, v, x, y in spots)]
    assert sorted(k for k, *_ in spots) == sorted(k for k, kind in enumerate(desk.kinds) for _ in range(kind.qty))
    for i, (a, b, c, d) in enumerate(placed):
        assert a >= 0 <= b
        assert c <= strip.width + strip.gap
        assert d <= length + strip.gap
        assert all(a >= g or e >= c or b >= h or f >= d for e, f, g, h in placed[:i])


def dissected(width, length, pieces, seed):
    """A rectangle cut at random into so many, and those shuffled: they fill it without waste."""
    random = Random(seed)
    parts = [(width, length)]
    while len(parts) < pieces:
        w, h = parts.pop(max(range(len(parts)), key=lambda i: parts[i][0] * parts[i][1]))
        if h == 1 or (w > 1 and random.random() * (w + h) < w):
            at = max(1, w // 4 + int(random.random() * (w // 2)))
            parts += [(at, h), (w - at, h)]
        else:
            at = max(1, h // 4 + int(random.random() * (h // 2)))
            parts += [(w, at), (w, h - at)]
    return sorted(parts, key=lambda _: random.random())


def strip_of(width, sizes, **rules):
    return Strip(width, tuple(Panel(f"p{i}", w, h, 1, **rules) for i, (w, h) in enumerate(sizes)))


@both_ways
@pytest.mark.parametrize("seed", range(6))
def test_a_dissected_rectangle_is_put_together_again(seed, way):
    assert found_within(strip_of(60, dissected(60, 45, 16, seed)), 45, 1_000, way) is not None


@both_ways
def test_a_dissected_rectangle_is_put_together_again_with_its_pieces_turned(way):
    sizes = [(h, w) if i % 2 else (w, h) for i, (w, h) in enumerate(dissected(50, 40, 9, 3))]
    assert found_within(strip_of(50, sizes, turns=(0, 90)), 40, 1_000, way) is not None


@both_ways
def test_units_far_too_fine_for_sums_of_them_are_searched_without(way):
    # Prime factors apart from each other leave no common unit, across or along.
    sizes = [(w * 1_000_003 + 1, h * 1_000_033 + 1) for w, h in dissected(30, 20, 6, 1)]
    strip = strip_of(30 * 1_000_003 + 6, sizes)
    assert found_within(strip, 20 * 1_000_033 + 6, 500, way) is not None


def test_sums_that_were_forgotten_are_worked_out_anew(monkeypatch):
    strip = strip_of(60, dissected(60, 45, 16, 4))
    found = found_within(strip, 45, 1_000, "from the edge")
    monkeypatch.setattr(dive, "KEPT", 2)
    assert found_within(strip, 45, 1_000, "from the edge") == found is not None


@both_ways
@settings(max_examples=100, deadline=None, derandomize=True)
@given(st.integers(2, 6), st.integers(2, 5), st.integers(2, 6), st.integers(0, 10**6))
def test_a_single_dive_offered_every_panel_finds_whatever_leaves_no_waste(way, width, length, pieces, seed):
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(dive, "OFFERED", 99)
        patch.setattr(dive, "NODES_PER_PANEL", 10**6)
        patch.setattr(dive, "NODES_PER_FEW", 10**6)
        strip = strip_of(width, dissected(width, length, min(pieces, width * length // 2), seed))
        assert found_within(strip, length, 1, way) == 0


@both_ways
@settings(max_examples=40, deadline=None, derandomize=True)
@given(
    st.integers(3, 7), st.lists(st.tuples(st.integers(1, 3), st.integers(1, 4)), min_size=2, max_size=5),
    st.sampled_from([0, 0, 1]), st.sampled_from([(0,), (0, 90)]),
)
def test_no_dive_finds_what_brute_force_says_is_impossible(way, width, sizes, gap, turns):
    panels = tuple(Panel(f"p{i}", w, h, 1, turns) for i, (w, h) in enumerate(sizes))
    strip = Strip(width, panels, gap=gap)
    least = shortest(strip, sum(h for _, h in sizes) + gap * (len(sizes) - 1) + 3)
    assert fits(strip, least)
    assert found_within(strip, least - 1, 20, way) is None
    assert found_within(strip, least + 3, 40, way) is not None


@both_ways
def test_a_panel_whose_turned_extents_waste_area_counts_for_what_it_wastes(way):
    # Turned, each takes 12 instead of 8: three fit unturned, none of them turned as well.
    strip = Strip(4, (Panel("a", 4, 2, 3, (0, 90), turned=(3, 4)),))
    assert found_within(strip, 6, 1, way) == 0
    assert found_within(strip, 5, 20, way) is None


def test_a_hundred_and_fifty_pieces_without_waste_are_laid_within_a_twentieth_of_their_length():
    strip = strip_of(200, dissected(200, 300, 150, 2))
    plan = lay_plan(strip, 200_000)
    check(strip, plan)
    assert plan.length <= 315


@both_ways
def test_a_large_job_yields_in_the_middle_of_a_dive(way):
    desk, dives = dives_of(strip_of(400, dissected(400, 500, 300, 4)), way, 500)
    assert desk.area == 400 * 500
    assert sum(1 for _ in range(3) for _ in dives.within(500)) > 0


def test_a_clock_alone_ends_a_search_that_is_given_one():
    strip = strip_of(60, dissected(60, 47, 24, 5))
    ticks = count()
    budget = Budget(0, clock=lambda: next(ticks) / 100)
    planner = Planner(strip, budget)
    to_its_end(planner.steps())
    check(strip, planner.plan())
    assert planner.plan().proven or budget.gone >= 1


def test_a_share_of_a_clock_is_a_share_of_the_time_left():
    now = [0.2]
    budget = Budget(0, clock=lambda: now[0])
    budget.spend(1_000)
    with budget.portion(1, 4):
        now[0] = 0.39
        budget.spend(1_000)
        assert not budget.over
        now[0] = 0.41
        budget.spend(1_000)
        assert budget.over
    assert not budget.over
