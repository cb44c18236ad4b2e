"""Remarks of a pattern.yaml that offer something to write, with a mark of its key in it.

Such an offer is a few remarks in words, '# Instead of l, a blend:', and below them lines that count as soon
as their '#' is taken away, '#  l: {moss: [K4, 07]}'. Where its mark has gone, it would only mislead.
"""

import re
from collections.abc import Callable, Collection, Iterator, Sequence

from packetgen.model import BARE

_KEY_LINE = re.compile(r"#\s+(?:(['\"])(?P<quoted>.)\1|(?P<plain>\S)):\s*\{")
_COLOUR = re.compile(r"#.*\bcolour:\s*(?:(['\"])(?P<quoted>.)\1|(?P<plain>\S))\s*[,}]")
_ROWS = re.compile(r"#\s+rows:\s*\|")
_IN_WORDS = re.compile(r"# (?! )")

# How begin's remark on what lies beside the stitches begins, and its next line: offers of such stand below it.
PLACED = (
    "# Lines, knots and beads are placed by two numbers, across and then down: 1,1 is where the first",
    "# begins, 2,1 where the one beside it begins, and",
)


def without_offers(lines: Sequence[str], gone: Collection[str]) -> list[str]:
    """The lines without offers that name any of the marks in `gone`."""
    left: list[str] = []
    for part in _parts(lines):
        offered = [line for line in part if line.startswith("#") and not _IN_WORDS.match(line)]
        if not set(_marks(offered)) & set(gone):
            left += part
    return left


def with_lines_offered(
    before: str, after: str, rows: Sequence[str], marks: Sequence[str], quoted: Callable[[str], str]
) -> str:
    """The file `after` with offers of backstitch, a knot, long stitch, a daisy and a close-up below the remark that says
    how such are placed: of those that the file had, or offered, `before` and neither has nor offers any longer. They lie
    on the first stitch of `rows`, a close-up on the first bare square, in one of `marks`, each of which stands `quoted`
    in YAML."""
    lines = after.split("\n")
    at = next((n for n, line in enumerate(lines) if line.startswith(PLACED[0])), None)
    first = _first(rows, lambda one: one != BARE)
    if at is None or first is None or not marks:
        return after
    x, y = first
    seen = [one for one in marks if one != rows[y - 1][x - 1]] or marks
    mark = next((one for one in seen if one.isalnum()), seen[0])
    offers = _offers(quoted(mark), x, y) | _close_up(mark, _first(rows, BARE.__eq__))
    new = [
        line
        for name, (words, entry) in offers.items()
        if _shows(before, name) and not _shows(after, name)
        for line in (*words, f"#{name}:", *entry)
    ]
    if not new:
        return after
    end = at + 1 + lines[at + 1].startswith(PLACED[1])
    head, rest = lines[:end], lines[end:]
    if rest[:1] == [""]:
        rest = rest[1:]
    return "\n".join((*head, "", *new, *rest))


_Offer = tuple[tuple[str, ...], tuple[str, ...]]  # its words, and the lines below its name


def _offers(mark: str, x: int, y: int) -> dict[str, _Offer]:
    """What lies on the stitch at column `x` and row `y`."""
    across = f'path: "{x},{y} {x + 1},{y + 1}"'
    return {
        "backstitch": (
            ("# A line of backstitch, from where a stitch begins to where another does.",),
            (f"#  - {{colour: {mark}, {across}}}",),
        ),
        "french_knots": (
            ("# A French knot, in the middle of a stitch.",),
            (f'#  - {{colour: {mark}, at: "{x}.5,{y}.5"}}',),
        ),
        "long_stitch": (
            ("# Single stitches over several squares.",),
            (f"#  - {{colour: {mark}, {across}}}",),
        ),
        "lazy_daisies": (
            ("# A lazy daisy, from the base of its loop to its tip.",),
            (f"#  - {{colour: {mark}, {across}}}",),
        ),
    }


def _close_up(mark: str, bare: tuple[int, int] | None) -> dict[str, _Offer]:
    """A three-quarter stitch at a bare square; none where there is no such square, or a line cannot begin so."""
    if bare is None or not mark.isalnum():
        return {}
    return {
        "close_ups": (
            (
                "# Fractional stitches: two characters by two for each stitch, on squares that the chart leaves bare. This",
                "# is a three-quarter stitch.",
            ),
            (
                f"#  - at: {bare[0]},{bare[1]}",
                "#    rows: |",
                f"#      {mark}{mark}",
                f"#      {mark}.",
            ),
        )
    }


def _shows(text: str, name: str) -> bool:
    """Whether the field stands in a pattern.yaml, or as an offer."""
    return re.search(rf"^#?{name}:", text, re.MULTILINE) is not None


def _first(rows: Sequence[str], wanted: Callable[[str], bool]) -> tuple[int, int] | None:
    """Column and row, from 1, of the first square that is wanted."""
    found = ((x, y) for y, row in enumerate(rows, 1) for x, one in enumerate(row, 1) if wanted(one))
    return next(found, None)


def _parts(lines: Sequence[str]) -> Iterator[list[str]]:
    """Offers with the words above them; and every other line by itself."""
    part: list[str] = []
    for line in lines:
        words = bool(_IN_WORDS.match(line))
        goes_on = part and line.startswith("#") and (not words or _IN_WORDS.match(part[-1]))
        if not goes_on and part:
            yield part
            part = []
        part.append(line)
    yield part


def _marks(offered: Sequence[str]) -> Iterator[str]:
    in_rows = False
    for line in offered:
        for form in (_KEY_LINE, _COLOUR):
            if found := form.match(line):
                yield found["quoted"] or found["plain"]
        if in_rows:
            yield from line.lstrip("#").strip()
        in_rows = in_rows or bool(_ROWS.match(line))
