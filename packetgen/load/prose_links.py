"""Links in an author's Markdown: each must lead somewhere outside, since a page has no other to offer."""

from collections.abc import Callable

from packetgen.load.addresses import check_address
from packetgen.load.words import LOST
from packetgen.markdown_text import links


def check_links(text: str, report: Callable) -> bool:
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

        def report_here(code: str, line=link.line - 1, column=link.column - 1, **facts) -> None:
            report(code, line=line, column=column, **facts)

        if LOST not in link.address and not check_address(link.address, report_here, mail=True):
            sound = False
    return sound
