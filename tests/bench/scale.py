"""What builds of a growing catalogue cost: whole, unchanged, and after one edit.

    python -m tests.bench.scale [--sizes 9,100,1000] [--steps cold,same,…] [--keep FOLDER] [--markdown]

Needs the extra `bench`; Linux only. Each step is the real command in a process of its own. Steps after
`cold` edit a file and build into the same folder. With --keep, catalogue and build stay in FOLDER, and
steps can be run apart from each other, even in another run; --stand-in then makes the cold build with
small plain pictures and papers in place of every real one, for when only what follows is of interest.
"""

import argparse
import os
import re
import sys
import time
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from tempfile import TemporaryDirectory

from tests.bench.catalogue import (
    AS_OF,
    PACKET_TEMPLATE,
    SITE_TEMPLATE,
    THREAD_CARD,
    catalogue,
    first_story,
)
from tests.bench.process_tree import Run, run
from tests.bench.tables import Table, show

ROOT = Path(__file__).parent.parent.parent
# Until the disk's times of a file are old enough to be believed (load.inputs).
_SETTLE_S = 2.5


@dataclass(frozen=True)
class Step:
    title: str
    edit: Callable[[Path], None]


def _nothing(folder: Path) -> None:
    pass


def _story(folder: Path) -> None:
    with first_story(folder).open("a", encoding="utf-8") as file:
        file.write(f"\nSomebody read this at {time.time_ns()} and asked for one sentence more.\n")


def _thread(folder: Path) -> None:
    """The card's own name, which stands in every key."""
    file = folder / "content" / THREAD_CARD
    text = re.sub("(?m)^name: .*", f"name: Rainbarrel {_word()}", file.read_text("utf-8"))
    file.write_text(text, "utf-8")


def _template(name: str) -> Callable[[Path], None]:
    def edit(folder: Path) -> None:
        with (folder / "templates" / name).open("a", encoding="utf-8") as file:
            file.write(f"<p>{_word()}</p>\n")

    return edit


def _word() -> str:
    return "".join(chr(ord("a") + int(digit)) for digit in str(time.time_ns()))


STEPS = {
    "cold": Step("cold", _nothing),
    "same": Step("nothing changed", _nothing),
    "story": Step("one story edited", _story),
    "thread": Step("one thread card edited", _thread),
    "packet-template": Step("one packet template edited", _template(PACKET_TEMPLATE)),
    "site-template": Step("one site template edited", _template(SITE_TEMPLATE)),
}
_COLUMNS = (
    "patterns", "step", "wall s", "CPU s", "CPU s a pattern", "all MB", "one process MB", "files made",
)  # fmt: skip
# What was promised for two cores: step, size from which it is asked, what is measured, its limit.
_TARGETS = (
    ("cold", 1, "CPU s a pattern", lambda run, size: run.cpu_s / size, 3.0),
    ("cold", 1, "memory of all processes, MB", lambda run, size: run.tree_mb, 1000),
    ("same", 1000, "wall s", lambda run, size: run.wall_s, 2.0),
    ("story", 1000, "wall s", lambda run, size: run.wall_s, 3.0),
)
Runs = dict[tuple[int, str], Run]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--sizes", default="9,100,1000", help="patterns, with commas between")
    parser.add_argument("--steps", default=",".join(STEPS), help="which steps, in this order")
    parser.add_argument("--keep", type=Path, metavar="FOLDER", help="where all of it stays")
    parser.add_argument("--stand-in", action="store_true", help="the cold build draws nothing real")
    parser.add_argument("--markdown", action="store_true", help="print tables as Markdown")
    options = parser.parse_args()
    steps = options.steps.split(",")
    unknown = sorted(set(steps) - set(STEPS))
    if unknown:
        parser.error(f"no such step: {', '.join(unknown)}; there are {', '.join(STEPS)}")
    print(f"{os.cpu_count()} cores, load {os.getloadavg()[0]:.1f} at the start", flush=True)
    runs: Runs = {}
    with TemporaryDirectory() as passing:
        for size in map(int, options.sizes.split(",")):
            folder = (options.keep or Path(passing)) / f"{size}-patterns"
            runs |= _measured(size, folder.resolve(), steps, options.stand_in)
    for table in (_costs(runs), _growth(runs), _targets(runs)):
        print()
        show(table, options.markdown)
    if any(one.code for one in runs.values()):
        raise SystemExit(1)


def _measured(size: int, folder: Path, steps: list[str], stand_in: bool) -> Runs:
    """Every step of one size. A step that fails is shown, and the ones after it are left out."""
    if not (folder / "content").is_dir():
        catalogue(size, folder)
    runs: Runs = {}
    for name in steps:
        STEPS[name].edit(folder)
        if name in ("cold", "same"):
            time.sleep(_SETTLE_S)
        of = runs[size, name] = _build(folder, name == "cold", stand_in)
        print(f"{size} patterns, {STEPS[name].title}: {of.wall_s:.1f} s", flush=True)
        if of.code:
            print(f"FAILED with exit code {of.code}:\n{of.said[-4000:]}", flush=True)
            break
    return runs


def _build(folder: Path, cold: bool, stand_in: bool) -> Run:
    module = "tests.bench.stand_in" if cold and stand_in else "packetgen"
    command = [sys.executable, "-m", module, "build", "--as-of", AS_OF]
    if cold:
        command.append("--afresh")
    env = os.environ | {"PYTHONPATH": str(ROOT)}
    return run(command, folder, env)


# --- tables ---------------------------------------------------------------------------------------


def _costs(runs: Runs) -> Table:
    return _COLUMNS, [
        (
            f"{size}",
            STEPS[name].title,
            f"{of.wall_s:.2f}",
            f"{of.cpu_s:.2f}",
            f"{of.cpu_s / size:.3f}",
            f"{of.tree_mb:.0f}",
            f"{of.process_mb:.0f}",
            _files_made(of),
        )
        for (size, name), of in runs.items()
    ]


def _files_made(of: Run) -> str:
    if of.code:
        return "FAILED"
    said = re.search(r"(\d+) files? made", of.said)
    return said[1] if said else "0"


def _growth(runs: Runs) -> Table:
    """CPU seconds a pattern, beside those of the smallest catalogue: 1 is flat."""
    sizes = sorted({size for size, _ in runs})
    names = list(dict.fromkeys(name for _, name in runs))
    return ("CPU s a pattern, to that of the smallest", *(f"{size}" for size in sizes)), [
        (STEPS[name].title, *(_beside(runs, name, size, sizes[0]) for size in sizes))
        for name in names
    ]


def _beside(runs: Runs, name: str, size: int, smallest: int) -> str:
    if (size, name) not in runs or (smallest, name) not in runs:
        return "-"
    return f"{runs[size, name].cpu_s / size / (runs[smallest, name].cpu_s / smallest):.2f}"


def _targets(runs: Runs) -> Table:
    lines = []
    for (size, name), of in runs.items():
        for step, asked_from, what, measure, limit in _TARGETS:
            if name != step or size < asked_from or of.code:
                continue
            found = measure(of, size)
            lines.append(
                (
                    f"{size} patterns, {STEPS[name].title}: {what}",
                    f"{found:.2f}",
                    f"{limit:g}",
                    f"{found / limit:.2f}",
                    "met" if found < limit else "MISSED",
                )
            )
    return ("target", "found", "under", "ratio", ""), lines


if __name__ == "__main__":
    main()
