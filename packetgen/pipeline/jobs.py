"""One pattern as a piece of work that any process can do, straight onto the disk."""

import copyreg
import hashlib
from collections.abc import Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, ProcessPoolExecutor, wait
from contextlib import contextmanager
from dataclasses import dataclass, replace
from functools import cache, cached_property
from multiprocessing import get_all_start_methods, get_context
from pathlib import Path
from types import MappingProxyType

from packetgen.digest import digest
from packetgen.model import Grid, Pattern, Series
from packetgen.pipeline.kept_on_disk import KeptOnDisk
from packetgen.pipeline.packets import packet_files
from packetgen.reckon.figures import Figures
from packetgen.record import Output
from packetgen.write import Staging


def _read_only(mapping: dict) -> MappingProxyType:
    return MappingProxyType(mapping)


# A mapping that nobody may change travels to another process as a copy, and is one again there.
copyreg.pickle(MappingProxyType, lambda mapping: (_read_only, (dict(mapping),)))


@dataclass(frozen=True)
class PatternJob:
    """All that is to be made of one pattern, and from what."""

    series: Series  # as its packet may know it
    figures: Figures
    packet: bool
    pictures: str  # 'out', 'part' (only a close-up) or '' (none)
    editions: tuple[str, ...] | None
    program: str  # a name for program and templates of packets
    own_templates: Path | None
    keep: KeptOnDisk
    staging: Staging

    @cached_property
    def recipe(self) -> str:
        """A name for all that the packet is made from."""
        return packet_recipe(self.program, self.series, self.figures, self.editions)


def packet_recipe(
    program: str, series: Series, figures: Figures, editions: tuple[str, ...] | None
) -> str:
    """A name for all that a packet is made from."""
    return digest("packet", program, series, figures, editions or (), editions is None)


def as_packet_sees(series: Series, pattern: Pattern) -> Series:
    """The series without what the packet of one of its patterns need not know: of the other patterns no
    more than title, designer, day and cloths is left, and no notices."""
    return replace(
        series,
        patterns=tuple(one if one.id == pattern.id else _cover(one) for one in series.patterns),
        notices=(),
        welcome_markdown="",
    )


def _cover(pattern: Pattern) -> Pattern:
    return Pattern(
        id=pattern.id,
        title=pattern.title,
        about="",
        designer=pattern.designer,
        occasion=pattern.occasion,
        cloths=pattern.cloths,
        thread_sets=(),
        key=(),
        grid=Grid((), pattern.place),
        fractions=(),
        lines=(),
        knots=(),
        beads=(),
        model_stitcher="",
        finisher="",
        sold_at=(),
        revisions=(),
        story_markdown="",
        notes_markdown="",
        photo=None,
        place=pattern.place,
    )


def do(job: PatternJob) -> dict[str, Output]:
    """Set the packet and write it, and draw the pictures for whoever asks `keep` for them later; what was
    written. Raises EngineComplaint, TemplateFault, OSError."""
    from packetgen.render.pictures import cover_jpeg, pattern_pictures

    if job.pictures:
        pattern_pictures(job.series, job.figures, job.pictures == "out", job.keep)
    if not job.packet:
        return {}
    files = packet_files(
        job.series,
        job.figures,
        cover_jpeg(job.figures),
        None if job.editions is None else frozenset(job.editions),
        environment_of(job.own_templates),
    )
    of = job.series.id
    return {path: put(job.staging, path, data, of, job.recipe) for path, data in files.items()}


def put(staging: Staging, path: str, data: bytes, series_id: str, recipe: str = "") -> Output:
    """Write one file of the next build."""
    staging.write(path, data)
    return Output(hashlib.sha256(data).hexdigest(), len(data), series_id, recipe)


@cache
def environment_of(own_templates: Path | None) -> object:
    """The templates' environment, once in each process."""
    from packetgen.render.templates import environment

    return environment(own_templates)


class Bench:
    """Where jobs are done: in this process, or in several side by side."""

    def __init__(self, pool: ProcessPoolExecutor | None) -> None:
        self._pool = pool

    def all_done(
        self, jobs: Iterable[PatternJob]
    ) -> Iterator[tuple[PatternJob, dict[str, Output] | Exception]]:
        """Each job as it is done, with what it wrote or why it could not."""
        if self._pool is None:
            for job in jobs:
                yield job, _tried(job)
            return
        waiting = {self._pool.submit(_tried, job): job for job in jobs}
        while waiting:
            done, _ = wait(waiting, return_when=FIRST_COMPLETED)
            for future in done:
                yield waiting.pop(future), future.result()


@contextmanager
def bench(workers: int) -> Iterator[Bench]:
    """With one worker everything is done right here."""
    if workers < 2:
        yield Bench(None)
        return
    # A process that is begun from nothing holds no locks and no open files of this one.
    method = "forkserver" if "forkserver" in get_all_start_methods() else "spawn"
    context = get_context(method)
    if method == "forkserver":
        context.set_forkserver_preload(["packetgen.pipeline.engine"])
    pool = ProcessPoolExecutor(workers, context)
    try:
        yield Bench(pool)
    finally:
        pool.shutdown(cancel_futures=True)


def _tried(job: PatternJob) -> dict[str, Output] | Exception:
    try:
        return do(job)
    except Exception as error:  # told by whoever waits for it, beside what else went wrong
        return error
