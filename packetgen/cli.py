"""The command line: words for people, exit codes for scripts (0 well, 1 content, 2 usage or machine)."""

import os
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen import __version__
from packetgen.model import EDITION_NAMES, Colour, ThreadCard
from packetgen.pipeline import SYMBOLS_FILE, Proof, Reckoned, build, proof, settle

if TYPE_CHECKING:
    from packetgen.reckon.kit import Kit

CONTENT_WRONG, MACHINE_WRONG = 1, 2

_FIRST_PAGE = """Pattern packets and preview pages for people who publish cross stitch.

\b
You write a folder of plain text for each pattern; this tool checks it, works
out sizes and thread, draws the chart, and makes a web page and printable
packets of it.

\b
Three things to type first:
  packetgen proof      check every file; nothing is written
  packetgen build      make the site and the packets in build/
  packetgen kit        what to buy, as a table

Add --help to any of them for its own page with examples.
"""


def _content_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--content",
        "content_folder",
        type=click.Path(file_okay=False, path_type=Path),
        default=Path("content"),
        show_default=True,
        help="The folder that holds threads, cloths, finishes and series.",
    )(command)


@click.group(
    help=_FIRST_PAGE,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 90},
)
@click.version_option(__version__, prog_name="packetgen")
def main() -> None:
    pass


@main.command("proof")
@_content_option
@click.option(
    "--alone", is_flag=True, help="Also list where in each pattern most stitches stand alone."
)
def proof_command(content_folder: Path, alone: bool) -> None:
    """Check everything and write nothing.

    \b
    Every problem is one line: file:line:column: what is wrong; what would be right.
    All of them are shown in one go. Of sound patterns it says how many stitches have no
    neighbour of their colour, since each of those is begun and ended by itself.

    \b
    Examples:
      packetgen proof
      packetgen proof --content my-patterns
      packetgen proof --alone
    """
    from packetgen.render.proof_report import lines_of

    checked = _checked(content_folder)
    for figures in (figures for each in checked.reckoned for figures in each.figures):
        for line in lines_of(figures, alone):
            click.echo(line)
    patterns = sum(len(each.figures) for each in checked.reckoned)
    click.echo(f"All is well: {_counted(patterns, 'pattern')} checked, nothing to mend.")


@main.command("build")
@click.argument("names", nargs=-1, metavar="[NAME]...")
@_content_option
@click.option(
    "--into",
    "build_folder",
    type=click.Path(file_okay=False, path_type=Path),
    default=Path("build"),
    show_default=True,
    help="The folder that receives site, packets, share and ledger.",
)
@click.option(
    "--templates",
    "own_templates",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    help="Your own templates; a file here is used instead of the one that comes with the tool. "
    "[default: the folder 'templates' beside the content, if there is one]",
)
@click.option(
    "--edition",
    "editions",
    multiple=True,
    type=click.Choice(EDITION_NAMES),
    help="Make this edition of the charts; may be given several times. "
    "[default: what each pattern.yaml lists]",
)
def build_command(
    names: tuple[str, ...],
    content_folder: Path,
    build_folder: Path,
    own_templates: Path | None,
    editions: tuple[str, ...],
) -> None:
    """Make the site and the packets.

    \b
    Without a NAME everything is made. With the name of a pattern's or a series' folder,
    only those packets are made anew; the site is always made whole. When something is
    wrong in the content, nothing is written and the last good build stays.

    \b
    Examples:
      packetgen build
      packetgen build robin-on-the-spade
      packetgen build robin-on-the-spade --edition black-and-white --edition written
    """
    checked = _checked(content_folder)
    wanted = _wanted(names, checked)
    beside = content_folder.parent / "templates"
    if own_templates is None and beside.is_dir():
        own_templates = beside
    _need_engine()
    from packetgen.render.pdf import EngineComplaint
    from packetgen.render.templates import TemplateFault

    steps = sum(
        1
        for each in checked.reckoned
        for f in each.figures
        if wanted is None or f.pattern.id in wanted
    ) + len(checked.reckoned)
    try:
        with _Progress(steps) as progress:
            made = build(
                checked,
                build_folder,
                own_templates,
                wanted,
                frozenset(editions) or None,
                progress.tell,
            )
    except TemplateFault as error:
        click.echo(str(error), err=True)
        raise SystemExit(CONTENT_WRONG) from error
    except EngineComplaint as error:
        _stop(f"a packet could not be set; nothing was written: {error}")
    except OSError as error:
        _stop(
            f"cannot write the build: {error.strerror or error} ({error.filename or build_folder})"
        )
    click.echo(
        f"{_counted(made, 'file')} written. Open {build_folder / 'site' / 'index.html'} to look."
    )


@main.command("settle")
@click.argument("names", nargs=-1, metavar="[NAME]...")
@_content_option
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
    checked = _checked(content_folder)
    try:
        changed = settle(checked, content_folder, _wanted(names, checked))
    except OSError as error:
        _stop(f"cannot write {SYMBOLS_FILE}: {error.strerror or error} ({error.filename})")
    click.echo(f"{_counted(changed, 'file')} of kept symbols written.")


@main.command("kit")
@click.argument("names", nargs=-1, metavar="[NAME]...")
@_content_option
@click.option("--threads", "set_name", help="The thread set to buy for. [default: the model's]")
@click.option("--cloth", "cloth_name", help="The cloth to stitch on. [default: each model's own]")
@click.option(
    "--format",
    "form",
    type=click.Choice(("table", "csv", "json")),
    default="table",
    show_default=True,
    help="A table to read, or the same for a spreadsheet or a program.",
)
@click.option(
    "--from",
    "piece",
    metavar="SIZE",
    help="Also how many pieces your own piece of cloth gives, for example '50 x 70 cm'.",
)
@click.option(
    "--finishing",
    is_flag=True,
    help="Also what the finishing piece and the mounting take: wood, paint, card, trim, magnets.",
)
def kit_command(
    names: tuple[str, ...],
    content_folder: Path,
    set_name: str | None,
    cloth_name: str | None,
    form: str,
    piece: str | None,
    finishing: bool,
) -> None:
    """What to buy: thread, beads and cloth, as a table.

    \b
    With the name of one pattern: its list. With several, with the name of a series, or
    without a name: one list for all of them, in which what is left of a skein or a piece
    of cloth in one design serves the next. Where cards say their price, it is summed.

    \b
    Examples:
      packetgen kit robin-on-the-spade
      packetgen kit robin-on-the-spade --threads tansywick --cloth pipit-aida-14
      packetgen kit robin-on-the-spade --from "50 x 70 cm"
      packetgen kit --format csv > to-buy.csv
      packetgen kit potting-bench-almanac --finishing
    """
    from packetgen.reckon.series_list import finishing_rows, series_list
    from packetgen.render.kit import FORMATS, KitError, kit_of

    checked = _checked(content_folder)
    wanted = _wanted(names, checked)
    chosen = tuple(
        figure
        for each in checked.reckoned
        for figure in each.figures
        if wanted is None or figure.pattern.id in wanted
    )
    try:
        kit = kit_of(chosen, set_name, cloth_name)
    except KitError as error:
        raise click.UsageError(str(error)) from error
    rows = tuple(
        row
        for each in checked.reckoned
        if finishing and (of := [one for one in kit.designs if one.figures in each.figures])
        for row in finishing_rows(series_list(of, each.series.finish))
    )
    listed = FORMATS[form](kit, rows)
    if piece is not None:
        listed += _from_own_piece(piece, kit, form)
    if form == "table":
        click.echo(listed)
    else:  # to the byte, with the line ends of its own format
        click.echo(listed.encode(), nl=False)


def _from_own_piece(piece: str, kit: "Kit", form: str) -> str:
    from packetgen.render.kit_table import from_piece
    from packetgen.units import split_area

    size = split_area(piece)
    if size is None:
        raise click.UsageError(
            f"{piece!r} is no size of cloth; write for example --from '50 x 70 cm' or '18 x 22 in'"
        )
    if form != "table":
        raise click.UsageError("--from belongs to the table; leave out --format")
    return "\n\n" + from_piece(kit, *size)


@main.command("match")
@click.argument("source_name", metavar="FROM")
@click.argument("target_name", metavar="TO")
@_content_option
@click.option(
    "--pattern", "pattern_name", help="Only the colours that this pattern (or series) uses of FROM."
)
@click.option("--distinct", is_flag=True, help="Give no colour of TO twice.")
@click.option(
    "--format",
    "form",
    type=click.Choice(("table", "csv", "json")),
    default="table",
    show_default=True,
    help="A table to read, or the same with all its figures for other programs.",
)
def match_command(
    source_name: str,
    target_name: str,
    content_folder: Path,
    pattern_name: str | None,
    distinct: bool,
    form: str,
) -> None:
    """The nearest colours on another thread card.

    \b
    For each colour of the card FROM its nearest on the card TO, and how far apart the
    two are: the same to the eye, close, visible or far. Cards go by their file names.
    With --distinct the colours are paired so that all differences together are least.

    \b
    Examples:
      packetgen match larkmoss tansywick
      packetgen match larkmoss tansywick --pattern robin-on-the-spade --distinct
      packetgen match tansywick larkmoss --format csv
    """
    from packetgen.reckon.matching import TooFewColours
    from packetgen.render.match_table import UNCERTAINTY, as_csv, as_json, as_table, matching

    checked = _checked(content_folder)
    source, target = (_card(name, checked) for name in (source_name, target_name))
    colours = tuple(source.colours.values())
    if pattern_name is not None:
        colours = _colours_used(source, pattern_name, checked)
    try:
        found = matching(source, target, colours, distinct)
    except TooFewColours as error:
        instead = "leave out --distinct"
        if pattern_name is None:
            instead += ", or ask for the colours of one pattern with --pattern"
        raise click.UsageError(
            f"{error.wanted} colours of {source.name} cannot each have their own among the "
            f"{error.free} of {target.name}; {instead}"
        ) from error
    if form == "csv":
        click.echo(as_csv(found).encode(), nl=False)  # bytes keep the line ends of RFC 4180
        click.echo(UNCERTAINTY, err=True)
    else:
        click.echo(as_json(found) if form == "json" else as_table(found))


def _card(name: str, checked: Proof) -> ThreadCard:
    from packetgen.diagnostics import nearest

    cards = checked.thread_cards
    if name not in cards:
        raise click.UsageError(f"there is no thread card {name!r}; {nearest(name, sorted(cards))}")
    return cards[name]


def _colours_used(card: ThreadCard, pattern_name: str, checked: Proof) -> tuple[Colour, ...]:
    """The colours of the card that a pattern, or a series, uses in any of its thread sets."""
    from packetgen.reckon.needle import threads_used

    wanted = _wanted((pattern_name,), checked)
    patterns = [figure.pattern for each in checked.reckoned for figure in each.figures]
    threads = [
        thread
        for pattern in patterns
        if pattern.id in wanted
        for thread_set in pattern.thread_sets
        for thread in threads_used(pattern, thread_set)
    ]
    numbers = {colour.number for of, colour in threads if of.id == card.id}
    if not numbers:
        cards = ", ".join(sorted({of.id for of, _ in threads}))
        raise click.UsageError(
            f"{pattern_name!r} uses no colour of {card.id!r}; it uses those of {cards}"
        )
    return tuple(colour for number, colour in card.colours.items() if number in numbers)


def _checked(content_folder: Path) -> Proof:
    """The proof of the folder; prints every problem and ends the program when something is wrong."""
    checked = proof(content_folder)
    for problem in checked.problems:
        click.echo(f"{content_folder.as_posix()}/{problem}", err=True)
    if not checked.sound:
        faults = len(checked.problems.errors)
        click.echo(f"{_counted(faults, 'thing')} to mend; nothing was written.", err=True)
        raise SystemExit(CONTENT_WRONG)
    return checked


def _wanted(names: tuple[str, ...], checked: Proof) -> frozenset[str] | None:
    """Pattern ids that the names stand for; None for all of them."""
    from packetgen.diagnostics import nearest

    if not names:
        return None
    patterns_of = {each.series.id: _pattern_ids(each) for each in checked.reckoned}
    known = {pattern: (pattern,) for ids in patterns_of.values() for pattern in ids} | patterns_of
    for name in names:
        if name not in known:
            raise click.UsageError(
                f"there is no pattern or series called {name!r}; {nearest(name, sorted(known))}"
            )
    return frozenset(pattern for name in names for pattern in known[name])


def _pattern_ids(each: Reckoned) -> tuple[str, ...]:
    return tuple(figure.pattern.id for figure in each.figures)


def _need_engine() -> None:
    from packetgen.systemlibs import missing_libraries, what_to_type

    missing = missing_libraries()
    if missing:
        _stop(f"the PDF engine needs {', '.join(missing)}.\n{what_to_type()}")


def _stop(why: str) -> None:
    click.echo(f"packetgen: {why}", err=True)
    raise SystemExit(MACHINE_WRONG)


def _counted(number: int, noun: str) -> str:
    return f"{number} {noun}{'' if number == 1 else 's'}"


class _Progress:
    """A bar on a terminal, plain lines elsewhere."""

    def __init__(self, steps: int) -> None:
        self._bar = click.progressbar(
            length=steps, item_show_func=lambda line: line, show_eta=False, width=24
        )
        self._plain = not os.isatty(1)
        self._begun = False

    def __enter__(self) -> "_Progress":
        if not self._plain:
            self._bar.__enter__()
        return self

    def __exit__(self, *why: object) -> None:
        if not self._plain:
            self._bar.update(1 if self._begun else 0)
            self._bar.__exit__(*why)

    def tell(self, line: str) -> None:
        """A step begins; on a terminal the one before it is done."""
        if self._plain:
            click.echo(line)
            return
        self._bar.update(1 if self._begun else 0, line)
        self._begun = True
