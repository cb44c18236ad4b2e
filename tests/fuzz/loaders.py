"""Strange inputs for the loaders, led by coverage: `python -m tests.fuzz.loaders --minutes 30`.

Needs the package atheris (the extra `fuzz`). Each input is a file of one kind (see targets.py) in the tiny
folder, or a single value, or Markdown. What is found is written, once for each place in the code, into
--found (tests/fuzz/found, from where test_found.py replays it), with the words of what happened on the
terminal. The run goes on after a finding.
"""

import argparse
import contextlib
import hashlib
import importlib
import os
import random
import re
import shutil
import sys
import tempfile
import time
import traceback
from collections import Counter
from pathlib import Path

import atheris

HERE = Path(__file__).resolve().parent
SLOW_S = 10
# What a command loads when it is called, and must be watched too.
_LATE = ("bring.reading", "bring.brought", "bring.told", "pipeline.bringing", "cli.bring")
_WORD = re.compile(rb"[^\s{}\[\],:\"]+|[{}\[\],:\"]")
_PIECES = (
    *(b"'", b'"', b"{", b"}", b"[", b"]", b"\n", b"\n  ", b": ", b"- ", b"null", b"~", b"1e400"),
    *(b"0", b"-1", b"9" * 400, b"1/0 m", b"&a", b"*a", b"!!x", b"<<", b"0x1f", b"1_0", b"1:30"),
    *(b"\t", b"\r", b"\x00", b"\xff", "\u202e".encode(), "\u0301".encode(), "\U0001f331".encode()),
    *(
        b"2027-02-29",
        b"#",
        b"|",
        b">",
        b"%",
        b"@",
        b"\\",
        b"<a href=",
        b"](",
        b"M0,0",
        b"A1 1 0 1 1",
    ),
)


class Run:
    """One run: picks the target by the first byte, keeps what it finds, ends when its time is over."""

    def __init__(self, targets: dict, minutes: float, found: Path, work: Path) -> None:
        self.names = sorted(targets)
        self._targets = targets
        self._found, self._work = found, work
        self._known: set[str] = set()
        self._times: Counter[str] = Counter()
        self._begun = time.monotonic()
        self._ends = self._begun + minutes * 60
        self._slowest = ("", 0.0)

    def one(self, data: bytes) -> None:
        """One input: the number of the target, then its bytes."""
        if time.monotonic() > self._ends:
            self._report()
            sys.stdout.flush()
            shutil.rmtree(self._work, ignore_errors=True)
            os._exit(0)  # the engine below has no way of being told to stop
        if not data:
            return
        name, given = self.names[data[0] % len(self.names)], data[1:]
        self._times[name] += 1
        begun = time.process_time()
        try:
            self._targets[name].run(given)
        except Exception as error:  # whatever it is, it is what is looked for
            self._keep(name, given, error)
        spent = time.process_time() - begun
        if spent > self._slowest[1]:
            self._slowest = (name, spent)
        if spent > SLOW_S:
            self._keep(name, given, TimeoutError(f"{spent:.0f} s"))
        if sum(self._times.values()) % 20_000 == 0:
            self._report()

    def mutated(self, data: bytes, max_size: int, seed: int) -> bytes:
        """The engine's own changes, or words and lines of the file in other places: most of it stays in form."""
        dice = random.Random(seed)
        if len(data) < 2 or dice.random() < 0.4:
            return atheris.Mutate(data, max_size)
        head, body = data[:1], data[1:]
        for _ in range(dice.randint(1, 3)):
            body = self._changed(body, dice)
        return (head + body)[:max_size]

    def _changed(self, body: bytes, dice: random.Random) -> bytes:
        if dice.random() < 0.3:
            lines = body.split(b"\n")
            line = lines.pop(dice.randrange(len(lines)))
            for _ in range(dice.randint(0, 2)):
                lines.insert(dice.randint(0, len(lines)), line)
            return b"\n".join(lines)
        words = list(_WORD.finditer(body))
        if not words:
            return body + dice.choice(_PIECES)
        word = dice.choice(words)
        other = dice.choice((dice.choice(words)[0], dice.choice(_PIECES)))
        if dice.random() < 0.2:
            other = word[0] + other
        return body[: word.start()] + other + body[word.end() :]

    def _keep(self, name: str, given: bytes, error: Exception) -> None:
        frame = traceback.extract_tb(error.__traceback__)[-1:]
        where = f"{Path(frame[0].filename).name}:{frame[0].lineno}" if frame else ""
        what = f"{name} {type(error).__name__} {where} {str(error)[:40]}"
        if what in self._known or len(self._known) > 200:
            return
        self._known.add(what)
        file = self._found / f"{name}-{hashlib.sha256(given).hexdigest()[:10]}"
        file.write_bytes(given)
        print(f"FOUND {what}\n  {str(error)[:300]}\n  kept as {file.name}", flush=True)
        traceback.print_exception(error, limit=-4)

    def _report(self) -> None:
        minutes = (time.monotonic() - self._begun) / 60
        print(
            f"REPORT {sum(self._times.values())} inputs in {minutes:.1f} minutes, "
            f"{len(self._known)} findings, slowest {self._slowest[1]:.2f} s ({self._slowest[0]}); "
            + ", ".join(f"{name} {times}" for name, times in sorted(self._times.items())),
            flush=True,
        )


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    asked.add_argument("--minutes", type=float, default=30)
    asked.add_argument("--found", type=Path, default=HERE / "found")
    asked.add_argument("--only", default="", help="names of targets begin so, or so: a,b")
    asked.add_argument("--seed", type=int, default=1)
    given = asked.parse_args()
    with atheris.instrument_imports(include=["packetgen"]):
        from tests.fuzz.designs import bring_targets
        from tests.fuzz.edits import edit_targets
        from tests.fuzz.targets import file_targets, value_targets

        for name in _LATE:
            importlib.import_module(f"packetgen.{name}")
    memory = Path("/dev/shm") if Path("/dev/shm").is_dir() else Path(tempfile.gettempdir())
    work = Path(tempfile.mkdtemp(prefix="strange-", dir=memory))
    targets = {
        name: target
        for name, target in (
            file_targets(work / "content")
            | value_targets()
            | bring_targets(work / "desk")
            | edit_targets(work / "chart")
        ).items()
        if name.startswith(tuple(given.only.split(",")))
    }
    given.found.mkdir(parents=True, exist_ok=True)
    run = Run(targets, given.minutes, given.found, work)
    seeds = work / "seeds"
    seeds.mkdir()
    for number, name in enumerate(run.names):
        for index, seed in enumerate(targets[name].seeds):
            (seeds / f"{number}-{index}").write_bytes(bytes([number]) + seed)
    words = [sys.argv[0], f"-seed={given.seed}", "-max_len=20000", "-timeout=600"]
    words += ["-rss_limit_mb=2500", "-print_final_stats=1", "-verbosity=0"]
    words += [f"-artifact_prefix={given.found}/stopped-", str(work / "corpus"), str(seeds)]
    (work / "corpus").mkdir()
    with contextlib.suppress(KeyboardInterrupt):
        atheris.Setup(words, run.one, custom_mutator=run.mutated)
        atheris.Fuzz()


if __name__ == "__main__":
    main()
