"""How the search goes about it: budgets, progress, many settings, flaws, and jobs too large for the exact steps."""

from itertools import pairwise
from random import Random

import pytest
from layout_checker import check, check_cuts
from proof_checker import accepts_proof

from plumpline.layout import (
    FULL_WORK,
    QUICK_WORK,
    Budget,
    Flaw,
    Motif,
    Panel,
    Planner,
    Repeat,
    Strip,
    active,
    lay_plan,
    sets,
    straight_plan,
)
from plumpline.layout.choices import choices_of
from plumpline.layout.places import Setting, kinds_of
from plumpline.layout.search import share


def mixed(count, seed=1, **rules):
    """A strip of many sizes, made up by a seeded chance."""
    random = Random(seed)
    sizes = [(200 + int(random.random() * 400), 150 + int(random.random() * 450)) for _ in range(count)]
    return Strip(1400, tuple(Panel(f"p{i}", w, h, 1, **rules) for i, (w, h) in enumerate(sizes)))


def proven_plan(strip, work=QUICK_WORK):
    plan = lay_plan(strip, work)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    return plan


def test_full_effort_is_forty_quick_ones():
    assert FULL_WORK == 40 * QUICK_WORK


def test_every_better_plan_is_reported_and_the_last_is_the_answer():
    seen = []
    strip = mixed(20)
    plan = lay_plan(strip, Budget(100_000, report=seen.append))
    for earlier, later in pairwise(seen):
        assert later.length < earlier.length
    for reported in seen:
        check(strip, reported)
    assert seen[-1].placements == plan.placements


def test_a_search_can_be_stopped_and_still_answers():
    asked = []

    def stop():
        asked.append(True)
        return len(asked) > 3

    strip = mixed(20)
    plan = lay_plan(strip, Budget(10_000_000, stop=stop))
    check(strip, plan)
    assert plan.work < 20_000


@pytest.mark.parametrize("planner", [lay_plan, straight_plan])
def test_work_is_kept_to(planner):
    strip = mixed(24, turns=(0, 90))
    assert planner(strip, QUICK_WORK).work <= 2 * QUICK_WORK


def test_more_work_never_lays_longer():
    strip = mixed(30)
    lengths = [lay_plan(strip, work).length for work in (1, 5_000, 50_000, 300_000)]
    assert lengths == sorted(lengths, reverse=True)


def test_another_seed_may_find_another_plan_but_the_bound_holds():
    strip = mixed(16)
    plans = [lay_plan(strip, 60_000, seed) for seed in range(3)]
    assert max(plan.at_least for plan in plans) <= min(plan.length for plan in plans)


def test_a_thousand_sizes_are_laid_within_a_tenth_of_their_area():
    plan = proven_plan(mixed(1000), 1)
    assert plan.length <= plan.at_least * 11 // 10


def test_many_turn_groups_are_tried_one_by_one():
    panels = tuple(
        Panel(f"p{i}", 310 + 13 * i, 457 - 11 * i, 2, (0, 90), turn_group=f"t{i}") for i in range(8)
    )
    plan = proven_plan(Strip(1000, panels), 200_000)
    assert plan.at_least < plan.length <= plan.at_least * 11 // 10


def test_tools_that_come_to_their_end_leave_the_work_to_the_others():
    planner = Planner(mixed(5), Budget(QUICK_WORK))
    next(planner.steps())
    done = []

    def tool(name, turns):
        for _ in range(turns):
            done.append(name)
            planner.budget.spend(1)
            yield

    list(share(planner.search, (tool("short", 1), tool("long", 4)), (1, 1)))
    assert done == ["short", "long", "long", "long", "long"]


def covers(count, size=(5, 3)):
    """So many covers, each with a front and a back that are turned together."""
    own = [f"{size} {i}" for i in range(count)]
    return tuple(Panel(f"{name} {of}", *size, 1, (0, 90), turn_group=of) for of in own for name in ("front", "back"))


def kinds_under(strip):
    """For each choice of turns how many panels lie which way, as sizes and numbers."""
    choices = choices_of(strip)
    return [
        sorted((v.w, v.h, kind.qty) for kind in kinds_of(strip, Setting(turns)) for v in kind.variants)
        for turns in choices.turns
    ]


def test_of_covers_alike_it_only_matters_how_many_are_turned():
    # Four covers: none of them turned, one, two, three or all; each is two panels.
    found = kinds_under(Strip(20, covers(4)))
    assert sorted(sum(n for w, _, n in kinds if w == 3) for kinds in found) == [0, 2, 4, 6, 8]
    # With two covers of another size each of the five goes with none, one or both of these.
    found = kinds_under(Strip(20, (*covers(4), *covers(2, (7, 4)))))
    assert len(found) == 15 == len({tuple(kinds) for kinds in found})


def test_of_more_covers_than_can_be_counted_one_or_all_of_a_size_are_turned():
    sizes = [(n, n + 1) for n in range(3, 10)]
    strip = Strip(40, tuple(panel for size in sizes for panel in covers(3, size)))
    turned = sorted([sum(n for w, h, n in kinds if w > h) for kinds in kinds_under(strip)])
    # None, all, and of each of seven sizes one cover or three of three.
    assert turned == [0, *[2] * 7, *[6] * 7, 42]


def test_a_turn_that_a_bound_rules_out_is_left_alone():
    # Three boards wider than half the cloth would need 3 x 4 one behind the other; turned they lie side by side.
    boards = Panel("board", 7, 4, 3, (0, 90), turn_group="boards")
    planner = Planner(Strip(12, (boards, Panel("rest", 2, 3, 4))), Budget(QUICK_WORK))
    next(planner.steps())
    choices = list(planner.search.choices.worth_trying())
    planner.search.best.length = 12
    (kept,) = planner._hopeful(choices)
    assert planner.search.choices.setting(kept).turns[0] == (90,)
    planner.search.best.length = 1
    assert planner._hopeful(choices) == choices


def test_lengths_that_cannot_be_are_not_aimed_at():
    # All lengths end on a multiple of 5 less the gap, unless a motif or a flaw says where panels lie.
    panels = (Panel("a", 8, 9, 3, (0, 90)), Panel("b", 13, 19, 2))
    planner = Planner(Strip(30, (Panel("a", 9, 14, 3, (0, 90)), panels[1]), gap=1), Budget(1))
    next(planner.steps())
    assert planner.search.step == 5
    planner.search.best.length = 39
    assert planner.search.aim == 34
    flawed = Planner(Strip(30, panels, flaws=(Flaw(0, 0, 2, 2),), gap=1), Budget(1))
    next(flawed.steps())
    assert flawed.search.aim == flawed.search.to_beat - 1


def test_many_alike_groups_are_tried_by_single_changes():
    panels = tuple(
        Panel(f"p{i}", 250 + 20 * i, 300, 2, (0, 90), group=f"g{i}", turn_group=f"t{i}") for i in range(4)
    )
    proven_plan(Strip(1000, panels, Repeat(270, 190, 95)), 60_000)


def test_a_place_that_leaves_a_turn_no_column_is_passed_over():
    # Turned, the alike panels are as wide as the cloth and can only lie in its middle; unturned they may lie anywhere.
    free = tuple(Panel(f"p{i}", 17 + 7 * i, 61 - 5 * i, 2) for i in range(7))
    panels = (Panel("a", 40, 97, 2, (0, 90), group="g", turn_group="t"), *free)
    plan = proven_plan(Strip(100, panels, Repeat(200, 70)), 150_000)
    assert plan.length <= plan.at_least * 5 // 4


def test_alike_panels_lie_beside_free_ones_and_motifs():
    panels = (
        Panel("motif", 20, 20, 2, motif="m", dx=10, dy=10),
        Panel("alike", 15, 12, 3, group="g"),
        Panel("free", 9, 11, 4),
    )
    strip = Strip(60, panels, Repeat(30, 25), (Motif("m", 12, 7),), "choose")
    proven_plan(strip, 60_000)


def test_a_flaw_is_left_out():
    strip = Strip(10, (Panel("a", 5, 5, 4),), flaws=(Flaw(0, 0, 1, 1),))
    assert proven_plan(strip, 60_000).length == 11  # one of the columns begins behind the flaw


def test_a_crease_down_the_whole_piece_leaves_the_columns_beside_it():
    strip = Strip(10, (Panel("a", 4, 5, 4), Panel("b", 5, 6, 1)), flaws=(Flaw(4, 0, 1, 1000),))
    plan = proven_plan(strip, 60_000)
    assert plan.length == 15  # three behind each other on one side of it, two and the other one on the other
    straight = straight_plan(strip, 20_000)
    check(strip, straight)
    check_cuts(strip, straight)


def test_a_flaw_within_a_repeat_moves_a_panel_by_whole_repeats():
    panel = Panel("a", 10, 5, 2, motif="m")
    strip = Strip(10, (panel,), Repeat(0, 6), (Motif("m", 0, 1),), flaws=(Flaw(3, 2, 1, 8),))
    plan = proven_plan(strip, 60_000)
    assert [p.y for p in plan.placements] == [13, 19]


def test_a_panel_fills_a_hole_left_beside_a_motif():
    # The motif panel cannot start before row 9; the small ones fit below it.
    panels = (Panel("a", 10, 5, 1, motif="m"), Panel("b", 5, 4, 4))
    strip = Strip(10, panels, Repeat(0, 20), (Motif("m", 0, 9),))
    assert proven_plan(strip, 60_000).length == 14


def test_columns_by_the_hundred_are_searched_near_the_skyline_only():
    panels = (Panel("a", 300, 200, 5, motif="m", dx=150, dy=100), Panel("b", 210, 330, 4, motif="m"))
    strip = Strip(1000, panels, Repeat(7, 0), (Motif("m", 3, 0),))
    plan = proven_plan(strip, 60_000)
    assert plan.length <= 1000


def test_a_repeat_of_hundreds_of_columns_with_a_drop_is_laid_too():
    panel = Panel("a", 300, 200, 9, motif="m")
    strip = Strip(1000, (panel,), Repeat(4, 9, 2), (Motif("m", 3, 0),))
    proven_plan(strip, 60_000)


def test_the_longest_piece_decides_where_it_does():
    plan = proven_plan(Strip(100, (Panel("long", 10, 500, 1), Panel("b", 20, 30, 5))))
    assert (plan.length, plan.proof_name) == (500, "tallest")


def test_panels_wider_than_half_lie_one_behind_the_other():
    plan = proven_plan(Strip(100, (Panel("a", 51, 40, 3), Panel("b", 52, 30, 2))))
    assert (plan.length, plan.proof_name) == (180, "wider-than-half")


def test_columns_of_a_chosen_third_drop_are_laid_better_than_greedily():
    # Three columns lower by a third each: always taking the lowest place first ends one repeat and a third later.
    panel = Panel("a", 303, 340, 24, motif="m", dx=151, dy=170)
    strip = Strip(1370, (panel,), Repeat(201, 267, 89), (Motif("m", 0, 0),), "choose")
    plan = proven_plan(strip, FULL_WORK)
    assert plan.proven
    assert plan.length < lay_plan(strip, 1).length


def test_an_exact_search_that_runs_out_of_work_proves_nothing():
    panel = Panel("a", 303, 340, 24, motif="m", dx=151, dy=170)
    strip = Strip(1370, (panel,), Repeat(201, 267, 89), (Motif("m", 0, 0),), "choose")
    assert not proven_plan(strip, 6_000).proven


def test_more_leftmost_panels_than_can_be_told_apart_are_bounded_together():
    panels = tuple(Panel(f"p{i}", 20 + 2 * i, 30, 1, group="g") for i in range(10))
    plan = proven_plan(Strip(100, panels, Repeat(50, 40)), 30_000)
    assert plan.at_least >= 90


def test_too_many_sizes_for_a_programme_are_bounded_by_their_area():
    plan = proven_plan(mixed(80), 100_000)
    assert plan.proof_name in ("area", "possible-lengths")


def test_a_bound_that_would_take_too_many_sets_is_left_out(monkeypatch):
    strip = mixed(12)
    listed = proven_plan(strip, 100_000)
    assert listed.proof_name in ("rows", "possible-lengths")
    monkeypatch.setattr(sets, "MOST_SETS", 5)
    by_size = proven_plan(strip, 100_000)
    assert by_size.at_least == listed.at_least
    monkeypatch.setattr(sets, "MOST_PAIRS", 2)
    assert proven_plan(strip, 100_000).at_least <= listed.at_least


def test_a_strip_that_could_stand_along_the_roll_does_not_spoil_the_bound():
    panels = (*mixed(9).panels, Panel("strip", 1300, 60, 2, (0, 90)))
    plan = proven_plan(Strip(1400, panels), 200_000)
    assert plan.length < 1300


def test_piles_without_number_leave_the_bound_as_it_is():
    random = Random(4)
    panels = tuple(Panel(f"p{i}", 600, 10**8 + int(random.random() * 10**8), 1) for i in range(14))
    plan = proven_plan(Strip(1_400, panels), 60_000)
    assert plan.proof_name != "possible-lengths"


def test_three_panels_cut_straight_are_looked_at_until_nothing_is_new():
    panels = (Panel("a", 6, 4, 1), Panel("b", 4, 6, 1), Panel("c", 6, 4, 1), Panel("d", 4, 6, 1), Panel("e", 2, 2, 1))
    strip = Strip(10, panels)
    plan = straight_plan(strip, FULL_WORK)
    check(strip, plan)
    check_cuts(strip, plan)
    assert plan.length > plan.at_least
    assert plan.work < FULL_WORK


def test_a_plan_can_be_had_after_every_slice_and_only_gets_better():
    strip = mixed(20)
    planner = Planner(strip, Budget(100_000))
    seen = []
    for _ in planner.steps():
        plan = planner.plan()
        check(strip, plan)
        seen.append((plan.length, -plan.at_least))
    assert len(seen) > 3
    assert seen == sorted(seen, reverse=True)
    assert planner.plan() == lay_plan(strip, 100_000)


def test_equal_panels_by_the_hundred_are_laid_in_slices_too():
    panel = Panel("a", 303, 340, 300, motif="m", dx=151, dy=170)
    planner = Planner(Strip(1370, (panel,), Repeat(201, 267, 89), (Motif("m", 0, 0),), "choose"), Budget(FULL_WORK))
    slices = sum(1 for _ in planner.steps())
    assert planner.plan().proven
    assert slices > FULL_WORK // 20_000 // 10


def test_equal_panels_on_a_small_repeat_are_proven_with_more_work():
    panel = Panel("a", 230, 310, 60, motif="m", dx=115, dy=155)
    strip = Strip(1000, (panel,), Repeat(90, 140, 70), (Motif("m", 40, 30),))
    little, much = proven_plan(strip, 20_000), proven_plan(strip, 300_000)
    assert not little.proven
    assert much.proven
    assert much.length <= little.length


def test_what_a_beam_forgets_it_works_out_again(monkeypatch):
    panels = tuple(Panel(f"p{i}", 300 + 70 * i, 420 - 30 * i, 3, motif="m", dx=150, dy=200) for i in range(3))
    strip = Strip(1400, panels, Repeat(160, 210, 105), (Motif("m", 80, 120),))
    plan = proven_plan(strip, 30_000)
    monkeypatch.setattr(active, "REMEMBERED", 1)
    assert lay_plan(strip, 30_000) == plan
