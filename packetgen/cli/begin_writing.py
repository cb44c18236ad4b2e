"""What `packetgen begin` writes, and what an author is told when it stands there."""

from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import click

from packetgen.cli.begin_questions import Given
from packetgen.cli.common import nothing_written, say_problems
from packetgen.cli.ending import stop
from packetgen.cli.saying import say
from packetgen.cli.yes_or_no import yes_or_no
from packetgen.nouns import counted
from packetgen.offered import content_words

if TYPE_CHECKING:
    from packetgen.starting.files import Files


class OnceMore(Exception):
    """The author wants to answer otherwise."""


def write_down(
    given: Given,
    series_id: str,
    files: "Files",
    folders: Mapping[str, str],
    besides: dict[str, bytes] | None = None,
    changed: dict[str, bytes] | None = None,
) -> None:
    """Write everything and say so, or say why not. `folders` are new, each with what it holds. Raises
    OnceMore."""
    from packetgen.pipeline.beginnings import begin
    from packetgen.write.together import ChangeWaits

    _confirm(given, folders)
    new = {path: text.encode() for path, text in files.items()} | (besides or {})
    try:
        begun = begin(given.content, series_id, tuple(folders), new, changed or {})
    except ChangeWaits:
        raise
    except OSError as error:
        stop(
            f"cannot write {error.filename or given.content}: {error.strerror or error}; nothing was written"
        )
    if begun.in_the_way:
        _in_the_way(given.content, begun.in_the_way)
    if begun.new_faults:
        say("With what is to be written there would be things to mend:", err=True)
        say_problems(begun.new_faults, given.content)
        if given.asks and given.answered:
            say("Nothing was written.")
            raise OnceMore
        nothing_written(len(begun.new_faults))
    say("Written:")
    for path in new:
        say(f"  {(given.content / path).as_posix()}")
    for path in changed or {}:
        say(f"and the pattern is entered in the order of {(given.content / path).as_posix()}")
    if begun.faults:
        say(f"{counted(begun.faults, 'thing')} to mend, as before: packetgen proof names each.")


def _confirm(given: Given, folders: Mapping[str, str]) -> None:
    """Ask somebody who has answered questions whether it shall be written. Raises OnceMore where not, if
    there was a question; else the command ends."""
    if not given.asks:
        return
    click.echo("This makes:")
    for folder, what in folders.items():
        click.echo(f"  {what}, in {(given.content / folder).as_posix()}")
    if not yes_or_no("Write it", usually=True):
        click.echo("Nothing was written.")
        if given.answered:
            raise OnceMore
        raise SystemExit(0)


def closing_words(
    given: Given, pattern: str, release: str | None, files: tuple[str, ...], undo: str
) -> None:
    """What the author should know before she goes on with the folder `pattern`; `release` is '' or None where
    the series has one to come, and `undo` what she deletes where she was asked and answered otherwise than she meant."""
    if release and given.release is None and not given.asks:
        where = " and ".join((given.content / file).as_posix() for file in files)
        say(
            f"No --release was given, so it comes out {release}: change that day, under release and "
            f"revisions, in {where}."
        )
    if given.asks and undo:
        say(f"Not as you meant it? Delete {undo}, and begin again.")
    say(_next(given.content, pattern))


def _in_the_way(content_folder: Path, there: tuple[str, ...]) -> NoReturn:
    listed = "\n".join(f"  {(content_folder / path).as_posix()}" for path in there)
    raise click.UsageError(
        f"this is there already, and nothing is written over:\n{listed}\nNothing was written; choose another "
        "title, or another folder with --content"
    )


def _next(content_folder: Path, pattern: str) -> str:
    option = content_words(content_folder)
    return (
        "A drawing that you have takes the place of the example:\n"
        f"  packetgen bring FILE --pattern {pattern} --replace{option}\n"
        "The files tell in remarks what each line means. Look at the pages while you edit them:\n"
        f"  packetgen preview --open{option}\n"
        "and when you like them, make the site and the packets:\n"
        f"  packetgen build{option}"
    )
