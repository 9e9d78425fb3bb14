"""Judges a layout of an instance by its own arithmetic: inside the cloth, apart, complete, on the motif. Uses nothing
of the engine."""

from collections import Counter
from typing import Any

TURNS = {"none": (0,), "half": (0, 180), "quarter": (0, 90)}


def length_of(instance: dict[str, Any], layout: list[dict[str, Any]]) -> int:
    """The length of a layout; ValueError says what is wrong with it."""
    kinds, width = _kinds(instance)
    counted = Counter(placed["panel"] for placed in layout)
    if counted != Counter({name: kind["qty"] for name, kind in kinds.items()}):
        raise ValueError(f"laid {dict(counted)}")
    boxes = []
    for placed in layout:
        kind, x, y, turn = kinds[placed["panel"]], placed["x"], placed["y"], placed["turn"]
        if turn not in TURNS[kind.get("rotation", "none")]:
            raise ValueError(f"{placed} is turned")
        w, h = (kind["h"], kind["w"]) if turn == 90 else (kind["w"], kind["h"])
        if x < 0 or y < 0 or x + w > width:
            raise ValueError(f"{placed} leaves the cloth")
        if kind.get("motif") and not _on_motif(instance["repeat"], kind, x, y, turn):
            raise ValueError(f"{placed} is off the motif")
        boxes.append((y, y + h, x, x + w))
    _check_apart(sorted(boxes), instance.get("gap", 0))
    return max(top for _, top, _, _ in boxes)


def _kinds(instance: dict[str, Any]) -> tuple[dict[str, dict[str, Any]], int]:
    if "items" not in instance:
        return {panel["id"]: panel for panel in instance["panels"]}, instance["usable_width"]
    return {str(i): {"w": w, "h": h, "qty": qty} for i, (w, h, qty) in enumerate(instance["items"])}, instance["width"]


def _on_motif(repeat: dict[str, int], kind: dict[str, Any], x: int, y: int, turn: int) -> bool:
    dx, dy = kind["motif_dx"], kind["motif_dy"]
    if turn == 180:
        dx, dy = kind["w"] - dx, kind["h"] - dy
    column, rest = divmod(x + dx - repeat["ox"], repeat["h"]) if repeat["h"] else (0, 0)
    drop = repeat["drop"] if column % 2 else 0
    return rest == 0 and (not repeat["v"] or (y + dy - repeat["oy"] - drop) % repeat["v"] == 0)


def _check_apart(boxes: list[tuple[int, int, int, int]], gap: int) -> None:
    """Boxes come by their bottoms, so only those not yet ended below can be in the way."""
    beside: list[tuple[int, int, int, int]] = []
    for bottom, top, left, right in boxes:
        beside = [box for box in beside if box[1] + gap > bottom]
        if any(left < r + gap and l < right + gap for _, _, l, r in beside):  # noqa: E741
            raise ValueError(f"panels overlap at ({left}, {bottom})")
        beside.append((bottom, top, left, right))
