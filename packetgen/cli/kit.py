"""`packetgen kit`"""

from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.common import NAME, OneOf, checked_content, content_option, wanted_ids

if TYPE_CHECKING:
    from packetgen.reckon.kit import Kit


@click.command("kit")
@click.argument("names", nargs=-1, type=NAME, metavar="[NAME]...")
@content_option
@click.option("--threads", "set_name", help="The thread set to buy for. [default: the model's]")
@click.option("--cloth", "cloth_name", help="The cloth to stitch on. [default: each model's own]")
@click.option(
    "--format",
    "form",
    type=OneOf(("table", "csv", "json")),
    default="table",
    show_default=True,
    help="A table to read, or the same for a spreadsheet or a program.",
)
@click.option(
    "--from",
    "piece",
    metavar="SIZE",
    help="Also how many pieces your own piece of cloth gives, for example '50 x 70 cm'.",
)
@click.option(
    "--finishing",
    is_flag=True,
    help="Also what the finishing piece and the mounting take: wood, paint, card, trim, magnets.",
)
def kit_command(
    names: tuple[str, ...],
    content_folder: Path,
    set_name: str | None,
    cloth_name: str | None,
    form: str,
    piece: str | None,
    finishing: bool,
) -> None:
    """What to buy: thread, beads and cloth, as a table.

    \b
    With the name of one pattern: its list. With several, with the name of a series, or
    without a name: one list for all of them, in which what is left of a skein or a piece
    of cloth in one design serves the next. Where cards say their price, it is summed.

    \b
    Examples:
      packetgen kit robin-on-the-spade
      packetgen kit robin-on-the-spade --threads tansywick --cloth pipit-aida-14
      packetgen kit robin-on-the-spade --from "50 x 70 cm"
      packetgen kit --format csv > to-buy.csv
      packetgen kit potting-bench-almanac --finishing
    """
    from packetgen.reckon.series_list import finishing_rows, series_list
    from packetgen.render.kit import FORMATS, KitError, kit_of

    checked = checked_content(content_folder)
    wanted = wanted_ids(names, checked)
    chosen = tuple(
        figure
        for each in checked.reckoned
        for figure in each.figures
        if wanted is None or figure.pattern.id in wanted
    )
    try:
        kit = kit_of(chosen, set_name, cloth_name)
    except KitError as error:
        raise click.UsageError(str(error)) from error
    rows = tuple(
        row
        for each in checked.reckoned
        if finishing and (of := [one for one in kit.designs if one.figures in each.figures])
        for row in finishing_rows(series_list(of, each.series.finish))
    )
    listed = FORMATS[form](kit, rows)
    if piece is not None:
        listed += _from_own_piece(piece, kit, form)
    if form == "table":
        click.echo(listed)
    else:  # to the byte, with the line ends of its own format
        click.echo(listed.encode(), nl=False)


def _from_own_piece(piece: str, kit: "Kit", form: str) -> str:
    from packetgen.render.kit_table import from_piece
    from packetgen.units import split_area

    size = split_area(piece)
    if size is None:
        raise click.UsageError(
            f"{piece!r} is no size of cloth; write for example --from '50 x 70 cm' or '18 x 22 in'"
        )
    if form != "table":
        raise click.UsageError("--from belongs to the table; leave out --format")
    return "\n\n" + from_piece(kit, *size)
