"""Charts are cut into even pages that overlap by two, and no stitch is lost."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from packetgen.chart.tiling import MOST_COLUMNS, MOST_ROWS, OVERLAP, Span, spans, tiles


def test_a_chart_that_fits_is_one_page():
    (tile,) = tiles(60, 75, 60, 75)
    assert (tile.columns, tile.rows) == (Span(1, 1, 60), Span(1, 1, 75))
    assert (tile.left, tile.right, tile.above, tile.below) == (None, None, None, None)


def test_eighty_columns_become_twice_forty_not_sixty_and_twenty():
    assert spans(80, 60) == (Span(1, 1, 40), Span(39, 41, 80))


def test_pages_know_their_neighbours():
    """Two by two: the first page has the second at its right and the third below."""
    first, second, third, fourth = tiles(80, 80, 60, 75)
    assert (first.right, first.below, first.left, first.above) == (2, 3, None, None)
    assert (fourth.left, fourth.above) == (3, 2)
    assert (second.left, third.above) == (1, 1)


@given(st.integers(1, 1000), st.integers(20, 80))
def test_every_column_stands_on_exactly_one_page(total, most):
    cut = spans(total, most)
    owned = [column for span in cut for column in range(span.first, span.last + 1)]
    assert owned == list(range(1, total + 1))


@given(st.integers(1, 1000), st.integers(20, 80))
def test_no_page_is_too_wide_or_a_sliver(total, most):
    """Own columns differ by one at most, and none shows more than the page can hold."""
    cut = spans(total, most)
    own = [span.last - span.first + 1 for span in cut]
    assert max(own) - min(own) <= 1
    assert all(span.shown <= most for span in cut)
    assert all(span.repeated == OVERLAP for span in cut[1:])
    assert cut[0].repeated == 0


@pytest.mark.parametrize("most", [(100, 200), (60, 75)])
def test_no_page_holds_more_than_sixty_by_seventy_five(most):
    for tile in tiles(250, 200, *most):
        assert tile.columns.shown <= MOST_COLUMNS == 60
        assert tile.rows.shown <= MOST_ROWS == 75
