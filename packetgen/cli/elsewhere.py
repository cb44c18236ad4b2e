"""What is asked of a command and stands elsewhere: an option of another command, a name behind an option where it
is given alone, a command of a group."""

import sys
from collections.abc import Iterator

import click

_OF_NAMES = ("--pattern", "--series", "--name")  # what people put before the name of a pattern
_CLEARLY = 0.1  # share of letters in common by which one name is nearer than another
_MOST = 3  # commands that are told


def offered(error: click.NoSuchOption) -> click.UsageError:
    """The fault, with where such an option stands or how a name is given; else the nearest options."""
    if not error.ctx:
        return error
    words = _in_place_of(error.option_name, error.ctx)
    return click.UsageError(words, error.ctx) if words else _nearest(error)


def path_of(ctx: click.Context) -> str:
    """'packetgen chart show'."""
    return "packetgen" if ctx.parent is None else f"{path_of(ctx.parent)} {ctx.info_name}"


def within_a_group(name: str, ctx: click.Context) -> str:
    """'packetgen chart show' for 'show'; '' where no group has such a command."""
    found = (path for path, _ in _commands(ctx) if path.endswith(f" {name}"))
    return next(found, "")


def _in_place_of(option: str, ctx: click.Context) -> str:
    params, called = ctx.command.params, path_of(ctx)
    long = [opt for one in params for opt in one.opts if opt[1:] in sys.argv]
    if len(option) == 2 and long:
        return f"{long[0]} has two hyphens"
    none = f"there is no option {option}"
    thing = option.lstrip("-").upper()
    is_name = option in _OF_NAMES and not any("--pattern" in one.opts for one in params)
    for one in params:
        word = (one.metavar or "").strip("[].")
        if isinstance(one, click.Argument) and (word == thing or (is_name and word == "NAME")):
            return f"{none}; give the {word.lower()} alone: {called} {word}"
    meant = [f"{one.opts[0]} {one.metavar}" for one in params if one.metavar == thing]
    if meant:
        return f"{none}; did you mean {' or '.join(meant)}?"
    if is_name and not isinstance(ctx.command, click.Group):
        return f"{none}; {called} takes no name, so leave it out"
    others = [path for path, one in _commands(ctx) if _has(one, option)]
    if not others:
        return ""
    more = ", …" if len(others) > _MOST else ""
    return f"{option} is no option of {called}; it is one of {', '.join(others[:_MOST])}{more}"


def _has(command: click.Command, option: str) -> bool:
    return any(option in (*one.opts, *one.secondary_opts) for one in command.params)


def _commands(ctx: click.Context) -> Iterator[tuple[str, click.Command]]:
    """Every command, also those within groups, with what is typed to call it."""
    root = ctx.find_root()
    yield from _below(root.command, root, "packetgen")


def _below(
    command: click.Command, ctx: click.Context, path: str
) -> Iterator[tuple[str, click.Command]]:
    if not isinstance(command, click.Group):
        return
    for name in command.list_commands(ctx):
        if one := command.get_command(ctx, name):
            yield f"{path} {name}", one
            yield from _below(one, ctx, f"{path} {name}")


def _nearest(error: click.NoSuchOption) -> click.NoSuchOption:
    """Of several options that are alike only the nearest, where it is clearly nearer than the next."""
    from difflib import SequenceMatcher

    near = error.possibilities or []
    like = [SequenceMatcher(None, error.option_name, one).ratio() for one in near]
    if len(like) > 1 and like[0] - like[1] >= _CLEARLY:
        del near[1:]
    return error
