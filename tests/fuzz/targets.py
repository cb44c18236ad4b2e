"""What is given strange inputs: each target takes any bytes, and may answer with problems only.

Whatever else happens (an exception, a message that does not fit its line, a place outside the folder) is a
finding. `TARGETS` maps a name to its target; names of found cases begin with it.
"""

import re
import shutil
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from packetgen.diagnostics import Place, Problem, Problems
from packetgen.load import schema
from packetgen.load.prose_size import check_size
from packetgen.load.single_values import Asking, read_single
from packetgen.load.yaml_nodes import TextNode
from packetgen.pipeline import proof
from packetgen.render.prose import prose
from tests.content_builder import (
    BEADS,
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    build,
    picture,
)
from tests.wrong_input_case import as_usual

LONGEST_MESSAGE = 220
SLOWEST_S = 10
DEMO = Path(__file__).resolve().parents[2] / "content"
_ACTIVE = re.compile(
    rb"<\s*(script|style|img|iframe|object|embed|svg|form|input|link|meta|base)\b"
    rb"|<[^>]*\s(on\w+|style|src)\s*="
    rb"|<[^>]*href\s*=\s*[\"']?(?!https?:|mailto:)[^\"'/?#]*:",
    re.IGNORECASE,
)


class Finding(AssertionError):
    """A target did something that it may not."""


@dataclass(frozen=True)
class Target:
    """`run` takes the bytes; `seeds` are inputs in order, from which strange ones are made."""

    run: Callable[[bytes], None]
    seeds: tuple[bytes, ...]


def check(
    problems: Problems, paths: frozenset[str] | None = None, root: Path = Path("content")
) -> None:
    """Every problem is one line of fair length at a place that exists. Raises Finding."""
    for problem in problems:
        _check_problem(problem, paths, root)


def _check_problem(problem: Problem, paths: frozenset[str] | None, root: Path) -> None:
    line, said = str(problem), as_usual(f"{problem.wrong}; {problem.right}", root)
    if not line.isprintable():
        raise Finding(f"{problem.code}: cannot be printed")
    if len(said) > LONGEST_MESSAGE:
        raise Finding(f"{problem.code}: {len(said)} characters")
    if problem.place.line < 1 or problem.place.column < 1:
        raise Finding(f"{problem.code}: no such place")
    if paths is not None and problem.place.path not in paths:
        raise Finding(f"{problem.code}: told at a file that is not there")


class TinyFolder:
    """The tiny content folder on disk; one file of it is replaced for as long as it is looked at."""

    def __init__(self, root: Path) -> None:
        self._root = root
        shutil.rmtree(root, ignore_errors=True)
        build(root)

    def proof_with(self, path: str, data: bytes) -> None:
        """Proof of the folder with `data` as the file `path`. Raises Finding, or what goes wrong."""
        file, chart = self._root / path, self._root / CHART
        file.write_bytes(data)
        if path != CHART and PurePosixPath(path).stem == "chart":
            chart.unlink()
        try:
            begun = time.process_time()
            checked = proof(self._root)
            spent = time.process_time() - begun
        finally:
            if path in TINY:
                file.write_text(TINY[path], "utf-8")
            else:
                file.unlink()
            chart.write_text(TINY[CHART], "utf-8")
        known = {*TINY, path}
        folders = {str(folder) for each in known for folder in PurePosixPath(each).parents}
        check(checked.problems, frozenset(known | folders), self._root)
        if bool(checked.reckoned) == bool(checked.problems.errors) and not checked.reckoned:
            raise Finding("nothing was reckoned, and no problem says why")
        if spent > SLOWEST_S:
            raise Finding(f"{spent:.0f} s for one folder")


def file_targets(root: Path) -> dict[str, Target]:
    """A target for each kind of file; `root` is a folder that may be filled."""
    folder = TinyFolder(root)
    return {
        name: Target(_whole_file(folder, path), (*_tiny(path), *seeds))
        for name, (path, seeds) in _FILES.items()
    }


def value_targets() -> dict[str, Target]:
    """A target for each kind of single value, and for Markdown as HTML."""
    singles = {
        name: Target(_single(kind), tuple(seed.encode() for seed in seeds))
        for name, (kind, seeds) in _VALUES.items()
    }
    markdown = (
        b"A *word*, **two**, [a link](https://example.org/a_b), <https://example.org>\n\n- a\n- b\n",
        b"| a | b |\n|---|---|\n| 1 | 2 |\n\n> said\n\n1. one\n\n# Head\n\n`code` &amp; \\* <b>x</b>",
        b"<script>alert(1)</script> <img src=x onerror=alert(1)> [x](javascript:alert(1))",
        b"[a]: https://example.org 'title'\n\n[a] ![b](c.png) \"quoted\" -- ... <<x>>",
    )
    return singles | {"markdown": Target(_markdown, markdown)}


def _whole_file(folder: TinyFolder, path: str) -> Callable[[bytes], None]:
    return lambda data: folder.proof_with(path, data)


def _single(kind: object) -> Callable[[bytes], None]:
    def run(data: bytes) -> None:
        text = data.decode("utf-8", "replace")
        problems = Problems()
        value = read_single(kind, TextNode(text, Place("a")), Asking("'it'", "it: 1", problems))
        check(problems)
        if value is None and not problems.errors and "\ufffd" not in text:
            raise Finding("no value, and no problem says why")

    return run


def _markdown(data: bytes) -> None:
    text = data.decode("utf-8", "replace")
    try:
        html = str(prose(text)).encode()
    except RecursionError as error:
        if check_size(text, lambda *_, **__: None):  # else the loader refuses it
            raise Finding("too deep for the library, and not for the loader") from error
        return
    found = _ACTIVE.search(html)
    if found:
        raise Finding(f"unsafe: {found[0][:60]!r}")


def _tiny(path: str) -> tuple[bytes, ...]:
    return (TINY[path].encode(),) if path in TINY else ()


def _demo(*patterns: str) -> tuple[bytes, ...]:
    """Files of the demo, where there is a demo."""
    found = sorted(file for pattern in patterns for file in DEMO.glob(pattern))
    return tuple(file.read_bytes() for file in found[:4])


def _jpeg() -> bytes:
    return picture([["#a04030", "#6b503a"], ["#4f7942", "#a04030"]], "JPEG")


_SMALL = [["#a04030", "#6b503a"], [(0, 0, 0, 0), "#a04030"]]
_LOOK = TINY[SERIES] + 'look:\n  light: {ink: "#2b2b24"}\n  heading: heading.ttf\n'
_FILES: dict[str, tuple[str, tuple[bytes, ...]]] = {
    "thread-card": (MOSS, _demo("threads/*.yaml")),
    "cloth": (CLOTH, _demo("cloths/*.yaml")),
    "beads": (BEADS, _demo("beads/*.yaml")),
    "finish": (FINISH, _demo("finishes/*/finish.yaml")),
    "series": (SERIES, (_LOOK.encode(), *_demo("series/*/series.yaml"))),
    "pattern": (PATTERN, _demo("series/*/*/pattern.yaml")),
    "symbols": (f"{FERN}/symbols.yaml", (b"symbols: {r: heart, k: star}\n",)),
    "chart-text": (CHART, ()),
    "chart-table": (f"{FERN}/chart.csv", (b"r,r,b,b\nr,k,,\n", b'"r";b\n.;"k"\n')),
    "chart-picture": (f"{FERN}/chart.png", (picture(_SMALL),)),
    "photo": (f"{FERN}/photo.jpg", (_jpeg(),)),
    "story": (f"{FERN}/story.md", (b"It grew. [there](https://example.org/a)\n", b"<a href='x'>")),
    "steps": ("finishes/shelf/steps.md", ()),
}
_VALUES: dict[str, tuple[object, tuple[str, ...]]] = {
    "text": (schema.Text(markdown=True), ("a [b](https://example.org)", "x" * 300)),
    "whole": (schema.Whole(1, 60), ("28", "-3", "0007")),
    "number": (schema.Number(0.5, 99), ("1.5", "2,5", "1e400")),
    "length": (schema.length_mm(0, 500), ("8 3/4 in", "20 mm", "1/0 m", "2,5 cm")),
    "coverage": (schema.COVERAGE, ("10 m2 per litre",)),
    "yarn": (schema.YarnSize(1, 2000), ("25 tex", "Nm 40/2", "20/2 Ne", "50 denier", "25")),
    "money": (schema.Money(), ("1.40 EUR", "3 GBP")),
    "hex": (schema.Hex(), ("#6b503a", "6b503a", "#abc")),
    "day": (schema.Day(), ("2027-01-15", "15 January 2027", "2027-02-30")),
    "moment": (
        schema.Moment(),
        ("2027-01-15 09:00 Europe/London", "2027-03-28 01:30 Europe/Paris"),
    ),
    "rule": (
        schema.Rule(),
        (
            "6 January",
            "second Sunday of May",
            "21 days before Easter",
            "3 days after Julian Easter",
        ),
    ),
    "days-before": (schema.DaysBefore(90), ("14 days", "2 weeks", "on the day")),
    "outline": (
        schema.OutlineOf(),
        (
            "0,0 180,0 180,176 0,176",
            "M0,0 L100,0 A50 50 0 0 1 100,100 Q50,120 0,100 Z",
            "M10 10c5 5 10-5 20 0s5 5 9 9h-5v3t4 4a5,5 30 1,0 9,9z",
        ),
    ),
    "pair": (schema.Pair(), ("0,0", "12.5,-3")),
    "cell": (schema.Cell(), ("3,2",)),
    "points": (schema.Points(), ("1,1 4,1 4,2.5", "2.25,2.75")),
    "address": (schema.WebAddress(), ("https://example.org/a", "http://[::1]:80/", "javascript:x")),
}
