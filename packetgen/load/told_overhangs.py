"""How far parts of a finishing piece stand out beyond one another, where its steps tell it otherwise."""

import re
from collections.abc import Iterator, Sequence
from itertools import combinations, product

from packetgen.diagnostics import Problems, place_in
from packetgen.load.part_names import parts_by_name_or_each
from packetgen.load.piece_words import gap_said
from packetgen.load.placed_parts import ROUNDED_MM, placed_part
from packetgen.load.prose_words import named, sentences
from packetgen.load.words import said
from packetgen.model import Part
from packetgen.units import MM_PER_UNIT

_LENGTH = r"(?P<long>(?<![\w.,/×-])\d{1,3}(?:\.\d{1,2})?)\s?(?P<unit>mm|cm)\b"
_OUT = r"(?:stand|stick|jut|project|reach|overhang|hang)(?:s|ing)?"
_EDGE = r"\b(?:edges?|ends?|sides?)\b"
_BEYOND = r"(?:out|over|beyond|past|in|back)"
_TOLD = (
    # 'standing out 6 mm on either side', 'overhangs the board by 6 mm'
    re.compile(rf"\b(?:{_OUT}\s+{_BEYOND}|overhang(?:s|ing)?)\b[^\d.;:()]{{0,40}}?{_LENGTH}", re.I),
    # 'stands 6 mm beyond the board'
    re.compile(rf"\b{_OUT}\s+(?:by\s+)?{_LENGTH}\s+{_BEYOND}\b", re.I),
    # '10 mm over at both ends', '12 mm from either end', 'each 16 mm from its end'
    re.compile(
        rf"{_LENGTH}\s+(?:in\s+)?from\s+(?:either|each|both)\s+(?:ends?|sides?|edges?)\b", re.I
    ),
    re.compile(
        rf"{_LENGTH}\s+over\s+(?:at|on)\s+(?:both|either|each|its)\s+(?:ends?|sides?)\b", re.I
    ),
    re.compile(
        rf"\b(?:each|both)\s+{_LENGTH}\s+(?:in\s+)?from\s+(?:its|the|their)\s+(?:ends?|sides?|edges?)\b",
        re.I,
    ),
)
# 'their tops are 22 mm above its upper edge': of one edge from another, and on which side of it.
_EXACT = re.compile(
    r"\b(?P<own>tops?|feet|foot|(?:upper|lower|top|bottom)\s+(?:edges?|ends?))\s+(?:(?:are|is|stands?|lies?|being)\s+)?"
    rf"{_LENGTH}\s+(?P<way>above|below)\s+(?:its|their|the)\s+(?P<edge>upper|lower|top|bottom)\s+(?:edges?|ends?)\b",
    re.I,
)
# '4 mm below its top', '50 mm of it stand above the board's upper edge': its upper or lower edge.
_BELOW_TOP = re.compile(
    rf"{_LENGTH}\s+(?:of\s+(?:it|them|each)\s+(?:(?:stands?|shows?|sticks?|reach(?:es)?)\s+(?:out\s+)?)?)?(?P<way>above|below)\s+"
    r"(?:its|their|the)\s+(?:[a-z ]{3,25}['’]s?\s+)?(?P<edge>tops?|bottoms?|feet|foot|(?:upper|lower|top|bottom)\s+(?:edges?|ends?))\b",
    re.I,
)
# Of any edge from any other edge of the same direction.
_ACROSS = (
    # 'its lower edge 26 mm above their lower ends'
    re.compile(
        rf"{_EDGE}\s+(?:stands?\s+|lies?\s+)?{_LENGTH}\s+(?:above|below|from|inside|beyond|outside)\s+[^\d.;:()]{{0,30}}?{_EDGE}",
        re.I,
    ),
    # 'reaches 30 mm below the upper edge of the board'
    re.compile(rf"{_LENGTH}\s+(?:above|below)\s+[^\d.;:()]{{0,40}}?{_EDGE}", re.I),
    # '18 mm below it'
    re.compile(rf"{_LENGTH}\s+(?:above|below)\s+(?:the|its|their|it)\b", re.I),
    # 'lies 4 mm over the wall',
    re.compile(rf"\bl(?:ies?|ying)\s+(?:by\s+)?{_LENGTH}\s+(?:over|on|before|behind)\b", re.I),
    # 'reaches 30 mm down the board', 'overlaps the board by 30 mm'
    re.compile(
        rf"\b{_OUT}\s+(?:by\s+)?{_LENGTH}\s+(?:down|up|behind|before|under|onto|into)\b", re.I
    ),
    re.compile(rf"\b(?:overlap|lap)(?:s|ping|ped)?\b[^\d.;:()]{{0,40}}?{_LENGTH}", re.I),
    # 'over it by 4 mm', '14 mm of it overlap'
    re.compile(rf"\bover\s+(?:it|them|the\s+[a-z ]{{3,25}}?)\s+by\s+{_LENGTH}", re.I),
    re.compile(
        rf"{_LENGTH}\s+of\s+(?:it|them|each)\s+(?:overlaps?|shows?|stands?|sticks?|juts?|reach(?:es)?)\b",
        re.I,
    ),
)
# 'flush with its sides', 'level with the lower edge', 'its ends in line with those of' → numbers of edges: left, upper, right, lower.
_FLUSH = re.compile(
    r"\b(?:flush|level|even)\s+with\s+the\s+(?P<end>foot|bottom|top|head)\s+of\b|"
    r"\b(?:flush\s+with|(?:level|even)\s+with(?=[^.,;:()]*\s(?:edges?|ends?)\s+of\b))\s+[^\d.,;:()]{0,30}?"
    r"\b(?P<edges>sides|(?:upper|top|lower|bottom)\s+(?:edges?|ends?))\b|"
    r"\b(?P<own>(?:(?:upper|top|lower|bottom)\s+)?(?:edges?|ends?|sides))\s+(?:flush|level|even|in\s+line)\s+with\s+(?:those|that)\s+of\b",
    re.I,
)
# 'upper and lower ends level' → numbers of edges too.
_LEVEL = re.compile(
    r"\b(?P<end>)(?P<own>)(?P<edges>upper\s+and\s+lower|lower\s+and\s+upper|upper|lower|top|bottom)\s+(?:edges?|ends?)\s+(?:(?:are|being)\s+)?(?:level|flush|even)\b(?!\s+with)",
    re.I,
)
# 'standing over by the same amount at both ends'
_OVER = re.compile(
    r"\b(?:stand|stick|jut|project|reach|hang)(?:s|ing)?\s+(?:out|over)\b[^\d.;:()]{0,40}?\b(?:both|either|each)\s+(?:ends?|sides?)\b",
    re.I,
)
_BOTH = re.compile(
    r"\b(?:either|both|each)\s+(?:sides?|ends?)\b|\b(?:each|both)\s+(?=\d)|\bleft\s+and\s+(?:(?:on|at)\s+the\s+)?right\b(?!\s+edges)",
    re.I,
)
_ASIDE = re.compile(
    r"\s+(?:at|on|to)\s+(?:its|the|each|either|one)\s+(?:side|end|left|right)", re.I
)
_NOWHERE = "no edges of the parts that it names lie so far apart"
_NEAR = 25  # letters before it that tell what stands out, and twice as many behind where
_ELSE = re.compile(
    r"\b(?:cloth|card|wadding|trim|cord|magnets?|washers?|screws?|nails?|hooks?|hangers?|holes?|(?<!in )lines?|template)\b",
    re.I,
)


def complain_of_told_overhangs(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first '6 mm' by which a step says that parts stand out, where by finish.yaml no two of those that it
    names do, or not on both sides; of how far one stands out to the front its thickness tells."""
    numbers = parts_by_name_or_each(parts)
    names = named(numbers)
    for start, sentence in sentences(steps):
        in_turn = [(one.start(), numbers[one[0].casefold()]) for one in names.finditer(sentence)]
        for found in _told_in(sentence):
            if how := _how(parts, in_turn, found, sentence):
                facts = {"said": said(found[0]), "how": how}
                place = place_in(steps, start + found.start(), path)
                problems.add(place, "step-overhang-other", **facts)
                return


def _told_in(sentence: str) -> Iterator[re.Match[str]]:
    """Each length once, and edges that are flush, in the first way in which it can be read."""
    read = set[int]()
    for way in (_EXACT, _BELOW_TOP, *_TOLD, *_ACROSS, _FLUSH, _LEVEL, _OVER):
        for found in way.finditer(sentence):
            at = found.start("long") if "long" in way.groupindex else found.start()
            if at in read or _ELSE.search(sentence[max(0, found.start() - _NEAR) : found.end()]):
                continue
            read.add(at)
            yield found


def _how(
    parts: Sequence[Part],
    in_turn: Sequence[tuple[int, tuple[int, ...]]],
    found: re.Match[str],
    sentence: str,
) -> str:
    """How the parts lie that are named `in_turn`, where not as it is told; else ''."""
    groups = list(dict.fromkeys(each for _, each in in_turn))
    told = sorted({number for each in groups for number in each})
    if len(told) == 1 and found.re in _TOLD:  # beyond any other
        groups.append(tuple(number for number in range(len(parts)) if number not in told))
        told = list(range(len(parts)))
    these = [parts[number] for number in told]
    if len(these) < 2 or any(part.pieces > 1 for part in these):
        return ""
    if found.re in (_FLUSH, _LEVEL):
        edges = found["edges"] or found["end"] or found["own"]
        flush = _flush(parts, _with(in_turn, found.start()), edges.casefold())
        return "" if flush else "such edges of the parts that it names are not on one line"
    pairs = [(parts[one], parts[other]) for one, other in _between(groups)]
    if found.re is _OVER:
        return "" if any(map(_over_both_ends, pairs)) else "none of the parts that it names does"
    if found.re in (_EXACT, _BELOW_TOP):
        return "" if _as_exact(pairs, found) else _NOWHERE
    return _otherwise(these, pairs, found, sentence)


def _between(groups: Sequence[tuple[int, ...]]) -> Iterator[tuple[int, int]]:
    """Each part with each of another name: not 'the posts' with one another, where something else is named."""
    if len(groups) == 1:
        yield from combinations(groups[0], 2)
    for some, others in combinations(groups, 2):
        yield from ((one, other) for one, other in product(some, others) if one != other)


def _over_both_ends(two: tuple[Part, Part]) -> bool:
    """Whether one of the two is longer than the other at both of its ends, across or down."""
    left, upper, right, lower = _edges_mm(*two)
    return left * right < 0 or upper * lower < 0


def _as_exact(pairs: Sequence[tuple[Part, Part]], found: re.Match[str]) -> bool:
    """Whether such an edge of one of two parts lies so far above or below such an edge of the other."""
    edge = _level_edge(found["edge"])
    owns = (_level_edge(found["own"]),) if found.re is _EXACT else (1, 3)
    told_mm = _told_mm(found) * (-1 if found["way"].casefold() == "above" else 1)
    return any(
        abs(placed_part(one).bounds[own] - placed_part(other).bounds[edge] - told_mm) <= ROUNDED_MM
        for two in pairs
        for one, other in (two, two[::-1])
        for own in owns
    )


def _level_edge(words: str) -> int:
    """The number of the upper edge, 1, or of the lower."""
    return 1 if words[:3].casefold() in ("top", "upp") else 3


def _told_mm(found: re.Match[str]) -> float:
    return float(found["long"]) * MM_PER_UNIT[found["unit"].casefold()]


def _otherwise(
    parts: Sequence[Part],
    pairs: Sequence[tuple[Part, Part]],
    found: re.Match[str],
    sentence: str,
) -> str:
    """How the edges of the parts lie, where not as it is told, on one side or, where the sentence says so, on both; else ''."""
    beside = sentence[max(0, found.start() - _NEAR) : found.end() + 2 * _NEAR]
    both, aside = bool(_BOTH.search(beside)), bool(_ASIDE.match(sentence, found.end()))
    told_mm = _told_mm(found)
    if _stand_out(parts, pairs, told_mm, both, aside) or (
        found.re in _ACROSS and _lie_apart(pairs, told_mm)
    ):
        return ""
    sides = f" on both sides: at the left {_apart(parts, 0)}, at the right {_apart(parts, 2)}"
    return _NOWHERE + sides * (both and found.re in _TOLD)


def _apart(parts: Sequence[Part], edge: int) -> str:
    """How far the outermost of these edges lies beyond the next, '6 mm'."""
    first, then, *_ = sorted((placed_part(part).bounds[edge] for part in parts), reverse=edge >= 2)
    return gap_said(abs(first - then))


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
        for edge, by_mm in enumerate(_edges_mm(parts[one], parts[other]))
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
) -> bool:
    """Whether an edge of one of two of the parts lies so far from the same edge of the other; where `both` ends are spoken
    of, the left and the right one, or the upper and the lower. What does not stand out `aside` may do so to the front."""
    beyond = [_edges_mm(*two) for two in pairs]
    so_far = [
        {edge for edge, by in enumerate(edges) if abs(abs(by) - told_mm) <= ROUNDED_MM}
        for edges in beyond
    ]
    if not both:
        forward = not aside and any(
            abs(part.thickness_mm - told_mm) <= ROUNDED_MM for part in parts
        )
        return forward or any(so_far)
    all_edges = set().union(*so_far)
    return {0, 2} <= all_edges or {1, 3} <= all_edges


def _lie_apart(pairs: Sequence[tuple[Part, Part]], told_mm: float) -> bool:
    """Whether an upright edge of one of the parts lies so far from one of another, or a level one from a level one."""
    return any(
        abs(abs(one - other) - told_mm) <= ROUNDED_MM
        for first, second in (
            (placed_part(one).bounds, placed_part(two).bounds) for one, two in pairs
        )
        for way in (0, 1)
        for one in first[way::2]
        for other in second[way::2]
    )


def _edges_mm(one: Part, other: Part) -> Iterator[float]:
    """How far apart their left, upper, right and lower edges are."""
    bounds = zip(placed_part(one).bounds, placed_part(other).bounds, strict=True)
    return (first - second for first, second in bounds)
