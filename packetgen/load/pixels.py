"""Pictures: a chart drawn one pixel a stitch, and the photograph of the stitched model.

The only module of the load layer that knows the picture library.
"""

import io
import warnings
from collections import Counter
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from math import gcd

from PIL import Image, ImageFile

from packetgen.diagnostics import Place, Problems
from packetgen.load.chart import LARGEST, STITCHED, Chart
from packetgen.load.words import LOST, listed, said
from packetgen.model import BARE, Photo

_SLIPS = 12  # colours that a slip may add: our own choice
_BEGINS = {"PNG": b"\x89PNG\r\n\x1a\n", "JPEG": b"\xff\xd8\xff"}
_ENDS = {"PNG": ".png", "JPEG": ".jpg"}
MOST_PHOTO_PIXELS = 50_000_000
# Tags of the Exif standard (CIPA DC-008):
# 5 to 8 are the orientations with width and height exchanged.
_ORIENTATION = 0x0112
_GPS = 0x8825


def chart_from_picture(
    data: bytes, path: str, colours: dict[str, list[str]] | None, bring: str, problems: Problems
) -> Chart | None:
    """The chart of a PNG: a pixel is a stitch, a clear one bare cloth, its colour a key line's. Of any other
    picture it is told with which command to `bring` it in."""
    picture = _open(data, path, problems)
    if picture is None:
        return None
    if max(picture.size) > LARGEST:
        problems.add(
            Place(path), "chart-large", width=picture.width, height=picture.height, limit=LARGEST
        )
        return None
    if not _decodes(picture, path, problems) or colours is None:
        return None
    pixels = picture.convert("RGBA")
    marks: dict[tuple[int, int, int, int], str] = {}
    raw = iter(pixels.tobytes())
    stitches = list(zip(raw, raw, raw, raw, strict=True))  # row by row: red, green, blue, opacity
    times = Counter(stitches)
    if what := _drawn_otherwise(stitches, pixels.width, times, colours):
        problems.add(Place(path), "picture-to-bring", what=what, bring=bring)
        return None
    for number, pixel in enumerate(stitches):
        if pixel not in marks:
            row, column = divmod(number, pixels.width)
            marks[pixel] = _mark(
                pixel, Place(path, row + 1, column + 1), times[pixel], colours, problems
            )
    drawn = "".join(marks[pixel] for pixel in stitches)
    return Chart(
        tuple(drawn[start : start + pixels.width] for start in range(0, len(drawn), pixels.width)),
        path,
    )


def _drawn_otherwise(
    stitches: list[tuple[int, int, int, int]],
    width: int,
    times: Counter[tuple[int, int, int, int]],
    colours: dict[str, list[str]],
) -> str:
    """What shows that a pixel is no stitch; '' where nothing does."""
    rows = [stitches[start : start + width] for start in range(0, len(stitches), width)]
    if max(width, len(rows)) > STITCHED:
        across, down = _even(list(zip(*rows))), _even(rows)
        if across == down > 1:
            return f"a stitch is {across} pixels wide"
    strange = sum(
        opacity > 0 and f"#{red:02x}{green:02x}{blue:02x}" not in colours
        for red, green, blue, opacity in times
    )
    return f"{strange} of its colours are no key line's" if colours and strange > _SLIPS else ""


def _even(lines: Sequence[Sequence[object]]) -> int:
    """The largest number of lines of which all that are alike come together, in whole groups."""
    return gcd(len(lines), *(n for n in range(1, len(lines)) if lines[n] != lines[n - 1]))


def whole_picture(
    data: bytes, path: str, problems: Problems, most: int = MOST_PHOTO_PIXELS
) -> Image.Image | None:
    """The picture, decoded, where it has `most` pixels or less and can be read to its end."""
    picture = _open(data, path, problems, most)
    if picture is None:
        return None
    if picture.width * picture.height > most:
        problems.add(Place(path), "picture-large", limit=most // 1_000_000)
        return None
    if not _decodes(picture, path, problems):
        return None
    return picture


def read_photo(data: bytes, path: str, problems: Problems) -> Photo | None:
    """The photograph, decoded once to be sure that it can be."""
    picture = whole_picture(data, path, problems)
    if picture is None:
        return None
    turned, tells_place = _exif(picture)
    if tells_place:
        problems.add(Place(path), "photo-tells-place")
    width, height = reversed(picture.size) if turned else picture.size
    return Photo(data, width, height)


def _exif(picture: Image.Image) -> tuple[bool, bool]:
    """Whether the photograph is shown on its side; whether it tells where it was taken."""
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")  # notes that cannot be read spoil no picture
            exif = picture.getexif()
            return exif.get(_ORIENTATION) in (5, 6, 7, 8), bool(exif.get_ifd(_GPS))
    except Exception:  # as above
        return False, False


def _open(
    data: bytes, path: str, problems: Problems, most: int = MOST_PHOTO_PIXELS
) -> Image.Image | None:
    """The picture with its size known, and nothing decoded yet."""
    try:
        with _whole(), warnings.catch_warnings():
            # The size is judged by the caller, in an author's words.
            warnings.simplefilter("ignore")
            return Image.open(io.BytesIO(data), formats=[_kind(path)])
    except Image.DecompressionBombError:
        problems.add(Place(path), "picture-large", limit=most // 1_000_000)
    except Exception:  # a broken picture raises whatever its decoder happens to
        other, name = _other_kind(data), path.rpartition("/")[2].rpartition(".")[0]
        if other and other != _kind(path) and name == "photo":  # a chart is a PNG, by any name
            right = f"{name}{_ENDS[other]}"
            problems.add(
                Place(path), "picture-other-kind", is_a=other, kind=_kind(path), right=said(right)
            )
        else:
            problems.add(Place(path), "picture-unreadable", kind=_kind(path))
    return None


def _other_kind(data: bytes) -> str:
    """What its first bytes say (PNG, third edition, 5.2; JPEG, ITU-T T.81, B.1.1.3); '' of any other."""
    return next((kind for kind, begins in _BEGINS.items() if data.startswith(begins)), "")


def _decodes(picture: Image.Image, path: str, problems: Problems) -> bool:
    try:
        with _whole():
            picture.load()
    except Exception:  # as above
        problems.add(Place(path), "picture-unreadable", kind=_kind(path))
        return False
    return True


@contextmanager
def _whole() -> Iterator[None]:
    """The PDF engine, once loaded, lets every reader in the process be content with half a picture."""
    content_with_half = ImageFile.LOAD_TRUNCATED_IMAGES
    ImageFile.LOAD_TRUNCATED_IMAGES = False
    try:
        yield
    finally:
        ImageFile.LOAD_TRUNCATED_IMAGES = content_with_half


def _kind(path: str) -> str:
    return "PNG" if path.endswith(".png") else "JPEG"


def _mark(
    pixel: tuple[int, int, int, int],
    place: Place,
    times: int,
    colours: dict[str, list[str]],
    problems: Problems,
) -> str:
    red, green, blue, opacity = pixel
    if opacity == 0:
        return BARE
    colour = f"#{red:02x}{green:02x}{blue:02x}"
    spot = f"column {place.column}, row {place.line}" + (
        f" ({times} stitches in all)" if times > 1 else ""
    )
    if opacity < 255:
        problems.add(place, "pixel-half-clear", spot=spot)
        return LOST
    marks = colours.get(colour, [])
    if len(marks) == 1:
        return marks[0]
    if marks:
        problems.add(place, "pixel-of-several", colour=colour, marks=listed(marks, "and"))
        return LOST
    if not colours:
        return LOST
    nearest = min(colours, key=lambda known: _distance(known, (red, green, blue)))
    problems.add(
        place,
        "pixel-unknown",
        colour=colour,
        spot=spot,
        mark=said(colours[nearest][0]),
        nearest=nearest,
    )
    return LOST


def _distance(known: str, colour: tuple[int, int, int]) -> int:
    """Squared distance in sRGB: good enough to name the colour that was probably meant."""
    parts = (int(known[start : start + 2], 16) for start in (1, 3, 5))
    return sum((a - b) ** 2 for a, b in zip(parts, colour, strict=True))
