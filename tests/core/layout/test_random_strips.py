"""Random small strips against brute force: bounds stay below, plans above; equal panels are laid the shortest way."""

from brute_force import shortest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from layout_checker import check, check_cuts
from proof_checker import accepts_proof

from plumpline.layout import CannotLay, Flaw, Motif, Panel, Repeat, Strip, lay_plan, straight_plan

TURNS = [(0,), (0, 180), (0, 90), (90,), (0, 90, 180, 270)]
WORK = 60_000


@st.composite
def panels(draw, number, width, bound, copies):
    w, h = draw(st.integers(1, width)), draw(st.integers(1, 5))
    motif = group = None
    if bound == "motif":
        motif = draw(st.sampled_from(["m", "n"]))
    elif bound == "group":
        group = draw(st.sampled_from(["g", "k"]))
    return Panel(
        f"p{number}", w, h, draw(copies), draw(st.sampled_from(TURNS)), motif,
        draw(st.integers(0, w)), draw(st.integers(0, h)), group, draw(st.sampled_from([None, None, "t", "u"])),
        draw(st.sampled_from([None, None, None, (min(h + 1, width), w)])),
        axes=draw(st.sampled_from(["both", "both", "across", "along"])) if motif else "both",
        apart=draw(st.sampled_from([(0, 0), (0, 0), (1, -2), (-4, 0), (3, 5)])),
    )


@st.composite
def strips(draw, kinds=3, copies=2):
    width = draw(st.integers(3, 8))
    bounds = draw(st.sampled_from([["free"], ["free", "motif"], ["motif"], ["group"], ["free", "motif", "group"]]))
    repeat = None
    if bounds != ["free"]:
        repeat = Repeat(draw(st.integers(0, 5)), draw(st.integers(0, 4)), draw(st.integers(0, 3)))
    start = draw(st.sampled_from(["measured", "choose"]))
    cells = st.builds(Flaw, st.integers(-1, width), st.integers(-1, 6), st.integers(1, 3), st.integers(1, 3))
    flaws = draw(st.lists(cells, max_size=2)) if start == "measured" else []
    return Strip(
        width,
        tuple(
            draw(panels(i, width, draw(st.sampled_from(bounds)), st.integers(1, copies)))
            for i in range(draw(st.integers(1, kinds)))
        ),
        repeat,
        (Motif("m", draw(st.integers(-2, 5)), draw(st.integers(-2, 5))), Motif("n", 1, 0), Motif("n", 2, 3)),
        start,
        tuple(flaws),
        draw(st.sampled_from([0, 0, 1])),
    )


def planned(strip, planner=lay_plan, work=WORK):
    try:
        return planner(strip, work)
    except CannotLay:
        assume(False)


@settings(max_examples=150, deadline=None, derandomize=True)
@given(strips())
def test_no_bound_lies_above_and_no_plan_below_the_shortest(strip):
    plan = planned(strip)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    assert plan.at_least <= shortest(strip, plan.length) <= plan.length


@settings(max_examples=100, deadline=None, derandomize=True)
@given(strips())
def test_straight_cuts_set_every_panel_free(strip):
    plan = planned(strip, straight_plan, 5_000)
    check(strip, plan)
    check_cuts(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)


@settings(max_examples=100, deadline=None, derandomize=True)
@given(strips(kinds=1, copies=5))
def test_equal_panels_are_laid_the_shortest_way(strip):
    assume(not (strip.flaws and strip.panels[0].group))
    plan = planned(strip)
    check(strip, plan)
    assert plan.length == shortest(strip, plan.length)
    assert plan.proven
