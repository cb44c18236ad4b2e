"""Every picture that a build needs, as finished files."""

from PIL import Image

from packetgen.model import FinishingPiece, Series
from packetgen.reckon.figures import Figures
from packetgen.render.photo import upright
from packetgen.render.picture_file import jpeg_bytes, png_bytes
from packetgen.render.public_picture import bench, gathering, mounted_public
from packetgen.render.share_picture import PICTURE_PX, share_picture
from packetgen.render.site_pictures import Picture, SitePictures
from packetgen.render.stitched_picture import stitched

_COVER_PX_PER_CELL = 14
_SITE_WIDTH_PX = 1200
_PHOTO_PX = 1600
_MOST_SHARE_BYTES = 690_000


def cover_jpeg(figures: Figures) -> bytes:
    """The photo of the stitched model, or the stitched design drawn sharp, for the packet's cover."""
    pattern = figures.pattern
    if pattern.photo:
        return jpeg_bytes(upright(pattern.photo, _PHOTO_PX))
    return jpeg_bytes(stitched(pattern, pattern.cloths[0], _COVER_PX_PER_CELL))


def site_pictures(series: Series, figures: tuple[Figures, ...]) -> SitePictures:
    """What the site shows: every design, the empty bench, and a share picture a page.

    A design is shown by the author's photo of it, or else softened and mounted on the bench.
    """
    piece = series.finish
    mounted = {each.pattern.id: _public(each, piece) for each in figures}
    empty = bench(piece, _SITE_WIDTH_PX)
    shares = {
        each.pattern.id: png_bytes(
            share_picture(
                each.pattern.title,
                (series.title, f"designed by {each.pattern.designer.name}"),
                mounted[each.pattern.id],
            ),
            _MOST_SHARE_BYTES,
        )
        for each in figures
    }
    return SitePictures(
        mounted={name: _picture(image) for name, image in mounted.items()},
        shares=shares,
        series_share=png_bytes(
            share_picture(series.title, (series.tagline,), gathering(figures, piece, *PICTURE_PX)),
            _MOST_SHARE_BYTES,
        ),
        piece_share=png_bytes(share_picture(piece.name, (series.title,), empty), _MOST_SHARE_BYTES),
        bench=_picture(empty),
    )


def _public(figures: Figures, piece: FinishingPiece) -> Image.Image:
    photo = figures.pattern.photo
    return upright(photo, _PHOTO_PX) if photo else mounted_public(figures, piece, _SITE_WIDTH_PX)


def _picture(image: Image.Image) -> Picture:
    return Picture(jpeg_bytes(image), image.width, image.height)
