"""Parts advice that an author has laid aside from what is still to be told."""

import re
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from packetgen.diagnostics import Problem, Problems
from packetgen.model import LaidAside, Pattern, Series
from packetgen.model.laid_aside import CARDS
from packetgen.reckon.review import folder_of

_OF_A_PHOTO = ("photo-small", "photo-tells-chart", "photo-tells-place")
# Of a thread that other designs of the series use too there is no little: it may come back when they change.
_OF_OTHERS = ("skein-little",)
_TAKE_OUT = "take this entry out"
_NEAR = 0.7  # words of advice that an entry may mean


@dataclass(frozen=True)
class Parted:
    """`told` is what is left to think of; `aside` what was taken out of it, in the same order."""

    told: Problems
    aside: tuple[Problem, ...]


def parted(problems: Iterable[Problem], by_folder: Mapping[str, Sequence[LaidAside]]) -> Parted:
    """What is laid aside in the folder of each, and the rest."""
    told, aside = Problems(), []
    for problem in problems:
        if _by(by_folder, problem):
            aside.append(problem)
        else:
            told.take((problem,))
    return Parted(told, tuple(aside))


def asides_of(all_series: Iterable[Series]) -> dict[str, tuple[LaidAside, ...]]:
    """By folder. A pattern's file lays aside advice on its folder, a series' file advice on the series' own
    files, on its finishing piece and on cards."""
    found: dict[str, tuple[LaidAside, ...]] = {}
    for series in all_series:
        found[folder_of(series.place.path)] = series.laid_aside
        for shared in _shared(series):
            found[shared] = (*found.get(shared, ()), *series.laid_aside)
        for pattern in series.patterns:
            found[folder_of(pattern.place.path)] = pattern.laid_aside
    return found


def reasons(all_series: Iterable[Series], aside: Iterable[Problem]) -> dict[str, list[str]]:
    """By folder, a line for each entry that lays something aside: what, how often, and the author's reason."""
    by_folder = asides_of(all_series)
    laid = [_by(by_folder, problem) for problem in aside]
    return {
        folder: [
            f"{_said(one)}{f' ({number} times)' if number > 1 else ''}: {one.because}"
            for one in these
            if (number := laid.count(one))
        ]
        for folder, these in by_folder.items()
    }


def complain_of_idle(
    all_series: Sequence[Series],
    aside: Sequence[Problem],
    problems: Problems,
    unfinished: Collection[str] = (),
) -> None:
    """What is laid aside and would not be told anyway, or is laid aside by an entry that says what it is about.
    `problems` holds what is told. Of the
    `unfinished` series, by id, only what is told elsewhere: other advice may come again. Of a photograph that is gone, perhaps by accident, nothing is said: that is told for itself."""
    if problems.errors:
        return  # when they are mended, other advice may be given again
    by_folder = asides_of(all_series)
    at_work = [_by(by_folder, problem) for problem in aside]
    waiting = [
        one
        for series in all_series
        for pattern in series.patterns
        for one in pattern.laid_aside
        if (one.code in _OF_A_PHOTO and not pattern.photo)
        or (one.code in _OF_OTHERS and len(series.patterns) > 1)
        or (
            one.code == "photo-missing"
            and (pattern.photo_awaited or _gives_away(pattern, problems))
        )
    ]
    told: dict[tuple[str, str], list[Problem]] = {}
    for problem in problems:
        told.setdefault((_home(problem.place.path), problem.code), []).append(problem)
    shared = {one for series in all_series for one in _shared(series)}
    for folder, these in by_folder.items():
        if folder in shared:
            continue  # what is about a piece or a card stands with its series
        for one in these:
            if one not in at_work and one not in waiting:
                homes = [folder, *(other for other in shared if one in by_folder[other])]
                found = [problem for home in homes for problem in told.get((home, one.code), ())]
                near = _nearest_words(one, found)
                elsewhere = _told_elsewhere(folder, one.code, told)
                if not elsewhere and folder.split("/")[1] in unfinished:
                    continue
                hint = elsewhere or _meant(one.code, [code for home, code in told if home in homes])
                hint = f"let about be '{near}', or take this entry out" if near else hint
                problems.add(one.place, "laid-aside-idle", kind=_said(one), hint=hint)


def _meant(code: str, told: Sequence[str]) -> str:
    """What to do with an entry that lays nothing aside: it may mean a code that goes on, of which something is told."""
    meant = next((one for one in told if one.startswith(f"{code}-")), None)
    return f"did you mean {meant}? Else {_TAKE_OUT}" if meant else _TAKE_OUT


def _gives_away(pattern: Pattern, problems: Problems) -> bool:
    """Whether its photograph is told to tell the chart, and so will not stay."""
    folder = folder_of(pattern.place.path)
    return any(
        one.code == "photo-tells-chart" and _home(one.place.path) == folder for one in problems
    )


def _told_elsewhere(folder: str, code: str, told: Iterable[tuple[str, str]]) -> str:
    """Where to write it, if a series lays aside what is told of its patterns, or a pattern what is told of its
    series; '' otherwise."""
    of_code = [there for there, kind in told if kind == code and there != folder]
    if any(there.startswith(f"{folder}/") for there in of_code):
        return "it is told of patterns: lay it aside in the pattern.yaml of each"
    if any(there and folder.startswith(f"{there}/") for there in of_code):
        return "it is told of the series: lay it aside in series.yaml"
    return ""


def _nearest_words(one: LaidAside, told: Iterable[Problem]) -> str:
    """As many words of what is told as the entry has, and most like them; '' where none are alike."""
    number = len(one.about.split())
    if not number:
        return ""
    words = [problem.wrong.replace(",", "").split() for problem in told]
    runs = {
        " ".join(these[at : at + number])
        for these in words
        for at in range(len(these) - number + 1)
    }
    return next(iter(get_close_matches(one.about, sorted(runs), n=1, cutoff=_NEAR)), "")


def _by(by_folder: Mapping[str, Sequence[LaidAside]], problem: Problem) -> LaidAside | None:
    """The entry that lays it aside: one that says what it is about before one for the whole kind."""
    of_kind = [
        one for one in by_folder.get(_home(problem.place.path), ()) if one.code == problem.code
    ]
    fitting = [one for one in of_kind if _is_about(problem, one.about)]
    return max(fitting, key=lambda one: len(one.about), default=None)


def _is_about(problem: Problem, words: str) -> bool:
    """Whether the words stand, whole, in what is wrong or in the file's name."""
    text = f"{problem.place.path}: {problem.wrong}".casefold()
    return not words or bool(re.search(rf"(?<!\w){re.escape(words.casefold())}(?!\w)", text))


def _said(one: LaidAside) -> str:
    return f"{one.code} about {one.about}" if one.about else one.code


def _shared(series: Series) -> tuple[str, ...]:
    """The folders outside the series of which its file lays advice aside: those of its piece and of all cards."""
    return (_home(series.finish.place.path), *CARDS)


def _home(path: str) -> str:
    """The folder of the series, pattern, finishing piece or cards to which a file belongs."""
    return folder_of(path) or path.rpartition("/")[0]
