"""What is looked for in an author's prose: sentences, and one of several names."""

import re
from collections.abc import Iterable

# A point between figures ends none; a line left bare ends one, as behind a heading.
SENTENCE = re.compile(r"(?:[^.!?\n]|(?<=\d)\.(?=\d)|\n(?!\s*\n))+")

# Words that tell where something is put.
WHERE = r"(?:on|onto|to|into|in|at|along|under|below|above|behind|beside|over|across|against)"

_NUMBERED = re.compile(r"\s*(?:\d+\.|[-*])\s+")


def words_of_entry(line: str) -> list[str]:
    """Of a line, without the number or sign of a list before them."""
    numbered = _NUMBERED.match(line)
    return line[numbered.end() if numbered else 0 :].split()


def any_of(names: Iterable[str]) -> str:
    """A pattern for one of the names, the longest first: 'small pot' before 'pot'. Of no names it finds nothing."""
    return "|".join(map(re.escape, sorted(names, key=lambda name: (-len(name), name)))) or r"(?!)"


def named(names: Iterable[str]) -> re.Pattern[str]:
    """Finds one of the names as words of their own, in capitals or not."""
    return re.compile(rf"(?<![\w-])(?:{any_of(names)})(?![\w-])", re.IGNORECASE)


def sentences(text: str) -> list[tuple[int, str]]:
    """Where each begins, and its words."""
    return [(one.start(), one[0]) for one in SENTENCE.finditer(text)]
