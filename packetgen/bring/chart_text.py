"""chart.txt as an author reads and edits it: remarks that say what each mark is, then the chart."""

import re
from collections.abc import Collection, Iterable, Sequence

_LISTED = re.compile(r"# (\S)  (\S.*)")


def chart_text(remarks: str, rows: Iterable[str]) -> str:
    """The file: `remarks` (lines that begin with '#', or none) and one line a row."""
    head = f"{remarks.rstrip()}\n" if remarks.strip() else ""
    return head + "".join(f"{row}\n" for row in rows)


def legend(title: str, lines: Sequence[tuple[str, str]]) -> str:
    """Remarks that name the chart and each (mark, what it is)."""
    named = [_line(mark, words) for mark, words in lines]
    named_chart = " ".join(title.split())
    return "\n".join(
        (f"# {named_chart}: one character a stitch, a full stop is bare cloth.", *named)
    )


def relisted(remarks: str, lines: Sequence[tuple[str, str]], ours: Collection[str]) -> str:
    """The remarks with the list in them as `legend` writes it now: each mark that is there once, and no other.
    A line belongs to the list where all that it says of its mark is among `ours`; any other is the author's."""
    found = [_LISTED.fullmatch(line.rstrip()) for line in remarks.split("\n")]
    mine = [match is not None and " ".join(match[2].split()) in ours for match in found]
    if not any(mine):
        return remarks
    says = dict(lines)
    last = len(mine) - 1 - mine[::-1].index(True)
    kept: list[str] = []
    for n, (line, match, listed) in enumerate(zip(remarks.split("\n"), found, mine)):
        words = says.pop(match[1], "") if match and listed else ""
        if match is None or not listed:
            kept.append(line)
        elif words:
            true = " ".join(words.split())
            named = " ".join(match[2].split()) in (true, true.partition(" ")[2])
            kept.append(line if named else _line(match[1], words))
        if n == last:
            kept += [_line(mark, words) for mark, words in says.items()]
    return "\n".join(kept)


def _line(mark: str, words: str) -> str:
    return f"# {mark}  {' '.join(words.split())}"


def remarks_of(text: str) -> str:
    """The lines of a chart.txt above its first row."""
    return "\n".join(text.split("\n")[: first_line(text) - 1]).rstrip()


def rows_of(text: str) -> tuple[str, ...]:
    """The rows of a chart.txt, each as long as it is written."""
    lines = text.rstrip().split("\n")[first_line(text) - 1 :]
    return tuple(line.rstrip() for line in lines)


def first_line(text: str) -> int:
    """The line of the file, from 1, that is the first row of its chart."""
    lines = text.split("\n")
    rows = (n for n, line in enumerate(lines, 1) if line.strip() and not line.startswith("#"))
    return next(rows, len(lines) + 1)
