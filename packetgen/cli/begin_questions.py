"""What `packetgen begin` asks an author: by options, or on a terminal one question after the other."""

import re
from dataclasses import dataclass, field
from pathlib import Path
from typing import TYPE_CHECKING, Any, TypeVar

import click

from packetgen.cli.common import Between, OneOf
from packetgen.cli.saying import say
from packetgen.nouns import listed
from packetgen.starting import LEAST, MOST

if TYPE_CHECKING:
    from packetgen.model import Faces, Series

Value = TypeVar("Value")
if TYPE_CHECKING:
    Words = click.ParamType[str]
    Numbers = click.ParamType[tuple[int, ...]]
else:  # in older versions it does not say of what
    Words = Numbers = click.ParamType


class Answer(Words):
    """What is asked for, checked as it will be where it stands."""

    name = "text"

    def __init__(self, called: str) -> None:
        self._called = called

    def convert(self, value: object, param: object, ctx: object) -> str:
        from packetgen.starting.asking import what_is_wrong

        return _unless(what_is_wrong(self._called, str(value)), str(value).strip())


class Release(Answer):
    """The day, and perhaps hour and place. A day in other words is taken as it is meant."""

    def convert(self, value: object, param: object, ctx: object) -> str:
        from packetgen.load.spoken_days import spoken_day

        return super().convert(spoken_day(str(value)) or value, param, ctx)


_TAKEN = (
    "a pattern is called like that already; choose another --pattern TITLE, or a folder for this one with "
    "--pattern-folder; a new chart for that pattern comes in with packetgen bring FILE --pattern NAME --replace"
)


class FreeTitle(Answer):
    """The title of a pattern whose folder is not there yet."""

    def __init__(self, folders: tuple[str, ...]) -> None:
        super().__init__("the pattern's title")
        self._folders = folders

    def convert(self, value: object, param: object, ctx: object) -> str:
        from packetgen.starting.names import folder_name

        title = super().convert(value, param, ctx)
        there = folder_name(title) in self._folders
        return _unless(_TAKEN * there, title)


class FolderName(Words):
    name = "name"

    def convert(self, value: object, param: object, ctx: object) -> str:
        from packetgen.starting.names import why_not

        return _unless(why_not(str(value)), str(value))


def _unless(wrong: str, value: str) -> str:
    if wrong:
        raise click.BadParameter(wrong)
    return value


class Sides(Numbers):
    """'56', or '56 x 72' of who answers two questions at once."""

    name = "stitches"

    def convert(self, value: object, param: object, ctx: object) -> tuple[int, ...]:
        sides = re.split(r"\s*[x×]\s*|\s+by\s+", str(value).strip(), maxsplit=1, flags=re.I)
        return tuple(STITCHES.convert(side, None, None) for side in sides)


SERIES, DESIGNER = Answer("the series' title"), Answer("the designer's name")
PATTERN, THREADS = Answer("the pattern's title"), Answer("the thread's name")
RELEASE, STITCHES = Release("the release"), Between(LEAST, MOST, "stitches")


@dataclass(frozen=True)
class Given:
    """The options, each None where it was not given."""

    content: Path
    series: str | None
    series_folder: str | None
    designer: str | None
    release: str | None
    threads: str | None
    within: str | None
    pattern: str | None
    pattern_folder: str | None
    wide: int | None
    high: int | None
    face: Path | None
    asks: bool  # whether there is somebody to ask
    yes: bool
    answered: dict[str, Any] = field(default_factory=dict)  # by question, to be offered again

    def asked(self, question: str, kind: "click.ParamType[Value]", default: Value | None) -> Value:
        """What is answered; Enter stands for what was answered before, or else for the default."""
        before: Value | None = self.answered.get(question)
        answer: Value = click.prompt(
            question,
            default=default if before is None else before,
            value_proc=lambda text: kind(text),
        )
        self.answered[question] = answer
        return answer

    def or_asked(
        self, given: Value | None, question: str, kind: "click.ParamType[Value]", default: Value
    ) -> Value:
        """An option, or else what is answered, or else the default."""
        if given is not None:
            return given
        return self.asked(question, kind, default) if self.asks else default

    def words(
        self, given: str | None, question: str, kind: Words, default: str, faces: "Faces"
    ) -> str:
        """The same for words that a packet prints in these faces. An option may be a day on purpose; what is a day where
        several questions are asked in turn was answered out of turn."""
        from packetgen.starting.asking import why_no_words, why_not_printed

        class Printed(Words):
            name = "text"

            def convert(self, value: object, param: object, ctx: object) -> str:
                text = kind(str(value))
                return _unless(why_not_printed(text, faces), text)

        class Asked(Printed):
            def convert(self, value: object, param: object, ctx: object) -> str:
                return _unless(why_no_words(str(value)), super().convert(value, param, ctx))

        return self.or_asked(given and Printed()(given), question, Asked(), default)

    def need(self, **options: str | None) -> None:
        """End the command where nobody can be asked for what only the author knows."""
        missing = tuple(f"--{name}" for name, value in options.items() if value is None)
        if missing and not self.asks and not self.yes:
            raise click.UsageError(
                f"nobody can be asked here; give {listed(missing)}, or --yes for examples in their place"
            )


def folder_for(given: Given, title: str, name: str | None, option: str) -> str:
    """The folder's name as given, or made from the title, or asked for where that has no Latin letters."""
    from packetgen.starting.names import folder_name

    name = name or folder_name(title)
    if name:
        return name
    if not given.asks:
        raise click.UsageError(
            f"no name for a folder can be made from {title!r}; give one in small Latin letters, digits "
            f"and hyphens with {option}"
        )
    question = f"A name for the folder of {title}, in small Latin letters, digits and hyphens"
    return given.asked(question, FolderName(), None)


_WIDE = "How many stitches wide your drawing is, or an example shall be"
_HIGH = "And how many high"


def size_for(
    given: Given, usual: tuple[int, int], series: "Series | None" = None
) -> tuple[int, int]:
    """Columns and rows as given, or asked for until the finishing piece of `series` holds them."""
    from packetgen.starting.around import coarsest, has_room_for, room_in

    room = ""
    if series is not None:
        most = room_in(series, usual)
        cloth = coarsest(series)
        on = f" on {cloth}, the coarsest cloth" if cloth else ""
        wide, high = most.together
        room = f"{series.finish.name} has room for {wide} × {high} stitches{on}"
        if most.alone != most.together:
            wide, high = most.alone
            room += f", and in other shapes for at most {wide} across or {high} down"
        if given.asks and not (given.wide and given.high):
            say(f"{room}.")
    while True:
        wide, high = _sides(given, usual)
        if series is None or has_room_for((wide, high), series):
            return wide, high
        file = (given.content / series.finish.place.path).as_posix()
        wrong = f"A design of {wide} × {high} stitches does not fit; {room}"
        right = f"let it be smaller, or make panel and parts of the piece larger in {file}"
        if not given.asks or (given.wide and given.high):
            raise click.UsageError(f"{wrong}: {right}; nothing was written")
        say(f"{wrong}: {right}.")


def _sides(given: Given, usual: tuple[int, int]) -> tuple[int, int]:
    wide, high = given.wide, given.high
    if wide is None and given.asks:
        given.answered.setdefault(_WIDE, usual[0])
        sides = given.asked(_WIDE, Sides(), None)
        given.answered.update(zip((_WIDE, _HIGH), sides, strict=False))
        wide, high = sides[0], high or (sides[1] if len(sides) > 1 else None)
    return (
        usual[0] if wide is None else wide,
        given.or_asked(high, _HIGH, STITCHES, usual[1]),
    )


def one_of(
    given: Given,
    name: str | None,
    known: dict[str, Value],
    what: str,
    option: str,
    kind: str,
    way_out: str = "",
) -> str:
    from packetgen.diagnostics import nearest

    if name is not None:
        if name not in known:
            raise click.UsageError(
                f"there is no {kind} called {name!r}; {nearest(name, tuple(known))}{way_out}"
            )
        return name
    first = next(iter(known))
    if len(known) == 1 or given.yes:
        return first
    if not given.asks:
        raise click.UsageError(f"say which {what} with --{option}: {', '.join(known)}")
    return given.asked(f"Which {what} ({', '.join(known)})", OneOf(tuple(known)), first)
