"""What closes where nothing is open, or sooner than was meant: a bracket too many, a quote in a text between
quotes of the same kind."""

import re

from packetgen.load.explained import Explained, Spot
from packetgen.load.sure import sure
from packetgen.load.text_lines import plain
from packetgen.load.words import said, shown

_BRACKETS = ("}", "]")
_OTHER = {'"': "'", "'": '"'}
# What stands before a quote that begins a value, and behind one that ends it.
_OPENS, _CLOSES = r"(?:[:,\[{]\s+|[\[{]|^\s*(?:- +)+)", r"(?=\s*(?:[,}\]]|$|\s#))"


def facts_of_quote(quote: str) -> dict[str, object]:
    """What is told of a quote that is not closed: a single one may be an apostrophe."""
    or_else = ", or put double quotes round all of it" if quote == "'" else ""
    return {"quote": quote, "or_else": or_else}


def bracket_too_many(here: Spot, lines: list[str]) -> Explained | None:
    """The brackets at `here` that close nothing, or the one before the comma there that closes too early; or that
    comma, where nothing comes after it."""
    line = plain(lines[here[0] - 1])
    before, sign = line[: here[1] - 1].rstrip(), line[here[1] - 1 : here[1]]
    alone = line[here[1] :].strip() == ""  # not the mark of a key line
    if sign in _BRACKETS and before[-1:] not in (":", "-") and (before or alone):
        signs = sure(re.match(r"[\]}](?:\s*[\]}])*", line[here[1] - 1 :]))[0]
        one = len(signs) == 1
        what = f"the bracket '{signs}' closes" if one else f"the brackets '{signs}' close"
        return Explained("bracket-over", *here, {"what": what, "it": "it" if one else "them"})
    if sign == "," and before.endswith(_BRACKETS) and not line[here[1] :].strip():
        return Explained("comma-over", *here)
    if sign == "," and before.endswith(_BRACKETS):
        rest = said(line[here[1] - 1 :])
        return Explained(
            "bracket-early", here[0], len(before), {"bracket": before[-1], "said": rest}
        )
    return None


def quote_inside(here: Spot, lines: list[str]) -> Explained | None:
    """The quote or apostrophe just before `here` that ended a text which the same sign began."""
    line, after = lines[here[0] - 1], here[1] - 1
    quote = line[after - 1 : after]
    if quote not in _OTHER or not line[after : after + 1].isalpha():
        return None
    opened = [found.end() - 1 for found in re.finditer(_OPENS + quote, line[: after - 1])]
    if not opened:
        return None
    end = re.compile(quote + _CLOSES).search(line, after)
    # With nothing to close it, the first sign was an apostrophe of the text.
    text = line[opened[-1] + 1 : end.start()] if end else line[opened[-1] :].split(" #")[0].rstrip()
    other = _OTHER[quote]
    if other in text:
        return None
    mended = f"{other}{shown(text)}{other}"
    return Explained("quote-inside", here[0], after, {"quote": quote, "mended": mended})
