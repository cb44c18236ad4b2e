"""Sizes of parts of a finishing piece that its steps tell otherwise than finish.yaml has them: 'the board, 160 × 180 mm'."""

import re
from collections.abc import Iterator, Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.number_words import COUNT
from packetgen.load.part_names import parts_by_name
from packetgen.load.piece_words import UNIT, WOOD, extent_of, mm_said, near_mm, size_said
from packetgen.load.prose_words import WHERE, any_of, sentences
from packetgen.load.sure import sure
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.units import MM_PER_UNIT

_N = r"(?<![\w.,/])\d{1,4}(?:\.\d{1,2})?"
_CORNERS = 4  # of a rectangle
_BY = r"\s*(?:×|x|by)\s*"
_SIDE = r"(?:wide|high|long|deep|thick|tall|broad|across)"
_BEFORE = re.compile(rf"{_N}{_BY}{_N}\s?{UNIT}(?=\s\Z)", re.IGNORECASE)
# What may stand between a part and its measures, and between these.
_RUN = re.compile(
    rf"(?:[\s,(:–-]|\d+(?:\.\d+)?|×|(?:x|by|mm|cm|in|is|are|both|to|of|at|from|out|and|each|which|itself|themselves|measures?|cut|sawn|{_SIDE}|{WOOD})\b)*",
    re.IGNORECASE,
)
_ENDS = rf"(?=\s*(?:[,.;:)]|\Z|(?:and|is|from|out|in|of|{_SIDE})\b))"
_SIDES = re.compile(
    rf"{_N}\s?(?:{UNIT})?{_BY}{_N}(?:\s?(?:{UNIT})?{_BY}{_N})?\s?{UNIT}{_ENDS}"
    rf"|{_N}[\s-]?{UNIT}\s+{_SIDE}\b"
    rf"|{WOOD}\s+of\s+{_N}\s?{UNIT}{_ENDS}"
    rf"|{_N}[\s-]?{UNIT}\s+(?:{WOOD}\s+)?{WOOD}\b",
    re.IGNORECASE,
)
_TO = re.compile(
    rf"\b(?:to|from|out\s+of)\s+{_N}\s?{UNIT}(?=\s*(?:[,.;:)]|\Z|and\b))", re.IGNORECASE
)
# 'The lower one 30 mm', and 'the board 9 mm thick, the rails 12 mm'.
_ALONE = re.compile(rf"(?<=\s){_N}\s?{UNIT}(?=\s*(?:[,.;:)]|\Z|and\b))", re.IGNORECASE)
_OF_SIDE = re.compile(rf"{_N}\s?{UNIT}\s+{_SIDE}\b", re.IGNORECASE)
# 'From board 9 mm and 6 mm thick', of several parts.
_ONE_OF_TWO = re.compile(rf"{_N}\s?{UNIT}\s+(?:and|or)\s+\Z", re.IGNORECASE)
_SAWN = re.compile(r"\b(?:saw|cut)\b", re.IGNORECASE)
_SO_IS = re.compile(r",?\s+(?:and\s+so|as)\s+(?:is|are)\s+(?:the\s+)?", re.IGNORECASE)
# 'Lay the gutter along the top, 236 mm wide'.
_FURTHER = re.compile(
    rf"\s+(?:along|across|over|on|to|at)\s+(?:the\s+)?(?:upper|lower|left|right)?\s*(?:top|bottom|foot|head|edge|side|front|back|middle)(?=,\s+{_N}\s?{UNIT}\s+{_SIDE}\b)",
    re.IGNORECASE,
)
# 'The rail and the sill are 228 mm long'.
_ALIKE, _ARE = re.compile(r"\s+and\s+(?:the\s+)?"), re.compile(r"\s+are\b")
# 'Glue the two stiles on. They are 26 mm wide.'
_THEY = re.compile(
    rf"\s*(?:(?:They|Both|Each)(?:\s+are\s+all)?|(?P<all>All(?:\s+{COUNT})?(?:\s+(?:parts|of\s+them))?)|(?P<it>It))\b"
)
_ALL_OF = re.compile(r"\b(?:both|all)\s+(?:of\s+)?(?:the\s+)?\Z", re.IGNORECASE)
_EACH = re.compile(r"\s+each\b")
_EACH_BEFORE = re.compile(r",?\s+(?:both|each)\s+\Z")
_ON_IT = re.compile(rf"\b{WHERE}\s+(?:the\s+(?:[a-z]+\s+of\s+the\s+)?)?\Z", re.IGNORECASE)
# Sizes of something in a part, and of one that is not yet what it will be.
_ELSE = re.compile(
    r"\b(?:holes?|drill|grooves?|slots?|rebates?|notch(?:es)?|recess(?:es)?|windows?|openings?|chamfers?|bevels?|rough\w*|about|roughly|larger)\b",
    re.IGNORECASE,
)


def complain_of_told_sizes(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first size of each part that is none of its sides, whichever of them is called wide."""
    numbers = {**parts_by_name(parts), **_called_besides(parts)}
    # 'From board 6 mm thick' is no part.
    name = re.compile(rf"(?<![\w-])(?<!from )(?<!of )(?:{any_of(numbers)})(?![\w-])", re.IGNORECASE)
    told_at = {problem.place for problem in problems}
    told = set[tuple[int, ...]]()
    several: tuple[int, ...] = ()  # whom the sentence before names
    alone: tuple[int, ...] = ()  # or the one whom it names
    every: tuple[int, ...] = ()  # or all whom it names, where it saws
    for start, sentence in sentences(steps):
        if _ELSE.search(sentence):
            continue
        in_turn = [(part, numbers[part[0].casefold()]) for part in name.finditer(sentence)]
        whole = every
        if they := _THEY.match(sentence):
            meant = alone if they["it"] else every if they["all"] else several or every
            in_turn[:0] = [(they, meant)] * bool(meant)
        of_all = {one for _, of in in_turn for one in of}
        every = tuple(sorted(of_all)) if _SAWN.search(sentence) else ()
        several = next((of for _, of in in_turn if len(of) > 1), ())
        alone = in_turn[0][1] if len({of for _, of in in_turn}) == 1 and not several else ()
        before: tuple[int, ...] = ()  # of 'the rail and the sill are', at the sill
        for number, (part, of) in enumerate(in_turn):
            with_it = in_turn[number + 1][0] if number + 1 < len(in_turn) else part
            are = bool(_ALIKE.fullmatch(sentence[part.end() : with_it.start()]))
            are = are and bool(_ARE.match(sentence, with_it.end()))
            beside = in_turn[number + 1][1] if are else before
            before = of if are else ()
            all_of = _ALL_OF.search(sentence, 0, part.start())
            for found in (
                *_straight_before(sentence, part.start()),
                *_behind(sentence, with_it.end() if are else part.end()),
            ):
                other = numbers.get(_so_is(sentence, found.end(), name), ())
                # '196 mm wide each', of all that are named before.
                each = _EACH.match(sentence, found.end())
                so_far = [one for word, one in in_turn if word.start() < found.start()]
                # 'Glue the foot on the front of the back, 180 mm wide': the foot.
                put_on = _ON_IT.search(sentence, 0, part.start())
                if put_on and any(_has(parts[one], found[0]) for own in so_far for one in own):
                    continue
                each_of = so_far if each else _each_of(in_turn, found, sentence)
                for these in dict.fromkeys((of, other, *each_of)):
                    having = [_has(parts[one], found[0]) for one in these]
                    # Of 'the rails' one may be meant, and of 'all three' none is left out.
                    every_one = these == whole or (these == of and all_of)
                    so = all(having) if every_one else any(having)
                    if these and these not in told and not so:
                        odd = these[having.index(False)]
                        both = dict.fromkeys((odd, *beside))
                        own = ", ".join(_own(parts[one]) for one in both)
                        facts = {"said": said(found[0]), "own": own}
                        place = place_in(steps, start + found.start(), path)
                        told |= {these, beside}
                        if place not in told_at:
                            problems.add(place, "step-measure-other", **facts)


def _each_of(
    in_turn: Sequence[tuple[re.Match[str], tuple[int, ...]]], found: re.Match[str], sentence: str
) -> list[tuple[int, ...]]:
    """The parts of 'the rail and the sill, each 184 mm long'; none where 'each' does not stand there."""
    each_of: list[tuple[int, ...]] = []
    each = _EACH_BEFORE.search(sentence, 0, found.start())
    behind = each.start() if each else -1
    for word, these in reversed(in_turn):
        between = sentence[word.end() : behind]
        if word.end() == behind or (each_of and _ALIKE.fullmatch(between)):
            each_of.append(these)
            behind = word.start()
    return each_of


def _called_besides(parts: Sequence[Part]) -> dict[str, tuple[int, ...]]:
    """'The lower one' of a lower rail, which no other part's name begins like; 'each post' of several posts."""
    names = [part.name.casefold() for part in parts]
    first, last = ([name.split()[end] for name in names] for end in (0, -1))
    called: dict[str, tuple[int, ...]] = {
        f"{word} one": (number,)
        for number, word in enumerate(first)
        if first.count(word) == 1 and word != names[number]
    }
    for word in set(last):
        if last.count(word) > 1:
            called[f"each {word}"] = tuple(at for at, one in enumerate(last) if one == word)
    return called


def _so_is(sentence: str, at: int, name: re.Pattern[str]) -> str:
    """The other part of '220 mm wide, and so is the shelf', by its name; '' where none is told so."""
    so = _SO_IS.match(sentence, at)
    other = name.match(sentence, so.end()) if so else None
    return other[0].casefold() if other else ""


def _behind(sentence: str, at: int) -> Iterator[re.Match[str]]:
    """'The board, 160 × 180 mm, from wood of 9 mm', and of what is sawn 'to 160 mm'; 'the top one 18 mm high, the lower one 30 mm'."""
    end = sure(_RUN.match(sentence, at)).end()
    if further := _FURTHER.match(sentence, at):
        end, at = sure(_RUN.match(sentence, further.end())).end(), further.end()
    bare = sentence.endswith(" one", 0, at) or _OF_SIDE.search(sentence, 0, at)
    if bare and (found := _ALONE.match(sentence, at + 1)):
        yield found
    for way in (_SIDES, _TO) if _SAWN.search(sentence) else (_SIDES,):
        for found in way.finditer(sentence, at):
            if found.end() <= end and not _ONE_OF_TWO.search(sentence, at, found.start()):
                yield found


def _straight_before(sentence: str, at: int) -> Iterator[re.Match[str]]:
    """'The 160 × 180 mm board'."""
    if found := _BEFORE.search(sentence, 0, at):
        yield found


def _has(part: Part, size: str) -> bool:
    """Whether each length of the size is another side of the part."""
    unit = re.findall(UNIT, size, re.IGNORECASE)[-1].casefold()
    sides_mm = [*extent_of(part.outline), part.thickness_mm]
    for number in re.findall(_N, size):
        long_mm = float(number) * MM_PER_UNIT[unit]
        nearest = min(sides_mm, key=lambda one: abs(one - long_mm), default=-1.0)
        if abs(nearest - long_mm) > near_mm(unit):
            return False
        sides_mm.remove(nearest)
    return True


def _own(part: Part) -> str:
    wide_mm, high_mm = extent_of(part.outline)
    if part.thickness_mm > min(wide_mm, high_mm) and len(part.outline) == _CORNERS:
        # As one saws it: a board that is seen from its edge.
        deep_mm, thick_mm = part.thickness_mm, min(wide_mm, high_mm)
        sides_mm = (wide_mm, deep_mm) if high_mm <= wide_mm else (deep_mm, high_mm)
        return f"{said(part.name)} is a board of {size_said(sides_mm)}, {mm_said(thick_mm)} thick"
    thick = f" and {mm_said(part.thickness_mm)} thick"
    return f"{said(part.name)} is {size_said((wide_mm, high_mm))}{thick}"
