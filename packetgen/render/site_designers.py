"""What the page of the designers shows: who they are, what each has drawn, and how she sells."""

from dataclasses import dataclass

from packetgen.model import Designer, Link, Sells, Series
from packetgen.reckon.standing import Standing
from packetgen.reckon.swaps import hangs_from
from packetgen.render.people import sells_said, studio_said
from packetgen.render.site_pattern import PatternView
from packetgen.render.site_year import Hanging, hanging, in_order, pattern_page


@dataclass(frozen=True)
class AwaitedRow:
    """A pattern that is not out yet; `href` is '' where it has no page."""

    title: str
    href: str
    hanging: Hanging


@dataclass(frozen=True)
class DesignerRow:
    id: str
    name: str
    about: str
    sells: Sells
    sells_said: str  # 'sells PDFs'
    shop: str | None
    links: tuple[Link, ...]
    studio: str  # 'Two Tables, with Corin Bellwether'
    patterns: tuple[PatternView, ...]  # that are out, as the year has them
    awaited: tuple[AwaitedRow, ...]


def designer_rows(standing: Standing, year: tuple[PatternView, ...]) -> tuple[DesignerRow, ...]:
    """Every designer in the author's order; `year` holds the views of the patterns that are out."""
    series = standing.series
    drew = {pattern.id: pattern.designer.id for pattern in series.patterns}
    return tuple(
        DesignerRow(
            id=one.id,
            name=one.name,
            about=one.about,
            sells=one.sells,
            sells_said=sells_said(one),
            shop=one.shop,
            links=one.links,
            studio=studio_said(one, series.designers),
            patterns=tuple(view for view in year if drew[view.id] == one.id),
            awaited=_awaited(one, series),
        )
        for one in series.designers
    )


def _awaited(designer: Designer, series: Series) -> tuple[AwaitedRow, ...]:
    hers = (one for one in series.to_come if one.designer.id == designer.id)
    return tuple(
        AwaitedRow(
            one.title,
            pattern_page(one.pattern_id) if one.pattern_id else "",
            hanging(one.occasion, hangs_from(series, one.release)),
        )
        for one in in_order(hers, lambda one: one.occasion, series.release)
    )
