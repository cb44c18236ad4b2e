"""What waits while something else is told: of a cloth whose count may be a slip, of a chart that is an example still."""

from collections import Counter
from collections.abc import Collection, Iterable, Iterator

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.model import Cloth, ClothOption, Series
from packetgen.nouns import counted

_OF_THE_CLOTH = {"coverage-thin", "coverage-crowded", "beads-crowd", "cut-wastes", "fit-tight"}
# Magnets stand where all designs have room for them, which bare rows may give, and thread is bought for the
# thirstiest cloth.
_OF_ALL = {
    *("magnets-no-room", "magnets-none-room", "magnets-bunched"),
    *("skein-short", "skein-little", "edges-bare"),
}
_OF_SKEINS = {"skein-short", "skein-little"}
_OF_THE_CHART = {
    *_OF_SKEINS,
    *("edges-bare", "cut-wastes", "fit-tight", "alone-counted"),
    *("colours-alike", "colours-alike-to-some", "symbols-alike", "symbols-alike-in-grey"),
    "thread-unseen",
    *("coverage-thin", "coverage-crowded", "conversion-collides", "conversion-far"),
}


def without_what_follows(told: Problems, all_series: Iterable[Series]) -> Problems:
    """Without what a wrong count makes: where designs do not fit by it, the count is the fault."""
    counts = {
        problem.place.path: problem
        for problem in told
        if problem.code in ("count-other", "count-rare", "count-unfit", "over-single")
    }
    trims = {problem.place.path: problem for problem in told if problem.code == "trim-turned"}
    doubted: dict[Place, tuple[Cloth | None, Problem]] = {}
    for series, option in _options(all_series):
        cloth, finish = f"cloths/{option.cloth.id}.yaml", f"finishes/{series.finish.id}/finish.yaml"
        if cloth in counts:
            doubted[option.place] = option.cloth, counts[cloth]
        elif finish in trims:
            doubted[option.place] = None, trims[finish]
    told = _without_crowded(told, all_series)
    if not doubted:
        return told
    cloths = [cloth for cloth, _ in doubted.values() if cloth]
    of_cloths = {place for place, (cloth, _) in doubted.items() if cloth}
    left = Problems()
    none_fits: set[Problem] = set()
    unfit: Counter[Problem] = Counter()  # the count, and how many designs do not fit by it
    for problem in told:
        if problem.code == "does-not-fit" and problem.place in doubted:
            unfit[doubted[problem.place][1]] += 1
        elif problem.code == "border-broad" and problem.place.path in trims:
            none_fits.add(trims[problem.place.path])
        elif not (
            _follows(problem, of_cloths, cloths)
            or (problem.code == "fit-tight" and problem.place in doubted)
        ):
            left.take((problem,))
    told, left = left, Problems()
    for problem in told:
        designs = unfit[problem]
        if designs or problem in none_fits:
            by_it = f"{counted(designs, 'design')} {'does' if designs == 1 else 'do'}"
            by_it = "the designs do" if problem in none_fits else by_it
            what = "trim" if problem.code == "trim-turned" else "count"
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
    reach for then: that is told of the set."""
    places = {problem.place.path for problem in told if problem.code == "strands-all"}
    crowding = tuple(
        f"with {of}{one.strands} strands of {one.card.name} "
        for series in all_series
        if series.place.path in places
        for one in series.thread_sets
        if 1 < one.card.strands == one.strands
        for of in ("", "a blend of ")
    )
    left = Problems()
    for problem in told:
        follows = problem.code == "coverage-crowded" and problem.wrong.startswith(crowding)
        if not follows and not (crowding and problem.code in _OF_SKEINS):
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
