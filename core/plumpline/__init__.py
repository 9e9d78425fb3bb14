"""Plumpline's core: from a cushion job to what is cut, how much cloth to ask for, and why.

    from plumpline import plan, quote, read_length, write_length, JobError

`plan(job)` and `quote(job)` take a job document (plain JSON types) and return an answer (plain JSON types): what to
cut and how much to ask for, and what the job costs.
"""

from plumpline.lengths import LengthError, read_length, read_length_full, write_length
from plumpline.planning import plan
from plumpline.price import quote
from plumpline.problems import JobError
from plumpline.version import __version__

__all__ = ["JobError", "LengthError", "__version__", "plan", "quote", "read_length", "read_length_full", "write_length"]
