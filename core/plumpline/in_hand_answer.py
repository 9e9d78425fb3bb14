"""The `piece` of a cloth's answer: whether a length in hand is enough, what it makes, and how else it would do."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from plumpline.answer import layout_answer, left_answer, motif_points, start_answer
from plumpline.figures import counted, figure, listed
from plumpline.in_hand import InHand
from plumpline.job import HABITS, Cloth, Job, name_of
from plumpline.layout.outlines import Point
from plumpline.layout.strip import Flaw
from plumpline.layplan import extent_across
from plumpline.lengths import write_length
from plumpline.notices import Notice, notice
from plumpline.offcuts import offcuts
from plumpline.other_ways import OtherWay
from plumpline.remnant import spread_working
from plumpline.working import row_line

Json = dict[str, Any]


def piece_answer(found: InHand, job: Job, ways: list[OtherWay]) -> Json:
    """What a length in hand makes; its drawing in nm, from its left usable edge and its squared cut end.

    `length` is what lies between its two squared lines, `usable_length` what is left of that once it is washed and
    squared. `ways_out` are changes of the job, each with the `piece` as it is then.
    """
    units, spread, lays = job.units, found.spread, found.lays
    return {
        "enough": found.enough,
        "spare": None if found.spare is None else figure(found.spare, units),
        "short_by": None if found.short_by is None else figure(found.short_by, units),
        "makes": dict(found.makes),
        "proven": found.proven,
        "text": verdict(found, job),
        "makes_text": makes_text(found, job),
        "cloth_width": figure(spread.cloth.width or 0, units),
        "selvedge": figure(spread.cloth.selvedge, units),
        "usable_width": figure(spread.laid.usable, units),
        "length": figure(spread.edges.between, units),
        "squaring": figure(spread.cloth.squaring, units),
        "usable_length": figure(max(spread.length, 0), units),
        "laid": figure(lays.plan.length, units) if lays else None,
        "start": start_answer(lays, lays.plan, units) if lays else None,
        "outline": [list(point) for point in spread.outline],
        "flaws": [_flaw(flaw) for flaw in spread.all_flaws(max(spread.length, 0))],
        "layout": layout_answer(lays, lays.plan, job) if lays else [],
        "offcuts": left_answer(offcuts(lays, lays.plan, lays.buy, HABITS[units].narrowest), units) if lays else [],
        "motif_points": [list(point) for point in motif_points(lays, lays.plan)] if lays else [],
        "working": [{"text": line} for line in _working(found, job)],
        "ways_out": [_way(way) for way in ways],
    }


def _way(way: OtherWay) -> Json:
    makes = "" if way.after.enough else f": {_covers_made(way.after)}"
    return {
        "text": f"{way.words}{makes}",
        "change": [{"at": change.at, "value": change.value} for change in way.changes],
        "piece": piece_answer(way.after, way.job, []),
    }


def _flaw(flaw: Flaw) -> Json:
    """A place that is kept clear, with its outline from its lower left corner where it is no rectangle."""
    box: Json = {"x": flaw.x, "y": flaw.y, "width": flaw.w, "length": flaw.h}
    corners: list[Point] = list(flaw.outline)
    return {**box, **({"outline": [list(corner) for corner in corners]} if corners else {})}


def verdict(found: InHand, job: Job) -> str:
    """Yes or no in one sentence, and by how much."""
    units = job.units
    if found.spare is not None:
        left = write_length(found.spare, units)
        return f"Yes: {left} of it is left." if found.spare else "Yes, to the last thread: nothing is left."
    if found.short_by is not None:
        return f"No: it is {write_length(found.short_by, units)} too short."
    return f"No: {_unfit(found, job)}."


def _unfit(found: InHand, job: Job) -> str:
    """Why some piece or strip has no place however long it were."""
    units, usable = job.units, write_length(found.spread.laid.usable, job.units)
    for piece, code in found.unfit:
        if code.startswith("too-wide"):
            wide = write_length(extent_across(piece, found.spread.cloth), units)
            return f"the {piece.called} is {wide} wide, and this piece has {usable} usable"
        if code == "no-motif-column":
            return f"the {piece.called} has no place on it where its motif is as asked"
        return f"the {piece.called} cannot lie the same way round on it as the rest of its cover"
    return f"no strip of {found.too_narrow_for_strips[0].part} that {usable} gives is long enough to be joined"


def narrow_piece(found: InHand, cloth: Cloth, job: Job) -> Iterator[Notice]:
    """What is said at the width of a piece that is too narrow for a panel, and what can still be made of it."""
    if any(code.startswith("too-wide") for _, code in found.unfit) or found.too_narrow_for_strips:
        why = _unfit(found, job)
        text = f"{why[0].upper()}{why[1:]}. {makes_text(found, job)}"
        yield notice("warn", "piece-too-narrow", f"{cloth.at}/piece/width", text)


def makes_text(found: InHand, job: Job) -> str:
    """How many complete covers it makes, of each kind."""
    if found.enough:
        return "It makes every cover."
    at_least = "" if found.proven else " More may fit than were found to."
    return f"It {_covers_made(found, job)}.{at_least}"


def _covers_made(found: InHand, job: Job | None = None) -> str:
    wanted = dict(found.wanted)
    if not found.covers:
        return "makes not one complete cover"
    if job is None or len(wanted) == 1:
        return f"makes {found.covers} of the {counted(sum(wanted.values()), 'cover', 'covers')}"
    names = {cushion.id: name_of(cushion) for cushion in job.cushions}
    return f"makes {listed([f'{made} of {wanted[id_]} “{names[id_]}”' for id_, made in found.makes])}"


def _working(found: InHand, job: Job) -> list[str]:
    units, lays = job.units, found.lays
    lines = list(spread_working(found.spread, units))
    if lays is not None and lays.repeats:
        most = write_length(lays.cloth.repeat_along, units)
        lines.append(f"Nobody knows where the pattern stands on it: up to {most} may go before the first panel.")
    if lays is not None and lays.plan.placements:
        lines.append(row_line(lays, lays.plan, job))
    if lays is not None:
        lines.append(f"{write_length(lays.needed, units)} of the piece is taken by what is laid on it.")
    if found.short_by is not None:
        needs = write_length(found.spread.edges.between + found.short_by, units)
        lines.append(f"For every cover it would have to be {needs} long.")
    return lines
