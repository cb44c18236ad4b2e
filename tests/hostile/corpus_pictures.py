"""Pictures and faces that are broken, or not what they say."""

import io
import struct
import zlib
from importlib.resources import files

from PIL import Image

from tests.content_builder import CHART, FERN, PATTERN, SERIES, TINY, picture, picture_that_claims
from tests.hostile.case import Case, safe, told
from tests.wrong_input_case import BLEND

PHOTO, PHOTO_PNG = f"{FERN}/photo.jpg", f"{FERN}/photo.png"
PNG = f"{FERN}/chart.png"
FACE = "series/garden-year/own.ttf"
_RED, _BROWN, _CLEAR = "#a04030", "#6b503a", (0, 0, 0, 0)
_CELLS = [[_RED, _RED, _BROWN, _BROWN], [_RED, _BROWN, _CLEAR, _CLEAR]]


def _saved(image: Image.Image, kind: str, **how: object) -> bytes:
    data = io.BytesIO()
    image.save(data, kind, **how)
    return data.getvalue()


def _plain(mode: str = "RGB", size: tuple[int, int] = (40, 30)) -> Image.Image:
    return Image.new(mode, size)


def _chunk(kind: bytes, data: bytes) -> bytes:
    """A part of a PNG with its length and check sum (W3C PNG, 5.3)."""
    return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))


def _with_chunk(kind: bytes, data: bytes) -> bytes:
    """A sound PNG with one more part after its head."""
    sound = picture(_CELLS)
    return sound[:33] + _chunk(kind, data) + sound[33:]


def _noise_png(size: int, depth: int, kind: int, data: bytes) -> bytes:
    head = struct.pack(">IIBBBBB", size, size, depth, kind, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n" + _chunk(b"IHDR", head) + _chunk(b"IDAT", data) + _chunk(b"IEND", b"")
    )


def _bomb() -> bytes:
    """A picture of 7,000 × 7,000 black pixels in 50 kB: allowed, and large once it is unpacked."""
    return _saved(Image.new("1", (7000, 7000)), "PNG")


def _notes(value: object) -> bytes:
    exif = Image.Exif()
    exif[0x010E] = value
    exif[0x0112] = 999
    return _saved(_plain(), "JPEG", exif=exif)


def _face(change: bytes | None = None, cut: int | None = None) -> dict:
    font = (files("packetgen") / "fonts" / "heading.ttf").read_bytes()
    if cut is not None:
        font = font[:cut]
    return _own_face(change if change is not None else font)


def _own_face(data: bytes) -> dict:
    return {SERIES: TINY[SERIES] + "look: {heading: own.ttf}\n", FACE: data}


def _scrambled(table: bytes) -> bytes:
    """A face one table of which is noise."""
    font = bytearray((files("packetgen") / "fonts" / "heading.ttf").read_bytes())
    entry = font.index(table, 12)
    start, length = struct.unpack(">II", font[entry + 8 : entry + 16])
    font[start : start + length] = b"\xa5" * length
    return bytes(font)


_JPEG = _saved(Image.effect_noise((300, 200), 90).convert("RGB"), "JPEG")
_PNG = picture(_CELLS)
_SVG = b"<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>"


def _chart(data: bytes) -> dict:
    return {CHART: None, PNG: data, PATTERN: (BLEND, "")}


CASES: tuple[Case, ...] = (
    told(
        "a chart that claims 60,000 pixels each way",
        _chart(picture_that_claims(60_000, 60_000)),
        f"picture-large {PNG}",
        heavy=True,
    ),
    told(
        "a chart that claims more pixels than there are",
        _chart(picture_that_claims(2**31 - 1, 2**31 - 1)),
        f"picture-large {PNG}",
        heavy=True,
    ),
    told(
        "a chart that claims none", _chart(picture_that_claims(0, 0)), f"picture-unreadable {PNG}"
    ),
    told(
        "a chart that claims a row",
        _chart(picture_that_claims(1000, 1)),
        f"picture-unreadable {PNG}",
    ),
    told(
        "a photo that claims 60,000 pixels each way",
        {PHOTO_PNG: picture_that_claims(60_000, 60_000)},
        f"picture-large {PHOTO_PNG}",
        heavy=True,
    ),
    told(
        "a photo that claims 7,000 pixels each way",
        {PHOTO_PNG: picture_that_claims(7_000, 7_000)},
        f"picture-unreadable {PHOTO_PNG}",
        heavy=True,
    ),
    safe("a photo that unpacks to a thousand times its size", {PHOTO_PNG: _bomb()}, heavy=True),
    told(
        "a photo of more pixels than a photo has",
        {PHOTO_PNG: _saved(Image.new("1", (9000, 6000)), "PNG")},
        f"picture-large {PHOTO_PNG}",
        heavy=True,
    ),
    told("a chart cut off", _chart(_PNG[:-30]), f"picture-unreadable {PNG}"),
    told("a chart cut off in its head", _chart(_PNG[:20]), f"picture-unreadable {PNG}"),
    told(
        "a chart with a wrong check sum",
        _chart(_PNG[:29] + b"\0\0\0\0" + _PNG[33:]),
        f"picture-unreadable {PNG}",
    ),
    told(
        "a chart with its pixels scrambled",
        _chart(_PNG[:45] + b"\xff\xff\xff" + _PNG[48:]),
        f"picture-unreadable {PNG}",
    ),
    told(
        "a chart that is nothing but its first letters",
        _chart(_PNG[:8]),
        f"picture-unreadable {PNG}",
    ),
    told("a chart that is empty", _chart(b""), f"picture-unreadable {PNG}"),
    told("a chart that is a JPEG", _chart(_JPEG), f"picture-unreadable {PNG}"),
    told("a chart that is a drawing", _chart(_SVG), f"picture-unreadable {PNG}"),
    told("a chart that is a GIF", _chart(_saved(_plain("P"), "GIF")), f"picture-unreadable {PNG}"),
    told(
        "a chart of half clear pixels",
        _chart(picture([[_RED, _RED, _BROWN, _BROWN], [_RED, _BROWN, (160, 64, 48, 100), _CLEAR]])),
        f"pixel-half-clear {PNG}",
    ),
    told(
        "a chart of ten thousand colours",
        _chart(_saved(Image.effect_noise((100, 100), 90).convert("RGB"), "PNG")),
        f"picture-to-bring {PNG}",
    ),
    told(
        "a chart of sixteen bits",
        _chart(_saved(Image.new("I;16", (4, 2), 40000), "PNG")),
        f"pixel-unknown {PNG}",
    ),
    told(
        "a chart with a palette that lacks colours",
        _chart(_noise_png(4, 8, 3, zlib.compress(b"\0\1\2\3\4" * 4))),
        f"pixel-unknown {PNG}",
    ),
    told(
        "a chart with a text of sixty megabytes",
        _chart(_with_chunk(b"zTXt", b"a\0\0" + zlib.compress(b"x" * 70_000_000))),
        f"picture-unreadable {PNG}",
        heavy=True,
    ),
    told(
        "a chart with more pixels than it says",
        _chart(_noise_png(4, 8, 2, zlib.compress(bytes(50_000_000)))),
        f"pixel-unknown {PNG}",
        heavy=True,
    ),
    safe(
        "a chart with a colour profile of noise",
        _chart(_with_chunk(b"iCCP", b"a\0\0" + b"\xff" * 99)),
    ),
    told("a photo that is a drawing", {PHOTO: _SVG}, f"picture-unreadable {PHOTO}"),
    told("a photo that is a PNG", {PHOTO: _PNG}, f"picture-other-kind {PHOTO}"),
    told(
        "a photo that is a web page",
        {PHOTO: b"<html><script>alert(1)</script>"},
        f"picture-unreadable {PHOTO}",
    ),
    told(
        "a photo that is a PostScript program",
        {PHOTO: b"%!PS-Adobe-3.0 EPSF-3.0\n%%BoundingBox: 0 0 1 1\n"},
        f"picture-unreadable {PHOTO}",
    ),
    told("a photo cut off", {PHOTO: _JPEG[: len(_JPEG) // 2]}, f"picture-unreadable {PHOTO}"),
    told("a photo cut off in its head", {PHOTO: _JPEG[:100]}, f"picture-unreadable {PHOTO}"),
    told(
        "a photo of noise",
        {PHOTO: b"\xff\xd8\xff\xe0" + b"\xa5" * 5000},
        f"picture-unreadable {PHOTO}",
    ),
    told("a photo that is empty", {PHOTO: b""}, f"picture-unreadable {PHOTO}"),
    told("two photos", {PHOTO: _JPEG, PHOTO_PNG: _PNG}, f"photos-two {PHOTO_PNG}"),
    safe("a photo for print, in four inks", {PHOTO: _saved(_plain("CMYK"), "JPEG")}),
    safe("a photo in greys", {PHOTO: _saved(_plain("L"), "JPEG")}),
    safe("a photo of sixteen bits", {PHOTO_PNG: _saved(Image.new("I;16", (40, 30), 40000), "PNG")}),
    safe(
        "a photo with a palette and clear pixels",
        {PHOTO_PNG: _saved(_plain("P"), "PNG", transparency=0)},
    ),
    safe("a photo of one bit", {PHOTO_PNG: _saved(_plain("1"), "PNG")}),
    safe(
        "a photo that moves",
        {PHOTO_PNG: _saved(_plain(), "PNG", save_all=True, append_images=[_plain()] * 3)},
    ),
    safe(
        "a photo with a colour profile of noise",
        {PHOTO: _saved(_plain(), "JPEG", icc_profile=b"\xa5" * 4000)},
    ),
    safe(
        "a photo with a colour profile for paper",
        {PHOTO: _saved(_plain("CMYK"), "JPEG", icc_profile=b"\0" * 128)},
    ),
    safe(
        "a photo with notes of noise",
        {PHOTO: _saved(_plain(), "JPEG", exif=b"Exif\0\0" + b"\xa5" * 2000)},
    ),
    safe(
        "a photo with notes that point to themselves",
        {
            PHOTO: _saved(
                _plain(),
                "JPEG",
                exif=b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x87\x69\0\x04\0\0\0\x01\0\0\0\x08\0\0\0\x08",
            )
        },
    ),
    safe("a photo turned no known way", {PHOTO: _notes("a")}),
    safe("a photo with a script in its notes", {PHOTO: _notes("<script>alert(1)</script>" * 50)}),
    safe("a photo with a web page behind it", {PHOTO: _JPEG + b"<script>alert(1)</script>" * 9}),
    safe("a photo of one pixel", {PHOTO: _saved(_plain(size=(1, 1)), "JPEG")}),
    safe("a photo one pixel high", {PHOTO: _saved(_plain(size=(6000, 1)), "JPEG")}),
    safe("a photo one pixel wide", {PHOTO: _saved(_plain(size=(1, 6000)), "JPEG")}),
    told("a face of nothing", _own_face(b""), f"font-unreadable {SERIES}"),
    told("a face of noise", _own_face(b"\0\1\0\0" + b"\xa5" * 9000), f"font-unreadable {SERIES}"),
    told(
        "a face that is a web page",
        _own_face(b"<script>alert(1)</script>"),
        f"font-unreadable {SERIES}",
    ),
    told("a face cut off", _face(cut=9000), f"font-unreadable {SERIES}"),
    told("a face with no letters", _own_face(_scrambled(b"cmap")), f"font-unreadable {SERIES}"),
    told("a face whose head is noise", _own_face(_scrambled(b"head")), f"font-unreadable {SERIES}"),
    told(
        "a face whose widths are noise", _own_face(_scrambled(b"hhea")), f"font-unreadable {SERIES}"
    ),
    told(
        "a face whose shapes are noise", _own_face(_scrambled(b"glyf")), f"font-unreadable {SERIES}"
    ),
    safe("a face whose places of shapes are noise", _own_face(_scrambled(b"loca"))),
    told(
        "a face whose names are noise", _own_face(_scrambled(b"name")), f"font-unreadable {SERIES}"
    ),
    told(
        "a face of a hundred megabytes",
        _own_face(b"\0\1\0\0" + bytes(6_000_000)),
        f"file-too-big {FACE}",
    ),
    told(
        "a face that is packed too well",
        {
            SERIES: TINY[SERIES] + "look: {heading: own.woff2}\n",
            FACE.replace("ttf", "woff2"): b"wOF2" + bytes(2000),
        },
        f"font-unreadable {SERIES}",
    ),
)
