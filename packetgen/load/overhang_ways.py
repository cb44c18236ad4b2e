"""How steps tell how far parts of a finishing piece stand out beyond one another, and which of their edges are on one line."""

import re
from collections.abc import Iterator

LENGTH = r"(?P<long>(?<![\w.,/×-])\d{1,3}(?:\.\d{1,2})?)\s?(?P<unit>mm|cm)\b"
_OUT = r"(?:stand|stick|jut|project|reach|overhang|hang)(?:s|ing)?"
_EDGE = r"\b(?:edges?|ends?|sides?)\b"
_BEYOND = r"(?:out|over|beyond|past|in|back)"
TOLD = (
    # 'standing out 6 mm on either side', 'overhangs the board by 6 mm'
    re.compile(
        rf"\b(?:{_OUT}\s+{_BEYOND}|overhang(?:s|ing)?)\b(?:(?!\band\s+\d)[^\d.;:()]){{0,40}}?{LENGTH}",
        re.I,
    ),
    # '12 mm standing over at each end'
    re.compile(
        rf"{LENGTH}\s+(?:of\s+(?:it|them)\s+)?{_OUT}\s+{_BEYOND}\s+(?:at|on)\s+(?:both|either|each)\s+(?:ends?|sides?)\b",
        re.I,
    ),
    # 'stands 6 mm beyond the board'
    re.compile(rf"\b{_OUT}\s+(?:by\s+)?{LENGTH}\s+{_BEYOND}\b", re.I),
    # 'its ends 6 mm beyond them on either side'
    re.compile(
        rf"\b(?:ends?|sides?)\s+{LENGTH}\s+(?:beyond|past|outside|inside)\s+[^\d.,;:()]{{0,30}}?\b(?:either|both|each)\s+(?:ends?|sides?)\b",
        re.I,
    ),
    # 'with 10 mm of the shelf free at either end'
    re.compile(
        rf"{LENGTH}\s+of\s+(?:it|them|(?:the|each)\s+[a-z ]{{2,25}}?)\s+(?:free|bare|clear|open|showing)\s+(?:at|on)\s+(?:both|either|each)\s+(?:ends?|sides?)\b",
        re.I,
    ),
    # '10 mm over at both ends', '12 mm from either end', 'each 16 mm from its end'
    re.compile(
        rf"{LENGTH}\s+(?:in\s+)?from\s+(?:either|each|both)\s+(?:ends?|sides?|edges?)\b", re.I
    ),
    re.compile(
        rf"{LENGTH}\s+over\s+(?:at|on)\s+(?:both|either|each|its)\s+(?:ends?|sides?)\b", re.I
    ),
    re.compile(
        rf"\b(?:each|both)\s+{LENGTH}\s+(?:in\s+)?from\s+(?:its|the|their)\s+(?:ends?|sides?|edges?)\b",
        re.I,
    ),
)
# 'their tops are 22 mm above its upper edge': of one edge from another, and on which side of it.
EXACT = re.compile(
    r"\b(?P<own>tops?|feet|foot|(?:upper|lower|top|bottom)\s+(?:edges?|ends?))\s+(?:(?:are|is|stands?|lies?|being)\s+)?"
    rf"{LENGTH}\s+(?P<way>above|below)\s+(?:its|their|the)\s+(?P<edge>upper|lower|top|bottom)\s+(?:edges?|ends?)\b",
    re.I,
)
# '4 mm below its top', '50 mm of it stand above the board's upper edge': its upper or lower edge.
BELOW_TOP = re.compile(
    rf"{LENGTH}\s+(?:of\s+(?:it|them|each)\s+(?:(?:stands?|shows?|sticks?|reach(?:es)?)\s+(?:out\s+)?)?)?(?P<way>above|below)\s+"
    r"(?:its|their|the)\s+(?:[a-z ]{3,25}['’]s?\s+)?(?P<edge>tops?|bottoms?|feet|foot|(?:upper|lower|top|bottom)\s+(?:edges?|ends?))\b",
    re.I,
)
# Of any edge from any other edge of the same direction.
ACROSS = (
    # 'its lower edge 26 mm above their lower ends'
    re.compile(
        rf"{_EDGE}\s+(?:stands?\s+|lies?\s+)?{LENGTH}\s+(?:above|below|from|inside|beyond|outside)\s+[^\d.;:()]{{0,30}}?{_EDGE}",
        re.I,
    ),
    # 'reaches 30 mm below the upper edge of the board'
    re.compile(rf"{LENGTH}\s+(?:above|below)\s+[^\d.;:()]{{0,40}}?{_EDGE}", re.I),
    # '18 mm below it'
    re.compile(rf"{LENGTH}\s+(?:above|below)\s+(?:the|its|their|it)\b", re.I),
    # 'lies 4 mm over the wall',
    re.compile(rf"\bl(?:ies?|ying)\s+(?:by\s+)?{LENGTH}\s+(?:over|on|before|behind)\b", re.I),
    # 'glue it on, 18 mm from the right edge'
    re.compile(
        rf"{LENGTH}\s+(?:in\s+)?from\s+(?:its|the|their)\s+(?:upper|lower|left|right|top|bottom)(?:-hand)?\s+(?:edge|end|side)\b",
        re.I,
    ),
    # '5 mm over its left edge'
    re.compile(
        rf"{LENGTH}\s+(?:over|beyond|beside)\s+(?:its|the|their)\s+(?:upper|lower|left|right|top|bottom)\s+(?:edge|end|side)s?\b",
        re.I,
    ),
    # '10 mm over each post'
    re.compile(
        rf"{LENGTH}\s+(?:over|onto)\s+(?:each|both|either)\b(?!\s+(?:ends?|sides?|edges?))", re.I
    ),
    # 'reaches 30 mm down the board', 'overlaps the board by 30 mm'
    re.compile(
        rf"\b{_OUT}\s+(?:by\s+)?{LENGTH}\s+(?:down|up|behind|before|under|onto|into)\b", re.I
    ),
    # 'over it by 4 mm', '14 mm of it show'
    re.compile(rf"\bover\s+(?:it|them|the\s+[a-z ]{{3,25}}?)\s+by\s+{LENGTH}", re.I),
    re.compile(
        rf"{LENGTH}\s+of\s+(?:it|them|each)\s+(?:shows?|stands?|sticks?|juts?|lies?|reach(?:es)?|(?:(?:is|are)\s+)?hidden)\b",
        re.I,
    ),
)
# 'lapping it by 10 mm', '14 mm of it overlap': how much of one lies on the other.
LAPS = (
    re.compile(rf"\b(?:overlap|lap)(?:s|ping|ped)?\b[^\d.;:()]{{0,60}}?{LENGTH}", re.I),
    re.compile(rf"{LENGTH}\s+of\s+(?:it|them|each)\s+overlaps?\b", re.I),
)
# 'face down, 160 mm apart', 'with a gap of 150 mm between them', '150 mm of it stay free between them': from any edge of
# one to any of the other, or between middles.
_FREE = r"(?:\s+of\s+[a-z ]{2,30}?\s+(?:stays?|remains?|is|are)\s+(?:free|bare|open))?"
APART = re.compile(rf"{LENGTH}{_FREE}\s+(?:apart|between\s+(?:the|them|these)\b)", re.I)
# 'flush with its sides', 'level with the lower edge', 'its ends in line with those of' → numbers of edges: left, upper, right, lower.
FLUSH = re.compile(
    r"\b(?:flush|level|even)\s+with\s+the\s+(?P<end>foot|bottom|top|head)\s+of\b|"
    r"\b(?:flush\s+with|(?:level|even)\s+with(?=[^.,;:()]*\s(?:edges?|ends?)\s+of\b))\s+[^\d.,;:()]{0,30}?"
    r"\b(?P<edges>sides|(?:upper|top|lower|bottom)\s+(?:edges?|ends?))\b|"
    r"\b(?P<own>(?:(?:upper|top|lower|bottom)\s+)?(?:edges?|ends?|sides))\s+(?:flush|level|even|in\s+line)\s+with\s+(?:those|that)\s+of\b|"
    r"\b(?:flush|level|even)\s+at\s+(?P<both>both\s+ends)\b",
    re.I,
)
# 'upper and lower ends level' → numbers of edges too.
LEVEL = re.compile(
    r"\b(?P<end>)(?P<own>)(?P<edges>upper\s+and\s+lower|lower\s+and\s+upper|upper|lower|top|bottom)\s+(?:edges?|ends?)\s+(?:(?:are|being)\s+)?(?:level|flush|even)\b(?!\s+with)",
    re.I,
)
# 'standing over by the same amount at both ends'
OVER = re.compile(
    r"\b(?:stand|stick|jut|project|reach|hang)(?:s|ing)?\s+(?:out|over)\b[^\d.;:()]{0,40}?\b(?:both|either|each)\s+(?:ends?|sides?)\b",
    re.I,
)
# What lies apart itself, wherever it stands before.
_OF_OTHERS = re.compile(
    r"\b(?:magnets|washers|screws|nails|hooks|eyes|rings|knobs|pegs|holes|marks|points|coats)\b",
    re.I,
)
NEAR = 25  # letters before it that tell what stands out, and twice as many behind where
_ELSE = re.compile(
    r"\b(?:cloth|card|wadding|trim|cord|magnets?|washers?|screws?|nails?|hooks?|hangers?|holes?|(?<!in )lines?|template)\b",
    re.I,
)


def lengths_in(sentence: str) -> Iterator[re.Match[str]]:
    """Each length once, and edges that are flush, in the first way in which it can be read."""
    read = set[int]()
    for way in (EXACT, BELOW_TOP, *TOLD, *LAPS, *ACROSS, APART, FLUSH, LEVEL, OVER):
        for found in way.finditer(sentence):
            at = found.start("long") if "long" in way.groupindex else found.start()
            if at in read or _ELSE.search(sentence[max(0, found.start() - NEAR) : found.end()]):
                continue
            if (way is APART or "from" in found[0]) and _OF_OTHERS.search(
                sentence, 0, found.start()
            ):
                continue
            read.add(at)
            yield found
