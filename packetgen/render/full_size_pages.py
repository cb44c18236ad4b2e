"""Full-size pages: the words that stand on each, and its drawing; and those of a packet."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from math import ceil

from packetgen.chart.full_size import Template, check_square, leaf_drawing, leaves
from packetgen.chart.mounting_templates import (
    CardTemplate,
    NamedCard,
    card_templates,
    panel_template,
)
from packetgen.model import FinishingPiece, Outline, Series
from packetgen.nouns import listed
from packetgen.reckon.figures import Figures
from packetgen.reckon.outline import area_mm2, bounds, covers, perimeter_mm
from packetgen.units import inches, millimetres, size_centimetres, size_inches

# A template that takes more pages is left out: nobody joins so many sheets to within a hair.
MOST_PAGES = 9
CHECK_NAME = "check-square.svg"
Found = tuple[str, str, tuple[str, ...], str, Template]  # name, title, words, alt, template
# What stands beside the check square in letters of the usual size, below its two lines on printing.
_LETTERS_A_LINE, _LINES = 88, 7
# Less than this is not printed.
_STRAIGHT = 0.98  # of the rectangle round it, that a board without a gable or a curve fills
_SAME_MM = 0.05


@dataclass(frozen=True)
class FullSizePage:
    title: str
    words: tuple[str, ...]  # a paragraph each
    asset: str
    alt: str

    @property
    def close_set(self) -> bool:
        """Whether the words need smaller letters to stand beside the check square."""
        return sum(ceil(len(words) / _LETTERS_A_LINE) for words in self.words) > _LINES


@dataclass(frozen=True)
class FullSize:
    pages: tuple[FullSizePage, ...]
    assets: Mapping[str, bytes]
    too_large: bool  # whether a template was left out


def full_size(series: Series, figures: Figures) -> FullSize:
    """Card and wadding on every cloth of the pattern, then the magnets on the panel."""
    return on_pages(_templates(series, figures))


def on_pages(templates: Iterable[Found]) -> FullSize:
    """Those templates on as many pages as each needs, with the words on the first of them."""
    pages: list[FullSizePage] = []
    assets: dict[str, bytes] = {}
    too_large = False
    for name, title, words, alt, template in templates:
        parts = leaves(template)
        if len(parts) > MOST_PAGES:
            too_large = True
            continue
        for number, leaf in enumerate(parts, 1):
            asset = f"full-size-{name}-{number}.svg"
            assets[asset] = leaf_drawing(template, leaf).encode()
            of = f", page {number} of {len(parts)}" if len(parts) > 1 else ""
            joined = (_JOINING,) if len(parts) > 1 else ()
            said = (*joined, *words) if number == 1 else joined
            pages.append(FullSizePage(f"{title}{of}", said, asset, f"{alt}{of}."))
    if pages:
        assets[CHECK_NAME] = check_square().encode()
    return FullSize(tuple(pages), assets, too_large)


_JOINING = (
    "Lay the pages over each other so that crosses with the same small letter meet, and tape them "
    "together."
)


def _templates(series: Series, figures: Figures) -> Iterator[Found]:
    piece, plan = series.finish, figures.magnets
    found = card_templates(figures, piece)
    for number, of in enumerate(found, 1):
        numbered = f" {number}" if len(found) > 1 else ""
        title = f"Template{numbered}: card and wadding"
        yield f"card-{number}", title, _card_words(of, figures, piece), _card_alt(of), of.template
    if figures.by_magnets:
        alt = f"The panel of {piece.name} at full size, with {len(plan.spots)} circles for magnets"
        yield (
            "panel",
            "Template: magnets on the panel",
            _panel_words(series),
            alt,
            panel_template(figures, piece),
        )


def _card_words(of: CardTemplate, figures: Figures, piece: FinishingPiece) -> tuple[str, ...]:
    inset = piece.wadding_inset_mm
    dashed = f" Dashed: its wadding, {_both(inset)} less on every side." if inset else ""
    cut = f"Solid: the card.{dashed} Cut the card along the line of your cloth" + (
        ", then trim the paper to the dashes and cut the wadding." if inset else "."
    )
    model = figures.cloths[0].option
    parts = (note.words.partition(" · ") for note in of.template.notes)
    sized = {letter for letter, _, size in parts if size}
    sizes = "; ".join(
        # A size that has no room on its card is told here.
        f"{named.letter}: {'' if named.letter in sized else _size(named)}{_cloths(named, model)}"
        for named in of.cards
    )
    pricked = (
        "Seen from the front. Prick through the crosses into the card: on its back they mark the "
        "middles of the washers."
    )
    if bare := listed(of.without_magnets):
        pricked += f" {bare} {'has' if len(of.without_magnets) == 1 else 'have'} no room for them."
    return (cut, f"{sizes}.", *((pricked,) if of.template.discs else ()))


def _size(named: NamedCard) -> str:
    size = named.card.right_mm - named.card.left_mm, named.card.bottom_mm - named.card.top_mm
    return f"{size_inches(*size)} ({size_centimetres(*size)}), for "


def _cloths(named: NamedCard, model: object) -> str:
    return ", ".join(
        option.cloth.name
        + (f" over {option.over}" if option.over > 1 else "")
        + (" (the model)" if option == model else "")
        for option in named.options
    )


def _card_alt(of: CardTemplate) -> str:
    washers = len(of.template.discs)
    circles = f", with circles for {washers} washers" if washers else ""
    letters = ", then ".join(named.letter for named in of.cards)
    inside = f", one inside the other: {letters}" if len(of.cards) > 1 else ""
    return f"Outlines of the mounting card and its wadding at full size{inside}{circles}"


def _panel_words(series: Series) -> tuple[str, ...]:
    piece = series.finish
    kept = " Dashed: what must stay free." if piece.keep_outs else ""
    return (
        f"Solid: the panel of {piece.name}, seen from the front.{kept}{_where(piece)}",
        "Prick through the crosses into the wood and glue a magnet centred on each.",
        f"Every card of {series.title} so far that hangs by magnets has its washers at these places.",
    )


def _where(piece: FinishingPiece) -> str:
    """How far the panel lies from the edges of the part that it is on, or of the whole where no part has all of it."""
    placed = [
        (part.name, tuple((x + part.at_mm[0], y + part.at_mm[1]) for x, y in part.outline))
        for part in piece.parts
    ]
    for name, outline in placed:
        if covers(outline, piece.panel):
            if area_mm2(outline) - area_mm2(piece.panel) < _SAME_MM * perimeter_mm(outline):
                return f" Its edges are those of the {name}."
            left, top, right, bottom = bounds(outline)
            straight = area_mm2(outline) >= _STRAIGHT * (right - left) * (bottom - top)
            outermost = "" if straight else ", each taken at its outermost point"
            return f" On the part “{name}” it {_away(piece.panel, outline)}{outermost}."
    whole = tuple(corner for _, outline in placed for corner in outline)
    return f" On the whole piece it {_away(piece.panel, whole)}."


def _away(panel: Outline, outline: Outline) -> str:
    """What it reaches of the sides of the outline, and how far it lies from the others."""
    left, top, right, bottom = bounds(panel)
    edges = bounds(outline)
    away = {
        "left edge": left - edges[0],
        "right edge": edges[2] - right,
        "upper edge": top - edges[1],
        "lower edge": edges[3] - bottom,
    }
    reached = tuple(f"the {side}" for side, mm in away.items() if mm < _SAME_MM)
    lies = tuple(f"{_both(mm)} from the {side}" for side, mm in away.items() if mm >= _SAME_MM)
    said = (
        f"reaches {listed(reached)}" if reached else "",
        f"lies {listed(lies)}" if lies else "",
    )
    return " and ".join(filter(None, said))


def _both(mm: float) -> str:
    return f"{inches(mm)} ({millimetres(mm)})"
