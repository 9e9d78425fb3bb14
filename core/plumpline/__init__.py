"""Plumpline's core: from a cushion job to what is cut, how much cloth to ask for, and why."""

__version__ = "0.1.0"
