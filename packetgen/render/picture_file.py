"""Pictures as bytes, always with the same settings."""

from collections.abc import Sequence
from io import BytesIO

from PIL import Image

JPEG_QUALITY = 84
_LOWER_QUALITIES = (84, 80, 76, 71, 65, 58, 50)
_FEWER_COLOURS = (256, 128, 64)


def png_bytes(image: Image.Image, most_bytes: int | None = None) -> bytes:
    """PNG with every colour; only where that is more than `most_bytes`, in 256 colours or fewer."""
    # Saving well takes long, so first it is seen whether that could help at all.
    if most_bytes is None or len(_saved(image, "PNG", compress_level=1)) < 1.1 * most_bytes:
        whole = _saved(image, "PNG", optimize=True)
        if most_bytes is None or len(whole) <= most_bytes:
            return whole
    for colours in _FEWER_COLOURS:
        few = image.convert("RGB").quantize(colours, Image.Quantize.MEDIANCUT)
        whole = _saved(few, "PNG", optimize=True)
        if len(whole) <= most_bytes:
            break
    return whole


def jpeg_bytes(image: Image.Image, most_bytes: int | None = None) -> bytes:
    """JPEG for the pages of the site: a fifth of the size of a PNG. Coarser only where that is more than
    `most_bytes`."""
    qualities: Sequence[int] = (JPEG_QUALITY,) if most_bytes is None else _LOWER_QUALITIES
    for quality in qualities:
        data = _saved(
            image.convert("RGB"),
            "JPEG",
            quality=quality,
            subsampling="4:2:0",
            optimize=True,
            progressive=True,
        )
        if most_bytes is None or len(data) <= most_bytes:
            break
    return data


def size_of(data: bytes) -> tuple[int, int]:
    """Width and height in px of a picture that was written here."""
    with Image.open(BytesIO(data)) as image:
        return image.size


def _saved(image: Image.Image, kind: str, **settings: object) -> bytes:
    target = BytesIO()
    image.save(target, kind, **settings)
    return target.getvalue()
