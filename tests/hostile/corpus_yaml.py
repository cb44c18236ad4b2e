"""Files of names and values that are built to hurt whoever reads them."""

from tests.content_builder import CHART, CLOTH, FERN, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.hostile.case import Case, safe, told

STORY = f"{FERN}/story.md"


def _nested(depth: int) -> str:
    return "".join(f"{' ' * level}a:\n" for level in range(depth))


def _laughs(open_with: str = "&a{0} [", item: str = "*a{0},", times: int = 9) -> str:
    lines = ["a0: &a0 lol"]
    for level in range(1, 10):
        items = item.format(level - 1) * times
        lines.append(f"a{level}: {open_with.format(level)}{items}]")
    return "\n".join(lines) + "\n"


def _card(old: str, new: str) -> dict:
    return {MOSS: (old, new)}


CASES: tuple[Case, ...] = (
    told("a thousand million laughs", {MOSS: _laughs()}, f"needs-quotes {MOSS}", heavy=True),
    told("an anchor within itself", {MOSS: "a: &a [*a, *a]\n"}, f"needs-quotes {MOSS}"),
    told("an anchor that stands alone", {MOSS: TINY[MOSS] + "more: &a\n"}, f"needs-quotes {MOSS}"),
    told("an alias of nothing", _card("length: 8 m", "length: *nothing"), f"needs-quotes {MOSS}"),
    told("merged names", {MOSS: "x: &x {name: a}\n<<: *x\n" + TINY[MOSS]}, f"needs-quotes {MOSS}"),
    told("merged names of nothing", {MOSS: "<<: {name: a}\n" + TINY[MOSS]}, f"name-unknown {MOSS}"),
    told(
        "a tag that runs a program",
        _card("length: 8 m", "length: !!python/object/apply:os.system ['touch /tmp/owned']"),
        f"needs-quotes {MOSS}",
    ),
    told("a tag of an object", {MOSS: "!!python/object:os.path {}\n"}, f"needs-quotes {MOSS}"),
    told(
        "a tag of a module",
        _card("length: 8 m", "length: !!python/name:os.system"),
        f"needs-quotes {MOSS}",
    ),
    told("a tag of its own", _card("length: 8 m", "length: !long 8 m"), f"needs-quotes {MOSS}"),
    told(
        "a tag that means text", _card("length: 8 m", "length: !!str 8 m"), f"needs-quotes {MOSS}"
    ),
    told(
        "a tag that means bytes",
        _card("length: 8 m", "length: !!binary AAAA"),
        f"needs-quotes {MOSS}",
    ),
    safe("a short form for tags", {MOSS: "%TAG ! tag:example.org,2026:\n---\n" + TINY[MOSS]}),
    told(
        "a version of the future", {MOSS: "%YAML 9.9\n---\n" + TINY[MOSS]}, f"line-unclear {MOSS}"
    ),
    told("two documents", {MOSS: TINY[MOSS] + "---\nname: other\n"}, f"second-document {MOSS}"),
    told("a name twice", {MOSS: TINY[MOSS] + "name: Other\n"}, f"name-repeated {MOSS}"),
    told(
        "a name a thousand times",
        {MOSS: TINY[MOSS] + "name: Other\n" * 1000},
        f"name-repeated {MOSS}",
    ),
    told(
        "ten thousand brackets", {MOSS: "[" * 10_000 + "]" * 10_000}, f"too-deep {MOSS}", heavy=True
    ),
    told("ten thousand braces", {MOSS: "{a: " * 10_000}, f"too-deep {MOSS}"),
    told(
        "ten thousand dashes on a line",
        {MOSS: "- " * 10_000 + "a\n"},
        f"too-deep {MOSS}",
    ),
    told("ten thousand question marks", {MOSS: "? " * 10_000 + "a\n"}, f"too-deep {MOSS}"),
    told("a thousand names within each other", {MOSS: _nested(1000)}, f"too-deep {MOSS}"),
    told("a list as a name", {MOSS: TINY[MOSS] + "? [a, b]\n: c\n"}, f"name-not-a-word {MOSS}"),
    told("a group as a name", {MOSS: TINY[MOSS] + "? {a: b}\n: c\n"}, f"name-not-a-word {MOSS}"),
    told(
        "a million values",
        {MOSS: "a: [" + "1," * 900_000 + "]\n"},
        f"too-many-values {MOSS}",
        heavy=True,
    ),
    told(
        "sixty thousand names",
        {MOSS: "".join(f"a{n}: 1\n" for n in range(60_000))},
        f"too-many-values {MOSS}",
    ),
    told(
        "a line of a million letters",
        _card("length: 8 m", "length: " + "x" * 1_000_000),
        f"not-a-measure {MOSS}",
    ),
    told("a name of a million letters", {MOSS: "x" * 1_000_000 + ": 1\n"}, f"indentation {MOSS}"),
    told(
        "a quote open to the end of a megabyte",
        {MOSS: "a: '" + "b\n" * 500_000},
        f"quote-open {MOSS}",
    ),
    told(
        "a number of ten thousand figures",
        _card("tex: 25", "tex: " + "9" * 10_000),
        f"not-a-number {MOSS}",
    ),
    told("a number beyond all numbers", _card("tex: 25", "tex: 1e400"), f"not-a-number {MOSS}"),
    told("a number that is none", _card("tex: 25", "tex: .nan"), f"not-a-number {MOSS}"),
    told("a number without end", _card("tex: 25", "tex: .inf"), f"not-a-number {MOSS}"),
    told(
        "a number in base eight", _card("strands: 6", "strands: 0o14"), f"not-whole-number {MOSS}"
    ),
    told(
        "a number in base sixteen", _card("strands: 6", "strands: 0x6"), f"not-whole-number {MOSS}"
    ),
    told("a number in sixties", _card("strands: 6", "strands: 1:30"), f"not-whole-number {MOSS}"),
    told(
        "a number with underlines", _card("strands: 6", "strands: 1_2"), f"not-whole-number {MOSS}"
    ),
    told(
        "figures of another script",
        _card("strands: 6", "strands: \u0666"),
        f"not-whole-number {MOSS}",
    ),
    told(
        "figures of full width", _card("strands: 6", "strands: \uff16"), f"not-whole-number {MOSS}"
    ),
    told(
        "a number written small above",
        _card("strands: 6", "strands: \u00b2"),
        f"not-whole-number {MOSS}",
    ),
    told("less than nothing", _card("strands: 6", "strands: -6"), f"out-of-range {MOSS}"),
    told("a fraction over nothing", _card("length: 8 m", "length: 1/0 m"), f"not-a-measure {MOSS}"),
    told("nothing at all", _card("strands: 6", "strands: ~"), f"not-whole-number {MOSS}"),
    told("the word null", _card("strands: 6", "strands: null"), f"not-whole-number {MOSS}"),
    told("a truth for a number", _card("strands: 6", "strands: true"), f"not-whole-number {MOSS}"),
    told(
        "a day for a number", _card("strands: 6", "strands: 2026-02-30"), f"not-whole-number {MOSS}"
    ),
    told(
        "a day that is a number",
        {SERIES: ("date: 2026-11-20", "date: 20261120")},
        f"day-form {SERIES}",
    ),
    told(
        "the thirtieth of February",
        {SERIES: ("date: 2026-11-20", "date: 2026-02-30")},
        f"no-such-day {SERIES}",
    ),
    told(
        "a year of five figures",
        {SERIES: ("date: 2026-11-20", "date: 12026-11-20")},
        f"day-form {SERIES}",
    ),
    told(
        "the year nought",
        {SERIES: ("date: 2026-11-20", "date: 0000-01-01")},
        f"year-range {SERIES}",
    ),
    told(
        "a zone that is a path",
        {SERIES: ("09:00 Europe/London", "09:00 ../../../../etc/passwd")},
        f"zone-unknown {SERIES}",
    ),
    told(
        "a zone from the root",
        {SERIES: ("09:00 Europe/London", "09:00 /etc/localtime")},
        f"zone-unknown {SERIES}",
    ),
    told(
        "an hour that is skipped",
        {SERIES: ("2027-01-15 09:00", "2027-03-28 01:30")},
        f"no-such-time {SERIES}",
    ),
    told(
        "a rule of the fifth Sunday",
        {PATTERN: ("second Sunday", "fifth Sunday")},
        f"rule-not-every-year {PATTERN}",
    ),
    told(
        "a rule of a million days",
        {PATTERN: ("second Sunday of May", "9999999 days before Easter")},
        f"rule-form {PATTERN}",
    ),
    told("a cloth of no threads", {CLOTH: ("count: 28", "count: 0")}, f"out-of-range {CLOTH}"),
    told(
        "a cloth of a million threads",
        {CLOTH: ("count: 28", "count: 1000000")},
        f"out-of-range {CLOTH}",
    ),
    told(
        "a piece without a size",
        {FINISH: ("0,0 100,0 100,100 0,100", "0,0 0,0 0,0")},
        f"outline-short {FINISH}",
    ),
    told(
        "a piece of one line",
        {FINISH: ("0,0 100,0 100,100 0,100", "0,0 50,0 100,0")},
        f"outline-flat {FINISH}",
    ),
    told(
        "a piece beyond the horizon",
        {FINISH: ("0,0 100,0 100,100 0,100", "0,0 999999,0 9,9")},
        f"out-of-range {FINISH}",
    ),
    told(
        "an arc of no radius to a point beyond the stars",
        {FINISH: ("0,0 100,0 100,100 0,100", "M0,0 A1e-99 1e-99 0 0 0 9e99,1 L0,5 Z")},
        f"out-of-range {FINISH}",
    ),
    told(
        "a curve to a point beyond the stars",
        {FINISH: ("0,0 100,0 100,100 0,100", "M0,0 Q9e99 9e99 9e99,1 L0,5 Z")},
        f"out-of-range {FINISH}",
    ),
    told(
        "a hundred thousand curves",
        {FINISH: ("0,0 100,0 100,100 0,100", "M0,0 " + "Q900000 900000 0,0 " * 100_000 + "Z")},
        f"list-long {FINISH}",
        heavy=True,
    ),
    told(
        "a million points",
        {PATTERN: ("2.5,2.5 3,3", "2.5,2.5 " * 200_000)},
        f"list-long {PATTERN}",
        heavy=True,
    ),
    told(
        "a stitch outside the chart",
        {PATTERN: ("2.5,2.5 3,3", "99999,99999")},
        f"point-outside {PATTERN}",
    ),
    told(
        "a close-up outside the chart",
        {PATTERN: ("at: 3,2", "at: 99999,99999")},
        f"close-up-outside {PATTERN}",
    ),
    told("a close-up at nought", {PATTERN: ("at: 3,2", "at: 0,0")}, f"close-up-outside {PATTERN}"),
    told(
        "a sound line of ten thousand levels in a story",
        {STORY: "> " * 10_000 + "a\n"},
        f"prose-too-deep {STORY}",
    ),
    told(
        "a list of ten thousand levels in a story",
        {STORY: "1. " * 9_000 + "a\n"},
        f"prose-too-deep {STORY}",
    ),
    told(
        "a list set in further and further",
        {STORY: "".join(f"{'    ' * n}- a\n" for n in range(60))},
        f"prose-too-deep {STORY}",
    ),
    told("a story of a megabyte", {STORY: "a\n\n" * 400_000}, f"prose-long {STORY}", heavy=True),
    told("a story of open brackets", {STORY: "[" * 25_000}, f"prose-brackets {STORY}"),
    told(
        "a story of pictures without end",
        {STORY: "![" * 12_000},
        f"prose-brackets {STORY}",
    ),
    told(
        "a story of links without end",
        {STORY: "[a](" * 7_000},
        f"prose-brackets {STORY}",
    ),
    told(
        "a story of marks without end",
        {STORY: "<a " * 9_000},
        f"prose-brackets {STORY}",
    ),
    safe("a story of headings", {STORY: "# a\n" * 7_000}),
    safe("a story of lines drawn across", {STORY: "---\n" * 3_000}),
    safe("a story of stars", {STORY: "*a **b ***c " * 2_400}),
    safe("a story of one long table", {STORY: "a|b\n-|-\n" + "1|2\n" * 7_000}, heavy=True),
    told("a hundred thousand remarks", {MOSS: "# a\n" * 400_000}, f"file-empty {MOSS}"),
    told("a megabyte of spaces", {MOSS: " " * 1_900_000}, f"file-empty {MOSS}"),
    safe("a sound file, then a megabyte of lines", {MOSS: TINY[MOSS] + "\n" * 1_000_000}),
    told(
        "a notice of every letter",
        {CHART: "".join(map(chr, range(0x4E00, 0x9E00)))},
        f"chart-large {CHART}",
    ),
)
