"""`packetgen chart`: looking at a chart. What edits one is in `cli.chart_edits`."""

import os
import shutil
import sys
from pathlib import Path

import click

from packetgen.cli.chart_edits import border, crop, mirror, shift, turn
from packetgen.cli.chart_picture import picture
from packetgen.cli.command_first import CommandFirst
from packetgen.cli.common import NAME, AnyBetween, Between, OneOf, content_option
from packetgen.cli.one_pattern import figures_of
from packetgen.cli.telling import TELLING_OPTIONS

# A difference up to which two threads are looked at twice: "close", from memory as in reckon.colour.
_LIMIT = 3.0


@click.group("chart", cls=CommandFirst, usual="show")
def chart_command() -> None:
    """Look at a chart, and mirror, turn, crop, shift or border it.

    \b
    Examples:
      packetgen chart show robin-on-the-spade
      packetgen chart count robin-on-the-spade
      packetgen chart turn robin-on-the-spade 90
      packetgen chart mirror robin-on-the-spade left-right --to robin-mirrored
    """


@chart_command.command("show")
@click.argument("name", type=NAME, metavar="NAME")
@content_option
@click.option("--large", is_flag=True, help="Two characters a stitch, with its mark.")
@click.option(
    "--colours",
    type=OneOf(("auto", "24-bit", "256", "none")),
    default="auto",
    show_default=True,
    help="What to paint with; by itself what the terminal says that it can.",
)
@click.option(
    "--width",
    type=Between(20, 4000),
    help="Characters in a line. [default: as wide as the terminal]",
)
def show(name: str, content_folder: Path, large: bool, colours: str, width: int | None) -> None:
    """Print a chart, in colour on a terminal.

    \b
    In colour each character shows two stitches, one above the other; where there are no
    colours (no terminal, or NO_COLOR is set), each stitch is its mark. A chart that is wider
    than the terminal is cut into strips of columns.

    \b
    Examples:
      packetgen chart show robin-on-the-spade
      packetgen chart show robin-on-the-spade --large
      packetgen chart show robin-on-the-spade --colours 24-bit --width 200 | less -R
    """
    from packetgen.render.terminal import Depth, depth_of
    from packetgen.render.terminal_chart import terminal_chart

    figures = figures_of(name, content_folder)
    on_terminal = sys.stdout.isatty()
    depth = depth_of(os.environ, on_terminal) if colours == "auto" else Depth(colours)
    if width is None and on_terminal:
        width = shutil.get_terminal_size().columns
    click.echo(terminal_chart(figures, depth, width, large), color=depth is not Depth.NONE)


@chart_command.command("count")
@click.argument("name", type=NAME, metavar="NAME")
@content_option
def count(name: str, content_folder: Path) -> None:
    """Count the stitches of every colour.

    \b
    Whole, half and fractional stitches, backstitch, knots and beads, as the packet
    counts them.

    \b
    Examples:
      packetgen chart count robin-on-the-spade
    """
    from packetgen.render.chart_tables import count_table

    click.echo(count_table(figures_of(name, content_folder)))


@chart_command.command("alone")
@click.argument("name", type=NAME, metavar="NAME")
@content_option
def alone(name: str, content_folder: Path) -> None:
    """Say where stitches stand alone.

    \b
    They have no other of their colour in their own cell or the eight around it, so each is
    begun and ended by itself.

    \b
    Examples:
      packetgen chart alone robin-on-the-spade
    """
    from packetgen.render.chart_tables import alone_list

    click.echo(alone_list(figures_of(name, content_folder)))


@chart_command.command("alike")
@click.argument("name", type=NAME, metavar="NAME")
@content_option
@click.option("--threads", "set_name", help="The thread set to look at. [default: the model's]")
@click.option(
    "--limit",
    type=AnyBetween(0, 100),
    default=_LIMIT,
    show_default=True,
    help="The largest difference (CIEDE2000) of two colours that are shown.",
)
def alike(name: str, content_folder: Path, set_name: str | None, limit: float) -> None:
    """Find colours that are nearly the same.

    \b
    Also what one instead of two would save. A difference of about 1 can just be seen side
    by side; up to 3 two colours are close.

    \b
    Examples:
      packetgen chart alike robin-on-the-spade
      packetgen chart alike robin-on-the-spade --limit 6 --threads tansywick
    """
    from packetgen.diagnostics import nearest
    from packetgen.reckon.alike import alike as pairs_of
    from packetgen.render.chart_tables import alike_list

    figures = figures_of(name, content_folder)
    sets = {one.id: one for one in figures.pattern.thread_sets}
    if set_name is not None and set_name not in sets:
        raise click.UsageError(
            f"{name} has no thread set {set_name!r}; {nearest(set_name, sorted(sets))}"
        )
    chosen = sets[set_name] if set_name else figures.pattern.thread_sets[0]
    click.echo(alike_list(pairs_of(figures, chosen, limit), chosen, limit))


for _edit in (border, crop, mirror, picture, shift, turn):
    chart_command.add_command(_edit)
for _command in chart_command.commands.values():
    _command.params += TELLING_OPTIONS
