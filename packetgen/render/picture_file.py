"""Pictures as bytes, always with the same settings."""

from collections.abc import Sequence
from io import BytesIO

import numpy as np
from PIL import Image

JPEG_QUALITY = 84
_LOWER_QUALITIES = (84, 80, 76, 71, 65, 58, 50)
_FEWER_COLOURS = (256, 128, 64)
_SAMPLE = 4  # a palette is chosen from every so many-th px, across and down
_SHADES = 32  # of each channel: colours that share all three count as one
# Saving better takes twice as long for a hundredth less.
_PNG = {"compress_level": 6}


def png_bytes(image: Image.Image, most_bytes: int | None = None) -> bytes:
    """PNG with every colour; with `most_bytes` in 256 colours, or fewer where that would be more: a third
    of the weight, and hard to tell from the whole."""
    if most_bytes is None:
        return _saved(image, "PNG", **_PNG)
    for colours in _FEWER_COLOURS:
        data = _saved(image.quantize(palette=_palette(image, colours)), "PNG", **_PNG)
        if len(data) <= most_bytes:
            break
    return data


def _palette(image: Image.Image, colours: int) -> Image.Image:
    """So many colours that stand for a picture.

    A colour counts by the root of how often it is seen. By the number itself nearly the whole palette
    would go to the cloth and the wall, and a red bead or a blue bow would turn grey.
    """
    px = np.asarray(image)[::_SAMPLE, ::_SAMPLE].reshape(-1, 3)
    shades = px // (256 // _SHADES) @ (_SHADES**2, _SHADES, 1)
    _, which, often = np.unique(shades, return_inverse=True, return_counts=True)
    means = [np.bincount(which, channel) / often for channel in px.T]
    counted = np.repeat(np.rint(means).T, np.ceil(often**0.5).astype(int), axis=0)
    return Image.fromarray(counted[None].astype(np.uint8)).quantize(
        colours, Image.Quantize.MEDIANCUT
    )


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
