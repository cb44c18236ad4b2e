"""Remarks of a pattern.yaml that offer something to write, with a mark of its key in it.

Such an offer is a few remarks in words, '# Instead of l, a blend:', and below them lines that count as soon
as their '#' is taken away, '#  l: {moss: [K4, 07]}'. Where its mark has gone, it would only mislead.
"""

import re
from collections.abc import Collection, Iterator, Sequence

_KEY_LINE = re.compile(r"#\s+(?:(['\"])(?P<quoted>.)\1|(?P<plain>\S)):\s*\{")
_COLOUR = re.compile(r"#.*\bcolour:\s*(?:(['\"])(?P<quoted>.)\1|(?P<plain>\S))\s*[,}]")
_ROWS = re.compile(r"#\s+rows:\s*\|")
_IN_WORDS = re.compile(r"# (?! )")


def without_offers(lines: Sequence[str], gone: Collection[str]) -> list[str]:
    """The lines without offers that name any of the marks in `gone`."""
    left: list[str] = []
    for part in _parts(lines):
        offered = [line for line in part if line.startswith("#") and not _IN_WORDS.match(line)]
        if not set(_marks(offered)) & set(gone):
            left += part
    return left


def _parts(lines: Sequence[str]) -> Iterator[list[str]]:
    """Offers with the words above them; and every other line by itself."""
    part: list[str] = []
    for line in lines:
        words = bool(_IN_WORDS.match(line))
        goes_on = part and line.startswith("#") and (not words or _IN_WORDS.match(part[-1]))
        if not goes_on and part:
            yield part
            part = []
        part.append(line)
    yield part


def _marks(offered: Sequence[str]) -> Iterator[str]:
    in_rows = False
    for line in offered:
        for form in (_KEY_LINE, _COLOUR):
            if found := form.match(line):
                yield found["quoted"] or found["plain"]
        if in_rows:
            yield from line.lstrip("#").strip()
        in_rows = in_rows or bool(_ROWS.match(line))
