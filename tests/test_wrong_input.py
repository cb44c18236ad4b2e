"""Whatever an author gets wrong, she reads where it is, what is wrong, and what would be right."""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

import dataclasses
import re
from collections import Counter
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path, PurePosixPath

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from packetgen.diagnostics import Place, Problems
from packetgen.faults import FAULTS, Level
from packetgen.faults.bringing import BRINGING
from packetgen.faults.review import REVIEW
from packetgen.load import load_content
from packetgen.load.references import offered_of, resolve
from packetgen.model import Colour, Content
from packetgen.pipeline import proof
from tests import (
    wrong_input_aligned,
    wrong_input_bounds,
    wrong_input_calendar,
    wrong_input_charts,
    wrong_input_files,
    wrong_input_finishes,
    wrong_input_links,
    wrong_input_look,
    wrong_input_matched,
    wrong_input_mounting,
    wrong_input_names,
    wrong_input_prices,
    wrong_input_reckoning,
    wrong_input_series,
    wrong_input_stitches,
    wrong_input_thread_cards,
    wrong_input_told,
    wrong_input_twice,
    wrong_input_values,
)
from tests.content_builder import (
    BEADS,
    CHART,
    CLOTH,
    FERN,
    FINISH,
    MOSS,
    PATTERN,
    SERIES,
    TINY,
    Change,
    build,
    picture,
)
from tests.wrong_input_case import as_usual

CASES = (
    *wrong_input_aligned.CASES,
    *wrong_input_bounds.CASES,
    *wrong_input_calendar.CASES,
    *wrong_input_files.CASES,
    *wrong_input_finishes.CASES,
    *wrong_input_links.CASES,
    *wrong_input_look.CASES,
    *wrong_input_values.CASES,
    *wrong_input_names.CASES,
    *wrong_input_charts.CASES,
    *wrong_input_matched.CASES,
    *wrong_input_mounting.CASES,
    *wrong_input_prices.CASES,
    *wrong_input_reckoning.CASES,
    *wrong_input_series.CASES,
    *wrong_input_stitches.CASES,
    *wrong_input_told.CASES,
    *wrong_input_twice.CASES,
    *wrong_input_thread_cards.CASES,
)
FOUND_AFTER_LOADING = {
    "conversion-collides",
    "conversion-far",
    "does-not-fit",
    "count-unfit",  # in test_doubted_count
    "border-broad",  # in test_fit
    "none-fits",
    "match-too-few",
    "symbols-alike",
    # provoked in test_coverage, test_bead_fit and test_isolated
    "coverage-thin",
    "coverage-crowded",
    "coverage-everywhere",
    "beads-crowd",
    "alone-counted",
    "magnets-no-room",  # in test_magnets
    "magnets-none-room",
    "magnets-bunched",
    # in test_series_checks
    "title-twice",
    "to-come-here",
    "day-shared",
    "occasion-begun",
    "day-missed",
    "release-behind",
    "revision-missing",  # in test_foretelling
    "stitches-moved",  # in test_left_behind
    "trim-unfit",
    "panel-unfit",
    "release-early",
    "release-far",
    "revision-far",
    "issue-day-near",
    "alt-colour-none",
    "credit-missing",
    "photo-missing",
    "alt-missing",
    "trim-idle",
    "designer-idle",
    "designer-other",
    "thread-set-unused",
    "paint-unused",
    "tin-small",
    "contrast-low",  # in test_look
    "letters-missing",  # in test_letters
    *REVIEW,  # in test_proof_report_advice
    *BRINGING,  # in test_bring_command
}
LONGEST = 220  # characters of a message, without its place
JARGON = re.compile(
    r"\b(mapping|scalar|node|schema|pars\w*|token|syntax|null|string|integer|float|boolean|sequence"
    r"|key-value|dict\w*|invalid|error|exception|unicode)\b",
    re.IGNORECASE,
)


def loaded(folder: Path, changes: dict[str, Change]) -> tuple[Content | None, Problems]:
    return load_content(build(folder / "content", changes))


def test_the_tiny_folder_is_in_order(tmp_path):
    """The folder that every case changes has itself nothing wrong."""
    content, problems = loaded(tmp_path, {})
    assert [str(problem) for problem in problems] == []
    assert content is not None and list(holes(content)) == []


@pytest.fixture(scope="module")
def told(tmp_path_factory) -> Callable[[int], tuple[bool, Problems, list[str]]]:
    """Number of the case → (whether there is content, problems, their lines); each is loaded once."""
    folder = tmp_path_factory.mktemp("cases")

    @cache
    def load(number: int) -> tuple[bool, Problems, list[str]]:
        here = folder / str(number)
        content, problems = loaded(here, dict(CASES[number].changes))
        lines = [as_usual(str(problem), here / "content") for problem in problems]
        return content is not None, problems, lines

    return load


@pytest.mark.parametrize("number", range(len(CASES)), ids=lambda number: CASES[number].slip)
def test_a_slip_is_told_in_full(number, told):
    """One slip: these lines and no others, and no content where any of them hinders reckoning."""
    has_content, problems, lines = told(number)
    assert lines == list(CASES[number].lines)
    faults = {problem.code for problem in problems if problem.level is Level.ERROR}
    assert has_content == (faults <= {"key-line-unused"})


def test_each_slip_is_told_apart():
    assert len(CASES) >= 70
    assert [slip for slip, times in Counter(case.slip for case in CASES).items() if times > 1] == []


def test_a_missing_folder_is_told(tmp_path):
    content, problems = load_content(tmp_path / "contents")
    assert content is None
    assert [str(problem) for problem in problems] == [
        ":1:1: there is no such folder; give the folder that holds threads, cloths and series, "
        "or make one with packetgen begin"
    ]


def test_a_key_may_not_have_more_lines_than_there_are_chart_shapes(tmp_path):
    """Each of its colours is one too many here, so only this one line is looked for."""
    more = "".join(f"  {chr(0x4E00 + n)}: {{moss: K4, spool: '12'}}\n" for n in range(209))
    _, problems = loaded(tmp_path, {PATTERN: ("key:\n", "key:\n" + more)})
    (said,) = (str(problem) for problem in problems if problem.code == "key-too-long")
    assert said.endswith(
        "the key has 212 lines; 208 is the most: there is one chart shape for each"
    )


def test_every_message_is_provoked(told):
    """No message of the load layer stands in the table that no slip brings out."""
    provoked = {"folder-missing", "key-too-long"}  # by the tests above
    for number in range(len(CASES)):
        provoked |= {problem.code for problem in told(number)[1]}
    assert provoked == set(FAULTS) - FOUND_AFTER_LOADING


@pytest.mark.parametrize("case", CASES, ids=lambda case: case.slip)
def test_a_message_is_one_short_line_in_plain_words(case):
    for line in case.lines:
        located = re.match(r"[^:]+:\d+:\d+: (?P<message>(advice: )?\S.*; \S.*)", line)
        assert located
        assert len(located["message"]) <= LONGEST
        assert line.isprintable()
        assert not JARGON.search(line), line


def test_no_message_in_the_table_uses_jargon():
    for code, fault in FAULTS.items():
        assert not JARGON.search(f"{fault.wrong} {fault.right}"), code


TEN_FAULTS: dict[str, Change] = {
    BEADS: ("size: 2.2 mm", "size: 2.2"),
    CLOTH: ("count: 28", "count: 280"),
    FINISH: ("paint: sage", "paint: sago"),
    MOSS: ('"#4f7942"', '"4f7942"'),
    "threads/spool.yaml": ("sold_as: spool", "sold_as:"),
    SERIES: ("finish: shelf", "finish: shelve"),
    PATTERN: ("title: Fern by the Tap\ndesigner: alder", "title: Fern by the Tap\ndesigner: elder"),
    CHART: "rrbb\nrk.R\n",
    f"{FERN}/story.md": "",
    f"{FERN}/photo.jpg": b"no photograph",
}


def test_what_is_offered_in_place_of_an_unknown_name_is_never_a_long_line():
    """A name of any length, one near to it, or the numbers of a card whose colours have long names."""
    long = "a-cloth-with-a-name-as-long-as-any-file-may-have-anywhere-28"
    colours = {f"{n}": Colour(f"{n}", "between moss and lichen " * 3, "#4f7942") for n in range(50)}
    said: list[str] = []
    for known, name, what, of in (
        (dict.fromkeys(f"{long[:-2]}{n}" for n in range(10, 40)), f"{long}x", "cloth", ""),
        (dict.fromkeys(f"linen-{n}" for n in range(10, 40)), long, "thread card", ""),
        (dict.fromkeys(f"linen-{n}" for n in range(10, 40)), "elder", "designer", ""),
        (colours, "ZZ", "colour", "A Stranded Cotton with a Long Name Indeed"),
    ):
        problems = Problems()
        resolve(name, Place(PATTERN), known, what, problems, of=of, file=f"{long}.yaml")
        said += map(str, problems)
    assert len(said) == 4 and max(map(len, said)) <= 220
    assert f"did you mean '{long}'?" in said[0] and "linen-10, linen-11, " in said[1]
    assert f"known in {long}.yaml: 0 b" in said[3] and "…, and 49 more; or add it there" in said[3]


def test_of_a_large_card_it_is_told_how_many_colours_are_not_named():
    card = {f"{n}": Colour(f"{n}", f"bed {n}", "#4f7942") for n in range(10, 40)}
    told = offered_of("zz", card, "threads/bed.yaml")
    named, _, more = told.removeprefix("known in threads/bed.yaml: ").rpartition(", and ")
    assert len(named.split(", ")) + int(more.removesuffix(" more; or add it there")) == 30
    assert named.startswith("10 bed 10, 11 bed 11, ")
    few = dict(list(card.items())[:3])
    assert (
        offered_of("zz", few, "threads/bed.yaml")
        == "known in threads/bed.yaml: 10 bed 10, 11 bed 11, 12 bed 12; or add it there"
    )


CARD = {
    number: Colour(number, name, "#4f7942")
    for number, name in (
        ("508", "pond below"),
        ("331", "newt back"),
        ("344", "reed"),
        ("345", "silt"),
    )
}


@pytest.mark.parametrize(
    ("number", "meant"),
    [
        ("318", None),  # a sign and a change of places
        ("313", "331"),
        ("321", "331"),
        ("0331", "331"),
        ("331-", "331"),
        ("346", None),  # of two
        ("08", None),  # what two numbers share by chance tells nothing
        ("50", None),
        ("5080", None),
        ("newt bak", None),  # no number at all
    ],
)
def test_a_number_is_offered_where_one_slip_makes_it_of_the_other(number, meant):
    problems = Problems()
    assert (
        resolve(number, Place(PATTERN), CARD, "colour", problems, of="Coot", file="c.yaml") is None
    )
    (line,) = (problem.right for problem in problems)
    if meant:
        assert line.startswith(f"did you mean '{meant}' (")
    else:
        assert line.startswith("known in c.yaml: ")


def test_ten_faults_in_ten_files_are_told_in_one_run(tmp_path):
    """Nothing hides anything else: all ten, sorted by file, and nothing that only follows from
    them.
    """
    content, problems = loaded(tmp_path, TEN_FAULTS)
    assert content is None
    assert [str(problem) for problem in problems] == [
        "beads/drop.yaml:2:7: 'size' is '2.2', without a unit; write the unit, for example '2.2 mm'",
        "cloths/hopsack-28.yaml:3:8: 'count' is '280', beyond what can be right; it goes from 5 to 60",
        "finishes/shelf/finish.yaml:14:12: there is no paint 'sago'; did you mean 'sage'?",
        "series/garden-year/fern/chart.txt:2:4: the mark 'R' at column 4, row 2 is not in the key; "
        "did you mean 'r'?",
        "series/garden-year/fern/pattern.yaml:2:11: there is no designer 'elder'; did you mean 'alder'? (or add elder to 'designers' in series.yaml)",
        "series/garden-year/fern/photo.jpg:1:1: this is not a JPEG picture that can be read; "
        "save it again as JPEG",
        "series/garden-year/fern/story.md:1:1: the file is empty; write something into it",
        "series/garden-year/series.yaml:4:9: there is no finishing piece 'shelve'; did you mean 'shelf'? (or write finishes/shelve/finish.yaml)",
        "threads/moss.yaml:11:38: 'hex' is '4f7942', which is not a colour of six digits or letters a to f; "
        'write the sign # before it: "#4f7942"',
        "threads/spool.yaml:5:9: 'sold_as' has no value; write one, for example sold_as: skein",
    ]


@pytest.mark.parametrize("path", [MOSS, CLOTH, BEADS, FINISH])
def test_a_broken_card_makes_no_noise_elsewhere(path, tmp_path):
    """A card that exists and cannot be read is told once, where it is;
    whoever names it is not blamed.
    """
    _, problems = loaded(tmp_path, {path: ": :\n"})
    assert {problem.place.path for problem in problems} == {path}


@pytest.mark.parametrize("name", ["designers", "thread_sets", "order"])
def test_a_broken_list_of_the_series_makes_no_noise_in_patterns(name, tmp_path):
    text = TINY[SERIES].replace(f"{name}:", f"{name}: what\n{name}_was:")
    _, problems = loaded(tmp_path, {SERIES: text})
    assert {problem.place.path for problem in problems} == {SERIES}


def test_a_series_that_cannot_be_read_does_not_hide_its_patterns(tmp_path):
    """The chart of a pattern is checked although its series and its key are lost."""
    _, problems = loaded(tmp_path, {SERIES: "title: [\n", PATTERN: "title: [\n", CHART: "rr\nr\n"})
    assert [problem.place.path for problem in problems] == [CHART, PATTERN, SERIES]


def test_a_key_line_that_is_never_used_hides_nothing_that_figures_show(tmp_path):
    """What the key says of a mark that nothing is stitched with changes no figure."""
    changes: dict[str, Change] = {
        PATTERN: ("key:\n", 'key:\n  z: {moss: [K4, "07"], spool: ["12", "14"]}\n'),
        FINISH: ("border: 6 mm", "border: 48 mm"),
    }
    checked = proof(build(tmp_path / "content", changes))
    assert {problem.code for problem in checked.problems.errors} == {
        "key-line-unused",
        "border-broad",
    }
    (pattern,) = checked.reckoned[0].series.patterns
    assert [line.mark for line in pattern.key] == ["r", "k", "b"]


# --- any text at all ------------------------------------------------------------------------------

LETTERS = st.text(
    st.sampled_from("ar k0179.,:;-#[]{}|>&*!%@`'\"\\\n\t\r\0éα\u202e\ufeff\U0001f331/=?_~")
    | st.characters(),
    max_size=12,
)


@st.composite
def changed_texts(draw) -> tuple[str, str]:
    """One of the tiny files with a few pieces cut out and others put in."""
    path = draw(st.sampled_from(sorted(TINY)))
    text = TINY[path]
    for _ in range(draw(st.integers(1, 4))):
        start = draw(st.integers(0, len(text)))
        end = min(len(text), start + draw(st.integers(0, 30)))
        text = text[:start] + draw(LETTERS | st.sampled_from(PIECES)) + text[end:]
    return path, text


WORD = re.compile(r"[^\s{}\[\],:\"]+")
WORDS = sorted({word for text in TINY.values() for word in WORD.findall(text)})


@st.composite
def swapped_words(draw) -> tuple[str, str]:
    """One of the tiny files with a few words put in the places of others: most of it stays in form."""
    path = draw(st.sampled_from(sorted(TINY)))
    text = TINY[path]
    for _ in range(draw(st.integers(1, 3))):
        word = draw(st.sampled_from(list(WORD.finditer(text)) or [re.match("", text)]))
        other = draw(st.sampled_from((*WORDS, *PIECES)) | LETTERS)
        text = text[: word.start()] + other + text[word.end() :]
    return path, text


@st.composite
def shuffled_lines(draw) -> tuple[str, str]:
    """One of the tiny files with lines left out, given twice or moved."""
    path = draw(st.sampled_from(sorted(TINY)))
    lines = TINY[path].split("\n")
    for _ in range(draw(st.integers(1, 3))):
        line = lines.pop(draw(st.integers(0, len(lines) - 1))) if lines else ""
        for _ in range(draw(st.integers(0, 2))):
            lines.insert(draw(st.integers(0, len(lines))), line)
    return path, "\n".join(lines)


PIECES = (
    "'",
    '"',
    "{",
    "}",
    "[",
    "]",
    "\n",
    "\n  ",
    ": ",
    "- ",
    "null",
    "~",
    "1e9",
    "0",
    "-1",
    "9" * 400,
    "1/0 m",
)


MAY_BE_LEFT_OUT = {
    "opens",
    "closes",
    "holds_g",
    "photo",
    "price",
    "release",
    "release_place",
    "trim_place",
    "photo_alt_place",
    "credits_place",  # of a pattern that thanks nobody
    "shop",
    "address",
    "corner",
    "fixed",
    "nth",
    "easter",
    "sun",
    "symbol",
    "or_with",
    "magnets_place",  # of a piece without magnets
    "inset_place",
    "text",
    "text_bold",
    "text_italic",
    "heading",
}


def holes(value: object, name: str = "content"):
    """Names of the fields, however deep, that hold nothing although they must."""
    if value is None and name not in MAY_BE_LEFT_OUT:
        yield name
    elif dataclasses.is_dataclass(value):
        for field in dataclasses.fields(value):
            yield from holes(getattr(value, field.name), field.name)
    elif isinstance(value, tuple):
        for part in value:
            yield from holes(part, name)
    elif isinstance(value, Mapping):
        for key, part in value.items():
            yield from holes(part, f"{name}[{key}]")


def check_says_only_located_problems(folder: Path, changes: dict[str, Change]) -> None:
    content, problems = loaded(folder, changes)
    files = set(TINY) | set(changes)
    folders = {str(folder) for file in files for folder in PurePosixPath(file).parents}
    lines = [str(problem) for problem in problems]
    for problem, line in zip(problems, lines, strict=True):
        assert problem.place.path in files | folders
        assert problem.place.line >= 1 and problem.place.column >= 1
        message = as_usual(f"{problem.wrong}; {problem.right}", folder / "content")
        assert line.isprintable() and len(message) <= LONGEST, line
    assert lines == [str(problem) for problem in sorted(problems)]
    assert (content is None) == bool(problems.hindering)
    assert content is None or list(holes(content)) == []


@settings(max_examples=300, deadline=None)
@given(changed_texts() | swapped_words() | shuffled_lines())
@example((MOSS, "%YAML 1.1\n---\nname: a"))
@example((FINISH, TINY[FINISH].replace("magnets: {", "# magnets: {")))
@example((MOSS, "%YAML " + "1" * 5000 + ".1\n---\nname: a"))
@example((MOSS, "a: &a [*a]"))
@example((MOSS, '? "\\ud800"\n: "\\U00110000"'))
@example((PATTERN, "key: {? [a] : b}"))
@example((CHART, "\ufeffr\u2028r"))
def test_no_text_makes_the_loader_fall_over(tmp_path_factory, changed):
    """Any text in any file gives content, or problems with their places; never a crash."""
    path, text = changed
    data = text.encode("utf-8", "surrogatepass")
    check_says_only_located_problems(tmp_path_factory.mktemp("fuzz"), {path: data})


@settings(max_examples=150, deadline=None)
@given(
    path=st.sampled_from(
        [MOSS, CHART, PATTERN, f"{FERN}/chart.png", f"{FERN}/photo.jpg", f"{FERN}/chart.csv"]
    ),
    start=st.integers(0, 200),
    piece=st.binary(max_size=20),
)
def test_no_bytes_make_the_loader_fall_over(tmp_path_factory, path, start, piece):
    """The same for bytes, in texts and in pictures."""
    whole = TINY[path].encode() if path in TINY else _sound_bytes(path)
    changes: dict[str, Change] = {path: whole[:start] + piece + whole[start + len(piece) :]}
    if path.endswith(("chart.png", "chart.csv")):
        changes[CHART] = None
    check_says_only_located_problems(tmp_path_factory.mktemp("fuzz"), changes)


def _sound_bytes(path: str) -> bytes:
    if path.endswith(".csv"):
        return b"r,r,b,b\nr,k,,\n"
    rows = [["#a04030", "#6b503a"], ["#a04030", "#a04030"]]
    return picture(rows, "JPEG" if path.endswith(".jpg") else "PNG")


def test_the_only_thread_set_of_a_series_may_have_been_renamed_there():
    problems = Problems()
    place = Place("series/garden-year/fern/pattern.yaml", 7, 15)
    known = {"stranded": object()}
    assert resolve("moss", place, known, "thread set", problems, file="series.yaml") is None
    assert [str(problem) for problem in problems] == [
        "series/garden-year/fern/pattern.yaml:7:15: there is no thread set 'moss'; series.yaml has 'stranded' alone: "
        "write that, or call it 'moss' there again"
    ]
