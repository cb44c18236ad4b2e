"""Whether a text in Markdown is one that can be set: not too long, and not too deep within itself.

The Markdown library takes time with the square of what is counted here, and goes down one call for each
level of lists and quotations.
"""

import re

from packetgen.diagnostics import Report
from packetgen.load.sure import sure

MOST_LETTERS = 30_000  # some ten pages
MOST_BRACKETS = 1_000  # '[' and '<' begin what may become a link
MOST_LEVELS = 30
_SPACES_A_LEVEL = 4

# What a line begins with: room, signs of quotations, signs of list entries (CommonMark 0.31.2, 5).
_LEAD = re.compile(r"(?:[ \t]+|>|[*+-](?=[ \t])|\d{1,9}[.)](?=[ \t]))*", re.ASCII)
_SIGN = re.compile(r"[>*+-]|\d+[.)]", re.ASCII)
_RULE = re.compile(r"[ \t]*([-*_])(?:[ \t]*\1)*[ \t]*", re.ASCII)  # drawn across the page


def check_size(text: str, report: Report) -> bool:
    """Whether `text` can be set. `report(code, line=…, column=…, **facts)` hears why not; both from 0."""
    if len(text) > MOST_LETTERS:
        report("prose-long", line=0, column=0, length=len(text), limit=MOST_LETTERS)
        return False
    brackets = text.count("[") + text.count("<")
    if brackets > MOST_BRACKETS:
        report("prose-brackets", line=0, column=0, number=brackets, limit=MOST_BRACKETS)
        return False
    for number, line in enumerate(text.split("\n")):
        if _levels(line) > MOST_LEVELS:
            report("prose-too-deep", line=number, column=0)
            return False
    return True


def _levels(line: str) -> int:
    """How deep the line can stand at most; a line of nothing, or drawn across the page, stands nowhere."""
    if not line.strip() or _RULE.fullmatch(line):
        return 0
    lead = sure(_LEAD.match(line))[0]
    return max(len(_SIGN.findall(lead)), len(lead.expandtabs(_SPACES_A_LEVEL)) // _SPACES_A_LEVEL)
