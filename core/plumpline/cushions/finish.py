"""How the allowances of a cover are finished: left, overlocked edge by edge, trimmed, or overlocked two together."""

from __future__ import annotations

from plumpline.job import HABITS, Cushion, Job
from plumpline.lengths import write_length
from plumpline.problems import Problem

#: The finishes that cut something off the allowances once they are sewn.
TRIMMED = ("trimmed", "overlocked-together")


def trimmed_to(job: Job) -> int:
    """What is left of an allowance that is trimmed, in nm: 1/4 in (6 mm), the least that holds (common practice)."""
    return HABITS[job.units].least_seam


def nothing_to_trim(cushion: Cushion, job: Job) -> list[Problem]:
    """The problem of allowances that are no wider than what trimming would leave."""
    cover = cushion.cover
    if cover.seam_finish not in TRIMMED or min(cover.seam, cover.side_seam) > trimmed_to(job):
        return []
    seam, least = (write_length(nm, job.units) for nm in (min(cover.seam, cover.side_seam), trimmed_to(job)))
    text = f"Seams of {seam} leave nothing to trim off: {least} has to stay. Make the seams wider, or leave them so."
    return [Problem(f"{cushion.at}/cover/seam_finish", "rules-contradict", text)]


def finish_line(cushion: Cushion, job: Job) -> list[str]:
    """What the finish means for the cover."""
    left = write_length(trimmed_to(job), job.units)
    lines = {
        "overlocked": "Every edge is overlocked by itself before it is sewn, and the seams are pressed open.",
        "trimmed": f"Once sewn, the allowances are trimmed to {left}.",
        "overlocked-together": f"Once sewn, the allowances are trimmed to {left} and the two overlocked together.",
    }
    return [lines[cushion.cover.seam_finish]] if cushion.cover.seam_finish in lines else []
