"""`packetgen proof`"""

import os
import sys
from collections import Counter
from collections.abc import Iterator, Sequence
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, NoReturn

import click

from packetgen.cli.common import (
    NAME,
    as_of_option,
    content_option,
    editions_option,
    is_ahead,
    need_known,
    need_outside,
    nothing_written,
    templates_of,
    templates_option,
)
from packetgen.cli.ending import CONTENT_WRONG
from packetgen.cli.reissuing import say_of_unrevised
from packetgen.cli.saying import say
from packetgen.nouns import counted, listed

if TYPE_CHECKING:
    from packetgen.pipeline import Foretold, Order, Proof
    from packetgen.pipeline.foretelling import Days
    from packetgen.reckon.review import Review


def _explain(ctx: click.Context, param: click.Parameter, code: str | None) -> None:
    """Answer and end the command, whatever else was asked."""
    if code is None or ctx.resilient_parsing:
        return
    from packetgen.program import message_examples
    from packetgen.reference.catalogue import all_codes, explained, nearest_code, read_examples

    code = code.strip("[]")
    said = explained(code, read_examples(message_examples())) if code else all_codes()
    if said is None:
        raise click.UsageError(f"there is no message with the code {code!r}; {nearest_code(code)}")
    say(said)
    ctx.exit()


_TOGETHER = 4  # files that would change for one reason


@click.command("proof")
@click.argument("names", nargs=-1, type=NAME, metavar="[NAME]...")
@content_option
@click.option(
    "--alone", is_flag=True, help="Also list where in each pattern most stitches stand alone."
)
@click.option(
    "--report",
    type=click.Path(dir_okay=False, path_type=Path),
    metavar="FILE",
    help="Also write the whole review as one page, with a picture of each design: for yourself, "
    "not for publishing.",
)
@click.option(
    "--strict",
    is_flag=True,
    help="For a release: advice counts as faults, and with --against a revision that is missing.",
)
@click.option(
    "--against",
    "build_folder",
    type=click.Path(exists=True, file_okay=False, path_type=Path),
    help="Also say what a build into this folder would change of the one that is there.",
)
@templates_option
@editions_option
@as_of_option
@click.option(
    "--explain",
    "code",
    is_flag=False,
    flag_value="",
    metavar="[CODE]",
    callback=_explain,
    expose_value=False,
    is_eager=True,
    help="Tell why a message comes and what mends it, by the code in brackets at the end of its line; "
    "without a code, list them all.",
)
def proof_command(
    names: tuple[str, ...],
    content_folder: Path,
    alone: bool,
    report: Path | None,
    strict: bool,
    build_folder: Path | None,
    own_templates: Path | None,
    editions: tuple[str, ...],
    as_of: date | None,
) -> None:
    """Check everything as an editor would, and build nothing.

    \b
    Of what all share, of each pattern and of each series: faults, which stop a build;
    advice, on what a buyer might complain of; and what is well done. Every problem is
    one line: file:line:column: what is wrong; what would be right. At its end stands a
    code in brackets, of which --explain tells more. All problems are shown in one go.
    Of each pattern it says how wide and how high its chart is, and how many stitches
    have no neighbour of their colour, since each of those is begun and ended by itself.
    Beside a build, in 'build' or the folder of --against, it tells of lines and knots that
    stayed where they were while the stitches under them were moved.

    \b
    With the name of a pattern's or a series' folder only what is about it is shown, and
    faults elsewhere. All is checked even then, and the last line counts all.

    \b
    --report writes the same as one page that needs no other file. It shows whole
    designs, so it may not stand where a build is published from. --strict lets nothing
    pass, advice neither.

    \b
    With --against it says of each file what a build would do to it, and why. Pages are
    filled for that, in memory. Packets are not set and pictures are not drawn, so of
    those it can only be said that they would be made anew and may change. --templates,
    --edition and --as-of are those of the build.

    \b
    Examples:
      packetgen proof
      packetgen proof robin-on-the-spade
      packetgen proof --content my-patterns
      packetgen proof --alone
      packetgen proof --report proof.html
      packetgen proof --strict
      packetgen proof --explain name-unknown
      packetgen proof --against build
      packetgen proof --against build --as-of 2027-01-15
    """
    from packetgen.load.titles import names_in
    from packetgen.pipeline import proof, review
    from packetgen.pipeline.since_built import with_left_behind
    from packetgen.render.proof_report import summary

    _need_build(build_folder, bool(own_templates or editions or as_of))
    _need_own_place(report, content_folder)
    known = names_in(content_folder)
    if known:
        need_known(names, known)
    checked = with_left_behind(proof(content_folder), build_folder or Path("build"))
    found = review(checked)
    if report:
        _write_report(report, found, checked, content_folder)
    shown = found.about(names) if names else found
    _show(shown, content_folder, alone)
    if report:
        say(f"\nThe whole review stands in {report}; it is your own, and not for publishing.")
    if found.faults:
        _end_with(found, names, bool(known))
    counts = " Under --strict advice counts as faults." * (bool(found.advice) and not strict)
    summed = summary(found)
    if shown != found:
        summed = f"In all, {summed[0].lower()}{summed[1:]}"
    say(summed + counts)
    if elsewhere := found.advice - shown.advice:
        say(f"{counted(elsewhere, 'piece of advice')} elsewhere: packetgen proof shows all.")
    unsaid = 0
    if build_folder is not None:
        unsaid = _say_foretold(
            content_folder, build_folder, own_templates, editions, as_of, checked
        )
    if strict and found.advice:
        from packetgen.reckon.review import EXAMPLES

        begun = any(one.code in EXAMPLES for chapter in found.chapters for one in chapter.advice)
        later = " More may come when nothing is left of an example." * begun
        say(
            f"--strict: {counted(found.advice, 'piece of advice')} to act on.{later} What shall stay as it is, lay "
            "aside with your reason under 'laid_aside': of a pattern in its pattern.yaml, of the series alone in series.yaml."
        )
    if strict and unsaid:
        without = counted(unsaid, "pattern")
        say(f"--strict: {without} without the revision that buyers need to be told of.")
    if strict and (found.advice or unsaid):
        raise SystemExit(CONTENT_WRONG)


def _show(found: "Review", content_folder: Path, alone: bool) -> None:
    """On the standard output, faults too: they are what a proof is asked for."""
    from packetgen.render.proof_report import lines_of
    from packetgen.render.terminal import depth_of

    depth = depth_of(os.environ, sys.stdout.isatty())
    for line in lines_of(found, content_folder.as_posix(), alone):
        say(line.text, shown=line.shown(depth))


def _need_own_place(report: Path | None, content_folder: Path) -> None:
    """A page that shows whole designs must not be published by mistake, nor lie in the content."""
    if report is None:
        return
    from packetgen.record import MANIFEST
    from packetgen.write.staging import TOPS

    if report.suffix != ".html":
        raise click.UsageError(f"--report '{report}': call it something that ends in .html")
    need_outside(content_folder, "--report", report)
    for folder in report.resolve().parents:
        of_build = folder.parent.name == "build" or (folder.parent / MANIFEST).is_file()
        if folder.name in TOPS and of_build:
            raise click.UsageError(
                f"--report '{report}' would lie in a build, and it shows whole designs; "
                "choose a place of your own, for example proof.html"
            )


def _write_report(report: Path, found: "Review", checked: "Proof", content_folder: Path) -> None:
    from packetgen.model import Look
    from packetgen.render.proof_page import proof_page
    from packetgen.render.templates import environment
    from packetgen.write import replaced

    series = [each.series for each in checked.reckoned]
    titles = [one.title for one in series] or [
        title for folder, title in checked.titles.items() if folder.count("/") == 1
    ]
    title = " · ".join(titles) or content_folder.name
    look = series[0].look if len(series) == 1 else Look()
    report.parent.mkdir(parents=True, exist_ok=True)
    replaced(report, proof_page(found, title, content_folder.as_posix(), look, environment()))


def _end_with(found: "Review", names: tuple[str, ...], some_there: bool) -> NoReturn:
    own = sum(len(chapter.faults) for chapter in found.chapters if chapter.is_about(names))
    none_of_these = f", and nothing of it in {listed(names)}" * (bool(names) and not own)
    later = " More advice may come when that is done." * some_there
    say(f"{counted(found.faults, 'thing')} to mend{none_of_these}.{later}")
    raise SystemExit(CONTENT_WRONG)


def _say_foretold(
    content_folder: Path,
    build_folder: Path,
    own_templates: Path | None,
    editions: tuple[str, ...],
    as_of: date | None,
    checked: "Proof",
) -> int:
    """What a build would do; how many patterns need a revision and have none."""
    from packetgen.pipeline import Order

    order = Order(
        content=content_folder,
        build=build_folder,
        own_templates=templates_of(content_folder, own_templates),
        editions=tuple(sorted(set(editions))) or None,
        as_of=as_of or datetime.now(UTC),
        ahead=is_ahead(as_of),
    )
    found = _foretold(order, checked)
    if found.lines and found.of_another_day and found.shown is None:
        say(
            f"'{build_folder}' was made for another day: some of the files below may change, come or go for the day "
            "alone; type the same --as-of to leave that out."
        )
    of_day = len(found.for_the_day)
    if of_day and of_day == len(found.lines):
        alone = _of_the_day(counted(of_day, "file"), of_day, build_folder, found.shown, as_of)
        say(f"Nothing of yours has changed. {alone}")
    for line in _by_reason([one for one in found.lines if one[0] not in found.for_the_day]):
        say(line)
    say_of_unrevised(found.unrevised, build_folder, content_folder, as_of or date.today())
    if not found.lines or of_day < len(found.lines):
        say(_summary(found))
        if of_day:
            more = f"{counted(of_day, 'file')} more, not listed,"
            say(_of_the_day(more, of_day, build_folder, found.shown, as_of))
    return len(found.unrevised)


def _by_reason(lines: Sequence[tuple[str, str]]) -> Iterator[str]:
    """A line for each file, and those of one reason together below it where they are many."""
    parts = [(path, *what.partition(": ")[::2]) for path, what in lines]
    times = Counter(why for _, _, why in parts if why)
    many = [why for why in times if times[why] >= _TOGETHER]
    yield from (f"{path}: {what}" for path, what in lines if what.partition(": ")[2] not in many)
    for why in many:
        yield f"For {why}:"
        yield from (f"  {path}: {what}" for path, what, of in parts if of == why)


def _of_the_day(
    files: str, number: int, build_folder: Path, shown: "Days | None", as_of: date | None
) -> str:
    """As of which day one looks, which day it is that was built, and what comes of it."""
    stands = f"shows what stands {_span(shown)}" if shown else "is of another day"
    day_of_build = f"--as-of {shown.one}" if shown else "the --as-of that it was made with"
    return (
        f"This looks as of {as_of or 'today'}, and '{build_folder}' {stands}; "
        f"{files} {'differs' if number == 1 else 'differ'} for that alone. "
        f"To compare with the day of '{build_folder}', add {day_of_build}."
    )


def _span(days: "Days") -> str:
    if days.last is None:
        return f"from {days.first} on"
    return f"not after {days.last}" if days.first is None else f"from {days.first} to {days.last}"


def _need_build(build_folder: Path | None, of_build: bool) -> None:
    from packetgen.record import MANIFEST

    if build_folder is None and of_build:
        raise click.UsageError(
            "--templates, --edition and --as-of belong to a build; say which with --against"
        )
    if build_folder and not (build_folder / MANIFEST).is_file():
        raise click.UsageError(
            f"'{build_folder}' holds no build ({MANIFEST} is not there); "
            "packetgen build makes one, into the folder 'build' unless it is told another"
        )


def _foretold(order: "Order", checked: "Proof") -> "Foretold":
    from packetgen.pipeline import foretold
    from packetgen.render.templates import TemplateFault

    try:
        return foretold(order, checked)
    except TemplateFault as fault:
        say(str(fault), err=True)
        nothing_written(1)


def _summary(found: "Foretold") -> str:
    from packetgen.pipeline.foretelling import Kind

    if not found.lines and not found.work:
        return f"A build would change nothing: {counted(found.left, 'file')} as they are."
    work = (
        (found.packets, f"set {counted(found.packets, 'packet')}"),
        (found.pictures, f"draw {counted(found.pictures, 'picture')}"),
        (found.pages_of, f"fill the pages of {found.pages_of} series"),
    )
    todo = listed(_those_there(work)) or "make nothing"
    own = Counter(kind for path, kind in found.kinds.items() if path not in found.for_the_day)
    said = [f"{own[kind]} {kind.value}" for kind in Kind if own[kind]]
    files = ", ".join((*said, f"{found.left} as they are"))
    if (
        found.for_the_day
    ):  # the work is for all of them, and those of the day are told by themselves
        return f"Of these files a build would make: {files}."
    return f"A build would {todo}. Its files: {files}."


def _those_there(said: tuple[tuple[int, str], ...]) -> tuple[str, ...]:
    return tuple(words for number, words in said if number)
