"""`packetgen chart …` on any pattern that can be read: what is written is the edited design, and undone it is
the design that it was.

Each input begins with five bytes that choose the edit; the rest is the file of the pattern that is strange.
"""

import shutil
from collections.abc import Callable
from pathlib import Path

from packetgen.chart_edit.change import Change, bordered, mirrored, shifted, turned
from packetgen.chart_edit.design import in_order, marks_used, moved
from packetgen.chart_edit.pattern_text import CannotBeTold
from packetgen.load.content import load_content
from packetgen.model import BARE, Grid, Pattern
from packetgen.pipeline import proof
from packetgen.pipeline.chart_edits import NotSound, WouldLose, edit_chart
from tests.content_builder import CHART, FERN, PATTERN, TINY, build
from tests.fuzz.targets import Finding, Target, check


class Chart:
    """The tiny content folder, whose pattern is edited as its file says it and then back."""

    def __init__(self, root: Path) -> None:
        self._root = root
        shutil.rmtree(root, ignore_errors=True)
        build(root)

    def edit(self, path: str, data: bytes, choice: bytes) -> None:
        """The edit that `choice` stands for, done to the folder with those bytes as the file `path`.

        Raises Finding, or what goes wrong.
        """
        files = {PATTERN: TINY[PATTERN].encode(), CHART: TINY[CHART].encode(), path: data}
        if path.endswith("chart.csv"):
            del files[CHART]
        self._put(files)
        if not proof(self._root).sound:
            return
        before = self._read()
        if before is None or before.grid.place.path.endswith(".png"):
            return
        there, back = _edits(before.grid, choice)
        wanted = moved(before, there)
        if not self._done(there) or not marks_used(wanted):
            return
        after = self._read()
        if after is None or in_order(after) != wanted:
            raise Finding("what was written is not the edited design")
        if back is not None:
            for change in back:
                after = self._read()
                if not self._done(change(after.grid)):
                    return
            if in_order(self._read()) != in_order(before):
                raise Finding("back again it is not the design that it was")

    def _done(self, change: Change) -> bool:
        """Whether it could be done; what there is to say against it is said in fair lines."""
        held = self._all()
        try:
            edit_chart(self._root, FERN, change, lose=True)
        except NotSound as error:
            check(error.problems)
            if not error.problems.errors:
                raise Finding("refused, and nothing says why") from error
        except CannotBeTold as error:
            if error.place.line < 1:
                raise Finding("refused at no place") from error
        except WouldLose as error:
            raise Finding("lost all the same") from error
        else:
            return True
        if self._all() != held:
            raise Finding("refused, and something was written")
        return False

    def _read(self) -> Pattern | None:
        content, _ = load_content(self._root)
        return content.series[0].patterns[0] if content else None

    def _all(self) -> dict[Path, bytes]:
        return {path: path.read_bytes() for path in self._root.rglob("*") if path.is_file()}

    def _put(self, files: dict[str, bytes]) -> None:
        for file in (self._root / FERN).iterdir():
            if file.name.startswith("_before") or file.stem == "chart":
                file.unlink()
        for name, data in files.items():
            (self._root / name).write_bytes(data)


def _edits(
    grid: Grid, choice: bytes
) -> tuple[Change, "tuple[Callable[[Grid], Change], ...] | None"]:
    """A change of the chart, and what undoes it; None where something may be lost."""
    kind, *given = (*choice, 0, 0, 0, 0, 0)[:5]
    signed = [(number + 128) % 256 - 128 for number in given]
    few = [number % 7 for number in given]
    turns = (90, 180, 270)
    if kind % 5 == 0:
        degrees = turns[given[0] % 3]
        way = tuple(
            [lambda one: turned(one, degrees)] * ((360 // degrees - 1) if degrees < 270 else 3)
        )
        return turned(grid, degrees), way
    if kind % 5 == 1:
        left_right = bool(given[0] % 2)
        return mirrored(grid, left_right), (lambda one: mirrored(one, left_right),)
    if kind % 5 == 2:
        return shifted(grid, signed[0], signed[1]), None
    if kind % 5 == 3:
        off = [min(number, 2) for number in few]
        left, right = min(off[0], grid.width - 1), 0
        top, bottom = min(off[2], grid.height - 1), 0
        if left + off[1] < grid.width:
            right = off[1]
        if top + off[3] < grid.height:
            bottom = off[3]
        return bordered(grid, -left, -right, -top, -bottom), None
    mark = BARE if given[0] % 2 else "r"
    wider = bordered(grid, *few, mark if mark in "".join(grid.rows) else BARE)
    return wider, (lambda one: bordered(one, *(-number for number in few)),)


def edit_targets(root: Path) -> dict[str, Target]:
    """A target for each kind of file that an edit writes anew; `root` is a folder that may be filled."""
    chart = Chart(root)

    def edits(path: str) -> Callable[[bytes], None]:
        return lambda data: chart.edit(path, data[5:], data[:5])

    def seeds(*files: bytes) -> tuple[bytes, ...]:
        return tuple(bytes([n, n, 1, 2, 1]) + file for file in files for n in range(5))

    return {
        "edit-pattern": Target(
            edits(PATTERN), seeds(TINY[PATTERN].encode(), _WRITTEN_OTHERWISE.encode())
        ),
        "edit-text": Target(edits(CHART), seeds(TINY[CHART].encode(), b"\n# a\n\nrrbb\nrk..\n\n")),
        "edit-table": Target(
            edits(f"{FERN}/chart.csv"), seeds(b"r,r,b,b\nr,k,,\n", b'"r"; r ;b;b\r\nr;"k";;\r\n')
        ),
    }


# The tiny pattern in other ways of writing YAML.
_WRITTEN_OTHERWISE = """\
title: >-
  Fern
  by the Tap
"designer": 'alder'
about: |
  A fern uncurls.
occasion: {name: First warm day,
  on: second Sunday of May}
cloths: [{cloth: hopsack-28, colour: frost}]
thread_sets:
- moss
- spool
key: {
  r: {moss: E2, spool: "10"}, "k": {moss: K4, spool: "12"},  # 1,1
  'b': {moss: [E2, "07"], spool: ["10", "14"]} }
backstitch:
- path: >-
    1,1 4,1
    4,2.50
  colour: k  # 3,3
french_knots: [{colour: r, at: '2.5,2.5  3,3'}]

beads:
- {card: drop, number: "07",
   at: "3.5,1.5"}
close_ups:
  # it is there
  - rows: "k..k\\nkk.."
    at: 3,2
revisions: [{date: 2026-11-25, note: First issue.}]
"""
