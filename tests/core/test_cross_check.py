"""The upholsterers' chart for patterned cloth, beside the lay plan: percent of plain cloth by the repeat, both ways."""

import pytest
from jobs import cloth, covers, job

from plumpline import plan, read_length, write_length
from plumpline.cross_check import percent_for_pattern, with_percent

# Upholsterers' chart for pattern repeat, two independent copies (they differ above 36 in; the first is followed), with
# the examples printed beside it: repeat along and across, plain cloth, what it becomes.
CHART = [("10 in", "17 in", "8 yd", "9.6 yd"), ("18 in", "13 1/2 in", "7 yd", "8.75 yd")]


@pytest.mark.parametrize(("along", "across", "plain", "more"), CHART)
def test_the_chart_goes_by_both_repeats_together(along, across, plain, more):
    percent = percent_for_pattern(read_length(along), read_length(across))
    assert with_percent(read_length(plain), percent) == read_length(more)


def test_a_repeat_between_two_bands_takes_the_higher():
    half = read_length("1/2 in")
    bands = [percent_for_pattern(n * half, 0) for n in (28, 29, 38, 39, 54, 55, 72, 73)]
    assert bands == [10, 15, 15, 20, 20, 25, 25, 30]


def test_the_chart_ends_where_its_copies_end():
    inch = read_length("1 in")
    assert percent_for_pattern(51 * inch, 0) == 35
    assert percent_for_pattern(51 * inch, 1) is None


def matched(pattern, repeat, **more):
    faces = {"front": {"cloth": "k1", "pattern": pattern}, "back": {"cloth": "k1", "pattern": pattern}}
    document = job(covers(4, "18 in", "18 in"), cloth("54 in", repeat=repeat, start="choose", **more))
    document["cushions"][0]["cover"] |= faces
    return document


def chart_lines(document):
    return [line["text"] for line in plan(document)["cloths"][0]["working"] if "chart" in line["text"]]


def test_a_matched_cloth_is_checked_against_the_chart_and_the_lay_plan_counts():
    """Eight panels of 19 in, two across: 76 in plain, and 20 % more is 91.2; in rows 20 in apart they take 79."""
    (line,) = chart_lines(matched("alike", {"across": "17 in", "along": "10 in"}))
    assert "plain cloth would need 76 in, and 20 % more for a repeat of 10 in along and 17 in across" in line
    assert f"makes {write_length(read_length('91.2 in'), 'in')}." in line
    assert "The lay plan needs 79 in, and the lay plan counts." in line


def test_the_chart_is_silent_where_nothing_is_matched_or_it_has_no_line():
    assert chart_lines(matched("free", {"across": "17 in", "along": "10 in"})) == []
    assert chart_lines(matched("alike", {"across": "27 in", "along": "26 in"})) == []
