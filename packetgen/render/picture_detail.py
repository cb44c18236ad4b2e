"""A close-up of a design: what is shown of it before it is out. Taken from above, with little depth."""

from math import cos, radians, sin

from PIL import Image, ImageChops, ImageFilter

from packetgen.render.picture_surface import lit, tilted_light
from packetgen.render.picture_view import DETAIL_PX, DETAIL_TILT_DEGREES, detail_view
from packetgen.render.picture_window import window
from packetgen.render.public_picture import Face
from packetgen.render.stitched_picture import stitched_layers


def detail(shown: Face) -> Image.Image:
    """The close-up, DETAIL_PX large."""
    view = detail_view(shown.pattern)
    left, top, columns, rows = view.drawn
    px = round(view.cross_px)
    part = window(shown.pattern, left, top, columns, rows)
    drawn = stitched_layers(part, shown.on.option, px, 0).lit()
    scale = px / view.cross_px
    turn = radians(DETAIL_TILT_DEGREES)
    right, fall = scale * cos(turn), scale * sin(turn)
    middle = (view.middle[0] - left) * px, (view.middle[1] - top) * px
    width, height = DETAIL_PX
    way = (
        *(right, -fall, middle[0] - right * width / 2 + fall * height / 2),
        *(fall, right, middle[1] - fall * width / 2 - right * height / 2),
    )
    straight = drawn.transform(DETAIL_PX, Image.Transform.AFFINE, way, Image.Resampling.BICUBIC)
    return photographed(straight)


def photographed(image: Image.Image) -> Image.Image:
    """Sharp in the middle and soft towards the corners, with light from the upper left."""
    size = image.size
    near = Image.radial_gradient("L").resize(size, Image.Resampling.BICUBIC)
    blur = near.point([max(0, min(255, round((v - 105) * 2.4))) for v in range(256)])
    soft = image.filter(ImageFilter.GaussianBlur(size[0] / 260))
    result = Image.composite(soft, image, blur)
    vignette = near.point([128 - round(34 * max(0, v - 110) / 145) for v in range(256)])
    return lit(result, ImageChops.add(vignette, tilted_light(size, 12), 1, -128))
