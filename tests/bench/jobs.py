"""Jobs to measure with: covers of five sizes in turn, so that a lay plan has something to decide."""

from typing import Any

SIZES = (("18 in", "18 in"), ("20 in", "20 in"), ("22 in", "22 in"), ("12 in", "20 in"), ("16 in", "26 in"))


def mixed_job(panels: int) -> dict[str, Any]:
    """A job of so many panels (an even number): plain knife-edge covers, two panels each, from one cloth."""
    quantities = [(panels // 2 + len(SIZES) - 1 - place) // len(SIZES) for place in range(len(SIZES))]
    return {
        "format": "plumpline-job",
        "version": 1,
        "id": f"bench-{panels}",
        "name": f"{panels} panels (invented)",
        "units": "in",
        "cushions": [
            cushion(f"c{place}", *SIZES[place], quantity) for place, quantity in enumerate(quantities) if quantity
        ],
        "cloths": [{"id": "k1", "name": "linen", "width": "54 in", "direction": "one-way", "sold_by": "1/8 yd"}],
    }


def cushion(name: str, width: str, length: str, quantity: int) -> dict[str, Any]:
    return {
        "id": name,
        "name": name,
        "quantity": quantity,
        "kind": "knife-edge",
        "insert": {"shape": "rectangle", "width": width, "length": length, "fill": "feather"},
        "cover": {
            "seam": "1/2 in",
            "closure": {"kind": "hand-sewn", "at": "bottom", "opening": "8 in"},
            "front": {"cloth": "k1", "pattern": "free"},
            "back": {"cloth": "k1", "pattern": "free"},
        },
    }
