"""The magnets of a whole series, and which of its designs is in their way."""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.model import Series
from packetgen.reckon.figures import Figures, OnCloth, cards_on_panel, figures
from packetgen.reckon.fit import Verdict
from packetgen.reckon.magnets import Card, magnet_plan
from packetgen.units import size_centimetres, size_inches


def series_figures(series: Series) -> tuple[Figures, ...]:
    """Figures of every pattern of a series, in its order, all with the same magnets."""
    alone = tuple(
        figures(pattern, series.finish, series.pace, series.assumptions)
        for pattern in series.patterns
    )
    cards = tuple(card for figure in alone for card in cards_on_panel(figure.cloths))
    plan = magnet_plan(cards, series.finish.magnets)
    return tuple(replace(figure, magnets=plan) for figure in alone)


def complain_of_magnets(
    all_figures: tuple[Figures, ...], series: Series, problems: Problems
) -> None:
    """Where all cards together leave the magnets no room, name the one that is most in the way."""
    if not all_figures or not all_figures[0].magnets.pairs or all_figures[0].magnets.spots:
        return
    laid = {
        (figure.pattern.id, number): (figure, on)
        for figure in all_figures
        for number, on in enumerate(figure.cloths)
        if on.fit.verdict is not Verdict.DOES_NOT_FIT
    }
    if not laid:
        return
    by_card: dict[Card, list[tuple[Figures, OnCloth]]] = {}
    for figure, on in laid.values():
        by_card.setdefault(on.card, []).append((figure, on))
    smallest_first = sorted(
        by_card, key=lambda c: (c.right_mm - c.left_mm) * (c.bottom_mm - c.top_mm)
    )
    magnets = series.finish.magnets

    def in_the_way(card: Card) -> bool:
        return bool(magnet_plan([other for other in by_card if other != card], magnets).spots)

    card = next(filter(in_the_way, smallest_first), smallest_first[0])
    figure, on = by_card[card][0]
    size = on.mounting.card
    problems.add(
        on.option.place,
        "magnets-no-room",
        title=figure.pattern.title,
        cloth=on.option.cloth.name,
        inches=size_inches(size.width_mm, size.height_mm),
        centimetres=size_centimetres(size.width_mm, size.height_mm),
        pairs=all_figures[0].magnets.pairs,
    )
