"""The kit for other programs: a table of comma-separated values (RFC 4180) or one JSON object (RFC 8259)."""

import csv
import io
import json
from collections.abc import Sequence
from dataclasses import asdict

from packetgen.model import Price
from packetgen.reckon.buying import Shared
from packetgen.reckon.cutting import FAT_QUARTER
from packetgen.reckon.kit import (
    Beads,
    Chosen,
    ClothPieces,
    Kit,
    Line,
    cost_of,
    price_name,
    price_of,
    unit_of,
)
from packetgen.reckon.series_list import Row
from packetgen.reckon.sizes import Size

COLUMNS = (
    "item", "card", "name", "number", "colour", "quantity", "unit",
    "strand_careful_m", "strand_usual_m", "strand_generous_m",
    "beads_sewn", "beads_with_spares", "pieces_mm", "pieces_by_measure_mm",
    "price", "cost", "currency", "detail",
)  # fmt: skip
# A spreadsheet takes a cell that begins with one of these for a formula.
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def as_csv(kit: Kit, finishing: Sequence[Row] = ()) -> str:
    """One header line, then a line for every colour of thread, bead and cloth, and for what the
    finishing takes. CRLF at line ends."""
    target = io.StringIO(newline="")
    table = csv.DictWriter(target, COLUMNS, restval="", lineterminator="\r\n")
    table.writeheader()
    for cells in (*map(_cells, kit.lines), *map(asdict, finishing)):
        table.writerow({name: safe(str(value)) for name, value in cells.items()})
    return target.getvalue()


def safe(cell: str) -> str:
    """The cell as a spreadsheet shows it and does not reckon it: an apostrophe goes before a formula."""
    return f"'{cell}" if cell.startswith(_FORMULA) else cell


def as_json(kit: Kit, finishing: Sequence[Row] = ()) -> str:
    """Everything of the list; each key names its unit; sums of money are text, to the last figure."""
    content = {
        "designs": [_design(design) for design in kit.designs],
        "threads": [_thread(line) | _money(line) for line in kit.threads],
        "beads": [_beads(line) | _money(line) for line in kit.beads],
        "cloths": [_cloth(line) | _money(line) for line in kit.cloths],
        "finishing": [asdict(row) for row in finishing],
        "fat_quarter_mm": _sides(FAT_QUARTER),
        "totals": [_sum(total) for total in kit.totals],
        "without_price": list(dict.fromkeys(price_name(line) for line in kit.without_price)),
    }
    return json.dumps(content, ensure_ascii=False, indent=1) + "\n"


def _cells(line: Line) -> dict[str, object]:
    thing = line.cloth if isinstance(line, ClothPieces) else line.card
    number = "" if isinstance(line, ClothPieces) else line.colour.number
    cells: dict[str, object] = {
        "item": _item(line),
        "card": thing.id,
        "name": thing.name,
        "number": number,
        "colour": line.colour.name,
        "quantity": line.units,
        "unit": unit_of(line),
    }
    if isinstance(line, Shared):
        cells |= _strand(line)
    elif isinstance(line, Beads):
        cells |= {"beads_sewn": line.sewn, "beads_with_spares": line.with_spares}
    else:
        cells |= {
            "pieces_mm": _spoken(line.pieces),
            "pieces_by_measure_mm": _spoken(line.by_measure),
        }
    price, cost = price_of(line), cost_of(line)
    if price:
        cells |= {"price": price.amount, "currency": price.currency}
    if cost:
        cells |= {"cost": cost.amount}
    return cells


def _item(line: Line) -> str:
    return {Shared: "thread", Beads: "beads", ClothPieces: "cloth"}[type(line)]


def _spoken(sizes: tuple[Size, ...]) -> str:
    return " ".join(f"{size.width_mm:.1f}x{size.height_mm:.1f}" for size in sizes)


def _strand(line: Shared) -> dict[str, object]:
    return {
        "strand_careful_m": round(line.strand.careful_m, 3),
        "strand_usual_m": round(line.strand.usual_m, 3),
        "strand_generous_m": round(line.strand.generous_m, 3),
    }


def _design(design: Chosen) -> dict[str, object]:
    option = design.on.option
    return {
        "pattern": design.figures.pattern.id,
        "title": design.figures.pattern.title,
        "thread_set": design.set.id,
        "cloth": option.cloth.id,
        "cloth_colour": option.colour.name,
        "over_threads": option.over,
        "cut_mm": _sides(design.on.mounting.cloth),
        "cut_rounded_up_mm": _sides(design.cut),
        "pieces_from_a_fat_quarter": design.on.finishing_pieces,
    }


def _of_card(line: Shared | Beads) -> dict[str, object]:
    return {
        "card": line.card.id,
        "card_name": line.card.name,
        "number": line.colour.number,
        "name": line.colour.name,
    }


def _thread(line: Shared) -> dict[str, object]:
    return {
        **_of_card(line),
        "hand_dyed": line.card.hand_dyed,
        **_strand(line),
        "unit_length_m": round(line.card.length_m, 4),
        "unit_strands": line.card.strands,
        "units_apart": line.units_apart,
        "warning": line.warning,
    }


def _beads(line: Beads) -> dict[str, object]:
    return {
        **_of_card(line),
        "size_mm": line.card.size_mm,
        "beads_sewn": line.sewn,
        "beads_with_spares": line.with_spares,
        "beads_in_a_packet": line.card.per_packet,
        "units_apart": line.units_apart,
    }


def _cloth(line: ClothPieces) -> dict[str, object]:
    return {
        "cloth": line.cloth.id,
        "cloth_name": line.cloth.name,
        "colour": line.colour.name,
        "hand_dyed": line.cloth.hand_dyed,
        "pieces_mm": [_sides(size) for size in line.pieces],
        "pieces_by_measure_mm": [_sides(size) for size in line.by_measure],
        "units_apart": line.units_apart,
    }


def _money(line: Line) -> dict[str, object]:
    price, cost = price_of(line), cost_of(line)
    return {
        "units": line.units,
        "sold_as": unit_of(line),
        "price": _sum(price) if price else None,
        "cost": _sum(cost) if cost else None,
    }


def _sum(price: Price) -> dict[str, str]:
    return {"amount": str(price.amount), "currency": price.currency}


def _sides(size: Size) -> dict[str, float]:
    return {"width": round(size.width_mm, 3), "height": round(size.height_mm, 3)}
