"""What a build finds before it makes anything: what there was, what there is, and what may rest."""

import os
import time
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from packetgen.digest import digest
from packetgen.load.inputs import Seen, changed, seen_files
from packetgen.pipeline.order import Order
from packetgen.program import PACKAGE, libraries, project_templates
from packetgen.record import ISSUED, MANIFEST, SIGNS, Record, from_json

# What the paths of inputs begin with.
CONTENT, PROGRAM, TEMPLATES, OWN = "content/", "packetgen/", "templates/", "own templates/"


@dataclass(frozen=True)
class Survey:
    """`last` is what the last build wrote down, an empty record where none can be believed; `now` has the
    inputs as they are, and no outputs yet."""

    last: Record
    now: Record
    inputs_changed: tuple[str, ...]  # paths, each with what it begins with
    lost: frozenset[str]  # outputs that somebody has taken away, or made longer or shorter
    resting: frozenset[str]  # ids of series that are as they were
    sign: str  # what the disk says of the last record

    @property
    def nothing_to_do(self) -> bool:
        """Whether a build would leave everything as it is."""
        as_they_were = bool(self.last.series) and self.resting == set(self.last.series)
        return as_they_were and not self.inputs_changed and not self.lost

    @property
    def to_read(self) -> frozenset[str] | None:
        """Ids of the series that must be read; None for all that there are."""
        return _series_ids(self.now.inputs) - self.resting if self.resting else None

    @property
    def program(self) -> str:
        """A name for all that every packet is made with."""
        return digest(self.now.made_with, *_of_program(self.now.inputs))


def survey(order: Order, soon: Callable[[], None] = lambda: None) -> Survey:
    """Look at the files of content, templates and program, and at those of the last build. Raises nothing.

    `soon` is called as early as it is known that there is something to do.
    """
    sign = record_sign(order.build)
    last = last_record(order.build)
    if order.afresh:
        last = Record("", issued=last.issued)  # what is out stays out
    now = Record(
        digest(libraries(), order.editions is None, order.editions or ()),
        inputs=_inputs(order, last.inputs),
    )
    if inputs_changed := changed(last.inputs, now.inputs):
        soon()
    lost = _lost(order.build, last)
    resting = frozenset() if order.choose else _resting(order, last, now, inputs_changed, lost)
    return Survey(last, now, inputs_changed, lost, resting, sign)


def last_record(build_folder: Path) -> Record:
    """What the last build wrote down; an empty record where there is none that can be believed."""
    try:
        files = [(build_folder / name).read_bytes() for name in (MANIFEST, SIGNS, ISSUED)]
    except OSError:
        return Record("")
    return from_json(*files) or Record("")


def record_sign(build_folder: Path) -> str:
    """Another one for every build that was put in place; '' where there is none."""
    try:
        stat = os.stat(build_folder / MANIFEST)
    except OSError:
        return ""
    return f"{stat.st_dev} {stat.st_ino} {stat.st_mtime_ns} {stat.st_size}"


def series_of(path: str) -> str:
    """The series to whose folder an input belongs; '' for what several may share."""
    parts = path.split("/")
    return parts[2] if parts[:2] == ["content", "series"] and len(parts) > 3 else ""


def _inputs(order: Order, known: Mapping[str, Seen]) -> dict[str, Seen]:
    now_ns = time.time_ns()
    found = seen_files(order.content, known, now_ns, CONTENT)
    found |= seen_files(project_templates(), known, now_ns, TEMPLATES)
    if order.own_templates:
        found |= seen_files(order.own_templates, known, now_ns, OWN)
    program = seen_files(PACKAGE, known, now_ns, PROGRAM)
    return found | {path: seen for path, seen in program.items() if not _of_no_build(path)}


def _of_no_build(path: str) -> bool:
    """Whether no file of a build is made with this one of the program's: its guide is built apart."""
    return "__pycache__" in path or path.startswith(f"{PROGRAM}guide/")


def _of_program(inputs: Mapping[str, Seen]) -> tuple[tuple[str, str], ...]:
    """What program and templates consist of, but for the templates of pages that are not printed."""
    return tuple(
        (path, seen.sha256)
        for path, seen in sorted(inputs.items())
        if not path.startswith((CONTENT, f"{TEMPLATES}site/", f"{TEMPLATES}share/"))
        and not path.startswith((f"{OWN}site/", f"{OWN}share/"))
    )


def _series_ids(inputs: Mapping[str, Seen]) -> frozenset[str]:
    return frozenset(series_of(path) for path in inputs) - {""}


def _resting(
    order: Order,
    last: Record,
    now: Record,
    inputs_changed: tuple[str, ...],
    lost: frozenset[str],
) -> frozenset[str]:
    """Series that are as they were, with everything that they are made from."""
    if last.made_with != now.made_with or any(not series_of(path) for path in inputs_changed):
        return frozenset()
    there = _series_ids(now.inputs)
    if (len(there) > 1) != (len(last.series) > 1):  # each has a folder of its own, or none
        return frozenset()
    touched = {series_of(path) for path in inputs_changed}
    lost_of = {last.outputs[path].series for path in lost}
    if there != set(last.series) or "" in lost_of:
        touched.add(min(there, default=""))  # the page above them all has the look of the first one
    touched |= lost_of
    if not order.ahead:
        touched |= {path.split("/")[1] for path, one in last.issued.items() if one.ahead}
    touched |= {
        name for name, one in last.series.items() if one.behind or not one.still_stands(order.as_of)
    }
    return frozenset((there & set(last.series)) - touched)


def _lost(build_folder: Path, last: Record) -> frozenset[str]:
    folder = os.fspath(build_folder)  # a path object for each would cost more than to ask the disk

    def size(path: str) -> int:
        try:
            return os.stat(f"{folder}/{path}").st_size
        except OSError:
            return -1

    return frozenset(path for path, one in last.outputs.items() if size(path) != one.size_bytes)
