"""Parts of a finishing piece that its steps join to what they do not touch, to the wrong side, or to themselves."""

import re
from collections.abc import Sequence

from packetgen.diagnostics import Problems, place_in
from packetgen.load.joints_in_steps import BETWEEN, EDGES, IN_THE_MIDDLE, Joint, joints_in
from packetgen.load.overhang_ways import LENGTH
from packetgen.load.panel_on_wood import shares_below
from packetgen.load.piece_words import gap_said
from packetgen.load.placed_parts import ROUNDED_MM, TOUCHES_MM, Bounds, placed_part, touching
from packetgen.load.points import point_said
from packetgen.load.prose_words import SENTENCE
from packetgen.load.told_order import laps
from packetgen.load.words import said
from packetgen.model import Outline, Part
from packetgen.units import MM_PER_UNIT

_TO_EDGE = re.compile(
    rf"{BETWEEN}|(?:to|against)\s+(?:the|its|their|both|each|either)\s+(?:\w+\s+)?(?:edges?|sides?|ends?)\s+of\b"
    r"|(?:below|above|under)\s+(?:the\s+|both\s+|its\s+)?(?!.*\b(?:edge|side|end|middle|panel|upper|lower)s?\b)"
    r"|on(?:to)?\s+(?:the\s+)?top\s+of\b(?!.*\b(?:front|back|face)\b)"
    r"|upright\s+(?:on|onto|in)\s+(?!.*\b(?:front|back|face)\b)"
    r"|on\s+(?:to\s+)?the\s+(?:upper|lower|top|bottom)\s+(?:edge|side|end)\s+of\b",
    re.IGNORECASE,
)
_OVER_MM = 2  # over an edge; less is a joint that was rounded: our own choice
_LAPS = re.compile(
    r"\b(?:over)?laps?(?:ping)?\b|\b(?:mm|cm)\s+(?:of\s+it\s+)?(?:over|before|behind|below|above)\b",
    re.IGNORECASE,
)
_LENGTH = re.compile(LENGTH, re.IGNORECASE)
_AT_EDGE_OF = re.compile(
    rf"\b(?P<edge>{'|'.join(EDGES)})\s+(?:edge|end)\s+of\b|\b(?:across|along|at|to|onto|behind|before|over)\s+the\s+(?P<end>top|bottom)\s+of\b",
    re.IGNORECASE,
)
_MIDDLE_OF = re.compile(
    r"\b(?:to|on|onto|in|at|over|across|before|behind)\s+the\s+(?:middle|centre|center)\s+of\s+(?:the\s+)?(?!.*\b(?:edge|side|end)s?\b)",
    re.IGNORECASE,
)
_MIDDLE_OF_EDGE = re.compile(
    r"\b(?:middle|centre|center)\s+of\s+(?:the|its)\s+(?:upper|lower|top|bottom)\s+(?:edge|end|side)\b",
    re.IGNORECASE,
)
# From left to right, mostly.
_ONLY_ACROSS = re.compile(rf"{IN_THE_MIDDLE}|(?:over|across|before|behind)\b", re.IGNORECASE)
_HEIGHT = re.compile(
    r"[^.;]*?,\s+(?:just|right|straight)?\s*(?:above|below|under)\b", re.IGNORECASE
)
_FACE = re.compile(
    r"(?:on|onto|to)\s+(?:the\s+)?(?P<face>front|back)\s+of\b(?!.*\b(?:edge|side|end)s?\b)",
    re.IGNORECASE,
)
_SLIM = 8  # times as long as wide: the middle of such a part is halfway along; our own choice
_RECTANGLE = 0.95  # of the box round it is filled: of another shape the middle is not that of its height; our own choice
_BESIDE_MM, _BESIDE = 3, 0.02  # of a middle, or of the whole, is in it still: our own choice
_STANDS = {
    (1, False): "below",
    (1, True): "above",
    (0, False): "to the right of",
    (0, True): "to the left of",
}
_MAGNETS = re.compile(
    r"\b(?:glue|fix|set|sink|press|stick|put|let|bed|fit)\b[^.;:]{0,40}\bmagnets?\b[^.,;:]{0,20}?\b(?:to|on|onto|into|in|behind)\s+"
    r"(?:the\s+)?(?:(?:front|back|face)\s+of\s+(?:the\s+)?)?(?P<part>[^.,;:]{3,60})",
    re.IGNORECASE,
)
_AT_EDGE_MM, _AT_EDGE = (
    10,
    0.1,
)  # so far, or so much of the part, is still at its edge: our own choice
_UNDER = (
    0.1  # of the panel, that a part has below it at least to be one for magnets; our own choice
)


def complain_of_told_joints(
    parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on the first joint of each kind that cannot be as finish.yaml has the two."""
    told = set[str]()
    groups = touching([placed_part(part) for part in parts])
    for joint in joints_in(parts, steps):
        part, other = parts[joint.part], parts[joint.other]
        facts = {"part": said(part.name), "other": said(other.name)}
        if joint.part == joint.other:
            code = "step-part-itself"
        elif max(part.pieces, other.pieces) > 1:
            continue  # drawn once
        elif (gap_mm := placed_part(part).distance(placed_part(other))) > TOUCHES_MM:
            if joint.onto == BETWEEN or not any(
                {joint.part, joint.other} <= set(group) for group in groups
            ):
                continue  # of the one that stands apart it is told
            if _gap_as_told(steps, joint, gap_mm):
                continue
            code = "step-parts-apart"
            facts |= {"at": point_said(part.at_mm), "other_at": point_said(other.at_mm)}
            facts["gap"] = gap_said(gap_mm)
        elif stands := _at_other_edge(part, other, joint.onto, _height_told(steps, joint)):
            code = "step-side-other"
            facts |= stands
        elif (over_mm := _over_edge(part, other, joint.onto)) and not _laps_as_told(steps, joint):
            code = "step-parts-overlap"
            facts["over"] = gap_said(over_mm)
        elif stands := _only_beside(part, other, joint.onto):
            code = "step-side-other"
            facts |= stands
        elif face := _on_other_face(joint, laps(part, other)):
            code = "step-order-other"
            facts |= face
        else:
            continue
        if code not in told:
            problems.add(place_in(steps, joint.start, path), code, **facts)
            told.add(code)


def _height_told(steps: str, joint: Joint) -> bool:
    """Whether the rest of the sentence says above or below what it stands: its middle is then that from side to side."""
    return _HEIGHT.match(steps, joint.start) is not None


def _at_other_edge(part: Part, other: Part, onto: str, across: bool) -> dict[str, str]:
    """What is told of 'the upper edge of' what it stands below the middle of; empty where that is so. `across`: whether a middle
    is meant from side to side alone."""
    found = _AT_EDGE_OF.search(onto)
    if not found:
        return _beside_middle(part, other, onto, across)
    edge_said = (found["edge"] or found["end"]).casefold()
    direction, further = EDGES[edge_said]
    told = f"at the {edge_said} edge of" if found["edge"] else f"at the {edge_said} of"
    bounds, of_other = placed_part(part).bounds, placed_part(other).bounds
    first, last = of_other[direction], of_other[direction + 2]
    edge = last if further else first
    by_mm = max(bounds[direction] - edge, edge - bounds[direction + 2])
    if by_mm > max(_AT_EDGE_MM, _AT_EDGE * (last - first)):
        beyond = (bounds[direction] > edge) == further
        stands = f"{gap_said(by_mm)} {_STANDS[direction, further != beyond]}"
        return {"said": told, "stands": stands}
    middles = [_middle(placed_part(one).bounds, direction) for one in (part, other)]
    if middles[0] == middles[1] or (middles[0] > middles[1]) == further:
        return _beside_middle(part, other, onto, across)
    stands = f"{_STANDS[direction, further]} the middle of"
    return {"said": told, "stands": stands}


def _beside_middle(part: Part, other: Part, onto: str, across: bool) -> dict[str, str]:
    """What is told of 'the middle of' a broader part, from left to right, and of one on which it lies, from above too;
    empty where it stands there."""
    of_edge = _MIDDLE_OF_EDGE.search(onto)
    if not of_edge and not _MIDDLE_OF.search(onto):
        return {}
    one, on = placed_part(part), placed_part(other)
    lies_on = one.intersection(on).area > one.area / 2 and on.area > _RECTANGLE * on.envelope.area
    for direction, sides in ((0, ("to the left of", "to the right of")), (1, ("above", "below"))):
        wide = on.bounds[direction + 2] - on.bounds[direction]
        by_mm = _middle(one.bounds, direction) - _middle(on.bounds, direction)
        broader = one.bounds[direction + 2] - one.bounds[direction] < wide
        least_mm = max(_BESIDE_MM, _BESIDE * wide)
        long_mm = on.bounds[3 - direction] - on.bounds[1 - direction]
        only_across = across or of_edge or _ONLY_ACROSS.match(onto)
        to_both = lies_on and not only_across and _SLIM * wide > long_mm
        looked_at = to_both or (direction == 0 and broader)
        if looked_at and abs(by_mm) > least_mm:
            return {
                "said": "in the middle of",
                "stands": f"{gap_said(abs(by_mm))} {sides[by_mm > 0]}",
            }
    return {}


def _over_edge(part: Part, other: Part, onto: str) -> float:
    """How far a part that is put to 'the edges of' another lies over them; 0 where it touches them, or lies whole on it."""
    if not _TO_EDGE.match(onto):
        return 0
    one, shared = placed_part(part), placed_part(part).intersection(placed_part(other))
    beneath = re.match(
        r"below|above|under|upright|on(?:to)?\s+(?:the\s+)?top\s+of", onto, re.IGNORECASE
    )
    if beneath and shared.area > one.area / 2:
        return 0  # behind or before it
    if shared.area <= 0 or one.area - shared.area <= ROUNDED_MM**2:
        return 0
    left, upper, right, lower = shared.bounds
    over_mm = min(right - left, lower - upper)
    return float(over_mm) if over_mm > _OVER_MM else 0


def _laps_as_told(steps: str, joint: Joint) -> bool:
    """Whether the sentence tells how far the one lies over the other."""
    sentence = SENTENCE.match(steps, joint.start)
    return bool(sentence and _LAPS.search(sentence[0]))


def _gap_as_told(steps: str, joint: Joint, gap_mm: float) -> bool:
    """Whether the sentence tells that very gap: 'below the ledge, 9 mm from it'."""
    sentence = SENTENCE.match(steps, joint.start)
    told = _LENGTH.finditer(sentence[0]) if sentence else ()
    return any(
        abs(float(one["long"]) * MM_PER_UNIT[one["unit"].casefold()] - gap_mm) <= ROUNDED_MM
        for one in told
    )


def _middle(bounds: Bounds, direction: int) -> float:
    return float(bounds[direction] + bounds[direction + 2]) / 2


def _only_beside(part: Part, other: Part, onto: str) -> dict[str, str]:
    """What is told of 'the front of' a part that it touches with an edge alone; empty where it lies on it."""
    found = _FACE.match(onto)
    one, on = placed_part(part), placed_part(other)
    if not found or one.intersection(on).area > ROUNDED_MM**2:
        return {}
    bounds, of_other = one.bounds, on.bounds
    beyond = {
        "above": of_other[1] - bounds[3],
        "below": bounds[1] - of_other[3],
        "to the left of": of_other[0] - bounds[2],
        "to the right of": bounds[0] - of_other[2],
    }
    side = max(beyond, key=lambda one: beyond[one])
    return {"said": f"on the {found['face'].casefold()} of", "stands": side}


def _on_other_face(joint: Joint, lap: bool) -> dict[str, str]:
    """What is told of 'the front of' a part that is listed behind it, and of the back of one before it."""
    found = _FACE.match(joint.onto)
    in_front = joint.part > joint.other
    if not found or not lap or in_front == (found["face"].casefold() == "front"):
        return {}
    return {
        "said": f"on the {found['face'].casefold()} of",
        "listed": "after" if in_front else "before",
    }


def complain_of_told_magnets(
    panel: Outline | None, parts: Sequence[Part], steps: str, path: str, problems: Problems
) -> None:
    """Advice on 'glue the magnets to the roof' where the panel, and so every magnet, lies on the board."""
    if panel is None or not parts:
        return
    below = shares_below(panel, parts)
    for found in _MAGNETS.finditer(steps):
        for number, part in enumerate(parts):
            name = re.match(rf"{re.escape(part.name)}(?![\w-])", found["part"], re.IGNORECASE)
            if name and below[number] < _UNDER and max(below) >= _UNDER:
                facts = {
                    "part": said(part.name),
                    "other": said(parts[below.index(max(below))].name),
                }
                place = place_in(steps, found.start("part"), path)
                problems.add(place, "magnets-off-panel", **facts)
                return
