"""Dates without a time of day: read as ISO 8601 text, "2026-07-10", kept as that text, and told in words."""

from __future__ import annotations

import re

_DATE = re.compile(r"(\d{4})-(\d{2})-(\d{2})", re.ASCII)
_DAYS = (31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31)
_MONTHS = (
    *("January", "February", "March", "April", "May", "June"),
    *("July", "August", "September", "October", "November", "December"),
)


def is_date(text: str) -> bool:
    """Whether this is a day of the Gregorian calendar written as ISO 8601 has it, nothing before or after it.

    Later days are later in the order of their texts as well.
    """
    match = _DATE.fullmatch(text)
    if match is None:
        return False
    year, month, day = map(int, match.groups())
    return year > 0 and 1 <= month <= 12 and 1 <= day <= _days(year, month)


def _days(year: int, month: int) -> int:
    is_leap = year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
    return 29 if month == 2 and is_leap else _DAYS[month - 1]


def date_in_words(text: str) -> str:
    """A day in words: "10 July 2026"."""
    year, month, day = text.split("-")
    return f"{int(day)} {_MONTHS[int(month) - 1]} {year}"
