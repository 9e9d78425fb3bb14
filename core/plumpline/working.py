"""How a figure came about, in sentences a maker can check with a pencil."""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from itertools import pairwise

from plumpline.cloth import lost_before_cutting
from plumpline.cushions.made import Made
from plumpline.figures import counted, length_to_ask, percent, rounded, selling_step, size, told
from plumpline.job import HABITS, Job
from plumpline.layout.strip import Placement, Plan
from plumpline.layplan import ClothPlan, first_motif
from plumpline.lengths import UNITS, round_half_even, write_length
from plumpline.materials.strips import bias_cloth, bias_square, least_square, straight_strips
from plumpline.measures import word_of
from plumpline.money import cost, write_money
from plumpline.pieces import Strips
from plumpline.washing import square_lines


def cover_working(cover: Made, job: Job) -> list[str]:
    """From what was measured to the cut size."""
    units, cushion = job.units, cover.cushion
    insert = cushion.insert
    measured = told(insert.size.only(cover.finished.names), units)
    finished = told(cover.finished, units)
    if cushion.size_from == "finished":
        lines = [f"Finished size wanted: {finished}."]
        lines.append(f"Pad {_smaller(cover, job, 'larger')} ({cover.fit.rule}): {told(cover.pad.size, units)}.")
    elif insert.measured == "old-cover":
        lines = [f"Old cover, seam to seam: {measured}; the new one is made the same."]
    elif insert.measured == "opening":
        less = write_length(insert.clearance, units)
        lines = [f"Opening {measured}, less {less} clearance: finished {finished}."]
    else:
        what = {"insert": "Pad", "foam": "Foam", "label": "Label"}[insert.measured]
        lines = [f"{what} {measured}; {_smaller(cover, job, 'smaller')} ({cover.fit.rule}): finished {finished}."]
    return [*lines, *cover.cutting]


def _smaller(cover: Made, job: Job, word: str) -> str:
    (first, by), *others = [(word_of(name, cover.fit.by.names).noun, nm) for name, nm in cover.fit.by]
    text = f"{write_length(by, job.units)} {word}"
    if any(nm != by for _, nm in others):
        each = [f"{write_length(nm, job.units)} in {noun}" for noun, nm in others]
        return ", ".join([f"{text} in {first}", *each])
    return text if by else "the same size"


def cloth_working(planned: ClothPlan, job: Job) -> list[str]:
    """From the bolt's width to the length to ask for."""
    return [
        _width_line(planned, job),
        *_panel_lines(planned, job),
        *_wash_lines(planned, job),
        *([row_line(planned, planned.plan, job)] if planned.pieces else []),
        *_strip_lines(planned, job),
        *start_lines(planned, job.units),
        *_end_lines(planned, job),
        *_price_lines(planned, job),
    ]


def _width_line(planned: ClothPlan, job: Job) -> str:
    cloth, units = planned.cloth, job.units
    wide = write_length(cloth.width or 0, units)
    if not cloth.selvedge:
        return f"The cloth is {wide} wide, and all of it is used, edge to edge."
    left = write_length((cloth.width or 0) - 2 * cloth.selvedge, units)
    assumed = "" if cloth.selvedge_said else ", the usual allowance"
    return f"{wide} wide, less {write_length(cloth.selvedge, units)} selvedge a side{assumed}: {left} usable."


def _panel_lines(planned: ClothPlan, job: Job) -> list[str]:
    sizes: Counter[tuple[int, int]] = Counter()
    for piece in planned.pieces:
        sizes[piece.width, piece.length] += piece.count
    return [f"{counted(n, 'panel', 'panels')} of {size(*cut, job.units)}." for cut, n in sizes.items()]


def _wash_lines(planned: ClothPlan, job: Job) -> list[str]:
    across, along = lost_before_cutting(planned.cloth)
    lines = square_lines(planned.cloth, job.units)
    if not (across or along):
        return lines
    usable = write_length(planned.laid.usable, job.units)
    lines += [f"Washed before cutting, {usable} of usable width is left."]
    if planned.laid.repeat and planned.laid.repeat.along:
        lines.append(f"The repeat along comes down to {_finely(planned.laid.repeat.along, job.units)}.")
    return lines


def rows_of(placements: tuple[Placement, ...]) -> list[list[Placement]] | None:
    """The panels by rows, if the plan is made of level rows in which nothing reaches into anything else."""
    rows: dict[int, list[Placement]] = {}
    for placed in placements:
        rows.setdefault(placed.y, []).append(placed)
    ordered = [rows[y] for y in sorted(rows)]
    tops = [max(p.y + p.h for p in row) for row in ordered]
    level = all(top <= row[0].y for top, row in zip(tops, ordered[1:], strict=False))
    return ordered if level and all(_lie_apart(row) for row in ordered) else None


def _lie_apart(row: list[Placement]) -> bool:
    beside = sorted(row, key=lambda placed: placed.x)
    return all(left.x + left.w <= right.x for left, right in pairwise(beside))


def most_across(placements: tuple[Placement, ...]) -> int:
    """The most panels that any line across the cloth meets."""
    steps = sorted([(p.y, 1) for p in placements] + [(p.y + p.h, -1) for p in placements])
    most = now = 0
    for _, step in steps:
        now += step
        most = max(most, now)
    return most


def row_line(planned: ClothPlan, plan: Plan, job: Job) -> str:
    """How the panels of a plan lie, and the length that they take."""
    units, placed = job.units, plan.placements
    laid = write_length(plan.panels_end, units)
    rows = rows_of(placed)
    if rows is None or len({(p.w, p.h) for p in placed}) > 1:
        return f"Laid as drawn, they take {laid}."
    first = placed[0]
    width = write_length(planned.laid.usable, units)
    across = f"{most_across(placed)} across {width}"
    lead, pitch = rows[0][0].y, rows[1][0].y - rows[0][0].y if len(rows) > 1 else 0
    even = all(row[0].y == lead + i * pitch for i, row in enumerate(rows))
    if not even:
        return f"{across}; {len(rows)} rows, spaced as drawn: {laid}."
    before = f"{write_length(lead, units)} to the first row + " if lead else ""
    one, count = write_length(first.h, units), counted(len(rows), "row", "rows")
    if len(rows) > 1 and pitch > first.h:
        steps = f"{len(rows) - 1} × {_finely(pitch, units)} from row to row + {one}"
        return f"{across}; {count}: {before}{steps} = {_finely(plan.panels_end, units)}."
    if len(rows) == 1 and not lead:
        return f"{across}; {count} of {laid}."
    rows_together = f"{count} × {one}" if len(rows) > 1 else f"{count} of {one}"
    return f"{across}; {before}{rows_together} = {laid}."


def _strip_lines(planned: ClothPlan, job: Job) -> list[str]:
    """The strips cut from what the panels leave, and what they take beyond them."""
    units, plan = job.units, planned.plan
    lines = []
    for strips, cut in zip(planned.strips, plan.piping, strict=True):
        number = counted(sum(len(piece.lengths) for piece in cut.pieces), "strip", "strips")
        if strips.bias:
            number = f"{counted(len(cut.pieces), 'block', 'blocks')} of bias, {number}"
        rings = counted(strips.count, "ring", "rings")
        lines.append(
            f"{rings} of {strips.part}, {write_length(strips.width, units)} wide, {write_length(strips.length, units)} "
            f"each: {number}, {counted(cut.joins, 'join', 'joins')}."
        )
    if lines and plan.length > plan.panels_end:
        more, all_ = (write_length(nm, units) for nm in (plan.length - plan.panels_end, plan.length))
        lines.append(f"The strips take {more} beyond the panels: {all_}." if planned.pieces else f"They take {all_}.")
    elif lines:
        lines.append("All of them come out of what is left between the panels.")
    for strips in planned.strips:
        lines += _bias_lines(strips, planned, job) if strips.bias else _across_line(strips, planned, units)
    return lines


def _across_line(strips: Strips, planned: ClothPlan, units: str) -> list[str]:
    """What straight strips would take if they were not cut from between panels: whole strips across the cloth."""
    whole = strips.count * strips.length
    alone = straight_strips(whole, strips.width, planned.laid.usable, strips.join) if planned.pieces else None
    return [f"{_capital(strips.part)} cut across the cloth by itself instead: {alone.working(units)}"] if alone else []


def _bias_lines(strips: Strips, planned: ClothPlan, job: Job) -> list[str]:
    """What the published rule asks for, and why that is less than is cut; the square that they could come from.

    No square is named that would be wider than the cloth.
    """
    units, usable, whole = job.units, planned.laid.usable, strips.count * strips.length
    grid = job.grid or HABITS[units].grid
    rule = bias_cloth(whole, strips.width, usable, strips.shortest)
    length, width, shortest, wide, all_ = (
        write_length(nm, units) for nm in (whole, strips.width, strips.shortest, usable, rule)
    )
    named = _capital(strips.part)
    lines = [
        f"{named} by the textbooks' rule for joined bias: ({length} × {width} + {shortest} × {shortest} ÷ 2) ÷ {wide} "
        f"= {all_} off the whole width. It counts neither the joins nor what is lost at the ends of the strips."
    ]
    if least_square(whole, strips.width) + grid <= usable:
        text = bias_square(whole, strips.width, strips.join, grid).working(strips.width, units)
        lines.append(f"{named} cut from a square of its own instead: {text[0].lower()}{text[1:]}")
    return lines


def _capital(text: str) -> str:
    return f"{text[0].upper()}{text[1:]}"


def _finely(nm: int, units: str) -> str:
    """A length that is multiplied on paper: where the tape's grid does not hold it, with four decimals."""
    text = write_length(nm, units)
    return f"{rounded(Fraction(nm, UNITS[units]), 4)} {units}" if text.startswith("≈") else text


def start_lines(planned: ClothPlan, units: str) -> list[str]:
    """Where the first cut is to fall in the pattern, as measured on the bolt; nothing where it may fall anywhere."""
    found = first_motif(planned, planned.plan)
    if found is None or planned.cloth.start == "measured" or planned.repeats:
        return []
    motif, along = found
    as_bought = round_half_even(along / (1 - lost_before_cutting(planned.cloth)[1]))
    name = next(entry.name or "motif" for entry in planned.cloth.motifs if entry.id == motif)
    return [f"Have it cut so that the first {name} lies {write_length(as_bought, units)} behind the squared end."]


def _end_lines(planned: ClothPlan, job: Job) -> list[str]:
    cloth, units = planned.cloth, job.units
    lines = []
    so_far = planned.plan.length
    if cloth.squaring:
        assumed = "" if cloth.squaring_said else ", the usual allowance"
        so_far += cloth.squaring
        ends = write_length(cloth.squaring, units)
        lines.append(f"{ends} to square the two ends{assumed}: {write_length(so_far, units)}.")
    along = lost_before_cutting(cloth)[1]
    if along:
        before = planned.needed - planned.repeats * cloth.repeat_along
        lines.append(
            f"The wash takes {percent(along)} of the length, so ÷ {rounded(1 - along, 4)}: "
            f"{write_length(before, units)} as bought."
        )
    if planned.repeats:
        one, all_ = (write_length(nm, units) for nm in (cloth.repeat_along, planned.needed))
        lines.append(f"{one} more, one repeat, because the cut may fall anywhere: {all_}.")
    ask = length_to_ask(planned.buy, cloth.sold_by, units)
    lines.append(f"Sold by {selling_step(cloth.sold_by, units)}: ask for {ask}.")
    return lines


def _price_lines(planned: ClothPlan, job: Job) -> list[str]:
    price = planned.cloth.price
    if price is None:
        return []
    total = cost(planned.buy, price.minor, price.per)
    ask = length_to_ask(planned.buy, planned.cloth.sold_by, job.units)
    one, all_ = (write_money(minor, price.currency) for minor in (price.minor, total))
    return [f"{ask} at {one} {price.currency} a {price.per_unit}: {all_} {price.currency}."]
