"""Signs in an author's Markdown that do nothing, or vanish, though no rule forbids them: a link that is not
closed or is parted, bold that does not end, a tag of HTML, a list that is none. Only what is surely a slip is
told."""

import re
from collections.abc import Iterator

from packetgen.diagnostics import Report
from packetgen.load.prose_lists import Slip, unmade_lists, unnumbered
from packetgen.load.words import said
from packetgen.markdown_text import TAGS

_PARAGRAPH = re.compile(r"(?:[^\n]*\S[^\n]*(?:\n|$))+")
# What is printed as it stands: lines set in as code is, lines drawn across the page, escaped signs, code.
_SET_IN = re.compile(r"^(?: {4}|\t).*$", re.MULTILINE)
_RULE = re.compile(r"^ {0,3}([-*_])(?:[ \t]*\1)+[ \t]*$", re.MULTILINE)
_ESCAPED = re.compile(r"\\[^\w\s]")
_CODE = re.compile(r"(?<!`)(`+)(?!`)(.+?)(?<!`)\1(?!`)", re.DOTALL)
_LINK = re.compile(r"\[([^\[\]]{0,200})\]\(")
# An address that a blank or the end of the text cuts off; a title between quotes may still follow a blank.
_CUT_OFF = re.compile(r"(?:https?:|mailto:|www\.)[^\s()]*(?:\s+(?![\"'\s])|\s*$)")
_PARTED = re.compile(r"(\[[^\[\]]{1,200}\])\s+(?=\((?:https?:|mailto:|www\.)[^\s()]+\))")
_STRUCK = re.compile(r"(?<!~)~~(?![~\s])[^~]{0,500}?(?<!\s)~~(?!~)")
_STARS = re.compile(r"\*+")
_BEFORE_BOLD = " \n(\"'“‘*_>-"
_ONE_STAR = re.compile(r"([^*\n]*[^*\s])\*(?!\*)")
_END_BOLD = "write two more where the bold words end"
_TAG = re.compile(r"<(/?)([A-Za-z][A-Za-z0-9]{0,20})(?:\s[^<>]{0,500})?/?>")
_HEADING = re.compile(r"^ {0,3}(?P<signs>#{1,6})[ \t]*[^\s#]", re.MULTILINE)
_TITLE = re.compile(r"[A-Z]\w*(?: [^\s.:;!?,|]+){0,7}")
_PICTURE = "img"  # told as a picture


def complain_of_slips(text: str, report: Report) -> None:
    """`report(code, line=…, column=…, **facts)` hears of each, as advice; line and column count from 0."""
    paragraphs, headings = list(_PARAGRAPH.finditer(text)), _HEADING.search(text)
    for number, paragraph in enumerate(paragraphs):
        words = paragraph[0]
        for sign in (_SET_IN, _RULE, _ESCAPED, _CODE):
            words = sign.sub(_blanked, words)
        before, after = (
            paragraphs[one][0] if 0 <= one < len(paragraphs) else ""
            for one in (number - 1, number + 1)
        )
        found = [slip for find in _FINDERS for slip in find(words)]
        if not found:
            found = [*unnumbered(before, words, after), *_unmarked(words, after, headings)]
        for at, code, facts in found:
            place = paragraph.start() + at
            column = place - text.rfind("\n", 0, place) - 1
            report(code, line=text.count("\n", 0, place), column=column, **facts)


def _open_links(words: str) -> Iterator[Slip]:
    for link in _LINK.finditer(words):
        if ")" not in words[link.end() :] or _CUT_OFF.match(words, link.end()):
            yield link.start(), "prose-link-open", {"link": said(link[0])}


def _open_bold(words: str) -> Iterator[Slip]:
    """Two stars that begin bold, which the paragraph never ends, or not with two."""
    opened = None
    for stars in _STARS.finditer(words):
        number = len(stars[0])
        before, after = words[: stars.start()][-1:], words[stars.end() :][:1]
        if opened is not None and before.strip() and number in (2, 3):
            if number == 3:
                last = re.split(r"\s", words[opened + 2 : stars.start()])[-1]
                yield stars.start(), "prose-bold-long", {"word": said(last)}
            opened = None
        elif opened is None and number == 2 and after.strip() and not before.strip(_BEFORE_BOLD):
            opened = stars.start()
    if opened is not None:
        after = re.split(r"\s|\*", words[opened + 2 :], maxsplit=1)[0]
        alone = _ONE_STAR.match(words, opened + 2)
        ended = re.split(r"\s", alone[1])[-1] if alone else ""
        hint = f"write a second star behind {said(ended)}, where one stands" if alone else _END_BOLD
        yield opened, "prose-bold-open", {"word": said(after), "hint": hint}


def _tags(words: str) -> Iterator[Slip]:
    """Tags that the page leaves out; of a pair only the one that opens."""
    opened = set()
    for tag in _TAG.finditer(words):
        name = tag[2].lower()
        if name in TAGS or name == _PICTURE or (tag[1] and name in opened):
            continue
        opened.add(name)
        yield tag.start(), "prose-tag", {"tag": said(tag[0])}


def _parted_links(words: str) -> Iterator[Slip]:
    for link in _PARTED.finditer(words):
        yield link.start(), "prose-link-parted", {"link": said(link[1])}


def _struck(words: str) -> Iterator[Slip]:
    for struck in _STRUCK.finditer(words):
        yield struck.start(), "prose-struck", {"words": said(struck[0])}


def _unmarked(words: str, after: str, headings: re.Match[str] | None) -> Iterator[Slip]:
    """A few words by themselves, with no sign at their end, above a paragraph of a text that has `headings`."""
    line = words.strip()
    if headings and after and _TITLE.fullmatch(line) and not _HEADING.match(after):
        right = f"{headings['signs']} {line}"
        yield 0, "prose-heading-lost", {"words": said(line), "right": said(right)}


_FINDERS = (_open_links, _parted_links, _open_bold, _struck, _tags, unmade_lists)


def _blanked(found: re.Match[str]) -> str:
    """As long, and with the same ends of lines."""
    return re.sub(r"[^\n]", " ", found[0])
