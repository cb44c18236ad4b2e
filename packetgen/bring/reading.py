"""An author's file as a drawing, whatever kind it is of."""

from dataclasses import dataclass, replace
from pathlib import PurePath

import numpy as np

from packetgen.bring.codes import Codes
from packetgen.bring.drawing import Drawing
from packetgen.bring.ground import Ground, ground_of, stitched_part, trimmed, with_bare
from packetgen.bring.photograph import drawing_of, reduced
from packetgen.bring.picture import Pixels, read_pixels
from packetgen.bring.pixel_chart import read_chart
from packetgen.bring.written import Unexplained, read_signs, read_table
from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import LARGEST
from packetgen.load.files import ContentFolder
from packetgen.load.words import said

_PHOTOGRAPHS = (".jpg", ".jpeg")


@dataclass(frozen=True)
class Reading:
    """How the author wants her file read."""

    cell_px: float | None = None  # 1, or 2 and more; None: find it
    bare: tuple[str, ...] | None = None  # colours that are bare cloth; None: she has not said
    trim: bool = False  # bare rows and columns at the edges are left out
    headings: bool | None = None  # of a table: left out, or stitches; None: she has not said
    codes: tuple[tuple[str, str], ...] = ()  # each with what it is, as she says it


@dataclass(frozen=True, eq=False)
class Source:
    """A drawing, and the picture that it was read from: height × width × 4."""

    drawing: Drawing
    picture: np.ndarray
    ground: Ground | None = None  # what may be bare cloth, where the author has not said


def read_design(
    folder: ContentFolder,
    name: str,
    how: Reading,
    wide: int | None,
    codes: Codes,
    problems: Problems,
) -> Source | Unexplained | None:
    """The design in the file `name`; where it cannot be read None, or the codes for whose sake it cannot, with
    the reasons in `problems`.

    With `wide` a picture is a photograph, to be reduced to so many stitches. A JPEG is a drawn chart only
    where the author says how large a stitch is: what JPEG blurs would be found too seldom.
    """
    ending = PurePath(name).suffix.lower()
    if ending in (".csv", ".txt"):
        text = folder.text(name)
        if text is None:
            return None
        drawing = (
            read_table(text, name, codes, how.headings, problems)
            if ending == ".csv"
            else read_signs(text, name, codes, problems)
        )
        if isinstance(drawing, Unexplained):
            return drawing
        if drawing is None or problems.errors:  # of a letter in a remark, which spoils no stitch
            return None
        return _without_bare(Source(drawing, _as_drawn(drawing)), how, name, problems)
    if ending != ".png" and ending not in _PHOTOGRAPHS:
        problems.add(Place(name), "bring-kind", name=said(name))
        return None
    if ending in _PHOTOGRAPHS and wide is None and how.cell_px is None:
        problems.add(Place(name), "bring-photo-wide")
        return None
    data = folder.picture(name)
    pixels = None if data is None else read_pixels(data, name, problems)
    if pixels is None:
        return None
    if wide is not None:
        photograph = _photograph(pixels, wide, name, problems)
        return None if photograph is None else Source(photograph, pixels.rgba)
    chart = read_chart(pixels, how.cell_px, name, problems)
    if chart is None:
        return None
    return _without_bare(Source(chart, pixels.rgba), how, name, problems)


def _without_bare(source: Source, how: Reading, name: str, problems: Problems) -> Source | None:
    ground = ground_of(source.drawing) if how.bare is None else None
    drawing = with_bare(source.drawing, how.bare or ())
    if not drawing.cells.any():
        problems.add(Place(name), "bring-all-bare")
        return None
    picture = _part_of(source.picture, drawing) if how.trim else source.picture
    return Source(trimmed(drawing, how.trim), picture, ground)


def _part_of(picture: np.ndarray, drawing: Drawing) -> np.ndarray:
    """The picture without what shows the bare rows and columns at the drawing's edges."""
    rows, columns = stitched_part(drawing)
    high_px, wide_px = picture.shape[0] / drawing.height, picture.shape[1] / drawing.width
    return picture[
        round(rows.start * high_px) : round(rows.stop * high_px),
        round(columns.start * wide_px) : round(columns.stop * wide_px),
    ]


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
    ground = ground_of(drawing)
    if ground is None:
        return drawing
    advice = f"{ground.in_words()}; if it is bare cloth, make it clear in an image editor, and save it as PNG"
    return replace(drawing, told=(*drawing.told, advice))


def _as_drawn(drawing: Drawing) -> np.ndarray:
    colours = np.zeros((len(drawing.colours) + 1, 4), np.uint8)
    colours[1:, :3] = drawing.colours
    colours[1:, 3] = 255
    return colours[drawing.cells]
