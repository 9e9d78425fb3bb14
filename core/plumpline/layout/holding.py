# Says how far a plan in hand still holds while its cloth changes: the narrowest cloth, and the repeats it can follow.
"""A plan as a structure that can be moved, so that what it proves of one cloth it proves of a whole range of them.

*Narrower cloth.* Push every free panel to the left as far as the panels beside it let it go; the plan then holds on any
cloth that reaches to its rightmost edge. (All left edges are then sums of widths: the normal patterns of Herz, *IBM
Journal of Research and Development* 16 (1972), and of Christofides and Whitlock, *Operations Research* 25 (1977).)

*Another repeat along the roll.* Keep where every panel lies across, which of two panels one behind the other comes
first, and how many repeats lie between two panels on one anchor. What is left are difference constraints between the
places of the panels along the roll and one variable for each anchor that may move, linear in the repeat. So the least
length is a longest path (Cormen et al., *Introduction to Algorithms*, "difference constraints"): the greatest of
functions linear in the repeat, convex, and so is where the constraints can be met. What holds at two repeats therefore
holds at every repeat between them, and the ends of that range can be found by halving.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from plumpline.layout.places import MOTIF
from plumpline.layout.strip import Panel, Placement, Plan, Repeat, Strip

MOST_MOVED = 400  # panels up to which it is looked at which lies behind which


@dataclass(frozen=True)
class Block:
    """A rectangle of the plan; ``anchor`` names what its place along the roll hangs on ("": it is free).

    ``repeats`` is how many repeats along the roll it stands from the first point of its anchor.
    """

    x: int
    y: int
    w: int
    h: int
    anchor: str = ""
    repeats: int = 0
    fixed: bool = False


def narrowest(strip: Strip, plan: Plan) -> int:
    """The least usable width that the plan, its free panels pushed to the left, still fits."""
    blocks = _blocks(strip, plan)
    if len(blocks) > MOST_MOVED or _overlap(blocks):
        return max(block.x + block.w for block in blocks)
    ends: list[tuple[Block, int]] = []
    for block in sorted(blocks, key=lambda b: (b.x, b.y)):
        beside = [end for other, end in ends if other.x + other.w <= block.x and _meet(block, other, along=True)]
        left = block.x if block.fixed else max(beside, default=0)
        ends.append((block, left + block.w))
    return max(end for _, end in ends)


class Movable:
    """A plan whose panels can follow another repeat along the roll, the order in which they lie being kept."""

    def __init__(self, strip: Strip, plan: Plan) -> None:
        assert strip.repeat is not None
        self.along = strip.repeat.along
        self.measured = strip.start == "measured"
        self.blocks = sorted(_blocks(strip, plan), key=lambda b: (b.y, b.x))
        self.behind = [
            [j for j, other in enumerate(self.blocks) if other.y + other.h <= b.y and _meet(b, other, along=False)]
            for b in self.blocks
        ]

    @classmethod
    def of(cls, strip: Strip, plan: Plan) -> Movable | None:
        """The plan, if it can be moved: not with panels that interlock, flaws, or more panels than are looked at."""
        count = len(plan.placements) + sum(len(cut.pieces) for cut in plan.piping)
        if strip.flaws or count > MOST_MOVED or _overlap(_blocks(strip, plan)):
            return None
        return cls(strip, plan)

    def length(self, along: int) -> int | None:
        """The least length with that repeat along the roll; None where the structure does not allow it."""
        shifts = {block.anchor: 0 for block in self.blocks if block.anchor}
        for _ in range(len(shifts) + 2):
            ends, short = self._laid(along, shifts)
            if not short:
                return max(ends)
            for anchor, by in short.items():
                if self.measured and anchor == MOTIF:
                    return None
                shifts[anchor] += by
        return None

    def _laid(self, along: int, shifts: dict[str, int]) -> tuple[list[int], dict[str, int]]:
        """Where every block ends, and by how much each anchor would have to move on for its blocks to be clear."""
        ends: list[int] = []
        short: dict[str, int] = {}
        for block, behind in zip(self.blocks, self.behind, strict=True):
            y = max((ends[j] for j in behind), default=0)
            if block.anchor:
                place = block.y + (along - self.along) * block.repeats + shifts[block.anchor]
                if place < y:
                    short[block.anchor] = max(short.get(block.anchor, 0), y - place)
                y = place
            ends.append(y + block.h)
        return ends, short


def furthest(holds: Callable[[int], bool], near: int, far: int) -> int:
    """The value furthest from ``near`` towards ``far`` (either may be the larger) up to which something holds.

    It has to hold at ``near``, and the values at which it holds to lie in one range.
    """
    if holds(far):
        return far
    while abs(far - near) > 1:
        middle = (near + far) // 2
        near, far = (middle, far) if holds(middle) else (near, middle)
    return near


def _blocks(strip: Strip, plan: Plan) -> list[Block]:
    """The panels and the pieces of piping of a plan."""
    panels = {panel.id: panel for panel in strip.panels}
    found = [_block(strip, plan, panels[placed.panel], placed) for placed in plan.placements]
    pieces = [piece for cut in plan.piping for piece in cut.pieces]
    return found + [Block(piece.x, piece.y, piece.w, piece.h, fixed=bool(strip.flaws)) for piece in pieces]


def _block(strip: Strip, plan: Plan, panel: Panel, placed: Placement) -> Block:
    size = (placed.w, placed.h)
    if strip.repeat is None or (panel.motif is None and panel.group is None):
        return Block(placed.x, placed.y, *size, fixed=bool(strip.flaws))
    repeat = strip.repeat.on(panel.axes)
    columns = bool(repeat.across) or bool(strip.flaws)
    if not repeat.along:
        return Block(placed.x, placed.y, *size, fixed=columns)
    anchor, corners = _anchored(strip, plan, panel, placed)
    counted = (_counted(repeat, placed, x, y) for x, y in corners)
    repeats = next(whole for whole, rest in counted if not rest)
    return Block(placed.x, placed.y, *size, anchor, repeats, columns)


def _counted(repeat: Repeat, placed: Placement, x: int, y: int) -> tuple[int, bool]:
    """How many repeats along the roll a panel stands from a corner it may have, and whether it is off that pattern."""
    column, beside = divmod(placed.x - x, repeat.across) if repeat.across else (0, 0)
    repeats, behind = divmod(placed.y - y - column * repeat.drop, repeat.along)
    return repeats, bool(beside or behind)


def _anchored(strip: Strip, plan: Plan, panel: Panel, placed: Placement) -> tuple[str, list[tuple[int, int]]]:
    """What a bound panel hangs on, and where its lower left corner may stand, up to whole repeats and the drop."""
    if panel.motif is None:
        assert panel.group is not None
        cx, cy = plan.alike[panel.group]
        x, y = panel.middle(placed.turn)
        return f"group:{panel.group}", [(cx - x, cy - y)]
    dx, dy = panel.point(placed.turn)
    return MOTIF, [(m.ox - dx, m.oy + plan.phase - dy) for m in strip.motifs if m.id == panel.motif]


def _meet(one: Block, other: Block, *, along: bool) -> bool:
    """Whether two blocks share some of the roll's length, or else of its width."""
    if along:
        return one.y < other.y + other.h and other.y < one.y + one.h
    return one.x < other.x + other.w and other.x < one.x + one.w


def _overlap(blocks: list[Block]) -> bool:
    """Whether the rectangles of some two blocks overlap, as those of shapes that interlock do."""
    for index, block in enumerate(blocks):
        for other in blocks[:index]:
            if _meet(block, other, along=True) and _meet(block, other, along=False):
                return True
    return False
