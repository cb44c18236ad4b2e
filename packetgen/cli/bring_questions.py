"""What `packetgen bring` asks on a terminal, where the file leaves open what only its author knows."""

import sys
from dataclasses import replace
from typing import TYPE_CHECKING

import click

from packetgen.nouns import listed

if TYPE_CHECKING:
    from packetgen.bring.reading import Reading, Source
    from packetgen.diagnostics import Problems


def answered(how: "Reading", source: "Source | None", problems: "Problems") -> "Reading":
    """How the file is to be read after the answers; the same where nobody can be asked or nothing is open."""
    if not _on_terminal():
        return how
    headings = [one.wrong for one in problems.errors if one.code == "bring-headings"]
    if headings:
        where = listed(tuple(wrong.partition(", and each")[0] for wrong in headings))
        return replace(
            how, headings=click.confirm(f"{where[:1].upper()}{where[1:]}. Leave out", default=True)
        )
    if source is None or source.ground is None:
        return how
    bare = click.confirm(
        f"{source.ground.in_words()}. Is that bare cloth, and not stitched", default=None
    )
    return replace(how, bare=(source.ground.hex,) if bare else ())


def _on_terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty()
