"""Text for a shop's listing of one pattern, ready to paste."""

from jinja2 import Environment

from packetgen.model import Series
from packetgen.reckon.figures import Figures
from packetgen.reckon.needle import threads_used
from packetgen.render.templates import fill


def listing(series: Series, figures: Figures, env: Environment) -> bytes:
    """Plain text: what the pattern is, its sizes, and what is in the packet. No figure of the chart."""
    pattern = figures.pattern
    model_set = pattern.thread_sets[0]
    text = fill(
        env,
        "share/listing.txt",
        series=series,
        pattern=pattern,
        figures=figures,
        colours=sum(card == model_set.card for card, _ in threads_used(pattern, model_set)),
        model_set=model_set,
    )
    return text.encode()
