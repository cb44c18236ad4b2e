"""Advice on cloth and wood: a design that only just fits, and one that is cut wastefully."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from math import ceil

from packetgen.diagnostics import Problems
from packetgen.model import FinishingPiece, Pattern
from packetgen.nouns import counted, listed
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, pieces_from
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.fit import TIGHT_MM, Stitches, Verdict, fit
from packetgen.reckon.mounting import mounting
from packetgen.reckon.review_edges import bare_edges
from packetgen.reckon.sizes import finished_size
from packetgen.units import cut_size_centimetres, cut_size_inches, plain

# As many columns or rows can be taken off most designs, and where a fat quarter gives so many pieces
# nobody minds one: both our own choice.
MOST_OFF, MANY_PIECES = 4, 8
# So much less may be folded to the back, and so much at least is laced there: our own choice.
_MOST_FOLD_OFF_MM, _LEAST_FOLD_MM = 5, 20


def complain_of_cloths(
    figures: Figures, piece: FinishingPiece, spare: bool, problems: Problems
) -> None:
    """Advice at each cloth on which little wood is left, and once for those on which a stitch or two less would
    give more pieces from a fat quarter. Where bare edges are why, these are told already, and where they are
    `spare`, how to crop them."""
    broad = any(problem.code == "border-broad" for problem in problems)
    bare = bare_edges(figures.pattern)
    finer = any(on.fit.verdict is Verdict.FITS for on in figures.cloths)
    for on in figures.cloths:
        cropped = spare and _fits_without(bare, figures.pattern, on, piece)
        if on.fit.verdict is Verdict.TIGHT and not broad and not cropped:
            _tight(figures.pattern, on, piece, finer, problems)
    few = [
        on
        for on in figures.cloths
        if on.fit.verdict is Verdict.FITS
        and on.finishing_pieces < MANY_PIECES
        and _pieces(figures.pattern, on, piece, bare) == on.finishing_pieces
    ]
    _wasteful(figures.pattern, few, piece, problems)


def least_wood_mm(on: OnCloth) -> float:
    """On the side that has least of it."""
    return min(wood for _, wood in _sides(on))


def _sides(on: OnCloth) -> Iterator[tuple[str, float]]:
    yield "at the left", on.fit.reveal_left_mm
    yield "at the right", on.fit.reveal_right_mm
    yield "above", on.fit.reveal_above_mm
    yield "below", on.fit.reveal_below_mm


def _fits_without(off: Stitches, pattern: Pattern, on: OnCloth, piece: FinishingPiece) -> bool:
    wide, high = pattern.grid.width - off[0], pattern.grid.height - off[1]
    return fit(finished_size(wide, high, on.cell_mm), on.cell_mm, piece).verdict is Verdict.FITS


def _tight(
    pattern: Pattern, on: OnCloth, piece: FinishingPiece, finer: bool, problems: Problems
) -> None:
    """`finer` says whether it fits well on another cloth that is offered."""
    pinched = tuple(side for side, wood in _sides(on) if wood < TIGHT_MM)
    off = _off_to_fit(pattern, on, piece)
    problems.add(
        on.option.place,
        "fit-tight",
        cloth=on.option.cloth.name,
        wood=f"{least_wood_mm(on):.1f}",
        sides=listed(pinched),
        least=f"{TIGHT_MM:g}",
        other="leave this cloth out" if finer else "offer a finer cloth",
        off=f"take {_said(off)} off" if off else "make the design smaller",
        panel=_larger_panel(on),
    )


def _larger_panel(on: OnCloth) -> str:
    """'make the panel 1 mm wider and 2.5 mm higher', in half millimetres."""
    fit = on.fit
    ways = (
        ("wider", (fit.reveal_left_mm, fit.reveal_right_mm)),
        ("higher", (fit.reveal_above_mm, fit.reveal_below_mm)),
    )
    lacks = ((way, sum(max(0.0, TIGHT_MM - wood) for wood in sides)) for way, sides in ways)
    more = tuple(f"{ceil(2 * lack - 1e-6) / 2:g} mm {way}" for way, lack in lacks if lack > 0)
    return f"make the panel {listed(more)}"


def _off_to_fit(pattern: Pattern, on: OnCloth, piece: FinishingPiece) -> Stitches | None:
    """The fewest columns, rows or as many of both to take off so that enough wood is left."""
    grid, cell = pattern.grid, on.cell_mm
    most = ceil(2 * TIGHT_MM / cell)  # that many give both sides all that can be wanting
    for less in range(1, most + 1):
        for columns, rows in ((less, 0), (0, less), (less, less)):
            if columns >= grid.width or rows >= grid.height:
                continue
            if _fits_without((columns, rows), pattern, on, piece):
                return columns, rows
    return None


def _wasteful(
    pattern: Pattern, cloths: Sequence[OnCloth], piece: FinishingPiece, problems: Problems
) -> None:
    """So little is taken off that every cloth of which some would give more pieces does."""

    def more(on: OnCloth, off: Stitches) -> bool:
        return _pieces(pattern, on, piece, off) > on.finishing_pieces

    by_name: dict[str, OnCloth] = {}  # of a cloth in two colours it is said once
    for on in cloths:
        if any(more(on, way) for way in _ways_off()):
            by_name.setdefault(on.option.cloth.name, on)
    if not by_name:
        return
    wasteful = tuple(by_name.values())
    off = next(way for way in _ways_off() if all(more(on, way) for on in wasteful))
    problems.add(
        wasteful[0].option.place,
        "cut-wastes",
        cloths=listed(tuple(by_name)),
        pieces=_gives(wasteful),
        off=_said(off),
        fold=_with_less_fold(pattern, (wasteful, cloths), piece, off),
        more=_numbers([_pieces(pattern, on, piece, off) for on in wasteful]),
    )


def _with_less_fold(
    pattern: Pattern,
    cloths: tuple[Sequence[OnCloth], Sequence[OnCloth]],
    piece: FinishingPiece,
    off: Stitches,
) -> str:
    """', or fold_over: 24 mm,', where so little less to fold gives as many pieces as so much taken off, of the wasteful ones of
    the `cloths`, and nothing is then to be said of any."""
    wasteful, every = cloths
    for less_mm in range(1, _MOST_FOLD_OFF_MM + 1):
        smaller = replace(piece, fold_over_mm=piece.fold_over_mm - less_mm)
        if smaller.fold_over_mm >= _LEAST_FOLD_MM and all(
            _pieces(pattern, on, smaller, (0, 0)) >= _pieces(pattern, on, piece, off)
            for on in wasteful
        ):
            if any(
                _pieces(pattern, on, smaller, way) > _pieces(pattern, on, smaller, (0, 0))
                for on in every
                for way in _ways_off()
            ):
                continue
            told = re.search(rf"\b{plain(piece.fold_over_mm)}\s*mm\b", piece.steps_markdown)
            steps = " and its steps" if told else ""
            return f", or for all designs fold_over: {plain(smaller.fold_over_mm)} mm in finish.yaml{steps},"
    return ""


def _gives(cloths: Sequence[OnCloth]) -> str:
    """'4 pieces of 7 1/2 × 7 1/2 in (19.5 × 19 cm)'; of several cloths '4 and 6 pieces', or '4 pieces'."""
    on, *others = cloths
    if others:
        numbers = _numbers([each.finishing_pieces for each in cloths])
        return f"{numbers} {'piece' if numbers == '1' else 'pieces'}"
    sides = on.mounting.cloth.width_mm, on.mounting.cloth.height_mm
    gives = counted(on.finishing_pieces, "piece") if on.finishing_pieces else "no piece"
    return f"{gives} of {cut_size_inches(*sides)} ({cut_size_centimetres(*sides)})"


def _numbers(of_cloths: Sequence[int]) -> str:
    """'4 and 6'; of so many everywhere '4'."""
    same = len(set(of_cloths)) == 1
    return listed(tuple(map(str, of_cloths[:1] if same else of_cloths)))


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
