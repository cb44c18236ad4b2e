"""What is told of a cloth while its count may be a slip: that, and not all that follows from it."""

from collections.abc import Iterable, Iterator
from dataclasses import replace

from packetgen.diagnostics import Problem, Problems
from packetgen.model import Cloth, ClothOption, Series
from packetgen.nouns import counted

_OF_THE_CLOTH = {"coverage-thin", "coverage-crowded", "beads-crowd", "cut-wastes", "fit-tight"}
_FIRST = "first look at the cloth's count,"
# Magnets stand where all designs have room for them, and thread is bought for the thirstiest cloth.
_OF_ALL = {
    *("magnets-no-room", "magnets-none-room", "magnets-bunched"),
    *("skein-short", "skein-little"),
}


def without_what_follows(told: Problems, all_series: Iterable[Series]) -> Problems:
    """Without advice that a wrong count makes; of designs that do not fit by it, the count is what to look at."""
    counts = {problem.place.path: problem for problem in told if problem.code == "count-other"}
    doubted = {
        option.place: (option.cloth, counts[f"cloths/{option.cloth.id}.yaml"])
        for option in _options(all_series)
        if f"cloths/{option.cloth.id}.yaml" in counts
    }
    if not doubted:
        return told
    cloths = [cloth for cloth, _ in doubted.values()]
    left = Problems()
    unfit: dict[str, list[Problem]] = {}  # by the place of the count
    for problem in told:
        if problem.right.startswith(_FIRST):  # a review looks at what a proof has told so
            left.take((problem,))
        elif problem.code == "does-not-fit" and problem.place in doubted:
            unfit.setdefault(str(doubted[problem.place][1].place), []).append(problem)
        elif not _follows(problem, doubted, cloths):
            left.take((problem,))
    for count, (first, *others) in unfit.items():
        more = f" (so too {counted(len(others), 'more design')})" if others else ""
        left.take((replace(first, right=f"{_FIRST} {count}{more}"),))
    return left


def _options(all_series: Iterable[Series]) -> Iterator[ClothOption]:
    return (
        option for series in all_series for pattern in series.patterns for option in pattern.cloths
    )


def _follows(problem: Problem, places: Iterable[object], cloths: Iterable[Cloth]) -> bool:
    if problem.code in _OF_ALL:
        return True
    return problem.code in _OF_THE_CLOTH and (
        problem.place in places or any(cloth.name in problem.wrong for cloth in cloths)
    )
