"""Whatever stands in a content folder, the author reads where it is wrong, or gets an output that harms nobody."""

import io
import re
import time
from collections import Counter
from functools import cache
from pathlib import Path

import pytest
from PIL import Image, ImageFile

from packetgen.digest import afresh
from packetgen.pipeline import Proof, proof, public_files
from packetgen.render.packet import packet
from packetgen.render.pictures import cover_jpeg
from packetgen.render.templates import environment
from tests.content_builder import build
from tests.hostile.case import Case
from tests.hostile.corpus import CASES
from tests.hostile.limits import CPU_S, Breach, guarded, limited
from tests.hostile.safety import harm_in
from tests.wrong_input_case import as_usual

HEAVY = tuple(case for case in CASES if case.heavy)
LONGEST = 320  # characters of a message: a title alone may have a hundred


@pytest.fixture
def folders(tmp_path) -> tuple[Path, Path, Path]:
    """Content, output, and a folder beside them with a secret that nobody may read."""
    content, out, secret = (tmp_path / name for name in ("content", "out", "secret"))
    for folder in (content, out, secret):
        folder.mkdir()
    (secret / "plan.txt").write_text("secret plan")
    return content, out, secret


@pytest.fixture(scope="session", autouse=True)
def loaded_once(tmp_path_factory) -> dict[str, str]:
    """The pages of the tiny folder as it is; besides, everything that loads late has been loaded."""
    return pages(proof(build(tmp_path_factory.mktemp("usual"))))


def test_the_corpus_is_large_and_each_case_is_named_once():
    assert len(CASES) >= 150
    assert [slip for slip, times in Counter(c.slip for c in CASES).items() if times > 1] == []


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.slip)
def test_a_hostile_folder_is_told_of_or_comes_to_a_safe_output(
    case, folders, loaded_once, monkeypatch
):
    """Exactly the faults that the case names, in fair time; where there are none the pages do no harm."""
    # As it is in a process that has loaded the PDF engine.
    monkeypatch.setattr(ImageFile, "LOAD_TRUNCATED_IMAGES", True)
    content, *_ = written(case, folders)
    begun = time.process_time()
    with guarded(*folders):
        checked = proof(content)
        made = pages(checked) if not case.says else {}
    assert time.process_time() - begun < CPU_S
    errors = {f"{one.code} {one.place.path}" for one in checked.problems.errors}
    assert errors == set(case.says)
    for problem in checked.problems:
        assert str(problem).isprintable()
        assert len(as_usual(f"{problem.wrong}; {problem.right}", content)) <= LONGEST
        assert "secret plan" not in str(problem)
    if not case.says:
        assert made
        assert harm_in(made, loaded_once) == []
        assert not any("secret plan" in page for page in made.values())


@pytest.mark.parametrize("case", HEAVY, ids=lambda case: case.slip)
def test_a_heavy_folder_stays_within_its_room_and_time(case, folders):
    """The command line itself, with 10 s and 500 MB and no more: exit 1 and located lines, or exit 0."""
    content, *_ = written(case, folders)
    done = limited("proof", "--content", content)
    assert "Traceback" not in done.stderr
    assert done.returncode == (1 if case.says else 0), done.stderr[-2000:]
    told = [line for line in done.stdout.splitlines() if line.startswith(content.as_posix())]
    assert told or not case.says
    for line in told:
        assert re.match(r"[^\0]+:\d+:\d+: \S", line), line


def test_a_breach_is_seen(folders):
    """The guard of these tests itself: each thing that may not happen is caught, even where it is swallowed."""
    content, out, secret = folders
    for act in (
        lambda: (secret / "plan.txt").read_text(),
        lambda: Path("/etc/passwd").read_text(),
        lambda: (content / "a").write_text("a"),
        lambda: (out.parent / "b").mkdir(),
        lambda: __import__("socket").socket(),
        lambda: __import__("subprocess").Popen(["true"]),
    ):
        with pytest.raises(Breach), guarded(content, out, secret):
            try:
                act()
            except BaseException:  # as careless code would
                pass
    with guarded(content, out, secret):
        (out / "a").write_text("a")


def test_harm_is_seen():
    """The look at pages itself: what does harm is found, and what an author may do is not."""
    for harm in (
        "<img src=//x.test/a.png>",
        "<img src='http://x.test/a.png'>",
        "<p onclick=a()>a",
        "<a href='java\nscript:a()'>a</a>",
        "<a href=' javascript:a()'>a</a>",
        "<a href='file:///etc/passwd'>a</a>",
        "<style>@import url(http://x.test)</style>",
        "<p style='background:url(//x.test)'>a",
        "<link rel=stylesheet href=https://x.test/a.css>",
        "<iframe></iframe>",
        "<svg><use xlink:href='http://x.test/a#b'/></svg>",
    ):
        assert harm_in({"page": harm}, {}) != [], harm
    for fine in ("<a href='https://example.org'>a</a>", "<img src='a.png'>", "&lt;script&gt;"):
        assert harm_in({"page": fine}, {"page": "<img>"}) == [], fine
    assert harm_in({"page": "<script>a()</script>"}, {"page": ""}) == ["page: 1 more <script>"]


def written(case: Case, folders: tuple[Path, Path, Path]) -> tuple[Path, Path, Path]:
    """The case on disk."""
    build(folders[0], case.changes)
    if case.prepare:
        case.prepare(folders[0])
    return folders


def pages(checked: Proof) -> dict[str, str]:
    """Everything that is markup in what would be built, by file; pictures are not drawn, but a photo is read."""
    files = public_files(checked, _templates(), keep=lambda name, make: _small_picture())
    made = {
        path: data.decode()
        for path, data in files.items()
        if path.endswith((".html", ".svg", ".atom", ".xml", ".css"))
    }
    for each in checked.reckoned:
        for figure in each.figures:
            cover = cover_jpeg(figure, afresh) if figure.pattern.photo else b""
            source = packet(each.series, figure, cover, _templates())
            made[f"{figure.pattern.id} packet"] = source.html
    return made


@cache
def _templates() -> object:
    return environment()


@cache
def _small_picture() -> bytes:
    data = io.BytesIO()
    Image.new("RGB", (4, 4)).save(data, "JPEG")
    return data.getvalue()
