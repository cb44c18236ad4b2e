"""Rows and columns in which an author's notes look for a colour, beside those in which the chart has it."""

import re
from collections.abc import Collection, Iterable, Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import sentences
from packetgen.load.words import said
from packetgen.model import KeyLine
from packetgen.nouns import listed

_RUN = re.compile(
    r"\b(?P<what>row|column)(?:s\s+(?P<first>\d{1,3})\s*(?P<through>to|–|-|and)\s*(?P<last>\d{1,3})\b(?!\s*(?:,|and)\s*\d)"
    r"|\s+(?P<one>\d{1,3})\b)",
    re.IGNORECASE,
)
# Two rows of two colours: 'rows 27 and 28: a row of bark, and a row of willow below it'.
_BELOW = re.compile(
    r"\ba row of\b(?P<upper>.+)\ba row of\b(?P<lower>.+?)\b(?:below|under)\b", re.IGNORECASE
)
# 'Two rows of clover', 'in furrow, three rows', 'furrow below it, three rows'.
_FEW = rf"(?<!first )(?<!last )(?<!next )(?<!other ){COUNTED}\s+(?:(?:full|whole)\s+)?(?P<what>row|column)s\b"
_BEHIND = r"(?:\s+(?:for|below|above|beside|under|along|across)\s+[a-z]+(?:\s+[a-z]+)?)?\s*[,:]\s+"
_ELSE = re.compile(
    r"\b(?:backstitch\w*|knots?|beads?|lines?|outlines?|dais(?:y|ies)|not|until|between|except|above|below|beside)\b",
    re.IGNORECASE,
)
_MOST_OF = 0.5  # of the rows that are told, in which the colour lies at least: our own choice
Named = tuple[int, tuple[str, str]]  # where a colour's name ends, and its number and name
_SHOWN = 4  # runs of rows that one advice names


def complain_of_told_rows(
    notes: str, path: str, key: Sequence[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on the first 'in 275 soot, rows 42 to 46' where most of these rows have no stitch in that colour, or it lies in
    as many others; of a sentence, or a piece of one, that names one colour and one run of rows or columns."""
    marks = _marks_of(key)
    lines = {"row": list(rows), "column": ["".join(column) for column in zip(*rows)]}
    for start, run, (first, last), colour in _told(notes, marks):
        what = run["what"].casefold()
        there = [number for number, one in enumerate(lines[what], 1) if marks[colour] & set(one)]
        ends_only = (run["through"] or "").casefold() == "and"
        told = {first, last} if ends_only else set(range(first, last + 1))
        lacking = len(told - set(there))
        most = lacking > _MOST_OF * len(told)
        within = 1 <= first <= last <= len(lines[what])
        of_it = [[mark in marks[colour] for mark in one] for one in lines[what]]
        if within and there and (most or _moved(told, there) or _cut_short(told, there, of_it)):
            shown = run[0] if (first, last) == _ends(run) else f"{what} {first}"
            facts = {"said": said(shown), "colour": said(colour[1]), "what": f"{what}s"}
            facts["none"] = f"{_so_many(len(told), lacking)} none of it on the chart"
            if not lacking:
                facts["none"] = "the next is just so on the chart"
            facts["own"] = _runs(there)
            problems.add(place_in(notes, start + run.start(), path), "rows-told-other", **facts)
            return


def _moved(told: Collection[int], there: Sequence[int]) -> bool:
    """Whether the colour lies in one run of as many rows, which is another."""
    in_one = there[-1] - there[0] + 1 == len(there)
    return in_one and len(told) == len(there) > 1 and min(told) != there[0]


def _cut_short(
    told: Collection[int], there: Sequence[int], of_it: Sequence[Sequence[bool]]
) -> bool:
    """Whether the rows that are told are some of those on end in which alone the colour lies, in each in the same places."""
    in_one = max(told) - min(told) + 1 == len(told) > 1
    return in_one and set(told) < set(there) and _is_band(there, of_it)


def _so_many(told: int, lacking: int) -> str:
    if lacking == 1:
        return "that one has" if told == 1 else "one of these has"
    return "most of these have" if lacking > _MOST_OF * told else f"{lacking} of these have"


def _told(
    notes: str, colours: Collection[tuple[str, str]]
) -> Iterator[tuple[int, re.Match[str], tuple[int, int], tuple[str, str]]]:
    """Where a sentence of the notes begins in which a colour goes with each run, the run, its ends, and the colour."""
    for start, sentence in sentences(notes):
        runs = list(_RUN.finditer(sentence))
        two = _BELOW.search(sentence) if len(runs) == 1 and runs[0]["last"] else None
        if two and runs[0].end() <= two.start():
            for row, words in zip(_ends(runs[0]), two.group("upper", "lower"), strict=True):
                if len(named := _named(f"in {words.strip(' ,')}:", colours)) == 1:
                    yield start, runs[0], (row, row), named[0][1]
            continue
        if _ELSE.search(sentence):
            continue
        for run, colour in _in_turn(runs, _named(sentence, colours)):
            yield start, run, _ends(run), colour


def _in_turn(
    runs: Sequence[re.Match[str]], named: Collection[Named]
) -> Iterator[tuple[re.Match[str], tuple[str, str]]]:
    """Each run with its colour, where one of each stands in turn, whichever comes first; else nothing."""
    ends = sorted([*(run.end() for run in runs), *(end for end, _ in named)])
    of_runs = {ends.index(run.end()) for run in runs}
    if len(runs) == len(named) and all({at, at + 1} - of_runs for at in range(0, len(ends), 2)):
        for run, (_, colour) in zip(runs, sorted(named), strict=True):
            yield run, colour


def _marks_of(key: Sequence[KeyLine]) -> dict[tuple[str, str], set[str]]:
    """The marks of each colour, by its number and name."""
    marks: dict[tuple[str, str], set[str]] = {}
    for line in key:
        for one in (one for colours in line.threads.values() for one in colours):
            marks.setdefault((one.number, one.name), set()).add(line.mark)
    return marks


def complain_of_counted_rows(
    notes: str, path: str, key: Sequence[KeyLine], rows: Sequence[str], problems: Problems
) -> None:
    """Advice on the first 'in furrow, three rows' of a colour that lies in one band, the same in each of its rows, of
    another number."""
    marks = _marks_of(key)
    lines = {"row": list(rows), "column": ["".join(column) for column in zip(*rows)]}
    for colour in marks:
        name = r"\s+".join(map(re.escape, colour[1].split()))
        name = rf"(?:{re.escape(colour[0])}\s+)?(?<![\w-]){name}(?![\w-])"
        for way in (
            rf"{_FEW}\s+(?:of|in)\s+{name}",
            rf"{name}{_BEHIND}{_FEW}(?!\s+(?:of|in)\s+(?!it\b))",
        ):
            for run in re.finditer(way, notes, re.IGNORECASE):
                what = run["what"].casefold()
                of_it = [[mark in marks[colour] for mark in one] for one in lines[what]]
                there = [number for number, one in enumerate(of_it, 1) if any(one)]
                number = counted_number(run["number"])
                if number and number != len(there) > 1 and _is_band(there, of_it):
                    facts = {"said": said(f"{run['number']} {what}s"), "colour": said(colour[1])}
                    facts |= {"none": f"the chart has {len(there)}", "what": f"{what}s"}
                    place = place_in(notes, run.start("number"), path)
                    problems.add(place, "rows-told-other", **facts, own=_runs(there))
                    return


def _is_band(there: Sequence[int], of_it: Sequence[Sequence[bool]]) -> bool:
    """Whether the colour lies in rows on end alone, in each in the same places."""
    in_one = there[-1] - there[0] + 1 == len(there)
    return in_one and all(of_it[number - 1] == of_it[there[0] - 1] for number in there)


def _ends(run: re.Match[str]) -> tuple[int, int]:
    return int(run["first"] or run["one"]), int(run["last"] or run["one"])


def _named(sentence: str, colours: Iterable[tuple[str, str]]) -> list[tuple[int, tuple[str, str]]]:
    """Those that it names by number and name, by a name of several words that is in no longer one, or as what is worked in;
    and where each ends."""
    found: dict[tuple[str, str], range] = {}
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


def _runs(numbers: Sequence[int]) -> str:
    """'18 to 20, 42 to 46'; of many runs the first and the last row, with what lies between."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    if len(runs) > _SHOWN:
        return f"{numbers[0]} to {numbers[-1]}, with gaps"
    return listed(tuple(f"{run[0]} to {run[-1]}" if len(run) > 1 else f"{run[0]}" for run in runs))
