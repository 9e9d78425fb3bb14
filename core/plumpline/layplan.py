"""The lay plan of one cloth: its pieces given to the engine as panels, and the length to ask for worked out."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from plumpline.cloth import Laid, lay_out, needed, to_buy
from plumpline.job import Cloth, Face, name_of
from plumpline.layout.budget import Budget, Slices
from plumpline.layout.edges import cut_apart
from plumpline.layout.outlines import around_arcs, extents_of, outline_of, turned, within_arcs
from plumpline.layout.piped import joins_of, longest_strip, straight_with_piping, with_piping
from plumpline.layout.shaped import ShapedPlanner
from plumpline.layout.solve import Planner, lay_plan, panel_planner
from plumpline.layout.strip import Axes, CannotLay, Panel, Piping, Placement, Plan, StraightPlan, Strip
from plumpline.layout.strips import free_rectangles
from plumpline.lengths import write_length
from plumpline.pieces import Outline, Piece, Strips
from plumpline.problems import Problem

# The turn that brings a panel's top where the cloth's top points, in degrees anticlockwise.
TURN_OF_UP = {"away": 0, "left": 90, "toward": 180, "right": 270}
UP_OF_TURN = {turn: up for up, turn in TURN_OF_UP.items()}


@dataclass(frozen=True)
class ClothPlan:
    """The lay plan of one cloth with what it takes to buy it; lengths in nm, as laid unless said otherwise.

    `needed` and `buy` are lengths as bought; `needed_at_least` what no plan can need less than.
    """

    cloth: Cloth
    pieces: tuple[Piece, ...]
    strips: tuple[Strips, ...]
    laid: Laid
    plan: Plan
    straight: StraightPlan
    repeats: int
    needed: int
    needed_at_least: int
    buy: int

    @property
    def buy_proven(self) -> bool:
        """Whether the shop's step makes any shorter plan cost the same."""
        return to_buy(self.cloth, self.needed_at_least) == self.buy

    @property
    def depends_on_start(self) -> bool:
        """Whether the place of the first cut in the repeat matters to any panel."""
        return hangs_on_start(self.cloth, self.pieces)

    def piece(self, id: str) -> Piece:
        """The piece of that id."""
        return next(piece for piece in self.pieces if piece.id == id)

    def needed_for(self, plan: Plan) -> int:
        """The length as bought that another plan of the same cloth needs."""
        return needed(self.cloth, plan.length, self.repeats)


def hangs_on_start(cloth: Cloth, pieces: tuple[Piece, ...]) -> bool:
    """Whether any piece hangs on where the pattern begins on the cloth."""
    return bool(cloth.repeat_along) and any(hangs_along(cloth, piece.face) for piece in pieces)


def hangs_along(cloth: Cloth, face: Face) -> bool:
    """Whether where a face lies along the roll depends on a motif: not where a stripe runs that way."""
    return face.has_motif and axes_of(cloth, face) != "across"


def follows_repeat(cloth: Cloth, face: Face) -> bool:
    """Whether the repeat along the roll says anything of where a face may lie."""
    return face.has_group or hangs_along(cloth, face)


def axes_of(cloth: Cloth, face: Face) -> Axes:
    """The directions of the cloth in which a face stands on its motif: of a stripe, which is upright, square to it."""
    if face.pattern != "stripe-centred":
        return "both"
    return "along" if cloth.lies_aside else "across"


def repeats_added(cloth: Cloth, pieces: tuple[Piece, ...]) -> int:
    """How many whole repeats are bought for not knowing where the first cut falls."""
    return 1 if cloth.start == "unknown" and hangs_on_start(cloth, pieces) else 0


def extent_across(piece: Piece, cloth: Cloth) -> int:
    """How far the piece reaches across the cloth as its pattern points, in nm."""
    return (piece.aside if cloth.lies_aside else piece.upright)[0]


def outline_as_laid(piece: Piece, placed: Placement) -> Outline:
    """The outline of a piece as it lies turned, from the lower left corner of where it lies."""
    outline = turned(piece.outline, placed.turn)
    _, _, w, h = extents_of(outline)
    return tuple((x * placed.w // w, y * placed.h // h) for x, y in outline)


# The plan of a cloth that nothing but strips is cut from, before they are.
NO_PANELS = StraightPlan(0, 0, "area", {}, ())


class ClothPlanner:
    """The pieces and strips of one cloth being laid, slice by slice, by straight cuts and by any, within `work` each.

    What was planned `before` counts on: a search that comes out no shorter leaves the plan as it was. Raises
    `CannotLay`, here or from `steps`, where a piece has no place under the rules asked for.
    """

    def __init__(
        self,
        cloth: Cloth,
        pieces: tuple[Piece, ...],
        strips: tuple[Strips, ...],
        work: int,
        before: ClothPlan | None = None,
    ) -> None:
        self.cloth = cloth
        self.pieces = pieces
        self.strips = strips
        self._laid = lay_out(cloth, cloth.width or 0)
        self._strip = strip_of(cloth, pieces, self._laid)
        self._piping = tuple(piping_of(one, self._laid.usable) for one in strips)
        self._repeats = repeats_added(cloth, pieces)
        self._work = work
        self._budgets = Budget(work), Budget(work)
        self._straight = before.straight if before else None
        self._plan = before.plan if before else None
        self._planner: Planner | ShapedPlanner | None = None
        self._ended = False

    @property
    def share_done(self) -> Fraction:
        """How much of the work is done, from 0 to 1."""
        straight, other = (min(budget.spent, self._work) for budget in self._budgets)
        return Fraction(1) if self._ended else Fraction(straight + other, 2 * self._work)

    @property
    def spent(self) -> int:
        """The counted work done so far."""
        straight, other = self._budgets
        return straight.spent + other.spent

    @property
    def lengths(self) -> tuple[int, int]:
        """The shortest length laid so far and the shortest by straight cuts, without the trouble of making plans."""
        straight, *others = self._known()
        lengths = [straight.length, *(plan.length for plan in others)]
        if self._panels_alone and self._planner and self._planner.length is not None:
            lengths.append(self._planner.length)
        return min(lengths), straight.length

    @property
    def buy(self) -> int:
        """What the shortest length laid so far takes to buy."""
        return self._buy(self.lengths[0])

    def steps(self) -> Slices[ClothPlan]:
        """Look for the shortest plans until they meet their bound or the work is done: what was found in the end."""
        by_straight_cuts, by_any = self._budgets
        if not (self._is_proven and self.lengths[0] == self.lengths[1]):
            found = yield from self._by_straight_cuts(by_straight_cuts)
            if self._straight is None or _rank(found) <= _rank(self._straight):
                self._straight = found
        if self.pieces and not self._is_proven:
            self._planner = panel_planner(self._strip, by_any)
            yield from self._planner.steps()
            if self._piping:
                yield from self._pipe(self._planner.plan(), by_any)
        self._ended = True
        return self.plan()

    def _by_straight_cuts(self, budget: Budget) -> Slices[StraightPlan]:
        """The panels by straight cuts, and the strips from the parts that those cuts leave."""
        panels = NO_PANELS
        if self.pieces:
            panels = yield from panel_planner(self._strip, budget).straight_steps()
        if not self._piping:
            return panels
        return (yield from straight_with_piping(replace(self._strip, piping=self._piping), panels, budget))

    def _pipe(self, panels: Plan, budget: Budget) -> Slices[None]:
        """Take the strips from between the panels, and keep the plan if it is the shortest so far."""
        self._planner = None
        strip = replace(self._strip, piping=self._piping)
        piped = yield from with_piping(strip, panels, free_rectangles(strip, panels.placements), budget)
        self._plan = piped if self._plan is None else min(piped, self._plan, key=_rank)

    @property
    def _panels_alone(self) -> bool:
        """Whether a plan of the panels is the plan of the cloth; else strips are still to be cut from it."""
        return not self._piping

    def _known(self) -> list[Plan]:
        return [plan for plan in (self._straight, self._plan) if plan is not None]

    @property
    def _is_proven(self) -> bool:
        known = self._known()
        return bool(known) and min(plan.length for plan in known) <= max(plan.at_least for plan in known)

    def plan(self) -> ClothPlan:
        """The plan as it stands; there is one as soon as there was one before, or `steps` came to its end."""
        straight = self._straight
        assert straight is not None
        found = self._known()
        if self._panels_alone and self._planner and self._planner.length is not None:
            found.append(self._planner.plan())
        shortest = min(found, key=_rank)
        bound = max(found, key=lambda plan: plan.at_least)
        # A shorter plan that was not looked for by straight cuts may still come apart by them.
        shorter = self._panels_alone and shortest.length < straight.length
        apart = cut_apart(shortest, self._strip.width) if shorter else None
        return self._bought_for(_with_bound(shortest, bound), apart or straight)

    def _bought_for(self, plan: Plan, straight: StraightPlan) -> ClothPlan:
        return ClothPlan(
            cloth=self.cloth,
            pieces=self.pieces,
            strips=self.strips,
            laid=self._laid,
            plan=plan,
            straight=straight,
            repeats=self._repeats,
            needed=needed(self.cloth, plan.length, self._repeats),
            needed_at_least=needed(self.cloth, plan.at_least, self._repeats),
            buy=self._buy(plan.length),
        )

    def _buy(self, length: int) -> int:
        return to_buy(self.cloth, needed(self.cloth, length, self._repeats))


def _rank(plan: Plan) -> tuple[int, int]:
    """The shorter plan is the better one, then that with fewer joins in its strips."""
    return plan.length, joins_of(plan)


def plan_cloth(cloth: Cloth, pieces: tuple[Piece, ...], strips: tuple[Strips, ...], work: int) -> Slices[ClothPlan]:
    """The best plan found for `pieces` and `strips` on `cloth`, and by straight cuts, within `work` units each."""
    return ClothPlanner(cloth, pieces, strips, work).steps()


def strip_with_piping(cloth: Cloth, pieces: tuple[Piece, ...], strips: tuple[Strips, ...]) -> Strip:
    """All that is cut from a cloth in the engine's words."""
    laid = lay_out(cloth, cloth.width or 0)
    return replace(strip_of(cloth, pieces, laid), piping=tuple(piping_of(one, laid.usable) for one in strips))


def piping_of(strips: Strips, usable: int) -> Piping:
    """Strips in the engine's words: no place is kept clear of joins where no strip would be long enough for that."""
    piping = Piping(strips.width, strips.length, strips.join, strips.bias, strips.count, strips.clear, strips.shortest)
    widest = max((high - low for low, high in strips.clear), default=0)
    leads_over = longest_strip(usable, piping) - strips.join > widest
    return piping if leads_over else replace(piping, clear=())


def strips_too_short(strips: Strips, cloth: Cloth) -> bool:
    """Whether no strip that this cloth gives is long enough to be of use."""
    usable = lay_out(cloth, cloth.width or 0).usable
    piping = piping_of(strips, usable)
    return longest_strip(usable, piping) < piping.least


def first_motif(planned: ClothPlan, plan: Plan) -> tuple[str, int] | None:
    """The first motif that a piece hangs on along the roll, and how far behind the squared end its first point lies.

    In nm, as laid.

    None where nothing depends on where the cut falls.
    """
    repeat = planned.laid.repeat
    if repeat is None or not planned.depends_on_start:
        return None
    wanted = next(piece.face.motif for piece in planned.pieces if hangs_along(planned.cloth, piece.face))
    motif = next(motif for motif in planned.laid.motifs if motif.id == wanted)
    return motif.id, (motif.oy + plan.phase) % repeat.along


def _with_bound(plan: Plan, stronger: Plan) -> Plan:
    """The plan with the bound of another one for the same pieces, where that proves more."""
    if plan.at_least >= stronger.at_least:
        return plan
    return replace(
        plan,
        at_least=stronger.at_least,
        proof_name=stronger.proof_name,
        proof_data=stronger.proof_data,
        work=plan.work + stronger.work,
    )


def strip_of(cloth: Cloth, pieces: tuple[Piece, ...], laid: Laid) -> Strip:
    """The cloth and its pieces in the engine's words."""
    return Strip(
        width=laid.usable,
        panels=tuple(_panel(cloth, piece, _turned_together(piece, pieces)) for piece in pieces),
        repeat=laid.repeat,
        motifs=laid.motifs,
        start="measured" if cloth.start == "measured" else "choose",
        flaws=laid.flaws,
    )


def _turned_together(piece: Piece, pieces: tuple[Piece, ...]) -> tuple[Piece, ...]:
    """The faces that a piece has to lie turned alike with, itself among them; none where it turns freely."""
    if piece.turns == "freely":
        return ()
    return tuple(other for other in pieces if (other.cushion, other.turns) == (piece.cushion, piece.turns))


def _panel(cloth: Cloth, piece: Piece, together: tuple[Piece, ...]) -> Panel:
    face = piece.face
    motif = face.motif if face.has_motif else None
    dx, dy = piece.aim if motif else (0, 0)
    own = f"group {face.group}" if face.group else f"cover {piece.cushion}"
    shared = "row" if face.pattern == "flow" else own
    panel = Panel(
        id=piece.id,
        w=piece.upright[0],
        h=piece.upright[1],
        qty=piece.count,
        turns=_turns(cloth, piece, together),
        motif=motif,
        dx=dx,
        dy=dy,
        group=shared if face.has_group else None,
        turn_group=piece.cushion if together and cloth.direction == "any" else None,
        turned=piece.aside,
        axes=axes_of(cloth, face),
        apart=piece.apart,
    )
    return _shaped(panel, piece)


def _shaped(panel: Panel, piece: Piece) -> Panel:
    """The panel with its true shape, unless a later wash takes more one way than the other: then in its rectangle.

    Arcs are planned by lines against them, which an engine of straight sides takes no longer for than for any other.
    """
    w, h = piece.upright
    if piece.shape == "rectangle" or piece.aside != (h, w) or (piece.shape == "circle" and w != h):
        return panel
    if piece.shape == "circle":
        return replace(panel, shape="circle", turned=None)
    around = around_arcs(piece.outline)
    covers = () if around == piece.outline else within_arcs(piece.outline)
    return replace(panel, shape=outline_of(around), covers=covers, turned=None)


def _turns(cloth: Cloth, piece: Piece, together: tuple[Piece, ...]) -> tuple[int, ...]:
    """The turns that cloth and face allow: only those that can matter to a lay plan.

    A free rectangle turned by half lies as before, so half turns are tried only where a motif may be nearer one edge,
    where the panel has to lie as a centred face of the same cover does, and for outlines. A circle needs a quarter
    turn only where another face takes it. Nothing that hangs on the pattern takes one: a stripe would lie crosswise.
    """
    face, any_way = piece.face, cloth.direction == "any"
    free = face.pattern == "free"
    beside_centred = any_way and any(other.face.has_motif for other in together)
    differs = free and (piece.shape == "outline" or beside_centred)
    rounds_alone = piece.shape == "circle" and all(other.shape == "circle" for other in together)
    turns = [0]
    if face.turn != "none" and cloth.direction != "one-way" and (face.has_motif or differs):
        turns.append(180)
    if face.turn == "quarter" and any_way and free and not rounds_alone:
        turns.extend([90, 270] if differs else [90])
    return tuple((TURN_OF_UP[cloth.up] + turn) % 360 for turn in turns)


def why_not(cloth: Cloth, piece: Piece) -> str | None:
    """The code of why this piece by itself has no place on the cloth, or None where it has one."""
    return cannot_be_laid(strip_of(cloth, (replace(piece, count=1),), lay_out(cloth, cloth.width or 0)))


def cannot_be_laid(strip: Strip) -> str | None:
    """The code of why no plan of a strip obeys its rules, or None where one does."""
    try:
        lay_plan(strip, Budget(1))
    except CannotLay as error:
        return error.code
    return None


def blamed(cloth: Cloth, pieces: tuple[Piece, ...], error: CannotLay) -> list[tuple[Piece, str]]:
    """The pieces that keep a cloth from being laid, each with the code of why: those without a place by themselves."""
    found = [(piece, code) for piece in pieces if (code := why_not(cloth, piece)) is not None]
    return found or [(piece, error.code) for piece in pieces if piece.id == error.panel]


def cannot_lay(code: str, piece: Piece, cloth: Cloth, units: str, *ways_out: dict[str, Any]) -> Problem:
    """Why a piece has no place on the cloth, and what would give it one, in the maker's words."""
    has = write_length(lay_out(cloth, cloth.width or 0).usable, units)
    who, on = f"The {piece.called}", f"{name_of(cloth)} has {has} usable"
    side, lying = (piece.measured[1], "high, lying on its side") if cloth.lies_aside else (piece.measured[0], "wide")
    if code in ("too-wide", "too-wide-unless-turned"):
        text = f"{who} is {write_length(extent_across(piece, cloth), units)} {lying}; {on}."
        turn = "Turn it, join it" if code == "too-wide-unless-turned" else "Join it"
        return Problem(f"{piece.insert_at}/{side}", code, f"{text} {turn} or choose a wider cloth.", ways_out)
    at = piece.face_at
    if code == "no-motif-column" and piece.goes_on:
        text = f"{who} cannot go on with the pattern of the front: wherever that lies, it would leave the cloth. "
        text += f"{on[0].upper()}{on[1:]}. Let the boxing be cut anywhere, or choose a wider cloth."
        return Problem(f"{at}/pattern", "motif-cannot-be-centred", text)
    if code == "no-motif-column" and piece.face.has_group:
        text = f"{who} and what goes on from it have no place in the pattern together: one would leave the cloth. "
        text += f"{on[0].upper()}{on[1:]}. Let one of them be cut anywhere, or choose a wider cloth."
        return Problem(f"{at}/pattern", "motif-cannot-be-centred", text)
    if code == "no-motif-column":
        what = "motif" if piece.face.pattern == "centred" else "stripe"
        text = f"{who} cannot have this {what} in its middle: wherever it lies, the panel would leave the cloth. "
        text += f"{on[0].upper()}{on[1:]}. Set it off centre, or choose another {what} or cloth."
        return Problem(f"{at}/pattern", "motif-cannot-be-centred", text)
    text = "Front and back of a cover have to lie the same way round on this cloth, and what is asked of them here "
    return Problem(f"{at}/turn", "rules-contradict", text + "leaves no way that both can lie: free one of the two.")
