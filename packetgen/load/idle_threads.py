"""Threads that an author's texts name, and that no line of the pattern's key has: a buyer would look for their skeins."""

import re
from collections import Counter
from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Place, Problems, nearest_of
from packetgen.load.prose_words import any_of
from packetgen.load.told_numbers import form_of
from packetgen.load.words import said, shown
from packetgen.model import Colour, ThreadCard

# Of figures and letters, as 'M170': what is shorter, or of figures alone, may count or measure something.
_NUMBER = re.compile(r"(?<![\w#.,/-])(?=\w*\d)(?=\w*[A-Za-z])\w{3,7}(?![\w-])", re.ASCII)
_THREAD = re.compile(r"\bthreads?\s+(?:no\.?\s*)?(?P<number>\w*\d\w*)(?![\w-])", re.IGNORECASE)
_PROPOSED = re.compile(
    r"\b(?:not|never|instead|without|if|may|might|could|would|or)\b", re.IGNORECASE
)
_SERIES = 3  # numbers of a card with the same letters and as many figures, of which another is seen to be one: our own choice
_COUNTS = re.compile(r"[1-9]\d?")  # '12 white stitches': our own choice


def complain_of_idle_threads(
    text: str,
    path: str,
    cards: Sequence[ThreadCard],
    used: Collection[str],
    problems: Problems,
) -> None:
    """Advice on 'M170', 'thread 119', '119 wet plank' and 'in wet plank' in a text where that is a thread of one of the cards and not one
    of the numbers that the key has `used`, in any thread set; and on 'thread 999' where no card has it. Of a chart only
    the list at its head is looked at."""
    threads = {
        number: (colour, card)
        for card in reversed(cards)
        for number, colour in card.colours.items()
    }
    forms = {form_of(number) for number in threads}
    leads = Counter(map(_lead, threads))
    # Of a number that is another's by the name beside it all is told.
    answered = [problem for problem in problems if problem.place.path == path]
    told: set[str] = set()
    remarks_only = path.endswith(".txt")
    named = () if remarks_only else _named(threads, used)
    for row, line in enumerate(text.split("\n"), 1):
        if remarks_only and not line.startswith("#"):
            continue
        called = _called(line)
        alike = [one for one in _alone(line) if leads[_lead(one[1])] >= _SERIES]
        for column, number in (*called, *alike):
            place = Place(path, row, column)
            if number not in threads and form_of(number) in forms and number not in told:
                told.add(number)
                if place not in [problem.place for problem in answered]:
                    facts = {"number": said(number), "cards": _none_of(cards)}
                    facts["hint"] = _meant(number, used)
                    problems.add(place, "thread-told-none", **facts)
        by_name = _by_name(line, named)
        for column, number in (*_alone(line), *called, *_with_names(line, threads), *by_name):
            if number in threads and number not in used and number not in told:
                colour, card = threads[number]
                # As it stands there: by its number, or by its name alone.
                words, other = number, colour.name
                if (column, number) in by_name:
                    words, other = other, words
                if any(one.place.line == row and words in one.wrong for one in answered):
                    continue
                told.add(number)
                facts = {"number": said(words), "name": shown(other), "card": shown(card.name)}
                problems.add(Place(path, row, column), "thread-idle", **facts)


def _none_of(cards: Sequence[ThreadCard]) -> str:
    """'Moss Stranded does not have', 'neither … nor …', or of more than two cards the first."""
    first, *others = map(shown, dict.fromkeys(card.name for card in cards))
    if not others:
        return f"{first} does not have it"
    other = others[0] if len(others) == 1 else "another card of the pattern"
    return f"neither {first} nor {other} has it"


def _meant(number: str, used: Collection[str]) -> str:
    near = nearest_of(number, tuple(sorted(used)))
    return (
        f"did you mean {near}? Else take it out"
        if near
        else "write the number of one in the key, or take it out"
    )


def _lead(number: str) -> str:
    """'Q99' of 'Q43'."""
    return re.sub(r"\d", "9", number)


def _alone(line: str) -> list[tuple[int, str]]:
    return [(one.start() + 1, one[0]) for one in _NUMBER.finditer(line)]


def _called(line: str) -> list[tuple[int, str]]:
    """'thread 131'."""
    return [(one.start("number") + 1, one["number"]) for one in _THREAD.finditer(line)]


@dataclass(frozen=True)
class _Named:
    """A thread that the key has not, by its name, and the ways in which a text may name it."""

    number: str
    name: str
    ways: tuple[re.Pattern[str], ...]


def _named(
    threads: Mapping[str, tuple[Colour, ThreadCard]], used: Collection[str]
) -> tuple[_Named, ...]:
    """'in clay pipe', of a thread whose name has several words and is no other's: one word may be an everyday one, but not in
    'in moss and slate' where moss is a colour of the key."""
    in_key = {colour.name.casefold() for number, (colour, _) in threads.items() if number in used}
    keyed = any_of(in_key)
    found = []
    for number, (colour, _) in threads.items():
        name = colour.name.casefold()
        if name in in_key:
            continue
        words = r"\s+".join(map(re.escape, name.split()))
        forms = [rf"(?P<name>{words})"] if " " in name else []
        forms += [
            rf"(?:{keyed})\s+and\s+(?:the\s+)?(?P<name>{words})",
            rf"(?P<name>{words})\s+and\s+(?:the\s+)?(?:{keyed})",
        ]
        ways = (rf"\b(?:in|with)\s+(?:the\s+)?{form}(?![\w-])" for form in forms)
        found.append(_Named(number, name, tuple(re.compile(way, re.IGNORECASE) for way in ways)))
    return tuple(found)


def _by_name(line: str, named: Collection[_Named]) -> list[tuple[int, str]]:
    """Those that the line names, and where."""
    lower, found = line.casefold(), []
    for thread in named:
        if thread.name not in lower:
            continue
        one = next(filter(None, (way.search(line) for way in thread.ways)), None)
        if one and not _PROPOSED.search(line):
            found.append((one.start("name") + 1, thread.number))
    return found


def _with_names(
    line: str, threads: Mapping[str, tuple[Colour, ThreadCard]]
) -> list[tuple[int, str]]:
    """Numbers with their own name behind them, or before them and they between brackets."""
    found = []
    for number in re.findall(r"\w+", line):
        if number in threads:
            name = r"\s+".join(map(re.escape, threads[number][0].name.split()))
            behind = rf"\b{name}\s+\({re.escape(number)}\)"
            before = rf"(?<![\w#]){re.escape(number)}\s+{name}\b|"
            way = behind if _COUNTS.fullmatch(number) else before + behind
            if one := re.search(way, line, re.IGNORECASE):
                found.append((one.start() + 1, number))
    return found
