"""A job taken as far as its pieces: every cover worked out, and for each cloth what is cut from it."""

from __future__ import annotations

from dataclasses import dataclass

from plumpline.cushions.knife_edge import KnifeEdge, knife_edge
from plumpline.job import Cloth, Cushion, Job, name_of, read_job
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
        return cloth.id not in self.waiting and bool(self.pieces_on(cloth))


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
            waiting |= _cloths_of(cushion)
    for cloth in job.cloths:
        found = _cloth_problems(job, cloth)
        problems.extend(found)
        waiting |= {cloth.id} if found else set()
    return Prepared(job, tuple(covers), tuple(problems), frozenset(waiting))


def _cloths_of(cushion: Cushion) -> set[str]:
    return {cushion.cover.front.cloth, cushion.cover.back.cloth}


def _cloth_problems(job: Job, cloth: Cloth) -> list[Problem]:
    """What keeps a cloth from being laid; a cloth that nothing is cut from has no problems."""
    if not any(cloth.id in _cloths_of(cushion) for cushion in job.cushions):
        return []
    if cloth.width is None:
        text = f"Measure the width of {name_of(cloth)}, between its two edges."
        return [Problem(f"{cloth.at}/width", "missing-width", text)]
    if 2 * cloth.selvedge >= cloth.width:
        text = f"The selvedges leave nothing of {name_of(cloth)}: check its width and its selvedge."
        return [Problem(f"{cloth.at}/selvedge", "rules-contradict", text)]
    return _flaw_problems(cloth)


def _flaw_problems(cloth: Cloth) -> list[Problem]:
    problems = []
    for index, flaw in enumerate(cloth.flaws):
        if flaw.across + flaw.width > (cloth.width or 0):
            text = f"This flaw lies outside the cloth: {name_of(cloth)} is not that wide."
            problems.append(Problem(f"{cloth.at}/flaws/{index}/across", "flaw-outside", text))
    return problems
