"""An author's Markdown as a page prints it."""

import re
from functools import lru_cache

from markupsafe import Markup

from packetgen.markdown_text import as_clean_html


def prose(text: str, lower: int = 0) -> Markup:
    """Markdown → HTML with plain elements only; scripts, styles, pictures and odd links are dropped.

    Headings are set `lower` levels further down, to stand under the page's own.
    """
    lowered = re.sub(
        r"(</?h)([1-6])>", lambda tag: f"{tag[1]}{min(6, int(tag[2]) + lower)}>", _clean(text)
    )
    return Markup(lowered.replace("<th>", '<th scope="col">'))


_clean = lru_cache(maxsize=32)(as_clean_html)  # a story stands on several pages
