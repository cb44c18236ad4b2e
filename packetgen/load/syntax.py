"""What the YAML library says about a broken line, put into an author's words and at the place she
must mend.
"""

import re
from dataclasses import replace
from difflib import get_close_matches

from packetgen.load.braces import braces_missing
from packetgen.load.brackets import bracket_other, bracket_too_many
from packetgen.load.cut_off import after_colon, cut_in_brackets, cut_in_lines
from packetgen.load.explained import Explained, Spot
from packetgen.load.left_out import (
    colon_before_bracket,
    colon_between_braces,
    colon_for_equals,
    comma_between_values,
    dash_of_entry,
    dash_too_many,
    entry_elsewhere,
    indented,
    line_elsewhere,
    name_gone,
    space_of_dash,
    space_that_parts,
)
from packetgen.load.quotes import closed_within, left_open, not_closed, opens, quote_above
from packetgen.load.run_on import goes_on, with_a_colon
from packetgen.load.schema import Below
from packetgen.load.sure import sure
from packetgen.load.text_lines import NAMED, plain, set_in, value_at
from packetgen.load.words import said, shown, to_write

_BARE_COLOUR = re.compile(r": +(?=(?P<colour>#[0-9a-fA-F]{3,6}))")
# A name and its value with a bare colon between them; no web address, and no time of day.
_NO_SPACE = re.compile(
    r"""(?P<before> *(?:- +)?)(?P<name>[A-Za-z][^\s:"'{}[\],]*(?=:[^\s:/])|[^\s:"'{}[\],](?=:[{["']))"""
    r":(?P<value>.*)"
)
_GOES_ON = re.compile(r"(?::|-|[|>][+-]?\d?)\s*(?:#.*)?$")  # a line below which something is set in
_STEP = 2  # spaces that are usual for that
_SPECIAL_SIGNS = ("!", "{", "[", "'", '"', "|", ">")
# Behind it nothing can be meant but a remark: what has brackets, a colour, a number.
_WHOLE_VALUE = re.compile(r"""[]}]\s*\Z|(["'])(?:#[0-9a-f]{3,8}|\d+)\1\s*\Z""", re.IGNORECASE)
_BEHIND_A_TEXT = ("colon-missing", "indentation", "line-unclear", "after-value")
_MERGED = re.compile(r"<{7}|={7}|>{7}")  # as programs that keep versions of a file mark them
_NAME_AND_VALUE = "write a name, a colon, a space and the value"
_ONE_OF_TWO = (
    "two versions of this file were put into one: keep one of the two, and take out all lines that begin "
    "like this"
)
_SPECIAL_CONTEXTS = ("alias", "anchor", "tag", "directive")


def explain(
    problem: str,
    context: str,
    problem_at: Spot | None,
    context_at: Spot | None,
    text: str,
    names: tuple[str, ...] = (),
    below: tuple[Below, ...] = (),
) -> Explained:
    """The fault behind the library's `problem`, which it met while it was in the middle of
    `context`. `names` are those that the file may have, and `below` tells what belongs to those at its margin.
    """
    found = _explained(problem, context, problem_at, context_at, text, names, below)
    if found.code in _BEHIND_A_TEXT and (cut := cut_in_lines(found.line, [*text.split("\n"), ""])):
        return cut
    if found.code != "colon-missing" or "hint" in found.facts:
        return found
    lines = text.split("\n")
    if _MERGED.match(lines[found.line - 1]):
        return replace(found, facts={**found.facts, "hint": _ONE_OF_TWO})
    if no_bar := with_a_colon(found.line, lines, names):
        return no_bar
    behind_text = goes_on(found.line, lines, names)
    if not behind_text and problem_at and not re.search(r":(\s|$)", lines[problem_at[0] - 1]):
        behind_text = goes_on(problem_at[0], lines, names)
    line = lines[found.line - 1][found.column - 1 :]
    dash, name, value = _parted(line)
    at_margin = found.column == 1 and below
    known = tuple(one.name for one in below) if at_margin else names
    near = "" if line[:1] in _SPECIAL_SIGNS else _near(name, known, prose=bool(behind_text))
    remark = "" if near else _remark_lost(found, lines, behind_text)
    if behind_text and not near and not remark:
        return behind_text
    hint = remark or _NAME_AND_VALUE
    if near and value:
        hint = f"write {dash}{near}: {shown(value)}"
    return replace(found, facts={**found.facts, "hint": hint})


def _remark_lost(found: Explained, lines: list[str], behind_text: Explained | None) -> str:
    """What to do with a sentence by itself at the margin, which may be a remark that lost its sign; '' where it is none."""
    above = "" if found.line == 1 else lines[found.line - 2]
    if found.column > 1 or above.strip() or not lines[found.line - 1].rstrip().endswith("."):
        return ""
    sign = "put # before it, if it is a remark; else"
    if not behind_text:
        return f"{sign} {_NAME_AND_VALUE}"
    opener = lines[int(str(behind_text.facts["line"])) - 1]
    if behind_text.line != found.line or re.search(r"[|>][+-]?\s*$", opener):
        return ""  # a paragraph of that text, more likely
    return f"{sign} set it in by {behind_text.facts['spaces']}, if it goes on with {behind_text.facts['name']}"


def _parted(line: str) -> tuple[str, str, str]:
    """'- about A quiet canal' → ('- ', 'about', 'A quiet canal')."""
    found = sure(re.fullmatch(r"((?:- +)*)([^\s=]*)[\s=]*(.*)", line.split(" #")[0].rstrip()))
    return found[1], found[2], found[3]


def _near(word: str, names: tuple[str, ...], prose: bool) -> str:
    """The name that `word` is, or nearly is; '' where there is none. Words of `prose` may hold a name."""
    word = word.casefold()
    alike = [name for name in names if name[:1] == word[:1]]
    if prose:
        alike = [name for name in alike if name == word or name not in word]
    return next(iter(get_close_matches(word, alike, n=1, cutoff=0.8)), "")


def _explained(
    problem: str,
    context: str,
    problem_at: Spot | None,
    context_at: Spot | None,
    text: str,
    names: tuple[str, ...],
    below: tuple[Below, ...],
) -> Explained:
    here = problem_at or context_at or (1, 1)
    start = context_at or here
    lines = [*text.split("\n"), ""]  # the end of the file may be a line of its own

    def rest(spot: Spot) -> str:
        return lines[spot[0] - 1][spot[1] - 1 :]

    if joined := space_that_parts(start[0], here[0], lines):
        return joined
    if no_colon := colon_for_equals(here[0], lines):
        return no_colon
    if no_braces := braces_missing(here[0], lines, names):
        return no_braces
    if "quoted scalar" in context and "escape" in problem:
        return Explained("backslash", *here)
    if "quoted scalar" in context:
        return not_closed(start, lines)
    if early := closed_within(here, lines):
        return early
    if opened := quote_above(here, lines, '"') or quote_above(here, lines, "'"):
        return opened
    if "flow" in context:
        left_out = colon_between_braces(here, lines) if "flow mapping" in context else None
        left_out = left_out or comma_between_values(here, lines, names)
        return left_out or _between_brackets(start, here, "node content" in problem, lines)
    if no_space := space_of_dash(here[0], lines, names):
        return no_space
    if gone := name_gone(here[0], lines, names, below):
        return gone
    if over := dash_too_many(here[0], lines):
        return over
    if elsewhere := entry_elsewhere(here[0], lines):
        return elsewhere
    if no_dash := dash_of_entry(start[0] if "expected ':'" in problem else here[0], lines):
        return no_dash
    if no_colon := colon_before_bracket(here[0], lines):
        return no_colon
    in_doubt = "expected ':'" in problem or "block scalar" in context
    if in_doubt and rest(start)[:1] in _SPECIAL_SIGNS and rest(start)[1:2] == ":":
        return _needs_quotes(start, lines)
    if "expected ':'" in problem:
        return _no_colon(*start, rest(start), lines)
    before = lines[here[0] - 1][: here[1] - 1]
    if "values are not allowed" in problem:
        return _run_together(here[0], lines) or (
            _second_colon(here, lines, names) if ":" in before else _indentation(here, lines, names)
        )
    if "sequence entries are not allowed" in problem:
        return _bare_colour((max(1, here[0] - 1), 1), here, lines) or Explained(
            "list-beside-name", *here
        )
    if any(word in context for word in _SPECIAL_CONTEXTS):
        return _needs_quotes(start, lines)
    if "cannot start any token" in problem and rest(here)[:1] == "\t":
        return Explained("tab", *here)
    if run_together := _run_together(here[0], lines):
        return run_together
    if over := bracket_too_many(here, lines):
        return over
    if (
        "cannot start any token" in problem
        or "keys are not allowed" in problem
        or rest(here)[:1] in ("]", "}", ",")
    ):
        return _needs_quotes(here, lines)
    if "block scalar" in context:
        return Explained("bar-then-line", *here)
    if before.strip(" -"):
        behind_whole = _WHOLE_VALUE.search(before)
        remark = f"write {said(f'# {rest(here)}')} if it is a remark, or take it away"
        hint = remark if behind_whole else _in_other_quotes(lines[here[0] - 1])
        return Explained("after-value", *here, {"said": said(rest(here)), "hint": hint})
    if "<block end>" in problem or "<document start>" in problem:
        return _indentation(here, lines, names)
    return Explained(
        "line-unclear",
        *here,
        {"hint": "compare it with the lines above, and put odd signs between quotes"},
    )


def _in_other_quotes(line: str) -> str:
    """What to do where a value only begins with words between quotes: '"Fruit" by fruit'."""
    found = NAMED.fullmatch(plain(line))
    value = (found["value"] if found else "") or ""
    other = {'"': "'", "'": '"'}.get(value[:1], "")
    right = to_write(f"{other}{value}{other}") if other and not {other, "\\"} & {*value} else ""
    return right or "put the whole value between one pair of quotes"


def _bare_colour(start: Spot, here: Spot, lines: list[str]) -> Explained | None:
    """Between brackets, a colour without quotes hides the closing bracket: '{name: moss, hex:
    #55aa55}'.
    """
    for number in range(start[0], here[0] + 1):
        match = _BARE_COLOUR.search(lines[number - 1])
        if match:
            colour = match["colour"]
            return Explained("colour-unquoted", number, match.end() + 1, {"example": f'"{colour}"'})
    return None


def _between_brackets(start: Spot, here: Spot, value_missing: bool, lines: list[str]) -> Explained:
    bare = _bare_colour((max(1, start[0] - 1), 1), here, lines)
    if bare:
        return bare
    if cut := cut_in_brackets(start, here, lines):
        return cut
    if other := bracket_other(start, here, lines):
        return other
    first = lines[start[0] - 1]
    if value_missing:
        return Explained(
            "line-unclear",
            *here,
            {"hint": "take a needless comma away, and put odd signs between quotes"},
        )
    for quote in ('"', "'"):
        opened = left_open(first, quote)
        if opened is not None and opens(first, opened):
            return not_closed((start[0], opened + 1), lines)
    if here[0] == start[0] and (colon := _colon_between(here, lines)):
        return colon
    if here[0] == start[0]:
        return Explained("comma-missing", *here, {"said": said(lines[here[0] - 1][here[1] - 1 :])})
    bracket = first[start[1] - 1 : start[1]]
    return Explained(
        "bracket-open", *start, {"bracket": bracket, "closing": "]" if bracket == "[" else "}"}
    )


def _second_colon(here: Spot, lines: list[str], names: tuple[str, ...]) -> Explained:
    """A colon within a value, or the next name with its own on the same line."""
    line = plain(lines[here[0] - 1])
    word = sure(re.search(r"\S*$", line[: here[1] - 1]))[0]
    found = NAMED.fullmatch(line)
    hint = "put the whole value between quotes; where a new field begins there, start a new line"
    if word in names:
        hint = f"start a new line before {said(word)}"
    elif found and found["value"] and not re.search(r"[\"\\]", found["value"]):
        right = f'{found["name"]}: "{found["value"]}"'
        hint = to_write(right) or hint
    return Explained("colon-in-value", *here, {"hint": hint})


def _colon_between(here: Spot, lines: list[str]) -> Explained | None:
    """A colon within a value between braces: '{note: First issue: all there}'."""
    line = lines[here[0] - 1]
    before = re.search(r"([\w-]+): +([^,{}\[\]\"']*)$", line[: here[1] - 1])
    # With what its commas part from it, as long as no other name stands there.
    piece = r"[^,{}\[\]\"']*"
    behind = re.match(rf":\s{piece}(?:,(?!\s*[\w-]+:\s){piece})*", line[here[1] - 1 :])
    if not before or not behind:
        return None
    hint = to_write(f'{before[1]}: "{before[2]}{behind[0].rstrip(" ,")}"')
    return Explained("colon-in-value", *here, {"hint": hint}) if hint else None


def _run_together(number: int, lines: list[str]) -> Explained | None:
    """On that line no space parts a name from its value."""
    found = _NO_SPACE.fullmatch(lines[number - 1])
    if not found:
        return None
    value = shown(re.split(r"\s+#", found["value"])[0])
    facts = {"name": said(found["name"]), "right": f"{shown(found['name'])}: {value}"}
    return Explained("space-left-out", number, len(found["before"]) + 1, {**facts})


def _no_colon(number: int, column: int, rest: str, lines: list[str]) -> Explained:
    return _run_together(number, lines) or Explained(
        "colon-missing", number, column, {"what": _without_colon(rest.split(" #")[0].rstrip())}
    )


def _without_colon(line: str) -> str:
    """What the line lacks: it may have a colon that parts nothing, as in a time of day or between quotes."""
    if line[:1] in _SPECIAL_SIGNS:
        return f"no colon stands after {said(line)}"
    if ":" in line:
        return f"{said(line)} has no colon with a space after it"
    return f"{said(line)} has no colon" + ("" if " " in line else " and no value")


def spaces_before(number: int, lines: list[str]) -> int:
    """How many spaces belong before line `number`, by the lines around it that are set in by spaces alone: as
    many as before what stands above, or where that goes on below, as before what else goes on there."""
    line = lines[number - 1].strip()
    above = next((one for one in reversed(lines[: number - 1]) if _is_said(one)), "")
    before, said_above = set_in(above), above.split(" #")[0]
    item = re.match(r"(?:- +)*", above.lstrip(" "))
    within = before + len(sure(item)[0])
    open_brackets = sum(map(said_above.count, "{[")) > sum(map(said_above.count, "}]"))
    more_words = ": " in said_above and not line.startswith("-") and not re.search(r":(\s|$)", line)
    if not (_GOES_ON.search(above) or open_brackets or more_words):
        return before if line.startswith("-") else within
    below = next((one for one in lines[number:] if _is_said(one)), "")
    there = set_in(below)
    return there if there > within and not below[there:].startswith("\t") else within + _STEP


def _is_said(line: str) -> bool:
    return bool(line.strip()) and not line.lstrip().startswith("#")


def _needs_quotes(spot: Spot, lines: list[str]) -> Explained:
    return Explained("needs-quotes", *spot, facts_unquoted(lines[spot[0] - 1], spot[1]))


def facts_unquoted(line: str, column: int) -> dict[str, object]:
    """What is told of a value, or a name, that begins there and must stand between quotes."""
    value = value_at(line, column)
    return {"sign": value[:1], "word": after_colon(value)}


def _indentation(here: Spot, lines: list[str], names: tuple[str, ...]) -> Explained:
    if elsewhere := line_elsewhere(here[0], lines, names):
        return elsewhere
    line = lines[here[0] - 1]
    above = [number for number in range(1, here[0]) if lines[number - 1].split("#")[0].strip()]
    if above and not re.search(r":(\s|$)", lines[above[-1] - 1].split(" #")[0]):
        culprit = lines[above[-1] - 1]
        return _no_colon(above[-1], len(culprit) - len(culprit.lstrip(" ")) + 1, culprit, lines)
    facts = indented(line, spaces_before(here[0], lines))
    head = NAMED.fullmatch(plain(lines[above[-1] - 1])) if above else None
    below = next((one for one in lines[here[0] :] if _is_said(one)), "")
    deeper = bool(above) and set_in(line) == set_in(below) > set_in(lines[above[-1] - 1])
    if deeper and head and head["value"] and " " not in head["value"]:
        value, name = said(head["value"]), said(head["name"])
        hint = f"if it belongs to {name} above, take {value} away there; else {facts['hint']}"
        facts["hint"] = hint
    return Explained("indentation", here[0], set_in(line) + 1, facts)
