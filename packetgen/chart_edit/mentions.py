"""Lines of an author's texts that speak of sides, columns or rows: a change cannot know what they mean."""

import re
from collections.abc import Iterator

from packetgen.chart_edit.change import Change
from packetgen.diagnostics import Place

_PLACES = r"columns?|rows?|corners?"
# What is left out or left bare lies on no side.
_SIDES = r"left(?! (?:as|bare|open|out|over)\b)|right|top|bottom|upper|lower"
_FIELD = r"(?!: [|>])"  # nor is the name of a field with a text below it such a word
_COUNTED = re.compile(rf"\b(?:{_PLACES})\b{_FIELD}", re.IGNORECASE)
_ANY = re.compile(rf"\b(?:{_PLACES}|{_SIDES})\b{_FIELD}", re.IGNORECASE)
# What of a line is prose: all of it in Markdown; elsewhere a remark, and the fields that describe.
_PROSE = re.compile(r"#.*|^\s*(?:about|photo_alt):.*")


def mentions(path: str, text: str, change: Change, title: str) -> Iterator[tuple[Place, str]]:
    """Each such word and where it stands, one a line; the pattern's `title` says nothing of the chart. Sides count
    only where the chart is turned."""
    turned = change.swapped or change.flipped_across or change.flipped_down
    words = _ANY if turned else _COUNTED
    for number, line in enumerate(text.replace(title, " " * len(title)).split("\n"), 1):
        prose = None if path.endswith(".md") else _PROSE.search(line)
        if path.endswith(".md") or prose:
            match = words.search(line, prose.start() if prose else 0)
            if match:
                yield Place(path, number, match.start() + 1), match[0]
