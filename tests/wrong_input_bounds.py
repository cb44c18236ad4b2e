"""Texts that are too much to be set, names that other machines cannot hold, and slips by the hundred.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import CHART, FERN, MOSS, SERIES, TINY
from tests.wrong_input_case import Case

STORY = f"{FERN}/story.md"
TABLE = f"{FERN}/chart.csv"
NOTICE = "text: The linen is back."

CASES = (
    Case(
        "a story longer than a story is",
        {STORY: "It grew and grew. " * 2000},
        f"{STORY}:1:1: this text has 36000 letters; 30000 are the most that can be set; tell it shorter",
    ),
    Case(
        "a story of brackets",
        {STORY: "[" * 1001},
        f"{STORY}:1:1: this text has 1001 signs '[' and '<'; 1000 are the most that can be read",
    ),
    Case(
        "a notice of brackets",
        {SERIES: (NOTICE, f"text: '{'<' * 1001}'")},
        f"{SERIES}:18:45: this text has 1001 signs '[' and '<'; 1000 are the most that can be read",
    ),
    Case(
        "a quotation of a quotation, a hundred times",
        {STORY: "It grew.\n\n" + "> " * 100 + "and grew\n"},
        f"{STORY}:3:1: this text has lists or quotations too many levels deep; let them stand side by side",
    ),
    Case(
        "a name that a machine keeps for itself",
        {"threads/nul.yaml": TINY[MOSS]},
        "threads/nul.yaml:1:1: some machines keep the name 'nul' for themselves, and no file there can have it; add a word to it, for example 'nul-1'",
    ),
    Case(
        "a name that is too long for a file",
        {f"threads/{'moss' * 20}.yaml": TINY[MOSS]},
        f"threads/{'moss' * 20}.yaml:1:1: the name 'mossmossmossmossmossmossmossmossmossmos…' has 80 letters; 60 are the most that fit everywhere",
    ),
    Case(
        "two files whose names differ in a capital letter",
        {f"{FERN}/Story.md": "It grew.\n"},
        f"{FERN}/Story.md:1:1: advice: nothing reads 'Story.md'; did you mean 'story.md'? (a name that begins with '_' is left alone)",
        f"{FERN}/story.md:1:1: 'story.md' and 'Story.md' are one and the same name on many machines; give one of the two another name",
    ),
    Case(
        "more than five hundred codes of more than one letter",
        {
            CHART: None,
            TABLE: "r,r,b,b\nr,k,,\n"
            + "".join(f"a{row},b{row},c{row},d{row}\n" for row in range(3, 129)),
        },
        f"{TABLE}:1:1: a spreadsheet's table, with codes of its own ('a3', 'b3', …); bring it in: packetgen bring content/{FERN}/chart.csv --pattern fern --replace",
        f"{TABLE}:1:1: advice: this file has more than 500 faults of one kind, and the others are not shown; mend one and see: they may all have one cause",
        *(
            f"{TABLE}:{row}:{column}: the cell '{code}{row}' at column {column}, row {row} is more than one mark; write one mark in a cell"
            for row in range(3, 128)
            for column, code in enumerate("abcd", 1)
        ),
    ),
)
