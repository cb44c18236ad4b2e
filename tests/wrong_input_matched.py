"""Thread sets that the tool is asked to match, in ways that cannot be.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import PATTERN, SERIES, TINY
from tests.wrong_input_case import Case

_SETS = "thread_sets: [moss, spool]\n"


def _asked(matched: str, *changes: tuple[str, str]) -> str:
    """The tiny pattern with the line `matched`, and with no colour of the spool where r is worked."""
    text = TINY[PATTERN].replace(_SETS, f"{_SETS}matched: {matched}\n")
    for old, new in (('r: {moss: E2, spool: "10"}', "r: {moss: E2}"), *changes):
        assert text.count(old) == 1
        text = text.replace(old, new)
    return text


CASES = (
    Case(
        "a match for an unknown thread set",
        {PATTERN: _asked("{spol: moss, spool: moss}")},
        "series/garden-year/fern/pattern.yaml:8:11: there is no thread set 'spol'; did you mean 'spool'?",
    ),
    Case(
        "a match from an unknown thread set",
        {PATTERN: _asked("{spool: mos}")},
        "series/garden-year/fern/pattern.yaml:8:18: there is no thread set 'mos'; did you mean 'moss'?",
    ),
    Case(
        "a match for the model's own threads",
        {PATTERN: _asked("{moss: spool}", ("r: {moss: E2}", 'r: {spool: "10"}'))},
        "series/garden-year/fern/pattern.yaml:8:11: the model's own set 'moss' cannot be matched; write its colours in the key, or put another set first in thread_sets",
    ),
    Case(
        "a match whose two sets have changed places",
        {PATTERN: _asked("{moss: spool}", (', spool: "12"', ""), (', spool: ["10", "14"]', ""))},
        "series/garden-year/fern/pattern.yaml:8:11: the model's own set 'moss' cannot be matched; the two have changed places: write matched: {spool: moss}",
    ),
    Case(
        "a model's set without colours, beside one that is matched itself",
        {
            SERIES: TINY[SERIES].replace(
                "thread_sets:\n",
                "thread_sets:\n  - {name: twice, card: moss, strands: 3}\n",
            ),
            PATTERN: _asked(
                "{twice: moss}", (', spool: "12"', ""), (', spool: ["10", "14"]', "")
            ).replace("[moss, spool]", "[spool, twice, moss]"),
        },
        "series/garden-year/fern/pattern.yaml:10:3: no line of the key says anything for the thread set 'spool'; add its numbers, r: {moss: …, spool: …}, or put moss first in thread_sets, with matched: {spool: moss}",
    ),
    Case(
        "a match from itself",
        {PATTERN: _asked("{spool: spool}")},
        "series/garden-year/fern/pattern.yaml:8:18: 'spool' cannot be matched from 'spool', which is to be matched itself; name a set whose colours stand in the key, such as the model's",
    ),
    Case(
        "a match from a set that is matched too",
        {
            SERIES: (
                "thread_sets:\n",
                "thread_sets:\n  - {name: twice, card: moss, strands: 3}\n",
            ),
            PATTERN: _asked("{spool: moss, twice: spool}").replace("spool]", "spool, twice]"),
        },
        "series/garden-year/fern/pattern.yaml:8:31: 'twice' cannot be matched from 'spool', which is to be matched itself; name a set whose colours stand in the key, such as the model's",
    ),
    Case(
        "a match that is no pair of names",
        {PATTERN: _asked("spool")},
        "series/garden-year/fern/pattern.yaml:8:10: 'matched' should hold thread sets of this pattern, and is 'spool'; write for example matched: {tansywick: larkmoss}",
    ),
    Case(
        "the word for a match misspelt",
        {PATTERN: _asked("{spool: moss}").replace("matched:", "mached:")},
        "series/garden-year/fern/pattern.yaml:8:1: 'mached' is not part of a pattern; did you mean 'matched'?",
    ),
    Case(
        "more strands than a matched thread has",
        {PATTERN: _asked("{spool: moss}", ("r: {moss: E2}", "r: {moss: E2, strands: {spool: 2}}"))},
        "series/garden-year/fern/pattern.yaml:10:34: 2 strands of Spool Twelve, which has 1; it is used whole, so write 1, or mend 'strands' in threads/spool.yaml",
    ),
    Case(
        "a blend to be matched with a braid",
        {
            "threads/spool.yaml": ("strands: 1\n", "strands: 1\nbraid: true\n"),
            PATTERN: _asked("{spool: moss}", (', spool: ["10", "14"]', "")),
        },
        "series/garden-year/fern/pattern.yaml:12:3: a blend with the braid Spool Twelve, which is used by itself; give the braid a key line of its own",
    ),
)
