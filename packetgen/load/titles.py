"""Titles as they stand in files that cannot be read as a whole."""

import re
from pathlib import Path

from packetgen.load.text_lines import plain

_TITLE = re.compile(r"title: +(.*\S)")


def titles_in(root: Path) -> dict[str, str]:
    """The titles of series and patterns under `root`, by folder, as far as a line says them."""
    found = {}
    for path in sorted((*root.glob("series/*/series.yaml"), *root.glob("series/*/*/pattern.yaml"))):
        try:
            lines = path.read_text("utf-8").splitlines()
        except (OSError, UnicodeDecodeError):
            continue
        said = next(filter(None, (_TITLE.fullmatch(plain(line)) for line in lines)), None)
        if said:
            found[path.parent.relative_to(root).as_posix()] = said[1].strip("\"'")
    return found
