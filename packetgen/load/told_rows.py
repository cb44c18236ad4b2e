"""Rows and columns in which an author's notes look for a colour, beside those in which the chart has it."""

import re
from collections.abc import Collection, Iterable, Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.colour_rows import Lying, Named, lines_of, lying, marks_of
from packetgen.load.prose_words import sentences
from packetgen.load.words import said
from packetgen.model import KeyLine

RUN = re.compile(
    r"\b(?P<what>row|column)(?:s\s+(?P<first>\d{1,3})\s*(?P<through>to|–|-|and)\s*(?P<last>\d{1,3})\b(?!\s*(?:,|and)\s*\d)"
    r"|\s+(?P<one>\d{1,3})\b)",
    re.IGNORECASE,
)
# Two rows of two colours: 'rows 27 and 28: a row of bark, and a row of willow below it'.
_BELOW = re.compile(
    r"\ba row of\b(?P<upper>.+)\ba row of\b(?P<lower>.+?)\b(?:below|under)\b", re.IGNORECASE
)
ELSE = re.compile(
    r"\b(?:backstitch\w*|knots?|beads?|lines?|outlines?|dais(?:y|ies)|not|until|between|except|above|below|beside)\b",
    re.IGNORECASE,
)
_MOST_OF = 0.5  # of the rows that are told, in which the colour lies at least: our own choice


def complain_of_told_rows(
    notes: str, path: str, key: Sequence[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on the first 'in 275 soot, rows 42 to 46' where most of these rows have no stitch in that colour, or it lies in
    as many others; of a sentence, or a piece of one, that names one colour and one run of rows or columns."""
    marks, lines = marks_of(key), lines_of(rows)
    for start, run, (first, last), colour in _told(notes, marks):
        what = run["what"].casefold()
        there = lying(marks[colour], lines[what])
        ends_only = (run["through"] or "").casefold() == "and"
        told = {first, last} if ends_only else set(range(first, last + 1))
        lacking = len(told - set(there.numbers))
        other = lacking > _MOST_OF * len(told) or _moved(told, there) or _cut_short(told, there)
        if 1 <= first <= last <= len(lines[what]) and there.numbers and other:
            shown = run[0] if (first, last) == ends(run) else f"{what} {first}"
            facts = {"said": said(shown), "colour": said(colour[1]), "what": f"{what}s"}
            facts |= {"none": none_in(len(told), lacking), "own": there.said}
            problems.add(place_in(notes, start + run.start(), path), "rows-told-other", **facts)
            return


def _moved(told: Collection[int], there: Lying) -> bool:
    """Whether the colour lies in one run of as many rows, which is another."""
    return there.on_end and len(told) == len(there.numbers) > 1 and min(told) != there.numbers[0]


def _cut_short(told: Collection[int], there: Lying) -> bool:
    """Whether the rows that are told are some of those on end in which alone the colour lies, in each in the same places."""
    in_one = max(told) - min(told) + 1 == len(told) > 1
    return in_one and set(told) < set(there.numbers) and there.is_band


def none_in(told: int, lacking: int) -> str:
    """What the chart has there, of so many rows that are told, of which so many are lacking."""
    if not lacking:
        return "the next is just so on the chart"
    many = "most of these have" if lacking > _MOST_OF * told else f"{lacking} of these have"
    if lacking == 1:
        many = "that one has" if told == 1 else "one of these has"
    return f"{many} none of it on the chart"


def _told(
    notes: str, colours: Collection[Named]
) -> Iterator[tuple[int, re.Match[str], tuple[int, int], Named]]:
    """Where a sentence of the notes begins in which a colour goes with each run, the run, its ends, and the colour."""
    for start, sentence in sentences(notes):
        runs = list(RUN.finditer(sentence))
        two = _BELOW.search(sentence) if len(runs) == 1 and runs[0]["last"] else None
        if two and runs[0].end() <= two.start():
            for row, words in zip(ends(runs[0]), two.group("upper", "lower"), strict=True):
                if len(named := _named(f"in {words.strip(' ,')}:", colours)) == 1:
                    yield start, runs[0], (row, row), named[0][1]
            continue
        if ELSE.search(sentence):
            continue
        for run, colour in _in_turn(runs, _named(sentence, colours)):
            yield start, run, ends(run), colour


def _in_turn(
    runs: Sequence[re.Match[str]], named: Collection[tuple[int, Named]]
) -> Iterator[tuple[re.Match[str], Named]]:
    """Each run with its colour, where one of each stands in turn, whichever comes first; else nothing."""
    ends = sorted([*(run.end() for run in runs), *(end for end, _ in named)])
    of_runs = {ends.index(run.end()) for run in runs}
    if len(runs) == len(named) and all({at, at + 1} - of_runs for at in range(0, len(ends), 2)):
        for run, (_, colour) in zip(runs, sorted(named), strict=True):
            yield run, colour


def ends(run: re.Match[str]) -> tuple[int, int]:
    """The first and the last of its rows or columns."""
    return int(run["first"] or run["one"]), int(run["last"] or run["one"])


def _named(sentence: str, colours: Iterable[Named]) -> list[tuple[int, Named]]:
    """Those that it names by number and name, by a name of several words that is in no longer one, or as what is worked in;
    and where each ends."""
    found: dict[Named, range] = {}
    for number, name in sorted(colours, key=lambda one: -len(one[1])):
        words = r"\s+".join(map(re.escape, name.split()))
        beside = rf"(?<![\w]){re.escape(number)}\s+{words}\b|\b{words}\s+\({re.escape(number)}\)"
        # 'In slate', 'with slate: …'; 'in the slate' may be a thing.
        worked_in = "" if " " in name else r"\b(?:in|with)\s+"
        at_end = (
            ""
            if " " in name
            else r"(?=\s*(?:[,;:(]|for\b|across\b|along\b|(?:in|and)\s+(?:rows?|columns?)\b|\Z))"
        )
        # 'Rows 5 and 6 of willow'.
        of_rows = (
            rf"|\b(?:rows?|columns?)\s+[\d–-]+(?:\s*(?:to|and)\s*\d+)?\s+(?:of|in)\s+{words}(?![\w-]){at_end}"
            if at_end
            else ""
        )
        alone = rf"{of_rows}|{worked_in}(?<![\w-]){words}(?![\w-]){at_end}"
        one = re.search(beside + alone, sentence, re.IGNORECASE)
        if one and not any(one.start() in other for other in found.values()):
            found[number, name] = range(*one.span())
    return [(span.stop, colour) for colour, span in found.items()]
