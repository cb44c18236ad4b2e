"""The chart and key that a pattern which is given away shows on its page."""

from dataclasses import dataclass

from markupsafe import Markup

from packetgen.chart.assignment import shapes_for
from packetgen.chart.drawing import knot_sample
from packetgen.chart.page_chart import page_chart, symbol_id
from packetgen.chart.sheet import Look, knot_dot, look_of
from packetgen.chart.symbols import code_point
from packetgen.reckon.figures import Figures
from packetgen.render.inline_drawing import inline
from packetgen.render.key import KeyRow, key_rows


@dataclass(frozen=True)
class OpenRow:
    """A line of the key; `symbol` is the id of its shape in the chart, '' where it has no cells, and `knot` an SVG, ''
    where it has none."""

    row: KeyRow
    symbol: str
    knot: Markup


@dataclass(frozen=True)
class OpenChart:
    drawing: Markup  # SVG
    rows: tuple[OpenRow, ...]
    sets: tuple[str, ...]  # names of the thread cards, in the order of each row's threads


def open_chart(figures: Figures) -> OpenChart:
    """The whole chart of one pattern with its key. For patterns that are given away, and no others."""
    pattern = figures.pattern
    shapes = shapes_for(pattern, {work.line.mark: work.total_stitches for work in figures.works})
    look = look_of(pattern, {mark: code_point(name) for mark, name in shapes.items()})
    alt = (
        f"The chart of {pattern.title}: {pattern.grid.width} stitches wide and {pattern.grid.height} high, "
        "with a symbol for each colour. The key below explains them."
    )
    return OpenChart(
        drawing=inline(page_chart(pattern, shapes), alt),
        rows=tuple(
            OpenRow(row, symbol_id(shapes[row.mark]) if row.symbol else "", _knot(row, look))
            for row in key_rows(figures, look)
        ),
        sets=tuple(thread_set.card.name for thread_set in pattern.thread_sets),
    )


def _knot(row: KeyRow, look: Look) -> Markup:
    drawn = knot_sample(knot_dot((0.5, 0.5), row.mark, look)) if row.knots else ""
    return inline(drawn, "a knot")
