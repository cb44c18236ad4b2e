"""What the commands share: options, the check of the content, and names."""

import os
import shlex
from collections.abc import Callable, Collection, Iterable
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, NoReturn

import click
from click.core import ParameterSource

from packetgen.cli.ending import CONTENT_WRONG
from packetgen.cli.saying import say
from packetgen.edition_names import EDITION_NAMES
from packetgen.nouns import counted

if TYPE_CHECKING:
    from packetgen.diagnostics import Problem
    from packetgen.pipeline import Proof, Reckoned

    OfAny = click.ParamType[Any]
    OneOfWords = click.Choice[str]
else:  # older releases of click know no such thing
    OfAny = click.ParamType
    OneOfWords = click.Choice


TODAY = "today"


def content_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--content",
        "content_folder",
        type=click.Path(file_okay=False, path_type=Path),
        default=Path("content"),
        show_default=True,
        callback=_not_from_within,
        help="The folder that holds threads, cloths, finishes and series.",
    )(command)


def _not_from_within(ctx: click.Context, param: click.Parameter, folder: Path) -> Path:
    """The folder as given; ends the command where it is not there and the terminal stands inside of one,
    since all that is advised would then lead to a second one in the first."""
    if folder.exists() or ctx.resilient_parsing:
        return folder
    here = Path.cwd()
    around = (one for one in (here, *here.parents) if any(one.glob("series/*/series.yaml")))
    content = next(around, None)
    new_on_purpose = (
        ctx.command.name == "begin"
        and ctx.get_parameter_source("content_folder") is not ParameterSource.DEFAULT
    )
    if content is None or new_on_purpose:
        return folder
    up = Path(os.path.relpath(content, here)).as_posix()
    where = (
        "is itself a content folder" if content == here else f"lies in the content folder '{up}'"
    )
    raise click.UsageError(
        f"there is no folder '{folder}' here, and this folder {where}; "
        f"go where it lies, cd {Path(os.path.relpath(content.parent, here)).as_posix()}, or add --content {up}"
    )


class FileThere(OfAny):
    """A file that an author names; where there is none, the nearest of that folder is offered."""

    name = "FILE"

    def __init__(self, *endings: str) -> None:
        self._endings = endings

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> Path:
        from packetgen.diagnostics import nearest

        path = Path(str(value))
        if path.is_dir():
            self.fail(f"'{path}' is a folder; give a file in it", param, ctx)
        if path.exists():
            return path
        folder = path.parent
        if not folder.is_dir():
            self.fail(f"there is no folder '{folder}'; look where you are", param, ctx)
        there = sorted(
            one.name
            for one in folder.iterdir()
            if one.suffix.lower() in self._endings
            and not one.name.startswith(".")
            and one.is_file()
        )
        hint = (
            nearest(path.name, there)
            if there
            else f"none there ends in {' or '.join(self._endings)}"
        )
        where = "here" if folder == Path() else f"in '{folder}'"
        self.fail(f"there is no file {path.name!r} {where}; {hint}", param, ctx)


class NameIn(OfAny):
    """What a folder of a pattern or a series, or a card, is called. Its path serves as well: Tab writes that."""

    name = "TEXT"
    _OF_FOLDERS = ("pattern.yaml", "series.yaml")

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> str:
        path = Path(str(value))
        if len(path.parts) > 1 and path.suffix == ".yaml" and path.is_file():
            return path.parent.name if path.name in self._OF_FOLDERS else path.stem
        if len(path.parts) > 1 and any((path / one).is_file() for one in self._OF_FOLDERS):
            return path.name
        return str(value)


NAME = NameIn()


class Between(OfAny):
    """A whole number from `least` to `most`, of what is named in the plural, if it is."""

    name = "NUMBER"
    _number: type[int] | type[float] = int

    def __init__(self, least: int, most: int | None = None, what: str = "") -> None:
        self._least, self._most = least, most
        self._right = f"{least} or more" if most is None else f"from {least} to {most}"
        self._right += what and f" {what}"

    def get_metavar(self, param: object, ctx: object = None) -> str:
        """'5-400' in the list of options; a number without an upper end is just a number."""
        return self.name if self._most is None else f"{self._least}-{self._most}"

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> Any:
        try:
            number = self._number(str(value))
        except ValueError:
            whole = "whole " if self._number is int else ""
            self.fail(f"{value!r} is no {whole}number; give {self._right}", param, ctx)
        # What is no number at all, as nan, is in no range either.
        if not self._least <= number or (self._most is not None and number > self._most):
            small = "small" if number < self._least else "large"
            self.fail(f"{number} is too {small}; give {self._right}", param, ctx)
        return number


class AnyBetween(Between):
    """The same for a number that need not be whole."""

    _number = float


class OneOf(OneOfWords):
    """One of a few words; for any other the nearest of them is offered."""

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> str:
        from packetgen.diagnostics import nearest_of

        given = str(value)
        if given in self.choices:
            return given
        near = nearest_of(given, tuple(self.choices))
        self.fail(
            f"{given!r} is not one of {', '.join(self.choices)}"
            + (f"; did you mean {near!r}?" if near else ""),
            param,
            ctx,
        )


class Day(OfAny):
    """A day, or a day and a time without a zone: date or datetime. 'today' is this very moment."""

    name = "DAY"

    def convert(
        self, value: object, param: click.Parameter | None, ctx: click.Context | None
    ) -> Any:
        if isinstance(value, date):
            return value
        if value == TODAY:
            return datetime.now(UTC)
        try:
            given = datetime.strptime(str(value), "%Y-%m-%d %H:%M")
        except ValueError:
            pass
        else:
            return given
        try:
            return datetime.strptime(str(value), "%Y-%m-%d").date()
        except ValueError:
            self.fail(_no_day(str(value)), param, ctx)


def is_ahead(as_of: date | None) -> bool:
    """Whether that day or moment, as Day gives it, is not there yet by the clock of this machine."""
    if isinstance(as_of, datetime):
        return as_of > datetime.now(as_of.tzinfo)
    return as_of is not None and as_of > date.today()


def _no_day(given: str) -> str:
    from packetgen.load.spoken_days import spoken_day

    impossible, meant = _impossible(given), spoken_day(given)
    right = meant or f"for example 2027-01-15, '2027-01-15 08:30' or {TODAY}"
    wrong = impossible or f"{given!r} is not how a day is written here"
    return f"{wrong}; write {right}"


def _impossible(given: str) -> str:
    """Why there is no such day or time, in the words that the loader has for it; '' where there is."""
    from packetgen.diagnostics import Place, Problems
    from packetgen.load.spoken_days import complain_of_impossible

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
        type=OneOf(EDITION_NAMES),
        help="Make this edition of the charts; may be given several times. "
        "[default: what each pattern.yaml lists]",
    )(command)


def as_of_option(command: Callable[..., None]) -> Callable[..., None]:
    return click.option(
        "--as-of",
        "as_of",
        type=Day(),
        help="Make the site as it will stand at the end of this day, or at a time of it by the clock of "
        f"the series, for example 2027-01-15 or '2027-01-15 08:30'. [default: {TODAY}, as it stands now]",
    )(command)


def templates_of(content_folder: Path, own_templates: Path | None) -> Path | None:
    """The author's own templates: where she says that they are, or beside the content if there are any.

    Beside the content of a clone are the tool's, which are nobody's own.
    """
    from packetgen.program import project_templates

    beside = content_folder.parent / "templates"
    if own_templates or not beside.is_dir() or beside.samefile(project_templates()):
        return own_templates
    return beside


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


def need_outside(content_folder: Path, option: str, place: Path) -> None:
    """What is made must not lie among what it is made of. Raises a click.UsageError."""
    content = content_folder.resolve()
    if content == place.resolve() or content in place.resolve().parents:
        raise click.UsageError(f"{option} '{place}' would lie in the content; choose another place")


def nothing_written(faults: int) -> NoReturn:
    """End the command: so many things are to mend."""
    say(f"{counted(faults, 'thing')} to mend; nothing was written.", err=True)
    raise SystemExit(CONTENT_WRONG)


def wanted_ids(names: tuple[str, ...], checked: "Proof") -> frozenset[str] | None:
    """Pattern ids that the names stand for; None for all of them."""
    if not names:
        return None
    patterns_of = {each.series.id: _pattern_ids(each) for each in checked.reckoned}
    known = {pattern: (pattern,) for ids in patterns_of.values() for pattern in ids} | patterns_of
    need_known(names, known)
    return frozenset(pattern for name in names for pattern in known[name])


def need_known(names: tuple[str, ...], known: Collection[str]) -> None:
    """End the command where one of the names is no pattern's and no series'."""
    from packetgen.diagnostics import nearest

    for name in names:
        if name not in known:
            if Path(name, "series").is_dir():
                raise click.UsageError(
                    f"{name!r} is a folder; write --content {shlex.quote(name)} for what is in it"
                )
            raise click.UsageError(
                f"there is no pattern or series called {name!r}; {nearest(name, sorted(known))}"
            )


def _pattern_ids(each: "Reckoned") -> tuple[str, ...]:
    return tuple(figure.pattern.id for figure in each.figures)
