"""Checks the certificates of lower bounds for panels of any shape; imports nothing of the core.

The engine's ``shape_bounds`` describes the theorems; here each number is worked out anew from the panels.
"""

from fractions import Fraction
from math import ceil, isqrt
from types import SimpleNamespace

from layout_checker import extents
from proof_checker import accepts_proof
from shape_checker import covers, shape_area


def accepts_shape_proof(strip, at_least, name, data):
    """Whether the certificate proves the bound on a strip whose panels may be circles or outlines."""
    if name not in PROOFS:
        assert name == "tallest" or all(p.shape == "rect" for p in strip.panels)
        return accepts_proof(strip, at_least, name, data)
    return PROOFS[name](strip, data) >= at_least


def _circles(strip, data):
    """How many circles of a diameter the panels hold, how far apart their centres lie, and within what width."""
    d = data["diameter"]
    holding = [p for p in strip.panels if p.shape in ("rect", "circle") and min(p.w, p.h) >= d]
    whole = all((p.shape, p.w) == ("circle", d) for p in holding)
    return sum(p.qty for p in holding), d + strip.gap, strip.width - d, 1 if whole else 2


def _round_rows(strip, data):
    count, pitch, sway, fine = _circles(strip, data)
    rows, pitch, sway = data["rows"], pitch * fine, sway * fine
    least = pitch * pitch - (rows - 1) ** 2
    assert least > 0
    beside = sway // (isqrt(least - 1) + 1) + 1
    return data["diameter"] + ceil(Fraction((ceil(Fraction(count, beside)) - 1) * rows, fine))


def _round_density(strip, data):
    count, pitch, sway, _ = _circles(strip, data)
    high = max(count, 1) * pitch
    low = -1  # the centres cannot reach over `low` only; 2/√3 is at most 1.15470054
    while high - low > 1:
        reach = (low + high) // 2
        most = Fraction(115470054, 10**8) * sway * reach / pitch**2 + Fraction(sway + reach, pitch) + 1
        low, high = (reach, high) if most < count else (low, reach)
    return data["diameter"] + high


def _true_area(strip, _):
    less_than_pi = Fraction(3141592, 10**6)
    areas = [
        p.qty * (less_than_pi * p.w**2 / 4 if p.shape == "circle" else shape_area(p.shape))
        for p in strip.panels if p.shape != "rect"
    ]
    return ceil((sum(areas) + sum(p.qty * p.w * p.h for p in strip.panels if p.shape == "rect")) / strip.width)


def _inscribed(strip, data):
    boxes = {box["panel"]: box for box in data["within"]}
    panels = [p for p in strip.panels if p.shape == "rect" or p.id in boxes]
    assert data["gap"] == 0 or (data["gap"] == strip.gap and all(p.shape != "circle" for p in panels))
    relaxed = []
    for p in panels:
        box = boxes.get(p.id)
        relaxed.append(p if box is None else SimpleNamespace(
            id=p.id, w=box["w"], h=box["h"], qty=p.qty, turned=None, group=None, turn_group=None,
            motif=p.motif, dx=p.dx - box["x"], dy=p.dy - box["y"], axes=p.axes, apart=p.apart,
            turns=[t for t in p.turns if extents(p, t)[0] <= strip.width],
        ))
        if box is not None and p.shape == "circle":
            ends = [(box["x"], box["x"] + box["w"]), (box["y"], box["y"] + box["h"])]
            reach = [max(abs(2 * end - p.w) for end in pair) for pair in ends]
            assert reach[0] ** 2 + reach[1] ** 2 <= p.w**2
        elif box is not None:
            assert covers(p.shape, box["x"], box["y"], box["w"], box["h"])
    inner = SimpleNamespace(
        width=strip.width, panels=relaxed, repeat=strip.repeat, motifs=strip.motifs, start=strip.start,
        flaws=strip.flaws, gap=data["gap"],
    )
    assert accepts_proof(inner, data["at_least"], data["name"], data["data"])
    return data["at_least"]


PROOFS = {
    "round-rows": _round_rows, "round-density": _round_density, "true-area": _true_area, "inscribed": _inscribed,
}
