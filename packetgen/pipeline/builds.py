"""A build: what has changed is made anew, what has not is taken over, and all of it is put in place at once."""

import os
import time
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from packetgen.diagnostics import Problems
from packetgen.digest import digest
from packetgen.load.inputs import Seen, changed, seen_files
from packetgen.pipeline.making import Making, NotMade
from packetgen.pipeline.order import NOBODY, Order, Told
from packetgen.pipeline.proofs import proof
from packetgen.program import PACKAGE, libraries, project_templates
from packetgen.record import MANIFEST, SIGNS, Output, Record, as_json, from_json, signs_as_json
from packetgen.write import next_build

# What the paths of inputs begin with.
CONTENT, PROGRAM, TEMPLATES, OWN = "content/", "packetgen/", "templates/", "own templates/"


@dataclass(frozen=True)
class Built:
    """How a build ended. Nothing was written where the content has errors or something could not be made."""

    problems: Problems
    advice: tuple[str, ...] = ()  # on what was not looked at again, since it has not changed
    faults: tuple[Exception, ...] = ()  # TemplateFault, EngineComplaint
    outputs: Mapping[str, Output] = field(default_factory=dict)
    before: Mapping[str, Output] = field(default_factory=dict)  # of the last build
    inputs_changed: tuple[str, ...] = ()  # paths, each with what it begins with

    @property
    def sound(self) -> bool:
        return not self.problems.errors and not self.faults

    @property
    def made(self) -> tuple[str, ...]:
        """Paths of the files that are new or have other contents than before."""
        return tuple(
            path
            for path, output in sorted(self.outputs.items())
            if path not in self.before or self.before[path].sha256 != output.sha256
        )

    @property
    def gone(self) -> tuple[str, ...]:
        """Paths of the files that there are no longer."""
        return tuple(sorted(set(self.before) - set(self.outputs)))


def build(order: Order, told: Told = NOBODY) -> Built:
    """Check, reckon, draw, set and write. Raises OSError; the last build then stays.

    A series of which no file has changed is not even read. A packet is set anew when anything that it is
    made from has changed, and a picture is drawn anew when the design has.
    """
    last = Record("") if order.afresh else last_record(order.build)
    now = Record(
        digest(libraries(), order.editions is None, order.editions or ()),
        inputs=_inputs(order, last.inputs),
    )
    inputs_changed = changed(last.inputs, now.inputs)
    told.stage(f"{len(now.inputs)} files looked at, {len(inputs_changed)} of them new or changed")
    lost = _lost(order.build, last)
    resting = frozenset() if order.choose else _resting(order, last, now, inputs_changed, lost)
    if last.series and resting == set(last.series) and not inputs_changed and not lost:
        told.stage("nothing has changed")
        return Built(Problems(), last.advice, (), last.outputs, last.outputs)
    checked = proof(order.content, _series_ids(now.inputs) - resting if resting else None)
    told.stage(f"{sum(len(each.figures) for each in checked.reckoned)} patterns read and reckoned")
    advice = tuple(line for line in last.advice if series_of(CONTENT + line) in resting)
    if not checked.sound:
        return Built(checked.problems, advice)
    program = digest(now.made_with, *_of_program(now.inputs))
    try:
        with next_build(order.build, told.wait) as staging:
            making = Making(order, told, last, lost, program, staging)
            series, outputs = making.all_of(checked, resting)
            said = tuple(str(problem) for problem in checked.problems)
            drawn = making.drawn(outputs, resting)
            record = replace(now, advice=said + advice, series=series, outputs=outputs, drawn=drawn)
            staging.write(MANIFEST, as_json(record))
            staging.write(SIGNS, signs_as_json(record))
    except NotMade as error:
        return Built(checked.problems, advice, error.faults)
    return Built(checked.problems, advice, (), outputs, last.outputs, inputs_changed)


def last_record(build_folder: Path) -> Record:
    """What the last build wrote down; an empty record where there is none that can be believed."""
    try:
        data, signs = ((build_folder / name).read_bytes() for name in (MANIFEST, SIGNS))
    except OSError:
        return Record("")
    return from_json(data, signs) or Record("")


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
    return found | {path: seen for path, seen in program.items() if "__pycache__" not in path}


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
    if min(there, default="") != min(
        last.series, default=""
    ):  # its look is that of the page above all
        return frozenset()
    touched = {series_of(path) for path in inputs_changed}
    if len(there) > 1 and (inputs_changed or lost):
        touched.add(min(there))  # the page above them all has the look of the first one
    touched |= {last.outputs[path].series for path in lost}
    touched |= {
        name for name, one in last.series.items() if one.behind or not one.still_stands(order.as_of)
    }
    return frozenset((there & set(last.series)) - touched)


def _lost(build_folder: Path, last: Record) -> frozenset[str]:
    """Files of the last build that somebody has taken away, or made longer or shorter."""

    def size(path: str) -> int:
        try:
            return os.stat(build_folder / path).st_size
        except OSError:
            return -1

    return frozenset(path for path, one in last.outputs.items() if size(path) != one.size_bytes)
