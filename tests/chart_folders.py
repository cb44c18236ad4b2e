"""Pattern folders as authors write them, drawn by hypothesis: every kind of stitch, and many ways of
writing one and the same thing.

What is charted comes from `tests.any_pattern`; the words round it are those of `tests.content_builder`.
"""

from collections.abc import Mapping

from hypothesis import strategies as st

from packetgen.model import BARE, Pattern, Point
from tests.any_pattern import IN_CHART, patterns
from tests.content_builder import FERN, PATTERN

CHART_TXT, CHART_CSV = f"{FERN}/chart.txt", f"{FERN}/chart.csv"

_KEY = {
    "f": "moss: E2, spool: '10'",
    "h": 'moss: K4, spool: "12", stitch: half',
    "k": 'moss: K4, spool: "12", stitch: "half back"',
    "b": 'moss: [E2, "07"], spool: ["10", "14"]',
    "o": 'moss: K4, spool: "12"',
    "g": 'moss: "07", spool: "14"',
    "x": 'moss: [K4, "07"], spool: ["12", "14"]',
    "q": 'moss: E2, spool: "10", stitch: quarter',
    "p": 'moss: "07", spool: "14", stitch: petite',
}
# Top left, top right, bottom left, bottom right of one stitch, as `load.blocks` explains them.
_BLOCKS = (
    *("q...", ".q..", "..q.", "...q", "qq.q", "qqqq"),  # quarters
    *("p...", "...p", "pp..", "pppp"),  # petites
    *("f...", ".o..", "f.o.", "fob."),  # quarters of marks that are crosses elsewhere
    *("f..f", ".ff.", "k..k", ".hh."),  # half stitches, both ways
    *("fff.", "ff.f", "f.ff", ".fff", "fffo", "offf"),  # three-quarter stitches
    *("f//o", "b//g", "\\fo\\", "\\xb\\"),  # two of them with a line between
    *("p..q", "qp.."),  # several kinds in one
)


@st.composite
def folders(draw: st.DrawFn) -> Mapping[str, bytes]:
    """The files of the tiny folder's pattern: pattern.yaml and a chart, of text or a table."""
    drawn = draw(patterns())
    windows = draw(_windows(drawn))
    lists = _lists(drawn, windows)
    used = {mark for row in drawn.grid.rows for mark in row} - {BARE}
    for name, entries in lists.items():
        for entry in entries:
            used |= set(entry[0]) if name != "close_ups" else _marks_of(entry[2])
    used &= set(_KEY)
    if not used:
        used, lists["backstitch"] = {"f"}, [("f", [(1, 1), (1, 2)])]
    text = _head(draw) + _key(draw, used)
    for name in draw(st.permutations(sorted(lists))):
        if lists[name]:
            text += draw(_list(name, lists[name]))
    text += "# issued\nrevisions:\n  - {date: 2026-11-25, note: First issue.}\n"
    end = draw(st.sampled_from(("\n", "\r\n")))
    return {PATTERN: text.replace("\n", end).encode()} | draw(_chart(drawn.grid.rows))


def _head(draw: st.DrawFn) -> str:
    return f"""\
title: Fern by the Tap  # {draw(st.sampled_from(("a remark", "left of row 3, column 12,30")))}
designer: alder
about: A fern uncurls.
occasion: {{name: First warm day, on: second Sunday of May}}
cloths:
  - {{cloth: hopsack-28, colour: frost}}
thread_sets: [moss, spool]
credits: {{model_stitcher: Hazel Penn}}
"""


def _key(draw: st.DrawFn, used: set[str]) -> str:
    marks = [mark for mark in _KEY if mark in used]
    if draw(st.booleans()):
        lines = ", ".join(f'"{mark}": {{{_KEY[mark]}}}' for mark in marks)
        return f"key: {{{lines}}}\n"
    lines = "".join(f"  {mark}: {{{_KEY[mark]}}}  # {mark} is left\n" for mark in marks)
    return f"key:\n  # the whole: key\n{lines}"


def _marks_of(rows: list[str]) -> set[str]:
    return set("".join(rows)) - {BARE, "/", "\\"}


# --- what stands in the lists ---------------------------------------------------------------------


def _lists(drawn: Pattern, windows: list[tuple[int, int, list[str]]]) -> dict[str, list]:
    def without_rests(points: tuple[Point, ...]) -> list[Point]:
        return [point for n, point in enumerate(points) if n == 0 or point != points[n - 1]]

    lists: dict[str, list] = {
        "backstitch": [],
        "long_stitch": [],
        "lazy_daisies": [(one.mark, [one.base, one.tip]) for one in drawn.daisies],
        "french_knots": [(one.mark, [one.at]) for one in drawn.knots[::2]],
        "beads": [("", [one.at for one in drawn.beads])] if drawn.beads else [],
        "close_ups": windows,
    }
    if drawn.knots[1::2]:  # several in one entry
        lists["french_knots"].append((drawn.knots[1].mark, [one.at for one in drawn.knots[1::2]]))
    for line in drawn.lines:
        points = without_rests(line.points)
        if len(points) > 1:
            lists["long_stitch" if line.long else "backstitch"].append((line.mark, points))
    return lists


@st.composite
def _windows(draw: st.DrawFn, drawn: Pattern) -> list[tuple[int, int, list[str]]]:
    """Up to three close-ups; no two fill the same stitch, and none one that the chart fills."""
    rows, taken, windows = drawn.grid.rows, set(), []
    for _ in range(draw(st.integers(0, 3))):
        left, top = draw(st.integers(1, len(rows[0]))), draw(st.integers(1, len(rows)))
        wide = draw(st.integers(1, min(3, len(rows[0]) - left + 1)))
        high = draw(st.integers(1, min(3, len(rows) - top + 1)))
        lines = []
        for y in range(top, top + high):
            upper = lower = ""
            for x in range(left, left + wide):
                free = rows[y - 1][x - 1] == BARE and (x, y) not in taken
                block = draw(st.sampled_from((*_BLOCKS, BARE * 4))) if free else BARE * 4
                taken |= {(x, y)} if block != BARE * 4 else set()
                upper, lower = upper + block[:2], lower + block[2:]
            lines += [upper, lower]
        windows.append((left, top, lines))
    return windows


# --- how it is written ----------------------------------------------------------------------------


def _said(points: list[Point], joint: str = " ") -> str:
    return joint.join(f"{x:g},{y:g}" for x, y in points)


@st.composite
def _list(draw: st.DrawFn, name: str, entries: list) -> str:
    """A list in one of the ways in which YAML can say it, with remarks between."""
    if name == "close_ups":
        return draw(_close_ups(entries))
    points = "path" if name in ("backstitch", "long_stitch", "lazy_daisies") else "at"
    written = []
    for mark, at in entries:
        quote = draw(st.sampled_from(('"', "'")))
        joint = draw(st.sampled_from((" ", "  ")))
        of = 'card: drop, number: "07"' if name == "beads" else f'colour: "{mark}"'
        written.append((of, f"{points}: {quote}{_said(at, joint)}{quote}"))
    way = draw(st.sampled_from(("brackets", "several lines", "entries", "blocks")))
    if way == "brackets":
        return f"{name}: [{', '.join(f'{{{of}, {at}}}' for of, at in written)}]\n"
    if way == "several lines":
        inside = ",\n".join(f"  {{{of}, {at}}}" for of, at in written)
        return f"{name}: [  # {name}, 1,1\n{inside}\n]\n"
    if way == "entries":
        lines = "".join(f"  - {{{of}, {at}}}  # at 3,4\n" for of, at in written)
        return f"{name}:\n  # the first: 2,2\n{lines}\n"
    lines = "".join(f"- {at}\n  {of.replace(', ', f'{chr(10)}  ')}\n  # so\n" for of, at in written)
    return f"{name}:\n{lines}"


@st.composite
def _close_ups(draw: st.DrawFn, windows: list[tuple[int, int, list[str]]]) -> str:
    text = "close_ups:\n"
    for left, top, rows in windows:
        way = draw(st.sampled_from(("block", "kept block", "quoted")))
        if way == "quoted":
            escaped = "\\n".join(row.replace("\\", "\\\\") for row in rows)
            text += f'  - {{at: "{left},{top}", rows: "{escaped}"}}\n'
            continue
        bar = "|" if way == "block" else "|+2"
        inside = "".join(f"      {row}\n" for row in rows)
        text += f"  # a window\n  - at: {left},{top}\n    rows: {bar}\n{inside}"
        text += "\n    # below it\n" if way == "kept block" else ""
    return text


@st.composite
def _chart(draw: st.DrawFn, rows: tuple[str, ...]) -> Mapping[str, bytes]:
    end = draw(st.sampled_from(("\n", "\r\n")))
    separator = draw(st.sampled_from(("", ",", ";")))
    if not separator:
        remarks = draw(st.sampled_from(("", "# f fern\n# in rows and columns\n\n")))
        return {CHART_TXT: (remarks + "\n".join(rows) + "\n").replace("\n", end).encode()}
    bare = draw(st.sampled_from((BARE, ""))) if len(rows[0]) > 1 else BARE
    cell = draw(st.sampled_from(("{}", '"{}"', " {}")))
    lines = [
        separator.join(bare if mark == BARE else cell.format(mark) for mark in row) for row in rows
    ]
    return {CHART_CSV: "".join(line + end for line in lines).encode()}


assert set(IN_CHART) <= set(_KEY)
