"""What pages say of designers: how they sell, and whom they share a studio with."""

from packetgen.model import Designer, Sells
from packetgen.render.site_text import listed

_SELLS = {
    Sells.PDF: "sells PDFs",
    Sells.PRINTED: "sells printed patterns, and no PDFs",
    Sells.BOTH: "sells PDFs and printed patterns",
    Sells.NEITHER: "sells no PDFs",
}


def sells_said(designer: Designer) -> str:
    """'sells PDFs and printed patterns': after a name, or with a capital by itself."""
    return _SELLS[designer.sells]


def studio_said(designer: Designer, designers: tuple[Designer, ...]) -> str:
    """'Two Tables, with Corin Bellwether'; '' for a designer of no studio."""
    others = tuple(d.name for d in designers if d.studio == designer.studio and d.id != designer.id)
    if not designer.studio or not others:
        return designer.studio
    return f"{designer.studio}, with {listed(others)}"
