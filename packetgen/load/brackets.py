"""Brackets that do not go together: one too many, and one that is closed by one of the other kind."""

import re

from packetgen.load.explained import Explained, Spot
from packetgen.load.sure import sure
from packetgen.load.text_lines import plain
from packetgen.load.words import said, shown

_CLOSES = {"{": "}", "[": "]"}
_CLOSING = ("}", "]")
_QUOTED = re.compile(r"""(?<=[\s\[{,:])(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')""")
# A line on which the outermost bracket opens: before it stands a dash or a name.
_BEGINS = re.compile(r" *(?:- +|[^\s\[\]{}]+: +)+[\[{]")
_RUN = re.compile(r"[\]}](?:\s*[\]}])*")


# Several values behind a name, where one alone may stand.
_BARE_LIST = re.compile(r"(?P<name>[\w-]+): +(?P<values>[^\[\]{}:,]+,[^\[\]{}:]+)\Z")


def bracket_too_many(here: Spot, lines: list[str]) -> Explained | None:
    """The brackets at `here` that close nothing, or the one before the comma there that closes too early; or that
    comma, where nothing comes after it."""
    line = plain(lines[here[0] - 1])
    before, sign = line[: here[1] - 1].rstrip(), line[here[1] - 1 : here[1]]
    alone = line[here[1] :].strip() == ""  # not the mark of a key line
    if sign in _CLOSING and before[-1:] not in (":", "-") and (before or alone):
        signs = sure(_RUN.match(line, here[1] - 1))[0]
        one = len(signs) == 1
        what = f"the bracket '{signs}' closes" if one else f"the brackets '{signs}' close"
        return Explained("bracket-over", *here, {"what": what, "it": "it" if one else "them"})
    if sign == "," and before.endswith(_CLOSING) and not line[here[1] :].strip():
        return Explained("comma-over", *here)
    if sign == "," and before.endswith(_CLOSING):
        rest = said(line[here[1] - 1 :])
        return Explained(
            "bracket-early", here[0], len(before), {"bracket": before[-1], "said": rest}
        )
    return None


def bracket_other(start: Spot, here: Spot, lines: list[str]) -> Explained | None:
    """The bracket that opens at `start` is met at `here`, on its line, by a closing one of the other kind. Where
    only one way of mending leaves every bracket of the line with its own, it is told."""
    line = _QUOTED.sub(lambda text: "_" * len(text[0]), lines[here[0] - 1])
    at = here[1] - 1
    bracket, met = line[start[1] - 1 : start[1]], line[at : at + 1]
    if (
        here[0] != start[0]
        or bracket not in _CLOSES
        or met not in {*_CLOSES.values()} - {_CLOSES[bracket]}
    ):
        return None
    still_open, needed = _still_open(line[:at]), _CLOSES[bracket]
    if bracket == "[" and _has_names(line[start[1] : at]):
        # Names with values are no list: its bracket was left open before them, or is itself the wrong one.
        if still_open and len(still_open) > 1:
            return Explained("bracket-open", *start, {"bracket": bracket, "closing": needed})
        hint = "a list stands between [ and ], names with values between { and }"
    elif bracket == "{" and (bare := _BARE_LIST.search(line, start[1], at)):
        whole = lines[here[0] - 1][bare.start("values") : at]
        hint = f"its opening one is missing: write {shown(bare['name'])}: [{shown(whole)}]"
    else:
        hint = _one_way(line, at, needed, still_open or [])
        hint = hint or f"close '{bracket}' with '{needed}' after its last value"
    return Explained("bracket-other", *here, {"bracket": bracket, "met": met, "hint": hint})


def _one_way(line: str, at: int, needed: str, still_open: list[str]) -> str:
    """The one way of mending the line at the bracket there; '' where there are several, or none."""
    if not _BEGINS.match(line):
        return ""
    met, whole = line[at], plain(line)
    run = _RUN.match(whole, at)
    if run and still_open and run.end() == len(whole):
        closing = "".join(_CLOSES[sign] for sign in reversed(still_open))
        return f"write '{closing}' in place of '{run[0]}'"
    ways = {
        f"write '{needed}' in place of '{met}'": needed,
        f"write '{needed}' before it": needed + met,
        "take it away": "",
    }
    sound = [
        way for way, signs in ways.items() if _still_open(line[:at] + signs + whole[at + 1 :]) == []
    ]
    return sound[0] if len(sound) == 1 else ""


def _still_open(line: str) -> list[str] | None:
    """The brackets that are open at its end, the outermost first; None where one is met by another's."""
    found: list[str] = []
    for sign in re.findall(r"[\[\]{}]", line):
        if sign in _CLOSES:
            found.append(sign)
        elif not found or _CLOSES[found.pop()] != sign:
            return None
    return found


def _has_names(text: str) -> bool:
    """Whether a colon parts names from values there, further brackets left aside."""
    depth = 0
    for sign in re.findall(r"[\[\]{}]|:\s", text):
        if depth == 0 and sign[0] == ":":
            return True
        depth += (sign in _CLOSES) - (sign in _CLOSES.values())
    return False
