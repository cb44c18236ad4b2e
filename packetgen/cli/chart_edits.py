"""`packetgen chart mirror`, `turn`, `crop`, `shift` and `border`: a chart edited in its author's files."""

from collections.abc import Callable
from typing import TYPE_CHECKING, Any

import click

from packetgen.cli.chart_editing import edited
from packetgen.cli.common import NAME, Between, OneOf, content_option
from packetgen.offered import shift_words

if TYPE_CHECKING:
    from packetgen.chart_edit.change import Change
    from packetgen.model import Pattern

_SIDES = ("left", "right", "top", "bottom")


def _copy_options(command: Callable[..., None]) -> Callable[..., None]:
    for option in (
        click.option(
            "--title", help="The title of that new pattern. [default: made of the old one's]"
        ),
        click.option(
            "--to",
            "new_name",
            metavar="NEW",
            help="Leave the pattern as it is, and write the changed one to a folder of this name.",
        ),
        content_option,
    ):
        command = option(command)
    return command


def _sides(what: str) -> Callable[[Callable[..., None]], Callable[..., None]]:
    def add(command: Callable[..., None]) -> Callable[..., None]:
        for side in reversed(_SIDES):
            where = f"at the {side}"
            kind = Between(0, 1000)
            command = click.option(f"--{side}", type=kind, help=f"{what} {where}.")(command)
        return command

    return add


_lose_option = click.option(
    "--lose", is_flag=True, help="Do it even where stitches fall off the chart."
)


@click.command("mirror")
@click.argument("name", type=NAME, metavar="NAME")
@click.argument("way", type=OneOf(("left-right", "top-bottom")))
@_copy_options
def mirror(name: str, way: str, **options: Any) -> None:
    """Mirror a chart and everything on it.

    \b
    Half stitches lean the other way in a mirror: key lines that say `half` will say
    `half back`. Letters in the design will read backwards.

    \b
    Examples:
      packetgen chart mirror robin-on-the-spade left-right
      packetgen chart mirror robin-on-the-spade left-right --to robin-looking-right
    """
    from packetgen.chart_edit.change import mirrored

    edited(
        name,
        "mirrored",
        lambda one: mirrored(one.grid, way == "left-right"),
        lambda change: f"mirror {name} {way}",
        options,
    )


@click.command("turn")
@click.argument("name", type=NAME, metavar="NAME")
@click.argument("degrees", type=OneOf(("90", "180", "270")))
@_copy_options
def turn(name: str, degrees: str, **options: Any) -> None:
    """Turn a chart and everything on it, clockwise.

    \b
    Half stitches lean the other way after 90 or 270 degrees: key lines that say `half`
    will say `half back`.

    \b
    Examples:
      packetgen chart turn robin-on-the-spade 90
    """
    from packetgen.chart_edit.change import turned

    edited(
        name,
        "turned",
        lambda one: turned(one.grid, int(degrees)),
        lambda change: f"turn {name} {360 - int(degrees)}",
        options,
    )


@click.command("crop")
@click.argument("name", type=NAME, metavar="NAME")
@_sides("Columns or rows to take off")
@_lose_option
@_copy_options
def crop(name: str, lose: bool, **options: Any) -> None:
    """Take columns and rows off a chart.

    \b
    Without a number, all that are bare are taken off all round. Nothing is done where
    stitches would fall off, unless you say --lose. Of a line of backstitch the stretches
    stay that lie on the chart with both ends.

    \b
    Examples:
      packetgen chart crop robin-on-the-spade
      packetgen chart crop robin-on-the-spade --left 3 --bottom 2
    """
    from packetgen.chart_edit.change import bordered
    from packetgen.model.extent import bare_margins

    given = [options.pop(side) for side in _SIDES]

    def change(pattern: "Pattern") -> "Change":
        left, right, top, bottom = bare_margins(pattern)
        if any(number is not None for number in given):
            left, right, top, bottom = (number or 0 for number in given)
        return bordered(pattern.grid, -left, -right, -top, -bottom)

    def undo(change: "Change") -> str:
        right = change.old_width - change.width - change.left
        bottom = change.old_height - change.height - change.top
        return f"border {name}" + _amounts(change.left, right, change.top, bottom)

    edited(name, "cropped", change, undo, options, lose)


@click.command("shift")
@click.argument("name", type=NAME, metavar="NAME")
@click.option("--right", type=int, default=0, help="Columns to the right.")
@click.option("--left", type=int, default=0, help="Columns to the left.")
@click.option("--down", type=int, default=0, help="Rows down.")
@click.option("--up", type=int, default=0, help="Rows up.")
@_lose_option
@_copy_options
def shift(name: str, right: int, left: int, down: int, up: int, lose: bool, **options: Any) -> None:
    """Move everything on a chart.

    \b
    The chart keeps its size, and bare cloth comes in behind. Nothing is done where
    stitches would fall off, unless you say --lose.

    \b
    Examples:
      packetgen chart shift robin-on-the-spade --right 3
      packetgen chart shift robin-on-the-spade --up 2
    """
    from packetgen.chart_edit.change import shifted

    right, down = right - left, down - up
    edited(
        name,
        "shifted",
        lambda one: shifted(one.grid, right, down),
        lambda change: f"shift {name} {shift_words(-right, -down)}",
        options,
        lose,
    )


@click.command("border")
@click.argument("name", type=NAME, metavar="NAME")
@click.argument("all_round", metavar="[NUMBER]", type=Between(1, 1000), required=False)
@_sides("Columns or rows to add")
@click.option("--mark", metavar="MARK", help="Work them in this mark of the key. [default: bare]")
@_copy_options
def border(name: str, all_round: int | None, mark: str | None, **options: Any) -> None:
    """Add columns and rows around a chart.

    \b
    So many all round, or at single sides; bare, or worked in a mark of the key.

    \b
    Examples:
      packetgen chart border robin-on-the-spade 4
      packetgen chart border robin-on-the-spade --top 2 --bottom 2
      packetgen chart border robin-on-the-spade 1 --mark n
    """
    from packetgen.chart_edit.change import bordered
    from packetgen.diagnostics import nearest
    from packetgen.model import BARE

    given = [options.pop(side) for side in _SIDES]
    left, right, top, bottom = (all_round or 0 if number is None else number for number in given)
    if not left + right + top + bottom:
        raise click.UsageError(
            "say how many columns and rows to add, for example: "
            f"packetgen chart border {name} 4, or --top 2"
        )

    def change(pattern: "Pattern") -> "Change":
        marks = sorted(line.mark for line in pattern.key if not line.stitch.in_a_corner)
        if mark is not None and mark not in marks:
            raise click.UsageError(
                f"{mark!r} is no mark of the key that a whole cell can be worked in; "
                f"{nearest(mark, marks)}"
            )
        return bordered(pattern.grid, left, right, top, bottom, mark or BARE)

    undo = f"crop {name}" + _amounts(left, right, top, bottom) + (" --lose" if mark else "")
    edited(name, "bordered", change, lambda change: undo, options)


def _amounts(*numbers: int) -> str:
    return "".join(f" --{side} {number}" for side, number in zip(_SIDES, numbers) if number)
