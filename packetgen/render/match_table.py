"""The colours of one thread card beside their nearest on another: for a terminal, as CSV, as JSON."""

import csv
import io
import json
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from textwrap import wrap

from packetgen.model import Colour, ThreadCard
from packetgen.reckon.matching import (
    Match,
    TooFewColours,
    collisions,
    distinct_matches,
    nearest_matches,
)
from packetgen.render.kit_data import safe

UNCERTAINTY = (
    "A screen's colour is not a dyed thread: take this list as a first guess, and compare the strands "
    "by eye in daylight before you decide."
)
_WIDE = 80
# Everything in a line of the table but numbers and names: four gaps, the words, the difference.
_FIXED = 1 + 2 + 1 + 2 + 15 + 1 + 5


@dataclass(frozen=True)
class Matching:
    """Some colours of `source` matched with those of `target`."""

    source: ThreadCard
    target: ThreadCard
    nearest: tuple[Match, ...]
    apart: tuple[Match, ...] | None  # each with a target of its own; None where there are too few
    distinct: bool  # whether `apart` is what was asked for

    @property
    def chosen(self) -> tuple[Match, ...]:
        return self.apart if self.distinct and self.apart is not None else self.nearest


def matching(
    source: ThreadCard, target: ThreadCard, colours: Sequence[Colour], distinct: bool
) -> Matching:
    """`colours` of `source` matched both ways. Raises TooFewColours where `distinct` cannot be."""
    targets = tuple(target.colours.values())
    try:
        apart = distinct_matches(colours, targets)
    except TooFewColours:
        if distinct:
            raise
        apart = None
    return Matching(source, target, nearest_matches(colours, targets), apart, distinct)


# --- for a terminal -------------------------------------------------------------------------------


def as_table(found: Matching) -> str:
    """80 columns wide at most, unless the numbers alone are wider."""
    return "\n".join((*_rows(found), "", *_remarks(found), *wrap(UNCERTAINTY, _WIDE)))


def _rows(found: Matching) -> Iterator[str]:
    cards = (found.source, found.target)
    ours = max(len(one.source.number) for one in found.chosen)
    theirs = max(len(one.target.number) for one in found.chosen)
    longest = max(
        *(len(colour.name) for one in found.chosen for colour in (one.source, one.target)),
        *(len(card.name) - 1 - wide for card, wide in zip(cards, (ours, theirs))),
    )
    name = max(8, min(longest, (_WIDE - _FIXED - ours - theirs) // 2))
    left, right = (_cut(card.name, wide + 1 + name) for card, wide in zip(cards, (ours, theirs)))
    yield f"{left:<{ours + 1 + name}}  {right:<{theirs + 1 + name}}  {'difference':>21}"
    for one in found.chosen:
        yield (
            f"{one.source.number:<{ours}} {_cut(one.source.name, name):<{name}}  "
            f"{one.target.number:<{theirs}} {_cut(one.target.name, name):<{name}}  "
            f"{one.words:<15} {one.difference:5.1f}"
        )


def _cut(text: str, longest: int) -> str:
    return text if len(text) <= longest else text[: longest - 1] + "…"


def _remarks(found: Matching) -> Iterator[str]:
    """What falls together, and what keeping the colours apart gives and costs."""
    together = collisions(found.nearest)
    if not together:
        yield "No two of them fall on one colour."
        return
    yield "What would fall together:" if found.distinct else "What falls together:"
    apart = {one.source: one for one in found.apart or ()}
    instead = "now" if found.distinct else "with --distinct"
    for group in together:
        sources = ", ".join(f"{one.source.number} {one.source.name}" for one in group)
        yield from _indented(f"{group[0].target.number} {group[0].target.name}: {sources}", 2)
        if apart:
            kept = ", ".join(_said(apart[one.source]) for one in group)
            yield from _indented(f"{instead}: {kept}", 4)
    if found.apart is None:
        yield from wrap(
            f"{len(found.nearest)} colours cannot each have their own among the "
            f"{len(found.target.colours)} of {found.target.name}.",
            _WIDE,
        )
        return
    grouped = {one.source for group in together for one in group}
    moved = [own for one, own in zip(found.nearest, found.apart) if one != own]
    others = ", ".join(_said(one) for one in moved if one.source not in grouped)
    if others:
        yield from _indented(f"making room, {instead}: {others}", 2)
    yield from wrap(
        f"All differences together: {_sum(found.nearest)} with the nearest for each, "
        f"{_sum(found.apart)} with no colour twice.",
        _WIDE,
    )


def _said(one: Match) -> str:
    return f"{one.source.number} → {one.target.number} ({one.words}, {one.difference:.1f})"


def _sum(matches: tuple[Match, ...]) -> str:
    return f"{sum(one.difference for one in matches):.1f}"


def _indented(text: str, spaces: int) -> list[str]:
    return wrap(text, _WIDE, initial_indent=" " * spaces, subsequent_indent=" " * (spaces + 2))


# --- for programs ---------------------------------------------------------------------------------


def as_csv(found: Matching) -> str:
    """RFC 4180, one line a colour; `shares_with` has the numbers that fall on the same colour."""
    target = io.StringIO(newline="")
    table = csv.writer(target, lineterminator="\r\n")
    entries = _entries(found)
    table.writerow(entries[0])
    for entry in entries:
        cells = (" ".join(cell) if isinstance(cell, list) else cell for cell in entry.values())
        table.writerow(["" if cell is None else safe(str(cell)) for cell in cells])
    return target.getvalue()


def as_json(found: Matching) -> str:
    whole = {
        "from": {"card": found.source.id, "name": found.source.name},
        "to": {"card": found.target.id, "name": found.target.name},
        "distinct": found.distinct,
        "distinct_is_possible": found.apart is not None,
        "difference_formula": "CIEDE2000",
        "uncertainty": UNCERTAINTY,
        "matches": _entries(found),
    }
    return json.dumps(whole, ensure_ascii=False, indent=2)


def _entries(found: Matching) -> list[dict[str, object]]:
    """One a colour, with its figures in full, and what it would be with no colour twice."""
    shared = {
        one: [other.source.number for other in group if other is not one]
        for group in collisions(found.chosen)
        for one in group
    }
    apart = found.apart or (None,) * len(found.chosen)
    return [
        {
            "number": one.source.number,
            "name": one.source.name,
            "hex": one.source.hex,
            "to_number": one.target.number,
            "to_name": one.target.name,
            "to_hex": one.target.hex,
            "closeness": one.words,
            "ciede2000": one.difference,
            "shares_with": shared.get(one, []),
            "distinct_number": own.target.number if own else None,
            "distinct_ciede2000": own.difference if own else None,
        }
        for one, own in zip(found.chosen, apart)
    ]
