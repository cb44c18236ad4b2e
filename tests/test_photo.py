"""An author's photo leads, and tells nothing but what it shows."""

from io import BytesIO

import pytest
from PIL import Image, ImageCms, ImageStat

from packetgen.digest import afresh
from packetgen.model import Photo
from packetgen.reckon.figures import figures
from packetgen.reckon.standing import Standing
from packetgen.render.photo import close_up, upright
from packetgen.render.pictures import cover_jpeg, pattern_pictures, site_pictures
from packetgen.render.site_pictures import SHARE_SIZES_PX
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


def shown(of):
    """Every file that a site shows of a photographed pattern, out or awaited, and its packet's cover."""
    its = figures(of, piece())
    yield cover_jpeg(its, afresh)
    for out in (True, False):
        widths, shares = pattern_pictures(series(of), its, out, afresh)
        yield from (one.data for one in widths)
        yield from (getattr(shares, shape) for shape in SHARE_SIZES_PX)


def test_place_and_camera_are_left_behind():
    of = pattern("mmm", photo=photo())
    cover, mounted, *_ = shown(of)
    for data in (cover, mounted):
        with Image.open(BytesIO(data)) as published:
            assert published.size == (200, 300)
    for data in shown(of):
        with Image.open(BytesIO(data)) as published:
            assert dict(published.getexif()) == {}
            assert "exif" not in published.info


def test_a_thumbnail_a_remark_and_a_profile_are_left_behind():
    """Words hidden in every corner of a file are in none of those that are published."""
    image = Image.effect_noise((900, 700), 60).convert("RGB")
    exif = Image.Exif()
    exif[0x010E] = "SECRET description"
    exif.get_ifd(0x8825).update({1: "N", 2: (51.0, 30.0, 0.0), 0x1D: "SECRETdate"})
    small = BytesIO()
    image.resize((90, 70)).save(small, "JPEG", comment=b"SECRET thumbnail")
    profile = ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes()
    target = BytesIO()
    image.save(
        target,
        "JPEG",
        exif=exif.tobytes() + small.getvalue(),
        comment=b"SECRET remark",
        icc_profile=profile + b"SECRET junk",
        xmp=b"<x:xmpmeta>SECRET</x:xmpmeta>",
    )
    assert target.getvalue().count(b"SECRET") >= 5
    of = pattern("mmm", photo=Photo(target.getvalue(), 900, 700))
    for data in shown(of):
        assert b"SECRET" not in data
        with Image.open(BytesIO(data)) as published:
            assert "icc_profile" not in published.info


def test_a_photo_in_a_wide_gamut_keeps_its_colours():
    """A profile whose red and green are changed about: red of that kind is green as everybody shows it."""
    profile = bytearray(ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes())
    # The tag table of a profile has a count at byte 128 and 12 bytes a tag (ICC.1:2022, 7.3).
    for at in range(132, 132 + 12 * int.from_bytes(profile[128:132], "big"), 12):
        names = {b"rXYZ": b"gXYZ", b"gXYZ": b"rXYZ"}
        profile[at : at + 4] = names.get(bytes(profile[at : at + 4]), profile[at : at + 4])
    target = BytesIO()
    Image.new("RGB", (64, 64), (200, 30, 30)).save(target, "PNG", icc_profile=bytes(profile))
    red_, green, blue = upright(Photo(target.getvalue(), 64, 64), 100).getpixel((30, 30))
    assert green > 180 and red_ < 60 and blue < 60


@pytest.mark.parametrize("mode", ["RGBA", "LA", "P"])
def test_what_is_clear_of_a_photo_shows_white_paper(mode):
    """As where a model was cut out: red in the middle, clear round it, and half seen between."""
    cut = Image.new("RGBA", (30, 30), (0, 0, 0, 0))
    cut.paste((200, 0, 0, 128), (5, 5, 25, 25))
    cut.paste((200, 0, 0, 255), (10, 10, 20, 20))
    data = BytesIO()
    if mode == "P":
        indexed = cut.convert("RGB").quantize(8)
        indexed.save(data, "PNG", transparency=indexed.getpixel((0, 0)))
    else:
        cut.convert(mode).save(data, "PNG")
    shown = upright(Photo(data.getvalue(), 30, 30), 100)
    assert shown.mode == "RGB" and shown.getpixel((0, 0)) == (255, 255, 255)
    opaque = shown.getpixel((15, 15))
    assert opaque == ((200, 0, 0) if mode != "LA" else (60, 60, 60))
    if mode == "RGBA":
        assert shown.getpixel((7, 7)) == (227, 127, 127)


def test_a_photo_is_never_enlarged():
    made = site_pictures(
        Standing(series(of := pattern("mmm", photo=photo(600, 900))), (figures(of, piece()),)),
        afresh,
    )
    assert [one.width_px for one in made.mounted["sprig"]] == [480, 800, 900]


def test_a_close_up_of_a_photo_shows_where_there_is_most_to_see():
    """Plain wall, and something speckled at the lower right."""
    image = Image.new("RGB", (900, 900), "#888888")
    image.paste(Image.effect_noise((250, 200), 120).convert("RGB"), (560, 600))
    part = close_up(image, (3, 2))
    assert part.size == (450, 300)
    assert ImageStat.Stat(part).stddev[0] > 40
