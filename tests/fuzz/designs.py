"""`packetgen bring` of any file with any options.

Each input begins with a byte that chooses the options; the rest is the file. Of a picture it is the parts
(see `png_of`): sums and compression are put right, so that what is strange reaches the reader.
"""

import io
import re
import shutil
import struct
import zlib
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path

from click.testing import CliRunner
from PIL import Image, ImageCms
from PIL.PngImagePlugin import PngInfo

from packetgen.bring.drawn import chart_png
from packetgen.bring.picture import MarkNote
from packetgen.cli import main
from packetgen.model import Stitch
from packetgen.pipeline import proof
from tests.content_builder import build, picture
from tests.fuzz.targets import LONGEST_MESSAGE, Finding, Target

LOCATED = re.compile(r"[^\0]+?:\d+:\d+: \S.*; \S.*\[[a-z0-9-]+\]")
MOST_BYTES = 4_000_000  # that a picture's pixels are filled up to
_WHERE = (
    ("--threads", "moss"),
    ("--threads", "moss", "--into", "{root}/new"),
    ("--pattern", "fern", "--replace", "--drop-lines"),
    ("--pattern", "fern", "--replace"),
)
_HOW = (
    (),
    ("--look", "{root}/look.png"),
    ("--cell", "1"),
    ("--cell", "2"),
    ("--cell", "3.3"),
    ("--cell", "1000"),
    ("--bare", "a04030", "--trim"),
    ("--trim",),
    ("--colours", "1"),
    ("--colours", "2", "--tidy", "100"),
    ("--tidy", "0"),
    ("--wide", "1"),
    ("--wide", "9", "--look", "{root}/look.png"),
    ("--wide", "1000", "--colours", "3"),
    ("--wide", "30", "--tidy", "12"),
    ("--code", "x=E2", "--code", "o=#f4d877"),
)


class Desk:
    """The tiny content folder with a design beside it; what a command writes is taken away again."""

    def __init__(self, root: Path) -> None:
        self._root, self._content = root, root / "content"
        shutil.rmtree(root, ignore_errors=True)
        build(self._content)
        self._tidy = self.files()

    def files(self) -> dict[Path, bytes]:
        return {path: path.read_bytes() for path in self._root.rglob("*") if path.is_file()}

    def bring(self, name: str, data: bytes, choice: int) -> None:
        """`packetgen bring` of a file with those bytes. Raises Finding, or what goes wrong."""
        design = self._root / name
        design.write_bytes(data)
        words = (*_WHERE[choice % len(_WHERE)], *_HOW[choice // len(_WHERE) % len(_HOW)])
        asked = [word.format(root=self._root) for word in words]
        before = self.files()
        try:
            done = CliRunner().invoke(
                main, ["bring", str(design), "--content", str(self._content), *asked]
            )
            if done.exception and not isinstance(done.exception, SystemExit):
                raise done.exception
            self._judge(done.exit_code, done.stderr, before)
        finally:
            self._clear()

    def _judge(self, code: int, stderr: str, before: dict[Path, bytes]) -> None:
        written = code == 0 or "It is written" in stderr
        after = {path: data for path, data in self.files().items() if path.name != "look.png"}
        if not written and after != before:
            raise Finding("something was written, and nothing said so")
        if written and not proof(self._content).reckoned:
            raise Finding("what was written cannot be read")
        if any(path.name.endswith(".next") for path in after):
            raise Finding("something is left lying about")
        if code == 0 and any(": advice: " not in line for line in stderr.splitlines()):
            raise Finding(f"done in spite of: {stderr[:90]}")
        if code not in (0, 1, 2):
            raise Finding(f"ends with {code}")
        if code == 1:
            lines = stderr.splitlines()
            told = [line for line in lines if LOCATED.fullmatch(line)]
            if not told:
                raise Finding(f"nothing is located: {lines[:2]}")
            for line in told:
                said = line.removeprefix(str(self._root))
                if not line.isprintable() or len(said) > LONGEST_MESSAGE + 90:
                    raise Finding(f"does not fit its line: {said[:90]}")

    def _clear(self) -> None:
        for path, data in self.files().items():
            if path not in self._tidy:
                path.unlink()
            elif data != self._tidy[path]:
                path.write_bytes(self._tidy[path])
        for path in self._tidy:
            if not path.exists():
                path.write_bytes(self._tidy[path])
        shutil.rmtree(self._root / "new", ignore_errors=True)


def bring_targets(root: Path) -> dict[str, Target]:
    """A target for each kind of file that a design may come in; `root` is a folder that may be filled."""
    desk = Desk(root)

    def brings(name: str, made: Callable[[bytes], bytes] = bytes) -> Callable[[bytes], None]:
        return lambda data: desk.bring(name, made(data[1:]), data[0] if data else 0)

    def seeds(files: "list[bytes]", of: Iterable[int] = range(0, 16, 5)) -> tuple[bytes, ...]:
        return tuple(bytes([4 * how + n % 4]) + file for n, file in enumerate(files) for how in of)

    return {
        "bring-png": Target(
            brings("d.png", png_of), seeds([*map(parts_of, _pngs()), *_filled_parts()])
        ),
        "bring-jpeg": Target(brings("d.jpg"), seeds(list(_jpegs()), range(11, 15))),
        "bring-table": Target(brings("d.csv"), seeds(_TABLES)),
        "bring-signs": Target(brings("d.txt"), seeds(_SIGNS)),
    }


def png_of(parts: bytes) -> bytes:
    """A PNG of its parts, each four letters, a length of two bytes, and its data (W3C PNG, chapter 5).

    `IDAT` is given before compression; `filL` stands for one whose data come again and again until the
    picture is full, and `cutS` is no part: so many bytes are taken off the end.
    """
    body, cut, claims, at = b"\x89PNG\r\n\x1a\n", 0, b"", 0
    while at + 6 <= len(parts):
        kind, length = parts[at : at + 4], int.from_bytes(parts[at + 4 : at + 6], "big")
        data = parts[at + 6 : at + 6 + length]
        at += 6 + length
        if kind == b"IHDR":
            claims = data
        if kind == b"cutS":
            cut = int.from_bytes(data[:2], "big")
            continue
        if kind == b"filL":
            kind, data = b"IDAT", _filled(data, claims)
        if kind == b"IDAT":
            data = zlib.compress(data, 1)
        sums = struct.pack(">I", zlib.crc32(kind + data))
        body += struct.pack(">I", len(data)) + kind + data + sums
    return body[: len(body) - cut] if cut else body


def _filled(data: bytes, claims: bytes) -> bytes:
    if len(claims) < 10 or not data:
        return data
    width, height, depth, kind = struct.unpack(">IIBB", claims[:10])
    samples = {2: 3, 4: 2, 6: 4}.get(kind, 1)
    line = 1 + (width * depth * samples + 7) // 8
    need = min(line * height, MOST_BYTES)
    if line < 2 or need < line:
        return data
    lines = [
        b"\0" + (data[n % len(data) :] + data * (line // len(data) + 1))[: line - 1]
        for n in range(min(need // line, len(data)))
    ]
    return b"".join(lines) * (need // (line * len(lines)) + 1)


def parts_of(png: bytes) -> bytes:
    """The parts of a PNG as `png_of` takes them, without any that is longer than two bytes can say."""
    parts, pixels, at = b"", b"", 8
    while at + 8 <= len(png):
        length, kind = struct.unpack(">I4s", png[at : at + 8])
        data = png[at + 8 : at + 8 + length]
        at += 12 + length
        if kind == b"IDAT":
            pixels += data
            continue
        if pixels:
            raw = zlib.decompress(pixels)[:0xFFFF]
            parts, pixels = parts + b"IDAT" + len(raw).to_bytes(2, "big") + raw, b""
        if length <= 0xFFFF:
            parts += kind + length.to_bytes(2, "big") + data
    return parts


def _saved(image: Image.Image, kind: str = "PNG", **facts: object) -> bytes:
    data = io.BytesIO()
    image.save(data, kind, **facts)
    return data.getvalue()


def _drawn(px: int = 1) -> Image.Image:
    colours = ("#a04030", "#6b503a", "#4f7942", (0, 0, 0, 0))
    rows = [[colours[(x * y + x // 2) % 4] for x in range(12)] for y in range(10)]
    image = Image.open(io.BytesIO(picture(rows)))
    return image.resize((12 * px, 10 * px), Image.Resampling.NEAREST)


def _pngs() -> Iterator[bytes]:
    """Every kind of PNG: depths, palettes, transparency, notes, profiles, several pictures in one."""
    own = (MarkNote("r", "#a04030", Stitch.FULL), MarkNote("h", "#a04030", Stitch.HALF))
    yield chart_png(("rrh.", "h.rr"), own, 3, "# mine\n# r  E2")
    for mode in ("1", "L", "LA", "RGB", "RGBA", "P", "I;16"):
        yield _saved(_drawn().convert("RGB" if mode in ("P", "I;16") else "RGBA").convert(mode))
    yield _saved(_drawn().convert("RGB").quantize(4), transparency=bytes([0, 100, 255]))
    yield _saved(_drawn().convert("RGB"), transparency=(160, 64, 48))
    yield _saved(_drawn(3), save_all=True, append_images=[_drawn(3).rotate(180)])
    yield _saved(_drawn(5).resize((53, 41), Image.Resampling.BILINEAR))
    exif = Image.Exif()
    exif[0x0112] = 6
    srgb = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    notes = PngInfo()
    notes.add_text("Chart stitch px", "4")
    yield _saved(_drawn(4).convert("RGB"), exif=exif, icc_profile=srgb, pnginfo=notes)


def _filled_parts() -> Iterator[bytes]:
    """Parts of large and of interlaced pictures; each byte of the pixels may also be a line's filter."""
    for size in ((1200, 900, 8, 2, 0, 0, 0), (12, 10, 8, 2, 0, 0, 1), (9, 9, 2, 0, 0, 0, 1)):
        head = b"IHDR\0\x0d" + struct.pack(">IIBBBBB", *size)
        yield head + b"filL\0\x07" + bytes((0, 1, 0, 4, 3, 2, 0)) + b"IEND\0\0"


def _jpegs() -> Iterator[bytes]:
    image = _drawn(3).convert("RGB")
    exif = Image.Exif()
    exif[0x0112] = 8
    for mode in ("L", "RGB", "CMYK"):
        yield _saved(image.convert(mode), "JPEG", exif=exif)
    yield _saved(image, "JPEG", progressive=True, quality=30)


_TABLES = [
    b"E2,K4,07,\nx,.,fern,#A04030\n",
    b'\xef\xbb\xbf"E2";"K4"\r\n;"#abc"\r\n"07"\r\n',
    b"E2\tK4\n=1+1\t@x\n",
    b'"a""b",x,o\n"E2\nK4",x\n',
    b"r,k,b,r\nr,k,,\n",
]
_SIGNS = [
    b"# mine\n# X  E2 the pot\n# o  K4\nXXo\n Xo\n",
    b"bbbb\nrk..\n",
    b"\n\n  xo\nxx xo  \n\n\n# end\n",
    "# ü  07\nüü.\n\n.ü\n".encode(),
]
