"""The picture on the cover of a packet: from how many px it is made, and how large it is printed."""

from math import ceil

from packetgen.model import Photo
from packetgen.units import MM_PER_INCH

# The most px that the longer side of a photograph keeps there.
PHOTO_PX = 1600
# A design is drawn to fill its place with so many px to the inch, and at least so many to a stitch.
_DRAWN_PX_PER_INCH, _LEAST_PX_PER_CELL = 150, 14
# The most room for it (render.cover_room may leave it less). A photograph that does not fill it at 96 px to the inch, as CSS counts, is not enlarged.
ROOM_MM = (168.0, 150.0)
_CSS_PX_PER_INCH = 96


def printed_mm(width_px: float, height_px: float) -> tuple[float, float]:
    """Width and height of a picture of so many px on the cover."""
    mm_a_px = min(filling_mm_a_px(width_px, height_px), MM_PER_INCH / _CSS_PX_PER_INCH)
    return width_px * mm_a_px, height_px * mm_a_px


def drawn_px_per_cell(cells_wide: int, cells_high: int) -> int:
    """Px of a stitch in the drawn picture, whose cells those of the bare cloth round the design are too.

    So that the picture fills its room, however few they are."""
    cell_mm = filling_mm_a_px(cells_wide, cells_high)
    return max(_LEAST_PX_PER_CELL, ceil(cell_mm * _DRAWN_PX_PER_INCH / MM_PER_INCH))


def filling_mm_a_px(width_px: float, height_px: float) -> float:
    """How large a px is where the picture fills its room."""
    return min(ROOM_MM[0] / width_px, ROOM_MM[1] / height_px)


def photo_px(photo: Photo) -> tuple[float, float]:
    """Width and height that a photograph has there."""
    kept = min(1.0, PHOTO_PX / max(photo.width_px, photo.height_px))
    return photo.width_px * kept, photo.height_px * kept


def px_per_inch(photo: Photo) -> float:
    """Of a photograph as it is printed."""
    width_px, height_px = photo_px(photo)
    return MM_PER_INCH * width_px / printed_mm(width_px, height_px)[0]
