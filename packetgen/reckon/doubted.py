"""What waits while something else is told: of a cloth whose count may be a slip, of a chart that is an example still."""

import re
from collections.abc import Collection, Iterable, Iterator

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.model import Cloth, ClothOption, Series
from packetgen.nouns import counted

_OF_THE_CLOTH = {"coverage-thin", "coverage-crowded", "beads-crowd", "cut-wastes", "fit-tight"}
# Magnets stand where all designs have room for them, which bare rows may give, and thread is bought for the
# thirstiest cloth.
_OF_ALL = {
    *("magnets-no-room", "magnets-none-room", "magnets-bunched"),
    *("skein-short", "skein-little", "edges-bare", "coverage-everywhere"),
}
# Measures of a piece by which designs may not fit → what is told of then.
_OF_THE_PIECE = {"trim-turned": "trim", "panel-corner": "panel", "panel-three": "panel"}
_OF_CROWDING = {"coverage-crowded", "coverage-everywhere"}
_OF_SKEINS = {"skein-short", "skein-little"}
_OF_TWINS = {"colours-alike", "colours-alike-to-some"}
_OF_CONVERSIONS = {"conversion-far", "conversion-collides"}
_OF_THE_CHART = {
    *_OF_SKEINS,
    *("edges-bare", "cut-wastes", "fit-tight", "alone-counted"),
    *("colours-alike", "colours-alike-to-some", "symbols-alike", "symbols-alike-in-grey"),
    *("thread-unseen", "ground-worked"),
    *("coverage-thin", "coverage-crowded", "conversion-collides", "conversion-far"),
}


def without_what_follows(told: Problems, all_series: Iterable[Series]) -> Problems:
    """Without what a wrong count makes: where designs do not fit by it, the count is the fault."""
    counts = {
        problem.place.path: problem
        for problem in told
        if problem.code in ("count-other", "count-rare", "count-unfit", "over-single")
    }
    measures = {problem.place.path: problem for problem in told if problem.code in _OF_THE_PIECE}
    doubted: dict[Place, tuple[Cloth | None, Problem]] = {}
    for series, option in _options(all_series):
        cloth, finish = f"cloths/{option.cloth.id}.yaml", f"finishes/{series.finish.id}/finish.yaml"
        if cloth in counts:
            doubted[option.place] = option.cloth, counts[cloth]
        elif finish in measures:
            doubted[option.place] = None, measures[finish]
    told = _without_twins(_without_idle(_without_crowded(told, all_series)))
    if not doubted:
        return told
    cloths = [cloth for cloth, _ in doubted.values() if cloth]
    of_cloths = {place for place, (cloth, _) in doubted.items() if cloth}
    left = Problems()
    none_fits: set[Problem] = set()
    unfit: dict[Problem, set[str]] = {}  # the count → the patterns that do not fit by it
    for problem in told:
        if problem.code == "does-not-fit" and problem.place in doubted:
            unfit.setdefault(doubted[problem.place][1], set()).add(problem.place.path)
        elif problem.code in ("border-broad", "none-fits") and problem.place.path in measures:
            none_fits.add(measures[problem.place.path])
        elif not (
            _follows(problem, of_cloths, cloths)
            or (problem.code == "fit-tight" and problem.place in doubted)
        ):
            left.take((problem,))
    told, left = left, Problems()
    for problem in told:
        designs = len(unfit.get(problem, ()))
        if designs or problem in none_fits:
            by_it = f"{counted(designs, 'design')} {'does' if designs == 1 else 'do'}"
            by_it = "the designs do" if problem in none_fits else by_it
            what = _OF_THE_PIECE.get(problem.code, "count")
            facts = {what: problem.wrong, "designs": by_it, "hint": problem.right}
            left.add(problem.place, f"{what}-unfit", **facts)
        else:
            left.take((problem,))
    return left


def without_examples(told: Problems, charts: Collection[str]) -> Problems:
    """Without advice on charts that are examples still, by their folders, and on magnets that such a one draws in: all
    of it is another with her own."""
    series = {folder.rpartition("/")[0] for folder in charts}
    left = Problems()
    for problem in told:
        folder = problem.place.path.rpartition("/")[0]
        of_chart = problem.code in _OF_THE_CHART and folder in charts
        of_magnets = problem.code == "magnets-bunched" and folder.rpartition("/")[0] in series
        if not of_chart and not of_magnets:
            left.take((problem,))
    return left


def _without_crowded(told: Problems, all_series: Iterable[Series]) -> Problems:
    """Without the crowded cloths of a thread set of which all strands are in the needle, and without what skeins do not
    reach for then: that is told of the set. Nor where a skein may be shorter than its card says, or other strands are
    meant on every cloth."""
    places = {problem.place.path for problem in told if problem.code == "strands-all"}
    crowding = tuple(
        f"with {of}{one.strands} strands of "
        for series in all_series
        if series.place.path in places
        for one in series.thread_sets
        if 1 < one.card.strands == one.strands
        for of in ("", "a blend of ")
    )
    slips = {"length-long", "length-short", "coverage-everywhere"}
    unsure = bool(crowding) or not slips.isdisjoint(problem.code for problem in told)
    left = Problems()
    for problem in told:
        follows = problem.code in _OF_CROWDING and problem.wrong.startswith(crowding)
        if not follows and not (unsure and problem.code in _OF_SKEINS):
            left.take((problem,))
    return left


def _without_idle(told: Problems) -> Problems:
    """Without designers who have no pattern in the order of a series, where one is left out of it: it may be theirs."""
    orders = {problem.place.path for problem in told if problem.code == "pattern-not-in-order"}
    left = Problems()
    for problem in told:
        if problem.code != "designer-idle" or problem.place.path not in orders:
            left.take((problem,))
    return left


def _without_twins(told: Problems) -> Problems:
    """Without colours that are alike and far from their conversions, where a card has one colour twice: one of the two is
    mostly another's."""
    twice = [problem.wrong for problem in told if problem.code == "hex-twice"]
    numbers = {number for wrong in twice for number in re.findall(r"'([^']+)'", wrong)}
    left = Problems()
    for problem in told:
        alike = problem.code in _OF_TWINS and numbers & set(re.findall(r"[\w-]+", problem.wrong))
        if not alike and not (twice and problem.code in _OF_CONVERSIONS):
            left.take((problem,))
    return left


def _options(all_series: Iterable[Series]) -> Iterator[tuple[Series, ClothOption]]:
    return (
        (series, option)
        for series in all_series
        for pattern in series.patterns
        for option in pattern.cloths
    )


def _follows(problem: Problem, places: Iterable[object], cloths: Iterable[Cloth]) -> bool:
    if problem.code in _OF_ALL:
        return True
    return problem.code in _OF_THE_CLOTH and (
        problem.place in places or any(cloth.name in problem.wrong for cloth in cloths)
    )
