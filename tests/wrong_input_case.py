"""One kind of wrong input, and what the author reads."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from tests.content_builder import FINISH, TINY, Change

KEY_LINE = '  r: {moss: E2, spool: "10"}\n'
BLEND = '  b: {moss: [E2, "07"], spool: ["10", "14"]}\n'
PART = TINY[FINISH][TINY[FINISH].index("  - name: back") : TINY[FINISH].index("paints:")]


def as_usual(line: str, root: Path) -> str:
    """The line with commands as they are offered where the content folder is called as usual."""
    return line.replace(f" --content {root}", "").replace(root.as_posix(), "content")


@dataclass(frozen=True)
class Case:
    """`slip` is what the author did; `lines` is the whole output."""

    slip: str
    changes: Mapping[str, Change]
    lines: tuple[str, ...]

    def __init__(self, slip: str, changes: Mapping[str, Change], *lines: str) -> None:
        object.__setattr__(self, "slip", slip)
        object.__setattr__(self, "changes", changes)
        object.__setattr__(self, "lines", lines)
