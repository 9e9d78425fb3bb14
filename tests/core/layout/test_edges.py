"""Edge-to-edge cuts of plans already laid: which plans have them, in which order, and what they leave."""

from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st
from layout_checker import check_cuts
from test_random_strips import planned, strips

from plumpline.layout import Panel, Placement, Plan, Strip, cut_apart, straight_plan
from plumpline.layout.edges import MOST_PANELS


def laid(*boxes, work=0):
    """A plan with a panel in each box (x, y, w, h)."""
    placements = tuple(Placement(f"p{i}", 1, *box, 0) for i, box in enumerate(boxes))
    return Plan(max(y + h for _, y, _, h in boxes), 1, "area", {}, placements, 3, {"g": (1, 2)}, work)


def cuts_of(width, *boxes):
    """The cuts as (kind, x, y, length), once they are found to leave every panel by itself."""
    plan = cut_apart(laid(*boxes), width)
    check_cuts(Strip(width, ()), plan)
    return [(c.kind, c.x, c.y, c.length) for c in plan.cuts]


PINWHEEL = (0, 0, 4, 2), (4, 0, 2, 4), (2, 4, 4, 2), (0, 2, 2, 4), (2, 2, 2, 2)


def test_five_panels_in_a_pinwheel_cannot_be_cut_from_edge_to_edge():
    assert cut_apart(laid(*PINWHEEL), 6) is None


def test_a_pinwheel_without_its_middle_cannot_be_cut_either():
    assert cut_apart(laid(*PINWHEEL[:4]), 6) is None


def test_a_pinwheel_deep_in_a_plan_is_found():
    moved = [(x + 3, y + 5, w, h) for x, y, w, h in PINWHEEL]
    assert cut_apart(laid((0, 0, 9, 5), (0, 5, 3, 6), *moved), 9) is None


def test_a_panel_as_wide_as_the_cloth_takes_the_cut_from_the_roll_alone():
    assert cuts_of(6, (0, 0, 6, 4)) == [("across", 0, 4, 6)]


def test_a_grid_is_cut_across_first_from_the_cut_end_on():
    assert cuts_of(7, (0, 0, 3, 2), (3, 0, 3, 2), (0, 2, 3, 2), (3, 2, 3, 2)) == [
        ("across", 0, 4, 7), ("across", 0, 2, 7),
        ("along", 3, 0, 2), ("along", 6, 0, 2),
        ("along", 3, 2, 2), ("along", 6, 2, 2),
    ]


def test_two_staggered_columns_of_a_half_drop_are_cut_along_first():
    assert cuts_of(6, (0, 0, 3, 4), (0, 4, 3, 4), (3, 2, 3, 4), (3, 6, 3, 4)) == [
        ("across", 0, 10, 6), ("along", 3, 0, 10),
        ("across", 0, 4, 3), ("across", 0, 8, 3),
        ("across", 3, 2, 3), ("across", 3, 6, 3),
    ]


def test_waste_before_between_and_beside_panels_is_cut_off():
    assert cuts_of(9, (1, 2, 4, 3), (6, 2, 3, 3), (0, 7, 9, 1)) == [
        ("across", 0, 8, 9), ("across", 0, 2, 9), ("across", 0, 5, 9), ("across", 0, 7, 9),
        ("along", 1, 2, 3), ("along", 5, 2, 3), ("along", 6, 2, 3),
    ]


def test_cuts_are_numbered_from_one_and_those_over_the_full_width_are_counted():
    plan = cut_apart(laid((0, 0, 3, 2), (3, 0, 3, 4), (0, 5, 6, 1)), 6)
    assert [cut.number for cut in plan.cuts] == [1, 2, 3, 4, 5]
    assert plan.full_width_cuts == 3


def test_all_else_of_the_plan_is_kept():
    plan = laid((0, 0, 3, 2), work=77)
    cut = cut_apart(plan, 6)
    assert {name: getattr(cut, name) for name in vars(plan)} == vars(plan)
    assert cut.proven == plan.proven


def spiral(panels):
    """Panels that come off one by one, across and along in turn: the deepest plan there is."""
    side = panels // 2
    rows = [(k, k, side - k + 1, 1) for k in range(side)]
    columns = [(k, k + 1, 1, side - k) for k in range(side)]
    return [*rows, *columns]


def test_the_deepest_plan_of_the_most_panels_is_cut_one_by_one():
    plan = cut_apart(laid(*spiral(MOST_PANELS)), MOST_PANELS // 2 + 1)
    check_cuts(Strip(MOST_PANELS // 2 + 1, ()), plan)


def test_more_panels_than_the_most_are_not_looked_at():
    row = [(x, 0, 1, 1) for x in range(MOST_PANELS + 1)]
    assert cut_apart(laid(*row[:-1]), MOST_PANELS + 1) is not None
    assert cut_apart(laid(*row), MOST_PANELS + 1) is None


@st.composite
def cut_layouts(draw):
    """Boxes made by cutting a cloth up at random, some of the parts left as waste and some only partly used."""
    random = Random(draw(st.integers(0, 10**9)))
    width, length = draw(st.integers(1, 40)), draw(st.integers(1, 60))
    parts = [(0, 0, width, length)]
    for _ in range(draw(st.integers(0, 40))):
        x, y, w, h = parts.pop(random.randrange(len(parts)))
        if w > 1 and random.random() < 0.5:
            at = random.randrange(1, w)
            parts += [(x, y, at, h), (x + at, y, w - at, h)]
        elif h > 1:
            at = random.randrange(1, h)
            parts += [(x, y, w, at), (x, y + at, w, h - at)]
        else:
            parts.append((x, y, w, h))
    random.shuffle(parts)
    kept = parts[: max(1, len(parts) * random.randrange(1, 5) // 4)]
    return width, [_within(random, part) for part in kept]


def _within(random, part):
    """A box somewhere in a part, more often than not all of it."""
    x, y, w, h = part
    if random.random() < 0.6:
        return part
    left, low = random.randrange(w), random.randrange(h)
    return x + left, y + low, random.randrange(w - left) + 1, random.randrange(h - low) + 1


@settings(max_examples=300, deadline=None, derandomize=True)
@given(cut_layouts())
def test_whatever_was_cut_up_from_edge_to_edge_can_be_cut_up_again(layout):
    width, boxes = layout
    cuts_of(width, *boxes)


@settings(max_examples=100, deadline=None, derandomize=True)
@given(strips())
def test_every_straight_plan_can_be_cut_apart_without_its_own_cuts(strip):
    plan = planned(strip, straight_plan, 5_000)
    check_cuts(strip, cut_apart(plan, strip.width))


def test_a_plan_of_many_equal_panels_is_cut_apart():
    strip = Strip(54, (Panel("a", 18, 18, MOST_PANELS),))
    plan = straight_plan(strip, 20_000)
    again = cut_apart(plan, strip.width)
    check_cuts(strip, again)
    assert again.full_width_cuts == plan.full_width_cuts == -(-MOST_PANELS // 3)
