"""How long the tables of fit of a whole series take, beside drawing one page of a chart.

    python -m tests.bench.fit_tables [--repeats 5]

Eight designs on fifteen cloths, before a panel with a round pot. The page is the first one of a small chart,
set by the engine for one paper. Medians of one run; a ratio below 1 means that the tables are the quicker.
"""

import argparse
import time
from collections.abc import Callable
from functools import partial
from math import cos, pi, sin
from statistics import median

from packetgen.model import KeepOut, Series
from packetgen.reckon.fit_table import fit_tables
from packetgen.render.pdf import PAPERS_MM, documents
from tests.bench.reckoning import one_page
from tests.bench.regions import SIZES, chart
from tests.chart_only import chart_document
from tests.stitching import option, pattern, piece, series

DESIGNS, CLOTHS = 8, 15


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--repeats", type=int, default=5, help="how often each is measured")
    repeats = parser.parse_args().repeats
    page = chart_document(one_page(chart(next(iter(SIZES.values())))))
    papers = {"letter": PAPERS_MM["letter"]}
    drawn_s = _median(partial(documents, **page, papers_mm=papers), repeats)
    tables_s = _median(partial(fit_tables, year()), repeats)
    print(
        f"tables {tables_s * 1000:.0f} ms, one page {drawn_s * 1000:.0f} ms, ratio {tables_s / drawn_s:.2f}"
    )


def year() -> Series:
    """Eight designs, from broad to high, each on fifteen cloths; a round pot stands before the panel."""
    cloths = tuple(option(10 + count) for count in range(CLOTHS))
    turns = [number * pi / 32 for number in range(64)]
    circle = tuple((170 + 30 * cos(turn), 150 + 30 * sin(turn)) for turn in turns)
    designs = (
        pattern(*["m" * (60 + 3 * n)] * (71 - 2 * n), id=f"design-{n}", cloths=cloths)
        for n in range(DESIGNS)
    )
    return series(*designs, finish=piece(keep_outs=(KeepOut("a round pot", circle),)))


def _median(work: Callable[[], object], repeats: int) -> float:
    taken = []
    for _ in range(repeats):
        started = time.perf_counter()
        work()
        taken.append(time.perf_counter() - started)
    return median(taken)


if __name__ == "__main__":
    main()
