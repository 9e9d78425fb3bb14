"""Shapes divided among sheets: every part of a shape is on one, neighbours overlap, and no sheet is empty."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from plumpline.geometry import round_outline
from plumpline.paper.tiles import Tile, Window, tiles

MM = 1_000_000
WINDOW = Window(180 * MM, 260 * MM, 10 * MM)
ROOM = 4 * MM


def rectangle(width, length):
    return (0, 0), (width, 0), (width, length), (0, length)


def l_shape(width, length, across, up):
    return (0, 0), (width, 0), (width, up), (across, up), (across, length), (0, length)


def names(outline, window=WINDOW):
    return [tile.name for tile in tiles(outline, window, ROOM)]


def test_a_shape_that_fits_one_sheet_takes_one_and_stands_in_its_middle():
    (tile,) = tiles(rectangle(100 * MM, 100 * MM), WINDOW, ROOM)
    assert (tile.name, tile.corner) == ("A1", (-40 * MM, -80 * MM))


def test_rows_are_letters_from_the_top_and_columns_numbers_from_the_left():
    found = tiles(rectangle(457_200_000, 457_200_000), WINDOW, ROOM)
    assert [tile.name for tile in found] == ["A1", "A2", "A3", "B1", "B2", "B3"]
    assert found[0].corner[1] > found[3].corner[1]
    assert found[1].corner[0] - found[0].corner[0] == 170 * MM


def test_the_twenty_seventh_row_has_two_letters():
    assert Tile(26, 0, (0, 0)).name == "AA1"


def test_a_sheet_that_would_be_empty_is_left_out():
    seat = l_shape(600 * MM, 600 * MM, 160 * MM, 200 * MM)
    assert "A4" not in names(seat)
    assert {"A1", "C1", "C4"} <= set(names(seat))


def test_a_sheet_within_a_large_shape_is_kept_though_no_line_is_on_it():
    assert names(rectangle(900 * MM, 1200 * MM))[6] == "B1"
    assert "C3" in names(rectangle(900 * MM, 1200 * MM))


def test_a_sheet_that_an_edge_only_touches_is_left_out():
    # The lower limb ends exactly where the upper row's sheets begin.
    window = Window(100 * MM, 100 * MM, 0)
    assert [tile.name for tile in tiles(l_shape(200 * MM, 200 * MM, 100 * MM, 100 * MM), window, 0)] == [
        "A1", "B1", "B2",
    ]  # fmt: skip


shapes = st.one_of(
    st.builds(rectangle, st.integers(10**6, 10**9), st.integers(10**6, 10**9)),
    st.builds(
        lambda w, h, a, b: l_shape(w, h, w * a // 10, h * b // 10),
        st.integers(10**8, 10**9),
        st.integers(10**8, 10**9),
        st.integers(1, 9),
        st.integers(1, 9),
    ),
    st.builds(lambda across: round_outline(across, 10**6), st.integers(10**7, 10**9)),
)


@pytest.mark.reference
@settings(max_examples=60, deadline=None)
@given(shapes, st.sampled_from([WINDOW, Window(182_900_000, 246_400_000, 12 * MM)]))
def test_the_sheets_together_cover_the_shape_without_a_gap_and_none_is_empty(outline, window):
    from shapely import Polygon, box, unary_union

    shape = Polygon(outline)
    found = tiles(outline, window, ROOM)
    sheets = [box(x, y, x + window.width, y + window.height) for x, y in (tile.corner for tile in found)]
    assert unary_union(sheets).buffer(1).contains(shape)
    assert all(sheet.intersection(shape).area > 0 for sheet in sheets)
    at = {(tile.row, tile.column): tile.corner for tile in found}
    for (row, column), (x, y) in at.items():
        assert at.get((row, column + 1), (x + window.step[0], y)) == (x + window.step[0], y)
        assert at.get((row + 1, column), (x, y - window.step[1])) == (x, y - window.step[1])
