"""Setting packetgen up: what it says, what it installs, and what it leaves alone."""

import ast
import errno
import os
import subprocess
import sys
from importlib.util import find_spec
from pathlib import Path

import pytest

from packetgen import firstrun, systemlibs

ROOT = Path(firstrun.__file__).resolve().parent.parent
posix_only = pytest.mark.skipif(os.name != "posix", reason="uses shell scripts as stand-ins")

WORDS = {
    "debian": """\
Type these two lines in a terminal, or ask whoever looks after this computer to:

    sudo apt-get update
    sudo apt-get install -y --no-install-recommends \
libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0
""",
    "fedora": """\
Type this line in a terminal, or ask whoever looks after this computer to:

    sudo dnf install -y pango harfbuzz
""",
    "macos": """\
Type these two lines in Terminal (the first needs Homebrew, from https://brew.sh):

    brew install pango
    export DYLD_FALLBACK_LIBRARY_PATH="$(brew --prefix)/lib"
""",
    "windows": r"""Type these two lines in the Command Prompt:

    winget install MSYS2.MSYS2
    C:\msys64\usr\bin\bash -lc "pacman -S --noconfirm mingw-w64-ucrt-x86_64-pango"
""",
}


def script(path: Path, body: str) -> Path:
    """A shell script that stands in for a program."""
    path.parent.mkdir(parents=True, exist_ok=True)
    path.write_text("#!/bin/sh\n" + body, encoding="utf-8")
    path.chmod(0o755)
    return path


@pytest.fixture
def project(tmp_path: Path) -> Path:
    """A copy of the project whose environment is a stand-in: its programs tell how they ran."""
    root = tmp_path / "my project"
    root.mkdir()
    (root / "pyproject.toml").write_text("[project]\n", encoding="utf-8")
    tell = 'printf "%s|" "$@" >> "$(dirname "$0")/told"\n'
    script(root / ".venv/bin/python", tell)
    script(root / ".venv/bin/packetgen", 'printf "%s|" "$@"; exit 7\n')
    firstrun.write_stamp(root / ".venv", {**firstrun.state_of(root, ""), "pyproject": ""})
    return root


def told(root: Path) -> str:
    return (root / ".venv/bin/told").read_text(encoding="utf-8")


def run_main(root: Path, *arguments: str) -> subprocess.CompletedProcess:
    """Run the module's main in a Python of its own, on the project in ``root``."""
    code = (
        "import sys, pathlib; from packetgen import firstrun; "
        "firstrun.ROOT = pathlib.Path(sys.argv[1]); sys.exit(firstrun.main(sys.argv[2:]))"
    )
    return subprocess.run(
        [sys.executable, "-c", code, str(root), *arguments],
        cwd=ROOT,
        capture_output=True,
        text=True,
        timeout=60,
    )


# --- the words -----------------------------------------------------------------------------


@pytest.mark.parametrize("system", WORDS)
def test_each_system_is_told_exactly_what_to_type(system):
    """An author reads the one command of her own system, ready to copy."""
    assert systemlibs.what_to_type(system) == WORDS[system]


def test_further_packages_go_into_the_same_command():
    """What else is lacking is installed in the same breath."""
    assert "recommends python3.11-venv libpango-1.0-0 " in systemlibs.what_to_type(
        "debian", ["python3.11-venv"]
    )


def test_a_system_nobody_foresaw_is_told_what_to_look_for():
    """Where no command is known, the three libraries are named instead."""
    words = systemlibs.what_to_type("other")
    assert all(name in words for name in ("Pango", "HarfBuzz", "Fontconfig"))
    assert "sudo" not in words


# The fields and their quoting follow os-release(5), freedesktop.org.
@pytest.mark.parametrize(
    ("os_release", "system"),
    [
        ("NAME=x\nID=debian\n", "debian"),
        ("ID=ubuntu\nID_LIKE=debian\n", "debian"),
        ('ID=linuxmint\nID_LIKE="ubuntu debian"\n', "debian"),
        ("# a remark\nID=fedora\n", "fedora"),
        ('ID="rocky"\nID_LIKE="rhel centos fedora"\n', "fedora"),
        ("ID=alpine\n", "other"),
        ("", "other"),
    ],
)
def test_linux_families_are_told_apart(os_release, system):
    """A system derived from Debian or Fedora is treated as its parent."""
    assert systemlibs.this_system(os_release, "linux") == system


def test_mac_and_windows_are_known_by_the_platform():
    """A Mac and a Windows computer need no file to be recognised."""
    assert systemlibs.this_system("", "darwin") == "macos"
    assert systemlibs.this_system("", "win32") == "windows"


# --- the libraries -------------------------------------------------------------------------


def test_the_libraries_asked_for_are_those_the_pdf_writer_loads():
    """Every file name looked for is one that WeasyPrint itself names (weasyprint.text.ffi)."""
    folder = Path(next(iter(find_spec("weasyprint").submodule_search_locations)))
    names_loaded = {
        node.value
        for node in ast.walk(ast.parse((folder / "text/ffi.py").read_text("utf-8")))
        if isinstance(node, ast.Constant) and isinstance(node.value, str)
    }
    names_asked = {name for names in systemlibs._FILE_NAMES.values() for name in names}
    assert names_asked <= names_loaded


def test_nothing_is_missing_where_the_pdf_writer_loads():
    """Where WeasyPrint can be imported, no library is reported missing."""
    subprocess.run([sys.executable, "-c", "import weasyprint"], check=True)
    assert systemlibs.missing_libraries() == ()


def test_a_library_that_is_not_there_is_named(monkeypatch):
    """A library that cannot be loaded is reported by its short name, the others are not."""
    monkeypatch.setitem(systemlibs._FILE_NAMES, "nowhere-1.0", ("libnowhere-1.0.so.0",) * 3)
    assert systemlibs.missing_libraries() == ("nowhere-1.0",)


# --- installing, or saying how -------------------------------------------------------------


@pytest.fixture
def lacking(monkeypatch):
    """A Debian without venv and Pango, as far as set-up can tell."""
    monkeypatch.setattr(firstrun, "missing_parts", lambda: ["venv", "pango-1.0"])
    monkeypatch.setattr(systemlibs, "this_system", lambda: "debian")


def test_who_may_not_install_reads_what_to_type(lacking, monkeypatch, capsys):
    """Without the right to install, the exact command is shown and the exit code is 2."""
    monkeypatch.setattr(firstrun, "permission_to_install", lambda system: None)
    assert firstrun.main(["build"]) == 2
    shown = capsys.readouterr()
    venv = f"python3.{sys.version_info[1]}-venv"
    assert shown.out == ""
    assert shown.err == (
        "packetgen needs parts of the system that are not there yet: venv, pango-1.0.\n"
        + systemlibs.what_to_type("debian", [venv])
        + "\nThen give the same command again.\n"
    )


def test_who_may_install_is_told_what_is_being_installed(lacking, monkeypatch, capsys):
    """With the right to install, one plain line names the packages, and set-up goes on."""
    asked = []

    def install(system, prefix, packages):
        asked.append((system, prefix, packages))
        monkeypatch.setattr(firstrun, "missing_parts", lambda: [])
        return ""

    monkeypatch.setattr(firstrun, "permission_to_install", lambda system: [])
    monkeypatch.setattr(firstrun, "install_packages", install)
    firstrun.ensure_system_parts()
    packages = [f"python3.{sys.version_info[1]}-venv", *systemlibs.PACKAGES["debian"]]
    assert asked == [("debian", [], packages)]
    assert capsys.readouterr().out == (f"Installing for the whole computer: {' '.join(packages)}\n")


@posix_only
def test_the_package_list_is_fetched_only_when_needed(tmp_path, monkeypatch):
    """apt-get installs straight away; it fetches its list only after that has failed."""
    script(
        tmp_path / "apt-get",
        f"""
        shift 2
        echo "$1 $DEBIAN_FRONTEND" >> {tmp_path}/calls
        test "$1" = update && touch {tmp_path}/list
        test -e {tmp_path}/list
    """,
    )
    monkeypatch.setenv("PATH", str(tmp_path), prepend=os.pathsep)
    firstrun.install_packages("debian", [], ["some-package"])
    firstrun.install_packages("debian", [], ["some-package"])
    assert (tmp_path / "calls").read_text().split("\n") == [
        "install noninteractive",
        "update noninteractive",
        "install noninteractive",
        "install noninteractive",
        "",
    ]


@posix_only
@pytest.mark.parametrize(("sudo", "prefix"), [("exit 0", ["sudo", "-n"]), ("exit 1", None)])
def test_sudo_is_used_only_where_it_asks_no_password(tmp_path, monkeypatch, sudo, prefix):
    """An ordinary user installs through sudo if that works without a question, else not."""
    script(tmp_path / "apt-get", "exit 0\n")
    script(tmp_path / "sudo", f'test "$1" = -n || exit 9\n{sudo}\n')
    monkeypatch.setenv("PATH", str(tmp_path), prepend=os.pathsep)
    monkeypatch.setattr(os, "geteuid", lambda: 1000)
    assert firstrun.permission_to_install("debian") == prefix


# --- an old Python -------------------------------------------------------------------------


@pytest.mark.parametrize("name", ["__init__.py", "firstrun.py", "systemlibs.py"])
def test_an_older_python_can_read_the_first_modules(name):
    """What runs before the version is checked holds nothing newer than Python 3.9's grammar."""
    ast.parse((ROOT / "packetgen" / name).read_text("utf-8"), feature_version=(3, 9))


@pytest.mark.parametrize("version", [(3, 9, 2), (3, 10, 13)])
def test_an_older_python_is_refused_kindly(version, monkeypatch, capsys):
    """Before anything is touched, an old Python is named and a newer one asked for."""
    monkeypatch.setattr(sys, "version_info", version)
    monkeypatch.setattr(firstrun, "ensure_system_parts", lambda: pytest.fail("went on"))
    assert firstrun.main(["build"]) == 2
    assert capsys.readouterr().err.startswith(
        f"packetgen needs Python 3.11 or newer, and this is Python 3.{version[1]}."
    )


def test_python_3_11_is_new_enough():
    """The oldest Python promised is accepted."""
    firstrun.refuse_old_python((3, 11, 0))


# --- the environment -----------------------------------------------------------------------


@posix_only
def test_what_is_in_place_is_left_alone(project, capsys):
    """A second set-up of an unchanged project installs nothing and says nothing."""
    firstrun.ensure_environment(project, "build")
    first = told(project)
    capsys.readouterr()
    firstrun.ensure_environment(project, "build")
    assert told(project) == first == "-m|pip|install|--quiet|--editable|.|"
    assert capsys.readouterr().out == ""


@posix_only
def test_set_up_for_testing_serves_for_building_but_not_the_other_way(project):
    """Testing needs more installed than building does."""
    for task in ("build", "test", "build", "test"):
        firstrun.ensure_environment(project, task)
    assert told(project).count("install") == 2
    assert told(project).endswith("--editable|.[test]|")


@posix_only
def test_a_changed_pyproject_is_installed_again(project):
    """When what the project is built on changes, the same command brings it up to date."""
    firstrun.ensure_environment(project, "build")
    (project / "pyproject.toml").write_text("[project]\nname = 'x'\n", encoding="utf-8")
    firstrun.ensure_environment(project, "build")
    assert told(project).count("install") == 2


@posix_only
@pytest.mark.parametrize("change", [{"place": "/elsewhere"}, {"python": "/gone/python3"}])
def test_an_environment_that_no_longer_fits_is_made_anew(project, change, monkeypatch):
    """A moved folder or another Python means a new environment, on the Python now running."""
    firstrun.ensure_environment(project, "build")
    folder = project / ".venv"
    firstrun.write_stamp(folder, {**firstrun.read_stamp(folder), **change})
    commands = []
    monkeypatch.setattr(firstrun, "run_or_stop", lambda _, command, __: commands.append(command))
    firstrun.ensure_environment(project, "build")
    assert not (folder / "bin").exists()
    assert [command[2] for command in commands] == ["venv", "pip"]


@posix_only
def test_somebody_elses_environment_is_not_touched(project):
    """A .venv without this set-up's mark is left as it is, and the author is asked to move it."""
    (project / ".venv" / firstrun.STAMP_NAME).unlink()
    before = sorted((project / ".venv").rglob("*"))
    with pytest.raises(firstrun.SetupStopped, match="not one that this set-up made"):
        firstrun.ensure_environment(project, "build")
    assert sorted((project / ".venv").rglob("*")) == before


@posix_only
def test_a_failed_install_is_told_in_one_line_and_tried_again(project):
    """When pip fails, one line says why, a file keeps the rest, and nothing counts as done."""
    script(project / ".venv/bin/python", "echo 'ERROR: No matching thing found'; exit 1\n")
    done = run_main(project, "build")
    assert done.returncode == 2
    assert done.stderr == (
        "Set-up stopped. The installer said: ERROR: No matching thing found "
        "(The full account is in .venv/packetgen-firstrun.log.)\n"
    )
    assert "No matching" in (project / ".venv" / firstrun.LOG_NAME).read_text("utf-8")
    now = firstrun.state_of(project, "build")
    assert not firstrun.is_current(firstrun.read_stamp(project / ".venv"), now)


@posix_only
def test_pips_own_settings_are_kept(project, monkeypatch):
    """What the computer's owner has set for pip reaches pip."""
    script(project / ".venv/bin/python", 'echo "$PIP_INDEX_URL" > "$(dirname "$0")/told"\n')
    monkeypatch.setenv("PIP_INDEX_URL", "https://packages.example/simple")
    firstrun.ensure_environment(project, "build")
    assert told(project) == "https://packages.example/simple\n"


# --- handing on ----------------------------------------------------------------------------


@posix_only
def test_further_words_and_the_exit_code_are_handed_on(project):
    """What follows `build` reaches the build word for word, and its exit code comes back."""
    firstrun.ensure_environment(project, "build")
    done = run_main(project, "build", "--only", "a pack with spaces", "$HOME", "")
    assert (done.returncode, done.stdout) == (7, "build|--only|a pack with spaces|$HOME||")


@posix_only
def test_words_after_test_reach_pytest(project):
    """What follows `test` reaches pytest, run by the environment's own Python."""
    firstrun.ensure_environment(project, "test")
    (project / ".venv/bin/told").unlink()
    assert run_main(project, "test", "-k", "thread").returncode == 0
    assert told(project) == "-m|pytest|-n|auto|--dist|loadfile|--no-loadscope-reorder|-k|thread|"


@pytest.mark.parametrize("arguments", [[], ["bild"], ["--verbose"]])
def test_any_other_word_is_answered_with_the_two_commands(arguments, capsys):
    """A mistyped task shows the two commands there are, and exits with 2."""
    assert firstrun.main(arguments) == 2
    assert capsys.readouterr().err == firstrun.USAGE


# --- plain lines ---------------------------------------------------------------------------


# Shortened from what pip, apt-get and venv print in these cases, host names replaced.
@pytest.mark.parametrize(
    ("output", "words"),
    [
        (
            "WARNING: Retrying (Retry(total=4)) after connection broken by 'NewConnectionError(...)'\n"
            "ERROR: Could not find a version that satisfies the requirement hatchling",
            "The internet could not be reached",
        ),
        (
            "E: Failed to fetch http://mirror.example/x.deb  Temporary failure resolving "
            "'mirror.example'",
            "The internet could not be reached",
        ),
        ("OSError: [Errno 28] No space left on device", "The disk is full"),
        ("E: Could not get lock /var/lib/dpkg/lock-frontend.", "Another program is installing"),
        ("ssl.SSLCertVerificationError: [SSL: CERTIFICATE_VERIFY_FAILED]", "not trusted"),
        ("PermissionError: [Errno 13] Permission denied: 'x'", "not allowed to write there"),
        (
            "some lines\nE: Unable to locate package x\n\n",
            "The installer said: E: Unable to locate package x",
        ),
        ("", "The installer said: nothing"),
    ],
)
def test_an_installers_trouble_becomes_one_plain_line(output, words):
    """Whatever an installer prints, the author reads one line that says what to do."""
    reason = firstrun.reason_for(output)
    assert words in reason
    assert "\n" not in reason


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (errno.ENOSPC, "The disk is full"),
        (errno.EROFS, "copy the project to a folder of your own"),
        (errno.EACCES, "copy the project to a folder of your own"),
        (errno.EIO, "The system said: "),
    ],
)
def test_trouble_with_the_disk_ends_without_a_traceback(number, words, monkeypatch, capsys):
    """A full disk or a folder that cannot be written to gives one line and the exit code 2."""

    def fail():
        raise OSError(number, os.strerror(number), "/some/.venv")

    monkeypatch.setattr(firstrun, "ensure_system_parts", fail)
    assert firstrun.main(["build"]) == 2
    shown = capsys.readouterr().err
    assert shown.startswith("Set-up stopped at /some/.venv. ") and words in shown
    assert shown.count("\n") == 1
