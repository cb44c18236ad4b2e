"""What a person gets who asks for the colours of one thread card on another."""

import csv
import io
import json
import shutil

import pytest
from click.testing import CliRunner
from coloraide import Color
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.cli import main
from packetgen.colour import difference, lab
from packetgen.model import Colour, ThreadCard
from packetgen.render.match_table import UNCERTAINTY, as_csv, as_table, matching
from tests.demo_patterns import CONTENT


@pytest.fixture
def run():
    """Runs the command in this process and gives its result; an unexpected error is a failure."""

    def call(*words, code=0):
        result = CliRunner().invoke(main, ["match", *words, "--content", str(CONTENT)])
        if result.exception and not isinstance(result.exception, SystemExit):
            raise result.exception
        assert result.exit_code == code, result.output
        return result

    return call


def rows_of(result):
    return list(csv.DictReader(io.StringIO(result.stdout)))


@pytest.fixture
def robin(demo):
    """The demo pattern with the most thread cards."""
    return next(
        figure.pattern
        for each in demo.reckoned
        for figure in each.figures
        if figure.pattern.id == "robin-on-the-spade"
    )


def test_every_colour_of_the_card_has_a_line_with_a_word_and_a_number(run, demo):
    lines = run("larkmoss", "tansywick").stdout.splitlines()
    card = demo.thread_cards["larkmoss"]
    assert lines[0].split()[:2] == ["Larkmoss", "Stranded"]
    listed = lines[1 : 1 + len(card.colours)]
    for line, colour in zip(listed, card.colours.values(), strict=True):
        assert line.startswith(f"{colour.number} {colour.name} ")
        assert any(word in line for word in ("same to the eye", "close", "visible", "far"))
        assert line[-2] == "." and max(map(len, lines)) <= 80
    assert lines[1 + len(card.colours)] == ""


@pytest.mark.parametrize("form", ["table", "csv", "json"])
def test_nobody_gets_a_list_without_a_word_on_its_uncertainty(run, form):
    """A csv reader gets it beside the file, not in it."""
    result = run("glimmer", "larkmoss", "--format", form)
    said = " ".join(result.stderr.split() if form == "csv" else result.stdout.split())
    assert UNCERTAINTY in said
    assert form != "csv" or UNCERTAINTY not in result.stdout


def test_csv_and_json_hold_the_same_figures_in_full(run, demo):
    options = ("larkmoss", "tansywick", "--pattern", "squash-barrow")
    table = rows_of(run(*options, "--format", "csv"))
    whole = json.loads(run(*options, "--format", "json").stdout)
    larkmoss, tansywick = (demo.thread_cards[name].colours for name in ("larkmoss", "tansywick"))
    assert len(table) == len(whole["matches"]) > 15
    for row, one in zip(table, whole["matches"], strict=True):
        assert row["number"] == one["number"] and row["to_number"] == one["to_number"]
        apart = difference(lab(larkmoss[row["number"]].hex), lab(tansywick[row["to_number"]].hex))
        assert float(row["ciede2000"]) == one["ciede2000"] == apart
        assert apart <= min(
            difference(lab(larkmoss[row["number"]].hex), lab(other.hex))
            for other in tansywick.values()
        )


def test_colours_that_fall_together_are_told_with_what_keeps_them_apart(run, demo):
    """Two colours of the robin; coloraide too finds one colour nearest to both."""
    larkmoss, tansywick = (demo.thread_cards[name].colours for name in ("larkmoss", "tansywick"))
    for number in ("T2", "E1"):
        seen = Color(larkmoss[number].hex)
        apart = {one: seen.delta_e(other.hex, method="2000") for one, other in tansywick.items()}
        assert min(apart, key=apart.get) == "46"
    options = ("larkmoss", "tansywick", "--pattern", "robin-on-the-spade")
    together = [row for row in rows_of(run(*options, "--format", "csv")) if row["shares_with"]]
    assert {row["number"]: row["shares_with"] for row in together} == {"T2": "E1", "E1": "T2"}
    text = run(*options).stdout
    told = text[text.index("What falls together:") :]
    assert "46 light pantile: T2 new flowerpot, E1 nasturtium" in told
    for row in together:
        assert f"{row['number']} → {row['distinct_number']} (" in told


def test_kept_distinct_no_colour_comes_twice(run):
    options = ("larkmoss", "tansywick", "--pattern", "robin-on-the-spade", "--distinct")
    given_out = [row["to_number"] for row in rows_of(run(*options, "--format", "csv"))]
    assert len(set(given_out)) == len(given_out) > 10
    assert "What would fall together:" in run(*options).stdout


def test_only_the_colours_of_the_pattern_are_listed(run, robin):
    used = {
        colour.number
        for line in robin.key
        for card, colour in zip(line.cards_in(robin.thread_sets[0]), line.threads["larkmoss"])
        if card.id == "larkmoss"
    }
    options = ("larkmoss", "tansywick", "--pattern", "robin-on-the-spade", "--format", "csv")
    assert {row["number"] for row in rows_of(run(*options))} == used
    braids = rows_of(run("glimmer", *options[1:]))
    assert [row["number"] for row in braids] == ["G3"]


def test_a_card_beside_itself_is_the_same_card(run):
    for row in rows_of(run("larkmoss", "larkmoss", "--distinct", "--format", "csv")):
        assert row["number"] == row["to_number"] and float(row["ciede2000"]) == 0


def test_a_card_of_more_colours_cannot_be_kept_distinct(run, demo):
    many, few = (len(demo.thread_cards[name].colours) for name in ("larkmoss", "tansywick"))
    told = run("larkmoss", "tansywick", "--distinct", code=2).stderr
    assert (
        f"{many} colours of Larkmoss Stranded cannot each have their own among the {few} " in told
    )
    assert "--pattern" in told
    plain = " ".join(run("larkmoss", "tansywick").stdout.split())
    assert (
        f"{many} colours cannot each have their own among the {few} of Tansywick Twelve." in plain
    )


def test_an_unknown_name_is_told_with_the_nearest(run):
    told = run("larkmos", "tansywick", code=2).stderr
    assert "there is no thread card 'larkmos'; did you mean 'larkmoss'?" in told
    told = run("larkmoss", "tansywick", "--pattern", "robin", code=2).stderr
    assert "there is no pattern or series called 'robin'" in told


def test_a_pattern_without_a_colour_of_the_card_says_which_it_has(run):
    told = run("glimmer", "larkmoss", "--pattern", "foxglove-can", code=2).stderr
    assert (
        "'foxglove-can' uses no colour of 'glimmer'; it uses those of larkmoss, tansywick" in told
    )


def test_the_page_of_help_has_examples(run):
    page = run("--help").output
    assert "Examples:" in page and "packetgen match larkmoss tansywick" in page


names = st.text(
    st.characters(categories=("L", "N", "Zs"), max_codepoint=0x17F), min_size=1, max_size=60
)


@settings(max_examples=50, deadline=None)
@given(st.lists(st.tuples(names, st.integers(0, 0xFFFFFF)), min_size=1, max_size=6), names)
def test_a_table_is_never_wider_than_a_terminal(of, name):
    """However long the names; numbers are kept whole."""
    made = tuple(
        Colour(f"N{n}", " ".join(called.split()) or "x", f"#{value:06x}")
        for n, (called, value) in enumerate(of)
    )
    card = ThreadCard(
        "card", name, "cotton", 6, 25, "skein", 8.0, False, {one.number: one for one in made}
    )
    for distinct in (False, True):
        lines = as_table(matching(card, card, made, distinct)).splitlines()
        assert max(map(len, lines)) <= 80
        assert all(line.startswith(one.number) for line, one in zip(lines[1:], made))


def test_a_spreadsheet_takes_no_name_for_a_formula():
    """Names are an author's words, and a table is opened in a spreadsheet."""
    one = Colour("1", "=1+1", "#123456")
    card = ThreadCard("card", "Card", "cotton", 6, 25, "skein", 8.0, False, {"1": one})
    row = as_csv(matching(card, card, (one,), False)).splitlines()[1]
    assert row.startswith("1,'=1+1,#123456,1,'=1+1,")


@pytest.fixture(scope="module")
def left_to_the_tool(tmp_path_factory):
    """The demo, in which the robin leaves all of one set to the tool but two lines."""
    folder = tmp_path_factory.mktemp("matched") / "content"
    shutil.copytree(CONTENT, folder)
    path = folder / "series" / "potting-bench-almanac" / "robin-on-the-spade" / "pattern.yaml"
    kept = []
    for line in path.read_text("utf-8").splitlines():
        before, comma, own = line.partition(', tansywick: "')
        number, _, rest = own.partition('"')
        kept.append(before + rest if comma and number not in ("88", "91") else line)
        if line.startswith("thread_sets:"):
            kept.append("matched: {tansywick: larkmoss}")
    path.write_text("\n".join(kept) + "\n", "utf-8")
    return folder


def test_a_matched_set_is_reckoned_and_printed_like_any_other(left_to_the_tool):
    """The key page says that the tool chose, how far the widest step is, and to look by daylight."""
    from packetgen.pipeline import proof
    from packetgen.render.packet import packet
    from packetgen.render.templates import environment

    checked = proof(left_to_the_tool)
    assert checked.sound
    (each,) = checked.reckoned
    figures = next(f for f in each.figures if f.pattern.id == "robin-on-the-spade")
    robin = figures.pattern
    assert robin in each.series.patterns
    own = {line.mark: line.threads["tansywick"][0].number for line in robin.key if not line.matched}
    assert own == {"r": "88", "R": "91", "g": "G3", "x": "G3"}
    numbers = {
        (line.threads["larkmoss"], line.threads["tansywick"][0].number) for line in robin.key
    }
    assert len({number for _, number in numbers}) == len(numbers)
    for _, needs in figures.cloths[0].needs:
        assert len(needs) == len(numbers) and all(need.units for need in needs)
    html = " ".join(packet(each.series, figures, b"", environment(None)).html.split())
    told = html[html.index("matched by the tool") - 60 :][:400]
    assert (
        "Of the Tansywick Twelve colours 16 were matched by the tool from Larkmoss Stranded" in told
    )
    assert "E1 nasturtium to 79 mid damask (far): check by eye in daylight before you buy" in told


def test_a_packet_whose_designer_chose_all_says_nothing_of_a_tool(demo):
    from packetgen.render.packet import packet
    from packetgen.render.templates import environment

    (each,) = demo.reckoned
    html = packet(each.series, each.figures[0], b"", environment(None)).html
    assert "matched by the tool" not in html
