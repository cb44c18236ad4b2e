"""An author's Markdown as safe HTML. The only module that knows the sanitiser."""

import re
from functools import lru_cache

import nh3
from markupsafe import Markup

from packetgen.markdown_text import as_html

_TAGS = {
    *("p", "br", "hr", "em", "strong", "code", "blockquote", "ul", "ol", "li"),
    *("h1", "h2", "h3", "h4", "a", "table", "thead", "tbody", "tr", "th", "td"),
}


def prose(text: str, lower: int = 0) -> Markup:
    """Markdown → HTML with plain elements only; scripts, styles, pictures and odd links are dropped.

    Headings are set `lower` levels further down, to stand under the page's own.
    """
    lowered = re.sub(
        r"(</?h)([1-6])>", lambda tag: f"{tag[1]}{min(6, int(tag[2]) + lower)}>", _clean(text)
    )
    return Markup(lowered.replace("<th>", '<th scope="col">'))


@lru_cache(maxsize=32)  # a story stands on several pages
def _clean(text: str) -> str:
    return nh3.clean(
        as_html(text),
        tags=_TAGS,
        attributes={"a": {"href"}, "th": {"scope"}},
        url_schemes={"http", "https", "mailto"},
        link_rel="noopener",
    )
