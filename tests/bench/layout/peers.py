"""Other ways to lay the same pieces, for comparison: every rule of rectpack, and the CP-SAT solver of OR-tools."""

import math
import time

Pieces = list[tuple[int, int]]
Placed = list[tuple[int, int, int, int]]  # x, y, w, h

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


def by_rectpack(width: int, pieces: Pieces, seconds: float) -> tuple[int, float]:
    """Every rule with every order, the strip lowered below the best until nothing fits; length and seconds used."""
    import rectpack

    orders = [getattr(rectpack, name) for name in SORTS]
    orders.append(lambda rects: sorted(rects, key=lambda r: (-r[1], -r[0])))
    orders.append(lambda rects: sorted(rects, key=lambda r: (-r[0], -r[1])))
    began, best, better = time.process_time(), sum(h for _, h in pieces), True
    least = least_possible(width, pieces)
    while better:
        better = False
        for rule in (getattr(rectpack, name) for name in RULES):
            for order in orders:
                used = time.process_time() - began
                if used > seconds or best <= least:
                    return best, used
                top = _packed(rectpack, rule, order, width, best - 1, pieces)
                if top is not None:
                    best, better = top, True
    return best, time.process_time() - began


def _packed(rectpack: object, rule: object, order: object, width: int, height: int, pieces: Pieces) -> int | None:
    packer = rectpack.newPacker(  # type: ignore[attr-defined]
        mode=rectpack.PackingMode.Offline, pack_algo=rule, sort_algo=order, rotation=False  # type: ignore[attr-defined]
    )
    for w, h in pieces:
        packer.add_rect(w, h)
    packer.add_bin(width, height)
    packer.pack()
    placed = packer.rect_list()
    return max(y + h for _, _, y, _, h, _ in placed) if len(placed) == len(pieces) else None


def by_cp_sat(width: int, pieces: Pieces, seconds: float) -> tuple[int | None, bool, float]:
    """No-overlap in two dimensions with both cumulatives; length or None, whether proven, wall seconds."""
    from ortools.sat.python import cp_model

    most = _shelves(width, pieces)
    model = cp_model.CpModel()
    top = model.new_int_var(least_possible(width, pieces), most, "top")
    across, along, last = [], [], {}
    for i, (w, h) in enumerate(pieces):
        x, y = model.new_int_var(0, width - w, f"x{i}"), model.new_int_var(0, most - h, f"y{i}")
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
    return (math.floor(solver.objective_value) if found else None), status == cp_model.OPTIMAL, used


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
