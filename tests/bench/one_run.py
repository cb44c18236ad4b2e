"""One chart drawn one way in a process of its own, and what it cost; `chart_pages` starts it.

The faces are made and the chart is read before the clock starts. The others are handed every page
ready described (see `plain_pages`); our own way starts from the pattern and its figures. Reckoning
thread is no drawing, so it is timed by itself.
"""

import json
import resource
import sys
import time
from collections.abc import Callable
from dataclasses import asdict, dataclass
from functools import partial
from pathlib import Path

# Way → what it is called in the table. "ours, both papers" is the packet as it is really made.
WAYS = ("ours", "reportlab", "typst", "ours, both papers")


@dataclass(frozen=True)
class Cost:
    reckoning_s: float  # ours alone
    loading_s: float  # importing the libraries: once for a build, however many charts
    wall_s: float
    cpu_s: float  # of all threads
    before_mb: float  # most memory held until drawing began
    peak_mb: float
    file_kb: float
    pages: int


def measured(way: str, folder: Path, into: Path) -> Cost:
    """`folder` is what `chart_pages` prepared; the PDF is left in `into`."""
    started = time.perf_counter()
    load = _DRAWING[way]()
    loading_s = time.perf_counter() - started
    draw, reckoning_s = load(folder)
    before_mb = _peak_mb()
    wall, cpu = time.perf_counter(), time.process_time()
    pdf = draw()
    wall_s, cpu_s = time.perf_counter() - wall, time.process_time() - cpu
    peak_mb = _peak_mb()
    into.write_bytes(pdf)
    pages = _pages(into)
    return Cost(reckoning_s, loading_s, wall_s, cpu_s, before_mb, peak_mb, len(pdf) / 1024, pages)


def _peak_mb() -> float:
    kilobytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
    return kilobytes / 1024 if sys.platform != "darwin" else kilobytes / 1024**2


def _pages(pdf: Path) -> int:
    from pypdf import PdfReader

    return len(PdfReader(pdf).pages)


# Each way loads its libraries, then takes the prepared folder, then draws.
_Draw = Callable[[], bytes]
_Load = Callable[[Path], tuple[_Draw, float]]  # and the seconds that reckoning took


def _ours(papers: tuple[str, ...]) -> _Load:
    import weasyprint  # noqa: F401 - the project loads it late, and it counts as loading

    from packetgen.render.faces import font_files
    from packetgen.render.pdf import PAPERS_MM
    from tests.chart_only import chart_pdfs, reckoned

    def load(folder: Path) -> tuple[_Draw, float]:
        pattern = _pattern(folder)
        started = time.perf_counter()
        of = reckoned(pattern)
        reckoning_s = time.perf_counter() - started
        font_files()
        papers_mm = {paper: PAPERS_MM[paper] for paper in papers}
        return lambda: chart_pdfs(of, papers_mm)[papers[0]], reckoning_s

    return load


def _reportlab() -> _Load:
    from tests.bench.by_reportlab import draw

    return lambda folder: (partial(draw, _described(folder), folder), 0.0)


def _typst() -> _Load:
    from tests.bench.by_typst import draw

    return lambda folder: (partial(draw, _described(folder), folder), 0.0)


def _described(folder: Path) -> dict:
    return json.loads((folder / "pages.json").read_text("utf-8"))


def _pattern(folder: Path) -> object:
    from tests.many_colours import many_coloured, wheel

    rows = tuple((folder / "chart.txt").read_text("utf-8").split())
    return many_coloured(rows, wheel(len(set("".join(rows)))))


_DRAWING: dict[str, Callable[[], _Load]] = {
    "ours": lambda: _ours(("letter",)),
    "reportlab": _reportlab,
    "typst": _typst,
    "ours, both papers": lambda: _ours(("letter", "a4")),
}


def prepare(size: str, folder: Path) -> None:
    """Leaves in `folder` the rows of the chart, its pages described, and the faces."""
    from packetgen.render.faces import font_files
    from tests.bench.plain_pages import plain
    from tests.bench.regions import SIZES, chart
    from tests.chart_only import reckoned

    pattern = chart(SIZES[size])
    (folder / "chart.txt").write_text("\n".join(pattern.grid.rows), "utf-8")
    (folder / "pages.json").write_text(json.dumps(plain(reckoned(pattern))), "utf-8")
    for name, data in font_files().items():
        (folder / name).write_bytes(data)


def check(folder: Path, pdf: Path) -> None:
    """AssertionError where the PDF does not say what the chart says, cell by cell."""
    from tests.chart_only import reckoned, symbols
    from tests.read_back import in_marks, whole_chart, with_pypdf

    pattern = _pattern(folder)
    read = whole_chart(with_pypdf(pdf.read_bytes()).values())
    assert in_marks(read, symbols(reckoned(pattern))) == pattern.grid.rows, f"{pdf}: another chart"


if __name__ == "__main__":
    task, folder, *rest = sys.argv[1:]
    if task == "prepare":
        prepare(rest[0], Path(folder))
    elif task == "check":
        check(Path(folder), Path(rest[0]))
    else:
        print(json.dumps(asdict(measured(task, Path(folder), Path(rest[0])))))
