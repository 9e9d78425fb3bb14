"""Trim and chain in packs of one length: the fewest packs, found exactly and checked against trying everything."""

import random
from itertools import product

import pytest

from plumpline.materials.packs import fewest_packs

IN = 25_400_000


def test_a42_four_cushions_take_four_packs_whole_and_three_with_a_hidden_join():
    """A maker's case: 54 in round each of 4 cushions, packs of 2 1/2 yd (90 in). 4 packs hold one whole length each;
    216 / 90 = 2.4, so 3 packs with no more than one hidden join a cushion."""
    whole = fewest_packs([54 * IN] * 4, 90 * IN, 0, 0)
    joined = fewest_packs([54 * IN] * 4, 90 * IN, 1, 0)
    assert (len(whole.packs), whole.joins, whole.proven) == (4, 0, True)
    assert (len(joined.packs), joined.proven) == (3, True)
    assert joined.joins == 1
    assert whole.working(90 * IN, "in") == "4 packs of 90 in, no join: 4 packs cut into 54 in."
    assert joined.working(90 * IN, "in") == (
        "3 packs of 90 in, 1 hidden join: 1 pack cut into 54 in; 1 pack cut into 54 in and 36 in; "
        "1 pack cut into 18 in and 54 in."
    )


def test_a_join_takes_its_overlap():
    joined = fewest_packs([60, 60, 60], 90, 1, 2)
    assert len(joined.packs) == 3
    assert joined.joins == 0
    assert len(fewest_packs([60, 60, 58], 90, 1, 2).packs) == 2
    assert len(fewest_packs([60, 60, 59], 90, 1, 2).packs) == 3


def fewest_by_trying(lengths, pack):
    """Every way of putting whole lengths into numbered packs."""
    for packs in range(1, len(lengths) + 1):
        for places in product(range(packs), repeat=len(lengths)):
            loads = [sum(n for n, place in zip(lengths, places, strict=True) if place == i) for i in range(packs)]
            if max(loads) <= pack:
                return packs
    return None


def test_whole_lengths_take_no_more_packs_than_the_best_of_all_ways():
    dice = random.Random(1)
    for _ in range(25):
        lengths = [1 + int(dice.random() * 60) for _ in range(5)]
        packed = fewest_packs(lengths, 60, 0, 0)
        assert len(packed.packs) == fewest_by_trying(lengths, 60)
        assert packed.proven


def fewest_joined_by_trying(lengths, pack, join):
    """Every way of cutting each length whole or in two parts (in steps of 1) from numbered packs."""
    for packs in range(-(-sum(lengths) // pack), len(lengths) + 1):
        loads = {(0,) * packs}
        for length in lengths:
            ways = [{i: length} for i in range(packs)] + [
                {i: part, j: length + join - part}
                for i in range(packs)
                for j in range(i)
                for part in range(1, length + join)
            ]
            loads = {
                tuple(sorted(load[i] + way.get(i, 0) for i in range(packs)))
                for load in loads
                for way in ways
                if all(load[i] + way.get(i, 0) <= pack for i in range(packs))
            }
        if loads:
            return packs
    return None


def test_joined_lengths_take_no_more_packs_than_the_best_of_all_ways():
    dice = random.Random(2)
    for join in (0, 1):
        for _ in range(6):
            lengths = [3 + int(dice.random() * 6) for _ in range(4)]
            packed = fewest_packs(lengths, 10, 1, join)
            assert packed.proven
            assert len(packed.packs) == fewest_joined_by_trying(lengths, 10, join)


def made_of(packed, pack, join):
    """Checks that no pack is overdrawn; all that is cut, less the overlaps."""
    assert all(sum(cuts) <= pack for cuts in packed.packs)
    return sum(map(sum, packed.packs)) - packed.joins * join


@pytest.mark.parametrize("joins", [0, 1, 2])
def test_everything_asked_for_is_cut(joins):
    dice = random.Random(3)
    for count in (1, 4, 9, 40):
        lengths = [20 + int(dice.random() * 60) for _ in range(count)]
        packed = fewest_packs(lengths, 90, joins, 2)
        assert made_of(packed, 90, 2) == sum(lengths)
        assert packed.at_least <= len(packed.packs)


def test_a_length_longer_than_a_pack_needs_a_join_and_a_much_longer_one_more():
    assert fewest_packs([100], 90, 0, 0) is None
    assert [len(fewest_packs([100], 90, joins, 2).packs) for joins in (1, 2)] == [2, 2]
    assert fewest_packs([200], 90, 1, 2) is None
    assert fewest_packs([200], 90, 2, 2).joins == 2
    assert fewest_packs([200], 90, 1, 95) is None


def test_lengths_that_would_get_two_joins_in_a_chain_are_not_called_proven():
    """One after the other, seven of these end 6 short of a pack's end, and the eighth would be joined twice."""
    packed = fewest_packs([100] * 8, 90, 1, 2)
    assert made_of(packed, 90, 2) == 800
    assert (len(packed.packs), packed.at_least, packed.proven) == (10, 9, False)
    assert ", at least 9," in packed.working(90, "mm")


def test_many_equal_lengths_are_proven_by_how_many_fit_a_pack():
    packed = fewest_packs([40] * 101, 90, 0, 0)
    assert (len(packed.packs), packed.proven) == (51, True)


def test_many_lengths_too_long_for_a_chain_are_joined_one_by_one():
    packed = fewest_packs([100 + i % 7 for i in range(35)] + [30], 90, 1, 2)
    assert made_of(packed, 90, 2) == sum(100 + i % 7 for i in range(35)) + 30
    assert packed.at_least <= len(packed.packs)


def test_a_long_list_of_packs_is_told_shortly():
    packed = fewest_packs([41 + i for i in range(20)], 90, 1, 1)
    assert packed.working(90, "mm").endswith("; and so on, one after the other.")
    assert packed.working(90, "mm").count("cut into") == 6


def test_a_hundred_thousand_equal_lengths_are_shared_out_at_once():
    packed = fewest_packs([30] * 100_000, 100, 0, 0)
    assert (len(packed.packs), packed.proven) == (33_334, True)


def test_a_good_way_for_many_lengths_says_how_few_packs_might_do():
    """Twenty each of 50, 30 and 20 in packs of 100: 20 packs would hold them, as all together are 2000."""
    packed = fewest_packs([50, 30, 20] * 20, 100, 0, 0)
    assert made_of(packed, 100, 0) == 2000
    assert (len(packed.packs), packed.at_least, packed.proven) == (21, 20, False)
