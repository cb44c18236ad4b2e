"""The magnets of a whole series, which of its designs have no room for them, and which they hold badly."""

from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cached_property
from math import ceil, floor

from packetgen.diagnostics import Problems
from packetgen.model import Magnets, Pattern, Series
from packetgen.model.extent import bare_margins
from packetgen.nouns import listed
from packetgen.reckon.bunched import bare_edges_enough, how_small, largest, small_ones
from packetgen.reckon.figures import Figures, OnCloth, cards_on_panel, figures
from packetgen.reckon.fit import Verdict, room_for
from packetgen.reckon.magnets import FEWEST, Card, MagnetPlan, in_common, magnet_plan, plan_for_most
from packetgen.units import plain, size_centimetres, size_inches

# Insets are tried, and named, in such steps.
_STEP_MM = 0.5
# Magnets for needlework are hardly larger, so where these have no room the designs are small; and below the
# second they hardly hold. Both from memory.
_MOST_ACROSS_MM, _LEAST_ACROSS_MM = 20, 3


def series_figures(series: Series) -> tuple[Figures, ...]:
    """Figures of every pattern of a series, in its order, all with the same magnets."""
    alone = tuple(
        figures(pattern, series.finish, series.pace, series.assumptions)
        for pattern in series.patterns
    )
    plan = plan_for_most(_cards(alone), series.finish.magnets)
    return tuple(replace(figure, magnets=plan) for figure in alone)


def complain_of_magnets(
    all_figures: tuple[Figures, ...], series: Series, problems: Problems
) -> None:
    """Name every design on the first cloth of each size on which its card has no room for the magnets, and
    once every design that they hold in the middle only; nothing while a design does not fit, since its card will be
    another one."""
    on_cloths = (on for figure in all_figures for on in figure.cloths)
    if any(on.fit.verdict is Verdict.DOES_NOT_FIT for on in on_cloths):
        return
    if not series.finish.magnets.pairs:
        return
    _complain_of_no_room(all_figures, series, problems)
    _complain_of_bunched(all_figures, series, problems)


def _complain_of_no_room(
    all_figures: tuple[Figures, ...], series: Series, problems: Problems
) -> None:
    insets = _Insets(all_figures, series.finish.magnets)
    if _none_has_room(all_figures, insets, series, problems):
        return
    told: set[tuple[str, Card]] = set()
    for figure in all_figures:
        for on in figure.without_magnets:
            if (key := (figure.pattern.id, replace(on.card, weight_g=0.0))) in told:
                continue
            told.add(key)
            size = on.mounting.card
            by_rows = _helped_by_rows(on, figure, series)
            problems.add(
                on.option.place,
                "magnets-no-room",
                title=figure.pattern.title,
                cloth=on.option.cloth.name,
                inches=size_inches(size.width_mm, size.height_mm),
                centimetres=size_centimetres(size.width_mm, size.height_mm),
                pairs=figure.magnets.pairs,
                mend=_more_room(insets.that_serves(on.card), by_rows),
            )


def _none_has_room(
    all_figures: tuple[Figures, ...], insets: "_Insets", series: Series, problems: Problems
) -> bool:
    """Whether all cards of several are without magnets for these alone, which is then told once, at their place."""
    finish = series.finish
    without = [on for figure in all_figures for on in figure.without_magnets]
    if len(without) < 2 or len(without) < len(_cards(all_figures)):
        return False
    serving = [mm for on in without if (mm := insets.that_serves(on.card)) is not None]
    place, mend = finish.inset_place, _more_room(min(serving, default=None), False)
    if len(serving) < len(without):
        place = finish.magnets_place
        mend = _other_magnets(in_common(*_cards(all_figures)), finish.magnets)
    if not mend:
        return False
    small = min((on.mounting.card for on in without), key=lambda one: one.width_mm * one.height_mm)
    problems.add(
        place or finish.place,
        "magnets-none-room",
        pairs=finish.magnets.pairs,
        inches=size_inches(small.width_mm, small.height_mm),
        centimetres=size_centimetres(small.width_mm, small.height_mm),
        mend=mend,
    )
    return True


def _other_magnets(common: Card, magnets: Magnets) -> str:
    """How many, or how large ones at most, have room on what all cards have in common; '' where none have, or they are of a
    usual number and size."""
    for pairs in range(magnets.pairs - 1, FEWEST - 1, -1):
        if magnet_plan((common,), replace(magnets, pairs=pairs)).spots:
            return f"pairs: {pairs} would do"
    if magnets.diameter_mm <= _MOST_ACROSS_MM:
        return ""
    for diameter_mm in range(ceil(magnets.diameter_mm) - 1, _LEAST_ACROSS_MM - 1, -1):
        smaller = replace(magnets, diameter_mm=diameter_mm)
        for step in range(
            floor(magnets.inset_mm / _STEP_MM), ceil(diameter_mm / 2 / _STEP_MM) - 1, -1
        ):
            if magnet_plan((common,), replace(smaller, inset_mm=step * _STEP_MM)).spots:
                inset = f" with inset: {plain(step * _STEP_MM)} mm"
                kept = step * _STEP_MM == magnets.inset_mm
                return f"magnets {diameter_mm} mm across would do{'' if kept else inset}"
    return ""


def _more_room(inset_mm: float | None, by_rows: bool) -> str:
    if inset_mm is None:
        rows = ", or leave more bare rows round it" if by_rows else ""
        return f"make its border wider{rows}"
    rows = ", or more bare rows round it" if by_rows else ""
    return f"inset: {plain(inset_mm)} mm would do, or a wider border{rows}"


def _helped_by_rows(on: OnCloth, figure: Figures, series: Series) -> bool:
    """Whether a larger chart has room: one that covers the card of a design that has, or, where none has, the
    largest that the panel takes."""
    if figure.magnets.spots:
        return True
    border_mm = series.finish.border_mm
    wide, high = (
        stitches * on.cell_mm + 2 * border_mm
        for stitches in room_for(on.fit, on.cell_mm, series.finish)
    )
    largest = Card(0, 0, wide, high, on.card.weight_g)
    return bool(magnet_plan((largest,), series.finish.magnets).spots)


class _Insets:
    """The insets with which cards that are left out would have magnets, beside all that have them now."""

    def __init__(self, all_figures: tuple[Figures, ...], magnets: Magnets) -> None:
        self._magnets, self._cards = magnets, _cards(all_figures)
        self._served = tuple(on.card for figure in all_figures for on in figure.by_magnets)
        self._plans: dict[float, MagnetPlan] = {}

    def that_serves(self, card: Card) -> float | None:
        """The largest below the author's own; None where no smaller one helps."""
        return next((mm for mm in self._smaller() if self._serves(mm, card)), None)

    @cached_property
    def _shared(self) -> tuple[Card, ...]:
        return (in_common(*self._served),) if self._served else ()

    def _smaller(self) -> Iterator[float]:
        """From the largest to the least with which a magnet still lies wholly on its card."""
        step = floor(self._magnets.inset_mm / _STEP_MM)
        while step * _STEP_MM >= self._magnets.diameter_mm / 2:
            if step * _STEP_MM < self._magnets.inset_mm:
                yield step * _STEP_MM
            step -= 1

    def _serves(self, inset_mm: float, card: Card) -> bool:
        magnets = replace(self._magnets, inset_mm=inset_mm)
        if not magnet_plan((*self._shared, card), magnets).spots:
            return False
        if inset_mm not in self._plans:
            self._plans[inset_mm] = plan_for_most(self._cards, magnets)
        plan = self._plans[inset_mm]
        return all(map(plan.serves, (*self._shared, card)))


def _complain_of_bunched(
    all_figures: tuple[Figures, ...], series: Series, problems: Problems
) -> None:
    """On the cloth on which the card is largest, with the narrowest and the lowest card of all: at the design
    that is to be mended, where it is one."""
    bunched = [figure for figure in all_figures if figure.bunched]
    edges = bare_edges_enough(all_figures, series.finish) if bunched else {}
    for figure in bunched:
        worst, small = largest(figure), small_ones(all_figures, figure)
        apart = figure.magnets.apart
        by = tuple(dict.fromkeys(of.title for of, _ in small))
        if len(by) == 1:
            by = (f"{by[0]} on {small[0][1].option.cloth.name}",)
        others = any(of.id != figure.pattern.id for of, _ in small)
        mended = small[0][1] if others and len({of.id for of, _ in small}) == 1 else worst
        problems.add(
            mended.option.place,
            "magnets-bunched",
            title=figure.pattern.title + f" on {worst.option.cloth.name}" * (mended is worst),
            inches=size_inches(apart.width_mm, apart.height_mm),
            centimetres=size_centimetres(apart.width_mm, apart.height_mm),
            by=listed(by),
            are="is" if len(by) == 1 else "are",
            how=how_small(figure),
            mend=_less_bunched(small, others, edges),
        )


def _less_bunched(
    small: tuple[tuple[Pattern, OnCloth], ...],
    others: bool,
    edges: Mapping[str, tuple[int, int]],
) -> str:
    if not others:
        return "offer no cloth so fine, or leave bare rows round it"
    by = {of.id: of for of, _ in small}
    if len(by) > 1:
        return "make those larger, or see --explain"
    (pattern,) = by.values()
    if pattern.id in edges:
        bare = f"'packetgen chart border {pattern.id} {_typed(pattern, *edges[pattern.id])}'"
        columns, rows = edges[pattern.id]
        what = "edges" if columns and rows else "columns" if columns else "rows"
        return f"add bare {what}: {bare}"
    return "make that one larger, or see --explain"


def _typed(pattern: Pattern, columns: int, rows: int) -> str:
    """As `chart border` is told of so many on either side, or of as many in all that bring the design to the middle."""
    left, right, top, bottom = bare_margins(pattern)
    sides = (*_evened(left, right, columns), *_evened(top, bottom, rows))
    if len(set(sides)) == 1:
        return f"{sides[0]}"
    named = zip(("left", "right", "top", "bottom"), sides, strict=True)
    return " ".join(f"--{side} {number}" for side, number in named if number)


def _evened(before: int, after: int, each: int) -> tuple[int, int]:
    """Twice `each`, parted so that what is bare on either side comes as near to the same as it can."""
    first = min(max(each + (after - before) // 2, 0), 2 * each)
    return first, 2 * each - first


def _cards(all_figures: tuple[Figures, ...]) -> tuple[Card, ...]:
    return tuple(card for figure in all_figures for card in cards_on_panel(figure.cloths))
