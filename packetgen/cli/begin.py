"""`packetgen begin`"""

import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.begin_questions import (
    DESIGNER,
    PATTERN,
    RELEASE,
    SERIES,
    STITCHES,
    THREADS,
    FolderName,
    FreeTitle,
    Given,
    folder_for,
    one_of,
    size_for,
)
from packetgen.cli.begin_writing import OnceMore, closing_words, write_down
from packetgen.cli.common import (
    FileThere,
    content_option,
    nothing_written,
    say_problems,
)
from packetgen.cli.saying import say
from packetgen.starting import USUAL

if TYPE_CHECKING:
    from packetgen.diagnostics import Problem
    from packetgen.model import Designer, Faces, Series
    from packetgen.pipeline.beginnings import Found
    from packetgen.starting.files import NewPattern

_WEEKS_AHEAD = 4  # that a pattern comes out, where its series is out already
_WHEN = "The day it comes out, such as 2027-05-01 (or 2027-05-01 09:00 Europe/London)"


@click.command("begin")
@content_option
@click.option("--series", type=SERIES, metavar="TITLE", help="The title of a new series.")
@click.option("--designer", type=DESIGNER, metavar="NAME", help="Who draws the patterns.")
@click.option(
    "--release",
    type=RELEASE,
    metavar="DAY",
    help="The day it comes out, 2027-05-01; with an hour and its place: '2027-05-01 09:00 Europe/London'. "
    "[default: today; of a pattern whose series is out already, in 4 weeks]",
)
@click.option("--pattern", type=PATTERN, metavar="TITLE", help="The title of the pattern.")
@click.option("--threads", type=THREADS, metavar="NAME", help="What your thread is called.")
@click.option(
    "--wide",
    type=STITCHES,
    help="Stitches across, of the drawing that you have already or of an example; a new finishing piece is made "
    f"to hold them. [default: {USUAL}; in a series as many as its last pattern has, or as many as fit]",
)
@click.option("--high", type=STITCHES, help="Stitches down. [default: likewise]")
@click.option(
    "--in",
    "within",
    metavar="SERIES",
    help="The folder of the series for a new pattern, where there are several.",
)
@click.option(
    "--face",
    type=FileThere(".ttf", ".otf", ".woff2"),
    metavar="FILE",
    help="A font file for the text of a new series, where its words need letters of other scripts.",
)
@click.option(
    "--series-folder",
    type=FolderName(),
    metavar="NAME",
    help="What the series' folder is called. [default: made from its title]",
)
@click.option(
    "--pattern-folder",
    type=FolderName(),
    metavar="NAME",
    help="What the pattern's folder is called. [default: made from its title]",
)
@click.option("--yes", is_flag=True, help="Ask nothing, and take examples for what is not given.")
def begin_command(
    content_folder: Path,
    series: str | None,
    designer: str | None,
    release: str | None,
    pattern: str | None,
    threads: str | None,
    wide: int | None,
    high: int | None,
    within: str | None,
    face: Path | None,
    series_folder: str | None,
    pattern_folder: str | None,
    yes: bool,
) -> None:
    """Begin a new series, or a new pattern in a series.

    \b
    Where there is no series yet, this writes a whole content folder: a series with one
    pattern, its finishing piece, a thread card, cloths and beads, all of them examples
    that build at once and tell in remarks what each line means. Where there is one, it
    writes the folder of a new pattern and enters it in the series' order.

    \b
    On a terminal it asks for what is not given. Nothing that is there is written over.

    \b
    Examples:
      packetgen begin
      packetgen begin --series "Along the Garden Path" --designer "Wren Alder"
        --pattern "Rhubarb under a Bucket" --release 2027-05-01
      packetgen begin --pattern "Beans on a String" --wide 60 --high 80
    """
    from packetgen.pipeline.beginnings import found_in
    from packetgen.render.templates import TemplateFault

    if content_folder.exists() and not content_folder.is_dir():
        raise click.UsageError(f"'{content_folder}' is a file, and the content is a folder")
    given = Given(
        content=content_folder,
        series=series,
        series_folder=series_folder,
        designer=designer,
        release=release,
        threads=threads,
        within=within,
        face=face,
        pattern=pattern,
        pattern_folder=pattern_folder,
        wide=wide,
        high=high,
        asks=_on_terminal() and not yes,
        yes=yes,
    )
    found = found_in(content_folder)
    if found.problems.errors:
        say_problems(found.problems.errors, content_folder)
        if any(_of_example_key(problem, content_folder) for problem in found.problems.errors):
            say(
                "A pattern has the colours of its example until its drawing is brought in: packetgen bring",
                err=True,
            )
        nothing_written(len(found.problems.errors))
    try:
        while True:
            try:
                return _begin_pattern(given, found) if found.series else _begin_series(given)
            except OnceMore:
                say("Once more: Enter keeps what you answered, and Ctrl-C ends it.")
    except TemplateFault as fault:
        say(str(fault), err=True)
        nothing_written(1)


def _of_example_key(problem: "Problem", content_folder: Path) -> bool:
    """Whether it is a colour that a card lacks, in a pattern whose chart is the example still."""
    from packetgen.load.examples import is_example_chart

    chart = (content_folder / problem.place.path).with_name("chart.txt")
    if problem.code != "colour-unknown" or not chart.is_file():
        return False
    return is_example_chart(chart.read_text("utf-8", "replace"))


def _on_terminal() -> bool:
    return sys.stdin.isatty() and sys.stdout.isatty()


_IN_TURN = (
    "You are asked, where no option says it: the series' title, your name, the day it comes out, the first pattern's title, "
    "what your thread is called, and how many stitches wide and high."
)


def _in_turn(series: "Series", now: datetime) -> str:
    """What is asked for a pattern in the series."""
    whose = ", which designer's it is" if len(series.designers) > 1 else ""
    day = ", the day it comes out" if series.release <= now else ""
    return f"You are asked, where no option says it: the pattern's title{whose}{day}, and how many stitches wide and high."


def _begin_series(given: Given) -> None:
    from packetgen.starting.files import NewPattern, NewSeries, pieces_folder, series_files

    if given.within is not None:
        raise click.UsageError(f"there is no series in '{given.content}' yet; leave out --in")
    given.need(series=given.series, designer=given.designer, pattern=given.pattern)
    faces, face = _face(given.face)
    if given.asks:
        say(_IN_TURN)
    title = given.words(
        given.series, "The title of your series", SERIES, "Along the Garden Path", faces
    )
    folder = folder_for(given, title, given.series_folder, "--series-folder")
    designer = given.words(
        given.designer, "Your name, as readers see it", DESIGNER, "A Gardener", faces
    )
    today = datetime.now(UTC).date().isoformat()
    release = given.or_asked(given.release, _WHEN, RELEASE, today)
    pattern_title = given.words(
        given.pattern, "The title of its first pattern", PATTERN, "A Sprig by the Gate", faces
    )
    pattern_folder = folder_for(given, pattern_title, given.pattern_folder, "--pattern-folder")
    threads = given.words(
        given.threads, "What your thread is called", THREADS, "My Stranded Cotton", faces
    )
    face_name = f"face{given.face.suffix}" if given.face else ""
    new = NewSeries(folder, title, release.strip(), designer, threads, face_name)
    size = size_for(given, (USUAL, USUAL))
    pattern = NewPattern(pattern_folder, pattern_title, *size, release.strip()[:10])
    files = series_files(new, pattern)
    given_files = {f"series/{folder}/{face_name}": face} if face else {}
    out = f"out on {release.strip()}"
    folders = {
        f"series/{folder}": f"{title}, a series by {designer}, {out}, with {threads}",
        f"series/{folder}/{pattern_folder}": _said(pattern),
        pieces_folder(): "a finishing piece that holds it",
    }
    fresh = not given.content.exists() or not any(given.content.iterdir())
    write_down(given, new.folder, files, folders, given_files)
    places = f"series/{folder}/series.yaml", f"series/{folder}/{pattern_folder}/pattern.yaml"
    undo = f"the folder '{given.content}'" if fresh else ""
    closing_words(given, pattern_folder, "today, " + release, places, undo)


def _begin_pattern(given: Given, found: "Found") -> None:
    from packetgen.starting.around import around_in, usual_size
    from packetgen.starting.asking import as_moment
    from packetgen.starting.files import NewPattern, entered, pattern_files

    for option in ("series", "series_folder", "threads", "face"):
        if getattr(given, option) is not None:
            raise click.UsageError(
                f"there is a series in '{given.content}' already, and a pattern is begun in it; "
                f"leave out --{option.replace('_', '-')}, or give another folder with --content"
            )
    series = _series(given, found.series)
    path = f"series/{series.id}"
    given.need(pattern=given.pattern)
    now = datetime.now(UTC)
    if given.asks:
        say(_in_turn(series, now))
    free = FreeTitle(() if given.pattern_folder else tuple(one.id for one in series.patterns))
    title = given.words(
        given.pattern, "The title of your pattern", free, "A Sprig by the Gate", series.look.faces
    )
    folder = folder_for(given, title, given.pattern_folder, "--pattern-folder")
    designer = _designer(given, series)
    zone = str(series.release.tzinfo)
    release = given.release
    if series.release <= now:
        later = (now + timedelta(weeks=_WEEKS_AHEAD)).date().isoformat()
        release = given.or_asked(release, _WHEN, RELEASE, later)
    issued = (release or series.release.date().isoformat()).strip()[:10]
    size = size_for(given, usual_size(series, USUAL), series)
    moment = as_moment(release, zone) if release else ""
    pattern = NewPattern(folder, title, *size, issued, moment)
    files = pattern_files(path, pattern, around_in(series, designer, found.beads))
    order = f"{path}/series.yaml"
    changed = entered((given.content / order).read_bytes(), order, series.patterns[-1].id, folder)
    said = f"{_said(pattern)}, by {designer.name}" + (f", out on {release}" if release else "")
    write_down(given, series.id, files, {f"{path}/{folder}": said}, changed={order: changed})
    made = given.content / path / folder
    undo = f"the folder '{made.as_posix()}' and its line under order in {(given.content / order).as_posix()}"
    places = (f"{path}/{folder}/pattern.yaml",)
    closing_words(given, folder, release and "on " + release, places, undo)


def _face(file: Path | None) -> tuple["Faces", bytes]:
    """The face for the text of a series, and its file; no face of its own where none is given."""
    from packetgen.load.files import LARGEST_FONT_MB
    from packetgen.model import Faces
    from packetgen.starting.asking import faces_of

    if file is None:
        return Faces(), b""
    if file.stat().st_size > LARGEST_FONT_MB * 1_000_000:
        raise click.UsageError(f"{file} is larger than {LARGEST_FONT_MB} MB")
    data = file.read_bytes()
    faces, wrong = faces_of(file.name, data)
    if wrong:
        raise click.UsageError(f"{file}: {wrong}")
    return faces, data


def _said(pattern: "NewPattern") -> str:
    return f"{pattern.title}, a pattern of {pattern.wide} × {pattern.high} stitches"


def _series(given: Given, there: tuple["Series", ...]) -> "Series":
    known = {series.id: series for series in there}
    return known[one_of(given, given.within, known, "series", "in", "series")]


def _designer(given: Given, series: "Series") -> "Designer":
    """By her id or her name; that of the last pattern where there is one alone, or examples are asked for."""
    last = series.patterns[-1].designer
    known = {designer.id: designer for designer in (last, *series.designers)}
    called = {designer.name.casefold(): designer.id for designer in series.designers}
    name = given.designer
    name = called.get(name.casefold(), name) if name else name
    file = (given.content / f"series/{series.id}/series.yaml").as_posix()
    leave = ", or leave --designer out" if len(known) == 1 else ""
    way_out = f" (or add the designer under 'designers' in {file} first{leave})"
    return known[
        one_of(given, name, known, "designer", "designer", "designer of the series", way_out)
    ]
