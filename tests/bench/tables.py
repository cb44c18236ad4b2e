"""Tables on a terminal or as Markdown, for all benches."""

from collections.abc import Iterable, Sequence

Table = tuple[Sequence[str], list[Sequence[str]]]  # head, lines


def show(table: Table, markdown: bool) -> None:
    head, lines = table
    if markdown:
        for line in (head, ["---"] * len(head), *lines):
            print(f"| {' | '.join(line)} |")
        return
    widths = [max(len(line[place]) for line in (head, *lines)) for place in range(len(head))]
    for line in (head, *lines):
        print("  ".join(_padded(line, widths)).rstrip())


def _padded(line: Sequence[str], widths: list[int]) -> Iterable[str]:
    """Words to the left, figures to the right."""
    for text, width in zip(line, widths):
        yield text.rjust(width) if text[:1].isdigit() or text[:1] == "-" else text.ljust(width)
