"""The magnets of a whole series, and which of its designs have no room for them."""

from dataclasses import replace

from packetgen.diagnostics import Problems
from packetgen.model import Series
from packetgen.reckon.figures import Figures, cards_on_panel, figures
from packetgen.reckon.magnets import Card, plan_for_most
from packetgen.units import size_centimetres, size_inches


def series_figures(series: Series) -> tuple[Figures, ...]:
    """Figures of every pattern of a series, in its order, all with the same magnets."""
    alone = tuple(
        figures(pattern, series.finish, series.pace, series.assumptions)
        for pattern in series.patterns
    )
    cards = tuple(card for figure in alone for card in cards_on_panel(figure.cloths))
    plan = plan_for_most(cards, series.finish.magnets)
    return tuple(replace(figure, magnets=plan) for figure in alone)


def complain_of_magnets(
    all_figures: tuple[Figures, ...], series: Series, problems: Problems
) -> None:
    """Name every design on the first cloth of each size on which its card has no room for the magnets."""
    if not series.finish.magnets.pairs:
        return
    told: set[tuple[str, Card]] = set()
    for figure in all_figures:
        for on in figure.without_magnets:
            if (key := (figure.pattern.id, replace(on.card, weight_g=0.0))) in told:
                continue
            told.add(key)
            size = on.mounting.card
            problems.add(
                on.option.place,
                "magnets-no-room",
                title=figure.pattern.title,
                cloth=on.option.cloth.name,
                inches=size_inches(size.width_mm, size.height_mm),
                centimetres=size_centimetres(size.width_mm, size.height_mm),
                pairs=figure.magnets.pairs,
            )
