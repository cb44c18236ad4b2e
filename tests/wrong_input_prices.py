"""Prices that say nothing.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import BEADS, CLOTH, MOSS
from tests.wrong_input_case import Case

CASES = (
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
        "a price without its currency",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1.40")},
        "threads/moss.yaml:7:8: 'price' is '1.40'; write a price as 1.40 and the three letters of its currency, such as EUR",
    ),
    Case(
        "a price with the sign of its currency",
        {CLOTH: ("over: 2", "over: 2\nprice: €9")},
        "cloths/hopsack-28.yaml:5:8: 'price' is '€9'; write a price as '9 EUR'",
    ),
    Case(
        "a comma in a price",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 1,40 EUR")},
        "threads/moss.yaml:7:8: '1,40 EUR' has a comma in its number; write a full stop: '1.40 EUR'",
    ),
    Case(
        "a comma and a sign in a price",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: €1,35")},
        "threads/moss.yaml:7:8: 'price' is '€1,35'; write a price as '1.35 EUR'",
    ),
    Case(
        "a comma and a word in a price",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 7,20 Euro")},
        "threads/moss.yaml:7:8: 'price' is '7,20 Euro'; write a price as '7.20 EUR'",
    ),
    Case(
        "a price in pounds",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 2.40£")},
        "threads/moss.yaml:7:8: 'price' is '2.40£'; write a price as '2.40 GBP'",
    ),
    Case(
        "a sign of several countries in a price",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: $1,35")},
        "threads/moss.yaml:7:8: 'price' is '$1,35'; write a price as 1.35 and the three letters of its currency, such as EUR",
    ),
    Case(
        "a currency before an amount with a comma",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: EUR 1,35")},
        "threads/moss.yaml:7:8: 'price' is 'EUR 1,35'; write a price as '1.35 EUR'",
    ),
    Case(
        "a price among other words",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: about 7 EUR")},
        "threads/moss.yaml:7:8: 'price' is 'about 7 EUR', which is not a price; write the amount and the three letters of its currency, for example price: 1.40 EUR",
    ),
    Case(
        "a price without its decimal sign",
        {MOSS: ("length: 8 m", "length: 8 m\nprice: 135 EUR")},
        "threads/moss.yaml:7:8: advice: 135 EUR is a high price for one skein; look once more: should it be 1.35 EUR?",
    ),
    Case(
        "a price of cloth without its decimal sign",
        {CLOTH: ("over: 2", "over: 2\nprice: 1250 GBP")},
        "cloths/hopsack-28.yaml:5:8: advice: 1,250 GBP is a high price for a fat quarter; look once more: should it be 12.50 GBP?",
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
    Case(
        "one card of three in another currency",
        {
            MOSS: ("length: 8 m", "length: 8 m\nprice: 1.40 EUR"),
            CLOTH: ("over: 2", "over: 2\nprice: 9 GBP"),
            BEADS: ("packet: 300", "packet: 300\nprice: 3.20 EUR"),
        },
        "cloths/hopsack-28.yaml:5:8: advice: this price is in GBP, and those of most cards are in EUR, so what is to buy has no single total; write them all in one currency",
    ),
)
