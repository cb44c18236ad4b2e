"""The command as a person runs it: a process of its own."""

import hashlib
import json
import os
import signal
import subprocess
import sys
from contextlib import suppress
from pathlib import Path

from packetgen.record import ISSUED, MANIFEST, SIGNS

ROOT = Path(__file__).parent.parent
PACKETGEN = (sys.executable, "-m", "packetgen")
# A day on which everything of the tiny series is out.
OUT = ("--as-of", "2027-02-01")


def environment(**more: str) -> dict[str, str]:
    return os.environ | {"PYTHONPATH": str(ROOT)} | more


def begin(*words: object, folder: Path, **more: str) -> subprocess.Popen:
    """The command at work in `folder`, in a group of processes of its own."""
    return subprocess.Popen(
        [*PACKETGEN, *map(str, words)],
        cwd=folder,
        env=environment(**more),
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        start_new_session=True,
        preexec_fn=_hear_ctrl_c,
    )


def _hear_ctrl_c() -> None:
    """As a command does that a person types, however the tests were begun."""
    signal.signal(signal.SIGINT, signal.SIG_DFL)


def run(*words: object, folder: Path, code: int = 0, **more: str) -> subprocess.CompletedProcess:
    """The command, to its end; never with a traceback on the screen."""
    process = begin(*words, folder=folder, **more)
    out, err = process.communicate(timeout=300)
    assert "Traceback" not in out + err
    assert process.returncode == code, out + err
    return subprocess.CompletedProcess(process.args, process.returncode, out, err)


def kill_all(process: subprocess.Popen) -> None:
    """`kill -9` of the process and all that it began."""
    with suppress(ProcessLookupError):  # all of it has ended
        os.killpg(process.pid, signal.SIGKILL)
    process.communicate()


def is_whole(build: Path) -> bool:
    """Whether the folder holds just the files that its manifest names, with the contents that it names.

    Looks at one folder to the end, also when another one takes its place meanwhile. Raises
    FileNotFoundError when what it looks at is being thrown away: files, or whole folders of them, are then
    gone, and another folder has its place.
    """
    folder = os.open(build, os.O_RDONLY | os.O_DIRECTORY)
    try:
        there = {}
        for path, _, names, here in os.fwalk(".", dir_fd=folder):
            for name in names:
                with open(os.open(name, os.O_RDONLY, dir_fd=here), "rb") as file:
                    there[os.path.normpath(f"{path}/{name}")] = file.read()
        if not _as_named(there) and not os.path.samestat(os.fstat(folder), os.stat(build)):
            raise FileNotFoundError(build)
    finally:
        os.close(folder)
    return _as_named(there)


def _as_named(there: dict[str, bytes]) -> bool:
    """Whether the files are those that their manifest names, and with those contents."""
    if not {MANIFEST, SIGNS} <= set(there):
        return False
    there = {path: data for path, data in there.items() if path not in (SIGNS, ISSUED)}
    named = json.loads(there.pop(MANIFEST))["outputs"]
    found = {path: hashlib.sha256(data).hexdigest() for path, data in there.items()}
    return bool(found) and found == {path: one["sha256"] for path, one in named.items()}


def meddling(folder: Path, code: str) -> dict[str, str]:
    """Facts of an environment in which every process of Python runs `code` before anything else."""
    folder.mkdir(parents=True, exist_ok=True)
    (folder / "sitecustomize.py").write_text(code)
    return {"PYTHONPATH": os.pathsep.join([str(folder), str(ROOT)])}
