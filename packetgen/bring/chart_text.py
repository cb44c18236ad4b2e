"""chart.txt as an author reads and edits it: remarks that say what each mark is, then the chart."""

from collections.abc import Iterable, Sequence


def chart_text(remarks: str, rows: Iterable[str]) -> str:
    """The file: `remarks` (lines that begin with '#', or none) and one line a row."""
    head = f"{remarks.rstrip()}\n" if remarks.strip() else ""
    return head + "".join(f"{row}\n" for row in rows)


def legend(title: str, lines: Sequence[tuple[str, str]]) -> str:
    """Remarks that name the chart and each (mark, what it is)."""
    named = [f"# {mark}  {' '.join(words.split())}" for mark, words in lines]
    named_chart = " ".join(title.split())
    return "\n".join(
        (f"# {named_chart}: one character a stitch, a full stop is bare cloth.", *named)
    )


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
