"""What is shown at this moment: put up by the rounds, read by everybody who looks."""

import threading
from collections.abc import Mapping
from dataclasses import dataclass, field, replace


@dataclass(frozen=True)
class Sight:
    """The last good site and what there is to say of the files as they are now.

    `version` changes with `files` and with nothing else; it is '' until there is a good site.
    """

    files: Mapping[str, bytes] = field(default_factory=dict)  # by path in the site
    version: str = ""
    errors: tuple[str, ...] = ()  # located lines
    advice: tuple[str, ...] = ()
    drawn: int = 0
    to_draw: int = 0  # pictures in all, while some are still blank


class Board:
    """Holds the newest `Sight`. For several threads."""

    def __init__(self, name: str) -> None:
        """`name` tells this run of the preview from others, in the versions."""
        self._name = name
        self._rounds = 0
        self._sight = Sight()
        self._changed = threading.Condition()
        self._closed = False

    @property
    def sight(self) -> Sight:
        return self._sight

    def show(
        self,
        files: Mapping[str, bytes] | None,
        *,
        errors: tuple[str, ...] = (),
        advice: tuple[str, ...] = (),
        drawn: int = 0,
        to_draw: int = 0,
    ) -> None:
        """Put up a new sight; without `files` the last good ones stay."""
        with self._changed:
            last = self._sight
            shown = Sight(last.files, last.version, errors, advice, drawn, to_draw)
            if files is not None and files != shown.files:
                self._rounds += 1
                shown = replace(shown, files=files, version=f"{self._name}-{self._rounds}")
            self._sight = shown
            self._changed.notify_all()

    def after(self, seen: Sight | None, wait_s: float) -> Sight | None:
        """The sight as soon as it is another than `seen`; None where none comes in time."""
        with self._changed:
            self._changed.wait_for(lambda: self._closed or self._sight is not seen, wait_s)
            return None if self._sight is seen else self._sight

    @property
    def closed(self) -> bool:
        return self._closed

    def close(self) -> None:
        """Nothing more will come; nobody need wait."""
        with self._changed:
            self._closed = True
            self._changed.notify_all()
