# The lay-plan engine: panels on a strip of cloth, as short as can be found, with a proven lower bound.
"""The engine on its own; it knows nothing of cushions. ``strip`` holds the words, ``solve`` the planner."""

from plumpline.layout.budget import FULL_WORK, QUICK_WORK, Budget
from plumpline.layout.edges import cut_apart
from plumpline.layout.fit import Fit, FitSearch, TooMany, equal_sets, fit_sets
from plumpline.layout.instances import lay
from plumpline.layout.solve import Planner, lay_plan, straight_plan
from plumpline.layout.strip import (
    CannotLay,
    Cut,
    Flaw,
    Motif,
    Panel,
    Piping,
    PipingCut,
    Placement,
    Plan,
    Repeat,
    StraightPlan,
    Strip,
    StripPiece,
)

__all__ = [
    "FULL_WORK",
    "QUICK_WORK",
    "Budget",
    "CannotLay",
    "Cut",
    "Fit",
    "FitSearch",
    "Flaw",
    "Motif",
    "Panel",
    "Piping",
    "PipingCut",
    "Placement",
    "Plan",
    "Planner",
    "Repeat",
    "StraightPlan",
    "Strip",
    "StripPiece",
    "TooMany",
    "cut_apart",
    "equal_sets",
    "fit_sets",
    "lay",
    "lay_plan",
    "straight_plan",
]
