"""What `proof` says of patterns in which nothing is wrong: how many stitches stand alone, and where."""

from collections.abc import Iterator

from packetgen.reckon.figures import Figures
from packetgen.units import percent


def lines_of(figures: Figures, with_places: bool) -> Iterator[str]:
    """A line for the pattern; with `with_places` one more for each of the ten worst places."""
    found = figures.isolated
    yield (
        f"{figures.pattern.title}: {found.alone:,} of {found.stitches:,} stitches "
        f"({percent(found.share)}) stand alone"
    )
    for window in found.worst if with_places else ():
        yield (
            f"  columns {window.first_column}–{window.last_column}, "
            f"rows {window.first_row}–{window.last_row}: {window.alone}"
        )
