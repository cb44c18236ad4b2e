"""`packetgen proof` as an editor's report: on the terminal, and as a page that is the author's own."""

import re
from html.parser import HTMLParser
from pathlib import Path

import pytest
from click.testing import CliRunner

from packetgen.cli import main
from packetgen.diagnostics import Place, Problems
from packetgen.pipeline import proof, review
from packetgen.reckon.review import SHARED, folder_of, review_of
from packetgen.render.proof_report import Tone, lines_of
from packetgen.render.terminal import Depth
from tests.content_builder import CHART, FERN, FINISH, MOSS, PATTERN, SERIES, TINY, build, picture
from tests.test_builds import IVY, TWO
from tests.test_loading import loaded
from tests.wrong_input_review import CALM

# The tiny folder, of which nothing is left to say.
PHOTO = f"{FERN}/photo.jpg"
WELL = CALM | {
    PATTERN: TINY[PATTERN]
    .replace("credits: {", "photo_alt: A fern on a shelf.\ncredits: {finisher: Hazel Penn, ")
    .replace('[E2, "07"], spool: ["10", "14"]', '"07", spool: "14"'),
    FINISH: TINY[FINISH].replace("pairs: 4", "pairs: 0").replace("small magnets, ", ""),
    PHOTO: picture([["#a04030"] * 1000] * 600, "JPEG"),
}

ONE_TO_MEND = "1 thing to mend. More advice may come when that is done."


def run(*words: object, code: int = 0):
    done = CliRunner().invoke(main, ["proof", *map(str, words)])
    assert done.exit_code == code, done.output
    return done


@pytest.fixture
def content(tmp_path) -> Path:
    return build(tmp_path / "content", CALM)


# --- the order of things ----------------------------------------------------------------------------


def test_files_belong_to_their_pattern_their_series_or_to_all():
    assert folder_of(CHART) == folder_of(f"{FERN}/story.md") == FERN
    assert folder_of(SERIES) == folder_of("series/garden-year/welcome.md") == "series/garden-year"
    assert folder_of(MOSS) == folder_of("finishes/shelf/finish.yaml") == folder_of("content") == ""


def test_patterns_come_before_their_series_and_what_all_share_comes_first():
    """Also where nothing could be read, so that folders' names are all that is known, or a line with a title."""
    problems = Problems()
    for path in (
        MOSS,
        SERIES,
        "series/garden-year/ivy/pattern.yaml",
        CHART,
        "series/attic/a/x.txt",
    ):
        problems.add(Place(path), "file-empty")
    titles = [chapter.title for chapter in review_of((), problems, {}, {FERN: "A Fern"}).chapters]
    assert titles == [
        SHARED,
        "series/attic/a",
        "A Fern",
        "series/garden-year/ivy",
        "series/garden-year",
    ]


def test_what_all_share_comes_last_where_only_examples_are_left_in_it():
    problems = Problems()
    problems.add(Place(MOSS), "example-left", what="'name'", are="is", it="it", its="its")
    problems.add(Place(SERIES), "file-empty")
    titles = [chapter.title for chapter in review_of((), problems, {}, {}).chapters]
    assert titles == ["series/garden-year", SHARED]


def test_of_a_chapter_faults_come_first_then_advice_then_praise(tmp_path):
    """A design that does not fit, whose title stands twice: reckoned all the same."""
    small = TINY[FINISH].replace("0,0 100,0 100,100 0,100", "0,0 8,0 8,8 0,8")
    changes = {
        FINISH: small.replace("border: 6 mm", "border: 1 mm")
        .replace("pairs: 4", "pairs: 0")
        .replace("small magnets, ", "")
    }
    found = review(proof(build(tmp_path / "content", changes)))
    tones = [line.tone for line in lines_of(found, "content", False)]
    first = tones[: tones.index(Tone.PLAIN)]
    order = [Tone.HEADING, Tone.FAULT, Tone.ADVICE, Tone.PRAISE]
    assert list(dict.fromkeys(first)) == order
    assert first == sorted(first, key=order.index)


# --- on the terminal --------------------------------------------------------------------------------


def test_every_problem_is_one_whole_line_below_the_pattern_that_it_is_about(content):
    """All that a proof finds is its output; the other one is for what keeps it from looking."""
    done = run("--content", content)
    assert done.stderr == ""
    told = [line for line in done.stdout.splitlines() if line.startswith(f"{content}/")]
    assert told
    for line in told:
        assert re.fullmatch(rf"{content}/[^:]+:\d+:\d+: advice: \S.*; \S.* \[[a-z-]+\]", line)
    assert done.stdout.count("advice: ") == len(told)


def test_a_content_folder_that_is_not_there_is_told_in_one_line_without_a_chapter(
    tmp_path, monkeypatch
):
    monkeypatch.chdir(tmp_path)
    done = run(code=1)
    told, ended = done.stdout.splitlines()
    assert told.startswith("content/:1:1: there is no such folder; ")
    assert ended == "1 thing to mend."  # of a folder that is not there, no more is known


def test_praise_is_told_in_few_lines_that_stand_below_one_another(content):
    lines = run("--content", content).stdout.splitlines()
    at = next(number for number, line in enumerate(lines) if line.startswith("  good: "))
    assert "picture in your own words" not in " ".join(lines)
    block = [lines[at], *(line for line in lines[at + 1 :] if line.startswith(" " * 8))]
    assert max(map(len, block)) <= 88


def test_the_last_line_counts_what_was_found(content):
    done = run("--content", content)
    advice = done.stdout.count(": advice: ")
    last = done.stdout.splitlines()[-1]
    assert re.fullmatch(
        rf"No fault: 1 pattern checked; {advice} pieces of advice, \d+ well done\. "
        r"Under --strict advice counts as faults\.",
        last,
    )


def test_colour_comes_only_where_a_terminal_shows_some(content):
    assert "\x1b" not in run("--content", content).output
    lines = list(lines_of(review(proof(content)), "content", False))
    assert all("\x1b" not in line.shown(Depth.NONE) for line in lines)
    coloured = {line.tone for line in lines if line.shown(Depth.EVERY) != line.text}
    assert coloured == {Tone.HEADING, Tone.ADVICE, Tone.PRAISE}


def test_two_patterns_of_one_title_as_of_a_copied_folder_are_told_apart_by_their_folders(tmp_path):
    content = build(tmp_path / "content", CALM | TWO | {f"{IVY}/pattern.yaml": TINY[PATTERN]})
    lines = run("--content", content, code=1).stdout.splitlines()
    headings = [line.partition(",")[0] for line in lines if re.search(r" stands? alone", line)]
    assert headings == ["Fern by the Tap (fern)", "Fern by the Tap (ivy)"]


# --- of one pattern ---------------------------------------------------------------------------------


def test_with_a_name_only_what_is_about_it_is_shown_and_all_is_counted(tmp_path):
    content = build(tmp_path / "content", CALM | TWO)
    whole = run("--content", content).stdout
    lines = run("--content", content, "ivy").stdout.splitlines()
    assert any(line.startswith(f"{content}/series/garden-year/ivy/") for line in lines)
    assert not any(f"/{FERN}/" in line for line in lines)
    shown, of_all = (text.count(": advice: ") for text in ("\n".join(lines), whole))
    assert 0 < shown < of_all
    assert lines[-2] == f"In all, n{whole.splitlines()[-1].removeprefix('N')}"
    assert lines[-1].startswith(f"{of_all - shown} pieces of advice elsewhere")
    assert run("--content", content, "garden-year").stdout == whole


@pytest.mark.parametrize(
    ("path", "name"),
    [
        ("", "garden-year"),
        ("series.yaml", "garden-year"),
        ("ivy/", "ivy"),
        ("ivy/pattern.yaml", "ivy"),
    ],
)
def test_the_path_of_a_folder_or_its_file_serves_as_its_name(tmp_path, path, name):
    """As Tab writes it."""
    content = build(tmp_path / "content", CALM | TWO)
    told = run("--content", content, f"{content}/series/garden-year/{path}").stdout
    assert told == run("--content", content, name).stdout


def test_a_name_that_there_is_not_is_told_with_the_nearest(tmp_path):
    content = build(tmp_path / "content", CALM)
    for name in ("fren", "Fern"):
        told = run("--content", content, name, code=2).stderr
        assert f"there is no pattern or series called {name!r}; did you mean 'fern'?" in told
    told = run("--content", content, "year", code=2).stderr
    assert "did you mean 'garden-year'?" in told
    told = " ".join(run("--content", content, str(content), code=2).stderr.split())
    assert told.endswith(f"is a folder; write --content {content} for what is in it")


def test_faults_elsewhere_are_shown_too_and_it_is_said_that_the_pattern_has_none(tmp_path):
    content = build(tmp_path / "content", CALM | TWO)
    (content / CHART).write_text("rrbb\nr?..\n")
    *lines, last = run("--content", content, "ivy", code=1).stdout.splitlines()
    assert sum("not in the key" in line for line in lines) == 1
    assert (
        last == "1 thing to mend, and nothing of it in ivy. More advice may come when that is done."
    )
    assert run("--content", content, "fern", code=1).stdout.endswith(f"\n{ONE_TO_MEND}\n")
    assert "there is no pattern" in run("--content", content, "ivi", code=2).stderr


def test_beside_a_fault_of_one_pattern_no_more_than_that_is_told_of_others(tmp_path):
    """Two patterns of one title: both are reckoned, and only one of them is asked for."""
    content = build(tmp_path / "content", CALM | TWO)
    ivy = content / IVY / "pattern.yaml"
    ivy.write_text(ivy.read_text().replace("Ivy on the Wall", "Fern by the Tap"))
    whole = run("--content", content, code=1).stdout
    told = run("--content", content, "fern", code=1).stdout
    assert f"{content}/{FERN}/" in told or "stands alone" in told
    faults = [line for line in whole.splitlines() if line.endswith("[title-twice]")]
    assert faults and all(line in told for line in faults)
    assert [line for line in told.splitlines() if "/ivy/" in line and ": advice: " in line] == []


def test_one_or_two_stitches_that_stand_alone_are_told_with_their_places(tmp_path):
    """A single one of a colour may be a slip of the pen; of many it is the design."""
    rows = ["kk....kk"] * 3 + ["k" * 8] * 6  # bare below the close-up
    rows[6] = "kkkrkkkk"
    content = build(tmp_path / "content", CALM | {CHART: "\n".join(rows) + "\n"})
    told = run("--content", content, code=1).stdout
    assert "stands alone: column 4, row 7\n" in told, told


def test_of_a_pattern_that_is_not_in_the_order_it_is_told_that_it_is_left_out(tmp_path):
    content = build(tmp_path / "content", CALM | TWO | {SERIES: TINY[SERIES]})
    told = run("--content", content, "ivy").stdout
    assert "the folder 'ivy' is not in the series' order, so it is left out" in told
    assert "the folder 'ivy'" not in run("--content", content, "fern").stdout


# --- for a release ----------------------------------------------------------------------------------


def test_strict_lets_no_advice_pass_and_says_how_much_there_is(content):
    advice = run("--content", content).stdout.count(": advice: ")
    done = run("--content", content, "--strict", code=1)
    assert done.stdout.splitlines()[-1].startswith(
        f"--strict: {advice} pieces of advice to act on. What shall stay as it is, lay aside"
    )


_BEGUN = ("begin", "--series", "A Year of Pots", "--designer", "Fern Lid", "--pattern", "A Pot")


def test_strict_says_that_more_may_come_while_something_is_an_example(tmp_path):
    """Whether an entry lays nothing aside is told only then."""
    folder = tmp_path / "content"
    begun = CliRunner().invoke(main, [*_BEGUN, "--content", str(folder)])
    assert begun.exit_code == 0, begun.output
    done = run("--content", folder, "--strict", code=1)
    assert " to act on. More may come when nothing is left of an example. What" in done.stdout
    assert (
        "More may come" not in run("--content", build(tmp_path / "own"), "--strict", code=1).stdout
    )


def test_strict_passes_what_nothing_is_said_of(tmp_path):
    done = run("--content", build(tmp_path / "content", WELL), "--strict")
    assert done.stderr == "" and "no advice" in done.stdout


def test_strict_leaves_a_fault_what_it_is(content):
    (content / CHART).write_text("rrbb\nr?..\n")
    assert "1 thing to mend" in run("--content", content, "--strict", code=1).stdout


# --- the page ---------------------------------------------------------------------------------------


class Page(HTMLParser):
    """What a page shows, and every address that it would fetch."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.fetched: list[str] = re.findall(r"url\(\"?([^)\"]*)", text)
        self.pictures: list[dict[str, str | None]] = []
        self.headings: list[str] = []
        self.words = ""
        self._in: list[str] = []
        self.feed(text)

    def handle_starttag(self, tag, attrs):
        named = dict(attrs)
        self.fetched += [
            named[name] for name in ("src", "srcset", "data", "action") if named.get(name)
        ]
        if tag == "link":
            self.fetched.append(named["href"])
        if tag == "img":
            self.pictures.append(named)
        assert tag != "script"
        self._in.append(tag)

    def handle_endtag(self, tag):
        while self._in and self._in.pop() != tag:
            pass

    def handle_data(self, data):
        if self._in and self._in[-1] in ("h2", "h3"):
            self.headings.append(data)
        if "style" not in self._in:
            self.words += data


def page(content: Path, into: Path, code: int = 0) -> Page:
    run("--content", content, "--report", into, code=code)
    return Page(into.read_text(encoding="utf-8"))


def test_the_page_holds_everything_itself_and_says_that_it_is_not_for_publishing(content, tmp_path):
    shown = page(content, tmp_path / "out" / "proof.html")
    assert shown.fetched and all(address.startswith("data:") for address in shown.fetched)
    assert "Not for publishing." in shown.words
    assert 'content="noindex"' in (tmp_path / "out" / "proof.html").read_text()


def test_each_pattern_has_its_picture_and_its_advice_before_its_praise(content, tmp_path):
    shown = page(content, tmp_path / "proof.html")
    assert [one["alt"] for one in shown.pictures] == ["Fern by the Tap, stitched"]
    assert shown.headings == [
        "Fern by the Tap", "Advice: to think of", "Praise: what is well done",
        "The Garden Year", "Praise: what is well done",
    ]  # fmt: skip


def test_what_the_terminal_tells_stands_on_the_page_with_its_place_and_its_cause(content, tmp_path):
    shown = " ".join(page(content, tmp_path / "proof.html").words.split())
    for chapter in review(proof(content)).chapters:
        for problem in chapter.problems:
            assert f"{content}/{problem.place}" in shown and problem.wrong[1:] in shown
        for praise in chapter.praise:
            assert praise.words in shown
    assert "Who does not see the picture hears a text, and none is given." in shown


def test_faults_are_on_the_page_too_also_where_nothing_could_be_read(content, tmp_path):
    (content / CHART).write_text("rrbb\nr?..\n")
    shown = page(content, tmp_path / "proof.html", code=1)
    assert shown.headings == ["Fern by the Tap", "Faults: to mend"]
    assert "The mark '?' at column 2, row 2 is not in the key." in shown.words
    done = run("--content", content, "--report", tmp_path / "proof.html", code=1)
    assert done.stdout.splitlines()[-1] == ONE_TO_MEND


def test_words_of_an_author_are_words_on_the_page(tmp_path):
    title = TINY[PATTERN].replace("Fern by the Tap", "'Fern <script>x()</script> & Tap'")
    shown = page(build(tmp_path / "content", {PATTERN: title}), tmp_path / "proof.html")
    assert "Fern <script>x()</script> & Tap" in shown.headings


def test_the_page_is_the_same_every_time(content, tmp_path):
    page(content, tmp_path / "one.html"), page(content, tmp_path / "two.html")
    assert (tmp_path / "one.html").read_bytes() == (tmp_path / "two.html").read_bytes()


@pytest.mark.parametrize(
    "place", ["build/site/proof.html", "build/share/a/proof.html", "build/packets/p.html"]
)
def test_it_is_never_written_where_a_build_is_published_from(content, tmp_path, place):
    done = run("--content", content, "--report", tmp_path / place, code=2)
    assert "would lie in a build, and it shows whole designs" in done.stderr
    assert not (tmp_path / "build").exists()


def test_a_build_of_another_name_is_known_by_its_manifest(content, tmp_path):
    (tmp_path / "out").mkdir()
    (tmp_path / "out" / "manifest.json").write_text("{}")
    run("--content", content, "--report", tmp_path / "out" / "site" / "proof.html", code=2)
    run("--content", content, "--report", tmp_path / "out" / "proof.html")


@pytest.mark.parametrize("name", ["proof.yaml", "proof"])
def test_it_takes_the_place_of_no_other_kind_of_file(content, tmp_path, name):
    (tmp_path / name).write_text("mine")
    assert "ends in .html" in run("--content", content, "--report", tmp_path / name, code=2).stderr
    assert (tmp_path / name).read_text() == "mine"


def test_it_does_not_lie_in_the_content(content):
    assert (
        "lie in the content"
        in run("--content", content, "--report", content / "a.html", code=2).stderr
    )


def test_the_report_needs_no_pdf_engine(content, tmp_path):
    modules = loaded("proof", "--content", content, "--report", tmp_path / "proof.html")
    assert "jinja2" in modules and not modules & {"weasyprint", "pydyf"}
