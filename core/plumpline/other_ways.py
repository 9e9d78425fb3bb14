"""Other ways to make do with a piece that is not enough: each is planned on it before it is offered.

They come in the order in which a maker would sooner agree to them: what only comes from another cloth, what is turned,
what gives up the pattern's place, fewer covers, smaller ones, a join. Those that make every cover come first.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from itertools import combinations
from typing import Any

from plumpline.figures import listed, told
from plumpline.in_hand import InHand, judge
from plumpline.job import HABITS, Cloth, Cushion, Job, name_of
from plumpline.layout.budget import Slices
from plumpline.lengths import write_length
from plumpline.measures import Measures
from plumpline.prepared import Prepared, prepare
from plumpline.remedies import Change, changed, joins_of_faces, turned


@dataclass(frozen=True)
class OtherWay:
    """A way to make do: what it is called, what changes in the document, and what the piece makes then."""

    words: str
    changes: tuple[Change, ...]
    after: InHand
    job: Job


Document = dict[str, Any]
Offer = tuple[str, tuple[Change, ...]]


def other_ways(document: Document, prepared: Prepared, cloth: Cloth, now: InHand, work: int) -> Slices[list[OtherWay]]:
    """Every way found in which the piece of a cloth makes more covers than it does `now`, or all of smaller ones."""
    look = _Look(document, cloth.index, work)
    offers = list(_offers(prepared, cloth))
    found = []
    for words, changes in offers:
        way = yield from look.at(words, changes)
        if way is not None and way.after.covers > now.covers:
            found.append(way)
    for words, changes in _together([offer for offer in offers if offer[0].startswith(_ELSEWHERE)]):
        if not any(way.after.enough for way in found):
            way = yield from look.at(words, changes)
            found += [way] if way is not None and way.after.enough else []
    found += yield from _fewer(look, prepared, now)
    found += yield from _smaller(look, prepared, cloth)
    for words, changes in _joins(cloth, now, prepared.job.units):
        way = yield from look.at(words, changes)
        found += [way] if way is not None and way.after.covers > now.covers else []
    return sorted(found, key=lambda way: not way.after.enough)


@dataclass(frozen=True)
class _Look:
    """Looks at a change of the document by planning it on the piece of the cloth with that index."""

    document: Document
    index: int
    work: int

    def at(self, words: str, changes: tuple[Change, ...]) -> Slices[OtherWay | None]:
        """The piece with the changes made; None where it cannot be planned with them."""
        prepared = prepare(changed(self.document, changes))
        if not isinstance(prepared, Prepared) or not prepared.is_ready(prepared.job.cloths[self.index]):
            return None
        after = yield from judge(prepared, prepared.job.cloths[self.index], None, self.work)
        return None if after is None else OtherWay(words, changes, after, prepared.job)


def _offers(prepared: Prepared, cloth: Cloth) -> Iterator[Offer]:
    """What can be said before anything is planned: from elsewhere first, then turned, then the pattern."""
    yield from _from_other_cloths(prepared, cloth)
    yield from turned(cloth)
    yield from _patterns(prepared, cloth)


_ELSEWHERE = "Cut the "


def _together(offers: list[Offer]) -> Iterator[Offer]:
    """Two of backs, piping and boxing from elsewhere, then all three: for where one of them alone is not enough."""
    for number in range(2, len(offers) + 1):
        for some in combinations(offers, number):
            changes: list[Change] = []
            for _, more in some:
                changes += [change for change in more if change not in changes]
            what, source = zip(*(words.removeprefix(_ELSEWHERE).split(" from ", 1) for words, _ in some), strict=True)
            yield f"{_ELSEWHERE}{listed(list(what))} from {source[0]}", tuple(changes)


def _from_other_cloths(prepared: Prepared, cloth: Cloth) -> Iterator[Offer]:
    """What does not show as much: backs, piping and boxing from another cloth of the job, or from one to be chosen."""
    job = prepared.job
    other = next((one for one in job.cloths if one.id != cloth.id), None)
    if other is None:
        new, source = _new_cloth(job), "another cloth"
        fresh: tuple[Change, ...] = (Change(f"/cloths/{len(job.cloths)}", {"id": new, "name": "second cloth"}),)
    else:
        new, source, fresh = other.id, name_of(other), ()
    covers = [cover.cushion for cover in prepared.covers]
    for words, find in (("backs", _back_of), ("piping", _edge_of), ("boxing", _boxing_of)):
        changes = [change for cushion in covers for change in find(cushion, cloth.id, new)]
        if changes:
            yield f"{_ELSEWHERE}{words} from {source}", (*fresh, *changes)


def _new_cloth(job: Job) -> str:
    taken = {cloth.id for cloth in job.cloths}
    return next(name for number in range(1, len(taken) + 2) if (name := f"k{number}") not in taken)


def _back_of(cushion: Cushion, cloth: str, other: str) -> Iterator[Change]:
    yield from _face_from(cushion, "back", cloth, other)


def _boxing_of(cushion: Cushion, cloth: str, other: str) -> Iterator[Change]:
    if cushion.kind == "boxed":
        yield from _face_from(cushion, "sides", cloth, other)


def _face_from(cushion: Cushion, part: str, cloth: str, other: str) -> Iterator[Change]:
    for name, face in cushion.cover.faces:
        if name == part and face.cloth == cloth:
            yield Change(f"{cushion.at}/cover/{part}/cloth", other)
            if face.pattern != "free":
                yield Change(f"{cushion.at}/cover/{part}/pattern", "free")


def _edge_of(cushion: Cushion, cloth: str, other: str) -> Iterator[Change]:
    edge = cushion.cover.edge
    if edge.is_of_strips and edge.cloth == cloth:
        yield Change(f"{cushion.at}/cover/edge/cloth", other)


def _patterns(prepared: Prepared, cloth: Cloth) -> Iterator[Offer]:
    """Faces that give up the place they have in the pattern."""
    faces = [(f"{cover.cushion.at}/cover/{part}/pattern", face) for cover in prepared.covers
             for part, face in cover.cushion.cover.faces if face.cloth == cloth.id]  # fmt: skip
    centred = [at for at, face in faces if face.has_motif]
    bound = [at for at, face in faces if face.pattern != "free"]
    if centred:
        yield "Set the motif off centre, all faces alike", tuple(Change(at, "alike") for at in centred)
    if bound:
        yield "Leave the pattern unmatched", tuple(Change(at, "free") for at in bound)


def _fewer(look: _Look, prepared: Prepared, now: InHand) -> Slices[list[OtherWay]]:
    """As many covers as the piece makes, where it makes at least one of each."""
    if not all(made for _, made in now.makes):
        return []
    wanted = dict(now.wanted)
    at = {cover.cushion.id: cover.cushion for cover in prepared.covers}
    fewer = [(at[id_], made) for id_, made in now.makes if made < wanted[id_]]
    if any(cushion.mirrored > made for cushion, made in fewer):
        return []
    of_one = len(now.makes) == 1
    words = [f"{made} of the {wanted[c.id]} {'covers' if of_one else f'“{name_of(c)}”'}" for c, made in fewer]
    way = yield from look.at(f"Make {listed(words)}", tuple(Change(f"{c.at}/quantity", made) for c, made in fewer))
    return [] if way is None or not way.after.enough else [way]


def _smaller(look: _Look, prepared: Prepared, cloth: Cloth) -> Slices[list[OtherWay]]:
    """The largest size of which the piece makes every cover: all covers smaller by one amount, to the job's grid."""
    covers = [cover for cover in prepared.covers if cloth.id in cover.cushion.cloths]
    cushions = [cover.cushion for cover in covers]
    measures = [cover.cushion.insert.size.only(_flat(cover.finished)) for cover in covers]
    if any(cushion.insert.shape == "polygon" for cushion in cushions):
        return []
    step = prepared.job.grid or HABITS[prepared.job.units].grid
    least = min(nm for size in measures for _, nm in size)
    units = prepared.job.units

    def smaller_by(steps: int) -> tuple[Change, ...]:
        return tuple(
            Change(f"{cushion.at}/insert/{name}", write_length(nm - steps * step, units, 1))
            for cushion, size in zip(cushions, measures, strict=True) for name, nm in size
        )  # fmt: skip

    sizes = _Sizes(look, smaller_by, (least - 1) // step)
    steps = yield from sizes.largest()
    if steps is None:
        return []
    way = sizes.seen[steps]
    assert way is not None
    before = sizes.seen.get(steps - 1)
    sure = before is None or before.after.proven
    return [replace(way, words=_size_words(cushions, measures, steps * step, units, sure=sure))]


def _flat(size: Measures) -> tuple[str, ...]:
    return tuple(name for name in size.names if name != "thickness")


class _Sizes:
    """The search for the least number of steps smaller that makes every cover: doubled until one does, then halved."""

    def __init__(self, look: _Look, smaller_by: Callable[[int], tuple[Change, ...]], most: int) -> None:
        self.look, self.smaller_by, self.most = look, smaller_by, most
        self.seen: dict[int, OtherWay | None] = {}

    def largest(self) -> Slices[int | None]:
        """So many steps smaller; None where no size was found to do."""
        low, high = 0, 1
        while high <= self.most and not (yield from self._does(high)):
            # The smallest size there is gets its try too.
            low, high = high, min(2 * high, max(self.most, high + 1))
        if high > self.most:
            return None
        while high - low > 1:
            middle = (low + high) // 2
            if (yield from self._does(middle)):
                high = middle
            else:
                low = middle
        return high

    def _does(self, steps: int) -> Slices[bool]:
        way = self.seen[steps] = yield from self.look.at("", self.smaller_by(steps))
        return way is not None and way.after.enough


def _size_words(cushions: list[Cushion], measures: list[Measures], less: int, units: str, *, sure: bool) -> str:
    if len(cushions) > 1:
        text = f"Make every cover {write_length(less, units)} smaller"
        return f"{text}: the largest that this piece makes" if sure else text
    size = Measures(tuple((name, nm - less) for name, nm in measures[0]))
    square = len(size.names) == 2 and len(set(size.lengths)) == 1
    text = write_length(size.lengths[0], units) if square else told(size, units)
    what = "cover this piece makes" if cushions[0].size_from == "finished" else "pad this piece takes"
    return f"The largest {what} is {text}" if sure else f"A size of {text} would do"


def _joins(cloth: Cloth, now: InHand, units: str) -> Iterator[Offer]:
    """Faces too wide for the piece, joined of pieces that fit it."""
    too_wide = [piece for piece, code in now.unfit if code.startswith("too-wide")]
    width = cloth.remnant.width if cloth.remnant else None
    if not too_wide or width is None:
        return
    for words, changes in joins_of_faces(too_wide):
        narrower = Change(f"{cloth.at}/width", write_length(width, units, 1))
        yield f"{words}, cut for the width of this piece", (*changes, narrower)
