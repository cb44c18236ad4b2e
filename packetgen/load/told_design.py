"""The size, the colours and the cloths of a design that an author's texts tell otherwise than its pattern has them."""

import re
from collections.abc import Iterator, Sequence
from itertools import chain

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNTED, counted_number
from packetgen.load.prose_words import any_of, named, sentences
from packetgen.load.words import said, shown
from packetgen.model import BARE, ClothOption, KeyLine, Pattern
from packetgen.nouns import listed

# 'Begin with the lamp: it is 12 stitches wide' tells of the lamp.
_WHOLE = r"\b(?:the\s+(?:whole\s+)?(?:design|chart|pattern|picture|motif)|(?<!:\s)it)\s+(?:is|measures|has|counts)\s+"
_SIZE = re.compile(
    rf"{_WHOLE}(?:\w+\s+){{0,2}}?(?P<across>\d{{1,4}})\s*(?:stitches\s+)?(?:wide\s+)?(?:×|x|by)\s*(?P<down>\d{{1,4}})\s+stitches\b",
    re.IGNORECASE | re.ASCII,
)
_SIDE = re.compile(
    rf"{_WHOLE}(?:\w+\s+){{0,2}}?(?P<number>\d{{1,4}})\s+stitches\s+(?P<side>wide|across|high|tall|deep)\b"
    r"(?:\s+(?:and|by)\s+(?P<then>\d{1,4})\s+(?:stitches\s+)?(?:high|tall|deep|wide|across)\b)?",
    re.IGNORECASE | re.ASCII,
)
# 'Across the whole width of 50 stitches', of whatever it is.
_FULL_SIDE = re.compile(
    r"\b(?:whole|full|entire)\s+(?P<side>width|height)\s+of\s+(?:the\s+(?:design|chart|picture)\s+of\s+|(?:the|all)\s+)?(?P<number>\d{1,4})\s+(?:stitches|columns|rows)\b(?P<then>)",
    re.IGNORECASE | re.ASCII,
)
_COLOURS = re.compile(
    rf"(?P<all>\b(?:all|uses|needs|takes|has|in\s+only|in\s+just)\s+)?{COUNTED}\s+colou?rs\b",
    re.IGNORECASE,
)
_KINDS = re.compile(
    rf"(?P<all>\b(?:all|all\s+the)\s+)?{COUNTED}\s+(?P<kind>(?:french\s+)?knots?|lazy\s+dais(?:y|ies)|beads?)\b",
    re.IGNORECASE,
)
# 'a French knot into each eye, 2 in all'
_EACH_IN_ALL = re.compile(
    rf"\b(?P<kind>(?:french\s+)?knots?|lazy\s+dais(?:y|ies)|beads?)\b[^.;:]{{0,60}}?,\s+{COUNTED}\s+in\s+all\b(?P<all>)",
    re.IGNORECASE,
)
# 'The six nails of the crate are French knots'
_ARE_KINDS = re.compile(
    rf"\b{COUNTED}\s+(?:[a-z-]+\s+){{1,6}}?are\s+(?:all\s+)?(?:(?:worked|made|stitched)\s+as\s+)?(?P<kind>french\s+knots|lazy\s+daisies|beads)\b"
    r"(?P<all>(?!))?",
    re.IGNORECASE,
)
_COUNT = re.compile(r"(?<![\w./-])(?P<count>\d{2})[- ]?(?:count|ct)\b", re.IGNORECASE | re.ASCII)
_OVER = re.compile(r"\bover\s+(?P<over>one|two|1|2)\s+threads?\b", re.IGNORECASE)
_NUMBERS = {"one": 1, "1": 1, "two": 2, "2": 2}
_OTHERWISE = re.compile(
    r"\b(?:no|not|never|instead|if|may|might|could|can|would|other|another|first|once|before|earlier|swatch)\b|n't\b",
    re.IGNORECASE,
)


def complain_of_told_design(pattern: Pattern, path: str, problems: Problems) -> None:
    """Advice on the story and the notes, in the folder `path`."""
    for file, text in pattern.texts.items():
        _look_at_size(text, f"{path}/{file}", pattern.grid.rows, problems)
        _look_at_colours(text, f"{path}/{file}", pattern, problems)
        _look_at_kinds(text, f"{path}/{file}", pattern, problems)
        _look_at_cloths(text, f"{path}/{file}", pattern.cloths, problems)


def _look_at_size(text: str, path: str, rows: Sequence[str], problems: Problems) -> None:
    """Whether 'the design is 60 stitches wide' is so, with the bare edges of the chart or without."""
    columns = ["".join(column) for column in zip(*rows, strict=True)]
    across, down = {len(columns), _inked(columns)}, {len(rows), _inked(rows)}
    if found := _SIZE.search(text):
        wide, high = int(found["across"]), int(found["down"])
        right = (wide in across and high in down) or (wide in down and high in across)
    elif found := _SIDE.search(text) or _FULL_SIDE.search(text):
        is_high = found["side"].casefold() in ("high", "tall", "deep", "height")
        own, other = (down, across) if is_high else (across, down)
        right = int(found["number"]) in own and (not found["then"] or int(found["then"]) in other)
    else:
        return
    if not right:
        facts = {
            "said": said(found[0]),
            "across": len(columns),
            "down": len(rows),
        }
        problems.add(place_in(text, found.start(), path), "size-told-other", **facts)


def _inked(lines: Sequence[str]) -> int:
    """From the first that is not bare to the last."""
    inked = [number for number, line in enumerate(lines) if line.strip(BARE)]
    return inked[-1] - inked[0] + 1 if inked else 0


def _look_at_colours(text: str, path: str, pattern: Pattern, problems: Problems) -> None:
    """Whether more are told than the key has, or fewer where they are all that it has."""
    model = pattern.thread_sets[0].id
    colours = {colour.number for line in pattern.key for colour in line.threads[model]}
    has = {len(colours), len(pattern.key)}
    for found in _COLOURS.finditer(text):
        if text[found.end() :].lstrip()[:1] == ":":
            continue  # of a part: 'it has five colours: straw, bark, …'
        told = counted_number(found["number"])
        if told is not None and (told > max(has) or (found["all"] and 1 < told < min(has))):
            number = found.start("number")
            facts = {"said": said(text[number : found.end()]), "has": len(colours)}
            problems.add(place_in(text, number, path), "colours-told-other", **facts)
            break


def _look_at_kinds(text: str, path: str, pattern: Pattern, problems: Problems) -> None:
    """Whether more knots, lazy daisies or beads are told than there are, or fewer where they are all."""
    there_are = {
        "knot": [one.mark for one in pattern.knots],
        "dais": [one.mark for one in pattern.daisies],
        "bead": [""] * len(pattern.beads),
    }
    called = {line.mark: [*_words_of_line(line)] for line in pattern.key}
    for found in (
        way for form in (_KINDS, _EACH_IN_ALL, _ARE_KINDS) for way in form.finditer(text)
    ):
        told = counted_number(found["number"])
        marks = next(marks for kind, marks in there_are.items() if kind in found["kind"].casefold())
        # 'A French knot in 150 plum on each horn, two in all': of those in plum.
        in_it = {mark: named(called[mark]).findall(found[0]) for mark in marks if mark}
        of_colour = {mark: words[-1] for mark, words in in_it.items() if words}
        has = sum(not of_colour or mark in of_colour for mark in marks)
        if told is not None and has and (told > has or (found["all"] is not None and told < has)):
            number = found.start("number")
            words = listed(tuple(map(said, dict.fromkeys(of_colour.values()))))
            facts = {"said": said(text[number : found.end()])}
            facts["has"] = f"{has} in {words}" if words else str(has)
            problems.add(place_in(text, number, path), "kind-told-number", **facts)
            break


def _words_of_line(line: KeyLine) -> Iterator[str]:
    """The numbers and names of its colours."""
    for colour in chain(*line.threads.values()):
        yield from filter(None, (colour.number, colour.name))


def _look_at_cloths(
    text: str, path: str, cloths: Sequence[ClothOption], problems: Problems
) -> None:
    """Whether a cloth of the pattern is of '16-count', is called 'Wren Linen 16', has such a colour, or is worked
    'over two threads'. What an author did before, or others may do, is let be."""
    counts = {round(option.cloth.count_per_inch) for option in cloths}
    of_stitches = {round(option.cloth.count_per_inch / option.over) for option in cloths}
    overs = {option.over for option in cloths}
    named = _by_name(cloths)
    colours = _not_offered(cloths)
    for start, sentence in sentences(text):
        if _OTHERWISE.search(sentence):
            continue
        count, over = _COUNT.search(sentence), _OVER.search(sentence)
        called = next(filter(None, (form.search(sentence) for form in named)), None)
        other = colours.search(sentence)
        if other:
            colour = (other["colour"] or other["alone"]).casefold()
            option = next(one for one in cloths if colour in map(str.casefold, one.cloth.colours))
            own = dict.fromkeys(one.colour.name for one in cloths if one.cloth is option.cloth)
            facts = {"said": said(other[0]), "cloth": shown(option.cloth.name)}
            facts["own"] = listed(tuple(map(said, own)))
            place = place_in(text, start + other.start(), path)
            problems.add(place, "cloth-told-other", **facts)
            return
        count = called or count
        if count and int(count["count"]) not in counts | of_stitches:
            facts = {"said": said(count[0]), "own": listed(tuple(map(str, sorted(counts))))}
            problems.add(place_in(text, start + count.start(), path), "count-told-none", **facts)
            return
        if over and _NUMBERS[over["over"].casefold()] not in overs:
            facts = {"said": said(over[0]), "own": listed(tuple(map(str, sorted(overs))))}
            problems.add(place_in(text, start + over.start(), path), "over-told-other", **facts)
            return


def _by_name(cloths: Sequence[ClothOption]) -> list[re.Pattern[str]]:
    """Find 'Wren Linen 28', of cloths whose own name ends in a count."""
    names = {
        found[1] for one in cloths if (found := re.fullmatch(r"(.*\D)\s+\d\d", one.cloth.name))
    }
    return [
        re.compile(rf"\b{re.escape(name)}\s+(?P<count>\d\d)(?!\d)", re.IGNORECASE | re.ASCII)
        for name in sorted(names)
    ]


def _not_offered(cloths: Sequence[ClothOption]) -> re.Pattern[str]:
    """Finds 'on the chaff aida' and 'on evening mist', of colours that cloths of the pattern have besides those in which it is
    offered."""
    offered = {one.colour.name.casefold() for one in cloths}
    others = {name.casefold() for one in cloths for name in one.cloth.colours} - offered
    several = any_of(name for name in others if " " in name)
    return re.compile(
        rf"\bon\s+(?:the\s+)?(?:(?P<colour>{any_of(others)})\s+(?:aida|linen|evenweave|cloth|fabric|ground)\b"
        rf"|(?P<alone>{several})(?![\w-]))",
        re.IGNORECASE,
    )
