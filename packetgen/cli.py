"""The command line: words for people, exit codes for scripts (0 well, 1 content, 2 usage or machine)."""

import os
from collections.abc import Callable
from pathlib import Path

import click

from packetgen import __version__
from packetgen.model import EDITION_NAMES
from packetgen.pipeline import SYMBOLS_FILE, Proof, Reckoned, build, proof, settle

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
def proof_command(content_folder: Path) -> None:
    """Check everything and write nothing.

    \b
    Every problem is one line: file:line:column: what is wrong; what would be right.
    All of them are shown in one go.

    \b
    Examples:
      packetgen proof
      packetgen proof --content my-patterns
    """
    checked = _checked(content_folder)
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
def kit_command(
    names: tuple[str, ...], content_folder: Path, set_name: str | None, cloth_name: str | None
) -> None:
    """What to buy, as a table.

    \b
    With the name of one pattern: its list. With several, or without a name: one list for
    all of them, in which what is left of a skein in one design serves the next.

    \b
    Examples:
      packetgen kit robin-on-the-spade
      packetgen kit robin-on-the-spade --threads tansywick --cloth pipit-aida-14
      packetgen kit
    """
    from packetgen.render.kit import KitError, kit_table

    checked = _checked(content_folder)
    wanted = _wanted(names, checked)
    chosen = tuple(
        figure
        for each in checked.reckoned
        for figure in each.figures
        if wanted is None or figure.pattern.id in wanted
    )
    try:
        click.echo(kit_table(chosen, set_name, cloth_name))
    except KitError as error:
        raise click.UsageError(str(error)) from error


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
