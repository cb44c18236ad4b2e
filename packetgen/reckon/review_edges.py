"""Advice on rows and columns at a chart's edges on which nothing is worked."""

from packetgen.diagnostics import Problems
from packetgen.model import Pattern
from packetgen.model.extent import bare_margins
from packetgen.nouns import at_the_ends, listed

# So many bare rows or columns on a side are taken to be meant: our own choice.
MEANT = 1


def complain_of_bare_edges(pattern: Pattern, problems: Problems) -> None:
    """They count in the finished size, in the fit and in the cloth to cut."""
    grid = pattern.grid
    left, right, top, bottom = bare_margins(pattern)
    if max(left, right, top, bottom) <= MEANT:
        return
    rows = at_the_ends("row", top, bottom, grid.height)
    columns = at_the_ends("column", left, right, grid.width)
    problems.add(
        grid.place,
        "edges-bare",
        where=listed(tuple(filter(None, (rows, columns)))),
        pattern=pattern.id,
        size=f"{grid.width - left - right} × {grid.height - top - bottom}",
    )
