"""The way from every page of a series to all others."""

from dataclasses import dataclass

from packetgen.model import Series
from packetgen.render.address import INDEX

PIECE_PAGE = "finishing-piece.html"
SUPPLIES_PAGE = "supplies.html"
DESIGNERS_PAGE = "designers.html"
NOTICES_PAGE = "notices.html"
CORRECTIONS_PAGE = "corrections.html"


@dataclass(frozen=True)
class Way:
    """A link in the navigation; `href` is relative to the site."""

    label: str
    href: str


def piece_title(series: Series) -> str:
    """What leads to the finishing piece: its name, where that is not the title of the series too."""
    name = series.finish.name
    return "The finishing piece" if name.casefold() == series.title.casefold() else name


def navigation(series: Series) -> tuple[Way, ...]:
    """The pages of a series in the order in which they are listed."""
    return (
        Way("Patterns", INDEX),
        Way("Swap calendar", f"{INDEX}#calendar"),
        Way(piece_title(series), PIECE_PAGE),
        Way("Supplies", SUPPLIES_PAGE),
        Way("Designers", DESIGNERS_PAGE),
        Way("Notices", NOTICES_PAGE),
        Way("Corrections", CORRECTIONS_PAGE),
    )
