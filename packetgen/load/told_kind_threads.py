"""Threads in which an author's texts work backstitch, knots and lazy daisies, beside those of the chart."""

import re
from collections.abc import Iterable, Iterator

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT
from packetgen.load.prose_words import any_of, named, sentences
from packetgen.load.words import said
from packetgen.model import Colour, Pattern
from packetgen.nouns import listed

_STRANDS = rf"(?:{COUNT}\s+strands?\s+of\s+)?(?:the\s+)?"
# What is worked, by what it is called, up to the thread; 'backstitch the legs with one strand of soot'.
_WORKED = {
    "backstitch": rf"\bback-?\s?stitch(?:es|ed)?\s+(?:(?:is|are|it|them)\s+|the\s+[a-z ]{{2,30}}?\s+)?(?:worked\s+|stitched\s+)?(?P<by>in|of|with|from)\s+{_STRANDS}",
    "French knots": rf"\bknots?\s+(?:(?:is|are)\s+)?(?:worked\s+|made\s+)?(?P<by>in|of|with|from)\s+{_STRANDS}",
    "lazy daisies": rf"\blazy\s+dais(?:y|ies)\s+(?:(?:is|are)\s+)?(?:worked\s+|made\s+)?(?P<by>in|of|with|from)\s+{_STRANDS}",
}
_MAY = re.compile(
    r"\b(?:no|not|never|instead|if|may|might|could|can|or|like|first|before)\b|n't\b", re.IGNORECASE
)


def complain_of_kind_threads(pattern: Pattern, path: str, problems: Problems) -> None:
    """Advice on 'a French knot of 128 tongue' in story or notes, where that thread is one of the key and no knot is worked in
    it. `path` is the pattern's folder."""
    colours = {
        line.mark: [colour for needle in line.threads.values() for colour in needle]
        for line in pattern.key
    }
    called = {mark: set(_words(of)) for mark, of in colours.items()}
    words = any_of(set().union(*called.values()))
    thread = rf"(?P<thread>{words})(?![\w-])(?:\s+\(?(?:{words})(?![\w-])\)?)?"
    of_kinds = {
        "backstitch": {line.mark for line in pattern.lines},
        "French knots": {knot.mark for knot in pattern.knots},
        "lazy daisies": {daisy.mark for daisy in pattern.daisies},
    }
    for file, text in pattern.texts.items():
        for kind, marks in of_kinds.items():
            worked = re.compile(_WORKED[kind] + thread, re.IGNORECASE)
            for start, sentence in sentences(text) if marks else ():
                found = worked.search(sentence)
                if not found or _MAY.search(sentence, 0, found.end()):
                    continue
                own_words = set().union(*(called[mark] for mark in marks))
                # 'The lower edge of the umbrella in 252 tadpole', where umbrella is a colour too.
                of_a_thing = found["by"].casefold() == "of" and named(own_words).search(
                    sentence, found.end()
                )
                if not of_a_thing and found["thread"].casefold() not in own_words:
                    own = (
                        f"{colours[mark][0].number} {colours[mark][0].name or ''}".strip()
                        for mark in sorted(marks)
                    )
                    facts = {
                        "said": said(found[0]),
                        "kind": kind,
                        "own": listed(tuple(map(said, own)), "and"),
                    }
                    facts["are"] = "is" if kind == "backstitch" else "are"
                    place = place_in(text, start + found.start(), f"{path}/{file}")
                    problems.add(place, "kind-thread-other", **facts)
                    break


def _words(colours: Iterable[Colour]) -> Iterator[str]:
    """Numbers and names, in small letters."""
    return (word.casefold() for one in colours for word in (one.number, one.name) if word)
