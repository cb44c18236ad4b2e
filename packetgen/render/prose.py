"""An author's Markdown as safe HTML. The only module that knows the Markdown library and the sanitiser."""

import re

import markdown
import nh3
from markupsafe import Markup

_TAGS = {
    *("p", "br", "hr", "em", "strong", "code", "blockquote", "ul", "ol", "li"),
    *("h1", "h2", "h3", "h4", "a", "table", "thead", "tbody", "tr", "th", "td"),
}


def prose(text: str, lower: int = 0) -> Markup:
    """Markdown → HTML with plain elements only; scripts, styles, pictures and odd links are dropped.

    Headings are set `lower` levels further down, to stand under the page's own.
    """
    html = markdown.markdown(
        text, extensions=["tables", "sane_lists", "smarty"], output_format="html"
    )
    clean = nh3.clean(
        html,
        tags=_TAGS,
        attributes={"a": {"href"}, "th": {"scope"}},
        url_schemes={"http", "https", "mailto"},
        link_rel="noopener",
    )
    lowered = re.sub(
        r"(</?h)([1-6])>", lambda tag: f"{tag[1]}{min(6, int(tag[2]) + lower)}>", clean
    )
    return Markup(lowered.replace("<th>", '<th scope="col">'))
