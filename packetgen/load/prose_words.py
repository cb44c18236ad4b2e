"""What is looked for in an author's prose: sentences, and one of several names."""

import re
from collections.abc import Iterable

# A point between figures ends none.
SENTENCE = re.compile(r"(?:[^.!?]|(?<=\d)\.(?=\d))+")


def any_of(names: Iterable[str]) -> str:
    """A pattern for one of the names, the longest first: 'small pot' before 'pot'. Of no names it finds nothing."""
    return "|".join(map(re.escape, sorted(names, key=lambda name: (-len(name), name)))) or r"(?!)"


def sentences(text: str) -> list[tuple[int, str]]:
    """Where each begins, and its words."""
    return [(one.start(), one[0]) for one in SENTENCE.finditer(text)]
