"""A group of commands that says where an option goes which stands before the name of the command, and asks for
that name where another one stands."""

from itertools import dropwhile, takewhile
from typing import Any

import click

from packetgen.cli.elsewhere import path_of


class CommandFirst(click.Group):
    """`usual` is the command that is told where the name of a pattern stands in a command's place."""

    def __init__(self, *args: Any, usual: str = "", **facts: Any) -> None:
        super().__init__(*args, **facts)
        self._usual = usual

    def resolve_command(
        self, ctx: click.Context, args: list[str]
    ) -> tuple[str | None, click.Command | None, list[str]]:
        try:
            return super().resolve_command(ctx, args)
        except click.exceptions.NoSuchCommand as fault:
            if fault.possibilities or not self._usual:
                raise
            path, name = path_of(ctx), fault.command_name
            raise click.UsageError(
                f"there is no command {path} {name}; to see that pattern write {path} {self._usual} {name}",
                ctx,
            ) from fault

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        words, names = tuple(args), self.list_commands(ctx)
        try:
            return super().parse_args(ctx, args)
        except click.NoSuchOption as fault:
            called = dropwhile(lambda word: word not in names, words)
            command = [*takewhile(lambda word: not word.startswith("-"), called)]
            if not command:
                raise
            behind = " ".join([path_of(ctx), *command, fault.option_name, "…"])
            raise click.UsageError(
                f"{fault.option_name} stands before the name of the command; write it behind: {behind}",
                ctx,
            ) from fault
