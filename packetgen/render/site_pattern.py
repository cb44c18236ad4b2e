"""What a pattern's page shows. Public: never a chart, a symbol or the stitches of one colour."""

from dataclasses import dataclass

from markupsafe import Markup

from packetgen.model import (
    Bead,
    Colour,
    Counter,
    Pattern,
    Revision,
    Sells,
    Series,
    Stitch,
    ThreadCard,
    ThreadSet,
    Weave,
)
from packetgen.nouns import plural
from packetgen.reckon.buying import units_by_word
from packetgen.reckon.figures import BeadNeed, Figures, OnCloth
from packetgen.reckon.fit import Verdict
from packetgen.reckon.needle import threads_used
from packetgen.reckon.sizes import FRAMING_MARGIN_MM, Size
from packetgen.render.people import sells_said, studio_said
from packetgen.render.site_pictures import Shown, SitePictures, mounted_stem, shown
from packetgen.render.site_text import about_metres, counted, listed, prose_under
from packetgen.render.site_year import Hanging, hanging, pattern_page
from packetgen.units import plain

_WORKED_IN = (
    ("cross stitch", {Stitch.FULL}),
    ("half stitch", {Stitch.HALF, Stitch.HALF_BACK}),
    ("three-quarter and quarter stitches", {Stitch.THREE_QUARTER, Stitch.QUARTER}),
    ("petite stitches", {Stitch.PETITE}),
)
_VERDICTS = {
    Verdict.FITS: "fits with room to spare",
    Verdict.TIGHT: "fits, but only just",
    Verdict.DOES_NOT_FIT: "does not fit",
}
# Wood left free on two sides that differs by less than this reads as the same, mm.
_SAME_MM = 0.05


@dataclass(frozen=True)
class Reveal:
    """Wood left free on one side of the card, or on both alike."""

    side: str
    free_mm: float


@dataclass(frozen=True)
class ClothRow:
    """One offered cloth: how large the design becomes and how it sits on the finishing piece."""

    name: str
    colour: Colour
    worked: str  # '28-count evenweave, over 2'
    model: bool
    hand_dyed: bool
    finished: Size
    cut: Size
    card: Size
    across: tuple[Reveal, ...]
    upright: tuple[Reveal, ...]
    verdict: str
    to_buy: tuple[str, ...]  # '23 skeins and 1 reel', one a thread set


@dataclass(frozen=True)
class OtherThread:
    """A card besides the set's own: '1 colour of Glowmoth Braid, metallic braid, in reels of 11 m'."""

    name: str
    said: str


@dataclass(frozen=True)
class SetRow:
    """One line of thread that the pattern may be stitched in."""

    name: str
    material: str
    unit: str
    unit_length: str
    strands: str
    colours: int  # of its own card
    others: tuple[OtherThread, ...]  # that single colours come from
    hand_dyed: bool
    to_buy: str  # '18 skeins' where that is the same on every cloth; else ''


@dataclass(frozen=True)
class BeadRow:
    name: str
    colour: Colour
    size_mm: float
    packets: str


@dataclass(frozen=True)
class PatternView:
    id: str
    href: str
    title: str
    about: str
    designer: str
    picture: Shown
    hanging: Hanging
    width_stitches: int
    height_stitches: int
    worked_in: str
    colours: tuple[Colour, ...]  # of the model's set, card by card in the card's order
    cloths: tuple[ClothRow, ...]
    sets: tuple[SetRow, ...]
    beads: tuple[BeadRow, ...]
    story: Markup
    model_stitcher: str
    finisher: str
    studio: str  # 'Two Tables, with Corin Bellwether'
    dyer: str
    photographer: str
    designer_sells: Sells
    sells_said: str
    sold_at: tuple[Counter, ...]
    revisions: tuple[Revision, ...]  # the newest first
    margin_mm: float = FRAMING_MARGIN_MM  # of cloth round the stitching

    @property
    def model(self) -> ClothRow:
        return self.cloths[0]

    @property
    def units_vary(self) -> bool:
        """Whether some cloth takes more units of a line of thread than another."""
        return not all(row.to_buy for row in self.sets)


def pattern_view(figures: Figures, series: Series, pictures: SitePictures) -> PatternView:
    """Everything the page of one pattern prints."""
    pattern = figures.pattern
    cloths = tuple(_cloth_row(on, on is figures.cloths[0]) for on in figures.cloths)
    return PatternView(
        id=pattern.id,
        href=pattern_page(pattern.id),
        title=pattern.title,
        about=pattern.about,
        designer=pattern.designer.name,
        picture=shown(
            pictures.mounted[pattern.id], mounted_stem(pattern.id), _alt(pattern, series)
        ),
        hanging=hanging(pattern.occasion, series.release),
        width_stitches=pattern.grid.width,
        height_stitches=pattern.grid.height,
        worked_in=worked_in(pattern),
        colours=tuple(colour for _, colour in threads_used(pattern, pattern.thread_sets[0])),
        cloths=cloths,
        sets=_set_rows(pattern, cloths),
        beads=tuple(_bead_row(need) for need in figures.beads),
        story=prose_under(pattern.story_markdown, 3),
        model_stitcher=pattern.model_stitcher,
        finisher=pattern.finisher,
        studio=studio_said(pattern.designer, series.designers),
        dyer=pattern.dyer,
        photographer=pattern.photographer,
        designer_sells=pattern.designer.sells,
        sells_said=sells_said(pattern.designer),
        sold_at=_counters(pattern),
        revisions=pattern.revisions[::-1],
    )


def _alt(pattern: Pattern, series: Series) -> str:
    """What the picture of the mounted design shows, for someone who does not see it: in the author's words,
    or made from what she says of the pattern."""
    if pattern.photo_alt:
        return pattern.photo_alt
    on = pattern.cloths[0]
    cloth, piece = f"{on.cloth.name} in {on.colour.name}", series.finish.name
    said = f"{pattern.title}, stitched on {cloth}, mounted on card and hung on {piece}."
    return f"{said} {pattern.about}".rstrip()


def worked_in(pattern: Pattern) -> str:
    """'cross stitch, backstitch and French knots': the kinds of stitch, without their numbers."""
    marks = {mark for row in pattern.grid.rows for mark in row}
    kinds = {line.stitch for line in pattern.key if line.mark in marks}
    kinds |= {fraction.stitch for fraction in pattern.fractions}
    words = [word for word, stitches in _WORKED_IN if kinds & stitches]
    words += ["backstitch"] * any(not line.long for line in pattern.lines)
    words += ["long stitch"] * any(line.long for line in pattern.lines)
    words += ["lazy daisies"] * bool(pattern.daisies)
    words += ["French knots"] * bool(pattern.knots)
    words += ["beads"] * bool(pattern.beads)
    return listed(tuple(words))


def _cloth_row(on: OnCloth, model: bool) -> ClothRow:
    cloth, fit = on.option.cloth, on.fit
    return ClothRow(
        name=cloth.name,
        colour=on.option.colour,
        worked=f"{plain(cloth.count_per_inch)}-count {cloth.weave.value}, {_over(on)}",
        model=model,
        hand_dyed=cloth.hand_dyed,
        finished=on.finished,
        cut=on.framing_cut,
        card=fit.card,
        across=_reveals(("left", fit.reveal_left_mm), ("right", fit.reveal_right_mm)),
        upright=_reveals(("above", fit.reveal_above_mm), ("below", fit.reveal_below_mm)),
        verdict=_VERDICTS[fit.verdict],
        to_buy=tuple(
            listed(tuple(counted(units, word) for word, units in units_by_word(needs).items()))
            for _, needs in on.needs
        ),
    )


def _over(on: OnCloth) -> str:
    if on.option.cloth.weave is Weave.AIDA:
        return counted(on.option.over, "block") + " to a stitch"
    return f"over {counted(on.option.over, 'thread')}"


def _reveals(one: tuple[str, float], other: tuple[str, float]) -> tuple[Reveal, ...]:
    if abs(one[1] - other[1]) < _SAME_MM:
        return (Reveal("each", one[1]),)
    return Reveal(*one), Reveal(*other)


def _set_rows(pattern: Pattern, cloths: tuple[ClothRow, ...]) -> tuple[SetRow, ...]:
    return tuple(
        SetRow(
            name=thread_set.card.name,
            material=thread_set.card.material,
            unit=thread_set.card.sold_as,
            unit_length=about_metres(thread_set.card.length_m),
            strands=counted(thread_set.strands, "strand"),
            colours=sum(card == thread_set.card for card, _ in threads_used(pattern, thread_set)),
            others=_others(pattern, thread_set),
            hand_dyed=thread_set.card.hand_dyed,
            to_buy=to_buy[0] if len(set(to_buy)) == 1 else "",
        )
        for thread_set, to_buy in zip(pattern.thread_sets, zip(*(row.to_buy for row in cloths)))
    )


def _others(pattern: Pattern, thread_set: ThreadSet) -> tuple[OtherThread, ...]:
    used = [card for card, _ in threads_used(pattern, thread_set) if card != thread_set.card]
    return tuple(
        OtherThread(
            card.name,
            f"{counted(used.count(card), 'colour')} of {card.name}: {card.material}, "
            f"in {plural(card.sold_as)} of {about_metres(card.length_m)}{_whole(card)}",
        )
        for card in {card.id: card for card in used}.values()
    )


def _whole(card: ThreadCard) -> str:
    return ", used whole" if card.strands == 1 else ""


def _bead_row(need: BeadNeed) -> BeadRow:
    bead: Bead = need.sample
    packets = counted(need.packets, "packet")
    return BeadRow(bead.card.name, bead.colour, bead.card.size_mm, packets)


def _counters(pattern: Pattern) -> tuple[Counter, ...]:
    """The counters the pattern names; a designer who sells, and names none, sells at her own."""
    designer = pattern.designer
    if not pattern.sold_at and designer.sells is not Sells.NEITHER and designer.shop:
        return (Counter(designer.name, designer.shop),)
    return pattern.sold_at
