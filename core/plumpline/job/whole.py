"""The whole job: its covers and its cloths, and what to call them."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.job.cloths import Cloth
from plumpline.job.cushions import Cushion
from plumpline.measures import Measures
from plumpline.problems import Problem


@dataclass(frozen=True)
class Job:
    """A whole job, the questions its readings raise, and the cloths (by id) that something unread lies on.

    `fits` is the workroom's own rule of fit: how much smaller than its pad a cover is made, in nm by filling. Every
    cover is to come out `larger` by so many nm over each whole measure than its own measures say: 0 in every document,
    and another amount where it is asked what a size costs. `client` is whom it is for, "" where nobody is named.
    """

    id: str
    units: str
    grid: int
    fits: Measures
    cushions: tuple[Cushion, ...]
    cloths: tuple[Cloth, ...]
    questions: tuple[Problem, ...]
    unsure: frozenset[str]
    larger: int = 0
    client: str = ""

    def cloth(self, id_: str) -> Cloth:
        """The cloth of that id; the reader has made sure that there is one."""
        return next(cloth for cloth in self.cloths if cloth.id == id_)


def name_of(entry: Cloth | Cushion) -> str:
    """What to call a cloth or a cushion in a sentence: the maker's name for it, else a plain word."""
    if entry.name:
        return entry.name
    return f"cloth {entry.index + 1}" if isinstance(entry, Cloth) else f"cushion {entry.index + 1}"
