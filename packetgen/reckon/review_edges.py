"""Advice on rows and columns at a chart's edges on which nothing is worked."""

from packetgen.diagnostics import Problems
from packetgen.model import Pattern
from packetgen.model.extent import bare_margins
from packetgen.nouns import at_the_ends, listed


def complain_of_bare_edges(pattern: Pattern, problems: Problems) -> None:
    """They count in the finished size, in the fit and in the cloth to cut."""
    grid = pattern.grid
    left, right, top, bottom = bare_margins(pattern)
    rows = at_the_ends("row", top, bottom, grid.height)
    columns = at_the_ends("column", left, right, grid.width)
    if where := listed(tuple(filter(None, (rows, columns)))):
        problems.add(
            grid.place,
            "edges-bare",
            where=where,
            pattern=pattern.id,
            size=f"{grid.width - left - right} × {grid.height - top - bottom}",
        )
