"""Every reckoned figure of a pattern as JSON, for people who check; with the chart's character map."""

import json
from collections.abc import Mapping
from dataclasses import fields, is_dataclass
from datetime import date, datetime
from enum import Enum

from packetgen.diagnostics import Place
from packetgen.reckon.buying import BuyRow, buy_tables
from packetgen.reckon.figures import Figures
from packetgen.reckon.thread import Need
from packetgen.render.character_map import character_map


def ledger(figures: Figures, symbols: Mapping[str, str]) -> bytes:
    """One JSON object: the pattern as it was read, its figures, and which character of the symbol face
    stands for which character of the author's chart (so that the chart can be read back from the PDF)."""
    content = {
        "character_map": character_map(symbols),
        "figures": plain_data(figures),
        "buy": plain_data(buy_tables(figures)),
    }
    return (json.dumps(content, ensure_ascii=False, indent=1) + "\n").encode()


def plain_data(value: object) -> object:
    """Dataclasses, mappings and enums as what JSON knows; lengths to a micrometre; pictures by their size."""
    if is_dataclass(value) and not isinstance(value, type):
        if isinstance(value, Place):
            return str(value)
        facts = {item.name: plain_data(getattr(value, item.name)) for item in fields(value)}
        # A card stands in full with the pattern's thread sets and key; these name it.
        return facts | {"card": value.card.id} if isinstance(value, (Need, BuyRow)) else facts
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
