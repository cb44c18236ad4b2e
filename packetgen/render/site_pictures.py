"""The pictures that the web site is handed, and where each one stands in it."""

from collections.abc import Mapping
from dataclasses import dataclass

_PNG = b"\x89PNG"


@dataclass(frozen=True)
class Picture:
    """A finished JPEG or PNG file."""

    data: bytes
    width_px: int
    height_px: int

    @property
    def suffix(self) -> str:
        return ".png" if self.data.startswith(_PNG) else ".jpg"


Widths = tuple[Picture, ...]  # one picture in several widths, the narrowest first


@dataclass(frozen=True)
class Shares:
    """What stands beside a shared link: PNG files in three shapes."""

    wide: bytes
    square: bytes
    upright: bytes


@dataclass(frozen=True)
class SitePictures:
    """Everything painted that a series' site shows."""

    mounted: Mapping[str, Widths]  # by pattern id: the design hung on the finishing piece
    details: Mapping[str, Widths]  # by the id of a pattern that is not out yet: a close-up
    shares: Mapping[str, Shares]  # by pattern id, and by OF_SERIES and OF_PIECE
    bench: Widths  # the finishing piece, painted and empty


@dataclass(frozen=True)
class Shown:
    """A picture on a page, in its widest file; all paths are relative to the site."""

    src: str
    width_px: int
    height_px: int
    alt: str
    sources: tuple[tuple[str, int], ...]  # (path, width in px) of every width, the narrowest first


OF_SERIES, OF_PIECE = "", "finishing-piece"
# Shape → what ends the name of its file, and its size.
SHARE_ENDINGS = {"wide": "", "square": "-square", "upright": "-upright"}
SHARE_SIZES_PX = {"wide": (1200, 630), "square": (1080, 1080), "upright": (1080, 1350)}


def shown(widths: Widths, stem: str, alt: str) -> Shown:
    """A picture whose files stand in the site as `stem`, their width and their suffix."""
    widest = widths[-1]
    sources = tuple((_file(stem, one), one.width_px) for one in widths)
    return Shown(sources[-1][0], widest.width_px, widest.height_px, alt, sources)


def mounted_stem(pattern_id: str) -> str:
    return f"{pattern_id}/mounted"


def detail_stem(pattern_id: str) -> str:
    return f"{pattern_id}/detail"


def share_path(of: str, shape: str = "wide") -> str:
    """The share picture of a pattern, of the series (OF_SERIES) or of its finishing piece (OF_PIECE)."""
    stems = {OF_SERIES: "share", OF_PIECE: "share-finishing-piece"}
    return f"{stems.get(of, f'{of}/share')}{SHARE_ENDINGS[shape]}.png"


BENCH_STEM = "finishing-piece"


def picture_files(pictures: SitePictures) -> dict[str, bytes]:
    """Every picture under its place in the site."""
    stems = {BENCH_STEM: pictures.bench}
    stems |= {mounted_stem(name): widths for name, widths in pictures.mounted.items()}
    stems |= {detail_stem(name): widths for name, widths in pictures.details.items()}
    files = {_file(stem, one): one.data for stem, widths in stems.items() for one in widths}
    for of, shares in pictures.shares.items():
        for shape in SHARE_ENDINGS:
            files[share_path(of, shape)] = getattr(shares, shape)
    return files


def _file(stem: str, picture: Picture) -> str:
    return f"{stem}-{picture.width_px}{picture.suffix}"
