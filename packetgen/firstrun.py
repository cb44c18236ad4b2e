"""From a fresh copy of the project to a first run, in one command.

    python3 -m packetgen.firstrun build …    set up, then run `packetgen build …`
    python3 -m packetgen.firstrun test …     set up for testing, then run `pytest …`

Set-up means: the system libraries of the PDF writer, a private Python environment in the
folder `.venv`, and in it the project with all it is built on. What is already in place is
left alone, so the same two commands serve every day. This module is plain standard library,
written so that an older Python can still read it and say that it is too old.

Exit code: that of the command run, or 2 with a plain message when set-up cannot go on.
"""

from __future__ import annotations

import errno
import hashlib
import importlib
import importlib.util
import json
import os
import shutil
import subprocess
import sys
from pathlib import Path

from packetgen import systemlibs

OLDEST_PYTHON = (3, 11)
ROOT = Path(__file__).resolve().parent.parent
STAMP_NAME = "packetgen-firstrun.json"
LOG_NAME = "packetgen-firstrun.log"
USAGE = """\
Type one of these in the project's folder:

    python3 -m packetgen.firstrun build    set up if needed, then build everything
    python3 -m packetgen.firstrun test     set up if needed, then run the tests

Anything further on the line is handed on to the build, or to the tests.
"""


class SetupStopped(Exception):
    """Set-up cannot go on; the text says why and what to do, for an author to read."""


def main(arguments: list[str] | None = None) -> int:
    """Set up what is missing, run the command asked for, and return its exit code."""
    task, *rest = (sys.argv[1:] if arguments is None else arguments) or [""]
    try:
        refuse_old_python(sys.version_info)
        if task in ("-h", "--help"):
            say(USAGE)
            return 0
        if task not in ("build", "test"):
            raise SetupStopped(USAGE)
        refuse_another_s(ROOT / ".venv")
        ensure_system_parts()
        ensure_environment(ROOT, task)
        return run(ROOT, task, rest)
    except SetupStopped as stopped:
        complain(str(stopped))
    except OSError as error:
        complain(plain_os_error(error))
    except KeyboardInterrupt:
        complain("Stopped. The same command takes up where it left off.")
        return 130
    return 2


def refuse_old_python(version: tuple[object, ...]) -> None:
    """Raise SetupStopped when ``version`` (as in ``sys.version_info``) is too old."""
    if tuple(version[:2]) < OLDEST_PYTHON:
        raise SetupStopped(
            f"packetgen needs Python 3.11 or newer, and this is Python {version[0]}.{version[1]}. "
            "If a newer one is installed, call it by name:\n\n"
            "    python3.11 -m packetgen.firstrun build"
        )


# --- the system's part: venv, and the libraries of the PDF writer ---------------------------


def ensure_system_parts() -> None:
    """Install the system packages that are missing, or raise SetupStopped saying how to."""
    lacking = missing_parts()
    if not lacking:
        return
    system = systemlibs.this_system()
    if "venv" in lacking and system != "debian":
        raise SetupStopped(
            "This Python came without its venv part. "
            "Install the complete Python from https://www.python.org/downloads/"
        )
    # Only Debian and its kin keep venv in a package of its own, one for each Python.
    venv = [f"python3.{sys.version_info[1]}-venv"] if "venv" in lacking else []
    libraries = systemlibs.PACKAGES.get(system, ()) if lacking != ["venv"] else ()
    prefix = permission_to_install(system)
    if prefix is not None:
        packages = [*venv, *libraries]
        say("Installing for the whole computer: " + " ".join(packages))
        output = install_packages(system, prefix, packages)
        importlib.invalidate_caches()
        if not missing_parts():
            return
        complain("That did not work. " + reason_for(output))
    raise SetupStopped(
        f"packetgen needs parts of the system that are not there yet: {', '.join(lacking)}.\n"
        f"{systemlibs.what_to_type(system, venv)}\n"
        "Then give the same command again."
    )


def missing_parts() -> list[str]:
    """The short names of the system's parts that are not there; empty when all are."""
    has_venv = all(importlib.util.find_spec(name) for name in ("venv", "ensurepip"))
    return [*([] if has_venv else ["venv"]), *systemlibs.missing_libraries(library_folders())]


def library_folders() -> tuple[str, ...]:
    return systemlibs.HOMEBREW_FOLDERS if sys.platform == "darwin" else ()


def permission_to_install(system: str) -> list[str] | None:
    """What to put before an install command, or None where this user may not install."""
    tool = {"debian": "apt-get", "fedora": "dnf", "macos": "brew"}.get(system)
    if tool is None or shutil.which(tool) is None:
        return None
    is_root = os.geteuid() == 0
    if system == "macos":
        return None if is_root else []  # Homebrew refuses to work for root
    if is_root:
        return []
    if shutil.which("sudo") and capture(["sudo", "-n", "true"])[0] == 0:
        return ["sudo", "-n"]
    return None


def install_packages(system: str, prefix: list[str], packages: list[str]) -> str:
    """Install ``packages`` without asking anything; returns what the installer printed."""
    if system == "macos":
        return capture(["brew", "install", *packages])[1]
    if system == "fedora":
        return capture([*prefix, "dnf", "install", "-y", *packages])[1]
    apt_get = [
        *prefix,
        "env",
        "DEBIAN_FRONTEND=noninteractive",
        "apt-get",
        "-o",
        "DPkg::Lock::Timeout=60",
    ]
    install = [*apt_get, "install", "-y", "--no-install-recommends", *packages]
    code, output = capture(install)
    if code != 0:  # most often the list of packages is missing or out of date
        code, output = capture([*apt_get, "update"])
        output += capture(install)[1]
    return output


# --- the project's part: the environment in .venv ------------------------------------------


def ensure_environment(root: Path, task: str) -> None:
    """Make ``.venv`` in ``root`` fit for ``task``; quick when it is so already."""
    if not (root / "pyproject.toml").is_file():
        raise SetupStopped(
            "This is an installed packetgen, which needs no set-up. Type: packetgen build"
        )
    folder = root / ".venv"
    stamp, now = read_stamp(folder), state_of(root, task)
    if is_current(stamp, now):
        return
    if not same_environment(stamp, now):
        clear_environment(folder)
    say(
        "Setting up packetgen in the folder .venv. "
        "This needs the internet and takes a few minutes the first time."
    )
    if not folder.exists():
        make_environment(root)
    project = ".[test]" if task == "test" else "."
    run_or_stop(
        folder,
        [str(python_in(folder)), "-m", "pip", "install", "--quiet", "--editable", project],
        root,
    )
    write_stamp(folder, state_of(root, task))


def clear_environment(folder: Path) -> None:
    """Remove an environment that no longer fits, if it was this set-up that made it."""
    refuse_another_s(folder)
    if folder.exists():
        shutil.rmtree(folder)


def refuse_another_s(folder: Path) -> None:
    """Raise SetupStopped where the environment is there, and this set-up did not make it."""
    if folder.exists() and not read_stamp(folder):
        raise SetupStopped(
            "The folder .venv is not one that this set-up made. "
            "Rename or delete it, then give the same command again."
        )


def make_environment(root: Path) -> None:
    """Make ``.venv`` from nothing."""
    folder = root / ".venv"
    folder.mkdir()
    # Stamped before it is finished, so that a half-made one is known and made anew.
    write_stamp(folder, {"place": str(root)})
    # Inside another environment, sys.executable may be the very Python just removed.
    base_python = getattr(sys, "_base_executable", None) or sys.executable
    run_or_stop(folder, [base_python, "-m", "venv", "--prompt", "packetgen", str(folder)], root)
    write_stamp(folder, {**state_of(root, ""), "pyproject": ""})


def python_in(folder: Path) -> Path:
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def state_of(root: Path, task: str) -> dict[str, str]:
    """All that decides whether ``.venv`` still fits, as it is now."""
    python = python_in(root / ".venv")
    return {
        "place": str(root),
        "python": os.path.realpath(python) if python.exists() else "",
        "pyproject": hashlib.sha256((root / "pyproject.toml").read_bytes()).hexdigest(),
        "task": task,
    }


def same_environment(stamp: dict[str, str], now: dict[str, str]) -> bool:
    """Whether the environment stamped is still in its place, on the same Python."""
    return bool(now["python"]) and all(stamp.get(key) == now[key] for key in ("place", "python"))


def is_current(stamp: dict[str, str], now: dict[str, str]) -> bool:
    """Whether nothing needs installing; set-up for testing is enough for building too."""
    return (
        same_environment(stamp, now)
        and stamp.get("pyproject") == now["pyproject"]
        and stamp.get("task") in (now["task"], "test")
    )


def read_stamp(folder: Path) -> dict[str, str]:
    """What was written when ``folder`` was last set up; empty when it never was."""
    try:
        stamp = json.loads((folder / STAMP_NAME).read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return stamp if isinstance(stamp, dict) else {}


def write_stamp(folder: Path, stamp: dict[str, str]) -> None:
    (folder / STAMP_NAME).write_text(json.dumps(stamp, indent=1) + "\n", encoding="utf-8")


def run(root: Path, task: str, rest: list[str]) -> int:
    """Run the build or the tests with the environment's own programs first on the path."""
    programs = python_in(root / ".venv").parent
    environment = {
        **os.environ,
        "VIRTUAL_ENV": str(root / ".venv"),
        "PATH": os.pathsep.join([str(programs), os.environ.get("PATH", os.defpath)]),
    }
    if sys.platform == "darwin":
        known = os.environ.get("DYLD_FALLBACK_LIBRARY_PATH")
        environment["DYLD_FALLBACK_LIBRARY_PATH"] = os.pathsep.join(
            [*([known] if known else []), *library_folders(), "/usr/lib"]
        )
    if task == "test":
        os.chdir(root)
        command = [
            str(python_in(root / ".venv")),
            "-m",
            "pytest",
            "-n",
            "auto",
            "--dist",
            "loadfile",
            "--no-loadscope-reorder",
            *rest,
        ]
    else:
        command = [str(programs / "packetgen"), "build", *rest]
    if os.name == "nt":
        return subprocess.call(command, env=environment)
    os.execve(command[0], command, environment)  # so that Ctrl-C reaches it, and it alone


# --- saying what happened ------------------------------------------------------------------


def say(text: str) -> None:
    print(text.rstrip(), flush=True)


def complain(text: str) -> None:
    print(text.rstrip(), file=sys.stderr, flush=True)


def capture(command: list[str], folder: Path | None = None) -> tuple[int, str]:
    """Run ``command`` with nothing to read; returns its exit code and all it printed."""
    done = subprocess.run(
        command,
        cwd=folder,
        stdin=subprocess.DEVNULL,
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        encoding="utf-8",
        errors="replace",
    )
    return done.returncode, done.stdout


def run_or_stop(environment_folder: Path, command: list[str], folder: Path) -> None:
    """Run a step of the set-up; raise SetupStopped with one plain line when it fails."""
    code, output = capture(command, folder)
    if code == 0:
        return
    hint = ""
    try:
        (environment_folder / LOG_NAME).write_text(output, encoding="utf-8")
        hint = f" (The full account is in .venv/{LOG_NAME}.)"
    except OSError:
        pass  # a full disk has no room for an account of itself
    # Python's own installer does not always say that it ran out of room.
    is_full = shutil.disk_usage(folder).free < 10_000_000
    raise SetupStopped("Set-up stopped. " + (_NO_ROOM if is_full else reason_for(output)) + hint)


_NO_ROOM = "The disk is full: make some room, then give the same command again."
_NOT_ALLOWED = (
    "It is not allowed to write there: copy the project to a folder of your own, "
    "then give the same command in that folder."
)
_REASONS = (
    (
        ("No space left on device", "not enough free space", "don't have enough free space"),
        _NO_ROOM,
    ),
    (("Read-only file system", "Permission denied"), _NOT_ALLOWED),
    (
        ("Could not get lock",),
        "Another program is installing something just now: wait for it, "
        "then give the same command again.",
    ),
    (
        ("CERTIFICATE_VERIFY_FAILED", "certificate verification failed"),
        "The connection is not trusted (its certificate is not known to this computer): "
        "ask whoever looks after the network.",
    ),
    (
        (
            "Temporary failure",
            "Could not resolve",
            "Name or service not known",
            "getaddrinfo",
            "nodename nor servname",
            "Network is unreachable",
            "NewConnectionError",
            "Could not connect",
            "Connection timed out",
            "ConnectTimeout",
            "ReadTimeout",
        ),
        "The internet could not be reached: connect to it, then give the same command again.",
    ),
)


def reason_for(output: str) -> str:
    """One plain line for what an installer printed when it failed."""
    for signs, reason in _REASONS:
        if any(sign in output for sign in signs):
            return reason
    lines = [line.strip() for line in output.splitlines() if line.strip()]
    errors = [line for line in lines if line.startswith(("ERROR:", "E:", "Error:"))]
    return "The installer said: " + (errors or lines or ["nothing"])[-1]


def plain_os_error(error: OSError) -> str:
    """One plain line for what the disk or the system refused."""
    if error.errno == errno.ENOSPC:
        reason = _NO_ROOM
    elif error.errno in (errno.EROFS, errno.EACCES, errno.EPERM):
        reason = _NOT_ALLOWED
    else:
        reason = f"The system said: {error.strerror or error}."
    where = f" at {error.filename}" if error.filename else ""
    return f"Set-up stopped{where}. {reason}"


if __name__ == "__main__":
    sys.exit(main())
