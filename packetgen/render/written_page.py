"""Fills the template of the written chart: a document of its own, made to be heard."""

from jinja2 import Environment

from packetgen.chart.editions import COLOUR
from packetgen.chart.written import written
from packetgen.model import Series
from packetgen.reckon.figures import Figures
from packetgen.render.faces import series_font_files
from packetgen.render.packet import PacketSource, about
from packetgen.render.templates import fill

_WRITTEN = "packet/written.html"


def written_source(series: Series, figures: Figures, env: Environment) -> PacketSource:
    """The written chart of one pattern; it has no drawn chart."""
    pattern = figures.pattern
    html = fill(
        env,
        _WRITTEN,
        **about(series, pattern),
        chart=written(pattern),
    )
    # Pages as large as the packet's.
    fonts = series_font_files(series.look)
    return PacketSource(_WRITTEN, html, fonts, {}, COLOUR, figures.pattern.revisions[-1].on, {})
