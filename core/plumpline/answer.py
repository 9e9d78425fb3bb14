"""The answer in the form everything outside reads it: plain JSON types, every length with its text."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from typing import Any

from plumpline.bought import bought_answer
from plumpline.cloth import lost_before_cutting, to_buy
from plumpline.counter import counter_lines
from plumpline.cushions.edging import frill_of
from plumpline.cushions.filling import filling_of
from plumpline.cushions.made import Made
from plumpline.cushions.panels import SAG
from plumpline.cushions.rims import edged_rims
from plumpline.cutting import in_cutting_order, steps, strip_steps
from plumpline.figures import (
    counted,
    figure,
    in_other_system,
    length_to_ask,
    letters_for,
    percent,
    selling_step,
    sized,
    told,
    told_each,
)
from plumpline.geometry import room_within
from plumpline.job import HABITS, Job, shrunk
from plumpline.layout.bias import bias_lines
from plumpline.layout.outlines import extents_of, within_arcs
from plumpline.layout.strip import Cut, Placement, Plan, StripPiece
from plumpline.layplan import UP_OF_TURN, ClothPlan, first_motif, outline_as_laid
from plumpline.lengths import decimal_text, write_length
from plumpline.money import cost, write_money
from plumpline.offcuts import Rectangle, offcuts, offcuts_between
from plumpline.pieces import Outline, Piece, Strips
from plumpline.working import cloth_working, cover_working, most_across, rows_of

Json = dict[str, Any]


def cover_answer(cover: Made, job: Job) -> Json:
    """One entry of `cushions`: the sizes a cover comes out at, and how."""
    units, cushion, closing = job.units, cover.cushion, cover.closing
    return {
        "id": cushion.id,
        "name": cushion.name,
        "quantity": cushion.quantity,
        "finished": told_each(cover.finished, units),
        "smaller_by": _smaller_by(cover, units),
        "rule": cover.fit.rule,
        "pad": told_each(cover.pad.size, units),
        **_outlines(cover),
        "opening": figure(closing.length, units) if closing.kind == "hand-sewn" else None,
        "closing": {
            "kind": closing.kind,
            "at": closing.at,
            "side": None if closing.folds else closing.side,
            "edge": figure(closing.edge, units),
            "length": figure(closing.length, units),
            "allowance": figure(closing.allowance, units),
            "overlap": figure(closing.overlap, units) if closing.overlap else None,
            "up": figure(closing.folds.up, units) if closing.folds else None,
            "returns": figure(closing.returns, units) if closing.at == "boxing" else None,
        },
        "edge": _edge(cover, units),
        "corners": _corners(cover, units),
        "filling": _filling(cover, units),
        "working": [{"text": line} for line in cover_working(cover, job)],
    }


def _edge(cover: Made, units: str) -> Json:
    """The edge as it is made: what was not said stands here as it was taken."""
    edge = cover.cushion.cover.edge
    told: Json = {"kind": edge.kind}
    if edge.kind != "plain":
        told["rims"] = edge.rims
        told["join"] = figure(edge.join, units)
    for strips in cover.strips:
        told["strip"] = "bias" if strips.bias else "straight"
        told["shortest"] = figure(strips.shortest, units)
        told["cloth"] = strips.cloth
    if edge.kind == "piped":
        told["cord"] = {"nm": edge.cord, "text": write_length(edge.cord, units, 1)}
    if edge.kind == "frilled":
        told["depth"] = figure(edge.depth, units)
        told["fullness"] = decimal_text(frill_of(cover.cushion, edged_rims(cover)[0]).fullness)
    if edge.kind == "flanged":
        told["flange"] = figure(edge.flange, units)
    return told


def _corners(cover: Made, units: str) -> Json:
    """The corners as they are made: how deep they are tapered, or by how much they are rounded."""
    corners = cover.cushion.cover.corners
    depth = figure(corners.depth, units) if corners.kind == "tapered" else None
    radius = figure(corners.radius, units) if corners.kind == "rounded" else None
    return {"kind": corners.kind, "depth": depth, "radius": radius}


def _outlines(cover: Made) -> Json:
    """The outlines of the pad and of the finished cover, where they are neither squares nor rounds."""
    if not cover.outline:
        return {}
    return {
        "pad_outline": [list(point) for point in cover.pad.outline],
        "outline": [list(point) for point in cover.outline.points(SAG)],
    }


def _filling(cover: Made, units: str) -> Json | None:
    filling = filling_of(cover.pad.size, cover.cushion.insert.fill, units, cover.pad.outline)
    if filling is None:
        return None
    return {
        "text": filling.text,
        "working": [{"text": line} for line in filling.working],
        "geometry": [{"text": line} for line in filling.geometry],
    }


def _smaller_by(cover: Made, units: str) -> Json:
    by = cover.fit.by
    text = write_length(by.lengths[0], units) if len(set(by.lengths)) == 1 else told(by, units)
    return {**{name: figure(nm, units) for name, nm in by}, "text": text}


def pieces_answer(cover: Made, job: Job) -> list[Json]:
    """The entries of `pieces` of one cover: its panels, then what is cut in strips."""
    return [
        *(_piece_answer(piece, job) for piece in cover.pieces),
        *(_strips_answer(strips, job) for strips in cover.strips),
    ]


def _strips_answer(strips: Strips, job: Job) -> Json:
    """What is cut in strips and joined: its width, and how long each ring is."""
    corners = ((0, 0), (strips.width, 0), (strips.width, strips.length), (0, strips.length))
    return {
        "id": strips.id,
        "cushion": strips.cushion,
        "part": strips.part,
        "label": strips.part,
        "cloth": strips.cloth,
        "count": strips.count,
        **sized(strips.width, strips.length, job.units),
        "seam": figure(strips.seam, job.units),
        "outline": [list(corner) for corner in corners],
        "marks": [],
        "strips": {"grain": "bias" if strips.bias else "straight", "join": figure(strips.join, job.units)},
    }


def _piece_answer(piece: Piece, job: Job) -> Json:
    """What is chalked and cut as one panel."""
    return {
        "id": piece.id,
        "cushion": piece.cushion,
        "part": piece.part,
        "label": piece.called,
        "cloth": piece.face.cloth,
        "count": piece.count,
        **sized(piece.width, piece.length, job.units),
        "seam": figure(piece.seam, job.units),
        "outline": [list(point) for point in piece.outline],
        "face": _face(piece),
        "marks": [
            {"kind": mark.kind, "text": mark.text, "points": [list(point) for point in mark.points]}
            for mark in piece.marks
        ],
    }


def _face(piece: Piece) -> Json:
    """What is seen of a panel once it is sewn: the box around its stitching line, in nm from its lower left corner."""
    left, bottom, right, top = extents_of(piece.seam_line)
    return {"x": left, "y": bottom, "width": right - left, "length": top - bottom}


def cloth_answer(
    planned: ClothPlan, job: Job, check: str | None = None, tipping: Sequence[Json] = (), piece: Json | None = None
) -> Json:
    """One entry of `cloths`: the lay plan, the length to ask for, what it costs, and why, a `check` at the end.

    `tipping` are its tipping points, none before they were looked for; `piece` says whether the length in hand is
    enough.
    """
    cloth, units, plan = planned.cloth, job.units, planned.plan
    return {
        "cloth": cloth.id,
        "name": cloth.name,
        "cloth_width": figure(cloth.width or 0, units),
        "selvedge": figure(cloth.selvedge, units),
        "squaring": figure(cloth.squaring, units),
        "shrinkage": _shrinkage(planned),
        "usable_width": figure(planned.laid.usable, units),
        "across": panels_across(planned),
        "laid": figure(plan.length, units),
        "at_least": figure(plan.at_least, units),
        "proven": plan.proven,
        "proof": {"name": plan.proof_name, "data": plan.proof_data, "text": proof_text(planned, job)},
        "needed": figure(planned.needed, units),
        "buy": figure(planned.buy, units),
        "buy_proven": planned.buy_proven,
        "ask": {
            "text": length_to_ask(planned.buy, cloth.sold_by, units),
            "other": in_other_system(planned.buy, cloth.sold_by, units),
        },
        "start": start_answer(planned, plan, units),
        "cost": cost_answer(planned, planned.buy),
        "layout": layout_answer(planned, plan, job),
        "straight": _straight(planned, job),
        "offcuts": left_answer(offcuts(planned, plan, planned.buy, HABITS[units].narrowest), units),
        "motif_points": motif_points(planned, plan),
        "repeat": repeat_answer(planned, plan),
        "tipping": list(tipping),
        "counter": [{"text": line} for line in counter_lines(planned, job, tipping)],
        "working": [{"text": line} for line in [*cloth_working(planned, job), *([check] if check else [])]],
        **({"bought": bought} if (bought := bought_answer(planned, job)) else {}),
        **({"piece": piece} if piece else {}),
    }


def _shrinkage(planned: ClothPlan) -> Json:
    """What the first wash takes of the cloth, across and along."""
    return {name: {"text": percent(planned.cloth.shrinkage.lost(name))} for name in ("across", "along")}


def panels_across(planned: ClothPlan) -> int | None:
    """How many panels lie side by side, where that is one number: panels of one size that do not interlock."""
    placed = planned.plan.placements
    sizes = {(piece.width, piece.length) for piece in planned.pieces}
    interlocked = any(piece.shape != "rectangle" for piece in planned.pieces) and rows_of(placed) is None
    return most_across(placed) if len(sizes) == 1 and not interlocked else None


def cost_answer(planned: ClothPlan, buy: int) -> Json | None:
    """What a length of a cloth costs; None where its price is not known."""
    price = planned.cloth.price
    if price is None:
        return None
    total = cost(buy, price.minor, price.per)
    return {"amount": write_money(total, price.currency), "currency": price.currency}


def start_answer(planned: ClothPlan, plan: Plan, units: str) -> Json | None:
    """How far behind the squared end the first motif lies in a plan; None where nothing hangs on that."""
    found = first_motif(planned, plan)
    return None if found is None else {"motif": found[0], "along": figure(found[1], units)}


def _letters(planned: ClothPlan, job: Job) -> dict[str, str]:
    """The letter of each cover on a cloth by its id; none where the cloth is all for one."""
    cushions = [piece.cushion for piece in planned.pieces] + [strips.cushion for strips in planned.strips]
    several = len(set(cushions)) > 1
    return {cushion.id: letters_for(index + 1) if several else "" for index, cushion in enumerate(job.cushions)}


def layout_answer(planned: ClothPlan, plan: Plan, job: Job) -> list[Json]:
    """Where everything is laid, one entry for each panel, strip and block of bias."""
    pieces = {piece.id: piece for piece in planned.pieces}
    letters = _letters(planned, job)
    panels = [
        {
            "piece": placed.panel,
            "copy": placed.copy,
            "x": placed.x,
            "y": placed.y,
            "width": placed.w,
            "length": placed.h,
            "turn": placed.turn,
            "up": UP_OF_TURN[placed.turn],
            "cushion": pieces[placed.panel].cushion,
            "part": pieces[placed.panel].part,
            "label": _label(letters[pieces[placed.panel].cushion], placed.copy, pieces[placed.panel].called),
            **_outline_as_laid(pieces[placed.panel], placed),
        }
        for placed in plan.placements
    ]
    strips = [
        _strip_as_laid(one, copy, piece, _label(letters[one.cushion], copy, one.part), job)
        for one, cut in zip(planned.strips, plan.piping, strict=True)
        for copy, piece in enumerate(cut.pieces, start=1)
    ]
    return panels + strips


def _strip_as_laid(strips: Strips, copy: int, piece: StripPiece, label: str, job: Job) -> Json:
    """Where one straight strip or one block of bias is cut, and the lengths of the strips it gives."""
    return {
        "piece": strips.id,
        "copy": copy,
        "x": piece.x,
        "y": piece.y,
        "width": piece.w,
        "length": piece.h,
        "turn": 0,
        "up": "away",
        "cushion": strips.cushion,
        "part": strips.part,
        "label": label,
        "grain": piece.grain,
        "strips": [figure(length, job.units) for length in piece.lengths],
        **(_bias_as_laid(strips, piece) if piece.grain == "bias" else {}),
    }


def _bias_as_laid(strips: Strips, piece: StripPiece) -> Json:
    """The outline of a block, and the lines it is cut along, from its lower left corner."""
    lines = bias_lines(piece.w, piece.h, strips.width, strips.join, strips.shortest)
    return {
        "outline": [[0, 0], [piece.w, 0], [piece.w, piece.h], [0, piece.h]],
        "lines": [[list(end) for end in line] for line in lines],
    }


def _outline_as_laid(piece: Piece, placed: Placement) -> Json:
    """The outline of a piece that is not cut as a rectangle, from the lower left corner of where it lies.

    Beside that of straight sides, the `room` there is in it for its name.
    """
    if piece.shape == "rectangle":
        return {}
    laid = outline_as_laid(piece, placed)
    room = zip(("x", "y", "width", "length"), _room(laid), strict=True) if piece.shape == "outline" else None
    return {"outline": [list(point) for point in laid], **({"room": dict(room)} if room else {})}


@lru_cache(maxsize=256)
def _room(laid: Outline) -> tuple[int, int, int, int]:
    """The room within an outline as it lies; many copies lie alike, and do so again in a better plan."""
    return room_within(within_arcs(laid))


def _label(letter: str, copy: int, called: str) -> str:
    """ "3 front" where there is one kind of cover, "B3 front" where there are several."""
    return f"{letter}{copy} {called}"


def _straight(planned: ClothPlan, job: Job) -> Json:
    plan, units = planned.straight, job.units
    buy = to_buy(planned.cloth, planned.needed_for(plan))
    usable = planned.laid.usable
    cuts = in_cutting_order(plan.cuts, usable)
    letters = _letters(planned, job)
    of_strips = [letters[strips.cushion] for strips in planned.strips]
    return {
        "laid": figure(plan.length, units),
        "needed": figure(planned.needed_for(plan), units),
        "buy": figure(buy, units),
        "ask": {
            "text": length_to_ask(buy, planned.cloth.sold_by, units),
            "other": in_other_system(buy, planned.cloth.sold_by, units),
        },
        "cost": cost_answer(planned, buy),
        "start": start_answer(planned, plan, units),
        "layout": layout_answer(planned, plan, job),
        "offcuts": left_answer(offcuts_between(planned, plan, buy, HABITS[units].narrowest), units),
        "motif_points": motif_points(planned, plan),
        "repeat": repeat_answer(planned, plan),
        "cuts": [_cut(planned, cut, units) for cut in cuts],
        "steps": [
            {"title": step.title, "text": step.text}
            for step in (*steps(cuts, usable, units), *strip_steps(planned.strips, of_strips, plan.piping, units))
        ],
        "full_width_cuts": plan.full_width_cuts,
    }


def _cut(planned: ClothPlan, cut: Cut, units: str) -> Json:
    place = write_length(cut.y if cut.kind == "across" else cut.x, units)
    if cut.kind == "across":
        full = cut.length == planned.laid.usable
        text = f"Across at {place}" + ("" if full else f", from {write_length(cut.x, units)} on")
    else:
        end = write_length(cut.y + cut.length, units)
        text = f"Along at {place}, from {write_length(cut.y, units)} to {end}"
    return {
        "number": cut.number,
        "kind": cut.kind,
        "full_width": cut.kind == "across" and cut.length == planned.laid.usable,
        "text": text,
        "x": cut.x,
        "y": cut.y,
        "length": cut.length,
    }


def left_answer(rectangles: list[Rectangle], units: str) -> list[Json]:
    """What is left over, with its sizes."""
    return [{"x": x, "y": y, **sized(w, h, units)} for x, y, w, h in rectangles]


_MOST_POINTS = 2_000


def motif_points(planned: ClothPlan, plan: Plan) -> list[list[int]]:
    """Where the motifs fall on the laid length, for drawing: [x, y] in nm; none where the repeat is too fine."""
    repeat, points = planned.laid.repeat, []
    if repeat is None or not (repeat.across and repeat.along):
        return []
    columns = planned.laid.usable // repeat.across + 2
    if columns * (plan.length // repeat.along + 2) * len(planned.laid.motifs) > _MOST_POINTS:
        return []
    for motif in planned.laid.motifs:
        first = -(motif.ox // repeat.across)
        for i in range(first, first + columns):
            x = motif.ox + i * repeat.across
            y = (motif.oy + plan.phase + i * repeat.drop) % repeat.along
            while y <= plan.length and 0 <= x <= planned.laid.usable:
                points.append([x, y])
                y += repeat.along
    return points


def repeat_answer(planned: ClothPlan, plan: Plan) -> Json | None:
    """How the repeat lies in a plan, for drawing, in nm: its size as laid, 0 in a direction that does not repeat, and
    where the repeat begins that is counted from the left edge of the cloth, as motifs are. None for a plain cloth."""
    repeat = planned.laid.repeat
    if repeat is None:
        return None
    left = shrunk(-planned.cloth.selvedge, lost_before_cutting(planned.cloth)[0])
    return {"across": repeat.across, "along": repeat.along, "drop": repeat.drop, "x": left, "y": plan.phase}


def proof_text(planned: ClothPlan, job: Job) -> str:
    """What is known about shorter plans, and why, in the maker's words."""
    plan, cloth = planned.plan, planned.cloth
    if plan.proven:
        return f"No shorter plan exists. {_reason(planned, job)}"
    if planned.buy_proven:
        step = selling_step(cloth.sold_by, job.units)
        return f"A shorter plan may exist, but none that buys less: the shop sells by {step}. {_reason(planned, job)}"
    above = -(-(plan.length - plan.at_least) * 1000 // plan.at_least)
    return f"At most {above // 10}.{above % 10} % above the shortest possible. {_reason(planned, job)}"


def _reason(planned: ClothPlan, job: Job) -> str:
    plan, units = planned.plan, job.units
    least = write_length(plan.at_least, units)
    rows = rows_of(plan.placements)
    if plan.proven and rows and plan.length == plan.panels_end and _filled(planned, rows):
        across, pitch = most_across(plan.placements), rows[1][0].y - rows[0][0].y if len(rows) > 1 else 0
        beside = counted(across, "panel fits", "panels fit")
        apart = f", {write_length(pitch, units)} from one to the next," if pitch > plan.placements[0].h else ""
        least_rows = f"{len(rows)} rows{apart} are" if len(rows) > 1 else "1 row is"
        return f"At most {beside} side by side, so {least_rows} the least: {least}."
    return REASONS[plan.proof_name].format(least=least)


def _filled(planned: ClothPlan, rows: list[list[Placement]]) -> bool:
    """Whether counting rows explains the length: panels of one size, nothing in their way, from the cut end on."""
    sizes = {(placed.w, placed.h) for row in rows for placed in row}
    return len(sizes) == 1 and not planned.laid.flaws and rows[0][0].y == 0


# One sentence for each kind of proof the engine gives; `layout.bounds` says what each of them is.
REASONS = {
    "area": "The panels' own area fills {least} of the width.",
    "tallest": "The longest panel alone takes {least}.",
    "rows": "However the panels are set side by side, the rows together take at least {least}.",
    "row-sections": "Every way to lay one row behind another was tried: none holds all the panels short of {least}.",
    "spaced-rows": "So few fit side by side that the rows together take at least {least}.",
    "residue-rows": "So few fit side by side on the pattern that its repeats take at least {least}.",
    "stacks": "However the panels are stacked, they fill the width only from {least} on.",
    "wider-than-half": "The panels wider than half the cloth cannot lie side by side: they take {least}.",
    "possible-lengths": "However the panels are piled from the cut end, no pile of them ends short of {least}.",
    "true-area": "What the panels cover within their outlines fills {least} of the width.",
    "round-rows": "Round panels in rows, each row in the gaps of the one before, take at least {least}.",
    "round-density": "Round panels never lie closer than in a honeycomb: so many take at least {least}.",
    "inscribed": "The largest rectangles inside the panels alone already take {least}.",
    "area-with-strips": "The area of the panels and of all strips together fills {least} of the width.",
    "each-way": "Each way of turning and beginning was looked at by itself: none takes less than {least}.",
    "exhaustive": "Every layout shorter than {least} was tried: none holds all the panels.",
}
