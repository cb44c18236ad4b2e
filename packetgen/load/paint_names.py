"""Paints that the steps of a finishing piece name, and that nobody is told to buy."""

import re
from collections.abc import Iterator, Sequence
from difflib import SequenceMatcher

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT
from packetgen.load.prose_words import any_of, sentences
from packetgen.load.words import said

# What ends the name of a paint, which has three words at most.
_ENDS = (
    "a|after|all|and|as|at|before|both|but|by|each|every|for|from|in|if|into|let|of|on|onto|or|over|per|so|straight|"
    "than|that|the|then|to|until|when|where|which|while|with"
)
_WORD = rf"(?!(?:{_ENDS})\b)[^\W\d_][\w'’-]*"
_NAME = rf"(?:the\s+)?(?P<name>{_WORD}(?:\s+{_WORD}){{0,2}})"
_COATS_OF = re.compile(
    rf"(?:{COUNT}|\b(?:a|another|one))\s+(?:(?!of\b)[a-z]+\s+)?coats?\s+of\s+{_NAME}", re.IGNORECASE
)
# No name of a paint; of what is no colour `coats-unlisted` tells.
_COMMON = re.compile(
    r"\b(?:paints?|colou?rs?|it|its|them|this|these|one|same|your|own|other|any|either|whichever|kind|"
    r"varnish|wax|oil|primer|undercoat|seal\w*|stain|lacquer|glue)\b",
    re.IGNORECASE,
)
_PAINTS = re.compile(r"\b(?:paint|coat)", re.IGNORECASE)
_ALIKE = 0.7  # by the letters of two names: our own choice


def complain_of_unknown_paint(
    paints: Sequence[str],
    parts: Sequence[str],
    bought: str,
    steps: str,
    path: str,
    problems: Problems,
) -> None:
    """Advice on 'two coats of cedar brown', and on 'the board in cedar brown' where a paint is called nearly so: of these
    paints none has that name. `bought` are the names of all that is to buy."""
    for start, found, surely in _named(parts, steps):
        name = " ".join(found["name"].split())
        if _COMMON.search(name) or _is_known(name, paints, bought):
            continue
        near = _near(name, paints)
        if near or surely:
            hint = f"did you mean {said(near)}? Else add" if near else "mend the name, or add"
            facts = {"said": said(found[0]), "name": said(name), "hint": hint}
            problems.add(place_in(steps, start, path), "step-paint-unknown", **facts)
            return


def _named(parts: Sequence[str], steps: str) -> Iterator[tuple[int, re.Match[str], bool]]:
    """Where what may be a paint is named, and whether it can be nothing else."""
    part_in = re.compile(
        rf"(?<![\w-])(?:{any_of(parts)})\s+(?:(?:in|with)\s+)?{_NAME}(?=\s*[.,;:]|\s+(?:and|with|all|as)\b|\s*\Z)",
        re.IGNORECASE,
    )
    for start, sentence in sentences(steps):
        found = [(one, True) for one in _COATS_OF.finditer(sentence)]
        if _PAINTS.search(sentence):
            found += [(one, False) for one in part_in.finditer(sentence)]
        for one, surely in sorted(found, key=lambda each: each[0].start()):
            yield start + one.start(), one, surely


def _is_known(name: str, paints: Sequence[str], bought: str) -> bool:
    """Whether it has all words of a paint's name, or a paint all of its; or something else to buy is called so."""
    words = set(name.casefold().split())
    names = [set(paint.casefold().split()) for paint in paints]
    return name.casefold() in bought.casefold() or any(
        words <= one or one <= words for one in names
    )


def _near(name: str, paints: Sequence[str]) -> str | None:
    """A paint of as many words that is spelt alike, or whose last word is the same."""
    words = name.casefold().split()
    for paint in paints:
        others = paint.casefold().split()
        alike = SequenceMatcher(None, name.casefold(), paint.casefold()).ratio() >= _ALIKE
        if len(words) == len(others) and (alike or words[1:] == others[1:] != []):
            return paint
    return None
