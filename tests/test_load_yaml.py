"""YAML is read as the author's own characters, each with its place."""

import re

import pytest
import yaml
from hypothesis import given, settings
from hypothesis import strategies as st

from packetgen.diagnostics import Place, Problems
from packetgen.load import load_content, yaml_events, yaml_nodes
from packetgen.load.yaml_nodes import MOST_VALUES, GroupNode, ListNode, Node, TextNode, read_nodes
from packetgen.starting.files import NewPattern, NewSeries, series_files
from tests.demo_patterns import CONTENT


def read(text: str) -> Node:
    problems = Problems()
    node = read_nodes(text, "a.yaml", problems)
    assert [str(problem) for problem in problems] == []
    return node


def value_of(text: str) -> TextNode:
    """The value of the only name in `text`."""
    ((_, value),) = read(text).entries
    return value


@pytest.mark.parametrize(
    "written",
    [
        "07",
        "08",
        "1e3",
        "no",
        "yes",
        "on",
        "null",
        "~",
        "2026-02-30",
        "12:30",
        "0x10",
        ".5",
        "1_000",
        "true",
        "=",
    ],
)
def test_a_value_keeps_the_authors_characters(written):
    """Numbers keep their noughts and 'no' is a word: nothing is turned into something else."""
    assert value_of(f"number: {written}").value == written


@pytest.mark.parametrize("mark", ["y", "n", "1", "-", "?", "~", "+", "=", "é", "☘", "<", "/"])
def test_most_marks_need_no_quotes(mark):
    ((key, _),) = read(f"{mark}: {{moss: E2}}").entries
    assert key.value == mark


@pytest.mark.parametrize("mark", list("*&!|>@%`{}[],'\"?-:"))
def test_any_mark_may_stand_between_quotes(mark):
    quoted = f"'{mark}'" if mark != "'" else '"\'"'
    ((key, _),) = read(f"{quoted}: {{moss: E2}}").entries
    assert key.value == mark


def nodes(node: Node):
    yield node
    if isinstance(node, ListNode):
        for item in node.items:
            yield from nodes(item)
    if isinstance(node, GroupNode):
        for key, value in node.entries:
            yield key
            yield from nodes(value)


@pytest.mark.parametrize("path", sorted(CONTENT.rglob("*.yaml")), ids=lambda path: path.name)
def test_every_value_stands_where_its_place_says(path):
    """In every file of the demo: at a value's line and column the file has that value's own first
    characters.
    """
    text = path.read_text(encoding="utf-8")
    lines = text.split("\n")
    checked = 0
    for node in nodes(read(text)):
        if not isinstance(node, TextNode):
            continue
        for number, value_line in enumerate(node.value.split("\n")[: len(node.line_places)]):
            place = node.line_places[number]
            assert lines[place.line - 1][place.column - 1 :].startswith(value_line)
            checked += 1
    assert checked > 10


@pytest.mark.parametrize(
    ("written", "offset", "column"),
    [
        ("path: 1,1 9,9", 4, 11),
        ('path: "1,1 9,9"', 4, 12),
        ("path: '1,1 9,9'", 4, 12),
        ('path: "1,1\\x209,9"', 4, 7),
    ],
)
def test_a_place_inside_a_value_is_exact_where_it_can_be(written, offset, column):
    """With a backslash in the value only the value's own place is certain."""
    assert value_of(written).at(offset) == Place("a.yaml", 1, column)


def test_a_place_inside_a_block_of_lines_is_exact():
    value = value_of("rows: |\n    AA.B\n    ABA.\n")
    assert value.value == "AA.B\nABA.\n"
    assert value.at(3, line=1) == Place("a.yaml", 3, 8)


def test_a_name_given_twice_keeps_its_first_value():
    problems = Problems()
    node = read_nodes("a: 1\nb: 2\na: 3\n", "a.yaml", problems)
    assert [(key.value, value.value) for key, value in node.entries] == [("a", "1"), ("b", "2")]
    assert [problem.place.line for problem in problems] == [3]


@given(st.text(st.characters(categories=("L", "N", "P", "S", "Zs")), min_size=1))
def test_a_quoted_value_comes_back_whole(words):
    """Between single quotes every character stands for itself; the quote is written twice."""
    quoted = words.replace("'", "''")
    assert value_of(f"title: '{quoted}'").value == words


def told(text: str, names: tuple[str, ...] = ()) -> list[str]:
    problems = Problems()
    read_nodes(text, "a.yaml", problems, names)
    return [str(problem) for problem in problems]


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("a: 1\n\tb: 2\n", "let it begin at the margin"),
        ("key:\n\tr: 1\n", "begin it with 2 plain spaces"),
        ("key:\n\tr: 1\n    s: 2\n", "begin it with 4 plain spaces"),
        ("key:\n   r: 1\n\ts: 2\n", "begin it with 3 plain spaces"),
        ("key:   # all\n# a remark\n\tr: 1\n   s: 2\n", "begin it with 3 plain spaces"),
        ("parts:\n  - name: back\n\tpath: x\n", "begin it with 4 plain spaces"),
        ("parts:\n  - name: back\n\t- name: cap\n", "begin it with 2 plain spaces"),
        ("parts:\n  -\n\tname: back\n", "begin it with 4 plain spaces"),
        ("parts:\n- paint:\n\tcoats: 2\n", "begin it with 4 plain spaces"),
        ("about: |\n\tWords.\n", "begin it with 2 plain spaces"),
        ("about: Words that\n\tgo on\n", "begin it with 2 plain spaces"),
        ("look: {day: a,\n\tnight: b}\n", "begin it with 2 plain spaces"),
        ("look: {day: a,\n      dusk: b,\n\tnight: c}\n", "begin it with 6 plain spaces"),
        ("key:\n\u2003r: 1\n", "begin it with 2 plain spaces"),
    ],
)
def test_a_tab_is_told_with_the_spaces_that_belong_in_its_place(text, right):
    """And the file can be read when they stand there."""
    (line,) = told(text)
    assert line.endswith(f" where the line is set in; {right}")
    spaces = int(right.split()[3]) if "with" in right else 0
    number = next(n for n, one in enumerate(text.split("\n")) if one[:1] in ("\t", "\u2003"))
    lines = text.split("\n")
    lines[number] = " " * spaces + lines[number].lstrip()
    assert told("\n".join(lines)) == []


@pytest.mark.parametrize(
    ("line", "wrong"),
    [
        ("about", "'about' has no colon and no value"),
        ("about A quiet canal", "'about A quiet canal' has no colon"),
        ("about A quiet canal  # soon: x", "'about A quiet canal' has no colon"),
        ("about:quiet", "no space stands after the colon of 'about'"),
        ("about a canal:quiet", "'about a canal:quiet' has no colon with a space after it"),
        ("opens at 9:30", "'opens at 9:30' has no colon with a space after it"),
        ("https://example.org", "'https://example.org' has no colon with a space after it"),
        ('"about: quiet"', "no colon stands after '\"about: quiet\"'"),
        ("[about, quiet]", "no colon stands after '[about, quiet]'"),
        ("{about: quiet}", "no colon stands after '{about: quiet}'"),
    ],
)
@pytest.mark.parametrize("text", ["title: Fern\n{}\n", "title: Fern\n{}\nopens: 1\n"])
def test_what_is_said_of_a_colon_is_true_wherever_it_stands(line, wrong, text):
    """A colon without a space parts nothing, and one between quotes or brackets, or in a remark, neither."""
    (said,) = told(text.format(line) if "{" not in line else text.replace("{}", line))
    assert said.startswith(f"a.yaml:2:1: {wrong}; ")


def test_a_line_without_a_colon_is_told_though_a_remark_on_it_has_one():
    (said,) = told("about quiet  # see: the canal\n  title: Fern\n", ("about",))
    assert said == "a.yaml:1:1: 'about quiet' has no colon; write about: quiet"


_FIELDS = ("about", "ease", "licence", "name", "stitching")


@pytest.mark.parametrize(
    ("text", "told_at", "spaces"),
    [
        ("licence: |\n  You may.\n{}Please do not sell it.\nname: x\n", "3:1", "it in by 2 spaces"),
        ("licence: |\n  You may.\n\n{}Please do not sell it.\n", "4:1", "it in by 2 spaces"),
        ("licence: >-\n    You may.\n{}We open at 9:30.\n", "3:1", "it in by 4 spaces"),
        ("licence: |\n{}You may stitch it.\nname: x\n", "2:1", "it in by 2 spaces"),
        ("licence: |\n    You may.\n  {}Or not.\n", "3:3", "it in by 2 more spaces"),
        ("licence: You may stitch it.\n{}Names stay on it.\n", "2:1", "it in by 2 spaces"),
        ("licence:\n  You may.\n{}Thanks!\nname: x\n", "3:1", "it in by 2 spaces"),
        ("licence: |\n  name: stays on\n{}Thanks!\nname: x\n", "3:1", "it in by 2 spaces"),
        ("licence: |\n  You may.\n{}Do sew.\n{}Do rest.\nname: x\n", "3:1", "them in by 2 spaces"),
        ("licence: |\n  You may.\n{}One thing: do sew.\n{}Rest.\n", "3:1", "them in by 2 spaces"),
        ("a:\n  - licence: |\n      You may.\n{}Thanks!\n", "4:1", "it in by 6 spaces"),
        ("a:\n  - licence: |\n      You may.\n    {}Thanks!\n", "4:5", "it in by 2 more spaces"),
    ],
)
def test_a_line_that_has_left_its_text_is_told_how_far_to_set_it_in(text, told_at, spaces):
    """And the file can be read when it is."""
    (said,) = told(text.replace("{}", ""), _FIELDS)
    line = 1 + next(
        n for n, one in enumerate(text.split("\n")) if one.startswith(("licence", "  - l"))
    )
    assert said.startswith(f"a.yaml:{told_at}: this line")
    assert said.endswith(f" seems to go on with 'licence' of line {line}; set {spaces}")
    assert len(said) <= 220
    assert told(text.replace("{}", " " * int(spaces.split()[3])), _FIELDS) == []


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("licence: |\n  You may.\nabuot A fern uncurls.\n", "write about: A fern uncurls."),
        ("licence: |\n  You may.\nname Fern\nabout: x\n", "write name: Fern"),
        (
            "name: Moss Stranded\nas sold everywhere\n",
            "write a name, a colon, a space and the value",
        ),
        (
            "licence: 'You may sew it.'\nPlease rest.\n",
            "write a name, a colon, a space and the value",
        ),
        (
            "license: You may sew it.\nPlease rest.\n",
            "write a name, a colon, a space and the value",
        ),
        ("name: x\nPlease do not sell it.\n", "write a name, a colon, a space and the value"),
        ("name: x\nnames Fern\n", "write name: Fern"),
    ],
)
def test_a_line_without_its_colon_is_told_with_the_name_that_it_surely_means(text, right):
    """'Please' holds the name 'ease', and does not mean it."""
    (said,) = told(text, _FIELDS)
    assert said.endswith(f" has no colon; {right}")


@pytest.mark.parametrize("file", sorted(CONTENT.rglob("*.yaml")), ids=lambda file: file.name)
def test_a_file_in_good_order_is_read_by_the_quick_reader(file):
    assert yaml_events._quickly(file.read_text("utf-8"), MOST_VALUES)


_SLIPS = [
    *" \n:-{}[],\"'#&*!|>%@`\\aé😀~=;",
    ": ",
    ", ",
    "- ",
    "---\n",
    "{a: b}",
    "&a ",
    "''",
    "\n\n",
]


@settings(max_examples=400)
@given(
    file=st.sampled_from(sorted(CONTENT.rglob("*.yaml"))),
    start=st.integers(0, 4000),
    slips=st.lists(
        st.tuples(st.integers(0, 300), st.sampled_from(_SLIPS), st.integers(0, 3)), max_size=5
    ),
)
def test_both_readers_find_the_same_at_the_same_places(file, start, slips):
    text = file.read_text("utf-8")
    text = text[start % len(text) :][:300]
    for at, slip, gone in slips:
        text = text[:at] + slip + text[at + gone :]
    assert tree_of(text, yaml.CSafeLoader) == tree_of(text, None)


def tree_of(text: str, quick: object) -> object:
    """What is read with that quick reader at hand, or with none, and what is said of it."""
    problems = Problems()
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(yaml_events, "_QUICK", quick)
        read = yaml_nodes._tree(text, "a.yaml", (), (), problems)
    return read, [str(problem) for problem in problems]


def test_no_remark_of_our_own_files_is_taken_for_a_text(tmp_path):
    """Neither of the demo nor of what an author begins with."""
    begun = tmp_path / "begun"
    new = NewSeries("path", "Along the Path", "2027-05-01", "Wren Alder", "My Cotton")
    files = series_files(new, NewPattern("sprig", "A Sprig", 40, 40, "2027-05-01"))
    for name, text in files.items():
        (begun / name).parent.mkdir(parents=True, exist_ok=True)
        (begun / name).write_text(text, "utf-8")
    for folder in (CONTENT, begun):
        content, problems = load_content(folder)
        assert content is not None
        remarks = [
            line
            for file in folder.rglob("*.yaml")
            for line in file.read_text("utf-8").split("\n")
            if re.search(r"\S +# \w", line)
        ]
        assert len(remarks) > 1
        assert [str(one) for one in problems if one.code == "text-cut"] == []
