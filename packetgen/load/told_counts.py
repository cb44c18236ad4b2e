"""Stitches that an author's notes count, beside those that the chart has of that colour."""

import re
from collections import Counter
from collections.abc import Iterable, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import NUMBER_WORDS, counted_number
from packetgen.load.prose_words import any_of
from packetgen.load.words import said
from packetgen.model import KeyLine

_COUNT = rf"(?<![\w.,/-])(?P<count>\d{{1,3}}(?:,\d{{3}})+|\d{{1,6}}|{'|'.join(NUMBER_WORDS)})"


def complain_of_told_counts(
    notes: str, path: str, lines: Iterable[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on 'the 190 stitches of 431 dusk' where the chart has fewer: fewer may be meant, and more cannot."""
    of_mark = Counter("".join(rows))
    stitches: Counter[str] = Counter()
    for line in lines:
        for name in {
            colour.name.casefold() for needle in line.threads.values() for colour in needle
        }:
            stitches[name] += of_mark[line.mark]
    counted = re.compile(
        rf"{_COUNT}\s+stitches\s+(?:of|in)\s+(?:the\s+)?(?:\w*\d\w*\s+)?(?P<name>{any_of(stitches)})(?![\w-])",
        re.IGNORECASE,
    )
    for found in counted.finditer(notes):
        has = stitches[found["name"].casefold()]
        if (counted_number(found["count"].replace(",", "")) or 0) > has:
            facts = {"said": said(found[0]), "has": f"{has:,}"}
            problems.add(place_in(notes, found.start(), path), "stitches-told-more", **facts)
