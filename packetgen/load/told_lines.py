"""Lines of backstitch that an author's texts count, beside those that the pattern has."""

import re

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import named
from packetgen.load.words import said
from packetgen.model import Line, Pattern

# And the rest of their clause, which may name the thread.
_CLAUSE = r"(?P<clause>(?(of)|\s+in\s)[^.;:]*)"
_WAYS = tuple(
    re.compile(f"(?P<told>{way}){_CLAUSE}", re.IGNORECASE)
    for way in (
        # 'Three lines of backstitch', 'four lines in soot'
        rf"{COUNTED}\s+(?P<kind>line|ring)s(?P<of>\s+of\s+backstitch\b)?",
        # 'Each of the four flowers has a ring of backstitch'
        rf"(?<=\bof\sthe\s){COUNTED}\s+[a-z]+\s+has\s+a\s+(?P<kind>line|ring)(?P<of>\s+of\s+backstitch\b)?",
    )
)


def complain_of_told_lines(pattern: Pattern, path: str, problems: Problems) -> None:
    """Advice on the first 'four rings of backstitch in soot' in each text, of the folder `path`, where fewer go round in that
    colour. A line from one point of a path to the next may be told as one, so only more than all of these are too many."""
    words: dict[str, set[str]] = {}
    for key_line in pattern.key:
        for colours in key_line.threads.values():
            words.setdefault(key_line.mark, set()).update(
                word for one in colours for word in (one.number, one.name)
            )
    for file, text in pattern.texts.items():
        for found in (one for way in _WAYS for one in way.finditer(text)):
            in_it = {mark for mark, of in words.items() if named(of).search(found["clause"])}
            lines = [one for one in pattern.lines if not one.long]
            of_thread = [one for one in lines if one.mark in in_it]
            if not in_it and not found["of"]:
                continue
            told = counted_number(found["number"]) or 0
            has = sum(_of_kind(found["kind"], one) for one in of_thread or lines)
            if 0 < has < told:
                facts = {"said": said(found["told"]), "has": has}
                place = place_in(text, found.start(), f"{path}/{file}")
                problems.add(place, "kind-told-number", **facts)
                break


def _of_kind(kind: str, line: Line) -> int:
    """How many rings it is, or how many lines it may be told as."""
    if kind.casefold() == "ring":
        return int(line.points[0] == line.points[-1])
    return len(line.points) - 1
