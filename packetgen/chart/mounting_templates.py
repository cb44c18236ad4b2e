"""What the full-size templates of a design show: its card and wadding on every cloth, and the magnets."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import dist

from packetgen.chart.full_size import (
    LETTER_MM,
    Disc,
    Loop,
    Note,
    Outline,
    Template,
    leaves,
    rectangle,
    shows,
)
from packetgen.model import ClothOption, FinishingPiece
from packetgen.reckon.figures import Figures
from packetgen.reckon.fit import Verdict
from packetgen.reckon.magnets import Card
from packetgen.reckon.outline import bounds
from packetgen.units import size_centimetres, size_inches

# Between the wadding of one card and the next card inside it: above, for a line of words, and elsewhere.
_BAND_ABOVE_MM, _BAND_MM = 4.8, 2.5
_STEP_MM = 12.0  # at which a label looks for room along its line


@dataclass(frozen=True)
class NamedCard:
    """A card as it lies on the panel, with its letter and the cloths on which the design has it."""

    letter: str
    card: Card
    options: tuple[ClothOption, ...]


@dataclass(frozen=True)
class CardTemplate:
    cards: tuple[NamedCard, ...]  # each inside the one before
    template: Template
    without_magnets: tuple[str, ...]  # letters of the cards that have no room for the washers shown


def named_cards(figures: Figures) -> tuple[NamedCard, ...]:
    """Every size of card once, the largest first: A, B, C. Cards that do not fit the panel are left out."""
    options: dict[tuple[float, ...], list[ClothOption]] = {}
    cards: dict[tuple[float, ...], Card] = {}
    for on in figures.cloths:
        if on.fit.verdict is Verdict.DOES_NOT_FIT:
            continue
        sides = (on.card.left_mm, on.card.top_mm, on.card.right_mm, on.card.bottom_mm)
        key = tuple(round(side, 6) for side in sides)
        options.setdefault(key, []).append(on.option)
        cards.setdefault(key, on.card)
    largest_first = sorted(cards, key=lambda key: -(key[2] - key[0]) * (key[3] - key[1]))
    return tuple(
        NamedCard(_capital(number), cards[key], tuple(options[key]))
        for number, key in enumerate(largest_first)
    )


def card_templates(figures: Figures, piece: FinishingPiece) -> tuple[CardTemplate, ...]:
    """All cards of a design, as many as can lie inside each other on one template."""
    groups: list[list[NamedCard]] = []
    for named in named_cards(figures):
        for group in groups:
            if _inside(named.card, group[-1].card, piece.wadding_inset_mm):
                group.append(named)
                break
        else:
            groups.append([named])
    discs = _discs(figures, piece)
    found = []
    for group in groups:
        bare = tuple(of.letter for of in group if not figures.magnets.serves(of.card))
        shown = discs if len(bare) < len(group) else ()
        found.append(CardTemplate(tuple(group), _card_template(group, shown, piece), bare))
    return tuple(found)


def panel_template(figures: Figures, piece: FinishingPiece) -> Template:
    """The panel with what is to be kept free on it, and the magnets."""
    loops = [Loop(piece.panel)]
    notes = []
    for keep_out in piece.keep_outs:
        loops.append(Loop(keep_out.outline, dashed=True))
        left, top, right, _ = bounds(keep_out.outline)
        note = Note((left + 1, top + LETTER_MM + 0.8), keep_out.name)
        if note.width_mm < right - left - 1:
            notes.append(note)
    left, top, right, _ = bounds(piece.panel)
    notes.append(Note(((left + right) / 2 - 3, top + LETTER_MM + 1), "top"))
    return Template(tuple(loops), _discs(figures, piece), tuple(notes))


def _discs(figures: Figures, piece: FinishingPiece) -> tuple[Disc, ...]:
    diameter = piece.magnets.diameter_mm
    return tuple(
        Disc(at, diameter, str(number)) for number, at in enumerate(figures.magnets.centres_mm, 1)
    )


def _inside(card: Card, outer: Card, inset: float) -> bool:
    return (
        card.left_mm - outer.left_mm - inset >= _BAND_MM
        and outer.right_mm - inset - card.right_mm >= _BAND_MM
        and outer.bottom_mm - inset - card.bottom_mm >= _BAND_MM
        and card.top_mm - outer.top_mm - inset >= _BAND_ABOVE_MM
    )


def _card_template(
    cards: Sequence[NamedCard], discs: tuple[Disc, ...], piece: FinishingPiece
) -> Template:
    loops = []
    for named in cards:
        loops.append(Loop(_outline(named.card)))
        wadding = _outline(named.card, piece.wadding_inset_mm)
        if (
            piece.wadding_inset_mm
            and wadding[0][0] < wadding[2][0]
            and wadding[0][1] < wadding[2][1]
        ):
            loops.append(Loop(wadding, dashed=True))
    bare = Template(tuple(loops), discs, ())
    notes = (_label(named, bare, piece.wadding_inset_mm) for named in cards)
    return Template(bare.loops, discs, tuple(note for note in notes if note))


def _outline(card: Card, inset: float = 0.0) -> Outline:
    return rectangle(
        card.left_mm + inset, card.top_mm + inset, card.right_mm - inset, card.bottom_mm - inset
    )


def _label(named: NamedCard, template: Template, inset: float) -> Note | None:
    """Letter and size just inside the upper edge, where one page shows them whole; else the letter alone."""
    card = named.card
    width, height = card.right_mm - card.left_mm, card.bottom_mm - card.top_mm
    size = f"{size_inches(width, height)} · {size_centimetres(width, height)}"
    pages = leaves(template)
    y = card.top_mm + inset + LETTER_MM + 0.6
    for words in (f"{named.letter} · {size}", named.letter):
        x = card.left_mm + inset + 2
        while x + (note := Note((x, y), words)).width_mm <= card.right_mm - inset - 1:
            clear = all(_clear(note, disc) for disc in template.discs)
            if clear and any(shows(page, note) for page in pages):
                return note
            x += _STEP_MM
    return None


def _clear(note: Note, disc: Disc) -> bool:
    """Whether the words keep off a disc: reckoned to the nearest point of their box."""
    (x, y), (disc_x, disc_y) = note.at, disc.at
    nearest = min(max(disc_x, x), x + note.width_mm), min(max(disc_y, y - LETTER_MM), y + 1)
    return dist(nearest, disc.at) > disc.diameter_mm / 2 + 0.5


def _capital(number: int) -> str:
    """A … Z, then AA, BB, …"""
    times, letter = divmod(number, 26)
    return chr(ord("A") + letter) * (times + 1)
