"""What a page says about itself to search engines and to places where its link is shared.

Names of properties: the Open Graph protocol, ogp.me.
"""

from dataclasses import dataclass
from urllib.parse import urljoin

from packetgen.model import Series

SHARE_WIDTH_PX, SHARE_HEIGHT_PX = 1200, 630
INDEX = "index.html"


@dataclass(frozen=True)
class Head:
    """The head of one page. `url` is '' where nobody has said yet where the site will stand."""

    site_name: str
    title: str
    description: str
    root: str  # what leads from this page to the site's first page: '', '../' or a full address
    url: str
    image: str
    image_alt: str
    image_width_px: int = SHARE_WIDTH_PX
    image_height_px: int = SHARE_HEIGHT_PX


def head(series: Series, path: str, title: str, description: str, image: str, alt: str) -> Head:
    """`path` and `image` are relative to the site; `title` is '' on the series' own page."""
    root = "../" * path.count("/")
    return Head(
        site_name=series.title,
        title=f"{title} · {series.title}" if title else series.title,
        description=description,
        root=root,
        url=_in_full(series.address, path.removesuffix(INDEX)),
        image=_in_full(series.address, image) or root + image,
        image_alt=alt,
    )


def lost_head(site_name: str, address: str | None, image: str, alt: str) -> Head:
    """For the page that a host shows at any wrong address: full links once one is known."""
    root = _in_full(address, "")
    description = f"No page of {site_name} stands at this address."
    return Head(site_name, f"No such page · {site_name}", description, root, "", root + image, alt)


def list_head(titles: tuple[str, ...], image: str, alt: str) -> Head:
    """For the page above several series."""
    name = " · ".join(titles)
    return Head(name, name, f"Cross stitch series: {', '.join(titles)}.", "", "", image, alt)


def _in_full(address: str | None, path: str) -> str:
    return urljoin(address.rstrip("/") + "/", path) if address else ""
