"""What the preview adds to a page while it is looked at; none of it is ever part of the site."""

from html import escape
from importlib.resources import files

from packetgen.nouns import counted
from packetgen.preview.board import Sight

# Names of patterns and pages have no such sign, so that nothing of the site can lie here.
OWN = "~preview/"
EVENTS = f"{OWN}events"
_ASSETS = ("follow.js", "strip.css", "strip-page.css")


def own_files() -> dict[str, bytes]:
    """What the additions are made of, by path."""
    return {f"{OWN}{name}": (files("packetgen.preview") / name).read_bytes() for name in _ASSETS}


def with_strip(html: bytes, sight: Sight) -> bytes:
    """The page with the strip, and with the script that keeps both up to date, at its end."""
    added = (
        f'<link rel="stylesheet" href="/{OWN}strip.css">'
        f'<div id="preview-strip">{strip(sight)}</div>'
        f'<script src="/{OWN}follow.js" data-version="{escape(sight.version)}"></script>'
    ).encode()
    before, end, after = html.rpartition(b"</body>")
    return before + added + end + after if end else html + added


def strip(sight: Sight) -> str:
    """HTML of what there is to say; '' when all is well."""
    parts = []
    if sight.errors:
        stays = "The page below is the last good one. " if sight.version else ""
        parts.append(
            f'<div role="alert"><p><b>{counted(len(sight.errors), "thing")} to mend.</b> {stays}'
            f"This vanishes when the file is mended and saved.</p>{_lines(sight.errors)}</div>"
        )
    if sight.advice:
        pieces = counted(len(sight.advice), "piece")
        parts.append(
            f"<details><summary>{pieces} of advice: no fault, all is shown and built</summary>"
            f"{_lines(sight.advice)}</details>"
        )
    if sight.to_draw:
        parts.append(
            f'<p role="status">Drawing pictures: {sight.drawn} of {sight.to_draw} are done.</p>'
        )
    return "".join(parts)


def _lines(lines: tuple[str, ...]) -> str:
    return f"<ul>{''.join(f'<li>{escape(line)}</li>' for line in lines)}</ul>"


def nothing_yet(sight: Sight) -> bytes:
    """The page at every address until there is a good site."""
    waiting = not sight.errors
    said = "The first look is on its way." if waiting else "There is nothing to show yet."
    return with_strip(
        (
            '<!doctype html><html lang="en"><head><meta charset="utf-8">'
            '<meta name="viewport" content="width=device-width, initial-scale=1">'
            f'<title>Preview</title><link rel="stylesheet" href="/{OWN}strip-page.css"></head>'
            f"<body><main><h1>{said}</h1></main></body></html>"
        ).encode(),
        sight,
    )


def not_found() -> bytes:
    return b"<!doctype html><title>No such page</title><p>There is no such page.</p></body>"
