"""The workroom: for each cover a sheet for the bench, with its facts, marks, cautions and steps. One file a feature."""

from plumpline.workroom.sheet import Sheet, sheet_answer, sheets

__all__ = ["Sheet", "sheet_answer", "sheets"]
