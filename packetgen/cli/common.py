"""What the commands share: options, the check of the content, names, and how a command ends."""

from collections.abc import Callable, Iterable
from datetime import date, datetime
from pathlib import Path

import click

from packetgen.nouns import counted
from packetgen.pipeline import Proof, Reckoned, proof

CONTENT_WRONG, MACHINE_WRONG = 1, 2


def content_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--content",
        "content_folder",
        type=click.Path(file_okay=False, path_type=Path),
        default=Path("content"),
        show_default=True,
        help="The folder that holds threads, cloths, finishes and series.",
    )(command)


class Day(click.ParamType):
    """A day, or a day and a time without a zone: date or datetime."""

    name = "DAY"

    def convert(self, value: object, param: object, ctx: object) -> date:
        if isinstance(value, date):
            return value
        try:
            given = datetime.strptime(str(value), "%Y-%m-%d %H:%M")
        except ValueError:
            pass
        else:
            return given
        try:
            return datetime.strptime(str(value), "%Y-%m-%d").date()
        except ValueError:
            self.fail(
                f"{value!r} is no day; write for example 2027-01-15, or '2027-01-15 08:30'",
                param,
                ctx,
            )


def templates_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--templates",
        "own_templates",
        type=click.Path(exists=True, file_okay=False, path_type=Path),
        help="Your own templates; a file here is used instead of the one that comes with the tool. "
        "[default: the folder 'templates' beside the content, if there is one]",
    )(command)


def templates_of(content_folder: Path, own_templates: Path | None) -> Path | None:
    """The author's own templates: where she says that they are, or beside the content if there are any."""
    beside = content_folder.parent / "templates"
    return own_templates or (beside if beside.is_dir() else None)


def checked_content(content_folder: Path) -> Proof:
    """The proof of the folder; prints every problem and ends the program when something is wrong."""
    checked = proof(content_folder)
    say_problems(checked.problems, content_folder)
    if not checked.sound:
        faults = len(checked.problems.errors)
        click.echo(f"{counted(faults, 'thing')} to mend; nothing was written.", err=True)
        raise SystemExit(CONTENT_WRONG)
    return checked


def say_problems(problems: Iterable[object], content_folder: Path) -> None:
    """Every problem, a line each."""
    for problem in problems:
        click.echo(f"{content_folder.as_posix()}/{problem}", err=True)


def wanted_ids(names: tuple[str, ...], checked: Proof) -> frozenset[str] | None:
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


def stop(why: str) -> None:
    click.echo(f"packetgen: {why}", err=True)
    raise SystemExit(MACHINE_WRONG)
