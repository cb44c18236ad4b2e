"""Advice on cloth and wood: a design that only just fits, and one that is cut wastefully."""

from collections.abc import Iterator
from math import ceil

from packetgen.diagnostics import Problems
from packetgen.model import FinishingPiece, Pattern
from packetgen.nouns import counted, listed
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, pieces_from
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.fit import TIGHT_MM, Stitches, Verdict, fit
from packetgen.reckon.mounting import mounting
from packetgen.reckon.sizes import finished_size
from packetgen.units import cut_size_centimetres, cut_size_inches

# As many columns or rows can be taken off most designs, and where a fat quarter gives so many pieces
# nobody minds one: both our own choice.
MOST_OFF, MANY_PIECES = 4, 8


def complain_of_cloths(figures: Figures, piece: FinishingPiece, problems: Problems) -> None:
    """Advice at each cloth on which little wood is left, or on which a stitch or two less would give more
    pieces from a fat quarter."""
    for on in figures.cloths:
        if on.fit.verdict is Verdict.TIGHT:
            _tight(figures.pattern, on, piece, problems)
        elif on.fit.verdict is Verdict.FITS and on.finishing_pieces < MANY_PIECES:
            _wasteful(figures.pattern, on, piece, problems)


def least_wood_mm(on: OnCloth) -> float:
    """On the side that has least of it."""
    return min(wood for _, wood in _sides(on))


def _sides(on: OnCloth) -> Iterator[tuple[str, float]]:
    yield "at the left", on.fit.reveal_left_mm
    yield "at the right", on.fit.reveal_right_mm
    yield "above", on.fit.reveal_above_mm
    yield "below", on.fit.reveal_below_mm


def _tight(pattern: Pattern, on: OnCloth, piece: FinishingPiece, problems: Problems) -> None:
    pinched = tuple(side for side, wood in _sides(on) if wood < TIGHT_MM)
    off = _off_to_fit(pattern, on, piece)
    problems.add(
        on.option.place,
        "fit-tight",
        cloth=on.option.cloth.name,
        wood=f"{least_wood_mm(on):.1f}",
        sides=listed(pinched),
        least=f"{TIGHT_MM:g}",
        hint=f"take {_said(off)} off" if off else "make the design smaller",
    )


def _off_to_fit(pattern: Pattern, on: OnCloth, piece: FinishingPiece) -> Stitches | None:
    """The fewest columns, rows or as many of both to take off so that enough wood is left."""
    grid, cell = pattern.grid, on.cell_mm
    most = ceil(2 * TIGHT_MM / cell)  # that many give both sides all that can be wanting
    for less in range(1, most + 1):
        for columns, rows in ((less, 0), (0, less), (less, less)):
            if columns >= grid.width or rows >= grid.height:
                continue
            smaller = finished_size(grid.width - columns, grid.height - rows, cell)
            if fit(smaller, cell, piece).verdict is Verdict.FITS:
                return columns, rows
    return None


def _wasteful(pattern: Pattern, on: OnCloth, piece: FinishingPiece, problems: Problems) -> None:
    for off in _ways_off():
        more = _pieces(pattern, on, piece, off)
        if more > on.finishing_pieces:
            cut = as_cut(on.mounting.cloth)
            sides = cut.width_mm, cut.height_mm
            gives = counted(on.finishing_pieces, "piece") if on.finishing_pieces else "no piece"
            problems.add(
                on.option.place,
                "cut-wastes",
                cloth=on.option.cloth.name,
                pieces=gives,
                cut=f"{cut_size_inches(*sides)} ({cut_size_centimetres(*sides)})",
                off=_said(off),
                more=more,
            )
            return


def _ways_off() -> Iterator[Stitches]:
    """Columns and rows to take off, the fewest first."""
    ways = [(columns, rows) for columns in range(MOST_OFF + 1) for rows in range(MOST_OFF + 1)]
    yield from sorted(ways, key=lambda way: (sum(way), max(way)))[1:]


def _pieces(pattern: Pattern, on: OnCloth, piece: FinishingPiece, off: Stitches) -> int:
    width, height = pattern.grid.width - off[0], pattern.grid.height - off[1]
    if width < 1 or height < 1:
        return 0
    smaller = mounting(finished_size(width, height, on.cell_mm), piece)
    return pieces_from(FAT_QUARTER, as_cut(smaller.cloth))


def _said(off: Stitches) -> str:
    """(3, 1) → '3 columns and 1 row'."""
    parts = ((off[0], "column"), (off[1], "row"))
    return listed(tuple(counted(number, noun) for number, noun in parts if number))
