"""Colours of an old key that the new one has no longer, and where an author's texts name them still."""

import re
from collections.abc import Collection, Iterator, Mapping, Sequence

from packetgen.bring.brought import Entry
from packetgen.bring.key_text import KnownLine
from packetgen.diagnostics import Place
from packetgen.model import Colour


def gone_colours(
    old: Sequence[KnownLine], new: Sequence[Entry], elsewhere: Collection[str]
) -> tuple[Colour, ...]:
    """In the order of the old key, each once, without blends; lines whose marks are named `elsewhere` stay as they are."""
    left = {one.colour for one in new} | {one.colour for one in old if one.mark in elsewhere}
    gone = (one.colour for one in old if one.number and one.colour not in left)
    return tuple(dict.fromkeys(gone))


def named_in(texts: Mapping[str, str], colours: Sequence[Colour]) -> Iterator[tuple[Place, str]]:
    """Where the texts, by their paths, name one of the colours, alone or in the plural, and in which words."""
    for path, text in sorted(texts.items()):
        for number, line in enumerate(text.split("\n"), 1):
            for colour in colours:
                found = re.search(rf"\b{re.escape(colour.name)}(?:e?s)?\b", line, re.IGNORECASE)
                if found:
                    yield Place(path, number, found.start() + 1), found[0]
