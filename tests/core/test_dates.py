"""Dates are ISO 8601 text, compared with the calendar of the standard library; no zone of time touches them (B41)."""

import datetime

import pytest

from plumpline.dates import date_in_words, is_date


def test_every_day_of_some_years_is_a_date_and_reads_as_the_calendar_says():
    """2000 was a leap year, 1900 and 2100 are none, 2024 is one (the rule of the Gregorian calendar)."""
    for year in (1900, 2000, 2024, 2026, 2100):
        day = datetime.date(year, 1, 1)
        while day.year == year:
            assert is_date(day.isoformat())
            assert date_in_words(day.isoformat()) == f"{day.day} {day:%B} {year}"
            day += datetime.timedelta(days=1)


@pytest.mark.parametrize(
    "text",
    [
        *("2026-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-07-00", "0000-07-10"),
        *("2026-7-10", "20260710", "2026-07-10T00:00", "10/07/2026", "2026-07-10\n", " 2026-07-10", "", "٢٠٢٦-٠٧-١٠"),
    ],
)
def test_what_is_no_day_is_refused_as_the_calendar_refuses_it(text):
    assert not is_date(text)
