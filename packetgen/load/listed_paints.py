"""Parts of a finishing piece that its steps list before one paint, or behind it, beside the paints and coats that they have."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT, COUNTED, counted_number
from packetgen.load.part_names import parts_by_name
from packetgen.load.prose_words import any_of, named, sentences
from packetgen.load.words import listed, said
from packetgen.model import Part
from packetgen.nouns import counted

_SPEAKS_OF_PAINT = re.compile(r"\bpaint|\bcoats?\b", re.IGNORECASE)
_THIN = r"(?:(?:thin|light|even|full|good)\s+)?"
# Between the parts and their paint. With no such words, 'the tray rain grey', it is told of nowhere else.
_IN = rf"(?:(?:is|are|gets?|takes?|needs?)\s+)?(?:both\s+|all\s+)?(?:painted\s+)?(?:in\s+|with\s+)?(?:{COUNTED}\s+{_THIN}coats?\s+of\s+)?(?:the\s+)?"
_OTHERS = re.compile(r"\b(?:others?|rest|remaining|parts)\b", re.IGNORECASE)
_BEHIND = rf"(?:,?\s+(?P<behind>{COUNT})\s+{_THIN}coats?\b)?"


# First words of names by which one part differs from another.
_TELLS_OF_ONE = frozenset(
    "left right upper lower top bottom front back inner outer middle side first second third fourth fifth small smaller "
    "smallest large larger largest big little long short high low tall thin thick wide narrow broad old new".split()
)


@dataclass(frozen=True)
class _Told:
    """A word for one part or several, the paint and, where it is said, the coats that it is to get."""

    start: int
    word: str
    paint: str
    coats: int | None
    alone: bool  # of the one part straight before 'in' or 'with' it is told elsewhere
    behind: bool = False  # the paint, as in 'frost white on the knob'


def complain_of_listed_paints(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first of 'the posts, the rail and the slat in old straw' that has not that paint, or not so many coats
    of it. Of a part by its whole name, straight before 'in' or 'with' and the paint, it is told elsewhere."""
    numbers = parts_by_name(parts)
    groups = {word: of for word, of in _by_first_word(parts).items() if word not in numbers}
    spoken_of = numbers | groups
    for told in _told(parts, spoken_of, steps):
        word = told.word.casefold()
        for number in () if told.alone else spoken_of[word]:
            part = parts[number]
            coats = {coat.paint.name.casefold(): coat.coats for coat in part.painted}
            own = list(dict.fromkeys(coat.paint.name for coat in part.painted))
            facts = {"part": said(part.name)}
            if word in groups and told.paint.casefold() not in coats:
                continue  # 'the pocket' has more paints than one
            if own and told.paint.casefold() not in coats:
                as_told = f"{told.word} in {told.paint}"
                if told.behind:
                    as_told = f"{told.paint} on the {told.word}"
                facts |= {"said": said(as_told), "own": listed(own, "and")}
                problems.add(place_in(steps, told.start, path), "step-paint-other", **facts)
                return
            if own and told.coats and told.coats != (has := coats[told.paint.casefold()]):
                told_coats = counted(told.coats, "coat")
                facts |= {"said": said(f"{told.word} {told_coats}"), "own": str(has)}
                problems.add(place_in(steps, told.start, path), "step-part-coats", **facts)
                return


def _by_first_word(parts: Sequence[Part]) -> dict[str, tuple[int, ...]]:
    """The numbers of the parts that are together 'the pocket': the pocket front and the pocket floor."""
    found: dict[str, tuple[int, ...]] = {}
    for number, part in enumerate(parts):
        first, *more = part.name.casefold().split()
        if more and first not in _TELLS_OF_ONE:
            found[first] = (*found.get(first, ()), number)
    return {word: of for word, of in found.items() if len(of) > 1}


def _told(
    parts: Sequence[Part], numbers: dict[str, tuple[int, ...]], steps: str
) -> Iterator[_Told]:
    paints = {coat.paint.name.casefold() for part in parts for coat in part.painted}
    if not paints:
        return
    whole = {part.name.casefold() for part in parts}
    any_coats = {coat.coats for part in parts for coat in part.painted}
    name = rf"(?:both\s+|all\s+)?(?:the\s+)?(?:two\s+|three\s+|four\s+)?(?:{any_of(numbers)})"
    before_paint = re.compile(
        rf"(?<![\w-])(?P<parts>{name}(?:(?:,\s*|,?\s+and\s+){name})*)\s+(?P<in>{_IN})(?P<paint>{any_of(paints)})(?![\w-]){_BEHIND}",
        re.IGNORECASE,
    )
    with_paint = re.compile(
        rf"\bwith\s+(?:{COUNT}\s+{_THIN}coats?\s+of\s+)?(?:the\s+)?(?P<paint>{any_of(paints)})(?![\w-])",
        re.IGNORECASE,
    )
    # 'frost white on the back and one on the knob': of the first part it is told elsewhere.
    behind_paint = re.compile(
        rf"(?<![\w-])(?P<paint>{any_of(paints)})\s+(?:on|onto|over|to)\s+{name}(?![\w-])",
        re.IGNORECASE,
    )
    on_it = re.compile(rf"(?<![\w-])(?:{any_of(paints)})\s+(?:on|onto|over|to)\s+\Z", re.IGNORECASE)
    further = re.compile(
        rf"(?:,\s*|,?\s+and\s+)(?:(?:{COUNTED}\s+(?:{_THIN}coats?\s+)?)?(?:on|onto|over|to)\s+)?(?P<part>{name})(?![\w-])"
        rf"(?!\s+(?:in|with|gets?|takes?|has|is|are|{any_of(paints)})\b|\s+{COUNT}\s)",
        re.IGNORECASE,
    )
    one = named(numbers)
    for start, sentence in sentences(steps):
        if not _SPEAKS_OF_PAINT.search(sentence):
            continue
        for found in behind_paint.finditer(sentence):
            then = further.match(sentence, found.end())
            while then:
                coats = counted_number(then["number"] or "")
                for word in one.finditer(sentence, *then.span("part")):
                    yield _Told(
                        start + word.start(), word[0], found["paint"], coats, False, behind=True
                    )
                then = further.match(sentence, then.end())
        for found in before_paint.finditer(sentence):
            words = list(one.finditer(sentence, *found.span("parts")))
            if on_it.search(sentence, 0, found.start("parts")):
                words = words[-1:]  # 'sage on the back, and the lid in cress'
            coats = counted_number(found["number"] or found["behind"] or "")
            for word in words:
                at, name_said = start + word.start(), word[0]
                told_elsewhere = word is words[-1] and name_said.casefold() in whole and found["in"]
                of_number = coats if coats in any_coats else None  # else of that number it is told
                yield _Told(at, name_said, found["paint"], of_number, bool(told_elsewhere))
                # 'and when that is dry with two coats of bark brown', before another part is named.
                next_parts = (
                    one.search(sentence, found.end()),
                    _OTHERS.search(sentence, found.end()),
                )
                end = min((each.start() for each in next_parts if each), default=len(sentence))
                for more in with_paint.finditer(sentence, found.end(), end):
                    yield _Told(at, name_said, more["paint"], None, False)
