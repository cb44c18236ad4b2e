"""`packetgen proof`"""

from pathlib import Path

import click

from packetgen.cli.common import checked_content, content_option
from packetgen.nouns import counted


@click.command("proof")
@content_option
@click.option(
    "--alone", is_flag=True, help="Also list where in each pattern most stitches stand alone."
)
def proof_command(content_folder: Path, alone: bool) -> None:
    """Check everything and write nothing.

    \b
    Every problem is one line: file:line:column: what is wrong; what would be right.
    All of them are shown in one go. Of sound patterns it says how many stitches have no
    neighbour of their colour, since each of those is begun and ended by itself.

    \b
    Examples:
      packetgen proof
      packetgen proof --content my-patterns
      packetgen proof --alone
    """
    from packetgen.render.proof_report import lines_of

    checked = checked_content(content_folder)
    for figures in (figures for each in checked.reckoned for figures in each.figures):
        for line in lines_of(figures, alone):
            click.echo(line)
    patterns = sum(len(each.figures) for each in checked.reckoned)
    click.echo(f"All is well: {counted(patterns, 'pattern')} checked, nothing to mend.")
