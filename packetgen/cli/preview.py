"""`packetgen preview`"""

import signal
import threading
import webbrowser
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import UTC, date, datetime
from pathlib import Path
from typing import Any

import click

from packetgen.cli.common import (
    TODAY,
    Between,
    Day,
    content_option,
    templates_of,
    templates_option,
)
from packetgen.cli.ending import stop
from packetgen.cli.saying import say

# Taken where it is free, so that a page that is still open finds the next preview again.
_PREFERRED_PORT = 8631


class _DayOrToday(Day):
    """'today' moves on while the preview runs: given as 'today'."""

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> Any:
        return TODAY if value == TODAY else super().convert(value, param, ctx)


@click.command("preview", context_settings={"allow_extra_args": True})
@content_option
@templates_option
@click.option(
    "--port",
    type=Between(1, 65535),
    help=f"[default: {_PREFERRED_PORT} where that is free, or else any free one]",
)
@click.option(
    "--as-of",
    "as_of",
    type=_DayOrToday(),
    help="Show what visitors will see on this day, or 'today'. "
    "[default: everything, also what is not out yet]",
)
@click.option("--open", "open_browser", is_flag=True, help="Also open the page in your browser.")
@click.pass_context
def preview_command(
    ctx: click.Context,
    content_folder: Path,
    own_templates: Path | None,
    port: int | None,
    as_of: date | str | None,
    open_browser: bool,
) -> None:
    """Look at the site while you work on it.

    \b
    The pages can be seen on this computer alone. Each file that you save is read again
    and the page in your browser follows. What is wrong is listed here and on the page,
    which stays as it last was when all was well. Nothing is written; packets are not
    made. Ctrl-C ends it.

    \b
    Examples:
      packetgen preview
      packetgen preview --open
      packetgen preview --as-of 2027-01-15
      packetgen preview --as-of today
    """
    if ctx.args:
        raise click.UsageError(
            f"preview shows every pattern and takes no name; leave {ctx.args[0]!r} out"
        )
    from packetgen.preview.run import follow, start

    try:
        server = start(port, _PREFERRED_PORT)
    except OSError as error:
        stop(f"cannot serve pages at port {port}: {error.strerror or error}; try another --port")
    with _until_interrupted() as ended, closing(server):
        say(f"Look at {server.address} (Ctrl-C ends it).")
        if open_browser:
            webbrowser.open(server.address)
        follow(
            server,
            content_folder,
            lambda: templates_of(content_folder, own_templates),
            lambda: datetime.now(UTC) if isinstance(as_of, str) else as_of,
            say,
            ended,
        )
    say("\nThe preview has ended.")


@contextmanager
def _until_interrupted() -> Iterator[threading.Event]:
    """Set by the first Ctrl-C, so that the work in hand ends in order; a second one stops it at once."""
    ended = threading.Event()

    def end(*_: object) -> None:
        if ended.is_set():
            raise KeyboardInterrupt
        ended.set()

    before = signal.signal(signal.SIGINT, end)
    try:
        yield ended
    finally:
        signal.signal(signal.SIGINT, before)
