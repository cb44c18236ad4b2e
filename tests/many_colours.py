"""Patterns of many colours for tests and benchmarks: a card with one thread for each key mark."""

from colorsys import hls_to_rgb
from string import ascii_letters, digits

from packetgen.model import Colour, KeyLine, Pattern, Stitch, ThreadCard, ThreadSet
from tests.stitching import HERE, pattern

MARKS = ascii_letters + digits


def wheel(count: int) -> tuple[str, ...]:
    """Colours all round the wheel, light, middling and dark by turns."""
    found = []
    for index in range(count):
        channels = hls_to_rgb(index / count, (0.82, 0.56, 0.32)[index % 3], 0.55)
        found.append("#" + "".join(f"{round(255 * channel):02x}" for channel in channels))
    return tuple(found)


def many_coloured(rows: tuple[str, ...], hexes: tuple[str, ...], **more: object) -> Pattern:
    """A pattern whose chart is these rows of MARKS; `hexes` are the threads' colours in that order."""
    colours = tuple(
        Colour(f"D{number}", f"dye bath {number}", colour) for number, colour in enumerate(hexes, 1)
    )
    of = ThreadCard(
        "wheel",
        "Wheelwright",
        "cotton",
        6,
        25,
        "skein",
        8.0,
        False,
        {colour.number: colour for colour in colours},
    )
    key = tuple(
        KeyLine(mark, Stitch.FULL, {"wheel": (colour,)}, {}, HERE)
        for mark, colour in zip(MARKS, colours)
    )
    return pattern(*rows, sets=(ThreadSet("wheel", of, 2, 1, 1),), key=key, **more)
