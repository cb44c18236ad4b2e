"""The cloths that a pattern's page offers: how large the design becomes on each, how it sits on the
finishing piece, what to cut and what to buy."""

from dataclasses import dataclass

from markupsafe import Markup

from packetgen.chart.size_drawing import OneSize, same_together, size_drawing, sizes_said
from packetgen.model import Colour, FinishingPiece, Weave
from packetgen.reckon.buying import units_by_word
from packetgen.reckon.figures import Figures, OnCloth
from packetgen.reckon.fit import Verdict
from packetgen.reckon.sizes import Size
from packetgen.render.inline_drawing import inline
from packetgen.render.room_left import Laid, cloth_said, laid_on_panel
from packetgen.render.site_text import counted, listed
from packetgen.units import MM_PER_INCH, plain

_VERDICTS = {
    Verdict.FITS: "fits with room to spare",
    Verdict.TIGHT: "fits, but only just",
    Verdict.DOES_NOT_FIT: "does not fit",
}
# Wood left free on two sides that differs by less than this reads as the same, mm.
_SAME_MM = 0.05


@dataclass(frozen=True)
class Reveal:
    """Wood left free on one side of the card and its trim, or on both alike."""

    side: str
    free_mm: float


@dataclass(frozen=True)
class ClothView:
    """One offered cloth."""

    name: str
    colour: Colour
    worked: str  # '28-count evenweave, over 2 threads'
    model: bool
    hand_dyed: bool
    finished: Size
    per_inch: str  # stitches to the inch
    letter: str  # of its outline in the drawing of sizes
    framing_cut: Size
    piece_cut: Size  # for the finishing piece
    card: Size
    across: tuple[Reveal, ...]
    upright: tuple[Reveal, ...]
    verdict: str  # 'it does not fit'
    to_buy: tuple[str, ...]  # '23 skeins and 1 reel', one a thread set
    drawing: Markup  # the card on the panel, to scale


@dataclass(frozen=True)
class ClothsView:
    """All offered cloths, the model's first, and their sizes drawn at one scale."""

    each: tuple[ClothView, ...]
    sizes: Markup
    held: str  # 'is held by magnets on'
    without_magnets: str  # a sentence on what has no room for them, or ''

    @property
    def model(self) -> ClothView:
        return self.each[0]


def cloths_view(figures: Figures, piece: FinishingPiece) -> ClothsView:
    """Everything about cloth that the page of one pattern prints."""
    sizes = same_together(
        tuple(OneSize((on.option.cloth.name,), on.finished, _per_inch(on)) for on in figures.cloths)
    )
    letters = {one.per_inch: one.letter for one in sizes}
    each = tuple(
        _cloth_view(on, laid, letters[_per_inch(on)], on is figures.cloths[0])
        for on, laid in zip(figures.cloths, laid_on_panel(figures, piece))
    )
    held = "is held by magnets on" if figures.by_magnets else "is shown on"
    return ClothsView(
        each, inline(size_drawing(sizes), sizes_said(sizes)), held, _without_magnets(figures)
    )


def _without_magnets(figures: Figures) -> str:
    without = figures.without_magnets
    if not without:
        return ""
    if not figures.by_magnets:
        return "It is too small for magnets there: its packet says what holds it instead."
    cloths = listed(tuple(cloth_said(on.option) for on in without))
    return f"On {cloths} it is too small for them: its packet says what holds it instead."


def _cloth_view(on: OnCloth, laid: Laid, letter: str, model: bool) -> ClothView:
    cloth, fit = on.option.cloth, on.fit
    return ClothView(
        name=cloth.name,
        colour=on.option.colour,
        worked=f"{plain(cloth.count_per_inch)}-count {cloth.weave.value}, {_over(on)}",
        model=model,
        hand_dyed=cloth.hand_dyed,
        finished=on.finished,
        per_inch=_per_inch(on),
        letter=letter,
        framing_cut=on.framing_cut,
        piece_cut=on.mounting.cloth,
        card=fit.card,
        across=_reveals(("left", fit.reveal_left_mm), ("right", fit.reveal_right_mm)),
        upright=_reveals(("above", fit.reveal_above_mm), ("below", fit.reveal_below_mm)),
        verdict=f"{'with its trim it' if fit.covered != fit.card else 'it'} {_VERDICTS[fit.verdict]}",
        to_buy=tuple(
            listed(tuple(counted(units, word) for word, units in units_by_word(needs).items()))
            for _, needs in on.needs
        ),
        drawing=inline(laid.drawing, laid.alt),
    )


def _per_inch(on: OnCloth) -> str:
    return plain(round(MM_PER_INCH / on.cell_mm, 2))


def _over(on: OnCloth) -> str:
    if on.option.cloth.weave is Weave.AIDA:
        return counted(on.option.over, "block") + " to a stitch"
    return f"over {counted(on.option.over, 'thread')}"


def _reveals(one: tuple[str, float], other: tuple[str, float]) -> tuple[Reveal, ...]:
    if abs(one[1] - other[1]) < _SAME_MM:
        return (Reveal("each", one[1]),)
    return Reveal(*one), Reveal(*other)
