"""What an author's Markdown says: as HTML, its links and pictures with their places, its plain paragraphs.

The only module that knows the Markdown library and the sanitiser.
"""

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import unescape
from html.parser import HTMLParser
from typing import Any

# Without one of these no text has a link (CommonMark 0.31.2, 6.3 Links, 6.5 Autolinks, 6.6 Raw HTML).
_MAY_LINK = re.compile(r"\][(\[:\s]|<")
# Without one of these no text has a picture (6.4 Images, 6.6 Raw HTML).
_MAY_PICTURE = re.compile(r"!\[|<img", re.IGNORECASE)
# What stands before the address of a link: '](', '](<', '<', ']: ', or the quotes of an HTML attribute.
_LEADS_IN = r"(?:\]\(\s*<?|<|\]:\s*<?|=\s*[\"']?)"
_MAIL = "mailto:"
_NUMBERED = re.compile(r"( {0,3})(\d{1,3})([.)])(?=[ \t]+\S)", re.ASCII)
_ENTRY = re.compile(r"( {0,3})(?:[-*+]|\d{1,3}\.)[ \t](?=\S)", re.ASCII)
# What a page keeps of HTML; of other tags only the words between them stay.
TAGS = {
    *("p", "br", "hr", "em", "strong", "code", "blockquote", "ul", "ol", "li"),
    *("h1", "h2", "h3", "h4", "a", "table", "thead", "tbody", "tr", "th", "td"),
}


@dataclass(frozen=True)
class MarkdownLink:
    """Where a link leads or a picture lies, and where in the text that is written: line and column count
    from 1."""

    address: str
    line: int
    column: int


def as_html(text: str) -> str:
    """HTML as the library gives it: whatever the author wrote is still in it, markup of her own too."""
    import markdown  # slow to load, and most texts are only looked through for links

    return markdown.markdown(
        _set_in(_with_full_stops(text)),
        extensions=["tables", "sane_lists", "smarty"],
        output_format="html",
    )


def _with_full_stops(text: str) -> str:
    """Lists numbered '1)', '2)' as the library knows them, also where only some of the numbers have a bracket. Such
    a list begins a paragraph with 1 and goes on from line to line, or from paragraph to paragraph; numbers that
    do not follow are left as they are."""
    lines, last, above = text.split("\n"), 0, ""
    for at, line in enumerate(lines):
        entry = _NUMBERED.match(line)
        number = int(entry[2]) if entry else 0
        if entry and ((number == 1 and not above.strip()) or (last and number == last + 1)):
            lines[at] = f"{entry[1]}{entry[2]}.{line[entry.end() :]}"
            last = number
        elif line[:1].strip() and not above.strip():
            last = 0  # a paragraph of its own
        above = line
    return "\n".join(lines)


def _set_in(text: str) -> str:
    """Entries below another, set in as far as its words (CommonMark 0.31.2, 5.2 List items), as the library knows them:
    by four spaces."""
    lines, words_at = text.split("\n"), 0
    for at, line in enumerate(lines):
        entry = _ENTRY.match(line)
        if entry and not entry[1]:
            words_at = len(entry[0])
        elif entry and words_at and len(entry[1]) >= words_at:
            lines[at] = f"    {line.lstrip()}"
        elif line[:1].strip() and not lines[at - 1].strip():
            words_at = 0  # a paragraph of its own
    return "\n".join(lines)


@dataclass(frozen=True)
class Heading:
    """`id` is where a link finds it on its page."""

    level: int
    id: str
    words: str


def as_page(text: str) -> tuple[str, tuple[Heading, ...]]:
    """HTML of a text of our own, with an id at each heading, and its headings in order."""
    import markdown

    reader = markdown.Markdown(
        extensions=["tables", "sane_lists", "fenced_code", "toc"], output_format="html"
    )
    html = reader.convert(text)
    return html, tuple(_headings(reader.toc_tokens))  # type: ignore[attr-defined]


def _headings(tokens: list[dict[str, Any]]) -> Iterator[Heading]:
    for token in tokens:
        yield Heading(token["level"], token["id"], unescape(token["name"]))
        yield from _headings(token["children"])


def as_clean_html(text: str) -> str:
    """HTML with plain elements only; scripts, styles, pictures and odd links are dropped."""
    return _cleaned(as_html(text))


def _cleaned(html: str) -> str:
    import nh3

    return nh3.clean(
        html,
        tags=TAGS,
        attributes={"a": {"href"}, "th": {"scope"}},
        url_schemes={"http", "https", "mailto"},
        link_rel="noopener",
        attribute_filter=_leading_out,
    )


def _leading_out(tag: str, attribute: str, value: str) -> str | None:
    """No link stays that does not lead to another place: a page has no other to offer."""
    leads_out = value.strip().lower().startswith(("http://", "https://", _MAIL))
    return value if attribute != "href" or leads_out else None


def links(text: str) -> tuple[MarkdownLink, ...]:
    """Every link that a reader could follow, in the order of the text; none from code or escaped signs."""
    if not _MAY_LINK.search(text):
        return ()
    html = as_html(text)
    written = _Reader(html).addresses
    # Of broken markup the sanitiser may make a link that nobody meant; it would be shown all the same.
    made = [one for one in _Reader(_cleaned(html)).addresses if one not in written]
    return _placed(written + made, text)


def pictures(text: str) -> tuple[MarkdownLink, ...]:
    """Every picture that the text would show, in its order. `as_clean_html` drops them all."""
    return _placed(_Reader(as_html(text)).pictures, text) if _MAY_PICTURE.search(text) else ()


def _placed(addresses: Iterable[str], text: str) -> tuple[MarkdownLink, ...]:
    found: list[MarkdownLink] = []
    searched_to: dict[str, int] = {}  # address → where the next one like it may begin
    for address in addresses:
        start, end = _written(text, address, searched_to.get(address, 0))
        searched_to[address] = end
        line_start = text.rfind("\n", 0, start) + 1
        found.append(MarkdownLink(address, text.count("\n", 0, start) + 1, start - line_start + 1))
    return tuple(found)


def paragraphs(text: str) -> tuple[str, ...]:
    """The words of its plain paragraphs, each on one line; no headings, lists, quotations or tables."""
    return tuple(filter(None, _Reader(as_html(text)).paragraphs))


def _written(text: str, address: str, start: int) -> tuple[int, int]:
    """Where `address` stands from `start` on, first where a link would have it."""
    for said in (address, address.removeprefix(_MAIL)):
        for pattern in (f"{_LEADS_IN}({re.escape(said)})", f"({re.escape(said)})"):
            match = said and re.compile(pattern, re.IGNORECASE).search(text, start)
            if match:
                return match.span(1)
    nameless = re.compile(r"\]\((\s*)\)").search(text, start)
    return nameless.span(1) if nameless and not address else (start, start)


class _Reader(HTMLParser):
    def __init__(self, html: str) -> None:
        super().__init__()
        self.addresses: list[str] = []
        self.pictures: list[str] = []
        self.paragraphs: list[str] = []
        self._open: list[str] = []
        self.feed(html)
        self.close()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        if tag == "a" and "href" in given:
            self.addresses.append(given["href"] or "")
        if tag == "img":
            self.pictures.append(given.get("src") or "")
        if tag in ("p", "li", "blockquote"):
            self._open.append(tag)
        if self._open == ["p"] and tag == "p":
            self.paragraphs.append("")
        if tag == "br":
            self.handle_data(" ")

    def handle_endtag(self, tag: str) -> None:
        if self._open and self._open[-1] == tag:
            self._open.pop()
            if tag == "p" and not self._open:
                self.paragraphs[-1] = " ".join(self.paragraphs[-1].split())

    def handle_data(self, data: str) -> None:
        if self._open == ["p"]:
            self.paragraphs[-1] += data
