"""Texts that are too much to be set, names that other machines cannot hold, and slips by the hundred.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import CHART, FERN, MOSS, SERIES, TINY
from tests.wrong_input_case import Case

STORY = f"{FERN}/story.md"
_SIGNS = [chr(0x4E00 + n) for n in range(504)]  # each a letter of its own
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
        "more than five hundred marks that the key lacks",
        {
            CHART: "rrbb\nrk..\n"
            + "".join("".join(_SIGNS[4 * n : 4 * n + 4]) + "\n" for n in range(126)),
        },
        f"{CHART}:1:1: advice: this file has more than 500 faults of one kind, and the others are not shown; mend one and see: they may all have one cause",
        *(
            f"{CHART}:{3 + n // 4}:{1 + n % 4}: the mark '{_SIGNS[n]}' at column {1 + n % 4}, row {3 + n // 4} is not in the key; add it to the key, or write one of b, k, r for it"
            for n in range(500)
        ),
    ),
)
