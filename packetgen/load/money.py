"""Prices: '1.40 EUR', an amount and the three letters of its currency (as in ISO 4217)."""

import re
from decimal import Decimal

from packetgen.diagnostics import Report
from packetgen.load.words import said
from packetgen.model import Price

# A hundredth is the smallest coin of most currencies; no skein costs ten thousand.
_LOW, _HIGH = Decimal("0.01"), Decimal(10_000)
_PRICE = re.compile(r"(\d{1,9}(?:\.\d{1,3})?)\s*([A-Z]{3})", re.ASCII)
# An amount with whatever people write before it or behind it.
_NEARLY = re.compile(
    r"(?P<before>[^\d\s]*)\s*(?P<amount>\d{1,9}(?:[.,]\d{1,3})?)\s*(?P<behind>[^\d\s]*)", re.ASCII
)
# Signs and words of one currency. What several countries call so ('$', 'kr') says none.
_LETTERS = {
    "€": "EUR", "euro": "EUR", "euros": "EUR", "£": "GBP", "pound": "GBP", "pounds": "GBP",
}  # fmt: skip


def read_money(text: str, report: Report) -> Price | None:
    """The price that `text` says, to the last figure; None where it says none, with the reason reported."""
    text = text.strip()
    match = _PRICE.fullmatch(text)
    if not match:
        _complain(text, report)
        return None
    amount = Decimal(match[1])
    if not _LOW <= amount <= _HIGH:
        report("out-of-range", low=f"{_LOW} {match[2]}", high=f"{_HIGH} {match[2]}")
        return None
    return Price(amount, match[2])


def _complain(text: str, report: Report) -> None:
    found = _NEARLY.fullmatch(text)
    if not found or (found["before"] and found["behind"]):
        report("not-a-price")
        return
    amount, currency = found["amount"].replace(",", "."), found["before"] or found["behind"]
    letters = _LETTERS.get(currency.casefold(), currency.upper())
    better = f"{amount} {letters}"
    if not _PRICE.fullmatch(better):
        report("price-order", better=f"{amount} and the three letters of its currency, such as EUR")
    elif better == text.replace(",", "."):
        report("decimal-comma", better=said(better))
    else:
        report("price-order", better=said(better))
