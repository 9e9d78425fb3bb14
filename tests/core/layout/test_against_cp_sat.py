"""Random jobs under every rule against OR-tools CP-SAT: bounds lie below the shortest plan, plans not below it."""

import json
from pathlib import Path

import cp_sat
import pytest
from layout_checker import check
from proof_checker import accepts_proof
from random_strips import random_strip

from plumpline.layout import FULL_WORK, CannotLay, lay_plan
from plumpline.layout.instances import strip_of

pytestmark = pytest.mark.reference
WORK = 30_000
EFFORT = 0.05


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


@pytest.mark.long
@pytest.mark.parametrize("name", ["p10", "p11", "p12"])
def test_what_a_search_proves_of_the_trade_jobs_cp_sat_confirms(name):
    jobs = json.loads((Path(__file__).parent / "trade.json").read_text(encoding="utf-8"))["instances"]
    strip = strip_of(next(job for job in jobs if job["id"] == name))
    plan = lay_plan(strip, FULL_WORK)
    assert plan.proven
    assert plan.proof_name in ("exhaustive", "row-sections")
    assert cp_sat.shortest(strip, plan.length, 60.0) == plan.length
