"""An editor's review: what was found of a whole folder, pattern by pattern, and what is well done."""

from collections import Counter
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace

from packetgen.diagnostics import Problem
from packetgen.faults import Level
from packetgen.model import Pattern, Series
from packetgen.reckon.figures import Figures

# What begin wrote is no cause of anything that is told of patterns.
EXAMPLES = ("example-left", "example-remark")
_LEFT_OUT = "pattern-not-in-order"
# What several series share; it belongs to no folder of theirs.
SHARED = "Cards, cloths, pieces and the folder itself"


@dataclass(frozen=True)
class Praise:
    """Something that was checked and is well: in a few words, and in a sentence. `symbols` are those that it
    is about, each as its shape's name and its colour's."""

    short: str
    words: str
    symbols: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Chapter:
    """One pattern, one series as a whole, or what all of them share."""

    title: str
    folder: str  # below the content folder; '' for what all share
    problems: tuple[Problem, ...]
    praise: tuple[Praise, ...] = ()
    aside: tuple[str, ...] = ()  # a line for each kind of advice that the author has laid aside
    figures: Figures | None = None  # of a pattern that could be reckoned

    @property
    def faults(self) -> tuple[Problem, ...]:
        return tuple(one for one in self.problems if one.level is Level.ERROR)

    @property
    def advice(self) -> tuple[Problem, ...]:
        return tuple(one for one in self.problems if one.level is Level.ADVICE)

    def is_about(self, names: Collection[str]) -> bool:
        """Whether it is of one of these patterns, or of one of these series."""
        return not set(names).isdisjoint(self.folder.split("/")[1:])

    def to_tell(self, names: Collection[str]) -> Iterator[Problem]:
        """What is told of it to somebody who asks for these patterns only."""
        for one in self.problems:
            left_out = one.code == _LEFT_OUT and any(f"'{name}'" in one.wrong for name in names)
            if left_out or one.level is Level.ERROR:
                yield one


@dataclass(frozen=True)
class Review:
    """Chapters with something in them: of each series its patterns and then itself. What is shared comes first,
    since what is told of patterns may come of it; where only examples are left in it, it comes last."""

    chapters: tuple[Chapter, ...]

    def about(self, names: Iterable[str]) -> "Review":
        """The chapters of these patterns, of these series with all their patterns, and of what is shared; of the others
        the faults, and that one of these patterns is left out."""
        wanted = set(names)
        chapters = (
            chapter
            if not chapter.folder or chapter.is_about(wanted)
            else Chapter(chapter.title, chapter.folder, tuple(chapter.to_tell(wanted)))
            for chapter in self.chapters
        )
        told = (one for one in chapters if one.problems or one.figures or one.praise or one.aside)
        return Review(tuple(told))

    @property
    def patterns(self) -> int:
        return sum(chapter.figures is not None for chapter in self.chapters)

    @property
    def faults(self) -> int:
        return sum(len(chapter.faults) for chapter in self.chapters)

    @property
    def advice(self) -> int:
        return sum(len(chapter.advice) for chapter in self.chapters)

    @property
    def aside(self) -> int:
        """Lines of what was laid aside, in all chapters."""
        return sum(len(chapter.aside) for chapter in self.chapters)

    @property
    def praise(self) -> int:
        return sum(len(chapter.praise) for chapter in self.chapters)


@dataclass(frozen=True)
class Praised:
    """What is well done in a series: of each pattern by its id, and of the whole."""

    of_patterns: Mapping[str, tuple[Praise, ...]] = field(default_factory=dict)
    of_series: tuple[Praise, ...] = ()


def folder_of(place_path: str) -> str:
    """The folder of the pattern or series to which a file belongs; '' for any other file."""
    parts = place_path.split("/")
    if parts[0] != "series" or len(parts) < 3:
        return ""
    return "/".join(parts[:3] if len(parts) > 3 else parts[:2])


def review_of(
    reckoned: Sequence[tuple[Series, Sequence[Figures], Praised]],
    problems: Iterable[Problem],
    aside: Mapping[str, Sequence[str]],
    titles: Mapping[str, str],
) -> Review:
    """The chapters. Of what could not be read `titles` has the title by folder, where it is known at all.
    `aside` has, by folder, a line for each kind of advice that was laid aside."""
    by_folder: dict[str, list[Problem]] = {}
    for problem in problems:
        by_folder.setdefault(folder_of(problem.place.path), []).append(problem)

    def found_in(folder: str) -> tuple[Problem, ...]:
        return tuple(by_folder.pop(folder, ()))

    chapters = []
    for series, all_figures, praised in reckoned:
        for figures in all_figures:
            pattern = figures.pattern
            folder = pattern_folder(pattern)
            praise, left = praised.of_patterns.get(pattern.id, ()), tuple(aside.get(folder, ()))
            chapters.append(Chapter(pattern.title, folder, found_in(folder), praise, left, figures))
        folder = folder_of(series.place.path)
        left = tuple(aside.get(folder, ()))
        whole = Chapter(series.title, folder, found_in(folder), praised.of_series, left)
        if whole.problems or whole.praise or whole.aside:
            chapters.append(whole)
    shared = Chapter(SHARED, "", found_in(""))
    unread = [
        Chapter(titles.get(folder, folder), folder, found_in(folder))
        for folder in sorted(by_folder, key=_order)
    ]
    told = [*chapters, *unread]
    if shared.problems:
        first = any(one.code not in EXAMPLES for one in shared.problems)
        told.insert(0 if first else len(told), shared)
    return Review(tuple(_told_apart(told)))


def _told_apart(chapters: Sequence[Chapter]) -> Iterator[Chapter]:
    """Those of one title, as of a copied pattern, with their folders."""
    titles = Counter(one.title for one in chapters)
    for one in chapters:
        name = one.folder.rpartition("/")[2]
        alike = titles[one.title] > 1 and name != one.title
        yield replace(one, title=f"{one.title} ({name})") if alike else one


def pattern_folder(pattern: Pattern) -> str:
    """Below the content folder."""
    return pattern.place.path.rpartition("/")[0]


def _order(folder: str) -> tuple[str, bool, str]:
    """The patterns of a series before itself."""
    series = "/".join(folder.split("/")[:2])
    return series, folder == series, folder
