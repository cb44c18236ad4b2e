"""Charts made of photographs: sixty colours, and no row like the next.

The pictures are flower.jpg and china.jpg of scikit-learn's sample pictures, under the Creative Commons
licence CC BY 2.0 (https://creativecommons.org/licenses/by/2.0/); README.txt in sklearn/datasets/images
names who took them and where they were found. They are only read here, never passed on.
"""

import shutil
import subprocess
import time
from importlib.util import find_spec
from io import BytesIO
from math import ceil
from pathlib import Path

import pytest
from PIL import Image
from pypdf import PdfReader

from packetgen.chart.tiling import MOST_COLUMNS, MOST_ROWS
from packetgen.pipeline import packet_files
from packetgen.render.templates import environment
from tests.chart_only import reckoned, symbols
from tests.many_colours import MARKS, many_coloured
from tests.read_back import READERS, in_marks, whole_chart
from tests.stitching import series

pytestmark = pytest.mark.slow

COLOURS = 60
# What is charted → file, the part of it (left, top, right, bottom, in pixels), stitches.
PICTURES = {
    "a dahlia before leaves": ("flower.jpg", (0, 0, 640, 427), (150, 100)),
    "trees by a lake": ("china.jpg", (300, 155, 640, 427), (150, 120)),
}


def photograph(file_name: str) -> Image.Image:
    """Found without importing the library, which would take longer than the test."""
    spec = find_spec("sklearn")
    assert spec and spec.origin, "scikit-learn, whose pictures these are, is in the extra 'test'"
    return Image.open(Path(spec.origin).parent / "datasets" / "images" / file_name)


def charted(name: str):
    """The picture as a pattern in which each of its sixty colours is a thread of its own."""
    file_name, part, size = PICTURES[name]
    small = photograph(file_name).convert("RGB").resize(size, Image.Resampling.LANCZOS, box=part)
    few = small.quantize(COLOURS, dither=Image.Dither.NONE)
    palette = bytes(few.getpalette()[: 3 * COLOURS])
    hexes = tuple(f"#{palette[at : at + 3].hex()}" for at in range(0, len(palette), 3))
    width, height = size
    cells = "".join(MARKS[index] for index in few.tobytes())
    rows = tuple(cells[at : at + width] for at in range(0, width * height, width))
    return many_coloured(rows, hexes, title=name.capitalize())


@pytest.fixture(scope="module", params=PICTURES)
def packet(request):
    """(figures, the packet's PDFs by file name) of one picture."""
    started = time.perf_counter()
    pattern = charted(request.param)
    figures = reckoned(pattern)
    cover = BytesIO()
    photograph(PICTURES[request.param][0]).save(cover, "JPEG")
    files = packet_files(series(pattern), figures, cover.getvalue(), frozenset(), environment())
    print(f"\n{request.param}: {figures.stitches} stitches, {time.perf_counter() - started:.1f} s")
    return figures, {
        path.rpartition("/")[2]: data for path, data in files.items() if path.endswith(".pdf")
    }


def test_every_stitch_of_a_picture_is_worked_in_one_of_sixty_colours(packet):
    figures, _ = packet
    grid = figures.pattern.grid
    assert set("".join(grid.rows)) == set(MARKS[:COLOURS])
    assert figures.stitches == grid.width * grid.height
    assert len(figures.works) == COLOURS


@pytest.mark.parametrize("reader", READERS)
def test_a_picture_is_read_back_from_its_packet_cell_by_cell(packet, reader):
    figures, pdfs = packet
    pages = reader(pdfs["sprig-letter.pdf"])
    back = in_marks(whole_chart(pages.values()), symbols(figures))
    assert back == figures.pattern.grid.rows


def test_the_pages_of_a_picture_are_neither_crowded_nor_wasted(packet):
    """No page shows more than it may, and they are no more than twice the fewest possible."""
    figures, pdfs = packet
    grid = figures.pattern.grid
    pages = READERS[0](pdfs["sprig-a4.pdf"])
    assert [page.number for page in pages.values()] == list(range(1, len(pages) + 1))
    assert {page.of for page in pages.values()} == {len(pages)}
    assert all(len(page.shown) <= MOST_ROWS for page in pages.values())
    assert all(len(page.shown[0]) <= MOST_COLUMNS for page in pages.values())
    fewest = ceil(grid.width / MOST_COLUMNS) * ceil(grid.height / MOST_ROWS)
    assert fewest <= len(pages) <= 2 * fewest
    others = len(PdfReader(BytesIO(pdfs["sprig-a4.pdf"])).pages) - len(pages)
    assert 10 <= others <= 20  # cover, buying, key, sizes, overview, notes, finishing …


def test_a_second_reader_finds_no_fault_in_the_packet_of_a_picture(packet, tmp_path):
    if not shutil.which("qpdf"):
        pytest.skip("qpdf is not installed here")
    for name, data in packet[1].items():
        (tmp_path / name).write_bytes(data)
        said = subprocess.run(
            ["qpdf", "--check", tmp_path / name], capture_output=True, text=True, check=False
        )
        assert said.returncode == 0, said.stdout + said.stderr
