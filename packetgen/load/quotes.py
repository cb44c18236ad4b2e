"""Quotes in a broken YAML file: one that nothing closes, and one that a sign in its own text closes."""

import re

from packetgen.load.explained import Explained, Spot
from packetgen.load.text_lines import line_above, plain, set_in
from packetgen.load.words import to_write

_NAMED = re.compile(r" *(?:- +)*[\w-]+:(?: |$)")
# What ends a quoted text between brackets: the quote and what may follow it.
_ENDS = {"'": re.compile(r"'(?=\s*[,}\]])"), '"': re.compile(r'"(?=\s*[,}\]])')}
# Words that begin with an apostrophe, which YAML takes for a quote; and years, '26.
_CUT_SHORT = re.compile(
    r"'(?:\d|(?:tis|twas|twere|twill|til|till|em|n|cause|round|bout|neath|gainst)\b)", re.IGNORECASE
)
_OTHERS = {
    "'": "put double quotes round all of it, or write the apostrophe twice",
    '"': "put single quotes round all of it",
}
_CLOSES = re.compile(r"[}\]]")
_NEXT = re.compile(r",\s*[\w-]+:\s")  # the next name between braces


def not_closed(spot: Spot, lines: list[str]) -> Explained:
    """Nothing closes the quote at `spot`, which may be an apostrophe: 'Tis spring."""
    line, index = lines[spot[0] - 1], spot[1] - 1
    hint = "write the same sign again at the end of the text"
    if line[index] == "'":
        hint += ", or put double quotes round all of it"
    between = _between(line[:index])
    if between and line[index] == '"':
        hint = _closed_in_brackets(line[index:]) or hint
    if _CUT_SHORT.match(line, index) and not (between or " #" in line or _further(spot[0], lines)):
        hint = _mended(line[index:].rstrip()) or hint
    return Explained("quote-open", *spot, {"quote": line[index : index + 1], "hint": hint})


def quote_above(here: Spot, lines: list[str], quote: str) -> Explained | None:
    """The quote on a line above which only a later one has closed, just before `here`, that was to open
    another text. What follows a quote and begins with '#' is then a remark to the end of its line."""
    number, before = here[0], lines[here[0] - 1][: here[1] - 1].rstrip()
    while number > 1 and not before:
        number -= 1
        line = lines[number - 1]
        before = line[: line.find(f"{quote}#") + 1] or line
    if not before.endswith(quote) or before.count(quote) % 2 == 0:
        return None
    for above in range(number - 1, 0, -1):
        line = lines[above - 1].split(" #")[0]
        opened = left_open(line, quote)
        if line.count(quote) % 2 and opened is not None and opens(line, opened):
            return not_closed((above, opened + 1), lines)
    return None


def ended_by_next(text: str, start: int, end: int) -> bool:
    """Whether the quoted value from `start` to `end` has no closing quote of its own, and ends where the one
    after it begins: 'designer: "Ann' above 'hex: "#aabbcc"', of which the rest is then taken for a remark."""
    return text[end : end + 1] == "#" and opens(text, end - 1) and end - start > 2


def runs_over_names(text: str, start: int, end: int) -> bool:
    """Whether the quoted value from `start` to `end` has swallowed other names: 'title: 'Tis spring' above
    'about: the robins' shed'."""
    if "\n" not in text[start:end]:
        return False
    first = text[text.rfind("\n", 0, start) + 1 : start]
    return _are_names(first, text[start:end].split("\n")[1:])


def closed_within(here: Spot, lines: list[str]) -> Explained | None:
    """The text that ends just before `here` is closed by a sign of its own: 'the robin's fork'."""
    line = lines[here[0] - 1]
    end = len(line[: here[1] - 1].rstrip()) - 1
    sign = line[end : end + 1]
    if end < 0 or sign not in ("'", '"') or not _goes_on(line, end):
        return None
    opened = _opener(line, end)
    if opened is None:
        return _closed_below(here[0], end, sign, lines)
    between = _between(line[:opened])
    whole = line[opened:].rstrip()
    if between:
        parted = _NEXT.search(line, end)
        within = line[opened : parted.start() if parted else len(line)]
        closing = list(_ENDS[sign].finditer(within + ",", end + 1 - opened))
        # With nothing to close it, it ends where the next name stands, or the brackets close.
        stop = closing[0].end() if closing else len(re.split(r"[,}\]]", within)[0])
        sure_end = closing or parted or re.fullmatch(r"[}\]\s]*", plain(within[stop:]))
        whole = within[:stop].rstrip() if sure_end else ""
    elif not whole.endswith(sign) and " #" in whole:
        whole = ""  # it cannot be told whether that is a remark
    further = _further(here[0], lines) and not between
    if further or not whole or (not whole.endswith(sign) and re.search(r":\s", whole)):
        return _within(here[0], end, sign)
    return _within(here[0], end, sign, _mended(whole))


def _between(before: str) -> bool:
    """Whether brackets are open at the end of it."""
    return any(before.count(one) > before.count(two) for one, two in ("{}", "[]"))


def _closed_in_brackets(begun: str) -> str:
    """How a text is written that begins so between brackets and lacks its end; '' where that cannot be said."""
    ends = [found.start() for form in (_CLOSES, _NEXT) if (found := form.search(begun))]
    return to_write(f"{begun[: min(ends)].rstrip()}{begun[0]}") if ends else ""


def opens(text: str, at: int) -> bool:
    """Whether a value begins with the quote there, by what stands before it."""
    return text[:at].rstrip(" ")[-1:] in tuple(":-,[{")


def left_open(line: str, quote: str) -> int | None:
    """Where the quote is that nothing on the line closes; one that opens the next value closes nothing."""
    opened = None
    for found in re.finditer(re.escape(quote), line):
        ends = line[found.end() :].lstrip(" ")[:1] in ("", ",", "}", "]", ":")
        if opened is None:
            opened = found.start()
        elif opens(line, found.start()) and not ends:
            return opened
        else:
            opened = None
    return opened


def _goes_on(line: str, at: int) -> bool:
    """Whether the text goes on behind the sign there, as in robin's, or in robins' fork where it ends with
    that sign too."""
    behind = line[at + 1 :]
    if behind[:1].isalnum():
        return True
    ends = behind.rstrip().endswith(line[at]) or _ENDS[line[at]].search(behind)
    of_many = line[at - 1 : at + 1] == "s'" and behind.lstrip()[:1].isalnum()
    return of_many and bool(ends) and not re.search(r":\s", behind)


def _opener(line: str, end: int) -> int | None:
    """Where the text begins that the sign at `end` closes, if on this line: a text is closed by the next such
    sign, unless that stands twice."""
    sign, opened, at = line[end], None, 0
    while at < end:
        if opened is None and line[at] in ("'", '"') and opens(line, at):
            opened = at
        elif opened is not None and line[at] == line[opened]:
            if line[at + 1 : at + 2] == line[at] == "'":
                at += 1
            else:
                opened = None
        elif opened is not None and line[opened] == '"' and line[at] == "\\":
            at += 1
        at += 1
    return opened if opened is not None and line[opened] == sign else None


def _closed_below(number: int, end: int, sign: str, lines: list[str]) -> Explained | None:
    """The same where the text begins on a line above, to which it may belong or not."""
    for above in range(number - 1, 0, -1):
        opened = left_open(lines[above - 1].split(" #")[0], sign)
        if opened is None or not opens(lines[above - 1], opened):
            continue
        # Between brackets that close on its line a text ends there too.
        in_brackets = _between(lines[above - 1][:opened]) and _CLOSES.search(
            lines[above - 1], opened
        )
        if in_brackets or _are_names(lines[above - 1], lines[above:number]):
            return not_closed((above, opened + 1), lines)
        return _within(number, end, sign)
    return None


def _are_names(first: str, below: list[str]) -> bool:
    """Whether a name stands on a line `below` that is set in no deeper than the `first`."""
    return any(set_in(line) <= set_in(first) and _NAMED.match(line) is not None for line in below)


def _further(number: int, lines: list[str]) -> bool:
    """Whether the line below belongs to the text of line `number`."""
    below = next((one for one in range(number + 1, len(lines) + 1) if plain(lines[one - 1])), 0)
    if not below or line_above(below, lines) != number:
        return False
    return set_in(lines[below - 1]) > set_in(lines[number - 1]) and not _NAMED.match(
        lines[below - 1]
    )


def _within(number: int, end: int, sign: str, hint: str = "") -> Explained:
    facts: dict[str, object] = {"quote": sign, "hint": hint or _OTHERS[sign]}
    return Explained("quote-inside", number, end + 1, facts)


def _mended(whole: str) -> str:
    """How a value is written that begins with a quote, and may end with it; '' where it is too long to be said."""
    sign = whole[0]
    closed = len(whole) > 1 and whole.endswith(sign)
    text = whole[1:-1] if closed else whole[1:]
    if not closed and _CUT_SHORT.match(whole):
        text = whole
    other = '"' if sign == "'" else "'"
    right = f"{other}{text}{other}"
    if other in text or "\\" in text:
        right = "'" + text.replace("'", "''") + "'"
    return to_write(right)
