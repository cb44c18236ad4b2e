"""The commands as a group: each one is loaded when it is called for, explains itself when asked, and ends
with a code that a script can rely on."""

import atexit
import gc
import sys
from collections.abc import Sequence
from importlib import import_module
from typing import Any, NoReturn

import click

from packetgen.cli.command_first import CommandFirst
from packetgen.cli.elsewhere import within_a_group
from packetgen.cli.ending import OutputClosed, ended
from packetgen.cli.telling import TELLING_OPTIONS, Telling

# Nothing is looked through once more for what is to be thrown away anyhow.
atexit.register(gc.freeze)


class Commands(CommandFirst):
    """`names` of the commands: NAME is NAME_command in packetgen.cli.NAME."""

    def __init__(self, names: tuple[str, ...], **facts: Any) -> None:
        super().__init__(**facts)
        self._names = names
        self.params += TELLING_OPTIONS

    def list_commands(self, ctx: click.Context) -> list[str]:
        return list(self._names)

    def get_command(self, ctx: click.Context, name: str) -> click.Command | None:
        if name not in self._names:
            return None
        module = import_module(f"packetgen.cli.{name}")
        command: click.Command = getattr(module, f"{name}_command")
        # People write such options before the command or after it.
        command.params += [one for one in TELLING_OPTIONS if one not in command.params]
        return command

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        if args[0] not in self._names and not args[0].startswith("-"):
            from packetgen.diagnostics import nearest

            path = within_a_group(args[0], ctx)
            hint = f"write {path}" if path else nearest(args[0], self._names)
            raise click.UsageError(f"there is no command {args[0]!r}; {hint}", ctx)
        return super().resolve_command(ctx, args)

    def make_context(self, *args: Any, **extra: Any) -> click.Context:
        try:
            return super().make_context(*args, **extra)
        except BrokenPipeError as error:
            raise OutputClosed from error

    def invoke(self, ctx: click.Context) -> object:
        try:
            return super().invoke(ctx)
        except BrokenPipeError as error:
            raise OutputClosed from error

    def main(
        self,
        args: Sequence[str] | None = None,
        prog_name: str | None = None,
        *_: Any,
        **extra: Any,
    ) -> NoReturn:
        """Run a command and exit."""
        with Telling() as telling:
            telling.words = tuple(sys.argv[1:] if args is None else args)
            extra |= {"standalone_mode": False, "obj": telling}
            code = ended(
                lambda: super(Commands, self).main(args, prog_name, **extra),
                lambda: telling.log_path,
            )
        # Where Ctrl-C came within a text that Python evaluates, as `dataclass` makes them, Python ends
        # itself by the signal although it was caught; with the next text that ends well it forgets that.
        eval("None")
        sys.exit(code)
