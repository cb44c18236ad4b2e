"""`packetgen build`"""

import os
from collections.abc import Callable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.common import (
    CONTENT_WRONG,
    Day,
    content_option,
    say_problems,
    stop,
    templates_of,
    templates_option,
    wanted_ids,
)
from packetgen.model.pattern import EDITION_NAMES
from packetgen.nouns import counted

if TYPE_CHECKING:
    from packetgen.pipeline import Built, Told


@click.command("build")
@click.argument("names", nargs=-1, metavar="[NAME]...")
@content_option
@click.option(
    "--into",
    "build_folder",
    type=click.Path(file_okay=False, path_type=Path),
    default=Path("build"),
    show_default=True,
    help="The folder that receives site, packets, share and ledger.",
)
@templates_option
@click.option(
    "--edition",
    "editions",
    multiple=True,
    type=click.Choice(EDITION_NAMES),
    help="Make this edition of the charts; may be given several times. "
    "[default: what each pattern.yaml lists]",
)
@click.option(
    "--as-of",
    "as_of",
    type=Day(),
    help="Make the site as it will stand at the end of this day, or at a time of it by the clock of the "
    "series, for example 2027-01-15 or '2027-01-15 08:30'. [default: as it stands now]",
)
@click.option("--why", is_flag=True, help="Say of each file whether it was made, and why.")
@click.option("--afresh", is_flag=True, help="Make everything anew, whatever the last build has.")
@click.option(
    "--workers",
    type=click.IntRange(1, 64),
    help="Patterns that are made side by side. [default: one for each core]",
)
@click.pass_context
def build_command(
    context: click.Context,
    names: tuple[str, ...],
    content_folder: Path,
    build_folder: Path,
    own_templates: Path | None,
    editions: tuple[str, ...],
    as_of: date | None,
    why: bool,
    afresh: bool,
    workers: int | None,
) -> None:
    """Make the site and the packets.

    \b
    What has not changed since the last build is taken over from it. With the name of a
    pattern's or a series' folder, no other packets are made anew. When something is wrong
    in the content, nothing is written and the last good build stays.

    \b
    What comes out later is not on the site: until its release a pattern shows its
    title, its designer, its day and a close-up. Packets are made all the same.

    \b
    Examples:
      packetgen build
      packetgen build robin-on-the-spade
      packetgen build robin-on-the-spade --edition black-and-white --edition written
      packetgen build --as-of 2027-01-15
      packetgen build --why
    """
    from packetgen.pipeline import Order, build
    from packetgen.pipeline.reasons import reasons

    order = Order(
        content=content_folder,
        build=build_folder,
        own_templates=templates_of(content_folder, own_templates),
        editions=tuple(sorted(set(editions))) or None,
        as_of=as_of or datetime.now(UTC),
        afresh=afresh,
        workers=workers or os.cpu_count() or 1,
        choose=(lambda checked: wanted_ids(names, checked)) if names else None,
    )
    _need_engine()
    try:
        with _Progress() as progress:
            built = build(order, progress.told(context.obj))
    except OSError as error:
        stop(
            f"cannot write the build: {error.strerror or error} ({error.filename or build_folder})"
        )
    say_problems(built.problems, content_folder)
    for line in built.advice:
        click.echo(f"{content_folder.as_posix()}/{line}", err=True)
    for fault in built.faults:
        click.echo(str(fault), err=True)
    if not built.sound:
        faults = len(built.problems.errors) + len(built.faults)
        click.echo(f"{counted(faults, 'thing')} to mend; nothing was written.", err=True)
        raise SystemExit(CONTENT_WRONG)
    if why:
        for path, reason in reasons(built):
            click.echo(f"{path}: {reason}")
    click.echo(_summary(built, build_folder))


def _summary(built: "Built", build_folder: Path) -> str:
    made, there = len(built.made), len(built.outputs)
    said = f"{counted(made, 'file')} made, {counted(there - made, 'file')} left as they were"
    if not made and not built.gone:
        said = f"Nothing has changed: {counted(there, 'file')} left as they were"
    return f"{said}. Open {build_folder / 'site' / 'index.html'} to look."


def _need_engine() -> None:
    from packetgen.systemlibs import missing_libraries, what_to_type

    missing = missing_libraries()
    if missing:
        stop(f"the PDF engine needs {', '.join(missing)}.\n{what_to_type()}")


class _Progress:
    """A bar on a terminal, plain lines elsewhere."""

    def __init__(self) -> None:
        self._plain = not os.isatty(1)
        self._bar = None

    def told(self, log: Callable[[str], None] | None) -> "Told":
        from packetgen.pipeline import Told

        return Told(self._expect, self._step, self._wait, log or (lambda line: None))

    def __enter__(self) -> "_Progress":
        return self

    def __exit__(self, *why: object) -> None:
        if self._bar:
            self._bar.__exit__(*why)

    def _expect(self, steps: int) -> None:
        if not self._plain:
            self._bar = click.progressbar(
                length=steps, item_show_func=lambda line: line, show_eta=False, width=24
            )
            self._bar.__enter__()

    def _step(self, line: str) -> None:
        if self._bar:
            self._bar.update(1, line)
        elif self._plain:
            click.echo(line)

    def _wait(self) -> None:
        click.echo("another build is at work there; waiting for it to end", err=True)
