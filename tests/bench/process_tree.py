"""A command as a process, and what it and all that it starts cost together. Linux only.

A build's helpers begin their own helpers, and some of them outlive it for a moment; so this process
becomes the one that orphans are handed to (prctl(2), PR_SET_CHILD_SUBREAPER), and waits for them all.
"""

import ctypes
import os
import subprocess
import time
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryFile

import psutil

_PR_SET_CHILD_SUBREAPER = 36
_BETWEEN_SAMPLES_S = 0.5
# To look at a process's memory stops it for a while: at least so many times as long it is let alone then.
_LET_ALONE = 50


@dataclass(frozen=True)
class Run:
    code: int
    said: str  # standard output and standard error
    wall_s: float
    cpu_s: float  # user and system, of all processes
    tree_mb: float  # most that all of them held at one moment, shared pages counted once (PSS)
    process_mb: float  # most that one of them ever held (RSS)


def run(command: Iterable[str], folder: Path, env: dict[str, str] | None = None) -> Run:
    """Run `command` in `folder` until it and everything that it started has ended."""
    ctypes.CDLL(None).prctl(_PR_SET_CHILD_SUBREAPER, 1, 0, 0, 0)
    with TemporaryFile() as said:
        started = time.perf_counter()
        process = subprocess.Popen(
            [*command], cwd=folder, env=env, stdin=subprocess.DEVNULL, stdout=said, stderr=said
        )
        code, wall_s, cpu_s, process_kb, tree_mb = None, 0.0, 0.0, 0, 0.0
        next_sample = started
        while True:
            try:
                pid, status, usage = os.wait4(-1, os.WNOHANG)
            except ChildProcessError:
                break
            if pid:
                cpu_s += usage.ru_utime + usage.ru_stime
                process_kb = max(process_kb, usage.ru_maxrss)
                if pid == process.pid:
                    wall_s = time.perf_counter() - started
                    code = process.returncode = os.waitstatus_to_exitcode(status)
                continue
            if (sampling := time.perf_counter()) >= next_sample:
                tree_mb = max(tree_mb, _held_mb())
                sampled = time.perf_counter()
                next_sample = sampled + max(_BETWEEN_SAMPLES_S, _LET_ALONE * (sampled - sampling))
            time.sleep(0.01)
        said.seek(0)
        words = said.read().decode(errors="replace")
    assert code is not None
    return Run(code, words, wall_s, cpu_s, max(tree_mb, process_kb / 1024), process_kb / 1024)


def _held_mb() -> float:
    """Of all processes below this one."""
    held = 0
    for process in psutil.Process().children(recursive=True):
        try:
            held += process.memory_full_info().pss
        except psutil.Error:  # it has just ended
            continue
    return held / 2**20
