"""Links and pictures in an author's Markdown: a link must lead somewhere outside, since a page has no other
to offer, and pictures are not shown."""

from functools import partial

from packetgen.diagnostics import Report
from packetgen.load.addresses import check_address
from packetgen.load.words import LOST, said
from packetgen.markdown_text import links, pictures


def check_links(text: str, report: Report) -> bool:
    """Whether every link of `text` could be right.

    `report(code, line=…, column=…, **facts)` hears of those that could not, and, as advice, of pictures; both
    count from 0.
    """
    try:
        found, left_out = links(text), pictures(text)
    except RecursionError:
        report("prose-too-deep", line=0, column=0)
        return False
    for picture in left_out:
        place = {"line": picture.line - 1, "column": picture.column - 1}
        report("prose-picture", **place, picture=said(picture.address))
    sound = True
    for link in found:
        report_here = partial(report, line=link.line - 1, column=link.column - 1)
        if LOST not in link.address and not check_address(link.address, report_here, mail=True):
            sound = False
    return sound
