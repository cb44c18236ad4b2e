"""One packet of the demo, beside the same made by two programs that people have otherwise.

    python -m tests.bench.other_ways [--pattern robin-on-the-spade] [--repeats 3] [--markdown] [--keep FOLDER]

LibreOffice without a window makes a PDF of a spreadsheet: the packet's words and tables on one sheet,
its chart, a coloured cell with a symbol for each stitch, on another. Typst sets the same words, tables
and chart. Neither is asked for the drawings, the lines and knots on the chart, tags or bookmarks, so
both do less than the packet does. Every way is handed finished figures and the picture of the cover, and
runs in a process of its own, its loading included; they take turns, and medians are shown.

Needs the extra `bench` (pip install -e ".[test,bench]"), and LibreOffice's spreadsheet: on Debian
`apt-get install --no-install-recommends libreoffice-calc`. Linux only.
"""

import argparse
import os
import shutil
import sys
from collections.abc import Callable
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

from tests.bench.process_tree import Run, run
from tests.bench.tables import Table, show

ROOT = Path(__file__).parent.parent.parent
OURS = "ours, A4"
_COLUMNS = ("way", "wall s", "CPU s", "peak MB", "PDF KB", "pages")
Costs = dict[str, float]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--pattern", default="robin-on-the-spade")
    parser.add_argument("--repeats", type=int, default=3, help="how often each way has its turn")
    parser.add_argument("--markdown", action="store_true", help="print tables as Markdown")
    parser.add_argument("--keep", type=Path, metavar="FOLDER", help="where the PDFs stay")
    options = parser.parse_args()
    if not shutil.which("soffice"):
        parser.error(
            "there is no soffice here; on Debian, apt-get install --no-install-recommends libreoffice-calc"
        )
    print(f"{os.cpu_count()} cores, load {os.getloadavg()[0]:.1f} at the start", flush=True)
    with TemporaryDirectory() as passing:
        folder = (options.keep or Path(passing)).resolve()
        (folder / ".fonts").mkdir(parents=True, exist_ok=True)
        _child("prepare", folder, options.pattern)
        # A first start sets up a profile, which is no work of this packet's.
        _WAYS["LibreOffice"](folder)
        costs: dict[str, list[Costs]] = {way: [] for way in _WAYS}
        for _ in range(options.repeats):
            for way, done in costs.items():
                done.append(_cost(_WAYS[way](folder), folder / _PDFS[way]))
    medians = {
        way: {name: median(one[name] for one in done) for name in done[0]}
        for way, done in costs.items()
    }
    for table in (_costs(medians), _ratios(medians)):
        print()
        show(table, options.markdown)


# --- the ways -------------------------------------------------------------------------------------


def _child(task: str, folder: Path, *words: str) -> Run:
    command = [sys.executable, "-m", "tests.bench.other_ways_child", task, str(folder), *words]
    return _sound(run(command, ROOT))


def _with_libreoffice(folder: Path) -> Run:
    """Writing the spreadsheet is not counted; what others would have is the spreadsheet."""
    profile = f"-env:UserInstallation={(folder / 'profile').as_uri()}"
    command = ["soffice", profile, "--headless", "--convert-to", "pdf", "packet.xlsx"]
    return _sound(run(command, folder, os.environ | {"HOME": str(folder)}))


def _sound(of: Run) -> Run:
    if of.code:
        raise SystemExit(f"exit code {of.code}\n{of.said}")
    return of


_WAYS: dict[str, Callable[[Path], Run]] = {
    OURS: lambda folder: _child("ours", folder),
    "LibreOffice": _with_libreoffice,
    "Typst": lambda folder: _child("typst", folder),
}
_PDFS = {OURS: "ours.pdf", "LibreOffice": "packet.pdf", "Typst": "typst.pdf"}


def _cost(of: Run, pdf: Path) -> Costs:
    from pypdf import PdfReader

    size = pdf.stat().st_size
    return {
        "wall s": of.wall_s,
        "CPU s": of.cpu_s,
        "peak MB": of.tree_mb,
        "PDF KB": size / 1024,
        "pages": len(PdfReader(pdf).pages),
    }


# --- tables ---------------------------------------------------------------------------------------


def _costs(medians: dict[str, Costs]) -> Table:
    forms = dict(zip(_COLUMNS[1:], (".2f", ".2f", ".0f", ".0f", ".0f")))
    return _COLUMNS, [
        (way, *(format(cost[name], form) for name, form in forms.items()))
        for way, cost in medians.items()
    ]


def _ratios(medians: dict[str, Costs]) -> Table:
    """Below 1 ours is better."""
    names = _COLUMNS[1:-1]
    return ("ratio", *names), [
        (f"{OURS} / {way}", *(f"{medians[OURS][name] / cost[name]:.2f}" for name in names))
        for way, cost in medians.items()
        if way != OURS
    ]


if __name__ == "__main__":
    main()
