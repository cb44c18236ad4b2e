"""Notices saved files.

The watching library only says when it may be worth looking. What counts is whether the files differ from
those seen last: that holds too where an editor saves by renaming, where a folder is deleted and comes
back, and where a file system sends no word of its changes.
"""

import os
import threading
from collections.abc import Callable, Iterator, Mapping
from pathlib import Path

from watchfiles import watch

Stamp = tuple[int, int, int]  # when changed in ns, bytes, the file's own number
Stamps = Mapping[Path, Stamp]

_SETTLED_MS = 30  # quiet for so long after a change: the editor is done
_LONGEST_MS = 300  # and never wait longer than this
_LOOK_ANYWAY_MS = 1_000
_LOOK_ANYWAY_S = 0.3  # where the library can watch nothing

# What a changed file leaves unread: hidden files, and the copies that editors keep beside it.
_HIDDEN, _COPY = ".", ("~", ".tmp", ".swp")


def stamps(folders: tuple[Path, ...]) -> Stamps:
    """Every file under the folders that somebody may have written; none where there is no folder."""
    found: dict[Path, Stamp] = {}
    for folder in folders:
        for where, below, names in os.walk(folder):
            below[:] = [name for name in below if not name.startswith(_HIDDEN)]
            for name in names:
                if name.startswith(_HIDDEN) or name.endswith(_COPY):
                    continue
                try:
                    state = os.stat(os.path.join(where, name))
                except OSError:  # it has just vanished
                    continue
                found[Path(where, name)] = (state.st_mtime_ns, state.st_size, state.st_ino)
    return found


class Watch:
    """Watches the files under `folders`, which are asked for anew each time: they may come and go.

    Not for several threads.
    """

    def __init__(self, folders: Callable[[], tuple[Path, ...]], stop: threading.Event) -> None:
        self._folders = folders
        self._stop = stop
        self._seen = stamps(folders())

    def changed(self) -> bool:
        """Whether a file differs from the last of the `looks`."""
        return stamps(self._folders()) != self._seen

    def looks(self) -> Iterator[frozenset[Path]]:
        """What was written or deleted since the look before; often nothing, at least once a second."""
        for _ in self._occasions():
            now = stamps(self._folders())
            differing = frozenset(path for path, _ in self._seen.items() ^ now.items())
            self._seen = now
            yield differing

    def _occasions(self) -> Iterator[None]:
        """Each time when it may be worth looking."""
        while not self._stop.is_set():
            yield None
            there = _numbered(self._folders())
            try:
                for _ in watch(
                    *there,
                    watch_filter=None,
                    debounce=_LONGEST_MS,
                    step=_SETTLED_MS,
                    stop_event=self._stop,
                    rust_timeout=_LOOK_ANYWAY_MS,
                    yield_on_timeout=True,
                    ignore_permission_denied=True,
                ):
                    yield None
                    if _numbered(self._folders()) != there:
                        break  # a folder has come, gone or been put in the place of another
            except (
                OSError
            ):  # a folder has just vanished, or the system lets nothing more be watched
                self._stop.wait(_LOOK_ANYWAY_S)


def _numbered(folders: tuple[Path, ...]) -> Mapping[Path, int]:
    """The folders that exist, each with its own number in the file system."""
    found = {}
    for folder in folders:
        try:
            if folder.is_dir():
                found[folder] = folder.stat().st_ino
        except OSError:
            continue
    return found
