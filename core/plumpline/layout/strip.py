# The words of the lay-plan engine: a strip of cloth, the panels to cut from it, and the plan that comes back.
"""The seam between the engine and everything that asks it for a plan.

All measures are whole numbers of one unit (nanometres in Plumpline, but nothing here depends on it).
``x`` runs across the cloth from the left usable edge, ``y`` along the roll from the squared cut end. The problem is
the two-dimensional rectangular open dimension problem, "strip packing", of Wäscher, Haußner and Schumann,
*European Journal of Operational Research* 183 (2007) 1109-1130, under the rules of cloth: a panel may have to put a
point of itself on a point of the printed repeat, several panels may have to look alike or to be turned alike, and
flaws are to be left out.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from itertools import pairwise
from typing import Literal

from plumpline.layout.outlines import Parts, Point, Points, convex_parts, extents_of, outline_of, rectangle

Shape = Literal["rect", "circle"] | Points
Start = Literal["measured", "choose", "unknown"]
Axes = Literal["both", "across", "along"]
CutKind = Literal["across", "along"]
Grain = Literal["across", "along", "bias"]
Json = int | str | list["Json"] | dict[str, "Json"]

TURNS = (0, 90, 180, 270)


@dataclass(frozen=True)
class Panel:
    """``qty`` equal panels, ``w`` across and ``h`` along the roll as they lie unturned.

    ``turns`` are the turns allowed, in degrees anticlockwise. With ``motif`` the panel's point (``dx``, ``dy``),
    counted unturned from its lower left corner, must lie on a point of that motif; ``axes`` says whether it must both
    ways or only "across" or "along" the cloth, as on a stripe. Panels of one ``group`` are alike:
    their centres (whole units, rounded down) lie at one point of the repeat, up to whole repeats and the drop. What
    lies on the repeat is not that point of the motif, or the centre, but one ``apart`` from it (right, up, as the panel
    lies unturned) where that is given, on the panel or beyond it: so a panel goes on where another one leaves off.
    Panels of one ``turn_group``, and their copies, take one common turn. ``turned`` gives the extents of the panel
    turned a quarter where they are not simply (h, w). Of a ``shape`` that is not a rectangle, w and h are the extents:
    "circle" (w = h, its diameter) or a straight-sided outline from ``outlines.outline_of``; where that is drawn around
    one of more corners, ``covers`` is what it covers at least, which bounds go by.
    """

    id: str
    w: int
    h: int
    qty: int
    turns: tuple[int, ...] = (0,)
    motif: str | None = None
    dx: int = 0
    dy: int = 0
    group: str | None = None
    turn_group: str | None = None
    turned: tuple[int, int] | None = None
    shape: Shape = "rect"
    covers: Points = ()
    axes: Axes = "both"
    apart: Point = (0, 0)

    @property
    def hangs_along(self) -> bool:
        """Whether where the panel lies along the roll depends on its motif."""
        return self.motif is not None and self.axes != "across"

    def extents(self, turn: int) -> tuple[int, int]:
        """Width across and length along the roll when turned by ``turn`` degrees."""
        if turn in (0, 180):
            return self.w, self.h
        return self.turned or (self.h, self.w)

    def point(self, turn: int) -> tuple[int, int]:
        """Where the panel's motif point lies, from its lower left corner, when turned by ``turn`` degrees.

        A half turn carries (dx, dy) to (w - dx, h - dy). A quarter turn carries it in proportion to the turned
        extents, rounded towards the side the point came from.
        """
        w, h = self.extents(turn)
        right, up = self._turned_apart(turn)
        if turn == 0:
            return self.dx + right, self.dy + up
        if turn == 180:
            return w - self.dx + right, h - self.dy + up
        across, along = self.dy * w // self.h, self.dx * h // self.w
        return (w - across + right, along + up) if turn == 90 else (across + right, h - along + up)

    def middle(self, turn: int) -> tuple[int, int]:
        """Where the point lies, from its lower left corner, that it shares with the panels of its group."""
        w, h = self.extents(turn)
        right, up = self._turned_apart(turn)
        return w // 2 + right, h // 2 + up

    def _turned_apart(self, turn: int) -> tuple[int, int]:
        right, up = self.apart
        return {0: (right, up), 90: (-up, right), 180: (-right, -up), 270: (up, -right)}[turn]


@dataclass(frozen=True)
class Repeat:
    """The printed repeat: points of a motif lie at (ox + i·across, oy + j·along + i·drop) for all whole i and j.

    0 for ``across`` or ``along`` means that nothing is asked in that direction.
    """

    across: int
    along: int
    drop: int = 0

    def on(self, axes: Axes) -> Repeat:
        """What of the repeat asks something of a panel that hangs on it in these directions."""
        if axes == "both":
            return self
        return Repeat(self.across, 0) if axes == "across" else Repeat(0, self.along)


@dataclass(frozen=True)
class Motif:
    """One point of the repeat: ``ox`` from the left usable edge, ``oy`` from the squared cut end.

    Several entries may share an ``id``: a panel may then use any of them.
    """

    id: str
    ox: int
    oy: int


@dataclass(frozen=True)
class Flaw:
    """A place of the cloth that no panel may touch: a rectangle or, with an ``outline`` from (x, y) on, what is inside.

    A corner cut out of a remnant, a notch in its edge and what lies beyond its crooked end are flaws as well.
    """

    x: int
    y: int
    w: int
    h: int
    outline: Points = ()

    @classmethod
    def outlined(cls, corners: Iterable[Sequence[int]]) -> Flaw:
        """The flaw inside a straight-sided outline; ``ValueError`` where it is none."""
        points = tuple((x, y) for x, y in corners)
        left, bottom, right, top = extents_of(points)
        return cls(left, bottom, right - left, top - bottom, outline_of(points))

    @cached_property
    def parts(self) -> Parts:
        """Its convex parts, where they lie on the cloth."""
        outline = self.outline or rectangle(0, 0, self.w, self.h)
        return tuple(tuple((x + self.x, y + self.y) for x, y in part) for part in convex_parts(outline))

    @cached_property
    def slants(self) -> tuple[tuple[Point, Point], ...]:
        """Its sides that run neither across nor along, where they lie on the cloth."""
        corners = [(x + self.x, y + self.y) for x, y in self.outline]
        sides = pairwise([*corners, *corners[:1]])
        return tuple((a, b) for a, b in sides if a[0] != b[0] and a[1] != b[1])

    @cached_property
    def rests_across(self) -> tuple[int, ...]:
        """Where something pushed to the left comes to rest against a side along it, or at a corner."""
        return tuple(dict.fromkeys(x + self.x for x, _ in self.outline)) or (self.x + self.w,)

    @cached_property
    def rests_along(self) -> tuple[int, ...]:
        """Where something pushed towards the cut end comes to rest against a side across it, or at a corner."""
        return tuple(dict.fromkeys(y + self.y for _, y in self.outline)) or (self.y + self.h,)


@dataclass(frozen=True)
class Piping:
    """Narrow strips wanted besides the panels, to be joined to so many ``rings``, each of ``length``.

    Each is ``width`` wide and lies along or across the cloth, or with ``bias`` at 45°. A join takes ``join`` of the
    length away; a piece no longer than that, or shorter than ``shortest``, is of no use. No join may lie between the
    two ends of a span that is to be ``clear``, counted from the start of a ring.
    """

    width: int
    length: int
    join: int = 0
    bias: bool = False
    rings: int = 1
    clear: tuple[tuple[int, int], ...] = ()
    shortest: int = 0

    @property
    def least(self) -> int:
        """The shortest piece that is of use."""
        return max(self.join + 1, self.shortest)

    @property
    def whole(self) -> int:
        """All rings together."""
        return self.rings * self.length


@dataclass(frozen=True)
class Strip:
    """A cloth of usable ``width`` and endless length, and the panels wanted from it.

    ``start`` "choose": the cut end may be anywhere in the repeat; the planner adds one common amount, the plan's
    ``phase``, to every ``oy``. "unknown": planned as "choose"; ``cut_end`` says how much more to ask for. Flaws can
    only be told where the start is measured. ``gap`` is the least distance between two panels (not between a panel and
    a flaw or an edge).
    """

    width: int
    panels: tuple[Panel, ...]
    repeat: Repeat | None = None
    motifs: tuple[Motif, ...] = ()
    start: Start = "measured"
    flaws: tuple[Flaw, ...] = ()
    gap: int = 0
    piping: tuple[Piping, ...] = ()


@dataclass(frozen=True)
class Placement:
    """One copy (counted from 1) of a panel with its lower left corner at (x, y), w and h as it lies turned."""

    panel: str
    copy: int
    x: int
    y: int
    w: int
    h: int
    turn: int


@dataclass(frozen=True)
class Plan:
    """A lay plan: ``length`` reached, ``at_least`` what no plan can be below, and the proof of that.

    ``phase`` was added to every motif's ``oy``; ``alike`` says which point of the repeat each group took (centre of
    one panel); ``work`` is the counted work spent. ``piping`` says, for each of the strip's, where it is cut from what
    the panels leave.
    """

    length: int
    at_least: int
    proof_name: str
    proof_data: dict[str, Json]
    placements: tuple[Placement, ...]
    phase: int = 0
    alike: dict[str, tuple[int, int]] = field(default_factory=dict)
    work: int = 0
    piping: tuple[PipingCut, ...] = field(default=(), kw_only=True)

    @property
    def panels_end(self) -> int:
        """Where the last panel ends; piping may reach further."""
        return max((placed.y + placed.h for placed in self.placements), default=0)

    @property
    def proven(self) -> bool:
        """Whether no shorter plan exists under the same rules."""
        return self.length == self.at_least


@dataclass(frozen=True)
class Cut:
    """One edge-to-edge cut, in the order to make it: from (x, y) over ``length``, across the cloth or along it."""

    number: int
    kind: CutKind
    x: int
    y: int
    length: int


@dataclass(frozen=True)
class StraightPlan(Plan):
    """A lay plan that can be cut by edge-to-edge cuts alone, with the cuts in order."""

    cuts: tuple[Cut, ...] = ()
    full_width_cuts: int = 0


@dataclass(frozen=True)
class StripPiece:
    """A rectangle of the cloth that piping is cut from, and the lengths of the strips it gives.

    ``grain`` says how they lie: one strip "along" the roll or "across" the cloth, or several on the "bias".
    """

    x: int
    y: int
    w: int
    h: int
    grain: Grain
    lengths: tuple[int, ...]


@dataclass(frozen=True)
class PipingCut:
    """Where one of the strip's ``piping`` is cut: its pieces, and what they would measure if all were joined to one.

    ``rings`` says of each ring which lengths it is joined from, in the order they follow; ``joins`` are those within
    rings.
    """

    pieces: tuple[StripPiece, ...]
    joins: int
    length: int
    rings: tuple[tuple[int, ...], ...]


class CannotLay(Exception):
    """No plan exists under the rules asked for: which panel, and a code saying why.

    Codes: ``too-wide`` (no turn would help), ``too-wide-unless-turned`` (a turn that is not allowed would),
    ``no-motif-column`` (it fits the cloth, but not with its motif where it is asked), ``rules-contradict``.
    """

    def __init__(self, panel: str, code: str, text: str) -> None:
        super().__init__(text)
        self.panel = panel
        self.code = code
