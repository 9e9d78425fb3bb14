# Makes lay plans: the shortest found for a strip, with a bound that no plan can beat, and the straight-cut twin.
"""Each panel in turn goes to the lowest free place that its rules allow (Chazelle's bottom-left rule, 1983)."""

from __future__ import annotations

from collections.abc import Iterator

from plumpline.layout.budget import Budget, budget_of
from plumpline.layout.strip import CannotLay, Cut, Panel, Placement, Plan, StraightPlan, Strip

Box = tuple[int, int, int, int]


def lay_plan(strip: Strip, work: int | Budget, seed: int = 0) -> Plan:
    """The shortest plan found within ``work`` units."""
    budget = budget_of(work)
    turns = _turns(strip)
    alike = _alike(strip)
    placements: list[Placement] = []
    taken: list[Box] = []
    for panel in sorted(strip.panels, key=lambda p: (-p.h, -p.w, p.id)):
        for copy in range(1, panel.qty + 1):
            budget.spend(5 * len(taken))
            placements.append(_lowest(strip, panel, copy, turns[panel.id], alike, taken))
            p = placements[-1]
            taken.append((p.x, p.y, p.w, p.h))
    length = max(p.y + p.h for p in placements)
    tallest = max(min(p.extents(t)[1] for t in p.turns) for p in strip.panels)
    return Plan(length, tallest, "tallest", {}, tuple(placements), 0, alike, budget.spent)


def straight_plan(strip: Strip, work: int | Budget, seed: int = 0) -> StraightPlan:
    """A plan of rows, one panel to a row: always cut by edge-to-edge cuts."""
    budget = budget_of(work)
    turns = _turns(strip)
    alike = _alike(strip)
    placements: list[Placement] = []
    cuts: list[Cut] = []
    taken: list[Box] = []
    for panel in strip.panels:
        for copy in range(1, panel.qty + 1):
            p = _lowest(strip, panel, copy, turns[panel.id], alike, taken)
            placements.append(p)
            taken = [(0, 0, strip.width, p.y + p.h)]
            cuts.append(Cut(len(cuts) + 1, "across", 0, p.y + p.h, strip.width))
    plan = lay_plan(strip, budget, seed)
    return StraightPlan(
        max(p.y + p.h for p in placements), plan.at_least, plan.proof_name, plan.proof_data, tuple(placements), 0,
        alike, budget.spent, tuple(cuts), len(cuts),
    )


def _turns(strip: Strip) -> dict[str, int]:
    turns = {}
    groups: dict[str, int] = {}
    for panel in strip.panels:
        fitting = [t for t in panel.turns if panel.extents(t)[0] <= strip.width]
        if not fitting:
            code = "too-wide" if min(panel.w, panel.extents(90)[0]) > strip.width else "too-wide-unless-turned"
            raise CannotLay(panel.id, code, f"{panel.id} is wider than the cloth")
        turns[panel.id] = fitting[0]
        if panel.turn_group is not None:
            common = groups.setdefault(panel.turn_group, fitting[0])
            if common not in fitting:
                raise CannotLay(panel.id, "rules-contradict", f"{panel.id} cannot turn with its group")
            turns[panel.id] = common
    return turns


def _alike(strip: Strip) -> dict[str, tuple[int, int]]:
    if strip.repeat is None:
        return {}
    return {p.group: (strip.width // 2, p.h // 2) for p in strip.panels if p.group is not None}


def _lowest(
    strip: Strip, panel: Panel, copy: int, turn: int, alike: dict[str, tuple[int, int]], taken: list[Box]
) -> Placement:
    w, h = panel.extents(turn)
    blocks = [(x, y, bw, bh, strip.gap) for x, y, bw, bh in taken]
    blocks += [(f.x, f.y, f.w, f.h, 0) for f in strip.flaws]
    best: tuple[int, int] | None = None
    for x, residue in _columns(strip, panel, turn, alike, taken):
        y = _rise(strip, 0, residue)
        moved = True
        while moved:
            moved = False
            for bx, by, bw, bh, gap in blocks:
                if x < bx + bw + gap and bx < x + w + gap and y < by + bh + gap and by < y + h + gap:
                    y = _rise(strip, by + bh + gap, residue)
                    moved = True
        if best is None or (y, x) < best:
            best = (y, x)
    if best is None:
        raise CannotLay(panel.id, "no-motif-column", f"{panel.id} cannot have its motif where it is asked")
    return Placement(panel.id, copy, best[1], best[0], w, h, turn)


def _rise(strip: Strip, y: int, residue: int | None) -> int:
    if residue is None or strip.repeat is None or strip.repeat.along == 0:
        return y
    return y + (residue - y) % strip.repeat.along


def _columns(
    strip: Strip, panel: Panel, turn: int, alike: dict[str, tuple[int, int]], taken: list[Box]
) -> Iterator[tuple[int, int | None]]:
    w, h = panel.extents(turn)
    dx, dy = panel.point(turn)
    points = [(m.ox - dx, m.oy - dy) for m in strip.motifs if m.id == panel.motif]
    if panel.group in alike:
        ox, oy = alike[panel.group]
        points = [(ox - w // 2, oy - h // 2)]
    if strip.repeat is None or (panel.motif is None and panel.group is None):
        for x in sorted({0, *(b[0] + b[2] + strip.gap for b in taken), *(f.x + f.w for f in strip.flaws)}):
            if 0 <= x <= strip.width - w:
                yield x, None
        return
    for px, py in points:
        if strip.repeat.across == 0:
            for x in sorted({0, *(b[0] + b[2] + strip.gap for b in taken), *(f.x + f.w for f in strip.flaws)}):
                if 0 <= x <= strip.width - w:
                    yield x, py
            continue
        i = -(px // strip.repeat.across)
        while px + i * strip.repeat.across <= strip.width - w:
            yield px + i * strip.repeat.across, py + i * strip.repeat.drop
            i += 1
