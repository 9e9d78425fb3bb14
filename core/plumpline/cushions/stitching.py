"""What is stitched by machine on one cover, from which thread and needle follow."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from plumpline.cushions.closing import Closing


@dataclass(frozen=True)
class Sewn:
    """A line of machine stitching on one cover: its length in nm, and the layers of cloth under the needle.

    `what` tells the seams between two pieces from what only holds a zip or a hem.
    """

    length: int
    layers: int
    what: Literal["seam", "fastening"] = "seam"


def sewn_to_close(closing: Closing) -> tuple[Sewn, ...]:
    """The stitching of a closure: along both sides of a zip, or the two hems of open edges, folded twice."""
    if closing.kind == "zip":
        return (Sewn(2 * closing.length, layers=2, what="fastening"),)
    return () if closing.kind == "hand-sewn" else (Sewn(2 * closing.edge, layers=3, what="fastening"),)
