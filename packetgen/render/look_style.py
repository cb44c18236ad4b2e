"""The look of a series as CSS: the properties from which site and packet take their colours and faces."""

from packetgen.colour import mix
from packetgen.model import Look, Palette
from packetgen.render.faces import font_css, heading_families, text_families, web_font_css

_PLAIN_LOOK = Look()
# What stands in where no face of ours has come yet, or has the letter.
_TEXT_BEHIND = '"Segoe UI", Roboto, Arial, sans-serif'
_HEADING_BEHIND = 'Georgia, "Times New Roman", serif'


def site_style(fonts: str, look: Look = _PLAIN_LOOK) -> str:
    """Faces from the folder `fonts`, and colours by day and by night; what is printed is always by day."""
    return f"{web_font_css(fonts, look)}\n{site_colours(look)}"


def site_colours(look: Look = _PLAIN_LOOK) -> str:
    """The properties alone, for a page that can lean on no font file."""
    faces = (
        f"--face-text: {text_families(look)}, {_TEXT_BEHIND}; "
        f"--face-heading: {heading_families(look)}, {_HEADING_BEHIND}"
    )
    return (
        f":root {{ color-scheme: light dark; {_colours(look.light)}; {faces} }}\n"
        "@media screen and (prefers-color-scheme: dark) { "
        f":root {{ {_colours(look.dark)} }} }}"
    )


def packet_style(look: Look = _PLAIN_LOOK) -> str:
    """Faces as assets of a packet, and the colours that print takes."""
    edge = mix(look.light.heading, "#ffffff", 0.25)
    return (
        f"{font_css('asset:', look)}\n"
        f":root {{ --heading: {look.light.heading}; --accent: {look.light.accent}; --edge: {edge}; "
        f"--face-text: {text_families(look)}; --face-heading: {heading_families(look)} }}"
    )


def _colours(palette: Palette) -> str:
    names = ("paper", "shade", "ink", "heading", "accent", "quiet", "rule")
    return "; ".join(f"--{name}: {getattr(palette, name)}" for name in names)
