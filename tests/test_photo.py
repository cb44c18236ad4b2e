"""An author's photo leads, and tells nothing but what it shows."""

from io import BytesIO

from PIL import Image

from packetgen.model import Photo
from packetgen.reckon.figures import figures
from packetgen.render.photo import upright
from packetgen.render.pictures import cover_jpeg, site_pictures
from tests.stitching import pattern, piece, series

# Exif tags, CIPA DC-008: 0x0112 orientation (6: turn right to see it upright), 0x8825 place.
_ORIENTATION, _PLACE = 0x0112, 0x8825


def photo(width=300, height=200):
    """Lying on its side, red at the left end, and it says where it was taken."""
    image = Image.new("RGB", (width, height), "#3060c0")
    image.paste("#d02020", (0, 0, width // 4, height))
    exif = Image.Exif()
    exif[_ORIENTATION] = 6
    exif[_PLACE] = {1: "N", 2: (51.0, 30.0, 0.0)}
    target = BytesIO()
    image.save(target, "JPEG", exif=exif)
    return Photo(target.getvalue(), width, height)


def red(pixel):
    return pixel[0] > 150 and pixel[2] < 100


def test_a_photo_taken_sideways_is_shown_upright():
    """Orientation 6: what is stored at the left is the top."""
    shown = upright(photo(), 1000)
    assert shown.size == (200, 300)
    assert red(shown.getpixel((100, 10)))
    assert not red(shown.getpixel((100, 290)))


def test_a_large_photo_is_made_smaller_in_its_own_shape():
    assert upright(photo(600, 400), 300).size == (200, 300)


def test_place_and_camera_are_left_behind():
    of = pattern("mmm", photo=photo())
    cover = cover_jpeg(figures(of, piece()))
    for data in (cover, site_pictures(series(of), (figures(of, piece()),)).mounted["sprig"].data):
        with Image.open(BytesIO(data)) as published:
            assert published.size == (200, 300)
            assert dict(published.getexif()) == {}
            assert "exif" not in published.info
