"""Two colours of a drawing that become one thread are a loss and told one by one; shades that soft edges make
of a colour are none, and told in one line."""

from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageDraw

from packetgen.bring.apart import apart, lab_of, rgb_of
from packetgen.bring.brought import Brought, bring
from packetgen.bring.drawing import Drawing
from packetgen.bring.picture import read_pixels
from packetgen.bring.pixel_chart import read_chart
from packetgen.bring.told import report
from packetgen.diagnostics import Problems
from packetgen.model import Colour
from tests.test_bring_ground import large, softened

CARD = tuple(
    Colour(f"{number:02}", name, colour)
    for number, (name, colour) in enumerate(
        (
            ("milk", "#ffffff"),
            ("wet slate", "#283246"),
            ("brick", "#a04030"),
            ("bean leaf", "#4f7942"),
            ("straw", "#e8c060"),
            ("rain butt", "#8fa3b0"),
        )
    )
)


def ducks() -> Image.Image:
    """Outlined in wet slate; the grass and the grey one have a patch of a second shade each, of 28 and of 49
    squares, for which the card has no thread of its own."""
    drawn = Image.new("RGB", (50, 40), "#ffffff")
    pen = ImageDraw.Draw(drawn)
    pen.ellipse((4, 6, 24, 26), fill="#e8c060", outline="#283246")
    pen.ellipse((26, 10, 45, 34), fill="#8fa3b0", outline="#283246")
    pen.rectangle((8, 30, 24, 37), fill="#5b8c3e")
    pen.rectangle((10, 32, 16, 35), fill="#3f6a2c")
    pen.line((0, 2, 49, 5), fill="#a04030")
    pen.rectangle((30, 20, 36, 26), fill="#7f95a5")
    return drawn


def brought(picture: Image.Image) -> Brought:
    data = BytesIO()
    picture.save(data, "PNG")
    pixels = read_pixels(data.getvalue(), "ducks.png", Problems())
    assert pixels is not None
    drawing = read_chart(pixels, 6, "ducks.png", Problems())
    assert drawing is not None
    return bring(drawing, CARD)


def fallen(found: Brought) -> dict[str, list[int]]:
    return {one.colour.name: [squares for _, squares in one.of] for one in found.together}


@pytest.mark.parametrize(
    "how", ["blur 1.5", "blur 2", "bilinear", "bicubic", "drawn at ten pixels"]
)
def test_along_soft_edges_only_what_was_drawn_in_two_shades_falls_together(how):
    """The outline, one square wide, goes through many shades, and all of them are wet slate."""
    found = brought(softened(ducks(), how))
    assert fallen(found) == {"rain butt": [285, 49], "bean leaf": [108, 28]}
    words = "Shades along soft edges are counted with the colour beside them: "
    assert (words in report(found, "Beds", "beds.yaml").replace("\n  ", " ")) == (how != "bilinear")


def test_where_edges_are_hard_each_colour_was_drawn():
    found = brought(large(ducks()))
    assert fallen(found) == {"rain butt": [285, 49], "bean leaf": [108, 28]}
    assert found.soft_squares == 0 and "soft edges" not in report(found, "Beds", "beds.yaml")


# Over a patch of 64 squares lies one of 9, or a line of 3 that is one square wide.
PATCH, LINE = np.ones((3, 3), int), np.ones((1, 3), int)


@pytest.mark.parametrize(
    ("shade", "between", "over", "lost"),
    [
        ("#93a5b0", (0, 3), PATCH, False),  # close: nobody draws a patch in it
        ("#7f95a5", (3, 6), PATCH, True),  # visible, and a patch: drawn
        ("#7f95a5", (3, 6), LINE, False),  # visible, but as thin as edges are
        ("#6f8595", (6, 99), LINE, True),  # so far that it is drawn in any case
    ],
)
def test_a_shade_is_lost_where_it_is_seen_and_broad_or_where_it_is_far(shade, between, over, lost):
    gap = float(apart(*lab_of(rgb_of(("#8fa3b0", shade)))))
    assert between[0] < gap <= between[1], "as the case says"
    cells = np.ones((8, 8), int)
    cells[2 : 2 + over.shape[0], 2 : 2 + over.shape[1]] = 2
    found = bring(Drawing(cells, rgb_of(("#8fa3b0", shade)), soft=True), CARD[-1:])
    assert bool(found.together) == lost
    assert found.soft_squares == (0 if lost else over.size)
