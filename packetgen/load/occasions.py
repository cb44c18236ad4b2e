"""The day that a design is for, as an author has written it."""

from packetgen.load.values import Filled
from packetgen.model import Occasion


def read_occasion(filled: Filled) -> Occasion:
    """It knows where its rule stands, since what is wrong with the day only the whole series shows."""
    return Occasion(filled["name"], filled["on"], filled.place_of("on"))
