"""A line of a longer text that is not set in below the name of that text: to YAML a name without its colon."""

import re
from itertools import takewhile

from packetgen.load.explained import Explained
from packetgen.load.text_lines import NAMED, line_above, plain, set_in
from packetgen.load.words import counted, said, shown

_IN_LINES = re.compile(r"[|>][-+0-9]*")  # below it stands a text in lines
_COLON = re.compile(r":(?:\s|$)")
_PROSE = 3  # words: a value of fewer is a name or a measure, and ends with its line
_SIGNS = ("'", '"', "{", "[", "&", "*", "!")  # what begins with one ends where that says
_STEP = 2  # spaces that are usual where nothing is set in yet


def goes_on(number: int, lines: list[str], names: tuple[str, ...]) -> Explained | None:
    """Line `number`, which has no colon, stands right behind a text that may go on. `names` are those that the
    file may have; without any, whatever stands before a colon is one."""
    here = set_in(lines[number - 1])
    if plain(lines[number - 1])[here : here + 1] in ("", "{", "[", "-", "|", ">"):
        return None
    above = line_above(number, lines)
    while above and set_in(lines[above - 1]) == here and _is_loose(lines[above - 1]):
        number, above = above, line_above(above, lines)  # it has left that text as well
    opener = _opener(above, lines, names) if above else None
    if not opener:
        return None
    line, named = opener
    below = (one for one in lines[line : number - 1] if one.strip())
    within = set_in(next(below, ""))
    least = len(named["before"])
    spaces = (within if within > least else least + _STEP) - here
    if spaces <= 0:
        return None
    others = takewhile(
        lambda one: set_in(one) == here and _is_loose(one),
        (one for one in lines[number:] if one.strip()),
    )
    more = sum(1 for _ in others)
    facts = {
        "name": said(named["name"]),
        "line": line,
        "more": f" (and {counted(more, 'more line')})" if more else "",
        "what": "them" if more else "it",
        "spaces": counted(spaces, "more space" if here else "space"),
    }
    return Explained("line-goes-on", number, here + 1, facts)


def with_a_colon(number: int, lines: list[str], names: tuple[str, ...]) -> Explained | None:
    """Line `number`, which has no colon, is of a text that stands in lines below its name without a '|', and that
    has a colon in another line, which to YAML makes a name of the words before it."""
    opener = _holder(number, lines)
    named = NAMED.fullmatch(plain(lines[opener - 1])) if opener else None
    if not named or named["value"] or named["name"] not in names:
        return None
    here = set_in(lines[number - 1])
    text = takewhile(lambda one: not one.strip() or set_in(one) >= here, lines[opener:])
    words = [before for one in text if (before := _COLON.split(plain(one))[0]) != plain(one)]
    if not words or any(
        " " not in before.strip() or before.strip()[0] in ("-", *_SIGNS) for before in words
    ):
        return None
    facts = {"name": said(named["name"]), "right": f"{shown(named['name'])}: |"}
    return Explained("bar-left-out", opener, len(named["before"]) + 1, {**facts})


def _opener(
    number: int, lines: list[str], names: tuple[str, ...]
) -> "tuple[int, re.Match[str]] | None":
    """The line on which the text begins that line `number` is of, if that text may have further lines."""
    holders = [number]
    while above := _holder(holders[-1], lines):
        holders.append(above)
    found = [(one, NAMED.fullmatch(plain(lines[one - 1]))) for one in holders]
    named = [(one, name) for one, name in found if name]
    in_lines = [(one, name) for one, name in named if _IN_LINES.fullmatch(name["value"] or "")]
    if in_lines:
        return in_lines[-1]  # whatever stands in such a text, names no values
    if not named or named[0][0] not in holders[:2] or plain(lines[number - 1]).strip()[:1] == "-":
        return None
    line, name = named[0]
    value = name["value"] or ""
    if value[:1] in _SIGNS or (names and name["name"] not in names):
        return None
    return (line, name) if line != number or _is_prose(value) else None


def _is_prose(value: str) -> bool:
    return value[:1] not in _SIGNS and len(value.split()) >= _PROSE


def _is_loose(line: str) -> bool:
    """It is no remark, no entry of a list, and has no name of one word before a colon."""
    said = plain(line)
    return bool(said) and said.lstrip()[:1] not in ("-", *_SIGNS) and not NAMED.fullmatch(said)


def _holder(number: int, lines: list[str]) -> int:
    """The nearest line above that is set in less than line `number`; 0 where there is none."""
    here = set_in(lines[number - 1])
    above = (one for one in range(number - 1, 0, -1) if plain(lines[one - 1]))
    return next((one for one in above if set_in(lines[one - 1]) < here), 0)
