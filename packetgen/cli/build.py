"""`packetgen build`"""

import gc
import os
from collections.abc import Sequence
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

import click

from packetgen.cli.common import (
    NAME,
    Between,
    as_of_option,
    content_option,
    editions_option,
    is_ahead,
    need_outside,
    nothing_written,
    say_problems,
    templates_of,
    templates_option,
    wanted_ids,
)
from packetgen.cli.ending import STOPPED, stop
from packetgen.cli.reissuing import say_of_unrevised
from packetgen.cli.saying import say
from packetgen.edition_names import EDITION_NAMES
from packetgen.nouns import counted, listed
from packetgen.offered import content_words

if TYPE_CHECKING:
    from click._termui_impl import ProgressBar

    from packetgen.pipeline import Built, Order, Told


# Objects that are made before the collector looks through the youngest: most of a build's live to its end.
_LIVES_ON = 50_000


@click.command("build")
@click.argument("names", nargs=-1, type=NAME, metavar="[NAME]...")
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
@editions_option
@as_of_option
@click.option("--why", is_flag=True, help="Say of each file whether it was made, and why.")
@click.option("--afresh", is_flag=True, help="Make everything anew, whatever the last build has.")
@click.option(
    "--workers",
    type=Between(1, 64),
    help="Patterns that are made side by side. [default: one for each core]",
)
def build_command(
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
    from packetgen.pipeline import Order

    need_outside(content_folder, "--into", build_folder)
    gc.set_threshold(_LIVES_ON)
    order = Order(
        content=content_folder,
        build=build_folder,
        own_templates=templates_of(content_folder, own_templates),
        editions=tuple(sorted(set(editions))) or None,
        as_of=as_of or datetime.now(UTC),
        ahead=is_ahead(as_of),
        afresh=afresh,
        workers=workers or os.cpu_count() or 1,
        choose=(lambda checked: wanted_ids(names, checked)) if names else None,
    )
    _need_engine()
    built = _built(order)
    say_problems(built.problems, content_folder)
    _say_of_unchanged(built.advice, content_folder)
    for fault in built.faults:
        say(str(fault), err=True)
    if not built.sound:
        nothing_written(len(built.problems.errors) + len(built.faults))
    _say_why(built, why)
    say(_summary(built, build_folder))
    say_of_unrevised(built.unrevised, build_folder, content_folder, as_of or date.today())
    _say_of_editions(built, editions)
    _say_of_later(built)
    proof = f"packetgen proof{content_words(content_folder)}"
    if built.examples:
        left = counted(built.examples, "thing")
        stand = "stands as it was" if built.examples == 1 else "stand as they were"
        say(f"Of what begin wrote {left} still {stand}: {proof} names all.")
    say(f"{proof} tells more: what a buyer might complain of, and what is well done.")


def _built(order: "Order") -> "Built":
    """The build, or the end of the command in plain words."""
    from packetgen.pipeline import build
    from packetgen.pipeline.order import WorkerLost

    try:
        with _Progress() as progress:
            return build(order, progress.told())
    except BrokenPipeError:
        raise  # of our own lines
    except OSError as error:
        stop(f"cannot write the build: {error.strerror or error} ({error.filename or order.build})")
    except WorkerLost:
        stop(
            "a process that drew or set a pattern was ended from outside, as happens where memory runs "
            f"short; {_still_there(order.build)}. Try it again with --workers 1."
        )
    except KeyboardInterrupt:
        say(f"Stopped; {_still_there(order.build)}.", err=True)
        raise SystemExit(STOPPED) from None


def _still_there(build_folder: Path) -> str:
    from packetgen.record import MANIFEST

    if (build_folder / MANIFEST).is_file():
        return f"{build_folder} holds the last good build"
    return "nothing was written"


def _say_of_unchanged(advice: tuple[str, ...], content_folder: Path) -> None:
    """One line for all advice on what was not looked at again: of hundreds of old lines nobody would find
    the new one. The log has them all."""
    import logging

    log = logging.getLogger("packetgen.advice")
    for line in advice:
        log.debug("%s/%s", content_folder.as_posix(), line)
    if advice:
        pieces = counted(len(advice), "piece of advice")
        where = content_words(content_folder)
        say(f"{pieces} where nothing has changed: see packetgen proof{where}", err=True)


def _say_why(built: "Built", aloud: bool) -> None:
    """Of each file, on the screen or for the log alone."""
    import logging

    from packetgen.pipeline.reasons import reasons

    log = logging.getLogger("packetgen.files")
    if aloud or log.isEnabledFor(logging.DEBUG):
        for path, reason in reasons(built):
            line = f"{path}: {reason}"
            if aloud:
                say(line)
            else:
                log.debug("%s", line)


def _summary(built: "Built", build_folder: Path) -> str:
    made, there = len(built.made), len(built.outputs)
    said = f"{counted(made, 'file')} made, {counted(there - made, 'file')} left as they were"
    if not made and not built.gone:
        what = (
            "All came out the same, to the byte" if built.inputs_changed else "Nothing has changed"
        )
        said = f"{what}: {counted(there, 'file')} left as they were"
    return f"{said}. Open {build_folder / 'site' / 'index.html'} to look."


def _say_of_editions(built: "Built", asked: Sequence[str]) -> None:
    """That packets are gone which this build was not asked for: they may have been made on purpose; and that those that it
    was asked for stay until then."""
    if asked:
        say(
            f"{listed(tuple(dict.fromkeys(asked)))}: made since --edition asks for it. A build that does not takes it away "
            "again, unless pattern.yaml lists it under editions."
        )
    sold = [path.removesuffix(".zip") for path in built.outputs if path.endswith(".zip")]
    beginnings = tuple(f"{path}-{name}" for path in sold for name in EDITION_NAMES)
    gone = [path for path in built.gone if path.startswith(beginnings)]
    if gone:
        more = f" and {len(gone) - 1} more" if len(gone) > 1 else ""
        say(
            f"Taken away: {gone[0]}{more}. An edition is made again where pattern.yaml lists it under editions, or "
            "--edition asks for it."
        )


def _say_of_later(built: "Built") -> None:
    """That something is not on the site yet, and how to see it: its pages and texts would be missed."""
    waiting = sorted(
        (one.stands_until, one.title) for one in built.series.values() if one.stands_until
    )
    if not waiting:
        return
    moment, title = datetime.fromisoformat(waiting[0][0]), waiting[0][1]
    more = len(waiting) - 1
    of = f"Of {title}{f' and of {more} more series' if more else ''}"
    day = f"{moment.day} {moment:%B %Y}"
    say(
        f"{of} not all is out yet; something more comes out on {day}. A pattern that is not out is shown by its title, its "
        f"day and a close-up alone. With --as-of {moment:%Y-%m-%d} site and share are made as they will stand then."
    )


def _need_engine() -> None:
    from packetgen.systemlibs import missing_libraries, this_system, what_to_type

    missing = missing_libraries()
    if missing:
        stop(f"the PDF engine needs {', '.join(missing)}.\n{what_to_type(this_system())}")


class _Progress:
    """A bar on a terminal, plain lines elsewhere."""

    def __init__(self) -> None:
        self._plain = not os.isatty(1)
        self._bar: ProgressBar[str] | None = None

    def told(self) -> "Told":
        from packetgen.pipeline import Told

        return Told(self._expect, self._step, self._wait)

    def __enter__(self) -> "_Progress":
        return self

    def __exit__(self, *_: object) -> None:
        if self._bar:
            self._bar.__exit__(None, None, None)

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
            say(line)

    def _wait(self) -> None:
        say("another build is at work there; waiting for it to end", err=True)
