"""Other ways to lay the same pieces, for comparison: every rule of rectpack, and the CP-SAT solver of OR-tools."""

import time
from typing import Any

Pieces = list[tuple[int, int]]
Layout = list[dict[str, Any]]  # as the judge takes it, panels named by their place among the pieces

RULES = (
    "MaxRectsBl", "MaxRectsBssf", "MaxRectsBaf", "MaxRectsBlsf",
    "SkylineBl", "SkylineBlWm", "SkylineMwf", "SkylineMwfWm", "SkylineMwfl", "SkylineMwflWm",
    "GuillotineBssfSas", "GuillotineBafSas", "GuillotineBssfMaxas", "GuillotineBafLlas", "GuillotineBlsfMinas",
)  # fmt: skip
SORTS = ("SORT_NONE", "SORT_AREA", "SORT_PERI", "SORT_DIFF", "SORT_SSIDE", "SORT_LSIDE", "SORT_RATIO")


def least_possible(width: int, pieces: Pieces) -> int:
    """Area, tallest piece, pieces wider than half: no layout is shorter."""
    area = sum(w * h for w, h in pieces)
    return max(-(-area // width), max(h for _, h in pieces), sum(h for w, h in pieces if 2 * w > width))


def by_rectpack(width: int, pieces: Pieces, seconds: float) -> tuple[Layout, float]:
    """Every rule with every order, the strip lowered below the best until nothing fits; layout and seconds used."""
    import rectpack

    orders = [getattr(rectpack, name) for name in SORTS]
    orders.append(lambda rects: sorted(rects, key=lambda r: (-r[1], -r[0])))
    orders.append(lambda rects: sorted(rects, key=lambda r: (-r[0], -r[1])))
    began, top, best, better = time.process_time(), sum(h for _, h in pieces) + 1, [], True
    least = least_possible(width, pieces)
    while better:
        better = False
        for rule in (getattr(rectpack, name) for name in RULES):
            for order in orders:
                used = time.process_time() - began
                if used > seconds or top <= least:
                    return best, used
                placed = _packed(rectpack, rule, order, width, top - 1, pieces)
                if len(placed) == len(pieces):
                    top, better = max(y + h for _, _, y, _, h, _ in placed), True
                    best = [_spot(rid, x, y) for _, x, y, _, _, rid in placed]
    return best, time.process_time() - began


def _packed(rectpack: Any, rule: Any, order: Any, width: int, height: int, pieces: Pieces) -> list[tuple[int, ...]]:
    packer = rectpack.newPacker(
        mode=rectpack.PackingMode.Offline, pack_algo=rule, sort_algo=order, rotation=False
    )
    for i, (w, h) in enumerate(pieces):
        packer.add_rect(w, h, rid=i)
    packer.add_bin(width, height)
    packer.pack()
    placed: list[tuple[int, ...]] = packer.rect_list()
    return placed


def _spot(piece: int, x: int, y: int) -> dict[str, Any]:
    return {"panel": str(piece), "x": x, "y": y, "turn": 0}


def by_cp_sat(width: int, pieces: Pieces, seconds: float) -> tuple[Layout, bool, float]:
    """No-overlap in two dimensions with both cumulatives; layout if any, whether proven the shortest, wall seconds."""
    from ortools.sat.python import cp_model

    most = _shelves(width, pieces)
    model = cp_model.CpModel()
    top = model.new_int_var(least_possible(width, pieces), most, "top")
    across, along, corners, last = [], [], [], {}
    for i, (w, h) in enumerate(pieces):
        x, y = model.new_int_var(0, width - w, f"x{i}"), model.new_int_var(0, most - h, f"y{i}")
        corners.append((x, y))
        across.append(model.new_fixed_size_interval_var(x, w, f"across{i}"))
        along.append(model.new_fixed_size_interval_var(y, h, f"along{i}"))
        model.add(y + h <= top)
        if (w, h) in last:
            model.add(last[w, h] <= y)
        last[w, h] = y
    model.add_no_overlap_2d(across, along)
    model.add_cumulative(along, [w for w, _ in pieces], width)
    model.add_cumulative(across, [h for _, h in pieces], top)
    model.minimize(top)
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = seconds
    solver.parameters.num_workers = 2
    began = time.perf_counter()
    status = solver.solve(model)
    used = time.perf_counter() - began
    found = status in (cp_model.OPTIMAL, cp_model.FEASIBLE)
    placed = enumerate(corners if found else [])
    layout = [_spot(i, solver.value(x), solver.value(y)) for i, (x, y) in placed]
    return layout, status == cp_model.OPTIMAL, used


def _shelves(width: int, pieces: Pieces) -> int:
    """A length that is long enough: pieces in rows, the tallest first."""
    free: list[int] = []
    total = 0
    for w, h in sorted(pieces, key=lambda piece: (-piece[1], -piece[0])):
        row = next((i for i, room in enumerate(free) if room >= w), None)
        if row is None:
            free.append(width - w)
            total += h
        else:
            free[row] -= w
    return total
