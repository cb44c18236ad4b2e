"""What `packetgen bring` asks on a terminal, where the file leaves open what only its author knows."""

import shlex
import sys
from collections.abc import Iterator, Sequence
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

_BACK = "back"  # said instead of a thread


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
    asked = tuple(unexplained.stitches.items())
    click.echo(
        "Which thread is each code? Give a number or name of the card, a colour such as #6b503a, or a full "
        "stop for bare cloth."
    )
    click.echo(threads)
    if len(asked) > 1:
        order = ", ".join(map(shown, unexplained.stitches))
        click.echo(f"They are asked in this order: {order}. '{_BACK}' asks for the last one again.")
    given: list[str] = []
    while len(given) < len(asked):
        code, stitches = asked[len(given)]
        taken = {meant.number for said in given if (meant := codes.nearest(said))}
        near = codes.nearest(code)
        near = None if near and near.number in taken else near  # hardly meant by two codes
        question = f"{shown(code)} ({stitches:,} {'stitch' if stitches == 1 else 'stitches'}) is"
        said = click.prompt(
            f"{question} [{near.number} {near.name}]" if near else question,
            default=near.number if near else "",
            show_default=False,
            value_proc=_Thread(codes, near, may_go_back=bool(given)),
        )
        if said is None:
            given.pop()
        else:
            given.append(said)
    yield from zip(unexplained.stitches, given, strict=True)


def as_options(answers: Sequence[tuple[str, str]], headed: bool) -> str:
    """What says the same as the answers, to be typed: with headings, where there were any. '' of no answers."""
    said = [f"--code {shlex.quote(f'{code}={thread}')}" for code, thread in answers]
    return " ".join([*["--headings"] * headed, *said]) if said else ""


class _Thread:
    """Takes an answer that is a thread of the card, a colour or bare cloth; a yes takes what was offered last. None asks
    for the code before again."""

    def __init__(self, codes: "Codes", offered: "Colour | None", may_go_back: bool) -> None:
        self._codes, self._offered, self._may_go_back = codes, offered, may_go_back

    def __call__(self, answer: str) -> str | None:
        from packetgen.load.words import shown

        said = answer.strip()
        if self._offered and said.casefold() in ("y", "yes"):
            return self._offered.number
        if said.casefold() == _BACK and self._may_go_back and not self._codes.is_thread(said):
            return None
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
