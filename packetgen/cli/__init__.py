"""The command line: words for people, exit codes for scripts (0 well, 1 content, 2 usage or machine)."""

import click

from packetgen import __version__
from packetgen.cli.build import build_command
from packetgen.cli.kit import kit_command
from packetgen.cli.match import match_command
from packetgen.cli.preview import preview_command
from packetgen.cli.proof import proof_command
from packetgen.cli.settle import settle_command

__all__ = ["main"]

_FIRST_PAGE = """Pattern packets and preview pages for people who publish cross stitch.

\b
You write a folder of plain text for each pattern; this tool checks it, works
out sizes and thread, draws the chart, and makes a web page and printable
packets of it.

\b
Four things to type first:
  packetgen proof      check every file; nothing is written
  packetgen preview    look at the site while you work on it
  packetgen build      make the site and the packets in build/
  packetgen kit        what to buy, as a table

Add --help to any of them for its own page with examples.
"""


@click.group(
    help=_FIRST_PAGE,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 90},
)
@click.version_option(__version__, prog_name="packetgen")
def main() -> None:
    pass


for _command in (
    build_command,
    kit_command,
    match_command,
    preview_command,
    proof_command,
    settle_command,
):
    main.add_command(_command)
