"""How long commands take that have next to nothing to do, beside Python alone:

    python -m tests.bench.import_time [--runs 9]

In turns, so that a busy machine is as busy for each; the least of all runs is printed, and its ratio to
that of `python -c pass`. The build is one of the demo in which nothing has changed.
"""

import argparse
import os
import resource
import subprocess
import sys
import time
from pathlib import Path
from tempfile import TemporaryDirectory

CONTENT = Path(__file__).parent.parent.parent / "content"
_PACKETGEN = [sys.executable, "-m", "packetgen"]


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.partition("\n")[0])
    parser.add_argument("--runs", type=int, default=9)
    runs = parser.parse_args().runs
    with TemporaryDirectory() as folder:
        built = ["build", "--content", CONTENT, "--into", Path(folder) / "build"]
        commands = {
            "python -c pass": [sys.executable, "-c", "pass"],
            "packetgen --help": [*_PACKETGEN, "--help"],
            "packetgen build --help": [*_PACKETGEN, "build", "--help"],
            "packetgen proof": [*_PACKETGEN, "proof", "--content", CONTENT],
            "packetgen build, nothing changed": [*_PACKETGEN, *built],
        }
        subprocess.run([*_PACKETGEN, *built], check=True, capture_output=True)
        time.sleep(
            2.5
        )  # until the demo's files are old enough to be known by what the disk says of them
        subprocess.run([*_PACKETGEN, *built], check=True, capture_output=True)
        least: dict[str, tuple[float, float]] = {}
        for _ in range(runs):
            for name, words in commands.items():
                took = _seconds(words)
                least[name] = tuple(map(min, took, least.get(name, took)))
    alone_s, alone_cpu_s = least["python -c pass"]
    print(f"{'least of ' + str(runs) + ' runs':34}{'wall s':>8}{'CPU s':>8}{'ratios':>16}")
    for name, (wall_s, cpu_s) in least.items():
        ratios = f"{wall_s / alone_s:.1f} {cpu_s / alone_cpu_s:.1f}"
        print(f"{name:34}{wall_s:8.3f}{cpu_s:8.3f}{ratios:>16}")


def _seconds(words: list[object]) -> tuple[float, float]:
    """On the clock, and of the processor."""
    before, since_s = _cpu_s(), time.perf_counter()
    subprocess.run(list(map(str, words)), check=True, capture_output=True, env=dict(os.environ))
    return time.perf_counter() - since_s, _cpu_s() - before


def _cpu_s() -> float:
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


if __name__ == "__main__":
    main()
