"""An author's file as a drawing, whatever kind it is of."""

from dataclasses import dataclass
from pathlib import PurePath

import numpy as np

from packetgen.bring.drawing import Drawing
from packetgen.bring.photograph import drawing_of, reduced
from packetgen.bring.picture import Pixels, read_pixels
from packetgen.bring.pixel_chart import Reading, read_chart
from packetgen.bring.written import Codes, read_signs, read_table
from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import LARGEST
from packetgen.load.files import ContentFolder
from packetgen.load.words import said

_PHOTOGRAPHS = (".jpg", ".jpeg")


@dataclass(frozen=True, eq=False)
class Source:
    """A drawing, and the picture that it was read from: height × width × 4."""

    drawing: Drawing
    picture: np.ndarray


def read_design(
    folder: ContentFolder,
    name: str,
    how: Reading,
    wide: int | None,
    codes: Codes,
    problems: Problems,
) -> Source | None:
    """The design in the file `name`; None where it cannot be read, with the reasons in `problems`.

    With `wide` a picture is a photograph, to be reduced to so many stitches.
    """
    ending = PurePath(name).suffix.lower()
    if ending in (".csv", ".txt"):
        text = folder.text(name)
        if text is None:
            return None
        read = read_table if ending == ".csv" else read_signs
        drawing = read(text, name, codes, problems)
        if drawing is None or problems.errors:  # of a letter in a remark, which spoils no stitch
            return None
        return Source(drawing, _as_drawn(drawing))
    if ending != ".png" and ending not in _PHOTOGRAPHS:
        problems.add(Place(name), "bring-kind", name=said(name))
        return None
    if ending in _PHOTOGRAPHS and wide is None:
        problems.add(Place(name), "bring-photo-wide")
        return None
    data = folder.picture(name)
    pixels = None if data is None else read_pixels(data, name, problems)
    if pixels is None:
        return None
    found = (
        read_chart(pixels, how, name, problems)
        if wide is None
        else _photograph(pixels, wide, name, problems)
    )
    return None if found is None else Source(found, pixels.rgba)


def _photograph(pixels: Pixels, wide: int, name: str, problems: Problems) -> Drawing | None:
    high = round(pixels.height_px * wide / pixels.width_px)
    if high > LARGEST:
        most = max(1, LARGEST * pixels.width_px // pixels.height_px)
        problems.add(
            Place(name), "bring-photo-high", wide=wide, high=high, limit=LARGEST, most=most
        )
        return None
    told = f"a photograph of {pixels.width_px} × {pixels.height_px} pixels"
    drawing = drawing_of(reduced(pixels.rgba, wide), (told,))
    if not drawing.cells.any():
        problems.add(Place(name), "bring-all-bare")
        return None
    return drawing


def _as_drawn(drawing: Drawing) -> np.ndarray:
    colours = np.zeros((len(drawing.colours) + 1, 4), np.uint8)
    colours[1:, :3] = drawing.colours
    colours[1:, 3] = 255
    return colours[drawing.cells]
