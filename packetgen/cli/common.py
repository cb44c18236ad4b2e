"""What the commands share: options, the check of the content, and names."""

from collections.abc import Callable, Iterable
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn

import click

from packetgen.cli.ending import CONTENT_WRONG
from packetgen.cli.saying import say
from packetgen.edition_names import EDITION_NAMES
from packetgen.nouns import counted

if TYPE_CHECKING:
    from packetgen.diagnostics import Problem
    from packetgen.pipeline import Proof, Reckoned

    OfAny = click.ParamType[Any]
else:  # older releases of click know no such thing
    OfAny = click.ParamType


def content_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--content",
        "content_folder",
        type=click.Path(file_okay=False, path_type=Path),
        default=Path("content"),
        show_default=True,
        help="The folder that holds threads, cloths, finishes and series.",
    )(command)


class Day(OfAny):
    """A day, or a day and a time without a zone: date or datetime."""

    name = "DAY"

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> Any:
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
            impossible = _impossible(str(value))
            self.fail(
                f"{impossible or f'{value!r} is no day'}; write for example 2027-01-15, or '2027-01-15 08:30'",
                param,
                ctx,
            )


def _impossible(given: str) -> str:
    """Why there is no such day or time, in the words that the loader has for it; '' where there is."""
    from packetgen.diagnostics import Place, Problems
    from packetgen.load.dates import complain_of_impossible

    problems = Problems()
    complain_of_impossible(
        given, lambda code, offset, **facts: problems.add(Place("", 1, offset + 1), code, **facts)
    )
    return "; ".join(f"{problem.wrong}; {problem.right}" for problem in problems)


def templates_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--templates",
        "own_templates",
        type=click.Path(exists=True, file_okay=False, path_type=Path),
        help="Your own templates; a file here is used instead of the one that comes with the tool. "
        "[default: the folder 'templates' beside the content, if there is one]",
    )(command)


def editions_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--edition",
        "editions",
        multiple=True,
        type=click.Choice(EDITION_NAMES),
        help="Make this edition of the charts; may be given several times. "
        "[default: what each pattern.yaml lists]",
    )(command)


def as_of_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--as-of",
        "as_of",
        type=Day(),
        help="Make the site as it will stand at the end of this day, or at a time of it by the clock of "
        "the series, for example 2027-01-15 or '2027-01-15 08:30'. [default: as it stands now]",
    )(command)


def templates_of(content_folder: Path, own_templates: Path | None) -> Path | None:
    """The author's own templates: where she says that they are, or beside the content if there are any."""
    beside = content_folder.parent / "templates"
    return own_templates or (beside if beside.is_dir() else None)


def checked_content(content_folder: Path) -> "Proof":
    """The proof of the folder; prints every problem and ends the program when something is wrong."""
    from packetgen.pipeline import proof

    checked = proof(content_folder)
    say_problems(checked.problems, content_folder)
    if not checked.sound:
        nothing_written(len(checked.problems.errors))
    return checked


def say_problems(problems: "Iterable[Problem | str]", content_folder: Path) -> None:
    """Every problem, a line each; also one of which only the line was kept."""
    for problem in problems:
        line = problem if isinstance(problem, str) else problem.printed
        say(f"{content_folder.as_posix()}/{line}", err=True)


def nothing_written(faults: int) -> NoReturn:
    """End the command: so many things are to mend."""
    say(f"{counted(faults, 'thing')} to mend; nothing was written.", err=True)
    raise SystemExit(CONTENT_WRONG)


def wanted_ids(names: tuple[str, ...], checked: "Proof") -> frozenset[str] | None:
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


def _pattern_ids(each: "Reckoned") -> tuple[str, ...]:
    return tuple(figure.pattern.id for figure in each.figures)
