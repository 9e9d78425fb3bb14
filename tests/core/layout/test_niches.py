"""Panels that are looked up instead of looked through are the same ones; the first small number is found."""

from random import Random

import pytest
from layout_checker import check

from plumpline.layout import Budget, Panel, Strip, lay_plan
from plumpline.layout.choices import choices_of
from plumpline.layout.desk import Desk
from plumpline.layout.firsts import Firsts
from plumpline.layout.niches import BestFit, BestFitOfMany, FirstFit, FirstFitOfMany, fill_niches
from plumpline.layout.places import kinds_of

ENDLESS = 1 << 200


def desk_of(random, count, sizes):
    """A desk of free panels, widths and lengths few enough that niches are often filled exactly."""
    panels = []
    for i in range(count):
        w, h, turns = random.choice(sizes), random.choice(sizes), random.choice([(0,), (0, 90)])
        panels.append(Panel(f"p{i}", w, h, random.randrange(1, 4), turns))
    strip = Strip(60, tuple(panels))
    choices = choices_of(strip)
    setting = choices.setting(next(choices.worth_trying()))
    return Desk(strip, setting, kinds_of(strip, setting), strip.width)


@pytest.mark.parametrize("seed", range(12))
@pytest.mark.parametrize(("slow", "fast"), [(BestFit, BestFitOfMany), (FirstFit, FirstFitOfMany)])
def test_looked_up_or_looked_through_the_same_panels_are_taken(slow, fast, seed):
    random = Random(seed)
    desk = desk_of(random, 5 + 3 * seed, [5, 10, 12, 15, 20, 23, 30][: 3 + seed % 5])
    order = [(k, -1) for k in range(len(desk.kinds))]
    random.shuffle(order)
    if slow is FirstFit:
        order = [(k, random.choice([-1, *range(len(desk.kinds[k].variants))])) for k, _ in order for _ in
                 range(desk.kinds[k].qty)]  # fmt: skip
    layouts = [fill_niches(desk, queue(desk, order), 40, ENDLESS, Budget(1)) for queue in (slow, fast)]
    assert layouts[0] == layouts[1] is not None


@pytest.mark.parametrize("turns", [(0,), (0, 90)])
def test_hundreds_of_panels_are_all_laid(turns):
    random = Random(3)
    panels = tuple(Panel(f"p{i}", random.randrange(20, 60), random.randrange(20, 60), 1, turns) for i in range(300))
    strip = Strip(140, panels)
    check(strip, lay_plan(strip, 1))


def test_the_first_small_number_is_that_of_looking_through():
    random = Random(5)
    for count in (1, 2, 3, 7, 8, 40):
        numbers = [random.randrange(50) for _ in range(count)]
        firsts = Firsts(numbers)
        left = list(numbers)
        while any(n is not None for n in left):
            most = random.randrange(60)
            place = next((i for i, n in enumerate(left) if n is not None and n <= most), -1)
            assert firsts.first(most) == place
            if place >= 0:
                firsts.take_out(place)
                left[place] = None
        assert firsts.first(60) == -1
