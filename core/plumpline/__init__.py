"""Plumpline's core: from a cushion job to what is cut, how much cloth to ask for, and why.

    from plumpline import plan, read_length, write_length, JobError

`plan(job)` takes a job document (plain JSON types) and returns the answer (plain JSON types).
"""

from plumpline.lengths import LengthError, read_length, read_length_full, write_length
from plumpline.planning import plan
from plumpline.problems import JobError
from plumpline.version import __version__

__all__ = ["JobError", "LengthError", "__version__", "plan", "read_length", "read_length_full", "write_length"]
