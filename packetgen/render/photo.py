"""An author's photo made fit to publish: upright, no larger than needed, and with nothing hidden in it."""

from functools import lru_cache
from io import BytesIO

from PIL import Image, ImageCms, ImageFilter, ImageOps, ImageStat

from packetgen.model import Photo

_SHARE = 0.5  # of a photo's width that its close-up shows
_STEPS = 8  # places tried for it, along either side


def upright(photo: Photo, most_px: int) -> Image.Image:
    """The picture as the camera meant it to be seen, at most `most_px` on its longer side, in sRGB.

    Only the pixels are kept: place, camera and date that the file may carry stay behind.
    """
    with Image.open(BytesIO(photo.data)) as opened:
        opened.draft("RGB", (most_px, most_px))  # a JPEG can be read smaller, and much faster
        turned = ImageOps.exif_transpose(opened)
        turned.thumbnail((most_px, most_px), Image.Resampling.LANCZOS)
        plain = _in_srgb(turned, opened.info.get("icc_profile"))
    clean = Image.new("RGB", plain.size)
    clean.paste(plain)
    return clean


def close_up(image: Image.Image, shape: tuple[int, int]) -> Image.Image:
    """The part of a photo in which there is most to see, in the proportions of `shape`."""
    width = min(image.width * _SHARE, image.height * shape[0] / shape[1])
    size = round(width), round(width * shape[1] / shape[0])
    edges = image.convert("L").filter(ImageFilter.FIND_EDGES)
    boxes = [
        (left, top, left + size[0], top + size[1])
        for top in _places(image.height - size[1])
        for left in _places(image.width - size[0])
    ]
    return image.crop(max(boxes, key=lambda box: ImageStat.Stat(edges.crop(box)).mean[0]))


def _places(room: int) -> list[int]:
    """From a bit within one edge to a bit within the other: what lies at the very edge is seldom meant."""
    return [round(room * (0.1 + 0.8 * step / _STEPS)) for step in range(_STEPS + 1)]


def _in_srgb(image: Image.Image, profile: bytes | None) -> Image.Image:
    """The same colours for whoever takes them for sRGB; a profile that cannot be read is passed over."""
    image = _on_white(image)
    if not profile:
        return image.convert("RGB")
    if image.mode not in ("RGB", "CMYK", "L"):
        image = image.convert("RGB")
    try:
        own = ImageCms.ImageCmsProfile(BytesIO(profile))
        return ImageCms.profileToProfile(image, own, _srgb(), outputMode="RGB") or image
    except (ImageCms.PyCMSError, OSError, ValueError):
        return image.convert("RGB")


def _on_white(image: Image.Image) -> Image.Image:
    """What is clear of it shows white paper, as where a model was cut out of its photograph."""
    if not image.has_transparency_data:
        return image
    clear = image.convert("RGBA")
    return Image.alpha_composite(Image.new("RGBA", clear.size, "white"), clear).convert("RGB")


@lru_cache(maxsize=1)
def _srgb() -> ImageCms.ImageCmsProfile:
    return ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB"))
