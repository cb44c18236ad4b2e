"""The pictures of the tutorial, made by doing what it says.

    python -m tests.guide_pictures

writes them anew into the guide. It needs the browser that tests/browser needs.
"""

import os
import tempfile
from collections.abc import Callable
from contextlib import chdir
from io import BytesIO
from pathlib import Path

import pypdfium2
from PIL import Image, ImageChops, ImageDraw, ImageFont, ImageStat
from playwright.sync_api import sync_playwright

from packetgen.chart.symbols import code_point
from packetgen.program import PACKAGE, guide_sources
from packetgen.shape_names import SHAPE_NAMES
from tests.browser.machine import browser_program
from tests.guide_reader import Reader, to_save

PICTURES = Path(__file__).parent.parent / "packetgen/guide/pictures"
MOST_BYTES = 60_000
RHUBARB = "rhubarb-under-a-bucket"
_SHOWN = {"report.jpg": "proof.html", "page.jpg": f"build/site/{RHUBARB}/index.html"}
_ACROSS_PX = 800
_COLUMNS = 5  # of chart shapes

_ZINC, _SHADE, _DARK = "#8fa3b0", "#5f7482", "#43545f"
_LEAF, _VEIN, _STALK, _PINK, _EARTH = "#5b8c3e", "#3f6a2c", "#c8546a", "#e58fa0", "#7a5238"


def drawing(px: int = 8) -> Image.Image:
    """Rhubarb under a bucket, 40 × 40 stitches of so many pixels; bare cloth is clear."""
    image = Image.new("RGBA", (40, 40), (0, 0, 0, 0))
    pen = ImageDraw.Draw(image)
    pen.rectangle((4, 35, 35, 38), fill=_EARTH)
    for x, foot in ((6, 9), (33, 30)):
        pen.line((x, 27, foot, 36), fill=_STALK, width=2)
        pen.line((x, 27, foot, 36), fill=_PINK)
    for x, foot in ((14, 18), (26, 22)):
        pen.line((x, 5, foot, 10), fill=_STALK, width=3)
        pen.line((x, 5, foot, 10), fill=_PINK)
    pen.polygon([(14, 12), (26, 12), (30, 34), (10, 34)], fill=_ZINC)
    pen.polygon([(24, 13), (26, 13), (29, 33), (26, 33)], fill=_SHADE)
    pen.rectangle((13, 10, 27, 12), fill=_SHADE)
    pen.rectangle((9, 32, 31, 34), fill=_SHADE)
    pen.line((13, 10, 27, 10), fill=_DARK)
    pen.line((9, 34, 31, 34), fill=_DARK)
    pen.arc((12, 16, 28, 34), 200, 340, fill=_DARK)
    for x, y, radius in ((6, 25, 5), (33, 25, 5), (13, 4, 4), (27, 4, 4)):
        _leaf(pen, x, y, radius)
    return image.resize((40 * px, 40 * px), Image.Resampling.NEAREST)


def _leaf(pen: ImageDraw.ImageDraw, x: int, y: int, radius: int) -> None:
    pen.ellipse((x - radius, y - radius + 1, x + radius, y + radius - 1), fill=_LEAF)
    pen.line((x, y - radius + 2, x, y + radius - 1), fill=_VEIN)
    for row in range(-radius + 3, radius - 1, 3):
        for side in (-1, 1):
            pen.line((x, y + row + 1, x + side * (radius - 2), y + row - 1), fill=_VEIN)


def shapes() -> Image.Image:
    """Every chart shape with its name, down five columns."""
    fonts = PACKAGE / "fonts"
    symbols = ImageFont.truetype(fonts / "symbols.ttf", 24)
    words = ImageFont.truetype(fonts / "text-regular.ttf", 13)
    down = -(-len(SHAPE_NAMES) // _COLUMNS)
    wide, high = _ACROSS_PX // _COLUMNS, 34
    image = Image.new("L", (_ACROSS_PX, down * high), "white")
    pen = ImageDraw.Draw(image)
    for number, name in enumerate(SHAPE_NAMES):
        x, y = number // down * wide, number % down * high
        pen.text((x + 4, y + high // 2), code_point(name), font=symbols, fill="black", anchor="lm")
        pen.text((x + 34, y + high // 2), name, font=words, fill="black", anchor="lm")
    return image.quantize(8)


def follow(page: str, folder: Path) -> Reader:
    """Do all that this page of the guide says, in this folder, in which the process must stand."""
    sources = guide_sources()
    text = sources[page].decode()
    for path in to_save(text):
        (folder / path.rpartition("/")[2]).write_bytes(sources[path])
    return Reader(folder, page).follow(text)


def of_files(folder: Path) -> dict[str, Image.Image]:
    """The pictures that come straight from what the tutorial has made."""
    return {
        "rhubarb.png": drawing(),
        "shapes.png": shapes(),
        "look.jpg": _shrunk(Image.open(folder / "look.png")),
        "packet.jpg": _packet(folder / f"build/packets/along-the-garden-path/{RHUBARB}-a4.pdf"),
    }


def _packet(file: Path) -> Image.Image:
    """The first page and the first page of the chart, side by side."""
    document = pypdfium2.PdfDocument(file)
    chart = next(
        entry.get_dest().get_index()
        for entry in document.get_toc()
        if entry.get_title().startswith("Chart 1 of")
    )
    leaves = [document[number].render(scale=1.2).to_pil() for number in (0, chart)]
    wide, high = leaves[0].size
    both = Image.new("RGB", (2 * wide + 20, high), "#d9d6cf")
    for number, leaf in enumerate(leaves):
        both.paste(leaf, (number * (wide + 20), 0))
    return _shrunk(both)


def of_screen(folder: Path) -> dict[str, Image.Image]:
    """The pictures that a browser takes of what the tutorial has made, without the machine's own fonts."""
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(
            executable_path=browser_program(),
            args=["--no-sandbox", "--disable-gpu"],
            env={**os.environ, "FONTCONFIG_FILE": str(PACKAGE / "fonts" / "fonts.conf")},
        )
        page = browser.new_page(viewport={"width": 1100, "height": 860})
        taken = {}
        for name, file in _SHOWN.items():
            page.goto((folder / file).resolve().as_uri())
            taken[name] = _shrunk(Image.open(BytesIO(page.screenshot())))
        browser.close()
    return taken


def _shrunk(picture: Image.Image) -> Image.Image:
    high = round(picture.height * _ACROSS_PX / picture.width)
    return picture.convert("RGB").resize((_ACROSS_PX, high), Image.Resampling.LANCZOS)


def as_file(picture: Image.Image, name: str) -> bytes:
    target = BytesIO()
    picture.save(target, "PNG" if name.endswith("png") else "JPEG", optimize=True, quality=56)
    return target.getvalue()


def look_alike(one: bytes, other: bytes) -> bool:
    """Whether a reader would take the one for the other: no wide difference, wherever it lies."""
    first, second = (Image.open(BytesIO(data)).convert("RGB") for data in (one, other))
    if first.size != second.size:
        return False
    apart = ImageStat.Stat(ImageChops.difference(first, second)).mean
    return max(apart) < 2  # of 255; what JPEG takes away gives less than 1


def main(
    takes: tuple[Callable[[Path], dict[str, Image.Image]], ...] = (of_files, of_screen),
) -> None:
    PICTURES.mkdir(exist_ok=True)
    (PICTURES / "rhubarb.png").write_bytes(as_file(drawing(), "rhubarb.png"))
    with tempfile.TemporaryDirectory() as name, chdir(name):
        follow("tutorial.md", Path(name))
        for take in takes:
            for file, picture in take(Path(name)).items():
                data = as_file(picture, file)
                assert len(data) <= MOST_BYTES, f"{file} has {len(data)} bytes"
                (PICTURES / file).write_bytes(data)
                print(f"{file}: {len(data)} bytes")


if __name__ == "__main__":
    main()
