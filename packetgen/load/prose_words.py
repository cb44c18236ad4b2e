"""What is looked for in an author's prose: sentences, and one of several names."""

import re
from collections.abc import Iterable

SENTENCE = re.compile(r"[^.!?]+")


def any_of(names: Iterable[str]) -> str:
    """A pattern for one of the names, the longest first: 'small pot' before 'pot'. Of no names it finds nothing."""
    return "|".join(map(re.escape, sorted(names, key=lambda name: (-len(name), name)))) or r"(?!)"


def step_sentences(steps: str) -> list[tuple[int, str]]:
    """Where each sentence begins, and its words; a point between figures ends none."""
    found = re.finditer(r"(?:[^.!?]|(?<=\d)\.(?=\d))+", steps)
    return [(one.start(), one[0]) for one in found]
