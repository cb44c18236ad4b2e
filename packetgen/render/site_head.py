"""What a page says about itself to search engines and to places where its link is shared.

Names of properties: the Open Graph protocol, ogp.me; of JSON-LD, see `json_ld`.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from markupsafe import Markup

from packetgen.model import Look, Series
from packetgen.render.address import INDEX, in_full
from packetgen.render.json_ld import (
    Issued,
    Thing,
    breadcrumbs,
    image,
    script,
    series_list,
    web_page,
)
from packetgen.render.site_pictures import SHARE_SIZES_PX, share_path

_PLAIN_LOOK = Look()


@dataclass(frozen=True)
class ShareImage:
    """A PNG file that may stand beside the shared link."""

    url: str  # relative to the page where no address is known
    width_px: int
    height_px: int
    alt: str


@dataclass(frozen=True)
class Head:
    """The head of one page. `url` is '' where nobody has said yet where the site will stand."""

    site_name: str
    title: str
    description: str
    root: str  # what leads from this page to the site's first page: '', '../' or a full address
    url: str
    images: tuple[ShareImage, ...]  # the wide one first, since a reader may take only one
    json_ld: Markup  # the contents of a script element
    issued: Issued | None = None  # of the page of a pattern that is out
    look: Look = _PLAIN_LOOK


def head(
    series: Series,
    path: str,
    title: str,
    description: str,
    share_of: str,
    alt: str,
    about: Thing | None = None,
    issued: Issued | None = None,
) -> Head:
    """`path` is relative to the site; `title` is '' on the series' own page; `share_of` says whose share
    picture the page has, and `alt` what that shows; `about` is what the page tells of, if not of itself."""
    root, url = "../" * path.count("/"), in_full(series.address, path)
    images = _images(in_full(series.address, INDEX) or root, share_of, alt)
    thing = about or web_page(title or series.title, description)
    if url:
        thing = {**thing, "url": url, "image": _as_things(images)}
    return Head(
        site_name=series.title,
        title=f"{title} · {series.title}" if title else series.title,
        description=description,
        root=root,
        url=url,
        images=images,
        json_ld=script(thing, *([breadcrumbs(series, path, title)] if title else [])),
        issued=issued,
        look=series.look,
    )


def lost_head(
    site_name: str, address: str | None, share_of: str, alt: str, look: Look = _PLAIN_LOOK
) -> Head:
    """For the page that a host shows at any wrong address: full links once one is known."""
    root, title = in_full(address, INDEX), f"No such page · {site_name}"
    description = f"No page of {site_name} stands at this address."
    said = script(web_page(title, description))
    images = _images(root, share_of, alt)
    return Head(site_name, title, description, root, "", images, said, look=look)


def list_head(
    titles: tuple[str, ...], first_id: str, share_of: str, alt: str, look: Look = _PLAIN_LOOK
) -> Head:
    """For the page above several series; it shows the share picture that stands in the folder `first_id`."""
    name, about = " · ".join(titles), f"Cross stitch series: {', '.join(titles)}."
    said = script(series_list(titles, name, about))
    return Head(name, name, about, "", "", _images(f"{first_id}/", share_of, alt), said, look=look)


def _images(base: str, share_of: str, alt: str) -> tuple[ShareImage, ...]:
    return tuple(
        ShareImage(base + share_path(share_of, shape), width_px, height_px, alt)
        for shape, (width_px, height_px) in SHARE_SIZES_PX.items()
    )


def _as_things(images: Iterable[ShareImage]) -> list[Thing]:
    return [image(one.url, one.width_px, one.height_px, one.alt) for one in images]
