"""Pictures of designs and photographs, read into pixels. With `drawn` the room's door to Pillow.

PNG is W3C's "Portable Network Graphics", third edition: chunk and field names are from there.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from io import BytesIO

import numpy as np
from PIL import Image, ImageCms, ImageOps

from packetgen.diagnostics import Problems
from packetgen.load.pixels import whole_picture
from packetgen.model import Stitch

# What a chart's own picture says of itself, in chunks for text (see `drawn`).
MARKS, CELL, REMARKS = "Chart marks", "Chart stitch px", "Comment"
_MARK = re.compile(r"(\S) (#[0-9a-f]{6}) (.+)")
_ORIENTATION = 0x0112  # of the Exif standard (CIPA DC-008); 1 is upright
_DEPTH = 24  # of IHDR's bit depth in the file


@dataclass(frozen=True)
class MarkNote:
    """What a chart's picture says of one of its marks."""

    mark: str
    hex: str
    stitch: Stitch


@dataclass(frozen=True, eq=False)
class Pixels:
    """`rgba` is height × width × 4, from 0 to 255; `entries` the number of each pixel in the palette."""

    rgba: np.ndarray
    entries: np.ndarray | None = None
    marks: tuple[MarkNote, ...] = ()
    cell_px: int | None = None
    remarks: str = ""

    @property
    def width_px(self) -> int:
        return int(self.rgba.shape[1])

    @property
    def height_px(self) -> int:
        return int(self.rgba.shape[0])


def read_pixels(data: bytes, path: str, problems: Problems) -> Pixels | None:
    """The pixels of a PNG or JPEG, upright and in sRGB; None where it cannot be read."""
    picture = whole_picture(data, path, problems)
    if picture is None:
        return None
    notes = {str(name): str(text) for name, text in picture.info.items()}
    marks = _mark_notes(notes)
    turned = picture.getexif().get(_ORIENTATION, 1) != 1
    entries = np.array(picture) if picture.mode == "P" and not turned else None
    rgba = _rgba(picture, data)
    rgba[rgba[..., 3] == 0] = 0  # what cannot be seen has no colour
    return Pixels(
        rgba,
        entries,
        marks,
        _cell(notes),
        notes.get(REMARKS, "") if marks else "",
    )


def _rgba(picture: Image.Image, data: bytes) -> np.ndarray:
    profile = picture.info.get("icc_profile")
    clear = picture.info.get("transparency")
    if picture.mode.startswith("I"):  # grey of 16 bits, which Pillow would cut off at 255
        grey = np.array(picture).astype(np.uint32)
        opacity = np.where(grey == clear, 0, 255) if isinstance(clear, int) else 255
        level = (grey * 255 + 32767) // 65535
        return np.stack((level, level, level, np.broadcast_to(opacity, grey.shape)), -1).astype(
            np.uint8
        )
    if (
        isinstance(clear, tuple) and data[_DEPTH] == 16
    ):  # of 16 bits as well; the pixels are cut to 8
        picture.info["transparency"] = tuple(channel >> 8 for channel in clear)
    upright = ImageOps.exif_transpose(picture)
    return np.array(_in_srgb(upright, profile))


def _in_srgb(picture: Image.Image, profile: object) -> Image.Image:
    """RGBA in sRGB; a profile that cannot be read is passed over."""
    if isinstance(profile, bytes) and picture.mode in ("RGB", "CMYK", "L"):
        try:
            own = ImageCms.ImageCmsProfile(BytesIO(profile))
            srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB"))
            picture = ImageCms.profileToProfile(picture, own, srgb, outputMode="RGB") or picture
        except (ImageCms.PyCMSError, OSError, ValueError):
            pass
    return (picture.convert("RGB") if picture.mode == "CMYK" else picture).convert("RGBA")


def _mark_notes(notes: Mapping[str, str]) -> tuple[MarkNote, ...]:
    """The marks, in the order of the palette after bare cloth; none where any of it is not ours."""
    lines = notes.get(MARKS, "").splitlines()
    found = [_MARK.fullmatch(line) for line in lines]
    kinds = {stitch.value: stitch for stitch in Stitch}
    read = tuple(
        MarkNote(one[1], one[2], kinds[one[3]])
        for one in found
        if one is not None and one[3] in kinds
    )
    return read if len(read) == len(lines) else ()


def _cell(notes: Mapping[str, str]) -> int | None:
    said = notes.get(CELL, "")
    return int(said) if re.fullmatch(r"[1-9][0-9]?", said) else None
