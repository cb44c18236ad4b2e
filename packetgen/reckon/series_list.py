"""What finishing takes for a whole series: the finishing piece once, and the mounting of each design.

Wood, paint, glue, hardware and magnets belong to the one piece; each mounted design has its own card, wadding,
backing, trim and washers. Threads, beads and cloth are `packetgen.reckon.kit`'s.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from packetgen.model import FinishingPiece, Glue, Hardware
from packetgen.nouns import counted, listed, plural
from packetgen.reckon.cutting import EIGHTH_MM, FAT_QUARTER, HALF_CM_MM, as_cut, order
from packetgen.reckon.kit import Chosen
from packetgen.reckon.paint import PaintNeed, paint_needs
from packetgen.reckon.sawing import blank, sawn_mm2
from packetgen.reckon.sizes import Size
from packetgen.units import (
    cut_inches,
    cut_size_centimetres,
    cut_size_inches,
    inches,
    millimetres,
    plain,
    up_to_step,
)


@dataclass(frozen=True)
class Board:
    """Wood of one thickness for all parts, without what the saw takes."""

    thickness_mm: float
    area_mm2: float
    parts: tuple[str, ...]  # that are sawn of it: 'shelf', 'leg (2 pieces)'
    longest_mm: float = 0.0  # of the long sides of all the pieces
    widest_mm: float = 0.0  # of their short sides


@dataclass(frozen=True)
class PieceNeeds:
    """What the finishing piece takes; bought once, however many designs there are."""

    boards: tuple[Board, ...]  # the thickest first
    paints: tuple[PaintNeed, ...]
    glues: tuple[Glue, ...]
    hardware: tuple[Hardware, ...]
    magnets: int


@dataclass(frozen=True)
class MountingNeeds:
    """What all mounted designs take together; sizes before any rounding, one a design, in their order."""

    cards: tuple[Size, ...]
    wadding: tuple[Size, ...]
    backing: tuple[Size, ...]
    backing_fat_quarters: int  # for those that one holds
    backing_by_measure: tuple[Size, ...]  # too large for a fat quarter
    trims_mm: tuple[float, ...]  # a length for each design
    washers: int


@dataclass(frozen=True)
class SeriesList:
    piece: FinishingPiece
    once: PieceNeeds
    mounting: MountingNeeds


@dataclass(frozen=True)
class Row:
    """One line to buy, in words: item, name, quantity, unit, and what else to know."""

    item: str
    name: str
    quantity: float
    unit: str
    detail: str = ""


def series_list(designs: Sequence[Chosen], piece: FinishingPiece) -> SeriesList:
    """One list for these designs of a series that hangs on `piece`."""
    return SeriesList(piece, _once(designs, piece), _mounting(designs))


def _once(designs: Sequence[Chosen], piece: FinishingPiece) -> PieceNeeds:
    thick: dict[float, Board] = {}
    for part in piece.parts:
        sawn = blank(part)
        board_mm = sawn.thickness_mm
        before = thick.get(board_mm, Board(board_mm, 0.0, ()))
        short_mm, long_mm = sorted((sawn.size.width_mm, sawn.size.height_mm))
        said = f"{part.name} ({part.pieces} pieces)" if part.pieces > 1 else part.name
        thick[board_mm] = Board(
            thickness_mm=board_mm,
            area_mm2=before.area_mm2 + part.pieces * sawn_mm2(part),
            parts=(*before.parts, said),
            longest_mm=max(before.longest_mm, long_mm),
            widest_mm=max(before.widest_mm, short_mm),
        )
    boards = tuple(thick[key] for key in sorted(thick, reverse=True))
    magnets = max(map(_pairs, designs), default=piece.magnets.pairs)
    return PieceNeeds(boards, paint_needs(piece), piece.glues, piece.hardware, magnets)


def _pairs(design: Chosen) -> int:
    """Places of magnets on its card: as many as the heaviest of the series needs, or none if it has no
    room for them."""
    plan = design.figures.magnets
    return len(plan.spots) if plan.serves(design.on.card) else 0


def _mounting(designs: Sequence[Chosen]) -> MountingNeeds:
    mounted = [design.on.mounting for design in designs]
    backing = tuple(one.backing for one in mounted)
    ordered = order([as_cut(size) for size in backing], FAT_QUARTER)
    return MountingNeeds(
        cards=tuple(one.card for one in mounted),
        wadding=tuple(one.wadding for one in mounted),
        backing=backing,
        backing_fat_quarters=len(ordered.cloths),
        backing_by_measure=tuple(backing[index] for index in ordered.too_large),
        trims_mm=tuple(one.trim_mm for one in mounted if one.trim_mm),
        washers=sum(map(_pairs, designs)),
    )


def finishing_rows(of: SeriesList) -> tuple[Row, ...]:
    """The whole list line by line: the piece, then the mounting."""
    return (*_piece_rows(of), *_mounting_rows(of))


def _piece_rows(of: SeriesList) -> Iterator[Row]:
    for board in of.once.boards:
        area_cm2 = up_to_step(board.area_mm2 / 100, 1)
        square_inches = up_to_step(board.area_mm2 / EIGHTH_MM**2 / 64, 1)
        said = f"for {listed(board.parts)}; {_both(board.thickness_mm)} thick"
        said += (
            f"; the longest piece {_both(board.longest_mm)}, the widest {_both(board.widest_mm)}"
        )
        said += f"; {counted(int(square_inches), 'square inch')}, and what the saw takes besides"
        yield Row("wood", "wood to saw", area_cm2, "cm²", said)
    for need in of.once.paints:
        way = need.ways[0].way
        said = f"of {plain(way.tin_ml)} ml; takes {plain(up_to_step(need.volume_ml, 1))} ml"
        yield Row("paint", need.paint.name, need.tins, _counted("tin", need.tins), said)
    for glue in of.once.glues:
        yield Row("glue", glue.name, 1, "bottle or tube", glue.used_for)
    for thing in of.once.hardware:
        yield Row("hardware", thing.name, thing.pieces, _counted("piece", thing.pieces), thing.size)
    if of.once.magnets:
        yield Row(
            "magnet", "magnet", of.once.magnets, _counted("piece", of.once.magnets), _disc(of)
        )


def _both(length_mm: float) -> str:
    return f"{millimetres(length_mm)} ({inches(length_mm)})"


def _mounting_rows(of: SeriesList) -> Iterator[Row]:
    need = of.mounting
    for item, sizes in (("card", need.cards), ("wadding", need.wadding)):
        yield Row(item, f"mounting {item}", len(sizes), _counted("piece", len(sizes)), _said(sizes))
    in_quarters = [size for size in need.backing if size not in need.backing_by_measure]
    if in_quarters:
        unit = _counted("fat quarter", need.backing_fat_quarters)
        yield Row("backing", "backing fabric", need.backing_fat_quarters, unit, _said(in_quarters))
    if need.backing_by_measure:
        number = len(need.backing_by_measure)
        said = _said(need.backing_by_measure)
        yield Row("backing", "backing fabric by measure", number, _counted("piece", number), said)
    if need.trims_mm:
        # Each is rounded as its packet tells it, in each of the two systems by itself.
        eighths = sum(up_to_step(mm, EIGHTH_MM) for mm in need.trims_mm)
        centimetres = sum(up_to_step(mm, HALF_CM_MM) for mm in need.trims_mm) / 10
        length = cut_inches(eighths) + "; a piece for each design" * (len(need.trims_mm) > 1)
        yield Row("trim", f"{of.piece.trim.kind} trim", centimetres, "cm", length)
    if need.washers:
        said = f"{plain(of.piece.magnets.diameter_mm)} mm across"
        yield Row("washer", "steel washer", need.washers, _counted("piece", need.washers), said)


def _disc(of: SeriesList) -> str:
    return f"{plain(of.piece.magnets.diameter_mm)} × {plain(of.piece.magnets.thickness_mm)} mm"


def _counted(unit: str, number: float) -> str:
    return unit if number == 1 else plural(unit)


def _said(sizes: Sequence[Size]) -> str:
    """'5 5/8 × 5 in (14.5 × 13 cm)', one a piece."""
    return "; ".join(
        f"{cut_size_inches(s.width_mm, s.height_mm)} ({cut_size_centimetres(s.width_mm, s.height_mm)})"
        for s in sizes
    )
