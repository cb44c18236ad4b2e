"""What every site has besides its pages: style, faces and their licence, icon, the page for a wrong address."""

from functools import cache
from importlib.resources import files

from jinja2 import Environment
from markupsafe import Markup

from packetgen.model import Look
from packetgen.render.faces import web_font_files
from packetgen.render.look_style import site_colours, site_style
from packetgen.render.site_head import Head
from packetgen.render.templates import fill

STYLE_FILE, LOST_FILE, TICKS_FILE = "site.css", "404.html", "ticks.js"
_FONTS = "fonts/"
# Joined into one file, so that a page asks for one.
_STYLES = ("site/site.css", "site/pages.css", "site/pattern.css")


def page(env: Environment, template: str, about: Head, **facts: object) -> bytes:
    """A page of the site, filled. Raises TemplateFault."""
    return fill(env, f"site/{template}.html", head=about, **facts).encode()


def furniture(env: Environment, lost: Head, look: Look) -> dict[str, bytes]:
    """`lost` is the head of the page that a host shows at any wrong address."""
    base = fill(env, _STYLES[0])
    style = "\n".join((site_style(_FONTS, look), base, *(fill(env, one) for one in _STYLES[1:])))
    fonts = {_FONTS + name: data for name, data in web_font_files(look).items()}
    return fonts | {
        f"{_FONTS}OFL.txt": font_licence(),
        STYLE_FILE: f"{style}\n".encode(),
        "favicon.svg": fill(env, "site/favicon.svg", ornament=look.ornament).encode(),
        # Served for any path at all, so that it may lean on no other file.
        LOST_FILE: page(env, "404", lost, style=Markup(f"{site_colours(look)}\n{base}")),
    }


def ticks(env: Environment) -> bytes:
    """The script that remembers what is ticked on the supply list."""
    return fill(env, "site/ticks.js").encode()


@cache
def font_licence() -> bytes:
    return (files("packetgen") / "fonts" / "OFL.txt").read_bytes()
