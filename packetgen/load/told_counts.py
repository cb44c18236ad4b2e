"""Stitches that an author's notes count, beside those that the chart has of that colour."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import NUMBER_WORDS, counted_number
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.words import said
from packetgen.model import KeyLine

_COUNT = rf"(?<![\w.,/-])(?P<count>\d{{1,3}}(?:,\d{{3}})+|\d{{1,6}}|{'|'.join(NUMBER_WORDS)})"
_STITCHES = r"\s+(?:stitches|crosses)\b"
# 'Moss (04) over all of it, 133 stitches': of the colour, unless they measure something.
_OF_IT = rf"{_STITCHES}(?!\s+(?:wide|high|long|deep|tall|broad|across|apart|each|of|in|from|to|above|below|between|at)\b)"
_ROW = re.compile(r"\brow\s+(?P<row>\d{1,3})\s+(?:is|has)\b", re.IGNORECASE)
# Fewer stitches than there are may be meant, unless they are nearly as many: our own choice.
_MANY, _NEARLY = 20, 0.02


def complain_of_told_counts(
    notes: str, path: str, lines: Iterable[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on 'the 190 stitches of 431 dusk', 'dusk, 190 stitches' and 'row 7 is 40 stitches of dusk' where the chart has
    fewer, or a few more: many fewer may be meant; and on 'the row of dusk, 40 stitches long' where it has none so long."""
    marks: dict[str, set[str]] = {}
    for line in lines:
        for colours in line.threads.values():
            for colour in colours:
                marks.setdefault(colour.name.casefold(), set()).add(line.mark)
    for start, sentence in sentences(notes):
        in_row = _ROW.search(sentence)
        if in_row and not 0 < int(in_row["row"]) <= len(rows):
            continue
        of_rows = [rows[int(in_row["row"]) - 1]] if in_row else rows
        of_mark = Counter("".join(of_rows))
        for found in _told(sentence, marks):
            has = sum(of_mark[mark] for mark in marks[found["name"].casefold()])
            # What lies in lines alone may be counted there.
            if (has or in_row) and _is_other(found["count"].replace(",", ""), has):
                facts = {"said": said(found[0]), "has": f"{has:,}"}
                facts["where"] = f" in row {in_row['row']}" if in_row else ""
                place = place_in(notes, start + found.start(), path)
                problems.add(place, "stitches-told-other", **facts)
        for found in _rows_told(sentence, marks):
            runs = _runs(marks[found["name"].casefold()], rows)
            if runs and counted_number(found["count"].replace(",", "")) not in runs:
                facts = {"said": said(found["long"]), "has": f"{max(runs):,}"}
                facts["where"] = " in its longest row"
                place = place_in(notes, start + found.start("long"), path)
                problems.add(place, "stitches-told-other", **facts)


def _told(sentence: str, names: Iterable[str]) -> Iterator[re.Match[str]]:
    """Each count with the colour that it is of."""
    name = rf"(?<![\w-])(?P<name>{any_of(names)})(?![\w-])"
    before = rf"{_COUNT}(?:{_STITCHES})?\s+(?:of|in)\s+(?:the\s+)?(?:\w*\d\w*\s+)?{name}"
    for found in re.finditer(before, sentence, re.IGNORECASE):
        # '20 stitches of clay and 4 of old brick'.
        if re.search(_STITCHES, sentence[: found.end()], re.IGNORECASE):
            yield found
    behind = rf"{name}(?:\s+\(\w+\))?(?:\s+[a-z]+){{0,5}}[,:]?\s+{_COUNT}{_OF_IT}"
    if len(re.findall(name, sentence, re.IGNORECASE)) == 1:
        yield from re.finditer(behind, sentence, re.IGNORECASE)


def _rows_told(sentence: str, names: Iterable[str]) -> Iterator[re.Match[str]]:
    """How long a row is of the one colour that the sentence names: 'the row of soot, which is 42 stitches long'."""
    name = rf"(?<![\w-])(?P<name>{any_of(names)})(?![\w-])"
    long = rf"\brows?\s+of\s+(?:the\s+)?(?:\w*\d\w*\s+)?{name}.*?(?P<long>{_COUNT}{_STITCHES}\s+(?:long|wide))\b"
    if len(re.findall(name, sentence, re.IGNORECASE)) == 1:
        yield from re.finditer(long, sentence, re.IGNORECASE)


def _runs(marks: Collection[str], rows: Sequence[str]) -> set[int]:
    """How many stitches stand side by side in these marks, wherever some do."""
    signs = re.compile(f"[{re.escape(''.join(sorted(marks)))}]+")
    return {len(run) for row in rows for run in signs.findall(row)}


def _is_other(told: str, has: int) -> bool:
    """Whether so many cannot be meant of the colour, or all of it are meant, and they are others."""
    number = counted_number(told) or 0
    slip = len(told) == len(str(has)) > 2 and sum(a != b for a, b in zip(told, str(has))) == 1
    nearly = _MANY <= number and has - number <= max(1, _NEARLY * has)
    return number > has or (number < has and (slip or nearly))
