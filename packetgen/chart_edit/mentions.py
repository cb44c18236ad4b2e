"""Lines of an author's texts that speak of sides, columns or rows: a change cannot know what they mean."""

import re
from collections.abc import Iterator

from packetgen.chart_edit.change import Change
from packetgen.diagnostics import Place

# What is left out or left bare lies on no side.
_ACROSS = r"columns?|left(?! (?:as|bare|open|out|over)\b)|right"
_DOWN = r"rows?|top|bottom|upper|lower"
_FIELD = r"(?!: [|>])"  # nor is the name of a field with a text below it such a word


def _said(words: str) -> re.Pattern[str]:
    return re.compile(rf"\b(?:corners?|{words})\b{_FIELD}", re.IGNORECASE)


# A column or a row by its place: 'row 3', 'the last two columns'. Three rows of something stay three.
_ORDER = r"\d+(?:st|nd|rd|th)|first|second|third|fourth|fifth|last|next"
_MANY = r"\d+|two|three|four|five|six|ten"
_COUNTED = re.compile(
    rf"\b(?:(?:columns?|rows?) \d+(?:(?: to | and |–|-)\d+)?|(?:{_ORDER}) (?:(?:{_ORDER}|{_MANY}) )*(?:columns?|rows?))\b{_FIELD}",
    re.IGNORECASE,
)
_TURNED = _said(f"{_ACROSS}|{_DOWN}")
_OF_ACROSS, _OF_DOWN = _said(_ACROSS), _said(_DOWN)
# What of a line is prose: all of it in Markdown; elsewhere a remark, and the fields that describe.
_PROSE = re.compile(r"#.*|^\s*(?:about|photo_alt):.*")


def mentions(path: str, text: str, change: Change, title: str) -> Iterator[tuple[Place, str]]:
    """The first such word of each line and where it stands, with the others behind it; the pattern's `title` says nothing of
    the chart. Sides count only where the chart is turned, and those that change."""
    words = _COUNTED
    if change.swapped or (change.flipped_across and change.flipped_down):
        words = _TURNED
    elif change.flipped_across or change.flipped_down:
        words = _OF_ACROSS if change.flipped_across else _OF_DOWN
    for number, line in enumerate(text.replace(title, " " * len(title)).split("\n"), 1):
        prose = None if path.endswith(".md") else _PROSE.search(line)
        if path.endswith(".md") or prose:
            found = list(words.finditer(line, prose.start() if prose else 0))
            if found:
                all_said = ", ".join(dict.fromkeys(one[0] for one in found))
                yield Place(path, number, found[0].start() + 1), all_said
