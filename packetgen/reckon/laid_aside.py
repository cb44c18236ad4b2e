"""Parts advice that an author has laid aside from what is still to be told."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from packetgen.diagnostics import Problem, Problems
from packetgen.model import LaidAside, Series
from packetgen.reckon.review import folder_of


@dataclass(frozen=True)
class Parted:
    """`told` is what is left to think of; `aside` what was taken out of it, in the same order."""

    told: Problems
    aside: tuple[Problem, ...]


def parted(problems: Iterable[Problem], all_series: Iterable[Series]) -> Parted:
    """A pattern's file lays aside advice on its folder, a series' file advice on the series' own files."""
    codes = {
        (folder, one.code) for folder, these in _by_folder(all_series).items() for one in these
    }
    told, aside = Problems(), []
    for problem in problems:
        if (folder_of(problem.place.path), problem.code) in codes:
            aside.append(problem)
        else:
            told.take((problem,))
    return Parted(told, tuple(aside))


def reasons(all_series: Iterable[Series], aside: Iterable[Problem]) -> dict[str, list[str]]:
    """By folder, a line for each kind that was laid aside: what, how often, and the author's reason."""
    told = [(folder_of(problem.place.path), problem.code) for problem in aside]
    return {
        folder: [
            f"{one.code}{f' ({number} times)' if number > 1 else ''}: {one.because}"
            for one in these
            if (number := told.count((folder, one.code)))
        ]
        for folder, these in _by_folder(all_series).items()
    }


def complain_of_idle(
    all_series: Iterable[Series], aside: Sequence[Problem], problems: Problems
) -> None:
    """What is laid aside and would not be told anyway."""
    told = {(folder_of(problem.place.path), problem.code) for problem in aside}
    for folder, these in _by_folder(all_series).items():
        for one in these:
            if (folder, one.code) not in told:
                problems.add(one.place, "laid-aside-idle", kind=one.code)


def _by_folder(all_series: Iterable[Series]) -> dict[str, tuple[LaidAside, ...]]:
    found: dict[str, tuple[LaidAside, ...]] = {}
    for series in all_series:
        found[folder_of(series.place.path)] = series.laid_aside
        for pattern in series.patterns:
            found[folder_of(pattern.place.path)] = pattern.laid_aside
    return found
