"""The colours of a chart on paper: ink, paper, and a thread thinned so that its symbol is read in black."""

from functools import lru_cache

from packetgen.colour import contrast, mix

INK = "#000000"
PAPER = "#ffffff"
# WCAG 2.2, success criterion 1.4.6 (enhanced contrast of text).
LEAST_CONTRAST = 7.0
# WCAG 2.2, success criterion 1.4.11 (contrast of what is no text).
_LEAST_SEEN = 3.0
_LEAST_WHITE = 0.15
_STEP = 0.05


def edge_of(hex_colour: str) -> str:
    """What a line or a knot of this colour has round it: white, so that it is seen on any tint, or ink where it would
    not be seen on white."""
    return INK if contrast(hex_colour, PAPER) < _LEAST_SEEN else PAPER


@lru_cache(maxsize=4096)  # asked for again and again, wherever two are compared
def tint(hex_colour: str) -> str:
    """The colour thinned with white until black ink stands on it at LEAST_CONTRAST or better."""
    white = _LEAST_WHITE
    while contrast(mix(hex_colour, PAPER, white), INK) < LEAST_CONTRAST:
        white += _STEP
    return mix(hex_colour, PAPER, white)
