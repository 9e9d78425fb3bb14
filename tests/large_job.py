"""Invented jobs of sixty covers in many sizes on a cloth with a half-drop repeat, as job documents."""

from typing import Any

# (how many, width, height, pattern of front and back): pads of a function room, made up for the tests.
SIZES = [
    (12, "18 in", "18 in", "centred", "free"),
    (10, "20 in", "20 in", "centred", "free"),
    (8, "22 in", "14 in", "alike", "free"),
    (8, "24 in", "16 in", "free", "free"),
    (8, "16 in", "16 in", "centred", "free"),
    (6, "26 in", "26 in", "free", "free"),
    (5, "30 in", "12 in", "free", "free"),
    (3, "14 1/2 in", "21 in", "centred", "free"),
]
COVERS = 60


def face(pattern: str) -> dict[str, Any]:
    return {"cloth": "k1", "pattern": pattern, **({"motif": "m1"} if pattern == "centred" else {})}


def large_job(name: str = "Function room, invented", number: str = "60f00d") -> dict[str, Any]:
    """Fronts and backs from the print: 120 panels on one cloth."""
    cushions = [
        {
            "id": f"c{number}",
            "name": f"{width.removesuffix(' in')} by {length.removesuffix(' in')}",
            "quantity": quantity,
            "kind": "knife-edge",
            "insert": {"shape": "rectangle", "width": width, "length": length, "fill": "feather", "measured": "insert"},
            "cover": {"seam": "1/2 in", "front": face(front), "back": face(back)},
        }
        for number, (quantity, width, length, front, back) in enumerate(SIZES, start=1)
    ]
    cloth = {
        "id": "k1",
        "name": "half-drop print",
        "width": "56 in",
        "selvedge": "1/2 in",
        "direction": "one-way",
        "repeat": {"across": "13 1/2 in", "along": "12 1/2 in", "drop": "6 1/4 in"},
        "motifs": [{"id": "m1", "name": "leaf", "across": "7 in", "along": "3 in"}],
        "start": "choose",
        "squaring": "2 in",
        "sold_by": "1/8 yd",
    }
    return {
        "format": "plumpline-job",
        "version": 1,
        "id": number,
        "name": name,
        "units": "in",
        "cushions": cushions,
        "cloths": [cloth],
    }


def contrast_backs() -> dict[str, Any]:
    """The same covers with their backs from a plain cloth that may be turned: 60 panels on each."""
    job = large_job("Function room with plain backs, invented")
    plain = {"id": "k2", "name": "plain linen", "width": "54 in", "selvedge": "1/2 in", "direction": "any"}
    job["cloths"].append(plain | {"squaring": "2 in", "sold_by": "1/8 yd"})
    for cushion in job["cushions"]:
        cushion["cover"]["back"] = {"cloth": "k2", "pattern": "free"}
    return job
