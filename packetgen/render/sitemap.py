"""What programs that look for pages are told: sitemap.xml (sitemaps.org, protocol 0.9) and robots.txt (RFC 9309)."""

from collections.abc import Iterable, Mapping
from datetime import date
from xml.etree import ElementTree

from packetgen.model import Pattern
from packetgen.reckon.standing import Standing, release_of
from packetgen.render.address import INDEX, in_full
from packetgen.render.site_nav import CORRECTIONS_PAGE, NOTICES_PAGE
from packetgen.render.site_year import pattern_page

SITEMAP_FILE = "sitemap.xml"
ROBOTS_FILE = "robots.txt"
_PROTOCOL = "http://www.sitemaps.org/schemas/sitemap/0.9"


def search_files(standing: Standing, pages: Iterable[str]) -> dict[str, bytes]:
    """robots.txt, and a sitemap of `pages` where the address is known: it must give every page in full."""
    address = standing.series.address
    if not address:
        return {ROBOTS_FILE: robots(())}
    return {
        ROBOTS_FILE: robots((in_full(address, SITEMAP_FILE),)),
        SITEMAP_FILE: _sitemap(address, pages, _changes(standing)),
    }


def robots(sitemaps: Iterable[str]) -> bytes:
    """Nothing is closed to anyone: what may not be seen yet is not there. Only read at the root of a host."""
    lines = ["User-agent: *", "Allow: /", *(f"Sitemap: {one}" for one in sitemaps)]
    return ("\n".join(lines) + "\n").encode()


def _sitemap(address: str, pages: Iterable[str], changes: Mapping[str, date]) -> bytes:
    root = ElementTree.Element("urlset", xmlns=_PROTOCOL)
    for page in pages:
        url = ElementTree.SubElement(root, "url")
        ElementTree.SubElement(url, "loc").text = in_full(address, page)
        if page in changes:
            ElementTree.SubElement(url, "lastmod").text = changes[page].isoformat()
    ElementTree.indent(root, " ")
    file: bytes = ElementTree.tostring(root, encoding="utf-8", xml_declaration=True)
    return file + b"\n"


def _changes(standing: Standing) -> dict[str, date]:
    """Page → the day of the newest thing that it tells, for pages of which that is known."""
    series = standing.series
    zone = series.release.tzinfo
    issued = {
        pattern_page(one.id): max(release_of(one, series).astimezone(zone).date(), _latest(one))
        for one in series.patterns
    }
    corrected = [_latest(one) for one in series.patterns if len(one.revisions) > 1]
    told = [notice.on for notice in series.notices]
    newest = {
        INDEX: [*issued.values(), *told],
        NOTICES_PAGE: told,
        CORRECTIONS_PAGE: corrected,
    }
    return issued | {page: max(days) for page, days in newest.items() if days}


def _latest(pattern: Pattern) -> date:
    return pattern.revisions[-1].on
