"""Which character of the symbol face stands for which character of the author's chart."""

import csv
import io
from collections.abc import Mapping

from packetgen.chart.symbols import BLANK
from packetgen.model import BARE, Pattern

FILE_NAME = "chart-characters.csv"


def code_of(symbol: str) -> str:
    """'\\ue001' → 'U+E001'."""
    return f"U+{ord(symbol):04X}"


def character_map(symbols: Mapping[str, str]) -> dict[str, str]:
    """Code point → the author's character, bare cloth first."""
    return {code_of(BLANK): BARE} | {code_of(symbol): mark for mark, symbol in symbols.items()}


def character_csv(pattern: Pattern, symbols: Mapping[str, str]) -> bytes:
    """The map as a table for a program: code point, the author's character, thread numbers and names."""
    model_set = pattern.thread_sets[0].id
    threads = {line.mark: line.threads[model_set] for line in pattern.key}
    target = io.StringIO(newline="")
    table = csv.writer(target, lineterminator="\r\n")  # RFC 4180
    table.writerow(["code_point", "chart_character", "thread_number", "thread_name"])
    for code, mark in character_map(symbols).items():
        colours = threads.get(mark, ())
        table.writerow(
            [
                code,
                mark,
                "+".join(c.number for c in colours),
                " with ".join(c.name for c in colours),
            ]
        )
    return target.getvalue().encode()
