"""The command line: words for people, exit codes for scripts.

0 all is well, 1 something in the content or a template is wrong, 2 wrong usage or the machine, 130 stopped.
"""

import click

from packetgen import __version__
from packetgen.cli.group import Commands

__all__ = ["main"]

_FIRST_PAGE = """Pattern packets and preview pages for people who publish cross stitch.

\b
You write a folder of plain text for each pattern; this tool checks it, works
out sizes and thread, draws the chart, and makes a web page and printable
packets of it.

\b
Six things to type first:
  packetgen begin      start a series or a pattern of your own
  packetgen bring      make a picture or a table its chart
  packetgen proof      check every file; nothing is written
  packetgen preview    look at the site while you work on it
  packetgen build      make the site and the packets in build/
  packetgen kit        what to buy, as a table

Add --help to any of them for its own page with examples.
"""

main = Commands(
    name="packetgen",
    help=_FIRST_PAGE,
    names=(
        "begin",
        "bring",
        "build",
        "chart",
        "guide",
        "kit",
        "match",
        "preview",
        "proof",
        "settle",
    ),
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 90},
)
main = click.version_option(__version__, prog_name="packetgen")(main)
