"""`packetgen guide`"""

from pathlib import Path

import click

from packetgen.cli.saying import say
from packetgen.nouns import counted


@click.command("guide")
@click.option(
    "--into",
    "folder",
    type=click.Path(file_okay=False, path_type=Path),
    default=Path("build/guide"),
    show_default=True,
    help="The folder for the pages.",
)
def guide_command(folder: Path) -> None:
    """Write the guide as pages to read in a browser.

    \b
    A tutorial and how-to pages; every field of every file, every message with its cause
    and cure, and how each figure is reckoned. Beside the pages lie JSON Schemas, with which
    an editor completes and checks a file while you type.

    \b
    Examples:
      packetgen guide
      packetgen guide --into ~/packetgen-guide
    """
    from packetgen.program import guide_sources
    from packetgen.render.guide import guide_files
    from packetgen.render.templates import environment
    from packetgen.write import replaced

    files = guide_files(guide_sources(), environment())
    for path, data in files.items():
        target = folder / path
        target.parent.mkdir(parents=True, exist_ok=True)
        replaced(target, data)
    say(f"{counted(len(files), 'file')} in {folder}; begin with {folder / 'index.html'}.")
