"""Is this piece enough? What a length in hand makes of the covers wanted from its cloth, apart from the purchase.

All that is laid on it lies between its two squared lines, clear of its flaws and of the corners cut out of it. Where
nobody knows where the pattern stands on it, the worst is planned for: the plan holds wherever it begins.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from plumpline.cloth import Laid, needed
from plumpline.cushions.made import Made
from plumpline.job import Cloth
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.fit import FitSearch
from plumpline.layout.piped import longest_strip
from plumpline.layout.solve import planner_of
from plumpline.layout.strip import CannotLay, Flaw, Motif, Plan, Strip
from plumpline.layplan import NO_PANELS, ClothPlan, cannot_be_laid, hangs_on_start, piping_of, strip_of
from plumpline.pieces import Piece, Strips
from plumpline.prepared import Prepared
from plumpline.remnant import Spread, spread_out

Counts = tuple[tuple[str, int], ...]


@dataclass(frozen=True)
class InHand:
    """What a length in hand makes; lengths in nm of the piece as it is, unwashed.

    `lays` is what is laid on it, the most complete covers found; None where not one fits. `makes` and `wanted` are
    complete covers by the id of their cushion, `spare` what is left of an amount that is enough, `short_by` how much
    longer the piece would have to be; None where no length would do, because of the `unfit` pieces (each with the
    code of why it has no place). `proven`: no more complete covers fit.
    """

    spread: Spread
    lays: ClothPlan | None
    makes: Counts
    wanted: Counts
    spare: int | None
    short_by: int | None
    proven: bool
    unfit: tuple[tuple[Piece, str], ...] = ()
    too_narrow_for_strips: tuple[Strips, ...] = ()

    @property
    def enough(self) -> bool:
        """Whether every cover wanted is made."""
        return self.makes == self.wanted

    @property
    def covers(self) -> int:
        """How many complete covers it makes in all."""
        return sum(count for _, count in self.makes)


def judge(prepared: Prepared, cloth: Cloth, known: ClothPlan | None, work: int) -> Slices[InHand | None]:
    """What the piece of a cloth that is ready makes, within `work`; None where it has none, or none to be planned.

    `known` is a plan of the same pieces for the purchase: where it holds on the piece too, it counts.
    """
    if cloth.remnant is None or cloth.id in prepared.not_in_hand:
        return None
    wants = _Wants(cloth, spread_out(cloth, cloth.remnant), prepared.pieces_on(cloth), prepared.strips_on(cloth))
    cushions = [piece.cushion for piece in wants.pieces] + [strips.cushion for strips in wants.strips]
    covers = [cover for cover in prepared.covers if cover.cushion.id in cushions]
    return (yield from _Search(wants, covers, known, work).steps())


def better(one: InHand, other: InHand | None) -> InHand:
    """That of two outcomes for one piece that makes more, else says more surely what it makes, else leaves more."""
    return one if other is None or _worth(one) >= _worth(other) else other


def _worth(found: InHand) -> tuple[int, bool, int]:
    over = found.spare if found.spare is not None else -found.short_by if found.short_by is not None else 0
    return found.covers, found.proven, over


@dataclass(frozen=True)
class _Wants:
    """What is wanted from a piece, and how the engine is asked for it."""

    cloth: Cloth
    spread: Spread
    pieces: tuple[Piece, ...]
    strips: tuple[Strips, ...]

    @property
    def hangs(self) -> bool:
        """Whether the plan has to wait for the pattern to come round, nobody knowing where it stands."""
        return hangs_on_start(self.cloth, self.pieces) and not self.spread.start_known

    @property
    def waits(self) -> int:
        """How far at worst."""
        repeat = self.spread.laid.repeat
        return repeat.along - 1 if self.hangs and repeat is not None else 0

    @property
    def repeats(self) -> int:
        """The whole repeats that are needed more, as bought."""
        return 1 if self.hangs else 0

    def laid(self, flaws: tuple[Flaw, ...], phase: int) -> Laid:
        """The piece with these flaws; where the plan has to wait beside them, every place they may come to lie at."""
        laid = self.spread.laid
        if not (self.hangs and flaws):
            return replace(laid, flaws=flaws)
        motifs = tuple(Motif(motif.id, motif.ox, motif.oy + phase) for motif in laid.motifs)
        return replace(laid, motifs=motifs, flaws=tuple(_anywhere(flaw, self.waits) for flaw in flaws))

    def strip(self, laid: Laid) -> Strip:
        """The piece in the engine's words."""
        strip = strip_of(self.cloth, self.pieces, laid)
        piping = tuple(piping_of(one, laid.usable) for one in self.strips)
        start = "unknown" if self.hangs and not laid.flaws else "measured"
        return replace(strip, start=start, piping=piping)  # type: ignore[arg-type]

    def without(self, cushions: set[str]) -> _Wants:
        """The same without what is wanted for some cushions."""
        pieces = tuple(piece for piece in self.pieces if piece.cushion not in cushions)
        return replace(self, pieces=pieces, strips=tuple(one for one in self.strips if one.cushion not in cushions))

    def takes(self, length: int) -> int:
        """The length of the unwashed piece that `length` nm of panels take."""
        return needed(self.cloth, length, self.repeats)


def _anywhere(flaw: Flaw, waits: int) -> Flaw:
    """All places of a flaw as seen from a plan that begins up to so much further along."""
    return Flaw(flaw.x, flaw.y - waits, flaw.w, flaw.h + waits)


class _Search:
    """One piece being looked through: all covers first, then as many as it makes."""

    def __init__(self, wants: _Wants, covers: Sequence[Made], known: ClothPlan | None, work: int) -> None:
        self.wants, self.covers, self.known, self.work = wants, covers, known, work
        self.spread = wants.spread
        self.wanted = tuple((cover.cushion.id, cover.cushion.quantity) for cover in covers)
        self.unfit = tuple(
            (piece, code) for piece in wants.pieces if (code := cannot_be_laid(self._alone(piece))) is not None
        )
        usable = self.spread.laid.usable
        self.no_strips = tuple(
            one for one in wants.strips if longest_strip(usable, piping_of(one, usable)) < piping_of(one, usable).least
        )

    def _alone(self, piece: Piece) -> Strip:
        return strip_of(self.wants.cloth, (replace(piece, count=1),), replace(self.spread.laid, flaws=()))

    def steps(self) -> Slices[InHand]:
        """The outcome, slice by slice."""
        if self.unfit or self.no_strips:
            out = {piece.cushion for piece, _ in self.unfit} | {one.cushion for one in self.no_strips}
            return (yield from self._most_of(self.wants.without(out), out, None))
        if self._known_holds and self.known is not None:
            takes = self.wants.takes(self.known.plan.length)
            if takes <= self.spread.edges.between:
                return self._all_laid(self.known.plan, replace(self.spread.laid, flaws=()))
        try:
            laid, plan, takes = yield from self._on_a_longer_piece()
        except CannotLay as error:
            out = {piece.cushion for piece in self.wants.pieces if piece.id == error.panel}
            self.unfit = tuple((piece, error.code) for piece in self.wants.pieces if piece.id == error.panel)
            return (yield from self._most_of(self.wants.without(out), out, None))
        if takes <= self.spread.edges.between:
            return self._all_laid(plan, laid)
        if self._known_holds and self.known is not None:
            takes = min(takes, self.wants.takes(self.known.plan.length))
        return (yield from self._most_of(self.wants, set(), takes - self.spread.edges.between))

    @property
    def _known_holds(self) -> bool:
        """Whether the plan for the purchase holds on the piece, long enough or not."""
        known, spread = self.known, self.spread
        if known is None or known.laid.usable > spread.laid.usable or spread.remnant.flaws:
            return False
        return not hangs_on_start(self.wants.cloth, self.wants.pieces) or self.wants.hangs

    def _on_a_longer_piece(self) -> Slices[tuple[Laid, Plan, int]]:
        """A plan of everything as if the piece went on, and the length of it that this takes."""
        wants, spread = self.wants, self.spread
        end = max(spread.length, 0) + sum(max(*piece.upright, *piece.aside) * piece.count for piece in wants.pieces)
        end += sum(strips.length * strips.count for strips in wants.strips)
        budget = Budget(self.work)
        with budget.portion(1, 4):
            phase = yield from self._phase(budget)
            laid = wants.laid(spread.lasting(end), phase)
            planner = planner_of(wants.strip(laid), budget)
            yield from planner.steps()
        plan = planner.plan()
        reach = max([plan.length, *(_behind(plan, corner) for corner in spread.corners)])
        return wants.laid(spread.all_flaws(max(spread.length, 0)), phase), plan, wants.takes(reach)

    def _phase(self, budget: Budget) -> Slices[int]:
        """Where in the repeat a plan beside flaws begins that nobody knows the start of: as one without them would."""
        wants = self.wants
        if not (wants.hangs and self.spread.remnant.flaws):
            return 0
        panels = replace(strip_of(wants.cloth, wants.pieces, replace(self.spread.laid, flaws=())), start="choose")
        with budget.portion(1, 4):
            planner = planner_of(panels, budget)
            yield from planner.steps()
        return planner.plan().phase

    def _all_laid(self, plan: Plan, laid: Laid) -> InHand:
        wants = self.wants
        spare = self.spread.edges.between - wants.takes(plan.length)
        return InHand(
            self.spread, _laid_on(wants, plan, laid, wants.strips), self.wanted, self.wanted, max(spare, 0), None, True
        )

    def _most_of(self, wants: _Wants, out: set[str], short_by: int | None) -> Slices[InHand]:
        """As many complete covers as the piece makes, none of the cushions that are `out`."""
        spread, budget = self.spread, Budget(self.work)
        nothing = tuple((id_, 0) for id_, _ in self.wanted)
        length = spread.length - wants.waits
        if length <= 0 or not (wants.pieces or wants.strips):
            return self._outcome(None, nothing, short_by, proven=True)
        with budget.portion(1, 6):
            phase = yield from self._phase(budget)
        laid = wants.laid(spread.all_flaws(spread.length), phase)
        strip = wants.strip(laid)
        sets = [one for cover in self.covers if cover.cushion.id not in out for one in _sets_of(cover, wants)]
        # Without flaws the engine itself keeps back what an unknown start takes.
        room = spread.length if strip.start == "unknown" else length
        search = FitSearch(
            strip, room, [one.panels for one in sets], budget, rings=[one.rings for one in sets] if wants.strips else ()
        )
        found = yield from search.steps()
        made = [sets[number] for number in found.sets]
        makes = tuple((id_, sum(one.cushion == id_ for one in made)) for id_, _ in self.wanted)
        surest = found.proven and not (wants.hangs and laid.flaws)
        if found.plan is None:
            return self._outcome(None, nothing, short_by, proven=surest)
        if makes == self.wanted:
            return self._all_laid(found.plan, laid)
        strips = _rings_in(wants.strips, made)
        return self._outcome(_laid_on(wants, found.plan, laid, strips), makes, short_by, proven=surest)

    def _outcome(self, lays: ClothPlan | None, makes: Counts, short_by: int | None, *, proven: bool) -> InHand:
        return InHand(
            self.spread, lays, makes, self.wanted, None, short_by, proven, self.unfit, self.no_strips
        )  # fmt: skip


def _behind(plan: Plan, corner: Flaw) -> int:
    """How long a piece must be for a corner cut out of its end to lie behind everything that it is in line with."""
    boxes = [(p.x, p.y, p.w, p.h) for p in plan.placements]
    boxes += [(p.x, p.y, p.w, p.h) for cut in plan.piping for p in cut.pieces]
    return max((y + h + corner.h for x, y, w, h in boxes if x < corner.x + corner.w and corner.x < x + w), default=0)


def _laid_on(wants: _Wants, plan: Plan, laid: Laid, strips: tuple[Strips, ...]) -> ClothPlan:
    """What is laid on the piece, as the plan of a cloth; it is not looked for by straight cuts."""
    takes = wants.takes(plan.length)
    return ClothPlan(
        cloth=wants.spread.cloth, pieces=wants.pieces, strips=strips, laid=laid, plan=plan, straight=NO_PANELS,
        repeats=wants.repeats, needed=takes, needed_at_least=takes, buy=wants.spread.edges.between,
    )  # fmt: skip


def _rings_in(strips: tuple[Strips, ...], made: list[_Set]) -> tuple[Strips, ...]:
    """The strips with as many rings as the covers that are made take; those of which there are any."""
    counted = [(one, sum(a_set.rings[number] for a_set in made)) for number, one in enumerate(strips)]
    return tuple(replace(one, count=count) for one, count in counted if count)


@dataclass(frozen=True)
class _Set:
    """What one complete cover takes: panels by the id of their piece, and rings of each of the strips."""

    cushion: str
    panels: dict[str, int]
    rings: tuple[int, ...]


def _sets_of(cover: Made, wants: _Wants) -> list[_Set]:
    """What each cover of an entry takes from the cloth; the mirrored ones come last, with pieces of their own."""
    cushion = cover.cushion
    pieces = [piece for piece in wants.pieces if piece.cushion == cushion.id]
    sets = []
    for number in range(cushion.quantity):
        panels = {piece.id: n for piece in pieces if (n := _share(piece, pieces, number, cover))}
        rings = tuple(_nth(one.count, cushion.quantity, number) if one.cushion == cushion.id else 0
                      for one in wants.strips)  # fmt: skip
        sets.append(_Set(cushion.id, panels, rings))
    return [one for one in sets if one.panels or any(one.rings)]


def _share(piece: Piece, pieces: list[Piece], number: int, cover: Made) -> int:
    quantity, mirrored = cover.cushion.quantity, cover.cushion.mirrored
    plain = quantity - mirrored
    if piece.part.endswith("-mirrored"):
        return _nth(piece.count, mirrored, number - plain) if number >= plain else 0
    if any(other.id == f"{piece.id}-mirrored" for other in pieces):
        return _nth(piece.count, plain, number) if number < plain else 0
    return _nth(piece.count, quantity, number)


def _nth(count: int, of: int, number: int) -> int:
    """The share of the nth of so many, so that all shares add up to the count."""
    return count * (number + 1) // of - count * number // of
