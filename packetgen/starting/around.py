"""What a new pattern takes from the series that it is begun in."""

from collections.abc import Iterable
from dataclasses import dataclass

from packetgen.load.spoken_days import MONTHS
from packetgen.model import Colour, Designer, Series
from packetgen.reckon.fit import fit, holds, room_for
from packetgen.reckon.sizes import Size, cell_mm
from packetgen.starting import LEAST, MOST
from packetgen.starting.sprig import MARKS

# Of the first pattern: May. The next one has the next month, so that no two hang on one day.
_FIRST_MONTH = 4


@dataclass(frozen=True)
class Around:
    """What a pattern takes from its series: ids of cards and of the designer, colours by their numbers."""

    designer_id: str
    designer: str
    set_id: str
    card_id: str
    colours: tuple[Colour, ...]  # of the card
    cloths: tuple[tuple[str, str, int | None], ...]  # cloth, colour, threads that a stitch covers
    finer: tuple[str, str] | None = (
        None  # a cloth and its colour whose stitches could cover 1 thread, not 2
    )
    other_sets: tuple[str, ...] = ()  # thread sets that the first pattern is charted for too
    left_set: str = ""  # another that the series has
    beads: tuple[str, str] | None = None  # a bead card, and a number of it
    month: str = MONTHS[_FIRST_MONTH]  # of the day that the example of an occasion is on


def around_in(series: Series, designer: Designer, beads: tuple[str, str] | None) -> Around:
    """The thread sets and the cloths of the first pattern; no set whose card has fewer colours than the example."""
    first = series.thread_sets[0]
    in_first = {one.id for one in series.patterns[0].thread_sets}
    enough = min(len(MARKS), len(first.card.colours))
    others = [one for one in series.thread_sets[1:] if len(one.card.colours) >= enough]
    left = [one.id for one in others if one.id not in in_first]
    cloths = series.patterns[0].cloths
    listed = {(one.cloth.id, one.over) for one in cloths}
    finer = [
        (one.cloth.id, one.colour.name)
        for one in cloths
        if one.over == 2 and (one.cloth.id, 1) not in listed
    ]
    return Around(
        designer_id=designer.id,
        designer=designer.name,
        set_id=first.id,
        card_id=first.card.id,
        colours=tuple(first.card.colours.values()),
        cloths=tuple(
            (one.cloth.id, one.colour.name, one.over if one.over != one.cloth.over else None)
            for one in cloths
        ),
        finer=finer[0] if finer else None,
        other_sets=tuple(one.id for one in others if one.id in in_first),
        left_set=left[0] if left else "",
        beads=beads,
        month=MONTHS[(_FIRST_MONTH + len(series.patterns)) % len(MONTHS)],
    )


def usual_size(series: Series, most: int) -> tuple[int, int]:
    """Columns and rows that a new design has unless its author says otherwise: those of the series' last
    pattern; where no example can be so small or so large, or the finishing piece does not hold it on every
    cloth of the first pattern, the largest square up to `most` that fits; never fewer than can be drawn.
    """
    grid = series.patterns[-1].grid
    last = [(grid.width, grid.height)] if LEAST <= min(grid.width, grid.height) else []
    squares = [(n, n) for n in range(most, LEAST, -1)]

    def usable(size: tuple[int, int]) -> bool:
        return max(size) <= MOST and has_room_for(size, series)

    return next(filter(usable, (*last, *squares)), (LEAST, LEAST))


def has_room_for(size: tuple[int, int], series: Series) -> bool:
    """Whether the finishing piece holds so many columns and rows on every cloth of the first pattern."""
    return all(holds(size, cell, series.finish) for cell in _cells_mm(series))


@dataclass(frozen=True)
class Room:
    """The columns and rows that a finishing piece holds on every cloth: together, and alone, for designs that are narrow
    or low."""

    together: tuple[int, int]
    alone: tuple[int, int]


def room_in(series: Series, size: tuple[int, int]) -> Room:
    """That of the series' piece on the cloths of its first pattern; together it is of the proportion of `size` where not
    every design so wide and so high finds a place."""
    piece, cells = series.finish, _cells_mm(series)
    fits = [fit(Size(size[0] * cell, size[1] * cell), cell, piece) for cell in cells]
    rooms = [room_for(one, cell, piece) for one, cell in zip(fits, cells, strict=True)]
    alone = [(one.most_stitches_wide, one.most_stitches_high) for one in fits]
    return Room(_least(rooms), _least(alone))


def _least(sizes: Iterable[tuple[int, int]]) -> tuple[int, int]:
    wide, high = zip(*sizes, strict=True)
    return min(wide), min(high)


def coarsest(series: Series) -> str:
    """The name of the cloth of the first pattern on which designs come out largest; '' where there is one only."""
    cells = dict(zip(_cells_mm(series), (one.cloth.name for one in series.patterns[0].cloths)))
    return cells[max(cells)] if len(cells) > 1 else ""


def _cells_mm(series: Series) -> list[float]:
    return [cell_mm(one.cloth.count_per_inch, one.over) for one in series.patterns[0].cloths]
