"""An unknown cut end: what to ask for is enough wherever the cut falls, and the bound on it never above the worst."""

from dataclasses import replace
from random import Random

from brute_force import fits, shortest
from layout_checker import check

from plumpline.layout import CannotLay, Motif, Panel, Repeat, Strip, equal_sets, fit_sets, lay_plan
from plumpline.layout.cut_end import Lost, lost_to_start


def random_print(random):
    repeat = Repeat(random.choice([0, 2, 3]), random.choice([2, 3, 4]), random.choice([0, 0, 1, 2]))
    panels = tuple(
        Panel(
            f"p{i}", random.randrange(1, 4), random.randrange(1, 4), random.randrange(1, 3),
            random.choice([(0,), (0, 180)]), "m" if i == 0 or random.random() < 0.7 else None, 0, random.randrange(2),
        )
        for i in range(random.randrange(1, 3))
    )
    motifs = (Motif("m", random.randrange(3), random.randrange(3)),)
    return Strip(random.randrange(4, 7), panels, repeat, motifs, "unknown")


def cut_everywhere(strip):
    """The strip with its cut end measured, at every place in the repeat."""
    for phase in range(strip.repeat.along):
        motifs = tuple(replace(motif, oy=motif.oy + phase) for motif in strip.motifs)
        yield replace(strip, motifs=motifs, start="measured")


def test_what_to_ask_for_is_enough_wherever_the_cut_falls():
    random = Random(1)
    agreed = certain = 0
    for _ in range(60):
        strip = random_print(random)
        try:
            plan, lost = lay_plan(strip, 20_000), lost_to_start(strip)
        except CannotLay:
            continue
        check(strip, plan)
        worst = max(shortest(measured, plan.length + lost.most) for measured in cut_everywhere(strip))
        assert plan.at_least + lost.least <= worst
        assert all(fits(measured, plan.length + lost.most) for measured in cut_everywhere(strip))
        agreed += plan.proven and lost.least == lost.most > 0
        certain += 0 < lost.least < lost.most
    assert agreed > 5
    assert certain > 3


def test_what_is_said_to_fit_fits_wherever_the_cut_falls():
    random = Random(2)
    seen = {True: 0, False: 0}
    for _ in range(60):
        strip, length = random_print(random), random.randrange(2, 11)
        try:
            found = fit_sets(strip, length, equal_sets(strip, 1), 20_000)
        except CannotLay:
            continue
        everywhere = all(fits(measured, length) for measured in cut_everywhere(strip))
        if found.fits:
            check(strip, found.plan)
            assert found.left == length - found.plan.length - lost_to_start(strip).most >= 0
            assert everywhere
        assert not (found.too_many is not None and everywhere)
        if found.proven:
            seen[found.fits] += 1
    assert min(seen.values()) > 5


def test_nothing_is_lost_where_the_start_is_known_or_nothing_hangs_on_it():
    strip = Strip(9, (Panel("a", 3, 3, 1, motif="m"),), Repeat(0, 8), (Motif("m", 0, 0),), "unknown")
    assert lost_to_start(strip) == Lost(7, 7)
    assert lost_to_start(replace(strip, start="choose")) == Lost()
    assert lost_to_start(replace(strip, repeat=Repeat(3, 0))) == Lost()
    assert lost_to_start(replace(strip, panels=(Panel("a", 3, 3, 1),))) == Lost()
    assert lost_to_start(replace(strip, panels=(*strip.panels, Panel("b", 2, 2, 1)))) == Lost(0, 7)
