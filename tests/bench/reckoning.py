"""How long thread takes to reckon, beside drawing one page of the same chart.

    python -m tests.bench.reckoning [--repeats 5]

Every chart is reckoned for five cloths and three thread sets, from the pattern to the units to buy. The
page is the first one of the chart, set by the engine for one paper. "with loading" adds what has to be
imported for it, measured in a process of its own. Medians; ratios below 1 mean that reckoning is the
quicker. The regions are charts as designers draw them, the confetti has a colour drawn by lot for each
stitch, and the lines are thousands of short backstitches.
"""

import argparse
import subprocess
import sys
import time
from collections.abc import Callable
from dataclasses import replace
from functools import partial
from random import Random
from statistics import median

from packetgen.model import BARE, Corner, Fraction, Line, Pattern, Stitch, ThreadSet
from packetgen.reckon.figures import Figures
from packetgen.reckon.sizes import cell_mm
from packetgen.reckon.thread import needs, work_of, worked_of
from packetgen.render.pdf import PAPERS_MM, documents
from tests.bench.regions import SIZES, chart
from tests.chart_only import chart_document, pages_of, reckoned
from tests.many_colours import MARKS, many_coloured, wheel
from tests.stitching import HERE

CLOTHS = ((14, 1), (16, 1), (28, 2), (32, 2), (36, 2))  # count, over
# Set → strands of the card that tests use.
SETS = {"wheel": 2, "wheel-single": 1, "wheel-triple": 3}
ONE_PAPER = {"letter": PAPERS_MM["letter"]}
_LOADING = {
    "reckoning": "import packetgen.reckon.thread",
    "drawing": "import weasyprint, packetgen.render.packet, packetgen.render.pdf",
}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--repeats", type=int, default=5, help="how often each is measured")
    repeats = parser.parse_args().repeats
    loading = {what: _median(partial(_fresh, code), repeats) for what, code in _LOADING.items()}
    bare = _median(partial(_fresh, "pass"), repeats)
    loading = {what: taken - bare for what, taken in loading.items()}
    print(f"loading: reckoning {_ms(loading['reckoning'])}, drawing {_ms(loading['drawing'])}")
    head = ("chart", "work", "15 needs", "both", "one page", "ratio", "ratio with loading")
    print("  ".join(f"{title:>{max(10, len(title))}}" for title in head))
    for name, pattern in _charts():
        of = three_sets(pattern)
        works = work_of(of)
        work = _median(partial(work_of, of), repeats)
        need = _median(partial(_all_needs, works, of.thread_sets), repeats)
        page = chart_document(one_page(pattern))
        drawn = _median(partial(documents, **page, papers_mm=ONE_PAPER), repeats)
        both = work + need
        ratios = both / drawn, (both + loading["reckoning"]) / (drawn + loading["drawing"])
        cells = (name, *map(_ms, (work, need, both, drawn)), *(f"{r:.2f}" for r in ratios))
        print("  ".join(f"{cell:>{max(10, len(title))}}" for cell, title in zip(cells, head)))


def _charts() -> list[tuple[str, Pattern]]:
    large = chart(SIZES["large"])
    return [(size, chart(SIZES[size])) for size in SIZES] + [
        ("confetti", confetti(SIZES["large"].width, SIZES["large"].height, 60)),
        ("lines", replace(large, lines=short_lines(5000, 500, 400))),
        ("fractions", fractional(large)),
    ]


def confetti(width: int, height: int, colours: int) -> Pattern:
    random = Random(1)
    rows = tuple("".join(random.choices(MARKS[:colours], k=width)) for _ in range(height))
    return many_coloured(rows, wheel(colours))


def short_lines(count: int, width: int, height: int) -> tuple[Line, ...]:
    random = Random(2)
    corners = [(random.randint(1, width), random.randint(1, height)) for _ in range(count)]
    return tuple(
        Line(random.choice(MARKS[:60]), ((x, y), (x + 1, y), (x + 1, y + 1)), False, HERE)
        for x, y in corners
    )


def fractional(pattern: Pattern) -> Pattern:
    """Each stitch whose neighbour to the right is of another colour shares its cell with it."""
    rows, fractions = [], []
    for y, row in enumerate(pattern.grid.rows, 1):
        shared = [x for x, (one, other) in enumerate(zip(row, row[1:]), 1) if one != other]
        for x in shared:
            for mark, corner in ((row[x - 1], Corner.TOP_RIGHT), (row[x], Corner.BOTTOM_LEFT)):
                fractions.append(Fraction(x, y, mark, Stitch.THREE_QUARTER, corner))
        rows.append("".join(BARE if x in set(shared) else m for x, m in enumerate(row, 1)))
    grid = replace(pattern.grid, rows=tuple(rows))
    return replace(pattern, grid=grid, fractions=tuple(fractions))


def three_sets(pattern: Pattern) -> Pattern:
    (only,) = pattern.thread_sets
    sets = tuple(ThreadSet(name, only.card, strands, 1, 1) for name, strands in SETS.items())
    key = tuple(
        replace(line, threads=dict.fromkeys(SETS, line.threads[only.id])) for line in pattern.key
    )
    return replace(pattern, thread_sets=sets, key=key)


def one_page(pattern: Pattern) -> Figures:
    """Figures of so much of the chart as its first page holds."""
    tile = pages_of(reckoned(replace(pattern, lines=(), fractions=())))[0].sheet.tile
    wide, high = tile.columns.last, tile.rows.last
    rows = tuple(row[:wide] for row in pattern.grid.rows[:high])
    of = reckoned(
        replace(
            pattern,
            grid=replace(pattern.grid, rows=rows),
            fractions=tuple(f for f in pattern.fractions if f.column <= wide and f.row <= high),
            lines=tuple(
                line
                for line in pattern.lines
                if all(x <= wide + 1 and y <= high + 1 for x, y in line.points)
            ),
        )
    )
    assert len(pages_of(of)) == 1
    return of


def _all_needs(works: tuple, sets: tuple[ThreadSet, ...]) -> None:
    for count, over in CLOTHS:
        worked = worked_of(works, cell_mm(count, over))
        for thread_set in sets:
            needs(worked, thread_set)


def _fresh(code: str) -> None:
    subprocess.run([sys.executable, "-c", code], check=True)


def _median(do: Callable[[], object], repeats: int) -> float:
    taken = []
    for _ in range(repeats):
        started = time.perf_counter()
        do()
        taken.append(time.perf_counter() - started)
    return median(taken)


def _ms(seconds: float) -> str:
    return f"{seconds * 1000:.0f} ms"


if __name__ == "__main__":
    main()
