"""Prices that say nothing.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import BEADS, CLOTH, MOSS
from tests.wrong_input_case import Case

CASES = (
    Case(
        "a price without its currency",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1.40")},
        "threads/moss.yaml:7:8: 'price' is '1.40', which is not a price; write the amount and the three letters of its currency, for example price: 1.40 EUR",
    ),
    Case(
        "a price with the sign of its currency",
        {CLOTH: ("over: 2", "over: 2\nprice: €9")},
        "cloths/hopsack-28.yaml:5:8: 'price' is '€9', which is not a price; write the amount and the three letters of its currency, for example price: 1.40 EUR",
    ),
    Case(
        "a currency before its amount",
        {BEADS: ("packet: 300", "packet: 300\nprice: EUR 3.20")},
        "beads/drop.yaml:4:8: 'price' is 'EUR 3.20'; write a price as '3.20 EUR'",
    ),
    Case(
        "a currency in small letters",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1.40 eur")},
        "threads/moss.yaml:7:8: 'price' is '1.40 eur'; write a price as '1.40 EUR'",
    ),
    Case(
        "a comma in a price",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1,40 EUR")},
        "threads/moss.yaml:7:8: '1,40 EUR' has a comma in its number; write a full stop: '1.40 EUR'",
    ),
    Case(
        "a price of nothing",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 0 EUR")},
        "threads/moss.yaml:7:8: 'price' is '0 EUR', beyond what can be right; it goes from 0.01 EUR to 10000 EUR",
    ),
    Case(
        "a price with too many figures",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1.4000 EUR")},
        "threads/moss.yaml:7:8: 'price' is '1.4000 EUR', which is not a price; write the amount and the three letters of its currency, for example price: 1.40 EUR",
    ),
)
