"""Pieces of hardware that the steps count, beside the number that a stitcher is told to buy."""

import re

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import NUMBER_WORDS, meant_number
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.nouns import plural

_LEAST = 3  # letters of a word that names a piece
_NUMBER = rf"(?<![\w.,/×-])(?P<number>\d{{1,3}}|{'|'.join(NUMBER_WORDS)})"


def complain_of_counted_hardware(filled: Filled, steps: str, path: str, problems: Problems) -> None:
    """Advice where a step counts more pieces of a kind of hardware than are to buy in all: 'four screws' of two."""
    pieces: dict[str, int] = {}
    for one in filled.each("hardware"):
        line = one.value
        if line is None or not line["name"] or line["pieces"] is None:
            return
        kind = line["name"].casefold().split()[-1]
        pieces[kind] = pieces.get(kind, 0) + line["pieces"]
    for kind, number in pieces.items():
        if len(kind) < _LEAST:
            continue
        many = rf"(?:{re.escape(kind)}|{re.escape(plural(kind))})"
        counting = re.compile(
            rf"{_NUMBER}\s+(?:(?!(?:mm|cm|in|inch)\b)[a-z-]+\s+)?{many}\b", re.IGNORECASE
        )
        for found in counting.finditer(steps):
            told = meant_number(found["number"])
            if told is not None and told > number:
                facts = {"said": said(found[0]), "of": said(kind), "number": number}
                problems.add(place_in(steps, found.start(), path), "hardware-short", **facts)
                break
