"""A whole content folder in miniature, so that each test can change one thing in it and nothing
else.
"""

import io
import random
import struct
import zlib
from collections.abc import Mapping
from pathlib import Path

import numpy as np
from PIL import Image, ImageDraw, ImageFilter

Change = str | bytes | None | tuple[str, str]

FERN = "series/garden-year/fern"
PATTERN = f"{FERN}/pattern.yaml"
CHART = f"{FERN}/chart.txt"
SERIES = "series/garden-year/series.yaml"
MOSS = "threads/moss.yaml"
CLOTH = "cloths/hopsack-28.yaml"
BEADS = "beads/drop.yaml"
FINISH = "finishes/shelf/finish.yaml"

TINY: Mapping[str, str] = {
    MOSS: """\
name: Moss Stranded
material: cotton
strands: 6
tex: 25
sold_as: skein
length: 8 m
dyed: plain
colours:
  - {number: E2, name: brick, hex: "#a04030"}
  - {number: K4, name: peat, hex: "#6b503a"}
  - {number: "07", name: fern, hex: "#4f7942"}
""",
    "threads/spool.yaml": """\
name: Spool Twelve
material: cotton
strands: 1
tex: 50
sold_as: spool
length: 50 yd
dyed: by hand
colours:
  - {number: "10", name: rust, hex: "#9c4a2f"}
  - {number: "12", name: earth, hex: "#69513c"}
  - {number: "14", name: leaf, hex: "#507840"}
""",
    CLOTH: """\
name: Hopsack 28
weave: evenweave
count: 28
over: 2
colours:
  - {name: frost, hex: "#f2f2ee"}
  - {name: oatmeal, hex: "#e6dcc6"}
""",
    BEADS: """\
name: Drop Glass
size: 2.2 mm
packet: 300
colours:
  - {number: "07", name: hip red, hex: "#b32c2e"}
""",
    FINISH: """\
name: The Shelf
about: A shelf with a back.
panel:
  outline: 0,0 100,0 100,100 0,100
border: 6 mm
fold_over: 20 mm
wadding_inset: 1 mm
parts:
  - name: back
    outline: 0,0 120,0 120,120 0,120
    at: 0,0
    thickness: 6 mm
    pieces: 1
    paint: sage
    coats: 2
    faces: both
paints:
  - name: sage
    hex: "#b0c8b3"
    put_on_with: brush
    covers: 10 m2 per litre
    dries_in: 1 h
    tin: 100 ml
trim: {kind: gathered, ratio: 1.5, overlap: 20 mm}
magnets: {pairs: 4, diameter: 10 mm, thickness: 2 mm, inset: 15 mm}
cautions: [small magnets, dust]
""",
    "finishes/shelf/steps.md": "1. Saw the wood.\n",
    SERIES: """\
title: The Garden Year
tagline: Small patterns.
release: 2027-01-15 09:00 Europe/London
finish: shelf
thread_sets:
  - {name: moss, card: moss, strands: 2}
  - {name: spool, card: spool, strands: 1}
designers:
  - id: alder
    name: Wren Alder
    about: Draws what grows by the door.
    shop: https://alder.example/alder
order: [fern]
to_come:
  - {title: Onions, designer: alder, occasion: {name: Harvest, on: last Monday of August}}
licence: For your own stitching.
notices:
  - {date: 2026-11-20, title: Linen, text: The linen is back.}
""",
    "series/garden-year/welcome.md": "Welcome to the garden.\n",
    PATTERN: """\
title: Fern by the Tap
designer: alder
about: A fern uncurls.
occasion: {name: First warm day, on: second Sunday of May}
cloths:
  - {cloth: hopsack-28, colour: frost}
thread_sets: [moss, spool]
key:
  r: {moss: E2, spool: "10"}
  k: {moss: K4, spool: "12"}
  b: {moss: [E2, "07"], spool: ["10", "14"]}
backstitch:
  - {colour: k, path: "1,1 4,1 4,2.5"}
french_knots:
  - {colour: r, at: "2.5,2.5 3,3"}
beads:
  - {card: drop, number: "07", at: "3.5,1.5"}
close_ups:
  - at: 3,2
    rows: |
      k..k
      kk..
credits: {model_stitcher: Hazel Penn}
sold_at:
  - {name: Alder's counter, url: https://alder.example/by-fern}
revisions:
  - {date: 2026-11-25, note: First issue.}
""",
    CHART: """\
# A fern
rrbb
rk..
""",
    f"{FERN}/story.md": "It grew behind the tap.\n",
    f"{FERN}/stitching.md": "Begin in the middle.\n",
}


def build(root: Path, changes: Mapping[str, Change] | None = None) -> Path:
    """Write the tiny folder under `root` with some files changed, and give `root` back.

    A change is (old words, new words) within the tiny file, a whole new file, or None for no such
    file.
    """
    files: dict[str, str | bytes] = dict(TINY)
    for path, change in (changes or {}).items():
        if change is None:
            del files[path]
        elif isinstance(change, tuple):
            old, new = change
            assert TINY[path].count(old) == 1, (
                f"{old!r} stands {TINY[path].count(old)} times in {path}"
            )
            files[path] = TINY[path].replace(old, new)
        else:
            files[path] = change
    for path, content in files.items():
        file = root / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(content if isinstance(content, bytes) else content.encode("utf-8"))
    return root


def picture(rows: list[list[str | tuple[int, int, int, int]]], kind: str = "PNG") -> bytes:
    """A picture of one pixel for each colour in `rows`."""
    image = Image.new("RGBA", (len(rows[0]), len(rows)))
    for y, row in enumerate(rows):
        for x, colour in enumerate(row):
            image.putpixel((x, y), _rgba(colour))
    data = io.BytesIO()
    (image.convert("RGB") if kind == "JPEG" else image).save(data, kind)
    return data.getvalue()


def half_seen() -> tuple[np.ndarray, bytes]:
    """30 × 30 stitches of three colours, and a picture of them that was enlarged so softly (4.5 px) and saved
    with such loss that they hardly show."""
    colours = [_rgba(colour)[:3] for colour in ("#a04030", "#6b503a", "#4f7942")]
    small = np.random.default_rng(5).integers(0, 3, (30, 30))
    drawn = Image.fromarray(np.array(colours, np.uint8)[small])
    lossy, data = io.BytesIO(), io.BytesIO()
    drawn.resize((135, 135), Image.Resampling.LANCZOS).save(lossy, "JPEG", quality=75)
    Image.open(lossy).convert("RGB").save(data, "PNG")
    return small, data.getvalue()


def drawn_freely(number: int = 0) -> bytes:
    """A soft drawing of leaves and stems in pixels, without a square for any stitch; another one by its number."""
    chance = random.Random(number)
    wide, high = chance.randint(300, 700), chance.randint(300, 700)
    image = Image.new("RGB", (wide, high), "#f6f3ea")
    draw = ImageDraw.Draw(image)
    for colour in ("#a04030", "#4f7942", "#6b503a", "#8fb4c9", "#e0a03a", "#3f6f8f"):
        x, y = chance.randint(0, wide), chance.randint(0, high)
        across, down = chance.randint(20, wide // 4), chance.randint(20, high // 4)
        draw.ellipse((x - across, y - down, x + across, y + down), fill=colour)
        draw.line((x, y, x + across, y + 2 * down, x + 2 * across, y), fill=colour, width=6)
    data = io.BytesIO()
    image.filter(ImageFilter.GaussianBlur(chance.choice((1, 2, 3, 5)))).save(data, "PNG")
    return data.getvalue()


def noise(width: int, height: int) -> bytes:
    """A picture in which there is nothing to see."""
    data = io.BytesIO()
    pixels = np.random.default_rng(3).integers(0, 255, (height, width, 3)).astype(np.uint8)
    Image.fromarray(pixels).save(data, "PNG")
    return data.getvalue()


def _rgba(colour: str | tuple[int, int, int, int]) -> tuple[int, int, int, int]:
    if isinstance(colour, tuple):
        return colour
    return (*(int(colour[start : start + 2], 16) for start in (1, 3, 5)), 255)


def photo_with_place() -> bytes:
    """A photograph whose notes hold a position on the globe (Exif, GPSInfo)."""
    exif = Image.Exif()
    exif.get_ifd(0x8825)[2] = (51.0, 30.0, 0.0)  # GPSLatitude
    data = io.BytesIO()
    Image.new("RGB", (2, 2)).save(data, "JPEG", exif=exif)
    return data.getvalue()


def picture_that_claims(width: int, height: int) -> bytes:
    """A PNG whose head gives a size that its body does not have (W3C PNG, chapter 11: IHDR)."""
    data = bytearray(picture([["#a04030"]]))
    data[16:24] = struct.pack(">II", width, height)
    data[29:33] = struct.pack(">I", zlib.crc32(data[12:29]))
    return bytes(data)


def cut(path: str, start: str, end: str, instead: str = "") -> str:
    """The tiny file up to `start` and again from `end` on, with something else between."""
    text = TINY[path]
    return text[: text.index(start)] + instead + text[text.index(end) :]
