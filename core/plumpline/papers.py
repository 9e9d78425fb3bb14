# The papers of a job as PDF: from its document to the bytes of a file, the same for the same job.
"""The writer itself is imported only when a paper is wanted, so that no start waits for it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from plumpline import workroom
from plumpline.cushions.made import Made
from plumpline.dialect import WORDINGS, Wording, wording
from plumpline.figures import counted, listed, size
from plumpline.geometry import Point, room_within
from plumpline.job import Job, name_of
from plumpline.layout.outlines import within_arcs
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.pieces import Mark, Piece
from plumpline.prepared import Prepared, prepare
from plumpline.problems import JobError, Problem

if TYPE_CHECKING:
    from plumpline.paper.templates import Template

#: The sheets a paper can be made for.
PAPERS = ("a4", "letter")

_MOST_SHEETS = 400


def templates(job: dict[str, Any], paper: str = "a4", cushion: str | None = None, words: str = WORDINGS[0]) -> bytes:
    """Full-size templates of every cover of a job, or of one `cushion` by its id, as the bytes of a PDF.

    Pieces that are alike share a template; a tapered cover has one of its corner besides. Raises as `sheet` does, and
    a `JobError` where there is more to print than is ever printed.
    """
    from plumpline.paper.templates import sheet_count, write_templates

    prepared, covers = _covers(job, paper, cushion)
    shapes = [shape for cover in covers for shape in _shapes(cover, prepared.job)]
    sheets = sum(sheet_count(shape, paper) for shape in shapes)
    if sheets > _MOST_SHEETS:
        text = f"These templates take {sheets} sheets: print those of one cover at a time, at most {_MOST_SHEETS}."
        raise JobError([Problem("/cushions", "too-many", text)])
    said = wording(words, job)
    return write_templates(_title(job), [_reworded(shape, said) for shape in shapes], paper)


def sheet(job: dict[str, Any], paper: str = "a4", cushion: str | None = None, words: str = WORDINGS[0]) -> bytes:
    """The workroom's sheet of every cover of a job, or of one `cushion` by its id, as the bytes of a PDF.

    `paper` is "a4" or "letter", `words` one of `dialect.WORDINGS`. Raises `JobError` with every problem where there is
    nothing to print, `ValueError` for a paper or words there are not.
    """
    from plumpline.paper.workroom import write_sheets

    prepared, covers = _covers(job, paper, cushion)
    wanted = [one for one in workroom.sheets(prepared.covers, prepared.job) if one.bench.cover in covers]
    return write_sheets(_title(job), wanted, paper, wording(words, job))


def _covers(job: dict[str, Any], paper: str, cushion: str | None) -> tuple[Prepared, list[Made]]:
    """The job worked out, and those of its covers that are wanted."""
    if paper not in PAPERS:
        raise ValueError(f"paper is one of {', '.join(PAPERS)}, not {paper!r}")
    prepared = prepare(job)
    if not isinstance(prepared, Prepared):
        raise JobError(prepared)
    covers = [cover for cover in prepared.covers if cushion in (None, cover.cushion.id)]
    if not covers:
        raise JobError(prepared.problems or [_NO_COVER])
    return prepared, covers


_NO_COVER = Problem("/cushions", "missing-field", "There is no cover to print yet: measure one first.")


def _title(job: dict[str, Any]) -> str:
    return " · ".join(filter(None, (job.get("name"), job.get("client")))) or "Cushion covers"


def _shapes(cover: Made, job: Job) -> Iterator[Template]:
    """One template for all pieces of a cover that have one outline and the same marks, then their corner."""
    alike: dict[tuple[object, ...], list[Piece]] = {}
    for piece in cover.pieces:
        alike.setdefault((piece.outline, piece.marks), []).append(piece)
    for pieces in alike.values():
        yield _panel(cover, pieces, job)
        corner = next((mark for mark in pieces[0].marks if mark.kind == "taper"), None)
        if corner and pieces[0].shape == "rectangle":  # other outlines are cut by their template, tapers and all
            yield _corner(cover, pieces, corner)


def _reworded(shape: Template, said: Wording) -> Template:
    marks = [replace(mark, text=said(mark.text)) for mark in shape.marks]
    return replace(shape, title=said(shape.title), facts=tuple(map(said, shape.facts)), marks=tuple(marks))


def _called(cover: Made, pieces: list[Piece]) -> str:
    return f"{name_of(cover.cushion)}, {listed([piece.called for piece in pieces])}"


def _panel(cover: Made, pieces: list[Piece], job: Job) -> Template:
    from plumpline.paper.templates import Template

    piece, units = pieces[0], job.units
    each = " of each" if len(pieces) > 1 else ""
    cut = f"Cut {counted(piece.count, 'piece', 'pieces')}{each}, {size(piece.width, piece.length, units)}"
    cloths = listed(list(dict.fromkeys(name_of(job.cloth(one.face.cloth)) for one in pieces)))
    texts = dict.fromkeys(mark.text for mark in piece.marks)
    seams = listed([write_length(seam, units) for seam in dict.fromkeys(piece.around)])
    half = min(piece.length // 6, _ARROW)
    middle, up = _within(piece)
    return Template(
        title=_called(cover, pieces),
        facts=(f"{cut}, from {cloths}.", f"Seam {seams}, as drawn.", *(f"{text}." for text in texts)),
        outline=piece.outline,
        seam_line=piece.seam_line,
        guides=(),
        marks=tuple(mark for mark in piece.marks if mark.kind != "taper"),
        arrow=((middle, up - half), (middle, up + half)),
    )


_ARROW = 2 * NM_PER_INCH
_HOLD = NM_PER_INCH  # a corner's template reaches so far beyond the ends of its taper


def _within(piece: Piece) -> Point:
    """The middle of the most room within the piece."""
    whole = 0, 0, piece.width, piece.length
    x, y, width, length = room_within(within_arcs(piece.outline)) if piece.shape == "outline" else whole
    return x + width // 2, y + length // 2


def _corner(cover: Made, pieces: list[Piece], taper: Mark) -> Template:
    """The lower left corner alone, to lay on the corners of panels that were cut square."""
    from plumpline.paper.templates import Template

    (a, _), (d, e), (_, b) = taper.points
    across, up = min(a + _HOLD, pieces[0].width), min(b + _HOLD, pieces[0].length)
    use = "Lay it on each corner of the square panels"
    return Template(
        title=f"{_called(cover, pieces)}: corner",
        facts=(f"{taper.text}.", f"{use}{'' if a == b else ', turned over for every other one'}, and mark the taper."),
        outline=((d, e), (a, 0), (across, 0), (across, up), (0, up), (0, b)),
        seam_line=(),
        guides=(((a, 0), (0, 0), (0, b)),),
        marks=(),
        arrow=(),
    )
