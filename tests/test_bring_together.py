"""Two colours of a drawing that become one thread are a loss and told one by one; shades that soft edges make
of a colour are none, and told in one line."""

import random
from io import BytesIO

import numpy as np
import pytest
from PIL import Image, ImageDraw

from packetgen.bring.apart import apart, lab_of, rgb_of
from packetgen.bring.brought import Brought, bring
from packetgen.bring.drawing import Drawing, hex_of
from packetgen.bring.ground import with_bare
from packetgen.bring.picture import read_pixels
from packetgen.bring.pixel_chart import read_chart
from packetgen.bring.told import report
from packetgen.colour import CLOSE, FAR
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


def brought(
    picture: Image.Image, card: tuple[Colour, ...] = CARD, bare: tuple[str, ...] = ()
) -> Brought:
    data = BytesIO()
    picture.save(data, "PNG")
    pixels = read_pixels(data.getvalue(), "ducks.png", Problems())
    assert pixels is not None
    drawing = read_chart(pixels, 6, "ducks.png", Problems())
    assert drawing is not None
    return bring(with_bare(drawing, bare), card)


def fallen(found: Brought) -> dict[str, list[int]]:
    return {one.colour.name: [squares for _, squares in one.of] for one in found.together}


@pytest.mark.parametrize(
    "how", ["blur 1.5", "blur 2", "bilinear", "bicubic", "drawn at ten pixels"]
)
def test_along_soft_edges_only_what_was_drawn_in_two_shades_falls_together(how):
    """The outline, one square wide, shows many shades, and all of them are told from what was drawn."""
    found = brought(softened(ducks(), how))
    assert fallen(found) == {"rain butt": [285, 49], "bean leaf": [108, 28]}
    assert found.soft_squares == 0 and "soft edges" not in report(found, "Beds", "beds.yaml")


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
    if not lost:
        words = (
            f"{over.size} squares lie in shades of soft edges, at most {found.soft_most:.1f} from the colour drawn "
            "there, and count with it."
        )
        assert words in report(found, "Beds", "beds.yaml").replace("\n  ", " ")
    assert found.entries[0].largest == pytest.approx(gap if lost else 0, abs=1e-9)
    assert found.soft_most == pytest.approx(0 if lost else gap, abs=1e-9)


BED = ("#5a823c", "#302930", "#002e53", "#c8403c", "#e0a03a", "#8fb4c9", "#f2c9a0", "#8a6fa8")


def bed(seed: int) -> Image.Image:
    """Patches of eight colours on white, some with a dark outline, and thin lines over them: 50 × 64."""
    chance = random.Random(seed)
    drawn = Image.new("RGB", (50, 64), "#ffffff")
    pen = ImageDraw.Draw(drawn)
    for colour in (*BED, *BED[:5]):
        left, top = chance.randint(3, 36), chance.randint(3, 50)
        right = min(left + chance.randint(5, 16), 46)
        bottom = min(top + chance.randint(5, 21), 60)
        shape = pen.rectangle if chance.random() < 0.5 else pen.ellipse
        outline = BED[1] if chance.random() < 0.5 else None
        shape((left, top, right, bottom), fill=colour, outline=outline)
    for _ in range(5):
        ends = [(chance.randint(3, 46), chance.randint(3, 60)) for _ in range(2)]
        pen.line(ends, fill=chance.choice(BED[:3]))
    return drawn


@pytest.mark.parametrize("how", ["blur 1", "blur 1.5"])
@pytest.mark.parametrize("seed", [1, 2])
def test_with_threads_of_her_very_colours_nothing_that_she_drew_is_far_or_falls_together(seed, how):
    """Though hundreds of squares show shades that soft edges made."""
    card = tuple(Colour(one, one, one) for one in (*BED, "#ffffff"))
    found = brought(softened(bed(seed), how), card, bare=("#ffffff",))
    assert fallen(found) == {}
    drawn = [entry for entry in found.entries if entry.colour.hex in BED]
    assert len(drawn) == len(BED) and all(entry.largest <= CLOSE for entry in drawn)
    assert found.soft_squares == 0


@pytest.mark.parametrize("how", ["blur 1", "blur 1.5", "bicubic"])
@pytest.mark.parametrize(
    ("body", "outline"),
    [
        ("#5b8c3e", "#48742f"),
        ("#404858", "#2a3040"),
        ("#283246", "#10182a"),
        ("#a04030", "#802818"),
    ],
)
def test_a_darker_outline_that_is_drawn_is_no_shade_of_a_soft_edge(how, body, outline):
    """One square wide between the body and white, as soft edges are too."""
    drawn = Image.new("RGB", (50, 40), "#ffffff")
    pen = ImageDraw.Draw(drawn)
    pen.rectangle((4, 6, 24, 26), fill=body, outline=outline)
    pen.ellipse((28, 6, 44, 32), fill="#e8c060")
    found = brought(softened(drawn, how))
    assert [361, 80] in fallen(found).values()


@pytest.mark.parametrize(("line", "lost"), [("#1b1a26", False), ("#6a646a", True)])
@pytest.mark.parametrize("bare", [(), ("#ffffff",)])
def test_a_line_beside_white_is_a_shade_only_within_a_small_part_of_the_step(line, lost, bare):
    """Also where the white is bare cloth by now. In a field of one colour no edge has made it."""
    dark, card = "#302930", (Colour("1", "soil", "#302930"), CARD[0])
    assert float(apart(*lab_of(rgb_of((dark, line))))) > FAR
    cells = np.ones((8, 8), int)
    cells[:, 4] = 2
    cells[:, 5:] = 0 if bare else 3
    colours = rgb_of((dark, line)) if bare else rgb_of((dark, line, "#ffffff"))
    found = bring(Drawing(cells, colours, soft=True, bare=bare), card)
    assert bool(found.together) == lost
    cells[:, 5:] = 1
    alone = bring(Drawing(cells, rgb_of((dark, line)), soft=True), card)
    assert bool(alone.together)


@pytest.mark.parametrize("how", ["blur 1", "blur 1.5", "drawn at ten pixels"])
@pytest.mark.parametrize("seed", [1, 2])
def test_a_soft_drawing_comes_in_with_its_own_colours_and_no_more(seed, how):
    """Each square within a visible step of what was drawn there, thin lines and outlines too."""
    drawn = bed(seed)
    data = BytesIO()
    softened(drawn, how).save(data, "PNG")
    pixels = read_pixels(data.getvalue(), "bed.png", Problems())
    drawing = read_chart(pixels, 6, "bed.png", Problems())
    own = np.asarray(drawn).reshape(-1, 3)
    assert len(drawing.colours) == len(np.unique(own, axis=0))
    got = drawing.colours[drawing.cells.ravel() - 1].astype(int)
    assert np.abs(got - own).max() <= 4


WHITE, SOIL, PUTTY, GLASS = "#ffffff", "#6b4a36", "#5e3d25", "#cfe3e6"
FRAME = tuple(
    Colour(f"{number:02}", name, colour)
    for number, (name, colour) in enumerate(
        (
            ("paper", WHITE),
            ("potting soil", "#6c4b38"),
            ("old putty", "#5f3e26"),
            ("misted pane", "#cfe0e3"),
        )
    )
)


def cold_frame() -> Image.Image:
    """A bed of soil that touches white and glass, and putty so near to it in colour that a dark rim would be it."""
    drawn = Image.new("RGB", (44, 52), WHITE)
    pen = ImageDraw.Draw(drawn)
    pen.rectangle((4, 6, 38, 20), fill=GLASS)
    pen.rectangle((8, 16, 34, 20), fill=SOIL)
    pen.rectangle((4, 21, 38, 23), fill=PUTTY)
    pen.rectangle((2, 30, 40, 46), fill=SOIL)
    pen.line((6, 35, 36, 35), fill=PUTTY)
    return drawn


@pytest.mark.parametrize("px", [4.5, 5.25, 5.75, 6.4, 7.3, 8])
@pytest.mark.parametrize("how", ["BILINEAR", "BICUBIC", "LANCZOS"])
@pytest.mark.parametrize("softened_first", [False, True])
def test_the_rim_of_a_colour_keeps_its_thread_beside_another_that_is_near(px, how, softened_first):
    """Filters make a rim against white darker than the rest, by as much as the two browns are apart. Of few pixels
    a stitch the sharpest filter leaves corners, which it darkens twice, still in the other brown."""
    drawn = cold_frame()
    size = round(drawn.width * px), round(drawn.height * px)
    begun = softened(drawn, "blur 1.2") if softened_first else drawn
    data = BytesIO()
    begun.resize(size, Image.Resampling[how]).save(data, "PNG")
    pixels = read_pixels(data.getvalue(), "frame.png", Problems())
    drawing = read_chart(pixels, None, "frame.png", Problems())
    found = bring(drawing, FRAME)
    own = dict(zip((WHITE, SOIL, PUTTY, GLASS), (one.name for one in FRAME)))
    names = np.array([entry.colour.name for entry in found.entries])[found.cells - 1]
    truth = [[own[hex_of(drawn.getpixel((x, y)))] for x in range(44)] for y in range(52)]
    wrong = int((names != np.array(truth)).sum())
    corners = 4 if (px, how, softened_first) == (4.5, "LANCZOS", False) else 0
    assert wrong <= corners
    assert found.soft_squares == 0
