"""Whatever is charted comes back out of the PDF: grids that nobody thought of."""

from collections import Counter
from random import Random

import pytest
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from packetgen.chart.editions import EDITIONS
from packetgen.chart.sheet import look_of
from packetgen.chart.tiling import tiles
from packetgen.model import BARE
from packetgen.render.chart_pages import chart_pages
from packetgen.render.key import key_rows
from packetgen.render.packet import symbols_of
from packetgen.render.page_key import page_lines
from tests.bench.regions import SIZES, chart
from tests.chart_only import chart_pdfs, reckoned, symbols
from tests.many_colours import MARKS, many_coloured, wheel
from tests.read_back import READERS, in_marks, whole_chart

MOST_MARKS, LONGEST = 60, 120


@st.composite
def charts(draw) -> tuple[str, ...]:
    """Rows with patches of colour on bare cloth or a ground, and scattered stitches over all."""
    width, height = draw(st.integers(1, LONGEST)), draw(st.integers(1, LONGEST))
    marks = st.sampled_from(MARKS[: draw(st.integers(1, MOST_MARKS))] + BARE)
    grid = [[draw(marks)] * width for _ in range(height)]
    columns, rows = st.integers(0, width - 1), st.integers(0, height - 1)
    for left, right, top, bottom, mark in draw(
        st.lists(st.tuples(columns, columns, rows, rows, marks), max_size=15)
    ):
        for row in grid[top : bottom + 1]:
            row[left : right + 1] = [mark] * len(row[left : right + 1])
    return scattered(grid, draw(st.sampled_from((0.0, 0.02, 0.3, 1.0))), draw(st.integers(0, 99)))


def scattered(grid: list[list[str]], share: float, seed: int) -> tuple[str, ...]:
    """The grid with this share of its stitches in colours by chance, out of all sixty."""
    random, all_marks = Random(seed), MARKS[:MOST_MARKS] + BARE
    return tuple(
        "".join(random.choice(all_marks) if random.random() < share else mark for mark in row)
        for row in grid
    )


def full(width: int, height: int) -> tuple[str, ...]:
    """Every stitch by chance."""
    return scattered([[BARE] * width for _ in range(height)], 1.0, 0)


def pattern_of(rows: tuple[str, ...]):
    return many_coloured(rows, wheel(MOST_MARKS))


@pytest.mark.slow
@settings(
    max_examples=14,
    derandomize=True,
    deadline=None,
    database=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(charts())
@example(("a",))
@example((BARE + "a",))
@example(full(1, LONGEST))
@example(full(LONGEST, 1))
@example(full(LONGEST, LONGEST))
def test_any_chart_is_read_back_cell_by_cell_by_two_readers(rows):
    figures = reckoned(pattern_of(rows))
    pdf = chart_pdfs(figures)["a4"]
    for reader in READERS:
        assert in_marks(whole_chart(reader(pdf).values()), symbols(figures)) == rows


@pytest.mark.slow
def test_a_chart_of_two_hundred_thousand_stitches_is_read_back_by_two_readers():
    """500 × 400 in sixty colours, on a hundred pages."""
    pattern = chart(SIZES["large"])
    figures = reckoned(pattern)
    pdf = chart_pdfs(figures)["letter"]
    assert (pattern.grid.width, pattern.grid.height) == (500, 400)
    for reader in READERS:
        assert in_marks(whole_chart(reader(pdf).values()), symbols(figures)) == pattern.grid.rows


@pytest.mark.slow
@settings(
    max_examples=14,
    derandomize=True,
    deadline=None,
    database=None,
    suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
)
@given(charts(), st.sampled_from(sorted(EDITIONS)))
@example(full(LONGEST, LONGEST), "large-print")
def test_in_every_edition_cells_are_large_enough_and_the_page_holds_all(rows, name):
    """Cells no smaller than the edition promises; grid and key inside the page; no stitch left out."""
    edition, figures = EDITIONS[name], reckoned(pattern_of(rows))
    look = look_of(figures.pattern, symbols_of(figures), edition.manner)
    pages = chart_pages(
        figures.pattern, look, page_lines(key_rows(figures, look), figures.beads, look), edition
    )
    assert stitches_of([page.sheet.tile for page in pages]) == everywhere_once(
        len(rows[0]), len(rows)
    )
    for page in pages:
        tile = page.sheet.tile
        told = {one.mark for one in (*(entry.line for entry in page.key), *page.key_beyond)}
        assert told == page.sheet.marks | page.sheet.line_marks
        assert edition.least_cell_mm <= page.cell_mm <= edition.largest_cell_mm
        assert page.grid_left_mm > 0
        assert page.grid_left_mm + page.cell_mm * tile.columns.shown < page.width_mm
        lowest = max(
            [page.grid_top_mm + page.cell_mm * tile.rows.shown]
            + [entry.y_mm + edition.key_text_mm for entry in page.key]
        )
        assert lowest <= page.height_mm


def stitches_of(layout) -> Counter:
    """How many pages call each stitch their own."""
    return Counter(
        (column, row)
        for tile in layout
        for row in range(tile.rows.first, tile.rows.last + 1)
        for column in range(tile.columns.first, tile.columns.last + 1)
    )


def everywhere_once(width: int, height: int) -> Counter:
    return Counter((x, y) for y in range(1, height + 1) for x in range(1, width + 1))


@given(st.integers(1, 130), st.integers(1, 130), st.integers(8, 60), st.integers(8, 75))
def test_every_stitch_is_on_exactly_one_page_outside_the_repeats(width, height, across, down):
    layout = tiles(width, height, across, down)
    assert stitches_of(layout) == everywhere_once(width, height)


@given(st.integers(1, 500), st.integers(1, 500), st.integers(8, 60), st.integers(8, 75))
def test_what_a_page_repeats_is_what_its_neighbour_ends_with(width, height, across, down):
    """So that a stitcher who turns the page finds the last stitches that she has worked."""
    by_number = {tile.number: tile for tile in tiles(width, height, across, down)}
    for tile in by_number.values():
        for here, neighbour in (
            (tile.columns, tile.left and by_number[tile.left].columns),
            (tile.rows, tile.above and by_number[tile.above].rows),
        ):
            if neighbour:
                assert neighbour.first <= here.shown_first < here.first == neighbour.last + 1
            else:
                assert here.shown_first == here.first == 1
