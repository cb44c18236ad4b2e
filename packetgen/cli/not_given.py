"""What a command needs and was not given: which one it is about, and what there is to choose from."""

from pathlib import Path
from typing import Any

import click

from packetgen.cli.elsewhere import path_of

_WHAT = {  # by the word in the command's own help; and where in the content such things lie
    "NAME": ("which pattern", "series/*/*/pattern.yaml"),
    "FROM": ("from which thread card", "threads/*.yaml"),
    "TO": ("to which thread card", "threads/*.yaml"),
    "FILE": ("which file", ""),
}


def asked_for(error: click.MissingParameter) -> click.UsageError:
    """The fault in words that say what to write; as it is for what is none of the words of a command."""
    ctx, param = error.ctx, error.param
    if ctx is None or not isinstance(param, click.Argument):
        return error
    words = [_word(one) for one in ctx.command.params if isinstance(one, click.Argument)]
    command = " ".join((path_of(ctx), *words))
    if isinstance(param.type, click.Choice):
        return click.UsageError(f"say {' or '.join(param.type.choices)}: {command}", ctx)
    if _word(param) not in _WHAT:
        return error
    what, lying = _WHAT[_word(param)]
    return click.UsageError(f"say {what}: {command}{_to_choose_from(lying, ctx.params)}", ctx)


def _word(argument: click.Argument) -> str:
    if isinstance(argument.type, click.Choice):
        return "|".join(argument.type.choices)
    return argument.metavar or (argument.name or "").upper()


def _to_choose_from(lying: str, given: dict[str, Any]) -> str:
    from packetgen.diagnostics import nearest

    folder = given.get("content_folder") or Path("content")
    found = {one.parent.name if "*/" in lying else one.stem for one in folder.glob(lying or "none")}
    others = found - {one for one in given.values() if isinstance(one, str)}
    if found and not others:
        return f"; there is no other yet: write one into {(folder / lying).parent.as_posix()}/"
    return f"; {nearest('', sorted(others))}" if others else ""
