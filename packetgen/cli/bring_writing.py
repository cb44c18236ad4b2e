"""What `packetgen bring` writes where it belongs, and how it tells of it."""

from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import click

from packetgen.cli.common import nothing_written, say_problems
from packetgen.cli.ending import CONTENT_WRONG
from packetgen.cli.saying import say
from packetgen.nouns import counted, listed
from packetgen.offered import content_words

if TYPE_CHECKING:
    from packetgen.bring.brought import Brought
    from packetgen.diagnostics import Problem
    from packetgen.model import ThreadCard
    from packetgen.pipeline.bringing import Planned, Written
    from packetgen.pipeline.pattern_folder import PatternFolder

_MOST_FILES = 3  # that are named; proof names all
_MOST_NAMED = 8  # lines of texts that name a colour which is gone


def refuse_what_is_there(
    content_folder: Path, pattern: "PatternFolder | None", into: Path | None, replace: bool
) -> None:
    """End the command where a chart stands already in the place of the new one."""
    from packetgen.pipeline.bringing import WouldReplace, complain_of_chart, complain_of_folder

    try:
        if pattern is not None:
            complain_of_chart(content_folder, pattern)
        elif into is not None:
            complain_of_folder(into, replace)
    except WouldReplace as error:
        _there_already(error)


def _there_already(error: Exception) -> NoReturn:
    raise click.UsageError(
        f"{error} is there already; --replace exchanges it and keeps the old one beside it"
    ) from error


def planned_at(
    content_folder: Path,
    pattern: "PatternFolder | None",
    into: Path | None,
    card: "ThreadCard",
    found: "Brought",
    replace: bool,
) -> "Planned | None":
    """What shall be written; None where it goes nowhere. Ends the command where it may not be."""
    from packetgen.pipeline.bringing import NotSound, WouldReplace, into_folder, into_pattern

    try:
        if pattern is not None:
            return into_pattern(content_folder, pattern, found, replace)
        return None if into is None else into_folder(content_folder, into, card, found, replace)
    except WouldReplace as error:
        _there_already(error)
    except NotSound as error:
        say(
            "With the new chart and key there would be faults, in files as they would be:", err=True
        )
        say_problems(error.new, content_folder)
        if error.on_the_chart:
            say(
                f"--drop-lines takes away what belongs to the old chart: {' and '.join(error.on_the_chart)}.",
                err=True,
            )
        nothing_written(len(error.new))


def carry_out(
    planned: "Planned", pattern_name: str | None, content_folder: Path, stitched: str
) -> None:
    """Write it and say so; ends the command where something is left to mend. `stitched` is a ground of which nobody has said
    anything, or ''."""
    from packetgen.pipeline.bringing import carried_out

    written = carried_out(planned)
    if not written.files:
        say("The files say all that already; nothing had to be written.")
    for path in written.files:
        say(f"Written: {path}")
    for path in written.kept:
        say(f"The old one is kept: {path}")
    if written.kept:
        say(
            "What is kept so is never read: delete it when you like, or, to undo all this, put it back under its old name."
        )
    if written.chart:
        say(f"pattern.yaml names the chart now: {written.chart}.")
    for path in written.charts_left:
        say(f"{path} is the chart no more, and nothing reads it: take it out when you like.")
    if written.example:
        say(f"Gone with the example that it lay on: {listed(written.example)}.")
    if written.remarks:
        old = next(path for path in written.kept if path.name.endswith("pattern.yaml"))
        say(
            f"With the old key went {counted(written.remarks, 'line of remarks')} that explained it, kept in {old}; "
            "how-to-chart in the guide tells the same."
        )
    old_size = f"The old chart was {written.was[0]} × {written.was[1]} stitches"
    if any(written.was) and not written.lines and not written.example:
        say(f"{old_size}.")
    if written.lines:
        say(
            f"What lay on the old chart stays on the new one: {', '.join(written.lines)}; "
            "--drop-lines takes it away."
        )
        if written.carried:
            say(
                f"{old_size}, and lies in the new one {_farther(*written.moved)}: all that stays was moved along, and is "
                "kept as it was beside it. Rows and columns that your texts count are your own to change."
            )
        elif any(written.moved):
            say(
                f"{old_size}, and lies in the new one {_farther(*written.moved)}. The numbers of what lies on it stay as "
                "they were: right if you wrote them for the new one; else change each by as much, or bring the drawing in "
                "again with the same --bare and --trim as before."
            )
        elif any(written.was):
            say(
                f"{old_size}, and the numbers of what lies on it stay as "
                "they were: look whether all of it still lies right."
            )
    if written.gone:
        _tell_of_gone(written, content_folder)
    for problem in written.alike:
        say(f"{content_folder.as_posix()}/{problem.printed}")
    if written.faults:
        say("It is written; before it can be built, this is to mend:", err=True)
        say_problems(written.faults, content_folder)
        raise SystemExit(CONTENT_WRONG)
    if written.faults_before:
        say(
            f"{counted(len(written.faults_before), 'thing')} to mend stood there before, in "
            f"{_files(written.faults_before)}: see packetgen proof{content_words(content_folder)}."
        )
    if stitched:
        say(
            f'The ground {stitched} is stitched, see above; if it is bare cloth, bring it in again with --bare "{stitched}".'
        )
    if pattern_name is not None:
        of = content_words(content_folder)
        say(f"Next: packetgen proof{of}, then packetgen preview --open{of}")


def _tell_of_gone(written: "Written", content_folder: Path) -> None:
    gone = listed(tuple(f"{colour.number} {colour.name}" for colour in written.gone))
    say(f"No longer in the key: {gone}.")
    if written.named:
        say("These texts name what is gone; see whether they are still right:")
    for place, words in written.named[:_MOST_NAMED]:
        say(f"  {content_folder.as_posix()}/{place}: {words!r}")
    if len(written.named) > _MOST_NAMED:
        say(f"  and {counted(len(written.named) - _MOST_NAMED, 'more line')}")


def _farther(columns: int, rows: int) -> str:
    """'4 columns farther to the right and 4 rows farther down'."""
    sides = (
        (columns, "column", "to the right" if columns > 0 else "to the left"),
        (rows, "row", "down" if rows > 0 else "up"),
    )
    said = (
        f"{counted(abs(number), what)} farther {where}" for number, what, where in sides if number
    )
    return listed(tuple(said))


def _files(faults: "Sequence[Problem]") -> str:
    """The files in which they stand, each with its folder: 'fern/pattern.yaml and threads/moss.yaml'."""
    paths = dict.fromkeys(fault.place.path for fault in faults)
    names = ["/".join(path.split("/")[-2:]) or "the content folder itself" for path in paths]
    more = [counted(len(names) - _MOST_FILES, "more file")] if len(names) > _MOST_FILES else []
    return listed((*names[:_MOST_FILES], *more))
