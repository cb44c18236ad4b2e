"""`packetgen bring`"""

import shlex
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import click

from packetgen.cli.bring_codes import said_codes, without_thread
from packetgen.cli.bring_options import BringWords, CellPx, ScreenColour
from packetgen.cli.bring_questions import answered, as_options
from packetgen.cli.bring_writing import carry_out, planned_at, refuse_what_is_there
from packetgen.cli.common import (
    NAME,
    AnyBetween,
    Between,
    FileThere,
    content_option,
    nothing_written,
    say_problems,
)
from packetgen.cli.ending import MACHINE_WRONG
from packetgen.cli.saying import say
from packetgen.cli.yes_or_no import yes_or_no
from packetgen.offered import content_words

if TYPE_CHECKING:
    from packetgen.bring.brought import Brought
    from packetgen.bring.reading import Reading, Source
    from packetgen.model import ThreadCard
    from packetgen.pipeline.pattern_folder import NotThere, PatternFolder

_PHOTO_COLOURS = 20
_SMALL = frozenset("a an and at by for from in of on or the to under with".split())
_ENDINGS = (".png", ".csv", ".txt", ".jpg", ".jpeg")


class _Refused(click.ClickException):
    """What was said cannot be; the lines that tell it stand alone, since the way of calling was right."""

    exit_code = MACHINE_WRONG


@click.command("bring", cls=BringWords)
@click.argument("file", metavar="FILE", type=FileThere(*_ENDINGS))
@content_option
@click.option(
    "--pattern", "pattern_name", type=NAME, help="The pattern whose chart and key it becomes."
)
@click.option(
    "--threads",
    type=NAME,
    help="The thread card to take colours from, or a thread set of the pattern. "
    "[default: the pattern's first]",
)
@click.option(
    "--into",
    type=click.Path(file_okay=False, path_type=Path),
    help="Write the chart and its key into this folder instead.",
)
@click.option("--replace", is_flag=True, help="Put it in the place of the chart that is there.")
@click.option(
    "--drop-lines",
    is_flag=True,
    help="With it the backstitch, daisies, knots, beads and close-ups of the old chart go.",
)
@click.option("--colours", type=Between(1), help="The most threads. [default: a photograph: 20]")
@click.option(
    "--wide",
    type=Between(1, 1000),
    help="It is a photograph, or drawn freely, to be so many stitches wide.",
)
@click.option(
    "--tidy",
    type=AnyBetween(0, 100),
    help="Give stitches that stand alone a neighbour's colour, where that is at most so far (CIEDE2000) "
    "from their own, for example 10.",
)
@click.option(
    "--cell",
    type=CellPx(),
    help="A stitch is drawn so many pixels wide, for example 12 or 4.5.",
)
@click.option(
    "--bare",
    multiple=True,
    type=ScreenColour(),
    help='A colour of the file that is bare cloth, for example "#ffffff" for white; may be given several times.',
)
@click.option("--trim", is_flag=True, help="Leave out bare rows and columns at the edges.")
@click.option(
    "--code",
    "codes",
    multiple=True,
    metavar="CODE=THREAD",
    help="What a code of a table or grid is; a full stop for bare cloth.",
)
@click.option(
    "--headings/--no-headings",
    default=None,
    help="The first row or column of a table is headings, or its end a legend, and left out; or is stitches. "
    "[default: what looks like headings is asked about]",
)
@click.option(
    "--look",
    type=click.Path(dir_okay=False, path_type=Path),
    help="Write a picture (PNG) of the file and the chart side by side.",
)
def bring_command(
    file: Path,
    content_folder: Path,
    pattern_name: str | None,
    threads: str | None,
    into: Path | None,
    replace: bool,
    drop_lines: bool,
    colours: int | None,
    wide: int | None,
    tidy: float | None,
    cell: float | None,
    bare: tuple[str, ...],
    trim: bool,
    codes: tuple[str, ...],
    headings: bool | None,
    look: Path | None,
) -> None:
    """Bring in a design that is drawn elsewhere.

    \b
    FILE is a PNG (one pixel a stitch, or enlarged: the size of a stitch is found; clear
    pixels are bare cloth), a table (.csv, one field a stitch: a colour as #6b503a, a
    number of the card, or a code of your own), a grid of signs (.txt), or a photograph
    or free drawing (JPEG or PNG, with --wide). A JPEG of a drawn chart needs --cell.

    \b
    Each colour gets the nearest thread of one card, and you are told how near it is.
    Without --pattern or --into you only look: nothing is written but what --look asks for.
    An old chart is exchanged with --replace alone; the old files stay beside the new ones,
    under names that begin with '_before'.

    \b
    Examples:
      packetgen bring robin.png --threads larkmoss --look robin-look.png
      packetgen bring robin.png --threads larkmoss --bare "#ffffff" --trim
      packetgen bring robin.png --pattern robin-on-the-spade --replace
      packetgen bring barrow.jpg --wide 90 --colours 18 --tidy 10 --threads larkmoss
      packetgen bring grid.csv --code x=K4 --code o="#f4d877" --into new-design
    """
    from packetgen.bring.brought import bring
    from packetgen.bring.choosing import TooFewAsked
    from packetgen.bring.reading import Reading
    from packetgen.bring.told import ground_stitched, report

    if pattern_name is not None and into is not None:
        raise click.UsageError("--pattern and --into: give one of the two")
    if wide is not None and (cell is not None or bare or trim):
        raise click.UsageError(
            "--cell, --bare and --trim are for drawn charts, and --wide says that it is a photograph: leave out "
            "one or the other; what of a photograph shall be bare cloth, make clear in an image editor, and "
            "save it as PNG, which --wide reads too"
        )
    if replace and pattern_name is None and into is None:
        raise click.UsageError(
            "--replace is of a chart that is there: say which, with --pattern NAME or --into FOLDER"
        )
    written = file.suffix.lower() in (".csv", ".txt")
    readable = file.suffix.lower() in _ENDINGS  # of any other kind that is told, and no option
    if cell is not None and written:
        raise click.UsageError("--cell is for pictures, in which a stitch is some pixels wide")
    if headings is not None and file.suffix.lower() != ".csv" and readable:
        raise click.UsageError(
            "--headings is for tables (.csv); beside a grid of signs (.txt) a legend that an empty line parts from it is "
            "found by itself"
        )
    if codes and not written and readable:
        raise click.UsageError("--code is for tables and grids: a picture has colours and no codes")
    pattern, card = _where(content_folder, pattern_name, threads, drop_lines)
    explained, misspelt = said_codes(codes)
    how = Reading(cell, bare or None, trim, headings, explained)
    if look is None and not (replace and pattern):
        refuse_what_is_there(content_folder, pattern, into, replace)
    card_file = f"{content_folder.as_posix()}/threads/{card.id}.yaml"
    source, answers = _read(file, card, card_file, pattern, wide, how, misspelt)
    if pattern is not None:
        wishes = source.drawing.wishes.values()
        pattern = pattern.for_signs({wish.code or wish.mark for wish in wishes})
    most = _PHOTO_COLOURS if source.drawing.photograph and colours is None else colours
    try:
        found = bring(
            source.drawing,
            tuple(card.colours.values()),
            pattern.known if pattern else (),
            pattern.elsewhere if pattern else (),
            most,
            tidy,
        )
    except TooFewAsked as error:
        raise click.UsageError(
            f"--colours {colours or most}: too few, since file and key name {error.named} themselves; "
            f"give {error.named} or more"
        ) from error
    if source.ground is not None:
        say(ground_stitched(source.ground, source.drawing, found))
    say(report(found, card.name, card_file))
    planned = planned_at(content_folder, pattern, into, card, found, replace)
    if look is not None:  # after all is decided: no picture of what is refused
        _write_look(look, source, found)
    if answers:
        say(f"Next time without these questions: add {answers}")
    if planned is None:
        say("Nothing is written yet: --pattern NAME or --into FOLDER says where it shall go.")
    elif answers and not yes_or_no("Write it", usually=True):
        say("Nothing was written.")
    else:
        carry_out(planned, pattern_name, content_folder, source.ground.hex if source.ground else "")


def _where(
    content_folder: Path,
    name: str | None,
    threads: str | None,
    drop_lines: bool,
) -> "tuple[PatternFolder | None, ThreadCard]":
    from packetgen.diagnostics import Problems, nearest
    from packetgen.pipeline.pattern_folder import NotThere, card_of, cards_in, pattern_folder

    if not content_folder.is_dir():
        raise click.UsageError(
            f"there is no folder '{content_folder}'; give the one that holds threads, cloths and series with "
            "--content, or make one with packetgen begin"
        )
    found = Problems()
    try:
        if name is None:
            if threads is None:
                raise click.UsageError(
                    "say which thread card to take colours from: --threads CARD; "
                    + nearest("", tuple(cards_in(content_folder)))
                )
            return None, card_of(content_folder, threads)
        pattern = pattern_folder(content_folder, name, threads, drop_lines, found)
    except NotThere as error:
        _not_there(error, content_folder)
    if pattern is None:
        say_problems(found.errors, content_folder)
        nothing_written(len(found.errors))
    return pattern, pattern.card


def _not_there(error: "NotThere", content_folder: Path) -> NoReturn:
    from packetgen.diagnostics import nearest, nearest_of

    begin = ""
    if error.what == "pattern" and nearest_of(error.name, error.known) is None:
        title = shlex.quote(_as_title(error.name))
        begin = f"; a new one is begun first: packetgen begin --pattern {title}{content_words(content_folder)}"
    raise click.UsageError(f"{error}; {nearest(error.name, error.known)}{begin}") from error


def _as_title(folder: str) -> str:
    """'tray-of-tulips' → 'Tray of Tulips'."""
    words = folder.split("-")
    return " ".join(
        word if number and word in _SMALL else word.capitalize()
        for number, word in enumerate(words)
    )


def _read(
    file: Path,
    card: "ThreadCard",
    card_file: str,
    pattern: "PatternFolder | None",
    wide: int | None,
    how: "Reading",
    misspelt: tuple[str, ...],
) -> "tuple[Source, str]":
    """The design, and the options that say what was answered for the threads of its codes; '' where nobody was asked."""
    from packetgen.bring.codes import Codes
    from packetgen.bring.reading import Source, read_design
    from packetgen.bring.told import codes_to_say, threads_known
    from packetgen.bring.written import Unexplained
    from packetgen.diagnostics import Problems
    from packetgen.load.files import ContentFolder

    colours = tuple(card.colours.values())
    known = pattern.known if pattern else ()
    threads = threads_known(card.name, colours, card_file)

    def codes_of(how: "Reading") -> Codes:
        of_example = pattern is not None and pattern.of_example
        return Codes(colours, how.codes, known, card.name, of_example)

    codes = codes_of(how)

    def read(how: "Reading") -> "tuple[Source | Unexplained | None, Problems]":
        problems = Problems()
        folder = ContentFolder(file.resolve().parent, problems)
        return read_design(
            folder, file.resolve().name, how, wide, codes_of(how), problems
        ), problems

    source, problems = read(how)
    told = source.misgiven if isinstance(source, Unexplained) else ()
    given = tuple(one for one in how.codes if one not in told)
    refused = (*misspelt, *without_thread(given, codes, card_file))
    given_before, headed_before = how.codes, bool(how.headings)
    while not refused and (then := answered(how, source, problems, codes, threads)) != how:
        how = then
        source, problems = read(how)
    say_problems(problems, file.parent)
    if isinstance(source, Unexplained) and not set(source.stitches) <= set(dict(how.codes)):
        say(threads, err=True)
        headed = any(problem.code in ("bring-headings", "bring-legend") for problem in problems)
        if line := codes_to_say(source.stitches, headed, codes):
            say(line, err=True)
    if refused:
        raise _Refused("\n".join(refused))
    if not isinstance(source, Source):
        nothing_written(len(problems.errors))
    return source, as_options(
        how.codes[len(given_before) :], bool(how.headings) and not headed_before
    )


def _write_look(look: Path, source: "Source", found: "Brought") -> None:
    from packetgen.bring.drawn import side_by_side
    from packetgen.write import replaced

    hexes = [one.colour.hex for one in found.entries]
    replaced(look, side_by_side(source.picture, found.cells, hexes))
    ground = source.ground
    stitched = (
        f', with {ground.hex} stitched: --bare "{ground.hex}" keeps it bare' if ground else ""
    )
    say(f"Side by side in {look}{stitched}.")
