"""What straight layouts are judged by: the largest offcut against every offcut there is."""

from hypothesis import given, settings
from hypothesis import strategies as st

from plumpline.layout import Strip
from plumpline.layout.desk import Desk
from plumpline.layout.places import Setting
from plumpline.layout.straight import Band, Bands, Column


@st.composite
def rows_of_columns(draw):
    """A cloth's width, the gap, and bands of columns on it as (extents of the columns, top of the band)."""
    width, gap = draw(st.integers(1, 12)), draw(st.sampled_from([0, 0, 1]))
    bands, y = [], 0
    for _ in range(draw(st.integers(1, 8))):
        columns, x = [], 0
        while x < width + gap and (not columns or draw(st.booleans())):
            w = draw(st.integers(1, width + gap - x))
            columns.append(Column(x, w, y + draw(st.integers(1, 6)), []))
            x += w
        bands.append(Band(y, 0, columns))
        y = bands[-1].top = bands[-1].reached
    return width, gap, tuple(bands)


@settings(max_examples=300, deadline=None, derandomize=True)
@given(rows_of_columns())
def test_the_largest_offcut_is_the_largest_of_all_there_are(case):
    width, gap, bands = case
    beside = [
        max(0, min(width - band.right + gap for band in bands[first : last + 1]))
        * (bands[last].reached - bands[first].y)
        for last in range(len(bands))
        for first in range(last + 1)
    ]
    above = [column.w * (band.reached - column.top) for band in bands for column in band.columns]
    layout = Bands(Desk(Strip(width, (), gap=gap), Setting(()), (), width + gap), bands)
    assert layout.largest_offcut == max(beside + above)
