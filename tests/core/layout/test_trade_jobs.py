"""Eighteen jobs of a workroom: every plan is valid, proven bounds hold, and lengths stay near the best known."""

import json
from pathlib import Path

import pytest
from layout_checker import check, check_cuts
from proof_checker import accepts_proof

from plumpline.layout import FULL_WORK, QUICK_WORK, lay_plan, straight_plan
from plumpline.layout.instances import strip_of

JOBS = json.loads((Path(__file__).parent / "trade.json").read_text(encoding="utf-8"))["instances"]
QUICK_RATIO = 1.45


@pytest.mark.parametrize("job", JOBS, ids=lambda job: job["id"])
def test_a_trade_job_is_laid_close_to_the_best_known(job):
    strip = strip_of(job)
    plan = lay_plan(strip, FULL_WORK)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    assert job["proven_least"] <= plan.length <= job["best_known"] * job["within"]
    assert plan.at_least <= job["best_known"]


@pytest.mark.parametrize("job", JOBS, ids=lambda job: job["id"])
def test_a_quick_plan_is_valid_and_not_far_off(job):
    strip = strip_of(job)
    plan = lay_plan(strip, QUICK_WORK)
    check(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    assert job["proven_least"] <= plan.length <= job["best_known"] * QUICK_RATIO


@pytest.mark.parametrize("job", JOBS, ids=lambda job: job["id"])
def test_straight_cuts_are_valid_and_bounded(job):
    strip = strip_of(job)
    plan = straight_plan(strip, QUICK_WORK)
    check(strip, plan)
    check_cuts(strip, plan)
    assert accepts_proof(strip, plan.at_least, plan.proof_name, plan.proof_data)
    assert job["proven_least"] <= plan.length
