# Finds out whether a plan can be cut by edge-to-edge cuts alone and, if so, names the cuts in order.
"""Edge-to-edge cutting of a plan already laid (the cuts of Gilmore and Gomory, *Operations Research* 13 (1965) 94-120).

A line from edge to edge of a part that crosses no panel can always be cut: whatever could be cut apart before can
still be cut apart within both halves. So no choice has to be tried twice, and where neither direction has such a line
for two panels or more, as in a pinwheel, there is no way at all. Only the lines at the edges of panels are cut, those
beside waste included, so each part ends as exactly one panel. Flaws lie in the waste and need no cut of their own.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from plumpline.layout.strip import Cut, CutKind, Placement, Plan, StraightPlan

Rectangle = tuple[int, int, int, int]  # x, y, width, length

MOST_PANELS = 400
KINDS: tuple[CutKind, ...] = ("across", "along")


@dataclass(frozen=True)
class _Part:
    """A piece of cloth, [x, right) across and [y, top) along the roll, with the panels that lie in it."""

    x: int
    y: int
    right: int
    top: int
    panels: Sequence[Placement]

    def span(self, kind: CutKind) -> tuple[int, int]:
        """From where to where cuts of this kind can divide it."""
        return (self.y, self.top) if kind == "across" else (self.x, self.right)

    def cut(self, kind: CutKind, line: int) -> Cut:
        """The cut at ``line`` from edge to edge of the part, not numbered yet."""
        if kind == "across":
            return Cut(0, kind, self.x, line, self.right - self.x)
        return Cut(0, kind, line, self.y, self.top - self.y)

    def between(self, kind: CutKind, start: int, end: int, panels: Sequence[Placement]) -> _Part:
        """What lies between two cuts of this kind."""
        if kind == "across":
            return _Part(self.x, start, self.right, end, panels)
        return _Part(start, self.y, end, self.top, panels)


def cut_apart(plan: Plan, width: int) -> StraightPlan | None:
    """The plan with edge-to-edge cuts that part all its panels, or None if there are no such cuts.

    ``width`` is the strip's, in the unit of the plan. The first cut frees the plan from the roll; each one after it
    runs from edge to edge of a part that those before it have made, across sooner than along, and lines nearer the
    cut end sooner than those behind. The cost is O(n² log n) for n panels, so of more than ``MOST_PANELS`` None is
    returned unseen.
    """
    if len(plan.placements) > MOST_PANELS:
        return None
    whole = _Part(0, 0, width, plan.length, plan.placements)
    inner = _cuts_within(whole)
    if inner is None:
        return None
    made = (whole.cut("across", plan.length), *inner)
    cuts = tuple(Cut(number, c.kind, c.x, c.y, c.length) for number, c in enumerate(made, start=1))
    return StraightPlan(
        plan.length,
        plan.at_least,
        plan.proof_name,
        plan.proof_data,
        plan.placements,
        plan.phase,
        plan.alike,
        plan.work,
        cuts,
        sum(cut.kind == "across" and cut.length == width for cut in cuts),
    )


def parts_after(cuts: Iterable[Cut], width: int, end: int) -> list[Rectangle]:
    """What edge-to-edge cuts, in their order, make of a cloth so wide that reaches to ``end``."""
    parts = [(0, 0, width, end)]
    for cut in cuts:
        parts = [half for part in parts for half in _halves(part, cut)]
    return parts


def _halves(part: Rectangle, cut: Cut) -> list[Rectangle]:
    x, y, w, h = part
    if cut.kind == "across" and (cut.x, cut.length) == (x, w) and y < cut.y < y + h:
        return [(x, y, w, cut.y - y), (x, cut.y, w, y + h - cut.y)]
    if cut.kind == "along" and (cut.y, cut.length) == (y, h) and x < cut.x < x + w:
        return [(x, y, cut.x - x, h), (cut.x, y, x + w - cut.x, h)]
    return [part]


def _cuts_within(whole: _Part) -> list[Cut] | None:
    """All cuts in a part, depth first; None as soon as two panels or more cannot be parted."""
    cuts: list[Cut] = []
    # A list rather than recursion: a spiral of panels is as deep as it has panels, and browsers have small stacks.
    waiting = [whole]
    while waiting:
        part = waiting.pop()
        for kind in KINDS:
            runs = _runs(part.panels, kind)
            lines = _lines(part, kind, runs)
            if lines:
                cuts += [part.cut(kind, line) for line in lines]
                waiting += [part.between(kind, *run) for run in reversed(runs)]
                break
        else:
            if len(part.panels) > 1:
                return None
    return cuts


def _runs(panels: Sequence[Placement], kind: CutKind) -> list[tuple[int, int, list[Placement]]]:
    """Panels that no cut of this kind can part, run by run: where the run starts, where it ends, what is in it."""
    runs: list[tuple[int, int, list[Placement]]] = []
    for panel in sorted(panels, key=lambda p: _extent(p, kind)):
        start, end = _extent(panel, kind)
        if runs and start < runs[-1][1]:
            first, reached, members = runs[-1]
            members.append(panel)
            runs[-1] = first, max(reached, end), members
        else:
            runs.append((start, end, [panel]))
    return runs


def _extent(panel: Placement, kind: CutKind) -> tuple[int, int]:
    return (panel.y, panel.y + panel.h) if kind == "across" else (panel.x, panel.x + panel.w)


def _lines(part: _Part, kind: CutKind, runs: Sequence[tuple[int, int, Sequence[Placement]]]) -> list[int]:
    """Where runs start and end within the part, from its lower edge on; one line where two runs touch."""
    low, high = part.span(kind)
    return [line for line in dict.fromkeys(edge for run in runs for edge in run[:2]) if low < line < high]
