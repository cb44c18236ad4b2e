"""Advice that an author has thought of, and leaves as it is."""

from dataclasses import dataclass

from packetgen.diagnostics import Place

# Folders of what all series share, on which a series lays advice aside too.
CARDS = ("threads", "cloths", "beads")


@dataclass(frozen=True)
class LaidAside:
    """Advice of one kind, by its code, on the pattern or the series in whose file this stands; only that which
    names what it is `about`, where that is not ''."""

    code: str
    because: str
    place: Place
    about: str = ""
