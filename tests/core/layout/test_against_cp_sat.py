"""Random jobs under every rule against OR-tools CP-SAT: bounds lie below the shortest plan, plans not below it."""

import cp_sat
import pytest
from layout_checker import check
from proof_checker import accepts_proof
from random_strips import random_strip

from plumpline.layout import CannotLay, lay_plan

pytestmark = pytest.mark.reference
WORK = 30_000
EFFORT = 0.1


def compared(seeds):
    """How many of the jobs the solver settled, after checking bound, plan and certificate of each."""
    settled = proven = 0
    for seed in seeds:
        strip = random_strip(seed)
        try:
            plan = lay_plan(strip, WORK)
        except CannotLay:
            continue
        check(strip, plan)
        assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data), seed
        shortest = cp_sat.shortest(strip, plan.length, EFFORT)
        if shortest is not None:
            assert plan.at_least <= shortest <= plan.length, seed
            settled += 1
            proven += plan.proven
    assert proven * 2 > settled
    return settled


def test_two_hundred_jobs_are_bounded_rightly():
    assert compared(range(260)) >= 200


@pytest.mark.long
def test_two_thousand_jobs_are_bounded_rightly():
    assert compared(range(10_000, 12_600)) >= 2_000
