"""Where the patterns of a build are worked on: in this process, or in several side by side."""

import gc
import logging
import os
import signal
import threading
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from dataclasses import dataclass
from itertools import islice
from multiprocessing import connection, get_context, parent_process
from multiprocessing.process import BaseProcess

from packetgen.digest import Keep
from packetgen.pipeline.jobs import PatternJob, do
from packetgen.pipeline.order import WorkerLost
from packetgen.pipeline.warming import METHOD, warm
from packetgen.record import Output
from packetgen.write import Staging

Said = tuple[dict[str, object], ...]  # records for the log
# Jobs of each worker until others take over: the PDF engine keeps something of every document.
_SHIFT = 50
_HEARD = ("packetgen", "weasyprint")  # loggers of which a worker hands on what they say


@dataclass(frozen=True)
class Done:
    """What a job wrote, or the fault that it met: EngineComplaint, TemplateFault."""

    outputs: dict[str, Output]
    fault: Exception | None = None
    said: Said = ()


Waiting = dict[Future[Done], PatternJob]


class Bench:
    """Does jobs, and hands each one back as it is done."""

    def __init__(self, workers: int) -> None:
        self._workers = workers
        self._pool: ProcessPoolExecutor | None = None

    def all_done(
        self, jobs: Iterable[PatternJob], keep: Keep, staging: Staging
    ) -> Iterator[tuple[PatternJob, Done]]:
        """Begun at once where others do them, else one by one as they are asked for. Raises OSError,
        WorkerLost, and whatever else a job raises unforeseen."""
        if self._workers < 2:
            return _one_by_one(jobs, keep, staging)
        shifts = _batched(jobs, _SHIFT * self._workers)
        first = self._begun(next(shifts, ()), keep, staging)
        return self._in_shifts(first, shifts, keep, staging)

    def end(self) -> None:
        """Nobody begins another job; waits for those that were begun."""
        if self._pool is not None:
            self._pool.shutdown(cancel_futures=True)

    def _in_shifts(
        self, first: Waiting, others: Iterable[Sequence[PatternJob]], keep: Keep, staging: Staging
    ) -> Iterator[tuple[PatternJob, Done]]:
        yield from _as_done(first)
        for jobs in others:
            self.end()
            yield from _as_done(self._begun(jobs, keep, staging))

    def _begun(self, jobs: Sequence[PatternJob], keep: Keep, staging: Staging) -> Waiting:
        self._pool = ProcessPoolExecutor(self._workers, get_context(METHOD), initializer=_begin)
        heard = logging.getLogger(_HEARD[0]).isEnabledFor(logging.DEBUG)
        try:
            with _uninterrupted():
                return {self._pool.submit(_next, job, keep, staging, heard): job for job in jobs}
        except BrokenProcessPool as error:
            raise WorkerLost from error


def _batched(jobs: Iterable[PatternJob], size: int) -> Iterator[tuple[PatternJob, ...]]:
    """So many at a time."""
    rest = iter(jobs)
    while batch := tuple(islice(rest, size)):
        yield batch


def _one_by_one(
    jobs: Iterable[PatternJob], keep: Keep, staging: Staging
) -> Iterator[tuple[PatternJob, Done]]:
    for job in jobs:
        with _uninterrupted():
            done = _tried(job, keep, staging)
        yield job, done


def _as_done(waiting: Waiting) -> Iterator[tuple[PatternJob, Done]]:
    while waiting:
        done, _ = wait(waiting, return_when=FIRST_COMPLETED)
        for future in done:
            job = waiting.pop(future)
            try:
                result = future.result()
            except BrokenProcessPool as error:
                raise WorkerLost from error
            for record in result.said:
                said = logging.makeLogRecord(record)
                logging.getLogger(said.name).handle(said)
            yield job, result


@contextmanager
def _uninterrupted() -> Iterator[None]:
    """Ctrl-C is heard at the end: a worker that is only half begun would complain that nobody waits for it,
    and the PDF engine may take it for a fault of a picture. Raises KeyboardInterrupt."""
    of_main = threading.current_thread() is threading.main_thread()
    if not of_main or signal.getsignal(signal.SIGINT) is signal.SIG_IGN:
        yield
        return
    heard: list[int] = []
    before = signal.signal(signal.SIGINT, lambda number, _: heard.append(number))
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)
    if heard:
        raise KeyboardInterrupt


@contextmanager
def bench(workers: int) -> Iterator[Bench]:
    """With one worker everything is done right here."""
    warm(workers)
    at = Bench(workers)
    try:
        yield at
    finally:
        at.end()


def _begin() -> None:
    """A worker ends with the process that began it, however that ends."""
    gc.freeze()  # what was loaded before it began is never garbage
    gc.disable()
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    threading.Thread(target=_end_with, args=(parent_process(),), daemon=True).start()


def _end_with(parent: BaseProcess | None) -> None:
    if parent is not None:
        connection.wait([parent.sentinel])
        os._exit(1)


def _next(job: PatternJob, keep: Keep, staging: Staging, heard: bool) -> Done:
    """Garbage is looked for only between two jobs, when most of the last one's can go."""
    gc.collect()
    return _tried(job, keep, staging, heard)


def _tried(job: PatternJob, keep: Keep, staging: Staging, heard: bool = False) -> Done:
    from packetgen.render.pdf import EngineComplaint
    from packetgen.render.templates import TemplateFault

    with _hearing(heard) as said:
        try:
            return Done(do(job, keep, staging), said=said())
        except (EngineComplaint, TemplateFault) as error:  # what else went wrong is told beside it
            return Done({}, error, said())
        except Exception as error:
            error.add_note(f"It came with {job.series.id}/{job.figures.pattern.id}.")
            raise


@contextmanager
def _hearing(heard: bool) -> Iterator[Callable[[], Said]]:
    """Collects what is said meanwhile, as far as it can travel: gives what returns it."""
    records: list[dict[str, object]] = []

    class Ear(logging.Handler):
        def emit(self, record: logging.LogRecord) -> None:
            kept = ("name", "levelno", "levelname", "created", "msecs", "process")
            records.append(
                {name: getattr(record, name) for name in kept} | {"msg": record.getMessage()}
            )

    if not heard:
        yield tuple
        return
    ear, loggers = Ear(), [logging.getLogger(name) for name in _HEARD]
    for logger in loggers:
        logger.addHandler(ear)
        logger.setLevel(logging.DEBUG)
    try:
        yield lambda: tuple(records)
    finally:
        for logger in loggers:
            logger.removeHandler(ear)
            logger.setLevel(logging.NOTSET)
