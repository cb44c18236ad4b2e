"""Charts that lie in the folder of another pattern: told once, and not of each mark that then agrees with nothing."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import permutations

from packetgen.diagnostics import Place, Problems
from packetgen.load.files import ContentFolder
from packetgen.load.words import said
from packetgen.model import BARE

_STRANGE = "chart-mark-unknown"
# What is said of a chart and a key that are not of one pattern.
_FOLLOWS = frozenset(
    {
        *(_STRANGE, "key-line-unused", "key-mark-other", "point-outside", "more-alike"),
        *(
            "close-up-outside",
            "close-up-over-stitch",
            "corner-unsaid",
            "list-behind",
            "thread-idle",
        ),
    }
)
_KEY = re.compile(r"^key:[ \t]*(?:#.*)?\n((?:[ \t]+.*\n|#.*\n|[ \t]*\n)*)", re.MULTILINE)
_MARK = re.compile(r"^[ \t]+(?:\"(.)\"|'(.)'|(\S)):[ \t]", re.MULTILINE)


@dataclass(frozen=True)
class _Marks:
    chart: frozenset[str] | None  # None where there is no chart.txt
    key: frozenset[str]
    rows: str = ""

    @property
    def strange(self) -> bool:
        return self.chart is not None and not self.chart <= self.key

    def has(self, of: "_Marks") -> bool:
        """Whether the chart of the other would be worked in this key."""
        return bool(of.chart) and (of.chart or frozenset()) <= self.key


def tell_exchanged(
    folder: ContentFolder, series: str, names: Sequence[str], problems: Problems
) -> None:
    """Two charts that changed places, one that lies beside another pattern, which lacks its own, or that lies beside both."""
    if not any(problem.code == _STRANGE for problem in problems):
        return
    marks = {name: _marks(folder, f"{series}/{name}") for name in names}
    for one, other in permutations(names, 2):
        here, there = marks[one], marks[other]
        if not (here.strange and there.has(here)):
            continue
        exchanged = there.strange and here.has(there)
        copied = there.rows == here.rows
        if not (exchanged or copied or there.chart is None):
            continue
        files = {
            f"{series}/{name}/{file}"
            for name in (one, other)
            for file in ("chart.txt", "pattern.yaml")
        }
        problems.leave_out(_FOLLOWS, files)
        if there.chart is None:
            problems.leave_out({"file-missing"}, {f"{series}/{other}/chart.txt"})
        mend = "move it into that folder"
        if exchanged:
            mend = "put each back into its own folder"
        elif copied:
            mend = "the very same lies there, so put this pattern's own here again"
        place = Place(f"{series}/{one}/chart.txt")
        problems.add(place, "chart-of-another", other=said(other), mend=mend)
        if exchanged:
            marks[other] = _Marks(there.key, there.key)  # told


def _marks(folder: ContentFolder, path: str) -> _Marks:
    key = _KEY.search(f"{folder.text(f'{path}/pattern.yaml') or ''}\n")
    there = "chart.txt" in folder.files(path)
    chart = folder.text(f"{path}/chart.txt") or "" if there else ""
    rows = "".join(line for line in chart.split("\n") if not line.startswith("#"))
    return _Marks(
        frozenset(rows) - {BARE, " ", "\t"} if there else None,
        frozenset("".join(found) for found in _MARK.findall(key[1])) if key else frozenset(),
        rows,
    )
