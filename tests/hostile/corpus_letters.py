"""Letters that are not what they seem, and files with none."""

from tests.content_builder import CHART, FERN, MOSS, PATTERN, SERIES, TINY
from tests.hostile.case import Case, safe, told

STORY = f"{FERN}/story.md"

CASES: tuple[Case, ...] = (
    told("an empty card", {MOSS: ""}, f"file-empty {MOSS}"),
    told("an empty series", {SERIES: ""}, f"file-empty {SERIES}"),
    told("an empty chart", {CHART: ""}, f"chart-empty {CHART}"),
    told("an empty story", {STORY: ""}, f"file-empty {STORY}"),
    told("nothing but a mark of order", {MOSS: b"\xef\xbb\xbf"}, f"file-empty {MOSS}"),
    safe("a mark of order before a card", {MOSS: b"\xef\xbb\xbf" + TINY[MOSS].encode()}),
    told(
        "a second mark of order",
        {MOSS: b"\xef\xbb\xbf\xef\xbb\xbf" + TINY[MOSS].encode()},
        f"name-unknown {MOSS}",
        f"unseen-character {MOSS}",
    ),
    told(
        "a card in UTF-16 with a mark of order",
        {MOSS: TINY[MOSS].encode("utf-16")},
        f"not-utf8 {MOSS}",
    ),
    told(
        "a card in UTF-16 without one", {MOSS: TINY[MOSS].encode("utf-16-le")}, f"not-text {MOSS}"
    ),
    told("a card in UTF-32", {MOSS: TINY[MOSS].encode("utf-32")}, f"not-utf8 {MOSS}"),
    safe("a card in UTF-7", {MOSS: TINY[MOSS].replace("brick", "br\u00efck").encode("utf-7")}),
    told(
        "letters written longer than need be",
        {MOSS: TINY[MOSS].encode().replace(b"brick", b"br\xc0\xaeck")},
        f"not-utf8 {MOSS}",
    ),
    told(
        "half of a pair",
        {MOSS: TINY[MOSS].encode().replace(b"brick", b"br\xed\xa0\x80ck")},
        f"not-utf8 {MOSS}",
    ),
    told(
        "a letter beyond the last",
        {MOSS: TINY[MOSS].encode().replace(b"brick", b"br\xf4\x90\x80\x80ck")},
        f"not-utf8 {MOSS}",
    ),
    told("a NUL in a card", {MOSS: TINY[MOSS].replace("brick", "br\0ck")}, f"not-text {MOSS}"),
    told("a NUL in a chart", {CHART: "rr\0b\n"}, f"not-text {CHART}"),
    told(
        "a NUL by a backslash",
        {MOSS: ("name: brick", 'name: "br\\0ck"')},
        f"unseen-character {MOSS}",
    ),
    told(
        "a bell in a title",
        {SERIES: ("The Garden Year", "The \x07Garden")},
        f"unseen-character {SERIES}",
    ),
    told(
        "a colour of the terminal in a title",
        {SERIES: ("The Garden Year", "The \x1b[31mGarden")},
        f"unseen-character {SERIES}",
    ),
    told(
        "a colour of the terminal by a backslash",
        {SERIES: ("The Garden Year", '"The \\e[31mGarden"')},
        f"unseen-character {SERIES}",
    ),
    told(
        "writing turned in a title",
        {SERIES: ("The Garden Year", "The \u202eGarden")},
        f"unseen-character {SERIES}",
    ),
    told(
        "writing turned in a story", {STORY: "A \u2066turn\u2069.\n"}, f"unseen-character {STORY}"
    ),
    told(
        "a zero width in a chart",
        {CHART: "rr\u200bbb\nrk..\n"},
        f"row-ragged {CHART}",
        f"unseen-character {CHART}",
    ),
    told(
        "a soft line break in a title",
        {SERIES: ("The Garden Year", "The\u2028Garden")},
        f"unseen-character {SERIES}",
    ),
    told(
        "a letter of nobody in a title",
        {SERIES: ("The Garden Year", "The \ue000Garden")},
        f"unseen-character {SERIES}",
    ),
    told(
        "every control letter",
        {STORY: "".join(map(chr, range(1, 0xA0))) * 50},
        f"unseen-character {STORY}",
    ),
    safe(
        "line ends of two letters",
        {path: text.replace("\n", "\r\n") for path, text in TINY.items()},
    ),
    safe(
        "line ends of the other letter",
        {path: text.replace("\n", "\r") for path, text in TINY.items()},
    ),
    safe("no line end at the end", {path: text.rstrip("\n") for path, text in TINY.items()}),
    told("a tab before a name", {MOSS: ("tex: 25", "\ttex: 25")}, f"indent-not-spaces {MOSS}"),
    told(
        "a wide space before a name",
        {MOSS: ("tex: 25", "\u3000tex: 25")},
        f"indent-not-spaces {MOSS}",
    ),
    told(
        "a mark that sits on another letter",
        {PATTERN: ("  r: {moss", '  "\u0301": {moss'), CHART: "..bb\n.k..\n"},
        f"mark-reserved {PATTERN}",
    ),
    told(
        "a mark of two letters that look like one",
        {PATTERN: ("  r: {moss", '  "r\u0301": {moss')},
        f"mark-long {PATTERN}",
    ),
    told(
        "a mark that cannot be seen",
        {PATTERN: ("  r: {moss", '  "\u00a0": {moss')},
        f"mark-reserved {PATTERN}",
    ),
)
