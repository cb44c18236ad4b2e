"""Prices: '1.40 EUR', an amount and the three letters of its currency (as in ISO 4217)."""

import re
from decimal import Decimal

from packetgen.diagnostics import Report
from packetgen.load.words import said
from packetgen.model import Price

# A hundredth is the smallest coin of most currencies; no skein costs ten thousand.
_LOW, _HIGH = Decimal("0.01"), Decimal(10_000)
_PRICE = re.compile(r"(\d{1,9}(?:\.\d{1,3})?)\s*([A-Z]{3})", re.ASCII)
_NEARLY = (
    re.compile(r"(?P<amount>\d{1,9}(?:\.\d{1,3})?)\s*(?P<letters>[A-Za-z]{3})", re.ASCII),
    re.compile(r"(?P<letters>[A-Za-z]{3})\s*(?P<amount>\d{1,9}(?:\.\d{1,3})?)", re.ASCII),
)


def read_money(text: str, report: Report) -> Price | None:
    """The price that `text` says, to the last figure; None where it says none, with the reason reported."""
    text = text.strip()
    if re.search(r"\d,\d", text, re.ASCII):
        report("decimal-comma", better=said(text.replace(",", ".", 1)))
        return None
    match = _PRICE.fullmatch(text)
    if not match:
        better = next((found for one in _NEARLY if (found := one.fullmatch(text))), None)
        if better:
            report("price-order", better=said(f"{better['amount']} {better['letters'].upper()}"))
        else:
            report("not-a-price")
        return None
    amount = Decimal(match[1])
    if not _LOW <= amount <= _HIGH:
        report("out-of-range", low=f"{_LOW} {match[2]}", high=f"{_HIGH} {match[2]}")
        return None
    return Price(amount, match[2])
