"""How commands end: the exit code, and a plain line in place of a traceback.

0 all is well, 1 the content or a template is wrong, 2 usage or the machine, 130 stopped.
"""

import os
import re
import signal
import subprocess
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from time import sleep

import pytest

from tests.content_builder import CHART, FERN, build
from tests.running import OUT, PACKETGEN, begin, environment, is_whole, meddling, run
from tests.test_builds import IVY, TWO

UNFORESEEN = """
import packetgen.pipeline.proofs as proofs
def load_content(*_):
    raise KeyError("nobody foresaw this")
proofs.load_content = load_content
"""
NO_PANGO = """
from packetgen import systemlibs
systemlibs._FILE_NAMES["pango-1.0"] = ("libnowhere.so",) * 3
"""
# A worker is a process that another one began.
WORKERS_DIE = """
import multiprocessing, os, signal
from packetgen.pipeline import jobs
real = jobs.packet_files
def packet_files(*facts):
    if multiprocessing.parent_process() is not None:
        os.kill(os.getpid(), signal.SIGKILL)
    return real(*facts)
jobs.packet_files = packet_files
"""
IN_A_JOB = """
from packetgen.pipeline import jobs
def packet_files(*facts):
    raise ValueError("nobody foresaw this")
jobs.packet_files = packet_files
"""
STOPPED_IN_A_TEXT = """
import packetgen.pipeline.proofs as proofs
def load_content(*_):
    exec("raise KeyboardInterrupt")
proofs.load_content = load_content
"""
NO_MEMORY = UNFORESEEN.replace('KeyError("nobody foresaw this")', "MemoryError")


@pytest.fixture
def desk(tmp_path) -> Path:
    build(tmp_path / "content")
    return tmp_path


@pytest.fixture
def near_the_root() -> Iterator[Path]:
    """A folder with a short path: a socket that processes speak through has 108 letters at most (unix(7))."""
    with TemporaryDirectory() as folder:
        yield Path(folder)


def edit(desk: Path, text: str) -> None:
    for folder in (FERN, IVY):
        (desk / "content" / folder / "story.md").write_text(text)


# --- 1: something to mend -------------------------------------------------------------------------


@pytest.mark.parametrize("command", ["proof", "build", "kit", "settle"])
def test_wrong_content_is_1(desk, command):
    (desk / "content" / CHART).write_text("rrbb\nr?..\n")
    said = run(command, folder=desk, code=1)
    where, other = (said.stdout, said.stderr) if command == "proof" else (said.stderr, said.stdout)
    assert f"content/{CHART}:2:2: " in where and "1 thing to mend" in where
    assert "content/" not in other
    assert not (desk / "build").exists()


@pytest.mark.slow
@pytest.mark.parametrize("name", ["packet/notes.html", "site/404.html"])
def test_a_fault_in_a_template_is_1(desk, name):
    own = desk / "templates" / name
    own.parent.mkdir(parents=True)
    own.write_text("\n{% if %}")
    said = run("build", *OUT, folder=desk, code=1)
    assert f"templates/{name}:2:1: " in said.stderr
    assert not (desk / "build").exists()


# --- 2: wrong usage, or the machine ---------------------------------------------------------------


@pytest.mark.parametrize(
    "words",
    [
        ("bild",),
        ("build", "--colour"),
        ("build", "--as-of", "soon"),
        ("build", "--log", "content"),
        ("build", "--into", "content"),
        ("build", "--into", "content/series"),
        ("kit", "frn"),
        ("proof", "--against", "content"),
    ],
)
def test_wrong_usage_is_2(desk, words):
    said = run(*words, folder=desk, code=2)
    assert "Error: " in said.stderr and not (desk / "build").exists()


@pytest.mark.parametrize("log", ["nowhere/log.txt", "/dev/full"])
@pytest.mark.parametrize("before", [True, False])
def test_a_log_that_cannot_be_written_is_2(desk, log, before):
    words = ("--log", log, "proof") if before else ("proof", "--log", log)
    said = run(*words, folder=desk, code=2)
    assert said.stderr.startswith(f"packetgen: cannot write the log {log}: ")
    assert said.stdout == ""


def test_a_log_that_finds_no_room_later_does_not_end_the_work(desk):
    code = "import resource\nresource.setrlimit(resource.RLIMIT_FSIZE, (400, 400))\n"
    said = run("proof", "--log", "log.txt", folder=desk, **meddling(desk / "x", code))
    assert said.stderr.count("log.txt: the log ends here: File too large") == 1
    assert "No fault" in said.stdout


@pytest.mark.slow
def test_a_folder_that_cannot_be_written_is_2(desk):
    (desk / "taken").write_text("a file")
    said = run("build", "--into", "taken/build", *OUT, folder=desk, code=2)
    assert said.stderr.startswith("packetgen: cannot write the build: ")
    assert (desk / "taken").read_text() == "a file"


def test_a_library_of_the_pdf_engine_that_is_missing_is_2(desk):
    said = run("build", folder=desk, code=2, **meddling(desk / "x", NO_PANGO))
    assert "packetgen: the PDF engine needs pango-1.0." in said.stderr
    assert re.search("[Ii]nstall", said.stderr.partition("pango-1.0.")[2])


@pytest.mark.parametrize("words", [("--help",), ("proof",), ("kit", "--format", "csv")])
def test_a_reader_that_has_gone_is_2_and_nothing_is_said(desk, words):
    ear, mouth = os.pipe()
    os.close(ear)
    done = subprocess.run(
        [*PACKETGEN, *words],
        cwd=desk,
        env=environment(),
        stdout=mouth,
        stderr=subprocess.PIPE,
        text=True,
    )
    os.close(mouth)
    assert not re.search("Traceback|Error|Broken pipe", done.stderr)
    assert done.returncode == 2


def test_a_screen_that_takes_no_words_is_2(desk):
    with open("/dev/full", "w") as full:
        done = subprocess.run(
            [*PACKETGEN, "proof"],
            cwd=desk,
            env=environment(),
            stdout=full,
            stderr=subprocess.PIPE,
            text=True,
        )
    assert done.returncode == 2
    assert done.stderr.splitlines()[-1] == "packetgen: No space left on device"


@pytest.mark.parametrize("command", ["proof", "build", "kit", "settle"])
def test_what_nobody_foresaw_is_2_and_written_down(desk, command, near_the_root):
    facts = meddling(desk / "x", UNFORESEEN) | {"TMPDIR": str(near_the_root)}
    said = run(command, folder=desk, code=2, **facts).stderr.splitlines()
    assert said[-2:-1] == ["This is a fault in packetgen, not in your files."], said
    path = said[-1].removeprefix("What happened is written down in ").removesuffix(".")
    assert Path(path).parent == near_the_root
    assert "Traceback" in (text := Path(path).read_text()) and "nobody foresaw this" in text


def test_with_a_log_it_is_written_down_there(desk):
    facts = meddling(desk / "x", UNFORESEEN) | {"TMPDIR": str(desk / "nowhere")}
    said = run("proof", "--log", "log.txt", folder=desk, code=2, **facts)
    assert said.stderr.endswith("What happened is written down in log.txt.\n")
    assert "nobody foresaw this" in (desk / "log.txt").read_text()


@pytest.mark.slow
@pytest.mark.parametrize("workers", [1, 2])
def test_of_what_nobody_foresaw_of_a_pattern_its_name_is_said(last_good, near_the_root, workers):
    edit(last_good, "Another one.\n")
    facts = meddling(last_good / "x", IN_A_JOB) | {"TMPDIR": str(near_the_root)}
    words = ("build", "--workers", workers, *OUT)
    said = run(*words, folder=last_good, code=2, **facts).stderr.splitlines()
    assert said[-3] == "This is a fault in packetgen, not in your files."
    assert said[-2] in ("It came with garden-year/fern.", "It came with garden-year/ivy.")


def test_too_little_memory_is_no_fault_of_the_program(desk):
    said = run("proof", folder=desk, code=2, **meddling(desk / "x", NO_MEMORY))
    assert said.stderr == "packetgen: this machine has not enough memory for that.\n"


@pytest.mark.slow
def test_a_worker_that_is_killed_is_2_and_the_last_build_stays(last_good):
    edit(last_good, "Another one.\n")
    before = (last_good / "build" / "manifest.json").read_bytes()
    facts = meddling(last_good / "x", WORKERS_DIE)
    said = run("build", "--workers", 2, *OUT, folder=last_good, code=2, **facts)
    assert "ended from outside" in said.stderr and "holds the last good build" in said.stderr
    assert is_whole(last_good / "build") and not (last_good / ".build-next").exists()
    assert (last_good / "build" / "manifest.json").read_bytes() == before


# --- 130: stopped ---------------------------------------------------------------------------------


@pytest.mark.slow
@pytest.mark.parametrize("workers", [1, 2])
def test_ctrl_c_is_130_and_the_last_build_stays(last_good, workers):
    """The terminal sends it to every process of the command."""
    edit(last_good, "Another one.\n")
    before = (last_good / "build" / "manifest.json").read_bytes()
    process = begin("build", "--workers", workers, *OUT, folder=last_good)
    assert "pages" in process.stdout.readline()  # the packets are still at work
    os.killpg(process.pid, signal.SIGINT)
    _, err = process.communicate(timeout=60)
    assert process.returncode == 130
    assert err.strip() == "Stopped; build holds the last good build."
    assert (last_good / "build" / "manifest.json").read_bytes() == before
    assert is_whole(last_good / "build") and not (last_good / ".build-next").exists()


def test_ctrl_c_while_python_evaluates_a_text_is_130_too(desk):
    """As it does for every dataclass that is loaded; the interpreter would end by the signal then."""
    said = run("proof", folder=desk, code=130, **meddling(desk / "x", STOPPED_IN_A_TEXT))
    assert said.stderr.split() == ["Stopped."]


@pytest.mark.slow
def test_ctrl_c_of_a_first_build_leaves_nothing(tmp_path):
    build(tmp_path / "content", TWO)
    process = begin("build", "--workers", 2, *OUT, folder=tmp_path)
    while not (tmp_path / ".build-next").exists():
        sleep(0.01)
    os.killpg(process.pid, signal.SIGINT)
    _, err = process.communicate(timeout=60)
    assert process.returncode == 130
    assert err.strip() == "Stopped; nothing was written."
    assert {path.name for path in tmp_path.iterdir()} == {"content"}


# --- what is told beside --------------------------------------------------------------------------


@pytest.mark.slow
def test_each_stage_is_explained_when_asked_before_or_after_the_command(last_good):
    again = run("build", "--verbose", *OUT, folder=last_good)
    assert "0 new or changed, 1 of 1 series at rest" in again.stderr
    assert "at rest" not in again.stdout
    edit(last_good, "Another one.\n")
    said = run("-v", "build", "--workers", 2, *OUT, folder=last_good).stderr
    told = [line for line in said.splitlines() if re.fullmatch(r"  .* \(\d+\.\d\d s\)", line)]
    assert [re.match("  ([a-z ]+[a-z])", line)[1] for line in told] == [
        *("looked at", "read", "reckoned", "checked", "to be made", "pages of", "drawn and set"),
        "put in place",
    ]
    assert "to be made: 2 packets, pictures of 0 patterns" in said
    assert "drawn and set: 2 packets, pictures of 0 patterns, 2 side by side" in said
    assert "reckoned (" in run("proof", "-v", folder=last_good).stderr
    assert "reckoned (" not in run("proof", folder=last_good).stderr


@pytest.mark.slow
@pytest.mark.parametrize("workers", [1, 2])
def test_the_log_has_everything(last_good, workers):
    edit(last_good, "Another one.\n")
    said = run("--log", "log.txt", "build", "--workers", workers, *OUT, folder=last_good)
    first, *lines = (last_good / "log.txt").read_text("utf-8").splitlines()
    assert first.endswith(f": --log log.txt build --workers {workers} {' '.join(OUT)}")
    stamp = r"\d{4}-\d\d-\d\d \d\d:\d\d:\d\d\.\d{3} [A-Z]+ [a-z.]+\[\d+\]: "
    assert all(re.match(stamp, line) for line in lines)
    text = "\n".join(line.partition("]: ")[2] for line in lines)
    for line in [*said.stdout.splitlines(), *said.stderr.splitlines()]:  # every problem too
        assert line in text
    for name in ("fern", "ivy"):
        because = f"made anew: series/garden-year/{name}/story.md"
        assert f"packets/garden-year/{name}-a4.pdf: {because}\n" in text
        assert re.search(rf"^{name}: packet set \(\d+\.\d\d s\)$", text, re.MULTILINE)
    assert text.count("Creating layout - Page 1\n") == 2  # in the words of the engine
    assert text.count("reckoned") == 1


def test_a_log_takes_the_place_of_the_one_before(desk):
    run("proof", "--log", "log.txt", folder=desk)
    once = (desk / "log.txt").read_text().count("No fault")
    run("proof", "--log", "log.txt", folder=desk)
    assert (desk / "log.txt").read_text().count("No fault") == once == 1


def test_an_option_with_one_hyphen_is_known(desk):
    said = run("proof", "-strict", folder=desk, code=2).stderr
    assert said.endswith("Error: --strict has two hyphens\n")
