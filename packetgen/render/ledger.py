"""Every reckoned figure of a pattern as JSON, so that another program can check it.

Each figure has its unit, the name of its formula and the inputs that this needs; the chart and what else
was read stand beside them, with the map from the symbol face to the author's characters.
"""

import json
from collections.abc import Iterator, Mapping

from packetgen.model import KeyLine, Pattern, Series
from packetgen.reckon.figures import Figures
from packetgen.render.character_map import character_map
from packetgen.render.ledger_besides import besides_entries
from packetgen.render.ledger_cloth import cloth_entries
from packetgen.render.ledger_entry import Entry, plain
from packetgen.render.ledger_formulas import FORMULAS
from packetgen.render.ledger_schema import FILE_NAME, FORMAT
from packetgen.render.ledger_thread import thread_entries


def ledger(series: Series, figures: Figures, symbols: Mapping[str, str]) -> bytes:
    """One JSON object, one line a figure. `symbols` gives the character of the symbol face for a mark."""
    content = {
        "$schema": f"../{FILE_NAME}",
        "ledger": FORMAT,
        "pattern": _pattern(series, figures.pattern),
        "assumptions": _assumptions(series, figures),
        "formulas": {name: formula.text for name, formula in FORMULAS.items()},
        "figures": [entry.data() for entry in entries(series, figures)],
        "character_map": character_map(symbols),
    }
    return _by_lines(content).encode()


def entries(series: Series, figures: Figures) -> Iterator[Entry]:
    """All figures: of cloth, of thread, and the others."""
    yield from cloth_entries(figures, series.finish)
    yield from thread_entries(figures)
    yield from besides_entries(figures, series.finish, series.pace)


def _assumptions(series: Series, figures: Figures) -> dict[str, object]:
    assumed, pace = figures.assumptions, series.pace
    ease = assumed.ease
    return {
        "needleful_mm": plain(assumed.needleful_mm),
        "tail_mm": plain(assumed.tail_mm),
        "travel_stitches": plain(assumed.travel_stitches),
        "ease": {"careful": ease.careful, "usual": ease.usual, "generous": ease.generous},
        "stitches_an_hour": plain({"slow": pace.slow, "usual": pace.usual, "quick": pace.quick}),
    }


def _pattern(series: Series, pattern: Pattern) -> object:
    """What was read of the author's, as far as figures follow from it."""
    read = {
        "id": pattern.id,
        "title": pattern.title,
        "designer": pattern.designer.name,
        "series": series.id,
        "revision": {
            "number": len(pattern.revisions),
            "date": pattern.revisions[-1].on.isoformat(),
        },
        "finishing_piece": series.finish.id,
        "chart": pattern.grid.rows,
        "key": [_key_line(pattern, line) for line in pattern.key],
        "fractions": [
            {
                "column": one.column,
                "row": one.row,
                "mark": one.mark,
                "stitch": one.stitch,
                "corner": one.corner,
            }
            for one in pattern.fractions
        ],
        "lines": [
            {"mark": one.mark, "points": one.points, "long": one.long} for one in pattern.lines
        ],
        "knots": [{"mark": one.mark, "at": one.at} for one in pattern.knots],
        "daisies": [
            {"mark": one.mark, "base": one.base, "tip": one.tip} for one in pattern.daisies
        ],
        "beads": [
            {"card": one.card.id, "number": one.colour.number, "at": one.at}
            for one in pattern.beads
        ],
    }
    return plain(read)


def _key_line(pattern: Pattern, line: KeyLine) -> dict[str, object]:
    return {
        "mark": line.mark,
        "stitch": line.stitch,
        "threads": {
            one.id: [
                {"card": card.id, "number": colour.number, "name": colour.name}
                for card, colour in zip(line.cards_in(one), line.threads[one.id])
            ]
            for one in pattern.thread_sets
        },
    }


def _by_lines(content: Mapping[str, object]) -> str:
    """JSON with each entry of a list or group on a line of its own, so that two ledgers compare well."""
    blocks = []
    for name, value in content.items():
        if isinstance(value, list):
            block = "[\n" + ",\n".join(f"  {_text(item)}" for item in value) + "\n ]"
        elif isinstance(value, Mapping):
            lines = (f"  {_text(key)}: {_text(item)}" for key, item in value.items())
            block = "{\n" + ",\n".join(lines) + "\n }"
        else:
            block = _text(value)
        blocks.append(f" {_text(name)}: {block}")
    return "{\n" + ",\n".join(blocks) + "\n}\n"


def _text(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False)
