"""An edit of a chart done for an author at her terminal: what came of it, and how to undo it."""

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Any

import click

from packetgen.cli.common import nothing_written, say_problems
from packetgen.cli.ending import CONTENT_WRONG, stop
from packetgen.cli.one_pattern import figures_of
from packetgen.cli.saying import say
from packetgen.nouns import counted, listed
from packetgen.offered import content_words

if TYPE_CHECKING:
    from packetgen.chart_edit.change import Change
    from packetgen.model import Pattern
    from packetgen.pipeline.chart_edits import Copy, Edited

_MOST_MENTIONS = 12


def edited(
    name: str,
    done: str,
    change_of: "Callable[[Pattern], Change]",
    undo: "Callable[[Change], str]",
    options: dict[str, Any],
    lose: bool = False,
) -> None:
    """Do a change to the pattern `name`, and say what was done; ends the command where it cannot be.

    `options` are what an author may give to every edit; `undo` says what to type after it.
    """
    from packetgen.chart_edit.pattern_text import CannotBeTold
    from packetgen.pipeline import chart_edits
    from packetgen.write.together import ChangeWaits

    content_folder: Path = options["content_folder"]
    pattern = figures_of(name, content_folder).pattern
    change = change_of(pattern)
    if change.width < 1 or change.height < 1:
        raise click.UsageError(
            f"nothing would be left of a chart of {pattern.grid.width} × {pattern.grid.height}"
        )
    to = _copy(pattern, done, options)
    try:
        result = chart_edits.edit_chart(
            content_folder, pattern.place.path.rpartition("/")[0], change, lose, to
        )
    except chart_edits.ChartIsPicture as error:
        raise click.UsageError(
            f"{error} is a picture, and these commands edit charts of characters; "
            "make a chart.txt of it first with packetgen bring, or use a program for pictures"
        ) from error
    except chart_edits.WouldLose as error:
        for one in error.what:
            what = f"{counted(one.number, one.what)} of {one.of!r} would fall off the chart"
            say(
                f"{content_folder.as_posix()}/{one.place}: {what}; move less, or add --lose",
                err=True,
            )
        say("Nothing was written.", err=True)
        raise SystemExit(CONTENT_WRONG) from error
    except chart_edits.NotSound as error:
        say("This is what would be wrong afterwards:", err=True)
        say_problems(error.problems.errors, content_folder)
        nothing_written(len(error.problems.errors))
    except CannotBeTold as error:
        where = f"{content_folder.as_posix()}/{error.place}"
        stop(f"{where}: this is written in a way that cannot be edited here; nothing was written")
    except FileExistsError as error:
        raise click.UsageError(
            f"there is {error.filename} already; choose another name for --to"
        ) from error
    except ChangeWaits:
        raise
    except OSError as error:
        stop(f"cannot write it: {error.strerror or error} ({error.filename}); all is as it was")
    _tell(result, content_folder, to)
    if result.written and not result.kept and to is None:
        say(f"To undo it: packetgen chart {undo(change)}{content_words(content_folder)}")


def _copy(pattern: "Pattern", done: str, options: dict[str, Any]) -> "Copy | None":
    from packetgen.pipeline.chart_edits import Copy

    new_name, title = options["new_name"], options["title"]
    if new_name is None:
        if title is not None:
            raise click.UsageError("--title belongs to --to, the name of a new pattern")
        return None
    return Copy(new_name, title or f"{pattern.title}, {done}")


def _tell(edited: "Edited", content_folder: Path, to: "Copy | None") -> None:
    grid = edited.after.grid
    if not edited.written:
        say("Nothing has changed.")
        return
    if to is None:
        say(f"{edited.after.title}: {grid.width} × {grid.height} stitches now.")
    else:
        say(f"A new pattern, {edited.after.title}, of {grid.width} × {grid.height} stitches.")
        say(f"{edited.before.title} stays as it was. Written:")
    for path in edited.written:
        say(f"  {content_folder.as_posix()}/{path}")
    if edited.lost:
        lost = tuple(f"{counted(one.number, one.what)} of {one.of!r}" for one in edited.lost)
        say(f"Lost: {listed(lost)}.")
    if edited.marks_gone:
        say(f"Taken out of the key, since nothing is worked in it: {_marks(edited.marks_gone)}.")
    if edited.marks_leaning:
        say(f"Half stitches lean the other way now: {_marks(edited.marks_leaning)}.")
    if edited.photo_left:
        shows = "did not go along" if to else "still shows the model as it was"
        say(f"{edited.photo_left} {shows}.")
    mentioned = edited.mentioned
    if mentioned:
        say("These speak of sides, columns or rows; see whether they are still right:")
        for place, words in mentioned[:_MOST_MENTIONS]:
            say(f"  {content_folder.as_posix()}/{place}: {words!r}")
        if len(mentioned) > _MOST_MENTIONS:
            say(f"  and {counted(len(mentioned) - _MOST_MENTIONS, 'more line')}")
    if edited.kept:
        kept = listed(tuple(path.rpartition("/")[2] for path in edited.kept))
        say(f"The old files are kept beside the new ones as {kept}; nothing reads these.")


def _marks(marks: tuple[str, ...]) -> str:
    return listed(tuple(repr(mark) for mark in marks))
