"""What the README and the guide tell an author to do, done: each page in a fresh folder of its own."""

import random
import re
import shutil
from collections.abc import Callable, Iterator
from contextlib import chdir
from pathlib import Path

import pytest
from PIL import Image, ImageDraw

from packetgen import firstrun
from packetgen.firstrun import python_in
from packetgen.load import load_content
from packetgen.program import guide_sources
from tests import guide_pictures
from tests.content_builder import CHART, PATTERN, build
from tests.guide_reader import Reader, as_shown, blocks_of, with_fields

ROOT = Path(__file__).parent.parent
SOURCES = guide_sources()
PAGES = sorted(path for path in SOURCES if path.startswith("how-to-"))


def a_photograph(file: Path) -> None:
    """Something that was not drawn by the stitch: soft shapes, and grain."""
    image = Image.linear_gradient("L").resize((240, 180)).convert("RGB")
    pen = ImageDraw.Draw(image)
    pen.ellipse((40, 50, 180, 150), fill="#5b8c3e")
    pen.ellipse((90, 30, 150, 90), fill="#b8323c")
    grain = random.Random(7)
    for at in ((x, y) for x in range(240) for y in range(180)):
        image.putpixel(at, tuple(part + grain.randint(0, 30) for part in image.getpixel(at)))
    image.save(file, quality=85)


@pytest.fixture
def desk(tmp_path, monkeypatch) -> Path:
    """An empty folder in which the reader sits; a photograph of hers lies there already."""
    a_photograph(tmp_path / "barrow.jpg")
    monkeypatch.chdir(tmp_path)
    return tmp_path


@pytest.mark.parametrize("page", PAGES)
def test_what_a_page_tells_to_do_can_be_done(page, desk):
    """Every command ends as the page shows it, and what the page says of it comes true."""
    reader = guide_pictures.follow(page, desk)
    assert reader.done[0].startswith("packetgen begin ")
    COMES_TRUE[page](desk)


def _kit_names(*names: str, asked: str = "") -> Callable[[Path], None]:
    def comes_true(desk: Path) -> None:
        said = Reader(desk, "kit").follow(f"```sh\npacketgen kit {asked}\n```\n").said
        assert [name for name in names if name not in said] == []

    return comes_true


def _look(desk: Path) -> None:
    """The colours of the page before the last one, which is refused on purpose."""
    faint = desk / "content/series/along-the-garden-path/series.yaml"
    faint.write_text(faint.read_text("utf-8").replace("#b9c9a8", "#5b1a3c"), "utf-8")
    Reader(desk, "look").follow("```sh\npacketgen build\n```\n")
    assert "#5b1a3c" in (desk / "build/site/site.css").read_text("utf-8")


def _rebuild(desk: Path) -> None:
    assert "climb faster than" in (desk / f"build/site/{BEANS}/index.html").read_text("utf-8")


def _chart(desk: Path) -> None:
    patterns = desk / "content/series/along-the-garden-path"
    there, mirrored = (patterns / name / "chart.txt" for name in (BEANS, "beans-mirrored"))
    rows, other = (
        [row for row in file.read_text().splitlines() if not row.startswith("#")]
        for file in (there, mirrored)
    )
    assert other == [row[::-1] for row in rows]


def _bring(desk: Path) -> None:
    kept = desk / f"content/series/along-the-garden-path/{BEANS}"
    assert (kept / "_before-chart.txt").is_file()
    assert (desk / "barrow/chart.txt").is_file() and (desk / "look.png").is_file()


def _teaser(desk: Path) -> None:
    page = (desk / f"build/site/{BEANS}/index.html").read_text()
    assert "1 June 2027" in page and "my-stranded-cotton" not in page
    assert (desk / f"build/packets/along-the-garden-path/{BEANS}.zip").is_file()
    assert "Onions on a String" in (desk / "build/site/index.html").read_text()


def _free(desk: Path) -> None:
    names = {path.name for path in (desk / "build/site").rglob("*") if path.is_file()}
    assert {f"{BEANS}-a4.pdf", f"{BEANS}-letter.pdf"} <= names
    assert "<svg" in (desk / f"build/site/{BEANS}/index.html").read_text()


def _correction(desk: Path) -> None:
    told = (desk / "build/site/corrections.html").read_text()
    assert "03 foxglove" in told and "03 foxglove" in (desk / "build/site/feed.atom").read_text()


BEANS = "beans-on-a-string"
COMES_TRUE = {
    "how-to-bring.md": _bring,
    "how-to-chart.md": _chart,
    "how-to-conversion.md": _kit_names("330 old string", "310 bean red", asked="--threads spool"),
    "how-to-correction.md": _correction,
    "how-to-free.md": _free,
    "how-to-look.md": _look,
    "how-to-piece.md": _kit_names("fence green", "chalk", asked="--finishing"),
    "how-to-rebuild.md": _rebuild,
    "how-to-teaser.md": _teaser,
    "how-to-threads.md": _kit_names("Shed Cotton", "Glint Braid", "12 runner bean"),
}


@pytest.fixture(scope="module")
def walked(tmp_path_factory) -> Path:
    """Where the tutorial has been followed from an empty folder to the end."""
    folder = tmp_path_factory.mktemp("tutorial")
    with chdir(folder):
        guide_pictures.follow("tutorial.md", folder)
    return folder


def test_the_tutorial_leads_from_an_empty_folder_to_a_corrected_packet(walked):
    built = walked / "build"
    assert len(list(built.glob("packets/*/*.pdf"))) == 2
    assert "which the first issue did not say" in (built / "site/corrections.html").read_text()
    assert "which the first issue did not say" in SOURCES["tutorial.md"].decode()


def test_the_tutorial_shows_what_comes_out_today(walked):
    """`python -m tests.guide_pictures` makes its pictures anew."""
    for name, picture in guide_pictures.of_files(walked).items():
        shown = SOURCES[f"pictures/{name}"]
        assert guide_pictures.look_alike(shown, guide_pictures.as_file(picture, name)), name


def test_the_tutorial_shows_the_pages_as_a_browser_does(walked):
    for name, picture in guide_pictures.of_screen(walked).items():
        shown = SOURCES[f"pictures/{name}"]
        assert guide_pictures.look_alike(shown, guide_pictures.as_file(picture, name)), name


def test_pictures_of_the_guide_are_light_and_all_of_them_are_shown():
    pictures = {path: data for path, data in SOURCES.items() if path.startswith("pictures/")}
    assert max(map(len, pictures.values())) <= guide_pictures.MOST_BYTES
    text = "".join(data.decode() for path, data in SOURCES.items() if path.endswith(".md"))
    assert set(re.findall(r"\((pictures/[^)]+)\)", text)) == set(pictures)


def test_a_picture_that_is_another_is_not_taken_for_the_same():
    one = guide_pictures.drawing()
    flat = Image.new("RGBA", one.size, "#8fa3b0")
    files = [guide_pictures.as_file(picture, "one.png") for picture in (one, flat)]
    assert guide_pictures.look_alike(files[0], files[0])
    assert not guide_pictures.look_alike(*files)


# --- the README ---------------------------------------------------------------------------------------

README = (ROOT / "README.md").read_text("utf-8")
CHAPTERS = {part.partition("\n")[0]: part for part in README.split("\n## ")[1:]}


def test_the_readme_leads_to_a_packet_of_ones_own(desk):
    """Its three commands in an empty folder, then its smallest design in the place of the example."""
    reader = Reader(desk, "README.md")
    reader.follow(CHAPTERS["Three commands to a packet of your own"])
    assert len(list(desk.glob("build/packets/*/*.pdf"))) == 2
    reader.follow(CHAPTERS["What an author writes"])
    assert not [name for name in drawn("What a build makes") if not (desk / name).exists()]
    result = reader.follow(
        "```sh\npacketgen proof\npacketgen chart count a-sprig-by-the-gate\n```\n"
    )
    assert re.search(r"all together +12\b", result.said)


def test_every_command_of_its_table_can_be_typed(desk):
    """On two patterns of the demo, since eight would take as many times as long."""
    shutil.copytree(ROOT / "content", desk / "content")
    series = desk / "content/series/potting-bench-almanac/series.yaml"
    two = "order: [robin-on-the-spade, squash-barrow]\n"
    series.write_text(with_fields(series.read_text("utf-8"), two), "utf-8")
    for left_out in series.parent.iterdir():
        if left_out.is_dir() and left_out.name not in two:
            shutil.rmtree(left_out)
    reader = Reader(desk, "README.md").follow(CHAPTERS["Day by day"])
    assert len(reader.done) > 25
    assert (desk / "to-buy.csv").read_text("utf-8").count("\n") > 20


def drawn(chapter: str) -> Iterator[str]:
    """Paths of the files and folders that a chapter draws; a photograph there may be."""
    (block,) = (block for block in blocks_of(CHAPTERS[chapter]) if not block.kind)
    above: list[str] = []
    for line in block.text.splitlines():
        deep = (len(line) - len(line.lstrip())) // 2
        for name in re.split(r" {2,}", line.strip())[0].split(", "):
            yield "".join([*above[:deep], name])
        above[deep:] = [name]


def test_the_folder_that_it_draws_is_the_demo():
    paths = set(drawn("What an author writes"))
    assert len(paths) > 8
    assert {path for path in paths if not (ROOT / path).exists()} == {
        "content/series/potting-bench-almanac/robin-on-the-spade/photo.jpg"
    }


def test_its_set_up_is_what_the_first_run_understands():
    """The suite itself may be run by it, so it is not run here."""
    lines = [block.text.strip() for block in blocks_of(CHAPTERS["Two commands"])]
    assert lines == [
        "python3 -m packetgen.firstrun build --as-of 2027-01-15",
        "python3 -m packetgen.firstrun test",
        "source .venv/bin/activate\npacketgen --help",
    ]
    assert "firstrun build" in firstrun.USAGE and "firstrun test" in firstrun.USAGE
    assert python_in(Path(".venv")).with_name("activate") == Path(".venv/bin/activate")


def test_it_leads_to_every_page_of_the_guide_that_is_there():
    linked = set(re.findall(r"\]\(packetgen/guide/([\w-]+\.md)\)", README))
    assert linked == {path for path in SOURCES if path.endswith(".md")}


def test_the_charts_of_the_look_up_page_are_read(tmp_path):
    """As text, as a table and with its close-up they are one design."""
    text, table, close_up = (
        block.text for block in blocks_of(SOURCES["other-files.md"].decode()) if not block.kind
    )
    plain = build(tmp_path / "text", {CHART: text})
    pattern = (plain / PATTERN).read_text("utf-8")
    assert with_fields(pattern, close_up) == pattern
    csv = build(tmp_path / "table", {CHART: None, CHART.replace(".txt", ".csv"): table})
    rows = []
    for folder in (plain, csv):
        content, problems = load_content(folder)
        assert content, [str(problem) for problem in problems]
        rows.append(content.series[0].patterns[0].grid.rows)
    assert rows[0] == rows[1] == ("rrbb", "rk..")


# --- how a page is read --------------------------------------------------------------------------------


def test_a_field_takes_the_place_of_the_one_of_its_name():
    file = "a: 1\n# of b\nb:\n  - x\n# more\n  - y\n# of c\nc: 3\n"
    assert with_fields(file, "b: [z]\n") == "a: 1\n# of b\nb: [z]\n# of c\nc: 3\n"
    assert with_fields(file, "c: 4\nd: 5\n").endswith("# of c\nc: 4\n\nd: 5\n")


def test_what_is_shown_may_leave_out_lines_and_words():
    shown = as_shown("one …\n…\nlast\n")
    assert shown.fullmatch("one two\nlast\n") and shown.fullmatch("one 2\nand\nlast\n")
    assert not shown.fullmatch("one two\nlast but one\n")


def test_a_page_that_shows_what_is_not_so_is_found_out(desk):
    """A command that fails, output that is otherwise, a block of a kind that nobody runs."""
    for wrong in (
        "```sh\npacketgen proof\n```\n",
        "```sh\npacketgen --version\n```\n\n```text\nversion 0\n```\n",
        "```python\nprint()\n```\n",
    ):
        with pytest.raises(AssertionError, match="page.md:1|page.md:5"):
            Reader(desk, "page.md").follow(wrong)
