"""What fits a given length: against brute force on small random strips, against its proofs, and on trade jobs."""

from dataclasses import replace
from random import Random

import pytest
from fit_checker import check_fit, most_sets, refutes

from plumpline.layout import CannotLay, Flaw, Motif, Panel, Repeat, Strip, equal_sets, fit_sets


def random_job(random):
    """A small strip, some sets of its panels, and a length that may or may not be enough."""
    width = random.randrange(4, 8)
    bound = random.random() < 0.3
    repeat = Repeat(random.randrange(0, 4), random.randrange(2, 5), random.randrange(0, 3)) if bound else None
    panels = [
        Panel(
            f"p{i}", random.randrange(1, 5), random.randrange(1, 5), 1, random.choice([(0,), (0,), (0, 90)]),
            "m" if bound and random.random() < 0.6 else None, turn_group=random.choice([None, None, "t"]),
        )
        for i in range(random.randrange(1, 4))
    ]
    kinds = [{p.id: random.randrange(0, 3) for p in panels} for _ in range(random.randrange(1, 3))]
    sets = [dict(random.choice(kinds)) for _ in range(random.randrange(1, 4))]
    for p in panels:
        sets[0][p.id] = max(sets[0][p.id], 1)
    for one in sets[1:]:
        one[panels[0].id] = max(one[panels[0].id], 1)
    flaws = [Flaw(random.randrange(0, width), random.randrange(0, 5), 2, 2)] if random.random() < 0.4 else []
    counted = tuple(replace(p, qty=sum(one[p.id] for one in sets)) for p in panels)
    strip = Strip(
        width, counted, repeat, (Motif("m", random.randrange(3), random.randrange(3)),), flaws=tuple(flaws),
        gap=random.choice([0, 0, 1]),
    )
    area = sum(p.w * p.h * p.qty for p in counted)
    return strip, max(1, area * random.randrange(7, 21) // (10 * width)), sets


def test_yes_and_no_and_the_number_of_sets_are_those_of_brute_force():
    random = Random(20)
    answers = {"fits": 0, "some": 0, "none": 0}
    for _ in range(160):
        strip, length, sets = random_job(random)
        if sum(p.qty for p in strip.panels) > 8:
            continue
        try:
            found = fit_sets(strip, length, sets, 60_000)
        except CannotLay:
            continue
        check_fit(strip, length, sets, found)
        assert found.proven
        assert len(found.sets) == most_sets(strip, length, sets)
        answers["fits" if found.fits else "some" if found.sets else "none"] += 1
    assert min(answers.values()) > 10


def squares(width, quantity):
    return Strip(width, (Panel("face", 37, 37, quantity),))


def test_four_velvet_covers_come_out_of_150_cm_only_where_three_panels_lie_side_by_side():
    # A question asked in a public sewing forum: 18 1/2 in panels, 1.5 m = 59 in; in half inches.
    wide, narrow = squares(111, 8), squares(108, 8)
    found = fit_sets(wide, 118, equal_sets(wide, 4), 20_000)
    check_fit(wide, 118, equal_sets(wide, 4), found)
    assert (found.fits, found.left) == (True, 7)
    found = fit_sets(narrow, 118, equal_sets(narrow, 4), 20_000)
    check_fit(narrow, 118, equal_sets(narrow, 4), found)
    assert (found.fits, len(found.sets), found.proven) == (False, 3, True)


def test_a_length_exactly_as_long_as_the_plan_is_enough_and_one_unit_less_is_not():
    strip, sets = squares(111, 9), equal_sets(squares(111, 9))
    assert fit_sets(strip, 111, sets, 20_000).left == 0
    found = fit_sets(strip, 110, sets, 20_000)
    check_fit(strip, 110, sets, found)
    assert (found.fits, len(found.sets), found.proven) == (False, 6, True)


def mixed_covers(number):
    """Covers of different sizes, a front and a back in two pieces each."""
    sizes = [(32 + 5 * i % 27, 30 + 7 * i % 23) for i in range(number)]
    panels, sets = [], []
    for i, (w, h) in enumerate(sizes):
        panels += [Panel(f"front {i}", w, h, 1), Panel(f"back {i}", w, h // 2 + 6, 2)]
        sets.append({f"front {i}": 1, f"back {i}": 2})
    return Strip(108, tuple(panels)), sets


def test_of_many_different_covers_most_are_laid_and_the_least_sets_refute_too_many():
    strip, sets = mixed_covers(14)
    found = fit_sets(strip, 300, sets, 300_000)
    check_fit(strip, 300, sets, found)
    assert found.too_many.name == "least-sets"
    assert len(found.sets) >= found.too_many.sets - 2


def test_the_set_with_the_least_area_is_not_always_the_one_that_fits():
    strip, sets = Strip(60, (Panel("band", 2, 90, 1), Panel("face", 30, 30, 1))), [{"band": 1}, {"face": 1}]
    found = fit_sets(strip, 50, sets, 20_000)
    check_fit(strip, 50, sets, found)
    assert (found.sets, found.proven) == ((1,), True)


def test_round_covers_of_different_sizes_are_counted_by_their_true_area():
    sizes = [30, 34, 38, 42, 46, 50]
    strip = Strip(100, tuple(Panel(f"round {d}", d, d, 2, shape="circle") for d in sizes))
    sets = [{f"round {d}": 2} for d in sizes]
    found = fit_sets(strip, 110, sets, 60_000)
    check_fit(strip, 110, sets, found)
    assert len(found.sets) >= 3
    assert (found.too_many.name, found.too_many.data["name"]) == ("least-sets", "true-area")


def test_a_certificate_for_too_many_sets_does_not_refute_one_set_less():
    strip, sets = mixed_covers(14)
    found = fit_sets(strip, 300, sets, 60_000)
    fewer = replace(found.too_many, sets=len(found.sets))
    assert not refutes(strip, 300, sets, fewer)
    strip = squares(108, 8)
    found = fit_sets(strip, 118, equal_sets(strip, 4), 20_000)
    fewer = replace(found.too_many, sets=3)
    assert not refutes(strip, 118, equal_sets(strip, 4), fewer)


def test_without_time_nothing_is_claimed_that_was_not_seen():
    strip, sets = mixed_covers(40)
    found = fit_sets(strip, 900, sets, 1)
    check_fit(strip, 900, sets, found)
    assert len(found.sets) > 20
    assert not found.proven
    assert found.work < fit_sets(strip, 900, sets, 200_000).work


def test_sets_are_as_many_equal_ones_as_the_quantities_make():
    strip = Strip(60, (Panel("front", 20, 20, 6), Panel("band", 40, 5, 9)))
    assert equal_sets(strip) == [{"front": 2, "band": 3}] * 3
    assert equal_sets(strip, 1) == [{"front": 6, "band": 9}]
    with pytest.raises(ValueError, match="2 equal sets"):
        equal_sets(strip, 2)


@pytest.mark.parametrize(
    ("length", "sets", "reason"),
    [
        (0, [{"face": 2}], "length above 0"),
        (90, [{"face": 1}], "all panels"),
        (90, [{"face": 2}, {"fringe": 1}], "set 1 has panels"),
    ],
)
def test_sets_that_are_not_the_panels_are_refused(length, sets, reason):
    with pytest.raises(ValueError, match=reason):
        fit_sets(squares(111, 2), length, sets, 100)
