"""Beginning: a series or a pattern of one's own that builds at once, and whose remarks are true."""

import os
import re
import shutil
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from click.testing import CliRunner
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.bring.offers import PLACED
from packetgen.cli import begin, main
from packetgen.diagnostics import Problems
from packetgen.faults import FAULTS
from packetgen.load.examples import (
    EXAMPLE_PERSON,
    complain_of_examples,
    examples_in,
    is_example,
)
from packetgen.load.files import LONGEST_ID
from packetgen.load.schema import FileShape, Group, Kind, ListOf, MapOf, Text, TextOr, WebAddress
from packetgen.load.shape_pattern import PATTERN as PATTERN_FIELDS
from packetgen.load.shapes import FILES
from packetgen.load.yaml_nodes import GroupNode, ListNode, Node, TextNode, read_nodes
from packetgen.pipeline import proof, review
from packetgen.pipeline.beginnings import found_in
from packetgen.reckon.series_checks import complain_of_series
from packetgen.reference.fields import entries
from packetgen.render.templates import environment
from packetgen.starting import LEAST, MOST
from packetgen.starting.around import Around, usual_size
from packetgen.starting.asking import what_is_wrong
from packetgen.starting.files import (
    NewPattern,
    NewSeries,
    entered,
    pattern_files,
    series_files,
)
from packetgen.starting.names import folder_name, why_not
from packetgen.starting.sprig import MARKS, sprig
from packetgen.write.together import written_together
from tests import stitching
from tests.content_builder import CLOTH, FERN, FINISH, MOSS, PATTERN, SERIES, TINY, build, picture
from tests.demo_patterns import CONTENT
from tests.test_look import font
from tests.test_share_picture import two_letter_face

NEW = ("--series", "Along the Path", "--designer", "Wren Alder", "--pattern", "Bean Poles")
SMALL = ("--wide", "20", "--high", "20")
PATH = "series/along-the-path"
THREADS = "threads/my-stranded-cotton.yaml"
EXAMPLES_OF_CREDITS = [one.example for one in PATTERN_FIELDS.fields if one.name == "credits"]


@pytest.fixture
def run(tmp_path, monkeypatch):
    """Types `packetgen begin` in an empty folder and gives the result."""
    monkeypatch.chdir(tmp_path)

    def call(*words, code=0, command="begin", answers=None):
        result = CliRunner().invoke(main, [*command.split(), *map(str, words)], input=answers)
        if result.exception and not isinstance(result.exception, SystemExit):
            raise result.exception
        assert result.exit_code == code, result.output
        return result.output

    return call


@pytest.fixture
def asked(run, monkeypatch):
    """The same where somebody answers, a line for each question; `last` whether it shall be written."""
    monkeypatch.setattr(begin, "_on_terminal", lambda: True)
    return lambda *answers, words=(), code=0, last=("",): run(
        *words, code=code, answers="".join(f"{answer}\n" for answer in (*answers, *last))
    )


@pytest.fixture
def demo_copy(tmp_path):
    shutil.copytree(CONTENT, tmp_path / "content")
    return tmp_path / "content"


def faults(folder: Path) -> list[str]:
    return [str(one) for one in proof(folder).problems.errors]


def all_files(folder: Path) -> dict[str, bytes]:
    """Everything below the folder, empty folders too."""
    return {
        path.relative_to(folder).as_posix(): path.read_bytes() if path.is_file() else b""
        for path in sorted(folder.rglob("*"))
    }


# --- a new series ----------------------------------------------------------------------------------


def test_an_empty_folder_becomes_a_series_without_faults(run, tmp_path):
    said = run(*NEW)
    assert faults(Path("content")) == []
    written = [line.strip() for line in said.split("\n") if line.startswith("  content/")]
    there = [f"content/{path}" for path, data in all_files(Path("content")).items() if data]
    assert sorted(written) == there
    assert "  packetgen bring FILE --pattern bean-poles --replace\n" in said
    assert "packetgen preview --open\n" in said and "packetgen build\n" in said


def test_a_new_series_is_advised_only_of_what_its_author_has_not_given_yet(run):
    """A photograph, and words for those who do not see it; an editor also sees each text that asks for hers."""
    run(*NEW)
    checked = proof(Path("content"))
    assert {problem.code for problem in checked.problems} == {
        *("photo-missing", "alt-missing", "credit-missing"),
    }
    left = {}
    for chapter in review(checked).chapters:
        assert "credits" not in {praise.short for praise in chapter.praise}, "nobody was named"
        for problem in chapter.problems:
            if problem.code in ("example-left", "example-remark"):
                file, line = problem.place.path, problem.place.line
                text = Path("content", file).read_text("utf-8").split("\n")
                others = map(int, re.findall(r"\(line (\d+)\)", problem.wrong))
                lines = [text[one - 1].strip() for one in (line, *others)]
                left.setdefault(file.rpartition("/")[2], []).extend(lines)
    assert left == {
        "series.yaml": [
            "tagline: Write here what the series is, in a few words",
            "about: Write here who she is, in one sentence.",
            "licence: Write here what a buyer may do, such as to stitch it for herself and for gifts.",
        ],
        "welcome.md": [BEGUN["series/path/welcome.md"].strip()],
        "pattern.yaml": [
            "about: Write here what it shows, in one sentence.",
            "occasion: {name: Example Day, on: first Sunday of May}",
            '- {colour: s, path: "22,35 29,31"}',
            '- {colour: f, at: "21.5,9.5"}',
        ],
        "story.md": [BEGUN["series/path/beans/story.md"].strip()],
        "stitching.md": [BEGUN["series/path/beans/stitching.md"].split("\n")[2]],
        "chart.txt": [BEGUN["series/path/beans/chart.txt"].split("\n")[0]],
        "finish.yaml": [
            "# EXAMPLE: sentence, outlines, parts and all sizes. Make them those of your piece, and take this line out.",
            "name: Example Plant Label",
            "- name: example label",
            "- name: example green",
        ],
        "steps.md": [BEGUN["finishes/plant-label/steps.md"].split("\n")[2]],
        "my-stranded-cotton.yaml": [
            "# EXAMPLE: the colours at its end. They are made up, and no maker's: take those of your thread, and this line out.",
            "# EXAMPLE: fibre, strands, weight and length. Look at your label, and take this line out.",
            '- {number: "01", name: example milk, hex: "#f6f1e4"}',
        ],
        "aida-14.yaml": ["name: Example Aida 14"],
        "evenweave-28.yaml": ["name: Example Evenweave 28"],
        "example-beads.yaml": ["name: Example Beads"],
    }


def test_nothing_is_advised_of_an_example_s_stitches_before_its_author_has_brought_her_own(run):
    """The small sprig would use little of its skeins, and draws in the magnets of a large design that is no example."""
    run(*NEW, "--wide", 50, "--high", 64)
    run("--pattern", "Leeks", "--wide", 30, "--high", 24)

    def is_no_example(name: str) -> None:
        chart = Path("content", PATH, name, "chart.txt")
        chart.write_text(chart.read_text("utf-8").partition("\n")[2], "utf-8")

    def told(name: str) -> set[str]:
        found = proof(Path("content"))
        all_told = (*found.problems, *(p for c in review(found).chapters for p in c.problems))
        return {one.code for one in all_told if f"/{name}/" in one.place.path}

    is_no_example("bean-poles")
    assert "skein-little" in told("bean-poles")
    assert not {"skein-little", "magnets-bunched"} & told("leeks")
    is_no_example("leeks")
    assert {"skein-little", "magnets-bunched"} <= told("leeks")


def test_the_examples_of_one_file_are_told_in_one_line(run):
    run(*NEW)
    (said,) = (
        str(one)
        for one in proof(Path("content")).examples
        if one.code == "example-left" and one.place.path.endswith("series.yaml")
    )
    assert "advice: 'tagline', 'about' in 'designers' (line 44) and 'licence' (line " in said
    assert said.endswith(
        ") are still the examples that begin wrote; put your own in their place, or take them out"
    )


def test_an_example_is_told_of_until_it_is_changed(run):
    """Of colours that are half changed the first that is not."""
    run(*NEW)
    card = Path("content") / THREADS
    card.write_text(card.read_text("utf-8").replace("example milk", "chalk"), "utf-8")
    finish = Path("content/finishes/plant-label/finish.yaml")
    finish.write_text(finish.read_text("utf-8").replace("xample ", "legant "), "utf-8")
    finish.write_text(finish.read_text("utf-8").replace("# EXAMPLE: ", "# "), "utf-8")
    left = [one for one in proof(Path("content")).examples if one.place.path == THREADS]
    assert [str(one) for one in left] == [
        f"{THREADS}:3:1: advice: what begin wrote as an example is still marked as one: "
        "'the colours at its end'; put your own in its place, and take this remark out",
        f"{THREADS}:11:1: advice: what begin wrote as an example is still marked as one: "
        "'fibre, strands, weight and length'; put your own in its place, and take this remark out",
        f"{THREADS}:45:26: advice: 8 names in 'colours' are still the examples that begin wrote; "
        "put your own in their place, or take them out",
    ]
    assert not any("finish.yaml" in one.place.path for one in proof(Path("content")).examples)


def test_a_design_that_is_brought_in_is_no_example_though_it_has_the_same_marks(run):
    run(*NEW, *SMALL)
    chart = Path("content", PATH, "bean-poles/chart.txt")
    assert chart.read_text("utf-8").startswith("# EXAMPLE: a sprig in a frame.")
    Path("mine.txt").write_text("lfbs\n" * 4, "utf-8")
    run("mine.txt", "--pattern", "bean-poles", "--replace", "--drop-lines", command="bring")
    text = chart.read_text("utf-8")
    assert (
        "EXAMPLE" not in text and text.endswith("lfbs\n" * 4) and text.startswith("# One character")
    )
    assert not any(one.place.path.endswith("chart.txt") for one in proof(Path("content")).examples)


def lines_left() -> list[str]:
    """What the review says of lines of the example, in the words that stand before the advice."""
    problems = [
        one for chapter in review(proof(Path("content"))).chapters for one in chapter.problems
    ]
    return [one.wrong for one in problems if "'backstitch'" in one.wrong]


@pytest.mark.parametrize(
    "size", [("40", "40"), ("20", "20"), ("23", "31"), ("12", "12"), ("5", "5")]
)
def test_the_examples_line_and_knot_go_with_the_chart_that_they_lay_on(run, size):
    """By the very command that begin prints; and it is said that they went."""
    run(*NEW, "--wide", size[0], "--high", size[1])
    pattern = Path("content", PATH, "bean-poles/pattern.yaml")
    lines = pattern.read_text("utf-8").split("\n")
    at = [1 + lines.index(next(one for one in lines if word in one)) for word in ("path: ", "at: ")]
    (told,) = lines_left()
    assert told == (
        f"'backstitch' and 'french_knots' (line {at[1]}) are still the examples that begin wrote"
    )
    Path("mine.txt").write_text("lfbs\n" * 4, "utf-8")
    said = run("mine.txt", "--pattern", "bean-poles", "--replace", command="bring")
    assert "Gone with the example that it lay on: backstitch and french_knots.\n" in said
    assert "What lay on the old chart stays" not in said
    text = pattern.read_text("utf-8")
    assert "\nbackstitch:" not in text and "\nfrench_knots:" not in text
    assert "\nbackstitch:" in pattern.with_name("_before-pattern.yaml").read_text("utf-8")
    assert faults(Path("content")) == [] and lines_left() == []


@pytest.mark.parametrize("drop", [(), ("--drop-lines",)])
@pytest.mark.parametrize("rows", ["lx.\n.x.\n", "...\n..x\n", ":\n", "4y\n"])
def test_where_the_examples_line_and_knot_went_it_is_still_shown_how_they_are_written(
    run, rows, drop
):
    """Below the remark that says how they are placed, in a mark of the new key and on the new chart: each may
    be uncommented, and is no example that is left."""
    run(*NEW)
    pattern = Path("content", PATH, "bean-poles/pattern.yaml")
    Path("mine.txt").write_text(rows, "utf-8")
    codes = [
        word
        for sign in "xl:4y"
        if sign in rows
        for word in ("--code", f"{sign}=0{'xl:4y'.index(sign) + 1}")
    ]
    words = ("mine.txt", *codes, "--pattern", "bean-poles", "--replace", *drop)
    run(*words, command="bring")
    text = pattern.read_text("utf-8")
    head, _, below = text.partition(PLACED[0])
    assert re.match(
        r".*\n# begins, .*\n\n# A line .*\n#backstitch:\n#  - .*\n# A French knot.*\n#french_knots:\n#  - ",
        below,
    )
    assert faults(Path("content")) == [] and lines_left() == []
    names = ["backstitch", "french_knots", "long_stitch", "lazy_daisies"]
    names += ["close_ups"] * ("." in rows and rows[-2] != ":")
    for name in names:
        block = re.search(rf"^#{name}:\n(?:#  .*\n)+", text, re.MULTILINE)[0]
        text = text.replace(block, re.sub("^#", "", block, flags=re.MULTILINE))
        pattern.write_text(text, "utf-8")
        assert faults(Path("content")) == [] and lines_left() == [], name
    for name in names:
        assert text.count(f"\n{name}:\n  - ") == 1


def test_what_is_offered_of_lines_follows_the_key_and_is_offered_once(run):
    run(*NEW)
    pattern = Path("content", PATH, "bean-poles/pattern.yaml")
    for sign in "xw":
        Path("mine.txt").write_text(f"{sign}{sign}\n", "utf-8")
        words = (
            "mine.txt",
            "--code",
            f"{sign}=0{1 + 'xw'.index(sign)}",
            "--pattern",
            "bean-poles",
            "--replace",
        )
        run(*words, command="bring")
        text = pattern.read_text("utf-8")
        for name in ("backstitch", "french_knots", "long_stitch", "lazy_daisies"):
            assert text.count(f"#{name}:") == 1
        assert "close_ups" not in text, "no square is bare"
        assert text.count(f"#  - {{colour: {sign}, ") == 4
        assert "nothing had to be written" in run(*words, command="bring")
        assert "pattern.yaml:" not in run("bean-poles", "left-right", command="chart mirror")


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("path: ", 'path: "2,2 3,3"'),
        ("french_knots:\n", 'french_knots:\n  - {colour: f, at: "3,3"}\n'),
        ("#long_stitch:\n#", "long_stitch:\n"),
    ],
    ids=["another line", "another knot", "a long stitch"],
)
def test_lines_of_which_one_is_the_authors_own_stay_and_are_told(run, old, new):
    """She may have meant all of them, though the chart is still the example."""
    run(*NEW)
    pattern = Path("content", PATH, "bean-poles/pattern.yaml")
    text = pattern.read_text("utf-8")
    if old == "path: ":
        old = re.search(r'path: "[^"]*"', text)[0]
    pattern.write_text(text.replace(old, new, 1), "utf-8")
    Path("mine.txt").write_text("lfbs" * 10 + "\n" + ("lfbs" * 10 + "\n") * 38, "utf-8")
    said = run("mine.txt", "--pattern", "bean-poles", "--replace", command="bring")
    assert "What lay on the old chart stays on the new one: backstitch, " in said
    assert (
        "The old chart was 40 × 40 stitches, and the numbers of what lies on it stay"
        in " ".join(said.split())
    )
    assert "Gone with the example" not in said
    assert "\nbackstitch:" in pattern.read_text("utf-8")


def test_a_picture_gets_its_marks_from_the_names_of_its_threads_and_not_from_the_examples_key(run):
    """She has her own names on the card by then, and 'f' says nothing of rust."""
    run(*NEW, *SMALL)
    card = next(Path("content/threads").glob("*.yaml"))
    card.write_text(card.read_text("utf-8").replace("example flowerpot", "rust"), "utf-8")
    Path("mine.png").write_bytes(picture([["#8a5a3b", "#8a5a3b"], ["#f6f1e4", "#f6f1e4"]]))
    run("mine.png", "--pattern", "bean-poles", "--replace", command="bring")
    assert Path("content", PATH, "bean-poles/chart.txt").read_text("utf-8").endswith("rr\nmm\n")


@pytest.mark.parametrize("threads", ["y=07", "b=04 y=07"])
def test_a_sign_of_ones_own_is_not_taken_for_a_mark_of_the_examples_key(run, threads):
    """The example's berry is 'b' too; whoever draws with 'b' and 'y' has not meant it."""
    run(*NEW, *SMALL)
    Path("mine.txt").write_text("yybb\n" * 4, "utf-8")
    codes = [word for code in threads.split() for word in ("--code", code)]
    words = ("mine.txt", *codes, "--pattern", "bean-poles", "--replace")
    said = run(*words, command="bring", code=int("b=" not in threads))
    key = Path("content", PATH, "bean-poles/pattern.yaml").read_text("utf-8")
    chart = Path("content", PATH, "bean-poles/chart.txt").read_text("utf-8")
    if "b=" not in threads:
        assert "'b', which stands for 8 stitches, is no colour" in said
        assert chart.startswith("# EXAMPLE: ")
    else:
        assert chart.endswith("yybb\n" * 4) and re.search(r"(?m)^  b: \{.*\"04\"\}", key)
        assert not re.search(r"(?m)^  [lfs]: ", key)


@pytest.mark.parametrize("brought", [False, True])
def test_where_a_colour_lacks_the_drawing_is_asked_for_only_as_long_as_the_example_is_there(
    run, brought
):
    run(*NEW, *SMALL)
    if brought:
        chart = Path("content", PATH, "bean-poles/chart.txt")
        chart.write_text(re.sub(r"(?m)^# EXAMPLE.*\n", "", chart.read_text("utf-8")), "utf-8")
    pattern = Path("content", PATH, "bean-poles/pattern.yaml")
    pattern.write_text(re.sub(r'"0\d"', '"77"', pattern.read_text("utf-8"), count=1), "utf-8")
    said = run("--pattern", "Peas", "--yes", code=1)
    assert "[colour-unknown]" in said
    assert ("until its drawing is brought in" in said) != brought


def test_lines_that_begin_wrote_are_known_on_a_chart_of_another_size_too(run):
    """Where the author drew her chart over the example's by hand."""
    run(*NEW)
    chart = Path("content", PATH, "bean-poles/chart.txt")
    chart.write_text(("lfbs" * 12 + "\n") * 44, "utf-8")
    assert len(lines_left()) == 1
    pattern = chart.with_name("pattern.yaml")
    text = pattern.read_text("utf-8")
    pattern.write_text(re.sub(r'at: "[^"]*"', 'at: "3,3"', text, count=1), "utf-8")
    assert lines_left() == [], "a line alone may be hers"


def test_a_finished_series_has_no_examples_left():
    assert proof(CONTENT).examples == ()


@pytest.mark.slow
def test_a_new_series_and_a_second_pattern_build_at_once(run):
    """From an empty folder to a packet: begin, begin another pattern, build."""
    run(*NEW, *SMALL)
    run("--pattern", "Rhubarb under a Bucket", *SMALL)
    run(command="build")
    packets = Path("build/packets/along-the-path")
    assert {path.name for path in packets.glob("*.pdf")} == {
        *("bean-poles-a4.pdf", "bean-poles-letter.pdf"),
        *("rhubarb-under-a-bucket-a4.pdf", "rhubarb-under-a-bucket-letter.pdf"),
    }
    assert all(path.read_bytes().startswith(b"%PDF-") for path in packets.glob("*.pdf"))
    assert "Along the Path" in Path("build/site/index.html").read_text("utf-8")


def test_what_is_answered_stands_in_the_files(asked):
    """One question after the other; what is wrong is told at once and asked again."""
    said = asked(
        "Along the Path",
        "Wren Alder",
        *("soon", "2027-02-30", "2027-05-01"),
        *("2027-05-01", "1 May 2027", "50", "Bean Poles"),
        "Hazel Floss",
        *("4", "24"),
        "22",
    )
    assert "'soon' is neither a day nor a day with hour and place; write 2027-01-15, or" in said
    assert "there is no day '2027-02-30'; February 2027 has 28 days" in said
    assert said.count("is a day, and this asks for a title or a name") == 2
    assert "'50' is a number, and this asks for a title or a name" in said
    assert "Not as you meant it? Delete the folder 'content', and begin again." in said
    (series,) = found_in(Path("content")).series
    (pattern,) = series.patterns
    assert (series.title, series.designers[0].name) == ("Along the Path", "Wren Alder")
    assert str(series.release) == "2027-05-01 00:00:00+00:00"
    assert series.thread_sets[0].card.name == "Hazel Floss"
    assert (pattern.title, pattern.grid.width, pattern.grid.height) == ("Bean Poles", 24, 22)


def test_what_was_answered_is_shown_and_can_be_answered_otherwise(asked):
    once_more = ("n", "", "Rose Floss", "", "24", "y")
    said = asked("2027-05-01", "Hazel Floss", "22", "20", words=NEW, last=once_more)
    assert (
        "  Along the Path, a series by Wren Alder, out on 2027-05-01, with Hazel Floss, "
        "in content/series/along-the-path\n" in said
    )
    assert "  Bean Poles, a pattern of 22 × 20 stitches, in content/" in said
    assert "Nothing was written.\nOnce more: Enter keeps what you answered" in said
    assert "And how many high [20]: 24\n" in said
    (series,) = found_in(Path("content")).series
    assert series.thread_sets[0].card.name == "Rose Floss"
    grid = series.patterns[0].grid
    assert (grid.width, grid.height) == (22, 24)


@pytest.mark.parametrize(
    ("across", "down", "size"),
    [(("22 x 20",), (), (22, 20)), (("22×20",), (), (22, 20)), (("22",), ("20",), (22, 20))],
)
def test_width_and_height_may_be_answered_at_once(asked, across, down, size):
    said = asked("2027-05-01", "Hazel Floss", *across, *down, words=NEW)
    assert said.count("And how many high") == len(down)
    grid = found_in(Path("content")).series[0].patterns[0].grid
    assert (grid.width, grid.height) == size


def test_a_height_that_is_none_is_asked_for_again(asked):
    said = asked("2027-05-01", "Hazel Floss", "22 x tall", "22 x 900", "22 x 20", words=NEW)
    assert "'tall' is no whole number" in said
    assert "900 is too large" in said


def test_a_question_that_takes_yes_or_no_says_so(asked):
    said = asked("2027-05-01", "", "", "", words=NEW, last=("perhaps", "YES"))
    assert "Error: answer y for yes, or n for no\nWrite it [Y/n]: YES\nWritten:" in said


def test_where_all_was_given_no_means_no(asked):
    words = (*NEW, "--release", "2027-05-01", "--threads", "Floss", "--wide", "20", "--high", "20")
    said = asked(words=words, last=("n",))
    assert said.endswith("Write it [Y/n]: n\nNothing was written.\n")
    assert not Path("content").exists()


@pytest.mark.parametrize("change", [("turn", "90"), ("border", "2"), ("mirror", "left-right")])
def test_no_remark_of_a_new_pattern_is_one_to_look_at_after_a_change_of_its_chart(run, change):
    run(*NEW)
    how, *words = change
    said = run("bean-poles", *words, command=f"chart {how}")
    assert "bean-poles" in said and "pattern.yaml:" not in said, said


def test_each_new_pattern_is_for_another_day_and_none_is_told_to_hang_with_another(run):
    run(*NEW)
    run("--pattern", "Leeks in the Frost", "--yes")
    days = [one.occasion for one in found_in(Path("content")).series[0].patterns]
    assert days[0] != days[1]
    assert "day-shared" not in [one.code for one in proof(Path("content")).problems]


def test_with_yes_nothing_is_asked_on_a_terminal(asked):
    asked(words=("--yes",))
    assert faults(Path("content")) == []


@pytest.mark.parametrize("kept", range(3))
def test_where_nobody_can_be_asked_the_options_that_are_missing_are_named(run, kept):
    given = NEW[2 * kept : 2 * kept + 2]
    said = run(*given, code=2)
    missing = [option for option in NEW[::2] if option not in given]
    assert f"give {' and '.join(missing)}, or --yes" in said
    assert not Path("content").exists()


def test_stopping_at_a_question_writes_nothing(asked):
    asked("Along the Path", code=130)
    assert not Path("content").exists()


@pytest.mark.parametrize(
    ("release", "told"),
    [
        ("May", "'May' is neither a day nor a day with hour and place; write 2027-01-15, or"),
        (
            "1 May 2027 09:00",
            "write 2027-05-01, or with hour and place 2027-05-01 09:00 Europe/London",
        ),
        ("2027-02-29", "there is no day '2027-02-29'"),
        ("1877-02-01", "the year 1877"),
        ("2027-05-01 25:00 Europe/London", "there is no time '25:00'"),
        ("2027-05-01 09:00 Europe/Londen", "did you mean 'Europe/London'?"),
        ("2027-03-28 01:30 Europe/London", "the clocks go forward that day"),
        ("2027-05-01 10:30", "or with hour and place 2027-05-01 10:30 Europe/London"),
        ("", "is neither a day nor a day with hour and place"),
    ],
)
def test_a_release_that_is_no_day_is_told_in_the_words_of_a_proof(run, release, told):
    said = run(*NEW, "--release", release, code=2)
    assert told in " ".join(said.split())
    assert not Path("content").exists()


@pytest.mark.parametrize("release", ["1 May 2027", "May 1st, 2027", "1.5.2027", "2027/05/01"])
def test_a_day_in_other_words_is_taken_as_it_is_meant(run, release):
    run(*NEW, "--release", release)
    assert "release: 2027-05-01\n" in Path("content", PATH, "series.yaml").read_text("utf-8")


def test_a_release_may_name_the_time_and_the_place(run):
    run(*NEW, "--release", "2027-05-01 09:00 Europe/London")
    (series,) = found_in(Path("content")).series
    assert str(series.release) == "2027-05-01 09:00:00+01:00"


def test_a_release_on_a_day_is_written_as_that_day_and_is_the_day_of_the_first_issue(run):
    """Packet and site print the first issue's day, and its year behind the ©."""
    run(*NEW, "--release", "2027-05-01")
    assert "\nrelease: 2027-05-01\n" in Path("content", PATH, "series.yaml").read_text("utf-8")
    (series,) = found_in(Path("content")).series
    assert str(series.release) == "2027-05-01 00:00:00+00:00"
    assert [str(one.on) for one in series.patterns[0].revisions] == ["2027-05-01"]


def test_where_nobody_said_when_it_comes_out_the_day_is_told_and_where_to_change_it(run):
    said = run(*NEW)
    (series,) = found_in(Path("content")).series
    day = series.release.date()
    assert (
        f"No --release was given, so it comes out today, {day}: change that day, under release and revisions, in "
        f"content/{PATH}/series.yaml and content/{PATH}/bean-poles/pattern.yaml.\n" in said
    )
    said = run("--pattern", "Beans")  # that series is out
    later = day + timedelta(weeks=4)
    assert (
        f"so it comes out on {later}: " in said and f"in content/{PATH}/beans/pattern.yaml" in said
    )
    assert not [one for one in proof(Path("content")).problems if one.code == "release-early"]


def test_a_day_that_was_given_is_not_told_again(run):
    assert "--release" not in run(*NEW, "--release", "2027-05-01")
    assert "--release" not in run("--pattern", "Beans"), "it comes out with its series"


def test_a_day_that_was_asked_for_is_offered_as_a_day_and_not_told_again(asked):
    said = asked("2027-05-01", "", "", "", words=NEW)
    assert "The day it comes out, such as 2027-05-01 (or 2027-05-01 09:00 Europe/London) [" in said
    assert "--release" not in said


@pytest.mark.parametrize(("wide", "high"), [(LEAST, LEAST), (MOST, LEAST), (LEAST, MOST), (37, 64)])
def test_the_finishing_piece_is_made_to_the_size_of_the_design(run, wide, high):
    run(*NEW, "--wide", wide, "--high", high)
    assert faults(Path("content")) == []


def test_a_small_drawing_is_begun_and_what_is_offered_finds_room_on_it(run):
    run(*NEW, "--wide", 26, "--high", 14)
    (series,) = found_in(Path("content")).series
    assert (series.patterns[0].grid.width, series.patterns[0].grid.height) == (26, 14)
    run("--pattern", "Pea", "--wide", LEAST, "--high", LEAST)
    pattern = Path("content", PATH, "pea/pattern.yaml")
    text = pattern.read_text("utf-8")
    for field in ("long_stitch", "lazy_daisies", "beads", "close_ups"):
        offered = re.search(rf"^#{field}:\n(?:#  .*\n)+", text, re.MULTILINE)[0]
        text = text.replace(offered, re.sub("^#", "", offered, flags=re.MULTILINE))
    pattern.write_text(text, "utf-8")
    assert faults(Path("content")) == []


@pytest.mark.parametrize(
    ("size", "told"),
    [
        (4, "4 is too small; give from 5 to 300 stitches"),
        (301, "301 is too large; give from 5 to 300 stitches"),
        ("many", "'many' is no whole number; give from 5 to 300 stitches"),
    ],
)
def test_a_size_that_no_example_has_is_told_in_words(run, size, told):
    assert told in " ".join(run(*NEW, "--high", size, code=2).split())


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="needs a user without rights")
def test_a_folder_that_nobody_may_write_into_is_told(run):
    Path("content").mkdir(mode=0o500)
    said = run(*NEW, code=2)
    assert "cannot write" in said and "nothing was written" in said
    assert all_files(Path("content")) == {}


def test_what_is_in_the_content_folder_already_stays(run):
    """An author may have written her thread card first."""
    Path("content/threads").mkdir(parents=True)
    Path("content/threads/moss.yaml").write_text(TINY["threads/moss.yaml"], "utf-8")
    run(*NEW)
    assert faults(Path("content")) == []
    assert Path("content/threads/moss.yaml").read_text("utf-8") == TINY["threads/moss.yaml"]


def test_a_fault_in_what_is_there_is_told_and_nothing_is_written(run):
    Path("content/threads").mkdir(parents=True)
    Path("content/threads/moss.yaml").write_text("name: Moss\n", "utf-8")
    before = all_files(Path("content"))
    said = run(*NEW, code=1)
    assert "content/threads/moss.yaml:1:1: " in said and "nothing was written" in said
    assert all_files(Path("content")) == before


# --- a new pattern ---------------------------------------------------------------------------------


def test_a_pattern_begins_in_a_series_with_what_that_has(run, demo_copy):
    """Its thread set, its cloths, its finishing piece, and the designer that is named."""
    before = all_files(demo_copy)
    order = "series/potting-bench-almanac/series.yaml"
    said = run("--pattern", "Kohlrabi & Rüben", "--designer", "Hester Varley")
    assert faults(demo_copy) == []
    pattern = found_in(demo_copy).series[0].patterns[-1]
    assert (pattern.id, pattern.designer.id) == ("kohlrabi-ruben", "varley")
    after = all_files(demo_copy)
    assert {path for path in after if after[path] != before.get(path)} == {
        order,
        "series/potting-bench-almanac/kohlrabi-ruben",
        *(
            f"series/potting-bench-almanac/kohlrabi-ruben/{name}"
            for name in ("pattern.yaml", "chart.txt", "story.md", "stitching.md")
        ),
    } - {path for path in after if not after[path] and path in before}
    assert after[order].replace(b"  - kohlrabi-ruben\n", b"") == before[order]
    assert f"entered in the order of content/{order}" in said


def test_the_example_is_as_large_as_the_finishing_piece_allows(run, tmp_path):
    """A panel of 100 mm with a border of 6 mm leaves 88 mm: 48 stitches at 14 to the inch, and 40 are
    enough; one of 60 mm leaves 48 mm, 26 stitches."""
    panel = ("outline: 0,0 100,0 100,100 0,100", "outline: 0,0 60,0 60,60 0,60")
    fern = {f"{FERN}/chart.txt": "rrbb\nrk..\n"}
    build(tmp_path / "content", {"finishes/shelf/finish.yaml": panel, **fern})
    run("--pattern", "Ferns", "--content", "content")
    assert found_in(tmp_path / "content").series[0].patterns[-1].grid.width == 26


def test_a_new_pattern_has_the_size_of_the_one_before_it(run):
    """Which the finishing piece was made for, perhaps; a size that is given counts all the same."""
    run(*NEW, "--wide", 50, "--high", 64)
    run("--pattern", "Ferns")
    run("--pattern", "Leeks", "--wide", 30)
    patterns = found_in(Path("content")).series[0].patterns
    assert [(one.grid.width, one.grid.height) for one in patterns] == [(50, 64), (50, 64), (30, 64)]


THREE_COLOURS = '  - {number: "07", name: fern, hex: "#4f7942"}\n'


@pytest.mark.parametrize(
    ("changes", "sets", "matched"),
    [
        ({}, ["moss", "spool"], ["spool"]),
        ({PATTERN: ("[moss, spool]", "[moss]")}, ["moss"], []),  # in a remark
        # The example has four colours of the card, and the other card three.
        ({MOSS: (THREE_COLOURS, f"{THREE_COLOURS}  - {{number: E9, name: ash, hex: '#888888'}}\n")}, ["moss"], []),
    ],
)  # fmt: skip
def test_a_new_pattern_is_for_the_thread_sets_of_the_first(tmp_path, run, changes, sets, matched):
    """Those whose cards have colours enough; the tool matches them, since only their owner could choose."""
    if PATTERN in changes:
        of_one = TINY[PATTERN].replace("[moss, spool]", "[moss]")
        for colours in ('"10"', '"12"', '["10", "14"]'):
            of_one = of_one.replace(f", spool: {colours}", "")
        changes = {PATTERN: of_one}
    build(tmp_path / "content", changes)
    run("--pattern", "Ferns", "--content", "content")
    ferns = found_in(tmp_path / "content").series[0].patterns[-1]
    assert [one.id for one in ferns.thread_sets] == sets
    assert [one.into.id for one in ferns.matched] == matched


def test_a_pattern_before_it_that_fits_nowhere_gives_no_size(run):
    """The square that fits is taken instead: no cloth of the series holds 30 columns more."""
    run(*NEW, "--wide", 20, "--high", 30)
    run("--pattern", "Ferns", "--wide", 20, "--high", 20)
    chart = Path("content", PATH, "ferns/chart.txt")
    rows = [line for line in chart.read_text("utf-8").splitlines() if line[:2] not in ("# ", "#")]
    remarks = [line for line in chart.read_text("utf-8").splitlines() if line not in rows]
    chart.write_text("\n".join([*remarks, *(row * 3 for row in rows), ""]), "utf-8")
    series = found_in(Path("content")).series[0]
    assert series.patterns[-1].grid.width == 60
    wide, high = usual_size(series, 40)
    assert wide == high < 40


def test_a_size_that_does_not_fit_is_told_and_nothing_is_written(run, tmp_path):
    """By hand: a shelf of 100 mm less 12 mm of border holds 88 mm, 48 stitches of 14 an inch."""
    content = build(tmp_path / "content")
    before = all_files(content)
    said = " ".join(run("--pattern", "Ferns", "--wide", "200", "--high", "20", code=2).split())
    assert (
        "A design of 200 × 20 stitches does not fit; The Shelf has room for 48 × 48 stitches: let it be smaller, or make "
        "panel and parts of the piece larger in content/finishes/shelf/finish.yaml; nothing was written"
    ) in said
    assert all_files(content) == before


def test_where_other_shapes_may_be_wider_or_higher_that_is_told(run, tmp_path):
    """By hand: a panel like an L, whose arms are 100 mm long and 50 mm broad; less 12 mm of border its arms hold 48 stitches
    of 14 an inch one way and 20 the other, and no square of more than 20."""
    changes = {FINISH: ("0,0 100,0 100,100 0,100", "0,0 100,0 100,50 50,50 50,100 0,100")}
    build(tmp_path / "content", changes)
    said = " ".join(run("--pattern", "Ferns", "--wide", "48", "--high", "48", code=2).split())
    assert "and in other shapes for at most 48 across or 48 down" in said
    run("--pattern", "Ferns", "--wide", "48", "--high", "20")


def test_of_several_cloths_the_coarsest_is_named_on_which_the_design_has_no_room(run, tmp_path):
    """By hand: 16 stitches an inch would have room for 55."""
    finer = TINY[CLOTH].replace("28", "32")
    both = "  - {cloth: hopsack-28, colour: frost}\n  - {cloth: hopsack-32, colour: frost}\n"
    changes = {
        "cloths/hopsack-32.yaml": finer,
        PATTERN: ("  - {cloth: hopsack-28, colour: frost}\n", both),
    }
    build(tmp_path / "content", changes)
    said = " ".join(run("--pattern", "Ferns", "--wide", "50", "--high", "20", code=2).split())
    assert (
        "The Shelf has room for 48 × 48 stitches on Hopsack 28, the coarsest cloth: let it" in said
    )


def test_the_room_is_told_where_the_size_is_asked_and_a_size_that_does_not_fit_is_asked_again(
    asked, tmp_path
):
    content = build(tmp_path / "content")
    said = asked("Ferns", "20", "49", "48", "48")
    assert said.count("\nThe Shelf has room for 48 × 48 stitches.\n") == 1
    assert said.count("How many stitches wide your drawing is, or an example shall be [") == 2
    assert "A design of 20 × 49 stitches does not fit" in said
    assert "in content/finishes/shelf/finish.yaml.\n" in said
    ferns = found_in(content).series[0].patterns[-1].grid
    assert (ferns.width, ferns.height) == (48, 48)


def test_what_cannot_be_written_is_asked_once_more(asked, tmp_path):
    content = build(tmp_path / "content")
    once_more = ("y", "Ferns by the Wall", "", "", "y")
    words = ("--pattern-folder", "ferns")
    said = asked("Fern by the Tap", "20", "20", words=words, last=once_more)
    assert "'Fern by the Tap' is also the title of another pattern" in said
    assert "Nothing was written.\nOnce more: Enter keeps what you answered" in said
    assert found_in(content).series[0].patterns[-1].title == "Ferns by the Wall"


def test_a_pattern_of_a_series_that_is_out_comes_out_later(run, tmp_path):
    """What is begun today must not be published by the next build."""
    content = build(tmp_path / "content", {SERIES: ("2027-01-15", "2020-01-15")})
    run("--pattern", "Ferns")
    (series,) = found_in(content).series
    fern, ferns = series.patterns
    assert fern.release is None
    assert ferns.release > datetime.now(UTC) + timedelta(weeks=3)
    assert ferns.release.date() == ferns.revisions[0].on


@pytest.mark.parametrize("words", [("--designer", "Wren Older"), ("--designer", "older")])
def test_a_designer_whom_the_series_does_not_have_is_told_the_nearest(run, tmp_path, words):
    build(tmp_path / "content")
    said = run("--pattern", "Ferns", *words, code=2)
    assert "there is no designer of the series called" in said and "alder" in said


def test_a_designer_who_is_new_to_the_series_is_told_where_to_be_added(run, tmp_path, demo_copy):
    content = build(tmp_path / "one")
    words = ("--pattern", "Ferns", "--designer", "Tansy Holloway", "--content")
    said = " ".join(run(*words, content, code=2).split())
    file = f"{content.as_posix()}/series/garden-year/series.yaml"
    assert said.endswith(
        "there is no designer of the series called 'Tansy Holloway'; known here: alder "
        f"(or add the designer under 'designers' in {file} first, or leave --designer out)"
    )
    of_several = run(*words, demo_copy, code=2)
    assert "'designers'" in of_several and "leave --designer out" not in of_several


def test_of_several_designers_one_must_be_named(run, demo_copy):
    said = run("--pattern", "Kohlrabi", code=2)
    assert "say which designer with --designer: thackwray, pask" in said
    run("--pattern", "Kohlrabi", "--yes")
    assert found_in(demo_copy).series[0].patterns[-1].designer.id == "thackwray"


def test_of_several_designers_one_is_asked_for(asked, demo_copy):
    told = asked("Kohlrabi", "pask", "30", "30")
    assert "the pattern's title, which designer's it is, " in " ".join(told.split())
    assert found_in(demo_copy).series[0].patterns[-1].designer.id == "pask"


def test_of_several_series_one_must_be_named(run, demo_copy):
    shutil.copytree(demo_copy / "series/potting-bench-almanac", demo_copy / "series/second-year")
    said = run("--pattern", "Kohlrabi", "--designer", "pask", code=2)
    assert "say which series with --in: potting-bench-almanac, second-year" in said
    run("--pattern", "Kohlrabi", "--designer", "pask", "--in", "second-year")
    assert (demo_copy / "series/second-year/kohlrabi/chart.txt").is_file()
    said = run("--pattern", "Leeks", "--in", "second-yaer", code=2)
    assert "did you mean 'second-year'?" in said


def test_content_with_a_fault_is_to_be_mended_first(run, tmp_path):
    content = build(tmp_path / "content", {PATTERN: ("designer: alder", "designer: older")})
    before = all_files(content)
    said = run("--pattern", "Ferns", code=1)
    assert "content/series/garden-year/fern/pattern.yaml:2:11: " in said
    assert all_files(content) == before


def test_a_pattern_begins_beside_one_that_does_not_fit(run, tmp_path):
    """That one is to be mended all the same, and is said; what is new adds no fault."""
    large = {f"{FERN}/chart.txt": "\n".join(["rrbb" + "." * 146, "rr" + "." * 148])}
    content = build(tmp_path / "content", large)
    (told,) = faults(content)
    assert "has room for" in told
    said = run("--pattern", "Ferns")
    assert "1 thing to mend, as before: packetgen proof names each." in said
    assert (content / "series/garden-year/ferns/chart.txt").is_file()
    assert faults(content) == [told]


@pytest.mark.parametrize(
    "words", [("--series", "Other"), ("--threads", "Other"), ("--series-folder", "other")]
)
def test_what_belongs_to_a_new_series_is_refused_in_one_that_is_there(run, tmp_path, words):
    build(tmp_path / "content")
    said = run("--pattern", "Ferns", *words, code=2)
    assert f"leave out {words[0]}" in " ".join(said.split())


@pytest.mark.parametrize(
    ("before", "after"),
    [
        ("order: [fern]\n", "order: [fern, moss]\n"),
        ("order:\n  - fern\n", "order:\n  - fern\n  - moss\n"),
        (
            "order:\n- fern # the first\n\n# more\n",
            "order:\n- fern # the first\n- moss\n\n# more\n",
        ),
        (
            "order:\r\n  - 'fern'\r\ntitle: x\r\n",
            "order:\r\n  - 'fern'\r\n  - moss\r\ntitle: x\r\n",
        ),
        ("\ufefforder: [ fern ]", "\ufefforder: [ fern, moss ]"),
    ],
)
def test_the_order_is_all_that_changes_in_a_series_file(before, after):
    assert entered(before.encode(), "series.yaml", "fern", "moss") == after.encode()


# --- never over anything ---------------------------------------------------------------------------


def test_a_second_time_nothing_is_written_over(run):
    run(*NEW)
    before = all_files(Path("content"))
    said = run("--pattern", "Bean Poles!", code=2)
    assert "is called like that already" in said
    assert "--pattern-folder" in said and "bring FILE --pattern NAME --replace" in said
    said = run("--pattern", "Beans", "--pattern-folder", "bean-poles", code=2)
    assert f"content/{PATH}/bean-poles\n" in said and "Nothing was written" in said
    assert all_files(Path("content")) == before


@pytest.mark.parametrize(
    "there",
    [THREADS, "cloths/aida-14.yaml", "finishes/plant-label/mine.txt", "beads/example-beads.yaml"],
)
def test_a_file_that_is_in_the_way_of_a_series_stops_all_of_it(run, there):
    mine = Path("content", there)
    mine.parent.mkdir(parents=True)
    mine.write_text("mine", "utf-8")
    said = run(*NEW, code=2)
    assert "this is there already" in said
    assert all_files(Path("content")) == {
        there: b"mine",
        **{str(one): b"" for one in Path(there).parents if str(one) != "."},
    }


@pytest.mark.skipif(os.name != "posix", reason="makes a link")
def test_a_link_to_nowhere_is_in_the_way_too(run):
    Path("content/threads").mkdir(parents=True)
    Path("content", THREADS).symlink_to("nowhere")
    assert THREADS in run(*NEW, code=2)
    assert not Path("content/series").exists()


def test_a_file_where_the_content_should_be_is_told(run):
    Path("content").write_text("mine", "utf-8")
    assert "'content' is a file" in run(*NEW, code=2)


@pytest.mark.parametrize("where", ["threads", "cloths", "series"])
def test_a_file_where_a_folder_should_be_leaves_everything_as_it_was(run, where):
    Path("content").mkdir()
    Path("content", where).write_text("mine", "utf-8")
    said = run(*NEW, code=2)
    assert "nothing was written" in said.casefold()
    assert all_files(Path("content")) == {where: b"mine"}


def test_a_disk_that_fails_half_way_leaves_everything_as_it_was(tmp_path, monkeypatch):
    """New files and folders go again, and the file that was changed has its old words."""
    content = build(tmp_path / "content")
    before = all_files(content)
    real = Path.open

    def failing(path, *how, **more):
        if path.name == "two.txt":
            raise OSError(28, "No space left on device", str(path))
        return real(path, *how, **more)

    monkeypatch.setattr(Path, "open", failing)
    new = {"deep/in/one.txt": b"1", "deep/in/two.txt": b"2"}
    with pytest.raises(OSError, match="No space left"):
        written_together(content, new, {SERIES: b"changed"})
    monkeypatch.undo()
    assert all_files(content) == before


def test_a_series_file_that_cannot_be_changed_takes_the_new_pattern_back(tmp_path, monkeypatch):
    content = build(tmp_path / "content")
    before = all_files(content)

    real = os.replace

    def failing(source, target):
        if Path(target).name == "series.yaml":
            raise OSError(30, "Read-only file system", str(target))
        real(source, target)

    monkeypatch.setattr("packetgen.write.together.os.replace", failing)
    with pytest.raises(OSError, match="Read-only"):
        written_together(content, {"deep/one.txt": b"1"}, {SERIES: b"changed"})
    assert all_files(content) == before


# --- titles and names ------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("title", "folder"),
    [
        ("Bean Poles", "bean-poles"),
        ("Crème brûlée d'été", "creme-brulee-dete"),
        ("Æbler, Øl & Łąka", "aebler-ol-laka"),
        ("Straße im Mai", "strasse-im-mai"),
        ("1912", "1912"),
        ("  ...  Beans!!", "beans"),
        ("CON", "con-1"),
        ("Lpt3", "lpt3-1"),
        ("../../etc/beans", "etc-beans"),
        ("Ｂｅａｎｓ", "beans"),
        ("Rosa и Роза", "rosa"),
        ("שדה", ""),
        ("Роза 2", ""),
        ("花", ""),
        ("!!!", ""),
        (f"{'bean ' * 20}", "-".join(["bean"] * 12)),
        ("b" * 90, "b" * LONGEST_ID),
    ],
)
def test_a_folder_is_called_after_the_title(title, folder):
    assert folder_name(title) == folder


@given(st.text(max_size=120))
@settings(max_examples=300, deadline=None)
def test_a_name_made_from_any_title_is_one_that_every_machine_takes(title):
    name = folder_name(title)
    assert not name or why_not(name) == ""


def test_a_title_without_latin_letters_needs_a_name_for_its_folder(run, asked):
    face = Path("two.ttf")
    face.write_bytes(two_letter_face().data)
    words = ("--series", "אב", "--designer", "Wren", "--pattern", "בא", "--face", "two.ttf")
    asked("con", "field", "", "garden", "", "", "", words=words)
    (series,) = found_in(Path("content")).series
    assert (series.id, series.title) == ("field", "אב")
    assert [(one.id, one.title) for one in series.patterns] == [("garden", "בא")]
    assert faults(Path("content")) == []


def test_where_nobody_can_be_asked_an_option_gives_the_folders_name(run):
    Path("two.ttf").write_bytes(two_letter_face().data)
    words = ("--series", "אב", "--designer", "Wren", "--pattern", "בא", "--face", "two.ttf")
    assert "--series-folder" in run(*words, code=2)
    assert "--pattern-folder" in run(*words, "--series-folder", "field", code=2)
    said = run(*words, "--series-folder", "nul", "--pattern-folder", "garden", code=2)
    assert "some machines keep the name 'nul' for themselves" in " ".join(said.split())
    run(*words, "--series-folder", "field", "--pattern-folder", "garden")
    assert faults(Path("content")) == []


def test_letters_that_no_face_has_are_told_at_once(run):
    said = run("--series", "אב", *NEW[2:], "--series-folder", "field", code=2)
    assert "the type of the packet has no א ב" in said and "--face" in said
    assert not Path("content").exists()


@pytest.mark.parametrize(
    ("name", "data", "told"),
    [
        ("face.txt", b"x", "face.txt"),
        ("face.ttf", b"no font", "'face.ttf' cannot be"),
        ("face.ttf", bytes(5_000_001), "larger than 5 MB"),
    ],
)
def test_a_face_that_is_none_is_told(run, name, data, told):
    Path(name).write_bytes(data)
    assert told in run(*NEW, "--face", name, code=2)
    assert not Path("content").exists()


@pytest.mark.parametrize(
    "title",
    [
        'A "quoted" title: with a colon # and a sign',
        "no",
        "~",
        "{beans}",
        "- beans",
        "Beans \\ Peas",
        "'Beans'",
        "“Beans”",
        "Crème brûlée, 100 % {{ 1 + 1 }}",
        "{% raw %} <b>Beans</b> &amp;",
        "2027-01-01",
        "!important *beans* &peas",
    ],
)
def test_any_title_and_name_stands_in_the_files_as_it_was_given(run, title):
    words = ("--series", title, "--designer", title, "--pattern", title, "--threads", title)
    folders = ("--series-folder", "a", "--pattern-folder", "b")
    run(*words, *folders)
    assert faults(Path("content")) == []
    (series,) = found_in(Path("content")).series
    assert series.title == series.designers[0].name == series.patterns[0].title == title
    assert series.thread_sets[0].card.name == title


@pytest.mark.parametrize("name", ["strands", "stitch", "symbol", "花糸"])
def test_a_thread_may_be_called_like_a_word_of_the_key(name, tmp_path):
    """The words of a key line cannot be names of thread sets, and no file's name is made from other scripts."""
    series = NewSeries("path", "Path", "2027-05-01 00:00 UTC", "Wren", name)
    files = series_files(series, NewPattern("beans", "Beans", 20, 20, "2027-01-01"))
    folder = written(tmp_path, files)
    said = {one.code for one in proof(folder).problems.errors}
    assert said == ({"letters-missing"} if name == "花糸" else set())


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        ("", "has no value"),
        ("x" * 101, "shorten it to 100"),
        ("Beans\nPeas", "write it on one line"),
        ("Beans\u202egnp", "a mark that turns the direction of writing"),
        ("Beans\x07", "a control character"),
        ("Beans\u200b", "a zero-width space"),
    ],
)
def test_an_answer_is_checked_in_the_words_of_a_proof(answer, told):
    assert told in what_is_wrong("the pattern's title", answer)


# --- the example design ----------------------------------------------------------------------------


@pytest.mark.parametrize("wide", [LEAST, 14, 20, 21, 47, MOST])
@pytest.mark.parametrize("high", [LEAST, 20, 33, MOST])
@pytest.mark.parametrize("colours", [1, 2, 3, 4])
def test_the_example_uses_every_mark_and_has_the_size_that_was_asked_for(wide, high, colours):
    drawn = sprig(wide, high, MARKS[:colours])
    assert len(drawn.rows) == high and {len(row) for row in drawn.rows} == {wide}
    assert set("".join(drawn.rows)) == {".", *MARKS[:colours]}
    inside = drawn.rows[2:-1]
    assert {row[1:4] for row in inside} == {"..."}


@pytest.mark.parametrize("colours", [1, 2, 3])
def test_a_card_of_few_colours_is_enough(tmp_path, colours):
    """A series may be charted for a thread that comes in one colour."""
    card = TINY["threads/moss.yaml"].split("\n")
    card = "\n".join(card[: 8 + colours]) + "\n"
    content = build(tmp_path, {"threads/moss.yaml": card, **only_marks(colours)})
    found = found_in(content)
    assert found.series, [str(one) for one in found.problems]
    new = {
        path: text.encode()
        for path, text in pattern_files("series/garden-year", FERNS, around(found)).items()
    }
    assert not proof(content, None, new | in_order(content)).problems.errors


FERNS = NewPattern("ferns", "Ferns", 20, 20, "2027-01-01")


def only_marks(colours: int) -> dict[str, str]:
    """The tiny pattern in so many marks of one thread set."""
    numbers = (("r", "E2"), ("k", "K4"), ("b", '"07"'))[:colours]
    key = "".join(f"  {mark}: {{moss: {number}}}\n" for mark, number in numbers)
    start, end = (
        TINY[PATTERN].split("key:\n")[0],
        "revisions:\n  - {date: 2026-11-25, note: First.}\n",
    )
    series = TINY[SERIES].replace("  - {name: spool, card: spool, strands: 1}\n", "")
    return {
        PATTERN: start.replace("[moss, spool]", "[moss]") + "key:\n" + key + end,
        f"{FERN}/chart.txt": "".join(mark for mark, _ in numbers) + "\n",
        SERIES: series,
    }


def around(found) -> Around:
    from packetgen.starting.around import around_in

    (series,) = found.series
    return around_in(series, series.designers[0], found.beads)


def in_order(content: Path) -> dict[str, bytes]:
    return {SERIES: entered((content / SERIES).read_bytes(), SERIES, "fern", "ferns")}


# --- what the remarks say --------------------------------------------------------------------------


def written(folder: Path, files: dict[str, str]) -> Path:
    for path, text in files.items():
        file = folder / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_text(text, "utf-8")
    return folder


def begun() -> dict[str, str]:
    """A new series as it is written."""
    series = NewSeries("path", "Path", "2027-05-01 00:00 UTC", "Wren Alder", "My Cotton")
    return dict(series_files(series, NewPattern("beans", "Beans", 24, 24, "2027-01-01")))


def begun_in(content: Path) -> dict[str, str]:
    """A new pattern as it is written into the demo series or the tiny one."""
    found = found_in(content)
    path = f"series/{found.series[0].id}"
    return dict(pattern_files(path, FERNS, around(found)))


@dataclass(frozen=True)
class Example:
    """Lines of a file that count when their '#' is taken away, and the remark above them."""

    path: str
    first: int  # of its lines, from 0
    last: int
    remark: str
    text: str  # of the file once they count

    @property
    def name(self) -> str:
        line = self.text.split("\n")[self.first]
        return f"{self.path.rpartition('/')[2]}:{line.strip()[:40]}"


_LINE = re.compile(r"#(?! \S|$)")
_INSTEAD = re.compile(r"Instead of ([a-z_]+(?:, [a-z_]+)*(?: and [a-z_]+)?)[,:. ]")


def examples(path: str, text: str) -> Iterator[Example]:
    """Every example of a file, each by itself; what the remark says that it stands for is taken out."""
    lines = text.split("\n")
    number = 0
    while number < len(lines):
        if not _LINE.match(lines[number]):
            number += 1
            continue
        first = number
        while _LINE.match(lines[number]):
            number += 1
        above = first
        while re.match(r" *# \S", lines[above - 1]):
            above -= 1
        remark = " ".join(line.strip(" #") for line in lines[above:first])
        instead = _INSTEAD.search(remark)
        gone = re.split(r", | and ", instead[1]) if instead else []
        near = [
            at
            for at, line in enumerate(lines)
            for name in gone
            if re.match(rf" *{name}:", line) and is_nearest(lines, at, name, first)
        ]
        kept = [line for at, line in enumerate(lines[:first]) if at not in near]
        live = [line[1:] for line in lines[first:number]]
        yield Example(
            path,
            len(kept),
            len(kept) + number - first,
            remark,
            "\n".join([*kept, *live, *lines[number:]]),
        )


def is_nearest(lines: list[str], at: int, name: str, before: int) -> bool:
    """Of several lines of that name the last one above the example."""
    return at < before and not any(re.match(rf" *{name}:", line) for line in lines[at + 1 : before])


def meets_its_needs(example: Example, files: dict[str, str | bytes]) -> dict[str, str | bytes]:
    """The files with what the remark asks for besides; only a remark that says 'Needs' asks for something."""
    files = {**files, example.path: example.text}
    if "Needs" not in example.remark:
        return files
    name = example.text.split("\n")[example.first].strip().partition(":")[0]
    if name == "braid":
        files[example.path] = example.text.replace("strands: 6", "strands: 1")
        files["series/path/series.yaml"] = str(files["series/path/series.yaml"]).replace(
            "strands: 2", "strands: 1"
        )
    elif name == "look":
        for face in re.findall(r"\w+\.ttf", example.text):
            files[f"series/path/{face}"] = font()
    elif name == "matched":
        files[example.path] = example.text.replace("[my-cotton]", "[my-cotton, other]")
        other = "  - {name: other, card: my-cotton, strands: 1}\n"
        files["series/path/series.yaml"] = str(files["series/path/series.yaml"]).replace(
            "thread_sets:\n", f"thread_sets:\n{other}"
        )
    else:
        raise AssertionError(f"nobody knows what this needs: {example}")
    return files


BEGUN = begun()
EXAMPLES = [
    one for path, text in BEGUN.items() if path.endswith(".yaml") for one in examples(path, text)
]


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda one: one.name)
def test_each_example_in_the_remarks_counts_when_its_sign_is_taken_away(example, tmp_path):
    files = meets_its_needs(example, BEGUN)
    for path, data in files.items():
        file = tmp_path / path
        file.parent.mkdir(parents=True, exist_ok=True)
        file.write_bytes(data if isinstance(data, bytes) else data.encode())
    assert faults(tmp_path) == []


@pytest.mark.parametrize("which", ["demo", "tiny"])
def test_so_do_the_examples_of_a_pattern_in_a_series(which, tmp_path):
    content = CONTENT if which == "demo" else build(tmp_path / "content")
    files = begun_in(content)
    path = next(path for path in files if path.endswith("pattern.yaml"))
    found = list(examples(path, files[path]))
    assert len(found) >= 16
    series = f"{path.rpartition('/')[0].rpartition('/')[0]}/series.yaml"
    last = found_in(content).series[0].patterns[-1].id
    order = {series: entered((content / series).read_bytes(), series, last, "ferns")}
    for example in found:
        assert "Needs" not in example.remark, example.name
        new = {name: text.encode() for name, text in {**files, path: example.text}.items()}
        only = frozenset({series.split("/")[1]})
        said = [str(one) for one in proof(content, only, new | order).problems.errors]
        assert said == [], example.name


def paths_in(kind: Kind, node: Node, before: str) -> Iterator[str]:
    """Paths of the fields that a file gives, written as the reference writes them."""
    if isinstance(kind, TextOr):
        kind = kind.group if isinstance(node, GroupNode) else kind.text
    if isinstance(kind, ListOf):
        items = node.items if isinstance(node, ListNode) else (node,)
        for item in items:
            yield from paths_in(kind.kind, item, f"{before}[]")
    elif isinstance(kind, MapOf) and isinstance(node, GroupNode):
        for _, value in node.entries:
            yield from paths_in(kind.kind, value, f"{before}.<name>")
    elif isinstance(kind, Group) and isinstance(node, GroupNode):
        fields = {field.name: field for field in kind.fields}
        for key, value in node.entries:
            field = fields.get(key.value) or kind.others
            assert field, key.value
            path = f"{before}.{field.name}" if before else field.name
            yield path
            yield from paths_in(field.kind, value, path)


_SHAPES = [one for one in FILES if "symbols" not in one.path]


@pytest.mark.parametrize("file", _SHAPES, ids=lambda one: one.path)
def test_the_files_show_every_field_that_there_is(file: FileShape):
    """As it counts, or in an example."""
    form = re.compile(re.sub(r"<\w+>", "[^/]+", file.path))
    texts = [text for path, text in BEGUN.items() if form.fullmatch(path)]
    texts += [one.text for one in EXAMPLES if form.fullmatch(one.path)]
    shown = set()
    for text in texts:
        problems = Problems()
        node = read_nodes(text, file.path, problems)
        assert node is not None and not problems.errors
        shown.update(paths_in(file.shape, node, ""))
    assert {entry.path for entry in entries(file)} - shown == set()


def test_every_live_field_at_the_left_edge_has_a_remark_above_it():
    for path, text in BEGUN.items():
        lines = text.split("\n")
        if not path.endswith(".yaml") or path.endswith("evenweave-28.yaml"):
            continue
        for at, line in enumerate(lines):
            if re.match(r"[a-z_]+:", line) and line != "french_knots:" and lines[at - 1] != "":
                assert lines[at - 1].startswith("#"), f"{path}: {line}"
            elif re.match(r"[a-z_]+:", line) and line != "french_knots:":
                raise AssertionError(f"{path}: {line} has no remark")


# Words that an author may keep as they stand, and which are offered for that.
_MAY_STAY = {
    "Harvest",
    "Anyone of full age",
    "First issue.",
    "the photograph is not taken yet",
    "photograph",
}
_MAY_STAY |= {"the green is for the pieces to come", "green"}
_NO_WORDS = re.compile(
    r"[\w-]+\.(ttf|txt)|\d+|[lfbs.\n]+"
)  # files, numbers of colours, rows of marks


def own_words_in(kind: Kind, node: Node, name: str) -> Iterator[tuple[str, Node]]:
    """The texts and addresses that a file gives, with the names of their fields; no words that choose."""
    if isinstance(kind, TextOr):
        kind = kind.group if isinstance(node, GroupNode) else kind.text
    if isinstance(kind, ListOf):
        for item in node.items if isinstance(node, ListNode) else (node,):
            yield from own_words_in(kind.kind, item, name)
    elif isinstance(kind, MapOf) and isinstance(node, GroupNode):
        for key, value in node.entries:
            yield from own_words_in(kind.kind, value, key.value)
    elif isinstance(kind, Group) and isinstance(node, GroupNode):
        fields = {field.name: field for field in kind.fields}
        for key, value in node.entries:
            yield from own_words_in((fields.get(key.value) or kind.others).kind, value, key.value)
    elif type(kind) in (Text, WebAddress) and isinstance(node, TextNode):
        yield name, node


@pytest.mark.parametrize("example", EXAMPLES, ids=lambda one: one.name)
def test_what_a_remark_offers_and_nobody_could_mean_is_told_as_an_example(example):
    """Names, addresses, titles and texts, once the sign before them is taken away."""
    (file,) = (
        one for one in FILES if re.fullmatch(re.sub(r"<\w+>", "[^/]+", one.path), example.path)
    )
    node = read_nodes(example.text, example.path, Problems())
    told = {left.place for left in examples_in(node)}
    for name, value in own_words_in(file.shape, node, ""):
        kept = value.value in _MAY_STAY or _NO_WORDS.fullmatch(value.value)
        if example.first < value.place.line <= example.last and not kept:
            assert value.place in told, f"{name}: {value.value}"


def test_the_line_that_is_handed_out_for_a_counter_is_told_as_an_example():
    name, url = (
        re.search(r"name: ([^}]+)\}", FAULTS["not-sold"].right)[1],
        "https://example.org/counter",
    )
    assert is_example("name", name) and is_example("url", url)


def test_an_address_at_the_host_of_the_examples_is_one_however_its_rest_was_changed():
    """RFC 2606: nobody can have example.org."""
    for address in ("https://trellis.example.org/", "https://example.org/yard-door"):
        assert all(is_example(field, address) for field in ("url", "shop", "address"))
    for address in ("https://counterexample.org/", "https://fern.example/", "https://[1", "a"):
        assert not is_example("url", address)
    assert not is_example("about", "https://example.org/yard-door")


def test_examples_of_one_group_are_told_together():
    text = (
        "title: One piece\ncredits: {dyer: Maud Fennimore, finisher: Maud Fennimore}\n"
        "photo_alt: Three stitches in a plain brown frame.\n"
        "sold_at:\n  - {name: Name of the shop, url: https://wren.example/}\n"
        "links:\n  - {name: Her garden notes}\n  - {name: Her garden notes}\nstudio: Example Studio\n"
    )
    problems = Problems()
    complain_of_examples(read_nodes(text, "a.yaml", Problems()), problems)
    (line,) = map(str, problems)
    assert line == (
        "a.yaml:1:8: advice: 'title', 2 values in 'credits' (line 2), 'photo_alt' (line 3), 'name' in 'sold_at' "
        "(line 5) and 3 more (from line 7) are still the examples that begin wrote; put your own in their "
        "place, or take them out"
    )


def test_the_thread_card_says_that_its_colours_are_examples():
    card = BEGUN["threads/my-cotton.yaml"]
    assert "# EXAMPLE: the colours at its end. They are made up" in card.split("name:")[0]


def test_who_is_thanked_in_an_example_is_told_wherever_an_author_may_copy_it_from():
    pattern = next(text for path, text in BEGUN.items() if path.endswith("pattern.yaml"))
    problems = Problems()
    complain_of_series(
        stitching.series(stitching.pattern("mm", model_stitcher="", finisher="")), problems
    )
    (line,) = (one.right for one in problems if one.code == "credit-missing")
    for example in (pattern, line, *EXAMPLES_OF_CREDITS):
        assert EXAMPLE_PERSON in example


def test_the_templates_of_the_files_are_all_used():
    names = {name for name in environment().list_templates() if name.startswith("begin/")}
    assert len(names) == len(BEGUN)


# --- a real terminal -------------------------------------------------------------------------------


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="opens a terminal as POSIX has them")
def test_on_a_real_terminal_it_asks(tmp_path):
    import pty

    child, terminal = pty.fork()
    if child == 0:  # pragma: no cover
        os.chdir(tmp_path)
        environment = os.environ | {"TMPDIR": str(tmp_path)}
        os.execve(sys.executable, [sys.executable, "-m", "packetgen", "begin"], environment)
    os.write(terminal, b"Along the Path\nWren Alder\n\nBean Poles\n\n20\n20\ny\n")
    said = b""
    while True:
        try:
            said += (read := os.read(terminal, 4096))
        except OSError:  # the other end is closed
            break
        if not read:
            break
    code = os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])
    assert code == 0, "\n".join([said.decode(), *map(Path.read_text, tmp_path.glob("*.txt"))])
    assert b"The title of your series [Along the Garden Path]: " in said
    assert faults(tmp_path / "content") == []


@pytest.mark.parametrize(
    ("release", "told"),
    [
        ("30 February 2027", "there is no day '30 February 2027'; February 2027 has 28 days"),
        ("2027-02-30", "there is no day '2027-02-30'; February 2027 has 28 days"),
        ("2027-05-01 25:00 UTC", "there is no time '25:00' on that day; hours go from 00 to 23"),
    ],
)
def test_a_release_on_no_day_is_told_by_the_calendar(run, release, told):
    assert told in " ".join(run(*NEW, "--release", release, code=2).split())
    assert not Path("content").exists()


def test_a_remark_of_the_example_becomes_the_name_that_its_number_has_now(run, tmp_path):
    """Her own card took the example's place before her drawing did."""
    run("--yes")
    begun = next(tmp_path.glob("content/series/*/*/pattern.yaml"))
    (card,) = tmp_path.glob("content/threads/*.yaml")
    card.write_text(card.read_text().replace("example ripe currant", "brick"))
    (line,) = (one for one in begun.read_text().split("\n") if "# example ripe currant" in one)
    (tmp_path / "design.txt").write_text("# b  04 brick\nbb\nbb\n")
    run("design.txt", "--pattern", begun.parent.name, "--replace", command="bring")
    assert line.replace("example ripe currant", "brick") in begun.read_text().split("\n")
