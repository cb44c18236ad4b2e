"""Parts and hardware of a finishing piece that no step speaks of, mostly since they were given another name, or a step
is gone."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Sequence
from difflib import SequenceMatcher

from packetgen.diagnostics import Problems
from packetgen.load.prose_words import named
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.nouns import plural

_LEAST = 3  # letters of a word of a name that is looked for
_STEM = 4  # letters of it at least that the steps have: 'place' is no 'plate'
_HEADING = re.compile(r"^#.*$", re.MULTILINE)
_MADE_OF = frozenset(
    "wood wooden brass steel iron metal copper black white small large little".split()
)
_OPPOSITE = {"left": "right", "upper": "lower", "front": "back"}
_OPPOSITE |= {behind: before for before, behind in _OPPOSITE.items()}
_SIDE = re.compile(rf"\b(?:{'|'.join(_OPPOSITE)})\b", re.IGNORECASE)
_SLIP = 0.8  # how alike two names are at least: one letter of eight, or two that changed places
_ENDING = 2  # letters at a word's end that may differ: our own choice


def complain_of_unsaid_part(filled: Filled, steps: str, problems: Problems) -> None:
    """Advice on the one part, of several, of which no step has any word, where the steps have one of each of the others; or,
    before that, on the first whose name is nearly that of another's twin."""
    parts = [one.value for one in filled.each("parts")]
    if len(parts) < 2 or not all(part is not None and part["name"] for part in parts):
        return
    told, of_piece = _HEADING.sub("", steps).casefold(), _words(filled["name"] or "")
    unsaid = [part for part in parts if not _is_said(part["name"], told, of_piece)]
    for part in parts:
        others = [one["name"] for one in parts if one is not part]
        if slipped := _twin_slipped(part["name"], others, told):
            meant, twin = slipped
            facts = {"part": said(part["name"]), "meant": said(meant), "twin": said(twin)}
            problems.add(part.place_of("name"), "part-name-slip", **facts)
            return
    if len(unsaid) == 1:
        (part,) = unsaid
        problems.add(part.place_of("name"), "part-unsaid", part=said(part["name"]))


def unsaid_hardware(filled: Filled, steps: str) -> tuple[Filled, ...]:
    """What is to buy and no step has any word of, beside what it is made of and words that others share."""
    lines = [one.value for one in filled.each("hardware")]
    lines = [line for line in lines if line is not None and line.whole]
    words = Counter(word for line in lines for word in set(_words(line["name"])))
    shared = {word for word, times in words.items() if times > 1 or word.endswith("ed")} | _MADE_OF
    # Of a saw-tooth hanger and a picture ring, and in every step.
    shared |= {"saw", "picture", "hanging"}
    # The peg rail is no peg.
    parts = [one.value["name"] or "" for one in filled.each("parts") if one.value is not None]
    in_steps = named(parts).sub("", steps.casefold())
    return tuple(line for line in lines if not _is_said(line["name"], in_steps, shared))


def complain_of_unsaid_hardware(
    unsaid: Iterable[Filled], offered: Collection[str], problems: Problems
) -> None:
    """Advice on each such thing, but for what is `offered` already where steps name one that is not to buy."""
    for line in unsaid:
        if line["name"] not in offered:
            problems.add(line.place_of("name"), "hardware-unsaid", name=said(line["name"]))


def _twin_slipped(name: str, others: Sequence[str], steps: str) -> tuple[str, str] | None:
    """The name that is meant by 'left lge' beside a 'right leg', and that twin; None where the steps have its words."""
    for twin in others:
        meant = _SIDE.sub(lambda side: _OPPOSITE[side[0].casefold()], twin)
        alike = SequenceMatcher(None, name.casefold(), meant.casefold()).ratio()
        strange = set(_words(name)) - set(_words(meant))
        if meant != twin and strange and alike >= _SLIP and meant not in others:
            if not any(re.search(rf"\b{re.escape(word)}", steps) for word in strange):
                return meant, twin
    return None


def _words(name: str) -> list[str]:
    return [word for word in re.findall(r"\w+", name.casefold()) if len(word) >= _LEAST]


def _is_said(name: str, steps: str, of_none: Collection[str]) -> bool:
    """Whether a word of the steps begins like one of the name's, or like several of it; one of few letters counts whole, and
    those of `of_none`, as the whole piece's, do not, if there are others."""
    words = [word for word in _words(name) if word not in of_none] or _words(name)
    words += [plural(word) for word in words]
    stems = {word[: max(_STEM, len(word) - _ENDING)] for word in words}
    return not stems or any(re.search(rf"(?<![a-z]){re.escape(stem)}", steps) for stem in stems)
