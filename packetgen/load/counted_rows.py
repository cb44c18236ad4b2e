"""How many rows and columns of a colour an author's notes count, beside those that the chart has."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.colour_rows import lines_of, lying, marks_of
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.words import said
from packetgen.model import KeyLine

# 'Two rows of clover', 'in furrow, three rows', 'furrow below it, three rows'.
_FEW = rf"(?<!first )(?<!last )(?<!next )(?<!other ){COUNTED}\s+(?:(?:full|whole)\s+)?(?P<what>row|column)s\b"
_BEHIND = r"(?:\s+(?:for|below|above|beside|under|along|across)\s+[a-z]+(?:\s+[a-z]+)?)?\s*[,:]\s+"


def complain_of_counted_rows(
    notes: str, path: str, key: Sequence[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on the first 'in furrow, three rows' of a colour that lies in one band, the same in each of its rows, or in
    few rows on end in one run each, of another number."""
    lines = lines_of(rows)
    for colour, marks in marks_of(key).items():
        number, name = re.escape(colour[0]), r"\s+".join(map(re.escape, colour[1].split()))
        named = rf"(?:{number}\s+)?(?<![\w-]){name}(?![\w-])"
        before = rf"{_FEW}\s+(?:of|in)\s+{named}"
        behind = rf"{named}{_BEHIND}{_FEW}(?!\s+(?:of|in)\s+(?!it\b))"
        for way in (before, behind):
            for found in re.finditer(way, notes, re.IGNORECASE):
                what = found["what"].casefold()
                there = lying(marks, lines[what])
                told, own = counted_number(found["number"]), len(there.numbers)
                if told and told != own > 1 and (there.is_band or there.is_heap):
                    facts = {"said": said(f"{found['number']} {what}s"), "colour": said(colour[1])}
                    facts |= {"none": f"the chart has {own}", "what": f"{what}s", "own": there.said}
                    place = place_in(notes, found.start("number"), path)
                    problems.add(place, "rows-told-other", **facts)
                    return
