"""The pictures drawn so far, by the digest of what they are drawn from.

Pages are shown before their pictures: where one is not drawn yet, `or_blank` gives an empty one that bears
its name. `or_drawn` then draws them, and stops between two of them when that is enough for now. Those that
are put `aside`, since no page shows them, are `drawn` when a browser asks for them.
"""

import threading
from collections.abc import Callable
from functools import cache
from importlib.resources import files

from packetgen.digest import Keep

_MOST_BYTES = 300_000_000  # far more than a series has; what was drawn first goes first


class Interrupted(Exception):
    """There is something better to do than to draw on."""


class Kept:
    """For several threads."""

    def __init__(self) -> None:
        self._pictures: dict[str, bytes] = {}  # in the order in which they were drawn
        self._missing: dict[str, Callable[[], bytes]] = {}  # by the newest `or_blank`
        self._drawing = threading.Lock()
        self.aside: frozenset[str] = frozenset()  # digests

    def or_blank(self) -> Keep:
        """What is there, at once. `missing` then says what is not."""
        missing = self._missing = {}

        def keep(name: str, make: Callable[[], bytes]) -> bytes:
            picture = self._pictures.get(name)
            if picture is None:
                missing[name] = make
                return _blank() + name.encode()
            return picture

        return keep

    @property
    def missing(self) -> frozenset[str]:
        """Digests that the newest `or_blank` could not give, without those put aside."""
        return frozenset(self._missing) - self.aside

    def or_drawn(self, enough: Callable[[], bool], tell: Callable[[int], None]) -> Keep:
        """Draws what is missing; `tell` hears after each one how many are done.

        Raises Interrupted before the next one when there is `enough`.
        """
        done = 0

        def keep(name: str, make: Callable[[], bytes]) -> bytes:
            nonlocal done
            picture = self._pictures.get(name)
            if picture is not None:
                return picture
            if name in self.aside:
                return _blank() + name.encode()
            if enough():
                raise Interrupted
            picture = self._draw(name, make)
            done += 1
            tell(done)
            return picture

        return keep

    def drawn(self, file: bytes) -> bytes:
        """The file itself; in the place of a blank that was put aside its picture."""
        name = blank_name(file)
        make = self._missing.get(name) if name in self.aside else None
        return self._draw(name, make) if name and make else file

    def _draw(self, name: str, make: Callable[[], bytes]) -> bytes:
        with self._drawing:  # the first who asks draws, the others wait for it
            picture = self._pictures.get(name)
            if picture is None:
                picture = self._pictures[name] = make()
                self._forget(name)
            return picture

    def _forget(self, newest: str) -> None:
        excess = sum(map(len, self._pictures.values())) - _MOST_BYTES
        for name in tuple(self._pictures):
            if excess <= 0 or name == newest:
                break
            excess -= len(self._pictures.pop(name))


def blank_name(file: bytes) -> str | None:
    """The digest of the picture in whose place the blank stands; None for any other file."""
    return file[len(_blank()) :].decode() if file.startswith(_blank()) else None


@cache
def _blank() -> bytes:
    return (files("packetgen.preview") / "blank.png").read_bytes()
