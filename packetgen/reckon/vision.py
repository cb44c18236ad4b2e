"""Colours as eyes see them that lack one of the three kinds of cone. The one door to coloraide."""

from collections.abc import Mapping
from functools import cache
from types import MappingProxyType

from coloraide import Color

# What the eyes are called → the filter of the library.
EYES: Mapping[str, str] = MappingProxyType(
    {"protanopia": "protan", "deuteranopia": "deutan", "tritanopia": "tritan"}
)


@cache
def seen(hex_colour: str, eyes: str) -> str:
    """The colour as ordinary eyes would have to be shown it to see what these eyes see of it.

    `eyes` is one of `EYES`; raises KeyError for any other. By the method of Brettel, Viénot and
    Mollon (1997), Journal of the Optical Society of America A 14(10), 2647-2655, which holds for all
    three; what a screen cannot show is cut to what it can.
    """
    shown = Color(hex_colour).filter(EYES[eyes], method="brettel").convert("srgb").clip()
    return shown.to_string(hex=True)
