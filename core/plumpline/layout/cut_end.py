# Says what it costs that nobody knows where in the repeat the cloth will be cut: how much more to ask for.
"""The cut end of which only the shop will know where in the repeat it falls.

The plan is made as for a start that may be chosen, and it is moved along the cloth, as it is, to the first row behind
the cut end at which its phase comes round. Two theorems bracket what has to be asked for, with v the repeat along:

*At most* v - 1 units go before that row, one of any v in turn being the right one. So the plan's length and v - 1 are
enough, wherever the cut falls.

*At least* d - 1 go, if every panel hangs on the motif and the rows on which any of them can start lie at most d apart,
going round the repeat: let the cut fall one unit behind a row where the next is d further. Nothing can start in the
d - 1 units up to it, and the rest of any plan is a plan for a chosen start, which needs its bound. A panel that hangs
on nothing, or on panels alike, may start at once; then nothing is certain to go.

Where all panels start on one row (d = v) the two agree, and a proven plan makes a proven length to ask for.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from plumpline.layout.places import Setting, kinds_of, possible_turns
from plumpline.layout.strip import Strip


@dataclass(frozen=True)
class Lost:
    """What an unknown start takes of the length asked for: ``least`` at any rate, ``most`` at worst."""

    least: int = 0
    most: int = 0


def lost_to_start(strip: Strip) -> Lost:
    """What goes before the plan can begin; nothing where the start is known or nothing hangs on it."""
    bound = [panel for panel in strip.panels if panel.hangs_along]
    if strip.start != "unknown" or not bound or strip.repeat is None or not strip.repeat.along:
        return Lost()
    along = strip.repeat.along
    if len(bound) < len(strip.panels):
        return Lost(0, along - 1)
    rows = _rows(strip)
    return Lost(max(b - a for a, b in pairwise([*rows, rows[0] + along])) - 1, along - 1)


def _rows(strip: Strip) -> list[int]:
    """The rows within the repeat on which a panel can start, in order."""
    turns = tuple(possible_turns(strip, panel) for panel in strip.panels)
    ways = [way for kind in kinds_of(strip, Setting(turns)) for way in kind.variants]
    residues = (r for way in ways for _, r in way.columns or ((0, way.residue),))
    return sorted(dict.fromkeys(residues))
