"""What the page of a series shows."""

from dataclasses import dataclass
from datetime import date, datetime

from markupsafe import Markup

from packetgen.model import BeadCard, Cloth, Link, Sells, Series
from packetgen.nouns import plural
from packetgen.reckon.needle import threads_used
from packetgen.render.calendar_file import CALENDAR_FILE
from packetgen.render.people import sells_said, studio_said
from packetgen.render.site_pattern import PatternView
from packetgen.render.site_text import about_metres, counted, prose_under
from packetgen.render.site_year import Swap, before_its_day, swaps
from packetgen.units import plain


@dataclass(frozen=True)
class Release:
    """The day and hour of the release, where the author keeps her clock."""

    day: date
    machine: str  # for <time datetime>
    clock: str  # '09:00'
    zone: str  # 'Europe/London time, UTC+00:00'


@dataclass(frozen=True)
class DesignerRow:
    name: str
    about: str
    sells: Sells
    sells_said: str
    shop: str | None
    links: tuple[Link, ...]
    studio: str  # 'Two Tables, with Corin Bellwether'
    patterns: tuple[PatternView, ...]


@dataclass(frozen=True)
class NoticeRow:
    on: date
    title: str
    text: Markup
    kind: str
    opens: date | None
    closes: date | None
    who: str

    @property
    def is_news(self) -> bool:
        return self.kind == "news"

    @property
    def is_draw(self) -> bool:
        return self.kind == "prize draw"


@dataclass(frozen=True)
class Supply:
    """Something that a stitcher looks for in a shop: its name and what to look for."""

    name: str
    detail: str
    hand_dyed: bool


@dataclass(frozen=True)
class SeriesView:
    title: str
    tagline: str
    release: Release
    welcome: Markup
    patterns: tuple[PatternView, ...]  # in the order of the year
    calendar: tuple[Swap, ...]
    calendar_file: str
    goes_up: str  # '7 days before its day'
    to_come: tuple[Swap, ...]
    designers: tuple[DesignerRow, ...]
    notices: tuple[NoticeRow, ...]  # the newest first
    threads: tuple[Supply, ...]
    cloths: tuple[Supply, ...]
    beads: tuple[Supply, ...]
    licence: str

    @property
    def extent(self) -> str:
        """'3 patterns, 5 to come'."""
        coming = f", {len(self.to_come)} to come" if self.to_come else ""
        return counted(len(self.patterns), "pattern") + coming


def series_view(series: Series, year: tuple[PatternView, ...]) -> SeriesView:
    """Everything the series' page prints; `year` holds its patterns from January to December."""
    calendar = swaps(series)
    return SeriesView(
        title=series.title,
        tagline=series.tagline,
        release=release(series.release),
        welcome=prose_under(series.welcome_markdown, 3),
        patterns=year,
        calendar=calendar,
        calendar_file=CALENDAR_FILE,
        goes_up=before_its_day(series.goes_up_days),
        to_come=tuple(swap for swap in calendar if not swap.href),
        designers=tuple(
            DesignerRow(
                d.name,
                d.about,
                d.sells,
                sells_said(d),
                d.shop,
                d.links,
                studio_said(d, series.designers),
                tuple(view for view in year if view.designer == d.name),
            )
            for d in series.designers
        ),
        notices=tuple(
            NoticeRow(
                on=notice.on,
                title=notice.title,
                text=prose_under(notice.markdown, 4),
                kind=notice.kind,
                opens=notice.opens,
                closes=notice.closes,
                who=notice.who,
            )
            for notice in sorted(series.notices, key=lambda notice: notice.on, reverse=True)
        ),
        threads=_threads(series),
        cloths=_cloths(series),
        beads=_beads(series),
        licence=series.licence,
    )


def release(moment: datetime) -> Release:
    """'09:00' with its zone by name and by its distance from UTC on that day."""
    offset = f"{moment:%z}"
    from_utc = f"UTC{offset[:3]}:{offset[3:5]}"
    named = getattr(moment.tzinfo, "key", "")
    zone = f"{named.replace('_', ' ')} time, {from_utc}" if named else from_utc
    return Release(moment.date(), moment.isoformat(timespec="minutes"), f"{moment:%H:%M}", zone)


def _threads(series: Series) -> tuple[Supply, ...]:
    """The cards of the thread sets, then those that only single colours come from."""
    cards = {thread_set.card.id: thread_set.card for thread_set in series.thread_sets}
    for pattern in series.patterns:
        for thread_set in pattern.thread_sets:
            cards |= {card.id: card for card, _ in threads_used(pattern, thread_set)}
    return tuple(
        Supply(
            card.name,
            f"{card.material}, in {plural(card.sold_as)} of {about_metres(card.length_m)}",
            card.hand_dyed,
        )
        for card in cards.values()
    )


def _cloths(series: Series) -> tuple[Supply, ...]:
    cloths: dict[str, Cloth] = {}
    colours: dict[str, list[str]] = {}
    for option in (option for pattern in series.patterns for option in pattern.cloths):
        cloths[option.cloth.id] = option.cloth
        named = colours.setdefault(option.cloth.id, [])
        if option.colour.name not in named:
            named.append(option.colour.name)
    return tuple(
        Supply(
            cloth.name,
            f"{plain(cloth.count_per_inch)}-count {cloth.weave.value}: {', '.join(colours[name])}",
            cloth.hand_dyed,
        )
        for name, cloth in sorted(cloths.items())
    )


def _beads(series: Series) -> tuple[Supply, ...]:
    cards: dict[str, BeadCard] = {}
    colours: dict[str, list[str]] = {}
    for bead in (bead for pattern in series.patterns for bead in pattern.beads):
        cards[bead.card.id] = bead.card
        named = colours.setdefault(bead.card.id, [])
        if bead.colour.name not in named:
            named.append(bead.colour.name)
    return tuple(
        Supply(
            card.name,
            f"{plain(card.size_mm)} mm, in packets of {counted(card.per_packet, 'bead')}: "
            f"{', '.join(colours[name])}",
            False,
        )
        for name, card in sorted(cards.items())
    )
