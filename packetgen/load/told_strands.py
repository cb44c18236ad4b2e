"""Strands that an author's notes count, beside those that the pattern is worked with."""

import re
from collections.abc import Collection, Iterable

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import sentences
from packetgen.load.words import said
from packetgen.model import KeyLine, ThreadSet

_NAMED = re.compile(rf"{COUNTED}\s+(?:strands\b|strand\s+in\s+the\s+needle)", re.IGNORECASE)
# Of one kind alone 'one strand' is believed too.
_NAMED_OR_ONE = re.compile(rf"{COUNTED}\s+strands?\b", re.IGNORECASE)
# What a sentence that counts the strands of one of these alone speaks of; and what it speaks of besides.
_ALONE = {
    "backstitch": re.compile(r"\bback-?\s?stitch", re.IGNORECASE),
    "french_knots": re.compile(r"\bknots?\b", re.IGNORECASE),
}
_OTHERS = re.compile(
    r"\b(?:cross(?:es)?|cross-?\s?stitch\w*|stitch(?:es)?|half|halves|quarters?|whole|fill\w*|rows?|beads?|dais(?:y|ies)|long|"
    r"rest|every(?:thing)?|all|not|never|unless|if|separate|split|strip|pull|leave|left\s+(?:over|bare|out|of|on))\b",
    re.IGNORECASE,
)


def complain_of_told_strands(
    notes: str,
    path: str,
    sets: Iterable[ThreadSet],
    lines: Iterable[KeyLine],
    on_chart: Collection[str],
    problems: Problems,
) -> None:
    """Advice on 'three strands' where nothing in the pattern is worked with so many, no thread has them, and they are not
    what is left of one; and on 'the backstitch in two strands' where the backstitch is worked with one. `on_chart` is what lies on the chart beside its stitches; beads
    are taken to be sewn on with as many as lines."""
    used, beside = set[int](), set[int]()
    alone: dict[str, set[int]] = {kind: set() for kind in _ALONE if kind in on_chart}
    for one in sets:
        of_kinds = {
            "backstitch": one.backstitch_strands,
            "long_stitch": one.backstitch_strands,
            "french_knots": one.knot_strands,
            "lazy_daisies": one.daisy_strands,
            "beads": one.backstitch_strands,
        }
        of_set = {one.strands, *(of_kinds[kind] for kind in on_chart if kind in of_kinds)}
        used |= of_set
        for kind, own_of_kind in alone.items():
            own_of_kind.add(of_kinds[kind])
        beside |= {one.card.strands, *(one.card.strands - few for few in of_set)}
    of_lines = {number for line in lines for number in line.strands.values()}
    used |= of_lines
    for kind, own_of_kind in alone.items():
        _complain_of_kind(kind, own_of_kind | of_lines, beside, notes, path, problems)
    for named in _NAMED.finditer(notes):
        number = counted_number(named["number"])
        if number is not None and number not in used | beside:
            own = " and ".join(map(str, sorted(used)))
            facts = {"said": said(named[0]), "own": own}
            problems.add(place_in(notes, named.start(), path), "strands-told-other", **facts)


def _stretch(
    sentence: str, start: int, kind: re.Pattern[str], others: Iterable[re.Pattern[str]]
) -> tuple[int, str]:
    """Where what it says of the kind begins, and its words: up to where it speaks of another kind, before and behind."""
    found = kind.search(sentence)
    spans = [one.span() for other in others for one in other.finditer(sentence)]
    at = found.start() if found else 0
    first = max((end for _, end in spans if end <= at), default=0)
    last = min((begin for begin, _ in spans if begin >= at), default=len(sentence))
    return start + first, sentence[first:last]


def _complain_of_kind(
    kind: str, own: set[int], beside: set[int], notes: str, path: str, problems: Problems
) -> None:
    """Advice on the number of a sentence that speaks of backstitch alone, or of knots."""
    others = [pattern for name, pattern in _ALONE.items() if name != kind]
    for start, words in sentences(notes):
        start, sentence = _stretch(words, start, _ALONE[kind], others)
        found = list(_NAMED_OR_ONE.finditer(sentence))
        if len(found) != 1 or not _ALONE[kind].search(sentence) or _OTHERS.search(sentence):
            continue
        number = counted_number(found[0]["number"])
        if number is None or number in own | beside:
            continue
        what = "backstitch" if kind == "backstitch" else "knots"
        facts = {
            "said": said(found[0][0]),
            "what": what,
            "field": "backstitch_strands" if kind == "backstitch" else "knot_strands",
            "own": " and ".join(map(str, sorted(own))),
        }
        place = place_in(notes, start + found[0].start(), path)
        problems.add(place, "strands-of-kind-other", **facts)
