"""A single sign left out of a line of YAML: the colon before a bracket, the dash of an entry, a comma, the
plain space after one of them.

The YAML library stumbles over such a line only later; here it is told where the sign is missing.
"""

import re
from collections.abc import Collection, Iterator
from difflib import get_close_matches
from itertools import takewhile

from packetgen.load.explained import Explained, Spot
from packetgen.load.schema import Below
from packetgen.load.sure import sure
from packetgen.load.text_lines import NAMED, line_above, plain, set_in
from packetgen.load.words import counted, listed, said, shown, to_write

# One word, then a bracket that the line closes, or leaves open to its end.
_WORD_AND_BRACKET = re.compile(
    r"""(?P<before> *(?:- +)*)(?P<name>[^\s:"'{}\[\],#-][^\s:"'{}\[\],]*) *"""
    r"""(?P<value>\{(?:[^}]*|.*\})|\[(?:[^\]]*|.*\]))"""
)
_WORD_IN_BRACES = re.compile(r"""[{,] *(?P<name>[^\s:"'{}\[\],]+) *$""")
_NAME_IN_BRACES = re.compile(r"[{,] *([\w-]+):(?: |$)")
# A name and its value between braces, and behind it a word which only the next colon shows to be a name.
_TWO_VALUES = re.compile(
    r"""[{,] *[\w-]+: +(?:[^\s"'{}\[\],]+ +)*(?P<value>[^\s"'{}\[\],]+)(?P<gap> +)(?P<name>[\w-]+)$"""
)
_NAMED = re.compile(r"""([^\s:"'{}\[\],]+):(?:\s|$)""")
BULLETS = "*•–—·"  # what other programs put before the entries of a list
_BULLET = re.compile(rf" *(?P<sign>[{BULLETS}])\s+[^\s:]")
_NAME_ALONE = re.compile(r" *[^\s-]\S*:")
_DASH_AND_NAME = re.compile(r"( *)-([A-Za-z][\w-]*):(?:\s|$)")
_BRACED, _BRACED_ENTRY = re.compile(r" *\{.*\}"), re.compile(r" *- +\{.*\}")
_DASHES = re.compile(r" *(?:- +)*")
_NEAR = 0.8
_NO_BREAK = re.compile(
    r"""(?P<before> *(?:- +)*(?:-|[^\s:"'{}\[\],#-][^\s:"'{}\[\],]*:))"""
    r"[\u00a0\u2000-\u200a\u202f\u3000]\s*(?P<value>.*)"
)
_EQUALS = re.compile(r""" *(?P<name>[^\s:"'{}\[\],]+) *= *(?P<value>\{[^{}]*\})""")
_OF_KEY = re.compile(r""" +(?:[^\s"']|"[^"]"): *\{""")
_DASHED = re.compile(r""" *- +(?P<rest>(?P<name>[^\s:"'{}\[\],]+): .*)""")


def colon_before_bracket(number: int, lines: list[str]) -> Explained | None:
    """Line `number` begins with one word and a bracket: '  m {lockside: "150"}'."""
    if _bullet_of(number, lines):
        return _no_dash(number, set_in(lines[number - 1]), lines)
    found = _WORD_AND_BRACKET.fullmatch(plain(lines[number - 1]))
    if not found:
        return None
    return _no_colon(number, found.start("name") + 1, found["name"], found["value"])


def colon_for_equals(number: int, lines: list[str]) -> Explained | None:
    """Line `number` has an equals sign between a name and its brace: '  m = {lockside: "150"}'."""
    found = _EQUALS.fullmatch(plain(lines[number - 1]))
    if not found:
        return None
    return _no_colon(number, found.start("name") + 1, found["name"], found["value"])


def colon_between_braces(here: Spot, lines: list[str]) -> Explained | None:
    """A bracket opens at `here`, behind a word that stands alone between braces: '{lockside ["150"]}'."""
    line, index = lines[here[0] - 1], here[1] - 1
    found = _WORD_IN_BRACES.search(line[:index])
    if not found or line[index : index + 1] not in ("[", "{"):
        return None
    closing = "]" if line[index] == "[" else "}"
    value = line[index : line.find(closing, index) + 1] or line[index:]
    return _no_colon(here[0], found.start("name") + 1, found["name"], value)


def _no_colon(line: int, column: int, name: str, value: str) -> Explained:
    facts: dict[str, object] = {"what": f"no colon stands after {said(name)}"}
    return Explained(
        "colon-missing", line, column, facts | {"hint": f"write {shown(name)}: {shown(value)}"}
    )


def space_that_parts(start: int, here: int, lines: list[str]) -> Explained | None:
    """On one of these lines, or the one above the second, a space that does not break stands after a colon or a
    dash, and parts nothing: word processors set one."""
    for number in (here, line_above(here, lines), start):
        found = _NO_BREAK.match(lines[number - 1].split(" #")[0]) if number else None
        if found:
            right = f"{shown(found['before'].strip())} {shown(found['value'])}".strip()
            return Explained("hard-space", number, found.end("before") + 1, {"right": right})
    return None


def comma_between_values(here: Spot, lines: list[str], names: tuple[str, ...]) -> Explained | None:
    """At the colon `here`, between braces, stands a name that ran together with the value before it:
    '{cloth: aida-14 colour: white}'. `names` are those that the file may have; names of the author's own are
    known by the other braces of the file."""
    line = lines[here[0] - 1]
    found = _TWO_VALUES.search(line[: here[1] - 1])
    if not found or line[here[1] - 1 : here[1]] != ":":
        return None
    known = {*names, *(name for one in lines for name in _NAME_IN_BRACES.findall(one))}
    if not get_close_matches(found["name"], known, n=1, cutoff=_NEAR):
        return None
    rest = line[here[1] :].strip()
    quoted = re.match(r""""[^"]*"|'[^']*'|\[[^\]]*\]""", rest)
    value = quoted[0] if quoted else re.split(r"[,}]", rest)[0].strip()
    before = found["value"].rstrip(";")
    right = f"{shown(before)}, {shown(found['name'])}: {shown(value)}"
    if found["value"].endswith(";"):  # mostly not the only one
        right = right.replace(";", ",")
    facts: dict[str, object] = {"value": said(before), "name": said(found["name"])}
    return Explained(
        "comma-left-out", here[0], found.start("gap") + 1, facts | {"right": right.rstrip()}
    )


def space_of_dash(number: int, lines: list[str], names: Collection[str]) -> Explained | None:
    """Line `number`, or the one above it, is an entry whose dash has no space behind it: '-id: wren'. `names` are
    those that the file may have."""
    for one in (number, line_above(number, lines)):
        found = _DASH_AND_NAME.match(lines[one - 1]) if one else None
        if found and found[2] in names:
            return _no_dash(one, len(found[1]), lines)
    return None


def name_gone(
    number: int, lines: list[str], names: Collection[str], below: Collection[Below]
) -> Explained | None:
    """Line `number`, or the one above it, begins what stands below a name, as the marks of a key do, and that name
    is not in the file, or has lost its colon."""
    line, above = lines[number - 1], line_above(number, lines)
    before = plain(lines[above - 1]) if above else ""
    beside = set_in(line) and set_in(before) == set_in(line)
    if beside and _is_entry(before) == _is_entry(line):
        return name_gone(above, lines, names, below)
    if not set_in(line) or 0 < set_in(before) < set_in(line) or before.endswith(":"):
        return None
    if before in names:  # it is there, without its colon
        facts: dict[str, object] = {"what": f"no colon stands after {said(before)}"}
        return Explained("colon-missing", above, 1, facts | {"hint": f"write {before}:"})
    there = {found[1] for one in lines if (found := _NAMED.match(one))}
    if "key" in names and "key" not in there and _OF_KEY.match(line):
        return _gone(number, line, "key")
    own = frozenset(_names_of_first(number, lines))
    fitting = [one.name for one in below if one.has(own) and one.name not in there]
    return _gone(number, line, *fitting) if fitting else None


def _gone(number: int, line: str, *names: str) -> Explained:
    told = listed(f"{name}:" for name in names)
    return Explained("name-gone", number, set_in(line) + 1, {"name": told})


def _names_of_first(number: int, lines: list[str]) -> Iterator[str]:
    """The names that stand in the entry which begins on line `number`, or in the group if no dash is there."""
    line = lines[number - 1]
    if _BRACED_ENTRY.fullmatch(plain(line)):
        yield from _NAME_IN_BRACES.findall(line)
        return
    column = len(sure(_DASHES.match(line))[0])
    first = " " * column + line[column:]
    inside = takewhile(lambda one: not plain(one) or set_in(one) >= column, lines[number:])
    for one in (first, *inside):
        if set_in(one) == column and (found := _NAMED.match(one[column:])):
            yield found[1]


def dash_too_many(number: int, lines: list[str]) -> Explained | None:
    """Line `number` is a name with a dash before it, among names that are set in as far and have none."""
    line = plain(lines[number - 1])
    found = _DASHED.fullmatch(line)
    above = line_above(number, lines)
    beside = plain(lines[above - 1]) if above else ""
    if not found or set_in(beside) != set_in(line) or beside.lstrip(" ").startswith("- "):
        return None
    if not NAMED.fullmatch(beside) or beside.endswith(":"):
        return None
    facts = {"name": said(found["name"]), "hint": to_write(found["rest"]) or "take it away"}
    return Explained("dash-too-many", number, set_in(line) + 1, {**facts})


def dash_of_entry(number: int, lines: list[str]) -> Explained | None:
    """Line `number`, or one above it, stands among the entries of a list and has no dash itself."""
    line = lines[number - 1]
    indent = set_in(line)
    if _bullet_of(number, lines):
        return _no_dash(number, indent, lines)
    above = line_above(number, lines)
    if (
        above
        and _BRACED.fullmatch(plain(line))
        and _BRACED_ENTRY.fullmatch(plain(lines[above - 1]))
    ):
        return _no_dash(number, indent, lines)
    if not above or set_in(lines[above - 1]) < indent:
        return None
    if not line[indent:].startswith("- "):
        among = _first_of(number, indent, lines)
        dashed = lines[among - 1][indent:].startswith("- ") and among < number
        return (
            _no_dash(number, indent, lines) if dashed and not _NAMED.match(line[indent:]) else None
        )
    first = _first_of(number, indent, lines)
    start = lines[first - 1][indent:]
    if start.startswith("-") or set_in(lines[first - 1]) != indent:
        return None
    name, same = _NAMED.match(start), _NAMED.match(line[indent:].lstrip("- "))
    if name and not (same and same[1] == name[1]):
        return None  # names with values, and the dash may be the odd one
    return _no_dash(first, indent, lines)


def entry_too_deep(place: Spot, end: int, lines: list[str]) -> Explained | None:
    """Within the plain value that begins at `place`, itself the entry of a list, and goes on to line `end`, another
    entry is set in too deep and so taken for more of it. Set in as far as further lines of a longer text would be,
    it may be one of these."""
    number, column = place
    is_word = " " not in plain(lines[number - 1])[column - 1 :]
    if lines[number - 1][: column - 1].strip() != "-":
        return None
    for below in range(number + 1, end + 1):
        line = lines[below - 1]
        if line.lstrip().startswith("- ") and (is_word or set_in(line) < column - 1):
            return _set_in_wrongly(below, set_in(lines[number - 1]), lines)
    return None


def entry_elsewhere(number: int, lines: list[str]) -> Explained | None:
    """Line `number` is an entry of a list, set in by less than the entries above it, and there is no other list
    of which it could be: the name of theirs stands right above them. Where there is only one of these and those
    below are set in as this one is, that one is the odd one."""
    here = set_in(lines[number - 1])
    if not _is_entry(lines[number - 1]):
        return None
    above, entries = number, list[int]()
    while (above := line_above(above, lines)) and set_in(lines[above - 1]) > here:
        entries += [above] * _is_entry(lines[above - 1])
    if not above or not entries or not _NAME_ALONE.fullmatch(plain(lines[above - 1])):
        return None
    right = min(set_in(lines[one - 1]) for one in entries)
    below = next((one for one in lines[number:] if plain(one)), "")
    odd = number
    if len(entries) == 1 and _is_entry(below) and set_in(below) == here:
        odd, right = entries[0], here
    return _set_in_wrongly(odd, right, lines)


def _set_in_wrongly(number: int, right: int, lines: list[str]) -> Explained:
    line = lines[number - 1]
    return Explained("indentation", number, set_in(line) + 1, indented(line, right))


def _is_entry(line: str) -> bool:
    return line.lstrip(" ").startswith("- ")


def line_elsewhere(number: int, lines: list[str], names: tuple[str, ...]) -> Explained | None:
    """The line above line `number` is set in by less than the lines around it, or no more than their name if it
    is their first, and so was taken for the end of what they belong to; or the first line of all is set in. Of
    `names`, those that the file may have, one that is nowhere set in more may well stand there, and line `number`
    be the odd one."""
    right = set_in(lines[number - 1])
    first = next((one for one, line in enumerate(lines, 1) if plain(line)), number)
    if not right and set_in(lines[first - 1]):
        return _set_in_wrongly(first, 0, lines)
    odd = line_above(number, lines)
    above = line_above(odd, lines)
    here, named = lines[number - 1][right:], _NAMED.match(lines[odd - 1].lstrip(" "))
    if not above or set_in(lines[odd - 1]) >= right or not named or not _NAMED.match(here):
        return None
    below = next((one for one in lines[number:] if plain(one)), "")
    fits = named[1] in names and not any(
        set_in(line) > set_in(lines[odd - 1]) and line.lstrip(" -").startswith(named[0])
        for line in lines
    )
    if fits and set_in(below) == set_in(lines[odd - 1]):
        return None
    before = lines[above - 1]
    if _NAME_ALONE.fullmatch(plain(before)):
        beside = set_in(lines[odd - 1]) <= set_in(before) < right
    else:
        beside = right == len(sure(_DASHES.match(before))[0])
    return _set_in_wrongly(odd, right, lines) if beside else None


def no_dash_before(number: int, lines: list[str]) -> Explained:
    """An entry of a list begins on line `number`, of which the names stand in the entry above already."""
    return _no_dash(number, set_in(lines[number - 1]), lines)


def indented(line: str, right: int) -> dict[str, object]:
    """What is told of a line that should begin with `right` spaces, as far as that is known."""
    spaces = set_in(line)
    hint = f"begin it with {counted(right, 'space')}" if right else "let it begin at the margin"
    how = f"is set in by {counted(spaces, 'space')}" if spaces else "stands at the margin"
    if right == spaces:
        hint = "set it in exactly as far as the lines it belongs with"
    return {"said": said(line), "how": how, "hint": hint}


def _bullet_of(number: int, lines: list[str]) -> str:
    """The sign that line `number` has in place of a dash; '' where it has none, or stands beside names with values,
    among which such a sign may be a mark."""
    found, indent = _BULLET.match(lines[number - 1]), set_in(lines[number - 1])
    below = next((one for one in lines[number:] if plain(one)), "")
    beside = (lines[line_above(number, lines) - 1] if number > 1 else "", below)
    named = any(set_in(one) == indent and _NAMED.match(one[indent:]) for one in beside)
    return found["sign"] if found and not named else ""


def _no_dash(number: int, indent: int, lines: list[str]) -> Explained:
    entry = plain(lines[number - 1]).strip()
    bullet = _bullet_of(number, lines)
    what = "no space after its dash" if entry.startswith("-") else "no dash before it"
    if bullet:
        beside = takewhile(lambda one: not plain(one) or set_in(one) >= indent, lines[number:])
        others = sum(bool(_BULLET.match(one)) for one in beside)
        more = f" (and {counted(others, 'more entry', 'more entries')})" if others else ""
        what = f"'{bullet}' before it in place of a hyphen{more}"
    right = f"- {shown(entry.lstrip(f'- {BULLETS}').lstrip())}"
    return Explained("dash-missing", number, indent + 1, {"what": what, "right": right})


def _first_of(number: int, indent: int, lines: list[str]) -> int:
    """The nearest entry above, or the topmost line set in as far as `indent` where no entry stands above."""
    first = number
    while (above := line_above(first, lines)) and set_in(lines[above - 1]) >= indent:
        first = above
        if lines[first - 1][indent:].startswith("- "):
            break
    return first
