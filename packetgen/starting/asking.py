"""Whether an answer can stand in a file, told in the words that the loader has for it there."""

from collections.abc import Mapping

from packetgen.diagnostics import Place, Problems
from packetgen.load.characters import without_unseen
from packetgen.load.font_files import FONT_ENDINGS, read_font
from packetgen.load.schema import Field, Group, ListOf
from packetgen.load.shape_cards import THREAD_CARD
from packetgen.load.shape_pattern import PATTERN
from packetgen.load.shape_series import SERIES
from packetgen.load.single_values import Asking, read_single
from packetgen.load.spoken_days import DAY, spoken_day
from packetgen.load.words import said
from packetgen.load.yaml_nodes import TextNode
from packetgen.model import Faces
from packetgen.reckon.letters import letters_missing
from packetgen.starting.names import said_of


def _field(shape: Group, name: str, within: str = "") -> Field:
    found = next(field for field in shape.fields if field.name == name)
    if not within:
        return found
    assert isinstance(found.kind, ListOf) and isinstance(found.kind.kind, Group)
    return _field(found.kind.kind, within)


# What is asked for, as a sentence calls it → where it will stand.
_FIELDS: Mapping[str, Field] = {
    "the series' title": _field(SERIES, "title"),
    "the designer's name": _field(SERIES, "designers", "name"),
    "the pattern's title": _field(PATTERN, "title"),
    "the thread's name": _field(THREAD_CARD, "name"),
    "the release": _field(SERIES, "release"),
}


def what_is_wrong(called: str, answer: str) -> str:
    """Why `answer` cannot be what is asked for; '' where it can."""
    field, problems = _FIELDS[called], Problems()
    if answer == without_unseen(answer, "", problems):
        asking = Asking(called, field.example, problems)
        read_single(field.kind, TextNode(answer, Place(""), plain=False), asking)
    return said_of(problems)


def why_no_words(answer: str) -> str:
    """That a day or a number was answered where a title or a name is asked for; '' of any other answer."""
    text = answer.strip()
    if DAY.fullmatch(text) or spoken_day(text):
        what = "a day"
    elif text.isdecimal():
        what = "a number"
    else:
        return ""
    return f"{said(text)} is {what}, and this asks for a title or a name"


def why_not_printed(answer: str, faces: Faces) -> str:
    """Why a packet cannot print the answer; '' where it can."""
    missing = letters_missing(answer, faces)
    if not missing:
        return ""
    return (
        f"the type of the packet has no {missing}; write it in letters that it has, or give the series a "
        "face that has them (--face for a new series, look: in series.yaml for one that is there)"
    )


def faces_of(name: str, data: bytes) -> tuple[Faces, str]:
    """The face in a font file, for the text of a series, and why there is none; '' where there is."""
    problems = Problems()
    if not name.endswith(FONT_ENDINGS):
        problems.add(Place(""), "font-kind", name=said(name))
        return Faces(), said_of(problems)
    face = read_font(data, name, Place(""), problems)
    return (Faces(text=face), "") if face else (Faces(), said_of(problems))


def as_moment(answer: str, zone: str) -> str:
    """A day alone becomes its first minute by the clock of `zone`, if that is not its first minute anyhow."""
    answer = answer.strip()
    return f"{answer} 00:00 {zone}" if len(answer.split()) == 1 and zone != "UTC" else answer
