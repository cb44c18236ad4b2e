"""Advice on rows and columns at a chart's edges on which nothing is worked."""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.model import Pattern
from packetgen.model.extent import bare_margins, points_of
from packetgen.nouns import at_the_ends, listed
from packetgen.offered import shift_words

# So many bare rows or columns on a side are taken to be meant: our own choice.
MEANT = 1
_EDITED = (".txt", ".csv")  # kinds of charts that `packetgen chart` writes


def bare_edges(pattern: Pattern) -> tuple[int, int]:
    """How many columns and rows of them are told; (0, 0) where they are taken to be meant."""
    left, right, top, bottom = bare_margins(pattern)
    return (left + right, top + bottom) if max(left, right, top, bottom) > MEANT else (0, 0)


def complain_of_bare_edges(
    pattern: Pattern, as_large: bool, problems: Problems, magnets_wait: bool = False
) -> None:
    """They count in the finished size, in the fit and in the cloth to cut. A design that has to stay `as_large`, as
    one whose card the magnets need, may be out of the middle by them. `magnets_wait` says whether it is told only then
    what magnets need of smaller designs."""
    grid, bare = pattern.grid, bare_edges(pattern)
    if not any(bare):
        return
    left, right, top, bottom = bare_margins(pattern)
    rows = at_the_ends("row", top, bottom, grid.height)
    columns = at_the_ends("column", left, right, grid.width)
    name = grid.place.path.rpartition("/")[2]
    size = f"{grid.width - bare[0]} × {grid.height - bare[1]}"
    how = f"'packetgen chart crop {pattern.id}' makes it"
    how = how if name.endswith(_EDITED) else f"take them out of {name}"
    why = "and they count in its size"
    if (left or top) and points_of(pattern):
        how += " and moves lines and knots along; rows that slipped in, delete by hand"
    mend = f"a chart without them is {size}; {how}"
    if as_large:
        # Half a stitch from the middle is the middle.
        moved = shift_words(int((right - left) / 2), int((bottom - top) / 2))
        if not moved:
            return
        how = f"'packetgen chart shift {pattern.id} {moved}' brings it to the middle"
        mend = how if name.endswith(_EDITED) else "bring it to the middle"
        why = (
            "and the design is out of the middle (they must stay: the magnets need a card as large)"
        )
    mend += (
        "; whether smaller designs then need rows for the magnets, the next proof says"
        * magnets_wait
    )
    place = grid.place
    if bottom and not top and name.endswith(".txt"):  # where the bare rows are
        place = replace(place, line=place.line + grid.height - bottom)
    problems.add(
        place,
        "edges-bare",
        where=listed(tuple(filter(None, (rows, columns)))),
        why=why,
        mend=mend,
    )
