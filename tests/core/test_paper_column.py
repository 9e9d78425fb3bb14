"""Text set down a sheet: rows keep together, and a full sheet is followed by another."""

import pytest
from printed import texts

from plumpline.paper.column import BODY, STRONG, Cell, Column
from plumpline.paper.lettering import lines_of
from plumpline.paper.pdf import PAPERS, Document
from plumpline.paper.sheet import MM, Sheet


def set_in_rows(rows, height=40 * MM):
    """A document of rows of two cells in a column so high."""
    document = Document("Rows")
    column = Column(lambda: Sheet(document, *PAPERS["a4"]), (20 * MM, 200 * MM), 60 * MM, 200 * MM + height)
    for left, right in rows:
        column.row([Cell(left, 20, STRONG), Cell(right, 80)])
    return document.to_bytes(), column


@pytest.mark.reference
def test_a_row_that_does_not_fit_goes_whole_to_the_next_sheet():
    words = "Sew the opening by hand with small stitches, drawing the two folds together."
    written, _ = set_in_rows([(str(number), words) for number in range(1, 7)])
    pages = texts(written)
    assert len(pages) == 3
    for page in pages:
        assert page.replace("\n", " ").count(words) == 2


@pytest.mark.reference
def test_a_row_larger_than_a_sheet_is_begun_at_the_top_of_one_and_not_for_ever_put_off():
    written, _ = set_in_rows([("1", "Sew. " * 100)], height=20 * MM)
    assert len(texts(written)) == 1


def test_a_row_is_as_high_as_its_longest_cell():
    words = "Press the seams open, then turn the cover through its opening."
    _, column = set_in_rows([("1", "Press."), ("2", words)])
    # 80 hundredths of 60 mm are 48 mm, of which 2 mm keep the cells apart
    lines = lines_of(words, BODY, 46 * MM)
    assert len(lines) > 1
    assert column.y == 240 * MM - (1 + len(lines)) * BODY.leading
