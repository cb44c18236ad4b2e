"""Stitches that cannot be worked: daisies, petites, braids, several stitches in one cell.

Each case changes one thing in the tiny content folder and stands beside every line that the author then reads.
"""

# ruff: noqa: E501 - the lines of output stand whole, as an author sees them

from tests.content_builder import CHART, MOSS, PATTERN, SERIES
from tests.wrong_input_case import KEY_LINE, Case

BLOCKS = "      k..k\n      kk..\n"
GLIMMER = """\
name: Glow Braid
material: metallic braid
strands: 1
tex: 60
sold_as: reel
length: 11 m
braid: true
colours:
  - {number: G3, name: rime, hex: "#dfe8ec"}
"""
BRAID = "threads/glow.yaml"


def close_up(top: str, bottom: str) -> tuple[str, str]:
    """The first stitch of the tiny close-up changed to these two rows; the second is bare."""
    return BLOCKS, f"      {top}..\n      {bottom}..\n"


def key_line(line: str) -> tuple[str, str]:
    return KEY_LINE, f"  r: {line}\n"


CASES = (
    Case(
        "a lazy daisy of one point",
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: k, path: "2,2"}\nfrench_knots:',
            )
        },
        "series/garden-year/fern/pattern.yaml:15:24: a lazy daisy with 1 point; give two: the base of its loop and its tip",
    ),
    Case(
        "a lazy daisy that bends",
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: k, path: "2,2 3,2 3,3"}\nfrench_knots:',
            )
        },
        "series/garden-year/fern/pattern.yaml:15:32: a lazy daisy with 3 points; give two: the base of its loop and its tip",
    ),
    Case(
        "a lazy daisy of no length",
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: k, path: "2,2 2.0,2"}\nfrench_knots:',
            )
        },
        "series/garden-year/fern/pattern.yaml:15:28: a lazy daisy of no length, from '2.0,2' to itself; move its tip away",
    ),
    Case(
        "a path with row before column",
        {PATTERN: ('path: "1,1 4,1 4,2.5"', 'path: "1,4 1,5 2,5"')},
        "series/garden-year/fern/pattern.yaml:13:24: the point '1,4' (and 2 more points) is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3; the column comes first: should it be 4,1 5,1 5,2?",
    ),
    Case(
        "a path of which no order helps",
        {PATTERN: ('path: "1,1 4,1 4,2.5"', 'path: "1,4 9,9"')},
        "series/garden-year/fern/pattern.yaml:13:24: the point '1,4' (and 1 more point) is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3",
    ),
    Case(
        "a lazy daisy outside the chart",
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: k, path: "2,2 2,4"}\nfrench_knots:',
            )
        },
        "series/garden-year/fern/pattern.yaml:15:28: the point '2,4' is outside the chart of 4 × 2 stitches; points go from 1,1 to 5,3; the column comes first: should it be 2,2 4,2?",
    ),
    Case(
        "a knot with two figures exchanged, which may be the two numbers too",
        {
            CHART: "b" * 20 + "\n" + ("k..." + "k" * 15 + "r\n") * 39,
            PATTERN: ("2.5,2.5 3,3", "21.5,13.5"),
        },
        "series/garden-year/fern/pattern.yaml:15:22: the point '21.5,13.5' is outside the chart of 20 × 40 stitches; points go from 1,1 to 21,41; the column comes first: should it be 13.5,21.5, or 12.5,13.5?",
    ),
    Case(
        "a lazy daisy in a mark that the key lacks",
        {
            PATTERN: (
                "french_knots:",
                'lazy_daisies:\n  - {colour: K, path: "2,2 2,3"}\nfrench_knots:',
            )
        },
        "series/garden-year/fern/pattern.yaml:15:14: the mark 'K' is not in the key; did you mean 'k'?",
    ),
    Case(
        "more strands for daisies than the thread has",
        {
            SERIES: (
                "{name: spool, card: spool, strands: 1}",
                "{name: spool, card: spool, strands: 1, daisy_strands: 2}",
            )
        },
        "series/garden-year/series.yaml:7:59: 2 strands of Spool Twelve, which has 1; it is used whole, so write 1, or mend 'strands' in threads/spool.yaml",
    ),
    Case(
        "a petite stitch outside a close-up",
        {PATTERN: key_line('{moss: E2, spool: "10", stitch: petite}')},
        "series/garden-year/fern/chart.txt:2:1: 'r' at column 1, row 1 is petite stitch, and a chart cannot say in which corner; write '.' there, and the mark in a close-up",
    ),
    Case(
        "a quarter stitch outside a close-up",
        {PATTERN: key_line('{moss: E2, spool: "10", stitch: quarter}')},
        "series/garden-year/fern/chart.txt:2:1: 'r' at column 1, row 1 is quarter stitch, and a chart cannot say in which corner; write '.' there, and the mark in a close-up",
    ),
    Case(
        "two colours side by side in one stitch",
        {PATTERN: close_up("kk", "rr")},
        "series/garden-year/fern/pattern.yaml:21:7: 'kk' over 'rr' does not say how the two share the stitch at column 3, row 2; for two three-quarters write 'k/' over '/r' or '\\k' over 'r\\', as the line between them runs",
    ),
    Case(
        "two colours on both diagonals of one stitch",
        {PATTERN: close_up("rk", "kr")},
        "series/garden-year/fern/pattern.yaml:21:7: 'rk' over 'kr' does not say how the two share the stitch at column 3, row 2; for two three-quarters write 'r/' over '/k' or '\\r' over 'k\\', as the line between them runs",
    ),
    Case(
        "a dividing line on the wrong diagonal",
        {PATTERN: close_up("/k", "r/")},
        "series/garden-year/fern/pattern.yaml:21:7: '/k' over 'r/' draws no line between two marks, at column 3, row 2; two three-quarters are written 'A/' over '/B', or '\\A' over 'B\\'",
    ),
    Case(
        "a dividing line with one mark on both sides",
        {PATTERN: close_up("k/", "/k")},
        "series/garden-year/fern/pattern.yaml:21:7: 'k/' over '/k' draws no line between two marks, at column 3, row 2; two three-quarters are written 'A/' over '/B', or '\\A' over 'B\\'",
    ),
    Case(
        "a dividing line beside bare cloth",
        {PATTERN: close_up("\\k", ".\\")},
        "series/garden-year/fern/pattern.yaml:21:7: '\\k' over '.\\' draws no line between two marks, at column 3, row 2; two three-quarters are written 'A/' over '/B', or '\\A' over 'B\\'",
    ),
    Case(
        "a braid that is parted",
        {BRAID: GLIMMER.replace("strands: 1", "strands: 3")},
        "threads/glow.yaml:3:10: a braid with 3 strands; a braid is used whole: write 1, or take 'braid' away",
    ),
    Case(
        "strands of a braid",
        {
            BRAID: GLIMMER,
            PATTERN: key_line('{moss: {card: glow, number: G3}, spool: "10", strands: {moss: 2}}'),
        },
        "series/garden-year/fern/pattern.yaml:9:62: the braid Glow Braid is used whole, one strand of it; take 'moss' out of 'strands'",
    ),
    Case(
        "a braid in a blend",
        {
            BRAID: GLIMMER,
            PATTERN: key_line('{moss: [E2, {card: glow, number: G3}], spool: "10"}'),
        },
        "series/garden-year/fern/pattern.yaml:9:18: a blend with the braid Glow Braid, which is used by itself; give the braid a key line of its own",
    ),
    Case(
        "a thread of a card that is not there",
        {BRAID: GLIMMER, PATTERN: key_line('{moss: {card: glow-, number: G3}, spool: "10"}')},
        "series/garden-year/fern/pattern.yaml:9:20: there is no thread card 'glow-'; did you mean 'glow'? (or write threads/NAME.yaml)",
    ),
    Case(
        "a number that the other card lacks",
        {BRAID: GLIMMER, PATTERN: key_line('{moss: {card: glow, number: E2}, spool: "10"}')},
        "series/garden-year/fern/pattern.yaml:9:34: Glow Braid has no colour 'E2'; known in threads/glow.yaml: G3 rime; or add it there",
    ),
    Case(
        "a card without a number",
        {BRAID: GLIMMER, PATTERN: key_line('{moss: {card: glow}, spool: "10"}')},
        "series/garden-year/fern/pattern.yaml:9:13: 'number' is missing in a thread of another card; add it within the braces, for example number: G3",
    ),
    Case(
        "two key lines with the same thread of another card",
        {
            BRAID: GLIMMER,
            PATTERN: (
                KEY_LINE + '  k: {moss: K4, spool: "12"}\n',
                '  r: {moss: {card: glow, number: G3}, spool: "10"}\n'
                '  k: {moss: {number: G3, card: glow}, spool: "12"}\n',
            ),
        },
        "series/garden-year/fern/pattern.yaml:10:13: 'k' and 'r' are stitched alike in 'moss', both with 'G3'; change the one that is a slip: in 'spool' they are two",
    ),
    Case(
        "a word for yes that is none",
        {MOSS: ("dyed: plain", "dyed: plain\nbraid: silver")},
        "threads/moss.yaml:8:8: 'braid' is 'silver'; write true or false",
    ),
)
