"""`packetgen settle`"""

from pathlib import Path

import click

from packetgen.cli.common import NAME, checked_content, content_option, wanted_ids
from packetgen.cli.ending import stop
from packetgen.cli.saying import say
from packetgen.nouns import counted


@click.command("settle")
@click.argument("names", nargs=-1, type=NAME, metavar="[NAME]...")
@content_option
def settle_command(names: tuple[str, ...], content_folder: Path) -> None:
    """Keep the chart symbols as they are.

    \b
    Writes symbols.yaml in the folder of each pattern. From then on an edited colour
    keeps its symbol and moves no other, so that a corrected chart still looks like the
    one that people are stitching from. A new line of the key gets a symbol that is
    free; settle again to keep that one too.

    \b
    Examples:
      packetgen settle robin-on-the-spade
      packetgen settle
    """
    from packetgen.pipeline import SYMBOLS_FILE, settle

    checked = checked_content(content_folder)
    try:
        changed = settle(checked, content_folder, wanted_ids(names, checked))
    except OSError as error:
        stop(f"cannot write {SYMBOLS_FILE}: {error.strerror or error} ({error.filename})")
    for path in changed:
        say(f"Written: {path.as_posix()}")
    say(f"{counted(len(changed), 'file')} of kept symbols written.")
