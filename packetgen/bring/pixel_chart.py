"""A chart drawn in pixels, one a stitch or enlarged, becomes a drawing."""

from dataclasses import replace

import numpy as np

from packetgen.bring.borne_out import borne_out
from packetgen.bring.cells import Found, edges, find, given, sampled
from packetgen.bring.comb import Comb, comb_at, comb_of, comb_on, stitches
from packetgen.bring.cut_edge import cut_edges
from packetgen.bring.drawing import Drawing, Wish, hex_of
from packetgen.bring.lattice import lattice_of
from packetgen.bring.loss import saved_with_loss
from packetgen.bring.picture import MarkNote, Pixels
from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import LARGEST, STITCHED
from packetgen.nouns import counted
from packetgen.shape_names import SHAPE_NAMES

# What soft stitches need where the colours may be those that were drawn, one pixel a stitch: how little
# doubt, and how many they are.
_PLAIN, _MANY = 0.25, 200
_HARD = 2  # colours, between which there is no shade
_SOFT = 0.5  # softness of their edges, which would add hardly any colours
_ROWS_AT_ONCE = 64
# Thirty for each stitch of the longest chart; the search takes the square of it.
_LONGEST_PX = 30_000
_HALF = 128  # of 255: what is less opaque is taken for bare cloth


def read_chart(
    pixels: Pixels, cell_px: float | None, path: str, problems: Problems
) -> Drawing | None:
    """The chart; None where the picture holds none that could be stitched.

    `cell_px` is how wide a stitch is drawn, 1 or 2 and more; None: it is found.
    """
    size = pixels.width_px, pixels.height_px
    if max(size) > _LONGEST_PX:
        problems.add(Place(path), "bring-not-found", width=size[0], height=size[1], limit=LARGEST)
        return None
    if cell_px is not None and cell_px > min(size):
        _complain_of_room(cell_px, size, path, problems)
        return None
    found, told = _raster(pixels, cell_px)
    here = {"width": size[0], "height": size[1], "wide": _wide(size[0])}
    if isinstance(found, Comb) and cell_px is None:
        if not borne_out(pixels.rgba, found):
            problems.add(Place(path), "bring-no-squares", **here)
            return None
        if not found.believed:
            problems.add(Place(path), "bring-cell-unsure", cell=f"{sure_px(found):.4g}")
            return None
    width, height = (found.across.number, found.down.number) if found else size
    if cell_px is not None and min(width, height) < 1:
        _complain_of_room(cell_px, size, path, problems)
        return None
    if max(width, height) > LARGEST:
        problems.add(Place(path), "bring-not-found", width=width, height=height, limit=LARGEST)
        return None
    if found is None and cell_px is None and _colours(pixels.rgba) > len(SHAPE_NAMES):
        if max(size) > STITCHED:
            problems.add(Place(path), "bring-no-squares", **here)
            return None
        problems.add(Place(path), "bring-one-pixel", **here)
    notes = _of_palette(pixels)
    codes, own = _codes(pixels, bool(notes), found)
    if found and found.framed and min(codes.shape):
        codes, cut = _without_frame(codes)
        around = f"what lies around the chart is left out{cut}"
        cut_off = cut_edges(pixels.rgba, found) if isinstance(found, Found) else ""
        told += (f"{around}; of that, {cut_off}" if cut_off else around,)
    elif isinstance(found, Found) and (cut_off := cut_edges(pixels.rgba, found)):
        told += (cut_off,)
    drawing = _drawing(codes, pixels, notes, isinstance(found, Comb), told, path, problems)
    return drawing and replace(drawing, own=own)


def _wide(width_px: int) -> int:
    """A width in stitches for a picture that has none: each of three pixels and more, and few enough to see
    soon what becomes of it."""
    return max(1, min(100, width_px // 3))


def _complain_of_room(cell_px: float, size: tuple[int, int], path: str, problems: Problems) -> None:
    width, height = size
    problems.add(Place(path), "bring-cell-large", cell=f"{cell_px:g}", width=width, height=height)


def _raster(pixels: Pixels, cell_px: float | None) -> tuple[Found | Comb | None, tuple[str, ...]]:
    size = pixels.width_px, pixels.height_px
    if cell_px is not None:
        told = (f"a stitch is {cell_px:g} px wide, as you say",)
        if cell_px == 1 or (cell_px == int(cell_px) and _is_even(pixels, int(cell_px))):
            return given(*size, int(cell_px)), told
        return comb_at(pixels.rgba, cell_px), told
    if pixels.cell_px is not None and _is_even(pixels, pixels.cell_px):
        return given(*size, pixels.cell_px), (
            f"a stitch is {counted_px(pixels.cell_px)} wide, as the picture says",
        )
    found = found_in(pixels.rgba)
    if found is None:
        return None, ("one pixel is one stitch",)
    more = ""
    if isinstance(found, Comb):
        lossy = saved_with_loss(pixels.rgba)
        why = ", but its colours run into each other (soft edges, or saved with loss): look at it"
        why *= lossy
        more = "" if found.sure and not lossy else f"{why}; if it is not, say how wide with --cell"
    return found, (f"a stitch was found to be {counted_px(sure_px(found))} wide{more}",)


def found_in(rgba: np.ndarray) -> Found | Comb | None:
    """The stitches of an enlarged picture, or a guess at them; None where a pixel is a stitch."""
    hard = find(*edges(rgba), must=max(rgba.shape[:2]) > LARGEST)
    if hard:
        return hard
    lattice = lattice_of(rgba)
    colours = _colours(rgba)
    few = colours <= len(SHAPE_NAMES)
    if lattice and (lattice.softness > _SOFT or not few):
        return comb_on(rgba, lattice)
    if colours <= _HARD:
        return None
    soft = comb_of(rgba)
    if soft and few:
        number = soft.across.number * soft.down.number
        return soft if soft.doubt < _PLAIN and number >= _MANY else None
    return soft


def _colours(rgba: np.ndarray) -> int:
    """How many there are; no further than to more than a key has room for, which are not those that were drawn."""
    seen: set[int] = set()
    for top in range(0, len(rgba), _ROWS_AT_ONCE):
        seen.update(np.unique(_numbers(rgba[top : top + _ROWS_AT_ONCE])).tolist())
        if len(seen) > len(SHAPE_NAMES):
            break
    return len(seen)


def sure_px(found: Found | Comb) -> float:
    """The size of a stitch with no more places than are sure: so many stitches of that size are as long as
    those that were found, to the pixel."""
    most = max(found.across.number, found.down.number)
    rounded = (round(found.cell_px * parts) / parts for parts in (1, 10, 4))
    return next((px for px in rounded if abs(px - found.cell_px) * most < 1), found.cell_px)


def counted_px(length: float) -> str:
    """(4, 4.5, 4.333…) → '4 px', '4.5 px', '4.33 px'."""
    return f"{length:.2f}".rstrip("0").rstrip(".") + " px"


def _is_even(pixels: Pixels, cell_px: int) -> bool:
    """Whether the picture is made of whole squares of that size, each of one colour."""
    if pixels.width_px % cell_px or pixels.height_px % cell_px:
        return False
    across, down = edges(pixels.rgba)
    return not any(
        side[np.arange(1, len(side) + 1) % cell_px != 0].any() for side in (across, down)
    )


def _of_palette(pixels: Pixels) -> tuple[MarkNote, ...]:
    """The marks of the palette's entries, if the palette still is what they were written for."""
    if pixels.entries is None or not pixels.marks:
        return ()
    for number, note in enumerate(pixels.marks, 1):
        here = pixels.rgba[pixels.entries == number]
        if len(here) and (hex_of(here[0]) != note.hex or here[0][3] != 255):
            return ()
    bare = pixels.rgba[pixels.entries == 0]
    whole = int(pixels.entries.max(initial=0)) <= len(pixels.marks)
    return pixels.marks if whole and not bare[:, 3].any() else ()


def _codes(pixels: Pixels, by_entry: bool, found: Found | Comb | None) -> tuple[np.ndarray, bool]:
    """One number a stitch: its colour and opacity, and before these its entry in the palette; and whether
    they are the colours that were drawn."""
    if isinstance(found, Comb):
        colours, own = stitches(pixels.rgba, found)
        return _numbers(colours).astype(np.int64), own
    whole = _numbers(pixels.rgba)
    codes = (sampled(whole, found) if found else whole).astype(np.int64)
    if by_entry and pixels.entries is not None:
        entries = sampled(pixels.entries, found) if found else pixels.entries
        codes |= np.where(codes == 0, 0, entries.astype(np.int64) << 32)
    return codes, True


def _numbers(rgba: np.ndarray) -> np.ndarray:
    return np.ascontiguousarray(rgba).view(">u4")[..., 0]


def _without_frame(codes: np.ndarray) -> tuple[np.ndarray, str]:
    """The codes without the rows and columns at the edges that are all of one corner's colour."""
    kept = codes != codes[0, 0]
    if not kept.any():
        return codes, ""
    rows, columns = np.flatnonzero(kept.any(1)), np.flatnonzero(kept.any(0))
    cut = codes[rows[0] : rows[-1] + 1, columns[0] : columns[-1] + 1]
    lost = codes.shape[0] - cut.shape[0], codes.shape[1] - cut.shape[1]
    if not any(lost):
        return codes, ""
    return (
        cut,
        f", and so are {counted(lost[0], 'row')} and {counted(lost[1], 'column')} of the same colour at the chart's edges",
    )


def _drawing(
    codes: np.ndarray,
    pixels: Pixels,
    notes: tuple[MarkNote, ...],
    soft: bool,
    told: tuple[str, ...],
    path: str,
    problems: Problems,
) -> Drawing | None:
    half = (codes & 255 > 0) & (codes & 255 < 255)
    if half.any():
        row, column = (int(of[0]) + 1 for of in np.nonzero(half))
        problems.add(
            Place(path, row, column),
            "bring-half-clear",
            number=counted(int(half.sum()), "stitch"),
            spot=f"column {column}, row {row}",
        )
    codes = np.where(codes & 255 < _HALF, 0, codes | 255)
    kinds, cells = np.unique(codes, return_inverse=True)
    cells = cells.reshape(codes.shape).astype(np.int32)
    if kinds[0] == 0:
        kinds = kinds[1:]
    else:
        cells += 1
    if not len(kinds):
        problems.add(Place(path), "bring-all-bare")
        return None
    colours = np.stack([kinds >> shift & 255 for shift in (24, 16, 8)], -1).astype(np.uint8)
    wishes = _wishes(kinds, colours, pixels.marks, notes)
    return Drawing(cells, colours, wishes, pixels.remarks, soft=soft, told=told)


def _wishes(
    kinds: np.ndarray,
    colours: np.ndarray,
    known: tuple[MarkNote, ...],
    of_palette: tuple[MarkNote, ...],
) -> dict[int, Wish]:
    """The mark of each colour: by its entry in the palette, else where only one mark has the colour."""
    wishes = {}
    for number, (kind, colour) in enumerate(zip(kinds, colours), 1):
        if of_palette:
            note = of_palette[int(kind >> 32) - 1]
            wishes[number] = Wish(note.mark, stitch=note.stitch)
            continue
        alike = [note for note in known if note.hex == hex_of(colour)]
        if len(alike) == 1:
            wishes[number] = Wish(alike[0].mark, stitch=alike[0].stitch)
    return wishes
