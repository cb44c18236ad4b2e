"""Blocks of rows and columns in which an author's notes look for a colour, beside those that the chart has of it."""

import re
from collections.abc import Collection, Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.colour_rows import Named, lines_of, lying, marks_of
from packetgen.load.prose_words import named, sentences
from packetgen.load.told_rows import ELSE, RUN, ends, none_in
from packetgen.load.words import said
from packetgen.model import KeyLine

_FROM = re.compile(r"\bfrom\s+\Z", re.IGNORECASE)
_JOINED = re.compile(r"(?:\s+\(\w+\))?\s+and\s+(?:the\s+)?", re.IGNORECASE)
_ACROSS = {"row": "column", "column": "row"}


def complain_of_told_blocks(
    notes: str, path: str, key: Sequence[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on the first 'its slate rim, rows 18 and 19, columns 20 to 32' where one of these has nothing of that colour in the
    others, or they are full of it and so is the next."""
    of_colours, lines = marks_of(key), lines_of(rows)
    for start, sentence in sentences(notes):
        runs = {run["what"].casefold(): run for run in RUN.finditer(sentence)}
        spans = {what: ends(run) for what, run in runs.items()}
        if len(runs) != 2 or len(RUN.findall(sentence)) != 2 or ELSE.search(sentence):
            continue
        # 'Columns 21 and 22 from row 3 down'.
        if any(_FROM.search(sentence, 0, run.start()) for run in runs.values()):
            continue
        if not all(1 <= first <= last <= len(lines[what]) for what, (first, last) in spans.items()):
            continue
        colours = _spoken_of(sentence, min(run.start() for run in runs.values()), of_colours)
        marks = {mark for colour in colours for mark in of_colours[colour]}
        for what, run in runs.items():
            first, last = spans[_ACROSS[what]]
            across = [line[first - 1 : last] for line in lines[what]]
            there = lying(marks, across)
            if there.numbers and (none := _otherwise(spans[what], there.of_it)):
                facts = {"said": said(run[0]), "colour": said(colours[0][1]), "what": f"{what}s"}
                facts |= {"none": none, "own": there.said}
                problems.add(place_in(notes, start + run.start(), path), "rows-told-other", **facts)
                return


def _otherwise(span: tuple[int, int], of_it: Sequence[Sequence[bool]]) -> str:
    """How the chart has it, where not so; '' where it may be meant."""
    first, last = span
    told = of_it[first - 1 : last]
    lacking = sum(not any(one) for one in told)
    beside = [*of_it[first - 2 : first - 1], *of_it[last : last + 1]]
    goes_on = all(map(all, told)) and any(map(all, beside))
    return none_in(len(told), lacking) if lacking or goes_on else ""


def _spoken_of(sentence: str, end: int, colours: Collection[Named]) -> list[Named]:
    """The last colour that is named before the first run, or several that an 'and' joins."""
    by_name = {name.casefold(): (number, name) for number, name in colours if name}
    return list(_joined(sentence, list(named(by_name).finditer(sentence, 0, end)), by_name))


def _joined(
    sentence: str, found: Sequence[re.Match[str]], by_name: dict[str, Named]
) -> Iterator[Named]:
    behind = None
    for one in reversed(found):
        if behind and not _JOINED.fullmatch(sentence, one.end(), behind.start()):
            return
        yield by_name[one[0].casefold()]
        behind = one
