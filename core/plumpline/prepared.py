"""A job taken as far as its pieces: every cover worked out, and for each cloth what is cut from it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from plumpline.cloth import lay_out
from plumpline.cushions.catalogue import make
from plumpline.cushions.flowing import in_rows
from plumpline.cushions.made import Made
from plumpline.job import NM_PER_METRE, Cloth, Job, name_of, read_job
from plumpline.layplan import strips_too_short
from plumpline.pieces import Piece, Strips
from plumpline.problems import Problem
from plumpline.remnant import remnant_problems
from plumpline.washing import square_lines, square_problems

_FINEST_REPEAT = 6 * NM_PER_METRE // 1000
_WIDEST_CLOTH = 10 * NM_PER_METRE


@dataclass(frozen=True)
class Prepared:
    """The covers that can be made, the problems of the others, and the cloths whose pieces are all known.

    `not_in_hand` are the cloths whose piece in hand cannot be planned, which does not keep them from being bought.
    """

    job: Job
    covers: tuple[Made, ...]
    problems: tuple[Problem, ...]
    waiting: frozenset[str]
    not_in_hand: frozenset[str] = frozenset()

    def pieces_on(self, cloth: Cloth) -> tuple[Piece, ...]:
        """What is cut from a cloth, in the order of the job."""
        pieces = [piece for cover in self.covers for piece in cover.pieces]
        return tuple(piece for piece in pieces if piece.face.cloth == cloth.id)

    def strips_on(self, cloth: Cloth) -> tuple[Strips, ...]:
        """The strips that are cut from a cloth, in the order of the job."""
        return tuple(strips for cover in self.covers for strips in cover.strips if strips.cloth == cloth.id)

    def is_ready(self, cloth: Cloth) -> bool:
        """Whether a length may be asked for: something is cut from the cloth and none of it is still unknown."""
        return cloth.id not in self.waiting and bool(self.pieces_on(cloth) or self.strips_on(cloth))


def prepare(document: object) -> Prepared | list[Problem]:
    """The job of a document worked out as far as its pieces, or every problem where there is no job in it."""
    job, problems = read_job(document)
    return problems if job is None else worked_out(job, problems)


def worked_out(job: Job, known: Sequence[Problem] = ()) -> Prepared:
    """A job as far as its pieces, with the problems `known` so far and those of the covers and the cloths."""
    problems = list(known)
    covers: list[Made] = []
    waiting = set(job.unsure)
    for cushion in job.cushions:
        made = make(cushion, job)
        if isinstance(made, Made):
            covers.append(made)
        else:
            problems.extend(made)
            waiting |= set(cushion.cloths)
    not_in_hand: set[str] = set()
    for cloth in job.cloths:
        found = [] if cloth.id in job.unsure or not is_used(job, cloth) else _cloth_problems(cloth, job.units)
        found += [] if found or cloth.id in job.unsure else _strip_problems(cloth, covers)
        problems.extend(found)
        waiting |= {cloth.id} if found else set()
        of_piece = [] if found or not is_used(job, cloth) else remnant_problems(cloth, job.units)
        problems.extend(of_piece)
        not_in_hand |= {cloth.id} if of_piece else set()
    return Prepared(job, tuple(in_rows(covers)), tuple(problems), frozenset(waiting), frozenset(not_in_hand))


def is_used(job: Job, cloth: Cloth) -> bool:
    """Whether anything is cut from a cloth."""
    return any(cloth.id in cushion.cloths for cushion in job.cushions)


def _cloth_problems(cloth: Cloth, units: str) -> list[Problem]:
    """What keeps a cloth that something is cut from from being laid."""
    return [*square_problems(cloth, units), *_rule_problems(cloth, units), *_width_problems(cloth)]


def _strip_problems(cloth: Cloth, covers: list[Made]) -> list[Problem]:
    text = f"No strip that {name_of(cloth)} gives is long enough to be joined: choose a wider cloth for it."
    strips = [strips for cover in covers for strips in cover.strips if strips.cloth == cloth.id]
    return [Problem(f"{one.edge_at}/cloth", "too-wide", text) for one in strips if strips_too_short(one, cloth)]


def _rule_problems(cloth: Cloth, units: str) -> list[Problem]:
    problems = []
    if (cloth.shrink_across or cloth.shrink_along) and cloth.wash is None:
        text = " ".join(square_lines(cloth, units) or ["This cloth shrinks."])
        text += " Say whether it is washed before cutting or after making."
        problems.append(Problem(f"{cloth.at}/wash", "wash-not-said", text))
    if cloth.flaws and cloth.start != "measured":
        text = "Flaws are measured from the cut end: say that the start is measured, or take the flaws out."
        problems.append(Problem(f"{cloth.at}/flaws", "rules-contradict", text))
    for name, repeat in (("across", cloth.repeat_across), ("along", cloth.repeat_along)):
        if 0 < repeat < _FINEST_REPEAT:
            text = "A repeat below 6 mm (1/4 in) cannot be matched by hand: measure it again, or leave it out."
            problems.append(Problem(f"{cloth.at}/repeat/{name}", "repeat-too-fine", text))
    return problems


def _width_problems(cloth: Cloth) -> list[Problem]:
    if cloth.width is None:
        text = f"Measure the width of {name_of(cloth)}, between its two edges."
        return [Problem(f"{cloth.at}/width", "missing-width", text)]
    if cloth.width > _WIDEST_CLOTH:
        text = f"No cloth is wider than 10 m: check the width of {name_of(cloth)} and its unit."
        return [Problem(f"{cloth.at}/width", "wider-than-any-cloth", text)]
    if lay_out(cloth, cloth.width).usable <= 0:
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
