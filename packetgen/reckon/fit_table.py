"""How a design fits the finishing piece on every cloth of its series, and on the usual counts.

Cloths with the same stitches in an inch give the same size, whatever their weave: aida of 14 blocks and
evenweave of 28 threads worked over two have one row between them.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from packetgen.model import Pattern, Series, Weave
from packetgen.nouns import counted, listed
from packetgen.reckon.fit import Fit, fit
from packetgen.reckon.sizes import Size, cell_mm, finished_size
from packetgen.units import plain

# What stitchers have at home though no author offers it: common practice, no source.
USUAL: tuple[tuple[Weave, int, int], ...] = (
    *((Weave.AIDA, count, 1) for count in (14, 16, 18)),
    *((Weave.EVENWEAVE, count, 2) for count in (28, 32, 36)),
)


@dataclass(frozen=True)
class Ground:
    """A cloth and how it is worked. `name` is a cloth of the series, or says a usual count."""

    name: str
    count_per_inch: float
    over: int
    of_series: bool

    @property
    def stitches_per_inch(self) -> float:
        return self.count_per_inch / self.over


@dataclass(frozen=True)
class Column:
    """All grounds that give one size of stitch."""

    cell_mm: float
    stitches_per_inch: float
    grounds: tuple[Ground, ...]

    @property
    def of_series(self) -> tuple[Ground, ...]:
        return tuple(ground for ground in self.grounds if ground.of_series)


@dataclass(frozen=True)
class FitRow:
    """One design on one size of stitch."""

    column: Column
    finished: Size
    border_mm: float
    fit: Fit
    promised: tuple[Ground, ...]  # those that this pattern itself offers


@dataclass(frozen=True)
class FitTable:
    pattern: Pattern
    rows: tuple[FitRow, ...]  # one a column, in the columns' order

    @property
    def usual(self) -> str:
        """'14, 16 and 18': the stitches to the inch that stand in it whatever the series offers."""
        return listed(
            tuple(plain(one) for one in dict.fromkeys(count / over for _, count, over in USUAL))
        )


def columns_of(series: Series) -> tuple[Column, ...]:
    """Every size of stitch that a pattern of the series offers, and the usual ones; the coarsest first."""
    options = (option for pattern in series.patterns for option in pattern.cloths)
    offered = [
        Ground(
            _worked(option.cloth.name, option.over), option.cloth.count_per_inch, option.over, True
        )
        for option in options
    ]
    usual = [Ground(_usual(*each), each[1], each[2], False) for each in USUAL]
    columns: dict[float, list[Ground]] = {}
    for ground in dict.fromkeys((*sorted(offered, key=lambda one: one.name), *usual)):
        columns.setdefault(ground.stitches_per_inch, []).append(ground)
    return tuple(
        Column(cell_mm(grounds[0].count_per_inch, grounds[0].over), per_inch, tuple(grounds))
        for per_inch, grounds in sorted(columns.items())
    )


def fit_table(pattern: Pattern, series: Series) -> FitTable:
    """The rows of one design."""
    return _table(pattern, series, columns_of(series))


def fit_tables(series: Series) -> tuple[FitTable, ...]:
    """Every design of the series, in its order, all with the same columns."""
    columns = columns_of(series)
    return tuple(_table(pattern, series, columns) for pattern in series.patterns)


def _table(pattern: Pattern, series: Series, columns: Iterable[Column]) -> FitTable:
    promised = {(_worked(o.cloth.name, o.over)) for o in pattern.cloths}
    piece, rows = series.finish, []
    for column in columns:
        finished = finished_size(pattern.grid.width, pattern.grid.height, column.cell_mm)
        own = tuple(ground for ground in column.of_series if ground.name in promised)
        laid = fit(finished, column.cell_mm, piece)
        rows.append(FitRow(column, finished, piece.border_mm, laid, own))
    return FitTable(pattern, tuple(rows))


def _worked(name: str, over: int) -> str:
    """'Brindle Linen 32, over 2'; a cloth worked over one says nothing of it."""
    return f"{name}, over {over}" if over > 1 else name


def _usual(weave: Weave, count: int, over: int) -> str:
    if weave is Weave.AIDA:
        return f"{plain(count)}-count aida"
    return f"{plain(count)}-count evenweave or linen over {counted(over, 'thread')}"
