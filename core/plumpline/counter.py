"""What to say at the counter, in the words that keep the usual mishaps away."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from plumpline.figures import length_to_ask
from plumpline.job import Job, name_of
from plumpline.layplan import ClothPlan
from plumpline.lengths import TAPE_GRID, round_up, write_length
from plumpline.working import start_lines

Json = dict[str, Any]


def counter_lines(planned: ClothPlan, job: Job, tipping: Sequence[Json]) -> list[str]:
    """The lines to show or to send for one cloth: how much, of what, and what to see to before it is cut.

    One piece of one batch, the face looked at before the cut and the first cut squared are common practice.
    """
    cloth, units = planned.cloth, job.units
    asked = length_to_ask(planned.buy, cloth.sold_by, units)
    wide = write_length(round_up(_narrowest(planned, tipping), TAPE_GRID[units]), units)
    printed = cloth.repeat_across or cloth.repeat_along
    return [
        f"{asked} of {name_of(cloth)}, in one piece, all of one batch, with no joins.",
        f"Lay a tape across, from edge to edge: it has to be at least {wide} wide.",
        "Look at the face, all of the length, before it is cut: no flaws, no creases, no faded folds.",
        f"Square the first cut to the {'print' if printed else 'thread'}, not to the edge of the table.",
        *start_lines(planned, units),
    ]


def _narrowest(planned: ClothPlan, tipping: Sequence[Json]) -> int:
    """The least width at which the same length is enough, as far as it is known: else that of the job."""
    own = [entry["from"] for entry in tipping if entry["field"] == "width" and entry["own"]]
    return own[0]["nm"] if own and own[0] else planned.cloth.width or 0
