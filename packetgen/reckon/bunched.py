"""Small designs for whose cards the magnets of their series stand close together, and the bare edge round one
that lets them stand apart."""

from collections.abc import Sequence
from dataclasses import replace

from packetgen.model import FinishingPiece, Pattern
from packetgen.model.extent import bare_margins
from packetgen.reckon.figures import Figures, OnCloth, cards_on_panel
from packetgen.reckon.fit import Verdict, fit
from packetgen.reckon.magnets import card_on_panel, plan_for_most
from packetgen.reckon.mounting import mounting
from packetgen.reckon.sizes import finished_size

_MOST_ROWS = 8  # on a side; with more the design itself were better larger


def draws_magnets_in(all_figures: Sequence[Figures]) -> frozenset[str]:
    """Ids of the patterns for whose small cards the magnets of others are bunched: made smaller still, they
    would draw them in further."""
    bunched = (figure for figure in all_figures if figure.bunched)
    return frozenset(of.id for figure in bunched for of, _ in small_ones(all_figures, figure))


def small_ones(
    all_figures: Sequence[Figures], figure: Figures
) -> tuple[tuple[Pattern, OnCloth], ...]:
    """The narrowest and the lowest card of all, as far as they draw the magnets in on this design's largest."""
    held = [(each.pattern, on) for each in all_figures for on in each.by_magnets]
    in_width, in_height = figure.magnets.drawn_in(largest(figure).card)
    return (
        *([min(held, key=lambda one: one[1].mounting.card.width_mm)] if in_width else []),
        *([min(held, key=lambda one: one[1].mounting.card.height_mm)] if in_height else []),
    )


def how_small(figure: Figures) -> str:
    """In which way those are small for this design: 'narrow', 'low', or both."""
    in_width, in_height = figure.magnets.drawn_in(largest(figure).card)
    return "small" if in_width and in_height else "narrow" if in_width else "low"


def largest(figure: Figures) -> OnCloth:
    """The cloth on which the magnets hold the least part of its card."""
    return max(
        figure.bunched, key=lambda on: on.mounting.card.width_mm * on.mounting.card.height_mm
    )


def bare_rows_to_spare(
    patterns: Sequence[Pattern], all_figures: Sequence[Figures], piece: FinishingPiece
) -> frozenset[str]:
    """Ids of those of the designs that draw in no magnets without the bare rows and columns at their edges.

    A design whose rows are needed only as long as another keeps its own is among them: all is told at once.
    """
    waiting, spare = list(patterns), frozenset[str]()
    while True:
        before = len(waiting)
        for pattern in tuple(waiting):
            left, right, top, bottom = bare_margins(pattern)
            smaller = _resized(pattern, all_figures, piece, -left - right, -top - bottom)
            if pattern.id not in draws_magnets_in(smaller):
                waiting.remove(pattern)
                all_figures, spare = smaller, spare | {pattern.id}
        if len(waiting) == before:
            return spare


def bare_edges_enough(
    all_figures: Sequence[Figures], piece: FinishingPiece
) -> dict[str, tuple[int, int]]:
    """For each of the designs that draw magnets in, by its id, the fewest bare columns at the left and at the right, and
    rows above and below, with which it draws in none once the others have theirs too, fits wherever it does without, and
    has no less wood round it than looks well: of one such design the same number of both where that will do. Those that
    no such numbers help are left out."""
    alone = _edges_at_once(all_figures, piece, even=True)
    helped = {of.id: edge for of, edge in alone if edge}
    if len(helped) < len(alone):
        return helped
    even = len(alone) == 1
    together = _edges_together(all_figures, piece, even)
    return together or _edges_together(all_figures, piece, not even)


def _edges_at_once(
    all_figures: Sequence[Figures], piece: FinishingPiece, even: bool
) -> list[tuple[Pattern, tuple[int, int] | None]]:
    """Each of the designs that draw magnets in, with its edge while all others are as they are."""
    drawing = draws_magnets_in(all_figures)
    asked = [one.pattern for one in all_figures if one.pattern.id in drawing]
    return [(of, _edge_enough(of, all_figures, piece, even)) for of in asked]


def _edges_together(
    all_figures: Sequence[Figures], piece: FinishingPiece, even: bool
) -> dict[str, tuple[int, int]]:
    """With more bare rows a design asks more of the others, and these of it; {} where that does not end."""
    edges: dict[str, tuple[int, int]] = {}
    for _ in range(2 * _MOST_ROWS):
        found = _edges_at_once(all_figures, piece, even)
        if not found:
            return edges
        for of, edge in found:
            if edge is None:
                return {}
            edges[of.id] = edge
            all_figures = _resized(of, all_figures, piece, 2 * edge[0], 2 * edge[1])
    return {}


def _edge_enough(
    pattern: Pattern, all_figures: Sequence[Figures], piece: FinishingPiece, even: bool
) -> tuple[int, int] | None:
    """The fewest columns and rows of one design while all others are as they are: as many of both, or, unless `even`, of
    one of the two as few as it can do with. None where no such numbers help."""

    def with_edge(columns: int, rows: int) -> tuple[Figures, ...]:
        return _resized(pattern, all_figures, piece, 2 * columns, 2 * rows)

    def enough(larger: tuple[Figures, ...]) -> bool:
        return pattern.id not in draws_magnets_in(larger)

    alike = (n for n in range(1, _MOST_ROWS + 1) if enough(with_edge(n, n)))
    if (most := next(alike, None)) is None:
        return None
    fewer = [edge for n in range(most - 1, -1, -1) for edge in ((n, most), (most, n))]
    edges = [(most, most), *fewer]
    for edge in edges if even else reversed(edges):
        larger = with_edge(*edge)
        if _fitting(larger) == _fitting(all_figures) and enough(larger):
            return edge
    return None


def _fitting(all_figures: Sequence[Figures]) -> tuple[int, int]:
    """On how many cloths designs fit, and on how many with wood enough round them."""
    on_cloths = [on for figure in all_figures for on in figure.cloths]
    roomy = sum(on.fit.verdict is Verdict.FITS for on in on_cloths)
    return len(cards_on_panel(tuple(on_cloths))), roomy


def _resized(
    pattern: Pattern,
    all_figures: Sequence[Figures],
    piece: FinishingPiece,
    columns: int,
    rows: int,
) -> tuple[Figures, ...]:
    """The figures as far as cards and magnets go, were that design so many columns and rows larger."""

    def on_cloth(on: OnCloth) -> OnCloth:
        wide, high = pattern.grid.width + columns, pattern.grid.height + rows
        finished = finished_size(wide, high, on.cell_mm)
        laid = fit(finished, on.cell_mm, piece)
        card = card_on_panel(laid, on.card.weight_g)
        return replace(
            on, finished=finished, fit=laid, mounting=mounting(finished, piece), card=card
        )

    changed = tuple(
        replace(one, cloths=tuple(map(on_cloth, one.cloths)))
        if one.pattern.id == pattern.id
        else one
        for one in all_figures
    )
    cards = tuple(card for one in changed for card in cards_on_panel(one.cloths))
    plan = plan_for_most(cards, piece.magnets)
    return tuple(replace(one, magnets=plan) for one in changed)
