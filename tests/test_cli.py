"""The command line: what a person types, reads and gets."""

import shutil

import pytest
from click.testing import CliRunner

from packetgen import __version__
from packetgen.cli import main
from tests.content_builder import CHART, CLOTH, FERN, PATTERN, SERIES, TINY, build
from tests.demo_patterns import CONTENT


@pytest.fixture
def run():
    """Runs the command in this process and gives its result; an unexpected error is a failure."""

    def call(*words, code=0):
        result = CliRunner().invoke(main, [str(word) for word in words])
        if result.exception and not isinstance(result.exception, SystemExit):
            raise result.exception
        assert result.exit_code == code, result.output
        return result

    return call


@pytest.fixture
def broken(tmp_path):
    """A copy of the demo in which three files have one fault each."""
    folder = tmp_path / "content"
    shutil.copytree(CONTENT, folder)
    series = folder / "series" / "potting-bench-almanac"

    def change(path, before, after):
        text = path.read_text("utf-8")
        assert text.count(before) == 1, before
        path.write_text(text.replace(before, after), "utf-8")

    change(folder / "threads" / "larkmoss.yaml", "length: 8 m", "length: 8")
    change(series / "series.yaml", "finish: potting-bench", "finish: poting-bench")
    chart = series / "foxglove-can" / "chart.txt"
    rows = chart.read_text("utf-8").splitlines()
    rows[-1] = rows[-1][:-1]
    chart.write_text("\n".join(rows) + "\n", "utf-8")
    return folder


def test_the_first_page_of_help_names_the_commands(run):
    for words in (["--help"], ["-h"]):
        page = run(*words).output
        assert "Pattern packets and preview pages" in page
        for command in ("begin", "bring", "proof", "preview", "build", "kit"):
            assert f"packetgen {command}" in page
    bare = CliRunner().invoke(main, [])
    assert "Six things to type first" in bare.output


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["biuld"], "there is no command 'biuld'; did you mean 'build'?"),
        (["chart", "shwo"], "Did you mean 'show'?"),
        (["build", "--asof", "2027-01-15"], "Did you mean '--as-of'?"),
        (
            ["bring", "--threds", "larkmoss"],
            "No such option '--threds'. Did you mean '--threads'?\n",
        ),
        (["begin", "--title", "Fern"], "did you mean --series TITLE or --pattern TITLE?\n"),
        (
            ["--content", "mine", "proof", "fern", "--alone"],
            "write it behind: packetgen proof fern --content …\n",
        ),
        (
            ["chart", "--content", "mine", "show", "fern"],
            "write it behind: packetgen chart show fern --content …\n",
        ),
        (["--contnt"], "No such option '--contnt'.\n"),
        (["bring", "--cel", "4"], "No such option '--cel'. Did you mean '--cell'?\n"),
        (["proof", "--edition", "largeprint"], "written; did you mean 'large-print'?\n"),
        (["build", "--edition", "moss"], "is not one of colour, black-and-white, large-print, "),
        (["kit", "robin", "--format", "jsn"], "table, csv, json; did you mean 'json'?\n"),
        (["chart", "show", "robin", "--colours", "autp"], "did you mean 'auto'?\n"),
        (["chart", "mirror", "robin", "leftright"], "did you mean 'left-right'?\n"),
        (["chart", "turn", "robin", "45"], "'45' is not one of 90, 180, 270\n"),
        (["build", "--pattern", "fern"], "--pattern; give the name alone: packetgen build NAME\n"),
        (["proof", "--series", "fern"], "--series; give the name alone: packetgen proof NAME\n"),
        (["chart", "show", "--name", "fern"], "give the name alone: packetgen chart show NAME\n"),
        (["preview", "--pattern", "fern"], "packetgen preview takes no name, so leave it out\n"),
        (
            ["bring", "--file", "a.png"],
            "there is no option --file; give the file alone: packetgen bring FILE\n",
        ),
        (["preview", "fern"], "preview shows every pattern and takes no name; leave 'fern' out\n"),
        (
            ["build", "--strict"],
            "--strict is no option of packetgen build; it is one of packetgen proof\n",
        ),
        (
            ["kit", "robin", "--to", "x"],
            "one of packetgen chart border, packetgen chart crop, packetgen chart mirror, …\n",
        ),
        (["--large"], "--large is no option of packetgen; it is one of packetgen chart show\n"),
        (
            ["chart", "fern"],
            "no command packetgen chart fern; to see that pattern write packetgen chart show fern\n",
        ),
        (["mirror", "fern"], "there is no command 'mirror'; write packetgen chart mirror\n"),
        (["xyzzy"], "there is no command 'xyzzy'; known here: begin, bring, "),
        (
            ["chart", "mirror"],
            "say which pattern: packetgen chart mirror NAME left-right|top-bottom",
        ),
        (
            ["chart", "turn", "robin"],
            "say 90 or 180 or 270: packetgen chart turn NAME 90|180|270\n",
        ),
        (["bring"], "say which file: packetgen bring FILE\n"),
        (["match", "moss"], "say to which thread card: packetgen match FROM TO"),
    ],
)
def test_a_misspelt_command_or_option_is_answered_with_the_nearest(run, words, told):
    assert told in run(*words, code=2).stderr


def test_a_command_without_the_name_that_it_needs_tells_which_there_are(run, tmp_path):
    build(tmp_path)
    said = run("chart", "alone", "--content", tmp_path, code=2).stderr
    assert said.endswith("Error: say which pattern: packetgen chart alone NAME; known here: fern\n")
    said = run("match", "--content", tmp_path, code=2).stderr
    assert said.endswith("packetgen match FROM TO; known here: moss, spool\n")
    said = run("match", "moss", "--content", tmp_path, code=2).stderr
    assert said.endswith("packetgen match FROM TO; known here: spool\n")
    (tmp_path / "threads/spool.yaml").unlink()
    said = run("match", "moss", "--content", tmp_path, code=2).stderr
    assert said.endswith("; there is no other yet: write one into " + f"{tmp_path}/threads/\n")


@pytest.mark.parametrize("command", ["begin", "proof", "build", "preview", "settle", "kit"])
def test_every_command_has_a_page_with_examples(run, command):
    page = run(command, "--help").output
    assert "Examples:" in page
    assert f"packetgen {command}" in page


def test_the_version_is_told(run):
    assert run("--version").output.strip() == f"packetgen, version {__version__}"


def test_sound_content_is_called_sound(run):
    said = run("proof", "--content", CONTENT).output
    assert "No fault: 8 patterns checked" in said
    assert "Robin on the Spade, 78 × 84: 31 of 3,210 stitches (1.0 %) stand alone\n" in said


def test_proof_lists_the_ten_worst_places_when_asked(run):
    said = run("proof", "--alone", "--content", CONTENT).output.partition("Robin on the Spade, ")[2]
    places = [line for line in said.splitlines()[1:11] if line.startswith("  columns ")]
    alone = [int(line.rpartition(": ")[2]) for line in places]
    assert len(places) == 10 and alone == sorted(alone, reverse=True) and sum(alone) <= 31


def test_every_fault_is_one_line_with_its_place(run, broken):
    result = run("build", "--content", broken, code=1)
    lines = result.stderr.splitlines()
    places = [line.split(": ")[0] for line in lines[:-1]]
    assert lines[-1] == "3 things to mend; nothing was written."
    assert [place.rpartition(":")[0].rpartition(":")[0] for place in places] == [
        f"{broken}/series/potting-bench-almanac/foxglove-can/chart.txt",
        f"{broken}/series/potting-bench-almanac/series.yaml",
        f"{broken}/threads/larkmoss.yaml",
    ]
    assert all("; " in line for line in lines[:-1])
    assert "did you mean 'potting-bench'?" in result.stderr
    assert "Traceback" not in result.output


def test_nothing_is_written_when_something_is_wrong(run, broken, tmp_path):
    into = tmp_path / "build"
    (into / "site").mkdir(parents=True)
    (into / "site" / "index.html").write_text("the last good one")
    run("build", "--content", broken, "--into", into, code=1)
    assert [p.name for p in sorted(into.rglob("*"))] == ["site", "index.html"]
    assert (into / "site" / "index.html").read_text() == "the last good one"


def test_a_missing_content_folder_is_a_fault_in_the_content(run, tmp_path):
    result = run("proof", "--content", tmp_path / "nothing", code=1)
    assert len(result.stdout.splitlines()) == 2 and result.stderr == ""


@pytest.mark.parametrize(
    ("place", "where", "up", "option"),
    [
        ("", "is itself a content folder", "cd ..", "--content ."),
        (
            "series/garden-year",
            "lies in the content folder '../..'",
            "cd ../../..",
            "--content ../..",
        ),
    ],
)
@pytest.mark.parametrize(
    "words", [("proof",), ("build",), ("begin", "--yes"), ("chart", "count", "fern")]
)
def test_from_inside_of_the_content_the_way_out_is_told(
    run, tmp_path, monkeypatch, words, place, where, up, option
):
    """What is advised otherwise would make or look for a content/content."""
    content = build(tmp_path / "content")
    before = sorted(content.rglob("*"))
    monkeypatch.chdir(content / place)
    told = run(*words, code=2).stderr
    assert f"there is no folder 'content' here, and this folder {where}" in told
    assert up in told and told.endswith(f"add {option}\n")
    assert sorted(content.rglob("*")) == before
    assert "No fault" in run("proof", *option.split()).stdout


def test_a_new_content_folder_may_be_begun_anywhere_where_it_is_named(run, tmp_path, monkeypatch):
    monkeypatch.chdir(build(tmp_path / "content"))
    run("begin", "--yes", "--content", "content")
    assert (tmp_path / "content/content/series").is_dir()


def test_of_a_broken_file_it_is_told_that_its_rest_was_not_looked_at_and_of_others_all(
    run, tmp_path
):
    """A quote that is not closed, with another slip below it; slips in files that it names and that name it."""
    content = build(
        tmp_path / "content",
        {
            PATTERN: TINY[PATTERN]
            .replace("about: A fern", 'about: "A fern')
            .replace("credits:", "thanks:"),
            CHART: "rrbb\nrk.\n",
            SERIES: ("licence:", "licenze:"),
            CLOTH: ("weave: ", "weave: w"),
        },
    )
    lines = run("proof", "--content", content, code=1).stdout.splitlines()
    told = {line.rpartition("[")[2]: line for line in lines if line.startswith(f"{content}/")}
    assert set(told) == {"quote-open]", "row-ragged]", "name-unknown]", "choice-unknown]"}
    for code, line in told.items():
        assert ("; the rest of this file was not looked at [" in line) == (code == "quote-open]")


def test_a_name_that_does_not_exist_is_answered_with_the_nearest(run):
    result = run("build", "robin-on-the-spad", "--content", CONTENT, code=2)
    assert "did you mean 'robin-on-the-spade'?" in result.stderr


def test_an_unknown_option_is_wrong_usage(run):
    run("build", "--colour", code=2)


# --- kit ----------------------------------------------------------------------------------------


def test_the_kit_of_a_pattern_lists_every_colour_once(run, demo):
    figure = demo.reckoned[0].figures[0]
    said = run("kit", figure.pattern.id, "--content", CONTENT).output
    model = figure.pattern.thread_sets[0]
    for colour in {c for line in figure.pattern.key for c in line.threads[model.id]}:
        assert said.count(f"{colour.number} {colour.name} ") == 1
    for card in {need.card.sold_as: need.card for need in figure.cloths[0].needs[0][1]}.values():
        units = sum(n.units for n in figure.cloths[0].needs[0][1] if n.card == card)
        total = next(row for row in said.splitlines() if row.startswith(f"{card.sold_as}s in all"))
        assert total.split()[-1] == str(units)


def test_the_kit_follows_thread_and_cloth(run):
    said = run(
        "kit",
        "squash-barrow",
        "--threads",
        "tansywick",
        "--cloth",
        "pipit-aida-14",
        "--content",
        CONTENT,
    ).output
    assert "Tansywick Twelve" in said and "Pipit Aida 14" in said and "spools in all" in said


def test_the_kit_of_the_series_says_what_sharing_saves(run):
    said = run("kit", "--content", CONTENT).output
    assert "Bought for each design by itself it would be" in said
    assert "saved" in said


@pytest.mark.parametrize(
    ("words", "offered"),
    [(["--threads", "tansywik"], "'tansywick'"), (["--cloth", "pipit-aida-15"], "pipit-aida-1")],
)
def test_a_kit_that_is_not_offered_is_answered_with_the_nearest(run, words, offered):
    result = run("kit", "squash-barrow", *words, "--content", CONTENT, code=2)
    assert "did you mean" in result.stderr and offered in result.stderr


# --- build ----------------------------------------------------------------------------------------


@pytest.mark.slow
def test_one_pattern_is_built_with_plain_lines_when_nobody_watches(run, tmp_path):
    """Two PDFs and a zip of the pattern, and the whole site; a second build of another keeps the first."""
    ivy = {
        path.replace("/fern/", "/ivy/"): text.replace("Fern by the Tap", "Ivy by the Tap")
        for path, text in TINY.items()
        if path.startswith(FERN)
    }
    content = build(tmp_path / "content", ivy | {SERIES: ("order: [fern]", "order: [fern, ivy]")})
    into = tmp_path / "build"
    said = run("build", "fern", "--content", content, "--into", into).output
    assert "Fern by the Tap: packet" in said and "Ivy by the Tap: packet" not in said
    packets = into / "packets" / "garden-year"
    names = sorted(path.name for path in packets.iterdir())
    assert names == ["fern-a4.pdf", "fern-letter.pdf", "fern.zip"]
    assert (into / "site" / "index.html").is_file()
    before = (packets / "fern-a4.pdf").read_bytes()
    run("build", "ivy", "--content", content, "--into", into)
    assert len(list(packets.iterdir())) == 6
    assert (packets / "fern-a4.pdf").read_bytes() == before


@pytest.mark.slow
def test_an_author_s_own_template_goes_before_the_project_s(run, tmp_path, quick_pictures):
    own = tmp_path / "templates" / "site"
    own.mkdir(parents=True)
    (own / "404.html").write_text("<p>Nothing grows here.</p>")
    into = tmp_path / "build"
    content = build(tmp_path / "content")
    run("build", "--content", content, "--into", into, "--templates", own.parent)
    assert (into / "site" / "404.html").read_text() == "<p>Nothing grows here.</p>"
    assert "Fern by the Tap" in (into / "site" / "index.html").read_text()


@pytest.mark.parametrize(
    ("name", "text", "said"),
    [
        ("site/404.html", "<p>\n{% if %}", "templates/site/404.html:2:1: "),
        (
            "site/404.html",
            "<p>\n{{ nothing.here }}",
            "templates/site/404.html:2:1: 'nothing' is undefined",
        ),
        ("share/listing.txt", "{% include 'moss.txt' %}", "there is no template 'moss.txt'"),
        (
            "packet/notes.html",
            "\n\n{{ pattern.grid.width + 'x' }}",
            "templates/packet/notes.html:3:1: ",
        ),
    ],
)
@pytest.mark.slow
def test_a_fault_in_an_author_s_template_is_located(
    run, tmp_path, quick_pictures, name, text, said
):
    own = tmp_path / "templates" / name
    own.parent.mkdir(parents=True)
    own.write_text(text)
    result = run(
        "build",
        "--content",
        build(tmp_path / "content"),
        "--into",
        tmp_path / "build",
        "--templates",
        tmp_path / "templates",
        "--as-of",
        "2027-01-15",
        code=1,
    )
    assert said in result.stderr
    assert "Traceback" not in result.output
    assert not (tmp_path / "build").exists()


@pytest.mark.parametrize(
    ("words", "told"),
    [
        ("build --workers 0", "0 is too small; give from 1 to 64"),
        ("build --workers two", "'two' is no whole number; give from 1 to 64"),
        ("chart alike fern --limit 101", "101.0 is too large; give from 0 to 100"),
        ("chart alike fern --limit nan", "nan is too large; give from 0 to 100"),
        ("bring grid.csv --colours 0", "0 is too small; give 1 or more"),
        ("bring grid.csv --cell 0.5", "0.5 is too small; give from 1 to 1000"),
    ],
)
def test_a_number_out_of_its_range_is_told_in_words(run, tmp_path, monkeypatch, words, told):
    monkeypatch.chdir(tmp_path)
    build(tmp_path / "content")
    (tmp_path / "grid.csv").write_text("E2\n")
    said = " ".join(run(*words.split(), code=2).output.split())
    assert told in said
    assert "<" not in said.partition("Error: ")[2]
