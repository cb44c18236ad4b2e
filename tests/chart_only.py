"""A packet's chart pages and nothing else, by the same path as the whole packet."""

from collections.abc import Mapping

from packetgen.chart.editions import COLOUR as EDITION
from packetgen.chart.sheet import look_of
from packetgen.chart.symbols import BLANK
from packetgen.model import BARE, Pattern
from packetgen.reckon.figures import Figures, figures
from packetgen.render.chart_pages import ChartPage, alternative, chart_pages
from packetgen.render.key import key_rows
from packetgen.render.look_style import packet_style
from packetgen.render.packet import symbols_of
from packetgen.render.page_key import page_lines
from packetgen.render.pdf import PAPERS_MM, documents
from packetgen.render.templates import environment, fill
from tests.stitching import piece

_BLANK_PICTURE = b'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 1 1"/>'


def reckoned(pattern: Pattern) -> Figures:
    """The figures of a pattern that will be shown on a plain board."""
    return figures(pattern, piece())


def symbols(of: Figures) -> Mapping[str, str]:
    """Mark → symbol, that of a bare cell included."""
    return symbols_of(of) | {BARE: BLANK}


def pages_of(of: Figures) -> tuple[ChartPage, ...]:
    """The pages in colour, laid out and not yet painted."""
    look = look_of(of.pattern, symbols_of(of), EDITION.manner)
    return chart_pages(of.pattern, look, page_lines(key_rows(of, look), of.beads, look), EDITION)


def chart_pdfs(
    of: Figures, papers_mm: Mapping[str, tuple[float, float]] = PAPERS_MM
) -> dict[str, bytes]:
    """The chart pages as a document for each paper."""
    return documents(**chart_document(of), papers_mm=papers_mm)


def chart_document(of: Figures) -> dict[str, object]:
    """What the engine is given to set the chart pages, but for the papers."""
    pages, env = pages_of(of), environment()
    body = fill(
        env,
        "packet/chart-pages.html",
        chart=[(page, alternative(page)) for page in pages],
    )
    style = packet_style() + fill(env, "packet/packet.css")
    html = (
        f'<!DOCTYPE html><html lang="en-GB"><head><meta charset="utf-8"><title>{of.pattern.title}'
        f"</title><style>{style}</style></head><body>{body}</body></html>"
    )
    return {
        "html": html,
        "assets": {"blank.svg": _BLANK_PICTURE},
        "identifier": b"chart",
        "charts": {page.anchor: page for page in pages},
        "page_mm": EDITION.page_mm,
        "attached": {},
        "dated": of.pattern.revisions[-1].on,
    }
