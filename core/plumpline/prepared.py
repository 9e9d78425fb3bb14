"""A job taken as far as its pieces: every cover worked out, and for each cloth what is cut from it."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.knife_edge import KnifeEdge, knife_edge
from plumpline.job import Cloth, Job, name_of, read_job
from plumpline.pieces import Piece
from plumpline.problems import Problem


@dataclass(frozen=True)
class Prepared:
    """The covers that can be made, the problems of the others, and the cloths whose pieces are all known."""

    job: Job
    covers: tuple[KnifeEdge, ...]
    problems: tuple[Problem, ...]
    waiting: frozenset[str]

    def pieces_on(self, cloth: Cloth) -> tuple[Piece, ...]:
        """What is cut from a cloth, in the order of the job."""
        pieces = [piece for cover in self.covers for piece in cover.pieces]
        return tuple(piece for piece in pieces if piece.face.cloth == cloth.id)

    def is_ready(self, cloth: Cloth) -> bool:
        """Whether a length may be asked for: something is cut from the cloth and none of it is still unknown."""
        return cloth.width is not None and cloth.id not in self.waiting and bool(self.pieces_on(cloth))


def prepare(document: object) -> Prepared | list[Problem]:
    """The job of a document worked out as far as its pieces, or every problem where there is no job in it."""
    job, problems = read_job(document)
    if job is None:
        return problems
    covers: list[KnifeEdge] = []
    waiting: set[str] = set()
    for cushion in job.cushions:
        made = knife_edge(cushion, job)
        if isinstance(made, KnifeEdge):
            covers.append(made)
        else:
            problems.extend(made)
            waiting |= {cushion.cover.front.cloth, cushion.cover.back.cloth}
    problems.extend(_cloth_problems(job))
    return Prepared(job, tuple(covers), tuple(problems), frozenset(waiting))


def _cloth_problems(job: Job) -> list[Problem]:
    used = {face.cloth for cushion in job.cushions for face in (cushion.cover.front, cushion.cover.back)}
    problems = []
    for cloth in job.cloths:
        if cloth.id not in used:
            continue
        if cloth.width is None:
            text = f"Measure the width of {name_of(cloth)}, between its two edges."
            problems.append(Problem(f"{cloth.at}/width", "missing-width", text))
        elif 2 * cloth.selvedge >= cloth.width:
            text = f"The selvedges leave nothing of {name_of(cloth)}: check its width and its selvedge."
            problems.append(Problem(f"{cloth.at}/selvedge", "rules-contradict", text))
        else:
            problems.extend(_flaw_problems(cloth))
    return problems


def _flaw_problems(cloth: Cloth) -> list[Problem]:
    problems = []
    for index, flaw in enumerate(cloth.flaws):
        if flaw.across + flaw.width > (cloth.width or 0):
            text = f"This flaw lies outside the cloth: {name_of(cloth)} is not that wide."
            problems.append(Problem(f"{cloth.at}/flaws/{index}/across", "flaw-outside", text))
    return problems
