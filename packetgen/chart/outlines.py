"""Where a stitch is shown on a chart, in stitches from the chart's top left corner."""

from math import cos, dist, pi, sin

from packetgen.model import Corner, Daisy, Point, Stitch

# A petite stitch is shown this far from the edges of its quarter, so that it is not taken for a quarter.
_PETITE_INSET = 0.07
# Top left of a small symbol, near or far along either side of the cell.
_NEAR, _FAR = 0.02, 0.48
# The loop of a lazy daisy: its width for its length, its greatest width, and how it swells to the tip.
_DAISY_SLIM, _DAISY_WIDEST, _DAISY_SWELL = 0.42, 0.9, 1.5
_DAISY_STEPS = 24
# The stitch that holds the loop down, in cells to either side of the tip.
_ANCHOR_REACH = 0.16


def fraction_outline(
    x: float, y: float, stitch: Stitch, corner: Corner | None
) -> tuple[Point, ...]:
    """The part of the cell at x, y (from 0) that a stitch is shown to cover.

    Two three-quarter stitches that share a cell meet along its diagonal.
    """
    top_left, top_right = (x, y), (x + 1, y)
    bottom_left, bottom_right = (x, y + 1), (x + 1, y + 1)
    if stitch is Stitch.FULL:
        return top_left, top_right, bottom_right, bottom_left
    if corner is None:
        rising = stitch is not Stitch.HALF_BACK
        low = (bottom_left, top_right) if rising else (top_left, bottom_right)
        return (*low, bottom_right if rising else bottom_left)
    opposite = {
        Corner.TOP_LEFT: (top_right, bottom_right, bottom_left),
        Corner.TOP_RIGHT: (top_left, bottom_right, bottom_left),
        Corner.BOTTOM_LEFT: (top_left, top_right, bottom_right),
        Corner.BOTTOM_RIGHT: (top_left, top_right, bottom_left),
    }
    if stitch is Stitch.THREE_QUARTER:
        return opposite[corner]
    if stitch is Stitch.PETITE:
        right, bottom = _side(corner)
        left, top = x + right / 2 + _PETITE_INSET, y + bottom / 2 + _PETITE_INSET
        side = 0.5 - 2 * _PETITE_INSET
        return (left, top), (left + side, top), (left + side, top + side), (left, top + side)
    corner_x, corner_y = {
        Corner.TOP_LEFT: top_left,
        Corner.TOP_RIGHT: top_right,
        Corner.BOTTOM_LEFT: bottom_left,
        Corner.BOTTOM_RIGHT: bottom_right,
    }[corner]
    middle = (x + 0.5, y + 0.5)
    return ((corner_x, corner_y), (middle[0], corner_y), middle, (corner_x, middle[1]))


def symbol_corner(stitch: Stitch, corner: Corner | None) -> Point:
    """Top left of the half-size symbol of a fractional stitch, in cells from the top left of its cell:
    pushed into what the stitch covers."""
    if corner is None:
        return (_NEAR, _FAR) if stitch is Stitch.HALF_BACK else (_FAR, _FAR)
    right, bottom = _side(corner)
    if stitch is Stitch.THREE_QUARTER:
        right, bottom = not right, not bottom
    return _FAR if right else _NEAR, _FAR if bottom else _NEAR


def _side(corner: Corner) -> tuple[bool, bool]:
    """Whether a corner is on the right, and whether it is at the bottom."""
    return (
        corner in (Corner.TOP_RIGHT, Corner.BOTTOM_RIGHT),
        corner in (Corner.BOTTOM_LEFT, Corner.BOTTOM_RIGHT),
    )


def daisy_loop(daisy: Daisy) -> tuple[Point, ...]:
    """The loop of a lazy daisy as a closed path: narrow at the base, where it begins, round at the tip."""
    (base_x, base_y), along, length = _daisy_line(daisy)
    wide = min(length * _DAISY_SLIM, _DAISY_WIDEST) / 2
    points = []
    for step in range(_DAISY_STEPS + 1):
        turn = 2 * pi * step / _DAISY_STEPS
        far = length * (1 - cos(turn)) / 2
        aside = wide * sin(turn) * abs(sin(turn / 2)) ** _DAISY_SWELL
        points.append(
            (
                base_x + along[0] * far - along[1] * aside,
                base_y + along[1] * far + along[0] * aside,
            )
        )
    return tuple(points)


def daisy_anchor(daisy: Daisy) -> tuple[Point, Point]:
    """The short stitch that holds the loop down: from inside the loop over its tip, out along its line."""
    (base_x, base_y), along, length = _daisy_line(daisy)
    inside, outside = length - _ANCHOR_REACH, length + _ANCHOR_REACH
    return (
        (base_x + along[0] * inside, base_y + along[1] * inside),
        (base_x + along[0] * outside, base_y + along[1] * outside),
    )


def _daisy_line(daisy: Daisy) -> tuple[Point, Point, float]:
    """Base, direction and length; corner coordinates count from 1."""
    length = dist(daisy.base, daisy.tip)
    along = (daisy.tip[0] - daisy.base[0]) / length, (daisy.tip[1] - daisy.base[1]) / length
    return (daisy.base[0] - 1, daisy.base[1] - 1), along, length
