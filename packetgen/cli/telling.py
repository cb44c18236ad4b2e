"""What a command says beside its own words: each stage as it ends (--verbose), everything in a file (--log)."""

import sys
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from packetgen.cli.ending import stop

if TYPE_CHECKING:
    import logging

_LINE = "%(asctime)s.%(msecs)03d %(levelname)s %(name)s[%(process)d]: %(message)s"
_LOGGED = ("packetgen", "weasyprint")


class Telling:
    """One run of a command. Handlers of the log stay until it ends."""

    def __init__(self) -> None:
        self.words: tuple[str, ...] = ()
        self.log_path: Path | None = None
        self._handlers: list[tuple[str, logging.Handler]] = []
        self._explains = False

    def __enter__(self) -> "Telling":
        return self

    def __exit__(self, *_: object) -> None:
        import logging

        for name, handler in self._handlers:
            logging.getLogger(name).removeHandler(handler)
            logging.getLogger(name).setLevel(logging.NOTSET)
            handler.close()

    def explain(self) -> None:
        """Say on the screen what each stage has done, and in how many seconds."""
        import logging

        class Screen(logging.Handler):
            def emit(self, record: logging.LogRecord) -> None:
                click.echo(f"  {record.getMessage()}", err=True)

        if not self._explains:
            self._explains = True
            self._listen(Screen(), "packetgen.stages", logging.INFO)

    def log_to(self, path: Path) -> None:
        """Write everything to the file, in place of what it held. Raises OSError."""
        import logging

        from packetgen import __version__

        class LogFile(logging.FileHandler):
            def handleError(self, record: logging.LogRecord) -> None:
                """The work is worth more than its log."""
                error = sys.exc_info()[1]
                why = error.strerror if isinstance(error, OSError) else error
                self.emit = lambda record: None  # type: ignore[method-assign]
                click.echo(f"packetgen: {path}: the log ends here: {why}", err=True)

            def close(self) -> None:
                with suppress(OSError):  # told already
                    super().close()

        if self.log_path is not None:
            return
        with path.open("w", encoding="utf-8") as begun:  # what cannot be written is told now
            begun.write(f"packetgen {__version__}: {' '.join(self.words)}\n")
        self.log_path = path
        handler = LogFile(path, encoding="utf-8")
        handler.setFormatter(logging.Formatter(_LINE, "%Y-%m-%d %H:%M:%S"))
        for name in _LOGGED:
            self._listen(handler, name, logging.DEBUG)

    def _listen(self, handler: "logging.Handler", name: str, level: int) -> None:
        import logging

        logging.getLogger(name).addHandler(handler)
        logging.getLogger(name).setLevel(level)
        self._handlers.append((name, handler))


def _explain(ctx: click.Context, param: click.Parameter, value: bool) -> None:
    telling = ctx.find_object(Telling)
    if value and telling:
        telling.explain()


def _log(ctx: click.Context, param: click.Parameter, value: Path | None) -> None:
    telling = ctx.find_object(Telling)
    if value is None or not telling:
        return
    try:
        telling.log_to(value)
    except OSError as error:
        stop(f"cannot write the log {value}: {error.strerror or error}")


_SHARED: dict[str, Any] = {"expose_value": False, "is_eager": True}
TELLING_OPTIONS = [
    click.Option(
        ["-v", "--verbose"],
        is_flag=True,
        callback=_explain,
        help="Explain each stage as it ends.",
        **_SHARED,
    ),
    click.Option(
        ["--log"],
        type=click.Path(dir_okay=False, path_type=Path),
        metavar="FILE",
        callback=_log,
        help="Write everything that happens to this file, in place of what it holds.",
        **_SHARED,
    ),
]
