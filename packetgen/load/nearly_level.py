"""Edges of wood that are level but for a little, and corners that miss a rectangle by two figures, as where a corner has a slip."""

from collections.abc import Iterator, Sequence

from packetgen.diagnostics import Problems
from packetgen.load.corner_slips import Edge, rectangle_slips
from packetgen.load.piece_words import extent_of, mm_said
from packetgen.load.points import point_said
from packetgen.load.values import Filled
from packetgen.load.words import said
from packetgen.model import Outline

# So long at least, and off by so much of that at most: limits of our own choice.
_LONG_MM, _OFF = 50, 0.08
_ROUNDED_MM = 0.5  # less than that is a rounded figure
_MIRRORED_MM = 1


def complain_of_nearly_level(stand: Sequence[Filled | None], problems: Problems) -> None:
    """Advice on the first long edge of a part that is nearly level, and that its outline has not the other way about too, as
    a low roof has."""
    for part in stand:
        if part is None or not part.whole:
            continue
        for (x, y), (to_x, to_y) in _leaning(part["outline"]):
            facts = {
                "part": said(part["name"]),
                "edge": f"{point_said((x, y))} to {point_said((to_x, to_y))}",
            }
            facts |= {"off": mm_said(abs(to_y - y)), "long": mm_said(abs(to_x - x))}
            facts["right"] = f"{point_said((x, to_y))} or {point_said((to_x, y))}"
            problems.add(part.place_of("outline"), "edge-leaning", **facts)
            break
        else:
            # Of two that have the same figures either may be the slip.
            others = [one for one in stand if one and one.whole and one is not part]
            if slips := _as_others(rectangle_slips(part["outline"]), part, others):
                corners, right = (" or ".join(map(point_said, each)) for each in zip(*slips))
                facts = {"part": said(part["name"]), "corner": corners, "right": right}
                problems.add(part.place_of("outline"), "corner-beside", **facts)


def _as_others(slips: Sequence[Edge], part: Filled, others: Sequence[Filled]) -> Sequence[Edge]:
    """Those by which the part gets as wide or as high as another is, if there are any, or else has its middle where another
    has it: else all."""
    sides = {side for other in others for side in enumerate(extent_of(other["outline"]))}
    middles = {_middle(other, other["outline"]) for other in others}
    as_wide, in_the_middle = [], []
    for corner, right in slips:
        direction = int(corner[0] == right[0])
        mended = tuple(right if one == corner else one for one in part["outline"])
        if (direction, extent_of(mended)[direction]) in sides:
            as_wide.append((corner, right))
        if _middle(part, mended) in middles:
            in_the_middle.append((corner, right))
    return as_wide or in_the_middle or slips


def _middle(part: Filled, outline: Outline) -> float:
    """Where the middle of a part is from side to side, in the drawing of the whole."""
    across: float = (part["at"] or (0, 0))[0]
    return across + (min(x for x, _ in outline) + max(x for x, _ in outline)) / 2


def _leaning(outline: Outline) -> Iterator[Edge]:
    edges = list(zip(outline, (*outline[1:], outline[0])))
    middle = (min(x for x, _ in outline) + max(x for x, _ in outline)) / 2
    for edge in edges:
        (x, y), (to_x, to_y) = edge
        off_mm, long_mm = abs(to_y - y), abs(to_x - x)
        leans = _ROUNDED_MM < off_mm <= _OFF * long_mm and long_mm >= _LONG_MM
        if leans and not any(_mirrored(edge, other, middle) for other in edges):
            yield edge


def _mirrored(edge: Edge, other: Edge, middle: float) -> bool:
    """Whether the other is the edge seen in a mirror, from its end to its beginning."""
    turned = [(2 * middle - x, y) for x, y in reversed(edge)]
    return all(
        abs(one - two) <= _MIRRORED_MM
        for corner, of_other in zip(turned, other, strict=True)
        for one, two in zip(corner, of_other, strict=True)
    )
