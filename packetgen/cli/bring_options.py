"""What options of `packetgen bring` take, and what a shell keeps from them."""

import re
import shlex
from itertools import takewhile
from pathlib import PurePath

import click

from packetgen.cli.common import AnyBetween, OfAny

_TAKE_COLOURS = {"--bare": "#ffffff", "--code": "#ffffff=."}  # and an example of each


class ScreenColour(OfAny):
    """'#6b503a', also without its sign."""

    name = "COLOUR"

    def convert(self, value: object, param: object, ctx: object) -> str:
        digits = str(value).lstrip("#").lower()
        if not re.fullmatch(r"[0-9a-f]{6}", digits):
            from packetgen.bring.picture import named_colour

            if named := named_colour(str(value)):
                self.fail(f'{value!r} is not how a colour is written here; write "{named}"')
            self.fail(f"{value!r} is no colour; write for example '#f6f3ea'")
        return f"#{digits}"


class CellPx(OfAny):
    """Pixels of a stitch: 1, or 2 and more; between them a stitch could not be told from its neighbour."""

    name = "NUMBER"

    def convert(self, value: object, param: object, ctx: object) -> float:
        cell: float = AnyBetween(1, 1000)(str(value))
        if 1 < cell < 2:
            self.fail(f"{cell:g} is too small; 1 is one pixel a stitch, else give 2 or more")
        return cell


class BringWords(click.Command):
    """Knows what a shell makes of the words: it takes one that begins with '#' for a remark, and hands over
    neither it nor what follows; and it parts a code from its thread where spaces stand between."""

    def parse_args(self, ctx: click.Context, args: list[str]) -> list[str]:
        last = args[-1] if args else ""
        if last in _TAKE_COLOURS:
            example = _TAKE_COLOURS[last]
            bare = ", or without #" if last == "--bare" else ""
            raise click.UsageError(
                f"{last}: nothing came after it; a word that begins with # stands in quotes, "
                f'{last} "{example}"{bare}, since your shell leaves it out else, with all that follows',
                ctx,
            )
        if parted := _parted_code(args):
            raise click.UsageError(
                f"write --code {shlex.quote('='.join(parted))}, without spaces", ctx
            )
        ctx.allow_extra_args = True
        super().parse_args(ctx, args)
        if ctx.args and not ctx.resilient_parsing:
            raise click.UsageError(_alone(ctx.args[0]), ctx)
        return ctx.args


def _alone(word: str) -> str:
    """What is said of a word that follows the file without an option."""
    name = shlex.quote(word)
    return (
        f"only one file can be brought at a time, and {word!r} stands behind it without an option; the pattern it "
        f"becomes is --pattern {name}, the thread card --threads {name}"
    )


def _parted_code(words: list[str]) -> tuple[str, str] | None:
    """A code and its thread between which spaces stand, as in 'RD = 07', 'RD =07' and 'RD= 07'; None where there
    is none."""
    for at, word in enumerate(words):
        behind = takewhile(lambda one: not one.startswith("-"), words[at + 1 :])
        code, sign, thread, *_ = (*behind, "", "", "")
        if word != "--code":
            continue
        if sign.startswith("=") and "=" not in code:
            return code, sign[1:] or ("" if PurePath(thread).suffix else thread) or "THREAD"
        if code.endswith("=") and sign and not PurePath(sign).suffix:  # which only a file has
            return code[:-1], sign
    return None
