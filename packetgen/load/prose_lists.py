"""Lines of an author's Markdown that look like the entries of a list and are printed as a run of words, since
their sign is another, no space follows it, or no empty line stands above. Only what is surely meant as a list is
told."""

import re
from collections.abc import Iterator

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


def unmade_lists(words: str) -> Iterator[Slip]:
    """Of one paragraph the first such line."""
    lines = words.split("\n")
    entries = [number for number, line in enumerate(lines) if _ENTRY.match(line)]
    for sign, least, new in ((_BULLET, 1, "-"), (_DASH, 2, "-"), (_NO_SPACE, 2, "")):
        found = [
            (number, match) for number, line in enumerate(lines) if (match := sign.match(line))
        ]
        beside = len(entries) if sign is _NO_SPACE else 0
        if found and len(found) + beside >= least:
            number, match = found[0]
            right = f"{new or match['sign']} {lines[number][match.end() :].strip()}"
            below = ", below an empty line" * (min(number, *entries, number) > 0)
            facts: dict[str, object] = {
                "entry": said(lines[number].strip()),
                "right": f"{said(right)}{below}",
            }
            yield _start(lines, number), "prose-list-sign", facts
            return
    numbers = {int(one[1]) for line in lines if (one := _NUMBERED.match(line))}
    for number, line in enumerate(lines):
        if bare := _NO_STOP.match(line):
            of = int(bare["number"])
            if of not in numbers and (2 if of == 1 else of - 1) in numbers:
                yield _start(lines, number), *_without_stop(bare, line)
                return
    for number in range(1, len(lines)):
        before, entry = (_AT_MARGIN.match(lines[number - back]) for back in (1, 0))
        if before and entry and bool(before["number"]) != bool(entry["number"]):
            begin = f"{int(before['number']) + 1}." if before["number"] else before["sign"]
            next_one = _AT_MARGIN.match(lines[number + 1]) if number + 1 < len(lines) else None
            if next_one and not next_one["number"] and not entry["number"]:
                begin = f"    {entry['sign']}"  # several below a step
            right = said(f"{begin} {lines[number][entry.end() :].strip()}")
            facts = {"entry": said(lines[number].strip()), "right": right}
            yield _start(lines, number), "prose-list-sign", facts
            return
    for number in range(1, len(lines) - 1):
        upper, lower = (_NUMBERED.match(lines[number + one]) for one in (-1, 1))
        if (
            upper
            and lower
            and int(lower[1]) == int(upper[1]) + 2
            and _SENTENCE.match(lines[number])
        ):
            line = lines[number].strip()
            facts = {"entry": said(line), "right": said(f"{int(upper[1]) + 1}. {line}")}
            yield _start(lines, number), "prose-list-sign", facts
            return
    first = entries[0] if len(entries) > 1 else 0
    if first and not _HEADING.fullmatch(lines[first - 1]):
        yield _start(lines, first), "prose-list-above", {"entry": said(lines[first].strip())}


def unnumbered(before: str, words: str, after: str) -> Iterator[Slip]:
    """A paragraph that would be an entry between those before and after it, had its number a full stop."""
    bare = _NO_STOP.match(words)
    if bare is None:
        return
    of = int(bare["number"])
    last = [int(one[1]) for line in before.split("\n") if (one := _NUMBERED.match(line))]
    then = _NUMBERED.match(after)
    if then and int(then[1]) == of + 1 and (of == 1 or last[-1:] == [of - 1]):
        yield 0, *_without_stop(bare, words.split("\n")[0])


def _without_stop(bare: re.Match[str], line: str) -> tuple[str, dict[str, object]]:
    right = said(f"{bare['number']}. {line[bare.end() :].strip()}")
    return "prose-list-sign", {"entry": said(line.strip()), "right": right}


def _start(lines: list[str], number: int) -> int:
    """Where that line begins, in the lines joined again."""
    return sum(len(line) + 1 for line in lines[:number])
