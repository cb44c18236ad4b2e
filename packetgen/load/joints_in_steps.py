"""Which parts of a finishing piece its steps join, and how they tell where."""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import product

from packetgen.load.part_names import parts_by_name, parts_by_name_or_each
from packetgen.load.prose_words import WHERE, any_of, named, sentences
from packetgen.model import Part

_JOINED = re.compile(
    r"\b(?:glue|screw|nail|peg|dowel|fix|fasten|attach|mount|(?P<laid>put|set|stick|fit|lay))\s+(?P<what>[^.;:]*?)\b"
    r"(?P<onto>(?:upright\s+)?(?:on|onto|across|along|to|into|in|below|under|above|over|behind|against|at)\b[^.,;:]{0,80})",
    re.IGNORECASE,
)
# What is put somewhere and is no part, and so tells nothing of the parts that it goes through.
_NO_PART = re.compile(
    r"\b(?:screw|nail|pin|peg|dowel|magnet|washer|card|wadding|hook|eye)s?\b", re.IGNORECASE
)
_HUNG = re.compile(r"\b(?:cord|string|twine|wire|chain|hinge|hang|hung)\w*\b", re.IGNORECASE)
_CORNER = re.compile(
    r"\bin\s+(?:its|the)\s+(upper|lower|top|bottom)\s+(left|right)\s+corner\b", re.IGNORECASE
)
# An edge → the number of the direction, 0 across and 1 down, and whether what stands at it is further on.
EDGES = {
    "upper": (1, False),
    "top": (1, False),
    "lower": (1, True),
    "bottom": (1, True),
    "left": (0, False),
    "right": (0, True),
}
# 'Glue the sill between the posts, against the lower edge of the board'.
_BETWEEN = re.compile(r"\s+between\s+[^,]*,\s*\Z", re.IGNORECASE)
_GLUED = re.compile(r"\b(?:glue|screw|nail|peg|dowel|fix|fasten|attach|mount)\b", re.IGNORECASE)
BETWEEN = "between the sides of"  # two parts, and so over neither
IN_THE_MIDDLE = "in the middle of it"  # from left to right, mostly
# 'Glue the spout to the left and the handle to the right'.
_ASIDE = re.compile(
    rf"(?:to|at|on|across|along)\s+the\s+(?:{'|'.join(EDGES)}|foot|head)(?:\s+(?:side|edge))?,?\s+and\s+(?:the\s+)?",
    re.IGNORECASE,
)
_IT = re.compile(rf"(?:upright\s+)?{WHERE}\s+it\b", re.IGNORECASE)
_AT_ITS_EDGE = re.compile(
    rf",?\s+(?:at|along|on)\s+(?:its|the)\s+(?P<edge>{'|'.join(EDGES)})\s+(?:edge|end|side)\b(?!\s+of)",
    re.IGNORECASE,
)
_IN_MIDDLE = re.compile(
    r",?\s+(?:right\s+)?in\s+(?:the|its)\s+(?:middle|centre|center)\b(?!\s+of(?!\s+(?:the|its)\s+(?:upper|lower|top|bottom)\s+(?:edge|end)\b))",
    re.IGNORECASE,
)


@dataclass(frozen=True)
class Joint:
    """The numbers of two parts of which a step joins the one to the other, where it says so, and the words behind."""

    part: int
    other: int
    start: int
    onto: str


def joints_in(parts: Sequence[Part], steps: str) -> Iterator[Joint]:
    """Each pair that is joined, once for each way in which a sentence tells where."""
    numbers, or_each = parts_by_name(parts), parts_by_name_or_each(parts)
    names, names_or_each = named(numbers), named(or_each)
    name = rf"(?:the\s+)?(?P<part>{any_of(numbers)})"
    through = re.compile(
        rf"\bthrough\s+{name}\s+(?P<onto>into\s+(?:the\s+(?:(?:{'|'.join(EDGES)})\s+edge\s+of\s+(?:the\s+)?)?)?(?P<other>{any_of(numbers)}))(?![\w-])",
        re.IGNORECASE,
    )
    further = re.compile(
        rf"\band\s+(?:{name}|both(?:\s+of\s+them)?|the\s+two(?:\s+of\s+them)?)\s+"
        rf"(?P<onto>(?:upright\s+)?{WHERE}\s+[^.,;:]{{0,30}}?(?<![\w-])(?P<other>{any_of(numbers)}))(?![\w-])",
        re.IGNORECASE,
    )
    at_edge = re.compile(
        rf"\band\s+{name}\s+(?:on|to|at|along)\s+(?P<onto>(?:the|its)\s+(?:{'|'.join(EDGES)})\s+edge)\b(?!\s+of\b)",
        re.IGNORECASE,
    )
    between = re.compile(
        rf"(?<![\w-]){name}\s+(?P<onto>between)\s+(?:the\s+|both\s+)?(?:two\s+)?(?P<other>{any_of(numbers)})(?![\w-])",
        re.IGNORECASE,
    )
    butted = re.compile(
        r",\s+(?:and\s+)?(?:(?:butt(?:ed|ing)|pressed|pushed|hard|tight|standing|resting)\s+(?:up\s+)?(?:against|to|on)|touching)\s+"
        rf"(?P<onto>[^.,;:]{{0,30}}?(?<![\w-])(?P<other>{any_of(numbers)}))(?![\w-])",
        re.IGNORECASE,
    )
    for start, sentence in sentences(steps):
        if _HUNG.search(sentence):
            continue
        for found in between.finditer(sentence) if _GLUED.search(sentence) else ():
            sides = numbers[found["other"].casefold()]
            for one, number in _pairs(numbers[found["part"].casefold()], sides):
                if len(sides) == 2 and one not in sides:
                    yield Joint(one, number, start + found.start("part"), BETWEEN)
        for found in through.finditer(sentence):
            part_number, other_number = (
                numbers[found[one].casefold()] for one in ("part", "other")
            )
            for one, number in _pairs(part_number, other_number):
                yield Joint(one, number, start + found.start("part"), found["onto"])
        for found in _JOINED.finditer(sentence):
            other = names.search(found["onto"]) or _IT.match(found["onto"])
            what = _BETWEEN.sub("", found["what"])
            if other is None or re.search(
                r"\b(?:between|put|drive|so that)\b|\d\s?(?:mm|cm)\s*\Z", what
            ):
                continue
            if found["laid"] and _NO_PART.search(what):
                continue
            if _ASIDE.fullmatch(found["onto"], 0, other.start()):
                continue
            # The 'peg' of 'the peg rail'.
            if any(one.start() <= found.start() < one.end() for one in names.finditer(sentence)):
                continue
            others = numbers.get(other[0].casefold())
            if others is None:  # 'behind it': the one part that was named before
                named_before = names.finditer(sentence, 0, found.start())
                before = {numbers[one[0].casefold()] for one in named_before}
                others = before.pop() if len(before) == 1 else ()
                others = others if len(others) == 1 else ()
            beside = re.compile(
                rf"\s+and\s+{name}(?![\w-]|\s+{WHERE}\b)",
                re.IGNORECASE,
            )
            if also := beside.match(found["onto"], other.end()):
                others += numbers[also["part"].casefold()]
            rest = found.start("onto") + other.end()
            edges = _further_places(sentence, rest)
            for part in names_or_each.finditer(what):
                at = start + found.start("what") + part.start()
                joined = _pairs(or_each[part[0].casefold()], others)
                for (one, number), onto in product(joined, (found["onto"][: other.end()], *edges)):
                    yield Joint(one, number, at, onto)
            # 'Across the board, butted against the ends of the posts'.
            for end in butted.finditer(sentence, rest):
                at = start + end.start("onto")
                for part in names_or_each.finditer(what):
                    for one, number in _pairs(
                        or_each[part[0].casefold()], numbers[end["other"].casefold()]
                    ):
                        yield Joint(one, number, at, f"against {end['onto']}")
            # 'and the roof on the board', 'and both of them on the board'
            for then in further.finditer(sentence, rest):
                called = [one[0] for one in names.finditer(sentence, 0, then.start())]
                at = start + then.start("onto")
                for part_said in [then["part"]] if then["part"] else called[-2:]:
                    some = numbers[part_said.casefold()]
                    pairs = _pairs(some, numbers[then["other"].casefold()])
                    onto_all = (then["onto"], *_further_places(sentence, then.end()))
                    for (one, number), onto in product(pairs, onto_all):
                        yield Joint(one, number, at, onto)
            # 'and the foot on the lower edge', of the same part.
            if more := at_edge.search(sentence, rest):
                at = start + more.start("part")
                for one, number in _pairs(numbers[more["part"].casefold()], others):
                    yield Joint(one, number, at, f"{more['onto']} of")


def _further_places(sentence: str, at: int) -> list[str]:
    """What stands behind a part about where on it, as if it stood before: 'in its upper left corner', 'at its right edge', 'in
    the middle'."""
    corner, edge = _CORNER.search(sentence, at), _AT_ITS_EDGE.match(sentence, at)
    edges = corner.groups() if corner else (edge["edge"],) if edge else ()
    middle = _IN_MIDDLE.match(sentence, at)
    return [*(f"the {one} edge of" for one in edges), *[IN_THE_MIDDLE] * bool(middle)]


def _pairs(some: tuple[int, ...], others: tuple[int, ...]) -> Iterator[tuple[int, int]]:
    """Each with each; of 'the rims on the pots' nobody can tell which goes on which."""
    return product(some, others) if 1 in (len(some), len(others)) else iter(())
