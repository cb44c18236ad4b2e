"""Every reckoned figure of a pattern as JSON, for people who check; with the chart's character map."""

import json
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date, datetime
from enum import Enum

from packetgen.chart.symbols import BLANK
from packetgen.diagnostics import Place
from packetgen.model import BARE
from packetgen.reckon.buying import buy_tables
from packetgen.reckon.figures import Figures


def ledger(figures: Figures, symbols: Mapping[str, str]) -> bytes:
    """One JSON object: the pattern as it was read, its figures, and which character of the symbol face
    stands for which character of the author's chart (so that the chart can be read back from the PDF)."""
    characters = {f"U+{ord(symbol):04X}": mark for mark, symbol in symbols.items()}
    content = {
        "character_map": {f"U+{ord(BLANK):04X}": BARE} | characters,
        "figures": plain_data(figures),
        "buy": plain_data(buy_tables(figures)),
    }
    return (json.dumps(content, ensure_ascii=False, indent=1) + "\n").encode()


def plain_data(value: object) -> object:
    """Dataclasses, mappings and enums as what JSON knows; lengths to a micrometre; pictures by their size."""
    if is_dataclass(value) and not isinstance(value, type):
        if isinstance(value, Place):
            return str(value)
        return {item.name: plain_data(getattr(value, item.name)) for item in fields(value)}
    if isinstance(value, Enum):
        return value.value
    if isinstance(value, Mapping):
        return {_name(key): plain_data(item) for key, item in value.items()}
    if isinstance(value, (tuple, list)):
        return [plain_data(item) for item in value]
    if isinstance(value, (datetime, date)):
        return value.isoformat()
    if isinstance(value, bytes):
        return f"{len(value)} bytes"
    if isinstance(value, float):
        return round(value, 6)
    return value


def _name(key: object) -> str:
    return str(key.value) if isinstance(key, Enum) else str(key)
