# Making up a face that is cut in several pieces, before anything else is sewn to it.

from __future__ import annotations

from collections.abc import Iterator

from plumpline.workroom.step import Bench, Step


def steps(bench: Bench) -> Iterator[Step]:
    """A step for each such face."""
    for face, how in bench.cover.made_up:
        yield Step("make-up", f"make-up.{face.replace(' ', '-')}", f"Make up the {face}", how)
