"""A '#' that was taken away on one of two lines that belong together, or left before a line of a text.

The files that `begin` writes show further names as remarks, '#name:' with its value on the lines below.
"""

import re
from collections.abc import Iterator
from itertools import takewhile

from packetgen.load.explained import Explained
from packetgen.load.text_lines import NAMED, plain, set_in
from packetgen.load.words import counted, said

# Spaces by which names are set in below a name; remarks in words have one behind their '#'.
_STEP = 2
_HIDDEN_NAME = re.compile(r"#(?P<before> *)(?P<name>[^\s:#]+): *")
_HIDDEN_VALUE = re.compile(r"#(?P<before> *)(?:(?P<dash>- )|[^\s:#]+:(?: |$))")
_TEXT_IN_LINES = re.compile(r"[|>][-+0-9]*")
_REMARK_IN_WORDS = re.compile(r" *# +[^\W\d_]")


def names_hidden(lines: list[str], names: tuple[str, ...]) -> Iterator[Explained]:
    """Each name of `names` that is still a remark while the line below, which is its value, is none."""
    for number, (line, below) in enumerate(zip(lines, lines[1:]), 1):
        name = _HIDDEN_NAME.fullmatch(line)
        if not name or name["name"] not in names:
            continue
        within = set_in(below) - len(name["before"])
        is_entry = within >= 0 and below.lstrip(" ").startswith("- ")
        if is_entry or (within >= _STEP and NAMED.fullmatch(plain(below))):
            yield Explained("name-in-remark", number, 1, {"name": said(line.strip())})


def value_hidden(number: int, lines: list[str]) -> bool:
    """Whether line `number`, a name without a value, has its value below it, still as a remark."""
    value = _HIDDEN_VALUE.match(lines[number]) if number < len(lines) else None
    if not value:
        return False
    within = len(value["before"]) - set_in(lines[number - 1])
    return within >= (0 if value["dash"] else _STEP)


def remarks_in_texts(lines: list[str], names: tuple[str, ...]) -> Iterator[Explained]:
    """The remarks that stand among the lines of a text, and so are of that text: with one of `names` behind
    the '#', or in words on two lines or more."""
    end = 0  # of the last text: what stands in it begins no other
    for number, line in enumerate(lines, 1):
        may_begin = number > end and ("|" in line or ">" in line)
        named = NAMED.fullmatch(plain(line)) if may_begin else None
        if not named or not _TEXT_IN_LINES.fullmatch(named["value"] or ""):
            continue
        text = _below(number, lines, len(named["before"]))
        end = number + len(text)
        hidden = {
            at
            for at, one in enumerate(text, number + 1)
            if (name := _HIDDEN_VALUE.match(one.strip())) and _name_of(name[0]) in names
        }
        wordy = {at for at, one in enumerate(text, number + 1) if _REMARK_IN_WORDS.match(one)}
        if hidden or any(at + 1 in wordy for at in wordy):
            first, more = min(hidden | wordy), len(hidden | wordy) - 1
            facts = {"name": said(named["name"]), "said": said(lines[first - 1])}
            facts["more"] = f" (and {counted(more, 'more line')})" if more else ""
            yield Explained("remark-in-text", first, set_in(lines[first - 1]) + 1, {**facts})


def _below(number: int, lines: list[str], least: int) -> list[str]:
    """The lines below line `number` that are set in by more than `least`."""
    below = (lines[at] for at in range(number, len(lines)))
    return [*takewhile(lambda one: not one.strip() or set_in(one) > least, below)]


def _name_of(begun: str) -> str:
    return begun.strip("# :")
