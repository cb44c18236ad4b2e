"""Columns and rows that an author's notes name by their number, beside those that the chart has."""

import re

from packetgen.diagnostics import Place, Problems, place_in
from packetgen.load.words import said

_MORE = r"(?:(?:\s*[-–,]\s*|,?\s+(?:and|or|to)\s+)\d{1,4})*"
# Behind a single one, 'and 150' may count stitches.
_NAMED = re.compile(
    rf"\b(?P<what>column|row)(?:s\s+\d{{1,4}}{_MORE}|\s+\d{{1,4}})\b", re.IGNORECASE
)


def complain_of_told_places(
    notes: str, path: str | Place, size: tuple[int, int], problems: Problems
) -> None:
    """Advice where notes, in the file `path` or in a value at one place, send a stitcher to a column or a row beyond the
    chart, of `size` columns and rows."""
    for named in _NAMED.finditer(notes):
        across = named["what"].casefold() == "column"
        most = size[0] if across else size[1]
        if max(map(int, re.findall(r"\d+", named[0]))) > most:
            what = "columns" if across else "rows"
            facts = {"said": said(named[0]), "most": most, "what": what}
            place = path if isinstance(path, Place) else place_in(notes, named.start(), path)
            problems.add(place, "stitch-beyond", **facts)
