"""Beams over skylines: what they lay is a layout, they find what is known to exist, and never what cannot be."""

from itertools import product

import pytest
from brute_force import shortest
from hypothesis import given, settings
from hypothesis import strategies as st
from test_dives import check_spots, desk_of

from plumpline.layout import Budget, Panel, Strip, lay_plan, sets
from plumpline.layout.budget import to_its_end
from plumpline.layout.niche_beam import NicheBeam
from plumpline.layout.sets import TooManySets

WAYS = tuple(product(("weight", "area"), ("left", "higher")))


def laid(strip, length, width, way, work=10**9):
    """The spots that one beam found within a length, checked by first principles; None if it found none."""
    desk = desk_of(strip)
    spots = to_its_end(NicheBeam(desk, Budget(10**9)).within(length, width, Budget(work), *way))
    if spots is not None:
        check_spots(strip, desk, spots, length)
    return spots


def of_two_bands(gap=0):
    """Two sizes that fill a cloth of 12 in bands of their own, 4 × 3 three abreast and 6 × 5 two abreast."""
    return Strip(12 + gap, (Panel("a", 4 - gap, 3 - gap, 6), Panel("b", 6 - gap, 5 - gap, 4, (0, 90))), gap=gap)


@pytest.mark.parametrize("way", WAYS)
def test_bands_without_waste_are_found_and_nothing_shorter(way):
    assert laid(of_two_bands(), 16, 40, way) is not None
    assert laid(of_two_bands(), 15, 40, way) is None


@pytest.mark.parametrize("way", WAYS)
def test_the_gap_between_panels_is_kept(way):
    strip = Strip(11, (Panel("a", 3, 2, 6), Panel("b", 5, 4, 4)), gap=1)
    assert laid(strip, 15, 40, way) is not None
    assert laid(strip, 14, 40, way) is None


@pytest.mark.parametrize("way", WAYS)
def test_a_beam_ends_with_its_budget(way):
    assert laid(of_two_bands(), 16, 40, way, work=1) is None


panels = st.lists(
    st.tuples(st.integers(1, 5), st.integers(1, 5), st.integers(1, 2), st.sampled_from([(0,), (0, 90)])),
    min_size=1, max_size=3,
)


@settings(max_examples=60, deadline=None)
@given(panels, st.integers(5, 7), st.sampled_from(WAYS))
def test_no_beam_lays_what_brute_force_says_is_impossible(sizes, width, way):
    strip = Strip(width, tuple(Panel(f"p{i}", w, h, qty, turns) for i, (w, h, qty, turns) in enumerate(sizes)))
    piled = sum(h * qty for _, h, qty, _ in sizes)
    least = shortest(strip, piled)
    assert least == 1 or laid(strip, least - 1, 200, way) is None
    assert laid(strip, 2 * piled, 1, way) is not None


def test_a_job_with_too_many_rows_for_the_beams_is_laid_without_them(monkeypatch):
    monkeypatch.setattr(sets, "MOST_PAIRS", 2)
    monkeypatch.setattr(sets, "MOST_SETS", 2)
    strip = Strip(100, tuple(Panel(f"p{w}", w, h, 3) for w, h in ((31, 17), (23, 29), (37, 13))))
    with pytest.raises(TooManySets):
        NicheBeam(desk_of(strip), Budget(10**6))
    plan = lay_plan(strip, 60_000)
    assert len(plan.placements) == 9
    assert plan.length >= plan.at_least
