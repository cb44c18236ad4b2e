"""`packetgen chart picture`"""

from pathlib import Path

import click

from packetgen.cli.common import NAME, Between, content_option
from packetgen.cli.one_pattern import figures_of
from packetgen.cli.saying import say


@click.command("picture")
@click.argument("name", type=NAME, metavar="NAME")
@content_option
@click.option(
    "--into",
    type=click.Path(dir_okay=False, path_type=Path),
    help="The file to write. [default: NAME.png]",
)
@click.option(
    "--px",
    type=Between(1, 64),
    default=1,
    show_default=True,
    help="Pixels that a stitch is wide.",
)
def picture(name: str, content_folder: Path, into: Path | None, px: int) -> None:
    """Write the chart as a PNG, to draw on in another program.

    \b
    Bare cloth is clear. Every mark has an entry of its own in the picture's palette, so
    that packetgen bring reads the very same chart from it, also where two marks have one
    colour. A program that saves it in full colour keeps the colours only.

    \b
    Examples:
      packetgen chart picture robin-on-the-spade
      packetgen chart picture robin-on-the-spade --px 8 --into robin.png
      packetgen bring robin.png --pattern robin-on-the-spade --replace
    """
    from packetgen.bring.chart_text import remarks_of
    from packetgen.bring.drawn import chart_png, mark_notes
    from packetgen.write import replaced

    pattern = figures_of(name, content_folder).pattern
    if max(pattern.grid.width, pattern.grid.height) * px > 8000:
        raise click.UsageError(
            f"--px {px}: the picture would be more than 8000 pixels wide or high"
        )
    source = content_folder / pattern.grid.place.path
    remarks = remarks_of(source.read_text("utf-8-sig")) if source.suffix == ".txt" else ""
    into = into or Path(f"{name}.png")
    replaced(into, chart_png(pattern.grid.rows, mark_notes(pattern), px, remarks))
    say(f"{pattern.grid.width} × {pattern.grid.height} stitches in {into}.")
