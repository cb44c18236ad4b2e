"""A '#' in a text without quotes, behind which the file cannot be read: the rest of its line is lost, with the
bracket that would close there, or the text goes on below."""

import re
from collections.abc import Iterable
from itertools import islice, takewhile

from packetgen.load.explained import Explained, Spot
from packetgen.load.text_lines import NAMED, line_above, set_in

_LONGEST = 80  # characters that can be said in a line, and copied from it

_HASH = re.compile(r"(?<= )#")
_MOST = 50  # of them on a line are looked at
# A remark that is set off is meant as one.
_IN_WORDS = re.compile(r"(?P<before>.*?)(?:(?<= )#(?=[^\s#])|(?<=[^ ]) # *(?=[^\s#]))")
_LOST = re.compile(r"#(?:.*[}\]]|\S.*,)")  # with it a bracket, or the comma before the next value
_CLOSING = re.compile(r"[,}\]]")
_OPENING = re.compile(r".*(?:: |[{,\[]) *")  # all that stands before a text between brackets


def cut_in_brackets(start: Spot, here: Spot, lines: list[str]) -> Explained | None:
    """On one of these lines, or the one above, a '#' hides the bracket that closes: '{number: E2, name: brick #2}'."""
    for number in range(max(1, start[0] - 1), here[0] + 1):
        line = lines[number - 1]
        for found in islice(_HASH.finditer(line), _MOST):
            before, behind = line[: found.start()], line[found.start() :]
            open_here = sum(map(before.count, "{[")) > sum(map(before.count, "}]"))
            if _is_quoted(before) or not open_here or not _LOST.match(behind):
                continue
            begins = _OPENING.match(before)
            text = before[begins.end() if begins else 0 :] + _CLOSING.split(behind)[0].rstrip()
            return _cut(number, found.start(), text)
    return None


def cut_in_lines(number: int, lines: list[str]) -> Explained | None:
    """Line `number`, or the one above it, has a '#' in a text that goes on below."""
    for one in (number, number - 1, line_above(number, lines)):
        line = lines[one - 1] if one else ""
        cut = _IN_WORDS.match(line)
        below = next((text for text in lines[one:] if text.strip()), "")
        first = one
        while first and not NAMED.fullmatch(lines[first - 1]):
            first = line_above(first, lines)
        named = NAMED.fullmatch(lines[first - 1]) if first else None
        if (
            not (cut and named)
            or _is_quoted(cut["before"])
            or (named["value"] or "")[:1] in {*"'\"{[|>"}
        ):
            continue
        within = (
            set_in(below) > len(named["before"]) if first == one else set_in(below) == set_in(line)
        )
        if not within or below.lstrip().startswith(("- ", "#")) or NAMED.fullmatch(below):
            continue
        words = (named["value"] or "", *lines[first:one], *_set_in_by(set_in(below), lines[one:]))
        return _cut(one, line.index("#", len(cut["before"])), " ".join(map(str.strip, words)))
    return None


def _set_in_by(spaces: int, lines: list[str]) -> Iterable[str]:
    return takewhile(lambda line: set_in(line) >= spaces, lines)


def between_quotes(text: str) -> str:
    """The text as it stands in a YAML file, between quotes that it does not have itself; '' where it is too long to be
    said whole, or has a sign that nobody sees."""
    quote = "'" if '"' in text or "\\" in text else '"'
    return f"{quote}{text}{quote}" if len(text) <= _LONGEST and text.isprintable() else ""


def after_colon(text: str) -> str:
    """': "the text"', where it can be said whole: the end of a sentence that asks for quotes."""
    quoted = between_quotes(text)
    return f": {quoted}" if quoted else ""


def _cut(number: int, index: int, text: str) -> Explained:
    return Explained("text-unquoted", number, index + 1, {"example": after_colon(text)})


def _is_quoted(before: str) -> bool:
    """Whether what follows stands between double quotes that were opened on the line."""
    return before.count('"') % 2 == 1
