"""A group of commands that says where an option goes which stands before the name of the command."""

from itertools import dropwhile, takewhile

import click


class CommandFirst(click.Group):
    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        words, names = tuple(args), self.list_commands(ctx)
        try:
            return super().parse_args(ctx, args)
        except click.NoSuchOption as fault:
            called = dropwhile(lambda word: word not in names, words)
            command = [*takewhile(lambda word: not word.startswith("-"), called)]
            if not command:
                raise
            behind = " ".join(["packetgen", *_above(ctx), *command, fault.option_name, "…"])
            raise click.UsageError(
                f"{fault.option_name} stands before the name of the command; write it behind: {behind}",
                ctx,
            ) from fault


def _above(ctx: click.Context) -> list[str]:
    """The names of the commands that this one is within, and its own: ['chart']."""
    return [] if ctx.parent is None else [*_above(ctx.parent), str(ctx.info_name)]
