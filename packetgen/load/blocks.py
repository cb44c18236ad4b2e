"""Two by two characters of a close-up: the quarters of one cell, and which stitches they say.

A mark whose key line is worked in petite or quarter stitch is one stitch in each quarter where it stands.
Of the other marks three alike are a three-quarter stitch, two alike on a diagonal a half, single ones
quarters. Two three-quarter stitches share a cell where a line is drawn between them: 'A/' over '/B'.
"""

from collections import Counter
from collections.abc import Mapping

from packetgen.model import BARE, Corner, Fraction, Stitch

CORNERS = (Corner.TOP_LEFT, Corner.TOP_RIGHT, Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT)
RISING, FALLING = "/", "\\"
LINES = frozenset((RISING, FALLING))
# Where a line stands, and the quarters that it parts.
_PARTINGS = ((RISING, (1, 2), (0, 3)), (FALLING, (0, 3), (1, 2)))
_SINGLE = (Stitch.PETITE, Stitch.QUARTER)


def parted(block: str) -> bool:
    """Whether a line between two different marks is drawn in the four characters of `block`."""
    return _parting(block) is not None


def _parting(block: str) -> tuple[int, int] | None:
    for line, along, (one, other) in _PARTINGS:
        sides = {block[one], block[other]} - {line, BARE}
        if all(block[place] == line for place in along) and len(sides) == 2:
            return one, other
    return None


def read_block(
    block: str, column: int, row: int, stitch_of: Mapping[str, Stitch | None]
) -> tuple[Fraction, ...] | str:
    """The stitches of top left, top right, bottom left, bottom right; a fault's code for nonsense."""

    def stitch(mark: str, kind: Stitch, corner: Corner | None = None) -> Fraction:
        return Fraction(column, row, mark, kind, corner)

    sides = _parting(block)
    if sides is not None:
        if any(stitch_of.get(block[side]) in _SINGLE for side in sides):
            return "close-up-line"
        # Each leaves open the corner where the other sits.
        return tuple(stitch(block[side], Stitch.THREE_QUARTER, CORNERS[3 - side]) for side in sides)
    if any(mark in LINES and mark not in stitch_of for mark in block):
        return "close-up-line"
    single = {mark: kind for mark in block if (kind := stitch_of.get(mark)) in _SINGLE and kind}
    stitches = tuple(
        stitch(mark, single[mark], corner)
        for mark, corner in zip(block, CORNERS, strict=True)
        if mark in single
    )
    rest = "".join(BARE if mark in single else mark for mark in block)
    if rest == BARE * 4:
        return stitches
    counts = Counter(mark for mark in rest if mark != BARE)
    most, times = counts.most_common(1)[0]
    where = [number for number, mark in enumerate(rest) if mark == most]
    if times == 4:
        return "close-up-full"
    if times == 3:
        open_corner = next(number for number, mark in enumerate(rest) if mark != most)
        corner, other = CORNERS[open_corner], rest[open_corner]
        stitches += (stitch(most, Stitch.THREE_QUARTER, corner),)
        return stitches if other == BARE else (*stitches, stitch(other, Stitch.QUARTER, corner))
    if times == 2:
        if len(counts) == 1 and where in ([0, 3], [1, 2]):
            half = Stitch.HALF_BACK if where == [0, 3] else Stitch.HALF
            return (*stitches, stitch(most, half))
        return "close-up-halves" if sorted(counts.values()) == [2, 2] else "close-up-block"
    return stitches + tuple(
        stitch(mark, Stitch.QUARTER, corner)
        for mark, corner in zip(rest, CORNERS, strict=True)
        if mark != BARE
    )
