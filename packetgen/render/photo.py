"""An author's photo made fit to publish: upright, no larger than needed, and with nothing hidden in it."""

from io import BytesIO

from PIL import Image, ImageOps

from packetgen.model import Photo


def upright(photo: Photo, most_px: int) -> Image.Image:
    """The picture as the camera meant it to be seen, at most `most_px` on its longer side.

    Only the pixels are kept: place, camera and date that the file may carry stay behind.
    """
    with Image.open(BytesIO(photo.data)) as opened:
        turned = ImageOps.exif_transpose(opened).convert("RGB")
    turned.thumbnail((most_px, most_px), Image.Resampling.LANCZOS)
    clean = Image.new("RGB", turned.size)
    clean.paste(turned)
    return clean
