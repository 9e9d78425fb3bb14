"""The problems that lay plans are measured on: published families, trade jobs, and made-up jobs nobody tuned for."""

import json
import random
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from bench.layout.made_up import made_up_jobs

DATA = Path(__file__).resolve().parent / "data"
TRADE = DATA.parent.parent.parent / "core/layout/trade.json"
ORDER = 1  # the seed of the order in which pieces come


@dataclass(frozen=True)
class Problem:
    """One instance as the engine takes it, the best length known, and what the shop sells by (1: any length)."""

    name: str
    instance: dict[str, Any]
    best_known: int
    step: int = 1

    @property
    def pieces(self) -> list[tuple[int, int]]:
        """Sizes, one by one, of an instance without rules."""
        return [(w, h) for w, h, count in self.instance["items"] for _ in range(count)]


def published(family: str) -> list[Problem]:
    """A published family, its pieces one by one in a shuffled order.

    Some published files list the pieces as they lie in a best layout, which would give the answer away.
    """
    found = []
    for given in json.loads((DATA / f"{family}.json").read_text("utf-8"))["instances"]:
        pieces = sorted((w, h) for w, h, count in given["items"] for _ in range(count))
        random.Random(ORDER).shuffle(pieces)
        instance = {"name": given["name"], "width": given["width"], "items": [[w, h, 1] for w, h in pieces]}
        found.append(Problem(given["name"], instance, given["best_known"]))
    return found


def trade() -> list[Problem]:
    """Eighteen jobs of a workroom, with the lengths that several solvers found."""
    given = json.loads(TRADE.read_text("utf-8"))["instances"]
    return [Problem(job["id"], job, job["best_known"], job["step"]) for job in given]


def unseen() -> list[Problem]:
    """Eighteen jobs like them from a seeded chance; the best lengths known are those of long runs, kept in a file."""
    known = json.loads((DATA / "unseen.json").read_text("utf-8"))["best_known"]
    return [Problem(job["id"], job, known[job["id"]], job["step"]) for job in made_up_jobs()]


FAMILIES = {
    "C": lambda: published("c"),
    "N": lambda: published("n")[:-1],
    "N13": lambda: published("n")[-1:],
    "ngcut": lambda: published("ngcut"),
    "cgcut": lambda: published("cgcut"),
    "gcut": lambda: published("gcut"),
    "beng": lambda: published("beng"),
    "trade": trade,
    "unseen": unseen,
}
