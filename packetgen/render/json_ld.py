"""What each page says of itself in the words of schema.org, as JSON-LD 1.1 (W3C) inside a script element.

Nothing is said that its page does not say. Addresses are given in full, or not at all where nobody has
said yet where the site will stand. A price is unknown here, and so no offer has one.
"""

import json
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from markupsafe import Markup

from packetgen.model import Designer, FinishingPiece, Pattern, Series
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.needle import threads_used
from packetgen.reckon.standing import Awaited, Standing, release_of
from packetgen.render.address import INDEX, in_full
from packetgen.render.people import counters
from packetgen.render.site_nav import DESIGNERS_PAGE, NOTICES_PAGE
from packetgen.render.site_notices import beginning, notice_anchor, notice_keys
from packetgen.render.site_year import pattern_page
from packetgen.units import centimetres, plain

Thing = dict[str, object]

CENTIMETRE = "CMT"  # UN/CEFACT Recommendation 20
GENRE = "Cross stitch pattern"
# What would end the script element, or a line of a script: HTML (WHATWG), 4.12.1.3, and ECMA-262, 12.3.
_ESCAPED = {ord(sign): f"\\u{ord(sign):04x}" for sign in "<>&\u2028\u2029"}


@dataclass(frozen=True)
class Issued:
    """When a pattern came out, when it was last put right after that, and its tags."""

    published: str  # ISO 8601, with the distance from UTC
    modified: str  # '' if never
    tags: tuple[str, ...]


def issued(pattern: Pattern, series: Series, tags: tuple[str, ...]) -> Issued:
    """Revisions of before the release are no news: nobody had an earlier one."""
    out = release_of(pattern, series)
    latest = beginning(pattern.revisions[-1].on, series.release.tzinfo)
    return Issued(_moment(out), _moment(latest) if latest > out else "", tags)


def script(thing: Thing, *others: Thing) -> Markup:
    """The contents of the script element: `thing`, which the page is about, and what else there is."""
    whole = {
        "@context": "https://schema.org",
        "@graph": [_without_gaps(one) for one in (thing, *others)],
    }
    return Markup(json.dumps(whole, ensure_ascii=False).translate(_ESCAPED))


def web_page(title: str, description: str) -> Thing:
    """A page of which no more than that is to be said."""
    return {"@type": "WebPage", "name": title, "description": description}


def breadcrumbs(series: Series, path: str, title: str) -> Thing:
    """The way from the series to a page below it."""
    steps = ((series.title, in_full(series.address, INDEX)), (title, in_full(series.address, path)))
    return {
        "@type": "BreadcrumbList",
        "itemListElement": [
            {"@type": "ListItem", "position": position, "name": name, "item": url}
            for position, (name, url) in enumerate(steps, 1)
        ],
    }


def image(url: str, width_px: int, height_px: int, caption: str) -> Thing:
    """A picture of the page, once its full address is known."""
    size = {"width": _pixels(width_px), "height": _pixels(height_px)}
    return {"@type": "ImageObject", "contentUrl": url, **size, "caption": caption}


def series_work(standing: Standing) -> Thing:
    """The series with the patterns that are out, and no other."""
    series = standing.series
    drew = {pattern.designer.id for pattern in series.patterns}
    return {
        "@type": "CreativeWorkSeries",
        "name": series.title,
        "description": series.tagline,
        "genre": GENRE,
        "creator": [_person(one, series) for one in series.designers if one.id in drew],
        "datePublished": _moment(series.release),
        "copyrightNotice": series.licence,
        "hasPart": [
            {
                "@type": "CreativeWork",
                "name": pattern.title,
                "creator": _person(pattern.designer, series),
                "url": in_full(series.address, pattern_page(pattern.id)),
            }
            for pattern in series.patterns
        ],
    }


def pattern_work(figures: Figures, series: Series, of_issue: Issued) -> Thing:
    """A pattern that is out: a product too where the author names who sells it."""
    pattern = figures.pattern
    sold = counters(pattern)
    return {
        "@type": ["CreativeWork", "Product"] if sold else "CreativeWork",
        "name": pattern.title,
        "description": pattern.about,
        "genre": GENRE,
        "creator": _person(pattern.designer, series),
        "contributor": _contributors(pattern),
        "datePublished": of_issue.published,
        "dateModified": of_issue.modified,
        "version": len(pattern.revisions),
        "isPartOf": _part_of(series),
        "material": _materials(pattern),
        "size": [*_stitches(pattern), *(size for on in figures.cloths for size in _sizes(on))],
        "keywords": list(of_issue.tags),
        "copyrightNotice": series.licence,
        "isAccessibleForFree": True if pattern.given_away else False if sold else None,
        "offers": [
            {"@type": "Offer", "name": counter.name, "url": counter.url} for counter in sold
        ],
    }


def teaser_work(awaited: Awaited, series: Series) -> Thing:
    """A pattern before its day."""
    assert awaited.designer  # that is what a teaser has
    return {
        "@type": "CreativeWork",
        "name": awaited.title,
        "creator": _person(awaited.designer, series),
        "datePublished": _moment(awaited.release),
    }


def piece_work(piece: FinishingPiece, series: Series) -> Thing:
    """The finishing piece, which every stitcher makes for herself."""
    return {
        "@type": "CreativeWork",
        "name": piece.name,
        "description": piece.about,
        "isPartOf": _part_of(series),
    }


def designer_list(series: Series, title: str, description: str) -> Thing:
    """The page of the designers, each with what leads to her."""
    people = [
        _person(one, series)
        | {
            "description": one.about,
            "sameAs": [url for url in (one.shop, *(link.url for link in one.links)) if url],
            "affiliation": {"@type": "Organization", "name": one.studio} if one.studio else None,
        }
        for one in series.designers
    ]
    listed = [
        {"@type": "ListItem", "position": position, "item": person}
        for position, person in enumerate(people, 1)
    ]
    about = {"@type": "ItemList", "itemListElement": listed}
    return {**web_page(title, description), "@type": "CollectionPage", "mainEntity": about}


def notice_blog(series: Series, title: str, description: str) -> Thing:
    """The notices that are out, in the author's order."""
    zone = series.release.tzinfo
    return {
        "@type": "Blog",
        "name": title,
        "description": description,
        "blogPost": [
            {
                "@type": "BlogPosting",
                "headline": notice.title,
                "datePublished": _moment(beginning(notice.on, zone)),
                "url": in_full(series.address, f"{NOTICES_PAGE}#{notice_anchor(key)}"),
            }
            for notice, key in zip(series.notices, notice_keys(series.notices))
        ],
    }


def series_list(titles: Iterable[str], name: str, description: str) -> Thing:
    """The page above several series."""
    parts = [{"@type": "CreativeWorkSeries", "name": title} for title in titles]
    return {**web_page(name, description), "@type": "CollectionPage", "hasPart": parts}


def _person(designer: Designer, series: Series) -> Thing:
    page = in_full(series.address, f"{DESIGNERS_PAGE}#{designer.id}")
    return {"@type": "Person", "name": designer.name, "url": page}


def _contributors(pattern: Pattern) -> list[Thing]:
    """Who did what: a Role stands between a work and a person (schema.org/Role)."""
    named = (
        ("model stitcher", pattern.model_stitcher),
        ("finisher", pattern.finisher),
        ("dyer", pattern.dyer),
        ("photographer", pattern.photographer),
    )
    return [
        {"@type": "Role", "roleName": role, "contributor": {"@type": "Person", "name": name}}
        for role, name in named
        if name
    ]


def _part_of(series: Series) -> Thing:
    url = in_full(series.address, INDEX)
    return {"@type": "CreativeWorkSeries", "name": series.title, "url": url}


def _materials(pattern: Pattern) -> list[str]:
    threads = [
        f"{card.material} thread"
        for thread_set in pattern.thread_sets
        for card, _ in threads_used(pattern, thread_set)
    ]
    cloths = [
        f"{plain(on.cloth.count_per_inch)}-count {on.cloth.weave.value}" for on in pattern.cloths
    ]
    beads = [f"beads of {plain(bead.card.size_mm)} mm" for bead in pattern.beads]
    return list(dict.fromkeys((*threads, *cloths, *beads)))


def _stitches(pattern: Pattern) -> list[Thing]:
    return [
        {"@type": "QuantitativeValue", "name": name, "value": value, "unitText": "stitches"}
        for name, value in (("width", pattern.grid.width), ("height", pattern.grid.height))
    ]


def _sizes(on: OnCloth) -> list[Thing]:
    """Finished width and height on one cloth, to the millimetre that print shows too."""
    cloth = on.option.cloth.name + (f", over {on.option.over}" if on.option.over > 1 else "")
    return [
        {
            "@type": "QuantitativeValue",
            "name": f"{name} on {cloth}",
            "value": float(centimetres(length_mm).split()[0]),
            "unitCode": CENTIMETRE,
        }
        for name, length_mm in (("width", on.finished.width_mm), ("height", on.finished.height_mm))
    ]


def _pixels(number: int) -> Thing:
    return {"@type": "QuantitativeValue", "value": number, "unitText": "px"}


def _moment(moment: datetime) -> str:
    """ISO 8601 with the distance from UTC."""
    return moment.isoformat(timespec="seconds")


def _without_gaps(value: object) -> object:
    """The same without names that have nothing to say."""
    if isinstance(value, dict):
        kept = {name: _without_gaps(one) for name, one in value.items()}
        return {name: one for name, one in kept.items() if one not in (None, "", [], {})}
    if isinstance(value, list):
        return [_without_gaps(one) for one in value]
    return value
