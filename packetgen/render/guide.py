"""The guide: pages of Markdown in the look of the site, with an index at their side."""

import re
from collections.abc import Mapping
from dataclasses import dataclass

from jinja2 import Environment
from markupsafe import Markup

from packetgen.markdown_text import Heading, as_page
from packetgen.model import Look
from packetgen.render.faces import web_font_files
from packetgen.render.look_style import site_style
from packetgen.render.site_furniture import font_licence
from packetgen.render.templates import fill

INDEX = "index.md"
_LINK = re.compile(r'(<a href=")(?![a-z]+:)([^"#]*)\.md(#[^"]*)?"')
_TITLE = re.compile(r"^# (.+)$", re.MULTILINE)
_LISTED = re.compile(r"\]\(([\w-]+\.md)\)")
_TABLE = re.compile(r"<table>.*?</table>", re.DOTALL)


@dataclass(frozen=True)
class Page:
    """`file` is its name among the sources, `address` among the pages."""

    file: str
    title: str
    text: str

    @property
    def address(self) -> str:
        return self.file.removesuffix(".md") + ".html"


def guide_files(sources: Mapping[str, bytes], env: Environment) -> dict[str, bytes]:
    """Every file of the guide by its path, made from the sources by theirs. Raises TemplateFault.

    Sources that end in .md become pages, in the order in which the index links to them; all others are
    taken over as they are.
    """
    pages = pages_of(sources)
    files = {path: data for path, data in sources.items() if not path.endswith(".md")}
    for number, page in enumerate(pages):
        html, headings = as_page(page.text)
        files[page.address] = fill(
            env,
            "guide/page.html",
            page=page,
            body=Markup(_dressed(html)),
            headings=_chapters(headings),
            pages=pages,
            before=pages[number - 1] if number else None,
            after=pages[number + 1] if number + 1 < len(pages) else None,
        ).encode()
    look = Look()
    style = f"{site_style('fonts/', look)}\n{fill(env, 'guide/guide.css')}\n"
    fonts = {f"fonts/{name}": data for name, data in web_font_files(look).items()}
    fonts["fonts/OFL.txt"] = font_licence()
    return files | fonts | {"guide.css": style.encode()}


def pages_of(sources: Mapping[str, bytes]) -> tuple[Page, ...]:
    """The pages: the index, those that it links to in that order, then any other by name."""
    texts = {path: data.decode() for path, data in sources.items() if path.endswith(".md")}
    listed = [name for name in _LISTED.findall(texts[INDEX]) if name in texts]
    order = dict.fromkeys([INDEX, *listed, *sorted(texts)])
    return tuple(Page(path, _title(texts[path]), texts[path]) for path in order)


def _title(text: str) -> str:
    found = _TITLE.search(text)
    return found[1].replace("`", "") if found else ""


def _chapters(headings: tuple[Heading, ...]) -> tuple[Heading, ...]:
    """What the list of contents of a page shows: its headings of the second level."""
    return tuple(heading for heading in headings if heading.level == 2)


def _dressed(html: str) -> str:
    """Links lead to pages instead of sources; what may be wider than the page can be scrolled with keys."""
    html = _LINK.sub(r'\1\2.html\3"', html)
    return _TABLE.sub(_scrolled, html).replace("<pre>", '<pre tabindex="0">')


def _scrolled(table: re.Match[str]) -> str:
    return f'<div class="scroll" tabindex="0" role="region" aria-label="Table">{table[0]}</div>'
