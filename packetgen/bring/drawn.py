"""Pictures of a chart: one that is a chart again when it is read, and one to look at beside its source.

PNG is W3C's "Portable Network Graphics", third edition. Two marks may have one colour (a thread in full
and in half stitches), so each mark has an entry of its own in the palette, and a chunk of text says which:
a line each, in the palette's order after bare cloth, with mark, colour and stitch. A program that saves
the picture in full colour loses the entries; marks that share a colour can then not be told apart.
"""

from collections.abc import Sequence
from io import BytesIO

import numpy as np
from PIL import Image
from PIL.PngImagePlugin import PngInfo

from packetgen.bring.drawing import Cells
from packetgen.bring.picture import CELL, MARKS, REMARKS, MarkNote
from packetgen.colour import blended, channels
from packetgen.model import BARE, Pattern

_CLOTH, _GROUND = "#f6f3ea", "#8d9194"  # our own choice
_PANEL_PX = 900
_GAP_PX = 24


def mark_notes(pattern: Pattern) -> tuple[MarkNote, ...]:
    """Every mark of the key, as it is drawn in the model's threads."""
    model = pattern.thread_sets[0].id
    return tuple(
        MarkNote(line.mark, blended(tuple(one.hex for one in line.threads[model])), line.stitch)
        for line in pattern.key
    )


def chart_png(
    rows: Sequence[str], marks: Sequence[MarkNote], px: int = 1, remarks: str = ""
) -> bytes:
    """The chart as an indexed PNG, a stitch `px` × `px` pixels, bare cloth transparent."""
    number_of = {BARE: 0, **{note.mark: n for n, note in enumerate(marks, 1)}}
    entries = np.array([[number_of[mark] for mark in row] for row in rows], np.uint8)
    picture = Image.fromarray(entries.repeat(px, 0).repeat(px, 1), "P")
    picture.putpalette([*(255, 255, 255), *(part for one in marks for part in channels(one.hex))])
    notes = PngInfo()
    notes.add_itxt(MARKS, "\n".join(f"{one.mark} {one.hex} {one.stitch.value}" for one in marks))
    notes.add_text(CELL, str(px))
    if remarks:
        notes.add_itxt(REMARKS, remarks)
    target = BytesIO()
    picture.save(target, "PNG", transparency=0, pnginfo=notes, optimize=False)
    return target.getvalue()


def side_by_side(source: np.ndarray, cells: Cells, hexes: Sequence[str]) -> bytes:
    """A PNG: at the left the author's picture (height × width × 4), at the right the chart in its threads,
    enlarged as far as both find room, with a line every ten stitches."""
    height, width = cells.shape
    px = max(1, min(24, _PANEL_PX // max(height, width)))
    palette = np.array([channels(one) for one in (_CLOTH, *hexes)], np.uint8)
    chart = palette[cells].repeat(px, 0).repeat(px, 1)
    if px >= 4:
        _lined(chart, px)
    panel = width * px, height * px
    whole = Image.new("RGB", (2 * panel[0] + 3 * _GAP_PX, panel[1] + 2 * _GAP_PX), _GROUND)
    whole.paste(_on_cloth(source, panel), (_GAP_PX, _GAP_PX))
    whole.paste(Image.fromarray(chart), (2 * _GAP_PX + panel[0], _GAP_PX))
    target = BytesIO()
    whole.save(target, "PNG")
    return target.getvalue()


def _on_cloth(source: np.ndarray, size: tuple[int, int]) -> Image.Image:
    picture = Image.fromarray(np.ascontiguousarray(source), "RGBA")
    larger = size[0] >= picture.width
    picture = picture.resize(size, Image.Resampling.NEAREST if larger else Image.Resampling.BOX)
    cloth = Image.new("RGBA", size, _CLOTH)
    return Image.alpha_composite(cloth, picture).convert("RGB")


def _lined(chart: np.ndarray, px: int) -> None:
    """Thin lines between the stitches, stronger ones every ten."""
    for every, strength in ((px, 0.12), (10 * px, 0.45)):
        for lines in (chart[every::every], chart[:, every::every]):
            lines[:] = (lines * (1 - strength)).astype(np.uint8)
