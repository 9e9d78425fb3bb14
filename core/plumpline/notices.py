"""What the maker is told beside the answer: warnings, questions, and the ways out that were planned."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from plumpline import remedies
from plumpline.bought import bought_warnings
from plumpline.cushions.fit import most_apart
from plumpline.cushions.made import Made
from plumpline.cushions.rims import untrimmable
from plumpline.figures import length_to_ask
from plumpline.job import HABITS, Job, name_of
from plumpline.layout.budget import Slices
from plumpline.layout.strip import Repeat
from plumpline.layplan import ClothPlan, follows_repeat
from plumpline.lengths import write_length
from plumpline.pieces import Piece
from plumpline.prepared import Prepared
from plumpline.problems import Problem
from plumpline.washing import square_questions
from plumpline.working import start_lines

Notice = dict[str, Any]
Document = dict[str, Any]

_LEVELS = ("stop", "warn", "info")
# So many times the bare area of the panels, or more, is more than any pattern explains.
_FAR_ABOVE = 5


def notice(level: str, code: str, at: str, text: str, *ways_out: dict[str, Any]) -> Notice:
    """One notice in the form the answer carries; with several ways out, the first stands for itself as well."""
    first = ways_out[0] if ways_out else None
    several = {"ways_out": list(ways_out)} if len(ways_out) > 1 else {}
    return {"level": level, "code": code, "at": at, "text": text, "way_out": first, **several}


def stop(problem: Problem) -> Notice:
    """A problem that left part of the job without an answer."""
    return notice("stop", problem.code, problem.at, problem.text, *problem.ways_out)


def in_order(notices: list[Notice]) -> list[Notice]:
    """Stops first, then what has a way out, then warnings, then what is merely good to know."""
    return sorted(notices, key=lambda n: (n["level"] != "stop", n["way_out"] is None, _LEVELS.index(n["level"])))


def question(problem: Problem) -> Notice:
    """A reading that deserves a question."""
    return notice("warn", problem.code, problem.at, problem.text)


def cover_notices(cover: Made, job: Job) -> Iterator[Notice]:
    """What is worth saying about one cover."""
    insert, at = cover.cushion.insert, cover.cushion.at
    for name, first in insert.size.only(cover.finished.names):
        second = insert.again.get(name)
        if second and abs(first - second) > most_apart(insert.fill):
            one, two = (write_length(nm, job.units) for nm in (first, second))
            text = f"The two readings are {one} and {two}: lay the tape once more."
            yield notice("warn", "readings-disagree", f"{at}/insert/{name}", text)
    yield from _label_and_tape(cover, job)
    for problem in untrimmable(cover, job):
        yield notice("warn", problem.code, problem.at, problem.text)
    if insert.measured == "label" and cover.cushion.size_from == "insert":
        text = f"Planned from the label of {name_of(cover.cushion)}. Labels differ from pads: tape it before cutting."
        yield notice("warn", "tape-the-pad", f"{at}/insert/measured", text)


def _label_and_tape(cover: Made, job: Job) -> Iterator[Notice]:
    """A pad that is not what it was sold as: the tape counts (common practice; workrooms tape every labelled pad)."""
    cushion = cover.cushion
    if cushion.insert.measured not in ("insert", "foam") or cushion.size_from == "finished":
        return
    for name, taped in cushion.insert.size.only(cover.finished.names):
        sold = cushion.insert.label.get(name)
        if sold and abs(taped - sold) > most_apart(cushion.insert.fill):
            label, tape = (write_length(nm, job.units) for nm in (sold, taped))
            finished = write_length(cover.finished[name], job.units)
            text = f"The label says {label}, the tape {tape}: the cover is made to the tape, {finished} finished."
            yield notice("warn", "label-differs-from-tape", f"{cushion.at}/insert/label/{name}", text)


def cloth_notices(planned: ClothPlan, job: Job) -> Iterator[Notice]:
    """What is worth saying about one cloth without planning anything else."""
    yield from (question(problem) for problem in square_questions(planned.cloth, job.units))
    yield from (question(problem) for problem in bought_warnings(planned, job))
    yield from _larger_than_repeat(planned)
    yield from _far_above(planned, job)


def _far_above(planned: ClothPlan, job: Job) -> Iterator[Notice]:
    """A length that is many times what the panels fill is questioned, at the field that is most likely to be wrong.

    Panels that lie in one row take the length of one of them, whatever is left beside them: that is no slip.
    """
    area, longest = 0, 0
    for piece in planned.pieces:
        area += piece.width * piece.length * piece.count
        longest = max(longest, piece.length)
    for strips in planned.strips:
        area += strips.width * strips.length * strips.count
    floor = area // planned.laid.usable
    if planned.plan.length < _FAR_ABOVE * floor or planned.plan.length <= longest:
        return
    bound = planned.cloth.repeat_along and any(follows_repeat(planned.cloth, piece.face) for piece in planned.pieces)
    laid, bare = (write_length(nm, job.units) for nm in (planned.plan.length, floor))
    text = f"The panels alone would fill {bare}, yet {laid} are laid: check the measures"
    field = "repeat/along" if bound else "width"
    text += f" and {'the repeat' if bound else 'the width of the cloth'}."
    yield notice("warn", "far-above-the-floor", f"{planned.cloth.at}/{field}", text)


def _larger_than_repeat(planned: ClothPlan) -> Iterator[Notice]:
    repeat = planned.laid.repeat
    for piece in planned.pieces:
        is_face = piece.face.pattern == "centred" and piece.turns == "with the faces"
        if is_face and repeat and _shows_more(planned, piece, repeat):
            text = f"The {piece.called} is larger than the repeat, so the motif shows more than once: "
            text += "make sure the point you named is the one to have in the middle."
            yield notice("info", "larger-than-the-repeat", f"{piece.face_at}/motif", text)


def _shows_more(planned: ClothPlan, piece: Piece, repeat: Repeat) -> bool:
    across, along = piece.aside if planned.cloth.lies_aside else piece.upright
    return 0 < repeat.across < across or 0 < repeat.along < along


@dataclass(frozen=True)
class Margin:
    """A margin of which nothing is allowed: where it is asked for, what to say, and the `usual` one in words."""

    name: str
    at: str
    text: str
    usual: str

    def notice(self, careful: str = "") -> Notice:
        """What is said of it, and after it what it takes to be `careful`."""
        return notice("warn", f"no-{self.name}-margin", self.at, self.text + careful)


def missing_margins(planned: ClothPlan, job: Job) -> Iterator[Margin]:
    """The margins of a cloth planned to its very edges."""
    cloth, units = planned.cloth, job.units
    selvedge, squaring = (write_length(nm, units) for nm in (HABITS[units].selvedge, HABITS[units].squaring))
    if not cloth.selvedge:
        text = f"All {write_length(cloth.width or 0, units)} are used, edge to edge. Measure the width first."
        yield Margin("selvedge", f"{cloth.at}/width", text, f"{selvedge} a side")
    if not cloth.squaring:
        text = "Nothing is allowed for squaring the two ends."
        yield Margin("squaring", f"{cloth.at}/squaring", text, f"{squaring} for them")


def margin_notices(planned: ClothPlan, job: Job, document: Document, work: int) -> Slices[list[Notice]]:
    """Every missing margin, with what it takes to be careful."""
    said = []
    for margin in missing_margins(planned, job):
        careful = yield from remedies.usual_margin(document, planned, margin.name, work)
        takes = length_to_ask(careful.buy, planned.cloth.sold_by, job.units) if careful else ""
        said.append(margin.notice(f" With {margin.usual} it takes {takes}." if careful else ""))
    return said


def ways_out(prepared: Prepared, planned: ClothPlan, document: Document, work: int) -> Slices[list[Notice]]:
    """Every small change that was planned and saves a length."""
    units = prepared.job.units
    start = yield from remedies.chosen_start(document, planned, work)
    seam = yield from remedies.less_side_seam(document, prepared, planned, work)
    wider = (yield from remedies.wider_cloth(document, planned, work)) if seam is None else None
    turned = yield from remedies.free_turning(document, planned, work)
    along = yield from remedies.fewer_joins(document, prepared, planned, work)
    found = [
        start and _start(start, planned, units),
        seam and _seam(seam, units),
        wider and _wider(wider, planned, units),
        turned and _turning(turned, planned, units),
        along and _joins(along, planned, units),
    ]
    return [said for said in found if said]


def _saving(way: remedies.WayOut, units: str) -> str:
    step = way.after.cloth.sold_by
    return f"{length_to_ask(way.after.buy, step, units)} would do, {length_to_ask(way.saved, step, units)} less"


def _seam(way: remedies.WayOut, units: str) -> Notice:
    seams = sorted({str(change.value) for change in way.changes})
    widths = sorted({piece.width for piece in way.after.pieces})
    narrow = " and ".join(write_length(width, units) for width in widths)
    do = f"Cut the panels {narrow} wide (side seams {' and '.join(seams)})"
    text = f"A little less side seam and one more panel fits side by side: {_saving(way, units)}."
    at = way.changes[0].at.removesuffix("side_seam") + "seam"
    return notice("info", "one-more-would-fit", at, text, way.to_json(do, units))


def _wider(way: remedies.WayOut, planned: ClothPlan, units: str) -> Notice:
    width = way.changes[0].value
    text = f"On cloth {width} wide {_saving(way, units)}. Measure the width again, or look for a wider cloth."
    return notice("info", "wider-cloth", f"{planned.cloth.at}/width", text)


def _start(way: remedies.WayOut, planned: ClothPlan, units: str) -> Notice:
    text = "A whole repeat is added because the cut may fall anywhere. "
    text += " ".join([f"Chosen at the counter, {_saving(way, units)}.", *start_lines(way.after, units)])
    way_out = way.to_json("Choose where the first cut falls", units)
    return notice("info", "start-unknown", f"{planned.cloth.at}/start", text, way_out)


def _turning(way: remedies.WayOut, planned: ClothPlan, units: str) -> Notice:
    text = "If this cloth has no nap, no pattern and no right way up, panels may be turned: "
    text += f"{_saving(way, units)}."
    way_out = way.to_json("Let the panels be turned", units)
    return notice("info", "turning-would-save", f"{planned.cloth.at}/direction", text, way_out)


def _joins(ways: list[remedies.Choice], planned: ClothPlan, units: str) -> Notice:
    text = f"{name_of(planned.cloth)} is too narrow for some pieces, which are joined. "
    text = f"{text[0].upper()}{text[1:]}Along the roll they need fewer joins."
    return notice("info", "joins-can-be-saved", f"{planned.cloth.at}/up", text, *(way.to_json(units) for way in ways))
