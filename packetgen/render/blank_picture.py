"""Empty pictures, to stand where one is not drawn."""

from functools import cache

from PIL import Image

from packetgen.render.picture_file import jpeg_bytes, png_bytes
from packetgen.render.pictures import WIDTHS_PX


@cache
def blank_picture(name: str, height_px: int = 1) -> bytes:
    """A picture of the kind and the width of the one that `keep` is asked for by `name`, and unlike any
    other: the name stands behind its end, where nobody looks who shows it."""
    kind = name.partition("-")[0]
    if kind.isdigit() and int(kind) in WIDTHS_PX:
        return jpeg_bytes(Image.new("RGB", (int(kind), height_px))) + name.encode()
    return png_bytes(Image.new("RGB", (1, height_px))) + name.encode()
