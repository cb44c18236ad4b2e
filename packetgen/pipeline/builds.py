"""A build: what has changed is made anew, what has not is taken over, and all of it is put in place at once."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property, partial

from packetgen.diagnostics import Problems
from packetgen.nouns import counted
from packetgen.pipeline.order import NOBODY, Order, Told
from packetgen.pipeline.stages import stages
from packetgen.pipeline.survey import CONTENT, Survey, record_sign, series_of, survey
from packetgen.pipeline.warming import warm
from packetgen.record import (
    ISSUED,
    MANIFEST,
    SIGNS,
    Issued,
    Output,
    SeriesRecord,
    as_json,
    issued_as_json,
    signs_as_json,
    unrevised,
)


@dataclass(frozen=True)
class Built:
    """How a build ended. Nothing was written where the content has errors or something could not be made."""

    problems: Problems
    advice: tuple[str, ...] = ()  # on what has not changed, as the last build said it
    faults: tuple[Exception, ...] = ()  # TemplateFault, EngineComplaint
    outputs: Mapping[str, Output] = field(default_factory=dict)
    before: Mapping[str, Output] = field(default_factory=dict)  # of the last build
    inputs_changed: tuple[str, ...] = ()  # paths, each with what it begins with
    lost: frozenset[str] = (
        frozenset()
    )  # paths in `before` at which the last build's file was no more

    series: Mapping[str, SeriesRecord] = field(default_factory=dict)
    unrevised: tuple[Issued, ...] = ()  # stitched otherwise than their revision was
    examples: int = 0  # of begin that stand in the files that were read as they were

    @property
    def sound(self) -> bool:
        return not self.problems.errors and not self.faults

    @cached_property
    def made(self) -> tuple[str, ...]:
        """Paths of the files that are new, have other contents than before or were put back."""
        return tuple(
            path
            for path, output in sorted(self.outputs.items())
            if path not in self.before
            or path in self.lost
            or self.before[path].sha256 != output.sha256
        )

    @property
    def gone(self) -> tuple[str, ...]:
        """Paths of the files that there are no longer."""
        return tuple(sorted(set(self.before) - set(self.outputs)))


class _Overtaken(Exception):
    """Another build has ended there since this one has looked at the last one."""


def build(order: Order, told: Told = NOBODY) -> Built:
    """Check, reckon, draw, set and write. Raises OSError, WorkerLost; the last build then stays.

    A series of which no file has changed is not even read. A packet is set anew when anything that it is
    made from has changed, and a picture is drawn anew when the design has.
    """
    while True:
        try:
            return _built(order, told)
        except _Overtaken:  # what it left is the last build now
            continue


def _built(order: Order, told: Told) -> Built:
    ended = stages()
    found = survey(order, partial(warm, order.workers))
    ended(said_of(found))
    if found.nothing_to_do:
        last = found.last
        return Built(
            Problems(),
            last.advice,
            (),
            last.outputs,
            last.outputs,
            series=last.series,
            unrevised=() if order.ahead else unrevised(last.issued),
        )
    warm(order.workers)
    # Loaded only here: a build with nothing to do needs none of it.
    from packetgen.pipeline.making import Making, NotMade
    from packetgen.pipeline.plans import Plan, with_first_read
    from packetgen.pipeline.proofs import proof, with_photos_told
    from packetgen.pipeline.reissued import issued
    from packetgen.reckon.laid_aside import parted
    from packetgen.reckon.review import EXAMPLES
    from packetgen.write import next_build

    checked = proof(order.content, found.to_read)
    if (wider := with_first_read(found, checked)) is not found:
        found, checked = wider, proof(order.content, wider.to_read)
    ended = stages()
    if checked.sound:
        checked = with_photos_told(checked)
    problems, said_again = _parted(checked.problems, found)
    advice = said_again + advice_at_rest(found)
    if not checked.sound:
        return Built(problems, advice)
    try:
        with next_build(order.build, told.wait) as staging:
            if record_sign(order.build) != found.sign:
                raise _Overtaken
            plan = Plan(order, found, checked)
            making = Making(order, plan, staging, told, ended)
            series, outputs = making.all_files()

            def ledger_changed(path: str) -> bool:
                return path not in plan.last.outputs or plan.last.outputs[path] != outputs.get(path)

            def ledger_at(path: str) -> bytes | None:
                return staging.read(path) if path in outputs else None

            kept = issued(
                plan.stands.values(),
                plan.last.issued,
                plan.resting,
                ledger_changed,
                ledger_at,
                order.ahead,
            )
            said = tuple(problem.printed for problem in checked.problems)
            record = replace(
                found.now,
                advice=said + advice_at_rest(found),
                series=series,
                outputs=outputs,
                drawn=making.drawn(outputs),
                issued=kept,
            )
            staging.write(MANIFEST, as_json(record))
            staging.write(SIGNS, signs_as_json(record))
            staging.write(ISSUED, issued_as_json(record))
    except NotMade as error:
        return Built(problems, advice, error.faults)
    built = Built(
        problems,
        advice,
        (),
        outputs,
        found.last.outputs,
        found.inputs_changed,
        found.lost,
        series,
        unrevised=() if order.ahead else unrevised(kept),
        examples=sum(one.code in EXAMPLES for one in parted(checked.examples, checked.asides).told),
    )
    ended(f"put in place: {counted(len(built.made), 'file')} made, {len(built.gone)} gone")
    return built


def advice_at_rest(found: Survey) -> tuple[str, ...]:
    """Lines of advice on series at rest, which are said again."""
    return tuple(line for line in found.last.advice if series_of(CONTENT + line) in found.resting)


def _parted(problems: Problems, found: Survey) -> tuple[Problems, tuple[str, ...]]:
    """What is to be said, and the lines of advice that the last build said too, on patterns and series in
    whose folders nothing has changed since."""
    from packetgen.reckon.review import folder_of

    before = frozenset(found.last.advice)
    touched = {folder_of(path.removeprefix(CONTENT)) for path in found.inputs_changed}
    fresh, again = Problems(), []
    for problem in problems:
        if problem.printed in before and folder_of(problem.place.path) not in touched:
            again.append(problem.printed)
        else:
            fresh.take((problem,))
    return fresh, tuple(again)


def said_of(found: Survey) -> str:
    """What was found, in a line."""
    changed, lost = len(found.inputs_changed), len(found.lost)
    said = f"looked at {counted(len(found.now.inputs), 'file')}: {changed} new or changed"
    if lost:
        said += f", {counted(lost, 'file')} of the last build taken away or changed"
    if found.last.series:
        said += f", {len(found.resting)} of {len(found.last.series)} series at rest"
    return said
