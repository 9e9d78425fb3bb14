"""The job as the core works with it: frozen, exact, complete; made from a document by `read_job`."""

from plumpline.job.bought import Bought
from plumpline.job.cloths import Cloth, Flaw, Motif, Price, TestSquare, shrunk
from plumpline.job.cushions import Boxing, Closure, Corners, Cover, Cushion, Edge, Face, Insert
from plumpline.job.habits import HABITS, NM_PER_CM, NM_PER_METRE, NM_PER_YARD, Habits
from plumpline.job.reader import file_problems, read_job
from plumpline.job.remnants import Remnant, RemnantFlaw
from plumpline.job.whole import Job, name_of

__all__ = [
    "HABITS",
    "NM_PER_CM",
    "NM_PER_METRE",
    "NM_PER_YARD",
    "Bought",
    "Boxing",
    "Closure",
    "Cloth",
    "Corners",
    "Cover",
    "Cushion",
    "Edge",
    "Face",
    "Flaw",
    "Habits",
    "Insert",
    "Job",
    "Motif",
    "Price",
    "Remnant",
    "RemnantFlaw",
    "TestSquare",
    "file_problems",
    "name_of",
    "read_job",
    "shrunk",
]
