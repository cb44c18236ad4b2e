"""What `packetgen bring` asks on a terminal, where the file leaves open what only its author knows."""

import sys
from collections.abc import Iterator
from dataclasses import replace
from typing import TYPE_CHECKING

import click

from packetgen.cli.yes_or_no import yes_or_no
from packetgen.nouns import listed

if TYPE_CHECKING:
    from packetgen.bring.codes import Codes
    from packetgen.bring.reading import Reading, Source
    from packetgen.bring.written import Unexplained
    from packetgen.diagnostics import Problems
    from packetgen.model import Colour


def answered(
    how: "Reading",
    source: "Source | Unexplained | None",
    problems: "Problems",
    codes: "Codes",
    threads: str,
) -> "Reading":
    """How the file is to be read after the answers; the same where nobody can be asked or nothing is open."""
    from packetgen.bring.written import Unexplained

    if not _on_terminal():
        return how
    asked = ("bring-headings", "bring-legend")
    headings = [one.wrong for one in problems.errors if one.code in asked]
    if headings:
        where = listed(tuple(wrong.partition(", and each")[0] for wrong in headings))
        return replace(
            how, headings=yes_or_no(f"{where[:1].upper()}{where[1:]}. Leave out", usually=True)
        )
    of_codes = {one.code for one in problems.errors} <= {"bring-code-unknown", "bring-noughts"}
    if isinstance(source, Unexplained) and source.stitches and of_codes:
        return replace(how, codes=(*how.codes, *_explained(source, codes, threads)))
    if source is None or isinstance(source, Unexplained) or source.ground is None:
        return how
    bare = yes_or_no(f"{source.ground.in_words()}. Is that bare cloth, and not stitched")
    return replace(how, bare=(source.ground.hex,) if bare else ())


def _explained(
    unexplained: "Unexplained", codes: "Codes", threads: str
) -> Iterator[tuple[str, str]]:
    """What each code is. `threads` are those of the card, which are shown once."""
    from packetgen.bring.told import MOST_ASKED
    from packetgen.load.words import shown

    if len(unexplained.stitches) > MOST_ASKED:
        return
    click.echo(
        "Which thread is each code? Give a number or name of the card, a colour such as #6b503a, or a full "
        "stop for bare cloth."
    )
    click.echo(threads)
    if len(unexplained.stitches) > 1:
        click.echo(f"They are asked in this order: {', '.join(map(shown, unexplained.stitches))}.")
    taken: set[str] = set()  # numbers; another code hardly means a thread that is given already
    for code, stitches in unexplained.stitches.items():
        near = codes.nearest(code)
        near = None if near and near.number in taken else near
        asked = f"{shown(code)} ({stitches:,} {'stitch' if stitches == 1 else 'stitches'}) is"
        said = click.prompt(
            f"{asked} [{near.number} {near.name}]" if near else asked,
            default=near.number if near else "",
            show_default=False,
            value_proc=_Thread(codes, near),
        )
        if meant := codes.nearest(said):
            taken.add(meant.number)
        yield code, said


class _Thread:
    """Takes an answer that is a thread of the card, a colour or bare cloth; a yes takes what was offered last."""

    def __init__(self, codes: "Codes", offered: "Colour | None") -> None:
        self._codes, self._offered = codes, offered

    def __call__(self, answer: str) -> str:
        from packetgen.load.words import shown

        said = answer.strip()
        if self._offered and said.casefold() in ("y", "yes"):
            return self._offered.number
        if not said:
            raise click.UsageError(
                "say a number or name of the list, or a full stop for bare cloth"
            )
        if not self._codes.is_thread(said):
            near = self._offered = self._codes.nearest(said)
            hint = "look at the list above"
            if near:
                hint = f"did you mean {near.number} {near.name}? Type y, or another"
            raise click.UsageError(f"{self._codes.card_name} has no {shown(said)!r}; {hint}")
        return said


def _on_terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty()
