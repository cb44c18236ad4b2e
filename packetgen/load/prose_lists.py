"""Lines of an author's Markdown that look like the entries of a list and are printed as a run of words, since
their sign is another, no space follows it, or no empty line stands above. Only what is surely meant as a list is
told."""

import re
from collections.abc import Iterator
from itertools import pairwise

from packetgen.load.words import said

# An entry, as far as Markdown knows it; `markdown_text` takes a bracket behind a number for its full stop.
_ENTRY = re.compile(r" {0,3}(?:[-*+]|\d{1,3}[.)])[ \t]+\S")
_BULLET = re.compile(r" {0,3}(?P<sign>[•·◦▪‣])[ \t]*(?=[^\W_])")
# These may begin a line of any text, so one alone tells nothing.
_DASH = re.compile(r" {0,3}(?P<sign>[–—])[ \t]+(?=[^\W_])")
_NO_SPACE = re.compile(r" {0,3}(?P<sign>-|\d{1,2}[.)])(?=[^\W\d_])")
# Of a measure, '4 mm smaller', the word behind the number is small.
_NO_STOP = re.compile(r" {0,3}(?P<number>\d{1,2})[ \t]+(?=[A-Z])")
_AT_MARGIN = re.compile(r"(?P<sign>[-*+]|(?P<number>\d{1,2})[.)])[ \t]+(?=\S)")
_SENTENCE = re.compile(r"[A-Z]")
_NUMBERED = re.compile(r" {0,3}(\d{1,2})[.)][ \t]")
_HEADING = re.compile(r" {0,3}(?:#.*|=+|-+)?\s*")

Slip = tuple[int, str, dict[str, object]]  # where in the paragraph, code, facts
Found = tuple[int, str, str]  # the line, how its entry begins, and its words


def unmade_lists(words: str) -> Iterator[Slip]:
    """Of one paragraph the first such line."""
    lines = words.split("\n")
    entries = [number for number, line in enumerate(lines) if _ENTRY.match(line)]
    for find in (_odd_signs, _without_stop, _other_signs, _without_number):
        for number, begins, rest in find(lines, entries):
            facts = _facts(lines[number], begins, rest)
            if min(number, *entries, number):
                facts["right"] = f"{facts['right']}, below an empty line"
            yield _start(lines, number), "prose-list-sign", facts
            return
    first = entries[0] if len(entries) > 1 else 0
    if first and not _HEADING.fullmatch(lines[first - 1]):
        yield _start(lines, first), "prose-list-above", {"entry": said(lines[first].strip())}


def unnumbered(before: str, words: str, after: str) -> Iterator[Slip]:
    """A paragraph that would be an entry between those before and after it, had its number a full stop."""
    bare, then = _NO_STOP.match(words), _NUMBERED.match(after)
    if bare is None or then is None:
        return
    number, line = int(bare["number"]), words.split("\n")[0]
    last = [int(one[1]) for above in before.split("\n") if (one := _NUMBERED.match(above))]
    if int(then[1]) == number + 1 and (number == 1 or last[-1:] == [number - 1]):
        yield 0, "prose-list-sign", _facts(line, f"{bare['number']}.", line[bare.end() :])


def _odd_signs(lines: list[str], entries: list[int]) -> Iterator[Found]:
    """Signs that make no list, or have no space behind them."""
    for sign, least, new in ((_BULLET, 1, "-"), (_DASH, 2, "-"), (_NO_SPACE, 2, "")):
        found = [
            (number, match) for number, line in enumerate(lines) if (match := sign.match(line))
        ]
        beside = len(entries) if sign is _NO_SPACE else 0
        if found and len(found) + beside >= least:
            number, match = found[0]
            yield number, new or match["sign"], lines[number][match.end() :]


def _without_stop(lines: list[str], entries: list[int]) -> Iterator[Found]:
    """A number that the list lacks, without its full stop."""
    numbers = {int(one[1]) for line in lines if (one := _NUMBERED.match(line))}
    for at, line in enumerate(lines):
        if bare := _NO_STOP.match(line):
            number = int(bare["number"])
            if number not in numbers and (2 if number == 1 else number - 1) in numbers:
                yield at, f"{number}.", line[bare.end() :]


def _other_signs(lines: list[str], entries: list[int]) -> Iterator[Found]:
    """A dash among numbers, or a number among dashes: no list has both. Several dashes may be meant to stand below."""
    signs = [_AT_MARGIN.match(line) for line in lines]
    for at, (before, entry) in enumerate(pairwise(signs), 1):
        if before and entry and bool(before["number"]) != bool(entry["number"]):
            begins = f"{int(before['number']) + 1}." if before["number"] else before["sign"]
            following = signs[at + 1] if at + 1 < len(signs) else None
            if following and not following["number"] and not entry["number"]:
                begins = f"    {entry['sign']}"
            yield at, begins, lines[at][entry.end() :]


def _without_number(lines: list[str], entries: list[int]) -> Iterator[Found]:
    """A sentence between two numbers, of which the one between is not there."""
    numbers = [_NUMBERED.match(line) for line in lines]
    for at in range(1, len(lines) - 1):
        before, after = numbers[at - 1], numbers[at + 1]
        if before and after and int(after[1]) == int(before[1]) + 2:
            if _SENTENCE.match(lines[at]):
                yield at, f"{int(before[1]) + 1}.", lines[at]


def _facts(line: str, begins: str, rest: str) -> dict[str, object]:
    return {"entry": said(line.strip()), "right": said(f"{begins} {rest.strip()}")}


def _start(lines: list[str], number: int) -> int:
    """Where that line begins, in the lines joined again."""
    return sum(len(line) + 1 for line in lines[:number])
