"""The part of a cell that a stitch is shown to cover, in stitches from the chart's top left corner."""

from packetgen.model import Corner, Point, Stitch


def fraction_outline(
    x: float, y: float, stitch: Stitch, corner: Corner | None
) -> tuple[Point, ...]:
    """The part of the cell at x, y (from 0) that a stitch is shown to cover."""
    top_left, top_right = (x, y), (x + 1, y)
    bottom_left, bottom_right = (x, y + 1), (x + 1, y + 1)
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
    corner_x, corner_y = {
        Corner.TOP_LEFT: top_left,
        Corner.TOP_RIGHT: top_right,
        Corner.BOTTOM_LEFT: bottom_left,
        Corner.BOTTOM_RIGHT: bottom_right,
    }[corner]
    middle = (x + 0.5, y + 0.5)
    return ((corner_x, corner_y), (middle[0], corner_y), middle, (corner_x, middle[1]))
