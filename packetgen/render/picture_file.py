"""Pictures as bytes, always with the same settings."""

from io import BytesIO

from PIL import Image

JPEG_QUALITY = 84


def png_bytes(image: Image.Image, most_bytes: int | None = None) -> bytes:
    """PNG with every colour; only where that is more than `most_bytes`, in 256 colours."""
    whole = _saved(image, "PNG", optimize=True)
    if most_bytes is None or len(whole) <= most_bytes:
        return whole
    few = image.convert("RGB").quantize(256, Image.Quantize.MEDIANCUT)
    return _saved(few, "PNG", optimize=True)


def jpeg_bytes(image: Image.Image) -> bytes:
    """JPEG for the pages of the site: a fifth of the size of a PNG."""
    return _saved(
        image.convert("RGB"),
        "JPEG",
        quality=JPEG_QUALITY,
        subsampling="4:2:0",
        optimize=True,
        progressive=True,
    )


def _saved(image: Image.Image, kind: str, **settings: object) -> bytes:
    target = BytesIO()
    image.save(target, kind, **settings)
    return target.getvalue()
