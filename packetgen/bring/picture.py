"""Pictures of designs and photographs, read into pixels. With `drawn` the room's door to Pillow.

PNG is W3C's "Portable Network Graphics", third edition: chunk and field names are from there.
"""

import re
import warnings
from collections.abc import Mapping
from dataclasses import dataclass
from io import BytesIO

import numpy as np
from PIL import Image, ImageCms, ImageColor

from packetgen.diagnostics import Problems
from packetgen.load.pixels import whole_picture
from packetgen.model import Stitch

# What a chart's own picture says of itself, in chunks for text (see `drawn`).
MARKS, CELL, REMARKS = "Chart marks", "Chart stitch px", "Comment"
_MARK = re.compile(r"(\S) (#[0-9a-f]{6}) (.+)")
_ORIENTATION = 0x0112  # of the Exif standard (CIPA DC-008); 1 is upright
_DEPTH = 24  # of IHDR's bit depth in the file
_ROWS_AT_ONCE = 256
MOST_PIXELS = 30_000_000  # a pixel takes eight bytes while it is read


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
    picture = whole_picture(data, path, problems, MOST_PIXELS)
    if picture is None:
        return None
    notes = {str(name): str(text) for name, text in picture.info.items()}
    marks = _mark_notes(notes)
    turn = _orientation(picture)
    entries = np.array(picture) if picture.mode == "P" and turn == 1 else None
    return Pixels(
        _upright(_rgba(picture, data), turn),
        entries,
        marks,
        _cell(notes),
        notes.get(REMARKS, "") if marks else "",
    )


def named_colour(word: str) -> str | None:
    """'white' → '#ffffff', by the names of W3C's "CSS Color Module Level 4"; also '#fff', in which each figure
    stands for two. None for all else."""
    short = re.fullmatch("#?([0-9a-f]{3})", word.strip().lower())
    name = short[1] if short else word.strip().lower()
    if short:
        return f"#{''.join(2 * digit for digit in name)}"
    return (
        None
        if name not in ImageColor.colormap
        else "#{:02x}{:02x}{:02x}".format(*ImageColor.getrgb(name))
    )


def _orientation(picture: Image.Image) -> int:
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # notes that cannot be read spoil no picture
            return int(picture.getexif().get(_ORIENTATION, 1))
    except Exception:  # as above
        return 1


def _upright(rgba: np.ndarray, orientation: int) -> np.ndarray:
    """The same pixels, looked at otherwise: first column and row change places, then sides are mirrored."""
    if orientation in (5, 6, 7, 8):
        rgba = rgba.swapaxes(0, 1)
    if orientation in (2, 3, 6, 7):
        rgba = rgba[:, ::-1]
    return rgba[::-1] if orientation in (3, 4, 7, 8) else rgba


def _rgba(picture: Image.Image, data: bytes) -> np.ndarray:
    """The pixels in sRGB. A few rows at a time, so that nothing is in hand three times."""
    profile = picture.info.get("icc_profile")
    to_srgb = _to_srgb(picture.mode, profile) if isinstance(profile, bytes) else None
    clear = picture.info.get("transparency")
    if isinstance(clear, tuple) and data[_DEPTH] == 16:  # the pixels are cut to 8 bits
        picture.info["transparency"] = tuple(channel >> 8 for channel in clear)
    rgba = np.empty((picture.height, picture.width, 4), np.uint8)
    for top in range(0, picture.height, _ROWS_AT_ONCE):
        part = picture.crop((0, top, picture.width, min(top + _ROWS_AT_ONCE, picture.height)))
        here = rgba[top : top + part.height]
        if part.mode.startswith("I"):
            here[:] = _deep_grey(np.array(part), clear)
        else:
            part = ImageCms.applyTransform(part, to_srgb) or part if to_srgb else part
            here[:] = np.array(
                (part.convert("RGB") if part.mode == "CMYK" else part).convert("RGBA")
            )
        here[here[..., 3] == 0] = 0  # what cannot be seen has no colour
    return rgba


def _deep_grey(grey: np.ndarray, clear: object) -> np.ndarray:
    """Grey of 16 bits, which Pillow would cut off at 255."""
    level = (grey.astype(np.uint32) * 255 + 32767) // 65535
    opacity = (
        np.where(grey == clear, 0, 255) if isinstance(clear, int) else np.full_like(level, 255)
    )
    return np.stack((level, level, level, opacity), -1).astype(np.uint8)


def _to_srgb(mode: str, profile: bytes) -> ImageCms.ImageCmsTransform | None:
    """The way from a picture's own colours; None where its profile cannot be read, and is passed over."""
    if mode not in ("RGB", "CMYK", "L"):
        return None
    try:
        own = ImageCms.ImageCmsProfile(BytesIO(profile))
        srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB"))
        return ImageCms.buildTransform(own, srgb, mode, "RGB")
    except (ImageCms.PyCMSError, OSError, ValueError):
        return None


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
