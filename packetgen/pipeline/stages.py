"""Says how far the work has come, and how long each stage took, to whoever listens to the log."""

import logging
import time
from collections.abc import Callable

_LOG = logging.getLogger("packetgen.stages")


def stages() -> Callable[[str], None]:
    """A clock for the stages of one work: told what has ended, it says so with the seconds that it took."""
    since_s = time.perf_counter()

    def ended(what: str) -> None:
        nonlocal since_s
        now_s = time.perf_counter()
        _LOG.info("%s (%.2f s)", what, now_s - since_s)
        since_s = now_s

    return ended
