"""Located problems: what an author reads when something in her files is not right.

A problem is data until the command line prints it. Its words come from the one table in
`packetgen.faults`, so that every message the tool can give is found, tested and improved in one place.
"""

import re
from collections import Counter
from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from difflib import get_close_matches

from packetgen.faults import FAULTS, Level
from packetgen.nouns import counted, listed

# Nobody reads more of a kind in one go: a slip that makes so many of them is mended in one place.
MOST_ALIKE = 500
_ALSO = 2  # further lines that one problem names
MOST_OFFERED = 8  # names in one sentence
MOST_MEANT = 3  # of them that are asked about


@dataclass(frozen=True, order=True)
class Place:
    """A spot in an author's file. `path` is relative to the content folder, '' for itself; line and column
    count from 1."""

    path: str
    line: int = 1
    column: int = 1

    def __str__(self) -> str:
        return f"{self.path}:{self.line}:{self.column}"


@dataclass(frozen=True, order=True)
class Problem:
    """One fault (or piece of advice) at one place, already in words."""

    place: Place
    code: str
    wrong: str
    right: str

    @property
    def level(self) -> Level:
        return FAULTS[self.code].level

    def __str__(self) -> str:
        advice = "advice: " if self.level is Level.ADVICE else ""
        return f"{self.place}: {advice}{self.wrong}; {self.right}"

    @property
    def printed(self) -> str:
        """The line with the code at its end, under which the catalogue tells more of it."""
        ends = "; the rest of this file was not looked at" * FAULTS[self.code].ends_file
        return f"{self}{ends} [{self.code}]"


def _in_order(one: Problem) -> tuple[object, ...]:
    """As problems compare, and many times as fast where there are thousands."""
    place = one.place
    return place.path, place.line, place.column, one.code, one.wrong, one.right


# Hears of a fault while a value is read: (code, where in the value, **facts).
Report = Callable[..., None]


class Problems:
    """Collects problems beside the values that a stage returns; reports them sorted, each once.

    Of one fault in one file the first MOST_ALIKE are kept, and one line says that there are more.
    """

    def __init__(self) -> None:
        self._found: set[Problem] = set()
        self._alike: Counter[tuple[str, str]] = Counter()  # (path, code) → how many are kept

    def add(self, place: Place, code: str, **facts: object) -> None:
        """Record the fault `code` at `place`; `facts` fill the gaps in its words."""
        alike = (place.path, code)
        if self._alike[alike] > MOST_ALIKE:
            return
        if self._alike[alike] == MOST_ALIKE:
            place, code, facts = Place(place.path), "more-alike", {"limit": MOST_ALIKE}
        fault = FAULTS[code]
        problem = Problem(place, code, fault.wrong.format(**facts), fault.right.format(**facts))
        if problem not in self._found:
            self._found.add(problem)
            self._alike[alike] += 1

    def take(self, found: Iterable[Problem]) -> None:
        """Record problems that were found elsewhere."""
        self._found.update(found)

    def leave_out(self, codes: Collection[str], paths: Collection[str]) -> None:
        """Forget the problems of those kinds in those files, which something else explains."""
        self._found = {
            one for one in self._found if not (one.code in codes and one.place.path in paths)
        }

    def forget(self, code: str, path: str, line: int) -> None:
        """Forget a problem of that kind on a line, which another explains."""
        self._found = {
            one
            for one in self._found
            if (one.code, one.place.path, one.place.line) != (code, path, line)
        }

    def tell_once(self, code: str) -> None:
        """Of problems of a kind that say the same in several lines, keep the first, and say in how many they stand
        and where else, if these are few."""
        alike: dict[tuple[str, str], list[Problem]] = {}
        for problem in self:
            if problem.code == code:
                alike.setdefault((problem.wrong, problem.right), []).append(problem)
        for (wrong, _), found in alike.items():
            # A YAML file says what a remark or a text only repeats.
            first, *others = sorted(found, key=lambda one: not one.place.path.endswith(".yaml"))
            if others:
                self._found -= {first, *others}
                where = _where_else(first.place, [one.place for one in others])
                self._found.add(replace(first, wrong=f"{wrong}, named {where}"))

    def __iter__(self) -> Iterator[Problem]:
        return iter(sorted(self._found, key=_in_order))

    def __len__(self) -> int:
        return len(self._found)

    @property
    def errors(self) -> tuple[Problem, ...]:
        return tuple(problem for problem in self if problem.level is Level.ERROR)

    @property
    def hindering(self) -> tuple[Problem, ...]:
        """The errors until whose mending nothing can be reckoned."""
        return tuple(problem for problem in self.errors if FAULTS[problem.code].hinders)


def added(before: Problems, after: Problems) -> tuple[Problem, ...]:
    """The errors of `after` that are of a kind of which their file had fewer in `before`."""
    more = Counter(map(_kind, after.errors)) - Counter(map(_kind, before.errors))
    return tuple(problem for problem in after.errors if _kind(problem) in more)


def place_in(text: str, offset: int, path: str) -> Place:
    """Line and column of that letter in the file of the text; `offset` counts from 0."""
    before = text[:offset]
    return Place(path, before.count("\n") + 1, offset - before.rfind("\n"))


def seen_from(place: Place, other: Place) -> str:
    """'line 24' of the same file, 'line 24 of moss/pattern.yaml' of another."""
    line = f"line {other.line}"
    return line if other.path == place.path else f"{line} of {'/'.join(other.path.split('/')[-2:])}"


def _where_else(place: Place, others: Sequence[Place]) -> str:
    """'here and on line 24'; of many lines their number, but of texts, which only repeat what files in YAML say, beside
    these: 'here, and in the remarks at the head of 2 charts'."""
    texts = [one for one in others if not one.path.endswith(".yaml")]
    files = [one for one in others if one not in texts]
    if len(others) <= _ALSO:
        return f"here and {_on_lines(place, others)}"
    if len(files) > _ALSO:
        paths = len({one.path for one in (place, *files)})
        said = f"on {len(files) + 1} lines" + (f" of {paths} files" if paths > 1 else "")
    else:
        said = f"here and {_on_lines(place, files)}" if files else "here"
    if texts:
        charts = len({one.path for one in texts if one.path.endswith(".txt")})
        names = sorted({one.path.rpartition("/")[2] for one in texts if one.path.endswith(".md")})
        heads = [f"the remarks at the head of {counted(charts, 'chart')}"] * bool(charts)
        said += f", and in {listed((*heads, *names))}"
    return said


def _on_lines(place: Place, others: Sequence[Place]) -> str:
    """'on line 24', 'on lines 24 and 30' of the same file; of others each with its file."""
    if len(others) > 1 and all(one.path == place.path for one in others):
        return f"on lines {listed(tuple(str(one.line) for one in others))}"
    return f"on {listed(tuple(seen_from(place, one) for one in others))}"


def _kind(problem: Problem) -> tuple[str, str]:
    return problem.place.path, problem.code


def _words(name: str) -> set[str]:
    return set(re.split(r"\W|_", name)) - {""}


def _with_words_of(name: str, valid: "list[str] | tuple[str, ...]") -> list[str]:
    """The valid names that have all words of `name` among others, one of those that are of the same words."""
    asked = _words(name.casefold())
    by_words = {frozenset(_words(one.casefold())): one for one in valid}
    return [one for words, one in by_words.items() if asked and asked < words]


def nearest(name: str, valid: "list[str] | tuple[str, ...]") -> str:
    """End of a sentence that offers the valid name nearest to `name`, or else lists a few that exist."""
    found = nearest_of(name, valid)
    several = _with_words_of(name, valid)
    if found in several and 1 < len(several) <= MOST_MEANT:
        return f"did you mean {', '.join(map(repr, several[:-1]))} or {several[-1]!r}?"
    if found is not None:
        return f"did you mean {found!r}?"
    if not valid:
        return "there is none yet"
    shown = ", ".join(sorted(valid)[:MOST_OFFERED])
    more = ", …" if len(valid) > MOST_OFFERED else ""
    return f"known here: {shown}{more}"


def nearest_of(name: str, valid: "list[str] | tuple[str, ...]") -> str | None:
    """The valid name nearest to `name`: one that has all its words, in any order, before one that is spelt much
    alike, before the only one all of whose words it has, before one that is spelt alike; None where none is
    near."""
    by_folded = {candidate.casefold(): candidate for candidate in valid}
    asked = _words(name.casefold())
    holding = [one for one in by_folded if asked and asked <= _words(one)]
    within = [one for one in by_folded if _words(one) and _words(one) < asked]
    tried = (
        (holding, 0.0),
        (by_folded, 0.85),
        (within if len(within) == 1 else (), 0.0),
        (by_folded, 0.6),
    )
    for among, cutoff in tried:
        if close := get_close_matches(name.casefold(), among, n=1, cutoff=cutoff):
            return by_folded[close[0]]
    return None
