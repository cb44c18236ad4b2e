"""What pages say of designers: how and where they sell, and whom they share a studio with."""

from packetgen.model import Counter, Designer, Pattern, Sells
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


def counters(pattern: Pattern) -> tuple[Counter, ...]:
    """The counters the pattern names; a designer who sells, and names none, sells at her own."""
    designer = pattern.designer
    if pattern.given_away or designer.sells is Sells.NEITHER or not designer.shop:
        return pattern.sold_at
    return pattern.sold_at or (Counter(designer.name, designer.shop),)
