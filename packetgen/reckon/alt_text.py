"""What pictures show, in words for whoever does not see them: the author's own, or made from what she says
of the pattern.

Never more of a design than its page tells.
"""

from packetgen.model import FinishingPiece, Pattern, Series
from packetgen.nouns import listed

LONGEST_ALT = 400  # characters; as many as an author may give
SERIES_SHOWS = 3  # designs stand in the picture of a series


def model_alt(pattern: Pattern, piece: FinishingPiece) -> str:
    """Of the mounted design."""
    if pattern.photo_alt:
        return pattern.photo_alt
    on = pattern.cloths[0]
    cloth = f"{on.cloth.name} in {on.colour.name}"
    return _short(
        f"{pattern.title}, stitched on {cloth}, mounted on card and shown on {piece.name}.",
        pattern.about,
    )


def detail_alt(title: str) -> str:
    """Of the close-up of a design that is not out yet."""
    return _short(f"A close-up of {title}: thread on cloth, and no more of the design than that.")


def bench_alt(piece: FinishingPiece) -> str:
    """Of the empty finishing piece."""
    return _short(f"{piece.name}, painted and with nothing on it yet.", piece.about)


def series_alt(series: Series) -> str:
    """Of the picture that is shared with a series: its first designs, side by side."""
    said = f"The words “{series.title}”, and “{series.tagline.rstrip('.')}”"
    titles = listed(tuple(pattern.title for pattern in series.patterns[:SERIES_SHOWS]))
    return _short(f"{said}, with {titles} stitched and hung on a wall." if titles else f"{said}.")


def share_alt(title: str, alt: str) -> str:
    """Of a picture for sharing, which has its title written beside it."""
    return _short(f"The words “{title}” with a picture.", alt)


def _short(*sentences: str) -> str:
    """The sentences one after another, cut after a word where they run too long."""
    said = " ".join(" ".join(sentence.split()) for sentence in sentences if sentence)
    if len(said) <= LONGEST_ALT:
        return said
    return said[:LONGEST_ALT].rpartition(" ")[0].rstrip(",;: ") + "…"
