"""The catalogue of covers: which file works out which kind of cover on which shape of insert."""

from __future__ import annotations

from collections.abc import Callable

from plumpline.cushions.bolster import bolster
from plumpline.cushions.boxed import boxed
from plumpline.cushions.boxed_outlined import boxed_outlined
from plumpline.cushions.boxed_round import boxed_round
from plumpline.cushions.edging import edged
from plumpline.cushions.flowing import cannot_flow
from plumpline.cushions.going_on import cannot_go_on
from plumpline.cushions.knife_edge import knife_edge
from plumpline.cushions.knife_edge_outlined import knife_edge_outlined
from plumpline.cushions.knife_edge_round import knife_edge_round
from plumpline.cushions.layers import with_layers
from plumpline.cushions.made import Made
from plumpline.figures import listed
from plumpline.job import Cushion, Job
from plumpline.problems import Problem

Kind = Callable[[Cushion, Job], Made | list[Problem]]

KINDS: dict[tuple[str, str], Kind] = {
    ("bolster", "bolster"): bolster,
    ("boxed", "rectangle"): boxed,
    ("boxed", "round"): boxed_round,
    ("boxed", "polygon"): boxed_outlined,
    ("knife-edge", "polygon"): knife_edge_outlined,
    ("knife-edge", "rectangle"): knife_edge,
    ("knife-edge", "round"): knife_edge_round,
}


def make(cushion: Cushion, job: Job) -> Made | list[Problem]:
    """The cover worked out with its layers, or everything that keeps it from being made."""
    shapes = [shape for kind, shape in KINDS if kind == cushion.kind]
    if cushion.insert.shape not in shapes:
        text = f"This kind of cover does not come in that shape. It can be: {listed(shapes)}."
        return [Problem(f"{cushion.at}/insert/shape", "unknown-value", text)]
    kind = KINDS[cushion.kind, cushion.insert.shape]
    made = cannot_go_on(cushion) or cannot_flow(cushion) or kind(cushion, job)
    layered = with_layers(made, kind, job) if isinstance(made, Made) else made
    return edged(layered, job) if isinstance(layered, Made) else layered
