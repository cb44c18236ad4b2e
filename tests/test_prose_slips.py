"""Signs that do nothing in an author's Markdown are told, and nothing that is meant as it stands."""

import pytest

from packetgen.load.prose_slips import complain_of_slips
from packetgen.markdown_text import as_html


def found(text: str) -> list[tuple[str, int, int]]:
    """(code, line, column) of what is told; both count from 0."""
    told = []
    complain_of_slips(text, lambda code, line, column, **_: told.append((code, line, column)))
    return told


@pytest.mark.parametrize(
    "text",
    [
        "2 * 3 is 6, and 2 ** 3 is 8.",
        "5 < 6 and 7 > 6, or a<b.",
        "Moss*\n\n* as the dyer calls it",
        "Write `**bold` and `<b>` and `[lock](http://` so.",
        "Write ``a ` <i>`` so.",
        r"A \*\* and \<b> and \[lock](http:// and \**star stay.",
        "    **as code** <b>\n    [lock](http://",
        "**Bold** and ***both*** and __more__.",
        "It is **bold\nover two lines**.",
        "***",
        "* * *",
        "* **First** leaf\n* second **leaf**",
        "See [the lock](https://example.org/a_(b)) and <https://example.org/lock>.",
        'See [the lock](https://example.org/lock "as it was").',
        "Write to <wren@example.org>.",
        "[1] (as told)",
        "One line<br>and another, <em>slanting</em>.",
        "– Come in, said he.",
        "Moss grew\n– and how.",
        "Half-\n-dyed moss",
        "It froze:\n-3 °C at six,\n-5 °C at eight.",
        "It was\n12. May, and\nit grew.",
        "## Moss\n- one\n- two",
        "- one\n  goes on\n- two",
        "1. one\n   - of it\n   - of it too",
        "1) one\n2) two",
        r"\-one" + "\n" + r"\-two",
        "~~ and a~b~~",
        "• • •",
    ],
)
def test_what_is_meant_as_it_stands_is_let_be(text):
    assert found(text) == []


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("See [lock](http://", [("prose-link-open", 0, 4)]),
        ("A.\n\nSee [lock](", [("prose-link-open", 2, 4)]),
        ("[a](https://example.org), [b](https://example.org", [("prose-link-open", 0, 26)]),
        ("A **star\n\nof moss**", [("prose-bold-open", 0, 2)]),
        ("**One** and (**two", [("prose-bold-open", 0, 13)]),
        ("**every evening* of it", [("prose-bold-open", 0, 0)]),
        ("**every evening*** of it", [("prose-bold-long", 0, 15)]),
        ("**a *b* c", [("prose-bold-open", 0, 0)]),
        ("<div class='x'>A</div>", [("prose-tag", 0, 0)]),
        ("A</b>", [("prose-tag", 0, 1)]),
        ("By <your name> now", [("prose-tag", 0, 3)]),
        ("• one\n• two", [("prose-list-sign", 0, 0)]),
        ("– one\n– two", [("prose-list-sign", 0, 0)]),
        ("-one\n-two", [("prose-list-sign", 0, 0)]),
        ("A.\n\n1.one\n2.two", [("prose-list-sign", 2, 0)]),
        ("1. One\n2 Two\n3. Three", [("prose-list-sign", 1, 0)]),
        ("1. One\n2 Two", [("prose-list-sign", 1, 0)]),
        ("1. One is\n2 mm smaller", []),
        ("1. One\n- Two\n3. Three", [("prose-list-sign", 1, 0)]),
        ("1. One\n- of it\n- of it too\n2. Two", [("prose-list-sign", 1, 0)]),
        ("- One\n2. Two\n- Three", [("prose-list-sign", 1, 0)]),
        ("1. One\nTwo is\n3. Three", [("prose-list-sign", 1, 0)]),
        ("1. One\ntwo is\n3. Three", []),
        ("1. One\nTwo is\n2. Three", []),
        ("1 One\n2. Two", [("prose-list-sign", 0, 0)]),
        ("1. One\n\n2 Two\n\n3. Three", [("prose-list-sign", 2, 0)]),
        ("1 One\n\n2. Two", [("prose-list-sign", 0, 0)]),
        ("1. One\n\n2 Pins are enough.", []),
        ("1. One\n\n2 mm smaller\n\n3. Three", []),
        ("## A\n\nOne.\n\nThe lid\n\n1. Two", [("prose-heading-lost", 4, 0)]),
        ("# A\n\nThe lid (small)\n\nIt opens.", [("prose-heading-lost", 2, 0)]),
        ("The lid\n\nIt opens.", []),
        ("## A\n\nThe lid.\n\nIt opens.", []),
        ("## A\n\nTwo lids:\n\n- one\n- two", []),
        ("## A\n\nThe lid\n\n## B\n\nIt opens.\n\nWren Alder", []),
        ("So:\n- one\n- two", [("prose-list-above", 1, 0)]),
        ("[a]\n(www.example.org)", [("prose-link-parted", 0, 0)]),
        ("A ~~b~~ c ~~d~~", [("prose-struck", 0, 2), ("prose-struck", 0, 10)]),
    ],
)
def test_what_is_surely_a_slip_is_told_where_it_begins(text, told):
    assert found(text) == told


@pytest.mark.parametrize(
    ("text", "entries"),
    [
        ("1) one\n2) two", 2),
        ("Do\n\n1) one\n   goes on\n2) two\n\n3) three\n\nEnd", 3),
        ("1. one\n2) two\n3. three", 3),
        ("1) one\n2. two\n\n3) three", 3),
        ("1) one\n\nThen\n\n2) two", 1),
        ("As in 1) and\n2) it is.", 0),
        ("2) of them\n3) of those", 0),
        ("    1) as code\n    2) is", 0),
    ],
)
def test_a_list_may_be_numbered_with_brackets(text, entries):
    assert as_html(text).count("<li>") == entries


@pytest.mark.parametrize(
    ("text", "lists"),
    [
        ("1. one\n   - of it\n   - of it too\n2. two", 2),
        ("- one\n  - of it\n- two", 2),
        ("1. one\n\n   - of it\n\n2. two", 2),
        ("1. one\n  - of it", 1),
        ("Of one:\n\n   - of it", 1),
    ],
)
def test_entries_that_are_set_in_as_far_as_the_words_above_stand_below_it(text, lists):
    """CommonMark 0.31.2, 5.2 List items: the words of '1. one' begin at the fourth column."""
    html = as_html(text)
    assert html.count("<ol>") + html.count("<ul>") == lists
    assert ("</ul>\n</li>" in html) == (lists == 2)
