"""Where the patterns of a build are worked on: in this process, or in several side by side."""

import logging
import os
import signal
import threading
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from contextlib import contextmanager
from dataclasses import dataclass
from multiprocessing import connection, get_context, parent_process
from multiprocessing.process import BaseProcess

from packetgen.digest import Keep
from packetgen.pipeline.jobs import PatternJob, do
from packetgen.pipeline.order import WorkerLost
from packetgen.pipeline.warming import METHOD, warm
from packetgen.record import Output
from packetgen.write import Staging

Said = tuple[dict[str, object], ...]  # records for the log
_HEARD = ("packetgen", "weasyprint")  # loggers of which a worker hands on what they say


@dataclass(frozen=True)
class Done:
    """What a job wrote, or the fault that it met: EngineComplaint, TemplateFault."""

    outputs: dict[str, Output]
    fault: Exception | None = None
    said: Said = ()


class Bench:
    """Does jobs, and hands each one back as it is done."""

    def __init__(self, pool: ProcessPoolExecutor | None) -> None:
        self._pool = pool

    def all_done(
        self, jobs: Iterable[PatternJob], keep: Keep, staging: Staging
    ) -> Iterator[tuple[PatternJob, Done]]:
        """Begun at once where others do them, else one by one as they are asked for. Raises OSError,
        WorkerLost, and whatever else a job raises unforeseen."""
        if self._pool is None:
            return _one_by_one(jobs, keep, staging)
        heard = logging.getLogger(_HEARD[0]).isEnabledFor(logging.DEBUG)
        try:
            with _uninterrupted():
                submitted = {
                    self._pool.submit(_tried, job, keep, staging, heard): job for job in jobs
                }
        except BrokenProcessPool as error:
            raise WorkerLost from error
        return _as_done(submitted)


def _one_by_one(
    jobs: Iterable[PatternJob], keep: Keep, staging: Staging
) -> Iterator[tuple[PatternJob, Done]]:
    for job in jobs:
        with _uninterrupted():
            done = _tried(job, keep, staging)
        yield job, done


def _as_done(
    waiting: dict[Future[Done], PatternJob],
) -> Iterator[tuple[PatternJob, Done]]:
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
    and the PDF engine may take it for a fault of a picture."""
    if not hasattr(signal, "pthread_sigmask"):
        yield
        return
    before = signal.pthread_sigmask(signal.SIG_BLOCK, {signal.SIGINT})
    try:
        yield
    finally:
        signal.pthread_sigmask(signal.SIG_SETMASK, before)


@contextmanager
def bench(workers: int) -> Iterator[Bench]:
    """With one worker everything is done right here."""
    if workers < 2:
        yield Bench(None)
        return
    warm(workers)
    pool = ProcessPoolExecutor(workers, get_context(METHOD), initializer=_begin)
    try:
        yield Bench(pool)
    finally:
        pool.shutdown(cancel_futures=True)


def _begin() -> None:
    """A worker ends with the process that began it, however that ends."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)
    threading.Thread(target=_end_with, args=(parent_process(),), daemon=True).start()


def _end_with(parent: BaseProcess | None) -> None:
    if parent is not None:
        connection.wait([parent.sentinel])
        os._exit(1)


def _tried(job: PatternJob, keep: Keep, staging: Staging, heard: bool = False) -> Done:
    from packetgen.render.pdf import EngineComplaint
    from packetgen.render.templates import TemplateFault

    with _hearing(heard) as said:
        try:
            return Done(do(job, keep, staging), said=said())
        except (EngineComplaint, TemplateFault) as error:  # what else went wrong is told beside it
            return Done({}, error, said())


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
