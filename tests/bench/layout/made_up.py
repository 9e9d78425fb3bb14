"""Eighteen cutting jobs of a cushion workroom, made up by a seeded chance: plain, turned, on a repeat, mixed."""

from random import Random
from typing import Any

SEED = 20
INCH = 16  # jobs in inches are in sixteenths
KINDS = ("plain", "turned", "repeat", "half-drop", "strips", "many")


def made_up_jobs() -> list[dict[str, Any]]:
    """The jobs, three of each kind, by turns in sixteenths of an inch and in millimetres."""
    random = Random(SEED)
    return [_job(f"u{n + 1:02}", KINDS[n % len(KINDS)], n % 2 == 0, random) for n in range(3 * len(KINDS))]


def _job(name: str, kind: str, inches: bool, random: Random) -> dict[str, Any]:
    width = random.choice([54, 53, 55, 58]) * INCH if inches else random.choice([1370, 1400, 1350, 1480])
    sizes = 8 if kind == "many" else random.randrange(2, 6)
    panels = [_panel(f"face{i}", inches, random) for i in range(sizes)]
    job: dict[str, Any] = {
        "id": name, "note": f"{kind} job", "unit": "1/16 in" if inches else "mm", "usable_width": width,
        "panels": panels, "step": 72 if inches else 100,
    }  # fmt: skip
    if kind == "turned":
        for panel in panels:
            panel["rotation"] = "quarter"
    if kind in ("repeat", "half-drop", "strips"):
        _centre(job, kind, inches, random)
    if kind in ("strips", "many"):
        length = random.randrange(30, 80) * INCH if inches else random.randrange(800, 2000)
        panels.append({"id": "strip", "w": random.choice([3, 4, 5]) * (INCH if inches else 25), "h": length,
                       "qty": random.choice([2, 4, 6])})  # fmt: skip
    return job


def _panel(name: str, inches: bool, random: Random) -> dict[str, Any]:
    step, least, most = (INCH // 2, 24, 49) if inches else (10, 30, 62)
    w = random.randrange(least, most) * step
    h = w if random.random() < 0.5 else random.randrange(least, most) * step
    return {"id": name, "w": w, "h": h, "qty": random.choice([2, 2, 4, 4, 6, 8])}


def _centre(job: dict[str, Any], kind: str, inches: bool, random: Random) -> None:
    """Put every face with its centre on a motif of a repeat that is made up too."""
    least, most, step = (6, 27, INCH) if inches else (16, 68, 10)
    if kind == "half-drop":
        across = random.randrange(least, most) * step
    else:
        across = job["usable_width"] // random.randrange(2, 5)
    along = random.randrange(least, most) * step
    job["repeat"] = {
        "h": across, "v": along, "drop": along // 2 if kind == "half-drop" else 0, "ox": across // 2, "oy": along // 3,
    }  # fmt: skip
    for panel in job["panels"]:
        panel |= {"motif": True, "motif_dx": panel["w"] // 2, "motif_dy": panel["h"] // 2}
