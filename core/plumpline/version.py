"""The version of the core, named in every answer."""

__version__ = "0.1.0"
