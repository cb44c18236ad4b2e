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


@dataclass(frozen=True)
class SitePictures:
    """Everything painted that a series' site shows. Share pictures are PNG, 1200 × 630."""

    mounted: Mapping[str, Picture]  # by pattern id: the design hung on the finishing piece
    shares: Mapping[str, bytes]  # by pattern id
    series_share: bytes
    piece_share: bytes
    bench: Picture  # the finishing piece, painted and empty


@dataclass(frozen=True)
class Shown:
    """A picture on a page; `src` is relative to the site."""

    src: str
    width_px: int
    height_px: int
    alt: str


def shown(picture: Picture, stem: str, alt: str) -> Shown:
    """A picture that stands in the site as `stem` and its suffix."""
    return Shown(stem + picture.suffix, picture.width_px, picture.height_px, alt)


SERIES_SHARE, PIECE_SHARE = "share.png", "share-finishing-piece.png"


def mounted_stem(pattern_id: str) -> str:
    return f"{pattern_id}/mounted"


def pattern_share(pattern_id: str) -> str:
    return f"{pattern_id}/share.png"


BENCH_STEM = "finishing-piece"


def picture_files(pictures: SitePictures) -> dict[str, bytes]:
    """Every picture under its place in the site."""
    bench = BENCH_STEM + pictures.bench.suffix
    files = {
        SERIES_SHARE: pictures.series_share,
        PIECE_SHARE: pictures.piece_share,
        bench: pictures.bench.data,
    }
    for name, picture in pictures.mounted.items():
        files[mounted_stem(name) + picture.suffix] = picture.data
    return files | {pattern_share(name): data for name, data in pictures.shares.items()}
