"""The search over row sections against every schedule there is, and on jobs that only it can prove."""

from itertools import count, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from proof_checker import accepts_proof
from section_schedule import least_length

from plumpline.layout import Budget, Panel, Strip, sections
from plumpline.layout.bounds import Bounds
from plumpline.layout.budget import to_its_end
from plumpline.layout.sections import Rule, SectionSearch
from plumpline.layout.sets import Bar, Bars, ListedSets, SizedSets

PLENTY = 10**6


def search(width, kinds, work=PLENTY, sets=ListedSets):
    """`kinds` are (copies, size, length, residues, step, columns), each with one way."""
    bars = Bars(
        width,
        tuple(Bar(size, columns) for _, size, _, _, _, columns in kinds),
        tuple((kind[0], (number,)) for number, kind in enumerate(kinds)),
    )
    rules = tuple(Rule(long, residues or (), step) for _, _, long, residues, step, _ in kinds)
    return SectionSearch(bars, rules, sets(bars, Budget(PLENTY)).heaviest, Budget(work))


@st.composite
def jobs(draw):
    width = draw(st.integers(3, 6))
    kinds = []
    for _ in range(draw(st.integers(1, 3))):
        size, step = draw(st.integers(1, 3)), draw(st.integers(1, 3))
        residues = draw(st.sampled_from([None, (0,), (step - 1,)]))
        columns = draw(st.sampled_from([None, (0,), (0, width - size), (width - size,)]))
        kinds.append((draw(st.integers(1, 2)), size, draw(st.integers(1, 3)), residues, step, columns))
    return width, kinds


@settings(max_examples=120, deadline=None, derandomize=True)
@given(jobs())
def test_the_shortest_schedule_of_bars_is_found_exactly(job):
    width, kinds = job
    bars = [kind[1:] for kind in kinds for _ in range(kind[0])]
    most = sum(long + (step or 1) for _, long, _, step, _ in bars) + 1
    shortest = least_length(width, bars, most)
    found = search(width, kinds)
    to_its_end(found.run(most + 1))
    assert found.at_least == shortest
    assert found.finished
    refuted = search(width, kinds)
    to_its_end(refuted.run(shortest))
    assert (refuted.at_least, refuted.finished) == (shortest, False)


FIVE_SIZES = [(6, 19, 19), (4, 21, 21), (4, 13, 19), (6, 17, 17), (4, 25, 15)]
FIVE_KINDS = [(copies, w, h, None, 1, None) for copies, w, h in FIVE_SIZES]


def test_a_search_goes_on_where_it_was_left_and_never_goes_back():
    once = search(54, FIVE_KINDS)
    to_its_end(once.run(159))
    often = search(54, FIVE_KINDS, 0)
    bounds = []
    for portion in count(1):
        often.budget.limit = portion * 10_000
        to_its_end(often.run(159 + portion % 2))
        bounds.append(often.at_least)
        if often.at_least == 159 or portion > 50:
            break
    assert bounds == sorted(bounds)
    assert (once.at_least, bounds[-1]) == (159, 159)
    assert len(bounds) > 2


def test_a_search_that_opens_too_many_states_keeps_what_it_proved(monkeypatch):
    monkeypatch.setattr(sections, "MOST_OPEN", 50)
    found = search(54, FIVE_KINDS)
    to_its_end(found.run(161))
    assert 157 <= found.at_least < 161
    assert not found.finished


def test_slices_of_the_search_are_short():
    found = search(54, FIVE_KINDS)
    spent = []
    for _ in found.run(159):
        spent.append(found.budget.spent)
    assert len(spent) > 2
    assert max(b - a for a, b in pairwise(spent)) < 30_000


def test_narrow_panels_of_many_sizes_take_no_more_work_than_there_is():
    # All of them fit side by side: nine to the eighth choices at the very first line across.
    narrow = [(8, 5 + n % 3, 11 + n, None, 1, None) for n in range(8)]
    found = search(400, narrow, 100_000, SizedSets)
    spent = [found.budget.spent for _ in found.run(60)]
    assert max(b - a for a, b in pairwise(spent)) < 30_000
    assert 100_000 <= found.budget.spent < 130_000
    proved = found.at_least
    assert proved < 60
    assert not found.finished
    found.budget.limit = 200_000
    to_its_end(found.run(60))
    assert proved <= found.at_least < 60


def test_twenty_four_panels_of_five_sizes_are_proven_by_their_rows():
    # Trade job p06: 2576 sixteenths of an inch was the best length known; no bound before reached it.
    strip = Strip(864, tuple(Panel(str(n), 16 * w, 16 * h, copies) for n, (copies, w, h) in enumerate(FIVE_SIZES)))
    bounds = Bounds(strip, Budget(PLENTY))
    to_its_end(bounds.section(2576))
    proof = bounds.total()
    assert (proof.at_least, proof.name) == (2576, "row-sections")
    assert accepts_proof(strip, proof.at_least, proof.name, proof.data)


@pytest.mark.parametrize("way", ["too many sets", "too many ways"])
def test_jobs_of_too_many_sizes_are_left_to_the_other_bounds(monkeypatch, way):
    if way == "too many sets":
        monkeypatch.setattr("plumpline.layout.sets.MOST_SETS", 3)
        monkeypatch.setattr("plumpline.layout.sets.MOST_PAIRS", 3)
    else:
        monkeypatch.setattr("plumpline.layout.bounds.MOST_SECTION_WAYS", 2)
    strip = Strip(54, tuple(Panel(str(n), w, h, copies) for n, (copies, w, h) in enumerate(FIVE_SIZES)))
    bounds = Bounds(strip, Budget(PLENTY))
    to_its_end(bounds.section(161))
    assert bounds.total().name == "area"
