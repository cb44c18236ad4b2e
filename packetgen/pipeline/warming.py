"""Loads what every worker needs while this process still reads: the PDF engine takes a second."""

import signal
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from multiprocessing import get_all_start_methods, get_context

# A process that is begun from nothing holds no locks and no open files of this one.
METHOD = "forkserver" if "forkserver" in get_all_start_methods() else "spawn"


@cache  # once it has begun there is no more to do, and Ctrl-C need not be missed again
def warm(workers: int) -> None:
    """Begin it in a process beside this one, of which workers are begun later; waits for nothing.

    Where one worker does everything here, or a system begins each worker alone, there is nothing to do.
    """
    if workers < 2 or METHOD != "forkserver":
        return
    from multiprocessing.forkserver import ensure_running

    get_context(METHOD).set_forkserver_preload(["packetgen.pipeline.engine"])
    with _deaf():
        ensure_running()


@contextmanager
def _deaf() -> Iterator[None]:
    """Processes that are begun meanwhile never hear Ctrl-C, which reaches all of a terminal: it is for this
    process to end them."""
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    before = signal.signal(signal.SIGINT, signal.SIG_IGN)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, before)
