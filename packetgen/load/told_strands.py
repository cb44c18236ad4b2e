"""Strands that an author's notes count, beside those that the pattern is worked with."""

import re
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import named, sentences
from packetgen.load.words import said, shown
from packetgen.model import KeyLine, ThreadSet

_NAMED = re.compile(rf"{COUNTED}\s+(?:strands\b|strand\s+in\s+the\s+needle)", re.IGNORECASE)
# Of one kind alone 'one strand' is believed too.
_NAMED_OR_ONE = re.compile(rf"{COUNTED}\s+strands?\b", re.IGNORECASE)
# 'Crosses take two strands, lines one.'
_BARE = re.compile(rf"\s+{COUNTED}\s*(?=[,.;:]|\Z)", re.IGNORECASE)
# What a sentence that counts the strands of one of these alone speaks of; and what it speaks of besides.
_CROSSES = r"cross(?:es)?|cross-?\s?stitch\w*"
_ALONE = {
    "crosses": re.compile(rf"\b(?:{_CROSSES})\b", re.IGNORECASE),
    "backstitch": re.compile(r"\bback-?\s?stitch|\b(?:out)?lines\b", re.IGNORECASE),
    "french_knots": re.compile(r"\bknots?\b", re.IGNORECASE),
}
_OTHERS = re.compile(
    r"\b(?:stitch(?:es)?|half|halves(?!\s+of)|quarters?|whole|fill\w*|rows?|beads?|lazy\s+dais(?:y|ies)|long|"
    r"rest|every(?:thing)?|all(?!\s+(?:\w+\s+)?(?:French\s+)?knots\b)|not|never|unless|if|separate|split|strip|pull|leave|left\s+(?:over|bare|out|of|on))\b",
    re.IGNORECASE,
)

# What they are called, and where their strands stand in series.yaml.
_CALLED = {
    "crosses": ("crosses", "strands"),
    "backstitch": ("backstitch", "backstitch_strands"),
    "french_knots": ("knots", "knot_strands"),
}

# Between them and their strands.
_OF_CROSSES = re.compile(
    r"(?:\s+of\s+[^,;:]+)?\s+for\s+(?:the\s+|all\s+(?:the\s+)?)?"
    r"|(?:\s+(?:is|are))?(?:\s+(?:worked|stitched|done))?\s+(?:in|with|takes?|wants?|uses?|needs?)\s+",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class _SetWords:
    """A thread set: what its card and its threads in the key are called, its strands by what they work, how many a whole thread
    has, and how many may be left of one."""

    card: str
    called: frozenset[str]
    strands: Mapping[str, int]
    whole: int
    left: frozenset[int]


def complain_of_told_strands(
    notes: str,
    path: str,
    sets: Iterable[ThreadSet],
    lines: Sequence[KeyLine],
    on_chart: Collection[str],
    problems: Problems,
) -> None:
    """Advice on 'three strands' where nothing in the pattern is worked with so many, no thread has them, and they are not
    what is left of one; and on 'the backstitch in two strands' where the backstitch is worked with one.
    `on_chart` is what lies on the chart beside its stitches; beads are taken to be sewn on with as many as lines."""
    of_sets = [_set_words(one, lines, on_chart) for one in sets]
    of_lines = {number for line in lines for number in line.strands.values()}
    told = Problems()
    for kind in _ALONE:
        if kind in on_chart or kind == "crosses":
            _complain_of_kind(kind, of_sets, of_lines, notes, path, told)
    told_at = {problem.place for problem in told}
    problems.take(told)
    used = of_lines.union(*(one.strands.values() for one in of_sets))
    beside = frozenset[int]().union(*(one.left | {one.whole} for one in of_sets))
    for found in _NAMED.finditer(notes):
        number, place = counted_number(found["number"]), place_in(notes, found.start(), path)
        if number is not None and number not in used | beside and place not in told_at:
            own = " and ".join(map(str, sorted(used)))
            facts = {"said": said(found[0]), "own": own}
            problems.add(place, "strands-told-other", **facts)


def _set_words(one: ThreadSet, lines: Iterable[KeyLine], on_chart: Collection[str]) -> _SetWords:
    of_kinds = {
        "backstitch": one.backstitch_strands,
        "long_stitch": one.backstitch_strands,
        "french_knots": one.knot_strands,
        "lazy_daisies": one.daisy_strands,
        "beads": one.backstitch_strands,
    }
    strands = {kind: few for kind, few in of_kinds.items() if kind in on_chart}
    strands["crosses"] = one.strands
    colours = (colour for line in lines for colour in line.threads.get(one.id, ()))
    words = (word for colour in colours for word in (colour.number, colour.name) if word)
    left = frozenset(one.card.strands - few for few in strands.values())
    return _SetWords(
        one.card.name, frozenset({one.card.name, *words}), strands, one.card.strands, left
    )


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
    kind: str,
    sets: Sequence[_SetWords],
    of_lines: Collection[int],
    notes: str,
    path: str,
    problems: Problems,
) -> None:
    """Advice on the number of a sentence that speaks of crosses alone, of backstitch or of knots: of the thread sets of which it names
    threads, or of all."""
    others = [pattern for name, pattern in _ALONE.items() if name != kind]
    in_pieces = (
        (start + piece.start(), piece[0])
        for start, words in sentences(notes)
        for piece in re.finditer(r"[^;]+", words)
    )
    for start, words in in_pieces:
        start, sentence = _stretch(words, start, _ALONE[kind], others)
        spoken_of = _ALONE[kind].search(sentence)
        # 'Two strands of Moss Stranded, or one of Pale Spool.'
        besides = [
            (other, one)
            for one in sets
            if len(sets) > 1 and (other := _or_of(one.card).search(sentence))
        ]
        first = min((other.start() for other, _ in besides), default=len(sentence))
        sentence, whole = sentence[:first], sentence
        found = list(_NAMED_OR_ONE.finditer(sentence))
        if spoken_of and (bare := _BARE.match(sentence, spoken_of.end())):
            found = [bare]
        if len(found) != 1 or not spoken_of or _OTHERS.search(whole):
            continue
        # Crosses are told of for much besides: 'two strands when the crosses are done'.
        between = sorted((*found[0].span(), *spoken_of.span()))[1:3]
        if kind == "crosses" and not _OF_CROSSES.fullmatch(sentence[slice(*between)]):
            continue
        beside_it = f"{sentence[: found[0].start()]},{sentence[found[0].end() :]}"
        of_named = [one for one in sets if named(one.called).search(beside_it)] or sets
        for told, of in ((found[0], of_named), *((told, [one]) for told, one in besides)):
            number = counted_number(told["number"])
            own = {one.strands[kind] for one in of}
            if number is None or number in own | {*of_lines, *(one.whole for one in of)}:
                continue
            what, field = _CALLED[kind]
            facts = {
                "said": said(told[0].strip()),
                "what": what,
                "field": field,
                "own": " and ".join(map(str, sorted(own))),
                "where": f"for {shown(of[0].card)}" if len(of) < len(sets) else "in this pattern",
            }
            place = place_in(notes, start + told.start("number"), path)
            problems.add(place, "strands-of-kind-other", **facts)


def _or_of(card: str) -> re.Pattern[str]:
    """'or one of Pale Spool'."""
    return re.compile(
        rf"(?<=\bor\s){COUNTED}\s+(?:strands?\s+)?of\s+(?:the\s+)?{re.escape(card)}\b",
        re.IGNORECASE,
    )
