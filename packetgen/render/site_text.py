"""Words and headings as the web site needs them."""

import re

from markupsafe import Markup

from packetgen.nouns import listed as listed
from packetgen.nouns import plural
from packetgen.render.prose import prose
from packetgen.units import plain

_HEADING = re.compile(r"<(/?)h([1-6])>")
_LOWEST_HEADING = 6


def counted(number: int, thing: str) -> str:
    """1, 'skein' → '1 skein'; 1200, 'box' → '1,200 boxes'."""
    return f"{number:,} {thing if number == 1 else plural(thing)}"


def about_metres(length_m: float) -> str:
    """The length of a skein or spool: 8 → '8 m', 45.72 → '45.7 m'."""
    return f"{plain(round(length_m, 1))} m"


def capital(words: str) -> str:
    """'sells PDFs' → 'Sells PDFs'; nothing else is touched."""
    return words[:1].upper() + words[1:]


def prose_under(text: str, level: int) -> Markup:
    """An author's Markdown whose topmost headings become `level`, and whose levels never skip one.

    Wide tables are wrapped so that they scroll by themselves on a narrow screen.
    """
    above: list[int] = []  # the author's levels that enclose the present heading

    def settled(match: re.Match[str]) -> str:
        own = int(match[2])
        if not match[1]:
            while above and above[-1] >= own:
                above.pop()
            above.append(own)
        return f"<{match[1]}h{min(level + len(above) - 1, _LOWEST_HEADING)}>"

    html = _HEADING.sub(settled, str(prose(text)))
    html = html.replace("<table>", '<div class="scroll" tabindex="0"><table>')
    return Markup(html.replace("</table>", "</table></div>"))
