"""The lay plan of one cloth: its pieces given to the engine as panels, and the length to ask for worked out."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from plumpline.cloth import Laid, lay_out, needed, to_buy
from plumpline.job import Cloth, name_of
from plumpline.layout.budget import Budget
from plumpline.layout.solve import lay_plan, straight_plan
from plumpline.layout.strip import CannotLay, Panel, Plan, StraightPlan, Strip
from plumpline.lengths import write_length
from plumpline.pieces import Piece
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
        return any(piece.face.pattern == "centred" for piece in self.pieces)

    def needed_for(self, plan: Plan) -> int:
        """The length as bought that another plan of the same cloth needs."""
        return needed(self.cloth, plan.length, self.repeats)


def plan_cloth(cloth: Cloth, pieces: tuple[Piece, ...], work: int) -> ClothPlan:
    """The best plan found for `pieces` on `cloth`, and the best by straight cuts, within `work` units each.

    Raises `CannotLay` where a piece has no place under the rules asked for.
    """
    laid = lay_out(cloth, cloth.width or 0)
    strip = strip_of(cloth, pieces, laid)
    straight = straight_plan(strip, Budget(work))
    plan: Plan = straight
    if not straight.proven:
        found = lay_plan(strip, Budget(work))
        plan = found if found.length < straight.length else _with_bound(straight, found)
    centred = any(piece.face.pattern == "centred" for piece in pieces)
    repeats = 1 if cloth.start == "unknown" and centred else 0
    return ClothPlan(
        cloth=cloth,
        pieces=pieces,
        laid=laid,
        plan=plan,
        straight=straight,
        repeats=repeats,
        needed=needed(cloth, plan.length, repeats),
        needed_at_least=needed(cloth, plan.at_least, repeats),
        buy=to_buy(cloth, needed(cloth, plan.length, repeats)),
    )


def _with_bound(plan: StraightPlan, found: Plan) -> Plan:
    """The straight plan, which nothing found was shorter than, with the stronger of the two bounds."""
    if plan.at_least >= found.at_least:
        return plan
    return Plan(
        length=plan.length,
        at_least=found.at_least,
        proof_name=found.proof_name,
        proof_data=found.proof_data,
        placements=plan.placements,
        phase=plan.phase,
        alike=plan.alike,
        work=plan.work + found.work,
    )


def strip_of(cloth: Cloth, pieces: tuple[Piece, ...], laid: Laid) -> Strip:
    """The cloth and its pieces in the engine's words."""
    return Strip(
        width=laid.usable,
        panels=tuple(_panel(cloth, piece, _beside_centred(piece, pieces)) for piece in pieces),
        repeat=laid.repeat,
        motifs=laid.motifs,
        start="measured" if cloth.start == "measured" else "choose",
        flaws=laid.flaws,
    )


def _beside_centred(piece: Piece, pieces: tuple[Piece, ...]) -> bool:
    return any(other.cushion == piece.cushion and other.face.pattern == "centred" for other in pieces)


def _panel(cloth: Cloth, piece: Piece, beside_centred: bool) -> Panel:
    face = piece.face
    motif = face.motif if face.pattern == "centred" else None
    alike = face.pattern == "alike"
    dx, dy = piece.centre[0] + face.offset_across, piece.centre[1] + face.offset_along
    return Panel(
        id=piece.id,
        w=piece.width,
        h=piece.length,
        qty=piece.count,
        turns=_turns(cloth, piece, beside_centred),
        motif=motif,
        dx=dx if motif else 0,
        dy=dy if motif else 0,
        group=(face.group or piece.cushion) if alike else None,
        turn_group=piece.cushion if cloth.direction == "any" else None,
        turned=piece.along_side,
    )


def _turns(cloth: Cloth, piece: Piece, beside_centred: bool) -> tuple[int, ...]:
    """The turns that cloth and face allow: only those that can matter to a lay plan.

    A free panel turned by half lies as before, so half turns are tried only where a motif may be nearer one edge, or
    where the panel has to lie as a centred face of the same cover does.
    """
    face, any_way = piece.face, cloth.direction == "any"
    free, follows = face.pattern == "free", any_way and beside_centred
    turns = [0]
    if face.turn != "none" and cloth.direction != "one-way" and (face.pattern == "centred" or (free and follows)):
        turns.append(180)
    if face.turn == "quarter" and any_way and free:
        turns.extend([90, 270] if follows else [90])
    return tuple((TURN_OF_UP[cloth.up] + turn) % 360 for turn in turns)


def cannot_lay(
    error: CannotLay, cloth: Cloth, pieces: tuple[Piece, ...], units: str, way_out: dict[str, Any] | None
) -> Problem:
    """Why a piece has no place on the cloth, and what would give it one, in the maker's words."""
    piece = next(piece for piece in pieces if piece.id == error.panel)
    across = piece.width if TURN_OF_UP[cloth.up] in (0, 180) else piece.along_side[0]
    usable = lay_out(cloth, cloth.width or 0).usable
    wide, has = write_length(across, units), write_length(usable, units)
    who = f"The {piece.part} is {wide} wide; {name_of(cloth)} has {has} usable."
    at = f"{piece.at}/cover/{piece.part}"
    if error.code == "too-wide-unless-turned":
        return Problem(at, error.code, f"{who} Turn it, join it or choose a wider cloth.", way_out)
    if error.code == "too-wide":
        return Problem(at, error.code, f"{who} Join it or choose a wider cloth.")
    if error.code == "no-motif-column":
        text = f"{who} No motif lies where the {piece.part} could have it in the middle: "
        return Problem(at, "motif-cannot-be-centred", text + "set it off centre, or choose another motif or cloth.")
    return Problem(at, "rules-contradict", f"{who} What is asked of it cannot all be true: {error}.")
