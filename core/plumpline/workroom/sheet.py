# The sheet of a cover put together: its features each give their steps, and the bench's order sorts them.

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import asdict, dataclass
from typing import Any

from plumpline.cushions.made import Made
from plumpline.figures import size, told_each
from plumpline.job import Job, name_of
from plumpline.workroom import closures, cloth, corners, cutting, edges, finishing, joining, layers, making_up, marks
from plumpline.workroom.cautions import Caution, cautions
from plumpline.workroom.cutting import cut_size
from plumpline.workroom.facts import Fact, facts
from plumpline.workroom.identity import code_of, label_of, twins_of
from plumpline.workroom.marks import Chalked, chalked
from plumpline.workroom.step import STAGES, Bench, Step

Json = dict[str, Any]

#: Where steps come from, one file a feature; within a stage they stand in this order.
FEATURES: tuple[Callable[[Bench], Iterator[Step]], ...] = (
    cloth.steps,
    cutting.steps,
    marks.steps,
    making_up.steps,
    layers.steps,
    closures.steps,
    edges.steps,
    joining.steps,
    corners.steps,
    finishing.steps,
)


@dataclass(frozen=True)
class Cut:
    """A piece to cut as the sheet tells it: its id, what it is called, how many, how large, and of what cloth."""

    piece: str
    label: str
    count: int
    size: str
    cloth: str


@dataclass(frozen=True)
class Sheet:
    """All that the bench needs to know of one cover."""

    bench: Bench
    code: str
    label: str
    twins: tuple[str, ...]
    facts: tuple[Fact, ...]
    pieces: tuple[Cut, ...]
    marks: tuple[Chalked, ...]
    steps: tuple[Step, ...]
    cautions: tuple[Caution, ...]


def sheets(covers: Sequence[Made], job: Job) -> list[Sheet]:
    """A sheet for every cover, beside the others that it may be taken for."""
    return [_sheet(Bench(cover, job), covers) for cover in covers]


def _sheet(bench: Bench, covers: Sequence[Made]) -> Sheet:
    found = [step for feature in FEATURES for step in feature(bench)]
    return Sheet(
        bench=bench,
        code=code_of(bench.cover.cushion, bench.job),
        label=label_of(bench.cover, bench.job),
        twins=tuple(twins_of(bench.cover, covers, bench.job)),
        facts=tuple(facts(bench)),
        pieces=tuple(_cut(bench)),
        marks=tuple(chalked(bench)),
        steps=tuple(sorted(found, key=lambda step: STAGES.index(step.stage))),
        cautions=tuple(cautions(bench.cover)),
    )


def _cut(bench: Bench) -> Iterator[Cut]:
    """The pieces of a cover, then what is cut in strips."""
    cover, job = bench.cover, bench.job
    for piece in cover.pieces:
        cloth_name = name_of(job.cloth(piece.face.cloth))
        yield Cut(piece.id, piece.called, piece.count, cut_size(piece, bench), cloth_name)
    for strips in cover.strips:
        cut = size(strips.width, strips.length, job.units)
        yield Cut(strips.id, strips.part, strips.count, cut, name_of(job.cloth(strips.cloth)))


def sheet_answer(sheet: Sheet) -> Json:
    """One entry of `workroom`."""
    cushion, job = sheet.bench.cover.cushion, sheet.bench.job
    return {
        "cushion": cushion.id,
        "code": sheet.code,
        "label": sheet.label,
        "finished": told_each(sheet.bench.cover.finished, job.units),
        "twins": list(sheet.twins),
        "facts": [{"name": name, "text": text} for name, text in sheet.facts],
        "pieces": [asdict(piece) for piece in sheet.pieces],
        "marks": [{**asdict(mark), "pieces": list(mark.pieces)} for mark in sheet.marks],
        "steps": [
            {"id": _id(step, cushion.id), "title": step.title, "figure": step.figure, "text": step.text}
            for step in sheet.steps
        ],
        "cautions": [asdict(caution) for caution in sheet.cautions],
    }


def _id(step: Step, cushion: str) -> str:
    """The id that a step is ticked off by: the same on all sheets where it is done once for a cloth."""
    return f"make:cloth:{step.cloth}:{step.name}" if step.cloth else f"make:{cushion}:{step.name}"
