"""The list of marks and threads at the head of a chart.txt, beside the key: bringing a design in writes it, and nothing
reads it but people."""

import re
from collections.abc import Iterator, Mapping, Sequence

from packetgen.diagnostics import Place, Problems
from packetgen.load.prose_words import named
from packetgen.load.words import counted, said
from packetgen.model import Colour, KeyLine, ThreadCard
from packetgen.nouns import listed as listed_in

_NOTES = "stitching.md"
_NAMED = 3  # further marks
_LISTED = re.compile(r"# (?P<mark>\S)  (?P<words>\S[^,]*)(?P<rest>.*)")


def complain_of_list(
    chart: str,
    path: str,
    lines: Sequence[KeyLine],
    cards: Mapping[str, ThreadCard],
    texts: Mapping[str, str],
    problems: Problems,
) -> str:
    """Advice, once, where the list names a thread for a mark that the key has another thread for. The text is given back
    without such lines, of which all is told then. Of a thread that the key has for another mark now, and the notes name,
    and of one that other `texts` name, by what they are called, nothing else would be told."""
    rows = chart.split("\n")
    behind = list(_behind(rows, lines, cards))
    for number, _, _ in behind:
        rows[number] = ""
    for number, listed, now in behind[:1]:
        others = [(one, now) for _, one, now in behind if one is not listed]
        problems.add(
            Place(path, number + 1, listed.start("words") + 1),
            "list-behind",
            mark=said(listed["mark"]),
            told=said(listed["words"]),
            key=said(now),
            more=_more(listed, now, others),
            right=_twice(rows, listed, now)
            or _right(listed, now, others) + _in_texts(listed, lines, texts),
        )
    return "\n".join(rows)


def exchanged(
    chart: str, lines: Sequence[KeyLine], cards: Mapping[str, ThreadCard]
) -> dict[str, str]:
    """By the numbers of threads in the list, what the key has now for their marks, '508 thundercloud'."""
    return {
        listed["words"].partition(" ")[0]: now
        for _, listed, now in _behind(chart.split("\n"), lines, cards)
    }


def _behind(
    rows: Sequence[str], lines: Sequence[KeyLine], cards: Mapping[str, ThreadCard]
) -> Iterator[tuple[int, re.Match[str], str]]:
    """The numbers of rows that name a thread for a mark that the key has another for, and which that is."""
    of_marks = {line.mark: line for line in lines}
    for number, row in enumerate(rows):
        listed = _LISTED.fullmatch(row.rstrip())
        line = of_marks.get(listed["mark"]) if listed else None
        if listed and line and (now := _other(" ".join(listed["words"].split()), line, cards)):
            yield number, listed, now


def _in_texts(listed: re.Match[str], lines: Sequence[KeyLine], texts: Mapping[str, str]) -> str:
    words = listed["words"].strip()
    number, _, name = words.partition(" ")
    in_key = any(words == thread for line in lines for _, thread in _threads(line))
    naming, perhaps = list[str](), list[str]()
    for where, text in texts.items():
        if where == _NOTES and not in_key:
            continue  # told there
        of_one_word = where != _NOTES and " " not in name
        if of_one_word and where.endswith(".md"):
            continue  # in a story pollen may be pollen
        if name and named([number, name] if where == _NOTES else [name]).search(text):
            (perhaps if of_one_word else naming).append(where)
    mend = f", and mend {listed_in(tuple(naming))}, where it is named" if naming else ""
    # 'A brick wall' may be of another thread.
    look = f", and look at {listed_in(tuple(perhaps))} for {said(name)}" if perhaps else ""
    return mend + look


def _twice(rows: Sequence[str], listed: re.Match[str], now: str) -> str:
    """What to do where another line of the list has what the key has for the mark; '' where none has."""
    right = f"# {listed['mark']}  {now}"
    same = [number for number, row in enumerate(rows, 1) if row.rstrip().startswith(right)]
    return f"take this line out, since line {same[0]} has it" if same else ""


def _right(first: re.Match[str], now: str, others: Sequence[tuple[re.Match[str], str]]) -> str:
    """The line as it should stand; and the other, where the two have changed places."""
    right = f"write # {first['mark']}  {now}"
    if _changed_places(first, now, others):
        return f"{right} and # {others[0][0]['mark']}  {others[0][1]}"
    return f"{right}{first['rest']}"


def _changed_places(
    first: re.Match[str], now: str, others: Sequence[tuple[re.Match[str], str]]
) -> bool:
    other, of_other = others[0] if others else (first, now)
    exchanged = (first["words"].strip(), now) == (of_other, other["words"].strip())
    return len(others) == 1 and exchanged


def _more(first: re.Match[str], now: str, others: Sequence[tuple[re.Match[str], str]]) -> str:
    """What is told of the other marks of which the list and the key tell two threads."""
    if not others:
        return ""
    if _changed_places(first, now, others):
        return ""  # both lines are offered
    marks = tuple(said(other["mark"]) for other, _ in others)
    if len(marks) > _NAMED:
        return f", and another thread for {counted(len(marks), 'more mark')}"
    return f", and another thread for {listed_in(marks)} too"


def _other(words: str, line: KeyLine, cards: Mapping[str, ThreadCard]) -> str:
    """What the key has for the mark, where the `words` are another thread of the same card, or its number with another name;
    '' otherwise."""
    if any(words == thread for _, thread in _threads(line)):
        return ""
    for set_name, thread in _threads(line):
        card = cards.get(set_name)
        if card and (words in map(_named, card.colours.values()) or _was(words, thread)):
            return thread
    return ""


def _was(words: str, thread: str) -> str:
    """The name that stands behind the number of the thread, where it is none of its own."""
    number, _, name = thread.partition(" ")
    told, _, other = words.partition(" ")
    alike = other.casefold().startswith(name.casefold())
    return other if told == number and other and not alike else ""


def names_in_list(chart: str, lines: Sequence[KeyLine]) -> dict[str, str]:
    """By their numbers, what colours of the key are called in the list, where that is not their name."""
    threads = {line.mark: list(_threads(line)) for line in lines}
    found: dict[str, str] = {}
    for row in chart.split("\n"):
        if listed := _LISTED.fullmatch(row.rstrip()):
            for _, thread in threads.get(listed["mark"], ()):
                if was := _was(" ".join(listed["words"].split()), thread):
                    found[thread.partition(" ")[0]] = was
    return found


def _threads(line: KeyLine) -> Iterator[tuple[str, str]]:
    """In each set, where it is one thread and no blend."""
    for set_name, needle in line.threads.items():
        if len(needle) == 1:
            yield set_name, _named(needle[0])


def _named(colour: Colour) -> str:
    return f"{colour.number} {colour.name}"
