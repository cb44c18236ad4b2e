"""What an author takes elsewhere to tell of a pattern: pictures, and words ready to paste."""

from jinja2 import Environment

from packetgen.reckon.standing import Standing
from packetgen.render.share_texts import share_texts
from packetgen.render.site_pictures import SHARE_SIZES_PX, SitePictures


def share_files(standing: Standing, pictures: SitePictures, env: Environment) -> dict[str, bytes]:
    """Everything of build/share for one series, by its name there. Raises TemplateFault."""
    shown = {
        f"{of or standing.series.id}-{shape}.png": getattr(shares, shape)
        for of, shares in pictures.shares.items()
        for shape in SHARE_SIZES_PX
    }
    return shown | share_texts(standing, env)
