"""Ways out: small changes to the job, each tried by planning it, that save a length at the counter."""

from __future__ import annotations

import copy
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations
from typing import Any

from plumpline.answer import cost_answer
from plumpline.figures import counted, figure, length_to_ask
from plumpline.job import HABITS, NM_PER_CM, Cloth
from plumpline.layout.budget import Slices
from plumpline.layout.strip import CannotLay
from plumpline.layplan import ClothPlan, extent_across, plan_cloth
from plumpline.lengths import NM_PER_INCH, write_length
from plumpline.pieces import Piece
from plumpline.prepared import Prepared, prepare

# How many seams are tried at most, so that a job of many sizes costs no more than one of few.
_MOST_TRIALS = 4
_MOST_ABREAST = 4


@dataclass(frozen=True)
class Change:
    """One value of the document to set: a JSON pointer and the new value; one behind the end of a list is added."""

    at: str
    value: str | int | dict[str, str]


@dataclass(frozen=True)
class WayOut:
    """Changes that were planned, the cloth's plan with them, and how much less is bought (nm).

    That is 0 where the changes make it just possible, and below 0 where they take more for the sake of fewer joins.
    """

    changes: tuple[Change, ...]
    after: ClothPlan
    saved: int

    def to_json(self, text: str, units: str) -> dict[str, Any]:
        """The way out as an answer carries it: what to do, what it buys and costs, what it saves."""
        step = self.after.cloth.sold_by
        return {
            "text": text,
            "buy": figure(self.after.buy, units),
            "ask": length_to_ask(self.after.buy, step, units),
            "cost": cost_answer(self.after, self.after.buy),
            "saves": length_to_ask(self.saved, step, units) if self.saved > 0 else None,
            "change": [{"at": change.at, "value": change.value} for change in self.changes],
        }


def changed(document: dict[str, Any], changes: tuple[Change, ...]) -> dict[str, Any]:
    """A copy of the document with the values set; objects missing on the way are made."""
    result = copy.deepcopy(document)
    for change in changes:
        *way, last = change.at.split("/")[1:]
        place: Any = result
        for name in way:
            place = place[int(name)] if isinstance(place, list) else place.setdefault(name, {})
        if isinstance(place, list):
            place[int(last) :] = [change.value]
        else:
            place[last] = change.value
    return result


def plan_with(document: dict[str, Any], changes: tuple[Change, ...], index: int, work: int) -> Slices[ClothPlan | None]:
    """The plan of cloth `index` with the changes made, if it can be planned with them."""
    prepared = prepare(changed(document, changes))
    if not isinstance(prepared, Prepared) or not prepared.is_ready(prepared.job.cloths[index]):
        return None
    cloth = prepared.job.cloths[index]
    try:
        return (yield from plan_cloth(cloth, prepared.pieces_on(cloth), prepared.strips_on(cloth), work))
    except CannotLay:
        return None


def _if_it_saves(
    document: dict[str, Any], changes: tuple[Change, ...], planned: ClothPlan, work: int
) -> Slices[WayOut | None]:
    after = yield from plan_with(document, changes, planned.cloth.index, work)
    if after is None or after.buy >= planned.buy:
        return None
    return WayOut(changes, after, planned.buy - after.buy)


def less_side_seam(
    document: dict[str, Any], prepared: Prepared, planned: ClothPlan, work: int
) -> Slices[WayOut | None]:
    """The least cut in the side seams that fits one more panel side by side and saves a length, if there is one.

    No seam is taken below 1/4 in (6 mm), the least that holds on furnishing cloth (common practice).
    """
    for less in _narrowings(prepared, planned)[:_MOST_TRIALS]:
        changes = tuple(_seam_changes(prepared, planned, less))
        way = (yield from _if_it_saves(document, changes, planned, work)) if changes else None
        if way is not None:
            return way
    return None


def _narrowings(prepared: Prepared, planned: ClothPlan) -> list[int]:
    """By how much every panel would have to be narrower for one more to fit, least first; nm on the grid."""
    grid = prepared.job.grid or 1
    if planned.cloth.lies_aside:
        return []
    widths = sorted({piece.width for piece in planned.pieces})
    usable = planned.laid.usable
    rows = _rows_just_too_wide(widths, usable)
    return sorted({-(-(total - usable) // giving // grid) * grid for total, counts in rows for giving in counts})


def _rows_just_too_wide(widths: list[int], usable: int) -> Iterator[tuple[int, set[int]]]:
    """Rows of one or two widths that do not fit any more: their width together, and how many panels could give way.

    Where there are two widths, the panels of one may have no seam to spare: then those of the other give all.
    """
    for w in widths:
        count = usable // w + 1
        yield count * w, {count}
    for a, b in combinations(widths[:_MOST_ABREAST], 2):
        for i in range(1, _MOST_ABREAST + 1):
            count = max(0, (usable - i * a) // b) + 1
            yield i * a + count * b, {i, count, i + count}


def _seam_changes(prepared: Prepared, planned: ClothPlan, less: int) -> Iterator[Change]:
    """For every cover cut from the cloth, the side seam that makes its panels `less` nm narrower."""
    job, cloth = prepared.job, planned.cloth
    for cover in prepared.covers:
        widths = [piece.width for piece in cover.pieces if piece.face.cloth == cloth.id]
        if not widths or cover.between_side_seams is None:
            continue
        seam = _seam_for(cover.between_side_seams, widths[0] - less, planned, job.units)
        if seam < HABITS[job.units].least_seam:
            continue
        yield Change(f"{cover.cushion.at}/cover/side_seam", write_length(seam, job.units, 1))


def _seam_for(finished: int, cut: int, planned: ClothPlan, units: str) -> int:
    """The side seam of a panel `finished` nm wide and cut `cut` nm, down to a figure that can be chalked.

    That is 1/32 in or 1/2 mm.
    """
    cloth = planned.cloth
    kept = 1 - (cloth.shrink_across if cloth.wash == "after-making" else 0)
    fine = NM_PER_INCH // 32 if units == "in" else NM_PER_CM // 20
    return int((cut * kept - finished) / 2 // fine) * fine


def chosen_start(document: dict[str, Any], planned: ClothPlan, work: int) -> Slices[WayOut | None]:
    """Choosing where the first cut falls, instead of buying a repeat for not knowing."""
    if not planned.repeats:
        return None
    return (yield from _if_it_saves(document, (Change(f"{planned.cloth.at}/start", "choose"),), planned, work))


def free_turning(document: dict[str, Any], planned: ClothPlan, work: int) -> Slices[WayOut | None]:
    """Turning panels, where the cloth has no pattern and nobody has said that it has a direction."""
    cloth = planned.cloth
    if cloth.direction_said or cloth.repeat_across or cloth.repeat_along:
        return None
    return (yield from _if_it_saves(document, (Change(f"{planned.cloth.at}/direction", "any"),), planned, work))


def usual_margin(document: dict[str, Any], planned: ClothPlan, name: str, work: int) -> Slices[ClothPlan | None]:
    """The plan with the usual `selvedge` or `squaring` in place of none: what it would cost to be careful."""
    habits = HABITS[document["units"]]
    usual = write_length(habits.selvedge if name == "selvedge" else habits.squaring, document["units"])
    return (yield from plan_with(document, (Change(f"{planned.cloth.at}/{name}", usual),), planned.cloth.index, work))


@dataclass(frozen=True)
class Choice:
    """One of several ways out between which the maker chooses, with what it is called."""

    words: str
    way: WayOut

    def to_json(self, units: str) -> dict[str, Any]:
        """The way out as an answer carries it."""
        return self.way.to_json(self.words, units)


Offer = tuple[str, tuple[Change, ...]]


def room_for(document: dict[str, Any], cloth: Cloth, blamed: list[Piece], work: int) -> Slices[list[Choice]]:
    """What gives a place to pieces that are too wide for their cloth, what buys least first.

    They are laid along the roll, turned where nothing keeps them from it, or joined.
    """
    found = []
    for words, changes in ways_to_make_room(cloth, blamed):
        after = yield from plan_with(document, changes, cloth.index, work)
        if after is not None:
            found.append(Choice(f"{words}{joins_in(after, blamed)}", WayOut(changes, after, 0)))
    return sorted(found, key=lambda choice: choice.way.after.buy)


def joins_in(after: ClothPlan, blamed: list[Piece]) -> str:
    """How many joins there are then in what was one piece each: ", 2 joins in all", or nothing."""
    whole = {piece.id: piece.count for piece in blamed}
    parts, pieces = 0, 0
    for piece in after.pieces:
        of = next((id_ for id_ in whole if piece.id.startswith(f"{id_}-")), None)
        parts += piece.count if of else 0
    for id_, count in whole.items():
        pieces += count if any(piece.id.startswith(f"{id_}-") for piece in after.pieces) else 0
    return f", {counted(parts - pieces, 'join', 'joins')} in all" if parts else ""


def ways_to_make_room(cloth: Cloth, blamed: list[Piece]) -> list[Offer]:
    """Every way there may be to give a place to pieces that are too wide for their cloth, before it is planned."""
    offers = [_along_the_roll(cloth), *turned(cloth)]
    faces = sorted({piece.face_at: piece.face for piece in blamed if piece.shape == "rectangle"}.items())
    along = [at for at, _ in faces if at.endswith("/sides")]
    if along:
        changes = tuple(Change(f"{at.removesuffix('/sides')}/boxing/run", "across") for at in along)
        offers.append(("Lay the boxing across the cloth and join it", changes))
    return [*offers, *joins_of_faces(blamed)]


def joins_of_faces(blamed: list[Piece]) -> list[Offer]:
    """Faces and layers that are too wide joined of several pieces, each way there is."""
    offers = []
    faces = sorted({piece.face_at: piece.face for piece in blamed if piece.shape == "rectangle"}.items())
    joinable = [(at, face) for at, face in faces if at.endswith(("/front", "/back")) or "/layers/" in at]
    for joined, words in _JOINED.items() if joinable else ():
        for pattern, matched in (
            _MATCHED.items() if any(face.has_motif for _, face in joinable) else _PLAIN.items()
        ):
            changes = tuple(
                change
                for at, face in joinable
                for change in (
                    Change(f"{at}/joined", joined),
                    *([Change(f"{at}/join_pattern", pattern)] if face.has_motif else []),
                )
            )
            offers.append((f"{words}{matched}", changes))
    return offers


_JOINED = {"both-ends": "Join an equal piece to each end", "one-side": "Join one piece to a side"}
_MATCHED = {"matched": ", the pattern matched", "free": ", the pattern not matched"}
_PLAIN = {"free": ""}


def _along_the_roll(cloth: Cloth) -> Offer:
    """Every panel laid the other way, upright or with its top to the left."""
    if cloth.lies_aside:
        return "Lay every panel upright", (Change(f"{cloth.at}/up", "away"),)
    words = "Run every panel along the roll"
    if cloth.repeat_across or cloth.repeat_along:
        words += ", with the pattern on its side"
    return words, (Change(f"{cloth.at}/up", "left"),)


def turned(cloth: Cloth) -> list[Offer]:
    """Turning panels one by one, where nobody has said that the cloth has a direction."""
    if cloth.direction_said or cloth.repeat_across or cloth.repeat_along:
        return []
    return [("Let the panels be turned, if the cloth has no direction", (Change(f"{cloth.at}/direction", "any"),))]


def fewer_joins(document: dict[str, Any], prepared: Prepared, planned: ClothPlan, work: int) -> Slices[list[Choice]]:
    """Ways to lay joined pieces along the roll in one length, whatever that costs: what saves most joins first."""
    units, cloth = prepared.job.units, planned.cloth
    found = []
    for words, changes in _without_joins(prepared, cloth):
        saved = _panels(planned.pieces) - _panels_with(document, changes, cloth)
        after = (yield from plan_with(document, changes, cloth.index, work)) if saved > 0 else None
        if after is not None:
            way = WayOut(changes, after, planned.buy - after.buy)
            words = f"{words}: {counted(saved, 'join', 'joins')} fewer{_dearer(way, units)}"
            found.append((saved, Choice(words, way)))
    return [choice for _, choice in sorted(found, key=lambda one: -one[0])]


def _without_joins(prepared: Prepared, cloth: Cloth) -> list[Offer]:
    """What may make joins needless: everything along the roll, the boxing alone where it may lie so."""
    offers = [] if cloth.lies_aside else [_along_the_roll(cloth)]
    boxed = [
        cover.cushion
        for cover in prepared.covers
        if cover.cushion.kind == "boxed" and cover.cushion.cover.face("sides").cloth == cloth.id
    ]
    turns = [] if cloth.direction_said or cloth.lies_aside else [change for _, way in turned(cloth) for change in way]
    if boxed and (turns or cloth.lies_aside or cloth.direction == "any"):
        changes = [Change(f"{cushion.at}/cover/boxing/run", "along") for cushion in boxed]
        offers.append(("Cut the boxing along the roll in one length", (*turns, *changes)))
    return offers


def _panels(pieces: tuple[Piece, ...]) -> int:
    count = 0
    for piece in pieces:
        count += piece.count
    return count


def _panels_with(document: dict[str, Any], changes: tuple[Change, ...], cloth: Cloth) -> int:
    """How many panels the cloth has with the changes made, which leave a job that can be worked out."""
    prepared = prepare(changed(document, changes))
    assert isinstance(prepared, Prepared)
    return _panels(prepared.pieces_on(cloth))


def _dearer(way: WayOut, units: str) -> str:
    more = length_to_ask(-way.saved, way.after.cloth.sold_by, units) if way.saved < 0 else ""
    return f", {more} more" if more else ""


def wider_cloth(document: dict[str, Any], planned: ClothPlan, work: int) -> Slices[WayOut | None]:
    """The least wider cloth, up to 4 in (10 cm) more, on which one more panel fits and a length is saved."""
    units = document["units"]
    most = 4 * NM_PER_INCH if units == "in" else 10 * NM_PER_CM
    widths = sorted({extent_across(piece, planned.cloth) for piece in planned.pieces})
    usable, wide = planned.laid.usable, planned.cloth.width or 0
    more = sorted({total - usable for total, _ in _rows_just_too_wide(widths, usable) if total - usable <= most})
    for extra in more[:_MOST_TRIALS]:
        step = HABITS[units].grid
        width = write_length(-(-(wide + extra) // step) * step, units)
        change = Change(f"{planned.cloth.at}/width", width)
        way = yield from _if_it_saves(document, (change,), planned, work)
        if way is not None:
            return way
    return None
