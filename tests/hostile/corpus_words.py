"""Markup, script and addresses where an author may write words; and charts that a spreadsheet would run."""

from tests.content_builder import CHART, FERN, FINISH, MOSS, PATTERN, SERIES, TINY
from tests.hostile.case import Case, safe, told

STORY = f"{FERN}/story.md"
NOTES = f"{FERN}/stitching.md"
WELCOME = "series/garden-year/welcome.md"
STEPS = "finishes/shelf/steps.md"

_SCRIPT = "<script>alert(1)</script>"
_BREAKS_OUT = "</title></script></style>--><script>alert(1)</script>"
_ATTRIBUTE = "\\\"'><img src=x onerror=alert(1)>"
_TEMPLATE = "{{ 7*7 }}{% include '/etc/passwd' %}{{ ''.__class__ }}"
_STYLE = "</style><style>*{background:url(http://x.test/)}"

# Where words of an author are printed: file, the words there, and what they are.
_PLACES = (
    (SERIES, "title: The Garden Year", "title", "the title of a series"),
    (SERIES, "tagline: Small patterns.", "tagline", "the tagline"),
    (SERIES, "    name: Wren Alder", "    name", "a designer's name"),
    (SERIES, "    about: Draws what grows by the door.", "    about", "what is said of a designer"),
    (SERIES, "licence: For your own stitching.", "licence", "the licence"),
    (PATTERN, "title: Fern by the Tap", "title", "the title of a pattern"),
    (PATTERN, "about: A fern uncurls.", "about", "what is said of a pattern"),
    (MOSS, "name: Moss Stranded", "name", "the name of a thread"),
    (FINISH, "name: The Shelf", "name", "the name of a piece"),
    (FINISH, "about: A shelf with a back.", "about", "what is said of a piece"),
)
_WORDS = (
    ("a script", _SCRIPT),
    ("an end of everything", _BREAKS_OUT),
    ("an attribute", _ATTRIBUTE),
    ("a template", _TEMPLATE),
    ("a style", _STYLE),
)
_MARKDOWN_FILES = (STORY, NOTES, WELCOME, STEPS)
_MARKDOWN = {
    "a script": f"A {_SCRIPT} b\n\n{_SCRIPT}\n",
    "a picture from elsewhere": "![a](http://x.test/a.png) ![b](//x.test/b.png)\n",
    "a picture with a handler": "<img src=x onerror=alert(1)>\n",
    "a frame": "<iframe src='http://x.test/'></iframe>\n",
    "a drawing with a script": "<svg onload=alert(1)><script>alert(1)</script></svg>\n",
    "formulas with a handler": "<math><mtext><table><mglyph><style><img src onerror=alert(1)>\n",
    "a style": "<style>@import 'http://x.test/a.css'; body{display:none}</style>\n",
    "a style on an element": "<p style='background:url(http://x.test/)'>a</p>\n",
    "a form": "<form action=http://x.test><input name=a><button>b</button></form>\n",
    "an object": "<object data=http://x.test/></object><embed src=http://x.test/>\n",
    "another base": "<base href=http://x.test/><meta http-equiv=refresh content='0;http://x.test'>\n",
    "a remark that never ends": "a <!-- b\n\nc\n",
    "an element that never ends": "a <b <i <script\n",
    "a broken script": "<scr<script>ipt>alert(1)</scr</script>ipt>\n",
    "entities": "&lt;script&gt;alert(1)&lt;/script&gt; &#60;script&#62; &#x3c;img src=x&#x3e;\n",
    "what the library keeps for itself": "\\<script\\> `<script>` wzxhzdk:0 klzzwxh:0000\n",
    "code in a fence": "```\n<script>alert(1)</script>\n```\n\n    <script>alert(2)</script>\n",
}
_LINKS = {
    "a script": "javascript:alert(1)",
    "a script in capitals": "JaVaScRiPt:alert(1)",
    "a script with a colon in disguise": "javascript&colon;alert(1)",
    "a script with a letter in disguise": "&#106;avascript:alert(1)",
    "a script of another kind": "vbscript:msgbox(1)",
    "data": "data:text/html,<script>alert(1)</script>",
    "a file": "file:///etc/passwd",
    "a path": "../../../etc/passwd",
    "no scheme": "//x.test/a",
    "one's own machine": "http://localhost/a",
    "one's own network": "http://192.168.0.1/a",
    "a password": "https://a:b@example.org/",
}
_FAULT_OF_LINK = dict.fromkeys(_LINKS, f"address-scheme {STORY}") | {
    "a path": f"not-an-address {STORY}",
    "no scheme": f"not-an-address {STORY}",
    "one's own machine": f"address-host {STORY}",
    "one's own network": f"address-host {STORY}",
    "a password": f"address-login {STORY}",
}
_FORMULAS = ("=1+1", "+1+1", "-1+1", "@SUM(1)", '=HYPERLINK("http://x.test")', "=cmd|' /C calc'!A0")


def _with(path: str, line: str, name: str, words: str) -> dict:
    quoted = words if words.startswith("\\") else words.replace("\\", "\\\\").replace('"', '\\"')
    return {path: (line, f'{name}: "{quoted[:190]}"')}


CASES: tuple[Case, ...] = (
    *(
        safe(f"{what} in {where}", _with(path, line, name, words))
        for path, line, name, where in _PLACES
        for what, words in _WORDS
        if len(words) <= 60 or "title" not in where
    ),
    *(
        safe(f"{what} in {path.rpartition('/')[2]}", {path: text})
        for path in _MARKDOWN_FILES
        for what, text in _MARKDOWN.items()
        if path == STORY or what in ("a script", "a picture from elsewhere", "a style")
    ),
    *(
        safe(f"{what} in a notice", {SERIES: ("text: The linen is back.", f"text: {text!r}")})
        for what, text in (
            ("a script", _SCRIPT),
            ("a picture with a handler", "<img src=x onerror=a>"),
        )
    ),
    *(
        told(f"a link to {what}", {STORY: f"[a]({link})\n"}, _FAULT_OF_LINK[what])
        for what, link in _LINKS.items()
    ),
    *(
        told(
            f"a link of HTML to {what}", {STORY: f'<a href="{link}">a</a>\n'}, _FAULT_OF_LINK[what]
        )
        for what, link in _LINKS.items()
    ),
    told(
        "a shop that is a script",
        {SERIES: ("https://alder.example/alder", "javascript:alert(1)")},
        f"address-scheme {SERIES}",
    ),
    told(
        "a shop that is a file",
        {SERIES: ("https://alder.example/alder", "file:///etc/passwd")},
        f"address-scheme {SERIES}",
    ),
    told(
        "a counter that is data",
        {PATTERN: ("https://alder.example/by-fern", '"data:text/html,x"')},
        f"address-scheme {PATTERN}",
    ),
    told(
        "an address of a site with a quote",
        {SERIES: TINY[SERIES] + "address: 'https://example.org/\"><b>'\n"},
        f"not-an-address {SERIES}",
    ),
    *(
        told(
            f"a cell with the formula {formula}",
            {
                CHART: None,
                f"{FERN}/chart.csv": f'r,r,b,b\nr,k,"{formula}",\n'.replace('("', '(""').replace(
                    '")', '"")'
                ),
            },
            f"cell-long {FERN}/chart.csv",
        )
        for formula in _FORMULAS
    ),
    safe("a formula for a colour's name", {MOSS: ("name: brick", "name: '=1+1'")}),
    safe(
        "a formula for a colour's number",
        {MOSS: ("number: K4", "number: '=1+1'"), PATTERN: ("{moss: K4,", "{moss: '=1+1',")},
    ),
    told(
        "a million formulas",
        {CHART: None, f"{FERN}/chart.csv": "=A1,=B1\n" * 200_000},
        f"bring-table {FERN}/chart.csv",
        f"chart-large {FERN}/chart.csv",
        heavy=True,
    ),
    told(
        "a table of one long row",
        {CHART: None, f"{FERN}/chart.csv": "rr," * 600_000},
        f"bring-table {FERN}/chart.csv",
        f"chart-large {FERN}/chart.csv",
        heavy=True,
    ),
    told("a chart of a thousand and one", {CHART: "r" * 1001 + "\n"}, f"chart-large {CHART}"),
    told(
        "a chart of two million rows", {CHART: "r\n" * 900_000}, f"chart-large {CHART}", heavy=True
    ),
    told(
        "a chart of twelve thousand strange marks",
        {
            CHART: "\n".join(
                "".join(chr(0x4E00 + (row * 300 + column) % 12_000) for column in range(300))
                for row in range(100)
            )
        },
        f"chart-mark-unknown {CHART}",
        f"key-line-unused {PATTERN}",
        heavy=True,
    ),
    told("a chart of nothing", {CHART: "....\n....\n"}, f"key-line-unused {PATTERN}"),
    told("a chart of no columns", {CHART: "\n\n\n"}, f"chart-empty {CHART}"),
    told(
        "a key of two thousand lines",
        {
            PATTERN: (
                "key:\n",
                "key:\n"
                + "".join(
                    f"  {chr(0x4E00 + n)}: {{moss: X{n}, spool: '9{n}'}}\n" for n in range(2000)
                ),
            )
        },
        f"colour-unknown {PATTERN}",
        f"key-line-unused {PATTERN}",
        f"key-too-long {PATTERN}",
        heavy=True,
    ),
    told(
        "a key of two thousand lines against a card of two thousand colours",
        {
            MOSS: TINY[MOSS]
            + "".join(f'  - {{number: Y{n}, name: c{n}, hex: "#{n:06x}"}}\n' for n in range(1900)),
            PATTERN: (
                "key:\n",
                "key:\n"
                + "".join(
                    f"  {chr(0x4E00 + n)}: {{moss: X{n}, spool: '9{n}'}}\n" for n in range(2000)
                ),
            ),
        },
        f"colour-unknown {PATTERN}",
        f"key-line-unused {PATTERN}",
        f"key-too-long {PATTERN}",
        heavy=True,
    ),
    told(
        "a mark that is a tag",
        {PATTERN: ("  r: {moss", "  '<b>': {moss")},
        f"chart-mark-unknown {CHART}",
        f"mark-long {PATTERN}",
    ),
    safe(
        "marks of markup",
        {
            PATTERN: TINY[PATTERN]
            .replace("  r: {", "  '<': {")
            .replace("  k: {", "  '&': {")
            .replace("colour: r", "colour: '<'")
            .replace("colour: k", "colour: '&'")
            .replace("k..k", "&..&")
            .replace("kk..", "&&.."),
            CHART: "<<bb\n<&..\n",
        },
    ),
    safe(
        "a mark beyond the first plane",
        {
            PATTERN: TINY[PATTERN]
            .replace("  r: {", "  \U0001f331: {")
            .replace("colour: r", "colour: \U0001f331"),
            CHART: "\U0001f331\U0001f331bb\n\U0001f331k..\n",
        },
    ),
)
