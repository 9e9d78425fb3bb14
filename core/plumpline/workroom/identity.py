# What tells one cover of a job from another: a short code to sew in, and which others are nearly its twins.

from __future__ import annotations

from collections.abc import Iterator, Sequence

from plumpline.cushions.made import Made
from plumpline.figures import letters_for, listed, told
from plumpline.job import NM_PER_CM, Cushion, Job, name_of
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.measures import word_of

# So near in every measure, covers are taken for each other (common practice).
_NEAR = {"in": NM_PER_INCH, "cm": 25 * NM_PER_CM // 10, "mm": 25 * NM_PER_CM // 10}
_SIGNS = 6


def code_of(cushion: Cushion, job: Job) -> str:
    """The code of a cover: that of the job, and the letter that its pieces have on the lay plan: "B2F0C1-A"."""
    return f"{job.id[:_SIGNS].upper()}-{letters_for(cushion.index + 1)}"


def hands_text(cushion: Cushion) -> str:
    """How many of an entry are made as they were measured, and how many the other way round."""
    as_measured = cushion.quantity - cushion.mirrored
    mirrored = f"{cushion.mirrored} mirrored"
    return f"{as_measured} as measured, {mirrored}" if as_measured else mirrored


def label_of(cover: Made, job: Job) -> str:
    """What to write on the label: the code, what the maker calls it, and its finished size."""
    return f"{code_of(cover.cushion, job)} · {name_of(cover.cushion)} · {told(cover.finished, job.units)}"


def twins_of(cover: Made, others: Sequence[Made], job: Job) -> Iterator[str]:
    """A sentence for every other cover that this one may be taken for, saying how they differ."""
    for other in others:
        if other is cover or _make(other) != _make(cover):
            continue
        apart = [(name, nm - other.finished[name]) for name, nm in cover.finished]
        if all(abs(nm) <= _NEAR[job.units] for _, nm in apart):
            yield f"{_differs(apart, job)} {code_of(other.cushion, job)}, {name_of(other.cushion)}."


def _make(cover: Made) -> tuple[str, tuple[str, ...]]:
    return cover.cushion.kind, cover.finished.names


def _differs(apart: list[tuple[str, int]], job: Job) -> str:
    names = tuple(name for name, _ in apart)
    by = [
        f"{write_length(abs(nm), job.units)} {'more' if nm > 0 else 'less'} in {word_of(name, names).noun}"
        for name, nm in apart
        if nm
    ]
    return f"{listed(by)} than" if by else "The same size as"
