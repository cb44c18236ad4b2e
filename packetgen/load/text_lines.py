"""Lines of a broken YAML file, looked at one by one."""

import re

# A name of one word, or of a mark, with its value, perhaps as an entry of a list.
NAMED = re.compile(r"""(?P<before> *(?:- +)*)(?P<name>[^\s:"'{}\[\],]+):(?: +(?P<value>.*))?""")


def plain(line: str) -> str:
    """Without a remark, and without spaces at its end."""
    return "" if line.lstrip().startswith("#") else line.split(" #")[0].rstrip()


def value_at(line: str, column: int) -> str:
    """The value that begins in that column, as far as its line or the brackets round it go; of a name that
    begins there the name alone."""
    rest = line[column - 1 :].split(" #")[0].rstrip()
    name = re.match(r"\S[^\s:]*(?=:(?:\s|$))", rest)
    if name:
        return name[0]
    before = line[: column - 1]
    if sum(map(before.count, "{[")) > sum(map(before.count, "}]")):
        return rest[:1] + re.split(r"\s*[,\]}]", rest[1:])[0]
    return rest


def set_in(line: str) -> int:
    """By how many spaces it is set in."""
    return len(line) - len(line.lstrip(" "))


def line_above(number: int, lines: list[str]) -> int:
    """The number, from 1, of the nearest line above on which something is said; 0 where there is none."""
    return next((one for one in range(number - 1, 0, -1) if plain(lines[one - 1])), 0)
