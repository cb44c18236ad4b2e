"""Names with values that stand together on a line without their braces, or between round brackets."""

import re
from collections.abc import Collection

from packetgen.load.explained import Explained
from packetgen.load.text_lines import plain
from packetgen.load.words import to_write

_VALUE = r"""(?:"[^"]*"|'[^']*'|\[[^\[\]]*\]|\{[^{}]*\}|[^\s,"'\[\]{}][^,"\[\]{}]*?)"""
_LINE = re.compile(
    r"(?P<before> *(?:- +)?(?:(?P<name>[^\s:,\"'\[\]{}]+): +)?)"
    rf"(?P<open>[({{]?)(?P<pairs>(?P<first>[\w-]+): +{_VALUE}(?P<more>(?:, *(?P<other>[\w-]+): +{_VALUE})*))"
    r"(?P<close>[)}]?)"
)


def braces_missing(number: int, lines: list[str], names: Collection[str]) -> Explained | None:
    """Line `number` is an entry of a list, or a name, with several names and values behind it, as in
    '- colour: s, path: "3,4 5,6"' and 'f: (moss: "08")'. `names` are those that the file may have."""
    line = plain(lines[number - 1])
    found = _LINE.fullmatch(line)
    if not found or not found["before"].strip():
        return None
    brackets = found["open"] + found["close"]
    if brackets in ("{", "{}"):
        return None
    of_mark = len(found["name"] or "") == 1
    known = found["first"] in names and (not found["more"] or found["other"] in names)
    if not (of_mark or known) or not (found["more"] or of_mark or brackets):
        return None
    right = f"{found['before'].lstrip()}{{{found['pairs']}}}"
    hint = to_write(right) or "write { before and } behind them"
    how = "other brackets than braces" if brackets else "no braces"
    how = "only a closing brace" if brackets == "}" else how
    return Explained("braces-missing", number, len(found["before"]) + 1, {"how": how, "hint": hint})
