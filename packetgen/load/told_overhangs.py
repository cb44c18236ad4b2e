"""How far parts of a finishing piece stand out beyond one another, where its steps tell it otherwise."""

import re
from collections.abc import Iterator, Mapping, Sequence, Set
from itertools import combinations, product

from packetgen.diagnostics import Problems, place_in
from packetgen.load.overhang_ways import (
    ACROSS,
    APART,
    BELOW_TOP,
    EXACT,
    FLUSH,
    LAPS,
    LEVEL,
    NEAR,
    OVER,
    TOLD,
    lengths_in,
)
from packetgen.load.part_edges import (
    apart_mm,
    edges_mm,
    edges_so_far,
    gaps_mm,
    laps_mm,
    over_both_ends,
)
from packetgen.load.part_names import parts_by_name_or_each
from packetgen.load.piece_words import gap_said
from packetgen.load.placed_parts import ROUNDED_MM, TOUCHES_MM, edges_where_they_meet, placed_part
from packetgen.load.prose_words import WHERE, named, sentences
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.units import MM_PER_UNIT

_BOTH = re.compile(
    r"\b(?:either|both|each)\s+(?:sides?|ends?)\b|\b(?:each|both)\s+(?=\d)|\bleft\s+and\s+(?:(?:on|at)\s+the\s+)?right\b(?!\s+edges)",
    re.I,
)
_ASIDE = re.compile(
    r"\s+(?:at|on|to|over)\s+(?:its|the|their|each|either|one)\s+(?:side|end|edge|left|right)",
    re.I,
)
# ', and the trough across its foot in the same way'.
_CLAUSE = re.compile(r"[^,;]{0,25}[,;]\s+(?:and|but|while)\s+(?:the\s+)?", re.I)
_LIKEWISE = re.compile(r"\b(?:same\s+way|likewise|just\s+so)\b", re.I)
_AND = re.compile(r"\s+and\s+(?:the\s+)?", re.I)
_PUT_ON = re.compile(rf"\b{WHERE}\s+(?:the\s+)?\Z", re.I)
_OVER_SIDE = re.compile(
    r"\b(?:over|beyond|past|from)\s+(?:its|the|their|each|either)\s+sides?\b", re.I
)
_IT = re.compile(r"\b(?:above|below)\s+it\Z", re.I)
_IT_STANDS = re.compile(r"\s*(?P<it>It)\b")
_WHICH = re.compile(r"\b(?:both|they|the\s+two)\s+\Z", re.I)
_THEY = re.compile(r"\s*(?P<they>each|they|both)\b", re.I)
# 'from the right edge' and 'from the upper edge', told of one edge.
_FROM_EDGE = re.compile(
    r"\bfrom\s+(?:its|the|their)\s+(?:(?P<side>left|right)(?:-hand)?|upper|lower|top|bottom)\s+(?:edge|end|side)\Z",
    re.I,
)
_UPRIGHT = re.compile(r"\b(?:above|below)\b", re.I)
# Numbers of edges.
_SIDES, _LEVEL_EDGES = frozenset({0, 2}), frozenset({1, 3})
_ALL_EDGES = _SIDES | _LEVEL_EDGES
_NOWHERE = "no edges of the parts that it names lie so far apart"


def complain_of_told_overhangs(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on each '6 mm' by which a step says that parts stand out, where by finish.yaml no two of those that it
    names do, or not on both sides; of how far one stands out to the front its thickness tells."""
    numbers = parts_by_name_or_each(parts)
    names = named(numbers)
    so_far: list[tuple[int, ...]] = []  # what the last sentence named, and first what it worked on
    for start, sentence in sentences(steps):
        of_names = list(names.finditer(sentence))
        in_turn = _in_turn(of_names, numbers)
        if so_far and not in_turn and (they := _THEY.match(sentence)):
            in_turn = [(they.start("they"), so_far[0])]
        elif so_far and not in_turn and (its := _IT_STANDS.match(sentence)):
            in_turn = [(its.start("it"), each) for each in reversed(so_far)]
        for found in lengths_in(sentence):
            # '30 mm below it': below the board on which the last sentence put it.
            of_it = [(found.end(), each) for each in so_far[-1:] if _IT.search(found[0])]
            two = _two_of(found, of_names, in_turn)
            for told in [two] if two else _in_clauses(found, [*in_turn, *of_it]):
                if how := _how(parts, told, found, sentence):
                    facts = {"said": said(found[0]), "how": how}
                    place = place_in(steps, start + found.start(), path)
                    problems.add(place, "step-overhang-other", **facts)
                    break
        so_far = [each for _, each in in_turn]


def _in_turn(
    found: Sequence[re.Match[str]], numbers: Mapping[str, tuple[int, ...]]
) -> list[tuple[int, tuple[int, ...]]]:
    """Where parts are named, and which: 'the upper hoop and the lower hoop' that are put on something are named as one."""
    in_turn = list[tuple[int, tuple[int, ...]]]()
    for before, one in zip((None, *found), found):
        own = numbers[one[0].casefold()]
        sentence = one.string
        if (
            before
            and _AND.fullmatch(sentence, before.end(), one.start())
            and not _PUT_ON.search(sentence, 0, before.start())
            and not set(own) & set(in_turn[-1][1])
        ):
            at, earlier = in_turn.pop()
            in_turn.append((at, (*earlier, *own)))
        else:
            in_turn.append((one.start(), own))
    return in_turn


def _two_of(
    found: re.Match[str],
    of_names: Sequence[re.Match[str]],
    in_turn: Sequence[tuple[int, tuple[int, ...]]],
) -> list[tuple[int, tuple[int, ...]]]:
    """Those two of 'the rim stands over the board by 19 mm', whatever else the sentence names; none where it has not both."""
    so_far = [one for one in of_names if one.end() <= found.start()]
    before = [one for one in so_far if not found.string[one.end() : found.start()].strip()]
    within = [one.start() for one in of_names if found.start() <= one.start() < found.end()]
    if not before or len(within) != 1:
        return []
    stands = [one for one in in_turn if one[0] <= before[0].start()][-1]
    return [stands, *(one for one in in_turn if one[0] == within[0])]


def _in_clauses(
    found: re.Match[str], in_turn: Sequence[tuple[int, tuple[int, ...]]]
) -> list[Sequence[tuple[int, tuple[int, ...]]]]:
    """Those of 'the ridge on the board, 8 mm over at both ends, and the foot below it': ridge and board; and where it goes on 'in
    the same way', those of its other clause with what the first was put on; else all together."""
    before = [one for one in in_turn if one[0] < found.start()]
    behind = [one for one in in_turn if one[0] > found.end()]
    if found.re not in (*TOLD, OVER) or len(before) < 2 or not behind:
        return [in_turn]
    goes_on = found.string[found.end() : behind[0][0]]
    if not _CLAUSE.fullmatch(goes_on):
        return [in_turn]
    likewise = _LIKEWISE.search(found.string, found.end())
    return [before, [*before[1:], *behind]] if likewise else [before]


def _how(
    parts: Sequence[Part],
    in_turn: Sequence[tuple[int, tuple[int, ...]]],
    found: re.Match[str],
    sentence: str,
) -> str:
    """How the parts lie that are named `in_turn`, where not as it is told; else ''."""
    groups = list(dict.fromkeys(each for _, each in in_turn))
    told = sorted({number for each in groups for number in each})
    numbers = list(_between(groups))
    if (
        len(groups) == 1 and found.re is not OVER and (len(told) > 1 or found.re in TOLD)
    ):  # beyond any other too
        numbers += product(told, (number for number in range(len(parts)) if number not in told))
        told = list(range(len(parts)))
    # 'The rim across the top and the band across the foot': of what both lie on.
    if found.re in TOLD and len(groups) > 1 and not any(_meet(parts, *two) for two in numbers):
        numbers += product(told, (number for number in range(len(parts)) if number not in told))
        told = list(range(len(parts)))
    these = [parts[number] for number in told]
    if len(these) < 2 or any(part.pieces > 1 for part in these):
        return ""
    if found.re in (FLUSH, LEVEL):
        edges = next(filter(None, found.groups()))
        # 'Its sides' are those of what was named before.
        own = re.search(r"\bwith\s+(?:its|their)\b", found[0], re.I)
        named_so_far = [one for one in in_turn if not own or one[0] < found.start()]
        flush = _flush(parts, _with(named_so_far, found.start()), edges.casefold())
        return "" if flush else "such edges of the parts that it names are not on one line"
    meeting = [two for two in numbers if found.re in TOLD and _meet(parts, *two)]
    numbers = meeting or numbers
    pairs = [(parts[one], parts[other]) for one, other in numbers]
    if found.re is OVER:
        return (
            ""
            if any(over_both_ends(*two) for two in pairs)
            else "none of the parts that it names does"
        )
    if found.re is APART:
        before = [each for at, each in in_turn if at < found.start()][-1:]
        several = next((each for each in before if len(each) > 1), tuple(told))
        gaps = [gaps_mm(parts[one], parts[other]) for one, other in combinations(several, 2)]
        return _unless_among([gap for each in gaps for gap in each], _told_mm(found))
    if found.re in LAPS:
        laps = [lap for two in pairs for lap in laps_mm(*two)]
        return _unless_among(laps, _told_mm(found))
    if found.re in (EXACT, BELOW_TOP):
        those = [parts[number] for number in _meant(in_turn, found)]
        return _unless_among(list(_exact_mm(pairs, those, found)), _told_mm(found))
    so_far = [each for at, each in in_turn if at < found.start()]
    sets = [each for each in so_far if len(each) > 1]
    # 'Glue the back behind the lid and the sill, so that both stand over': which are not the back.
    boxes = all(_is_box(parts[number]) for number in (so_far or [()])[-1])
    told_of_all = (found.re in TOLD and boxes) or _WHICH.search(sentence, 0, found.start())
    they = sets and told_of_all
    last = (sets if they else so_far or [()])[-1]
    of_each = {
        parts[one].name: [(parts[a], parts[b]) for a, b in numbers if one in (a, b)] for one in last
    }
    return _otherwise(these, pairs, of_each, found, sentence)


def _meet(parts: Sequence[Part], one: int, other: int) -> bool:
    """Whether the two lie on one another, or edge to edge."""
    return placed_part(parts[one]).distance(placed_part(parts[other])) <= TOUCHES_MM


def _is_box(part: Part) -> bool:
    """Whether its edges are straight, level and upright, so that what lies across it stands over everywhere alike."""
    placed = placed_part(part)
    return bool(placed.equals(placed.envelope))


def _between(groups: Sequence[tuple[int, ...]]) -> Iterator[tuple[int, int]]:
    """Each part with each of another name: not 'the posts' with one another, where something else is named."""
    if len(groups) == 1:
        yield from combinations(groups[0], 2)
    for some, others in combinations(groups, 2):
        yield from ((one, other) for one, other in product(some, others) if one != other)


def _meant(in_turn: Sequence[tuple[int, tuple[int, ...]]], found: re.Match[str]) -> tuple[int, ...]:
    """The parts of 'their upper ends', the last of which several were named before, or the one of 'its'; else none."""
    whose = re.search(r"\b(?:its|(?P<several>their))\b", found[0])
    before = [each for at, each in in_turn if at < found.start()] if whose else []
    alike = [each for each in before if whose and (len(each) > 1) == bool(whose["several"])]
    return alike[-1] if alike else ()


def _exact_mm(
    pairs: Sequence[tuple[Part, Part]], those: Sequence[Part], found: re.Match[str]
) -> Iterator[float]:
    """How far such an edge of one of two parts lies above, or below, such an edge of the other, which is one of `those`, if
    any."""
    edge = _level_edge(found["edge"])
    owns = (_level_edge(found["own"]),) if found.re is EXACT else (1, 3)
    way = -1 if found["way"].casefold() == "above" else 1
    for two in pairs:
        for one, other in (two, two[::-1]):
            if those and other not in those:
                continue
            for own in owns:
                yield way * (placed_part(one).bounds[own] - placed_part(other).bounds[edge])


def _unless_among(lengths_mm: Sequence[float], told_mm: float) -> str:
    """'' where the length is one of these; else that it is none, and the nearest."""
    nearest = min(lengths_mm, key=lambda one: abs(one - told_mm), default=0.0)
    if abs(nearest - told_mm) <= ROUNDED_MM:
        return ""
    if any(abs(one + told_mm) <= ROUNDED_MM for one in lengths_mm):
        return "edges of the parts that it names lie so far apart, but the other way"
    return _NOWHERE + f": {gap_said(nearest)} comes nearest" * (nearest > ROUNDED_MM)


def _level_edge(words: str) -> int:
    """The number of the upper edge, 1, or of the lower."""
    return 1 if words[:3].casefold() in ("top", "upp") else 3


def _told_mm(found: re.Match[str]) -> float:
    return float(found["long"]) * MM_PER_UNIT[found["unit"].casefold()]


def _otherwise(
    parts: Sequence[Part],
    pairs: Sequence[tuple[Part, Part]],
    of_each: Mapping[str, Sequence[tuple[Part, Part]]],
    found: re.Match[str],
    sentence: str,
) -> str:
    """How the edges of the parts lie, where not as it is told, on one side or, where the sentence says so, on both; else ''.
    `of_each` are the pairs of each part that was named last, by its name: of several what is so of one at both ends is so of
    all."""
    beside = sentence[max(0, found.start() - NEAR) : found.end() + 2 * NEAR]
    both = bool(_BOTH.search(beside))
    at_side = bool(_OVER_SIDE.search(found[0]))
    upright = found.re in ACROSS and bool(_UPRIGHT.search(found[0]))
    if from_edge := _FROM_EDGE.search(found[0]):
        upright, at_side = not from_edge["side"], bool(from_edge["side"])
    aside = at_side or upright or bool(_ASIDE.match(sentence, found.end()))
    told_mm = _told_mm(found)
    of_edges = _SIDES if at_side else _LEVEL_EDGES if upright else _ALL_EDGES
    so = {
        name: _stand_out(parts, two, told_mm, both, aside, of_edges)
        for name, two in of_each.items()
    }
    these = "those parts meet, their"
    if both and any(so.values()) and not all(so.values()):
        other = next(name for name, right in so.items() if not right)
        pairs = of_each[other]
        these = f"{said(other)} meets others, its"
    elif _stand_out(parts, pairs, told_mm, both, aside, of_edges):
        return ""
    if found.re in ACROSS:
        ways = (1,) if upright else (0,) if at_side else (0, 1)
        return _unless_among([one for two in pairs for one in apart_mm(*two, ways)], told_mm)
    if both:
        left, right = (gap_said(_nearest_mm(pairs, edge, told_mm)) for edge in (0, 2))
        apart = (
            f"{left} apart at both ends"
            if left == right
            else f"{left} apart at the left and {right} at the right"
        )
        return f"where {these} edges are {apart}"
    edges = slice(0, None, 2 if at_side else 1)
    by_mm = [abs(by) for two in pairs for by in tuple(edges_mm(*two))[edges]]
    return _unless_among(by_mm, told_mm)


def _nearest_mm(pairs: Sequence[tuple[Part, Part]], edge: int, told_mm: float) -> float:
    """How far apart such edges of two parts are, of the pair where that is most like it is told."""
    apart_mm = (next(edges_where_they_meet(*two))[edge] for two in pairs)
    return min(apart_mm, key=lambda one: abs(one - told_mm))


def _with(in_turn: Sequence[tuple[int, tuple[int, ...]]], start: int) -> tuple[set[int], set[int]]:
    """The parts that are flush, and those with which they are: the first that is named behind the word, or the last before
    it."""
    before = [each for at, each in in_turn if at < start]
    behind = [each for at, each in in_turn if at > start] or before[-1:]
    with_these = set(behind[0]) if behind else set()
    return {number for each in before for number in each} - with_these, with_these


def _flush(parts: Sequence[Part], of: tuple[set[int], set[int]], edges: str) -> bool:
    """Whether the left and the right edges of two parts, or their upper or lower ones, are on one line."""
    wanted = {0, 2} if edges == "sides" else set[int]()
    wanted |= {1} if re.search("upper|top|head", edges) else set()
    wanted |= {3} if re.search("lower|bottom|foot", edges) else set()
    found = {
        edge
        for one, other in product(*of)
        for edge, by_mm in enumerate(edges_mm(parts[one], parts[other]))
        if abs(by_mm) <= ROUNDED_MM
    }
    if not wanted:  # the ends, of whichever direction
        return {0, 2} <= found or {1, 3} <= found or not all(of)
    return wanted <= found or not all(of)


def _stand_out(
    parts: Sequence[Part],
    pairs: Sequence[tuple[Part, Part]],
    told_mm: float,
    both: bool,
    aside: bool,
    of_edges: Set[int],
) -> bool:
    """Whether an edge of one of two of the parts lies so far from the same edge of the other; where `both` ends are spoken
    of, the left and the right one, or the upper and the lower. What does not stand out `aside` may do so to the front, and
    of one end the edges `of_edges` count."""
    so_far = [edges_so_far(*two, told_mm) for two in pairs]
    if not both:
        so_far = [edges & of_edges for edges in so_far]
        forward = not aside and any(
            abs(part.thickness_mm - told_mm) <= ROUNDED_MM for part in parts
        )
        return forward or any(so_far)
    all_edges = set().union(*so_far)
    return {0, 2} <= all_edges or {1, 3} <= all_edges
