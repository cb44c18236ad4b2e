"""The kit as plain text for a terminal, within 80 columns."""

from collections.abc import Sequence
from itertools import groupby
from textwrap import wrap

from packetgen.model import Price
from packetgen.nouns import counted, listed, plural
from packetgen.reckon.buying import Shared
from packetgen.reckon.cutting import FAT_QUARTER, as_cut, pieces_from, pieces_one_way
from packetgen.reckon.kit import (
    FAT_QUARTER_SAID,
    PACKET,
    Beads,
    Chosen,
    ClothPieces,
    Kit,
    Line,
    cost_of,
    price_name,
)
from packetgen.reckon.series_list import Row
from packetgen.reckon.sizes import Size
from packetgen.units import (
    cut_size_centimetres,
    cut_size_inches,
    metres,
    plain,
    size_centimetres,
    size_inches,
)

_FOR_THE_PIECE = "Cuts are those for the finishing piece."
_KINDS = {Shared: "threads", Beads: "beads", ClothPieces: "cloth"}
_BY_BOTH = "Pieces are counted by inches and by centimetres: the smaller number is given."
_ROUNDED = (
    "Cuts are rounded up, to the next eighth of an inch and half centimetre: card and",
    "wadding that differ by less have the same figures.",
)


def as_table(kit: Kit, finishing: Sequence[Row] = ()) -> str:
    """Designs and their cuts, then a block for every card, the beads, the cloth, and what it all costs;
    last what the finishing takes, if that is asked for."""
    wide = 2 + max(
        *(len(design.set.card.name) for design in kit.designs),
        *(len(_called(line)) for line in kit.lines),
        *(len(_bead_head(line)) for line in kit.beads),
    )
    blocks = [
        [
            *(row for design in kit.designs for row in _design(design)),
            _FOR_THE_PIECE,
            *[_BY_BOTH] * any(design.on.finishing_pieces for design in kit.designs),
        ],
        *(
            _threads(tuple(of_card), wide)
            for _, of_card in groupby(kit.threads, key=lambda line: line.card)
        ),
        _warnings(kit),
        *(
            _beads(tuple(of_card), wide)
            for _, of_card in groupby(kit.beads, key=lambda line: line.card)
        ),
        _cloths(kit.cloths, wide),
        _costs(kit),
        _finishing(finishing),
    ]
    return "\n\n".join("\n".join(block) for block in blocks if block)


def _design(design: Chosen) -> list[str]:
    cut, option = design.on.mounting.cloth, design.on.option
    gives = design.on.finishing_pieces
    from_one = f"; a fat quarter gives {counted(gives, 'such piece')}" if gives else ""
    return [
        f"{design.figures.pattern.title}: {option.cloth.name} ({option.colour.name}),",
        f"  cut {cut_size_inches(cut.width_mm, cut.height_mm)} "
        f"({cut_size_centimetres(cut.width_mm, cut.height_mm)}){from_one}",
    ]


def _called(line: Line) -> str:
    if isinstance(line, ClothPieces):
        return f"{line.cloth.name}, {line.colour.name}"
    return f"{line.colour.number} {line.colour.name}"


def _row(
    name: str, units: int | str, more: str, cost: Price | None, wide: int, star: str = ""
) -> str:
    price = f"{cost.amount} {cost.currency}" if cost else ""
    return f"{name:<{wide}}{units:>4}{star:<2}{more:>16}{price:>14}".rstrip()


def _head(name: str, more: str, lines: Sequence[Line], wide: int) -> str:
    cost = f"{'cost':>14}" if any(map(cost_of, lines)) else ""
    return f"{name:<{wide}}{'buy':>4}  {more:>16}{cost}"


def _threads(lines: Sequence[Shared], wide: int) -> list[str]:
    card = lines[0].card
    rows = [_head(card.name, "single strand", lines, wide)]
    rows += [
        _row(
            _called(line),
            line.units,
            metres(line.strand.usual_m),
            cost_of(line),
            wide,
            "*" if line.warning else "",
        )
        for line in lines
    ]
    rows.append(f"{plural(card.sold_as) + ' in all':<{wide}}{sum(line.units for line in lines):>4}")
    of = f" of {metres(card.length_m)} and {card.strands} strands" if card.strands > 1 else ""
    holds = metres(card.strands * card.length_m)
    rows.append(f"Usual lengths; a {card.sold_as}{of} holds {holds} of single strand.")
    return rows + _saved(lines)


def _saved(lines: Sequence[Line]) -> list[str]:
    """One sentence where one list takes less than a list for each design."""
    units, apart = sum(line.units for line in lines), sum(line.units_apart for line in lines)
    if apart <= units:
        return []
    return [f"Bought for each design by itself it would be {apart}: {apart - units} saved."]


def _warnings(kit: Kit) -> list[str]:
    return [f"* {_called(line)}: {line.warning}" for line in kit.threads if line.warning]


def _bead_head(line: Beads) -> str:
    return f"Beads: {line.card.name}"


def _beads(lines: Sequence[Beads], wide: int) -> list[str]:
    card = lines[0].card
    rows = [_head(_bead_head(lines[0]), "with spares", lines, wide)]
    rows += [
        _row(_called(line), line.units, f"{line.with_spares} beads", cost_of(line), wide)
        for line in lines
    ]
    rows.append(f"A {PACKET} holds {card.per_packet}.")
    return rows + _saved(lines)


def _cloths(lines: Sequence[ClothPieces], wide: int) -> list[str]:
    rows = [_head("Cloth", "to cut", lines, wide)]
    for line in lines:
        if line.units:
            gives = counted(len(line.pieces), "piece")
            rows.append(_row(_called(line), line.units, gives, cost_of(line), wide))
        rows += [
            f"{_called(line)}: a piece of {cut_size_inches(size.width_mm, size.height_mm)} "
            f"({cut_size_centimetres(size.width_mm, size.height_mm)}), too large for a fat quarter"
            for size in line.by_measure
        ]
    if any(line.units for line in lines):
        size = FAT_QUARTER
        rows.append(
            f"The numbers are of {plural(FAT_QUARTER_SAID)}: "
            f"{cut_size_inches(size.width_mm, size.height_mm)} "
            f"({size_centimetres(size.width_mm, size.height_mm)})."
        )
    return rows + _saved(lines)


def _costs(kit: Kit) -> list[str]:
    """Nothing at all where nobody has given a price."""
    if not kit.totals:
        return []
    lines: tuple[Line, ...] = (*kit.threads, *kit.beads, *kit.cloths)
    priced = [line for line in lines if cost_of(line)]
    of = listed(tuple(dict.fromkeys(_KINDS[type(line)] for line in priced)))
    rows = [f"Cost of {of}: {' and '.join(f'{t.amount} {t.currency}' for t in kit.totals)}"]
    unpriced = dict.fromkeys(price_name(line) for line in kit.without_price)
    if unpriced:
        rows.append(f"Not in it, since no price is given: {', '.join(unpriced)}.")
    return rows


def from_piece(kit: Kit, width_mm: float, height_mm: float) -> str:
    """How many pieces for each design, one design at a time, a piece of cloth of this size gives."""
    cloth = Size(width_mm, height_mm)
    rows = [
        f"A piece of {size_inches(width_mm, height_mm)} ({size_centimetres(width_mm, height_mm)}) gives, "
        "of one design alone:"
    ]
    for design in kit.designs:
        cut = as_cut(design.on.mounting.cloth)
        upright = pieces_one_way(cloth, cut)
        turned = pieces_one_way(cloth, Size(cut.height_mm, cut.width_mm))
        rows.append(
            f"{design.figures.pattern.title}: {pieces_from(cloth, cut)} "
            f"(all upright {upright}, all turned {turned})"
        )
    return "\n".join((*rows, _BY_BOTH))


def _finishing(rows: Sequence[Row]) -> list[str]:
    said = ["Finishing piece and mounting"] if rows else []
    for row in rows:
        said.append(f"{row.name}: {plain(row.quantity)} {row.unit}")
        said += wrap(row.detail, 76, initial_indent="  ", subsequent_indent="  ")
    if rows:
        said += _ROUNDED
    return said
