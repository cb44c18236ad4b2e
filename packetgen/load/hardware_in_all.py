"""Pieces of hardware of which a step says how many there are 'in all'."""

import re

from packetgen.diagnostics import Problems, place_in
from packetgen.load.counted_hardware import are, kind_of
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import sentences
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.nouns import plural

_IN_ALL = re.compile(rf"\b{COUNTED}\s+(?:of\s+them\s+)?in\s+all\b", re.IGNORECASE)


def complain_of_hardware_in_all(filled: Filled, steps: str, path: str, problems: Problems) -> None:
    """Advice on 'two screws to each post, four in all' where another number is to buy, and no other step has any of them."""
    kinds: dict[str, list[Filled]] = {}
    for one in filled.each("hardware"):
        if one.value is None or not one.value["name"]:
            return
        kinds.setdefault(kind_of(one.value["name"]), []).append(one.value)
    told_at = {problem.place.line for problem in problems if problem.place.path == path}
    for kind, entries in kinds.items():
        with_it = [of for of in sentences(steps) if _speaks_of(kind, of[1])]
        if len(with_it) != 1 or len(entries) != 1:
            continue
        ((start, sentence),) = with_it
        found = _IN_ALL.search(sentence)
        if found is None or any(_speaks_of(one, sentence) for one in kinds if one != kind):
            continue
        told, pieces = counted_number(found["number"]), entries[0]["pieces"] or 1
        place = place_in(steps, start + found.start(), path)
        if told not in (None, pieces) and place.line not in told_at:
            code = "hardware-short" if (told or 0) > pieces else "hardware-left"
            facts = {"said": said(found[0]), "of": said(entries[0]["name"]), "are": are(pieces)}
            problems.add(place, code, **facts)


def _speaks_of(kind: str, sentence: str) -> bool:
    words = rf"\b(?:{re.escape(kind)}|{re.escape(plural(kind))})\b"
    return bool(re.search(words, sentence, re.IGNORECASE))
