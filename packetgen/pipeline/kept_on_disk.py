"""Pictures and papers that were made once, found again by what they are made from: a `Keep` for builds.

What the last build has is read there, and only believed when its contents are what that build wrote
down. What this build makes goes into a folder of its own until the end, where every process finds it.
"""

import hashlib
import os
from collections.abc import Callable, Mapping
from pathlib import Path


class KeptOnDisk:
    """`known` holds, by digest, the path in the last build and the SHA-256 of the file there. What is
    `made` goes into that folder."""

    def __init__(self, last: Path, known: Mapping[str, tuple[str, str]], made: Path) -> None:
        self._last, self._known, self._made = last, known, made
        self._asked_for: dict[str, str] = {}

    def __call__(self, name: str, make: Callable[[], bytes]) -> bytes:
        data = self.found(name)
        if data is None:
            data = make()
            self._put(name, data)
        self._asked_for[name] = hashlib.sha256(data).hexdigest()
        return data

    def has(self, name: str) -> bool:
        """Whether the last build has it, as far as can be told without reading it."""
        return name in self._known

    def asked_for(self) -> Mapping[str, str]:
        """Digest → SHA-256 of all that was asked for here."""
        return self._asked_for

    def found(self, name: str) -> bytes | None:
        """What this build, or the last one, has made under that digest."""
        try:
            return (self._made / name).read_bytes()
        except OSError:
            pass
        if name not in self._known:
            return None
        path, sha256 = self._known[name]
        try:
            data = (self._last / path).read_bytes()
        except OSError:
            return None
        return data if hashlib.sha256(data).hexdigest() == sha256 else None

    def _put(self, name: str, data: bytes) -> None:
        """Whole or not at all: another process may look for it at the same time."""
        self._made.mkdir(parents=True, exist_ok=True)
        beside = self._made / f"{name}.{os.getpid()}"
        beside.write_bytes(data)
        os.replace(beside, self._made / name)
