"""The preview as a whole: watch, make, show, and say so in the terminal."""

import secrets
import threading
import time
from collections.abc import Callable
from pathlib import Path

from packetgen.nouns import counted
from packetgen.preview.board import Board
from packetgen.preview.kept import Kept
from packetgen.preview.rounds import Made, Rounds
from packetgen.preview.server import Server, served
from packetgen.preview.watching import Watch
from packetgen.reckon.standing import AsOf

_NOW_AND_THEN_S = 4.0

# Says a line in the terminal; the second value is whether it tells of something to mend.
Tell = Callable[[str, bool], None]


def start(port: int | None, preferred: int) -> Server:
    """A server at `port`; without one at the `preferred` if that is free, else at any. Raises OSError."""
    board, kept = Board(secrets.token_hex(4)), Kept()
    if port is not None:
        return served(board, kept, port)
    try:
        return served(board, kept, preferred)
    except OSError:
        return served(board, kept, 0)


def follow(
    server: Server,
    content: Path,
    templates: Callable[[], Path | None],
    as_of: Callable[[], AsOf],
    tell: Tell,
    stop: threading.Event,
) -> None:
    """Show the site of the content, and again whenever something of it is saved, until `stop` is set."""

    def folders() -> tuple[Path, ...]:
        own = templates()
        return (content, own) if own else (content,)

    def enough() -> bool:
        return stop.is_set() or watch.changed()

    board, rounds = server.board, Rounds(content, templates, as_of, server.kept)
    told = _Told(tell)
    watch = Watch(folders, stop)
    made: Made | None = None
    blanks = 0  # pictures that the newest look found missing
    for changed in watch.looks():
        if made is None or changed:
            since = time.perf_counter()
            made = rounds.look()
            blanks = made.blanks
            _show(board, made, blanks)
            told.round(made, _named(changed), time.perf_counter() - since)
        if made.blanks and not enough():
            made = _draw(rounds, enough, board, made, blanks)
            _show(board, made, blanks)
            told.drawn(made, blanks)


def _draw(
    rounds: Rounds, enough: Callable[[], bool], board: Board, before: Made, blanks: int
) -> Made:
    """The site with all its pictures, or with fewer when it is `enough`.

    Those that are done are shown every now and then.
    """
    done, shown = blanks - before.blanks, time.monotonic()

    def progress(drawn: int) -> None:
        nonlocal shown
        if time.monotonic() > shown + _NOW_AND_THEN_S:
            _show(board, rounds.so_far(), blanks)
            shown = time.monotonic()
        else:
            board.show(None, advice=before.advice, drawn=done + drawn, to_draw=blanks)

    return rounds.draw(enough, progress)


def _show(board: Board, made: Made, blanks: int) -> None:
    board.show(
        made.files,
        errors=made.errors,
        advice=made.advice,
        drawn=blanks - made.blanks,
        to_draw=blanks if made.blanks else 0,
    )


def _named(changed: frozenset[Path]) -> str:
    """'content/series/almanac/robin/story.md', or how many files; at the start it is none."""
    if not changed:
        return "the whole site"
    return min(changed).as_posix() if len(changed) == 1 else counted(len(changed), "file")


class _Told:
    """Says in the terminal what is new, and nothing twice."""

    def __init__(self, tell: Tell) -> None:
        self._tell = tell
        self._advice: set[str] = set()
        self._wrong = False
        self._shown = False  # whether there ever was a good site

    def round(self, made: Made, named: str, took_s: float) -> None:
        """After a look at the files, of which those `named` were written."""
        self._problems(made)
        if made.files is not None:
            self._shown = True
            well = "all is well again" if self._wrong else "shown"
            self._tell(f"{named}: {well}, {took_s:.1f} s", False)
        self._wrong = bool(made.errors)

    def drawn(self, made: Made, blanks: int) -> None:
        """After some pictures were drawn, of `blanks` in all."""
        self._problems(made)
        self._wrong = bool(made.errors)
        if made.files is not None:
            self._tell(f"pictures: {blanks - made.blanks} of {blanks} drawn", False)

    def _problems(self, made: Made) -> None:
        for line in made.advice:
            if line not in self._advice:
                self._tell(line, True)
        self._advice |= set(made.advice)
        for line in made.errors:
            self._tell(line, True)
        if made.errors:
            things = counted(len(made.errors), "thing")
            stay = "; the last good pages stay" if self._shown else ""
            self._tell(f"{things} to mend{stay}.", True)
