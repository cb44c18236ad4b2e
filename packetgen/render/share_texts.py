"""Words that an author pastes elsewhere: a shop's listing, a short and a long post, and what pictures show.

Plain text in UTF-8, a paragraph on a line. Of a chart it tells the stitches wide and high, and the number
of colours. The words stand in `share/` of the templates folder.
"""

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime

from jinja2 import Environment

from packetgen.markdown_text import paragraphs
from packetgen.model import Counter, Pattern, Sells, Series, ThreadSet
from packetgen.nouns import listed
from packetgen.reckon.alt_text import bench_alt, detail_alt, model_alt, series_alt, share_alt
from packetgen.reckon.figures import Figures
from packetgen.reckon.needle import threads_used
from packetgen.reckon.standing import Awaited, Standing
from packetgen.render.address import INDEX, in_full
from packetgen.render.people import counters
from packetgen.render.share_tags import hashtags, series_hashtags, tags
from packetgen.render.site_nav import PIECE_PAGE
from packetgen.render.site_pattern import worked_in
from packetgen.render.site_pictures import OF_PIECE
from packetgen.render.site_text import counted
from packetgen.render.site_year import Release, pattern_page, release
from packetgen.render.templates import fill
from packetgen.units import plain

SHORT_POST = 280  # characters: common practice, no source
EXCERPT = 420  # of a story, at most
_BRIEFEST = 5  # how often a short post can leave something more out
# The end of a sentence, before one that does not go on in small letters.
_SENTENCE_END = re.compile(r"[.!?…]+[\"'”’)\]]*(?=\s+[\"'“‘(\[]*(?:[^\Wa-z]|$)|\s*$)")
_SOLD = {
    Sells.PDF: ("Sold as PDF.", "A PDF to download."),
    Sells.PRINTED: ("Sold on paper, not as PDF.", "Printed on paper; not sold as PDF."),
    Sells.BOTH: ("Sold as PDF and on paper.", "A PDF to download, or printed on paper."),
    Sells.NEITHER: ("Not sold as PDF.", "Not sold as PDF."),
}
_EDITIONS = {
    "black-and-white": "the chart in black and white",
    "large-print": "the chart in large print",
    "tablet": "the chart for a tablet",
    "written": "the chart written out in words",
}


@dataclass(frozen=True)
class PatternWords:
    """What the texts of one pattern say, ready to print; '' and () where there is nothing to say."""

    link: str
    colours: str  # '18 colours'
    worked_in: str
    threads: tuple[str, ...]  # '18 colours of Larkmoss Stranded (cotton)', one a thread set
    beads: tuple[str, ...]  # 'Dewdrop Glass, 2.2 mm: hip red and frost'
    packet: tuple[str, ...]  # what besides the chart in colour
    form: str  # 'A PDF to download.'
    sold: str  # 'Sold as PDF.'
    not_included: str  # 'thread or cloth'
    counters: tuple[Counter, ...]
    excerpt: tuple[str, ...]  # paragraphs
    credits: tuple[str, ...]  # 'Model stitched by Maud Fennimore'
    tags: tuple[str, ...]
    hashtags: tuple[str, ...]


def share_texts(standing: Standing, env: Environment) -> dict[str, bytes]:
    """File name → text, for every pattern that is out or has a teaser, and for the series.

    Raises TemplateFault.
    """
    return {
        f"{name}.txt": _settled(text).encode()
        for name, text in (
            *_of_patterns(standing, env),
            *_of_teasers(standing, env),
            *_of_series(standing, env),
        )
    }


def _of_patterns(standing: Standing, env: Environment) -> Iterator[tuple[str, str]]:
    series = standing.series
    for figures in standing.figures:
        pattern = figures.pattern
        facts = {
            "series": series,
            "pattern": pattern,
            "figures": figures,
            "words": pattern_words(figures, series),
        }
        yield f"{pattern.id}-listing", fill(env, "share/listing.txt", **facts)
        yield f"{pattern.id}-short-post", _fitted(env, "share/short-post.txt", facts)
        yield f"{pattern.id}-long-post", fill(env, "share/long-post.txt", **facts)
        yield f"{pattern.id}-alt", share_alt(pattern.title, model_alt(pattern, series.finish))


def _of_teasers(standing: Standing, env: Environment) -> Iterator[tuple[str, str]]:
    series = standing.series
    for one in standing.awaited:
        if one.teaser:
            facts = {
                "series": series,
                "awaited": one,
                "release": release(one.release),
                "link": in_full(series.address, pattern_page(one.pattern_id)),
            }
            name = one.pattern_id
            yield f"{name}-short-post", _fitted(env, "share/teaser-short-post.txt", facts)
            yield f"{name}-long-post", fill(env, "share/teaser-long-post.txt", **facts)
            yield f"{name}-alt", share_alt(one.title, detail_alt(one.title))


def _of_series(standing: Standing, env: Environment) -> Iterator[tuple[str, str]]:
    series, piece = standing.series, standing.series.finish
    facts = {
        "series": series,
        "first": None if series.patterns else _first(standing.awaited, series),
        "designers": listed(tuple(dict.fromkeys(p.designer.name for p in series.patterns))),
        "extent": counted(len(series.patterns), "cross stitch pattern"),
        "excerpt": excerpt(series.welcome_markdown),
        "link": in_full(series.address, INDEX),
        "piece_link": in_full(series.address, PIECE_PAGE),
        "hashtags": series_hashtags(series),
    }
    yield f"{series.id}-short-post", _fitted(env, "share/series-short-post.txt", facts)
    yield f"{series.id}-long-post", fill(env, "share/series-long-post.txt", **facts)
    yield f"{series.id}-alt", series_alt(series)
    yield f"{OF_PIECE}-alt", share_alt(piece.name, bench_alt(piece))


def _first(awaited: tuple[Awaited, ...], series: Series) -> Release:
    """When the first pattern comes out, where none is out yet."""
    moments: list[datetime] = [one.release for one in awaited]
    return release(min(moments, default=series.release))


def pattern_words(figures: Figures, series: Series) -> PatternWords:
    pattern = figures.pattern
    sold, form = _sold(pattern)
    model = pattern.thread_sets[0]
    return PatternWords(
        link=in_full(series.address, pattern_page(pattern.id)),
        colours=counted(len(threads_used(pattern, model)), "colour"),
        worked_in=worked_in(pattern),
        threads=tuple(_threads(pattern, each) for each in pattern.thread_sets),
        beads=_beads(pattern),
        packet=tuple(_EDITIONS[name] for name in pattern.editions if name in _EDITIONS),
        form=form,
        sold=sold,
        not_included="thread, cloth or beads" if pattern.beads else "thread or cloth",
        counters=counters(pattern),
        excerpt=excerpt(pattern.story_markdown),
        credits=_credits(pattern),
        tags=tags(pattern, series),
        hashtags=hashtags(pattern, series),
    )


def _sold(pattern: Pattern) -> tuple[str, str]:
    if "packet" in pattern.given_away:
        return (
            "It is free.",
            "Free: the packet stands on the pattern’s page, to download and print.",
        )
    if pattern.given_away:
        return "It is free.", "Free: the chart stands on the pattern’s page."
    sold, form = _SOLD[pattern.designer.sells]
    somewhere = counters(pattern) or pattern.designer.sells is Sells.NEITHER
    return (sold if somewhere else ""), form


def _threads(pattern: Pattern, thread_set: ThreadSet) -> str:
    """The card of the set, and those that single colours come from."""
    cards = [card for card, _ in threads_used(pattern, thread_set)]
    said = []
    for card in {card.id: card for card in cards}.values():
        number = sum(one.id == card.id for one in cards)
        dyed = ", dyed by hand" if card.hand_dyed else ""
        said.append(f"{counted(number, 'colour')} of {card.name} ({card.material}{dyed})")
    return listed(tuple(said))


def _beads(pattern: Pattern) -> tuple[str, ...]:
    colours: dict[str, dict[str, None]] = {}
    for bead in pattern.beads:
        said = f"{bead.card.name}, {plain(bead.card.size_mm)} mm"
        colours.setdefault(said, {})[bead.colour.name] = None
    return tuple(f"{said}: {listed(tuple(names))}" for said, names in colours.items())


def _credits(pattern: Pattern) -> tuple[str, ...]:
    named = (
        ("Model stitched by", pattern.model_stitcher),
        ("Finished by", pattern.finisher),
        ("Dyed by", pattern.dyer),
        ("Photographed by", pattern.photographer),
    )
    return tuple(f"{role} {name}" for role, name in named if name)


def excerpt(markdown: str, most: int = EXCERPT) -> tuple[str, ...]:
    """The beginning of a text, whole paragraphs and then whole sentences, at most `most` characters in all.

    A first sentence that is longer still is cut after a word.
    """
    kept: list[str] = []
    room = most
    for paragraph in paragraphs(markdown):
        if len(paragraph) <= room:
            kept.append(paragraph)
            room -= len(paragraph)
            continue
        ends = [match.end() for match in _SENTENCE_END.finditer(paragraph) if match.end() <= room]
        if ends:
            kept.append(paragraph[: ends[-1]])
        elif not kept:
            kept.append(_cut(paragraph, room))
        break
    return tuple(kept)


def _fitted(env: Environment, template: str, facts: Mapping[str, object]) -> str:
    """The fullest form of a short post that keeps within its length; the template knows what to leave out."""
    for brief in range(_BRIEFEST + 1):
        text = _settled(fill(env, template, brief=brief, **facts)).strip()
        if len(text) <= SHORT_POST:
            return text
    return _cut(text, SHORT_POST)


def _cut(text: str, most: int) -> str:
    """Cut after a word, or within the only one."""
    if len(text) <= most:
        return text
    short = text[: most - 1]
    return f"{(short.rpartition(' ')[0] or short).rstrip(' ,;:.')}…"


def _settled(text: str) -> str:
    """No space at the end of a line, never two empty lines running, one line end at the end."""
    lines = "\n".join(line.rstrip() for line in text.split("\n"))
    return re.sub(r"\n{3,}", "\n\n", lines).strip("\n") + "\n"
