"""The feed of a series: notices, patterns that are out, and corrections since. Atom, RFC 4287.

What a feed reader has shown once it must know again: the identifier of an entry is made of what never
changes, and a moment always carries its distance from UTC (RFC 4287, sections 3.3 and 4.2.6).
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from uuid import NAMESPACE_URL, uuid5
from xml.etree import ElementTree

from packetgen.model import Series
from packetgen.reckon.figures import Figures
from packetgen.reckon.standing import Standing, release_of
from packetgen.render.address import INDEX, in_full
from packetgen.render.site_nav import CORRECTIONS_PAGE, NOTICES_PAGE
from packetgen.render.site_notices import beginning, notice_anchor, notice_keys
from packetgen.render.site_text import prose_under
from packetgen.render.site_year import pattern_page

FEED_FILE = "feed.atom"
FEED_TYPE = "application/atom+xml"
_ATOM = "http://www.w3.org/2005/Atom"


@dataclass(frozen=True)
class _Entry:
    id: str
    title: str
    moment: datetime
    page: str  # relative to the site, with or without a fragment
    author: str  # '' for the feed's own
    text: str
    kind: str = "text"  # or 'html'


def feed(standing: Standing) -> bytes:
    """What has happened to the series so far, the newest first."""
    series = standing.series
    entries = sorted(_entries(standing), key=lambda one: one.moment, reverse=True)
    # A feed has its moment even before anything has happened; nobody's clock is asked for it.
    updated = max((one.moment for one in entries), default=series.release)
    root = ElementTree.Element("feed", {"xmlns": _ATOM, "xml:lang": "en-GB"})
    _text(root, "id", _urn(series, "feed"))
    _text(root, "title", series.title)
    _text(root, "subtitle", series.tagline)
    _text(root, "updated", _said(updated))
    _text(ElementTree.SubElement(root, "author"), "name", series.title)
    _text(root, "rights", series.licence)
    if series.address:
        own = in_full(series.address, FEED_FILE)
        ElementTree.SubElement(root, "link", rel="self", type=FEED_TYPE, href=own)
    _link(root, series, INDEX)
    for entry in entries:
        _add(root, series, entry)
    ElementTree.indent(root, " ")
    file: bytes = ElementTree.tostring(root, encoding="utf-8", xml_declaration=True)
    return file + b"\n"


def _entries(standing: Standing) -> Iterator[_Entry]:
    series = standing.series
    zone = series.release.tzinfo
    for notice, key in zip(series.notices, notice_keys(series.notices)):
        yield _Entry(
            _urn(series, f"notice/{key}"),
            notice.title,
            beginning(notice.on, zone),
            f"{NOTICES_PAGE}#{notice_anchor(key)}",
            "",
            str(prose_under(notice.markdown, 3)),
            "html",
        )
    for figures in standing.figures:
        yield from _of_pattern(series, figures)


def _of_pattern(series: Series, figures: Figures) -> Iterator[_Entry]:
    """That it is out, and each correction after that; what was mended before, nobody had."""
    pattern = figures.pattern
    out, zone = release_of(pattern, series), series.release.tzinfo
    yield _Entry(
        _urn(series, f"pattern/{pattern.id}"),
        pattern.title,
        out,
        pattern_page(pattern.id),
        pattern.designer.name,
        pattern.about,
    )
    for number, revision in enumerate(pattern.revisions[1:], start=2):
        moment = beginning(revision.on, zone)
        if moment > out:
            yield _Entry(
                _urn(series, f"correction/{pattern.id}/{number}"),
                f"{pattern.title}: revision {number}",
                moment,
                f"{CORRECTIONS_PAGE}#{pattern.id}",
                pattern.designer.name,
                revision.note,
            )


def _add(root: ElementTree.Element, series: Series, entry: _Entry) -> None:
    made = ElementTree.SubElement(root, "entry")
    _text(made, "id", entry.id)
    _text(made, "title", entry.title)
    _text(made, "updated", _said(entry.moment))
    _text(made, "published", _said(entry.moment))
    if entry.author:
        _text(ElementTree.SubElement(made, "author"), "name", entry.author)
    _link(made, series, entry.page)
    _text(made, "content", entry.text).set("type", entry.kind)


def _link(parent: ElementTree.Element, series: Series, page: str) -> None:
    """To the page itself. Without an address it is relative to where the feed was found."""
    href = in_full(series.address, page) or page
    ElementTree.SubElement(parent, "link", rel="alternate", type="text/html", href=href)


def _text(parent: ElementTree.Element, name: str, words: str) -> ElementTree.Element:
    element = ElementTree.SubElement(parent, name)
    element.text = "".join(letter for letter in words if _may_stand(letter))
    return element


def _may_stand(letter: str) -> bool:
    """XML 1.0, production 2: most control characters may stand in no document, escaped or not."""
    code = ord(letter)
    return letter in "\t\n\r" or 0x20 <= code <= 0xD7FF or 0xE000 <= code <= 0xFFFD or code > 0xFFFF


def _said(moment: datetime) -> str:
    """RFC 3339, with the distance from UTC."""
    return moment.isoformat(timespec="seconds")


def _urn(series: Series, key: str) -> str:
    return f"urn:uuid:{uuid5(NAMESPACE_URL, f'feed/{series.id}/{key}')}"
