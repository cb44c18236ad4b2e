"""The command, with a small plain picture and a small paper in place of every real one.

A build made with it has as many files as a real one, and knows of itself what a real one knows; so what
builds after it cost can be measured on large catalogues without drawing them.
"""

import hashlib
import sys
from itertools import count

from PIL import Image, ImageDraw

from packetgen.cli import main
from packetgen.pipeline import jobs, packets
from packetgen.render import pictures

_numbers = count()
_PAPER_BYTES = 20_000


def _small(*_: object, **__: object) -> Image.Image:
    """Another picture every time, since a build finds pictures by their contents: a number in squares."""
    number, image = next(_numbers), Image.new("RGB", (128, 64), "#b7c6b4")
    draw = ImageDraw.Draw(image)
    for place in range(32):
        if number >> place & 1:
            x, y = place % 8 * 16, place // 8 * 16
            draw.rectangle((x, y, x + 15, y + 15), "#1f3a2d")
    return image


def _papers(series: object, figures: object, *_: object) -> dict[str, bytes]:
    """Bytes for every file of a packet, another for each."""
    of = figures.pattern.id
    names = [f"packets/{series.id}/{name}" for name in packets.paper_names(figures.pattern.id)]
    names += [f"packets/{series.id}/{of}.zip", f"ledger/{series.id}/{of}.json"]
    return {name: hashlib.shake_128(name.encode()).digest(_PAPER_BYTES) for name in names}


for name in ("bench", "gathering", "mounted_public", "detail", "share_picture", "stitched"):
    assert hasattr(pictures, name), name
    setattr(pictures, name, _small)
pictures.face = lambda *_: None
pictures.close_box = lambda *_: (0, 0, 10, 10)
jobs.packet_files = _papers

if __name__ == "__main__":
    # Other processes would load the real ones.
    sys.argv += ["--workers", "1"]
    main(prog_name="packetgen")
