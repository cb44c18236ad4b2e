"""How a command ends: the exit code, and plain words for whatever went wrong."""

import os
import sys
import tempfile
import traceback
from collections.abc import Callable
from pathlib import Path
from typing import NoReturn

import click

from packetgen.cli.elsewhere import offered
from packetgen.cli.not_given import asked_for
from packetgen.cli.saying import say

CONTENT_WRONG, MACHINE_WRONG, STOPPED = 1, 2, 130


class OutputClosed(Exception):
    """Whoever read our lines has gone, as `head` does when it has enough."""


def stop(why: str) -> NoReturn:
    """End the command: the machine, or how it was called, is at fault."""
    say(f"packetgen: {why}", err=True)
    raise SystemExit(MACHINE_WRONG)


def ended(run: Callable[[], object], log_path: Callable[[], Path | None]) -> int:
    """Run a command; its exit code. Whatever it raises is told in a plain line.

    What a programmer needs of it goes to the log, or into a temporary file where there is none.
    """
    try:
        try:
            code = run()
            return code if isinstance(code, int) else 0
        except SystemExit as end:
            return end.code if isinstance(end.code, int) else 0
        except click.NoSuchOption as error:
            offered(error).show()
        except click.MissingParameter as error:
            asked_for(error).show()
        except click.ClickException as error:
            error.show()
        except (click.Abort, KeyboardInterrupt):
            say("Stopped.", err=True)
            return STOPPED
        except OutputClosed:
            _hush()
        except OSError as error:
            _write_down(error, log_path())
            place = f" ({error.filename})" if error.filename else ""
            say(f"packetgen: {error.strerror or error}{place}", err=True)
        except MemoryError:
            say("packetgen: this machine has not enough memory for that.", err=True)
        except Exception as error:
            say("This is a fault in packetgen, not in your files.", err=True)
            for note in getattr(error, "__notes__", ()):
                say(note, err=True)
            say(_where(error, log_path()), err=True)
    except OSError:  # nobody hears what is wrong
        _hush()
    return MACHINE_WRONG


def _where(error: Exception, log_path: Path | None) -> str:
    """The line that says where the error is written down."""
    if _write_down(error, log_path):
        return f"What happened is written down in {log_path}."
    try:
        with tempfile.NamedTemporaryFile(
            "w", encoding="utf-8", prefix="packetgen-fault-", suffix=".txt", delete=False
        ) as file:
            file.write("".join(traceback.format_exception(error)))
    except OSError:
        return f"It could not be written down: {type(error).__name__}: {error}"
    return f"What happened is written down in {file.name}."


def _write_down(error: Exception, log_path: Path | None) -> bool:
    """Whether the error went into the log."""
    if log_path is None:
        return False
    import logging

    logging.getLogger("packetgen").error("an unforeseen end", exc_info=error)
    return True


def _hush() -> None:
    """So that nothing more is tried, and said to have failed, when the program ends."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    for stream in (sys.stdout, sys.stderr):
        try:
            os.dup2(nowhere, stream.fileno())
        except (OSError, ValueError):  # no file, or closed already
            continue
