"""Tags for a shop page and hashtags for a post, from what is known of a pattern; never a name of goods.

At most thirteen tags of at most twenty characters, and five hashtags: common practice, no source.
"""

import re
from collections.abc import Iterable

from packetgen.model import Pattern, Series
from packetgen.render.site_pattern import ways_of_working
from packetgen.units import plain

MOST_TAGS, LONGEST_TAG, MOST_HASHTAGS = 13, 20, 5
_CRAFT = ("cross stitch", "cross stitch pattern", "counted cross stitch")
# What parts the letters of a tag: an apostrophe stays in its word.
_APART = re.compile(r"[^\w'’-]+|_")


def tags(pattern: Pattern, series: Series) -> tuple[str, ...]:
    """What buyers look for first stands first; what is too long for a tag is left out."""
    offered = (
        *_CRAFT,
        pattern.occasion.name,
        pattern.title,
        series.title,
        "free pattern" if pattern.given_away else "",
        "pdf pattern" if pattern.designer.sells.as_pdf and not pattern.given_away else "",
        *_counts(pattern),
        *ways_of_working(pattern),
        "embroidery",
        "needlework",
    )
    return _told_apart(map(_tag, offered), LONGEST_TAG)[:MOST_TAGS]


def hashtags(pattern: Pattern, series: Series) -> tuple[str, ...]:
    """'#CrossStitch' and four more; a hashtag may be as long as it likes."""
    words = ("cross stitch", series.title, pattern.occasion.name, *_CRAFT[1:], *_counts(pattern))
    return _hashtags(words)


def series_hashtags(series: Series) -> tuple[str, ...]:
    return _hashtags(("cross stitch", series.title, *_CRAFT[1:], "embroidery"))


def _hashtags(words: Iterable[str]) -> tuple[str, ...]:
    return tuple(f"#{one}" for one in _told_apart(map(_joined, words), None)[:MOST_HASHTAGS])


def _counts(pattern: Pattern) -> list[str]:
    """'28 count evenweave', one for each kind of cloth offered."""
    return [
        f"{plain(on.cloth.count_per_inch)} count {on.cloth.weave.value}" for on in pattern.cloths
    ]


def _tag(words: str) -> str:
    return " ".join(_APART.sub(" ", words).split()).casefold()


def _joined(words: str) -> str:
    """'Twelfth Night' → 'TwelfthNight': letters and digits alone."""
    parts = re.sub(r"[^\w\s-]|_", "", words).replace("-", " ").split()
    return "".join(part[:1].upper() + part[1:] for part in parts)


def _told_apart(words: Iterable[str], longest: int | None) -> tuple[str, ...]:
    """Each once, capitals or not, in the order given."""
    kept: dict[str, str] = {}
    for word in words:
        if word and (longest is None or len(word) <= longest):
            kept.setdefault(word.casefold(), word)
    return tuple(kept.values())
