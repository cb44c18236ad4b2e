"""Links in an author's Markdown: each must lead somewhere outside, since a page has no other to offer."""

from functools import partial

from packetgen.diagnostics import Report
from packetgen.load.addresses import check_address
from packetgen.load.words import LOST
from packetgen.markdown_text import links


def check_links(text: str, report: Report) -> bool:
    """Whether every link of `text` could be right.

    `report(code, line=…, column=…, **facts)` hears of those that could not; both count from 0.
    """
    try:
        found = links(text)
    except RecursionError:
        report("prose-too-deep", line=0, column=0)
        return False
    sound = True
    for link in found:
        report_here = partial(report, line=link.line - 1, column=link.column - 1)
        if LOST not in link.address and not check_address(link.address, report_here, mail=True):
            sound = False
    return sound
