"""Two folders change places in one step, where the system can do that.

Linux: renameat2(2) with RENAME_EXCHANGE; macOS: renamex_np(2) with RENAME_SWAP (both from their manual
pages). Neither is in Python's own library.
"""

import ctypes
import errno
import os
import sys
from collections.abc import Callable
from functools import cache
from pathlib import Path

_AT_FDCWD, _RENAME_EXCHANGE, _RENAME_SWAP = -100, 2, 2


class CannotExchange(Exception):
    """This system, or this file system, has no such step."""


def exchange(one: Path, other: Path) -> None:
    """Both must exist, on one file system. Raises CannotExchange, OSError."""
    call = _call()
    if call is None:
        raise CannotExchange
    ctypes.set_errno(0)
    if call(os.fsencode(one), os.fsencode(other)) == 0:
        return
    number = ctypes.get_errno()
    if number in (errno.ENOSYS, errno.EINVAL, errno.ENOTSUP):
        raise CannotExchange
    raise OSError(number, os.strerror(number), str(one), None, str(other))


@cache
def _call() -> Callable[[bytes, bytes], int] | None:
    """What takes both names and gives 0 when it is done."""
    if sys.platform not in ("linux", "darwin"):
        return None
    library = ctypes.CDLL(None, use_errno=True)
    if sys.platform == "darwin":
        swap = getattr(library, "renamex_np", None)
        return swap and (lambda one, other: swap(one, other, _RENAME_SWAP))
    rename = getattr(library, "renameat2", None)
    return rename and (
        lambda one, other: rename(_AT_FDCWD, one, _AT_FDCWD, other, _RENAME_EXCHANGE)
    )
