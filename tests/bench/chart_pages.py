"""How fast, large and hungry the chart pages are, beside the same pages drawn by two other libraries.

    python -m tests.bench.chart_pages [--sizes small,medium,large] [--repeats 3] [--markdown] [--check]

Needs the extra `bench` (pip install -e ".[test,bench]"). Every run has a fresh process, and the ways
take turns, so that a busy moment of the machine meets all of them; medians are shown. Ours is a tagged
PDF/UA document with alternative texts, Typst's is tagged, reportlab's is not.
"""

import argparse
import json
import subprocess
import sys
from pathlib import Path
from statistics import median
from tempfile import TemporaryDirectory

# Nothing large may be imported here: a child's peak memory begins with what its parent held.
from tests.bench.one_run import WAYS
from tests.bench.tables import Table, show

SIZES = ("small", "medium", "large")
_COLUMNS = (
    ("wall s", "wall_s", ".2f"),
    ("CPU s", "cpu_s", ".2f"),
    ("loading s", "loading_s", ".2f"),
    ("peak MB", "peak_mb", ".0f"),
    ("for drawing MB", "drawing_mb", ".0f"),
    ("file KB", "file_kb", ".0f"),
    ("pages", "pages", ".0f"),
)
_RATIOS = (
    ("wall", "wall_s"),
    ("CPU", "cpu_s"),
    ("wall with loading", "all_s"),
    ("peak", "peak_mb"),
    ("file", "file_kb"),
)
Costs = dict[str, float]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--sizes", default=",".join(SIZES), help="which charts, with commas")
    parser.add_argument("--repeats", type=int, default=3, help="how often each way has its turn")
    parser.add_argument("--markdown", action="store_true", help="print tables as Markdown")
    parser.add_argument("--check", action="store_true", help="read every PDF back, cell by cell")
    options = parser.parse_args()
    costs, stitches = {}, {}
    for size in options.sizes.split(","):
        with TemporaryDirectory() as name:
            folder = Path(name)
            _child("prepare", folder, size)
            rows = (folder / "chart.txt").read_text("utf-8").split()
            stitches[size] = len(rows) * len(rows[0])
            print(f"{size}: {len(rows[0])} × {len(rows)}, {_facts(rows)}")
            costs[size] = _medians(folder, options.repeats)
            for way in WAYS if options.check else ():
                _child("check", folder, folder / f"{way}.pdf")
    if options.check:
        print("Every PDF was read back and holds its chart, cell by cell.")
    for table in (_costs(costs), _ratios(costs), _by_size(costs, stitches)):
        print()
        show(table, options.markdown)


def _facts(rows: list[str]) -> str:
    runs = sum(1 + sum(a != b for a, b in zip(row, row[1:])) for row in rows)
    stitches = len(rows) * len(rows[0])
    return f"{len(set(''.join(rows)))} colours, {stitches / runs:.1f} stitches in a run"


def _medians(folder: Path, repeats: int) -> dict[str, Costs]:
    runs: dict[str, list[Costs]] = {way: [] for way in WAYS}
    for _ in range(repeats):
        for way, done in runs.items():
            cost = json.loads(_child(way, folder, folder / f"{way}.pdf"))
            cost["drawing_mb"] = cost["peak_mb"] - cost["before_mb"]
            cost["all_s"] = cost["wall_s"] + cost["loading_s"]
            done.append(cost)
    return {
        way: {name: median(c[name] for c in done) for name in done[0]} for way, done in runs.items()
    }


def _child(*words: object) -> str:
    command = [sys.executable, "-m", "tests.bench.one_run", *map(str, words)]
    return subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True).stdout


# --- tables ---------------------------------------------------------------------------------------


def _costs(costs: dict[str, dict[str, Costs]]) -> Table:
    head = ("size", "way", *(title for title, _, _ in _COLUMNS))
    return head, [
        (size, way, *(format(cost[name], form) for _, name, form in _COLUMNS))
        for size, ways in costs.items()
        for way, cost in ways.items()
    ]


def _ratios(costs: dict[str, dict[str, Costs]]) -> Table:
    """Below 1 ours is better. The last line of a size: two papers beside one."""
    head = ("size", "ratio", *(title for title, _ in _RATIOS))
    pairs = (("ours", "reportlab"), ("ours", "typst"), ("ours, both papers", "ours"))
    return head, [
        (size, f"{one} / {other}", *(f"{ways[one][n] / ways[other][n]:.2f}" for _, n in _RATIOS))
        for size, ways in costs.items()
        for one, other in pairs
    ]


def _by_size(costs: dict[str, dict[str, Costs]], stitches: dict[str, int]) -> Table:
    """Whether time grows with the stitches, and what the second paper adds.

    In CPU seconds: the differences are small, and others may be using the machine.
    """
    head = ("ours", *costs)
    thousands = [stitches[size] / 1000 for size in costs]
    ours = [ways["ours"]["cpu_s"] for ways in costs.values()]
    both = [ways["ours, both papers"]["cpu_s"] for ways in costs.values()]
    reckoning = [ways["ours"]["reckoning_s"] for ways in costs.values()]
    return head, [
        ("CPU s per 1,000 stitches", *(f"{s / t:.4f}" for s, t in zip(ours, thousands))),
        ("second paper, share of the first", *(f"{b / o - 1:.0%}" for o, b in zip(ours, both))),
        ("reckoning before it, s", *(f"{s:.2f}" for s in reckoning)),
    ]


if __name__ == "__main__":
    main()
